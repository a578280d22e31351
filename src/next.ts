// This file is about what the job still waits for, as the job sheet lists it.
import { newMemo, openQuestions, systemOf } from '../engine/index.ts'
import type { Turn } from './answer.ts'
import { jobAfter } from './hearing.ts'

export type Open = ReturnType<typeof openIn>['open'][number]

/** The units that the talk is in, and what is open. Of a fence that is told, each question that something waits for; else what the last answer asked for. */
export function openIn(turns: readonly Turn[]) {
  const job = jobAfter(turns)
  const open = openQuestions(job, newMemo(), turns.length)
  const asked = (turns.at(-1)?.answer.asks ?? []).map((it) => ({ ...it, waits: [] as readonly string[] }))
  return { units: systemOf(job), open: open.length > 0 ? open : asked }
}
