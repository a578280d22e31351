// This file is about cautions: what the program says wherever the work can hurt someone, and which answers call it up.

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
  /** The whole text, the first time and whenever the work at hand calls for it. */
  readonly full: string
  /** One short line that stands in every answer; only the three that are never left out have one. */
  readonly standing?: string
  readonly from: string
}

export const caution = (it: Caution): Caution => it
