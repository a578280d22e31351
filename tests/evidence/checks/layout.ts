// This file is about the evidence for the calculations in layout/.
import type { Check } from '../check.ts'

export const layoutChecks: readonly Check[] = []
