// This file is about measuring a reader on whole conversations: what share of its answers is right, wrong, or a question.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { type Assistant, createAssistant } from '../../../src/assistant.ts'
import { bounds } from '../../../src/evidence.ts'
import type { Turn } from '../../../src/answer.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { judge, type Judged, type Kind, type Verdict } from './judge.ts'
import { type Talk, talkSchema } from './question.ts'

/**
 * The second part was written apart from the others and is only counted; they are looked at when the reader is mended. The fourth holds nothing but talks of
 * strangers in which a turn was misread when they were held, so it shows what to mend, and not how well the reader reads.
 */
export const parts = ['first', 'second', 'third', 'fourth'] as const
export type Part = (typeof parts)[number]

export const talksOf = (folder: string, part: Part): Talk[] =>
  readdirSync(join(folder, part))
    .filter((it) => it.endsWith('.json'))
    .sort()
    .flatMap((it) => talkSchema.array().parse(JSON.parse(readFileSync(join(folder, part, it), 'utf8'))))

export interface Heard extends Judged {
  readonly talk: string
  readonly turn: number
  readonly said: string
  readonly ms: number
}

/** Plays every talk turn by turn with whoever reads, and judges each answer. */
export async function played(
  talks: readonly Talk[],
  assistant: Assistant = createAssistant(offlineReader),
): Promise<Heard[]> {
  const all: Heard[] = []
  for (const { talk, turns } of talks) {
    const before: Turn[] = []
    for (const [turn, { said, expect }] of turns.entries()) {
      const start = performance.now()
      const { answer, job } = await assistant.turn({ said, before })
      const ms = performance.now() - start
      before.push({ n: before.length, said, answer, job })
      const ways = [expect, ...(expect.or ? [expect.or] : [])].map((it) => judge(answer, it))
      const best = ways.find((it) => it.verdict === 'right') ?? (ways[0] as Judged)
      all.push({ ...best, talk, turn: turn + 1, said, ms })
    }
  }
  return all
}

/** How many of each kind came to each verdict. */
export const counted = (all: readonly Heard[]): Record<Kind, Record<Verdict, number>> => {
  const counts = {} as Record<Kind, Record<Verdict, number>>
  for (const { kind, verdict } of all) {
    counts[kind] ??= { right: 0, partly: 0, asked: 0, silent: 0, wrong: 0, void: 0 }
    counts[kind][verdict]++
  }
  return counts
}

export const percent = (part: number, of: number): string => `${((100 * part) / Math.max(1, of)).toFixed(1)} %`

/** The same in words, a line each. */
export function inWords(all: readonly Heard[]): string {
  const counts = counted(all)
  const lines = Object.entries(counts).map(([kind, each]) => {
    const of = Object.values(each).reduce((sum, it) => sum + it, 0)
    return `  ${kind}, ${of}: ${Object.entries(each)
      .filter(([, count]) => count > 0)
      .map(([verdict, count]) => `${verdict} ${percent(count, of)}`)
      .join(', ')}`
  })
  const sums = all.filter((it) => it.chosen !== undefined)
  const wrong = all.filter((it) => it.verdict === 'wrong').length
  return [
    ...lines,
    `  calculation chosen ${percent(sums.filter((it) => it.chosen).length, sums.length)}, arguments right ${percent(sums.filter((it) => it.argued).length, sums.length)}`,
    `  wrong in all ${percent(wrong, all.length)}, at most ${percent(bounds(wrong, all.length)[1], 1)} (95 %)`,
  ].join('\n')
}
