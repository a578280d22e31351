// This file is about the parts of an answer, made from what was worked: calls, figures, changes and questions.
import {
  compared,
  fenceInWords,
  inPlace,
  inSentence,
  type Memo,
  openQuestions,
  planOf,
  type Job,
  show,
  isList,
  isRun,
  runOf,
  yard,
  sameValue,
  type Value,
  vocabulary,
  type Wanted,
  work,
  type Worked,
} from '../engine/index.ts'
import type { Answer, Call, Figure } from './answer.ts'
import { callOf, besidesIn, wordNamed } from './calls.ts'
import { whatCanBeAsked } from './declined.ts'
import { figureOf } from './figures.ts'
import type { Bindings, Held } from './guard/bindings.ts'
import type { Torn } from './guard/swaps.ts'
import { called } from './guard/swaps.ts'
import type { Heard, Tagged } from './readers/reader.ts'
import type { Request } from './request.ts'

/** The calls of a turn, r1, r2 …; what was asked is the headline. */
export function callsOf(worked: readonly Worked[], asked: readonly Wanted[]): Call[] {
  return worked.map((it, i) =>
    callOf(
      it,
      `r${i + 1}`,
      // A calculation that only feeds another answers nothing itself.
      it.answers || it.wanted.some((word) => asked.some((want) => isWithin(it.at, want.at) && want.word === word))
        ? it.wanted
        : [],
    ),
  )
}

/** Whether a place is the one asked about, or a bay or gate of it. */
const isWithin = (at: string, asked: string): boolean =>
  at === asked || (isRun(runOf(at)) && (asked === yard || runOf(at) === asked))

/** How each quantity of the message was understood. */
export function readingsAs(held: readonly Held[], { readings, said }: Heard, request: Request): Answer['readAs'] {
  // In a fence of several runs a choice holds for one of them: which words were taken for it is said as well.
  const choices = held.flatMap((it) => {
    const quote = request.told.find((told) => told.word === it.word && told.at === it.at && told.from.option)?.from
      .quote
    if (!quote || it.at === yard || !isRun(runOf(it.at))) return []
    const figure = figureOf({
      ref: `said.${it.word}`,
      word: wordNamed(it.word),
      at: it.at,
      value: it.value,
      role: 'said',
    })
    return [{ said: quote, figure, start: said.indexOf(quote) }]
  })
  const measured = held
    .filter((it) => it.tag !== null)
    .map((it) => {
      const reading = readings.find((r) => r.tag === it.tag)
      const figure = figureOf({
        ref: it.tag as string,
        word: wordNamed(it.word),
        at: it.at,
        value: it.value,
        role: 'said',
        firmness: it.firmness,
      })
      const { start = 0, end = 0 } = reading?.change ?? reading ?? {}
      return { said: said.slice(start, end), figure, start: reading?.start ?? 0 }
    })
  return [...choices, ...measured].sort((a, b) => a.start - b.start).map(({ said, figure }) => ({ said, figure }))
}

/** Before → after: what was told anew, what a whole fence comes to, and every earlier result that comes out differently now. */
export function changesBetween(
  before: Job,
  after: Job,
  worked: readonly Worked[],
  turn: number,
  memo: Memo,
): Answer['changed'] {
  const changed: Answer['changed'] = []
  const note = (word: string, at: string, old: Value, now: Value, role: Figure['role']): void => {
    if (sameValue(old, now) || isList(old) !== isList(now)) return
    if (changed.some((it) => it.word === word && it.at === at)) return
    const figure = (value: Value, when: string): Figure =>
      figureOf({ ref: `${when}.${word}`, word: wordNamed(word), at, value, role })
    const [was, is] = [figure(old, 'before'), figure(now, 'after')]
    // What nobody could tell apart has not changed.
    if (was.text !== is.text) changed.push({ word, at, before: was, after: is })
  }
  if (before.moves === after.moves) return changed
  for (const now of after.decisions) {
    const old = before.decisions.find((it) => it.word === now.word && it.at === now.at)
    if (old) note(now.word, now.at, old.value, now.value, 'said')
  }
  const again = work(
    after,
    before.results.map(({ word, at }) => ({ word, at })),
    turn,
    { memo },
  )
  for (const old of before.results) {
    const now = [...worked, ...again].find(
      (it) =>
        it.at === old.at && it.calculation.name === old.calculation && it.outcome.ok && it.outcome.values.has(old.word),
    )
    const value = now?.outcome.ok ? now.outcome.values.get(old.word) : undefined
    if (value !== undefined) note(old.word, old.at, old.value, value, 'result')
  }
  for (const { word, at, values } of wholeFence(before, after, memo, turn)) {
    const [old, now] = values
    if (old !== undefined && now !== undefined) note(word, at, old, now, 'result')
  }
  return changed
}

/** What the whole fence came to before, and comes to now; nothing while its runs are not told. */
const wholeFence = (before: Job, after: Job, memo: Memo, turn: number) =>
  planOf(before, memo, turn)?.fence.isByRuns && planOf(after, memo, turn)?.fence.isByRuns
    ? compared(
        [
          { name: 'before', job: before },
          { name: 'after', job: after },
        ],
        [],
        memo,
        turn,
      )
    : []

/** Every figure of the answer: what answers first, then what was given, worked and cited, then changes. */
export function figuresIn(
  worked: readonly Worked[],
  calls: readonly Call[],
  changed: Answer['changed'],
  readAs: Answer['readAs'],
): Figure[] {
  const results = calls.flatMap((call) => call.results)
  const all = [
    ...results.filter((it) => it.headline),
    ...results.filter((it) => !it.headline),
    ...results.flatMap(byTape),
    ...calls.flatMap((call, i) => besidesIn(worked[i] as Worked, call.id)),
    ...changed.flatMap((it) => [it.before, it.after]),
    ...readAs.map((it) => it.figure),
    ...calls.flatMap((call) => call.inputs),
  ]
  return all.filter((it, i) => all.findIndex((other) => other.ref === it.ref) === i)
}

/** What a result is by the tape, as a figure of its own. */
const byTape = ({ byTape: marked, exact: _, ...it }: Figure): Figure[] =>
  marked
    ? [{ ...it, ...marked, ref: `${it.ref}.byTape`, label: `${it.label}, by the tape`, kind: 'about', headline: false }]
    : []

const mostNamed = 6

/** Two quantities that change places: one question is enough for both. */
const isSwapped = (a: Torn, b: Torn): boolean =>
  a.words[0] === b.words[1] && a.words[1] === b.words[0] && a.words[0] !== a.words[1] && !a.rival && !b.rival

/** What has to be asked, and what has to be said about what was not taken. */
export function questionsIn(
  calls: readonly Call[],
  { refused, torn, unsure, held }: Bindings,
  job: Job,
  { request, unused, memo }: { request: Request; unused: readonly Tagged[]; memo: Memo },
): { asks: Answer['asks']; leftOver: string[] } {
  const asks: Answer['asks'] = []
  const leftOver: string[] = []
  // Words that the question for another asks for too.
  const swapped = new Set<string>()
  const ask = (word: string, at: string, question: string): void => {
    // Of a run, or a part of one, the question says which: “For the left run: how long is the run?”
    const said = isRun(runOf(at))
      ? `For ${inPlace(at)}: ${question.charAt(0).toLowerCase()}${question.slice(1)}`
      : question
    const isAsked = asks.some((it) => it.word === word && it.at === at) || swapped.has(`${word}@${at}`)
    if (!isAsked) asks.push({ word, at, question: said })
  }
  for (const [i, it] of torn.entries()) {
    const other = torn.slice(0, i).find((before) => isSwapped(before, it))
    if (other) {
      const first = asks.find((ask) => ask.word === other.words[0])
      const [a, b] = it.words.map((word) => inSentence(wordNamed(word)))
      swapped.add(`${it.words[0]}@${it.places[0] === it.places[1] ? it.places[0] : yard}`)
      if (first) first.question = `You said “${other.said}” and “${it.said}”. Which is ${a}, and which ${b}?`
      continue
    }
    const [a, b] = it.words.map((word) => inSentence(wordNamed(word)))
    const [here, there] = it.places
    const question = it.rival
      ? `Which is ${a}: “${it.said}”, or “${it.rival}”?`
      : it.words[0] === it.words[1]
        ? `You said “${it.said}”. Is that ${a} of ${called(here)}, or of ${called(there)}?`
        : `You said “${it.said}”. Is that ${a}, or ${b}?`
    ask(it.words[0], here === there ? here : yard, question)
  }
  for (const it of unsure)
    ask(
      it.word,
      it.at,
      `I can read “${it.said}” in more than one way for ${inSentence(wordNamed(it.word))}: ${it.readings.map(show).join(', or ')}. Which is it?`,
    )
  for (const call of calls)
    for (const problem of [...call.problems, ...call.doubts])
      if (problem.ask) ask(problem.word, problem.at, problem.ask)
  for (const it of refused) {
    const word = vocabulary.get(it.word)
    // What could not be read and is asked for by its own words needs no second mention.
    const isAsked = calls.some((call) => call.problems.some((p) => p.code === 'unreadable' && p.word === it.word))
    if (word && !isAsked && !held.some((h) => h.word === it.word))
      leftOver.push(`I did not take ${inSentence(word)}: ${it.why}.`)
  }
  const unread = unused.filter((it) => !torn.some(({ tag }) => tag === it.tag))
  if (unread.length > 0 && !request.declines.some((it) => it.why === 'dangerous' || it.why === 'off-trade'))
    leftOver.push(
      `I did not use ${unread
        .slice(0, mostNamed)
        .map((it) => `“${it.said}”`)
        .join(
          ', ',
        )}${unread.length > mostNamed ? ` and ${unread.length - mostNamed} more` : ''}: I cannot tell what ${unread.length === 1 ? 'it measures' : 'they measure'}. Say what, and of what, for instance how wide the holes are.`,
    )
  if (
    (job.wanted.length === 0 || calls.length === 0) &&
    asks.length === 0 &&
    held.length > 0 &&
    request.declines.length === 0 &&
    (request.notes ?? []).length === 0
  ) {
    const noted = `I have noted ${[...new Set(held.map((it) => inSentence(wordNamed(it.word))))].join(', ')}.`
    const fence = fenceInWords(job)
    // Until the posts can be counted something is asked for; then whoever plans says what they want to know.
    const next = openQuestions(job, memo, -1).find((it) => it.waits.includes(wordNamed('posts').label))
    if (next) ask(next.word, next.at, next.question)
    leftOver.push(next ? noted : `${noted} What would you like to know${fence ? '? Or ask what to settle next.' : '?'}`)
    if (fence) leftOver.push(fence)
  }
  if (
    calls.length === 0 &&
    asks.length === 0 &&
    held.length === 0 &&
    leftOver.length === 0 &&
    request.declines.length === 0 &&
    (request.acts ?? []).length === 0 &&
    (request.notes ?? []).length === 0
  )
    leftOver.push(`I did not find a question in that. ${whatCanBeAsked()}`)
  return { asks, leftOver }
}
