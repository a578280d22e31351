// This file is about how good the cut plans are and how long they take: made-up and published jobs, beside plain longest-first,
// and beside the same solver on the model that lays each piece on each stick.
import { material } from '../../engine/cutting/bounds.ts'
import { costOf, firstFit, firstPlan } from '../../engine/cutting/first-fit.ts'
import { planCuts } from '../../engine/cutting/plan.ts'
import { type Bench, benchFor, type CutProblem } from '../../engine/cutting/problem.ts'
import { checkPlan } from '../../engine/cutting/proof.ts'
import type { Model, Solver } from '../../engine/cutting/solver.ts'
import { cutSolver } from '../../src/solver/highs.ts'
import { generatedJob } from '../engine/cutting/generated-jobs.ts'
import { byHand, u120 } from '../engine/cutting/published.ts'

export interface CuttingMeasures {
  readonly jobs: number
  readonly generated: number
  readonly published: number
  /** Out of one. */
  readonly proved: { readonly price: number; readonly boards: number; readonly offcut: number }
  /** How far the price may lie above the least, in percent of the bound, over the jobs that are not proved. */
  readonly gap: { readonly mean: number; readonly most: number }
  readonly ms: { readonly median: number; readonly p95: number; readonly most: number }
  /** Plans that the check without a solver found wrong. */
  readonly wrong: number
  /** What plain longest-first on the one best stock pays more than the plan, in percent; and on how many jobs it pays as little. */
  readonly longestFirst: { readonly mean: number; readonly most: number; readonly asGood: number; readonly ms: number }
  /** The same solver on the model that lays each piece on each stick, over the smallest jobs, stopped at as many nodes. */
  readonly assignment: {
    readonly jobs: number
    readonly proved: number
    readonly provedHere: number
    readonly dearer: number
    readonly ms: { readonly median: number; readonly most: number }
    readonly msHere: { readonly median: number; readonly most: number }
  }
}

const generatedJobs = 200
const assignmentJobs = 20
const assignmentNodes = 600
// A model with more of these than this is not given to the solver: it would take hours, and says nothing more.
const mostAssignments = 2_500

export async function cuttingMeasures(): Promise<CuttingMeasures> {
  const solver = await cutSolver()
  if (!solver) throw new Error('the solver could not be loaded')
  const generated = Array.from({ length: generatedJobs }, (_, i) => generatedJob(i + 1))
  const published = [u120, ...byHand.map((it) => it.problem)]
  // Once before the clock runs, so that no job pays for the solver's first use.
  planCuts(u120, solver)
  const runs = [...generated, ...published].map((problem) => measured(problem, solver))
  const times = runs.map((it) => it.ms)
  const share = (is: (it: (typeof runs)[number]) => boolean): number => runs.filter(is).length / runs.length
  const gaps = runs
    .filter((it) => !it.plan.price.proved)
    .map((it) => percentOver(it.plan.price.value, it.plan.price.bound))
  const over = runs.map((it) => percentOver(it.longestFirst, it.plan.price.value))

  const small = runs.filter((it) => it.assignments <= mostAssignments && it.assignments > 30)
  const chosen = small.slice(0, assignmentJobs)
  const rivals = chosen.map((it) => assigned(it.bench, solver))
  return {
    jobs: runs.length,
    generated: generated.length,
    published: published.length,
    proved: {
      price: share((it) => it.plan.price.proved),
      boards: share((it) => it.plan.boards.proved),
      offcut: share((it) => it.plan.longest.proved),
    },
    gap: { mean: mean(gaps), most: Math.max(0, ...gaps) },
    ms: { median: at(times, 0.5), p95: at(times, 0.95), most: at(times, 1) },
    wrong: runs.filter((it) => it.wrong).length,
    longestFirst: {
      mean: mean(over),
      most: Math.max(...over),
      asGood: over.filter((it) => it <= 0).length,
      ms: at(
        runs.map((it) => it.longestFirstMs),
        0.5,
      ),
    },
    assignment: {
      jobs: chosen.length,
      proved: rivals.filter((it) => it.proved).length,
      provedHere: chosen.filter((it) => it.plan.price.proved).length,
      dearer: rivals.filter((it, i) => it.cost > (chosen[i]?.plan.price.value ?? 0) / (chosen[i]?.bench.step ?? 1))
        .length,
      ms: {
        median: at(
          rivals.map((it) => it.ms),
          0.5,
        ),
        most: at(
          rivals.map((it) => it.ms),
          1,
        ),
      },
      msHere: {
        median: at(
          chosen.map((it) => it.ms),
          0.5,
        ),
        most: at(
          chosen.map((it) => it.ms),
          1,
        ),
      },
    },
  }
}

function measured(problem: CutProblem, solver: Solver) {
  const start = performance.now()
  const planned = planCuts(problem, solver)
  const ms = performance.now() - start
  if (!planned.ok) throw new Error(`no plan: ${planned.why}`)
  const bench = benchFor(problem) as Bench
  const from = performance.now()
  const costs = [...bench.rooms.keys()].flatMap((stock) => {
    const sticks = firstFit(bench, stock)
    return sticks ? [costOf(bench, sticks) * bench.step] : []
  })
  const longestFirstMs = performance.now() - from
  return {
    bench,
    plan: planned.plan,
    ms,
    wrong: checkPlan(problem, planned.plan).length > 0,
    longestFirst: Math.min(...costs),
    longestFirstMs,
    assignments: bench.demand.reduce((sum, it) => sum + it, 0) * sticksToOffer(bench),
  }
}

/** Sticks that the other model may begin: of each stock as many as longest-first needs of it, and no more than the material asks twice. */
const sticksToOffer = (bench: Bench): number =>
  bench.rooms.reduce((sum, room) => sum + Math.ceil((1.5 * material(bench)) / Math.max(1, room)) + 1, 0)

/** Whether piece i lies on stick j, and whether stick j is bought. */
function assigned(bench: Bench, solver: Solver): { cost: number; proved: boolean; ms: number } {
  const pieces = bench.widths.flatMap((width, kind) =>
    Array.from({ length: bench.demand[kind] as number }, () => width),
  )
  const sticks = bench.rooms.flatMap((room, stock) =>
    Array.from({ length: Math.ceil((1.5 * material(bench)) / Math.max(1, room)) + 1 }, () => stock),
  )
  const lays = pieces.flatMap((width, piece) =>
    sticks.flatMap((stock, stick) => ((bench.rooms[stock] as number) >= width ? [{ piece, stick, width }] : [])),
  )
  const model: Model = {
    costs: [...lays.map(() => 0), ...sticks.map((stock) => bench.costs[stock] as number)],
    entries: [
      ...lays.map(({ piece, stick, width }) => [[piece, 1] as const, [pieces.length + stick, width] as const]),
      ...sticks.map((stock, stick) => [[pieces.length + stick, -(bench.rooms[stock] as number)] as const]),
    ],
    most: [...lays.map(() => 1), ...sticks.map(() => 1)],
    rows: [...pieces.map(() => ({ least: 1 })), ...sticks.map(() => ({ most: 0 }))],
    whole: true,
    nodeLimit: assignmentNodes,
  }
  const start = performance.now()
  const solved = solver.solve(model)
  const ms = performance.now() - start
  const cost = sticks.reduce(
    (sum, stock, stick) => sum + (bench.costs[stock] as number) * Math.round(solved.values[lays.length + stick] ?? 0),
    0,
  )
  const isPlan = solved.values.length > 0
  return { cost: isPlan ? cost : costOf(bench, firstPlan(bench) ?? []), proved: solved.status === 'solved', ms }
}

const percentOver = (value: number, bound: number): number => (100 * (value - bound)) / Math.max(1, bound)
const mean = (all: readonly number[]): number =>
  all.length === 0 ? 0 : all.reduce((sum, it) => sum + it, 0) / all.length
const at = (all: readonly number[], share: number): number =>
  [...all].sort((a, b) => a - b)[Math.min(all.length - 1, Math.floor(all.length * share))] ?? 0

/** The same in words. */
export function inWords(it: CuttingMeasures): string {
  const percent = (share: number): string => `${(100 * share).toFixed(1)} %`
  const ms = (time: number): string => `${time.toFixed(0)} ms`
  return [
    `cut plans: ${it.jobs} jobs, ${it.generated} made up and ${it.published} published; ${it.wrong} found wrong by the check`,
    `  proved: price ${percent(it.proved.price)}, boards ${percent(it.proved.boards)}, longest offcut ${percent(it.proved.offcut)}`,
    `  gap of the rest: mean ${it.gap.mean.toFixed(2)} %, most ${it.gap.most.toFixed(2)} %`,
    `  time: median ${ms(it.ms.median)}, 95 of 100 within ${ms(it.ms.p95)}, most ${ms(it.ms.most)}; ${(it.ms.median / it.longestFirst.ms).toFixed(0)} × longest-first, ${(it.assignment.msHere.median / it.assignment.ms.median).toFixed(3)} × the same solver laying each piece on each stick`,
    `  plain longest-first on the best one stock: ${it.longestFirst.mean.toFixed(2)} % dearer (most ${it.longestFirst.most.toFixed(2)} %), as good on ${it.longestFirst.asGood}; median ${it.longestFirst.ms.toFixed(2)} ms`,
    `  each piece on each stick, the ${it.assignment.jobs} first jobs small enough for it (at most ${mostAssignments} choices), at most ${assignmentNodes} nodes: proved ${it.assignment.proved} (here ${it.assignment.provedHere}), dearer on ${it.assignment.dearer}; median ${ms(it.assignment.ms.median)}, most ${ms(it.assignment.ms.most)} (here ${ms(it.assignment.msHere.median)}, ${ms(it.assignment.msHere.most)})`,
  ].join('\n')
}
