// This file is about cautions: what the program says wherever the work can hurt someone, and which answers call it up.

import { type ByCountry, type Country, wordingIn } from '../by-country.ts'

/** What a caution is about. The first three stand in every answer. */
export type CautionCode =
  | 'utilities'
  | 'lot-line'
  | 'local-code'
  | 'pool'
  | 'structure'
  | 'dust'
  | 'wet-cement'
  | 'preserved-wood'
  | 'lead'
  | 'fire'
  | 'lifting'
  | 'tools'
  | 'open-hole'
  | 'overhead-lines'
  | 'automatic-gate'
  | 'weather'

export interface Caution {
  readonly code: CautionCode
  /** The whole text, the first time and whenever the work at hand calls for it. `{{where}}` stands for what holds in one country. */
  readonly full: string
  readonly where?: ByCountry
  /** One short line: beside a question that is asked back, and, of the three that are never left out, in every answer. */
  readonly standing: string
  readonly from: string
}

export const caution = (it: Caution): Caution => it

/** The whole text as it is read out in one country, where that is known. */
export const inFull = ({ full, where }: Caution, country?: Country): string =>
  where ? full.replace('{{where}}', wordingIn(where, country)) : full
