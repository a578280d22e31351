// This file is about rails told without a number: “the middle rail”, “a third rail” are the one between a top and a bottom rail, so there are three.
import Fraction from 'fraction.js'
import type { Found } from './found.ts'
import type { Scanned } from './scan.ts'

const middle = /^(middle|mid|centre|center|third)$/
// “No middle rail”, “do I need a third rail”: there is none, or not yet.
const doubted = /^(no|not|without|skip|skipping|drop|dropping|need|instead|or)$/
const many = /^(\d+|two|three|four|five)$/

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** Three rails, where a place in the message names the one between two others and no number of rails is told; null where it does not. */
export function middleRailAt(tokens: readonly Scanned[], at: number): Found | null {
  if (!middle.test(lower(tokens[at])) || lower(tokens[at + 1]) !== 'rail') return null
  const isDoubted = [1, 2, 3].some((back) => doubted.test(lower(tokens[at - back])))
  const isCounted = tokens.some((it, i) => lower(it) === 'rails' && many.test(lower(tokens[i - 1])))
  if (isDoubted || isCounted) return null
  return {
    next: at + 2,
    quantity: null,
    bare: new Fraction(3),
    rails: true,
    note: 'read as 3 rails: one in the middle',
  }
}
