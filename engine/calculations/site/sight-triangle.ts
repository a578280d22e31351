// The corner that drivers must see across.
//
//   street
//   ────────────●━━━━━━━ leg ━━━━━┐          no fence, hedge or wall above the rule's height inside the triangle
//               ┃              ╱              a place (u, v) lies inside when u/leg + v/leg′ < 1
//               ┃ leg′      ╱
//               ┃        ╱
//               ┗━━━━━╱
import { calculation } from '../../calculation.ts'
import { sightDrawing } from '../../drawings/sight.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { fenceAlong, outsideSight, sightArea, sightLegs, sightSide } from '../../words/street-corner.ts'

export const sightTriangle = calculation({
  name: 'sight-triangle',
  title: 'The sight triangle at a street corner',
  answers:
    'The size of the triangle that must stay clear at a street corner, and whether the nearest part of the fence lies inside it.',
  needs: { sightLegs, fenceAlong },
  may: ['fenceAlong'],
  onlyFor: { fenceAlong: ['outsideSight'] },
  gives: { sightArea, sightSide, outsideSight },
  headlines: ['outsideSight', 'sightArea'],
  together: {
    sightArea: ['sightArea', 'sightSide', 'outsideSight'],
    outsideSight: ['outsideSight', 'sightArea', 'sightSide'],
  },
  locals: { first: 'length', second: 'length', along: 'length', back: 'length' },
  lines: {
    sightArea: ['first * second / 2', 'half of leg times leg'],
    sightSide: ['sqrt(first ^ 2 + second ^ 2)', 'straight across, from leg end to leg end'],
    share: ['along / first + back / second', 'less than one lies inside, one lies on the long side'],
  },
  work(_given, { line, has, rows, put, tell, refuse, remark }) {
    const pair = (name: string): [Quantity, Quantity] => {
      const [one, two = one, more] = rows(name)
      if (!one || !two || more)
        return refuse(
          name,
          `There are two streets, and I have ${show(quantity(rows(name).length, 'length'))}. Give one for each, or one if both are alike.`,
        )
      return [one, two]
    }
    const [first, second] = pair('sightLegs')
    put('first', first)
    put('second', second)
    line('sightArea')
    line('sightSide')
    if (has('fenceAlong')) {
      const [along, back] = pair('fenceAlong')
      put('along', along)
      put('back', back)
      const share = line('share')
      const outside = compare(share.amount, exact(1)) !== -1
      tell('outsideSight', outside)
      remark(
        outside
          ? `Decided by: a place ${show(along)} along one street and ${show(back)} along the other, which is on or beyond the long side.`
          : `Decided by: a place ${show(along)} along one street and ${show(back)} along the other, which is short of the long side. Move it back, cut the corner off along the long side, or keep the fence under the height your rule allows there.`,
      )
    }
    remark(
      'This is for streets that meet at a right angle, measured from where your rule begins: the curb, the edge of the road or the lot line. Ask which.',
    )
  },
  sources: [
    { fact: 'area = leg × leg / 2 at a square corner', from: 'Plane geometry; needs no table.' },
    {
      fact: 'how long the legs are and how high a fence may be inside differ from place to place',
      from: 'common practice; only your own rule says it',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  drawing: sightDrawing,
  examples: [
    // 25² / 2 = 312.5; √1250 = 35.355
    {
      ask: 'How big is the sight triangle with legs of 25 ft?',
      given: { sightLegs: ['25 ft'] },
      expect: { sightArea: '312.5 ft²', sightSide: '35 ft 4 1/4 in' },
    },
    // 4/7 + 2/7 = 6/7 < 1
    {
      ask: 'Sight triangle legs of 7 m and 7 m, fence corner 4 m and 2 m from the corner: is my fence in the sight triangle?',
      given: { sightLegs: ['7 m', '7 m'], fenceAlong: ['4 m', '2 m'] },
      expect: { sightArea: '24.5 m²', outsideSight: 'fails: that place lies inside the sight triangle' },
    },
  ],
})
