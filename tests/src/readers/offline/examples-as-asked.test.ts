// Every calculation's examples, asked as they are written there: whoever adds a calculation sees here whether it is understood.
import { describe, expect, it } from 'vitest'
import { askable } from '../../../../engine/catalogue.ts'
import { results, talk } from '../../talk.ts'

// Not answered in full yet: the reader asks back, leaves something out, or an input stands in the example and not in its question.
const notYet = new Set([
  // Outside a fence that is being planned a list of things with prices is a bill, and comes to the same.
  'Take-off of the whole fence: 20 posts at $18, 40 rails at $7.25, 237 pickets at $3.20, 23 bags at $6.75',
  'Take-off: 14 posts at £21.50 and 80 brackets at £1.35, delivery £45',
  'Run 8.4 m, posts at most 1.2 m apart: how many bays?',
])

const examples = askable.flatMap((calc) => calc.examples.map((example) => ({ calc, example })))

describe('the examples, as they are asked', () => {
  it.each(examples.map((it) => [it.example.ask, it] as const))('%s', async (ask, { calc, example }) => {
    const [answer] = await talk([ask])
    const got = results(answer)
    const answered =
      answer?.calls.some((call) => call.calculation === calc.name) &&
      Object.entries(example.expect).every(([word, text]) => got[word]?.toLowerCase() === text.toLowerCase())
    if (notYet.has(ask)) expect(answered, 'it is understood now: take it off the list').toBe(false)
    else
      expect({ by: answer?.calls.map((call) => call.calculation), got }).toMatchObject({
        got: shownFor(example.expect, got),
      })
  })
})

/** The expected texts, a choice as it is called on the page. */
const shownFor = (
  expected: Readonly<Record<string, string>>,
  got: Readonly<Record<string, string>>,
): Record<string, string> =>
  Object.fromEntries(
    Object.entries(expected).map(([word, text]) => [
      word,
      got[word]?.toLowerCase() === text.toLowerCase() ? (got[word] as string) : text,
    ]),
  )
