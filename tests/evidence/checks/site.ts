// This file is about the evidence for the calculations in site/.
import type { Check } from '../check.ts'

export const siteChecks: readonly Check[] = []
