// Concrete in a hole that is flared at the bottom, with the post standing on the bottom of it.
//
//   │▒┃ ┃▒│   shaft
//   │▒┃ ┃▒│
//   ╱▒┃ ┃▒╲   bell: a frustum, π h (D² + D d + d²) / 12
//  ╱▒▒┃ ┃▒▒╲        cut square, it is a pyramid's: h (D² + D d + d²) / 3
import { calculation } from '../../calculation.ts'
import { bellDrawing } from '../../drawings/bell.ts'
import { refuseUnfitPost, sectionLines, workSection } from '../../holes.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bags, bagsByHole, bagsPerHole, bagYield, concrete, concretePerHole, spare } from '../../words/concrete.ts'
import { bellConcrete, bellHeight, bellWidth } from '../../words/holes.ts'
import { holeDepth, holeDiameter, holeShape, posts, postWidth } from '../../words/posts.ts'

const bagged = ['bags', 'bagsPerHole', 'bagsByHole']

export const belledHole = calculation({
  name: 'belled-hole',
  title: 'Concrete in holes flared at the bottom',
  answers:
    'How much concrete holes take that are belled out at the bottom, with the post standing on the bottom, and how many bags.',
  needs: { posts, holeDiameter, holeShape, holeDepth, bellWidth, bellHeight, postWidth, spare, bagYield },
  onlyFor: { posts: ['concrete', 'bags', 'bagsByHole'], bagYield: bagged },
  gives: { concretePerHole, bellConcrete, concrete, bags, bagsPerHole, bagsByHole },
  headlines: ['bags', 'concrete', 'concretePerHole'],
  together: { bags: ['bags', 'bagsByHole', 'concrete'], concrete: ['concrete', 'concretePerHole'] },
  called: ['bell', 'belled', 'flared at the bottom', 'wider at the bottom'],
  joins: true,
  locals: { holeSection: 'area' },
  lines: {
    ...sectionLines,
    bellConcrete: [
      'pi * bellHeight / 12 * (bellWidth ^ 2 + bellWidth * holeDiameter + holeDiameter ^ 2)',
      'a cone cut off at the top',
    ],
    squareBell: [
      'bellHeight / 3 * (bellWidth ^ 2 + bellWidth * holeDiameter + holeDiameter ^ 2)',
      'a pyramid cut off at the top',
    ],
    shaft: ['holeSection * (holeDepth - bellHeight)', 'the straight part above'],
    postInIt: ['postWidth ^ 2 * holeDepth', 'the post takes up room all the way down'],
    concretePerHole: ['bellConcrete + shaft - postInIt', 'one hole'],
    concrete: ['sum(posts * concretePerHole) * (1 + spare)', 'all the holes together'],
    bags: ['ceil(concrete / bagYield)', 'bought together, so rounded up once for the whole job'],
    bagsPerHole: [
      'ceil(concretePerHole * (1 + spare) / bagYield)',
      'if a bag opened at one hole is not carried to the next',
    ],
    bagsByHole: ['sum(posts * bagsPerHole)', 'rounded up at every hole'],
  },
  work({ holeShape }, { line, rows, put, tell, has, eachPlace, refuse, remark }) {
    eachPlace(['postWidth', 'holeDiameter'], (width, diameter) => refuseUnfitPost(width, diameter, holeShape, refuse))
    eachPlace(['holeDiameter', 'holeDepth', 'bellWidth', 'bellHeight'], (diameter, depth, width, height) => {
      if (less(width, diameter))
        refuse(
          'bellWidth',
          `A bell of ${show(width)} is narrower than the hole above it, ${show(diameter)}. A hole that narrows downward is lifted by frost. Check both.`,
        )
      if (less(depth, height))
        refuse('bellHeight', `A bell ${show(height)} high is taller than the hole is deep, ${show(depth)}. Check both.`)
    })
    workSection(holeShape, { line, rows, put, remark })
    if (holeShape === 'square') {
      const one = line('squareBell')
      const all = rows('squareBell')
      tell('bellConcrete', all.length > 1 ? all : one)
    } else line('bellConcrete')
    for (const name of ['shaft', 'postInIt', 'concretePerHole']) line(name)
    if (has('bagYield')) line('bagsPerHole')
    if (has('posts')) {
      line('concrete')
      if (has('bagYield')) {
        line('bags')
        line('bagsByHole')
      }
    }
    remark(
      'The post stands on the bottom of the hole here, with no stone under it. A bell holds against lifting; the top must not be wider than the rest, or frost lifts it by the rim.',
    )
  },
  sources: [
    {
      fact: 'frustum = π h (D² + D d + d²) / 12; h (D² + D d + d²) / 3 where it is cut square',
      from: 'Solid geometry; derived here from the sketch.',
    },
    { fact: 'a bell holds against lifting, a flared top is lifted', from: 'common practice, no source' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'wet-cement', 'dust', 'lifting', 'open-hole'],
  drawing: bellDrawing,
  examples: [
    // bell π × 12/12 × (196 + 112 + 64) = 1168.7 in³ = 0.6763; shaft π × 16 × 24 = 1206.4 = 0.6981; post 12.25 × 36 = 441 = 0.2552 → 1.1192 ft³; × 4 = 4.477; /0.6 = 7.46 → 8
    {
      ask: 'Holes 8 in wide and 36 in deep, belled to 14 in with a bell height of 12 in, 4 posts, bags of 0.6 ft3: how many bags?',
      given: {
        holeDiameter: '8 in',
        holeDepth: '36 in',
        bellWidth: '14 in',
        bellHeight: '12 in',
        postWidth: '3 1/2 in',
        posts: '4',
        bagYield: '0.6 ft3',
        spare: '0 %',
      },
      expect: { concretePerHole: '1.119 ft³', bellConcrete: '0.6763 ft³', bags: '8 bags', bagsByHole: '8 bags' },
    },
    // bell π × 300/12 × (400² + 400 × 250 + 250²) = 25.33 L; shaft π × 250²/4 × 600 = 29.45; post 90² × 900 = 7.29 → 47.49
    {
      ask: 'Concrete in a hole 250 mm wide and 900 mm deep, belled to 400 mm, bell height 300 mm, 90 mm post?',
      given: {
        holeDiameter: '250 mm',
        holeDepth: '900 mm',
        bellWidth: '400 mm',
        bellHeight: '300 mm',
        postWidth: '90 mm',
      },
      expect: { concretePerHole: '47.49 L' },
    },
    // square: 12/3 × (196 + 112 + 64) = 1488 in³ = 0.8611 ft³; shaft 64 × 24 = 1536; post 441 → 2583 in³ = 1.4948 ft³
    {
      ask: 'Concrete in a hole 8 in square and 36 in deep, belled to 14 in, bell height 12 in, 3 1/2 in post?',
      given: {
        holeDiameter: '8 in',
        holeShape: 'square',
        holeDepth: '36 in',
        bellWidth: '14 in',
        bellHeight: '12 in',
        postWidth: '3 1/2 in',
      },
      expect: { concretePerHole: '1.495 ft³', bellConcrete: '0.8611 ft³' },
    },
  ],
})
