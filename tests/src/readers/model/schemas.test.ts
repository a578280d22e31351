import { describe, expect, test } from 'vitest'
import { z } from 'zod'
import { leanSchema, portableSchema } from '../../../../src/readers/model/schemas.ts'
import { requestSchema } from '../../../../src/request.ts'

describe('a portable schema', () => {
  const schema = portableSchema(
    z.object({
      count: z.int().min(1).max(99).describe('how many'),
      note: z.string().max(20).optional(),
      soil: z.enum(['clay', 'sand']).nullish(),
      kind: z.literal('post'),
      parts: z.array(z.object({ name: z.string().regex(/^a/) })).min(1),
      either: z.discriminatedUnion('k', [
        z.object({ k: z.literal('a') }),
        z.object({ k: z.literal('b'), n: z.number() }),
      ]),
    }),
  )

  test('requires every property, closes every object, and lets what was optional be null', () => {
    expect(schema).toEqual({
      type: 'object',
      properties: {
        count: { type: 'integer', description: 'how many; at least 1; at most 99' },
        note: { type: ['string', 'null'], description: 'at most 20 letters' },
        soil: { anyOf: [{ type: 'string', enum: ['clay', 'sand'] }, { type: 'null' }] },
        kind: { type: 'string', enum: ['post'] },
        parts: {
          type: 'array',
          description: 'at least 1 in the list',
          items: {
            type: 'object',
            properties: { name: { type: 'string' } },
            required: ['name'],
            additionalProperties: false,
          },
        },
        either: {
          anyOf: [
            {
              type: 'object',
              properties: { k: { type: 'string', enum: ['a'] } },
              required: ['k'],
              additionalProperties: false,
            },
            {
              type: 'object',
              properties: { k: { type: 'string', enum: ['b'] }, n: { type: 'number' } },
              required: ['k', 'n'],
              additionalProperties: false,
            },
          ],
        },
      },
      required: ['count', 'note', 'soil', 'kind', 'parts', 'either'],
      additionalProperties: false,
    })
  })

  test('made lean again is the same', () => {
    expect(leanSchema(schema)).toEqual(schema)
  })

  test('of the typed request holds only words that every strict server knows', () => {
    const words = new Set<string>()
    JSON.stringify(portableSchema(requestSchema), (key, value: unknown) => {
      if (value && typeof value === 'object' && ('type' in value || 'anyOf' in value))
        for (const word of Object.keys(value)) words.add(word)
      return key === 'properties'
        ? Object.fromEntries(Object.entries(value as object).map(([name, it], at) => [`${name}${at}`, it]))
        : value
    })
    const known = ['type', 'properties', 'required', 'additionalProperties', 'items', 'description', 'enum', 'anyOf']
    expect([...words].filter((word) => !known.includes(word))).toEqual([])
  })

  test('is refused for what cannot be said portably', () => {
    expect(() => portableSchema(z.object({ free: z.record(z.string(), z.number()) }))).toThrow('propertyNames')
    expect(() => portableSchema(z.object({ pair: z.tuple([z.string()]) }))).toThrow('prefixItems')
    expect(() => portableSchema(z.string())).toThrow('object')
  })

  test('for servers that take one type at a time offers null beside the type', () => {
    const open = { closed: false, nullable: 'anyOf' } as const
    expect(leanSchema({ type: ['string', 'null'], enum: ['a', null], description: 'x' }, open)).toEqual({
      description: 'x',
      anyOf: [{ type: 'string', enum: ['a'] }, { type: 'null' }],
    })
    expect(leanSchema({ type: 'object', properties: {}, additionalProperties: false }, open)).toEqual({
      type: 'object',
      properties: {},
    })
  })
})
