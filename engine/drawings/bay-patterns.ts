// This file is about one run divided in three ways, one under the other and to one scale, so that the eye can choose.
import type { Seen } from '../calculation.ts'
import { toNumber } from '../quantities/amount.ts'
import { numberIn, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { box, grey, line, mostParts, part, sheet, words } from './svg.ts'

const width = 460
const margin = 16
const rowHeight = 74

export function bayPatternsDrawing(seen: Seen): string | null {
  // Nothing is shared between the ends where nothing is left over.
  const end = seen.maybe('endBays')
  if (!end) return null
  const [odd, even] = [seen.one('oddBay'), seen.one('evenBay')]
  const whole = seen.one('fixedBay')
  const count = Math.round(toNumber(seen.one('wholeBays').amount))
  const ways: readonly { readonly name: string; readonly bays: readonly Quantity[] }[] = [
    { name: `${count} × ${show(whole)} and an odd last bay of ${show(odd)}`, bays: [...many(count, whole), odd] },
    {
      name: count > 1 ? `${count - 1} × ${show(whole)} between two ends of ${show(end)}` : `two of ${show(end)}`,
      bays: [end, ...many(count - 1, whole), end],
    },
    { name: `${count + 1} × ${show(even)}`, bays: many(count + 1, even) },
  ]
  const total = ways[0]?.bays.reduce((sum, bay) => sum + numberIn(bay, 'in'), 0) ?? 1
  const scale = (width - 2 * margin) / total
  const post = Math.max(3, Math.min(9, numberIn(seen.one('postWidth'), 'in') * scale))
  const parts: string[] = []
  ways.forEach(({ name, bays }, row) => {
    const y = 16 + row * rowHeight
    parts.push(words(margin, y, name, 'start', 13, true))
    let x = margin
    const places = [x, ...bays.map((bay) => (x += numberIn(bay, 'in') * scale))]
    if (bays.length * ways.length > mostParts) parts.push(line(margin, y + 26, x, y + 26, 2, grey))
    else
      bays.forEach((bay, i) => {
        const [from, to] = [places[i] as number, places[i + 1] as number]
        parts.push(
          part(
            `bay ${i + 1} of ${bays.length}: ${show(bay)} centre to centre`,
            line(from, y + 26, to, y + 26, 2, grey),
          ),
        )
      })
    for (const place of places) parts.push(box(place - post / 2, y + 12, post, 28, '#fff', 1.5))
  })
  return sheet(
    {
      width,
      height: ways.length * rowHeight - 6,
      title: 'One run, divided in three ways',
      description: `The same run three times, to one scale: ${ways.map((it) => it.name).join('; ')}.${gatesAside(seen)}`,
    },
    parts,
  )
}

const many = (count: number, bay: Quantity): Quantity[] => Array.from({ length: count }, () => bay)
const gatesAside = (seen: Seen): string =>
  toNumber(seen.one('gates').amount) > 0 ? ' Gates are left out: they stand between any two bays.' : ''
