// This file is about which edition of the engine and of its tables an answer was worked with: exports carry it.
import { equilibriumMoistureFit } from './tables/equilibrium-moisture.ts'

/** The version of the engine, and of the package. */
export const version = '0.1.0'

/** The edition of each published table that answers are worked with. */
export const editions: Readonly<Record<string, string>> = {
  'dressed lumber': 'PS 20, American Softwood Lumber Standard',
  'equilibrium moisture': equilibriumMoistureFit.title,
  'green wood stiffness': 'Wood Handbook, FPL-GTR-190 (2010), table 5–3b',
  'finish limits': 'Wood Handbook, FPL-GTR-190 (2010), chapters 13 and 16; Iowa State University Extension',
}
