// Recorded conversations are read from their words and worked again; every figure, step, table and line must come out the same.
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { audit } from '../src/audit.ts'
import { exportSchema } from '../src/export/export.ts'

const folder = new URL('../transcripts-demo/', import.meta.url)
const files = readdirSync(folder).filter((name) => name.endsWith('.json'))
const read = (name: string) => exportSchema.parse(JSON.parse(readFileSync(new URL(name, folder), 'utf8')))

describe('recorded conversations', () => {
  it('there are at least four', () => expect(files.length).toBeGreaterThanOrEqual(4))

  it.each(files)('%s comes out the same, figure by figure', async (name) => {
    expect(await audit(read(name))).toEqual([])
  })

  it.each(files)('%s carries the three standing cautions in every answer', (name) => {
    for (const { answer } of read(name).turns) {
      expect(answer.cautions.map((it) => it.code)).toEqual(
        expect.arrayContaining(['utilities', 'lot-line', 'local-code']),
      )
      for (const { text } of answer.cautions) expect(answer.reply).toContain(text)
    }
  })

  it('cover bags for corner posts, dry enough to finish, and spacing on an odd bay', () => {
    const answered = files.flatMap((name) =>
      read(name).turns.flatMap((turn) =>
        turn.answer.calls.flatMap((call) =>
          call.results.filter((it) => it.headline).map((it) => `${it.word}@${it.at}`),
        ),
      ),
    )
    expect(answered.some((it) => it.startsWith('bags@corner-posts'))).toBe(true)
    expect(answered).toContain('dryEnough@yard')
    expect(answered).toContain('tapeGap@yard')
  })
})
