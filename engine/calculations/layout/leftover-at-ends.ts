// Whole bays kept, and what is left over split between both ends.
//
//   ●━●━━━━━━●━━━━━━●━━━━━━●━●      three whole bays, and half of what is left at each end
import { calculation } from '../../calculation.ts'
import { less, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { fixedBay, wholeBays } from '../../words/bay-patterns.ts'
import { runLength } from '../../words/bays.ts'
import { word } from '../../words/word.ts'

const leftoverEachEnd = word<'length'>('leftoverEachEnd', {
  kind: 'length',
  label: 'left over at each end',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The short bay at each end, centre to centre.',
  ask: 'How wide is the short bay at each end?',
  called: { asks: ['split the leftover', 'leftover over both ends', 'leftover at each end', 'split what is left'] },
})

const narrowest = 12 // in, centre to centre: two posts and next to nothing between them

const keptBays = word<'count'>('keptBays', {
  kind: 'count',
  noun: 'bay',
  label: 'whole bays that are kept',
  whole: true,
  measure: 'Those of the full width.',
  ask: 'How many whole bays are kept?',
  called: { names: ['full ones', 'whole ones'] },
  possible: { least: '1' },
  plausible: { from: '1', to: '200' },
})

export const leftoverAtEnds = calculation({
  name: 'leftover-at-ends',
  title: 'What is left over, split between both ends',
  answers: 'How wide two short end bays are when all whole bays are kept.',
  needs: { runLength, fixedBay, keptBays },
  may: ['keptBays'],
  gives: { leftoverEachEnd, wholeBays },
  headlines: ['leftoverEachEnd'],
  together: { leftoverEachEnd: ['leftoverEachEnd', 'wholeBays'] },
  lines: {
    wholeBays: ['floor(runLength / fixedBay)', 'as many as fit whole'],
    wholeKept: ['keptBays', 'as many as are kept'],
    leftOver: ['runLength - wholeBays * fixedBay', 'what is left after them'],
    leftoverEachEnd: ['(runLength - wholeBays * fixedBay) / 2', 'half of what is left at each end'],
  },
  work({ runLength, fixedBay }, { line, has, tell, refuse, remark }) {
    if (less(runLength, fixedBay))
      refuse('fixedBay', `${show(runLength)} is less than one bay of ${show(fixedBay)}. Check both.`)
    tell('wholeBays', { ...line(has('keptBays') ? 'wholeKept' : 'wholeBays'), kind: 'count', unit: 'bay' })
    const left = line('leftOver')
    if (less(left, zero('length', 'in')))
      refuse('keptBays', `So many bays of ${show(fixedBay)} do not fit on ${show(runLength)}. Keep fewer.`)
    if (!less(zero('length', 'in'), left))
      refuse('runLength', `${show(runLength)} divides into whole bays of ${show(fixedBay)}: nothing is left over.`)
    const each = line('leftoverEachEnd')
    if (less(fixedBay, each))
      remark(
        `Each end is wider than a bay of ${show(fixedBay)}: another whole bay fits, or the rails must be longer there.`,
      )
    if (less(each, quantity(narrowest, 'in')))
      remark('So narrow an end leaves hardly more than the posts: keep one whole bay fewer, and both ends get wider.')
    remark(
      'I took the run between the middles of its end posts. This way takes one post more than an odd last bay does.',
    )
  },
  sources: [
    {
      fact: 'half of what the whole bays leave stands at each end',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'overhead-lines'],
  examples: [
    // 14.2 − 5 × 2.4 = 2.2; half
    {
      ask: 'A run of 14.2 m, full bays of 2.4 m, and I split the leftover over both ends: how wide is each end?',
      given: { runLength: '14.2 m', fixedBay: '2.4 m' },
      expect: { wholeBays: '5 bays', leftoverEachEnd: '1,100 mm' },
    },
    // 45 − 5 × 8 = 5 ft; half is 30 in
    {
      ask: 'A run of 45 ft with full bays of 8 ft, split what is left between the two ends: how wide is the leftover at each end?',
      given: { runLength: '45 ft', fixedBay: '8 ft' },
      expect: { wholeBays: '5 bays', leftoverEachEnd: '30 in' },
    },
  ],
})
