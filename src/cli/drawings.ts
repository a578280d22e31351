// This file is about which drawings of an answer are shown in the terminal, and what is said of those that are not.
import { placeLabel } from '../../engine/index.ts'
import type { Call } from '../answer.ts'
import type { Pen } from './blocks.ts'
import { inCharacters } from './drawn/in-characters.ts'
import { wrap } from './lines.ts'

/** More would bury what was asked. */
const mostDrawn = 2

export type Drawn = Pick<Call, 'title' | 'drawing' | 'results'>

/** Those of what answers come first. One that characters cannot draw is named, with where it can be seen. */
export function drawings(calls: readonly Drawn[], columns: number, pen: Pen): string[] {
  const drawn = calls
    .filter((it) => it.drawing)
    .sort((a, b) => Number(answers(b)) - Number(answers(a)))
    .map((it, i) => ({
      name: nameOf(it),
      picture: i < mostDrawn ? inCharacters(it.drawing ?? '', columns - indent.length) : undefined,
    }))
  const lines = drawn.flatMap(({ name, picture }) =>
    picture
      ? [
          ...(drawn.length > 1 ? [...wrap(`${name}:`, pen.columns), ''] : []),
          ...picture.map((it) => `${indent}${it}`.trimEnd()),
          '',
        ]
      : [],
  )
  const others = drawn.filter((it) => !it.picture).map((it) => it.name)
  if (others.length === 0) return lines
  const names = others.length > 3 ? `${others.length} more` : others.map((it) => `“${it}”`).join(', ')
  const where =
    others.length > 1
      ? 'The page shows them, and --pack FILE.pdf prints them'
      : 'The page shows it, and --pack FILE.pdf prints it'
  return [...lines, ...wrap(`Not drawn here: ${names}. ${where}.`, pen.columns), '']
}

const indent = '  '
const answers = (call: Drawn): boolean => call.results.some((it) => it.headline)

function nameOf(call: Drawn): string {
  const place = placeLabel(call.results[0]?.at ?? '')
  return place === '' ? call.title : `${call.title}, ${place}`
}
