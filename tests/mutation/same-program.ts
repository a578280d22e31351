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
  {
    file: 'engine/calculations/site/yard-closure.ts',
    was: 'j < n',
    is: 'j <= n',
    why: 'Side n is the first side once more: it was held against every other already, and shares a corner with its neighbours, which is no turn.',
  },
  {
    file: 'engine/calculations/site/yard-closure.ts',
    was: 'i < n',
    is: 'i <= n',
    why: 'Nothing is held against side n, since what is begins two further on.',
  },
  {
    file: 'engine/calculations/wood/dressed-size.ts',
    was: '/^\\d+$/',
    is: '/\\d+$/',
    why: 'A fraction ends in figures as well, but is no number that is at most 16.',
  },
  {
    file: 'engine/drawings/drying.ts',
    was: 'day <= longest + 1e-9',
    is: 'day < longest + 1e-9',
    why: 'Days on the scale are whole steps of it, and so is its end: none lies a billionth beyond.',
  },
  {
    file: 'engine/drawings/drying.ts',
    was: 'percent <= most + 1e-9',
    is: 'percent < most + 1e-9',
    why: 'Per cents on the scale are whole steps of it, and so is its end: none lies a billionth beyond.',
  },
  {
    file: 'engine/job/sheets/gates.ts',
    was: '/[^A-Za-z]+/',
    is: '/[^A-Za-z]/',
    why: 'Two signs side by side leave an empty name between them, and no word has an empty name.',
  },
]
