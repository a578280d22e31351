// Two prices of much the same thing: what the dearer one costs more, for one and for all.
//
//   ├── the dearer ──────────┤
//   ├── the cheaper ───┤ apart   × how many
import { calculation } from '../../calculation.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { equal, less } from '../../quantities/quantity.ts'
import { piecesWanted } from '../../words/packs.ts'
import { word } from '../../words/word.ts'

const priceOf = (name: string, label: string) =>
  word<'money'>(name, {
    kind: 'money',
    label,
    measure: 'For one of them.',
    ask: `What is ${label}?`,
    called: {},
    possible: { least: '$0' },
  })
const apartOf = (name: string, label: string, measure: string) =>
  word<'money'>(name, { kind: 'money', label, measure, ask: `${label}?`, called: {} })

const onePrice = priceOf('onePrice', 'the price of the one')
const otherPrice = priceOf('otherPrice', 'the price of the other')
const moreForEach = apartOf('moreForEach', 'more for each', 'The dearer price less the cheaper.')
const moreForAll = apartOf('moreForAll', 'more for all of them', 'What each costs more, times how many.')

export const priceApart = calculation({
  name: 'price-apart',
  title: 'What the dearer one costs more',
  answers: 'How much more the dearer of two prices comes to, for each and for all the pieces.',
  needs: { onePrice, otherPrice, piecesWanted },
  may: ['piecesWanted'],
  gives: { moreForAll, moreForEach },
  headlines: ['moreForAll', 'moreForEach'],
  together: { moreForAll: ['moreForAll', 'moreForEach'], moreForEach: ['moreForEach', 'moreForAll'] },
  plain: true,
  lines: {
    moreForEach: ['abs(onePrice - otherPrice)', 'the dearer less the cheaper'],
    moreForAll: ['abs(onePrice - otherPrice) * piecesWanted', 'so much more for each of them'],
  },
  work({ onePrice: one, otherPrice: other }, { line, has, remark }) {
    line('moreForEach')
    if (has('piecesWanted')) line('moreForAll')
    remark(
      equal(one, other)
        ? 'Both cost the same.'
        : `The ${less(one, other) ? 'second' : 'first'} price is the dearer. Tax is as much as the prices hold.`,
    )
    const unnamed = unnamedCurrency(one)
    if (unnamed) remark(unnamed)
  },
  sources: [{ fact: 'the dearer less the cheaper, times how many', from: 'Arithmetic; needs no table.' }],
  cautions: [],
  examples: [
    // 19.80 − 12.30 = 7.50; × 14
    {
      ask: 'The short posts are $12.30 and the long ones $19.80. I need 14, how much more for the long ones?',
      given: { onePrice: '$12.30', otherPrice: '$19.80', piecesWanted: '14' },
      expect: { moreForAll: '$105.00', moreForEach: '$7.50' },
    },
    // 6.40 − 5.15
    {
      ask: 'Rails are £5.15 here and £6.40 there, what is the difference for each?',
      given: { onePrice: '£5.15', otherPrice: '£6.40' },
      expect: { moreForEach: '£1.25' },
    },
  ],
})
