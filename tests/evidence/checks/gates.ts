// This file is about the evidence for the calculations in gates/.
import type { Check } from '../check.ts'

export const gatesChecks: readonly Check[] = []
