// Taking out an old fence: what its footings weigh, and whether anybody should lift them.
//
//        ┃ ┃        the post, or its stump
//   ─────┨ ┠─────
//      │▒┃ ┃▒│      a round footing: π/4 × width² × depth, less the post's room when the post is out of it
//      │▒┃ ┃▒│
//      └─────┘
import { calculation } from '../../calculation.ts'
import { oldFootingDrawing } from '../../drawings/old-footing.ts'
import { compare, exact, times } from '../../quantities/amount.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { loadWeight } from '../../words/hauling.ts'
import {
  footingDepth,
  footingPieces,
  footingSet,
  footingsVolume,
  footingsWeight,
  footingWeight,
  footingWidth,
  hardDensity,
  liftedByOne,
  oldPosts,
  oldPostWidth,
  oneLift,
} from '../../words/old-fence.ts'

const ofAll = ['footingsWeight', 'footingsVolume', 'loadWeight']

export const oldFenceOut = calculation({
  name: 'old-fence-out',
  title: 'Taking out an old fence',
  answers: 'What the footings of an old fence weigh, one and all, and whether one or two people should lift one.',
  needs: { oldPosts, footingSet, footingWidth, footingDepth, oldPostWidth, hardDensity, oneLift },
  may: ['footingSet', 'footingWidth', 'footingDepth', 'oldPostWidth'],
  onlyFor: { oldPosts: ofAll },
  oneOf: [
    ['footingWidth', 'footingSet'],
    ['footingDepth', 'footingSet'],
  ],
  gives: { footingWeight, liftedByOne, footingPieces, footingsWeight, footingsVolume, loadWeight },
  headlines: ['footingWeight', 'footingsWeight'],
  together: {
    footingWeight: ['footingWeight', 'liftedByOne', 'footingPieces'],
    footingsWeight: ['footingsWeight', 'footingsVolume', 'footingWeight', 'liftedByOne'],
    liftedByOne: ['liftedByOne', 'footingWeight', 'footingPieces'],
    footingPieces: ['footingPieces', 'footingWeight'],
  },
  called: ['old fence', 'take out the old', 'taking out the old', 'old footing', 'old footings', 'old posts'],
  joins: true,
  lines: {
    solidFooting: ['pi * footingWidth ^ 2 / 4 * footingDepth', 'a round footing, solid to its middle'],
    postRoom: ['oldPostWidth ^ 2 * footingDepth', 'where the post stood, all the way down'],
    hollowFooting: ['solidFooting - postRoom', 'the concrete round it'],
    footingWeight: ['oneFooting * hardDensity', 'one footing, without the soil that clings to it'],
    footingPieces: ['ceil(footingWeight / oneLift)', 'small enough for one person each'],
    footingsVolume: ['oldPosts * oneFooting', 'all of them, whole'],
    footingsWeight: ['oldPosts * footingWeight', 'all of them'],
    loadWeight: ['footingsWeight', 'hauled off; posts, rails and boards come on top'],
  },
  locals: { oneFooting: 'volume' },
  work(given, { line, put, tell, need, has, refuse, remark, cite }) {
    if (given.footingSet === 'soil') {
      if (has('footingWidth'))
        refuse(
          'footingWidth',
          `You say there is no concrete, and a footing ${show(given.footingWidth)} wide. Which is it?`,
        )
      put('footingWeight', quantity(0, 'lb'))
      put('footingPieces', quantity(0, 'piece'))
      if (has('oldPosts')) {
        put('footingsVolume', quantity(0, 'ft3'))
        put('footingsWeight', quantity(0, 'lb'))
      }
      remark('No concrete to lift. Rock the post, dig down one side of it, and lever it up: chain, block and bar.')
    } else {
      if (!has('footingWidth')) need('footingWidth')
      if (!has('footingDepth')) need('footingDepth')
      const solid = line('solidFooting')
      if (has('oldPostWidth')) {
        refuseWidePost(given.oldPostWidth, given.footingWidth, refuse)
        line('postRoom')
        put('oneFooting', line('hollowFooting'))
      } else put('oneFooting', solid)
      const weight = line('footingWeight')
      const pieces = line('footingPieces')
      if (has('oldPosts')) for (const name of ['footingsVolume', 'footingsWeight', 'loadWeight']) line(name)
      remark(
        has('oldPostWidth')
          ? `The room of the ${show(given.oldPostWidth)} post is taken out, as if nothing of the post were left in it.`
          : 'The post’s room is not taken out: the footing is reckoned solid, which is the heavier way.',
      )
      tell('liftedByOne', less(given.oneLift, weight) ? false : null)
      remark(liftOf(weight, pieces, given.oneLift, cite))
    }
    remark(
      'Whose fence is it? Find out before a board comes off: on the line it may be the neighbour’s, or both of yours. Ask first, and get the yes in writing.',
    )
    remark(
      'Old does not mean clear of lines: cables and pipes are laid beside old footings, and roots grow round both. Have the lines located, dig by hand near marks, and cut roots there by hand. Ask before you cut the roots of a neighbour’s tree or a street tree.',
    )
    remark(
      'Pull the nails as each board comes off, or bend them over. Take the wood for treated unless you know better: never burn posts or offcuts, never shred them for mulch, and ask the tip what it takes. Cover every hole until it is filled.',
    )
  },
  sources: [
    { fact: 'volume of a round footing = π/4 × width² × depth', from: 'Derived here from the sketch; needs no table.' },
    {
      fact: '51 lb (23 kg) is the most the lifting equation allows under the best conditions',
      from: 'NIOSH revised lifting equation, load constant.',
    },
    {
      fact: 'old concrete weighs 145 to 150 lb/ft³',
      from: 'common practice, no source',
    },
    { fact: 'treated wood is never burned and never mulched', from: 'https://twwdisposal.org/tww-basics/handling/' },
    { fact: 'levering, breaking up, roots and nails', from: 'common practice, no source' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'lifting', 'preserved-wood', 'lead', 'open-hole', 'dust', 'tools'],
  drawing: oldFootingDrawing,
  examples: [
    // π/4 × 10² × 24 = 1885.0 in³ = 1.0908 ft³; × 150 = 163.6 lb; /51 = 3.2 → 4 pieces; × 9 = 1,473 lb, 9.817 ft³
    {
      ask: 'Taking out an old fence: 9 old posts, footings 10 in wide and 24 in deep. How much do the footings weigh?',
      given: { oldPosts: '9', footingWidth: '10 in', footingDepth: '24 in' },
      expect: {
        footingWeight: '163.6 lb',
        liftedByOne: 'too heavy for one person',
        footingsWeight: '1,473 lb',
        footingsVolume: '9.817 ft³',
      },
    },
    // (π/4 × 300² − 100²) × 600 = 36.41 L; × 2400 kg/m³ = 87.39 kg; /23 = 3.8 → 4 pieces
    {
      ask: 'What does a footing weigh that is 300 mm across and 600 mm deep, the old post 100 mm wide?',
      given: { footingWidth: '300 mm', footingDepth: '600 mm', oldPostWidth: '100 mm' },
      expect: { footingWeight: '87.39 kg', footingPieces: '4 pieces' },
    },
  ],
})

/** A square post whose corners reach out of the round footing cannot have stood in it. */
function refuseWidePost(post: Quantity, footing: Quantity, refuse: (word: string, message: string) => never): void {
  const diagonalSquared = times(exact(2), times(post.amount, post.amount))
  if (compare(diagonalSquared, times(footing.amount, footing.amount)) !== -1)
    refuse(
      'oldPostWidth',
      `A ${show(post)} post does not stand in a footing ${show(footing)} wide, corner to corner. Check both measurements.`,
    )
}

/** Who should lift it: by its weight against one person's lift, and against two people's. */
function liftOf(
  weight: Quantity,
  pieces: Quantity,
  oneLift: Quantity,
  cite: (q: Quantity, label: string) => string,
): string {
  const two: Quantity = { ...oneLift, amount: times(oneLift.amount, exact(2)) }
  if (!less(oneLift, weight))
    return `The weight decides: ${show(weight)} is within the ${show(oneLift)} of one person at best: close to the body, at waist height. Down in a hole it is not at best, and soil clings to it. Lever it up first, then lift it with a second person.`
  if (!less(two, weight))
    return `The weight decides: ${show(weight)} is more than one person should lift, and two at best: ${show(oneLift)} each, ${cite(two, 'two people’s lift')} together. Dig it free on one side and lever it up a plank, or break it up.`
  return `The weight decides: ${show(weight)} is more than two people should lift: ${show(oneLift)} each, ${cite(two, 'two people’s lift')} together. Nobody lifts it. Dig it free on one side and lever or roll it up a plank, or break it up where it lies, into ${show(pieces)} or more.`
}
