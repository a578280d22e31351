// This file is about what is done with the job as a whole: a change taken back, a plan kept, compared or explained, and what to ask next.
import {
  assumptionsOf,
  boughtSoFar,
  show,
  toNumber,
  byMove,
  compared,
  decide,
  type Decision,
  type Job,
  keep,
  type Memo,
  moved,
  type Named,
  openQuestions,
  pathOf,
  placeLabel,
  planOf,
  redo,
  rivalsOf,
  rivalText,
  touched,
  showValue,
  sideBySide,
  turnTo,
  undo,
  vocabulary,
  type Wanted,
  type Word,
  work,
  yard,
  larger,
  isQuantity,
  type Assumption,
} from '../engine/index.ts'
import type { Answer, Call } from './answer.ts'
import { checkBindings } from './guard/bindings.ts'
import type { Heard } from './readers/reader.ts'
import type { Act, Request, Told } from './request.ts'

export interface Acted {
  readonly notices: readonly string[]
  readonly calls: readonly Call[]
  readonly asks: Answer['asks']
}

const label = (word: string): string => (vocabulary.get(word) as Word).label
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
const said = ({ word, at, value }: Decision): string =>
  `${label(word)}${placeLabel(at) ? ` (${placeLabel(at)})` : ''} ${showValue(vocabulary.get(word) as Word, value)}`

const movesText = ({ word, before, after }: NonNullable<Assumption['moves']>): string => {
  const of = vocabulary.get(word) as Word
  return `${of.label} ${showValue(of, before)} → ${showValue(of, after)}`
}

/** The job with changes taken back, made again, or another plan taken up; what was done is said. */
export function actOn(job: Job, acts: readonly Act[]): { job: Job; notices: string[] } {
  const notices: string[] = []
  let now = job
  for (const { act, name } of acts) {
    const last = act === 'undo' ? now.moves.at(-1) : now.takenBack.at(-1)
    if (act === 'undo' || act === 'redo') {
      if (!last) {
        notices.push(
          act === 'undo'
            ? 'There is nothing to take back.'
            : 'Nothing was taken back, so there is nothing to put in again.',
        )
        continue
      }
      now = act === 'undo' ? undo(now) : redo(now)
      const what =
        last.decisions
          .filter((it) => !it.of)
          .map(said)
          .join(', ') || 'what you confirmed'
      notices.push(act === 'undo' ? `Taken back: ${what}.` : `In again: ${what}.`)
    }
    if (act === 'keep' && name) {
      now = keep(now, name)
      notices.push(`Kept as “${name}”. Change what you like, and ask me to compare them.`)
    }
    if (act === 'units') {
      const system = name === 'metric' ? 'metric' : 'imperial'
      now = { ...now, system }
      notices.push(`From here on in ${system === 'metric' ? 'metres and millimetres' : 'feet and inches'}.`)
    }
    if (act === 'turn-to' && name) {
      const kept = now.kept.find((it) => it.name.toLowerCase() === name.toLowerCase())
      if (kept) now = turnTo(now, kept)
      notices.push(kept ? `We go on with “${kept.name}”.` : `I have kept no plan called “${name}”.`)
    }
  }
  return { job: now, notices }
}

/** What is shown of the job: a path, plans side by side, what is assumed, what to ask next. `between` are values to try side by side. */
export function shown(
  before: Job,
  job: Job,
  acts: readonly Act[],
  between: readonly Decision[],
  { memo, turn, from }: { memo: Memo; turn: number; from: number },
): Acted {
  const notices: string[] = []
  const after: string[] = []
  const calls: Call[] = []
  const asks: { word: string; at: string; question: string }[] = []
  const table = (calculation: string, title: string, tables: Call['tables']): void => {
    calls.push({
      id: `r${from + calls.length}`,
      calculation,
      title,
      inputs: [],
      steps: [],
      results: [],
      tables,
      doubts: [],
      sources: [],
      drawing: null,
      problems: [],
    })
  }
  for (const one of acts) {
    if (one.act === 'explain') explain(one)
    if (one.act === 'compare') compare()
    if (one.act === 'still-to-buy') stillToBuy()
    if (one.act === 'next') next()
    if (one.act === 'assumed' || one.act === 'sensitive') assumed(one.act === 'sensitive')
  }
  return { notices: [...notices, ...after], calls, asks }

  function explain({ word, at }: Act): void {
    const asked: Wanted | undefined = word ? { word, at: at ?? placeOf(word) } : before.wanted[0]
    const plan = planOf(job, memo, turn)
    const path = asked && plan && pathOf(plan, asked.word, asked.at)
    if (path)
      table('how-it-comes-about', `How ${label(asked.word)} comes about`, [
        { ...path, columns: [...path.columns], rows: path.rows.map((row) => [...row]) },
      ])
    else if (!asked) notices.push('There is no figure yet to explain. Ask for one first.')
  }

  function placeOf(word: string): string {
    return before.results.findLast((it) => it.word === word)?.at ?? yard
  }

  function compare(): void {
    const kept: Named[] = job.kept.map((it) => ({ name: it.name, job: turnTo(job, it) }))
    const tried: Named[] = between.map((it) => ({
      name: said({ ...it, at: yard }),
      job: decide(job, [it]),
    }))
    const past: Named[] = job.moves.length > 1 ? [{ name: 'before your last change', job: undo(job) }] : []
    const others = tried.length > 0 ? tried : kept.length > 0 ? kept : past
    const same = others.some((it) => it.job.moves === job.moves)
    const plans = tried.length > 0 || same ? others : [...others, { name: 'as it stands now', job }]
    if (plans.length < 2) {
      notices.push(
        'I have only one plan, so there is nothing to hold it against. Keep it under a name (“keep this as gravel”), change something, and ask again.',
      )
      return
    }
    const lines = compared(plans, before.wanted, memo, turn)
    if (lines.length === 0) {
      notices.push('Neither plan can be worked far enough yet to compare them.')
      return
    }
    const { title, columns, rows } = sideBySide(plans, lines)
    table('side-by-side', 'Plans side by side', [{ title, columns: [...columns], rows: rows.map((row) => [...row]) }])
  }

  function stillToBuy(): void {
    const plan = planOf(job, memo, turn)
    const rows = (plan ? boughtSoFar(plan) : []).map(({ word, bought, needed, open }) => [
      label(word),
      show(needed),
      show(bought),
      toNumber(open.amount) > 0 ? show(open) : 'none',
    ])
    if (rows.length === 0) {
      notices.push('I cannot set what you have against what the fence takes yet. Ask what there is to buy.')
      return
    }
    table('still-to-buy', 'Still to buy', [
      {
        title: 'Still to buy',
        columns: ['what', 'the fence takes', 'you have', 'still to buy'].map((it) => ({ label: it, unit: '' })),
        rows,
      },
    ])
  }

  function next(): void {
    const [first] = openQuestions(job, memo, turn)
    if (!first) {
      notices.push(
        planOf(job, memo, turn)
          ? 'Nothing that I look at waits for an answer. Ask what is still assumed, or what there is to buy.'
          : 'Tell me the fence first: how long each run is, and how far apart the posts may be.',
      )
      return
    }
    notices.push(
      `Worth settling next: ${first.question} ${capital(first.waits.join(', '))} ${first.waits.length === 1 ? 'waits' : 'wait'} for it.`,
    )
    asks.push({ word: first.word, at: first.at, question: first.question })
  }

  function assumed(withTold: boolean): void {
    const all = withTold ? [...assumptionsOf(job, memo, turn), ...toldOf()] : assumptionsOf(job, memo, turn)
    if (all.length === 0) {
      const usual = usualInLast()
      notices.push(
        usual.length > 0
          ? `Taken as usual in the last answer: ${usual.join(', ')}. Say any of them otherwise, and it is worked anew.`
          : 'Nothing is taken as usual: all that I use, you told me or I worked.',
      )
      return
    }
    const idle = all.filter((it) => !it.moves)
    const sorted = all
      .filter((it) => it.moves)
      .sort(byMove)
      .slice(0, withTold ? 12 : 30)
    notices.push(
      withTold
        ? 'What would move it most, if it came out otherwise:'
        : 'Still taken as usual, what could move the bill most first:',
    )
    if (idle.length > 0 && !withTold)
      after.push(
        `Taken as usual too, and nothing to buy changes with it: ${idle.map((it) => label(it.word)).join(', ')}.`,
      )
    table(withTold ? 'what-moves-it' : 'still-assumed', withTold ? 'What moves it most' : 'Still taken as usual', [
      {
        title: withTold ? 'What moves it most' : 'Still taken as usual',
        columns: ['what', 'now', 'if it were', 'then', 'by'].map((it) => ({ label: it, unit: '' })),
        rows: sorted.map((it) => {
          const word = vocabulary.get(it.word) as Word
          return [
            word.label,
            showValue(word, it.value),
            showValue(word, it.tried),
            it.moves ? movesText(it.moves) : '',
            it.moves ? `${Math.round(it.moves.share * 1000) / 10} %` : '',
          ]
        }),
      },
    ])
  }

  /** Of a sum that is no part of a fence: what its answer took that nobody told. */
  function usualInLast(): string[] {
    const last = work(job, before.wanted, turn, { named: before.named, memo })
    const taken = last.flatMap(({ outcome }) => [...outcome.given].filter(([, it]) => it.role === 'assumed'))
    return [...new Map(taken)].map(
      ([name, it]) => `${label(name)} ${showValue(vocabulary.get(name) as Word, it.value)}`,
    )
  }

  /** What was told of the whole fence, each a little larger. */
  function toldOf(): Omit<Assumption, 'usual'>[] {
    const plan = planOf(job, memo, turn)
    if (!plan) return []
    return job.decisions
      .filter((it) => it.at === yard && isQuantity(it.value) && it.value.kind !== 'date')
      .map((it) => {
        const tried = isQuantity(it.value) ? larger(it.value) : it.value
        return { word: it.word, at: yard, value: it.value, tried, moves: moved(job, plan, it.word, tried, memo, turn) }
      })
  }
}

/** The values to be tried side by side, each checked like anything that is told. */
export const triedOf = (values: readonly Told[], request: Request, heard: Heard, turn: number): Decision[] =>
  values.flatMap((told) =>
    checkBindings({ ...request, told: [told], acts: null }, heard, turn).held.map(({ word, at, value }) => ({
      word,
      at,
      value,
      turn,
    })),
  )

/** What a turn's words run against: what the fence would have worked otherwise, and what is bought or built already. */
export const remarksOn = (before: Job, job: Job, turn: number, memo: Memo): string[] =>
  before.moves === job.moves
    ? []
    : [
        ...rivalsOf(
          job,
          job.decisions.filter((it) => it.turn === turn),
          memo,
          turn,
        ).map(rivalText),
        ...touched(before, job, memo, turn),
      ]
