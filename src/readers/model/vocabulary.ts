// This file is about what the model is told of the vocabulary: every word, by what it measures, in a fixed order, so that the prompt's front never changes.
import { catalogue, vocabulary, type Word } from '../../../engine/index.ts'

const inputs = new Set(catalogue.flatMap((calc) => Object.keys(calc.needs)))
const results = new Set(catalogue.flatMap((calc) => Object.keys(calc.gives)))

/** A line for each kind that can be told, and one for each kind that can be wanted; a word's label only where its name does not say the same. */
export function vocabularyText(): string {
  const words = [...vocabulary.values()]
  return [
    'To be told:',
    ...linesOf(words.filter((word) => inputs.has(word.name))),
    '',
    'To be wanted:',
    ...linesOf(words.filter((word) => results.has(word.name))),
  ].join('\n')
}

function linesOf(words: readonly Word[]): string[] {
  const kinds = [...new Set(words.map((word) => word.kind))]
  return kinds.map(
    (kind) =>
      `- ${kind}: ${words
        .filter((word) => word.kind === kind)
        .map(entryOf)
        .join('; ')}`,
  )
}

/** `widestGap (widest gap allowed)`, `holeDepth`, `sides [several values, told one by one]`, `waterTest = beads | soaks`. */
function entryOf(word: Word): string {
  const spaced = word.name.replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`)
  const label = word.label === spaced ? '' : ` (${word.label})`
  const options = word.options ? ` = ${Object.keys(word.options).join(' | ')}` : ''
  return `${word.name}${label}${word.list ? ' [several values, told one by one]' : ''}${options}`
}
