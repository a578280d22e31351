// The gap to set now, so that it is right when the wood has settled.
//
//   now, wet:   █████ █████     each board shrinks across its width by width × coefficient × points of moisture
//   later, dry: ████   ████     the middles stay where they are screwed, so the gap grows by what a board loses
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { dimensionalChange } from '../../tables/dimensional-change.ts'
import { gapDry, gapNow as now, grain, moistureNow, species, widthChange } from '../../words/wet-wood.ts'
import { picketWidth } from '../../words/pickets.ts'
import { equilibriumMoisture } from '../../words/air.ts'

export const gapNow = calculation({
  name: 'gap-now',
  title: 'The gap to set with wet wood',
  answers: 'How much pickets shrink or swell until they have settled, and the gap to set now so that it is right then.',
  needs: { picketWidth, species, grain, moistureNow, equilibriumMoisture, gapDry },
  onlyFor: { gapDry: ['gapNow'] },
  gives: { gapNow: now, widthChange },
  headlines: ['gapNow', 'widthChange'],
  together: { gapNow: ['gapNow', 'widthChange'], widthChange: ['widthChange', 'gapNow'] },
  called: ['wet now', 'when dry', 'shrink', 'gap now', 'wet wood', 'dries to'],
  locals: {
    coefficient: 'number',
    hundred: 'number',
    saturation: 'percent',
    countsNow: 'percent',
    countsLater: 'percent',
  },
  lines: {
    countsNow: ['min(moistureNow, saturation)', 'above fibre saturation wood loses water and keeps its size'],
    countsLater: ['min(equilibriumMoisture, saturation)', 'and the same later'],
    points: ['hundred * (countsLater - countsNow)', 'points of moisture it gains; less than nothing when it dries'],
    widthChange: ['picketWidth * coefficient * points', 'the handbook’s straight line'],
    gapNow: ['gapDry + widthChange', 'the middles of the pickets stay where they are screwed'],
  },
  work({ species, grain, moistureNow, equilibriumMoisture }, { line, put, has, rows, tell, remark, doubt, cite }) {
    const of = dimensionalChange.values[species]?.[grain as 'edge' | 'flat']
    if (of === undefined) throw new Error(`no coefficient for ${species}, ${grain} grain`)
    put('coefficient', { kind: 'number', amount: exact(of), unit: 'ratio' })
    put('hundred', quantity(100, 'ratio'))
    const saturation = put('saturation', quantity(dimensionalChange.saturation.percent, 'percent'))
    const [from, to] = [line('countsNow'), line('countsLater')]
    line('points')
    const change = line('widthChange')
    const moves = compare(change.amount, exact(0)) !== 0
    const limits = [quantity(6, 'percent'), quantity(14, 'percent')] as const
    if (moves && [moistureNow, equilibriumMoisture].some((it) => less(it, limits[0]) || less(limits[1], it)))
      doubt(
        'implausible',
        'moistureNow',
        `The handbook’s straight line holds from about ${cite(limits[0], 'from', 'published')} to ${cite(limits[1], 'to', 'published')}; from ${show(from)} to ${show(to)} take it as near, and rather too much.`,
      )
    const least = cite(saturation, 'fibre saturation', 'published')
    remark(
      `Each point of moisture moves this wood ${cite({ kind: 'number', amount: exact(of), unit: 'ratio' }, 'coefficient', 'published')} of its width, up to fibre saturation at about ${least}.`,
    )
    if (less(saturation, moistureNow) || less(saturation, equilibriumMoisture))
      remark(`Above that the wood loses water and keeps its size, so I counted no moisture over ${least}.`)
    if (!has('gapDry')) return
    const wanted = rows('gapDry')[0] as Quantity
    const gap = line('gapNow')
    if (compare(gap.amount, exact(0)) === -1) {
      tell('gapNow', { ...gap, amount: exact(0) })
      const open: Quantity = { ...wanted, amount: exact(0) }
      remark(
        `Even butted, with a gap of ${show(open)}, they open wider than ${show(wanted)}: each shrinks by more than that. Let the wood dry first.`,
      )
    } else
      remark(
        'Boards differ: set a few, and measure them again in a month. Wood outdoors goes on moving with the seasons.',
      )
    if (compare(change.amount, exact(0)) === 1) remark('It will swell: boards set too close then buckle.')
  },
  sources: [
    { fact: `${dimensionalChange.title}; holds for ${dimensionalChange.holds}`, from: dimensionalChange.from },
    { fact: dimensionalChange.saturation.fact, from: dimensionalChange.saturation.from },
  ],
  cautions: [],
  examples: [
    // 5.5 × 0.00234 × (12 − 19) = −0.09009; 0.21509 wanted → 0.125
    {
      ask: 'What gap do I set now with 5 1/2 in western redcedar pickets, moisture now 19 %, settles at 12 %, dry gap 1/4 in?',
      given: {
        picketWidth: '5 1/2 in',
        species: 'western-redcedar',
        grain: 'flat',
        moistureNow: '19 %',
        equilibriumMoisture: '12 %',
        gapDry: '1/4 in',
      },
      expect: { widthChange: '−0.09009 in', gapNow: '0.1599 in' },
    },
    // 90 × 0.00267 × (14 − 20) = −1.4418
    {
      ask: 'How much will the pickets shrink, 90 mm douglas fir at 20 % now that dries to 14 %?',
      given: {
        picketWidth: '90 mm',
        species: 'douglas-fir',
        grain: 'flat',
        moistureNow: '20 %',
        equilibriumMoisture: '14 %',
      },
      expect: { widthChange: '−1.4418 mm' },
    },
  ],
})
