// This file is about sizes that are named after they are told: “12 in is the hole width, 24 the depth”. What stands before a comma is no name of what follows it.
import { type Word, yard } from '../../../engine/index.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import { stem, type Token } from './stems.ts'

const joint = /^(is|are|was|for|as|in|=)$/
const longestName = 4

/** The words between “is the” and the end of the phrase, as stems; nothing where no such phrase follows. */
function nameBehind(message: readonly Token[], spot: number): string[] {
  let at = spot + 1
  const isJoined = joint.test(message[at]?.stem ?? '')
  if (isJoined) at++
  if (message[at]?.stem !== 'the') return []
  const name: string[] = []
  for (at++; message[at] && !message[at]?.tag && /^\p{L}/u.test((message[at] as Token).text); at++) {
    const { stem: one } = message[at] as Token
    if (/^(and|then|but|so|how|what|with)$/.test(one)) break
    name.push(one)
  }
  return name.length <= longestName ? name : []
}

const stemsOf = (text: string): string[] => text.split(' ').map(stem)

/** Whether those words name it: whole, by its thing and a side, or by a side alone. */
function isCalled({ called }: Word, name: readonly string[]): boolean {
  const told = name.filter((it) => it !== 'the' && it !== 'of')
  const is = (text: string): boolean => {
    const own = stemsOf(text)
    return own.length === told.length && own.every((it) => told.includes(it))
  }
  if (called.names?.some(is)) return true
  const sides = called.sides ?? []
  const things = called.things ?? []
  return sides.some((side) => is(side) || things.some((thing) => is(`${thing} ${side}`)))
}

/** Every size whose name stands right behind it, where it is the name of just one word that the sum needs. */
export function namedAfter(
  message: readonly Token[],
  needs: Readonly<Record<string, Word>>,
  asked: ReadonlySet<string>,
): Bound[] {
  return message.flatMap((token, spot) => {
    const { reading } = token
    if (!reading || reading.section || (reading.bare === null && reading.quantity?.kind !== 'length')) return []
    const name = nameBehind(message, spot)
    if (name.length === 0) return []
    const called = Object.values(needs).filter((it) => it.kind === 'length' && isCalled(it, name))
    const open = called.filter((it) => asked.has(it.name))
    const [only, more] = called.length > 1 ? open : called
    return only && !more ? [{ reading, word: only.name, at: yard, score: weight.byPlace }] : []
  })
}
