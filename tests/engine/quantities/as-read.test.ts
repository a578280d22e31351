// What is read of messages as people type them, plain ones and torn ones, as it was last read: kept like the worked examples, so that nothing comes to be read
// otherwise unseen. The sums by hand are in the files beside it. Those of torn.txt are near misses: a word too many, another joint, half of a date.
// Those of at-the-limits.txt are written a subject at a time: at a limit, right over it and right under it, and what looks alike and is something else.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'
import type { Reading } from '../../../engine/quantities/reading.ts'
import { show } from '../../../engine/quantities/show.ts'

const indent = '    '

/** All that is read of one quantity, in a line. */
function inLine({ said, quantity, bare, high, bareHigh, firmness, section, change, rivals, ...more }: Reading): string {
  const flags = [
    more.proportion && 'part',
    more.clock && 'clock',
    more.people && 'people',
    more.rails && 'rails',
    more.point,
  ]
  return [
    said,
    section &&
      `${section.name} is ${show(section.thickness)} by ${show(section.width)}${section.nominal ? '' : ' as said'}`,
    quantity &&
      `${show(quantity)}${high ? ` to ${show(high)}` : ''}${quantity.kind === 'date' ? '' : ` (${quantity.unit})`}`,
    bare && `${bare.toFraction(true)}${bareHigh ? ` to ${bareHigh.toFraction(true)}` : ''}`,
    firmness === 'exactly' ? undefined : firmness,
    ...flags,
    more.per && `per ${more.per}`,
    change && `${change.moves ? 'moved ' : ''}${change.way} at ${change.start} to ${change.end}`,
    rivals.length > 0 && `or ${rivals.map((it) => show(it)).join(', ')}`,
    more.note,
  ]
    .filter(Boolean)
    .join(' | ')
}

/** The messages of a file; “[metric]” and “[comma]” before one say by whose habits it is read, “⏎” ends a line of it and “⇥” is a tab. */
const messagesOf = (file: string): string[] =>
  readFileSync(file, 'utf8')
    .split('\n')
    .filter((it) => it.trim() !== '' && !it.startsWith(indent))

function read(kept: string): Reading[] {
  const line = kept.replaceAll(' ⏎ ', '\n').replaceAll('⇥', '\t')
  const habits = /^\[(metric|comma)\] /.exec(line)?.[1]
  if (!habits) return readQuantities(line)
  const message = line.slice(habits.length + 3)
  return readQuantities(message, habits === 'metric' ? { system: 'metric' } : { decimalComma: true })
}

it.each(['as-read.txt', 'torn.txt', 'at-the-limits.txt'])('is read as it was: %s', async (name) => {
  const file = join(import.meta.dirname, name)
  const lines = messagesOf(file).map((it) => [it, ...read(it).map((each) => `${indent}${inLine(each)}`)].join('\n'))
  await expect(`${lines.join('\n\n')}\n`).toMatchFileSnapshot(file)
})
