// This file is about the evidence for the calculations in border/.
import type { Check } from '../check.ts'

export const borderChecks: readonly Check[] = []
