// The fence as it was told, read back: in the order in which one walks round it, with walls where they are.
import { describe, expect, it } from 'vitest'
import { fenceInWords } from '../../../engine/job/in-words.ts'
import { keep, newJob } from '../../../engine/job/job.ts'
import { larger } from '../../../engine/job/next.ts'
import { readOne } from '../../../engine/quantities/read.ts'
import type { Quantity } from '../../../engine/quantities/quantity.ts'
import { show } from '../../../engine/quantities/show.ts'
import { jobOf, type Told } from './fences.ts'

const sides = (...names: string[]): Told =>
  Object.fromEntries(names.map((it, i) => [`runLength@${it}`, `${20 + i} ft`]))

describe('the fence in words', () => {
  it('is nothing while no run is told by itself', () => {
    expect(fenceInWords(newJob)).toBeUndefined()
    expect(fenceInWords(jobOf({ runLength: '40 ft' }))).toBeUndefined()
  })

  it.each<[Told, string]>([
    [sides('front'), 'So far: front run 20 ft.'],
    [sides('front', 'left'), 'So far: front run 20 ft; left run 21 ft. They meet at one corner, in that order.'],
    [
      { ...sides('front'), 'gateOpening@front': '4 ft', 'gateStart@front': '6 ft' },
      'So far: front run 20 ft, with a gate of 4 ft at 6 ft.',
    ],
    [{ ...sides('front'), 'gates@front': '2' }, 'So far: front run 20 ft, with a gate and a gate.'],
    [{ ...sides('front'), 'fall@front': '12 in' }, 'So far: front run 20 ft, falling 12 in.'],
    [{ ...sides('front'), 'runEnds@front': 'walls' }, 'So far: front run 20 ft, from a wall, to a wall.'],
    // The side told second meets the first at its near end: its wall is at the far one, whichever way it was told.
    [
      { ...sides('front', 'left'), 'nearEnd@left': 'wall' },
      'So far: front run 20 ft; left run 21 ft, to a wall. They meet at one corner, in that order.',
    ],
    [
      { ...sides('front', 'left'), 'farEnd@front': 'wall' },
      'So far: front run 20 ft, from a wall; left run 21 ft. They meet at one corner, in that order.',
    ],
    // The open side is the missing one: the house stands at the back.
    [
      { ...sides('left', 'right', 'front') },
      'So far: left run 20 ft; front run 22 ft; right run 21 ft. They meet at 2 corners, in that order.',
    ],
  ])('%j', (told, said) => {
    expect(fenceInWords(jobOf(told))).toBe(said)
  })
})

describe('a plan that is kept', () => {
  it('takes the place of one of its name, and of too many the oldest goes', () => {
    const names = (...all: string[]): string[] => all.reduce(keep, newJob).kept.map((it) => it.name)
    expect(names('a', 'b', 'a')).toEqual(['b', 'a'])
    expect(names('a', 'b', 'c', 'd')).toEqual(['b', 'c', 'd'])
  })
})

describe('a size tried a little larger', () => {
  it.each([
    ['4 posts', '5 posts'],
    ['10 %', '15 %'],
    ['3/4 in', '7/8 in'],
    ['1 15/16 in', '2 1/16 in'],
    ['2 in', '3 in'],
    ['35 in', '36 in'],
    ['36 in', '42 in'],
    ['20 ft', '21 ft'],
    ['19 mm', '22 mm'],
    ['90 mm', '115 mm'],
    ['1,200 mm', '1,350 mm'],
    ['10 m', '10.3 m'],
    ['60 lb', '66 lb'],
    ['$20', '$22.00'],
  ])('%s becomes %s', (from, to) => {
    const reading = readOne(from)
    const q: Quantity = reading?.quantity ?? {
      kind: 'count',
      amount: reading?.bare as Quantity['amount'],
      unit: 'post',
    }
    expect(show(larger(q))).toBe(to)
  })
})
