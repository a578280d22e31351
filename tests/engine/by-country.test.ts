// Numbers to ring: each is shown in its own country, and in no other.
// Emergency numbers: common practice of each country, no source. 811 is the US dig number (digline.com) and a health line in Canada (novascotia.ca).
import { describe, expect, it } from 'vitest'
import type { Country } from '../../engine/by-country.ts'
import { inFull } from '../../engine/cautions/caution.ts'
import { cautionFor } from '../../engine/cautions/cautions.ts'
import { notes } from '../../engine/notes/notes.ts'
import { showNote } from '../../engine/notes/note.ts'
import { country } from '../../engine/words/country.ts'
import { cautionCodes } from '../../src/answer.ts'

const numbers: Readonly<Record<string, readonly Country[]>> = {
  '811': ['us'],
  '911': ['us', 'canada'],
  '999': ['uk', 'ireland'],
  '112': ['europe', 'ireland'],
  '000': ['australia'],
  '111': ['new-zealand'],
  '0800 111 999': ['uk'],
  '0800 002 001': ['uk'],
}
/** Asked for by the country's name, these speak of its numbers and of no other. */
const ofOneCountry = /^asking-in-/

const numbersIn = (text: string): string[] => {
  const long = Object.keys(numbers).filter((it) => it.includes(' ') && text.includes(it))
  const rest = long.reduce((left, it) => left.replaceAll(it, ''), text)
  return [...long, ...Object.keys(numbers).filter((it) => !it.includes(' ') && new RegExp(`\\b${it}\\b`).test(rest))]
}

describe.each(Object.keys(country.options ?? {}).map((it) => [it as Country]))('where the fence is in %s', (here) => {
  const texts = [
    ...notes
      .filter((it) => !ofOneCountry.test(it.name))
      .map((note) => [note.name, showNote(note, 'metric', here).text] as const),
    ...cautionCodes.map((code) => [code, inFull(cautionFor(code), here)] as const),
  ]
  it('no note and no caution names the number of another country', () => {
    const wrong = texts.flatMap(([name, text]) =>
      numbersIn(text)
        .filter((it) => !numbers[it]?.includes(here))
        .map((it) => `${name}: ${it}`),
    )
    expect(wrong).toEqual([])
  })

  it('says whom to ring in an emergency', () => {
    const [gas] = notes.filter((it) => it.name === 'hit-gas').map((note) => showNote(note, 'metric', here).text)
    expect(gas).toMatch(here === 'elsewhere' ? /ring your country’s emergency number/ : /ring \d{3}/)
  })
})

it('where nobody has said the country, each number stands beside its own', () => {
  const text = inFull(cautionFor('utilities'))
  expect(text).toMatch(/US 811/)
  expect(text).toMatch(/UK lsbud/)
})
