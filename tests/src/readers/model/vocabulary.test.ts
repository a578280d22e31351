// This file is about what the model is told of the vocabulary: the right words come with the message, and the whole stays short.
import { encode } from 'gpt-tokenizer'
import { describe, expect, it } from 'vitest'
import { askable, newJob, notes } from '../../../../engine/index.ts'
import { readingPrompt } from '../../../../src/prompts.ts'
import { hear } from '../../../../src/hearing.ts'
import { toolsOffered } from '../../../../src/readers/model/tools.ts'
import { catalogueText, wordsFor } from '../../../../src/readers/model/vocabulary.ts'

const asked = askable.flatMap((calc) => calc.examples.map(({ ask, given }) => ({ calc, ask, given })))

const texts = new Map<string, string>()
function textFor(ask: string): string {
  const text = texts.get(ask) ?? wordsFor(hear(ask, newJob))
  texts.set(ask, text)
  return text
}

describe('the words that come with a message', () => {
  it.each(asked)('hold all that is told in it: $ask', ({ calc, ask, given }) => {
    const text = textFor(ask)
    const missing = Object.keys(given).filter((word) => !new RegExp(`\\b${word}\\b`).test(text))
    expect(missing, calc.name).toEqual([])
  })

  it.each(notes.flatMap(({ name, asks }) => asks.map((ask) => [ask, name] as const)))(
    'hold the advice that is asked for: %s',
    (ask, name) => {
      expect(wordsFor(hear(ask, newJob))).toContain(`${name} (`)
    },
  )

  it('fit with the tools and the system text within 6,000 tokens, whatever is asked', () => {
    const front = `${readingPrompt()}\n\n${catalogueText()}\n${JSON.stringify(toolsOffered)}`
    const sizes = asked.map(({ ask }) => encode(textFor(ask)).length)
    expect(encode(front).length + Math.max(...sizes)).toBeLessThan(6000)
  })

  it('are none where nothing of the trade is said', () => {
    expect(wordsFor(hear('Tell me a joke.', newJob))).toBe('')
  })

  it('of the whole askable are named in the front', () => {
    const front = catalogueText()
    for (const calc of askable) expect(front).toMatch(new RegExp(`^${calc.name}: `, 'm'))
  })
})
