// A fence straight across a lot, from one setback to the other.
//
//   │◄setback►●────── run ──────●◄setback►│
//   └──────────── width of the lot ───────┘
import { calculation } from '../../calculation.ts'
import { exact, subtract, times } from '../../quantities/amount.ts'
import { less, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { runLength } from '../../words/bays.ts'
import { word } from '../../words/word.ts'

const lotWidth = word<'length'>('lotWidth', {
  kind: 'length',
  label: 'width of the lot',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From one lot line to the other, where the fence goes.',
  ask: 'How wide is the lot where the fence goes?',
  called: { names: ['lot width', 'width of the lot', 'lot is'] },
  possible: { above: '0 ft' },
  plausible: { from: '8 ft', to: '1000 ft' },
})

const keptEachSide = word<'length'>('keptEachSide', {
  kind: 'length',
  label: 'kept free on each side',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From each lot line to the end of the fence.',
  ask: 'How far from each lot line does the fence end?',
  called: { names: ['setback on each side'] },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '60 ft' },
})

export const lineBetweenLots = calculation({
  name: 'line-between-lots',
  title: 'Across a lot between its setbacks',
  answers: 'How long a fence across a lot is that keeps off both lot lines by as much.',
  needs: { lotWidth, keptEachSide },
  gives: { runLength },
  headlines: ['runLength'],
  joins: true,
  lines: { runLength: ['lotWidth - 2 * keptEachSide', 'once on each side'] },
  work({ lotWidth, keptEachSide }, { line, refuse, remark }) {
    const left = subtract(lotWidth.amount, times(exact(2), keptEachSide.amount))
    if (!less(zero('length', 'in'), { ...lotWidth, amount: left }))
      refuse(
        'keptEachSide',
        `${show(keptEachSide)} on each side leave nothing of a lot ${show(lotWidth)} wide. Check both measurements.`,
      )
    line('runLength')
    remark(
      'I took the outermost parts of the fence as its ends: nothing of it may stand past them. Between the centres of the end posts it is one post’s width less.',
    )
  },
  sources: [
    {
      fact: 'what is kept free on both sides is taken off twice',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['lot-line', 'local-code'],
  examples: [
    // 60 ft − 2 × 2 ft
    {
      ask: 'The lot is 60 ft wide and the fence keeps 2 ft from the lot line on each side: how long is the run?',
      given: { lotWidth: '60 ft', keptEachSide: '2 ft' },
      expect: { runLength: '56 ft' },
    },
    // 18 m − 2 × 600 mm
    {
      ask: 'Lot width 18 m, 600 mm kept free on each side: length of the run?',
      given: { lotWidth: '18 m', keptEachSide: '600 mm' },
      expect: { runLength: '16.8 m' },
    },
  ],
})
