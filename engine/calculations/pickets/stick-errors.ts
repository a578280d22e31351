// What a story stick laid aslant gets wrong when it is not held right.
//
//   from above      ┃──────────────┃      in line: the stick spans the opening
//                   ┃───___        ┃      swung out: it falls short by about out² / (2 × opening)
//   from the front  ┃╲ │ │ │ │     ┃      plumb: step × cos of its angle
//                   ┃ ╲╱ ╱ ╱       ┃      squared off the stick: step ÷ cos, too wide
import { calculation } from '../../calculation.ts'
import { stickErrorsDrawing } from '../../drawings/story-stick.ts'
import { exact, times } from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { opening, pickets, picketWidth } from '../../words/pickets.ts'
import {
  bowShort,
  squaredOver,
  squaredPitch,
  stickBow,
  stickPitch,
  stickSwing,
  swingOver,
  swingPitch,
  swingShort,
} from '../../words/story-stick.ts'

export const stickErrors = calculation({
  name: 'stick-errors',
  title: 'What a story stick gets wrong',
  answers:
    'How far off a story stick comes when an end swings out of line, when it is bowed, and when its marks are squared off it instead of carried plumb.',
  needs: { opening, picketWidth, pickets, stickPitch, stickSwing, stickBow },
  may: ['stickSwing', 'stickBow'],
  gives: { squaredPitch, squaredOver, swingShort, swingPitch, swingOver, bowShort },
  headlines: ['swingShort', 'bowShort', 'squaredPitch'],
  together: {
    swingShort: ['swingShort', 'swingPitch', 'swingOver', 'bowShort', 'squaredPitch', 'squaredOver'],
    squaredPitch: ['squaredPitch', 'squaredOver'],
    squaredOver: ['squaredOver', 'squaredPitch'],
    swingPitch: ['swingPitch', 'swingOver', 'swingShort'],
  },
  called: [
    'stick is bowed',
    'stick is bent',
    'stick swings',
    'stick errors',
    'bowed stick',
    'squared off the stick',
    'square off the stick',
    'stick out of line',
  ],
  lines: {
    pitch: ['(opening + picketWidth) / (pickets + 1)', 'what the marks should come to, picket to picket'],
    cosine: ['pitch / stickPitch', 'laid aslant, the step is shortened to the pitch'],
    stickLength: ['opening / cosine', 'from post face to post face, along the stick'],
    squaredPitch: ['stickPitch / cosine', 'a square line leans away from plumb as far as the stick does from level'],
    squaredOver: ['(pickets - 1) * (squaredPitch - pitch)', 'the same error again at every picket'],
    swingShort: [
      'opening - sqrt(opening ^ 2 - stickSwing ^ 2)',
      'length and drop stay, so what it goes out it lacks along the line',
    ],
    swingPitch: [
      'stickPitch * opening / sqrt(stickLength ^ 2 + stickSwing ^ 2)',
      'touching both posts still, the stick is longer, so its step shrinks more',
    ],
    swingOver: ['(pickets - 1) * (pitch - swingPitch)', 'the same little error again at every picket'],
    bowShort: [
      '8 * stickBow ^ 2 / (3 * stickLength)',
      'a shallow arc is longer than its chord by eight thirds of its height squared, over its length',
    ],
  },
  work({ opening, picketWidth, pickets, stickPitch, stickSwing, stickBow }, { line, has, refuse, remark }) {
    if (less(opening, picketWidth))
      refuse(
        'opening',
        `A ${show(picketWidth)} picket does not fit a ${show(opening)} opening. Check both measurements.`,
      )
    const step = line('pitch')
    if (!less(step, { ...stickPitch, unit: step.unit }))
      refuse(
        'stickPitch',
        `Marks ${show(stickPitch)} apart are not wider than the pickets’ own pitch of ${show(step)}: such a stick is not laid aslant at all. Mark it wider.`,
      )
    if (less(step, picketWidth))
      refuse(
        'pickets',
        `${show(pickets)} of ${show(picketWidth)} do not fit a ${show(opening)} opening. Check the three.`,
      )
    line('cosine')
    const long = line('stickLength')
    line('squaredPitch')
    line('squaredOver')
    if (has('stickSwing')) {
      if (!less(stickSwing, opening))
        refuse(
          'stickSwing',
          `An end ${show(stickSwing)} out of line is as far as the ${show(opening)} opening is wide: the stick does not reach across. Check both.`,
        )
      for (const name of ['swingShort', 'swingPitch', 'swingOver']) line(name)
    }
    if (has('stickBow')) {
      const tenth: Quantity = { ...long, amount: times(long.amount, exact('1/10')) }
      if (less(tenth, stickBow))
        refuse(
          'stickBow',
          `A bow of ${show(stickBow)} in a stick of ${show(long)} is no shallow one. Take a straight stick.`,
        )
      line('bowShort')
    }
    remark(
      has('stickSwing') || has('stickBow')
        ? 'Keep the stick straight and in line, and carry every mark plumb, with a level: squared off it, the error grows with every picket.'
        : 'Carry every mark plumb, with a level, never square to the stick. Tell me how far an end is out of line, or how much the stick is bowed, and I will work those too.',
    )
  },
  sources: [
    {
      fact: 'what the swung, squared and bowed stick come to',
      from: 'Derived here from the sketch: level, drop and out-of-line are the three sides of one box; the bow as a shallow arc.',
    },
  ],
  cautions: ['tools'],
  drawing: stickErrorsDrawing,
  examples: [
    // pitch 98/16 = 6.125; /6.5; length 100.2857; 94.5 − √(94.5² − 36) = 0.1907; 6.5 × 94.5/√(100.2857² + 36) = 6.1141; 14 × 0.0109 = 0.1531
    // 8 × 1/(3 × 100.2857) = 0.02659; 6.5/0.942308 = 6.898; 14 × 0.773 = 10.82
    {
      ask: 'My story stick marked every 6 1/2 in for 15 pickets of 3 1/2 in in a 94 1/2 in opening has its far end 6 in out of line and the stick is bowed 1 in. How far off is the stick?',
      given: {
        opening: '94 1/2 in',
        picketWidth: '3 1/2 in',
        pickets: '15',
        stickPitch: '6 1/2 in',
        stickSwing: '6 in',
        stickBow: '1 in',
      },
      expect: {
        swingShort: '0.1907 in',
        swingPitch: '6.114 in',
        swingOver: '0.1531 in',
        bowShort: '0.02659 in',
        squaredPitch: '6 44/49 in',
      },
    },
    // 1870/19 = 98 8/19; 110²/98.42 = 122 16/17; 17 × (122 16/17 − 98 8/19) = 416 16/19
    {
      ask: 'Story stick with marks every 110 mm, 18 pickets of 70 mm, opening 1800 mm: how far out is the last picket if I square the marks off the stick?',
      given: { opening: '1800 mm', picketWidth: '70 mm', pickets: '18', stickPitch: '110 mm' },
      expect: { squaredPitch: '122 16/17 mm', squaredOver: '416 16/19 mm' },
    },
  ],
})
