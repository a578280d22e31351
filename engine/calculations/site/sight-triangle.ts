// The corner that drivers must see across.
//
//   street
//   ────────────●━━━━━━━ leg ━━━━━┐          no fence, hedge or wall above the rule's height inside the triangle
//               ┃              ╱              a place (u, v) lies inside when u/leg + v/leg′ < 1
//               ┃ leg′      ╱
//               ┃   ┌────╱───── fence    a fence along each street, back from both, begins inside at its corner
//               ┗━━━│╱                   and leaves the triangle where it crosses the long side
import { calculation } from '../../calculation.ts'
import { sightDrawing } from '../../drawings/sight.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { equal, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { fenceHeight } from '../../words/boundary.ts'
import {
  fenceAlong,
  fenceInside,
  leavesFirst,
  leavesSecond,
  outsideSight,
  sightArea,
  sightHeight,
  sightLegs,
  sightSide,
} from '../../words/street-corner.ts'

export const sightTriangle = calculation({
  name: 'sight-triangle',
  title: 'The sight triangle at a street corner',
  answers:
    'The size of the triangle that must stay clear at a street corner, whether a fence lies inside it, from where to where, and whether it is lower than the rule allows there.',
  needs: { sightLegs, fenceAlong, sightHeight, fenceHeight },
  may: ['fenceAlong', 'sightHeight', 'fenceHeight'],
  onlyFor: {
    fenceAlong: ['outsideSight', 'leavesFirst', 'leavesSecond', 'fenceInside'],
    sightHeight: ['outsideSight'],
    fenceHeight: ['outsideSight'],
  },
  gives: { sightArea, sightSide, outsideSight, leavesFirst, leavesSecond, fenceInside },
  headlines: ['outsideSight', 'sightArea'],
  together: {
    sightArea: ['sightArea', 'sightSide', 'outsideSight'],
    outsideSight: ['outsideSight', 'leavesFirst', 'leavesSecond', 'sightArea', 'sightSide'],
    leavesFirst: ['leavesFirst', 'leavesSecond', 'fenceInside', 'outsideSight'],
    fenceInside: ['fenceInside', 'leavesFirst', 'leavesSecond', 'outsideSight'],
  },
  locals: { first: 'length', second: 'length', along: 'length', back: 'length' },
  lines: {
    sightArea: ['first * second / 2', 'half of leg times leg'],
    sightSide: ['sqrt(first ^ 2 + second ^ 2)', 'straight across, from leg end to leg end'],
    share: ['along / first + back / second', 'less than one lies inside, one lies on the long side'],
    leavesFirst: ['first * (1 - back / second)', 'so far back from the first street, the triangle is only so long'],
    leavesSecond: ['second * (1 - along / first)', 'and so far back from the second, only so long along that one'],
    fenceInside: ['leavesFirst - along + leavesSecond - back', 'from the corner of the fence out along both streets'],
  },
  work(given, { line, has, rows, put, tell, refuse, remark, doubt }) {
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
    // One figure says nothing of how far the fence is along the other street, and a guess could let it pass.
    if (has('fenceAlong') && rows('fenceAlong').length === 1) {
      tell('outsideSight', null)
      doubt('missing', 'fenceAlong', 'A place at the corner is two distances, one along each street.', fenceAlong.ask)
    } else if (has('fenceAlong')) {
      const [along, back] = pair('fenceAlong')
      put('along', along)
      put('back', back)
      const share = line('share')
      const outside = compare(share.amount, exact(1)) !== -1
      const place = `a place ${show(along)} along one street and ${show(back)} along the other`
      if (outside) {
        tell('outsideSight', true)
        remark(`Decided by: ${place}, which is on or beyond the long side.`)
      } else {
        const ends = [line('leavesFirst'), line('leavesSecond')].map(show)
        line('fenceInside')
        remark(
          `For a fence that runs along each street, so far back from both: it stands inside from its corner to ${ends[0]} along the first street and to ${ends[1]} along the second, counted from the street corner.`,
        )
        const moved =
          'Move it back, cut the corner off along the long side, or keep the fence under the height your rule allows there.'
        if (!has('sightHeight')) {
          tell('outsideSight', false)
          remark(`Decided by: ${place}, which is short of the long side. ${moved}`)
        } else if (!has('fenceHeight')) {
          tell('outsideSight', null)
          doubt('missing', 'fenceHeight', 'Inside the triangle it depends on how high the fence is.', fenceHeight.ask)
        } else {
          const [allowed, high] = [given.sightHeight, given.fenceHeight]
          tell('outsideSight', equal(high, allowed) ? null : less(high, allowed))
          remark(
            equal(high, allowed)
              ? `Decided by: the fence of ${show(high)} is just as high as the rule you gave. Some rules say lower than, some no higher than: ask.`
              : `Decided by: the fence of ${show(high)}, ${less(high, allowed) ? 'lower' : 'higher'} than the ${show(allowed)} that the rule you gave allows inside.${less(high, allowed) ? '' : ` ${moved}`}`,
          )
          remark(
            'Many rules count that height from the curb or the road, not from your ground, and count post tops and planting too: ask.',
          )
        }
      }
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
    // 8/25 + 10/25 < 1; 25 × (1 − 10/25) = 15; 25 × (1 − 8/25) = 17; 15 − 8 + 17 − 10 = 14; 30 < 36
    {
      ask: 'Sight triangle legs of 25 ft, fence corner 8 ft and 10 ft from the corner, no fence over 36 in allowed in the triangle, fence 30 in high: where does the fence leave the triangle, and is the fence inside the sight triangle?',
      given: { sightLegs: ['25 ft'], fenceAlong: ['8 ft', '10 ft'], sightHeight: '36 in', fenceHeight: '30 in' },
      expect: {
        leavesFirst: '15 ft',
        leavesSecond: '17 ft',
        fenceInside: '14 ft',
        outsideSight: 'nothing checked here fails',
      },
    },
    // 4/7 + 2/7 = 6/7 < 1; 7 × 5/7 = 5; 7 × 3/7 = 3
    {
      ask: 'Sight triangle legs of 7 m and 7 m, fence corner 4 m and 2 m from the corner: is my fence in the sight triangle?',
      given: { sightLegs: ['7 m', '7 m'], fenceAlong: ['4 m', '2 m'] },
      expect: {
        sightArea: '24.5 m²',
        leavesFirst: '5 m',
        leavesSecond: '3 m',
        outsideSight: 'fails: inside the sight triangle',
      },
    },
  ],
})
