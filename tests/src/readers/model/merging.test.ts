// Several calls in one reply, and those of a repair, make up one request; nothing is in it twice.
import { describe, expect, it } from 'vitest'
import { requestSchema } from '../../../../src/request.ts'
import { nothingYet, withCall } from '../../../../src/readers/model/merging.ts'
import { calledAs, toolNames, toolsOffered } from '../../../../src/readers/model/tools.ts'

function merged(...calls: readonly (readonly [string, unknown])[]) {
  return calls.reduce((request, [name, args]) => {
    const called = calledAs(name, args)
    if ('wrong' in called) throw new Error(called.wrong)
    return withCall(request, called)
  }, nothingYet)
}

const fact = (word: string, tag: string) => ({ word, at: null, tag, quote: null, option: null })
const from = (tag: string) => ({ tag, quote: null, option: null, usual: null })

describe('calls made at once', () => {
  it('are one request, in their order, whatever that is', () => {
    const request = merged(
      ['want', { words: [{ word: 'bags', at: 'corner-posts' }], calculation: null, advice: ['gravel-or-concrete'] }],
      ['tell', { facts: [fact('posts', 'u1')], confirms: ['holeDepth'] }],
      ['tell', { facts: [fact('holeDiameter', 'u2')] }],
      ['decline', { why: 'off-trade', quote: 'my deck' }],
    )
    expect(request).toEqual({
      ...nothingYet,
      told: [
        { word: 'posts', at: 'yard', from: from('u1') },
        { word: 'holeDiameter', at: 'yard', from: from('u2') },
      ],
      wants: [{ word: 'bags', at: 'corner-posts' }],
      notes: ['gravel-or-concrete'],
      confirms: ['holeDepth'],
      declines: [{ why: 'off-trade', quote: 'my deck' }],
    })
  })

  it('that say the same again add nothing', () => {
    const call = ['tell', { facts: [fact('posts', 'u1'), fact('sides', 'u2'), fact('sides', 'u3')] }] as const
    expect(merged(call, call).told).toHaveLength(3)
  })

  it('take the usual value by its name, and an empty text for none', () => {
    const facts = [
      { word: 'postWidth', at: '', tag: 'usual', quote: '', option: '' },
      { word: 'waterTest', at: 'yard', option: 'soaks', quote: 'it soaks in' },
    ]
    expect(merged(['tell', { facts }]).told).toEqual([
      { word: 'postWidth', at: 'yard', from: { tag: null, quote: null, option: null, usual: true } },
      { word: 'waterTest', at: 'yard', from: { tag: null, quote: 'it soaks in', option: 'soaks', usual: null } },
    ])
  })

  it('of what is done with the job become acts', () => {
    const request = merged(
      ['change', { how: 'keep', name: 'gravel' }],
      ['compare', { word: 'picketWidth', at: null, values: [{ tag: 'u1' }, { tag: 'u2' }] }],
      ['recall', { what: 'explain', word: 'bags', at: null }],
      ['ask', { tag: 'u3', words: ['holeDepth', 'postLength'] }],
    )
    expect(requestSchema.parse(request)).toEqual(request)
    expect(request.acts?.map((it) => [it.act, it.name, it.word, it.between?.length])).toEqual([
      ['keep', 'gravel', null, undefined],
      ['compare', null, null, 2],
      ['explain', null, 'bags', undefined],
    ])
    expect(request.either).toEqual([{ tag: 'u3', words: ['holeDepth', 'postLength'] }])
  })
})

describe('the tools', () => {
  it('are a handful', () => expect(toolNames).toHaveLength(7))

  // The portable core of shared/endpoints: objects that are closed and whole, no number, and no keyword that a strict server refuses.
  it('hold no number, and only what every strict server takes', () => {
    const keywords = new Set<string>()
    const types = new Set<string>()
    const visit = (schema: unknown): void => {
      if (typeof schema !== 'object' || schema === null) return
      for (const [keyword, value] of Object.entries(schema)) {
        keywords.add(keyword)
        if (keyword === 'type') for (const type of [value].flat()) types.add(String(type))
        if (keyword === 'properties') {
          for (const it of Object.values(value as object)) visit(it)
          const { required, additionalProperties } = schema as Record<string, unknown>
          expect(required).toEqual(Object.keys(value as object))
          expect(additionalProperties).toBe(false)
        }
        if (keyword === 'items') visit(value)
        if (keyword === 'anyOf') for (const it of value as unknown[]) visit(it)
      }
    }
    for (const { parameters } of toolsOffered) {
      expect(parameters.type).toBe('object')
      visit(parameters)
    }
    expect([...types].sort()).toEqual(['array', 'null', 'object', 'string'])
    expect([...keywords].sort()).toEqual([
      'additionalProperties',
      'anyOf',
      'description',
      'enum',
      'items',
      'properties',
      'required',
      'type',
    ])
  })

  it('answer a name that there is not with those that there are', () => {
    const called = calledAs('request', {})
    expect('wrong' in called && called.wrong).toContain(toolNames.join(', '))
  })
})
