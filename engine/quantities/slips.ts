// This file is about slips in typing: a word that is one letter off another.

export const shortestForgiven = 5

/** What a word with one letter wrong, too few, too many or changed about stands for; undefined where it is a word of its own. */
export function meantBySlip(word: string, known: readonly (readonly [string, string])[]): string | undefined {
  if (word.length < shortestForgiven || meansItself.has(word)) return undefined
  return known.find(([right]) => oneSlip(word, right))?.[1]
}
const meansItself = new Set([
  'found',
  'round',
  'sound',
  'bound',
  'mound',
  'founds',
  'rounds',
  'sounds',
  'bounds',
  'mounds',
  'hound',
  'wound',
  'matter',
  'enter',
  'after',
  'pitches',
  'finches',
  'winches',
  'cinches',
  'pinches',
  'later',
  'letter',
  'footed',
  'weeds',
  'weeks',
  'yarn',
  'hours',
  'ours',
  'tours',
  'fours',
  'tonnes',
  'minutes',
  'wards',
  'cards',
  'hards',
  'guards',
  'boards',
  'lards',
  'meets',
  'filters',
  'mouth',
  'mouths',
  'north',
  'fence',
  'bench',
  'clinch',
  'bucket',
  'ducks',
  'bunches',
  'trenches',
  'liner',
  'liners',
  'litter',
  'jitters',
])

/** Whether two words differ by one slip: a letter changed, dropped, added, or two swapped. */
export function oneSlip(a: string, b: string): boolean {
  if (a === b) return true
  let i = 0
  while (i < a.length && i < b.length && a[i] === b[i]) i++
  const [x, y] = [a.slice(i), b.slice(i)]
  if (a.length === b.length)
    return x.slice(1) === y.slice(1) || (x[0] === y[1] && x[1] === y[0] && x.slice(2) === y.slice(2))
  return a.length > b.length ? x.slice(1) === y : x === y.slice(1)
}
