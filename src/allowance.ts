// This file is about what one turn may ask of a model: four calls at most, two of them repairs, whoever makes them; and what they came to.

export interface Allowance {
  /** Takes one call from what is left. False where none is: then it is not made. */
  spend(why: 'work' | 'repair'): boolean
  /** Tokens that a call came to. */
  count(tokens: number): void
  tokens(): number
}

const mostCalls = 4
const mostRepairs = 2

export function newAllowance(): Allowance {
  let calls = 0
  let repairs = 0
  let counted = 0
  return {
    spend(why) {
      if (calls >= mostCalls || (why === 'repair' && repairs >= mostRepairs)) return false
      calls++
      if (why === 'repair') repairs++
      return true
    },
    count(tokens) {
      counted += tokens
    },
    tokens: () => counted,
  }
}
