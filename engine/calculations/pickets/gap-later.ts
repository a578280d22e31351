// What a gap becomes that is there now, when the wood has settled: gap-now the other way round.
//
//   now, wet:   █████ █████     each board shrinks across its width by width × coefficient × points of moisture
//   later, dry: ████   ████     the middles stay where they are screwed, so the gap grows by what a board loses
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { less, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { movedAcross, movementLines, movementLocals, movementSources } from '../../wood-movement.ts'
import { equilibriumMoisture } from '../../words/air.ts'
import { picketWidth } from '../../words/pickets.ts'
import { gapDry, gapNow, grain, moistureNow, species, widthChange } from '../../words/wet-wood.ts'

export const gapLater = calculation({
  name: 'gap-later',
  title: 'The gap when the wood has settled',
  answers: 'What a gap between pickets becomes when wet wood has dried, or dry wood has taken up moisture.',
  needs: { picketWidth, species, grain, moistureNow, equilibriumMoisture, gapNow },
  gives: { gapDry, widthChange },
  headlines: ['gapDry'],
  together: { gapDry: ['gapDry', 'widthChange'] },
  called: ['gap later', 'gap when dry', 'gap end up', 'gap open'],
  locals: { ...movementLocals, widthChange: 'length' },
  lines: {
    ...movementLines,
    gapDry: ['gapNow - widthChange', 'the middles of the pickets stay where they are screwed'],
  },
  work({ picketWidth, species, grain, moistureNow, equilibriumMoisture, gapNow }, tools) {
    const { line, tell, remark } = tools
    const { change } = movedAcross({ across: picketWidth, species, grain }, [moistureNow, equilibriumMoisture], tools)
    tell('widthChange', change)
    const gap = line('gapDry')
    if (less(gap, zero('length', 'in'))) {
      tell('gapDry', { ...gap, amount: exact(0) })
      remark(
        `They swell by more than the gap of ${show(gapNow)}: they will press on one another, and boards that press buckle or push their screws out. Open the gaps before it gets wet.`,
      )
    } else
      remark(
        'Boards differ: measure a few, and measure them again in a month. Wood outdoors goes on moving with the seasons.',
      )
  },
  sources: movementSources,
  cautions: [],
  examples: [
    // 30 % lies over 14 %: 140 × (13 − 30) / (3000 / 5 − 30 + 30) = −2380 / 600 = −3.96667; 4 + 3.96667
    {
      ask: 'The gap is 4 mm now, western redcedar boards of 140 mm at 30 % moisture that settle at 13 %. What is the gap later?',
      given: {
        gapNow: '4 mm',
        picketWidth: '140 mm',
        species: 'western-redcedar',
        grain: 'flat',
        moistureNow: '30 %',
        equilibriumMoisture: '13 %',
      },
      expect: { gapDry: '7.967 mm', widthChange: '−3.967 mm' },
    },
    // 5.5 × (12 − 19) / (3000 / 5 − 30 + 19) = −38.5 / 589 = −0.06537; 1/8 + 0.06537
    {
      ask: 'Pickets 5 1/2 in of western redcedar at 19 %, hung 1/8 in apart, dry to 12 %: how wide will the gap end up?',
      given: {
        gapNow: '1/8 in',
        picketWidth: '5 1/2 in',
        species: 'western-redcedar',
        grain: 'flat',
        moistureNow: '19 %',
        equilibriumMoisture: '12 %',
      },
      expect: { gapDry: '0.1904 in', widthChange: '−0.06537 in' },
    },
  ],
})
