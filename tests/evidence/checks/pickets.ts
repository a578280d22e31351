// This file is about the evidence for the calculations in pickets/.
import type { Check } from '../check.ts'

export const picketsChecks: readonly Check[] = []
