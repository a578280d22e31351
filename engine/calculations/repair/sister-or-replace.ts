// Sister a rotten post or replace it, and how long a sister is.
//
//        ┃┃                 the sister stands in the ground beside the old one, runs past the rot,
//        ┃┃ ║  lap          and laps on sound wood, bolted through
//        ░░ ║  rot
//   ═════░░═║═══════        length = in the ground + rot above it + lap
//           ║
import { calculation } from '../../calculation.ts'
import { sisterDrawing } from '../../drawings/sister.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { depthByRule, postAbove } from '../../words/posts.ts'
import { rotHeight, sectionLeft, sisterLap, sisterLength, sisterServes } from '../../words/rot.ts'

export const sisterOrReplace = calculation({
  name: 'sister-or-replace',
  title: 'Sister a rotten post, or replace it',
  answers:
    'Whether there is sound wood enough above the rot to bolt a sister post to, and how long the sister is, by the trade’s rules.',
  needs: { postAbove, rotHeight, sisterLap, sectionLeft },
  may: ['rotHeight', 'sectionLeft'],
  gives: { sisterServes, sisterLength, depthByRule },
  headlines: ['sisterServes', 'sisterLength'],
  together: {
    sisterServes: ['sisterServes', 'sisterLength', 'depthByRule'],
    sisterLength: ['sisterLength', 'depthByRule', 'sisterServes'],
  },
  called: ['sister', 'sister or replace', 'sister the post', 'sister post'],
  lines: {
    depthByRule: ['postAbove / 2', 'the sister stands in the ground as deep as a new post would by the trade’s rule'],
    soundAbove: ['postAbove - rotHeight', 'sound wood from the rot up to the top'],
    sisterLength: ['depthByRule + rotHeight + sisterLap', 'in the ground, past the rot, and along sound wood'],
  },
  work(given, { line, has, tell, refuse, remark, doubt, rows }) {
    line('depthByRule')
    if (!has('rotHeight')) {
      tell('sisterServes', null)
      doubt(
        'missing',
        'rotHeight',
        'A sister is bolted to sound wood, so it hangs on how far up the rot goes.',
        rotHeight.ask,
      )
      return
    }
    if (less(given.postAbove, given.rotHeight))
      refuse(
        'rotHeight',
        `Rot up to ${show(given.rotHeight)} is over the top of a post ${show(given.postAbove)} above ground. Check both.`,
      )
    const sound = line('soundAbove')
    const length = line('sisterLength')
    const short = less(sound, given.sisterLap)
    tell('sisterServes', !short)
    remark(
      short
        ? `Decided by the sound wood above the rot: ${show(sound)} is less than the lap of ${show(given.sisterLap)}. Replace the post.`
        : `Decided by the sound wood above the rot: ${show(sound)} takes the lap of ${show(given.sisterLap)}.`,
    )
    if (has('sectionLeft')) {
      const left = rows('sectionLeft')[0] as Quantity
      remark(
        `The rot leaves ${show(left)} of the post’s strength in bending. The sister takes over all of the push from the wind; the old post only holds the rails up.`,
      )
    }
    if (!short)
      remark(
        `Buy ${show(length)} of wood that is treated for the ground, at least as thick as the old post, or two thinner pieces, one at each side. Two bolts through both, well apart, washers under head and nut; keep the cut end out of the ground. A gate post or corner post is replaced, not sistered.`,
      )
    remark(
      'Brace the fence on both sides before you cut or dig. Do not pour concrete round a rotten post: it holds the wet against it. Dig as for a new post: marks, frost and the rest hold for it too.',
    )
  },
  sources: [
    {
      fact: 'a sister laps sound wood by about 2 ft with two bolts, and stands as deep as a post',
      from: 'trade rule, no source',
    },
    {
      fact: 'a third of the whole post in the ground, which is half of the height above it',
      from: 'trade rule, no source',
    },
    { fact: 'length = in the ground + rot + lap', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['utilities', 'structure', 'open-hole', 'preserved-wood', 'tools', 'lifting'],
  drawing: sisterDrawing,
  examples: [
    // 48 − 6 = 42 ≥ 24; 24 + 6 + 24 = 54
    {
      ask: 'Sister or replace? The rot goes 6 in up the post and the fence is 4 ft high.',
      given: { rotHeight: '6 in', postAbove: '4 ft' },
      expect: { sisterServes: 'a sister will do by this trade rule', sisterLength: '54 in', depthByRule: '24 in' },
    },
    // 1200 − 700 = 500 < 600
    {
      ask: 'Can I sister the post? Rot up to 700 mm above the ground, post 1200 mm above ground.',
      given: { rotHeight: '700 mm', postAbove: '1200 mm' },
      expect: { sisterServes: 'replace the post' },
    },
  ],
})
