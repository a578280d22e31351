// This file is about mutants that were looked at and make no other program: nothing that anybody can see differs, so no test can notice them.

interface SameProgram {
  readonly file: string
  readonly was: string
  readonly is: string
  readonly why: string
}

export const sameProgram: readonly SameProgram[] = []
