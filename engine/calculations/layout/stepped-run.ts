// A fence that steps down a slope: every bay level, a step at every post.
//
//   ┃▔▔▔▔▔▔▔┃
//   ┃       ┃▔▔▔▔▔▔▔┃ ─┬─ step
//   ┃_______┃       ┃ ─┴─
//   ▔▔──__  ┃_______┃          under a level bay the ground falls away: the gap grows by the step
//         ▔▔──__    ┃
import { calculation } from '../../calculation.ts'
import { slopeDrawing } from '../../drawings/slope.ts'
import { equal, holdsMoreThan, less, type Quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bayCentres, widestBay } from '../../words/bays.ts'
import { bayRow } from '../../words/fence.ts'
import { tapeMark } from '../../words/pickets.ts'
import { fall, levelDistance, slope } from '../../words/slopes.ts'
import {
  gapUnderStep,
  highEndGap,
  longerPost,
  slopeBays,
  stepEach,
  stepTape,
  underHolds,
  widestUnder,
} from '../../words/sloping-fence.ts'

const mostBays = 500

export const steppedRun = calculation({
  name: 'stepped-run',
  title: 'A fence that steps down a slope',
  answers:
    'How big the step at each post is when the fence steps down a slope, the gap under each bay, and how much longer the posts are.',
  needs: { fall, levelDistance, widestBay, slopeBays, bayRow, highEndGap, widestUnder, tapeMark },
  may: ['levelDistance', 'widestBay', 'slopeBays', 'bayRow', 'widestUnder'],
  // So many bays were told, or how wide they may be.
  oneOf: [['widestBay', 'slopeBays']],
  onlyFor: { widestUnder: ['underHolds'] },
  gives: { slopeBays, stepEach, stepTape, gapUnderStep, longerPost, slope, underHolds, bayCentres },
  headlines: ['stepEach', 'gapUnderStep'],
  together: {
    stepEach: ['stepEach', 'stepTape', 'slopeBays', 'gapUnderStep', 'longerPost', 'underHolds'],
    gapUnderStep: ['gapUnderStep', 'stepEach', 'underHolds'],
    slopeBays: ['slopeBays', 'stepEach', 'bayCentres'],
    longerPost: ['longerPost', 'stepEach'],
  },
  locals: { widestLaid: 'length' },
  called: ['step down', 'stepped', 'steps down', 'stepping', 'step the fence'],
  lines: {
    slopeBays: ['ceil(levelDistance / widestBay)', 'the fewest bays within your limit, measured level'],
    bayCentres: ['levelDistance / slopeBays', 'shared equally'],
    stepEach: ['fall / slopeBays', 'the fall shared equally'],
    stepOfWidest: [
      'fall * widestLaid / levelDistance',
      'the run is not shared equally: the ground falls most over the widest bay as it is laid out',
    ],
    stepTape: ['round(stepEach, tapeMark)', 'the nearest mark on a tape'],
    gapUnderStep: ['highEndGap + stepEach', 'the ground drops by a step over the length of a level bay'],
    longerPost: ['stepEach', 'it reaches from the lower ground to the higher bay'],
    slope: ['fall / levelDistance', 'over the whole slope'],
  },
  work(
    { levelDistance, widestBay, highEndGap, widestUnder: limit },
    { line, has, need, tell, put, rows, refuse, remark },
  ) {
    // So many bays share the fall, however long they are.
    const isMeasured = has('levelDistance')
    if (!isMeasured && !has('slopeBays')) need('levelDistance')
    if (!has('slopeBays')) {
      if (holdsMoreThan(mostBays, widestBay, levelDistance))
        refuse(
          'levelDistance',
          `A slope ${show(levelDistance)} long with bays of ${show(widestBay)} has more bays than I can set out at once. Check both units, or give it in parts.`,
        )
      line('slopeBays')
    }
    const alike = isMeasured ? line('bayCentres') : undefined
    if (alike && has('slopeBays') && has('widestBay') && less(widestBay, alike))
      remark(
        `Shared by ${show(rows('slopeBays')[0] as Quantity)}, each is ${show(alike)} wide, and you allowed ${show(widestBay)} at most. Take more bays, or longer rails.`,
      )
    const widest = alike && has('bayRow') ? rows('bayRow').reduce((a, b) => (less(a, b) ? b : a)) : alike
    // A gate, or half a post at a wall, takes some of the run: its bays are then other than the run shared equally.
    if (alike && widest && less(zero('length', 'in'), widest) && !equal(widest, alike)) {
      put('widestLaid', widest)
      tell('stepEach', line('stepOfWidest', alike.unit))
      remark(
        `A gate, or a post at a wall, takes some of the run, so I took the step of its widest bay, ${show(widest)} centre to centre. Bays that are narrower step less. Under a gate the ground must be level, or the gate hung for the fall.`,
      )
    } else line('stepEach')
    line('stepTape')
    const under = line('gapUnderStep')
    line('longerPost')
    if (isMeasured) line('slope')
    if (has('widestUnder')) {
      const holds = !less(limit, under)
      tell('underHolds', holds)
      remark(
        holds
          ? `Decided by: ${show(under)} under the low end against your ${show(limit)}.`
          : `Decided by: ${show(under)} under the low end against your ${show(limit)}. Shorter bays make smaller steps; or let the pickets or a bottom board follow the ground.`,
      )
    }
    remark(
      `The steps are equal only where the ground falls evenly. Where it does not, measure the fall bay by bay. Bays are measured level; ${show(highEndGap)} is left under each high end.`,
    )
  },
  sources: [
    {
      fact: 'step = fall ÷ bays; the gap at a low end is the gap at the high end and the step',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  drawing: slopeDrawing,
  examples: [
    // 48/8 = 6; 40/6 = 6 2/3; 2 + 6 2/3 = 8 2/3
    {
      ask: 'I want to step the fence down a slope. The ground falls 40 in over a level distance of 48 ft, bays at most 8 ft. How big is the step at each post?',
      given: { fall: '40 in', levelDistance: '48 ft', widestBay: '8 ft' },
      expect: {
        slopeBays: '6 bays',
        stepEach: '6 2/3 in',
        stepTape: '6 11/16 in',
        gapUnderStep: '8 2/3 in',
        bayCentres: '8 ft',
      },
    },
    // 22/6 = 3 2/3; 48/6 = 8; 2 + 3 2/3
    {
      ask: 'The fence steps down 22 in over a level distance of 48 ft in 6 bays. How much is each step?',
      given: { fall: '22 in', levelDistance: '48 ft', slopeBays: '6' },
      expect: { stepEach: '3 2/3 in', stepTape: '3 11/16 in', gapUnderStep: '5 2/3 in', bayCentres: '8 ft' },
    },
    // 12/2.4 = 5; 900/5 = 180; 50 + 180 = 230 > 150
    {
      ask: 'Stepped fence: drop of 900 mm over a level distance of 12 m, bays at most 2.4 m, gap underneath at most 150 mm. How big are the steps?',
      given: { fall: '900 mm', levelDistance: '12 m', widestBay: '2.4 m', widestUnder: '150 mm' },
      expect: {
        slopeBays: '5 bays',
        stepEach: '180 mm',
        gapUnderStep: '230 mm',
        underHolds: 'the gap underneath is over your limit',
      },
    },
    // 640/4 = 160; 10/4 = 2.5
    {
      ask: 'Stepped fence: 640 mm fall over a level distance of 10 m, 4 bays on the slope. How big are the steps?',
      given: { fall: '640 mm', levelDistance: '10 m', slopeBays: '4' },
      expect: { stepEach: '160 mm', gapUnderStep: '210 mm', bayCentres: '2,500 mm' },
    },
  ],
})
