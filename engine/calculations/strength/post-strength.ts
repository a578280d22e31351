// Whether the wood of a post stands a sideways push: bent at the ground, and shorn.
//
//   P ──►┃         bending at the ground: M = P × h,  stress = M ÷ (width³/6)
//        ┃ h       shear: 1.5 × P ÷ (width × width)
//   ═════╋═════    each against what the wood may bear, with its factors
import { calculation } from '../../calculation.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { compare } from '../../quantities/amount.ts'
import { show } from '../../quantities/show.ts'
import { lumberLocals, lumberSources, putLumber } from '../../lumber.ts'
import { lumberValues } from '../../tables/lumber-values.ts'
import { postWidth } from '../../words/posts.ts'
import { sectionLeft } from '../../words/rot.ts'
import { forceHeight, sideForce } from '../../words/wind.ts'
import {
  bendingAllowed,
  bendingValue,
  incised,
  lumberGroup,
  postHolds,
  postShear,
  postStress,
  postUsed,
  sectionModulus,
} from '../../words/wood-strength.ts'

export const postStrength = calculation({
  name: 'post-strength',
  title: 'A post against bending and shear',
  answers:
    'How hard a sideways force bends and shears a square post at the ground, against what its wood may bear, rot taken off if there is some. A check, not a design.',
  needs: { sideForce, forceHeight, postWidth, lumberGroup, incised, bendingValue, sectionLeft },
  may: ['lumberGroup', 'incised', 'bendingValue', 'sectionLeft'],
  gives: { postHolds, postStress, bendingAllowed, postUsed, postShear, sectionModulus },
  headlines: ['postHolds', 'postUsed'],
  together: {
    postHolds: ['postHolds', 'postUsed', 'postStress', 'bendingAllowed', 'postShear'],
    postUsed: ['postUsed', 'postHolds', 'postStress', 'bendingAllowed'],
    postStress: ['postStress', 'bendingAllowed', 'postUsed', 'postHolds'],
    postShear: ['postShear', 'postHolds'],
  },
  locals: lumberLocals,
  lines: {
    bendingAtGround: ['sideForce * forceHeight', 'the push at the end of its arm'],
    sectionModulus: ['postWidth ^ 3 / 6', 'how well a square post resists bending'],
    postStress: ['bendingAtGround / sectionModulus', 'in the outermost wood, at the ground'],
    rottedStress: [
      'bendingAtGround / (sectionModulus * sectionLeft)',
      'in the outermost wood that the rot has left, at the ground',
    ],
    bendingAllowed: ['designBending * 1.6 * sizeFactor * wetFactor * slitFactor', 'the design value in a gust, wet'],
    shearAllowed: ['designShear * 1.6 * 0.97 * slitFactor', 'the same for shear'],
    postShear: [
      '1.5 * sideForce / postWidth ^ 2',
      'the middle of a square stick is shorn half as much again as on average',
    ],
    bendingShare: ['postStress / bendingAllowed', 'of what bending may use'],
    shearShare: ['postShear / shearAllowed', 'of what shear may use'],
    postUsed: ['bendingShare', 'bending governs'],
    postUsedInShear: ['shearShare', 'shear governs'],
  },
  work(given, { line, has, put, tell, rows, remark, doubt, cite, system }) {
    line('bendingAtGround')
    line('sectionModulus')
    if (has('sectionLeft') && given.sectionLeft.amount.valueOf() !== 0) {
      tell('postStress', line('rottedStress'))
      remark(`The rot leaves ${show(given.sectionLeft)} of the section modulus: that much stands against the push.`)
    } else line('postStress')
    const stress = rows('postStress')[0] as Quantity
    line('postShear')
    if (has('sectionLeft') && given.sectionLeft.amount.valueOf() === 0) {
      tell('postHolds', false)
      remark('Decided by the rot: nothing is left of the section.')
      return
    }
    if (has('bendingValue')) {
      tell('bendingAllowed', { ...given.bendingValue })
      line('bendingShare')
      tell('postUsed', line('postUsed'))
      judge('bending at the ground', stress, given.bendingValue)
      remark('The allowed stress is the one you gave, taken with all its factors in. Shear is not judged by it.')
    } else if (!has('lumberGroup')) {
      tell('postHolds', null)
      doubt(
        'missing',
        'lumberGroup',
        `The post is bent with ${show(stress)}. Whether its wood stands that depends on its grade.`,
        lumberGroup.ask,
      )
    } else if (
      !putLumber(given.lumberGroup, has('incised') ? given.incised : 'no', [given.postWidth], { put, system })
    ) {
      tell('postHolds', null)
      remark(
        `Decided by the size: the values I have hold up to ${lumberValues.widest}, and a post ${show(given.postWidth)} wide is graded by others. Give me the allowed bending stress of your post, with all factors in.`,
      )
    } else {
      const allowed = line('bendingAllowed')
      const shearAllowed = line('shearAllowed')
      const bending = line('bendingShare')
      const shear = line('shearShare')
      if (less(bending, shear)) {
        tell('postUsed', { ...line('postUsedInShear'), kind: 'percent', unit: 'percent' })
        judge('shear', rows('postShear')[0] as Quantity, shearAllowed)
      } else {
        tell('postUsed', line('postUsed'))
        judge('bending at the ground', stress, allowed)
        remark(
          `Shear is no matter: ${show(rows('postShear')[0] as Quantity)} against ${cite(shearAllowed, 'allowed shear stress')}.`,
        )
      }
      remark(
        `That is ${lumberGroup.options?.[given.lumberGroup]?.label}, stamped, wet from rain, for the short time of a gust. Unstamped wood and posts with large knots at the ground bear less.`,
      )
    }
    remark(
      'It is bent hardest at the ground, or a little below it where there is no concrete. The check is of sound wood; its depth in the ground, the rails and the screws are not in it. A check, not a design: where it matters, an engineer.',
    )

    /** The worse of the two decides. */
    function judge(what: string, stress: Quantity, allowed: Quantity): void {
      const order = compare(stress.amount, allowed.amount)
      tell('postHolds', order === null ? null : order <= 0)
      remark(`Decided by ${what}: ${show(stress)} against ${show(allowed)} allowed.`)
    }
  },
  sources: [
    {
      fact: 'stress = force × height ÷ (width³/6); shear = 1.5 × force ÷ area',
      from: 'Statics of a square post held at the ground; the forms are those of Wood Handbook, FPL-GTR-190, chapter 9',
    },
    ...lumberSources,
  ],
  cautions: ['structure', 'local-code'],
  examples: [
    // 187.4 × 24 = 4497.6 lbf-in; 3.5³/6 = 7.14583; 629.4 psi; 700 × 1.6 × 1.5 × 1 = 1680; 37.46 %; shear 1.5 × 187.4/12.25 = 22.95
    {
      ask: 'Is the post strong enough for a force of 187.4 lb acting at 2 ft, 3 1/2 in post, western cedar?',
      given: { sideForce: '187.4 lb', forceHeight: '2 ft', postWidth: '3 1/2 in', lumberGroup: 'western-cedars' },
      expect: {
        postHolds: 'nothing checked here fails in the post',
        postStress: '629.4 psi',
        bendingAllowed: '1,680 psi',
        postUsed: '37.46 %',
        postShear: '22.95 psi',
      },
    },
    // 2322 N × 1.0058 m = 2335.5 N-m; 0.0889³/6 = 1.17099e-4 m³ → 19.94 MPa; allowed 14 MPa
    {
      ask: 'Will the post break under a force of 2322 N acting at 1005.8 mm? Post 88.9 mm wide, allowed bending stress 14 MPa.',
      given: { sideForce: '2322 N', forceHeight: '1005.8 mm', postWidth: '88.9 mm', bendingValue: '14 MPa' },
      expect: { postHolds: 'the post fails this check', postStress: '19.94 MPa' },
    },
  ],
})
