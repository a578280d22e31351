// This file is about marks on a tape told without a unit. Common practice, no source: eighths and sixteenths are of an inch.
import { describe, expect, it } from 'vitest'
import { readQuantities } from '../../../engine/quantities/read.ts'
import { show } from '../../../engine/quantities/show.ts'

const read = (said: string): string[] =>
  readQuantities(said).map((it) => (it.quantity ? show(it.quantity) : String(it.bare?.toFraction())))

describe('marks on a tape', () => {
  it.each([
    ['to a 16th', '1/16 in'],
    ['round it to the nearest eighth', '1/8 in'],
    ['nearest 32nd', '1/32 in'],
    ['to the nearest sixteenth of an inch', '1/16 in'],
  ])('%s is %s', (said, mark) => expect(read(said)).toEqual([mark]))

  it('the 16th of a month is none', () => expect(read('we dig from the 3rd to the 16th')).not.toContain('1/16 in'))
})
