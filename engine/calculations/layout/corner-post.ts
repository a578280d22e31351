// Rails that meet at a corner which is not square.
//
//        ╲        the angle inside the corner: A
//         ╲       miter: both rails cut over from square by (180 − A) / 2
//   ───────●      butt: one runs through, the other is cut over by 90 − A (or A − 90)
//
// The trap: the corner's angle is not the saw's. A 120° corner is mitred at 30°, not at 60° or 120°.
import { calculation } from '../../calculation.ts'
import { cornerPlan } from '../../drawings/corner-plan.ts'
import { less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { sawReach } from '../../words/lumber.ts'
import { buttCut, miterCut, miterFace } from '../../words/corners-and-curves.ts'
import { railThickness } from '../../words/rails.ts'
import { cornerAngle } from '../../words/survey.ts'

const sharpest = quantity(20, 'deg')

export const cornerPost = calculation({
  name: 'corner-post',
  title: 'Rails at a corner that is not square',
  answers: 'The saw setting for rails that meet at a corner of any angle, mitred or butted.',
  needs: { cornerAngle, railThickness, sawReach },
  gives: { miterCut, buttCut, miterFace },
  headlines: ['miterCut', 'buttCut'],
  together: { miterCut: ['miterCut', 'buttCut', 'miterFace'], buttCut: ['buttCut', 'miterCut'] },
  called: ['miter', 'mitre', 'corner not square', 'corner of'],
  lines: {
    miterCut: ['(180 - cornerAngle) / 2', 'what the two rails turn, shared between them'],
    buttCut: ['abs(90 - cornerAngle)', 'the one that stops is cut to lie along the one that runs through'],
    miterFace: ['railThickness / cos(miterCut)', 'across the thickness, along the cut'],
  },
  work({ cornerAngle, sawReach }, { line, refuse, remark }) {
    if (less(cornerAngle, sharpest))
      refuse(
        'cornerAngle',
        `A corner of ${show(cornerAngle)} is too sharp to frame: give it two posts, or blunt it with a short bay. If you gave the turn, take it from 180° to have the angle inside.`,
      )
    const miter = line('miterCut')
    const butt = line('buttCut')
    line('miterFace')
    const tooFar = less(sawReach, miter)
    remark(
      `${tooFar ? `The miter is ${show(miter)}` : `Set the saw to ${show(miter)}`}, counted from a square cut, for both rails. The corner itself has ${show(cornerAngle)} inside: that is not the saw’s figure. Cut two offcuts first and hold them to the post.`,
    )
    if (tooFar)
      remark(
        `The saw is taken to turn no further than ${show(sawReach)}. ${
          less(sawReach, butt)
            ? `The butting cut, ${show(butt)}, is out of its reach too: mark the cut on all four faces and saw it by hand, or give the corner two posts with a short bay between.`
            : `Instead let one rail run through and butt the other against it, cut at ${show(butt)}; or mark the miter on all four faces and saw it by hand.`
        }`,
      )
  },
  sources: [
    { fact: 'miter from square = (180° − corner) / 2', from: 'Derived here from the sketch; needs no table.' },
    { fact: 'many saws turn no further than 45°', from: 'common practice, no source' },
  ],
  cautions: ['tools'],
  drawing: cornerPlan,
  examples: [
    // (180 − 120)/2 = 30; |90 − 120| = 30; 1.5/cos 30 = 1.732
    {
      ask: 'The corner is 120 degrees. What miter do I cut the rails at?',
      given: { cornerAngle: '120 deg', railThickness: '1 1/2 in' },
      expect: { miterCut: '30°', buttCut: '30°', miterFace: '1.732 in' },
    },
    // (180 − 75)/2 = 52.5; 15
    {
      ask: 'What mitre for a corner of 75 degrees with 45 mm thick rails?',
      given: { cornerAngle: '75 deg', railThickness: '45 mm' },
      expect: { miterCut: '52.5°', buttCut: '15°' },
    },
  ],
})
