// Plain numbers added, averaged, taken away, multiplied and divided, in the order they were said.
import { calculation } from '../../calculation.ts'
import { exact, isExact } from '../../quantities/amount.ts'
import { amountIn, type Quantity, quantity } from '../../quantities/quantity.ts'
import { mixed, show } from '../../quantities/show.ts'
import {
  numberDifference,
  numberMean,
  numberPart,
  numberProduct,
  numberQuotient,
  numbers,
  numberSum,
  partPercent,
} from '../../words/plain-sums.ts'

const mostNumbers = 500
/** A fraction with more below the line than this is not read by anybody. */
const longestFraction = 999n

export const numbersTogether = calculation({
  name: 'numbers-together',
  title: 'Numbers added, taken away, multiplied, divided',
  answers: 'What plain numbers come to when they are added, taken from each other, multiplied or divided.',
  needs: { numbers, partPercent },
  may: ['partPercent'],
  gives: { numberSum, numberMean, numberDifference, numberProduct, numberQuotient, numberPart },
  headlines: ['numberSum', 'numberDifference', 'numberProduct', 'numberQuotient'],
  plain: true,
  locals: { many: 'number', first: 'number', second: 'number', others: 'number' },
  lines: {
    numberSum: ['sum(numbers)', 'all of them added up'],
    numberMean: ['sum(numbers) / many', 'added up, and shared by how many there are'],
    numberDifference: ['first - sum(others)', 'the first less the others'],
    numberProduct: ['first * second', 'the one times the other'],
    numberQuotient: ['first / second', 'the first by the second'],
    numberPart: ['partPercent * first', 'that share of the whole'],
  },
  work(_given, { line, has, rows, put, wants, worked, refuse, remark }) {
    const all = rows('numbers')
    const [first, second, ...more] = all as [Quantity, Quantity, ...Quantity[]]
    if (has('partPercent') && all.length === 1) {
      put('first', first)
      line('numberPart')
      return
    }
    if (all.length < 2) refuse('numbers', `I have only ${show(first)}, and no number beside it. Say both.`)
    if (all.length > mostNumbers)
      refuse(
        'numbers',
        `That is ${show(quantity(all.length, 'number'))}. I take at most ${show(quantity(mostNumbers, 'number'))}.`,
      )
    put('many', quantity(all.length, 'ratio'))
    put('first', first)
    put('second', second)
    put('others', all.slice(1))
    const names = ['numberSum', 'numberMean', 'numberDifference'] as const
    for (const name of names) if (wants(name)) line(name)
    if (more.length === 0) {
      if (wants('numberProduct')) line('numberProduct')
      const isNought = isExact(second.amount) && second.amount.equals(exact(0))
      if (wants('numberQuotient') && !isNought) line('numberQuotient')
    }
    const results = [...names, 'numberProduct', 'numberQuotient'] as const
    if (!results.some(worked))
      refuse(
        'numbers',
        more.length > 0
          ? `I multiply and divide two at a time, and I have ${show(quantity(all.length, 'number'))}.`
          : `Nothing can be divided by ${show(second)}.`,
      )
    for (const name of results.filter(worked)) {
      const amount = amountIn(rows(name)[0] as Quantity, 'ratio')
      if (isExact(amount) && amount.d > 1n && amount.d <= longestFraction) remark(`As a fraction: ${mixed(amount)}.`)
    }
  },
  sources: [
    { fact: 'adding, taking away, multiplying, dividing', from: 'Arithmetic, in exact fractions; needs no table.' },
  ],
  cautions: [],
  examples: [
    // 93 3/4 − 3 1/2 = 90 1/4
    {
      ask: 'What is 93 3/4 minus 3 1/2?',
      given: { numbers: ['93 3/4', '3 1/2'] },
      expect: { numberDifference: '90.25' },
    },
    // 0.075 × 1860
    {
      ask: 'What is 7.5 % of 1,860?',
      given: { numbers: '1860', partPercent: '7.5 %' },
      expect: { numberPart: '139.5' },
    },
    // 14 × 12
    { ask: 'What is 14 times 12?', given: { numbers: ['14', '12'] }, expect: { numberProduct: '168' } },
    // 96 / 7 = 13.714…
    { ask: 'Divide 96 by 7.', given: { numbers: ['96', '7'] }, expect: { numberQuotient: '13.71' } },
  ],
})
