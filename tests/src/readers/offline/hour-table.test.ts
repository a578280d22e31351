// A forecast pasted as people copy it: which column is which, and what is left alone where that is open.
import { describe, expect, it } from 'vitest'
import { talk } from '../../talk.ts'
import { hear } from '../../../../src/hearing.ts'
import { newJob } from '../../../../engine/index.ts'
import { readOffline } from '../../../../src/readers/offline/offline.ts'

/** The values that each list of the forecast was told, in order. */
function told(said: string): Record<string, string[]> {
  const heard = hear(said, newJob)
  const lists: Record<string, string[]> = {}
  for (const { word, from } of readOffline(heard).told)
    lists[word] = [...(lists[word] ?? []), heard.readings.find((it) => it.tag === from.tag)?.said ?? '?']
  return lists
}
const ask = 'When can I paint?\n'

describe('a forecast pasted as a table', () => {
  it.each([
    ['with units in the heads', `${ask}time\ttemp (°F)\tRH %\train (%)\n6 am\t48\t92\t0\n7 am\t52\t88\t10`],
    ['with units beside the numbers', `${ask}6 am 48 F 92 % 0 %\n7 am 52 F 88 % 10 %`],
    ['between commas', 'When can I paint: 6 am 48 F 92 % 0 %, 7 am 52 F 88 % 10 %'],
    ['between semicolons', '6 am: 48 F, 92 %, 0 %; 7 am: 52 F, 88 %, 10 %. Which hours can I paint?'],
    [
      'the rain before the humidity, as the heads say',
      `${ask}time  temp (F)  rain (%)  RH (%)\n6 am  48  0  92\n7 am  52  10  88`,
    ],
    [
      'the time by number under its head',
      `${ask}hour, temp F, humidity %, chance of rain %\n6, 48, 92, 0\n7, 52, 88, 10`,
    ],
    [
      'with columns of no use',
      `${ask}time  temp (F)  dew (F)  RH (%)  rain (%)\n6 am  48  45  92  0\n7 am  52  49  88  10`,
    ],
  ])('%s', (_, said) => {
    const got = told(said)
    expect(Object.keys(got).sort()).toEqual(['firstHour', 'hourHumidities', 'hourTemperatures', 'rainChances'])
    expect(got.firstHour?.map((it) => Number.parseInt(it, 10))).toEqual([6, 7])
    expect(got.hourTemperatures?.map((it) => Number.parseInt(it, 10))).toEqual([48, 52])
    expect(got.hourHumidities?.map((it) => Number.parseInt(it, 10))).toEqual([92, 88])
    expect(got.rainChances?.map((it) => Number.parseInt(it, 10))).toEqual([0, 10])
  })

  it('two temperatures without heads: neither is taken for the air, and no window is made of them', async () => {
    const [answer] = await talk([`${ask}6 am 48 F 45 F 92 %\n7 am 52 F 49 F 88 %`])
    expect(answer?.figures.filter((it) => it.role === 'result')).toEqual([])
    expect(answer?.asks).not.toEqual([])
  })
})
