// This file is about the field pack of a talk: a sheet for each answer that still stands, one of cautions, and the days in it.
import { createHash } from 'node:crypto'
import {
  type Block,
  type CalendarEntry,
  type CautionCode,
  cautionFor,
  cautionSheet,
  countryOf,
  entriesIn,
  type FieldPack,
  fieldPackOf,
  type Job,
  newMemo,
  paperFor,
  partByPart,
  placeLabel,
  planOf,
  type Sheet,
  type Solver,
  standingCautions,
  wantsSolver,
} from '../../engine/index.ts'
import type { Call, Figure, Turn } from '../answer.ts'
import { jobAfter } from '../hearing.ts'
import { cutSolver } from '../solver/highs.ts'
import { jobSheet } from '../sheet.ts'
import { standingCalls } from './standing.ts'

/** The sheets of the whole fence where its runs are told, and of what else stands; without an answer that stands there is no sheet. */
export function packOf(turns: readonly Turn[], solver?: Solver): FieldPack {
  const job = jobAfter(turns)
  const calls = standingCalls(turns)
  const cautions = cautionsIn(turns)
  const others = othersIn(calls, job, turns.length - 1)
  const beside = { sheets: others.map(sheetOf), cautions, calendar: others.flatMap(entriesOf) }
  const fence = fieldPackOf(job, turns.length - 1, newMemo(solver), beside)
  if (fence) return fence
  const sheets = calls.map(sheetOf)
  return {
    title: 'Field pack',
    version: `turn ${turns.length}, mark ${markOf(turns, calls)}`,
    paper: paperFor(job),
    sheets: sheets.length > 0 ? [...sheets, cautionSheet([...standingCautions, ...cautions], countryOf(job))] : [],
    calendar: calls.flatMap(entriesOf),
  }
}

/** The same with the solver at hand, where a section of timber is cut from lengths that are sold. */
export const packWithCuts = async (turns: readonly Turn[]): Promise<FieldPack> =>
  packOf(turns, wantsSolver(jobAfter(turns)) ? await cutSolver() : undefined)

/** Answers that no part of the fence gives: what it does give stands on its sheets already. */
function othersIn(calls: readonly Call[], job: Job, turn: number): Call[] {
  const plan = planOf(job, newMemo(), turn)
  return calls.filter((call) => !call.results.every((it) => plan?.node(it.word, it.at)))
}

/** The line at the foot of every page and in every entry of a calendar: the three cautions that are never left out. */
export const standingLine = standingCautions.map((code) => cautionFor(code).standing).join(' ')

/** Two plans with the same mark were decided and worked alike. */
function markOf(turns: readonly Turn[], calls: readonly Call[]): string {
  const said = jobSheet(turns).filter((it) => it.from === 'said')
  const plan = [...said, ...calls.flatMap((it) => it.results)].map(({ word, at, value, unit }) => [
    word,
    at,
    value,
    unit,
  ])
  return createHash('sha256').update(JSON.stringify(plan)).digest('hex').slice(0, 6).toUpperCase()
}

function sheetOf(call: Call): Sheet {
  const place = placeLabel(placeOf(call))
  const results = [...call.results].sort((a, b) => Number(b.headline) - Number(a.headline))
  // What more could be worked is for the talk; what may be wrong with this is for the sheet.
  const doubts = call.doubts.filter((it) => it.code !== 'missing')
  const blocks: Block[] = [
    { kind: 'lines', lines: results.map((it) => lineOf(it, call.results)) },
    ...call.tables.map((table): Block => ({ kind: 'table', table })),
    ...(call.drawing ? [{ kind: 'drawing', svg: call.drawing, caption: '' } satisfies Block] : []),
    { kind: 'lines', lines: doubts.map((it) => `• ${it.message}`) },
    { kind: 'lines', lines: ['Worked from:', ...call.inputs.map((it) => lineOf(it, call.inputs))] },
  ]
  return { title: place === '' ? call.title : `${call.title}: ${place}`, blocks }
}

const placeOf = (call: Call): string => [...call.results, ...call.inputs][0]?.at ?? ''

/** “gap by the tape: 2 3/16 in”, with the place where the others stand elsewhere, and whose value it is where nobody gave it. */
function lineOf(figure: Figure, among: readonly Figure[]): string {
  const place = among.some((it) => it.at !== figure.at) ? placeLabel(figure.at) : ''
  const whose = figure.role === 'assumed' ? 'usual, nobody said' : ''
  const beside = [place, whose].filter((it) => it !== '').join(', ')
  const tape = figure.byTape ? ` (${figure.byTape.text} by the tape)` : ''
  return `${figure.label}${beside === '' ? '' : ` (${beside})`}: ${figure.text}${tape}`
}

const cautionsIn = (turns: readonly Turn[]): CautionCode[] =>
  turns.flatMap((turn) => turn.answer.cautions.map((it) => it.code))

/** The parts of the job day by day; of every other calculation the days that it gave. */
function entriesOf(call: Call): CalendarEntry[] {
  const parts = call.tables.find((it) => it.title === partByPart)
  if (call.calculation === 'job-calendar' && parts) return entriesIn(parts)
  return call.results
    .filter((it) => it.unit === 'date' && typeof it.value === 'string')
    .map((it) => {
      const place = placeLabel(it.at)
      return {
        what: place === '' ? it.label : `${it.label}, ${place}`,
        first: String(it.value),
        last: String(it.value),
        note: call.title,
      }
    })
}
