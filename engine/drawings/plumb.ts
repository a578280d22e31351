// This file is about a post that leans: the plumb line beside it, how far out at the height of the reading, and at its top. And the same over time.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import {
  across,
  aside,
  bend,
  box,
  down,
  earth,
  heading,
  letter,
  line,
  plate,
  shape,
  sheet,
  timesLarger,
  width,
  words,
} from './svg.ts'

const top = 74

export function plumbDrawing(seen: Seen): string | null {
  const [out, over, lean] = [seen.one('outOfPlumb'), seen.one('plumbOver'), seen.one('leanAngle')]
  const [offset, tall] = [seen.maybe('topOffset'), seen.maybe('postAbove')]
  const [reading, whole] = [
    numberIn(over, 'in'),
    Math.max(numberIn(over, 'in'), tall && offset ? numberIn(tall, 'in') : 0),
  ]
  const scale = 170 / whole
  const larger = timesLarger(numberIn(lean, 'deg'), 7, 18)
  const turn = (numberIn(lean, 'deg') * larger * Math.PI) / 180
  const [foot, ground, thick] = [150, top + whole * scale, 16]
  /** How far the face stands out at a height, and where that height is. */
  const at = (inches: number): readonly [number, number] => [
    foot + inches * scale * Math.tan(turn),
    ground - inches * scale,
  ]
  const [end, level] = [at(whole), at(reading)]
  const isTopShown = whole > reading * 1.08
  const parts = [
    shape(
      [
        [foot, ground],
        [end[0], end[1]],
        [end[0] + thick, end[1]],
        [foot + thick, ground],
      ],
      '#bbb',
      1.2,
    ),
    line(foot, ground, foot, top - 16, 1, '#111', '6 4'),
    words(foot - 5, top - 20, 'plumb', 'middle', 11),
    line(8, ground, width - 8, ground, 2),
    earth(10, width - 10, ground),
    down(foot - (isTopShown ? 66 : 26), level[1], ground, show(over), 'left'),
    bend(foot, ground, 70, 90, 90 - (turn * 180) / Math.PI),
  ]
  if (isTopShown && offset && tall)
    parts.push(
      across(foot, level[0], level[1], show(out), foot - 30),
      across(foot, end[0], end[1] - 8, `top ${show(offset)}`),
      down(end[0] + thick + 18, end[1], ground, show(tall), 'right', 'above ground'),
    )
  else parts.push(across(foot, level[0], level[1] - 8, show(out)))
  parts.push(
    heading(offset ? `leans ${show(lean)}: the top is ${show(offset)} out` : `the post leans ${show(lean)}`),
    aside(larger > 1 ? `the lean is drawn ${larger} times as large as it is` : 'to scale', ground + 26),
  )
  return sheet(
    {
      width,
      height: ground + 36,
      title: 'A leaning post and its plumb line',
      description: `A post ${show(out)} out of plumb over ${show(over)} leans ${show(lean)}${offset && tall ? `; its top, ${show(tall)} above ground, stands ${show(offset)} out` : ''}.`,
    },
    parts,
  )
}

const mostReadings = 6

export function plumbTrendDrawing(seen: Seen): string | null {
  const [outs, days] = [seen.rows('plumbReadings'), seen.rows('plumbDates')]
  const shown = outs.slice(-mostReadings)
  const dates = days.slice(-mostReadings)
  const most = Math.max(...shown.map((it) => numberIn(it, 'in')))
  if (most <= 0) return null
  const [left, right, base, high] = [58, 300, 188, 110]
  const first = Number(dates[0]?.amount.valueOf())
  const span = Number(dates.at(-1)?.amount.valueOf()) - first
  const spots = shown.map((out, i) => ({
    x: left + 12 + ((Number(dates[i]?.amount.valueOf()) - first) / span) * (right - left - 24),
    y: base - (numberIn(out, 'in') / most) * high,
    text: show(out),
  }))
  const parts = [
    line(left, base, right, base, 1.5),
    line(left, base, left, base - high - 12, 1),
    ...spots.slice(1).map((it, i) => line(spots[i]?.x ?? 0, spots[i]?.y ?? 0, it.x, it.y, 1.5)),
    ...spots.map((it) => box(it.x - 3, it.y - 3, 6, 6, '#111')),
  ]
  // Words stand beside the first and the last; those between would run into each other.
  const [start, end] = [spots[0], spots.at(-1)]
  if (!start || !end) return null
  parts.push(
    plate(start.x, start.y - 10, start.text, letter, 'start'),
    words(end.x + 8, end.y + 4, end.text, 'start'),
    words(left, base + 18, show(dates[0] ?? outs[0]!), 'start', 10),
    words(right + 40, base + 34, show(dates.at(-1) ?? outs[0]!), 'end', 10),
    aside('out of plumb, against the days', base + 56),
    heading(`${show(seen.one('leanGrowth'))} in a year, at this pace`),
  )
  return sheet(
    {
      width,
      height: base + 66,
      title: 'Plumb readings over time',
      description: `Out of plumb ${shown.map((it, i) => `${show(it)} on ${show(dates[i] ?? it)}`).join(', ')}: ${show(seen.one('leanGrowth'))} further in a year at this pace.`,
    },
    parts,
  )
}
