// This file is about how the wait for concrete grows as it gets colder: a curve, with the bag's temperature and the one here marked on it.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { aside, dot, grey, heading, ink, line, onSheet, plate, sheet, spread, width, words } from './svg.ts'

const [left, right, top, bottom] = [34, width - 14, 62, 232]
/** The curve leaves the sheet at so many times as long, or higher up where the place here needs it. */
const usualMost = 8
/** No thermometer on a building site reads over so many degrees. */
const widestScale = 200

export function waitDrawing(seen: Seen): string | null {
  const [here, bag, datum, factor] = ['cureTemperature', 'bagTemperature', 'datumTemperature', 'coldFactor'].map((it) =>
    seen.one(it),
  ) as [ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>, ReturnType<Seen['one']>]
  const scale = here.unit === 'F' ? 'F' : 'C'
  const [t, b, zero, n] = [here, bag, datum].map((it) => numberIn(it, scale)).concat(numberIn(factor, factor.unit)) as [
    number,
    number,
    number,
    number,
  ]
  const [from, finest, cold] = scale === 'F' ? [Math.min(30, zero), 10, 40] : [Math.min(0, zero), 5, 5]
  if (Math.max(t, b) - from > widestScale) return null
  const to = Math.ceil((Math.max(t, b) + finest / 2) / finest) * finest
  // So few figures along the scale that each has its room.
  const step = finest * ([1, 2, 4].find((it) => to - from <= 11 * finest * it) ?? 8)
  const most = Math.max(usualMost, 2 * Math.ceil(n / 2))
  const x = (degrees: number): number => left + ((degrees - from) / (to - from)) * (right - left)
  const y = (times: number): number => bottom - (Math.min(times, most) / most) * (bottom - top)
  const parts = [line(left, bottom, right, bottom, 1.2), line(left, top - 6, left, bottom, 1.2)]
  for (let degrees = Math.ceil(from / step) * step; degrees <= to; degrees += step)
    parts.push(
      line(x(degrees), bottom, x(degrees), bottom + 4),
      words(x(degrees), bottom + 17, `${degrees}`.replace('-', '−'), 'middle', 11),
    )
  for (let times = 0; times <= most; times += most > 12 ? 4 : 2)
    parts.push(line(left - 4, y(times), left, y(times)), words(left - 8, y(times) + 4, `${times}`, 'end', 11))
  parts.push(line(x(cold), top - 6, x(cold), bottom, 1, grey, '4 3'))
  // Where the curve comes in at the top of the sheet, and where it lies along the bag's own wait.
  const first = zero + (b - zero) / most
  const points = Array.from({ length: 61 }, (_, i) => first + ((b - first) * i) / 60).map(
    (degrees) => [x(degrees), y((b - zero) / (degrees - zero))] as const,
  )
  parts.push(
    `<path d="M${[...points, [x(to), y(1)] as const].map(([u, v]) => `${u.toFixed(1)} ${v.toFixed(1)}`).join('L')}" fill="none" stroke="${ink}" stroke-width="2"/>`,
  )
  // The curve falls to the right, so above it on that side there is room for words.
  const spot = (degrees: number, text: string): number => onSheet(x(degrees) + 5, text, 'start')
  const place = (degrees: number, times: number, text: string, up: number): string =>
    [
      line(x(degrees), y(times), x(degrees), bottom, 0.75, grey, '2 2'),
      plate(spot(degrees, text) + spread(text) / 2, y(times) - up, text),
      dot(x(degrees), y(times), 4, '#fff'),
    ].join('')
  const [bagText, hereText] = [`bag ${show(bag)}`, `here ${show(here)}`]
  const apart = Math.abs(x(b) - x(t)) > 12
  const [bagSpot, hereSpot] = [spot(b, bagText), spot(t, hereText)]
  // One over the other where side by side they would meet.
  const meet = y(1) - y(n) < 18 && bagSpot < hereSpot + spread(hereText) + 6 && hereSpot < bagSpot + spread(bagText) + 6
  // Both stand over the higher of the two points.
  if (apart) parts.push(place(b, 1, bagText, meet ? 8 + y(1) - y(n) : 8))
  parts.push(place(t, n, hereText, apart && meet ? 26 : 8))
  parts.push(
    heading(n === 1 ? 'the bag’s own wait' : `${show(factor)} times the bag’s own wait`),
    aside(`times as long as on the bag, by °${scale} round the concrete`, 42),
    aside('left of the dashed line it is cold: ask the bag’s maker', bottom + 38),
  )
  return sheet(
    {
      width,
      height: bottom + 48,
      title: 'How the wait grows in the cold',
      description: `The wait by temperature: at ${show(bag)} it is the bag’s own, at ${show(here)} it is ${show(factor)} times as long, and it grows without end towards ${show(datum)}.`,
    },
    parts,
  )
}
