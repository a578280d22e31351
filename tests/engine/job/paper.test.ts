// Letter paper where a country uses it, A4 elsewhere (ISO 216; ANSI Y14.1 for letter).
import { expect, it } from 'vitest'
import { paperFor } from '../../../engine/job/field-pack.ts'
import { jobOf } from './fences.ts'

it.each([
  ['us', 'imperial', 'letter'],
  ['canada', 'metric', 'letter'],
  ['uk', 'imperial', 'a4'],
  ['australia', 'metric', 'a4'],
] as const)('in %s, by a %s tape, it is %s', (country, system, paper) =>
  expect(paperFor(jobOf({ country }, system))).toBe(paper),
)

it.each([
  ['imperial', 'letter'],
  ['metric', 'a4'],
] as const)('of no country, by a %s tape, it is %s', (system, paper) =>
  expect(paperFor(jobOf({ runLength: '10 ft' }, system))).toBe(paper),
)
