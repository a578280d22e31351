// The MCP server in memory, asked by the SDK's own client, which holds every structured result against the schema that the tool declared.
import { Client } from '@modelcontextprotocol/sdk/client/index.js'
import { InMemoryTransport } from '@modelcontextprotocol/sdk/inMemory.js'
import { ErrorCode, type McpError } from '@modelcontextprotocol/sdk/types.js'
import { beforeAll, describe, expect, it } from 'vitest'
import { calculationNamed, catalogue, vocabulary } from '../../../engine/catalogue.ts'
import { notes } from '../../../engine/notes/notes.ts'
import { type Figure, figureSchema } from '../../../src/answer.ts'
import type { Talks } from '../../../src/mcp/resources.ts'
import { createMcp } from '../../../src/mcp/server.ts'
import { createAssistant } from '../../../src/assistant.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { openStore } from '../../../src/store/open.ts'
import { promptsIn, toolsPrompt } from '../../../src/prompts.ts'
import { callsEveryTool, textOf } from './every-tool.ts'

const none: Talks = { list: async () => [], read: async () => null }
async function clientOf(talks: Talks): Promise<Client> {
  const server = await createMcp(talks)
  const client = new Client({ name: 'test', version: '1' })
  const [theirs, ours] = InMemoryTransport.createLinkedPair()
  await Promise.all([server.connect(ours), client.connect(theirs)])
  return client
}

let client: Client
beforeAll(async () => {
  client = await clientOf(none)
  // Lists the tools, and makes ready to hold their results against their schemas.
  await client.listTools()
}, 120_000)
/** As an example writes it: a choice by its option. */
const asWritten = ({ unit, value, text }: Figure): unknown => (unit === 'choice' ? value : text)
const call = (name: string, given: Record<string, unknown>) => client.callTool({ name, arguments: given })

describe('tools', () => {
  it('every calculation is one, and gives its example as structured figures that fit its schema', async () => {
    await callsEveryTool(client)
    for (const { name, examples } of catalogue) {
      for (const { given, expect: wanted } of examples) {
        const called = await call(name, { ...given })
        const results = (called.structuredContent as { results: Record<string, unknown> }).results
        const texts = Object.fromEntries(
          Object.keys(wanted).flatMap((word) =>
            results[word] === undefined ? [] : [[word, asWritten(figureSchema.parse(results[word]))]],
          ),
        )
        // A list stands in a table, and what hangs on an input that the example leaves to its usual value is not worked unasked.
        const told = Object.entries(wanted).filter(([word]) => word in texts)
        expect(texts, name).toEqual(Object.fromEntries(told))
        expect(Object.keys(results).length, name).toBeGreaterThan(0)
      }
    }
  }, 120_000)

  it('they change nothing, give the same for the same, and ask nobody', async () => {
    const { tools } = await client.listTools()
    expect(new Set(tools.map((it) => JSON.stringify(it.annotations)))).toEqual(
      new Set(['{"readOnlyHint":true,"destructiveHint":false,"idempotentHint":true,"openWorldHint":false}']),
    )
    expect(tools.filter((it) => !it.title || !it.description || !it.outputSchema)).toEqual([])
    expect([await call('post-depth', { postAbove: '4 ft' }), await call('post-depth', { postAbove: '4 ft' })]).toEqual(
      Array(2).fill(await call('post-depth', { postAbove: '4 ft' })),
    )
  })

  it('the text stands by itself: figures, how they were worked, what was taken as usual, cautions', async () => {
    const text = textOf(await call('post-depth', { postAbove: '4 ft', stoneDepth: '6 in' }))
    // Half of the 4 ft above is 24 in; 6 in of stone make 30 in.
    for (const part of ['**24 in**', '30 in', 'depthByRule = postAbove / 2', '“4 ft”', '### Take care', 'US 811'])
      expect(text).toContain(part)
  })

  it('every answer carries the three cautions that always stand, and so does every refusal', async () => {
    for (const { name, examples } of catalogue)
      for (const given of [{ ...examples[0]?.given }, {}]) {
        const { cautions } = (await call(name, given)).structuredContent as {
          cautions: { code: string; text: string }[]
        }
        expect(cautions.map((it) => it.code)).toEqual(expect.arrayContaining(['utilities', 'lot-line', 'local-code']))
      }
  }, 60_000)
})

describe('bad input', () => {
  it('is a tool error that names the input and says what to change', async () => {
    for (const [given, word, says] of [
      [{ opening: '93 in' }, 'picketWidth', 'How wide is a picket'],
      [{ opening: '93 bananas', picketWidth: '3 in', widestGap: '2 in' }, 'opening', 'cannot read'],
      [
        { opening: '12 in', picketWidth: '13 in', widestGap: '2 in', confirmed: ['picketWidth'] },
        'opening',
        'does not fit',
      ],
      [{ opening: '93 in', picketWidth: '3 in', widestGap: '2 in', gapp: '1 in' }, 'gapp', 'Its inputs are'],
      [{ opening: { a: 1 }, picketWidth: '3 in', widestGap: '2 in' }, 'opening', 'cannot read'],
      [{ opening: '93 in', picketWidth: '3 ft', widestGap: '2 in' }, 'picketWidth', 'really 3 ft.*confirmed'],
    ] as const) {
      const called = await call('picket-spacing', given)
      expect(called.isError).toBe(true)
      expect(textOf(called)).toMatch(new RegExp(`^- \`${word}\` \\(\\w+\\): .*${says}`, 'm'))
      expect(called.structuredContent).toMatchObject({
        results: {},
        problems: expect.arrayContaining([expect.objectContaining({ word })]),
      })
    }
  })

  it('an odd value is worked once it was confirmed, and only then', async () => {
    const odd = { opening: '93 in', picketWidth: '2 ft', widestGap: '12 in' }
    expect((await call('picket-spacing', odd)).isError).toBe(true)
    const meant = await call('picket-spacing', { ...odd, confirmed: ['picketWidth', 'widestGap'] })
    // (93 − 12) / (24 + 12) = 2 1/4, so 3 pickets.
    expect([meant.isError, textOf(meant)]).toEqual([false, expect.stringContaining('**3 pickets**')])
  })

  it('every tool without anything asks for what it needs, and never breaks', async () => {
    for (const { name } of catalogue) {
      const called = await call(name, {})
      const { problems, results } = called.structuredContent as { problems: object[]; results: object }
      expect([name, called.isError]).toEqual([name, problems.length > 0])
      expect([name, Object.keys(results).length > 0]).toEqual([name, problems.length === 0])
    }
  }, 60_000)

  it('a tool, a resource and a prompt that are not there are refused by name', async () => {
    await expect(call('picket-spacin', {})).rejects.toMatchObject({
      code: ErrorCode.InvalidParams,
      message: expect.stringContaining('There is no tool “picket-spacin”'),
    })
    for (const uri of [
      'plumbpost://notes/none',
      'plumbpost://words/constructor',
      'plumbpost://job-sheets/1',
      'file:///x',
      'plumbpost://notes/%',
    ])
      await expect(client.readResource({ uri })).rejects.toMatchObject({ code: -32002 } satisfies Partial<McpError>)
    await expect(client.getPrompt({ name: 'constructor' })).rejects.toMatchObject({ code: ErrorCode.InvalidParams })
  })
})

describe('what can be read', () => {
  it('every note and the vocabulary are listed and can be read', async () => {
    const { resources } = await client.listResources()
    expect(resources).toHaveLength(1 + notes.length)
    for (const { uri, mimeType } of resources) {
      const [contents] = (await client.readResource({ uri })).contents
      const text = contents && 'text' in contents ? contents.text : ''
      expect([uri, contents?.mimeType]).toEqual([uri, mimeType])
      if (mimeType === 'application/json') expect(JSON.parse(text)).toHaveLength(vocabulary.size)
      else expect(text).toContain('## Take care')
    }
  })

  it('a word says how it is measured and what is usual', async () => {
    const [contents] = (await client.readResource({ uri: 'plumbpost://words/opening' })).contents
    expect(JSON.parse(contents && 'text' in contents ? contents.text : '')).toMatchObject({
      word: 'opening',
      kind: 'length',
      measure: expect.stringContaining('post face to post face'),
    })
  })

  it('a talk has its job sheet, as it stands', async () => {
    const store = await openStore({ memory: true })
    const { id } = await store.create()
    const said = 'How deep do I set posts for a 4 ft fence with 6 in of gravel?'
    const { answer, job } = await createAssistant(offlineReader).turn({ said, before: [] })
    await store.append(id, { n: 0, said, answer, job, key: null, events: [] }, 0)
    const theirs = await clientOf(store)
    const sheet = (await theirs.listResources()).resources.find((it) => it.uri.includes('job-sheets'))
    const [contents] = (await theirs.readResource({ uri: sheet?.uri ?? '' })).contents
    expect(JSON.parse(contents && 'text' in contents ? contents.text : '')).toEqual(
      expect.arrayContaining([
        expect.objectContaining({ word: 'postAbove', text: '4 ft', from: 'said' }),
        expect.objectContaining({ word: 'holeDepth', text: '30 in', from: 'worked' }),
      ]),
    )
    await store.close()
  })
})

describe('planning prompts', () => {
  it('hold no figure, and name only tools that there are', () => {
    for (const text of [toolsPrompt(), ...Object.values(promptsIn('planning'))]) {
      expect(text).not.toMatch(/\d/)
      const named = [...text.matchAll(/`([^`]+)`/g)].map(([, name]) => name as string)
      expect(named.filter((name) => !calculationNamed(name))).toEqual([])
    }
    expect(Object.keys(promptsIn('planning')).length).toBeGreaterThan(3)
  })

  it('are listed, and said with what is known', async () => {
    const { prompts } = await client.listPrompts()
    for (const { name, title, description } of prompts) {
      expect([title, description]).toEqual([expect.stringMatching(/^\w.*\w$/), expect.stringMatching(/\.$/)])
      const known = 'the front is $& 40 ft'
      const { messages } = await client.getPrompt({ name, arguments: { known } })
      expect(JSON.stringify(messages)).toContain(known)
      expect(JSON.stringify((await client.getPrompt({ name })).messages)).toContain('nothing yet')
    }
  })
})
