// This file is about where the posts of a run stand: their centres from the start, and the table that says so.
import type { Table } from './outcome.ts'
import { type Amount, add, roundTo } from './quantities/amount.ts'
import { exactly, numberIn, type Quantity, type System } from './quantities/quantity.ts'
import { show } from './quantities/show.ts'

/** What stands between two post centres. */
export interface Space {
  readonly length: Quantity
  readonly what: 'bay' | 'gate'
}

/** Every post centre, the first at `from`; in a loop the last space ends at the first post. */
export function postCentres(from: Amount, spaces: readonly Space[], isLoop: boolean, system: System): Quantity[] {
  const unit = system === 'metric' ? 'mm' : 'ft'
  let at = from
  const centres: Quantity[] = [{ kind: 'length', amount: at, unit }]
  for (const space of spaces) {
    at = add(at, space.length.amount)
    centres.push({ kind: 'length', amount: at, unit })
  }
  if (isLoop) centres.pop()
  return centres
}

export function postTable(
  centres: readonly Quantity[],
  spaces: readonly Space[],
  tapeMark: Quantity,
  system: System,
): Table {
  const unit = system === 'metric' ? 'mm' : 'in'
  const isLoop = centres.length === spaces.length
  const before = (i: number): Space | undefined => (i === 0 && isLoop ? spaces.at(-1) : spaces[i - 1])
  return {
    title: 'Post centres',
    columns: [
      { label: 'post', unit: '' },
      { label: 'kind', unit: '' },
      { label: 'from the start, by the tape', unit: '' },
      { label: `exactly (${unit})`, unit },
    ],
    rows: centres.map((centre, i) => [
      i + 1,
      // Where two gates follow each other, the drawing must know which side of a post is a gate.
      spaces[i]?.what === 'gate' ? 'gate post, then the gate' : before(i)?.what === 'gate' ? 'gate post' : 'post',
      show({ ...centre, amount: roundTo(centre.amount, exactly(tapeMark)) }),
      numberIn(centre, unit),
    ]),
  }
}

/** Which of the spaces between posts are gates, read off that table. */
export const gatesIn = (table: Table): boolean[] => table.rows.map(([, kind]) => kind === 'gate post, then the gate')

export const measureFromStart = (start: string): string =>
  `Measure every post centre from ${start}, with the tape held at zero. Stepping from post to post adds every small error up.`
