// This file is about two whole fences that tests of the field pack are made from, and about finding what stands on a sheet.
import type { Block, FieldPack } from '../../../engine/job/sheets.ts'
import type { Table } from '../../../engine/outcome.ts'

/** Six runs round a yard with corners of 120°: opposite sides are 50, 70 and 40 ft, so that it comes back to where it began. */
export const sixRuns = {
  'runLength@front': '50 ft',
  'runLength@right': '70 ft',
  'runLength@back': '40 ft',
  'runLength@lane': '50 ft',
  'runLength@garden': '70 ft',
  'runLength@left': '40 ft',
  cornerAngle: '120 deg',
  runEnds: 'loop',
  widestBay: '8 ft',
  'gates@front': '1',
  'gateOpening@front': '42 in',
  'gateStart@front': '20 ft',
  'gateOpening@left': '10 ft',
  'gateLeaves@left': 'double',
  picketWidth: '3 1/2 in',
  widestGap: '2 1/2 in',
  picketLength: '42 in',
  postAbove: '4 ft',
  holeDiameter: '10 in',
  'holeDiameter@gate-posts': '12 in',
  bagWeight: '60 lb',
  'fall@right': '40 in',
  'slopeWay@right': 'stepped',
  memberWidth: '3 1/2 in',
  insideHeight: '30 in',
  braceWidth: '3 1/2 in',
  'archRise@back': '6 in',
  'shortestPicket@back': '40 in',
  callDate: '2026-06-01',
  noticeDays: '3',
  digWork: '2 days',
  ticketLife: '21',
  ticketCounts: 'calendar-from-call',
  coats: '2',
  setback: '6 in',
} as const

/** Three runs from wall to wall, in millimetres, the middle one following the ground. */
export const threeRuns = {
  'runLength@front': '18 m',
  'runLength@right': '25 m',
  'runLength@back': '18.5 m',
  'nearEnd@front': 'wall',
  'farEnd@back': 'wall',
  widestBay: '2.4 m',
  'cornerAngle@front': '100 deg',
  'gates@front': '1',
  'gateOpening@front/gate-1': '1000 mm',
  'gateStart@front/gate-1': '4 m',
  picketWidth: '90 mm',
  widestGap: '60 mm',
  picketEnds: 'picket',
  picketLength: '1100 mm',
  postAbove: '1200 mm',
  postWidth: '90 mm',
  holeDiameter: '300 mm',
  bagWeight: '20 kg',
  'fall@right': '800 mm',
  'slopeWay@right': 'raked',
  railDepth: '90 mm',
  country: 'australia',
} as const

export const blocksOf = (pack: FieldPack, sheet: string): Block[] =>
  pack.sheets.filter((it) => it.title === sheet).flatMap((it) => it.blocks)

export const tablesOf = (pack: FieldPack, sheet: string): Table[] =>
  blocksOf(pack, sheet).flatMap((it) => (it.kind === 'table' ? [it.table] : []))

export const linesOf = (pack: FieldPack, sheet: string): string[] =>
  blocksOf(pack, sheet).flatMap((it) => (it.kind === 'lines' ? it.lines : []))

export const drawingsOf = (pack: FieldPack, sheet: string): string[] =>
  blocksOf(pack, sheet).flatMap((it) => (it.kind === 'drawing' || it.kind === 'full-size' ? [it.svg] : []))

/** A column of a table by its heading. */
export function column({ columns, rows }: Table, heading: string): string[] {
  const i = columns.findIndex((it) => it.label === heading)
  if (i < 0) throw new Error(`no column ${heading} among ${columns.map((it) => it.label).join(', ')}`)
  return rows.map((it) => String(it[i]))
}
