// This file is about what a turn does to the job: what it decides, what it wants, and what is remembered for the next.
import {
  type Asked,
  type CautionCode,
  type Decision,
  decide,
  isQuantity,
  isRun,
  type Job,
  type Quantity,
  type Result,
  runOf,
  sameValue,
  show,
  toNumber,
  unitNamed,
  vocabulary,
  type Worked,
  yard,
} from '../engine/index.ts'
import type { Answer } from './answer.ts'
import type { Bindings } from './guard/bindings.ts'
import type { Request } from './request.ts'
import { isSumReadBack } from './sum-read-back.ts'

/** The job with what was told decided, and what is wanted now. */
export function decideTurn(job: Job, request: Request, { held, wants }: Bindings): Job {
  const decided = decide(job, withSeries(job, withOwed(job, decisionsOf(held))), request.confirms)
  // Something told without a question is an answer, a correction or a what-if: what was wanted last is worked again.
  const moved = (request.acts ?? []).some(({ act }) => ['undo', 'redo', 'turn-to', 'units'].includes(act))
  const goesOn = wants.length === 0 && (held.length > 0 || request.confirms.length > 0 || moved)
  const explained = (request.acts ?? []).flatMap(({ act, word, at }) => {
    const before = job.results.findLast((it) => it.word === word)
    return act !== 'explain' ? [] : word ? [{ word, at: at ?? before?.at ?? yard }] : job.wanted.slice(0, 1)
  })
  const asked = wants.length > 0 ? wants : explained
  return {
    ...decided,
    system: decided.system ?? systemOfAll(held),
    named: request.calculation ?? (goesOn ? job.named : null),
    wanted: asked.length > 0 ? asked : goesOn ? job.wanted : [],
  }
}

/** The units of what was told, where all of it is in one system. */
function systemOfAll(held: Bindings['held']): Job['system'] {
  const systems = new Set(held.flatMap(({ value }) => (isQuantity(value) ? (unitNamed(value.unit).system ?? []) : [])))
  return systems.size === 1 && systems.has('metric') ? 'metric' : null
}

/** A holiday that was asked for by its name joins those that were dates already: the answer takes none of them back. */
function withOwed(job: Job, decisions: Decision[]): Decision[] {
  return decisions.map((it) => {
    const { value } = it
    const isOwed = job.asked.some(({ word, at }) => word === it.word && at === it.at)
    const before = job.decisions.find(({ word, at }) => word === it.word && at === it.at)?.value
    if (!isOwed || vocabulary.get(it.word)?.kind !== 'date' || !Array.isArray(value) || !Array.isArray(before))
      return it
    const more = (before as readonly Quantity[]).filter((old) => !value.some((now: Quantity) => sameValue(old, now)))
    return { ...it, value: [...more, ...(value as readonly Quantity[])] }
  })
}

const series = [
  ['plumbDates', 'plumbReadings'],
  ['readingDates', 'dryingReadings'],
] as const

/** “And 16 mm on 1 November”: a reading of a later day joins those that were told before; one that is told with the first day anew begins again. */
function withSeries(job: Job, decisions: Decision[]): Decision[] {
  const joined = series.flatMap(([days, values]) => {
    const [now, read] = [days, values].map((word) => decisions.find((it) => it.word === word))
    const at = read?.at
    const [before, first] = [days, values].map((word) => job.decisions.find((it) => it.word === word && it.at === at))
    const [list, old, oldDays] = [read, first, before].map((it) => (Array.isArray(it?.value) ? it.value : [])) as [
      Quantity[],
      Quantity[],
      Quantity[],
    ]
    if (list.length === 0 || old.length === 0) return []
    const newDays = Array.isArray(now?.value) ? (now.value as Quantity[]) : []
    const isLater =
      newDays.length === list.length &&
      oldDays.length === old.length &&
      toNumber((oldDays.at(-1) as Quantity).amount) < toNumber((newDays[0] as Quantity).amount)
    // Nothing can be followed from one reading: a second, told alone, stands behind the first.
    const isSecond = values === 'dryingReadings' && newDays.length === 0 && oldDays.length === 0 && old.length === 1
    if (!isLater && !(isSecond && list.length === 1)) return []
    return [
      { word: values as string, at, value: [...old, ...list] },
      { word: days as string, at, value: [...oldDays, ...newDays] },
    ]
  })
  return decisions.map((it) => {
    const more = joined.find(({ word, at }) => word === it.word && at === it.at)
    return more ? { ...it, value: more.value } : it
  })
}

/** One decision for each word and place; the values of a list gathered into one. */
function decisionsOf(held: Bindings['held']): Decision[] {
  const decisions: Decision[] = []
  for (const { word, at, value, turn, thing, as, of } of held) {
    const isListed = vocabulary.get(word)?.list && isQuantity(value)
    const known = isListed ? decisions.findIndex((it) => it.word === word && it.at === at) : -1
    const values = known >= 0 ? (decisions[known]?.value as readonly Quantity[]) : []
    const called = thing === undefined ? undefined : [...(decisions[known]?.called ?? []), thing]
    const decision: Decision = {
      word,
      at,
      turn,
      value: isListed ? [...values, value] : value,
      ...(called ? { called } : {}),
      ...(as ? { as } : {}),
      // One of several is what it was, and no sum stands for them all.
      ...(of && known < 0 ? { of } : {}),
    }
    if (known >= 0) decisions[known] = decision
    else decisions.push(decision)
  }
  return decisions
}

/** Whether something was only told of a fence of several runs, no answer to a question, and what was wanted before comes out as it did. */
export function comesOutAsBefore(
  before: Job,
  { wants, acts }: Request,
  { held }: Bindings,
  worked: readonly Worked[],
  changed: Answer['changed'],
): boolean {
  if (wants.length > 0 || (acts ?? []).length > 0 || held.length === 0) return false
  if (!before.decisions.some((it) => isRun(runOf(it.at)))) return false
  const answers = before.asked.some((it) => held.some((now) => now.word === it.word))
  const known = (it: { word: string; at: string }): boolean =>
    before.results.some((old) => old.word === it.word && old.at === it.at)
  const moves = worked.some(({ outcome, at, wanted, calculation }) =>
    outcome.ok
      ? wanted.some(
          (word) =>
            outcome.values.has(word) &&
            !calculation.gives[word]?.unsaid &&
            (!known({ word, at }) || changed.some((it) => it.word === word && it.at === at)),
        )
      : // What only lacks something else by now was answered before, and is not asked for again unasked.
        outcome.problems.some((it) => it.code !== 'missing') || wanted.some((word) => !known({ word, at })),
  )
  return !answers && !moves
}

/** What the next turn must know: the results, what was asked back, and which cautions were said in full. */
export function remember(
  job: Job,
  worked: readonly Worked[],
  asks: Answer['asks'],
  cautions: Answer['cautions'],
  { unsure, torn }: Pick<Bindings, 'unsure' | 'torn'>,
  before: Job,
): Job {
  const waysOf = (word: string, at: string): Pick<Asked, 'between' | 'either' | 'again'> => {
    const found = unsure.find((it) => it.word === word && it.at === at)
    if (found) return { between: found.readings.map(show) }
    const waiting = worked.flatMap(({ outcome }) => (outcome.ok ? [] : outcome.problems)).find((it) => it.word === word)
    if (waiting?.isIdle && waiting.ask) return { again: waiting.ask }
    const [only, more] = torn
    const isOfWords = only && !more && only.words[0] === word && only.words[0] !== only.words[1] && !only.rival
    return isOfWords ? { either: { said: only.said, words: only.words } } : {}
  }
  const results: Result[] = worked.flatMap(({ outcome, at, calculation }, i) =>
    outcome.ok
      ? [...outcome.values]
          .filter(([word]) => !calculation.gives[word]?.list && !calculation.gives[word]?.unsaid)
          .map(([word, value]) => ({
            word,
            at,
            value,
            calculation: calculation.name,
            ref: `r${i + 1}.${word}`,
          }))
      : [],
  )
  const kept = job.results.filter((old) => !results.some((it) => it.word === old.word && it.at === old.at))
  const told: CautionCode[] = cautions.filter((it) => !it.standing).map((it) => it.code)
  return {
    ...job,
    // What was wanted stays in mind while something else is done with the job.
    wanted: job.wanted.length > 0 ? job.wanted : before.wanted,
    // A question that was declined or not understood leaves what was wanted before as it was.
    asked: asks.map(({ word, at, question }) => ({
      word,
      at,
      ...waysOf(word, at),
      ...(isSumReadBack(question) ? { sum: true as const } : {}),
    })),
    results: [...kept, ...results],
    told: [...new Set([...job.told, ...told])],
  }
}
