// Sizes whose neighbours say outright what they are, and what is read of cans, skips and tapes. Each figure is worked beside it.
import { describe, expect, it } from 'vitest'
import { readQuantities, toNumber } from '../../../../engine/index.ts'
import { headlines, talk } from '../../talk.ts'

const inputs = async (...messages: string[]): Promise<Record<string, string>> =>
  Object.fromEntries(
    ((await talk(messages)).at(-1)?.calls ?? []).flatMap((it) => it.inputs).map((it) => [it.word, it.text]),
  )

describe('what stands right beside a size', () => {
  it('says which coat a coverage is of', async () => {
    expect(
      await inputs(
        '840 square feet, two coats. First coat 250 square feet for gallon, second coat 350. How many gallon cans?',
      ),
    ).toMatchObject({ coverageFirst: '250 ft²/gal', coverageNext: '350 ft²/gal' })
  })

  it('says that a share is the humidity', async () => {
    expect(await inputs('wood at 24 % now, RH around 65 and 68F. what will it dry down to')).toMatchObject({
      humidity: '65 %',
    })
  })

  it('says that a moisture is read anew, and no new limit', async () => {
    const first = 'pin meter says 18 percent deep in the pickets. can i stain, my can says 15 or under'
    expect(await inputs(first, 'now its 14')).toMatchObject({ depthReading: '14 %', moistureLimit: '15 %' })
    expect(headlines((await talk([first, 'now its 14'])).at(-1))).toMatchObject({ dryEnough: 'dry enough' })
  })
})

describe('what is read of cans, skips and tapes', () => {
  const first = (said: string) => {
    const [it] = readQuantities(said)
    return it?.quantity ? [toNumber(it.quantity.amount), it.quantity.unit] : it?.bare?.valueOf()
  }
  // A foot is 12 in, a yard 36 in; a US gallon 231 in³: the base units are inches.
  it.each([
    ['350 a gallon', [(350 * 144) / 231, 'ft2/gal']],
    ['250 square feet for gallon', [(250 * 144) / 231, 'ft2/gal']],
    ['a 10 yard dumpster', [10 * 36 ** 3, 'yd3']],
    ['10 yards of fence', [360, 'yd']],
    ['paint is 32 a gallon', 32],
    ['30 bucks a gallon', [30, 'USD']],
    ['retaped it 40 1', [481, 'ft']],
  ] as const)('%s', (said, expected) => {
    expect(first(said)).toEqual(expected)
  })
})
