// This file is about what the model is told of the vocabulary: every word, by what it measures, in a fixed order, so that the prompt's front never changes.
import { catalogue, vocabulary, type Word } from '../../../engine/index.ts'

const inputs = new Set(catalogue.flatMap((calc) => Object.keys(calc.needs)))
const results = new Set(catalogue.flatMap((calc) => Object.keys(calc.gives)))

/** A line for each kind that can be told, and one for each kind that can be wanted; a word's label only where its name does not say as much. */
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

/** `bayCentres (bay, centre to centre)`, `holeDepth`, `sides []`, `waterTest = beads | soaks`. */
function entryOf(word: Word): string {
  const label = saysItself(word) ? '' : ` (${word.label})`
  const options = word.options ? ` = ${Object.keys(word.options).join(' | ')}` : ''
  return `${word.name}${label}${word.list ? ' []' : ''}${options}`
}

const small = new Set('a an and as at be by each for from in is it its of on or one that the this to with'.split(' '))

/** Whether the name holds most of what the label says: the catalogue is long, and every token is paid for at every turn. */
function saysItself({ name, label }: Word): boolean {
  const inName = name
    .replace(/([A-Z])/g, ' $1')
    .toLowerCase()
    .split(' ')
  const said = (label.toLowerCase().match(/\p{L}+/gu) ?? []).filter((it) => !small.has(it))
  const known = said.filter((it) =>
    inName.some((part) => part.startsWith(it.slice(0, 4)) || it.startsWith(part.slice(0, 4))),
  )
  return known.length * 2 > said.length
}
