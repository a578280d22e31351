// The check of a plan: it solves nothing, and sees whatever is tampered with.
import Fraction from 'fraction.js'
import { describe, expect, it } from 'vitest'
import { type CutPlan, planCuts } from '../../../engine/cutting/plan.ts'
import { checkPlan } from '../../../engine/cutting/proof.ts'
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
