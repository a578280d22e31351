// This file is about the sums of money: what things cost, what a budget buys, tax, packs, quotes, hire. One line each, as in the catalogue.
import type { Calculation } from './calculation.ts'
import { bill } from './calculations/buying/bill.ts'
import { boardFootPriceOf } from './calculations/buying/board-foot-price.ts'
import { budgetLength } from './calculations/buying/budget-length.ts'
import { budgetPieces } from './calculations/buying/budget-pieces.ts'
import { moneyLeft } from './calculations/buying/money-left.ts'
import { savingTimeOf } from './calculations/buying/saving-time.ts'
import { bulkOrder } from './calculations/buying/bulk-order.ts'
import { compareQuotes } from './calculations/buying/compare-quotes.ts'
import { costOfLength } from './calculations/buying/cost-of-length.ts'
import { cutPlan } from './calculations/buying/cut-plan.ts'
import { deliverOrHaul } from './calculations/buying/deliver-or-haul.ts'
import { enoughPieces } from './calculations/buying/enough-pieces.ts'
import { lengthsBill } from './calculations/buying/lengths-bill.ts'
import { packs } from './calculations/buying/packs.ts'
import { priceApart } from './calculations/buying/price-apart.ts'
import { priceByMeasure } from './calculations/buying/price-by-measure.ts'
import { priceRange } from './calculations/buying/price-range.ts'
import { quoteByLength } from './calculations/buying/quote-by-length.ts'
import { rentBuyDig } from './calculations/buying/rent-buy-dig.ts'
import { rentByHour } from './calculations/buying/rent-by-hour.ts'
import { takeOff } from './calculations/buying/take-off.ts'
import { taxOnAmounts } from './calculations/buying/tax-on-amounts.ts'

export const moneySums: readonly Calculation[] = [
  cutPlan,
  bill,
  takeOff,
  taxOnAmounts,
  priceByMeasure,
  lengthsBill,
  packs,
  boardFootPriceOf,
  costOfLength,
  compareQuotes,
  quoteByLength,
  priceRange,
  rentBuyDig,
  deliverOrHaul,
  bulkOrder,
  rentByHour,
  budgetLength,
  budgetPieces,
  moneyLeft,
  savingTimeOf,
  priceApart,
  enoughPieces,
]
