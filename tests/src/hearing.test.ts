import { describe, expect, it } from 'vitest'
import type { Turn } from '../../src/answer.ts'
import { createAssistant } from '../../src/assistant.ts'
import { audit } from '../../src/audit.ts'
import { exportConversation, exportSchema } from '../../src/export/export.ts'
import { hear, hearSince, jobAfter, unansweredBefore } from '../../src/hearing.ts'
import { offlineReader } from '../../src/readers/offline/offline.ts'
import { results } from './talk.ts'

async function turnsOf(messages: readonly string[]): Promise<Turn[]> {
  const assistant = createAssistant(offlineReader)
  const turns: Turn[] = []
  for (const said of messages) {
    const { answer, job } = await assistant.turn({ said, before: turns })
    turns.push({ n: turns.length, said, answer, job: JSON.parse(JSON.stringify(job)) })
  }
  return turns
}

const inPieces = [
  'the ground drops away about 600 over the run and i would step it. how big is each step',
  'the run is 12 metres',
  'bays of 2 m at most',
]

describe('a question said in pieces', () => {
  it('is read as one where its last message alone gives no figure', async () => {
    // 12 m in bays of 2 m is 6 bays, and 600 mm in 6 steps is 100 mm each. Alone, “600” has no unit until the metres come.
    const turns = await turnsOf(inPieces)
    const last = turns.at(-1)
    expect(results(last?.answer).stepEach).toBe('100 mm')
    expect(last?.answer.heard.since).toBe(0)
    expect(last?.answer.reply).toContain('I took this together with what you said just before.')
  })

  it('stands the audit, which reads the same messages as one', async () => {
    const turns = await turnsOf(inPieces)
    const exported = exportConversation(turns, { id: 'steps', title: 'steps', created: '2026-01-01T00:00:00.000Z' })
    expect(await audit(exportSchema.parse(JSON.parse(JSON.stringify(exported))))).toEqual([])
  })

  it('keeps to what the message says alone where that is answered', async () => {
    const turns = await turnsOf(['19 holes, 45 minutes each', 'how many hours of digging is that'])
    // 19 × 45 min = 855 min = 14 1/4 h
    expect(results(turns[1]?.answer).diggingTime).toBe('14.25 hours')
    expect(turns[1]?.answer.heard.since).toBeUndefined()
  })
})

describe('where a question may have begun', () => {
  const begins = (turns: readonly Turn[], said: string): number[] =>
    unansweredBefore(turns, hear(said, jobAfter(turns)))

  it('is any of the last turns without a figure, the nearest first', async () => {
    const turns = await turnsOf(inPieces.slice(0, 2))
    expect(begins(turns, 'bays of 2 m at most')).toEqual([1, 0])
    expect(hearSince(0, turns, 'bays of 2 m at most').said).toBe(
      'the ground drops away about 600 over the run and i would step it. how big is each step. the run is 12 metres. bays of 2 m at most',
    )
  })

  it('is nowhere before what takes back, says a quantity again, or comes after an answer', async () => {
    const turns = await turnsOf(inPieces.slice(0, 2))
    expect(begins(turns, 'undo that, bays of 2 m')).toEqual([])
    expect(begins(turns, 'as I said, 12 metres of run')).toEqual([])
    expect(begins(await turnsOf(inPieces), 'and with bays of 1.5 m')).toEqual([])
  })

  it('is no message that itself goes on with something', async () => {
    const turns = await turnsOf(['the ground falls 600, how much is each step', 'and the run is 12 metres'])
    expect(begins(turns, 'bays of 2 m at most')).toEqual([0])
  })
})
