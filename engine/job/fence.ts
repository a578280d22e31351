// This file is about the fence that has been told so far: its runs in order, where they meet, and the gates in them.
// Nothing is worked here: only what the decisions say stands where.
import { isRun, partOf, runOf, yard } from '../places.ts'
import { isList, isQuantity, type Quantity, type Value } from '../quantities/quantity.ts'
import { toNumber } from '../quantities/amount.ts'
import { type Decision, decidedAt as at, type Job } from './job.ts'

export interface GateTold {
  readonly place: string
  readonly opening: Decision | undefined
  readonly start: Decision | undefined
}

export interface RunTold {
  readonly place: string
  /** Where its words are told: the run itself, or the yard where the whole fence is one run that nobody named. */
  readonly told: string
  readonly length: { readonly value: Quantity; readonly turn: number } | undefined
  readonly gates: readonly GateTold[]
  readonly nearEnd: string
  readonly farEnd: string
  /** Whether its last post is the next run's first. */
  readonly meetsNext: boolean
}

export interface Fence {
  readonly runs: readonly RunTold[]
  readonly isClosed: boolean
  /** Whether the runs were told one by one: what is asked then is asked of all of them. */
  readonly isByRuns: boolean
}

/** The fence as told, or from the sides between its corner points. Runs stand in the order in which their lengths were first told. */
export function fenceOf(job: Job, surveyed?: readonly Quantity[]): Fence {
  const here = (word: string, place: string): Decision | undefined => at(job, word, place)
  const named = namedRuns(job)
  const sides = surveyed ?? here('fenceSides', yard)?.value
  const isClosed = here('runEnds', yard)?.value === 'loop'
  // What is told of “run 2” speaks of a run there already is, where the lengths came as a list or as points.
  const isListed = surveyed !== undefined || (isList(sides) && !named.some((it) => here('runLength', it)))
  const places = named.length > 0 && !isListed ? named : numberedRuns(job, sides)
  const told = places.length > 2 && !isListed ? inTheirOrder(places) : places
  const runs = told.map((place, i) => {
    // What was told last holds: the run in one length, or in its pieces.
    const [whole, pieces] = [here('runLength', place), here('runPieces', place)]
    const own = pieces && whole && pieces.turn > whole.turn ? undefined : whole
    const alone = named.length === 0 && !isListed
    const where = alone ? yard : place
    const side = isListed && isList(sides) ? sides[i] : undefined
    const length = own ?? (alone ? here('runLength', yard) : undefined)
    const turn = here('fenceSides', yard)?.turn ?? 0
    return {
      place,
      told: where,
      length: side
        ? { value: side, turn }
        : length && isQuantity(length.value)
          ? { value: length.value, turn: length.turn }
          : undefined,
      gates: gatesOf(job, place, where),
      nearEnd: endOf(job, place, where, 'nearEnd', i === 0),
      farEnd: endOf(job, place, where, 'farEnd', i === told.length - 1),
    }
  })
  const placed = atFreeEnds(runs)
  return {
    isClosed,
    isByRuns: named.length > 0 || surveyed !== undefined,
    runs: placed.map((run, i) => {
      const next = placed[i + 1] ?? (isClosed ? placed[0] : undefined)
      const isJoint = next !== undefined && run.farEnd !== 'wall' && next.nearEnd !== 'wall'
      return { ...run, meetsNext: isJoint && !areOpposite(run.place, next.place) }
    }),
  }
}

const around = [
  ['left', 'front', 'right', 'back'],
  ['west', 'north', 'east', 'south'],
]

/** Three sides of a yard, in whatever order they were told, stand as one walks round them: the missing one is where the fence is open. */
function inTheirOrder(places: readonly string[]): readonly string[] {
  const ring = around.find((it) => places.every((place) => it.includes(place)))
  if (!ring) return places
  // All four, told across: they still stand as one walks round.
  if (places.length === 4 && places.some((it, i) => i > 0 && areOpposite(it, places[i - 1] as string))) {
    const first = ring.indexOf(places[0] as string)
    return [0, 1, 2, 3].map((step) => ring[(first + step) % 4] as string)
  }
  if (places.length !== 3) return places
  const missing = ring.findIndex((it) => !places.includes(it))
  return [1, 2, 3].map((step) => ring[(missing + step) % 4] as string)
}

const apartIn = (a: string, b: string): number | undefined => {
  const ring = around.find((it) => it.includes(a) && it.includes(b))
  return ring && (ring.indexOf(b) - ring.indexOf(a) + 4) % 4
}
/** The front and the back meet nowhere. */
const areOpposite = (a: string, b: string): boolean => apartIn(a, b) === 2
const areNeighbours = (a: string, b: string): boolean => apartIn(a, b) === 1 || apartIn(a, b) === 3

type Ends = Pick<RunTold, 'place' | 'nearEnd' | 'farEnd'>
/** “The left ends at the house”: a side that meets another has its wall at the other end, whichever way it was told. */
function atFreeEnds<T extends Ends>(runs: readonly T[]): T[] {
  const [first, second] = runs
  const [last, before] = [runs.at(-1), runs.at(-2)]
  return runs.map((run) => {
    const turned = { ...run, nearEnd: run.farEnd, farEnd: run.nearEnd }
    if (run === first && second && areNeighbours(run.place, second.place))
      return run.farEnd === 'wall' && run.nearEnd !== 'wall' ? turned : run
    if (run === last && before && areNeighbours(run.place, before.place))
      return run.nearEnd === 'wall' && run.farEnd !== 'wall' ? turned : run
    return run
  })
}

/** Places of runs that anything was told of, in the order in which they first came up. */
function namedRuns(job: Job): string[] {
  const all = job.moves.flatMap((it) => it.decisions).filter((it) => isRun(runOf(it.at)))
  const lengths = all.filter((it) => it.word === 'runLength' || it.word === 'runPieces').map((it) => it.at)
  const out = new Set(job.decisions.filter((it) => it.word === 'leftOut' && it.value === 'out').map((it) => it.at))
  const current = new Set(job.decisions.map((it) => runOf(it.at)).filter((it) => !out.has(it)))
  return [...new Set([...lengths, ...all.map((it) => runOf(it.at))])].filter((it) => current.has(it))
}

const numberedRuns = (job: Job, sides: Value | undefined): string[] =>
  isList(sides) ? sides.map((_, i) => `run-${i + 1}`) : at(job, 'runLength', yard) ? ['run-1'] : []

/** What the run is measured to at one end: what was said there, else what was said of all, where that end is free. */
function endOf(job: Job, place: string, told: string, end: 'nearEnd' | 'farEnd', isFree: boolean): string {
  const own = at(job, end, place)?.value
  if (typeof own === 'string') return own
  const ends = (at(job, 'runEnds', told) ?? at(job, 'runEnds', yard))?.value
  const isOwn = told !== yard && at(job, 'runEnds', told) !== undefined
  if (ends === 'outside') return 'outside'
  return ends === 'walls' && (isFree || isOwn) ? 'wall' : 'post'
}

function gatesOf(job: Job, place: string, told: string): GateTold[] {
  const ofRun = job.decisions
    .filter((it) => it.at.startsWith(`${place}/gate-`))
    .map((it) => Number(it.at.split('-').at(-1)))
  const count = at(job, 'gates', told)?.value
  const said = isQuantity(count) ? Math.round(toNumber(count.amount)) : undefined
  const hinted = at(job, 'gateOpening', told) || at(job, 'gateStart', told) ? 1 : 0
  const number = Math.max(said ?? hinted, 0, ...ofRun)
  return Array.from({ length: number }, (_, i) => partOf(place, 'gate', i + 1)).flatMap((gate): GateTold[] => {
    if (at(job, 'leftOut', gate)?.value === 'out') return []
    return [
      {
        place: gate,
        opening: at(job, 'gateOpening', gate) ?? at(job, 'gateOpening', told) ?? at(job, 'gateOpening', yard),
        start: at(job, 'gateStart', gate) ?? (number === 1 ? at(job, 'gateStart', told) : undefined),
      },
    ]
  })
}
