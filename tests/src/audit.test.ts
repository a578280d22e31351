import { beforeAll, describe, expect, it } from 'vitest'
import type { Turn } from '../../src/answer.ts'
import { createAssistant } from '../../src/assistant.ts'
import { audit } from '../../src/audit.ts'
import { type Exported, exportConversation, exportSchema } from '../../src/export/export.ts'
import { offlineReader } from '../../src/readers/offline/offline.ts'

let exported: Exported
const copy = (): Exported => structuredClone(exported)

beforeAll(async () => {
  const assistant = createAssistant(offlineReader)
  const turns: Turn[] = []
  for (const said of [
    'How many 60 lb bags, 0.45 ft3 each, for eleven corner and gate posts, 10 in holes 30 in deep, 6 in of gravel in the bottom?',
    'and if the holes are 12 inches?',
    'What spacing for a 70 5/8 in bay with 3 1/2 in pickets and gaps at most 2 1/2 in?',
  ]) {
    const { answer, job } = await assistant.turn({ said, before: turns })
    turns.push({ n: turns.length, said, answer, job })
  }
  exported = exportSchema.parse(
    JSON.parse(
      JSON.stringify(exportConversation(turns, { id: 'one', title: 'bags', created: '2026-01-01T00:00:00.000Z' })),
    ),
  )
})

const named = async (tampered: Exported): Promise<string[]> =>
  (await audit(tampered)).map((it) => `turn ${it.turn}: ${it.what}: ${it.exported} → ${it.worked}`)

describe('the audit', () => {
  it('finds no difference in an export as it came', async () => {
    expect(await audit(copy())).toEqual([])
  })

  it('names a worked figure that was changed, and only that one', async () => {
    const tampered = copy()
    const bags = tampered.turns[0]?.answer.calls.flatMap((call) => call.results).find((it) => it.word === 'bags')
    if (!bags) throw new Error('no bags')
    bags.value = 25
    bags.text = '25 bags'
    const differences = await named(tampered)
    expect(differences).toHaveLength(1)
    expect(differences[0]).toMatch(/turn 0: r\d\.bags \(bags, bought together, worked\): 25 bags → 23 bags/)
  })

  it('names a value that was changed behind an unchanged text', async () => {
    const tampered = copy()
    const bags = tampered.turns[0]?.answer.figures.find((it) => it.word === 'bags')
    if (!bags) throw new Error('no bags')
    bags.value = 22
    expect((await named(tampered)).join()).toContain('value 22')
  })

  it('blames words that were changed where they were changed: the quantity no longer reads as the figure', async () => {
    const tampered = copy()
    const turn = tampered.turns[0]
    if (!turn) throw new Error('no turn')
    turn.said = turn.said.replace('30 in deep', '36 in deep')
    const differences = await named(tampered)
    expect(differences[0]).toMatch(/turn 0: u\d \(hole depth, said\): 30 in → 36 in/)
    expect(differences.every((it) => it.startsWith('turn 0') || it.startsWith('turn 1'))).toBe(true)
  })

  it('names a said figure that was changed, and leaves the worked ones unblamed', async () => {
    const tampered = copy()
    const said = tampered.turns[0]?.answer.readAs.find((it) => it.figure.word === 'holeDepth')
    if (!said) throw new Error('no depth')
    said.figure.value = 36
    said.figure.text = '36 in'
    const differences = await named(tampered)
    expect(differences).toHaveLength(1)
    expect(differences[0]).toMatch(/hole depth, said\): 36 in → 30 in/)
  })

  it.each([
    [
      'a step',
      (it: Exported) => {
        const step = it.turns[0]?.answer.calls[0]?.steps[0]
        if (step) step.result = '25 in'
      },
      'steps',
    ],
    [
      'a running mark',
      (it: Exported) => {
        const row = it.turns[2]?.answer.calls[0]?.tables[0]?.rows[3]
        if (row) row[1] = '20'
      },
      'tables',
    ],
    [
      'a line of the reply',
      (it: Exported) => {
        const answer = it.turns[1]?.answer
        if (answer) answer.reply = answer.reply.replace('35 bags', '34 bags')
      },
      'reply, line',
    ],
    [
      'a caution',
      (it: Exported) => {
        const answer = it.turns[0]?.answer
        if (answer) answer.cautions = answer.cautions.filter((c) => c.code !== 'utilities')
      },
      'cautions',
    ],
    [
      'the drawing',
      (it: Exported) => {
        const call = it.turns[2]?.answer.calls[0]
        if (call) call.drawing = '<svg></svg>'
      },
      'drawing',
    ],
    [
      'a number in a model’s sentence',
      (it: Exported) => {
        const answer = it.turns[0]?.answer
        if (answer) answer.prose = 'You need 99 bags.'
      },
      'prose',
    ],
    [
      'a number in words in a model’s sentence',
      (it: Exported) => {
        const answer = it.turns[0]?.answer
        if (answer) answer.prose = 'You need ninety bags.'
      },
      'prose',
    ],
    [
      'a sentence against a caution',
      (it: Exported) => {
        const answer = it.turns[0]?.answer
        if (answer) answer.prose = 'There is no need to call before you dig.'
      },
      'prose',
    ],
  ])('names %s that was changed', async (_, change, where) => {
    const tampered = copy()
    change(tampered)
    const differences = await audit(tampered)
    expect(differences.length).toBeGreaterThan(0)
    expect(differences.some((it) => it.what.includes(where))).toBe(true)
  })
})
