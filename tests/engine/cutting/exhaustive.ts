// This file is about small cutting jobs worked by going through everything: an answer that owes nothing to the engine's own code.
import type { CutProblem } from '../../../engine/cutting/problem.ts'

export interface Best {
  readonly price: number
  readonly boards: number
  /** In the job's own unit of length. */
  readonly longest: number
}

/**
 * Every way of laying the pieces on sticks: each in turn on a stick that is begun, or on a new one of any stock.
 * A later plan wins by a lower price, then by fewer sticks, then by a longer offcut. Lengths are whole numbers here.
 */
export function bestOfAll(problem: CutProblem): Best | undefined {
  const kerf = Number(problem.kerf.valueOf())
  const pieces = problem.pieces
    .flatMap(({ length, count }) => Array.from({ length: count }, () => Number(length.valueOf())))
    .sort((a, b) => b - a)
  const stocks = problem.stocks.map(({ length, price, onHand }) => ({
    usable: Number(length.sub(problem.endTrim).valueOf()),
    cost: price ?? Number(length.valueOf()),
    onHand: onHand ?? Number.POSITIVE_INFINITY,
  }))
  const sticks: { stock: number; wood: number; pieces: number }[] = []
  let best: Best | undefined
  const isBetter = (it: Best): boolean =>
    !best ||
    it.price < best.price ||
    (it.price === best.price && (it.boards < best.boards || (it.boards === best.boards && it.longest > best.longest)))
  const go = (next: number, price: number): void => {
    if (best && price > best.price) return
    const piece = pieces[next]
    if (piece === undefined) {
      const left = sticks.map((it) => (stocks[it.stock]?.usable ?? 0) - it.wood - it.pieces * kerf)
      const plan = { price, boards: sticks.length, longest: Math.max(0, ...left) }
      if (isBetter(plan)) best = plan
      return
    }
    const tried = new Set<string>()
    for (const stick of sticks) {
      const key = `${stick.stock} ${stick.wood} ${stick.pieces}`
      if (tried.has(key) || stick.wood + piece + stick.pieces * kerf > (stocks[stick.stock]?.usable ?? 0)) continue
      tried.add(key)
      stick.wood += piece
      stick.pieces++
      go(next + 1, price)
      stick.wood -= piece
      stick.pieces--
    }
    for (const [stock, { usable, cost, onHand }] of stocks.entries()) {
      if (piece > usable || sticks.filter((it) => it.stock === stock).length >= onHand) continue
      sticks.push({ stock, wood: piece, pieces: 1 })
      go(next + 1, price + cost)
      sticks.pop()
    }
  }
  go(0, 0)
  return best
}
