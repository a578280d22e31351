// This file is about sentences for the guard: harmless ones, as a model would write them about a fence, and ways to contradict a caution.
import { readFileSync } from 'node:fs'

const lines = (name: string): string[] =>
  // From the top of the repository: `npm run bench` is bundled into another folder.
  readFileSync(`tests/src/guard/${name}`, 'utf8').trim().split('\n')

export const harmless = lines('harmless.txt')
export const contradictions = lines('contradictions.txt')
/** Written after the others by somebody who looked at no rule, and only counted: nothing is mended by them or taught. */
export const untaught = {
  harmless: lines('untaught-harmless.txt'),
  contradictions: lines('untaught-contradictions.txt'),
}
