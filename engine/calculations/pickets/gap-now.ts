// The gap to set now, so that it is right when the wood has settled.
//
//   now, wet:   █████ █████     each board shrinks across its width by width × coefficient × points of moisture
//   later, dry: ████   ████     the middles stay where they are screwed, so the gap grows by what a board loses
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import type { Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { movedAcross, movementLines, movementLocals, movementSources } from '../../wood-movement.ts'
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
  called: ['wet now', 'gap now'],
  locals: { ...movementLocals, widthChange: 'length' },
  lines: {
    ...movementLines,
    gapNow: ['gapDry + widthChange', 'the middles of the pickets stay where they are screwed'],
  },
  work({ picketWidth, species, grain, moistureNow, equilibriumMoisture }, tools) {
    const { line, has, rows, tell, remark } = tools
    const { change } = movedAcross({ across: picketWidth, species, grain }, [moistureNow, equilibriumMoisture], tools)
    tell('widthChange', change)
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
  sources: movementSources,
  cautions: [],
  examples: [
    // 19 % lies over 14 %: 5.5 × (12 − 19) / (3000 / 5 − 30 + 19) = −38.5 / 589 = −0.06537; 1/4 − 0.06537
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
      expect: { widthChange: '−0.06537 in', gapNow: '0.1846 in' },
    },
    // 90 × (14 − 20) / (3000 / 7.6 − 30 + 20) = −540 / 384.74
    {
      ask: 'How much will the pickets shrink, 90 mm douglas fir at 20 % now that dries to 14 %?',
      given: {
        picketWidth: '90 mm',
        species: 'douglas-fir',
        grain: 'flat',
        moistureNow: '20 %',
        equilibriumMoisture: '14 %',
      },
      expect: { widthChange: '−1.404 mm' },
    },
  ],
})
