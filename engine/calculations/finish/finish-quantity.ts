// How much finish all coats take, and how many cans.
//
//   first coat    area / its spread      the wood drinks
//   later coats   area / their spread    it drinks less, so they go further
//   together, with what stays in brush and can; rounded up to whole cans once, at the end
import { calculation } from '../../calculation.ts'
import type { Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { finishCoverage } from '../../tables/finish-coverage.ts'
import { published } from '../../tables/published.ts'
import {
  canSize,
  coats,
  coverageFirst,
  coverageNext,
  finishCans,
  finishCost,
  finishNeeded,
  finishSpare,
  surfaceTexture,
} from '../../words/finish.ts'
import { finishArea } from '../../words/finish-area.ts'
import { canPrice } from '../../words/take-off.ts'

/** Other sizes that cans are sold in, for comparison: common practice, no source. */
const sizes = { imperial: ['1/4 gal', '1 gal', '5 gal'], metric: ['1 L', '2.5 L', '5 L', '10 L'] } as const

export const finishQuantity = calculation({
  name: 'finish-quantity',
  title: 'How much finish to buy',
  answers: 'How much paint or stain all coats take on rough or smooth wood, with spare, and how many cans that is.',
  needs: { finishArea, coats, surfaceTexture, coverageFirst, coverageNext, finishSpare, canSize, canPrice },
  may: ['surfaceTexture', 'coverageFirst', 'coverageNext', 'canPrice'],
  oneOf: [['coverageFirst', 'surfaceTexture']],
  onlyFor: { canSize: ['finishCans', 'finishCost'], canPrice: ['finishCost'] },
  gives: { finishNeeded, finishCans, finishCost },
  headlines: ['finishNeeded', 'finishCans'],
  together: {
    finishNeeded: ['finishNeeded', 'finishCans'],
    finishCans: ['finishCans', 'finishNeeded'],
    finishCost: ['finishCost', 'finishCans', 'finishNeeded'],
  },
  locals: {
    firstGoes: 'coverage',
    nextGoes: 'coverage',
    firstCoat: 'volume',
    laterCoats: 'volume',
    otherCan: 'volume',
  },
  lines: {
    firstCoat: ['finishArea / firstGoes', 'the first coat, where the wood drinks'],
    laterCoats: ['(coats - 1) * finishArea / nextGoes', 'the coats after it'],
    finishNeeded: ['(firstCoat + laterCoats) * (1 + finishSpare)', 'all coats, with what is spare'],
    finishCans: ['ceil(finishNeeded / canSize)', 'whole cans, rounded up once'],
    finishCost: ['finishCans * canPrice', 'so many cans at that'],
    cansOfThat: ['ceil(finishNeeded / otherCan)', 'in cans of another size'],
  },
  work(given, { line, put, has, remark, table, cite, system }) {
    const rough = given.surfaceTexture === 'rough'
    const range = finishCoverage.stain[rough ? 'rough' : 'smooth']
    // The published spreads are in the units of their table: shown in the person's own.
    const inTheirs = (text: string): Quantity => ({
      ...published(text),
      unit: system === 'metric' ? 'm2/L' : 'ft2/gal',
    })
    const [low, high] = [inTheirs(range.low), inTheirs(range.high)]
    const first = has('coverageFirst') ? given.coverageFirst : low
    const next = has('coverageNext') ? given.coverageNext : has('coverageFirst') ? first : high
    put('firstGoes', first)
    put('nextGoes', next)
    line('firstCoat')
    line('laterCoats')
    line('finishNeeded')
    const many = given.coats.amount.valueOf() !== 1
    if (!has('coverageFirst'))
      remark(
        `No spread from your can yet, so I took published ones for semi-transparent stain on ${rough ? 'rough' : 'smooth'} wood: ${cite(low, 'spread of the first coat', 'published')} for the first coat${many ? `, and ${cite(high, 'spread of later coats', 'published')} after it` : ''}. Other finishes go further or less far: your can says.`,
      )
    else if (!has('coverageNext') && many)
      remark(
        `I took ${show(first)} for every coat. If your can says that a second coat goes further, give that too: it takes less then.`,
      )
    if (has('canSize')) {
      line('finishCans')
      if (has('canPrice')) line('finishCost')
      table({
        title: 'The same in cans of other sizes',
        columns: [
          { label: 'size', unit: '' },
          { label: 'cans', unit: 'can' },
        ],
        rows: sizes[system].map((size) => {
          put('otherCan', published(size))
          return [show(published(size)), show({ ...line('cansOfThat'), kind: 'count', unit: 'can' })]
        }),
      })
    }
    remark('Stir all cans of a colour together before you begin, and keep a little for repairs.')
  },
  sources: [
    { fact: finishCoverage.stain.fact, from: finishCoverage.stain.from },
    { fact: 'finish = area / spread for each coat, with spare', from: 'Derived here; needs no table.' },
  ],
  cautions: ['fire', 'lead', 'dust'],
  examples: [
    // 556.1 / 150 + 556.1 / 300 = 5.561; × 1.1 = 6.117; → 7
    {
      ask: 'How much stain for 556.1 square feet of fence, 2 coats, the first coat at 150 square feet per gallon and the second coat at 300 square feet per gallon, 10 % waste?',
      given: {
        finishArea: '556.1 ft2',
        coats: '2',
        coverageFirst: '150 ft2/gal',
        coverageNext: '300 ft2/gal',
        finishSpare: '10 %',
      },
      expect: { finishNeeded: '6.1171 gal', finishCans: '7 cans' },
    },
    // rough, 100 then 200 ft² a gallon = 2.454 and 4.908 m² a litre: 60 / 2.454 + 60 / 4.908 = 36.67; × 1.1 = 40.3; / 5 → 9
    {
      ask: 'How many litres of stain for 60 m2 of rough sawn fence, 2 coats, in 5 L cans?',
      given: { finishArea: '60 m2', coats: '2', surfaceTexture: 'rough', canSize: '5 L' },
      expect: { finishNeeded: '40.34 L', finishCans: '9 cans' },
    },
  ],
})
