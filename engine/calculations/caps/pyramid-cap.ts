// A square cap with four sloping faces.
//
//      ╱╲       slope = atan(rise ÷ half the side); face = √(half² + rise²)
//    ╱    ╲
import { calculation } from '../../calculation.ts'
import { show } from '../../quantities/show.ts'
import { capFaces, capRise, capSize, capSlant, capSlope } from '../../words/caps.ts'

export const pyramidCap = calculation({
  name: 'pyramid-cap',
  title: 'A cap with four sloping faces',
  answers: 'The slope at which a pyramid cap is sawn, the length of its faces and their area.',
  needs: { capSize, capRise },
  gives: { capSlope, capSlant, capFaces },
  headlines: ['capSlope'],
  together: { capSlope: ['capSlope', 'capSlant', 'capFaces'], capSlant: ['capSlant', 'capSlope'] },
  called: ['pyramid'],
  lines: {
    capSlope: ['atan(capRise / (capSize / 2))', 'from the edge to the middle'],
    capSlant: ['sqrt((capSize / 2) ^ 2 + capRise ^ 2)', 'up the middle of one face'],
    capFaces: ['2 * capSize * capSlant', 'four triangles'],
  },
  work(_given, { line, remark }) {
    const slope = line('capSlope')
    line('capSlant')
    line('capFaces')
    remark(
      `Each face slopes ${show(slope)} from level. Saw the four faces on the end of a longer stick, clamped, and cut the cap off last: a blank this small is not safe to hold at a saw. Try the angle on an offcut.`,
    )
  },
  sources: [{ fact: 'slope = rise ÷ half the side', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['tools'],
  examples: [
    // atan(1/2.75) = 19.98°; √(7.5625 + 1) = 2.926; 2 × 5.5 × 2.926 = 32.19
    {
      ask: 'What angle for a pyramid cap 5 1/2 in square with a rise of 1 in?',
      given: { capSize: '5 1/2 in', capRise: '1 in' },
      expect: { capSlope: '19.98°', capSlant: '2.926 in', capFaces: '32.19 in²' },
    },
    // atan(30/70) = 23.20°
    {
      ask: 'Pyramid cap 140 mm square that rises 30 mm: slope of the pyramid?',
      given: { capSize: '140 mm', capRise: '30 mm' },
      expect: { capSlope: '23.2°' },
    },
  ],
})
