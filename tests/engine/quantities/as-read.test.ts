// What is read of messages as people type them, plain ones and torn ones, as it was last read: kept like the worked examples, so that nothing comes to be read
// otherwise unseen. The sums by hand are in the files beside it.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'
import type { Reading } from '../../../engine/quantities/reading.ts'
import { show } from '../../../engine/quantities/show.ts'

const file = join(import.meta.dirname, 'as-read.txt')
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

const messages = readFileSync(file, 'utf8')
  .split('\n')
  .filter((it) => it.trim() !== '' && !it.startsWith(indent))

it('is read as it was', async () => {
  const read = messages.map((it) => [it, ...readQuantities(it).map((each) => `${indent}${inLine(each)}`)].join('\n'))
  await expect(`${read.join('\n\n')}\n`).toMatchFileSnapshot(file)
})
