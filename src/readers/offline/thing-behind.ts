// This file is about a width that is told right before its thing: “3 1/2 in pickets”, “90 mm posts”, “a 100 square post”, “posts 90 mm square”.
import { tableOf, toNumber, type Word, yard } from '../../../engine/index.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import type { Token } from './stems.ts'

const widthOf = tableOf<string>({
  picket: 'picketWidth',
  paling: 'picketWidth',
  pale: 'picketWidth',
  slat: 'picketWidth',
  post: 'postWidth',
})
// Wider than that, in inches, a post or a picket is measured by its length: “42 in pickets”. A bare number of so much is in mm.
const widest = 8
const inMillimetres = [40, 200] as const

function isWidth({ reading }: Token): boolean {
  if (!reading || reading.section || reading.change || reading.firmness === 'range') return false
  if (reading.quantity) return reading.quantity.kind === 'length' && toNumber(reading.quantity.amount) <= widest
  const size = reading.bare?.valueOf() ?? 0
  return size >= inMillimetres[0] && size <= inMillimetres[1]
}

const square = /^(square|sq)$/

/** The words of a calculation that such sizes are. “3 in picket gap” and “4 in post hole” name something else. */
export function thingBehind(message: readonly Token[], needs: Readonly<Record<string, Word>>): Bound[] {
  return message.flatMap((token, at) => {
    const name = isWidth(token)
      ? (token.reading?.quantity && isPlural(message, at + 1)) || ofSquare(message, at)
      : undefined
    return token.reading && name && needs[name]
      ? [{ reading: token.reading, word: name, at: yard, score: weight.byPlace }]
      : []
  })
}

const isPlural = (message: readonly Token[], at: number): string | undefined =>
  /s$/i.test(message[at]?.text ?? '') ? widthOf[message[at]?.stem ?? ''] : undefined

/** “100 square post”, “posts 90 mm square”, “the post is 5 1/2 in square”, “a 6x6 post (5 1/2 in square)”. */
function ofSquare(message: readonly Token[], at: number): string | undefined {
  if (!square.test(message[at + 1]?.stem ?? '')) return undefined
  if (message[at + 2]?.stem === 'post') return 'postWidth'
  const before = message
    .slice(Math.max(0, at - 3), at)
    .filter((it) => !/^(be|is|are|the|of|at|,|\(|\)|actual|actually|real|really|true)$/.test(it.stem))
  return before.at(-1)?.stem === 'post' ? 'postWidth' : undefined
}
