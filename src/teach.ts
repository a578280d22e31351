// This file is about `npm run teach`: the sentences and the examples of the catalogue are heard, and the weights that they teach are written down.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import {
  askable,
  type Calculation,
  calculationNamed,
  isQuantity,
  newJob,
  notes,
  parseValue,
  sameValue,
  type Value,
  vocabulary,
  type Word,
} from '../engine/index.ts'
import { hear } from './assistant.ts'
import type { Tagged } from './readers/reader.ts'
import { messageOf } from './readers/offline/stems.ts'
import { look, type Looked } from './readers/offline/taught/features.ts'
import { type Sentence, sentencesIn } from './readers/offline/taught/sentences.ts'
import type { MessageKind } from './readers/offline/taught/weights.ts'
import { type KindLesson, type Lesson, taught } from './readers/offline/taught/teach.ts'

const folder = join(process.argv[2] ?? '.', 'src/readers/offline/taught')

/** A sentence as it is heard; quantities that no mark covers mean nothing. */
function lessonOf(sentence: Sentence): Lesson | undefined {
  const calculation = calculationNamed(sentence.calculation)
  if (!calculation) return undefined
  const looked = heardAs(sentence.said)
  const options = new Map(sentence.marks.flatMap((it) => (it.option && it.word ? [[it.word, it.option] as const] : [])))
  const meant = looked.message.flatMap((token, spot) => {
    if (!token.reading) return []
    const mark = sentence.marks.find((it) => it.start < token.end && it.end > token.start && !it.option)
    return [{ reading: token.reading, spot, word: mark?.word ?? null }]
  })
  return { looked, calculation, results: sentence.results, options, meant }
}

function heardAs(said: string): Looked {
  const heard = hear(said, newJob)
  return look(heard, messageOf(heard))
}

/** The questions that every calculation brings along, with what was given in them. */
function lessonOfExample(
  calculation: Calculation,
  ask: string,
  given: Readonly<Record<string, string | readonly string[]>>,
  results: readonly string[],
): Lesson {
  const looked = heardAs(ask)
  const options = new Map(
    Object.entries(given).flatMap(([name, text]) =>
      vocabulary.get(name)?.kind === 'choice' ? [[name, String(text)] as const] : [],
    ),
  )
  const values = Object.entries(given).flatMap(([name, texts]) =>
    [texts].flat().map((text) => {
      const word = vocabulary.get(name) as Word
      return [
        name,
        parseValue({ ...word, list: false }, text, 'imperial'),
        parseValue({ ...word, list: false }, text, 'metric'),
      ] as const
    }),
  )
  const meant = looked.message.flatMap((token, spot) => {
    const { reading } = token
    if (!reading) return []
    const word = values.find(([, ...ways]) => ways.some((it) => it !== undefined && isSame(reading, it)))?.[0] ?? null
    return [{ reading, spot, word }]
  })
  return { looked, calculation, results, options, meant }
}

const isSame = (reading: Tagged, value: Value): boolean =>
  isQuantity(value) &&
  (reading.quantity
    ? sameValue(reading.quantity, value)
    : reading.bare !== null && Math.abs(reading.bare.valueOf() - Number(String(value.amount))) < 1e-9)

const sentences = readdirSync(folder)
  .filter((it) => it.startsWith('sentences-'))
  .sort()
  .flatMap((it) => sentencesIn(readFileSync(join(folder, it), 'utf8')))
const lessons = [
  ...sentences.flatMap((it) => lessonOf(it) ?? []),
  ...askable
    .filter((it) => !it.plain)
    .flatMap((calc) =>
      calc.examples.map(({ ask, given, expect }) => lessonOfExample(calc, ask, given, Object.keys(expect).slice(0, 1))),
    ),
]
const ofKinds: KindLesson[] = [
  ...readFileSync(join(folder, 'kinds.txt'), 'utf8')
    .split('\n')
    .filter((it) => it.includes('|'))
    .map((line) => {
      const bar = line.indexOf('|')
      return { kind: line.slice(0, bar).trim() as MessageKind, looked: heardAs(line.slice(bar + 1).trim()) }
    }),
  ...lessons.map(({ looked, results }) => ({
    looked,
    kind: results.length > 0 ? ('sum' as const) : ('told' as const),
  })),
  ...notes.flatMap(({ asks }) => asks.map((it) => ({ looked: heardAs(it), kind: 'advice' as const }))),
]
const weights = taught(lessons, ofKinds)
writeFileSync(
  join(folder, 'weights.json'),
  `${JSON.stringify(weights, null, 0)
    .replaceAll('],"', '],\n"')
    .replaceAll(/,"(?=[^"]*":-?\d)/g, ',\n"')}\n`,
)
process.stdout.write(
  `${lessons.length} sentences, ${Object.keys(weights.asks).length} features of questions, ${Object.keys(weights.binds).length} of quantities\n`,
)
