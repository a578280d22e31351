// Feet and tenths, as a plat has them, on a tape that has inches.
//
//   3.25 ft on the plat is three feet and a quarter of a FOOT: 3 ft 3 in, not 3 ft 2 1/2 in, and not 3 1/4 in.
import { calculation } from '../../calculation.ts'
import { quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { inMetres, inTenths, onTape, platLength, tapeOff } from '../../words/tenths.ts'
import { tapeMark } from '../../words/pickets.ts'

export const tenths = calculation({
  name: 'tenths',
  title: 'Feet and tenths on a tape',
  answers: 'A length in feet and tenths, or in metres, on a tape in feet, inches and sixteenths, and back.',
  needs: { platLength, tapeMark },
  usually: {
    tapeMark: {
      value: '1/16 in',
      metric: '1/16 in',
      because: 'the finest marks on a common tape in inches',
      from: 'common practice, no source',
    },
  },
  gives: { onTape, tapeOff, inMetres, inTenths },
  headlines: ['onTape', 'inMetres', 'inTenths'],
  together: {
    onTape: ['onTape', 'inMetres', 'inTenths'],
    inTenths: ['inTenths', 'onTape'],
    inMetres: ['inMetres', 'onTape'],
  },
  locals: { foot: 'length' },
  lines: {
    onTape: [
      'round(platLength, tapeMark)',
      'a foot has twelve inches: what comes after the point is a share of a foot, not inches',
    ],
    tapeOff: ['onTape - platLength', 'what the rounding adds or takes off'],
    inMetres: ['platLength', 'a foot is 0.3048 m exactly'],
    inTenths: ['platLength / foot', 'as so many feet'],
  },
  work(_given, { line, put, remark, rows }) {
    const [length] = rows('platLength')
    for (const name of ['onTape', 'tapeOff', 'inMetres']) line(name)
    put('foot', quantity(1, 'ft'))
    line('inTenths')
    if (length?.unit === 'ft') remark(`Read it as a share of a foot: ${show(length)}.`)
  },
  sources: [
    {
      fact: '1 ft = 12 in = 0.3048 m exactly',
      from: 'International yard and pound agreement, 1959; NIST SP 811, appendix B',
    },
  ],
  cautions: [],
  examples: [
    // 0.35 × 12 = 4.2 in → 4 3/16; 47.35 × 0.3048 = 14.43228
    {
      ask: 'The plat says 47.35 ft. What is that in feet and inches?',
      given: { platLength: '47.35 ft' },
      expect: { onTape: '47 ft 4 3/16 in', inTenths: '47.35', inMetres: '14.432 m' },
    },
    // 14.4 m / 0.0254 = 566.929 in = 47 ft 2.929 in → 2 15/16
    {
      ask: 'What is 14.4 m on a tape in feet and inches?',
      given: { platLength: '14.4 m' },
      expect: { onTape: '47 ft 2 15/16 in', inMetres: '14.4 m' },
    },
  ],
})
