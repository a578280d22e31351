// This file is about the talk as text: what was asked and what was answered, in markdown, nothing left out.
import type { Turn } from '../answer.ts'

export interface Talk {
  readonly title: string
  readonly version: string
  readonly date: string
}

/** An answer's own sections are of the third rank, so each turn is of the second. */
export const talkInMarkdown = (turns: readonly Turn[], { title, version, date }: Talk): string =>
  `${[
    `# ${asText(title)}`,
    `${version.charAt(0).toUpperCase()}${version.slice(1)}, written out on ${date}.`,
    ...turns.flatMap((turn, i) => [`## ${i + 1}`, quoted(turn.said), turn.answer.reply]),
  ].join('\n\n')}\n`

/** What a person typed stays what they typed: no heading, list, rule, link, sign or tag comes of it. */
const asText = (text: string): string =>
  text
    .trim()
    .replace(/[\\`*_{}[\]<>#|~&]/g, (sign) => `\\${sign}`)
    .replace(/^[-+=]/, (sign) => `\\${sign}`)
    .replace(/^(\d+)([.)])/, '$1\\$2')
    .replace(/\s+/g, ' ')

const quoted = (said: string): string =>
  said
    .trim()
    .split('\n')
    .map((line) => `> ${asText(line)}`.trimEnd())
    .join('  \n')
