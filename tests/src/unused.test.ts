// A size that nothing took may be the very one that decides: no verdict passes over it.
import { describe, expect, it } from 'vitest'
import { results, talk } from './talk.ts'

const pool =
  'In the US, pool fence 48 in high, rails 46 in apart top to top, gap between pickets 1 3/4 in, rails on the pool side. Does it pass?'

describe('what a message said and nothing took', () => {
  it('keeps a verdict from passing', async () => {
    const [plain] = await talk([pool])
    const [puzzling] = await talk([`${pool} The thingummy is 3 in.`])
    expect(plain?.reply).toContain('othing checked here fails')
    expect(puzzling?.reply).toContain('I did not use “3 in”')
    expect(results(puzzling).poolHolds).not.toBe(results(plain).poolHolds)
    expect(puzzling?.reply).not.toContain('othing checked here fails')
  })

  it('keeps a figure back where a talk goes on with a size that found no place', async () => {
    const [first, later] = await talk([
      'How many bags for 12 posts, holes 10 in wide and 30 in deep, 0.6 cubic feet a bag?',
      'and with 7 thingummies',
    ])
    expect(results(first).bags).toBeDefined()
    expect(results(later).bags).toBeUndefined()
    expect(later?.reply).toMatch(/You said “7”|did not use “7”/)
  })

  it('lets pass what is taken back: “not ten”', async () => {
    const [, later] = await talk([
      'How many bags for 12 posts, holes 10 in wide and 30 in deep, 0.6 cubic feet a bag?',
      'the holes are 12 in wide, not ten',
    ])
    expect(later?.reply).not.toContain('“ten”')
    expect(results(later).bags).toBeDefined()
  })
})
