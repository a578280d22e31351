// This file is about what other programs may read: the notes, the vocabulary, and the job sheet of each talk.
import type { Resource, ResourceTemplate, TextResourceContents } from '@modelcontextprotocol/sdk/types.js'
import { noteNamed, notes, showNote, vocabulary, type Word } from '../../engine/index.ts'
import { cautionsFor } from '../guard/cautions.ts'
import { jobSheet } from '../sheet.ts'
import type { Store } from '../store/store.ts'

/** The talks that whoever asks may see. */
export type Talks = Pick<Store, 'list' | 'read'>

const json = 'application/json'
const markdown = 'text/markdown'
const vocabularyUri = 'plumbpost://words'

export const templates: readonly ResourceTemplate[] = [
  {
    uriTemplate: 'plumbpost://words/{word}',
    name: 'word',
    title: 'One word of the vocabulary',
    description: 'Its kind, how to measure it, the question that asks for it, its usual value and why.',
    mimeType: json,
  },
  {
    uriTemplate: 'plumbpost://notes/{note}',
    name: 'note',
    title: 'A note',
    description: 'Advice that no sum settles, with its source and its cautions.',
    mimeType: markdown,
  },
  {
    uriTemplate: 'plumbpost://job-sheets/{conversation}',
    name: 'job-sheet',
    title: 'The job sheet of a talk',
    description: 'Every word that is known there, with its value and who said it.',
    mimeType: json,
  },
]

/** Everything that can be read, the job sheets of the newest talks last. */
export async function resources(talks: Talks): Promise<Resource[]> {
  const talked = (await talks.list()).filter((it) => it.turns > 0)
  return [
    {
      uri: vocabularyUri,
      name: 'words',
      title: 'The vocabulary',
      description: 'Every word that a calculation needs or gives, each with one meaning.',
      mimeType: json,
    },
    ...notes.map(({ name, title }) => ({
      uri: `plumbpost://notes/${name}`,
      name: `note ${name}`,
      title,
      mimeType: markdown,
    })),
    ...talked.map(({ id, title }) => ({
      uri: `plumbpost://job-sheets/${encodeURIComponent(id)}`,
      name: `job sheet ${id}`,
      title: `Job sheet: ${title}`,
      mimeType: json,
    })),
  ]
}

/** What stands at an address; undefined where nothing does. */
export async function readResource(uri: string, talks: Talks): Promise<TextResourceContents | undefined> {
  if (uri === vocabularyUri)
    return { uri, mimeType: json, text: JSON.stringify([...vocabulary.values()].map(wordTold), null, 1) }
  const [, kind, name] = /^plumbpost:\/\/(words|notes|job-sheets)\/([^/?#]+)$/.exec(uri) ?? []
  const wanted = decoded(name ?? '')
  if (kind === 'words') {
    const word = vocabulary.get(wanted)
    return word && { uri, mimeType: json, text: JSON.stringify(wordTold(word), null, 1) }
  }
  if (kind === 'notes') {
    const text = noteTold(wanted)
    return text === undefined ? undefined : { uri, mimeType: markdown, text }
  }
  if (kind !== 'job-sheets') return undefined
  const talk = await talks.read(wanted)
  return talk ? { uri, mimeType: json, text: JSON.stringify(jobSheet(talk.turns), null, 1) } : undefined
}

function decoded(part: string): string {
  try {
    return decodeURIComponent(part)
  } catch {
    return part
  }
}

const wordTold = ({ name, label, kind, measure, ask, usual, options, list, unsaid }: Word): object => ({
  word: name,
  label,
  kind,
  measure,
  ask,
  ...(usual ? { usual } : {}),
  ...(options ? { options: Object.fromEntries(Object.entries(options).map(([key, it]) => [key, it.label])) } : {}),
  ...(list ? { list } : {}),
  ...(unsaid ? { unsaid } : {}),
})

/** The note in the units of both tapes where they differ, with the cautions that it calls for. */
function noteTold(name: string): string | undefined {
  const note = noteNamed(name)
  if (!note) return undefined
  const [imperial, metric] = [showNote(note, 'imperial').text, showNote(note, 'metric').text]
  const cautions = cautionsFor({ full: note.cautions, alreadyTold: [] })
  return [
    `# ${note.title}`,
    imperial,
    ...(metric === imperial ? [] : [`By a metric tape: ${metric}`]),
    `From: ${note.from}`,
    `## Take care\n\n${cautions.map((it) => `- ${it.text}`).join('\n')}`,
  ].join('\n\n')
}
