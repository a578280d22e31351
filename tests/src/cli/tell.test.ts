// A turn told in the terminal while it is made: what is written, and when.
import { describe, expect, it } from 'vitest'
import { createAssistant, type Writer, type Written } from '../../../src/assistant.ts'
import { tell } from '../../../src/cli/tell.ts'
import { inTerminal, lookFor } from '../../../src/cli/terminal.ts'
import { offlineReader, readOffline } from '../../../src/readers/offline/offline.ts'
import type { Reader } from '../../../src/readers/reader.ts'

// (π/4 × 144 − 12.25) × 24 / 1728 = 1.40066 ft³ × 4 = 5.6026; / 0.6 = 9.34 → 10
const said = 'Four posts in holes 12 in wide and 24 in deep, 80 lb bags. How many bags?'
const sentences = 'Buy 10 bags *together*, and keep them dry.'
const asModel: Reader = { front: 'model', read: async (heard) => ({ request: readOffline(heard), by: 'model' }) }

/** What is written, and how much of it had been when the model began to write. */
async function told(reader: Reader, prose: Written, isTTY: boolean) {
  const written: string[] = []
  let writtenBefore = -1
  const writer: Writer = async () => {
    writtenBefore = written.length
    return prose
  }
  const output = { isTTY, columns: 80, write: (text: string) => written.push(text) }
  const { answer } = await tell(createAssistant(reader, writer), { said, before: [] }, output, { NO_COLOR: '1' })
  return { answer, written, writtenBefore, whole: `${inTerminal(said, answer, lookFor(output, { NO_COLOR: '1' }))}\n` }
}

describe('a turn with a model, in a terminal', () => {
  it('has its card, figures and cautions, written before the model begins to write, and the sentences after it', async () => {
    const { answer, written, writtenBefore } = await told(asModel, sentences, true)
    expect(writtenBefore).toBe(1)
    const [card = '', ...others] = written
    expect(card).toMatch(/^> Four posts/)
    expect(card).toContain('10 bags')
    for (const { text } of answer.cautions) expect(card.replace(/\s/g, '')).toContain(text.replace(/\s/g, ''))
    expect(card).not.toContain('keep them dry')
    expect(others).toEqual(['Buy 10 bags together, and keep them dry.\n\n'])
  })

  it('is the card alone where no sentence stands', async () => {
    const { written, whole } = await told(asModel, '', true)
    expect(written).toEqual([whole])
  })
})

describe('a turn whose model fails while it writes', () => {
  const unwritten = 'The server at http://model.test/v1 failed while answering.'

  it('has its card, and then why there is no more', async () => {
    const { written } = await told(asModel, { unwritten }, true)
    expect(written).toHaveLength(2)
    expect(written[0]).toContain('10 bags')
    expect(written[1]).toBe(`${unwritten}\n\n`)
  })

  it('says so in the one piece that is piped', async () => {
    const { written } = await told(asModel, { unwritten }, false)
    expect(written).toHaveLength(1)
    expect(written[0]).toContain(unwritten)
  })
})

describe('a turn that is piped, or has no model', () => {
  it('is written in one piece when all is there', async () => {
    const piped = await told(asModel, sentences, false)
    expect([piped.writtenBefore, piped.written]).toEqual([0, [piped.whole]])
    expect(piped.whole).toContain('keep them dry')
    const offline = await told(offlineReader, sentences, true)
    expect([offline.writtenBefore, offline.written]).toEqual([-1, [offline.whole]])
  })
})
