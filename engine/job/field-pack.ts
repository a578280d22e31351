// This file is about the field pack of a whole fence: which sheets a person takes outside, in the order in which they are needed.
import type { Country } from '../by-country.ts'
import { type CautionCode, inFull } from '../cautions/caution.ts'
import { cautionFor, inOrder, standingCautions } from '../cautions/cautions.ts'
import type { System } from '../quantities/quantity.ts'
import { fenceOf } from './fence.ts'
import { countryOf, type Job, systemOf, valueKey } from './job.ts'
import { type Memo, newMemo } from './node.ts'
import { planOf } from './plan.ts'
import { archSheets, baysSheet, stickSheets } from './sheets/bays.ts'
import { cutPlanSheet, takeOffSheet } from './sheets/buying.ts'
import { daysOf } from './sheets/days.ts'
import { gateSheets } from './sheets/gates.ts'
import { postLengthsSheet, stationsSheet } from './sheets/posts.ts'
import { allNodes, type Beside, type Site } from './sheets/site.ts'
import { permitSheet, planSheet, usualSheet } from './sheets/yard.ts'
import type { FieldPack, Sheet } from './sheets.ts'

const nothing: Beside = { sheets: [], cautions: [], calendar: [] }

/** The pack of the fence that the job tells of; nothing while no run is told. `turn` is the last one, counted from 0. */
export function fieldPackOf(
  job: Job,
  turn: number,
  memo: Memo = newMemo(),
  beside: Beside = nothing,
): FieldPack | undefined {
  const plan = planOf(job, memo, turn)
  // A length that somebody only asked about is no fence yet.
  if (!plan || !(plan.fence.isByRuns || plan.runs.length > 0)) return undefined
  const site: Site = { job, plan, memo, turn }
  const days = daysOf(site)
  const sheets = [
    planSheet(site),
    stationsSheet(site),
    postLengthsSheet(site),
    baysSheet(site),
    ...stickSheets(site),
    ...gateSheets(site),
    ...archSheets(site),
    takeOffSheet(site),
    cutPlanSheet(site),
    days.sheet,
    permitSheet(site),
    usualSheet(site),
  ].filter((it) => it !== undefined)
  const codes = allNodes(site).flatMap(({ outcome, part }) => (outcome.ok ? part.calculation.cautions : []))
  return {
    title: 'Field pack',
    version: `turn ${turn + 1} · ${markOf(job)}`,
    paper: paperFor(job),
    sheets: [
      ...sheets.map(withoutEmpty),
      ...beside.sheets,
      cautionSheet([...standingCautions, ...codes, ...beside.cautions], countryOf(job)),
    ],
    calendar: [...days.entries, ...beside.calendar],
  }
}

const withoutEmpty = ({ title, blocks }: Sheet): Sheet => ({
  title,
  blocks: blocks.filter((it) =>
    it.kind === 'lines' ? it.lines.length > 0 : it.kind === 'table' ? it.table.rows.length > 0 : true,
  ),
})

/** Every caution whole, as it holds where the fence is. */
export const cautionSheet = (codes: readonly CautionCode[], country: Country | undefined): Sheet => ({
  title: 'Take care',
  blocks: [{ kind: 'lines', lines: inOrder(codes).map((code) => `• ${inFull(cautionFor(code), country)}`) }],
})

/** Letter is the paper of North America; elsewhere it is A4, whatever the tape says. */
export function paperFor(job: Job): FieldPack['paper'] {
  const [country, system]: [Country | undefined, System] = [countryOf(job), systemOf(job)]
  if (country !== undefined) return country === 'us' || country === 'canada' ? 'letter' : 'a4'
  return system === 'imperial' ? 'letter' : 'a4'
}

/** Two plans with the same mark were decided alike: FNV-1a over the decisions, in base 36. The order of the runs is part of a plan, that of the rest is not. */
export function markOf(job: Job): string {
  const told = job.decisions.map(({ word, at, value }) => `${word}@${at}=${valueKey(value)}`)
  const runs = fenceOf(job).runs.map((it) => it.place)
  const text = [systemOf(job), ...runs, ...told.toSorted()].join('|')
  let hash = 0x811c9dc5
  for (const byte of bytesOf(text)) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0
  return hash.toString(36).toUpperCase().padStart(7, '0')
}

/** The text in UTF-8, with what the language alone has: a bare engine knows no TextEncoder. */
const bytesOf = (text: string): number[] =>
  (encodeURIComponent(text).match(/%..|./g) ?? []).map((it) =>
    it.length === 1 ? it.charCodeAt(0) : Number.parseInt(it.slice(1), 16),
  )
