// This file is about the part of JSON Schema that every strict server takes: objects with every property required, lists, enums,
// anyOf below the root, short descriptions. Ranges and forms are said in the description and checked by the program.
import { z } from 'zod'
import { isRecord, type JsonSchema } from './speech.ts'

/**
 * The schema as it is sent. An optional property is required here and may be null, so write it `.nullish()` in zod.
 * Throws for what cannot be said portably: a record with free keys, a tuple, a schema that holds itself, a root that is no object.
 */
export function portableSchema(schema: z.ZodType): JsonSchema {
  const portable = leanSchema(strict(z.toJSONSchema(schema, { io: 'input' })))
  if (portable.type !== 'object') throw new Error('A tool takes an object: wrap the schema in one.')
  return portable
}

function strict(schema: JsonSchema): JsonSchema {
  for (const keyword of ['$ref', 'allOf', 'prefixItems', 'propertyNames', 'patternProperties', 'not']) {
    if (keyword in schema)
      throw new Error(`A schema for a model cannot hold “${keyword}”. Say it with objects, lists, enums and unions.`)
  }
  const { oneOf, ...others } = schema
  const inside = mapInside({ ...others, ...(oneOf ? { anyOf: oneOf } : {}) }, strict)
  if (!isRecord(inside.properties)) return inside
  const required = Array.isArray(schema.required) ? schema.required : []
  const properties = Object.entries(inside.properties).map(([name, it]) => [
    name,
    required.includes(name) || !isRecord(it) ? it : orNull(it),
  ])
  return {
    ...inside,
    properties: Object.fromEntries(properties),
    required: Object.keys(inside.properties),
    additionalProperties: false,
  }
}

function orNull(schema: JsonSchema): JsonSchema {
  const { default: _default, ...it } = schema
  if (Array.isArray(it.anyOf))
    return it.anyOf.some((one) => isRecord(one) && one.type === 'null')
      ? it
      : { ...it, anyOf: [...it.anyOf, { type: 'null' }] }
  if (Array.isArray(it.type)) return it.type.includes('null') ? it : { ...it, type: [...it.type, 'null'] }
  const { description, ...bare } = it
  if (bare.type === 'object' || 'enum' in bare || 'const' in bare)
    return { ...(description ? { description } : {}), anyOf: [bare, { type: 'null' }] }
  return { ...it, type: [it.type, 'null'] }
}

export interface Leaning {
  /** False for servers that do not know `additionalProperties`. */
  readonly closed: boolean
  /** `anyOf` for servers that take one type at a time. */
  readonly nullable: 'types' | 'anyOf'
}

const allowed = new Set([
  'type',
  'enum',
  'properties',
  'required',
  'additionalProperties',
  'items',
  'anyOf',
  'description',
])

/** Without the keywords that some servers refuse. Never throws, and leaves a lean schema as it is. */
export function leanSchema(schema: JsonSchema, leaning: Leaning = { closed: true, nullable: 'types' }): JsonSchema {
  const described = [schema.description, ...limitsOf(schema)]
    .filter((part) => typeof part === 'string' && part !== '')
    .join('; ')
  const plain = {
    ...schema,
    ...('const' in schema ? { enum: [schema.const] } : {}),
    ...(described === '' ? {} : { description: described }),
  }
  const kept = Object.fromEntries(
    Object.entries(plain).filter(
      ([keyword]) => allowed.has(keyword) && (leaning.closed || keyword !== 'additionalProperties'),
    ),
  )
  const inside = mapInside(kept, (it) => leanSchema(it, leaning))
  if (leaning.nullable === 'types' || !Array.isArray(inside.type)) return inside
  const { description, type, enum: values, ...others } = inside
  const some = Array.isArray(values) ? { enum: values.filter((value) => value !== null) } : {}
  const one = (it: unknown): JsonSchema => (it === 'null' ? { type: it } : { type: it, ...some, ...others })
  return { ...(description ? { description } : {}), anyOf: (type as unknown[]).map(one) }
}

/** Everywhere below, where a schema stands. */
function mapInside(schema: JsonSchema, change: (schema: JsonSchema) => JsonSchema): JsonSchema {
  const each = (it: unknown): unknown => (isRecord(it) ? change(it) : it)
  const { properties, items, anyOf } = schema
  return {
    ...schema,
    ...(isRecord(properties)
      ? { properties: Object.fromEntries(Object.entries(properties).map(([name, it]) => [name, each(it)])) }
      : {}),
    ...(isRecord(items) ? { items: change(items) } : {}),
    ...(Array.isArray(anyOf) ? { anyOf: anyOf.map(each) } : {}),
  }
}

// Bounds that only say "a whole number a computer can hold" tell a model nothing.
const limitsOf = (schema: JsonSchema): string[] => {
  const said = (keyword: string, words: string, unit = ''): string[] => {
    const bound = schema[keyword]
    return typeof bound === 'number' && Math.abs(bound) < Number.MAX_SAFE_INTEGER ? [`${words} ${bound}${unit}`] : []
  }
  return [
    ...said('minimum', 'at least'),
    ...said('exclusiveMinimum', 'more than'),
    ...said('maximum', 'at most'),
    ...said('exclusiveMaximum', 'less than'),
    ...said('minLength', 'at least', ' letters'),
    ...said('maxLength', 'at most', ' letters'),
    ...said('minItems', 'at least', ' in the list'),
    ...said('maxItems', 'at most', ' in the list'),
  ]
}
