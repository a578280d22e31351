// What is read right at the edge of each rule, and two things that hold of everything that is read:
// letters more make another word of every word, and a message may stop or begin anywhere.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'
import { inShort } from './in-short.ts'

const linesOf = (file: string): string[] =>
  readFileSync(join(import.meta.dirname, file), 'utf8')
    .split('\n')
    .filter((line) => line.trim() !== '' && !/^(# | {4})/.test(line))

const edges = linesOf('at-the-edge.txt').map((line) => {
  const [message = '', expected = ''] = line.split(' → ')
  return { message: message.replace(/^\[(metric|comma)\] /, ''), by: /^\[(\w+)\]/.exec(message)?.[1], expected }
})

describe('at the edge of a rule', () => {
  it.each(edges)('$message is $expected', ({ message, by, expected }) => {
    const habits = by === 'metric' ? { system: 'metric' as const } : { decimalComma: by === 'comma' }
    expect(readQuantities(message, habits).map(inShort).join(' | ') || 'nothing').toBe(expected)
  })
})

/** All that is read, but for how it was spelt. */
const readOf = (message: string): string =>
  JSON.stringify(
    readQuantities(message).map(({ said, ...rest }) => rest),
    (_, value) => (typeof value === 'bigint' ? String(value) : value),
  )

/** Each word of the messages in so many of its places: the message before it, the word, and the message behind it. */
function wordsIn(messages: readonly string[], most: number): [string, string, string][] {
  const places = new Map<string, number>()
  return messages.flatMap((message) =>
    [...message.matchAll(/\p{L}+/gu)].flatMap(({ 0: word, index }): [string, string, string][] => {
      const known = places.get(word.toLowerCase()) ?? 0
      places.set(word.toLowerCase(), known + 1)
      return known < most ? [[message.slice(0, index), word, message.slice(index + word.length)]] : []
    }),
  )
}

describe('a word with other letters before or behind it', () => {
  it.each([
    [
      'at the edge',
      wordsIn(
        edges.map(({ message }) => message),
        12,
      ),
    ],
    [
      'in what people type',
      wordsIn(
        linesOf('as-read.txt').filter((it) => it.length < 80),
        1,
      ),
    ],
  ])('is as good as any that means nothing, %s', (_, places) => {
    // “Price” is asked for by “pricesqvz” as well: what asks for prices is looked for in the whole message, by how it begins.
    const told = places
      .filter(([, word]) => !/^(cheap|quot|bid|pric|cost)/i.test(word))
      .flatMap(([before, word, behind]) => {
        const nothing = readOf(`${before}${'qzv'.repeat(word.length + 1).slice(0, word.length + 3)}${behind}`)
        return [`${before}${word}qvz${behind}`, `${before}qvz${word}${behind}`].filter((it) => readOf(it) !== nothing)
      })
    expect(told).toEqual([])
    expect(places.length).toBeGreaterThan(800)
  })
})

describe('a message', () => {
  it('may stop or begin at any sign of it: what is read stands where it was typed, one after the other', () => {
    const cut = edges.flatMap(({ message }) =>
      [...message.matchAll(/\p{L}+|\d+|\S/gu)].flatMap(({ index }) => [message.slice(0, index), message.slice(index)]),
    )
    const misplaced = cut.filter((part) => {
      const read = readQuantities(part)
      return read.some(
        ({ start, end, said }, i) =>
          start < (read[i - 1]?.end ?? 0) || part.slice(start, end) !== said || start === end || end > part.length,
      )
    })
    expect(misplaced).toEqual([])
    expect(cut.length).toBeGreaterThan(3000)
  })
})
