// A question outright for a weight, an angle, a price or a number is answered by none of another kind.
import { describe, expect, it } from 'vitest'
import { calculationNamed, quantity, type Calculation, type Worked } from '../../engine/index.ts'
import { withoutOtherKind } from '../../src/other-kind.ts'
import { asked, results, talk } from './talk.ts'

const diagonal: Worked = {
  calculation: calculationNamed('leaf-diagonal') as Calculation,
  wanted: ['leafDiagonal'],
  at: 'yard',
  outcome: { ok: true, given: new Map(), values: new Map([['leafDiagonal', quantity(60, 'in')]]) },
} as unknown as Worked

const isHeld = (said: string): boolean => withoutOtherKind([diagonal], said).every((it) => !it.outcome.ok)

describe('a sum that gives a length', () => {
  it.each([
    'what weight is that gate?',
    'how heavy will it be',
    'what will it weigh when it is dry',
    'how many kilos does it weigh',
    'at which angle does it stand?',
    'how many degrees is that',
    'what will the brace cost',
    'what does it all set me back',
    'how many litres go on it',
    'how many screws for the brace',
  ])('is no answer to “%s”', (said) => expect(isHeld(said)).toBe(true))

  it.each([
    'how long is the brace?',
    'how high is it',
    'and the other one?',
    'the gate weighs 20 kg, how long is its brace',
  ])('answers “%s”, or at least nothing speaks against it', (said) => expect(isHeld(said)).toBe(false))
})

describe('a message', () => {
  it('that asks for a weight, and was read as paint, is asked what it means', async () => {
    const [only] = await talk([
      'I have 90 pickets of spruce, each 80 mm by 20 mm and 1 m long. What weight is the whole lot?',
    ])
    expect(results(only)).not.toHaveProperty('finishArea')
    expect(asked(only).length).toBeGreaterThan(0)
  })

  it('that asks for what its sum gives is answered', async () => {
    const [only] = await talk(['12 bags of 25 kg and 6 posts of 9 kg on my trailer: what do they weigh together?'])
    expect(results(only)).toMatchObject({ mixedWeight: '354 kg' }) // 300 + 54
  })
})
