// This file is about the cautions of an answer: which ones, in full or as a standing line. Nothing a person or a model says changes it.
import { type CautionCode, cautionFor, type Country, inFull, standingCautions } from '../../engine/index.ts'
import type { Answer } from '../answer.ts'

interface CalledUp {
  /** In full: of what was worked, of the advice, of a refusal, and of what the message itself names. */
  readonly full: readonly CautionCode[]
  /** As one line: of what cannot be worked yet. They come in full with the answer. */
  readonly lines?: readonly CautionCode[]
  readonly alreadyTold: readonly string[]
  /** Where the fence is, once somebody has said it. */
  readonly country?: Country | undefined
  /** In an emergency, and for a sum of any trade: the three that always stand are lines, and only what the message itself names is in full. */
  readonly brief?: boolean
  /** What the message itself names. */
  readonly named?: readonly CautionCode[]
}

/** The cautions of one answer. The three that always stand are in full the first time, and whenever what was worked calls for them. */
export function cautionsFor({
  full,
  lines = [],
  alreadyTold,
  country,
  brief = false,
  named = [],
}: CalledUp): Answer['cautions'] {
  if (brief)
    return [
      ...standingCautions.map(asLine),
      ...named.filter((code) => !standingCautions.includes(code)).map((code) => whole(code, country)),
    ]
  const standing = standingCautions.map((code) =>
    full.includes(code) || !alreadyTold.includes(code) ? whole(code, country) : asLine(code),
  )
  const others = [...new Set([...full, ...lines])]
    .filter((code) => !standingCautions.includes(code))
    .map((code) => (full.includes(code) ? whole(code, country) : asLine(code)))
  return [...standing, ...others]
}

type Caution = Answer['cautions'][number]
const whole = (code: CautionCode, country?: Country): Caution => ({
  code,
  text: inFull(cautionFor(code), country),
  standing: false,
})
const asLine = (code: CautionCode): Caution => ({ code, text: cautionFor(code).standing, standing: true })
