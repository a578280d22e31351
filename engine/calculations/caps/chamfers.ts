// A chamfered edge.
//
//    ╱▔▔▔▔▔      leg on the face, depth = leg × tan(angle) down the side, face = leg ÷ cos(angle)
//   │
import { calculation } from '../../calculation.ts'
import { chamferAngle, chamferDepth, chamferFace, chamferLeg } from '../../words/caps.ts'

export const chamfers = calculation({
  name: 'chamfers',
  title: 'A chamfered edge',
  answers: 'Where a chamfer is marked on both sides of an edge, and how wide its face comes out.',
  needs: { chamferLeg, chamferAngle },
  gives: { chamferFace, chamferDepth },
  headlines: ['chamferFace', 'chamferDepth'],
  together: { chamferFace: ['chamferFace', 'chamferDepth'], chamferDepth: ['chamferDepth', 'chamferFace'] },
  called: ['chamfer', 'chamfered'],
  lines: {
    chamferDepth: ['chamferLeg * tan(chamferAngle)', 'down the side'],
    chamferFace: ['chamferLeg / cos(chamferAngle)', 'the long side of the little triangle'],
  },
  work(_given, { line, remark }) {
    line('chamferDepth')
    line('chamferFace')
    remark(
      'Mark both lines with a gauge and plane or rout to them. An eased edge holds paint; a sharp one loses it first.',
    )
  },
  sources: [{ fact: 'face = leg ÷ cos(angle)', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['tools'],
  examples: [
    // 1/4 ÷ cos 45° = 0.35355
    {
      ask: 'How wide is the face of a chamfer of 1/4 in at 45 degrees?',
      given: { chamferLeg: '1/4 in', chamferAngle: '45 deg' },
      expect: { chamferFace: '0.3536 in', chamferDepth: '0.25 in' },
    },
    // 6 ÷ cos 30° = 6.928; 6 × tan 30° = 3.464
    {
      ask: 'Chamfer 6 mm from the edge, chamfer angle 30 degrees: how deep is the chamfer?',
      given: { chamferLeg: '6 mm', chamferAngle: '30 deg' },
      expect: { chamferFace: '6.928 mm', chamferDepth: '3.464 mm' },
    },
  ],
})
