// This file is about the reply: the program's own sentences and sections, in markdown, exactly as the person is shown them.
import { isList, isQuantity, show, usualFor, vocabulary, type Worked, inPlace, placeLabel } from '../engine/index.ts'
import type { Answer, Call, Figure } from './answer.ts'

export interface Parts {
  readonly worked: readonly Worked[]
  readonly calls: readonly Call[]
  readonly advice: Answer['advice']
  readonly asks: Answer['asks']
  readonly changed: Answer['changed']
  readonly readAs: Answer['readAs']
  readonly cautions: Answer['cautions']
  /** Sentences for what was declined, and by whom the message was read when that is not as usual. */
  readonly notices: readonly string[]
  /** What of the message was not taken, said after the answer. */
  readonly leftOver: readonly string[]
  /** What a model wrote, after the guard; empty when there is none or nothing of it stood. */
  readonly prose: string
  /** Why a model's sentences are missing, where its server failed. */
  readonly unwritten?: string
}

/** The program's own sentences, each with what it belongs to. */
export const wordsOf = ({
  notices,
  leftOver,
  calls,
  worked,
}: Pick<Parts, 'notices' | 'leftOver' | 'calls' | 'worked'>): NonNullable<Answer['words']> => ({
  notices: [...notices],
  leftOver: [...leftOver],
  remarks: calls.flatMap((call, i) => {
    const it = worked[i]
    return it && call.results.length > 0 ? remarksOf(it, call).map((text) => ({ call: call.id, text })) : []
  }),
  usual: calls.flatMap((call, i) => {
    const it = worked[i]
    return it ? takenAsUsual(it).map(({ name, usual }) => ({ ref: `${call.id}.${name}`, ...reasonOf(usual) })) : []
  }),
})

/** The whole reply. The first section answers; the others show how. */
export function compose(parts: Parts): string {
  const sections = [
    answerText(parts),
    section(
      'I need to know',
      parts.asks.map((it) => `- ${it.question}`),
    ),
    section('How I read it', readingLines(parts.readAs)),
    section('Taken as usual', unique(parts.worked.flatMap((worked) => usualLines(worked)))),
    section(
      'Working',
      parts.calls.flatMap((call) => workingLines(call, whereOf(call, parts.calls))),
    ),
    ...parts.calls.flatMap((call) =>
      call.tables.map((table) => section(table.title + whereOf(call, parts.calls), tableLines(table))),
    ),
    section(
      'Where it comes from',
      unique(
        parts.calls
          .filter((call) => call.results.length > 0)
          .flatMap((call) => call.sources.map((it) => `- ${capital(it.fact)}: ${it.from}`)),
      ).concat(parts.advice.map((it) => `- ${it.title}: ${it.from}`)),
    ),
    section(
      'Take care',
      parts.cautions.map((it) => `- ${it.text}`),
    ),
  ]
  return sections.filter((it) => it !== '').join('\n\n')
}

/** “, for bay 1 of run 2”, where the same is worked for more places than one. */
function whereOf(call: Call, calls: readonly Call[]): string {
  const at = call.results[0]?.at
  const isOneOfMany = calls.some((it) => it !== call && it.title === call.title)
  return isOneOfMany && at !== undefined && placeLabel(at) ? `, for ${inPlace(at)}` : ''
}

/** A list in one line: “48”, “52”, “57 F” → temperatures hour by hour: 48 °F, 52 °F, 57 °F. */
function readingLines(readAs: Answer['readAs']): string[] {
  const isSame = (a: Figure, b: Figure): boolean => a.word === b.word && a.at === b.at
  return readAs
    .filter((it) => readAs.find((other) => isSame(other.figure, it.figure)) === it)
    .map(({ figure }) => {
      const all = readAs.filter((it) => isSame(it.figure, figure))
      const said = all.map((it) => `“${plain(it.said)}”`).join(', ')
      return `- ${said} → ${figure.label}${atPlace(figure.at)}: ${all.map((it) => it.figure.text).join(', ')}`
    })
}

const section = (title: string, lines: readonly string[]): string =>
  lines.length === 0 ? '' : `### ${title}\n\n${lines.join('\n')}`
const unique = (lines: readonly string[]): string[] => [...new Set(lines)]
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
/** What a person typed, so that it cannot turn into markup. */
const plain = (text: string): string => text.replace(/[\\`*_{}[\]<>#|~]/g, (sign) => `\\${sign}`).replace(/\s+/g, ' ')
const atPlace = (at: string): string => (placeLabel(at) ? ` (${placeLabel(at)})` : '')

function answerText(parts: Parts): string {
  const blocks: string[] = [...parts.notices]
  if (parts.prose) blocks.push(parts.prose)
  // A calculation that only fed another comes after the one that answers.
  const order = parts.calls
    .map((_, i) => i)
    .sort((a, b) => Number(answers(parts.calls[b])) - Number(answers(parts.calls[a])))
  for (const i of order) {
    const call = parts.calls[i] as Call
    const worked = parts.worked[i] as Worked
    if (call.problems.length > 0)
      blocks.push(...call.problems.filter((it) => it.code !== 'missing').map((it) => it.message))
    else if (call.results.length > 0)
      blocks.push(
        answers(call)
          ? headlineText(call)
          : `For that, worked first – ${call.title.charAt(0).toLowerCase()}${call.title.slice(1)}:`,
        resultLines(call),
        remarksOf(worked, call).join('\n\n'),
      )
  }
  for (const { title, text } of parts.advice) blocks.push(`*${title}.* ${text}`)
  blocks.push(...parts.leftOver)
  if (parts.changed.length > 0)
    blocks.push(
      `What changed:\n\n${parts.changed.map((it) => `- ${capital(it.after.label)}${atPlace(it.at)}: ~~${it.before.text}~~ → ${it.after.text}`).join('\n')}`,
    )
  if (parts.unwritten) blocks.push(parts.unwritten)
  return blocks.filter((it) => it !== '').join('\n\n')
}

const answers = (call: Call | undefined): boolean => call?.results.some((it) => it.headline) ?? false

/** The figures that answer, first and bold: `**23 bags** (bags, bought together), for the corner and gate posts.` */
function headlineText(call: Call): string {
  const figures = call.results.filter((it) => it.headline)
  return figures
    .map((figure) => {
      const place = placeLabel(figure.at)
      if (figure.unit === 'verdict') return `**${capital(figure.text)}.**`
      // "12 pickets" says what it is; "23 bags, bought together" need not say bags again.
      const noun = figure.text.split(' ').at(-1) ?? ''
      const label = figure.text.endsWith(figure.label)
        ? ''
        : figure.label.startsWith(`${noun}, `)
          ? figure.label.slice(noun.length)
          : ` – ${figure.label}`
      return `**${figure.text}**${onTape(figure, call)}${label}${place ? `, for ${inPlace(figure.at)}` : ''}.`
    })
    .join('\n\n')
}

/** A length that no mark of the tape stands for, as the tape has it; not where another result says just that. */
const onTape = ({ byTape, at, ref }: Figure, call: Call): string =>
  !byTape || call.results.some((it) => it.ref !== ref && it.at === at && it.text === byTape.text)
    ? ''
    : ` (${byTape.text} by the tape)`

const resultLines = (call: Call): string =>
  call.results
    .filter((it) => !it.headline)
    .map(
      (it) =>
        `- ${capital(it.label)}${call.results.some((other) => other.at !== it.at) ? atPlace(it.at) : ''}: ${it.text}${onTape(it, call)}`,
    )
    .join('\n')

const remarksOf = (worked: Worked, call: Call): string[] => [
  ...(worked.outcome.ok ? worked.outcome.remarks : []),
  ...call.doubts.filter((it) => !it.ask).map((it) => it.message),
  ...call.doubts.filter((it) => it.ask && it.code !== 'missing').map((it) => it.message),
]

const takenAsUsual = ({ calculation, outcome }: Worked) =>
  !outcome.ok && outcome.problems.some((it) => it.code === 'missing')
    ? []
    : [...outcome.given]
        .filter(([, it]) => it.role === 'assumed')
        .map(([name, { value, roles, usual: taken }]) => {
          const word = vocabulary.get(name)
          const usual = taken ?? (word && usualFor(calculation, word))
          if (!word || !usual) throw new Error(`“${name}” was assumed and has no usual value`)
          return { name, word, value, roles, usual }
        })

const reasonOf = ({ because, from }: { because: string; from: string }) => ({ because, from: from.replace(/\.$/, '') })

const usualLines = (worked: Worked): string[] =>
  takenAsUsual(worked).map(({ word, value, roles, usual }) => {
    // Where one kind of post was told, only the others are taken as usual.
    const others = worked.places.filter((_, i) => roles?.[i] === 'assumed')
    const one = isList(value) ? value[roles?.indexOf('assumed') ?? 0] : value
    const text = isQuantity(one) ? show(one) : (word.options?.[String(one)]?.label ?? String(one))
    const { because, from } = reasonOf(usual)
    return `- ${capital(word.label)}${others.map(atPlace).join('')}: ${text}, since ${because} (${from}).`
  })

function workingLines(call: Call, where: string): string[] {
  if (call.steps.length === 0) return []
  return [
    `**${call.title}${where}**`,
    '',
    ...call.steps.map(
      (step) =>
        `- ${capital(step.because)}:\n  \`${step.formula}\`\n  = ${plain(step.substituted)}\n  = **${step.result}**`,
    ),
    '',
  ]
}

function tableLines(table: Call['tables'][number]): string[] {
  return [
    `| ${table.columns.map((it) => it.label).join(' | ')} |`,
    `|${table.columns.map(() => '---').join('|')}|`,
    ...table.rows.map(
      (row) =>
        `| ${row.map((cell) => (typeof cell === 'number' ? Math.round(cell * 1000) / 1000 : cell)).join(' | ')} |`,
    ),
  ]
}
