// This file is about lessons: the sentences and the examples of the catalogue, as they are heard, and the weights that they teach.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import {
  askable,
  type Calculation,
  calculationNamed,
  isQuantity,
  type Job,
  newJob,
  notes,
  parseValue,
  type Result,
  sameValue,
  type Value,
  vocabulary,
  type Word,
  yard,
} from '../engine/index.ts'
import { hear } from './hearing.ts'
import { decideTurn } from './deciding.ts'
import { checkBindings } from './guard/bindings.ts'
import type { Tagged } from './readers/reader.ts'
import type { Request } from './request.ts'
import { forgiven } from './readers/offline/lexicon.ts'
import { messageOf } from './readers/offline/stems.ts'
import { look, type Looked, phrasesOf } from './readers/offline/taught/features.ts'
import { type Mark, talksIn, type Turn } from './readers/offline/taught/sentences.ts'
import type { Weights } from './readers/offline/taught/weights.ts'
import type { KindLesson, Lesson, WalkLesson } from './readers/offline/taught/lesson.ts'
import { taught } from './readers/offline/taught/teach.ts'
import { untagged } from './readers/offline/walk/tags.ts'
import { type Walk, walksIn } from './readers/offline/walk/walks.ts'

/** The turns of a talk, each as it is heard with what was said before it; quantities that no mark covers mean nothing. */
export function lessonsOfTalk(turns: readonly Turn[]): { lessons: Lesson[]; kinds: KindLesson[] } {
  const lessons: Lesson[] = []
  const kinds: KindLesson[] = []
  let job = newJob
  for (const [at, turn] of turns.entries()) {
    const looked = heardAs(turn.said, { ...job, asked: turn.open.map((word) => ({ word, at: yard })) })
    if (turn.kind !== 'act') kinds.push({ looked, kind: turn.kind })
    const marked = markedIn(turn, looked)
    const asks = turn.asks.map(({ calculation, results }) => ({
      calculation: calculationOf(calculation, turn),
      results,
    }))
    const options = new Map(
      turn.marks.flatMap((it) => (it.option && it.word && !isAmount(it) ? [[it.word, it.option] as const] : [])),
    )
    lessons.push(
      ...asks.map(({ calculation, results }) => ({
        looked,
        calculation,
        results,
        options,
        saying: sayingIn(turn, looked),
        meant: marked,
      })),
    )
    if (at < turns.length - 1) job = jobAfter(job, turn, looked, marked, at)
  }
  return { lessons, kinds }
}

/** The words by which a turn says the options of its choices. */
const sayingIn = ({ marks }: Turn, looked: Looked): string[] =>
  marks
    .filter((it) => it.option && !isAmount(it))
    .flatMap((mark) =>
      phrasesOf(looked)
        .filter(
          ({ from, to }) =>
            (looked.message[from]?.start ?? 0) >= mark.start && (looked.message[to]?.end ?? 0) <= mark.end,
        )
        .map(({ words }) => `${mark.word} ${words}`),
    )

const isAmount = ({ option }: Mark): boolean => option === '+' || option === '-'

const calculationOf = (name: string, { said }: Turn): Calculation => {
  const calculation = calculationNamed(name)
  if (!calculation) throw new Error(`“${said}” is of no calculation: ${name}`)
  return calculation
}

/** Each quantity of a turn, with the word that its mark names. An amount by which something changes is none of its values, unless it is read as such. */
const markedIn = ({ marks }: Turn, { message }: Looked): Lesson['meant'] =>
  message.flatMap((token, spot) => {
    if (!token.reading) return []
    const mark = marks.find((it) => it.start < token.end && it.end > token.start && (!it.option || isAmount(it)))
    // “One less”, without a mark: of what, its sentence does not tell.
    if (!mark && token.reading.change) return []
    return [
      { reading: token.reading, spot, word: mark && (!isAmount(mark) || token.reading.change) ? mark.word : null },
    ]
  })

/** The job as such a turn leaves it, without anything being worked: what was told, what was asked, and that it was answered. */
function jobAfter(job: Job, turn: Turn, { heard }: Looked, marked: Lesson['meant'], at: number): Job {
  const quoted = turn.marks.flatMap((it) =>
    it.word && it.option && !isAmount(it)
      ? [{ word: it.word, option: it.option, tag: null, quote: turn.said.slice(it.start, it.end) }]
      : [],
  )
  const tagged = marked.flatMap(({ word, reading }) =>
    word ? [{ word, tag: reading.tag, quote: null, option: null }] : [],
  )
  const [first] = turn.asks
  const request: Request = {
    told: [...tagged, ...quoted].map(({ word, ...from }) => ({ word, at: yard, from: { ...from, usual: null } })),
    wants: turn.asks.flatMap(({ results }) => results.map((word) => ({ word, at: yard }))),
    calculation: first?.calculation ?? null,
    confirms: [],
    declines: [],
  }
  const decided = decideTurn({ ...job, system: heard.job.system }, request, checkBindings(request, heard, at))
  const wanted = decided.wanted.length > 0 ? decided.wanted : job.wanted
  const answered: Result[] = turn.asks.flatMap(({ calculation }) =>
    wanted
      .filter(({ word }) => calculationNamed(calculation)?.gives[word])
      .map((it) => ({ ...it, value: true, calculation, ref: `r1.${it.word}` })),
  )
  return { ...decided, wanted, named: decided.named ?? job.named, results: [...job.results, ...answered] }
}

/** A talk that has come to a calculation. */
function talkOf(name: string): Job {
  const headlines = calculationNamed(name)?.headlines ?? []
  return { ...newJob, named: name, wanted: headlines.slice(0, 1).map((word) => ({ word, at: yard })) }
}

function heardAs(said: string, job = newJob): Looked {
  const heard = hear(said, job)
  return look(heard, messageOf(heard).map(forgiven))
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
  return { looked, calculation, results, options, saying: [], meant }
}

const isSame = (reading: Tagged, value: Value): boolean =>
  isQuantity(value) &&
  (reading.quantity
    ? sameValue(reading.quantity, value)
    : reading.bare !== null && Math.abs(reading.bare.valueOf() - Number(String(value.amount))) < 1e-9)

/** A turn of a fence told side by side, each token with the tag that its mark names. */
export function lessonOfWalk({ said, marks, asks }: Walk): WalkLesson {
  const looked = heardAs(said)
  const tags = looked.message.map((token) => {
    const mark = marks.find((it) => it.start < token.end && it.end > token.start)
    return mark?.word ? (mark.option ? `${mark.word}:${mark.option}` : mark.word) : untagged
  })
  return { looked, tags, asks }
}

/** What all of it teaches. The same sentences give the same weights. */
export function weightsTaught(folder: string): Weights {
  const talks = readdirSync(folder)
    .filter((it) => /^(sentences|talks)-/.test(it))
    .sort()
    .flatMap((it) => talksIn(readFileSync(join(folder, it), 'utf8')))
    .map(lessonsOfTalk)
  const examples = askable
    .filter((it) => !it.plain)
    .flatMap((calc) =>
      calc.examples.map(({ ask, given, expect }) => lessonOfExample(calc, ask, given, Object.keys(expect).slice(0, 1))),
    )
  const ofKinds: KindLesson[] = [
    ...talksIn(readFileSync(join(folder, 'kinds.txt'), 'utf8')).flatMap((it) => lessonsOfTalk(it).kinds),
    ...talks.flatMap((it) => it.kinds),
    ...examples.map(({ looked }) => ({ looked, kind: 'sum' as const })),
    ...notes.flatMap(({ asks }) => asks.map((it) => ({ looked: heardAs(it), kind: 'advice' as const }))),
    ...notes.flatMap(({ onward = [] }) =>
      onward.flatMap(({ after, asks }) =>
        asks.map((it) => ({ looked: heardAs(it, talkOf(after[0] as string)), kind: 'advice' as const })),
      ),
    ),
  ]
  const sides = join(folder, '../walk')
  const walks = readdirSync(sides)
    .filter((it) => it.endsWith('.txt'))
    .sort()
    .flatMap((it) => walksIn(readFileSync(join(sides, it), 'utf8')))
    .map(lessonOfWalk)
  return taught([...talks.flatMap((it) => it.lessons), ...examples], ofKinds, walks)
}

/** A line a feature, so that a change can be read. */
export const written = (weights: Weights): string =>
  `${JSON.stringify(weights, null, 0)
    .replaceAll(/([\]}]),"/g, '$1,\n"')
    .replaceAll(/,"(?=[^"]*":-?\d)/g, ',\n"')}\n`
