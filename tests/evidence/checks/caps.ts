// This file is about the evidence for the calculations in caps/.
import type { Check } from '../check.ts'

export const capsChecks: readonly Check[] = []
