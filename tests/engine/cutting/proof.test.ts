// The check of a plan: it solves nothing, and sees whatever is tampered with.
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { type CutPlan, planCuts, type Stick } from '../../../engine/cutting/plan.ts'
import type { CutProblem } from '../../../engine/cutting/problem.ts'
import { checkPlan } from '../../../engine/cutting/proof.ts'
import type { Search } from '../../../engine/cutting/search.ts'
import { cutSolver } from '../../../src/solver/highs.ts'
import { generatedJob } from './generated-jobs.ts'
import { byHand } from './published.ts'

const solver = await cutSolver()
const job = generatedJob(14)
const planned = planCuts(job, solver)
if (!planned.ok) throw new Error(planned.why)
const { plan } = planned
const [first, ...others] = plan.sticks
if (!first) throw new Error('no sticks')

const tampered: readonly (readonly [string, CutPlan])[] = [
  ['a stick left out', { ...plan, sticks: others }],
  ['a stick cut once more', { ...plan, sticks: [{ ...first, times: first.times + 1 }, ...others] }],
  [
    'a stick of another stock',
    { ...plan, sticks: [{ ...first, stock: (first.stock + 1) % job.stocks.length }, ...others] },
  ],
  [
    'a piece too many on a stick',
    { ...plan, sticks: [{ ...first, counts: first.counts.map((it) => it + 1) }, ...others] },
  ],
  ['an offcut made longer', { ...plan, sticks: [{ ...first, offcut: first.offcut.add(1) }, ...others] }],
  ['half a stick', { ...plan, sticks: [{ ...first, times: first.times / 2 }, ...others] }],
  ['a lower price', { ...plan, price: { ...plan.price, value: plan.price.value - 1 } }],
  ['fewer boards', { ...plan, boards: { value: plan.boards.value - 1, bound: plan.boards.value - 1, proved: true } }],
  ['a longer longest offcut', { ...plan, longest: { ...plan.longest, value: plan.longest.value + 1 } }],
  ['proved, with a gap', { ...plan, price: { ...plan.price, bound: plan.price.bound - 1 } }],
  ['other lengths', { ...plan, lengths: plan.lengths.map((it) => it.add(1)) }],
  ['a piece worth a little more', withWorth((it, i) => (i === 0 ? it.mul(101).div(100) : it))],
  ['pieces worth too little to prove it', withWorth((it) => it.mul(9).div(10))],
  ['a piece worth less than nothing', withWorth((it, i) => (i === 0 ? it.neg() : it))],
  ['another proof named', { ...plan, proof: { ...plan.proof, by: 'none' } }],
]

function withWorth(change: (it: Fraction, i: number) => Fraction): CutPlan {
  return { ...plan, proof: { ...plan.proof, worth: plan.proof.worth.map(change) } }
}

describe('a plan proved by dual prices', () => {
  it('holds as it is made', () => {
    expect(plan.proof.by).toBe('duals')
    expect(checkPlan(job, plan)).toEqual([])
  })

  it.each(tampered)('is found out: %s', (_, it) => expect(checkPlan(job, it)).not.toEqual([]))

  it('holds for no other job', () => expect(checkPlan(generatedJob(15), plan)).not.toEqual([]))
})

describe('a plan without a solver', () => {
  it('that claims to be proved is found out', () => {
    const [{ problem }] = byHand
    const plain = planCuts(problem, undefined)
    if (!plain.ok) throw new Error(plain.why)
    expect(checkPlan(problem, plain.plan)).toEqual([])
    const { price } = plain.plan
    const claimed: CutPlan = {
      ...plain.plan,
      price: { value: price.value, bound: price.value, proved: true },
      proof: { ...plain.plan.proof, by: 'duals', worth: plain.plan.proof.worth.map(() => new Fraction(0)) },
    }
    expect(checkPlan(problem, claimed)).not.toEqual([])
  })
})

// Two lengths of stock: 10 at 100 cents of which one is at hand, 6 at 70 cents. Four pieces of 5: two on the 10, one on each of two 6s, 240 cents.
// A piece is worth 70, since that is what a 6 costs; the 10 then holds 140, so its scarcity adds 40: 4 × 70 − 1 × 40 = 240, which proves it.
const scarce: CutProblem = {
  pieces: [{ length: new Fraction(5), count: 4 }],
  stocks: [
    { length: new Fraction(10), price: 100, onHand: 1 },
    { length: new Fraction(6), price: 70 },
  ],
  kerf: new Fraction(0),
  endTrim: new Fraction(0),
  leastOffcut: new Fraction(0),
}
const long: Stick = { stock: 0, counts: [2], times: 1, offcut: new Fraction(0) }
const short: Stick = { stock: 1, counts: [1], times: 2, offcut: new Fraction(1) }
const reached = (value: number): CutPlan['price'] => ({ value, bound: value, proved: true })
const exactly: CutPlan = {
  lengths: [new Fraction(5)],
  demand: [4],
  sticks: [long, short],
  price: reached(240),
  byPrice: true,
  boards: reached(3),
  longest: reached(1),
  unit: new Fraction(1),
  proof: {
    by: 'duals',
    worth: [new Fraction(70)],
    charges: [new Fraction(40), new Fraction(0)],
    searches: [],
    solver: undefined,
  },
}
const fractions = (...all: (number | string)[]): Fraction[] => all.map((it) => new Fraction(it))
const proofOf = (change: Partial<CutPlan['proof']>): CutPlan => ({
  ...exactly,
  proof: { ...exactly.proof, ...change },
})
const sticksOf = (...sticks: Stick[]): CutPlan => ({ ...exactly, sticks })
const unproved = 'what is named as the proof does not prove it'
const tooDear = 'a stick can hold pieces worth more than it costs, so the dual prices prove nothing'

describe('a plan worked by hand', () => {
  it('holds', () => expect(checkPlan(scarce, exactly)).toEqual([]))

  it.each<[string, CutPlan, string[]]>([
    ['a stock that is not sold', sticksOf(long, { ...short, stock: 2 }), ['a stick is of a stock that is not sold']],
    ['no stick at all of a kind', sticksOf(long, short, { ...short, times: 0 }), ['a count is no count']],
    ['one piece too few', sticksOf(long, { ...short, times: 1 }), ['3 of 5 are cut, not 4']],
    // 2 × 5 on a stick of 6.
    [
      'a stick cut too long',
      sticksOf(long, { ...short, counts: [2], times: 1 }),
      ['a stick of 6 is cut longer than it is'],
    ],
    ['an offcut of nothing', sticksOf(long, { ...short, offcut: new Fraction(0) }), ['an offcut is 1, not 0']],
    ['another demand', { ...exactly, demand: [5] }, ['the lengths are not those of the job']],
    ['one length more', { ...exactly, lengths: fractions(5, 4) }, ['the lengths are not those of the job']],
    ['by length', { ...exactly, byPrice: false }, ['it is not clear whether it is by price or by length']],
    ['two boards', { ...exactly, boards: reached(2) }, ['there are 3 sticks, not 2']],
    ['a longest offcut of 2', { ...exactly, longest: reached(2) }, ['the longest offcut is 1']],
    [
      'more boards than there are as the least',
      { ...exactly, boards: { value: 3, bound: 4, proved: false } },
      ['a bound lies beyond what was reached'],
    ],
    [
      'a longest offcut beyond what there can be',
      { ...exactly, longest: { value: 1, bound: 0, proved: false } },
      ['a bound lies beyond what was reached'],
    ],
    [
      'boards proved with a gap',
      { ...exactly, boards: { value: 3, bound: 2, proved: true } },
      ['proved is said where it is not'],
    ],
    [
      'boards not proved without a gap',
      { ...exactly, boards: { value: 3, bound: 3, proved: false } },
      ['proved is said where it is not'],
    ],
    [
      'an offcut proved with a gap',
      { ...exactly, longest: { value: 1, bound: 2, proved: true } },
      ['proved is said where it is not'],
    ],
    ['no worth', proofOf({ worth: [] }), ['the dual prices do not fit']],
    ['one charge too few', proofOf({ charges: fractions(40) }), ['the dual prices do not fit']],
    // Worth nothing, no stick holds more than it costs, and so only the sign is wrong.
    [
      'a charge below nought',
      proofOf({ worth: fractions(0), charges: fractions(-40, 0) }),
      ['a dual price is below nought'],
    ],
    ['a worth below nought', proofOf({ worth: fractions(-70) }), ['a dual price is below nought']],
    [
      'a charge on what is not scarce',
      proofOf({ charges: fractions(40, 1) }),
      ['a charge stands on a stock that is not scarce'],
    ],
    // 71 is more than a 6 costs, and 142 more than 100 + 40.
    ['a worth of 71', proofOf({ worth: fractions(71) }), [tooDear, tooDear]],
    // 140 is more than 100 + 39.
    ['a charge of 39', proofOf({ charges: fractions(39, 0) }), [tooDear]],
    [
      'a price that is not proved though it is',
      { ...exactly, price: { value: 240, bound: 230, proved: false } },
      ['the bound is lower than the dual prices give', unproved],
    ],
    // 4 × 60 − 40 = 200 lies below 240.
    ['duals that fall short', proofOf({ worth: fractions(60) }), [unproved]],
    ['sticks as the proof, of two stocks', proofOf({ by: 'sticks' }), [unproved]],
    ['a search that was not made', proofOf({ by: 'search' }), [unproved]],
    ['a search for something else', proofOf({ by: 'search', searches: [searchAfter('boards')] }), [unproved]],
    ['nothing as the proof', proofOf({ by: 'none' }), [unproved]],
  ])('with %s is refused', (_, plan, wrong) => expect(checkPlan(scarce, plan)).toEqual(wrong))

  it('may rest on a search for the price', () =>
    expect(checkPlan(scarce, proofOf({ by: 'search', searches: [searchAfter('price')] }))).toEqual([]))

  it('takes no more sticks than are at hand', () => {
    const both = { ...sticksOf({ ...long, times: 2 }), price: reached(200), boards: reached(2), longest: reached(0) }
    expect(checkPlan(scarce, both)).toEqual([
      '2 are cut where 1 are at hand',
      'the dual prices lie above the price',
      'the bound is lower than the dual prices give',
      unproved,
    ])
  })

  it('costs what its sticks cost', () =>
    expect(checkPlan(scarce, { ...exactly, price: reached(250) })).toContain('the price is 240, not 250'))

  it('is of another job where the job cannot be cut', () =>
    expect(checkPlan({ ...scarce, pieces: [{ length: new Fraction(11), count: 1 }] }, exactly)).toEqual([
      'the job cannot be cut at all',
    ]))
})

function searchAfter(after: Search['after']): Search {
  return { after, patterns: 2, all: true, nodeLimit: 1_000, nodes: 1 }
}

describe('proofs of one stock', () => {
  // Two pieces of 6 share no stick of 10: 2 sticks, 200 cents. At a worth of 50 the dual prices alone give 100.
  const one: CutProblem = {
    ...scarce,
    pieces: [{ length: new Fraction(6), count: 2 }],
    stocks: [{ length: new Fraction(10), price: 100 }],
  }
  const plan: CutPlan = {
    ...exactly,
    lengths: fractions(6),
    demand: [2],
    sticks: [{ stock: 0, counts: [1], times: 2, offcut: new Fraction(4) }],
    price: reached(200),
    boards: reached(2),
    longest: reached(4),
    proof: { by: 'sticks', worth: fractions(50), charges: fractions(0), searches: [], solver: undefined },
  }

  it('may count the sticks, which dual prices of 50 do not', () => {
    expect(checkPlan(one, plan)).toEqual([])
    expect(checkPlan(one, { ...plan, proof: { ...plan.proof, by: 'duals' } })).toEqual([unproved])
  })

  it('may be none, where a gap is left', () => {
    const open: CutPlan = { ...plan, price: { value: 200, bound: 100, proved: false } }
    expect(checkPlan(one, { ...open, proof: { ...plan.proof, by: 'none' } })).toEqual([])
    expect(checkPlan(one, open)).toEqual([unproved])
  })

  // A stick of 12 at 100 holds three of 4 (worth 100/3) or four of 3 (worth 25): three and four of them are two sticks, 200.
  it('work in thirds of a cent', () => {
    const thirds: CutProblem = {
      ...scarce,
      pieces: [
        { length: new Fraction(4), count: 3 },
        { length: new Fraction(3), count: 4 },
      ],
      stocks: [{ length: new Fraction(12), price: 100 }],
    }
    const inThirds: CutPlan = {
      ...plan,
      lengths: fractions(4, 3),
      demand: [3, 4],
      sticks: [
        { stock: 0, counts: [3, 0], times: 1, offcut: new Fraction(0) },
        { stock: 0, counts: [0, 4], times: 1, offcut: new Fraction(0) },
      ],
      longest: reached(0),
      proof: { ...plan.proof, by: 'duals', worth: fractions('100/3', 25) },
    }
    expect(checkPlan(thirds, inThirds)).toEqual([])
    expect(checkPlan(thirds, { ...inThirds, proof: { ...inThirds.proof, worth: fractions('101/3', 25) } })).toEqual([
      tooDear,
    ])
    expect(checkPlan(thirds, { ...inThirds, proof: { ...inThirds.proof, worth: fractions('100/3', '76/3') } })).toEqual(
      [tooDear],
    )
  })
})
