// Answers put together from events, each in a manner that some server has.
import { describe, expect, test } from 'vitest'
import { createAssembly } from '../../../../src/readers/model/assemble.ts'
import { tools } from './fake-server.ts'

const offered = new Map(tools.map((tool) => [tool.name, tool.parameters]))

function heard(...deltas: readonly Record<string, unknown>[]) {
  const assembly = createAssembly(offered)
  for (const delta of deltas) assembly.take({ choices: [{ index: 0, delta, finish_reason: null }] })
  assembly.take({ choices: [{ index: 0, delta: {}, finish_reason: 'stop' }] })
  return assembly
}
const calls = (...deltas: readonly Record<string, unknown>[]) =>
  heard(...deltas)
    .spoken()
    .calls.map(({ name, args, state }) => ({ name, args, state }))
const piece = (name: string | undefined, args: unknown, fields: Record<string, unknown> = {}) => ({
  tool_calls: [{ ...fields, function: { ...(name === undefined ? {} : { name }), arguments: args } }],
})

const layout = { name: 'layout', args: { length: '96 ft' }, state: 'ok' }
const depth = { name: 'hole_depth', args: { soil: 'clay' }, state: 'ok' }
const layoutArgs = '{"length":"96 ft"}'
const depthArgs = '{"soil":"clay"}'

describe('pieces of calls', () => {
  test('with a name on every piece are one call with the name once', () => {
    expect(
      calls(piece('layout', '{"length":', { index: 0, id: 'a' }), piece('layout', '"96 ft"}', { index: 0, id: 'a' })),
    ).toEqual([layout])
    expect(calls(piece('layout', '{"length":'), piece('layout', '"96 ft"}'))).toEqual([layout])
  })

  test('that come in turns find their call by index', () => {
    expect(
      calls(
        piece('layout', '', { index: 0, id: 'a' }),
        piece('hole_depth', '', { index: 1, id: 'b' }),
        piece(undefined, '{"length":', { index: 0 }),
        piece(undefined, '{"soil":', { index: 1 }),
        piece(undefined, '"96 ft"}', { index: 0 }),
        piece(undefined, '"clay"}', { index: 1 }),
      ),
    ).toEqual([layout, depth])
  })

  test('with neither id nor index are told apart by their names and by whole arguments', () => {
    expect(calls(piece('layout', layoutArgs), piece('hole_depth', depthArgs))).toEqual([layout, depth])
    expect(
      calls({
        tool_calls: [
          { function: { name: 'layout', arguments: layoutArgs } },
          { function: { name: 'hole_depth', arguments: depthArgs } },
        ],
      }),
    ).toEqual([layout, depth])
    expect(
      calls({
        tool_calls: [
          { function: { name: 'hole_depth', arguments: '' } },
          { function: { name: 'hole_depth', arguments: '' } },
        ],
      }),
    ).toHaveLength(2)
  })

  test('that hold one whole object after another are two calls', () => {
    const second = { name: 'layout', args: { length: '12 ft' }, state: 'ok' }
    expect(calls(piece('layout', `${layoutArgs}{"length":"12 ft"}`, { index: 0, id: 'a' }))).toEqual([layout, second])
    expect(
      calls(
        piece('layout', layoutArgs, { index: 0, id: 'a' }),
        piece(undefined, '{"len', { index: 0 }),
        piece(undefined, 'gth":"12 ft"}', { index: 0 }),
      ),
    ).toEqual([layout, second])
    expect(calls(piece('layout', layoutArgs, { index: 0 }), piece('hole_depth', depthArgs, { index: 0 }))).toEqual([
      layout,
      depth,
    ])
  })

  test('under a new id on a taken index are a second call, also where the first has no arguments', () => {
    expect(
      calls(piece('hole_depth', '', { index: 0, id: 'a' }), piece('layout', layoutArgs, { index: 0, id: 'b' })),
    ).toEqual([{ name: 'hole_depth', args: {}, state: 'ok' }, layout])
  })

  test('whose id comes late, or is another every time, are still one call', () => {
    expect(calls(piece('layout', '', { index: 0 }), piece(undefined, layoutArgs, { index: 0, id: 'late' }))).toEqual([
      layout,
    ])
    expect(
      calls(piece('layout', '{"length":', { index: 0, id: 'x' }), piece(undefined, '"96 ft"}', { index: 0, id: 'y' })),
    ).toEqual([layout])
  })

  test('that repeat the whole call at the end, or hold its place with an empty object, are one call', () => {
    expect(
      calls(piece('layout', layoutArgs, { index: 0, id: 'a' }), piece('layout', layoutArgs, { index: 0, id: 'a' })),
    ).toEqual([layout])
    expect(
      calls(
        piece('layout', {}, { index: 0, id: 'a' }),
        piece(undefined, '{"length":', { index: 0 }),
        piece(undefined, '"96 ft"}', { index: 0 }),
      ),
    ).toEqual([layout])
  })

  test('under one id for several calls are told apart by index', () => {
    const same = { id: 'x' }
    expect(
      calls(
        piece('layout', '', { ...same, index: 0 }),
        piece('hole_depth', '', { ...same, index: 1 }),
        piece(undefined, layoutArgs, { ...same, index: 0 }),
        piece(undefined, depthArgs, { ...same, index: 1 }),
      ),
    ).toEqual([layout, depth])
  })

  test('with an index of null, or as text, are read', () => {
    expect(
      calls(piece('layout', '{"length":', { index: '0', id: null }), piece(undefined, '"96 ft"}', { index: '0' })),
    ).toEqual([layout])
    expect(
      calls(piece('layout', '{"length":', { index: null, id: null }), piece(undefined, '"96 ft"}', { index: null })),
    ).toEqual([layout])
  })
})

describe('arguments', () => {
  test.each<[unknown, unknown, string]>([
    ['', {}, 'ok'],
    [null, {}, 'ok'],
    ['null', {}, 'ok'],
    ['[]', {}, 'ok'],
    ['"{\\"length\\":\\"96 ft\\"}"', { length: '96 ft' }, 'ok'],
    [' {"length":"96 ft"}\n', { length: '96 ft' }, 'ok'],
    ['[1]', null, 'bad-json'],
    ['96 ft', null, 'bad-json'],
    ['{"length":"96 ft"}}', null, 'bad-json'],
    ['{"length":"}', null, 'truncated'],
    ['{"length":"96 ft"', null, 'truncated'],
  ])('%j are %j, %s', (written, args, state) => {
    expect(calls(piece('layout', written, { index: 0, id: 'a' }))).toEqual([{ name: 'layout', args, state }])
  })

  test.each(['functions.layout', 'functions.layout:0', 'default_api.layout', 'layout<|channel|>json', ' layout '])(
    'are for the tool that “%s” names',
    (name) => {
      expect(calls(piece(name, layoutArgs))).toEqual([layout])
    },
  )

  test('for a tool that is only nearly named are not used', () => {
    expect(calls(piece('Layout', layoutArgs))).toEqual([{ name: 'Layout', args: null, state: 'unknown-tool' }])
  })
})

describe('what stands beside the words', () => {
  test('thoughts come in fields of several names, or in the text, and are kept apart', () => {
    for (const delta of [
      { reasoning: 'plan' },
      { reasoning_content: 'plan', reasoning: 'plan' },
      { content: '<think>plan</think>' },
    ]) {
      expect(heard(delta, { content: 'Hi' }).spoken()).toMatchObject({ text: 'Hi', reasoning: 'plan' })
    }
  })

  test('unknown fields of the answer and of a call are kept', () => {
    const spoken = heard(
      { reasoning_content: 'pl' },
      { reasoning_content: 'an', audio: null },
      piece('layout', layoutArgs, { id: 'a', extra_content: { signature: 'x' } }),
    ).spoken()
    expect(spoken.kept).toEqual({ reasoning_content: 'plan' })
    expect(spoken.calls[0]?.kept).toEqual({ extra_content: { signature: 'x' } })
  })

  test('a second choice, an empty delta, a null in its place and events of no known form are passed over', () => {
    const assembly = heard({ content: 'Hi' })
    for (const event of [
      null,
      'x',
      [],
      {},
      { choices: null },
      { choices: [{ index: 0, delta: null }] },
      { choices: [{ index: 1, delta: { content: 'other' } }] },
    ])
      assembly.take(event)
    expect(assembly.spoken()).toMatchObject({ text: 'Hi', finish: 'stop' })
    expect(assembly.failure()).toBeUndefined()
  })

  test('a whole message that ends a stream repeats nothing', () => {
    const assembly = heard({ content: 'Hi' })
    assembly.take({ choices: [{ index: 0, message: { role: 'assistant', content: 'Hi' }, finish_reason: 'stop' }] })
    expect(assembly.spoken().text).toBe('Hi')
  })

  test('an error is found wherever it stands, and an empty one is none', () => {
    for (const event of [
      { error: 'gone' },
      { error: { message: 'gone' } },
      { choices: [{ index: 0, delta: {}, finish_reason: 'error' }] },
      { choices: [{ index: 0, delta: { error: { message: 'gone' } } }] },
      { object: 'error', message: 'gone' },
    ]) {
      const assembly = createAssembly(offered)
      assembly.take(event)
      expect(assembly.failure(), JSON.stringify(event)).toBeDefined()
    }
    const assembly = createAssembly(offered)
    assembly.take({ error: null, choices: [{ index: 0, delta: { content: 'Hi', error: '' }, error: {} }] })
    expect(assembly.failure()).toBeUndefined()
  })

  test('with trouble, no call may be run', () => {
    expect(heard(piece('layout', layoutArgs)).spoken('cut')).toMatchObject({
      finish: 'failed',
      error: 'cut',
      calls: [{ name: 'layout', args: null, state: 'truncated' }],
    })
  })
})
