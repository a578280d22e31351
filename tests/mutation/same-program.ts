// This file is about mutants that were looked at and make no other program: nothing that anybody can see differs, so no test can notice them.

interface SameProgram {
  readonly file: string
  readonly was: string
  readonly is: string
  readonly why: string
}

export const sameProgram: readonly SameProgram[] = [
  {
    file: 'engine/quantities/called-by-number.ts',
    was: 'before !== undefined',
    is: 'true',
    why: 'What is glued to something has something before it.',
  },
  {
    file: 'engine/cutting/proof.ts',
    was: 'known !== undefined',
    is: 'true',
    why: 'Nothing is never as much as a number: the other half of the condition is false by itself.',
  },
]
