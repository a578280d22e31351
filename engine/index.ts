// The names of the engine that the assistant may use. Adding one is a promise.
export { type Calculation, needsFor, run, usualFor } from './calculation.ts'
export { fitted, fittedReading, ofStick, parseValue, problemWith } from './words/value.ts'
export { askable, calculationNamed, catalogue, subjects, vocabulary } from './catalogue.ts'
export type { CautionCode } from './cautions/caution.ts'
export type { Country } from './by-country.ts'
export { inFull } from './cautions/caution.ts'
export { cautionFor, standingCautions } from './cautions/cautions.ts'
export { editions, version } from './editions.ts'
export {
  type Asked,
  type AsSaid,
  type Decision,
  type GivenBy,
  decide,
  type Job,
  keep,
  newJob,
  readJob,
  redo,
  turnTo,
  undo,
  type Result,
  sameValue,
  countryOf,
  systemOf,
  type Wanted,
  writeJob,
  type WrittenJob,
} from './job/job.ts'
export { valueAfter, valueBefore } from './job/changed.ts'
export { fenceInWords } from './job/in-words.ts'
export { pathOf, showValue } from './job/explain.ts'
export { type Assumption, assumptionsOf, byMove, larger, moved, openQuestions } from './job/next.ts'
export { looksAt, ofRuns, wholeFence } from './job/parts.ts'
export { type Memo, newMemo } from './job/node.ts'
export { gatesTold, planOf, runPlaces, wantsSolver } from './job/plan.ts'
export { boughtSoFar, rivalsOf, rivalText, touched } from './job/touched.ts'
export { boughtOf } from './words/so-far.ts'
export { sections } from './words/timber-sold.ts'
export { compared, type Named, sideBySide } from './job/side-by-side.ts'
export {
  inPlace,
  isPlace,
  isRun,
  kindsIn,
  landmarks,
  partOf,
  placeLabel,
  postKinds,
  runNames,
  runOf,
  together,
  yard,
} from './places.ts'
export { entriesIn, partByPart } from './job/calendar-entries.ts'
export { cautionSheet, fieldPackOf, paperFor } from './job/field-pack.ts'
export type { Block, CalendarEntry, FieldPack, Sheet } from './job/sheets.ts'
export { type Worked, work } from './job/work.ts'
export { showNote } from './notes/note.ts'
export { noteNamed, notes } from './notes/notes.ts'
export type { Given, Outcome, Problem, Role, Table } from './outcome.ts'
export { isoDate } from './quantities/calendar.ts'
export { isExact, toNumber } from './quantities/amount.ts'
export {
  amountIn,
  isList,
  isQuantity,
  numberIn,
  type Quantity,
  quantity,
  type System,
  type Value,
} from './quantities/quantity.ts'
export type { Model, Solved, Solver } from './cutting/solver.ts'
export { readQuantities } from './quantities/read.ts'
export { type PastedTable, tablesIn } from './quantities/rows.ts'
export { oneSlip } from './quantities/slips.ts'
export { tableOf } from './quantities/table-of.ts'
export type { Firmness, Reading } from './quantities/reading.ts'
export { exactText, show } from './quantities/show.ts'
export { atNearestMark } from './quantities/tape.ts'
export { yearTaken } from './quantities/dates.ts'
export { unitNamed } from './quantities/units.ts'
export { inSentence, type Word } from './words/word.ts'
export { workWritten } from './written.ts'
