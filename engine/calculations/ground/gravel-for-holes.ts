// Gravel in the bottom of the holes: how much, in buckets, and how many trips.
//
//   │▒┃ ┃▒│
//   │:::::│ ◄── stone across the whole hole, round or square: the post stands on it and takes up none of its room
//   └─────┘
import { calculation } from '../../calculation.ts'
import { holeDrawing } from '../../drawings/hole.ts'
import { sectionLines, workSection } from '../../holes.ts'
import { equal, less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  bucketFill,
  bucketLoad,
  buckets,
  bucketSize,
  bucketsPerTrip,
  gravel,
  gravelDensity,
  gravelInPlace,
  gravelLoad,
  settling,
  trips,
} from '../../words/gravel.ts'
import { holeDepth, holeDiameter, holeShape, posts, stoneDepth } from '../../words/posts.ts'

export const gravelForHoles = calculation({
  name: 'gravel-for-holes',
  title: 'Gravel in the bottom of the holes',
  answers:
    'How much gravel lies under the posts, how much to buy loose, what it weighs, how many buckets and how many trips.',
  needs: {
    posts,
    holeDiameter,
    holeShape,
    stoneDepth,
    holeDepth,
    settling,
    gravelDensity,
    bucketSize,
    bucketFill,
    bucketsPerTrip,
  },
  may: ['holeDepth'],
  usually: {
    stoneDepth: {
      value: '6 in',
      metric: '150 mm',
      because: '4 to 6 in of stone under a post is common',
      from: 'trade rule, no source',
    },
  },
  gives: { gravelInPlace, gravel, gravelLoad, buckets, bucketLoad, trips },
  headlines: ['gravel', 'buckets', 'trips'],
  together: { buckets: ['buckets', 'trips'] },
  locals: { holeSection: 'area' },
  lines: {
    ...sectionLines,
    gravelInPlace: ['sum(posts * (holeSection * stoneDepth))', 'a slice of stone in every hole; the post stands on it'],
    gravel: ['gravelInPlace * (1 + settling)', 'loose stone settles when it is tamped, so more is bought'],
    gravelLoad: ['gravel * gravelDensity', 'what has to be carried'],
    bucketHolds: ['bucketSize * bucketFill', 'what one bucket is filled with'],
    bucketLoad: ['bucketHolds * gravelDensity', 'one bucket as it is carried'],
    buckets: ['ceil(gravel / bucketHolds)', 'whole buckets'],
    trips: ['ceil(buckets / bucketsPerTrip)', 'whole trips'],
  },
  work({ holeShape }, { line, rows, put, has, eachPlace, refuse, remark }) {
    if (has('holeDepth'))
      eachPlace(['holeDepth', 'stoneDepth'], (depth, stone) => {
        if (less(depth, stone) || equal(depth, stone))
          refuse(
            'stoneDepth',
            `${show(stone)} of stone fills a ${show(depth)} hole, so no post is left in the ground. Check both measurements.`,
          )
      })
    workSection(holeShape, { line, rows, put, remark })
    for (const name of ['gravelInPlace', 'gravel', 'gravelLoad', 'bucketHolds', 'bucketLoad', 'buckets', 'trips'])
      line(name)
    remark('Stone under a post drains it. It does not count as depth.')
  },
  sources: [
    {
      fact: 'stone in a hole = π/4 × width² × depth; width² × depth in a square one',
      from: 'Derived here from the sketch; needs no table.',
    },
    {
      fact: '51 lb (23 kg) is the most the lifting equation allows under the best conditions',
      from: 'NIOSH revised lifting equation, load constant.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'lifting', 'open-hole'],
  drawing: holeDrawing,
  examples: [
    {
      // π/4 × 1² × 0.5 × 18 = 7.069 ft³; × 1.15 = 8.129; 5 gal × 2/3 = 0.4456 ft³ → 18.24 → 19 buckets; /2 → 10 trips; 812.9 lb
      ask: 'How much gravel for 18 holes 12 in wide with 6 in of stone, in 5 gallon buckets?',
      given: { posts: '18', holeDiameter: '12 in', stoneDepth: '6 in' },
      expect: {
        gravelInPlace: '7.069 ft³',
        gravel: '8.129 ft³',
        gravelLoad: '812.9 lb',
        buckets: '19 buckets',
        trips: '10 trips',
      },
    },
    {
      // π/4 × 0.3² × 0.1 × 10 = 70.69 L; × 1.15 = 81.29; 15 L × 2/3 = 10 L → 9 buckets, 5 trips
      ask: 'Ten 300 mm holes with 100 mm of gravel, 15 L buckets: how many buckets?',
      given: {
        posts: '10',
        holeDiameter: '300 mm',
        stoneDepth: '100 mm',
        bucketSize: '15 L',
        gravelDensity: '1600 kg/m3',
      },
      expect: { gravelInPlace: '70.69 L', gravel: '81.29 L', buckets: '9 buckets', trips: '5 trips' },
    },
    {
      // square: 1² × 0.5 × 12 = 6 ft³; × 1.15 = 6.9
      ask: 'How much gravel for 12 square holes 12 in wide, 6 in of stone in each?',
      given: { posts: '12', holeDiameter: '12 in', holeShape: 'square', stoneDepth: '6 in' },
      expect: { gravelInPlace: '6 ft³', gravel: '6.9 ft³' },
    },
  ],
})
