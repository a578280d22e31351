import { talk } from '../talk.ts'
import { describe, expect, it } from 'vitest'
import { isQuantity, newJob, show } from '../../../engine/index.ts'
import { hear } from '../../../src/hearing.ts'
import { checkBindings } from '../../../src/guard/bindings.ts'
import { readOffline } from '../../../src/readers/offline/offline.ts'
import type { Request, Told } from '../../../src/request.ts'

const from = (it: Partial<Told['from']>): Told['from'] => ({ tag: null, quote: null, option: null, usual: null, ...it })
const request = (
  told: readonly (readonly [word: string, origin: Partial<Told['from']>, at?: string])[],
  wants: readonly string[] = [],
): Request => ({
  told: told.map(([word, origin, at = 'yard']) => ({ word, at, from: from(origin) })),
  wants: wants.map((word) => ({ word, at: 'yard' })),
  calculation: null,
  confirms: [],
  declines: [],
})
const check = (said: string, it: Request) => {
  const heard = hear(said, newJob)
  return checkBindings(it, heard, 0, readOffline(heard))
}
const said = 'holes 12 in wide and 24 in deep, four posts, 60 lb bags'

describe('bindings of a model', () => {
  it('hold what is tagged, with the value the program read', () => {
    const { held, refused } = check(
      said,
      request([
        ['holeDiameter', { tag: 'u1' }],
        ['holeDepth', { tag: 'u2' }],
        ['posts', { tag: 'u3' }],
      ]),
    )
    expect(held.map((it) => it.word)).toEqual(['holeDiameter', 'holeDepth', 'posts'])
    expect(refused).toEqual([])
  })

  it.each([[['nominalThickness']], [['nominalThickness', 'nominalWidth']], [['nominalWidth', 'nominalThickness']]])(
    'a stick called by its size is both its sides, told once or twice: %s',
    (words) => {
      const { held, refused } = check(
        'what does a 2x4 really measure?',
        request(
          words.map((word) => [word, { tag: 'u1' }] as const),
          ['dressedThickness'],
        ),
      )
      expect(Object.fromEntries(held.map((it) => [it.word, isQuantity(it.value) && show(it.value)]))).toEqual({
        nominalThickness: '2 in',
        nominalWidth: '4 in',
      })
      expect(refused).toEqual([])
    },
  )

  it('a range is both its ends where the upper one has a word of its own, and refused where it has none', () => {
    const bag = '10 bags, the bag says 2.5 to 3 L of water per bag'
    const { held } = check(bag, request([['waterEach', { tag: 'u2' }]]))
    expect(held.map((it) => [it.word, isQuantity(it.value) && show(it.value)])).toEqual([
      ['waterEach', '2.5 L'],
      ['waterEachMost', '3 L'],
    ])
    const { held: none, refused } = check('holes 10 to 12 in wide', request([['holeDiameter', { tag: 'u1' }]]))
    expect(none).toEqual([])
    expect(refused.map((it) => it.why)).toEqual(['“10 to 12 in” is a range; one figure is needed'])
  })

  it('a weekday that does not fit its date is not taken, and the day it is said back', () => {
    const { held, refused } = check('I call on Friday 5 October 2026', request([['callDate', { tag: 'u1' }]]))
    expect(held).toEqual([])
    expect(refused).toEqual([
      {
        word: 'callDate',
        why: 'you said “Friday 5 October 2026”, and that day is a Monday',
        isOfTheWords: true,
      },
    ])
  })

  it('swapped diameter and depth are taken from neither: the person is asked', () => {
    const { held, torn } = check(
      said,
      request([
        ['holeDiameter', { tag: 'u2' }],
        ['holeDepth', { tag: 'u1' }],
      ]),
    )
    expect(held).toEqual([])
    expect(torn.map((it) => it.said).sort()).toEqual(['12 in', '24 in'])
  })

  it.each([
    ['a tag that is not there', 'holeDepth', { tag: 'u9' }],
    ['a quotation of what was never said', 'holeDepth', { quote: '36 in deep' }],
    ['a quotation that holds no quantity', 'holeDepth', { quote: 'wide and' }],
    ['a quotation that holds two', 'holeDepth', { quote: '12 in wide and 24 in deep' }],
    ['a quantity of another kind', 'bagWeight', { tag: 'u1' }],
    ['a weight as a length', 'stoneDepth', { tag: 'u4' }],
    ['an option that is none', 'waterTest', { option: 'maybe', quote: 'wide' }],
    ['an option whose words were not said', 'waterTest', { option: 'soaks', quote: 'soaks right in' }],
    ['a usual value where there is none', 'holeDepth', { usual: true }],
    ['nothing at all', 'holeDepth', {}],
    ['a word of no vocabulary', 'constructor', { tag: 'u1' }],
  ] as const)('%s counts as not told', (_, word, origin) => {
    const { held, refused } = check(said, request([[word, origin]]))
    expect(held).toEqual([])
    expect(refused).toHaveLength(1)
  })

  it('one tag cannot be two words', () => {
    const { held, refused } = check(
      'posts 4 in, pickets',
      request([
        ['postWidth', { tag: 'u1' }],
        ['picketWidth', { tag: 'u1' }],
      ]),
    )
    expect(held.length).toBeLessThanOrEqual(1)
    expect(refused.length + held.length).toBeGreaterThanOrEqual(1)
  })

  it('an exact quotation is read by the program', () => {
    const { held } = check('the holes are 30 in deep with no gravel', request([['stoneDepth', { quote: 'no gravel' }]]))
    expect(held[0]?.word).toBe('stoneDepth')
  })

  it('an option against the message’s own words is refused', () => {
    const { held, refused } = check(
      'is it dry enough? 12 % deep. water still beads on it',
      request([['waterTest', { option: 'soaks', quote: 'water still beads' }]], ['dryEnough']),
    )
    expect(held).toEqual([])
    expect(refused[0]?.why).toContain('beads')
  })

  it('unknown wants and places are left out', () => {
    const { wants } = check(said, {
      ...request([], ['toString', 'bags']),
      wants: [
        { word: 'bags', at: 'yard' },
        { word: 'bags', at: '__proto__' },
        { word: 'toString', at: 'yard' },
      ],
    })
    expect(wants).toEqual([{ word: 'bags', at: 'yard' }])
  })
})

describe('a quantity that reads in more than one way', () => {
  it('20 degrees of air are Celsius, 70 are Fahrenheit, and at 45 the person is asked', async () => {
    const readAs = async (said: string): Promise<string[]> =>
      (await talk([said]))[0]?.readAs.map((it) => it.figure.text) ?? []
    expect(await readAs('EMC at 20 degrees and 65 % RH?')).toEqual(['20 °C', '65 %'])
    expect(await readAs('EMC at 70 degrees and 65 % RH?')).toEqual(['70 °F', '65 %'])
    const [answer] = await talk(['EMC at 45 degrees and 65 % RH?'])
    expect(answer?.calls.flatMap((call) => call.results)).toEqual([])
    expect(answer?.asks.map((it) => it.question).join(' ')).toContain('45 °F, or 45 °C')
  })
})
