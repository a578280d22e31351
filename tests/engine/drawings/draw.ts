// This file is about reading a drawing in a test: its words, its lines and its corners, as numbers.
import { runNamed } from '../run-named.ts'

type Options = Parameters<typeof runNamed>[2]
type Given = Readonly<Record<string, string | readonly string[]>>

/** The drawing of a calculation; throws with what was said when there is none. */
export function draw(name: string, given: Given, options: Options = {}): string {
  const { outcome, said } = runNamed(name, given, options)
  if (!outcome.ok || outcome.drawing === null) throw new Error(said)
  return outcome.drawing
}

/** A shape a line, so that a difference says which one moved. */
export const byShapes = (svg: string): string => `${svg.replaceAll('><', '>\n<')}\n`

/** The text alternative. */
export const said = (svg: string): string => /<desc>(.*?)<\/desc>/.exec(svg)?.[1] ?? ''

/** Every line of words on the sheet. */
export const written = (svg: string): string[] =>
  [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((it) => it[1] ?? '')

/** The drawing without its words and the white under them: two drawings of the same lengths in different units are alike in it. */
export const unworded = (svg: string): string =>
  svg.replace(/<(title|desc|text)[^>]*>[^<]*<\/\1>|<rect[^>]* fill="#fff"\/>/g, '')

/** The corners of every closed outline, in the order they were drawn. */
export const outlines = (svg: string): (readonly [number, number])[][] =>
  [...svg.matchAll(/<path d="M([-\d. L]+)Z"/g)].map((it) =>
    (it[1] ?? '').split('L').map((point) => point.split(' ').map(Number) as [number, number]),
  )

/** Two ends, or a corner and its extents: four numbers. */
export type Line = readonly [number, number, number, number]

/** Every plain line, as x1, y1, x2, y2. */
export const linesIn = (svg: string): Line[] =>
  [...svg.matchAll(/<line x1="(.*?)" y1="(.*?)" x2="(.*?)" y2="(.*?)"/g)].map(
    ([, x1, y1, x2, y2]) => [Number(x1), Number(y1), Number(x2), Number(y2)] as const,
  )

/** The dimension lines: those with a tick at both ends. */
export function dimensions(svg: string): Line[] {
  const lines = linesIn(svg)
  const hasTick = (x: number, y: number): boolean =>
    lines.some(([x1, y1, x2, y2]) => Math.abs(x1 - x + 3) < 0.02 && Math.abs(y1 - y - 3) < 0.02 && x2 > x1 && y2 < y1)
  return lines.filter(([x1, y1, x2, y2]) => (x1 !== x2 || y1 !== y2) && hasTick(x1, y1) && hasTick(x2, y2))
}

/** Every box that has an edge, as x, y, width, height. */
export const boxes = (svg: string): Line[] =>
  [...svg.matchAll(/<rect x="([^"]*)" y="([^"]*)" width="([^"]*)" height="([^"]*)" fill="[^"]*" stroke=/g)].map(
    ([, x, y, wide, high]) => [Number(x), Number(y), Number(wide), Number(high)] as const,
  )

/** Every start tag has its end, in order; nothing stands outside the one root. */
export function wellFormed(svg: string): boolean {
  const open: string[] = []
  const tags = /<(\/?)([a-zA-Z]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/g
  let rest = ''
  let last = 0
  for (const tag of svg.matchAll(tags)) {
    rest += svg.slice(last, tag.index)
    last = tag.index + tag[0].length
    if (tag[1]) {
      if (open.pop() !== tag[2]) return false
    } else if (!tag[4]) open.push(tag[2] as string)
    if (open.length === 0 && last < svg.length) return false
  }
  return open.length === 0 && last === svg.length && !/[<>]/.test(rest) && !/&(?!amp;|lt;|gt;|quot;)/.test(rest)
}
