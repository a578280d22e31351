// This file is about working the job: which calculations answer what is wanted, fed by what was decided and by each other.
import { type Calculation, needsFor, run, usualFor } from '../calculation.ts'
import { calculationNamed, catalogue, vocabulary } from '../catalogue.ts'
import type { Given, Outcome } from '../outcome.ts'
import { isQuantity, type Quantity, type Value } from '../quantities/quantity.ts'
import { decided, type Job, systemOf, type Wanted } from './job.ts'
import { kindsIn, postKinds, yard } from './places.ts'

/** One calculation as it was run for the job. */
export interface Worked {
  readonly calculation: Calculation
  readonly at: string
  readonly places: readonly string[]
  readonly wanted: readonly string[]
  readonly outcome: Outcome
}

/** Works everything that is wanted: one run for each calculation and place, each after those that feed it. */
export function work(job: Job, wanted: readonly Wanted[], turn: number, named?: string | null): Worked[] {
  const done: Worked[] = []
  const places = [...new Set(wanted.map((want) => want.at))]
  for (const at of places) {
    let open = wanted.filter((want) => want.at === at).map((want) => want.word)
    while (open.length > 0) {
      const chosen = choose(job, open, at, turn, named)
      if (!chosen) break
      const here = withTheirs(
        job,
        chosen,
        open.filter((word) => chosen.gives[word]),
        at,
      )
      workOne(job, chosen, here, at, turn, done)
      open = open.filter((word) => !chosen.gives[word])
    }
  }
  return done
}

/** What is wanted of a calculation, with the results that it tells together; what the person said themselves is not told back. */
function withTheirs(job: Job, calc: Calculation, wanted: readonly string[], at: string): string[] {
  const all = wanted.flatMap((word) => [
    word,
    ...(calc.together?.[word] ?? []).filter((it) => it !== word && !decided(job, it, at)),
  ])
  // In the order in which the calculation tells them, when there is one.
  const order = wanted.map((word) => calc.together?.[word]).find((it) => it !== undefined) ?? []
  const rank = (word: string): number => (order.includes(word) ? order.indexOf(word) : order.length)
  return [...new Set(all)].sort((a, b) => rank(a) - rank(b))
}

/**
 * The calculation that gives the most of what is wanted and takes the most of what has just been said: a bell that was
 * mentioned is not left out of the sum. Then the one with the least left to ask, and the one that most was ever said for.
 */
function choose(
  job: Job,
  wanted: readonly string[],
  at: string,
  turn: number,
  named?: string | null,
): Calculation | undefined {
  const asked = named ? calculationNamed(named) : undefined
  if (asked && wanted.some((word) => asked.gives[word])) return asked
  const scored = catalogue
    .map((calc) => {
      const here = wanted.filter((word) => calc.gives[word])
      const missing = needsFor(calc, here).filter((word) => !isKnown(job, calc, word.name, at)).length
      const known = Object.keys(calc.needs).flatMap((word) => decided(job, word, at) ?? [])
      const [said, now] = [known.length, known.filter((it) => it.turn === turn).length]
      const headline = here.some((word) => calc.headlines.includes(word)) ? 1 : 0
      return { calc, here: here.length, missing, said, now, headline }
    })
    .filter((it) => it.here > 0)
  return scored.sort(
    (a, b) => b.here - a.here || b.now - a.now || a.missing - b.missing || b.said - a.said || b.headline - a.headline,
  )[0]?.calc
}

const isKnown = (job: Job, calc: Calculation, word: string, at: string): boolean =>
  decided(job, word, at) !== undefined ||
  (word === 'posts' && rowsOfPosts(job, at).length > 0) ||
  usualFor(calc, vocabulary.get(word) as NonNullable<ReturnType<typeof vocabulary.get>>) !== undefined ||
  feeder(job, word, at, [calc.name]) !== undefined

/** A calculation that may stand in for a word nobody said: it joins, and what it needs itself was said. */
function feeder(job: Job, word: string, at: string, above: readonly string[]): Calculation | undefined {
  // A run's posts are all of the yard's: they never stand in for the corner posts.
  if (vocabulary.get(word)?.inherits === false && at !== yard) return undefined
  return catalogue.find(
    (calc) =>
      calc.joins &&
      calc.gives[word] &&
      !above.includes(calc.name) &&
      needsFor(calc, [word]).some((need) => decided(job, need.name, at)) &&
      needsFor(calc, [word]).every(
        (need) =>
          decided(job, need.name, at) || usualFor(calc, need) || feeder(job, need.name, at, [...above, calc.name]),
      ),
  )
}

/** The kinds of post whose number was said apart, where the place itself has none: "4 corner posts and 3 gate posts". */
function rowsOfPosts(job: Job, at: string): string[] {
  if (decided(job, 'posts', at)) return []
  const kinds = at === yard ? Object.keys(postKinds) : kindsIn(at)
  const apart = job.decisions
    .filter((it) => it.word === 'posts' && it.at !== yard && kindsIn(it.at).every((kind) => kinds.includes(kind)))
    .map((it) => it.at)
  const covered = apart.flatMap(kindsIn)
  if (new Set(covered).size !== covered.length) return []
  if (at !== yard && !kinds.every((kind) => covered.includes(kind))) return []
  return apart
}

function workOne(
  job: Job,
  calc: Calculation,
  wanted: readonly string[],
  at: string,
  turn: number,
  done: Worked[],
  above: readonly string[] = [],
): Outcome {
  const before = done.find((it) => it.calculation === calc && it.at === at)
  if (before) return before.outcome
  const rows = calc.needs.posts ? rowsOfPosts(job, at) : []
  const places = rows.length > 0 ? rows : [at]
  const given = new Map<string, Given>()
  for (const word of Object.values(calc.needs)) {
    const found = places.map((place) => decided(job, word.name, place))
    const [first] = found
    if (first && found.every((it) => it !== undefined)) {
      const role = found.some((it) => it?.turn === turn) ? 'said' : 'known'
      const value: Value =
        rows.length > 1 && found.some((it) => it?.at !== first.at) && found.every((it) => isQuantity(it?.value))
          ? found.map((it) => it?.value as Quantity)
          : first.value
      given.set(word.name, { value, role })
      continue
    }
    if (above.includes(calc.name)) continue
    const feeds = feeder(job, word.name, at, [...above, calc.name])
    if (!feeds) continue
    const outcome = workOne(job, feeds, [word.name], at, turn, done, [...above, calc.name])
    const value = outcome.ok ? outcome.values.get(word.name) : undefined
    if (value !== undefined) given.set(word.name, { value, role: 'result' })
  }
  const outcome = run(calc, given, { system: systemOf(job), wanted, confirmed: new Set(job.confirmed), places })
  done.push({ calculation: calc, at, places, wanted, outcome })
  return outcome
}
