// This file is about the evidence for the calculations in tops/.
import type { Check } from '../check.ts'

export const topsChecks: readonly Check[] = []
