// The wind on one bay of an open picket fence, and what it comes to on one post.
//
//   ──►  │█│ │█│ │█│        the wind sees the pickets, and the rails where they show between them
//   ──►  ═█═══█═══█═        solid area = area × picket share + rails × their depth × what is open
//   ──►  │█│ │█│ │█│
import { calculation } from '../../calculation.ts'
import { windDrawing } from '../../drawings/wind.ts'
import { equal, less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { openShapeFactors } from '../../tables/wind-factors.ts'
import { published } from '../../tables/published.ts'
import { bayCentres } from '../../words/bays.ts'
import { footGap } from '../../words/framing.ts'
import { picketWidth, wantedGap } from '../../words/pickets.ts'
import { postAbove } from '../../words/posts.ts'
import { railDepth, rails } from '../../words/rails.ts'
import {
  exposure,
  forceHeight,
  seenShare,
  sideForce,
  strengthForce,
  tippingMoment,
  windPressure,
  windSpeed,
} from '../../words/wind.ts'
import { postLines, sayLevels, windLines, windLocals, windSources, workPressure, workWind } from '../../wind.ts'

const forces = ['windPressure', 'strengthForce', 'sideForce', 'forceHeight', 'tippingMoment']

export const windOpenFence = calculation({
  name: 'wind-open-fence',
  title: 'Wind on a bay of an open picket fence',
  answers:
    'The wind’s pressure on an open picket fence and the sideways force on one post, from the wind speed you were given, with the rails counted. A check, not a design.',
  needs: { windSpeed, exposure, postAbove, bayCentres, picketWidth, wantedGap, rails, railDepth, footGap },
  onlyFor: { windSpeed: forces, exposure: forces },
  usually: {
    footGap: {
      value: '0 in',
      metric: '0 mm',
      because: 'pickets down to the ground catch the most',
      from: 'Decided here: the safe side.',
    },
  },
  gives: { sideForce, windPressure, strengthForce, forceHeight, tippingMoment, seenShare },
  headlines: ['sideForce', 'windPressure'],
  together: {
    sideForce: ['sideForce', 'strengthForce', 'windPressure', 'forceHeight', 'tippingMoment', 'seenShare'],
    windPressure: ['windPressure', 'strengthForce', 'sideForce'],
    tippingMoment: ['tippingMoment', 'sideForce', 'forceHeight'],
  },
  joins: true,
  locals: { ...windLocals, shapeFactor: 'number' },
  lines: {
    ...windLines,
    picketShare: ['picketWidth / (picketWidth + wantedGap)', 'the pickets’ share of a picket and its gap'],
    bayArea: ['bayCentres * (postAbove - footGap)', 'the whole area that one post answers for'],
    solidArea: [
      'bayArea * picketShare + rails * railDepth * bayCentres * (1 - picketShare)',
      'the pickets, and the rails where they show between them',
    ],
    seenShare: ['solidArea / bayArea', 'what the wind sees, of the whole'],
    strengthForce: ['windPressure * solidArea', 'the pressure on the wood of one bay'],
    forceHeight: ['(postAbove + footGap) / 2', 'in the middle of the pickets'],
    ...postLines,
  },
  work({ exposure, postAbove, footGap, rails, railDepth, picketWidth, wantedGap }, tools) {
    const { line, has, put, refuse, remark, cite, system } = tools
    if (!less(footGap, postAbove))
      refuse(
        'footGap',
        `Pickets that end ${show(footGap)} above the ground do not fit under ${show(postAbove)}. Check both.`,
      )
    line('picketShare')
    const area = system === 'metric' ? 'm2' : 'ft2'
    line('bayArea', area)
    line('solidArea', area)
    const share = line('seenShare')
    if (less(quantity(1, 'ratio'), { ...share, kind: 'number', unit: 'ratio' }))
      refuse(
        'railDepth',
        `${show(rails)} ${show(railDepth)} deep are more than the whole of ${show(postAbove)}. Check the count and the depth.`,
      )
    const most = published(openShapeFactors.most)
    if (less(most, share))
      refuse(
        'wantedGap',
        `With ${show(picketWidth)} pickets and gaps of ${show(wantedGap)} the fence is ${cite(share, 'solid to the wind, rails counted')} solid, rails counted. Over ${openShapeFactors.most} it counts as a solid fence: ask for the wind on a solid fence, and say how long the run is.`,
      )
    if (!has('windSpeed') || !has('exposure')) return
    const step = openShapeFactors.steps.find(
      (it) => less(published(it.from), share) || equal(published(it.from), share),
    )
    put('shapeFactor', quantity(step?.factor ?? '2', 'ratio'))
    workWind(exposure, postAbove, tools)
    workPressure(tools)
    const strength = line('strengthForce')
    line('forceHeight')
    const working = line('sideForce')
    line('tippingMoment')
    remark(
      `Decided by how much is solid: ${show(share)}, rails counted, so flat members in an open fence, factor ${step?.factor}. The post’s own face between the pickets is not counted; it adds a few parts in a hundred.`,
    )
    sayLevels(strength, working, tools)
    remark(
      'The fence is reckoned as high as its posts, and the end posts carry half a bay. A gate post also bears its gate.',
    )
  },
  sources: [
    { fact: openShapeFactors.title, from: openShapeFactors.from },
    ...windSources,
    { fact: 'the area that the wind sees: pickets, and rails between them', from: 'Derived here from the sketch.' },
  ],
  cautions: ['structure', 'local-code'],
  drawing: windDrawing,
  examples: [
    // share 3.5/6 = 0.58333; area 24 ft²; 14 + 2 × 3.5/12 × 6 × 0.41667 = 14 + 1.4583 = 15.4583 ft² (64.41 %)
    // q = 0.00256 × 0.57 × 0.85 × 115² = 16.4034; × 0.85 × 1.6 = 22.3086 lb/ft²; × 15.4583 = 344.85; × 0.6 = 206.9; arm 2 ft: 413.8
    {
      ask: 'How hard does the wind push each post: 4 ft picket fence, 3 1/2 in pickets with a gap of 2 1/2 in, posts 6 ft on center, 2 rails 3 1/2 in deep, wind speed 115 mph, exposure B?',
      given: {
        windSpeed: '115 mph',
        exposure: 'b',
        postAbove: '4 ft',
        bayCentres: '6 ft',
        picketWidth: '3 1/2 in',
        wantedGap: '2 1/2 in',
        rails: '2',
        railDepth: '3 1/2 in',
      },
      expect: {
        sideForce: '206.9 lbf',
        strengthForce: '344.9 lbf',
        windPressure: '22.31 lb/ft²',
        forceHeight: '2 ft',
        tippingMoment: '413.8 lbf-ft',
        seenShare: '64.41 %',
      },
    },
    // share 70/120 = 0.58333; area 2.88 m²; 1.68 + 2 × 0.09 × 2.4 × 0.41667 = 1.86 m² (64.58 %)
    // 0.00256 lb/ft² at 1 mph is 0.61334 Pa at 1 m/s; × 0.85 × 0.85 × 50² = 1107.8 Pa; × 0.85 × 1.6 = 1506.6; × 1.86 = 2802.3 N; × 0.6 = 1681.4; × 0.6 m = 1008.8
    {
      ask: 'Wind force on a post: wind speed 50 m/s, open country, fence 1200 mm high, posts 2.4 m apart, 70 mm pickets with 50 mm gaps, 2 rails 90 mm deep?',
      given: {
        windSpeed: '50 m/s',
        exposure: 'c',
        postAbove: '1200 mm',
        bayCentres: '2.4 m',
        picketWidth: '70 mm',
        wantedGap: '50 mm',
        rails: '2',
        railDepth: '90 mm',
      },
      expect: { sideForce: '1,681 N', windPressure: '1.507 kPa', tippingMoment: '1,009 N-m' },
    },
  ],
})
