// The end of a rail against a wall that leans: a compound cut.
//
//   The wall's face has a direction square to it, n. The rail runs along r. The saw cuts a plane square to n.
//   With the rail on its face: miter is the turn seen on that face, bevel the tilt out of it. Of n, some goes along the rail,
//   some up across its face, some sideways out of it: tan(miter) = up / along, sin(bevel) = sideways.
import { calculation } from '../../calculation.ts'
import { wallCutDrawing } from '../../drawings/wall-cut.ts'
import { exact } from '../../quantities/amount.ts'
import { less, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { sawReach } from '../../words/lumber.ts'
import { planAngle, railGoes, railPitch, wallBevel, wallLean, wallMiter } from '../../words/wall-cuts.ts'

export const leaningWallCut = calculation({
  name: 'leaning-wall-cut',
  title: 'A rail cut against a leaning wall',
  answers:
    'The saw’s turn and the blade’s tilt for a rail that ends at a wall which leans, meets it at an angle, or both.',
  needs: { wallLean, planAngle, railPitch, railGoes, sawReach },
  may: ['railGoes'],
  gives: { wallMiter, wallBevel },
  headlines: ['wallMiter', 'wallBevel'],
  together: { wallMiter: ['wallMiter', 'wallBevel'], wallBevel: ['wallBevel', 'wallMiter'] },
  called: ['leaning wall', 'wall leans', 'against the wall', 'against a wall'],
  locals: { rise: 'angle', risen: 'angle', fallen: 'angle' },
  lines: {
    risen: ['railPitch', 'from level, up toward the wall'],
    fallen: ['-railPitch', 'from level; down toward the wall is less than nothing'],
    along: [
      'sin(planAngle) * cos(wallLean) * cos(rise) - sin(wallLean) * sin(rise)',
      'how much the wall faces along the rail',
    ],
    up: [
      'sin(planAngle) * cos(wallLean) * sin(rise) + sin(wallLean) * cos(rise)',
      'how much it faces up across the rail',
    ],
    sideways: ['cos(planAngle) * cos(wallLean)', 'how much it faces sideways'],
    wallMiter: ['atan(abs(up) / along)', 'seen on the face of the rail that you look at'],
    wallBevel: ['asin(abs(sideways))', 'out of that face'],
  },
  work({ wallLean, planAngle, railPitch, railGoes, sawReach }, { line, put, has, need, refuse, remark }) {
    if (!has('railGoes') && less(zero('angle', 'deg'), railPitch)) need('railGoes')
    put('rise', line(railGoes === 'down' ? 'fallen' : 'risen'))
    const along = line('along')
    if (!less({ ...along, amount: quantity('0.05', 'ratio').amount }, along))
      refuse(
        'planAngle',
        `At ${show(planAngle)} to a wall that leans ${show(wallLean)}, the rail runs nearly along the wall. Check the angles.`,
      )
    const up = line('up')
    line('sideways')
    const miter = line('wallMiter')
    const bevel = line('wallBevel')
    if (less(sawReach, miter) || less(sawReach, bevel))
      remark(
        `That is more than the ${show(sawReach)} a saw is taken to turn and tilt here. Mark the cut round the rail and saw it by hand, or give the wall a post of its own and end the rail square.`,
      )
    if (less(zero('angle', 'deg'), miter))
      remark(
        less(up, { ...up, amount: exact(0) })
          ? 'The rail’s bottom edge comes out the longer.'
          : 'The rail’s top edge comes out the longer.',
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
  drawing: wallCutDrawing,
  examples: [
    // square in plan, wall leaning 10°: miter 10°, no bevel
    {
      ask: 'The wall leans 10 degrees, the fence meets it square. What compound cut for the rail?',
      given: { wallLean: '10 deg' },
      expect: { wallMiter: '10°', wallBevel: '0°' },
    },
    // the wall leans 5° and the rail falls 20° to it: 5 − 20 = −15, so 15° the other way, longest at the bottom
    {
      ask: 'The wall leans 5 degrees and the rail falls 20 degrees toward the wall, square to it. Saw settings?',
      given: { wallLean: '5 deg', railPitch: '20 deg', railGoes: 'down' },
      expect: { wallMiter: '15°', wallBevel: '0°' },
    },
    // n along = sin 60 cos 8 = 0.85760, up = sin 8 = 0.13917: atan 0.16228 = 9.218°; sideways cos 60 cos 8 = 0.49513: 29.68°
    {
      ask: 'Cut the rail against the wall: the wall leans 8 degrees and the fence meets the wall at an angle of 60 degrees. Saw settings?',
      given: { wallLean: '8 deg', planAngle: '60 deg' },
      expect: { wallMiter: '9.218°', wallBevel: '29.68°' },
    },
  ],
})
