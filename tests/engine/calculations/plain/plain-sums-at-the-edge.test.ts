// Sums of any trade at their edges: how many at once, what cannot be done and why, what is said beside the figure. By hand.
import { describe, expect, it } from 'vitest'
import { type Inputs, runNamed } from '../../run-named.ts'

const ran = (name: string, given: Inputs, ...wanted: string[]) => runNamed(name, given, { wanted })
const told = (name: string, given: Inputs, wanted: string): string =>
  ran(name, given, wanted).shown[wanted] ?? 'nothing'
const said = (name: string, given: Inputs, ...wanted: string[]): string => ran(name, given, ...wanted).said

describe('the spread of temperatures', () => {
  // From the coldest to the warmest, wherever they stand: 71 − 38
  it.each([[['38 °F', '71 °F', '50 °F']], [['71 °F', '38 °F', '50 °F']], [['50 °F', '71 °F', '38 °F']]])(
    'of %j is 33 °F',
    (temperatures) =>
      expect(told('temperatures-together', { temperatures }, 'temperatureSpread')).toBe('33 °F difference'),
  )
})

describe('what cannot be done is refused with what there is', () => {
  it('more than 500 values, but not 500', () => {
    const inches = (many: number) => Array.from({ length: many }, () => '2 in')
    expect(told('lengths-together', { lengths: inches(500) }, 'lengthSum')).toBe('1,000 in')
    expect(said('lengths-together', { lengths: inches(501) }, 'lengthSum')).toContain(
      'That is 501 values. I take at most 500 values at once.',
    )
  })

  it('a length into which nothing goes', () => {
    expect(said('lengths-together', { lengths: ['93 in', '0 in'] }, 'lengthRatio')).toContain(
      '0 in goes into 93 in without end. Check both.',
    )
    // Beside a sum that can be worked it holds up nothing.
    expect(ran('lengths-together', { lengths: ['93 in', '0 in'] }, 'lengthRatio', 'lengthSum').shown.lengthSum).toBe(
      '93 in',
    )
  })

  it.each([
    ['lengthMultiple', 'I have 8 ft, and no number to multiply or share it by. Say how many.'],
    ['lengthShare', 'I have 8 ft, and no number to multiply or share it by. Say how many.'],
    ['lengthPart', 'I have 8 ft, and no percentage of it. Say how many percent.'],
    ['lengthRatio', 'I have 8 ft, and nothing of its kind beside it.'],
    ['lengthDifference', 'I have 8 ft, and nothing of its kind beside it.'],
    ['lengthMean', 'I have 8 ft, and nothing of its kind beside it.'],
    ['lengthProduct', 'For an area I need two lengths, and I have 1 value.'],
  ])('%s of one length', (wanted, message) =>
    expect(said('lengths-together', { lengths: ['8 ft'] }, wanted)).toContain(message),
  )

  it('an area of three lengths', () =>
    expect(said('lengths-together', { lengths: ['8 ft', '2 ft', '3 ft'] }, 'lengthProduct')).toContain(
      'For an area I need two lengths, and I have 3 values.',
    ))
})

describe('what can be done', () => {
  it.each<[string, Inputs, string, string]>([
    ['lengths-together', { lengths: ['8 ft', '3 ft'] }, 'lengthMean', '5 ft 6 in'],
    ['lengths-together', { lengths: ['8 ft', '3 ft'] }, 'lengthProduct', '24 ft²'],
    ['lengths-together', { lengths: ['8 ft', '6 in'] }, 'lengthProduct', '4 ft²'],
    ['lengths-together', { lengths: ['250 mm', '40 mm'] }, 'lengthProduct', '10,000 mm²'],
    ['lengths-together', { lengths: ['8 ft'], howManyTimes: '5' }, 'lengthMultiple', '40 ft'],
    ['lengths-together', { lengths: ['8 ft', '2 ft'], howManyTimes: '4' }, 'lengthShare', '2 ft 6 in'],
    ['lengths-together', { lengths: ['8 ft', '2 ft'], partPercent: '25 %' }, 'lengthPart', '2 ft 6 in'],
    // The largest unit that was said, of the system that was said first: 2 m are 78.74 in.
    ['lengths-together', { lengths: ['9 in', '1 ft', '2 m'] }, 'lengthDifference', '4 ft 9.74 in'],
    // 10 / 3 is 3.333…: money is shared to the cent.
    ['money-together', { amounts: ['$10'], howManyTimes: '3' }, 'moneyShare', '$3.33'],
    ['money-together', { amounts: ['$10', '$5.01'] }, 'moneyMean', '$7.51'],
  ])('%s %j: %s is %s', (name, given, wanted, value) => expect(told(name, given, wanted)).toBe(value))

  // 10 ft less 6 ft and 3 ft is 1 ft, told first or last; told in the midst it is not clear what is taken from what.
  it('the others are taken from the largest where it is told first or last', () => {
    const order = (...lengths: string[]) => told('lengths-together', { lengths }, 'lengthDifference')
    expect(order('10 ft', '6 ft', '3 ft')).toBe('1 ft')
    expect(order('6 ft', '3 ft', '10 ft')).toBe('1 ft')
    expect(order('7 ft', '7 ft')).toBe('0 ft')
    expect(said('lengths-together', { lengths: ['6 ft', '10 ft', '3 ft'] }, 'lengthDifference')).toContain(
      'I take the others from the largest, 10 ft, and they come to 9 ft. Say what is taken from what, two at a time.',
    )
  })

  it('what goes in evenly leaves nothing to be said, and the first is not called the larger where it is', () => {
    expect(said('lengths-together', { lengths: ['8 ft', '2 ft'] }, 'lengthRatio')).toBe('')
    expect(said('lengths-together', { lengths: ['8 ft', '2 ft'] }, 'lengthDifference')).toBe('')
    expect(said('lengths-together', { lengths: ['2 ft', '8 ft'] }, 'lengthDifference')).toBe(
      'I took 2 ft from 8 ft, the larger.',
    )
  })

  it.each([
    [['2.5 h', '45 min'], 'In hours and minutes: 3 h 15 min.'],
    [['2.5 h', '30 min'], ''],
    [['20 min', '25 min'], ''],
    [['40 min', '25 min'], 'In hours and minutes: 1 h 5 min.'],
    [['1 h', '30 second'], ''],
  ])('times %j say beside it: %s', (durations, message) =>
    expect(said('durations-together', { durations }, 'durationSum')).toBe(message),
  )
})
