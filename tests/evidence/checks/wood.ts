// This file is about the evidence for the calculations in wood/.
import type { Check } from '../check.ts'

export const woodChecks: readonly Check[] = []
