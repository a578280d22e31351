// Bags for holes whose concrete was told by the hole: “each takes 1.2 ft³”.
//
//   ▥▥▥  ▥▥▥  ▥▥▥     so much each; bags opened at every hole, or all poured in a row
import { calculation } from '../../calculation.ts'
import { show } from '../../quantities/show.ts'
import { bags, bagYield, bagsPerHole, concrete } from '../../words/concrete.ts'
import { posts } from '../../words/posts.ts'
import { word } from '../../words/word.ts'

const concreteInHole = word<'volume'>('concreteInHole', {
  kind: 'volume',
  label: 'concrete that one hole takes',
  units: { imperial: 'ft3', metric: 'L' },
  measure: 'The hole, less the post in it.',
  ask: 'How much concrete does one hole take?',
  called: {},
  possible: { above: '0 ft3' },
  plausible: { from: '0.1 ft3', to: '30 ft3' },
})

export const bagsByHole = calculation({
  name: 'bags-by-hole',
  title: 'Bags where the concrete of one hole is told',
  answers: 'How many bags so many holes take, where it is told how much goes into one hole and what one bag makes.',
  needs: { posts, concreteInHole, bagYield },
  onlyFor: { bagYield: ['bags', 'bagsPerHole'] },
  gives: { bags, bagsPerHole, concrete },
  called: ['each hole takes', 'per hole takes'],
  headlines: ['bags', 'concrete'],
  together: { bags: ['bags', 'concrete', 'bagsPerHole'], concrete: ['concrete', 'bags'] },
  locals: { atEach: 'count' },
  lines: {
    concrete: ['sum(posts) * concreteInHole', 'so much in each hole'],
    bags: ['ceil(concrete / bagYield)', 'poured in a row, rounded up once'],
    bagsPerHole: ['ceil(concreteInHole / bagYield)', 'whole bags opened at one hole'],
    atEach: ['sum(posts) * bagsPerHole', 'whole bags at every hole'],
  },
  work(_, { line, has, remark }) {
    line('concrete')
    if (has('bagYield')) {
      line('bags')
      line('bagsPerHole')
      remark(`Where every hole is filled with bags of its own, it is ${show(line('atEach', 'bag'))}.`)
    }
    remark(
      'What one hole takes is as you told it; whether the post is taken off it, and how much is spilt, I cannot see.',
    )
  },
  sources: [
    { fact: 'bags = holes × concrete of one ÷ what one bag makes, rounded up', from: 'Derived here; needs no table.' },
  ],
  cautions: ['wet-cement', 'dust', 'lifting'],
  examples: [
    // 14 × 0.9 = 12.6 ft³; / 0.45 = 28; 0.9 / 0.45 = 2 each
    {
      ask: 'Each hole takes 0.9 cubic feet and a bag makes 0.45 cubic feet. How many bags for 14 holes?',
      given: { posts: '14', concreteInHole: '0.9 ft3', bagYield: '0.45 ft3' },
      expect: { bags: '28 bags', concrete: '12.6 ft³', bagsPerHole: '2 bags' },
    },
    // 11 × 25 = 275 L; / 9.5 = 28.9 → 29; 25 / 9.5 → 3
    {
      ask: '11 holes at 25 litres of concrete a hole, 9.5 L a bag: how many bags?',
      given: { posts: '11', concreteInHole: '25 L', bagYield: '9.5 L' },
      expect: { bags: '29 bags', concrete: '275 L', bagsPerHole: '3 bags' },
    },
  ],
})
