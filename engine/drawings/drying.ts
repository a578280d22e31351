// This file is about how wood dries: the readings, the curve through them, the moisture wanted, and where the air lets it settle.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, dot, grey, heading, ink, line, onSheet, plate, sheet, spread, width, words } from './svg.ts'

const [left, right, top, bottom] = [34, width - 14, 44, 214]

export function dryingDrawing(seen: Seen): string | null {
  if (!seen.maybe('days')) return null
  const readings = seen.rows('dryingReadings').map((it) => numberIn(it, 'percent'))
  const days = seen.rows('days').map((it) => numberIn(it, 'day'))
  const [settles, limit] = [seen.one('equilibriumMoisture'), seen.one('moistureLimit')]
  const [low, wanted] = [numberIn(settles, 'percent'), numberIn(limit, 'percent')]
  const constant = seen.maybe('timeConstant')
  const wait = seen.maybe('daysToDry')
  const [soonest, latest] = [seen.maybe('daysToDryFrom'), seen.maybe('daysToDryTo')]
  const last = days.at(-1) ?? 0
  const end = latest ? last + numberIn(latest, 'day') : last * 2
  if (readings.length === 0 || !(end > 0)) return null
  const [most, step] = nicely(Math.max(...readings, low, wanted), 6)
  const [longest, tick] = nicely(end, 8)
  const x = (day: number): number => left + (day / longest) * (right - left)
  const y = (percent: number): number => bottom - (percent / most) * (bottom - top)
  const parts = [line(left, bottom, right, bottom, 1.2), line(left, top - 6, left, bottom, 1.2)]
  for (let day = 0; day <= longest + 1e-9; day += tick)
    parts.push(
      line(x(day), bottom, x(day), bottom + 4),
      words(onSheet(x(day), plain(day), 'middle', 11), bottom + 17, plain(day), 'middle', 11),
    )
  for (let percent = 0; percent <= most + 1e-9; percent += step)
    parts.push(line(left - 4, y(percent), left, y(percent)), words(left - 7, y(percent) + 4, plain(percent), 'end', 11))
  const level = (percent: number, dash: string, weight: number): string =>
    line(left, y(percent), right, y(percent), weight, grey, dash)
  parts.push(level(wanted, '6 3', 1.4), level(low, '2 3', 1.2))
  if (constant && wait) {
    const rate = numberIn(constant, 'day')
    const first = (readings.at(-1) as number) - low
    const points = Array.from({ length: 61 }, (_, i) => (i / 60) * longest).map(
      (day) => [x(day), y(low + first * Math.exp((last - day) / rate))] as const,
    )
    const shown = points.filter(([, v]) => v >= top - 8)
    parts.push(
      `<path d="M${shown.map(([u, v]) => `${u.toFixed(1)} ${v.toFixed(1)}`).join('L')}" fill="none" stroke="${ink}" stroke-width="1.6"/>`,
    )
  }
  if (soonest && latest) {
    const [from, to] = [x(last + numberIn(soonest, 'day')), x(last + numberIn(latest, 'day'))]
    const at = y(wanted)
    parts.push(line(from, at, to, at, 3.5), line(from, at - 5, from, at + 5, 1.5), line(to, at - 5, to, at + 5, 1.5))
  }
  days.forEach((day, i) => {
    parts.push(dot(x(day), y(readings[i] as number), 4))
  })
  // The two levels' words stand at the right end, the upper one above its line and the lower one below it.
  const [limitText, settlesText] = [`wanted ${show(limit)}`, `settles at ${show(settles)}`]
  const named = [
    { percent: wanted, text: limitText },
    { percent: low, text: settlesText },
  ].sort((a, b) => b.percent - a.percent)
  named.forEach(({ percent, text }, i) => {
    const middle = right - spread(text, 11) / 2 - 2
    const lies = i === 0 ? y(percent) - 8 : Math.min(y(percent) + 14, bottom - 4)
    parts.push(plate(middle, lies, text, 11))
  })
  parts.push(
    heading(
      soonest && latest
        ? `${show(soonest)} to ${show(latest)} from the last reading`
        : wait
          ? 'dry enough already'
          : low >= wanted
            ? 'not in this weather'
            : 'the readings do not tell',
      22,
    ),
    aside('moisture in per cent, by days from the first reading', bottom + 36),
  )
  return sheet(
    {
      width,
      height: bottom + 46,
      title: 'How the wood dries',
      description: `Readings of ${readings.map((it) => `${plain(it)} %`).join(', ')}; wanted ${show(limit)}; it settles at ${show(settles)}${soonest && latest ? `; dry enough between ${show(soonest)} and ${show(latest)} after the last reading` : ''}.`,
    },
    parts,
  )
}

const plain = (number: number): string => String(Math.round(number * 10) / 10)

/** The end of a scale and its step, in figures that people count in, with so many steps at most. */
function nicely(end: number, steps: number): readonly [end: number, step: number] {
  const rough = end / steps
  const ten = 10 ** Math.floor(Math.log10(rough))
  const step = ([1, 2, 5, 10].find((it) => it * ten >= rough) ?? 10) * ten
  return [Math.ceil(end / step - 1e-9) * step, step]
}
