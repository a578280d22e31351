// One bag, bucket, post or footing, lifted by one person: the recommended weight limit of the NIOSH lifting equation.
//
//        ●
//       ╱│    51 lb at best, and every departure takes a share:
//    ▄▄╱ │    hands further out than 10 in · higher or lower than 30 in · a longer way up than 10 in · twisted · a poor grip
//    ▀▀  ╱╲
//    ◄─►  reach, from the ankles to the hands
import { calculation } from '../../calculation.ts'
import { about, compare, exact, toNumber } from '../../quantities/amount.ts'
import { less, quantity, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { liftingEquation } from '../../tables/lifting-equation.ts'
import {
  liftChecked,
  liftFrom,
  liftGrip,
  liftIndex,
  liftLimit,
  liftReach,
  liftTo,
  liftTwist,
  liftWeight,
} from '../../words/lifting.ts'

const { values, grip, title, edition, from, gripFrom } = liftingEquation
const of = (text: string): Quantity => {
  const [amount, unit] = text.split(' ') as [string, string]
  return quantity(amount, unit)
}

export const liftingCheck = calculation({
  name: 'lifting-check',
  title: 'A check on one lift by hand',
  answers:
    'The weight that the lifting equation recommends at most for one lift, from where the hands begin and end, and how a bag, bucket, post or footing stands against it.',
  needs: { liftWeight, liftReach, liftFrom, liftTo, liftTwist, liftGrip },
  onlyFor: { liftWeight: ['liftIndex', 'liftChecked'] },
  gives: { liftLimit, liftIndex, liftChecked },
  headlines: ['liftChecked', 'liftLimit'],
  together: {
    liftLimit: ['liftLimit', 'liftIndex', 'liftChecked'],
    liftIndex: ['liftIndex', 'liftLimit', 'liftChecked'],
    liftChecked: ['liftChecked', 'liftLimit', 'liftIndex'],
  },
  called: ['lifting equation', 'recommended weight limit', 'lifting index'],
  locals: {
    best: 'mass',
    bestReach: 'length',
    bestHeight: 'length',
    leastTravel: 'length',
    inch: 'length',
    gripPart: 'number',
  },
  lines: {
    reachPart: ['bestReach / max(liftReach, bestReach)', 'the further out, the longer the lever on the back'],
    heightPart: [
      '1 - 0.0075 * abs(liftFrom - bestHeight) / inch',
      'knuckle height is best; lower and higher both cost',
    ],
    travel: ['abs(liftTo - liftFrom)', 'the way up, or down'],
    travelPart: ['0.82 + 1.8 * inch / max(travel, leastTravel)', 'a longer way costs a little'],
    twistPart: ['1 - 0.0032 * liftTwist', 'a twisted back bears less'],
    liftLimit: [
      'best * reachPart * heightPart * travelPart * twistPart * gripPart',
      'each takes its share of the best',
    ],
    liftIndex: ['liftWeight / liftLimit', 'how many times the limit it weighs'],
  },
  work(given, { line, has, put, tell, refuse, remark, cite }) {
    const { liftReach, liftFrom, liftTo, liftTwist } = given
    for (const name of ['bestReach', 'bestHeight', 'leastTravel'] as const) put(name, of(values[name]))
    put('inch', of('1 in'))
    // A rounded figure in itself: 51 lb stands for 23 kg.
    const most = of(values.most)
    put('best', { ...most, amount: about(toNumber(most.amount)) })
    const low = less(liftFrom, of(values.bestHeight))
    put('gripPart', quantity(grip[given.liftGrip as keyof typeof grip][low ? 'low' : 'high'], 'ratio'))
    const isBeyond = (q: Quantity, limit: string): boolean => less(of(limit), q)
    const reach = cite(of(values.furthestReach), 'furthest reach the equation knows', 'published')
    if (isBeyond(liftReach, values.furthestReach))
      refuse(
        'liftReach',
        `With the hands ${show(liftReach)} out the equation allows no weight at all: it ends at ${reach}. Get closer, or do not lift it so.`,
      )
    for (const [name, at] of [
      ['liftFrom', liftFrom],
      ['liftTo', liftTo],
    ] as const)
      if (isBeyond(at, values.highest))
        refuse(
          name,
          `With the hands ${show(at)} up the equation allows no weight at all: it ends at ${cite(of(values.highest), 'highest the equation knows', 'published')}. Stand higher, or do not lift it so.`,
        )
    if (isBeyond(liftTwist, values.furthestTwist))
      refuse(
        'liftTwist',
        `Twisted by ${show(liftTwist)} the equation allows no weight at all: it ends at ${cite(of(values.furthestTwist), 'furthest twist the equation knows', 'published')}. Turn your feet.`,
      )
    for (const name of ['reachPart', 'heightPart', 'travel', 'travelPart', 'twistPart']) line(name)
    const limit = line('liftLimit')
    if (has('liftWeight')) {
      const weight = given.liftWeight
      const index = line('liftIndex')
      const over = compare(index.amount, exact(1))
      tell('liftChecked', over === null ? null : over !== 1)
      remark(
        `Decided by: ${show(weight)} against a recommended limit of ${show(limit)}. ` +
          (over === 1
            ? 'Split it, take smaller bags, lift it between two, roll it, or bring the barrow to it.'
            : 'That is a check, not a permission.'),
      )
      if (compare(index.amount, exact(3)) === 1)
        remark(`It weighs ${show(index)} times the limit: the risk to the back is high. Do not lift it so.`)
    }
    remark(
      'It holds for two hands, standing on firm dry ground, and for a lift now and then: no more than one in five minutes, for less than an hour. Oftener, longer, on a slope, out of a hole or with a sore back, less.',
    )
  },
  sources: [
    {
      fact: `most ${values.most}, and what reach, height, way and twist leave of it: ${title}`,
      from: `${edition}; ${from}`,
    },
    { fact: 'what a fair or a poor grip leaves of it; that bags that sag are a poor grip', from: gripFrom },
    {
      fact: 'over the limit the risk is raised, over three times it is high',
      from: 'how the lifting index is usually read; from memory, to be confirmed',
    },
  ],
  cautions: ['lifting'],
  examples: [
    // 51 × 10/15 × 0.775 × (0.82 + 1.8/30 = 0.88) × 1 × 0.9 = 20.87; 80/20.87 = 3.833
    {
      ask: 'Lifting an 80 lb bag from the ground, hands 15 in in front of my ankles, up to a height of 30 in: is that too heavy?',
      given: { liftWeight: '80 lb', liftReach: '15 in', liftTo: '30 in' },
      expect: { liftLimit: '20.87 lb', liftChecked: 'fails: heavier than the recommended limit' },
    },
    // 23.13 kg × 254/300 × 0.775 × (0.82 + 1.8 × 25.4/600 = 0.8962) × 1 = 13.60
    {
      ask: 'What is the recommended weight limit for lifting a 10 kg bucket with handles, hands 300 mm in front of my ankles, up to a height of 600 mm?',
      given: { liftWeight: '10 kg', liftReach: '300 mm', liftTo: '600 mm', liftGrip: 'good' },
      expect: { liftLimit: '13.6 kg', liftChecked: 'nothing checked here fails' },
    },
  ],
})
