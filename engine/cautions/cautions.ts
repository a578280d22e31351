// This file is about which cautions there are, in the order they are read out.
import { automaticGate } from './automatic-gate.ts'
import type { Caution, CautionCode } from './caution.ts'
import { dust } from './dust.ts'
import { fire } from './fire.ts'
import { lead } from './lead.ts'
import { lifting } from './lifting.ts'
import { localCode } from './local-code.ts'
import { lotLine } from './lot-line.ts'
import { openHole } from './open-hole.ts'
import { overheadLines } from './overhead-lines.ts'
import { pool } from './pool.ts'
import { preservedWood } from './preserved-wood.ts'
import { structure } from './structure.ts'
import { tools } from './tools.ts'
import { utilities } from './utilities.ts'
import { weather } from './weather.ts'
import { wetCement } from './wet-cement.ts'

const all: readonly Caution[] = [
  utilities,
  lotLine,
  localCode,
  pool,
  structure,
  dust,
  wetCement,
  preservedWood,
  lead,
  fire,
  lifting,
  tools,
  openHole,
  overheadLines,
  automaticGate,
  weather,
]

/** The three that stand in every answer, whatever is said. */
export const standingCautions: readonly CautionCode[] = ['utilities', 'lot-line', 'local-code']

/** The texts of a caution. Throws for a code that has none, which is a mistake of ours. */
export function cautionFor(code: CautionCode): Caution {
  const found = all.find((it) => it.code === code)
  if (!found) throw new Error(`no text for the caution “${code}”`)
  return found
}

/** Each code once, in the order in which they are read out. */
export const inOrder = (codes: readonly CautionCode[]): CautionCode[] =>
  all.map((it) => it.code).filter((code) => codes.includes(code))
