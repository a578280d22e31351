// This file is about what comes out of a calculation: values with their working, or the reasons why not.
import type { Quantity, Value } from './quantities/quantity.ts'
import type { Usual } from './words/word.ts'

export interface Step {
  /** The word or local name it gives, what that is called on the page, and its value. */
  readonly gives: string
  readonly value: Value
  readonly name: string
  /** The line as it is written in the calculation, which is what was evaluated. */
  readonly formula: string
  /** The same line with the numbers in. */
  readonly substituted: string
  readonly result: string
  readonly because: string
}

/** What is missing, unreadable, impossible, implausible or contradictory: of which word, and what to do about it. */
export interface Problem {
  readonly code: 'missing' | 'unreadable' | 'impossible' | 'implausible' | 'contradictory'
  readonly word: string
  /** The place that it is about, where that is another than the one being worked. */
  readonly at?: string
  readonly message: string
  readonly ask?: string
  /** Something said found no place: the sum waits until somebody says what it is. */
  readonly isIdle?: true
}

export interface Source {
  readonly fact: string
  readonly from: string
}

/** Values in rows, such as the marks of a bay. A column says its unit; an empty unit is plain text. */
export interface Table {
  readonly title: string
  readonly columns: readonly { readonly label: string; readonly unit: string }[]
  readonly rows: readonly (readonly (number | string)[])[]
}

/** Who a given value comes from. */
export type Role = 'said' | 'known' | 'assumed' | 'result' | 'published'

/** A value as it went into a calculation, and who it comes from. */
export interface Given {
  readonly value: Value
  readonly role: Role
  /** The role at each place, where one was told and another taken as usual. */
  readonly roles?: readonly Role[]
  /** Why it was taken as usual, where another calculation of the same fence took it first. */
  readonly usual?: Usual
}

/** A quantity shown in a remark: kept, so that no figure in an answer is without its record. */
export interface Cited {
  readonly label: string
  readonly value: Quantity
  readonly role: 'result' | 'published'
}

/** What came out: values with their working, or the problems that stand in the way. */
export type Outcome =
  | {
      readonly ok: true
      readonly given: ReadonlyMap<string, Given>
      readonly values: ReadonlyMap<string, Value>
      readonly steps: readonly Step[]
      readonly doubts: readonly Problem[]
      readonly sources: readonly Source[]
      readonly tables: readonly Table[]
      /** What decided a verdict, and what else should be said, in the order it should be read. */
      readonly remarks: readonly string[]
      readonly cited: readonly Cited[]
      readonly drawing: string | null
    }
  | {
      readonly ok: false
      readonly given: ReadonlyMap<string, Given>
      readonly problems: readonly Problem[]
      readonly cited: readonly Cited[]
    }
