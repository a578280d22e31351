// This file is about the plan of a whole fence: which part gives a word at a place, worked when it is asked for, and never twice.
//
//   picketsToBuy (yard) ◄─ pickets (each bay) ◄─ openings (each run) ◄─ runLength, widestBay, postWidth
//                       ◄─ gatePickets        ◄─ leafWidth (each gate) ◄─ gateOpening
import { type Calculation, needsFor, run, usualFor } from '../calculation.ts'
import { runsFromPoints } from '../calculations/site/runs-from-points.ts'
import { catalogue, vocabulary } from '../catalogue.ts'
import type { Given, Outcome, Problem } from '../outcome.ts'
import { isRun, kindsIn, looksFrom, postKinds, runOf, yard } from '../places.ts'
import { isList, isQuantity, type Quantity, quantity, type System, type Value } from '../quantities/quantity.ts'
import { postsOfFence } from '../calculations/layout/posts-of-fence.ts'
import { parseValue } from '../words/value.ts'
import type { Word } from '../words/word.ts'
import { fenceOf, type RunTold } from './fence.ts'
import { decided, decidedAt, type Decision, type Job, sameValue, systemOf } from './job.ts'
import { layRun, postsOf, stretchesOf } from './laid-out.ts'
import { gateWithoutRun, missingAt, notOne, notOneOfRuns, placed } from './lacking.ts'
import { askedOnce, type Ground, type Laid, overAll } from './over-all.ts'
import { type Memo, newMemo, type Node, type Origin, type Plan } from './node.ts'
import { keyOf, regiven } from './remembered.ts'
import { givingAt, type Level, ownName, type Part, parts } from './parts.ts'

type Found = { readonly given: Given; readonly origin: Origin }
type Sought = Found | { readonly problems: readonly Problem[] } | undefined

/** The plan of the fence that the job tells of; nothing while no run is told. */
export function planOf(job: Job, memo: Memo = newMemo(), turn = -1): Plan | undefined {
  const system = systemOf(job)
  const surveyed = surveyOf(job, system)
  const fence = fenceOf(job, surveyed)
  if (fence.runs.length === 0) return undefined
  const nodes = new Map<string, Node | undefined>()
  const open = new Set<string>()
  const once = <T>(work: () => T): (() => T) => {
    let known: { value: T } | undefined
    return () => {
      known ??= { value: work() }
      return known.value
    }
  }

  const runNodes = once(() => fence.runs.map((it) => ({ run: it, node: node('bays', it.place) as Node })))
  const laid = once(() =>
    runNodes().flatMap(({ run: it, node: { outcome } }) => (outcome.ok ? [layRun(it, outcome)] : [])),
  )
  const posts = once(() => (laid().length === fence.runs.length ? postsOf(fence, laid()) : []))
  const kinds = once(() => Object.keys(postKinds).filter((kind) => posts().some((it) => it.kind === kind)))
  const stretches = once(() => {
    const apart = new Set(job.decisions.map((it) => it.at))
    return laid().flatMap((it) => stretchesOf(it, (place) => apart.has(place)))
  })
  const bays = once(() => new Map(laid().flatMap((it) => it.bays.map((bay) => [bay.place, bay] as const))))
  const counts = once(() => new Map(stretches().map((it) => [it.place, it.bays.length] as const)))
  const gates = once(() => new Map(fence.runs.flatMap((it) => it.gates.map((gate) => [gate.place, gate] as const))))

  const ground: Ground = { job, fence, node, worked, runNodes, laid, posts, kinds, stretches }

  return {
    job,
    fence,
    node,
    answer,
    worked,
    get runs() {
      return laid()
    },
    get posts() {
      return posts()
    },
    get stretches() {
      return stretches()
    },
  }

  function levelOf(at: string): Level | undefined {
    if (at === yard) return 'yard'
    // A run's own level is known before it is laid out; every other waits for that.
    if (isRun(at)) return fence.runs.some((it) => it.place === at) ? 'run' : undefined
    if (bays().has(at)) return 'bay'
    if (gates().has(at)) return 'gate'
    return kinds().includes(at) ? 'kind' : undefined
  }

  function node(word: string, at: string, isAsked = false): Node | undefined {
    const level = levelOf(at)
    if (!level) return undefined
    const part = givingAt(word, level).find((it) => holds(it, at, isAsked))
    return part && workPart(part, at)
  }

  function answer(word: string, at: string): Node[] {
    const own = node(word, at, true)
    if (own) return [withIts(own, word)]
    // A bay that is one of several alike answers as its stretch does.
    const within = (place: string): boolean => at === yard || runOf(place) === at
    const places = [
      ...fence.runs.map((it) => it.place).filter((it) => at === yard && it !== at),
      ...stretches().map((it) => it.place),
      ...gates().keys(),
    ].filter((it) => it !== at && within(it))
    return places.flatMap((place) => node(word, place) ?? []).map((it) => withIts(it, word))
  }

  /** The node, or what keeps it from giving the word: it gives the others without. */
  function withIts(of: Node, word: string): Node {
    const { calculation } = of.part
    const name = ownName(of.part, word)
    if (!of.outcome.ok || of.outcome.values.has(name)) return of
    const { given } = of.outcome
    const lacks = needsFor(calculation, [name]).filter((it) => !given.has(it.name) && !usualFor(calculation, it))
    if (lacks.length === 0) return of
    return { ...of, outcome: { ok: false, given, problems: lacks.map((it) => missingAt(it, of.at)), cited: [] } }
  }

  function holds({ when, calculation, level, needsTold }: Part, at: string, isAsked: boolean): boolean {
    // What the yard sells is asked for by whoever wants the cut plan; the rest does without.
    if (needsTold && !isAsked && !decided(job, needsTold, at)) return false
    // A slope is worked only where the ground was said to fall.
    if (level === 'run' && calculation.needs.fall && !decided(job, 'fall', at)) return false
    // How the fence takes a slope says nothing where the ground does not fall.
    const isFlat = when?.word === 'slopeWay' && !decided(job, 'fall', at) && !decided(job, 'slope', at)
    return !when || when.is(isFlat ? undefined : decided(job, when.word, at)?.value)
  }

  function workPart(part: Part, at: string): Node | undefined {
    const key = `${part.calculation.name}@${at}:${Object.values(part.as ?? {}).join()}`
    if (nodes.has(key)) return nodes.get(key)
    if (open.has(key)) return undefined
    open.add(key)
    const made = workedNow(part, at)
    open.delete(key)
    nodes.set(key, made)
    return made
  }

  function workedNow(part: Part, at: string): Node {
    const { calculation } = part
    const places = part.byKind ? kinds() : [at]
    const wanted = part.as ? Object.keys(part.as) : Object.keys(calculation.gives)
    const required = new Set(needsFor(calculation, wanted).map((it) => it.name))
    const given = new Map<string, Given>()
    const origins = new Map<string, Origin>()
    const problems: Problem[] = []
    const doubts: Problem[] = []
    for (const word of Object.values(calculation.needs)) {
      const found = seek(word, part, places)
      if (!found) continue
      if ('problems' in found) {
        if (part.asksFor?.includes(word.name)) doubts.push(...found.problems)
        // A usual value is for what nobody spoke of, and not for what stands there and cannot be worked yet.
        const isAlike = part.alike?.includes(part.takes?.[word.name] ?? word.name)
        if (required.has(word.name) || isAlike) problems.push(...found.problems)
        continue
      }
      given.set(word.name, found.given)
      origins.set(word.name, found.origin)
    }
    // A gate that somebody spoke of and that is in no run would be left out of all that is counted.
    if (calculation === postsOfFence) problems.push(...gateWithoutRun(job, fence))
    const outcome: Outcome =
      problems.length > 0
        ? { ok: false, given, problems: askedOnce(problems), cited: [] }
        : placed(
            remembered(calculation, given, wantedOf(calculation, wanted, given), places, askedOnce(doubts)),
            at,
            part,
          )
    return { part, at, places, outcome, origins }
  }

  /** Results that hang on what nobody told and has no usual value are not asked for: the others are worked. */
  function wantedOf(calculation: Calculation, wanted: readonly string[], given: ReadonlyMap<string, Given>): string[] {
    const waits = (result: string): boolean =>
      Object.entries(calculation.onlyFor ?? {}).some(
        ([need, results]) =>
          results?.includes(result) && !given.has(need) && !usualFor(calculation, calculation.needs[need] as Word),
      )
    const left = wanted.filter((it) => !waits(it))
    return left.length > 0 ? left : [...wanted]
  }

  function remembered(
    calculation: Calculation,
    given: ReadonlyMap<string, Given>,
    wanted: readonly string[],
    places: readonly string[],
    doubts: readonly Problem[],
  ): Outcome {
    const confirmed = Object.keys(calculation.needs).filter((it) => job.confirmed.includes(it))
    const key = keyOf(
      calculation,
      given,
      wanted,
      places,
      [...confirmed, ...doubts.map((it) => `${it.word}@${it.at}`)],
      system,
    )
    const known = memo.outcomes.get(key)
    if (known) return regiven(known, given)
    memo.ran.push(calculation.name)
    const outcome = run(calculation, given, {
      system,
      wanted,
      confirmed: new Set(confirmed),
      places,
      doubts,
      ...(memo.solver ? { solver: memo.solver } : {}),
    })
    memo.outcomes.set(key, outcome)
    return outcome
  }

  /** What a need is given: for one place, or for each of several in one. */
  function seek(word: Word, part: Part, places: readonly string[]): Sought {
    const each = places.map((at) => seekAt(word, part, at))
    const [first] = each
    if (places.length === 1) return first
    const lacking = each.flatMap((it) => (it && 'problems' in it ? it.problems : []))
    if (lacking.length > 0) return { problems: lacking }
    const found = each as (Found | undefined)[]
    if (found.every((it) => it === undefined)) return undefined
    if (found.some((it) => it === undefined))
      return {
        problems: places.flatMap((at, i) => (found[i] ? [] : [missingAt(word, at)])),
      }
    const all = found as Found[]
    const one = all[0] as Found
    if (all.every((it) => sameValue(it.given.value, one.given.value))) return one
    if (!all.every((it) => isQuantity(it.given.value))) return { problems: [notOne(word)] }
    const roles = all.map((it) => it.given.role)
    const values = all.map((it) => it.given.value as Quantity)
    const nodes = all.flatMap(({ origin }) =>
      origin.from === 'worked' ? [origin.node] : origin.from === 'fence' ? origin.nodes : [],
    )
    return {
      given: { value: values, role: one.given.role, ...(roles.some((it) => it !== roles[0]) ? { roles } : {}) },
      origin: { from: 'fence', nodes },
    }
  }

  function seekAt(word: Word, part: Part, at: string): Sought {
    const name = part.takes?.[word.name] ?? word.name
    const runs = at === yard && part.alike?.includes(name) ? overRuns(name) : undefined
    if (runs) return runs
    const own = decidedAt(job, name, at)
    if (own) return told(own)
    const standing = stands(name, at)
    if (standing)
      return 'problems' in standing
        ? standing
        : { given: standing.given, origin: { from: 'fence', nodes: standing.nodes } }
    const said = decided(job, name, at)
    if (said) return told(said)
    const inherits = vocabulary.get(name)?.inherits !== false
    let problems: readonly Problem[] | undefined
    for (const place of inherits ? looksFrom(at, []) : [at]) {
      const giver = node(name, place)
      if (!giver || giver.part === part) continue
      const value = giver.outcome.ok ? giver.outcome.values.get(ownName(giver.part, name)) : undefined
      if (value !== undefined)
        return { given: { value, role: 'result' }, origin: { from: 'worked', word: name, node: giver } }
      if (!giver.outcome.ok) problems ??= giver.outcome.problems
    }
    const alike = isRun(at) && givingAt(name, 'kind').length > 0 ? alikeOverKinds(name) : undefined
    if (alike) return alike
    const instead = part.orElse?.[name]
    const other = instead ? decided(job, instead, at) : undefined
    if (other) return told(other)
    return shared(word, at) ?? (problems && { problems }) ?? usualOf(word, name)
  }

  /** What every kind of post has alike: the depth of a run's holes, where no kind has its own. */
  function alikeOverKinds(name: string): Found | undefined {
    const each = kinds().map((kind) => node(name, kind))
    const values = each.map((it) => (it?.outcome.ok ? it.outcome.values.get(ownName(it.part, name)) : undefined))
    const [first] = values
    if (first === undefined || !values.every((it) => it !== undefined && sameValue(it, first))) return undefined
    return { given: { value: first, role: 'result' }, origin: { from: 'worked', word: name, node: each[0] as Node } }
  }

  /** What is taken under another name has that name's usual value. */
  function usualOf(word: Word, name: string): Found | undefined {
    const taken = name === word.name ? undefined : vocabulary.get(name)
    const text = system === 'metric' ? (taken?.usual?.metric ?? taken?.usual?.value) : taken?.usual?.value
    const value = taken?.usual && text !== undefined ? parseValue(taken, text, system) : undefined
    return taken?.usual && value !== undefined
      ? { given: { value, role: 'assumed', usual: taken.usual }, origin: { from: 'fence', nodes: [] } }
      : undefined
  }

  /** A word that every run has the same, wherever it was told; what keeps it from being one; nothing where no run has its own. */
  function overRuns(name: string): Sought {
    const word = vocabulary.get(name) as Word
    const each = fence.runs.map((it) => decided(job, name, it.place))
    const [first] = each
    if (each.every((it) => it === undefined || it.at === yard)) return undefined
    if (first && each.every((it) => it && sameValue(it.value, first.value))) return told(first)
    return { problems: [notOneOfRuns(word)] }
  }

  /** What another part of the fence took as usual for the same thing. */
  function shared(word: Word, at: string): Found | undefined {
    if (!parts.some((it) => it.shares?.includes(word.name))) return undefined
    // A run has posts of several kinds: what was taken for the first of them.
    for (const kind of kindsIn(at).length > 0 ? [at] : isRun(at) ? kinds().slice(0, 1) : []) {
      const sharing = workShared(word.name, kind)
      const usual = sharing && usualFor(sharing.part.calculation, word)
      const value = sharing?.outcome.given.get(word.name)?.value
      if (sharing && usual && value !== undefined)
        return {
          given: { value, role: 'assumed', usual },
          origin: { from: 'worked', word: word.name, node: sharing },
        }
    }
    return undefined
  }

  function workShared(word: string, at: string): Node | undefined {
    const giver = node('holeDepth', at)
    return giver?.part.shares?.includes(word) ? giver : undefined
  }

  function told(decision: Decision): Found {
    return {
      given: { value: decision.value, role: decision.turn === turn ? 'said' : 'known' },
      origin: { from: 'told', decision },
    }
  }

  function worked(word: string, at: string): { value: Value; node: Node } | undefined {
    for (const place of looksFrom(at, [])) {
      const giver = node(word, place)
      const value = giver?.outcome.ok ? giver.outcome.values.get(ownName(giver.part, word)) : undefined
      if (giver && value !== undefined) return { value, node: giver }
    }
    return undefined
  }

  /** What stands in the fence as it is told and laid out: no calculation gives it, and no wider place's word replaces it. */
  function stands(name: string, at: string): Laid | { problems: readonly Problem[] } | undefined {
    const asRun = fence.runs.find((it) => it.place === at)
    if (asRun) return ofRun(asRun, name) ?? overAll(name, ground, at)
    const gate = at.includes('/gate-') ? gates().get(at) : undefined
    if (gate) return name === 'gateOpening' && gate.opening ? plain(gate.opening.value) : undefined
    const bay = at.includes('/bay-') ? bays().get(at) : undefined
    if (bay) {
      const of = [runNodes().find((it) => it.run.place === runOf(at))?.node as Node]
      // A bay that was measured from centre to centre has the opening that is worked from that.
      if (name === 'opening' && decidedAt(job, 'bayCentres', at)) return undefined
      if (name === 'opening') return { given: { value: bay.opening, role: 'result' }, nodes: of }
      if (name === 'bayCentres') return { given: { value: bay.centres, role: 'result' }, nodes: of }
      if (name === 'bays')
        return { given: { value: quantity(counts().get(at) ?? 1, 'bay'), role: 'result' }, nodes: of }
      return undefined
    }
    if (at === yard) return overAll(name, ground)
    if (name === 'posts' && kinds().includes(at)) {
      const count = posts().filter((it) => it.kind === at).length
      return { given: { value: quantity(count, 'post'), role: 'result' }, nodes: runNodes().map((it) => it.node) }
    }
    return undefined
  }

  function ofRun(of: RunTold, name: string): Laid | { problems: readonly Problem[] } | undefined {
    const role = (at: number): Given['role'] => (at === turn ? 'said' : 'known')
    const as = (value: Value, from = -1): Laid => ({ given: { value, role: role(from) }, nodes: [] })
    if (name === 'runLength') return of.length ? as(of.length.value, of.length.turn) : undefined
    if (name === 'nearEnd' || name === 'farEnd') {
      const isAssumed = of[name] === 'post'
      return isAssumed ? undefined : as(of[name])
    }
    if (of.gates.length === 0) return undefined
    if (name === 'gateOpenings') {
      const lacking = of.gates.find((it) => !it.opening)
      if (lacking) return { problems: [missingAt(vocabulary.get('gateOpening') as Word, lacking.place)] }
      return as(
        of.gates.map((it) => it.opening?.value as Quantity),
        Math.max(...of.gates.map((it) => it.opening?.turn ?? -1)),
      )
    }
    if (name === 'gatePlace') {
      const place = of.gates.length === 1 ? decided(job, 'gatePlace', of.gates[0]?.place as string) : undefined
      return place ? as(place.value, place.turn) : undefined
    }
    if (name === 'gateStarts' && of.gates.some((it) => it.start)) {
      const lacking = of.gates.find((it) => !it.start)
      if (lacking) return { problems: [missingAt(vocabulary.get('gateStart') as Word, lacking.place)] }
      return as(
        of.gates.map((it) => it.start?.value as Quantity),
        Math.max(...of.gates.map((it) => it.start?.turn ?? -1)),
      )
    }
    return undefined
  }

  function plain(value: Value): Laid {
    return { given: { value, role: 'known' }, nodes: [] }
  }
}

/** The sides between the corner points, where those are told. */
function surveyOf(job: Job, system: System): readonly Quantity[] | undefined {
  const told = ['pointsAcross', 'pointsAlong', 'runEnds'].flatMap((word) => {
    const value = decidedAt(job, word, yard)?.value
    return value === undefined ? [] : [[word, { value, role: 'known' as const }] as const]
  })
  if (told.length < 2 || !told.some(([word]) => word === 'pointsAlong')) return undefined
  const outcome = run(runsFromPoints, new Map(told), { system })
  const sides = outcome.ok ? outcome.values.get('fenceSides') : undefined
  return isList(sides) ? sides : undefined
}

/** The runs of a fence that was told run by run, or by its corner points; none of any other. */
export function runPlaces(job: Job): string[] {
  const fence = fenceOf(job, surveyOf(job, systemOf(job)))
  return fence.isByRuns ? fence.runs.map((it) => it.place) : []
}

/** Every gate of the fence, with its opening where that is told. */
export const gatesTold = (job: Job): { place: string; opening: Quantity | undefined }[] =>
  fenceOf(job, surveyOf(job, systemOf(job))).runs.flatMap((run) =>
    run.gates.map(({ place, opening }) => ({ place, opening: isQuantity(opening?.value) ? opening.value : undefined })),
  )

/** Whether what is wanted, or what the whole fence is cut from, can only be proved with a solver. */
export const wantsSolver = (job: Job): boolean =>
  catalogue.some((calc) => calc.solves && job.wanted.some((it) => calc.gives[it.word])) ||
  parts.some(({ calculation, needsTold }) => calculation.solves && needsTold && decidedAt(job, needsTold, yard))
