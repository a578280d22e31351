// This file is about a decimal library as witness for money: mathjs with its 64-digit decimals, which know no fractions.
import { all, create } from 'mathjs'

const decimal = create(all as NonNullable<typeof all>, { number: 'BigNumber', precision: 64 })

/** What the sum comes to in decimals. */
export const inDecimals = (sum: string): number => Number(String(decimal.evaluate(sum)))

/** The same to the cent, half a cent up. */
export const toTheCent = (sum: string): number => inDecimals(`floor((${sum}) * 100 + 0.5) / 100`)

export const decimalsWork =
  'mathjs 15 with its own decimals of 64 digits (decimal.js), where our engine works in fractions'
