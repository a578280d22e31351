// The end of a rail against a wall that leans: a compound cut.
//
//   The wall's face has a direction square to it, n. The rail runs along r. The saw cuts a plane square to n.
//   With the rail on its face: miter is the turn seen on that face, bevel the tilt out of it.
//     tan(miter) = cot(plan)·cos… worked below from the parts of n along, across and up from the rail.
import { calculation } from '../../calculation.ts'
import { less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { planAngle, railPitch, wallBevel, wallLean, wallMiter } from '../../words/wall-cuts.ts'

const commonReach = quantity(45, 'deg')

export const leaningWallCut = calculation({
  name: 'leaning-wall-cut',
  title: 'A rail cut against a leaning wall',
  answers:
    'The saw’s turn and the blade’s tilt for a rail that ends at a wall which leans, meets it at an angle, or both.',
  needs: { wallLean, planAngle, railPitch },
  gives: { wallMiter, wallBevel },
  headlines: ['wallMiter', 'wallBevel'],
  together: { wallMiter: ['wallMiter', 'wallBevel'], wallBevel: ['wallBevel', 'wallMiter'] },
  called: ['leaning wall', 'wall leans', 'against the wall', 'against a wall'],
  lines: {
    along: [
      'sin(planAngle) * cos(wallLean) * cos(railPitch) - sin(wallLean) * sin(railPitch)',
      'how much the wall faces along the rail',
    ],
    up: [
      'sin(planAngle) * cos(wallLean) * sin(railPitch) + sin(wallLean) * cos(railPitch)',
      'how much it faces up across the rail',
    ],
    sideways: ['cos(planAngle) * cos(wallLean)', 'how much it faces sideways'],
    wallMiter: ['atan(abs(up) / along)', 'seen on the face of the rail that you look at'],
    wallBevel: ['asin(abs(sideways))', 'out of that face'],
  },
  work({ wallLean, planAngle }, { line, refuse, remark, cite }) {
    const along = line('along')
    if (!less({ ...along, amount: quantity('0.05', 'ratio').amount }, along))
      refuse(
        'planAngle',
        `At ${show(planAngle)} to a wall that leans ${show(wallLean)}, the rail runs nearly along the wall. Check the angles.`,
      )
    line('up')
    line('sideways')
    const miter = line('wallMiter')
    const bevel = line('wallBevel')
    if (less(commonReach, miter) || less(commonReach, bevel))
      remark(
        `Many saws turn and tilt no further than ${cite(commonReach, 'reach of many saws')}: look at yours. Past that, mark it and cut by hand.`,
      )
    remark(
      'Lay the rail on its broad face as it hangs. Cut an offcut first, hold it to the wall, and turn it over if it gapes.',
    )
  },
  sources: [
    {
      fact: 'the cut is the plane of the wall, cut through the rail',
      from: 'Derived here from the sketch; needs no table.',
    },
    { fact: 'many saws reach 45°', from: 'common practice, no source' },
  ],
  cautions: ['tools'],
  examples: [
    // square in plan, wall leaning 10°: miter 10°, no bevel
    {
      ask: 'The wall leans 10 degrees, the fence meets it square. What compound cut for the rail?',
      given: { wallLean: '10 deg' },
      expect: { wallMiter: '10°', wallBevel: '0°' },
    },
    // n along = sin 60 cos 8 = 0.85760, up = sin 8 = 0.13917: atan 0.16228 = 9.218°; sideways cos 60 cos 8 = 0.49513: 29.68°
    {
      ask: 'Cut the rail against the wall: the wall leans 8 degrees and the fence meets the wall at an angle of 60 degrees. Saw settings?',
      given: { wallLean: '8 deg', planAngle: '60 deg' },
      expect: { wallMiter: '9.218°', wallBevel: '29.68°' },
    },
  ],
})
