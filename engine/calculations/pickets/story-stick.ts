// A stick with equal marks, laid aslant between the posts, divides the opening evenly by itself.
//
//   ┃╲·         ┃      pitch of the pickets = step on the stick × cos of its angle
//   ┃  ╲·       ┃      so cos = pitch ÷ step: the stick is longer than the opening, and one end lies lower
//   ┃    ╲·     ┃      transfer each mark straight up and down (plumb), never square off the stick
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { firstStickMark, stickAngle, stickDrop, stickLength, stickPitch } from '../../words/story-stick.ts'
import { pitch } from '../../words/picket-patterns.ts'
import { opening, pickets, picketWidth } from '../../words/pickets.ts'

export const storyStick = calculation({
  name: 'story-stick',
  title: 'A story stick laid aslant',
  answers: 'How to lay a stick with equal marks aslant between two posts so that its marks space the pickets evenly.',
  needs: { opening, picketWidth, pickets, stickPitch },
  gives: { stickAngle, stickLength, stickDrop, firstStickMark, pitch },
  headlines: ['stickDrop', 'stickAngle'],
  together: {
    stickAngle: ['stickDrop', 'stickAngle', 'stickLength', 'firstStickMark', 'pitch'],
    stickDrop: ['stickDrop', 'stickAngle', 'stickLength', 'firstStickMark'],
  },
  called: ['story stick', 'storey stick', 'slanted stick', 'lay the stick', 'stick aslant', 'stick at an angle'],
  lines: {
    pitch: ['(opening + picketWidth) / (pickets + 1)', 'picket to picket, with a gap at each post'],
    cosine: ['pitch / stickPitch', 'laid aslant, the step is shortened to the pitch'],
    stickAngle: ['acos(cosine)', 'the angle that does it'],
    stickLength: ['opening / cosine', 'from post face to post face, along the stick'],
    stickDrop: ['opening * tan(stickAngle)', 'between its two ends'],
    firstStickMark: ['(stickLength - (pickets - 1) * stickPitch) / 2', 'the marks sit in the middle of the stick'],
  },
  work({ opening, picketWidth, pickets, stickPitch }, { line, refuse, remark }) {
    if (less(opening, picketWidth))
      refuse(
        'opening',
        `A ${show(picketWidth)} picket does not fit a ${show(opening)} opening. Check both measurements.`,
      )
    const step = line('pitch')
    if (!less(step, { ...stickPitch, unit: step.unit }))
      refuse(
        'stickPitch',
        `Marks ${show(stickPitch)} apart are not wider than the pickets’ own pitch of ${show(step)}: laid aslant they only come closer. Mark the stick wider.`,
      )
    if (less(step, picketWidth))
      refuse(
        'pickets',
        `${show(pickets)} of ${show(picketWidth)} do not fit a ${show(opening)} opening. Check the three.`,
      )
    for (const name of ['cosine', 'stickAngle', 'stickLength', 'stickDrop', 'firstStickMark']) line(name)
    remark(
      'Carry each mark to the rail plumb, with a level. Squared off the stick instead, they come out too far apart. Keep the stick straight and flat against both posts: bowed or swung out of the plane, it falls short.',
    )
  },
  sources: [
    { fact: 'cos of the angle = pitch ÷ step on the stick', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['tools'],
  examples: [
    // (94.5 + 3.5)/16 = 6.125; /6.5 = 0.942308; acos = 19.557°; 94.5/0.942308 = 100.2857; tan × 94.5 = 33.57; (100.2857 − 91)/2 = 4.643
    {
      ask: 'How do I lay the stick marked every 6 1/2 in for 15 pickets of 3 1/2 in in a 94 1/2 in opening?',
      given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '15', stickPitch: '6 1/2 in' },
      expect: {
        pitch: '6 1/8 in',
        stickAngle: '19.56°',
        stickLength: '100 2/7 in',
        stickDrop: '33.57 in',
        firstStickMark: '4 9/14 in',
      },
    },
    // (1800 + 70)/19 = 98.42; /110 = 0.89474; acos = 26.53°
    {
      ask: 'Story stick with marks every 110 mm, 18 pickets of 70 mm, opening 1800 mm: what angle?',
      given: { opening: '1800 mm', picketWidth: '70 mm', pickets: '18', stickPitch: '110 mm' },
      expect: { pitch: '98 8/19 mm', stickAngle: '26.53°' },
    },
  ],
})
