import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readArguments } from '../../../../src/readers/model/arguments.ts'
import { readText, safeToShow } from '../../../../src/readers/model/text-calls.ts'
import { tools } from './fake-server.ts'

const offered = new Map(tools.map((tool) => [tool.name, tool.parameters]))
const understood = (content: string) => {
  const { text, reasoning, calls } = readText(content, offered)
  return { text, reasoning, calls: calls.map(({ name, raw }) => ({ name, ...readArguments(raw) })) }
}
const layout = { name: 'layout', args: { length: '96 ft' }, state: 'ok' }
const depth = { name: 'hole_depth', args: { soil: 'clay' }, state: 'ok' }

const dialects: readonly (readonly [string, string])[] = [
  ['JSON between tags', '<tool_call>\n{"name": "layout", "arguments": {"length": "96 ft"}}\n</tool_call>'],
  ['JSON after a tag that is never closed', '<tool_call>{"name": "layout", "arguments": {"length": "96 ft"}}'],
  [
    'arguments as a JSON string',
    '<tool_call>{"name": "layout", "arguments": "{\\"length\\": \\"96 ft\\"}"}</tool_call>',
  ],
  [
    'function and parameter tags',
    '<tool_call>\n<function=layout>\n<parameter=length>\n96 ft\n</parameter>\n</function>\n</tool_call>',
  ],
  ['JSON in a function tag', '<function=layout>{"length": "96 ft"}</function>'],
  [
    'keys and values in tags',
    '<tool_call>layout\n<arg_key>length</arg_key>\n<arg_value>96 ft</arg_value>\n</tool_call>',
  ],
  [
    'an invoke tag',
    '<function_calls>\n<invoke name="layout">\n<parameter name="length">96 ft</parameter>\n</invoke>\n</function_calls>',
  ],
  ['a list after a token', '[TOOL_CALLS] [{"name": "layout", "arguments": {"length": "96 ft"}}]'],
  ['name and arguments after tokens', '[TOOL_CALLS]layout[CALL_ID]abc123def[ARGS]{"length": "96 ft"}'],
  [
    'a token before JSON',
    '<|python_tag|>{"type": "function", "name": "layout", "parameters": {"length": "96 ft"}}<|eom_id|>',
  ],
  ['a call as Python writes it', '[layout(length="96 ft")]'],
  ['Python in a fence', "```tool_code\nlayout(length='96 ft')\n```"],
  ['JSON in a fence', '```json\n{"name": "layout", "arguments": {"length": "96 ft"}}\n```'],
  ['bare JSON', '{"name": "layout", "parameters": {"length": "96 ft"}}'],
  [
    'a section of tokens',
    '<|tool_calls_section_begin|><|tool_call_begin|>functions.layout:0<|tool_call_argument_begin|>{"length": "96 ft"}<|tool_call_end|><|tool_calls_section_end|>',
  ],
  [
    'wide tokens and a fence',
    '<｜tool▁calls▁begin｜><｜tool▁call▁begin｜>function<｜tool▁sep｜>layout\n```json\n{"length": "96 ft"}\n```<｜tool▁call▁end｜><｜tool▁calls▁end｜>',
  ],
  ['a channel', '<|channel|>commentary to=functions.layout <|constrain|>json<|message|>{"length": "96 ft"}<|call|>'],
  [
    'a channel named behind its tool',
    '<|start|>assistant to=functions.layout<|channel|>commentary json<|message|>{"length": "96 ft"}<|call|>',
  ],
]

describe('a call written into the text', () => {
  test.each(dialects)('as %s is taken, and not shown', (_title, content) => {
    expect(understood(content)).toEqual({ text: '', reasoning: '', calls: [layout] })
    expect(understood(`I will look.\n${content}`)).toEqual({ text: 'I will look.', reasoning: '', calls: [layout] })
  })

  test.each(dialects)('as %s shows nothing of itself on its way', (_title, content) => {
    const whole = `I will look.\n\n${content}`
    for (let end = 0; end <= whole.length; end++)
      expect('I will look.'.startsWith(safeToShow(whole.slice(0, end)))).toBe(true)
  })

  test.each(dialects)('as %s to a tool that was not offered stays text', (_title, content) => {
    expect(understood(content.replaceAll('layout', 'draw_plan')).calls).toEqual([])
  })

  test.each([
    [
      'tags',
      '<tool_call>{"name":"layout","arguments":{"length":"96 ft"}}</tool_call>\n<tool_call>{"name":"hole_depth","arguments":{"soil":"clay"}}</tool_call>',
    ],
    [
      'a list',
      '[TOOL_CALLS][{"name":"layout","arguments":{"length":"96 ft"}},{"name":"hole_depth","arguments":{"soil":"clay"}}]',
    ],
    ['tokens', '[TOOL_CALLS]layout[ARGS]{"length":"96 ft"}[TOOL_CALLS]hole_depth[ARGS]{"soil":"clay"}'],
    ['Python', '[layout(length="96 ft"), hole_depth(soil="clay")]'],
    [
      'bare JSON',
      '{"name":"layout","parameters":{"length":"96 ft"}}; {"name":"hole_depth","parameters":{"soil":"clay"}}',
    ],
  ])('may have a second behind it, in %s', (_title, content) => {
    expect(understood(content).calls).toEqual([layout, depth])
  })

  test('leaves the words before and behind it', () => {
    expect(
      understood('First.\n<tool_call>{"name":"layout","arguments":{"length":"96 ft"}}</tool_call>\nThen.').text,
    ).toBe('First.\n\nThen.')
  })

  test.each([
    ['<tool_call>{"name":"layout","arguments":{"length":"96', 'truncated'],
    ['<tool_call>{"name":"layout","arguments":{"length":96 ft}}</tool_call>', 'bad-json'],
    ['<function=layout><parameter=length>96', 'truncated'],
    ['[TOOL_CALLS]layout[ARGS]{"length":', 'truncated'],
    ['```json\n{"name":"layout","arguments":{"length":96 ft}}\n```', 'bad-json'],
  ])('that cannot be read is a call all the same: %s', (content, state) => {
    expect(understood(content)).toMatchObject({ text: '', calls: [{ name: 'layout', args: null, state }] })
  })

  test('takes its values by the schema: text stays text, a list becomes a list', () => {
    const schema = {
      type: 'object',
      properties: {
        note: { type: ['string', 'null'] },
        posts: { type: 'integer' },
        soils: { type: 'array', items: { type: 'string' } },
      },
    }
    const { calls } = readText(
      '<function=mark><parameter=note>12</parameter><parameter=posts>12</parameter><parameter=soils>["clay"]</parameter></function>',
      new Map([['mark', schema]]),
    )
    expect(JSON.parse(calls[0]?.raw ?? '')).toEqual({ note: '12', posts: 12, soils: ['clay'] })
  })
})

describe('text that is no call', () => {
  test.each([
    'Use `layout`.',
    '[a link](there) and more',
    '{ not json }',
    '```\nlayout\n```',
    'if a < b, [3] posts',
    '{"name":"layout"}',
    '<b>bold</b>',
  ])('stays as it is: %s', (content) => {
    expect(understood(content)).toEqual({ text: content, reasoning: '', calls: [] })
  })

  test.each([
    ['<think>plan</think>\n\nHi', 'Hi', 'plan'],
    ['plan\n</think>\n\nHi', 'Hi', 'plan'],
    ['<think>plan that never ends', '', 'plan that never ends'],
    [
      '<|channel|>analysis<|message|>plan<|end|><|start|>assistant<|channel|>final<|message|>Hi<|return|>',
      'Hi',
      'plan',
    ],
    ['Hi<|im_end|>', 'Hi', ''],
  ])('loses its thoughts and control tokens: %s', (content, text, reasoning) => {
    expect(understood(content)).toEqual({ text, reasoning, calls: [] })
  })

  test('what was shown on the way is the front of what stands at the end, and only grows', () => {
    const parts = [
      'Hi',
      ' ',
      '\n',
      '<',
      '[',
      '`',
      '{',
      '}',
      ']',
      '```',
      '<tool_call>',
      '</tool_call>',
      '<think>',
      '{"name":"layout","arguments":{"length":"96 ft"}}',
      'layout',
      '(',
      '|',
      '"',
      '[TOOL_CALLS]',
    ]
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...parts), { maxLength: 12 }), (pieces) => {
        const content = pieces.join('')
        const { text } = readText(content, offered)
        let before = ''
        for (let end = 0; end <= content.length; end++) {
          const safe = safeToShow(content.slice(0, end))
          expect(safe.startsWith(before)).toBe(true)
          before = safe
        }
        expect(text.startsWith(before)).toBe(true)
      }),
      { numRuns: 300 },
    )
  })
})
