// The faces that take finish, member by member.
//
//   picket  ▯   two faces, two edges, two ends           2 (w l + t l + w t)
//   rail    ▭   four sides, the ends left out             2 (depth + thickness) × length
//   post    ▮   four sides above the ground, and the top  4 width × height + width²
//   where a picket lies on a rail two faces are covered   2 × picket width × rail depth: coat them before
import { calculation } from '../../calculation.ts'
import { add } from '../../quantities/amount.ts'
import { less, type Quantity, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { capSize } from '../../words/caps.ts'
import {
  capsArea,
  capThickness,
  finishArea,
  gateFrame,
  gatesArea,
  hiddenArea,
  picketsArea,
  postsArea,
  railsArea,
  sidesCoated,
} from '../../words/finish-area.ts'
import { railLengthAll } from '../../words/fence.ts'
import { railCut, railsInAll } from '../../words/framing.ts'
import { gatePickets, picketsHung } from '../../words/picket-count.ts'
import { picketLength, picketThickness, picketWidth } from '../../words/pickets.ts'
import { postAbove, posts, postWidth } from '../../words/posts.ts'
import { railDepth, rails, railThickness } from '../../words/rails.ts'

export const finishAreaOf = calculation({
  name: 'finish-area',
  title: 'The area to finish',
  answers:
    'The area of pickets, rails, posts, gates and caps that takes finish, on both sides or one, with the faces that are covered once it is together.',
  needs: {
    picketsHung,
    picketWidth,
    picketThickness,
    picketLength,
    railsInAll,
    railCut,
    railLengthAll,
    railDepth,
    railThickness,
    rails,
    posts,
    postWidth,
    postAbove,
    gatePickets,
    gateFrame,
    capSize,
    capThickness,
    sidesCoated,
  },
  may: [
    'picketsHung',
    'picketWidth',
    'picketLength',
    'railsInAll',
    'railCut',
    'railLengthAll',
    'posts',
    'postAbove',
    'gateFrame',
    'capSize',
  ],
  oneOf: [['picketsHung', 'railsInAll', 'posts', 'gateFrame']],
  gives: { finishArea, hiddenArea, picketsArea, railsArea, postsArea, gatesArea, capsArea },
  headlines: ['finishArea', 'hiddenArea'],
  joins: true,
  together: {
    finishArea: ['finishArea', 'hiddenArea', 'picketsArea', 'railsArea', 'postsArea', 'gatesArea', 'capsArea'],
    hiddenArea: ['hiddenArea', 'finishArea'],
  },
  locals: {
    railsCounted: 'number',
    ofPickets: 'area',
    ofRails: 'area',
    ofPosts: 'area',
    ofGates: 'area',
    ofCaps: 'area',
  },
  lines: {
    picketFace: ['picketWidth * picketLength', 'one face of a picket'],
    picketEdges: ['2 * picketThickness * picketLength', 'both its edges'],
    picketEnds: ['2 * picketWidth * picketThickness', 'both its ends, which drink the most'],
    picketAll: ['2 * picketFace + picketEdges + picketEnds', 'a picket, all round'],
    picketFront: ['picketFace + picketEdges', 'one side of a picket: its face and its edges'],
    picketsArea: ['(picketsHung - gatePickets) * picketAll', 'all pickets but those on gates'],
    picketsFront: ['(picketsHung - gatePickets) * picketFront', 'all pickets but those on gates, from one side'],
    railGirth: ['2 * (railDepth + railThickness)', 'once round a rail'],
    railsArea: ['railsCounted * railGirth * railCut', 'all rails, without their ends'],
    railsOfFence: ['railLengthAll * railGirth', 'all rails at their own lengths, without their ends'],
    railsOfFenceFront: ['railLengthAll * railDepth', 'all rails at their own lengths, from one side'],
    railsFront: ['railsCounted * railDepth * railCut', 'all rails, from one side'],
    postsArea: [
      'sum(posts * (4 * postWidth * postAbove + postWidth ^ 2))',
      'all posts: four sides above the ground, and the top',
    ],
    postsFront: ['sum(posts * postWidth * postAbove)', 'all posts, from one side'],
    gateFrames: ['railGirth * gateFrame', 'the frames of the gates all round, of sticks like the rails'],
    gateFramesFront: ['railDepth * gateFrame', 'the frames of the gates, from one side'],
    onGates: ['gatePickets * picketAll', 'the pickets on the gates'],
    onGatesFront: ['gatePickets * picketFront', 'the pickets on the gates, from one side'],
    capsArea: [
      'sum(posts) * (2 * capSize ^ 2 + 4 * capSize * capThickness)',
      'a cap on every post: top, underside and edges',
    ],
    capsFront: ['sum(posts) * capSize * capThickness', 'one edge of each cap'],
    finishArea: ['ofPickets + ofRails + ofPosts + ofGates + ofCaps', 'all members together'],
    hiddenAtRails: [
      '2 * picketsHung * rails * picketWidth * railDepth',
      'where each picket crosses a rail, the faces of both',
    ],
    hiddenUnderCaps: ['2 * sum(posts * postWidth ^ 2)', 'under each cap its seat, and the top of the post'],
    hiddenArea: ['hiddenAtRails + hiddenUnderCaps', 'what no brush reaches once it is together'],
  },
  work(given, { line, has, assumed, need, put, tell, remark, refuse, table, system }) {
    const one = given.sidesCoated === 'one'
    const unit = system === 'metric' ? 'm2' : 'ft2'
    const none = zero('area', unit)
    const inUnit = (q: Quantity): Quantity => ({ ...q, kind: 'area', unit })
    const needs = (...names: ('picketWidth' | 'picketLength' | 'railCut' | 'postAbove' | 'posts')[]): void => {
      for (const name of names) if (!has(name)) need(name)
    }
    const [pickets, onPosts, frames, caps] = (['picketsHung', 'posts', 'gateFrame', 'capSize'] as const).map(has)
    // Rails of one bay, told without a number in all, are those of the bay that is spoken of.
    const ofOneBay = !has('railsInAll') && !has('railLengthAll') && !assumed('rails')
    const atTheirLengths = has('railLengthAll')
    const onRails = has('railsInAll') || ofOneBay || atTheirLengths
    const withGatePickets = pickets && less(quantity(0, 'picket'), given.gatePickets)
    for (const name of ['ofPickets', 'ofRails', 'ofPosts', 'ofGates', 'ofCaps', 'hiddenAtRails', 'hiddenUnderCaps'])
      put(name, none)
    const rows: [string, string][] = []
    const part = (name: 'picketsArea' | 'railsArea' | 'postsArea' | 'gatesArea' | 'capsArea', area: Quantity): void => {
      const shown = tell(name, inUnit(area))
      const label = name.replace('Area', '')
      put(`of${label[0]?.toUpperCase()}${label.slice(1)}`, shown)
      rows.push([label, show(shown)])
    }
    if (pickets) {
      needs('picketWidth', 'picketLength')
      if (less(given.picketsHung, given.gatePickets))
        refuse(
          'gatePickets',
          `${show(given.gatePickets)} on gates are more than the ${show(given.picketsHung)} in all. Count those on gates among all of them.`,
        )
      for (const name of one
        ? ['picketFace', 'picketEdges', 'picketFront']
        : ['picketFace', 'picketEdges', 'picketEnds', 'picketAll'])
        line(name)
      part('picketsArea', line(one ? 'picketsFront' : 'picketsArea'))
    }
    if (onRails || frames) line('railGirth')
    if (atTheirLengths) part('railsArea', line(one ? 'railsOfFenceFront' : 'railsOfFence'))
    else if (onRails) {
      needs('railCut')
      put('railsCounted', { ...(ofOneBay ? given.rails : given.railsInAll), kind: 'number', unit: 'ratio' })
      if (ofOneBay)
        remark(
          `I took your ${show(given.rails)} as all there are. For a whole fence give the rails in all, and how many a bay has.`,
        )
      part('railsArea', line(one ? 'railsFront' : 'railsArea'))
    }
    if (onPosts) {
      needs('postAbove')
      part('postsArea', line(one ? 'postsFront' : 'postsArea'))
    }
    if (frames || withGatePickets) {
      const both = [
        frames ? line(one ? 'gateFramesFront' : 'gateFrames') : none,
        withGatePickets ? line(one ? 'onGatesFront' : 'onGates') : none,
      ] as const
      part('gatesArea', { ...none, amount: add(both[0].amount, both[1].amount) })
    }
    if (caps) {
      needs('posts')
      if (less(given.capSize, given.postWidth))
        refuse('capSize', `A ${show(given.capSize)} cap does not cover a ${show(given.postWidth)} post. Check both.`)
      part('capsArea', line(one ? 'capsFront' : 'capsArea'))
    }
    const total = tell('finishArea', inUnit(line('finishArea')))
    rows.push(['together', show(total)])
    table({
      title: 'Area by member',
      columns: [
        { label: 'member', unit: '' },
        { label: 'area', unit },
      ],
      rows,
    })
    remark(
      one
        ? 'That is one side: the face and edges of the pickets, and one face of rails, posts and caps. Wood finished on one side only cups, and its finish peels sooner: treat the other side too, at least with a repellent.'
        : 'That is every face, tops and the ends of the pickets too. End grain drinks several times as much as a face: give it all it takes.',
    )
    if (one || !((pickets && onRails) || (caps && onPosts))) return
    if (pickets && onRails) line('hiddenAtRails')
    if (caps && onPosts) line('hiddenUnderCaps')
    const hidden = tell('hiddenArea', inUnit(line('hiddenArea')))
    remark(
      `${show(hidden)} of it is covered once the fence is together, and no brush reaches it then: coat those faces before you hang them. Left bare they let water in behind the finish.`,
    )
  },
  sources: [
    { fact: 'areas of the members', from: 'Derived here from the sketch; needs no table.' },
    {
      fact: 'end grain and all faces are to be sealed',
      from: 'Wood Handbook, FPL-GTR-190 (2010), chapter 16, https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/379',
    },
  ],
  cautions: ['lead'],
  examples: [
    // 15 × 2 (3.5 × 42 + 0.75 × 42 + 3.5 × 0.75) = 5433.75; 2 × 10 × 94.5 = 1890; 4 × 3.5 × 48 + 12.25 = 684.25; 8008 in² = 55 11/18 ft²
    // hidden: 2 × 15 × 2 × 3.5 × 3.5 = 735 in²
    {
      ask: 'Area to paint: 15 pickets 3 1/2 in wide, 3/4 in thick and 42 in long, 2 rails 94 1/2 in long, 1 post 48 in above ground?',
      given: {
        picketsHung: '15',
        picketWidth: '3 1/2 in',
        picketThickness: '3/4 in',
        picketLength: '42 in',
        rails: '2',
        railCut: '94 1/2 in',
        posts: '1',
        postAbove: '48 in',
      },
      expect: { finishArea: '55.61 ft²', hiddenArea: '5.104 ft²' },
    },
    // 60 × 2 (90 × 1100 + 19 × 1100 + 90 × 19) = 14.593 m²
    {
      ask: 'What surface area have 60 pickets 90 mm wide, 19 mm thick and 1100 mm long?',
      given: { picketsHung: '60', picketWidth: '90 mm', picketThickness: '19 mm', picketLength: '1100 mm' },
      expect: { finishArea: '14.5932 m²' },
    },
  ],
})
