// This file is about what the model is told of the vocabulary: one line a word, in a fixed order, so that the prompt's front never changes.
import { catalogue, vocabulary } from '../../../engine/index.ts'

const results = new Set(catalogue.flatMap((calc) => Object.keys(calc.gives)))

/** `holeDepth (length) hole depth. Measure from …`; results carry an arrow; options are listed. */
export function vocabularyText(): string {
  return [...vocabulary.values()]
    .map((word) => {
      const options = word.options
        ? ` Options: ${Object.entries(word.options)
            .map(([name, it]) => `${name} (${it.label})`)
            .join(', ')}.`
        : ''
      return `${results.has(word.name) ? '→ ' : ''}${word.name} (${word.kind}) ${word.label}. ${withoutFigures(word.measure)}${options}`
    })
    .join('\n')
}

// Hints such as "a 4x4 is 3 1/2 in" help a person with a tape; a model has no use for figures.
const withoutFigures = (text: string): string =>
  text
    .split(/(?<=[.;:])\s/)
    .filter((sentence) => !/\d/.test(sentence))
    .join(' ')
