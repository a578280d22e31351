// This file is about the evidence for the calculations in frame/.
import type { Check } from '../check.ts'

export const frameChecks: readonly Check[] = []
