// This file is about a general library as witness: mathjs works a plain sum with its own numbers and its own units.
import { evaluate, unit } from 'mathjs'

/** What mathjs makes of `6 inch + 1 ft`, in that unit; `in` is an operator there, so inches are written out. */
export const byMathjs = (sum: string, inUnit: string): number => unit(String(evaluate(sum))).toNumber(inUnit)

export const mathjsWorks = 'mathjs 15 works the sum with its own numbers and units'
