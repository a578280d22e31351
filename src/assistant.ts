// This file is about one turn, top to bottom. Read it first.
import {
  countryOf,
  isQuantity,
  type Job,
  newJob,
  newMemo,
  noteNamed,
  readJob,
  type Reading,
  readQuantities,
  systemOf,
  unitNamed,
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
import { unusedOf, withoutIdle, withoutUnread, withoutYes } from './unused.ts'
import { pickedBetween, wordPicked } from './between.ts'
import { takenFor } from './said-of.ts'
import { readBack } from './read-back.ts'
import { sumReadBack } from './sum-read-back.ts'
import { callsOf, changesBetween, figuresIn, questionsIn, readingsAs } from './entry.ts'
import { beforeAll } from './guard/before-all.ts'
import { checkBindings } from './guard/bindings.ts'
import { cautionsNamed } from './guard/cautions-named.ts'
import { cautionsFor } from './guard/cautions.ts'
import { grounded } from './guard/grounded.ts'
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
      return { ...(await answerTo(heed, heard, before.length, write, watch, signal)), ...spent() }
    },
  }
}

/** The units that a quantity was said in; none where it may be of either: “30 degrees” is an angle too, or °C. */
function systemIn({ quantity, rivals, section }: Reading): Job['system'] | undefined {
  // “90x45” is called by its millimetres.
  if (section && !section.nominal) return unitNamed(section.width.unit).system === 'metric' ? 'metric' : undefined
  const [of, ...others] = [...(quantity ? [quantity] : []), ...rivals].map((it) => unitNamed(it.unit).system)
  return others.some((it) => it && it !== of) ? undefined : of
}

/** “Litres of concrete”, “how many m3”: what is asked for in metric units is told in them. */
const asksInMetric =
  /\b(?:lit(?:re|er)s|m[23]|m[²³]|cubic met(?:re|er)s|square met(?:re|er)s|kilos?|millimet(?:re|er)s|centimet(?:re|er)s)(?![\w²³])/i

/** The message with its quantities read and tagged, beside the job it is said into. */
export function hear(said: string, job: Job): Heard {
  const near = job.decisions.map((it) => it.value).findLast((it) => isQuantity(it) && it.kind === 'date')
  const ofWords = wordPicked(said, job)
  const picked = ofWords?.reading ?? pickedBetween(said, job)
  const readings = picked
    ? [picked]
    : readQuantities(said, { ...(job.system ? { system: job.system } : {}), ...(isQuantity(near) ? { near } : {}) })
  // Bare numbers beside metric ones are metric: "300 mm holes 600 deep".
  // “All in metres”: said once for every number.
  const saidOfAll =
    /\b(?:all|everything|measures?|figures?|points?)\b[^.;]{0,16}\bin (?:metres|meters|millimet(?:re|er)s|mm)\b/i.test(
      said,
    )
  // “Timber comes in 4.8s”: lengths by the foot are whole ones.
  const isByMetre = /\b[1-6]\.\d['’]?s\b/.test(said)
  const system =
    (saidOfAll || isByMetre ? 'metric' : undefined) ??
    readings.map(systemIn).findLast((it) => it) ??
    job.system ??
    (asksInMetric.test(said) ? 'metric' : null)
  return {
    said,
    job: { ...job, system },
    readings: readings.map((it, i) => ({ ...it, tag: `u${i + 1}` })),
    ...(ofWords ? { picked: ofWords.word } : {}),
  }
}

/** From the typed request to the answer: bindings checked, the job changed, the engine's working, the program's words. */
export async function answerTo(
  { request: read, by, notice }: Heed,
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
  const sure = sumReadBack(readBack(known, decided, { turn, unused }), request, bindings.held)
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
    heard: { request, ...(notice ? { notice } : {}) },
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

/** The job as the last turn left it. */
export const jobAfter = (turns: readonly Turn[]): Job => {
  const last = turns.at(-1)
  return last ? readJob(last.job as WrittenJob) : newJob
}
