// What rot leaves of a post: sound width, and how much of its strength and stiffness.
//
//   ┌───────┐   ░ rotten      bent the weaker way:
//   │░      │                 one face       S left = (left/width)²      I left = (left/width)³
//   │░      │                 all round      S left = (left/width)³      I left = (left/width)⁴
//   └───────┘                 inside         S and I left = 1 − (rotten/width)⁴
//
// The trap: an eighth of the width gone all round is a quarter gone across, and that is more than half of the strength.
import { calculation } from '../../calculation.ts'
import { rotDrawing } from '../../drawings/rot.ts'
import { compare, exact, times } from '../../quantities/amount.ts'
import { less, quantity, type Quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { postWidth } from '../../words/posts.ts'
import {
  postSection,
  postServes,
  rotDepth,
  rotWhere,
  sectionLeft,
  soundShell,
  soundWidth,
  stiffnessLeft,
} from '../../words/rot.ts'

/** For each place of the rot: how much of the width goes, and by which powers strength and stiffness fall. */
const faces = {
  one: ['leftOfOne', 'squared', 'cubed'],
  opposite: ['leftOfTwo', 'squared', 'cubed'],
  corner: ['leftOfOne', 'cubed', 'fourth'],
  all: ['leftOfTwo', 'cubed', 'fourth'],
} as const

export const rotLeft = calculation({
  name: 'rot-left',
  title: 'What rot leaves of a post',
  answers: 'How much of a post’s strength and stiffness rot has left, from how deep a screwdriver goes in, and where.',
  needs: { postWidth, postSection, rotWhere, rotDepth, soundShell },
  may: ['rotDepth', 'soundShell'],
  gives: { sectionLeft, stiffnessLeft, soundWidth, postServes },
  headlines: ['sectionLeft', 'postServes'],
  together: {
    sectionLeft: ['sectionLeft', 'stiffnessLeft', 'soundWidth', 'postServes'],
    postServes: ['postServes', 'sectionLeft', 'soundWidth'],
  },
  joins: true,
  locals: { limit: 'number', soundWidth: 'length' },
  lines: {
    leftOfOne: ['postWidth - rotDepth', 'one face gone'],
    leftOfTwo: ['postWidth - 2 * rotDepth', 'two faces gone, one at each side'],
    squared: ['(soundWidth / postWidth) ^ 2', 'strength goes with the width across, twice over'],
    cubed: ['(soundWidth / postWidth) ^ 3', 'three times over'],
    fourth: ['(soundWidth / postWidth) ^ 4', 'four times over'],
    hollow: ['postWidth - 2 * soundShell', 'the rotten heart'],
    shellLeft: [
      '1 - (hollow / postWidth) ^ 4',
      'a hollow post keeps more than one thinks: the outer wood does the work',
    ],
  },
  work(given, { line, has, need, put, tell, refuse, remark, cite, rows }) {
    const isRound = given.postSection === 'round'
    const isInside = given.rotWhere === 'inside'
    let isAtLeast = false
    if (isInside) {
      if (!has('soundShell')) need('soundShell')
      if (!less(given.soundShell, { ...given.postWidth, amount: half(given.postWidth) }))
        refuse(
          'soundShell',
          `${show(given.soundShell)} of sound wood from each face is all of a ${show(given.postWidth)} post: there is no room for rot. Check both.`,
        )
      line('hollow')
      tell('soundWidth', { ...given.soundShell, amount: twice(given.soundShell) })
      const left = line('shellLeft')
      tell('sectionLeft', asPercent(left))
      tell('stiffnessLeft', asPercent(left))
    } else {
      if (!has('rotDepth')) need('rotDepth')
      // On a round post the rot of one side is taken as if it went all round: that takes more than it does.
      isAtLeast = isRound && given.rotWhere !== 'all'
      const [width, strength, stiffness] = faces[(isRound ? 'all' : given.rotWhere) as keyof typeof faces]
      const sound = line(width)
      if (!less(zero('length', 'in'), sound)) {
        tell('soundWidth', { ...sound, amount: zero('length', 'in').amount })
        tell('sectionLeft', quantity(0, 'percent'))
        tell('stiffnessLeft', quantity(0, 'percent'))
        tell('postServes', false)
        remark(
          `Decided by the rot: ${show(given.rotDepth)} from the faces goes right through a ${show(given.postWidth)} post. Brace the fence before you touch it.`,
        )
        return
      }
      tell('soundWidth', sound)
      tell('sectionLeft', asPercent(line(strength)))
      tell('stiffnessLeft', asPercent(line(stiffness)))
      if (isAtLeast)
        remark('On a round post, rot that is not all round is reckoned as if it were: at least so much is left.')
    }
    // Two thirds.
    const left = rows('sectionLeft')[0] as Quantity
    const limit = put('limit', quantity('2/3', 'ratio'))
    const limitShown = cite({ ...limit, kind: 'percent', unit: 'percent' }, 'least strength left', 'published')
    const order = compare(left.amount, limit.amount)
    const stays = order === null ? null : order >= 0
    tell('postServes', stays === false && isAtLeast ? null : stays)
    remark(
      `Decided by the strength left in bending: ${isAtLeast ? 'at least ' : ''}${show(left)} against ${limitShown}${stays === false && isAtLeast ? ', so more may be left: probe all round' : ''}.`,
    )
    remark(
      'The limit is what line companies keep for their poles, borrowed as a rule of the trade; no code sets one for fences. What is left is taken as sound right up to the rot: wood beside rot is already weaker, so take it as the best it can be. A gate post, a corner post and a tall or solid fence need more.',
    )
    remark(
      'Probe below the ground line too, a hand deep: rot is worst there. Brace the fence before you dig a rotten post free.',
    )
  },
  sources: [
    {
      fact: 'section modulus width × height²/6 and second moment width × height³/12 of what is left, against the whole',
      from: 'Derived here from the sketch; needs no table.',
    },
    {
      fact: 'two thirds of the strength, below which a pole is mended or replaced',
      from: 'line companies’ practice after the National Electrical Safety Code, from memory; a trade rule for a fence, no source',
    },
  ],
  cautions: ['structure', 'open-hole', 'lifting'],
  drawing: rotDrawing,
  examples: [
    // 3.5 − 0.75 = 2.75; (2.75/3.5)² = 0.617347; cubed 0.485058
    {
      ask: 'The screwdriver goes in 3/4 in on one face of a 3 1/2 in post. How much strength is left?',
      given: { postWidth: '3 1/2 in', rotWhere: 'one', rotDepth: '3/4 in' },
      expect: {
        sectionLeft: '61.73 %',
        stiffnessLeft: '48.51 %',
        soundWidth: '2 3/4 in',
        postServes: 'too little left by this rule',
      },
    },
    // 90 − 2 × 12 = 66; (66/90)³ = 0.394370; fourth 0.289205
    {
      ask: 'Rot is 12 mm deep all round a 90 mm post: how much strength is left?',
      given: { postWidth: '90 mm', rotWhere: 'all', rotDepth: '12 mm' },
      expect: { sectionLeft: '39.44 %', stiffnessLeft: '28.92 %', soundWidth: '66 mm' },
    },
    // hollow 100 − 2 × 15 = 70: 1 − 0.7⁴ = 0.7599
    {
      ask: 'Round post 100 mm wide, rotten inside with 15 mm of sound wood. Can the post stay?',
      given: { postWidth: '100 mm', postSection: 'round', rotWhere: 'inside', soundShell: '15 mm' },
      expect: { postServes: 'it may stay by this rule; watch it', sectionLeft: '75.99 %' },
    },
  ],
})

const half = (q: Quantity): Quantity['amount'] => times(q.amount, exact('1/2'))
const twice = (q: Quantity): Quantity['amount'] => times(q.amount, exact(2))
const asPercent = (q: Quantity): Quantity => ({ kind: 'percent', amount: q.amount, unit: 'percent' })
