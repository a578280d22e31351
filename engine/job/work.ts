// This file is about working the job: which calculations answer what is wanted, fed by what was decided and by each other.
import { type Calculation, needsFor, run, usualFor, usualValue } from '../calculation.ts'
import { calculationNamed, catalogue, vocabulary } from '../catalogue.ts'
import type { Given, Outcome, Problem } from '../outcome.ts'
import { toNumber } from '../quantities/amount.ts'
import { isList, isQuantity, type Quantity, type Value } from '../quantities/quantity.ts'
import { inSentence, type Word } from '../words/word.ts'
import { type Decision, decided, type GivenBy, type Job, sameValue, systemOf, type Wanted } from './job.ts'
import { kindsIn, placeLabel, postKinds, yard } from '../places.ts'
import { takeOff } from '../calculations/buying/take-off.ts'
import { regiven } from './remembered.ts'
import { ownName } from './parts.ts'
import type { Solver } from '../cutting/solver.ts'
import type { Memo, Plan } from './node.ts'
import { planOf } from './plan.ts'

/** One calculation as it was run for the job. */
export interface Worked {
  readonly calculation: Calculation
  readonly at: string
  readonly places: readonly string[]
  readonly wanted: readonly string[]
  readonly outcome: Outcome
  /** A part of the fence that answers what was asked, by whatever name it knows it. */
  readonly answers?: true
}

/** What is worked on: the job, and the plan of the whole fence where its runs are told. */
interface Ground {
  readonly job: Job
  readonly plan: Plan | undefined
  readonly turn: number
  readonly solver: Solver | undefined
}

export interface WorkOptions {
  /** The calculation that was asked for by name. */
  readonly named?: string | null
  /** What earlier plans of the same turn have worked. */
  readonly memo?: Memo
}

/** Works everything that is wanted: one run for each calculation and place, each after those that feed it. */
export function work(job: Job, wanted: readonly Wanted[], turn: number, options: WorkOptions = {}): Worked[] {
  const { named, memo } = options
  const ground: Ground = { job, plan: planOf(job, memo, turn), turn, solver: memo?.solver }
  const done: Worked[] = []
  const places = [...new Set(wanted.map((want) => want.at))]
  for (const at of places) {
    let open = wanted.filter((want) => want.at === at).map((want) => want.word)
    open = open.filter((word) => !answeredByPlan(ground, word, at, named, done))
    while (open.length > 0) {
      const chosen = choose(ground, open, at, named)
      if (!chosen) break
      const here = withTheirs(
        job,
        chosen,
        open.filter((word) => chosen.gives[word]),
        at,
      )
      workOne(ground, chosen, here, at, done)
      open = open.filter((word) => !chosen.gives[word])
    }
  }
  return done
}

const mostAtOnce = 8

/** What the plan of the whole fence says of a word, at its place or at the places within it. */
function answeredByPlan(
  { plan, job, turn }: Ground,
  word: string,
  at: string,
  named: string | null | undefined,
  done: Worked[],
): boolean {
  if (!plan?.fence.isByRuns || standsApart(job, at, turn)) return false
  const nodes = plan
    .answer(word, at)
    .filter((it) => !named || it.part.calculation.name === named || !calculationNamed(named)?.gives[word])
  // The take-off is of the whole fence, and says so to whoever asks it of one run.
  if (nodes.length === 0 && at !== yard && takeOff.gives[word]) {
    const whole = plan.node(word, yard)
    if (!whole) return false
    done.push({
      calculation: takeOff,
      at: yard,
      places: whole.places,
      wanted: withTheirs(job, takeOff, [word], yard),
      outcome: ofWhole(whole.outcome),
      answers: true,
    })
    return true
  }
  if (nodes.length === 0 || nodes.length > mostAtOnce) return false
  for (const node of nodes) {
    const name = ownName(node.part, word)
    const before = done.findIndex((it) => it.calculation === node.part.calculation && it.at === node.at)
    const wanted = withTheirs(job, node.part.calculation, [...(done[before]?.wanted ?? []), name], at)
    const worked = {
      calculation: node.part.calculation,
      at: node.at,
      places: node.places,
      wanted,
      outcome: node.outcome,
      answers: true as const,
    }
    if (before >= 0) done[before] = worked
    else done.push(worked)
  }
  return true
}

/** The outcome, with a word that it is of all runs together. */
function ofWhole(outcome: Outcome): Outcome {
  if (!outcome.ok) return outcome
  const remarks = ['That is for the whole fence: I do not take off one run alone.', ...outcome.remarks]
  return { ...regiven(outcome, outcome.given), remarks } as Outcome
}

/** “How many posts for a run of 40 ft?” in the midst of a fence of other runs is a question of its own. */
const standsApart = (job: Job, at: string, turn: number): boolean =>
  job.decisions.some((it) => it.turn === turn && it.at === at && at === yard && ofOneRun.has(it.word))
const ofOneRun = new Set([
  'runLength',
  'opening',
  'bayCentres',
  'bays',
  'posts',
  'fenceSides',
  'pickets',
  'picketsHung',
  'openings',
])

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
function choose(ground: Ground, wanted: readonly string[], at: string, named?: string | null): Calculation | undefined {
  const { job, turn } = ground
  const asked = named ? calculationNamed(named) : undefined
  const isEarly = asked?.untilBays && decided(job, 'widestBay', at) !== undefined
  if (asked && !isEarly && wanted.some((word) => asked.gives[word])) return asked
  const scored = catalogue
    .filter((calc) => !calc.ofTheFence && wanted.some((word) => calc.gives[word]))
    .map((calc) => {
      const here = wanted.filter((word) => calc.gives[word])
      const missing = needsFor(calc, here).filter((word) => !isKnown(ground, calc, word.name, at)).length
      const known = Object.keys(calc.needs).flatMap((word) => decided(job, word, at) ?? [])
      const [said, now] = [known.length, known.filter((it) => it.turn === turn).length]
      const headline = here.some((word) => calc.headlines.includes(word)) ? 1 : 0
      return { calc, here: here.length, missing, said, now, headline }
    })
  const byBays = scored.filter((it) => !it.calc.untilBays)
  const isOutdone = (it: (typeof scored)[number]): boolean =>
    it.calc.untilBays === true && byBays.some((by) => by.here >= it.here && by.missing <= it.missing)
  return scored
    .filter((it) => !isOutdone(it))
    .sort(
      (a, b) =>
        b.here - a.here ||
        b.now + b.said - a.now - a.said ||
        // Boards in two layers have a gap too: what answers to phrases of its own stands back.
        Number(a.calc.called !== undefined) - Number(b.calc.called !== undefined) ||
        a.missing - b.missing ||
        b.said - a.said ||
        b.headline - a.headline,
    )[0]?.calc
}

const isKnown = ({ job, plan }: Ground, calc: Calculation, word: string, at: string): boolean =>
  decided(job, word, at) !== undefined ||
  plan?.worked(word, at) !== undefined ||
  (word === 'posts' && rowsOfPosts(job, at).length > 0) ||
  usualFor(calc, vocabulary.get(word) as NonNullable<ReturnType<typeof vocabulary.get>>) !== undefined ||
  feeder(job, word, at, [calc.name]) !== undefined

/**
 * A calculation that may stand in for a word nobody said: it joins, or gave the word earlier in the talk, and what it needs itself was said.
 * Of several, the one that most was said for: a bell that was mentioned is not left out of the sum.
 */
function feeder(job: Job, word: string, at: string, above: readonly string[]): Calculation | undefined {
  // A run's posts are all of the yard's: they never stand in for the corner posts.
  if (vocabulary.get(word)?.inherits === false && at !== yard) return undefined
  const able = [...(joining.get(word) ?? []), ...gaveBefore(job, word, at)].filter(
    (calc) =>
      !above.includes(calc.name) &&
      (calc.oneOf ?? []).every((group) => group.some((need) => decided(job, need, at))) &&
      needsFor(calc, [word]).some((need) => decided(job, need.name, at)) &&
      needsFor(calc, [word]).every(
        (need) =>
          decided(job, need.name, at) ||
          (need.name === 'posts' && rowsOfPosts(job, at).length > 0) ||
          usualFor(calc, need) ||
          feeder(job, need.name, at, [...above, calc.name]),
      ),
  )
  const said = (calc: Calculation): number => Object.keys(calc.needs).filter((need) => decided(job, need, at)).length
  return able.reduce<Calculation | undefined>(
    (best, calc) => (best && said(best) >= said(calc) ? best : calc),
    undefined,
  )
}

/** “How wide must the holes be?”, and then “how much soil is that?”: what was worked in this talk is known in it. */
const gaveBefore = (job: Job, word: string, at: string): Calculation[] =>
  job.results.flatMap((it) => (it.word === word && it.at === at ? (calculationNamed(it.calculation) ?? []) : []))

/** Calculations that may stand in, by the words that they give. */
const joining = new Map<string, Calculation[]>()
for (const calc of catalogue)
  if (calc.joins) for (const word of Object.keys(calc.gives)) joining.set(word, [...(joining.get(word) ?? []), calc])

/**
 * The kinds of post whose number was said apart, where the place itself has none: "4 corner posts and 3 gate posts";
 * or where they make up the number that it has: "20 posts", and then "16 line posts, 4 corner posts".
 */
function rowsOfPosts(job: Job, at: string): string[] {
  const apart = postsWithin(job, at)
  const covered = apart.flatMap((it) => kindsIn(it.at))
  if (new Set(covered).size !== covered.length) return []
  const all = decided(job, 'posts', at)
  if (all && countOf(all) !== inAll(apart)) return []
  const here = kindsIn(at)
  if (at !== yard && (here.length === 0 || !here.every((kind) => covered.includes(kind)))) return []
  return apart.map((it) => it.at)
}

/** The numbers of posts that were said for kinds within a place. */
function postsWithin(job: Job, at: string): Decision[] {
  const kinds = at === yard ? Object.keys(postKinds) : kindsIn(at)
  return job.decisions.filter((it) => {
    const theirs = kindsIn(it.at)
    return it.word === 'posts' && it.at !== at && theirs.length > 0 && theirs.every((kind) => kinds.includes(kind))
  })
}

const countOf = (it: Decision): number => toNumber((it.value as Quantity).amount)
const inAll = (apart: readonly Decision[]): number => apart.reduce((sum, it) => sum + countOf(it), 0)

/** What was told of one kind of post only and cannot come into the sum, since it is not known how many of the posts are of that kind. */
function leftApart(job: Job, calc: Calculation, at: string, places: readonly string[]): Problem | undefined {
  const within = (place: string, wider: string): boolean =>
    kindsIn(place).length > 0 && kindsIn(place).every((kind) => kindsIn(wider).includes(kind))
  const touches = (place: string): boolean => at === yard || kindsIn(place).some((kind) => kindsIn(at).includes(kind))
  const own = job.decisions.find((it) => {
    if (it.word === 'posts' || !calc.needs[it.word] || kindsIn(it.at).length === 0 || !touches(it.at)) return false
    const here = decided(job, it.word, at)
    return !places.some((place) => within(place, it.at)) && !(here && sameValue(here.value, it.value))
  })
  const all = decided(job, 'posts', at)
  const apart = postsWithin(job, at)
  const rest = all ? countOf(all) - inAll(apart) : 0
  const said = (it: Decision): string => `${countOf(it)} ${placeLabel(it.at)}`
  const byKind = apart.map(said).join(' and ')
  const posts = (message: string, ask?: string): Problem => ({
    code: 'contradictory',
    word: 'posts',
    message,
    ...(ask ? { ask } : {}),
  })
  if (all && rest < 0)
    return posts(
      `You said ${countOf(all)} posts in all, and by kind ${byKind}: that is more.`,
      'How many posts are there in all, and of each kind?',
    )
  if (!own)
    return all && apart.length > 0 && rest > 0
      ? posts(`I took the ${byKind} to be among the ${countOf(all)} posts.`)
      : undefined
  const isSplit = all && apart.length > 0 && !apart.some((it) => kindsIn(it.at).includes('line-posts'))
  return posts(
    `The ${placeLabel(own.at)} have their own ${vocabulary.get(own.word)?.label}, so I must know how many posts of each kind there are.`,
    isSplit
      ? `Are the ${byKind} among the ${countOf(all)} posts? Then say “${rest} line posts”. If they come on top, say “${countOf(all) + inAll(apart)} posts in all, ${countOf(all)} line posts”.`
      : `How many ${placeLabel(own.at)} are there, and how many others?`,
  )
}

function workOne(
  ground: Ground,
  calc: Calculation,
  wanted: readonly string[],
  at: string,
  done: Worked[],
  above: readonly string[] = [],
  fedTo: readonly string[] = [at],
): Outcome {
  const before = done.find((it) => it.calculation === calc && it.at === at)
  if (before) return before.outcome
  const { job, plan, turn, solver } = ground
  const rows = calc.needs.posts ? rowsOfPosts(job, at) : []
  const places = rows.length > 0 ? rows : fedTo
  const system = systemOf(job)
  const needed = new Set([...(calc.may ?? []), ...needsFor(calc, wanted).map((word) => word.name)])
  const given = new Map<string, Given>()
  const problems: Problem[] = []
  const spared = sparedIn(job, calc, places)
  for (const word of Object.values(calc.needs)) {
    const told = places.map((place) => decided(job, word.name, place))
    const link = told.length === 1 ? told[0]?.of : undefined
    if (link) {
      const value = linked(word, link)
      if (value !== undefined) given.set(word.name, { value, role: 'result' })
      else
        problems.push({
          code: 'missing',
          word: word.name,
          message: `I need ${inSentence(word)}, which waits for the sum before it.`,
        })
      continue
    }
    const fed =
      told.every((it) => it) || spared.has(word.name)
        ? undefined
        : plan?.fence.isByRuns
          ? (planned(word) ?? feed(word))
          : (feed(word) ?? planned(word))
    // Nobody said it anywhere: `run` takes its usual value, or asks.
    if (told.every((it) => !it)) {
      if (fed !== undefined) given.set(word.name, { value: fed, role: 'result' })
      continue
    }
    const each = told.map((it, i): Given | undefined => {
      if (it) return { value: it.value, role: it.turn === turn ? 'said' : 'known' }
      if (fed !== undefined) return { value: isList(fed) && !word.list ? (fed[i] as Quantity) : fed, role: 'result' }
      const usual = usualValue(calc, word, system)
      return usual === undefined ? undefined : { value: usual, role: 'assumed' }
    })
    const open = places.filter((_, i) => !each[i])
    const joined = told.every((it) => it && it.at === told[0]?.at) ? each[0] : inOne(each)
    if (open.length === 0 && joined) given.set(word.name, joined)
    else if (needed.has(word.name)) problems.push(open.length > 0 ? missingAt(word, open) : unlike(word, each, places))
  }
  const apart = needed.has('posts') && calc.needs.posts ? leftApart(job, calc, at, places) : undefined
  if (apart?.ask) problems.push(apart)
  const worked = run(calc, given, {
    system,
    wanted,
    confirmed: new Set(job.confirmed),
    places,
    ...(solver ? { solver } : {}),
    doubts: apart && !apart.ask ? [apart] : [],
  })
  const outcome = problems.length > 0 ? stopped(worked, problems) : worked
  done.push({ calculation: calc, at, places, wanted, outcome })
  return outcome

  function feed(word: Word): Value | undefined {
    if (above.includes(calc.name)) return undefined
    const chain = [...above, calc.name]
    const feeds = places.map((place) => feeder(job, word.name, place, chain))
    const [first] = feeds
    if (!first || feeds.some((it) => it !== first)) return undefined
    const outcome = workOne(ground, first, [word.name], at, done, chain, places)
    return outcome.ok ? outcome.values.get(word.name) : undefined
  }

  /** What the sum gives that the word was told to be of: “they are 3.29 each”, of the pickets to buy. */
  function linked(word: Word, of: GivenBy): Value | undefined {
    const by = of.calculation === '*' ? choose(ground, [of.word], at) : calculationNamed(of.calculation)
    if (!by || by === calc || above.includes(by.name)) return undefined
    const outcome = workOne(ground, by, [of.word], at, done, [...above, calc.name], places)
    const value = outcome.ok ? outcome.values.get(of.word) : undefined
    if (!isQuantity(value)) return undefined
    const own = word.noun ? { ...value, unit: word.noun } : value
    return word.list ? [own] : own
  }

  /** What the plan of the whole fence gives for it, the working beside it. */
  function planned(word: Word): Value | undefined {
    if (above.includes(calc.name) || calc.gives[word.name]) return undefined
    const found = places.map((place) => plan?.worked(word.name, place))
    const [first] = found
    if (!first || found.some((it) => it?.node !== first.node)) return undefined
    const { part, outcome: given, places: where } = first.node
    const name = ownName(part, word.name)
    if (!done.some((it) => it.calculation === part.calculation && it.at === first.node.at))
      done.push({ calculation: part.calculation, at: first.node.at, places: where, wanted: [name], outcome: given })
    return first.value
  }
}

/** The words that another of their group stands for: one that was told, else the one that was worked last. */
function sparedIn(job: Job, calc: Calculation, places: readonly string[]): Set<string> {
  return new Set(
    (calc.standIns ?? []).flatMap((group) => {
      const enough =
        group.find((word) => places.some((place) => decided(job, word, place))) ??
        job.results.findLast((it) => group.includes(it.word))?.word
      return enough ? group.filter((word) => word !== enough) : []
    }),
  )
}

/** The values of all places as one given: a list of quantities, or the one choice that they agree on; nothing where they differ otherwise. */
function inOne(each: readonly (Given | undefined)[]): Given | undefined {
  const all = each.filter((it) => it !== undefined)
  const [first] = all
  if (!first || all.length < each.length) return undefined
  const roles = all.map((it) => it.role)
  const role = (['assumed', 'said', 'known'] as const).find((it) => roles.includes(it)) ?? first.role
  if (all.every((it) => isQuantity(it.value)))
    return { value: all.map((it) => it.value as Quantity), role, ...(roles.some((it) => it !== role) ? { roles } : {}) }
  return all.every((it) => sameValue(it.value, first.value)) ? { value: first.value, role } : undefined
}

const missingAt = (word: Word, places: readonly string[]): Problem => {
  const which = places.map(placeLabel).join(' and the ')
  return {
    code: 'missing',
    word: word.name,
    message: `I need ${inSentence(word)} for the ${which} as well.`,
    ask: `For the ${which}: ${word.ask.charAt(0).toLowerCase()}${word.ask.slice(1)}`,
  }
}

/** A choice that differs by place: one working cannot hold both. */
const unlike = (word: Word, each: readonly (Given | undefined)[], places: readonly string[]): Problem => ({
  code: 'contradictory',
  word: word.name,
  message: `The ${word.label} is not the same for all: ${each.map((it, i) => `${word.options?.[String(it?.value)]?.label ?? 'another'}${it?.role === 'assumed' ? ' as usual' : ''} (${placeLabel(places[i] as string)})`).join(', ')}. I can work only one at a time: ask for each kind of post on its own.`,
})

/** What was given, and why it is not worked. */
function stopped(worked: Outcome, problems: readonly Problem[]): Outcome {
  const isOpen = (word: string): boolean => problems.some((it) => it.word === word)
  const others = worked.ok ? [] : worked.problems.filter((it) => !isOpen(it.word))
  const given = new Map([...worked.given].filter(([name, it]) => it.role !== 'assumed' || !isOpen(name)))
  return { ok: false, given, problems: [...problems, ...others], cited: worked.cited }
}
