// A stick with equal marks, laid aslant between the posts, divides the opening evenly by itself.
//
//   ┃╲·         ┃      pitch of the pickets = step on the stick × cos of its angle
//   ┃  ╲·       ┃      so cos = pitch ÷ step: the stick is longer than the opening, and one end lies lower
//   ┃    ╲·     ┃      transfer each mark straight up and down (plumb), never square off the stick
import { calculation } from '../../calculation.ts'
import { less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { firstStickMark, stickAngle, stickDrop, stickLength, stickPitch } from '../../words/story-stick.ts'
import { pitch } from '../../words/picket-patterns.ts'
import { opening, pickets, picketWidth } from '../../words/pickets.ts'

// The stick must lie against both posts. Few stand higher above the ground than this.
const tallestPost = quantity(6, 'ft')

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
  locals: { tallestPost: 'length' },
  lines: {
    pitch: ['(opening + picketWidth) / (pickets + 1)', 'picket to picket, with a gap at each post'],
    cosine: ['pitch / stickPitch', 'laid aslant, the step is shortened to the pitch'],
    stickAngle: ['acos(cosine)', 'the angle that does it'],
    stickLength: ['opening / cosine', 'from post face to post face, along the stick'],
    stickDrop: ['opening * tan(stickAngle)', 'between its two ends'],
    widestStep: [
      'pitch * sqrt(1 + tallestPost ^ 2 / opening ^ 2)',
      'the step at which it drops by a tall post’s height',
    ],
    firstStickMark: ['(stickLength - (pickets - 1) * stickPitch) / 2', 'the marks sit in the middle of the stick'],
  },
  work({ opening, picketWidth, pickets, stickPitch }, { line, put, refuse, remark, cite }) {
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
    for (const name of ['cosine', 'stickAngle', 'stickLength']) line(name)
    const drop = line('stickDrop')
    const post = put('tallestPost', tallestPost)
    if (less(post, drop))
      refuse(
        'stickPitch',
        `With marks ${show(stickPitch)} apart the stick lies so steep that it drops ${show(drop)} from post to post, more than the ${cite(post, 'tallest post')} of a tall one. Mark it no wider than ${cite(line('widestStep'), 'widest step')}.`,
      )
    line('firstStickMark')
    remark(
      'Carry each mark to the rail plumb, with a level. Squared off the stick instead, they come out too far apart. Keep the stick straight and flat against both posts: bowed or swung out of the plane, it falls short.',
    )
  },
  sources: [
    { fact: 'cos of the angle = pitch ÷ step on the stick', from: 'Derived here from the sketch; needs no table.' },
    { fact: 'the posts of a picket fence stand no higher than 6 ft', from: 'common practice, no source' },
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
