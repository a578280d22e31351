// This file is about a message with its quantities marked, so that what stands around them can be read as one line: “§N0 posts, line is §L1”.
import { calculationNamed, type Job, type Quantity, quantity, toNumber, yard } from '../../../../engine/index.ts'
import type { Request, Told } from '../../../request.ts'
import type { Heard, Tagged } from '../../reader.ts'
import { empty, from } from '../plain-phrases.ts'

/** The message in lower case with a sign and a number for each quantity: L a length, N a bare number, S a stick by its section, M money, Q any other. */
export interface Marked {
  readonly heard: Heard
  readonly text: string
  readonly lengths: readonly Tagged[]
  /** The reading that a mark stands for. */
  at(mark: string | undefined): Tagged | undefined
  /** What a pattern holds of marks: the numbers in its groups. */
  find(pattern: RegExp): readonly (Tagged | undefined)[] | undefined
  has(pattern: RegExp): boolean
}

const signOf = ({ quantity: size, section, bare }: Tagged): string =>
  section ? 'S' : bare !== null ? 'N' : size?.kind === 'length' ? 'L' : size?.kind === 'money' ? 'M' : 'Q'

export function marked(heard: Heard): Marked {
  let text = ''
  let end = 0
  for (const [i, reading] of heard.readings.entries()) {
    if (reading.start < end) continue
    text += `${heard.said.slice(end, reading.start).toLowerCase()} §${signOf(reading)}${i} `
    end = reading.end
  }
  text = ` ${(text + heard.said.slice(end).toLowerCase()).replace(/[’‘]/g, "'").replace(/\s+/g, ' ')} `.replace(
    / ([,.;:?!])/g,
    '$1',
  )
  const at = (mark: string | undefined): Tagged | undefined =>
    mark === undefined ? undefined : heard.readings[Number(mark)]
  return {
    heard,
    text,
    lengths: heard.readings.filter((it) => !it.section && it.quantity?.kind === 'length'),
    at,
    find: (pattern) => pattern.exec(text)?.slice(1).map(at),
    has: (pattern) => pattern.test(text),
  }
}

/** What is told of a word by a quantity of the message. */
export const tell = (word: string, reading: Tagged | undefined): Told[] =>
  reading ? [{ word, at: yard, from: from(reading.tag) }] : []

/** What is told of a word by what the talk has told or worked before. */
export const tellAgain = (word: string, tag: string): Told[] => [{ word, at: yard, from: from(tag) }]

/** A request of one calculation. */
export const asked = (calculation: string, told: readonly Told[], want?: string): Request => {
  const calc = calculationNamed(calculation)
  const word = want ?? calc?.headlines[0]
  return { ...empty, told: [...told], wants: word ? [{ word, at: yard }] : [], calculation }
}

/** What was wanted last is worked again with what is told anew. */
export const again = (told: readonly Told[]): Request => ({ ...empty, told: [...told] })

/** What a talk knows of the yard: told in it, or worked. */
export const knows = ({ decisions, results }: Job, word: string): boolean =>
  decisions.some((it) => it.word === word && it.at === yard) || results.some((it) => it.word === word && it.at === yard)

export const wasAsked = ({ results }: Job, calculation: string): boolean =>
  results.some((it) => it.calculation === calculation)

/** The last answer came from that calculation. */
export const isLast = ({ results, named }: Job, calculation: string): boolean =>
  named === calculation || results.at(-1)?.calculation === calculation

/** How many of its word's unit a reading holds, for a rough comparison. */
export const sizeIn = ({ quantity: size, bare }: Tagged, unit: string): number | undefined =>
  bare !== null
    ? bare.valueOf()
    : size === null
      ? undefined
      : toNumber(size.amount) / toNumber(quantity(1, unit).amount)

export const isLonger = ({ quantity: size }: Tagged, least: Quantity): boolean =>
  size !== null && toNumber(size.amount) > toNumber(least.amount)
