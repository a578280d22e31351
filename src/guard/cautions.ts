// This file is about the cautions of an answer: which ones, in full or as a standing line. Nothing a person or a model says changes it.
import { type CautionCode, cautionFor, standingCautions } from '../../engine/index.ts'
import type { Answer } from '../answer.ts'

/** The cautions of one answer. The three that always stand are in full the first time, and whenever what was worked calls for them. */
export function cautionsFor(calledUp: readonly CautionCode[], alreadyTold: readonly string[]): Answer['cautions'] {
  const standing = standingCautions.map((code) => {
    const { full, standing: line } = cautionFor(code)
    const whole = calledUp.includes(code) || !alreadyTold.includes(code)
    return { code, text: whole ? full : (line ?? full), standing: !whole }
  })
  const others = [...new Set(calledUp)]
    .filter((code) => !standingCautions.includes(code))
    .map((code) => ({ code, text: cautionFor(code).full, standing: false }))
  return [...standing, ...others]
}
