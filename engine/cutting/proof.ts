// This file is about checking a plan without solving anything: every piece cut, every stick within its length, the sums right, and what is
// claimed to be proved so by exact arithmetic. A claim that rests on a search can only be checked by making the search again.
import { fewestSticks, leastSum } from './bounds.ts'
import type { CutPlan, Stick } from './plan.ts'
import { type Bench, benchFor, type CutProblem } from './problem.ts'
import Fraction from 'fraction.js'

const zero = new Fraction(0)

/** What is wrong with a plan for that job; nothing when all of it holds. */
export function checkPlan(problem: CutProblem, plan: CutPlan): string[] {
  const bench = benchFor(problem)
  if (bench === 'too fine' || 'tooLong' in bench) return ['the job cannot be cut at all']
  const wrong = [...piecesWrong(bench, plan), ...plan.sticks.flatMap((it) => stickWrong(problem, plan, it))]
  // Nothing more can be said of a plan that is none.
  return wrong.length > 0 ? wrong : [...sumsWrong(problem, bench, plan), ...proofWrong(problem, bench, plan)]
}

function piecesWrong(bench: Bench, plan: CutPlan): string[] {
  const lengths = bench.lengths.map((it) => bench.unit.mul(it))
  const isSame =
    lengths.length === plan.lengths.length && lengths.every((it, kind) => it.equals(plan.lengths[kind] as Fraction))
  if (!isSame || bench.demand.some((count, kind) => count !== plan.demand[kind]))
    return ['the lengths are not those of the job']
  return lengths.flatMap((length, kind) => {
    const cut = plan.sticks.reduce((sum, it) => sum + it.times * (it.counts[kind] ?? 0), 0)
    return cut === bench.demand[kind] ? [] : [`${cut} of ${length.toFraction()} are cut, not ${bench.demand[kind]}`]
  })
}

function stickWrong(problem: CutProblem, plan: CutPlan, stick: Stick): string[] {
  const stock = problem.stocks[stick.stock]
  if (!stock) return ['a stick is of a stock that is not sold']
  const isCount = (it: number): boolean => Number.isInteger(it) && it >= 0
  if (!stick.counts.every(isCount) || !isCount(stick.times) || stick.times === 0) return ['a count is no count']
  const pieces = stick.counts.reduce((sum, it) => sum + it, 0)
  const wood = stick.counts.reduce((sum, count, kind) => sum.add((plan.lengths[kind] as Fraction).mul(count)), zero)
  const usable = stock.length.sub(problem.endTrim)
  const between = problem.kerf.mul(Math.max(0, pieces - 1))
  if (wood.add(between).compare(usable) > 0) return [`a stick of ${stock.length.toFraction()} is cut longer than it is`]
  const left = usable.sub(wood).sub(problem.kerf.mul(pieces))
  const offcut = left.compare(0) > 0 ? left : zero
  return offcut.equals(stick.offcut) ? [] : [`an offcut is ${offcut.toFraction()}, not ${stick.offcut.toFraction()}`]
}

function sumsWrong(problem: CutProblem, bench: Bench, plan: CutPlan): string[] {
  const wrong: string[] = []
  const price = plan.sticks.reduce((sum, it) => sum + it.times * (bench.costs[it.stock] as number) * bench.step, 0)
  const boards = plan.sticks.reduce((sum, it) => sum + it.times, 0)
  const longest = plan.sticks.reduce((most, it) => (it.offcut.compare(most) > 0 ? it.offcut : most), zero)
  if (price !== plan.price.value) wrong.push(`the price is ${price}, not ${plan.price.value}`)
  if (boards !== plan.boards.value) wrong.push(`there are ${boards} sticks, not ${plan.boards.value}`)
  if (!plan.unit.mul(plan.longest.value).equals(longest)) wrong.push(`the longest offcut is ${longest.toFraction()}`)
  if (plan.byPrice !== bench.byPrice) wrong.push('it is not clear whether it is by price or by length')
  for (const [stock, { onHand }] of problem.stocks.entries()) {
    const taken = plan.sticks.reduce((sum, it) => sum + (it.stock === stock ? it.times : 0), 0)
    if (onHand !== undefined && taken > onHand) wrong.push(`${taken} are cut where ${onHand} are at hand`)
  }
  const { price: a, boards: b, longest: c } = plan
  if (a.bound > a.value || b.bound > b.value || c.bound < c.value) wrong.push('a bound lies beyond what was reached')
  if ([a, b, c].some((it) => it.proved !== (it.bound === it.value))) wrong.push('proved is said where it is not')
  return wrong
}

function proofWrong(problem: CutProblem, bench: Bench, plan: CutPlan): string[] {
  const { by, worth, charges, searches } = plan.proof
  if (worth.length !== bench.lengths.length || charges.length !== bench.rooms.length)
    return ['the dual prices do not fit']
  const wrong: string[] = []
  if ([...worth, ...charges].some((it) => it.compare(0) < 0)) wrong.push('a dual price is below nought')
  if (charges.some((it, stock) => !it.equals(0) && problem.stocks[stock]?.onHand === undefined))
    wrong.push('a charge stands on a stock that is not scarce')
  for (const stock of bench.rooms.keys()) {
    const cost = (charges[stock] as Fraction).add((bench.costs[stock] as number) * bench.step)
    if (mostWorth(bench, worth, stock).compare(cost) > 0)
      wrong.push('a stick can hold pieces worth more than it costs, so the dual prices prove nothing')
  }
  if (wrong.length > 0) return wrong
  const bound = charges.reduce(
    (sum, charge, stock) => (charge.equals(0) ? sum : sum.sub(charge.mul(problem.stocks[stock]?.onHand ?? 0))),
    worth.reduce((sum, it, kind) => sum.add(it.mul(bench.demand[kind] as number)), zero),
  )
  const inSteps = bound.div(bench.step)
  const least = leastSum(bench, Number(inSteps.ceil())) * bench.step
  if (least > plan.price.value) wrong.push('the dual prices lie above the price')
  if (plan.price.bound < least) wrong.push('the bound is lower than the dual prices give')
  const isProved = {
    duals: least === plan.price.value,
    sticks:
      bench.rooms.length === 1 &&
      fewestSticks(bench, bench.rooms[0] as number) * (bench.costs[0] as number) * bench.step === plan.price.value,
    search: searches.some((it) => it.after === 'price'),
    none: false,
  }[by]
  if (plan.price.proved !== isProved) wrong.push('what is named as the proof does not prove it')
  return wrong
}

/** The most that pieces on one stick can be worth: every total width there can be, with the most it holds. */
function mostWorth(bench: Bench, worth: readonly Fraction[], stock: number): Fraction {
  const whole = worth.reduce((product, { d }) => (product * d) / common(product, d), 1n)
  const room = bench.rooms[stock] as number
  const best = new Map<number, bigint>([[0, 0n]])
  for (const [kind, width] of bench.widths.entries()) {
    const { n, d } = worth[kind] as Fraction
    const value = n * (whole / d)
    if (value === 0n) continue
    const most = Math.min(bench.demand[kind] as number, Math.floor(room / width))
    // One piece more at a time, from what there was with one fewer.
    let grown = [...best]
    for (let count = 0; count < most && grown.length > 0; count++) {
      grown = grown.flatMap(([total, held]) =>
        total + width <= room ? [[total + width, held + value] as const] : [],
      ) as [number, bigint][]
      grown = grown.filter(([total, held]) => {
        const known = best.get(total)
        if (known !== undefined && known >= held) return false
        best.set(total, held)
        return true
      })
    }
  }
  let top = 0n
  for (const held of best.values()) if (held > top) top = held
  return new Fraction(top, whole)
}

const common = (a: bigint, b: bigint): bigint => (b === 0n ? a : common(b, a % b))
