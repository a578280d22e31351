// One arch over bays that are not alike: the same template, or the same rise.
//
//   ╭───────╮ ╭────╮      same radius: the short bay rises less
//   ╭───────╮ ╭────╮      same rise: the short bay has a tighter curve, and a template of its own
import { calculation } from '../../calculation.ts'
import { compare, exact, over, times } from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { archRadius, archRise, otherChord, radiusSameRise, riseSameRadius, standardChord } from '../../words/tops.ts'

export const archOverUnequalBays = calculation({
  name: 'arch-over-unequal-bays',
  title: 'One arch over bays that are not alike',
  answers:
    'What a shorter or longer bay looks like beside arched ones: its rise with the same radius, and its radius with the same rise.',
  needs: { standardChord, archRise, otherChord },
  gives: { riseSameRadius, radiusSameRise, archRadius },
  headlines: ['riseSameRadius', 'radiusSameRise'],
  together: {
    riseSameRadius: ['riseSameRadius', 'radiusSameRise', 'archRadius'],
    radiusSameRise: ['radiusSameRise', 'riseSameRadius', 'archRadius'],
  },
  called: ['odd bay', 'short bay', 'unequal bays', 'other bay', 'shorter bay'],
  lines: {
    archRadius: ['(standardChord ^ 2 / 4 + archRise ^ 2) / (2 * archRise)', 'the circle of the bays that are alike'],
    riseSameRadius: [
      'archRadius - sqrt(archRadius ^ 2 - otherChord ^ 2 / 4)',
      'the same circle, cut off by the other opening',
    ],
    radiusSameRise: [
      '(otherChord ^ 2 / 4 + archRise ^ 2) / (2 * archRise)',
      'a circle through the other ends and the same middle',
    ],
  },
  work({ standardChord, archRise, otherChord }, { line, refuse, remark, doubt }) {
    const half = (q: Quantity): Quantity => ({ ...q, amount: over(q.amount, exact(2)) })
    if (less(half(standardChord), archRise))
      refuse(
        'archRise',
        `A rise of ${show(archRise)} is more than half of a ${show(standardChord)} opening. Check both.`,
      )
    const radius = line('archRadius')
    if (compare(times(otherChord.amount, exact('1/2')), radius.amount) !== -1)
      refuse(
        'otherChord',
        `A circle of ${show(radius)} radius does not span a ${show(otherChord)} opening. Choose the same rise there.`,
      )
    const rise = line('riseSameRadius')
    if (less(half(otherChord), archRise)) {
      doubt(
        'contradictory',
        'otherChord',
        `With the same rise a circle would bulge past the posts of the odd bay: ${show(archRise)} is more than half of its ${show(otherChord)}. Take the same radius there, or a smaller rise.`,
      )
      remark(`Same radius: one template, and the odd bay rises ${show(rise)} against ${show(archRise)}.`)
      return
    }
    line('radiusSameRise')
    remark(
      `Same radius: one template, and the odd bay rises ${show(rise)} against ${show(archRise)}. Same rise: the tops line up, and the odd bay has a curve of its own. Beside each other the same rise is less noticed; far apart, the same radius.`,
    )
  },
  sources: [
    { fact: 'rise = R − √(R² − chord²/4)', from: 'Plane geometry of the circle; derived here from the sketch.' },
    { fact: 'which of the two is less noticed', from: 'common practice, no source' },
  ],
  cautions: ['tools'],
  examples: [
    // R = 111 for 72 and 6; 48: 111 − √(111² − 24²) = 111 − 108.374 = 2.626; (576 + 36)/12 = 51
    {
      ask: 'The standard bay is 72 in with a rise of 6 in and one short bay is 48 in. What rise with the same radius?',
      given: { standardChord: '72 in', archRise: '6 in', otherChord: '48 in' },
      expect: { archRadius: '111 in', riseSameRadius: '2.626 in', radiusSameRise: '51 in' },
    },
    // R = (900² + 200²)/400 = 2125; 1200: 2125 − √(2125² − 600²) = 86.46
    {
      ask: 'Full bay 1800 mm, dip 200 mm, odd bay 1200 mm: same radius or same dip?',
      given: { standardChord: '1800 mm', archRise: '200 mm', otherChord: '1200 mm' },
      expect: { archRadius: '2,125 mm', riseSameRadius: '86.46 mm', radiusSameRise: '1,000 mm' },
    },
  ],
})
