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
})
