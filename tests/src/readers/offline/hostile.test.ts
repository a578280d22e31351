// What nobody would type by mistake: words that every object of the language has, and thousands of figures. None may break the reader.
import { describe, expect, it } from 'vitest'
import { newJob } from '../../../../engine/index.ts'
import { hear } from '../../../../src/hearing.ts'
import { readOffline } from '../../../../src/readers/offline/offline.ts'

const inherited = Object.getOwnPropertyNames(Object.prototype)
const sentences = (name: string): string[] => [
  name,
  `5 ${name} screws`,
  `12 posts, ${name}: Bob`,
  `a gallon ${name} 300 sq ft`,
  `how ${name} is 5 ft`,
  `$5 ${name}`,
  `5 ft ${name} 3 in`,
  `${name} of 7 in`,
  `add 5 ${name} and 3 ft`,
  `1 ${name} 2026`,
]

describe('words that every object has', () => {
  it.each(inherited)('“%s” is read like any other', (name) => {
    for (const said of sentences(name)) expect(() => readOffline(hear(said, newJob)), said).not.toThrow()
  })
})

describe('thousands of figures', () => {
  it.each([
    ['bare numbers', '1 '],
    ['a table', '6 am 1 2 3\n'],
    ['dated readings', '1 May 2025 12 % '],
    ['prices', '$5.20 each '],
    ['shares and temperatures', '60 % 5 F '],
  ])('%s are read to the end', (_, part) => {
    const heard = hear(part.repeat(600), newJob)
    expect(heard.readings.length).toBeGreaterThan(500)
    expect(readOffline(heard).told.length).toBeLessThanOrEqual(heard.readings.length)
  })
})
