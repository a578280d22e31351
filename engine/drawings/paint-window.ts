// This file is about the hours of a day on a strip: in which paint can go on, and what stands against the others.
// Every hour has a letter, so that it reads the same in black and white.
import type { Seen } from '../calculation.ts'
import { aside, box, heading, ink, sheet, width, words } from './svg.ts'

const inRow = 12
const [wide, high] = [28, 26]
const left = (width - inRow * wide) / 2
const letters: readonly (readonly [starts: string, letter: string, meaning: string])[] = [
  ['yes', 'P', 'paint'],
  ['no time to dry', 'N', 'no time left to dry'],
  ['too cold', 'C', 'too cold'],
  ['too hot', 'H', 'too hot'],
  ['too damp', 'W', 'too damp'],
  ['too near dew', 'D', 'too near the dew point'],
  ['rain', 'R', 'rain'],
]

export function paintWindowDrawing(seen: Seen): string | null {
  const table = seen.tables[0]
  if (!table) return null
  const hours = table.rows.map((row) => ({
    clock: String(row[0]),
    air: String(row[1]),
    of: letters.find(([starts]) => String(row[5]).startsWith(starts)),
  }))
  const rows = Math.ceil(hours.length / inRow)
  const parts: string[] = []
  const deep = 66
  const top = 44
  hours.forEach(({ clock, air, of }, i) => {
    const [x, y] = [left + (i % inRow) * wide, top + Math.floor(i / inRow) * deep]
    const paints = of?.[1] === 'P'
    parts.push(
      words(x + wide / 2, y + 10, clock.slice(0, 2), 'middle', 11),
      box(x, y + 15, wide, high, paints ? ink : of?.[1] === 'N' ? '#ddd' : '#fff', 0.8),
      `<text x="${x + wide / 2}" y="${y + 33}" text-anchor="middle" font-size="14" fill="${paints ? '#fff' : ink}"${paints ? ' font-weight="700"' : ''}>${of?.[1] ?? ''}</text>`,
      words(x + wide / 2, y + 53, air.replace(/ °[FC]$/, '').replace(/(\.\d)\d+/, '$1'), 'middle', 10),
    )
  })
  const used = letters.filter(([, letter]) => hours.some(({ of }) => of?.[1] === letter))
  const foot = top + rows * deep
  used.forEach(([, letter, meaning], i) => {
    const [x, y] = [left + 8 + (i % 2) * 170, foot + 12 + Math.floor(i / 2) * 18]
    parts.push(words(x, y, letter, 'start', 12, true), words(x + 18, y, meaning, 'start', 11))
  })
  const painted = hours.filter(({ of }) => of?.[1] === 'P')
  const end = foot + 12 + Math.ceil(used.length / 2) * 18
  parts.push(
    heading(painted.length > 0 ? 'hours to paint in are black' : 'no hour to paint in'),
    aside(`hour on top, air in ${hours[0]?.air.match(/°[FC]$/)?.[0] ?? 'degrees'} below`, end + 8),
  )
  const said = hours.map(({ clock, of }) => `${clock} ${of?.[2] ?? ''}`).join(', ')
  return sheet({ width, height: end + 18, title: 'Hours to paint in', description: `Hour by hour: ${said}.` }, parts)
}
