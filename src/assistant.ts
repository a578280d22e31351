// This file is about one turn, top to bottom. Read it first.
import {
  countryOf,
  type Job,
  newMemo,
  noteNamed,
  readJob,
  runPlaces,
  systemOf,
  wantsSolver,
  work,
  type WrittenJob,
  writeJob,
} from '../engine/index.ts'
import { type Allowance, newAllowance } from './allowance.ts'
import { adviceFor } from './advice.ts'
import type { Answer, Turn } from './answer.ts'
import { actOn, remarksOn, shown, triedOf } from './acting.ts'
import { compose, wordsOf } from './compose.ts'
import { comesOutAsBefore, decideTurn, remember } from './deciding.ts'
import { cautionsOfDeclined, whyDeclined } from './declined.ts'
import { inUnitsAsked } from './units-asked.ts'
import { withoutOtherKind } from './other-kind.ts'
import { unusedOf, withoutIdle, withoutUnread, withoutYes } from './unused.ts'
import { takenFor } from './said-of.ts'
import { readBack } from './read-back.ts'
import { sumReadBack } from './sum-read-back.ts'
import { callsOf, changesBetween, figuresIn, questionsIn, readingsAs } from './entry.ts'
import { beforeAll } from './guard/before-all.ts'
import { checkBindings } from './guard/bindings.ts'
import { cautionsNamed } from './guard/cautions-named.ts'
import { cautionsFor } from './guard/cautions.ts'
import { grounded } from './guard/grounded.ts'
import { hear, hearSince, jobAfter, unansweredBefore } from './hearing.ts'
import { haltedTurn } from './halted.ts'
import { isUrgent } from './readers/offline/emergencies.ts'
import { settles } from './readers/offline/notes.ts'
import { ownReading, readOffline } from './readers/offline/offline.ts'
import type { Heard, Heed, Reader } from './readers/reader.ts'
import { cutSolver } from './solver/highs.ts'
import type { TurnEvent } from './turn-event.ts'

/** A model's sentences, empty when nothing of them stands; or why its server failed before there were any, said to the person. */
export type Written = string | { readonly unwritten: string }
/** Writes a few sentences around the figures, guarded before they are shown. */
export type Writer = (
  said: string,
  card: Answer,
  show: (piece: string) => void,
  allowance: Allowance,
  signal?: AbortSignal,
) => Promise<Written>
type Write = (card: Answer, show: (piece: string) => void) => Promise<Written>
export type Watch = (event: TurnEvent) => void
export interface Answered {
  readonly answer: Answer
  readonly job: unknown
  /** What a model was asked and answered for it; not set where none was. */
  readonly tokens?: number
}

interface AskedOfUs {
  readonly said: string
  readonly before: readonly Turn[]
  /** Why no model is to be asked, said to the person. */
  readonly spared?: string | undefined
}

export interface Assistant {
  /** When the signal comes nothing more is asked of a model, and what is answered says how far it got. */
  turn(asked: AskedOfUs, watch?: Watch, signal?: AbortSignal): Promise<Answered>
}

export function createAssistant(reader: Reader, writer?: Writer): Assistant {
  return {
    async turn({ said, before, spared }, watch = () => {}, signal) {
      const job = jobAfter(before)
      const heard = hear(said, job)
      const allowance = newAllowance()
      const heed: Heed | 'halted' =
        spared === undefined
          ? await reader.read(heard, allowance, signal)
          : { request: readOffline(heard), by: 'offline', notice: spared }
      const spent = (): { tokens?: number } => (allowance.tokens() > 0 ? { tokens: allowance.tokens() } : {})
      if (heed === 'halted') return { ...haltedTurn(job, before.length, reader.front), ...spent() }
      const write: Write | undefined =
        writer && heed.by === 'model' ? (card, show) => writer(said, card, show, allowance, signal) : undefined
      const [read, whole] = await withEarlier(heed, heard, before)
      return { ...(await answerTo(read, whole, before.length, write, watch, signal)), ...spent() }
    },
  }
}

/**
 * The message as it was read; or, where that gives no figure and the messages before it gave none either, all of them read as one,
 * if that leaves nothing to ask: a question said in pieces.
 */
async function withEarlier(heed: Heed, heard: Heard, before: readonly Turn[]): Promise<[Heed, Heard]> {
  const alone: [Heed, Heard] = [heed, heard]
  // A fence that is told in pieces is read back before its first figure.
  const isOfFence = runPlaces(heard.job).length > 0
  const starts = heed.by === 'offline' && !isOfFence ? unansweredBefore(before, heard) : []
  if (starts.length === 0 || isAnswered((await answerTo(heed, heard, before.length)).answer)) return alone
  for (const since of starts) {
    const together = hearSince(since, before, heard.said)
    const request = readOffline(together)
    const { answer, job } = await answerTo({ request, by: 'offline' }, together, before.length)
    if (isAnswered(answer) && answer.asks.length === 0 && goesOnWith(heard.job, job))
      return [{ request, by: 'offline', since, notice: readAsOne }, together]
  }
  return alone
}
/** Nothing was wanted before, or the same is wanted still. */
const goesOnWith = ({ wanted }: Job, after: unknown): boolean => {
  const now = readJob(after as WrittenJob).wanted
  return (
    wanted.length === 0 ||
    (now.length === wanted.length && now.every(({ word }) => wanted.some((it) => it.word === word)))
  )
}
const readAsOne = 'I took this together with what you said just before.'

const isAnswered = ({ figures, advice, declined }: Answer): boolean =>
  declined === null && (advice.length > 0 || figures.some((it) => it.role === 'result' && it.headline))

/** From the typed request to the answer: bindings checked, the job changed, the engine's working, the program's words. */
export async function answerTo(
  { request: read, by, notice, since }: Heed,
  heard: Heard,
  turn: number,
  write?: Write,
  watch: Watch = () => {},
  signal?: AbortSignal,
): Promise<Answered> {
  const own = by === 'model' ? ownReading(heard) : undefined
  const request = own ? beforeAll(grounded(read, heard, own), own) : read
  const urgent = isUrgent(request)
  const bindings = checkBindings(request, heard, turn, own)
  const acts = request.acts ?? []
  const acted = actOn(heard.job, acts)
  const decided = decideTurn(acted.job, request, bindings)
  const memo = newMemo(wantsSolver(decided) ? await cutSolver() : undefined)
  const readAs = readingsAs(bindings.held, heard, request)
  watch({ event: 'read', data: readAs })

  const unused = unusedOf(heard, request, bindings.held)
  const whole = withoutYes(work(decided, decided.wanted, turn, { named: decided.named, memo }), unused)
  const known = withoutIdle(withoutUnread(whole, bindings, request, heard.job), bindings, unused, heard)
  const fitting = withoutOtherKind(known, heard.said)
  const sure = sumReadBack(readBack(fitting, decided, { turn, unused }), request, bindings.held, heard.job)
  const checked = inUnitsAsked(sure, heard.said)
  const changed = changesBetween(heard.job, decided, checked, turn, memo)
  // What was answered before, and comes out as it did, is not told again: in a whole fence most words touch little.
  const isSame = comesOutAsBefore(heard.job, request, bindings, checked, changed)
  const [job, worked] = isSame ? [{ ...decided, wanted: [] }, []] : [decided, checked]
  const of = callsOf(worked, job.wanted)
  const between = acts.flatMap(({ between: values }) => triedOf(values ?? [], request, heard, turn))
  const ofAll = shown(heard.job, job, acts, between, { memo, turn, from: of.length + 1 })
  const calls = [...of, ...ofAll.calls]
  const advice = adviceFor(request.notes ?? [], systemOf(job), countryOf(job))
  const figures = [...figuresIn(worked, of, changed, readAs), ...advice.flatMap((it) => it.figures)]
  const named = cautionsNamed(heard.said)
  const cautions = cautionsFor({
    full: [
      ...worked.flatMap((it) => (it.outcome.ok ? it.calculation.cautions : [])),
      ...advice.flatMap((it) => noteNamed(it.note)?.cautions ?? []),
      ...cautionsOfDeclined(request.declines),
      ...named,
    ],
    lines: worked.flatMap((it) => (it.outcome.ok ? [] : it.calculation.cautions)),
    alreadyTold: heard.job.told,
    country: countryOf(job),
    named: urgent ? [] : named,
    brief: urgent || (worked.length > 0 && advice.length === 0 && worked.every((it) => it.calculation.plain)),
  })
  watch({ event: 'cautions', data: cautions })
  for (const call of calls) watch({ event: 'call', data: call })
  watch({ event: 'figures', data: figures })

  const { asks: lacking, leftOver } = urgent
    ? { asks: [], leftOver: [] }
    : questionsIn(of, bindings, job, { request, unused: (request.notes ?? []).some(settles) ? [] : unused, memo })
  const asks = [...lacking, ...ofAll.asks]
  const declines = request.declines.map(whyDeclined)
  const refusals = request.declines.filter((it) => it.why !== 'small-talk')
  const entry = {
    turn,
    calls,
    advice,
    figures,
    asks,
    cautions,
    changed,
    front: by,
    readAs,
    declined: refusals.length > 0 ? { why: refusals.map(whyDeclined).join(' ') } : null,
    heard: { request, ...(notice ? { notice } : {}), ...(since === undefined ? {} : { since }) },
  }
  const notices = urgent ? [] : [...(notice ? [notice] : []), ...acted.notices, ...ofAll.notices, ...declines]
  const said = [...takenFor(bindings.held, worked), ...leftOver, ...remarksOn(heard.job, job, turn, memo)]
  const answerWith = (written: Written): Answer => {
    const words = typeof written === 'string' ? { prose: written } : { prose: '', ...written }
    const parts = { ...entry, ...words, worked, notices, leftOver: said }
    return { ...entry, ...words, words: wordsOf(parts), reply: compose(parts) }
  }
  const after = writeJob(remember(job, worked, asks, cautions, bindings, heard.job))
  const card = answerWith('')
  if (!write || !isWorthSentences(card)) return { answer: card, job: after }

  watch({ event: 'card', data: card })
  const written = await write(card, (markdown) => watch({ event: 'prose', data: { markdown } }))
  const isHalted = written === '' && signal?.aborted === true
  return { answer: isHalted ? { ...card, halted: 'writing' } : answerWith(written), job: after }
}

/** Sentences are asked for where there is something to join: more than one sum, a change beside an answer, advice beside a figure. A single sum says itself. */
const isWorthSentences = ({ calls, changed, advice, figures }: Answer): boolean =>
  figures.some((it) => it.headline) &&
  calls.filter((it) => it.results.length > 0).length + changed.length + advice.length > 1
