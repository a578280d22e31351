// This file is about the body of a request: JSON, an object, and no more than it should be.
import type { Context } from 'hono'
import { failed } from './errors.ts'

/** Nothing that is asked here goes deeper than a few levels, and what reads it goes down level by level. */
const deepest = 32

/** The body as an object, or the answer that says what is wrong with it. An empty body is an empty object. */
export async function objectIn(c: Context): Promise<Record<string, unknown> | Response> {
  const text = await c.req.text()
  if (text.trim() === '') return {}
  if (!/^application\/(?:[\w.+-]+\+)?json\b/i.test(c.req.header('content-type') ?? ''))
    return failed(c, 415, 'not-json', 'Send JSON, with Content-Type: application/json.')
  let data: unknown
  try {
    data = JSON.parse(text)
  } catch {
    return failed(c, 400, 'bad-json', 'The body is not whole JSON.')
  }
  if (typeof data !== 'object' || data === null || Array.isArray(data))
    return failed(c, 400, 'not-an-object', 'The body must be a JSON object, such as {"text":"…"}.')
  if (isTooDeep(data)) return failed(c, 400, 'too-deep', `The body goes deeper than ${deepest} levels.`)
  return data as Record<string, unknown>
}

/** A field that must be text with something in it. */
export function textIn(c: Context, body: Record<string, unknown>, field: string, most: number): string | Response {
  const value = Object.hasOwn(body, field) ? body[field] : undefined
  if (value === undefined) return failed(c, 400, 'missing', `“${field}” is missing.`, field)
  if (typeof value !== 'string') return failed(c, 422, 'not-text', `“${field}” must be text.`, field)
  if (value.trim() === '') return failed(c, 422, 'empty', `“${field}” is empty.`, field)
  if (value.includes('\0'))
    return failed(
      c,
      400,
      'no-character',
      `“${field}” has a NUL character in it. Take it out, and send it again.`,
      field,
    )
  if (value.length > most)
    return failed(
      c,
      422,
      'too-long',
      `“${field}” is ${value.length} characters long; ${most} is the most I read at once. Ask in parts.`,
      field,
    )
  return value
}

/** What a calculation is worked on: `inputs`, an object; nothing where it is left out. */
export function inputsIn(c: Context, { inputs = {} }: Record<string, unknown>): Record<string, unknown> | Response {
  if (typeof inputs === 'object' && inputs !== null && !Array.isArray(inputs)) return inputs as Record<string, unknown>
  return failed(c, 422, 'not-an-object', '“inputs” must be an object, such as {"opening":"93 in"}.', 'inputs')
}

/** The inputs whose unusual value is meant: `confirmed`, a list of their names; none where it is left out. */
export function confirmedIn(c: Context, { confirmed = [] }: Record<string, unknown>): string[] | Response {
  if (Array.isArray(confirmed) && confirmed.every((it) => typeof it === 'string')) return confirmed
  return failed(c, 422, 'not-a-list', '“confirmed” must be a list of inputs, such as ["holeDepth"].', 'confirmed')
}

/** Level by level, since a function that calls itself would run out of room here too. */
function isTooDeep(data: object): boolean {
  let level: object[] = [data]
  for (let depth = 1; level.length > 0; depth++) {
    if (depth > deepest) return true
    level = level.flatMap((it) => Object.values(it)).filter((it) => typeof it === 'object' && it !== null)
  }
  return false
}
