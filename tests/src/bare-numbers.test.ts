import { describe, expect, it } from 'vitest'
import { runCalculation } from '../../src/direct.ts'
import { results, talk } from './talk.ts'

describe('a number without a unit', () => {
  it('is in the unit of the volume before it: “3 quarts each, up to 4”', async () => {
    const [answer] = await talk([
      '22 bags to mix, it says 3 quarts of water each to start, up to 4. how much water do I need to haul out there',
    ])
    // 22 × 3 = 66 qt = 16.5 gal; 22 × 4 = 88 qt = 22 gal
    expect(results(answer)).toMatchObject({ waterAll: '16.5 gal', waterAllMost: '22 gal' })
  })

  it('is inches where it is as small as “1 1/2”, whatever the word is told in', async () => {
    const [, answer] = await talk(['How many bays in a run of 60 ft?', '1 1/2'])
    expect(answer?.calls.flatMap((it) => it.inputs.map((input) => input.text))).not.toContain('1 ft 6 in')
  })

  it('of a form is in the unit of its field, however small: 2 1/2', async () => {
    const call = await runCalculation('bays-in-run', { runLength: '12', widestBay: '2 1/2' })
    // 12 / 2.5 = 4.8, so five bays
    expect(call?.results.find((it) => it.word === 'bays')?.text).toBe('5 bays')
  })

  it('is feet where it is as large as “7 1/2”', async () => {
    // 60 / 7.5 = 8
    expect(results((await talk(['how many bays in 60 ft at 7 1/2']))[0])).toMatchObject({ bays: '8 bays' })
  })

  it('is metres where timber comes “in 4.8s”', async () => {
    const [, answer] = await talk([
      '9 bays, 2.3 clear between posts, three rails. timber comes in 4.8s. how many lengths',
      'how much is left off each one',
    ])
    // Rails are cut 3 mm short at each end and a saw cut takes 3 mm: 4,800 − 2 × 2,294 − 2 × 3 = 206
    expect(results(answer)).toMatchObject({ railOffcut: '206 mm' })
  })

  it('is no inch where “in” stands before metres: “drops 400 in 9 metres”', async () => {
    // 0.4 / 9 = 4.444 %
    expect(results((await talk(['the far bit drops 400 in 9 metres, what slope is that']))[0])).toMatchObject({
      slope: '4.444 %',
    })
  })

  it('is a diameter behind its sign', async () => {
    const [answer] = await talk([
      'holes Ø350 and 700 deep, 100 mm posts, 8 of them, 20 kg bags that make 10 litres: how many bags?',
    ])
    expect(answer?.calls.flatMap((it) => it.inputs.map((input) => `${input.word} ${input.text}`))).toContain(
      'holeDiameter 350 mm',
    )
  })

  it('as an inch on each side makes no fence of two runs', async () => {
    const [answer] = await talk([
      "one bay 91 in clear, two layers so you can't see through, the front board covers the ones behind by an inch each side, boards 5.5",
    ])
    expect(answer?.calls.map((it) => it.calculation)).toEqual(['board-on-board'])
  })
})
