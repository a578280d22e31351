// This file is about calls that a model writes into its text, because the server in between does not read its dialect.
// Only calls to tools that were offered are taken for calls. What is taken is not shown; everything else stays text.
import { endOfJson } from './arguments.ts'
import { readPythonCalls } from './python-calls.ts'
import { isRecord, type JsonSchema } from './speech.ts'
import { setThoughtsAside, withoutEndTokens } from './thoughts.ts'

/** Tools that were offered, by name, with the schema of their arguments. */
export type Offered = ReadonlyMap<string, JsonSchema>

export interface WrittenCall {
  readonly name: string
  readonly raw: string
}

export interface TextRead {
  readonly text: string
  readonly reasoning: string
  readonly calls: readonly WrittenCall[]
}

/** The whole text at its end: thoughts and calls taken out. */
export function readText(content: string, offered: Offered): TextRead {
  const { text, reasoning } = setThoughtsAside(content)
  const calls: WrittenCall[] = []
  let shown = ''
  let at = 0
  for (const opening of text.matchAll(openings)) {
    if (opening.index < at) continue
    const block = readBlock(text, opening.index, opening[0].length, offered)
    if (!block) continue
    shown = joined(shown, text.slice(at, opening.index), calls.length > 0)
    calls.push(...block.calls)
    at = block.end
  }
  shown = joined(shown, text.slice(at), calls.length > 0)
  return { text: withoutEndTokens(shown).trim(), reasoning, calls }
}

const joined = (before: string, after: string, apart: boolean): string =>
  apart ? [before.trim(), after.trim()].filter((part) => part !== '').join('\n\n') : before + after

/**
 * As much of an unfinished text as can be shown: never the head of a call or of a thought, which may yet turn out to be one.
 * What it gives only ever grows, and is the front of what `readText` gives at the end.
 */
export function safeToShow(content: string): string {
  const { text } = setThoughtsAside(content)
  for (const opening of text.matchAll(/[<[`{]/g)) {
    if (mayOpen(text, opening.index)) return text.slice(0, opening.index).trim()
  }
  return text.trim()
}

const marks = [
  '<tool_call',
  '<function',
  '<invoke',
  '<minimax:',
  '<think',
  '<thought',
  '<|',
  '<｜',
  '</think',
  '</thought',
  '</s>',
  '[TOOL_CALLS]',
]

function mayOpen(text: string, at: number): boolean {
  const rest = text.slice(at)
  if (marks.some((mark) => rest.startsWith(mark) || mark.startsWith(rest))) return true
  const lineStart = text.lastIndexOf('\n', at) + 1
  if (text.slice(lineStart, at).trim() !== '') return false
  // A line that opens like a call waits for its end; then it is known whether it goes on as one.
  return !rest.includes('\n') || /^(?:```|\{|\[\s*\{|\[\s*[A-Za-z_][\w.]*\(|\[\s*\n)/.test(rest)
}

// Where a call may open: a tag or token anywhere, a fence, an object or a list at the start of a line.
const openings = new RegExp(
  [
    '<\\|?(?:tool_calls?|function_calls?|functioncall)\\|?>',
    '<minimax:tool_call>',
    '<function=',
    '<invoke ',
    '<\\|python_tag\\|>',
    '<\\|tool_calls_section_begin\\|>',
    '<\\|tool_call_begin\\|>',
    '<｜tool▁calls?▁begin｜>',
    '(?:<\\|start\\|>assistant)?(?: to=functions\\.[\\w-]+)?<\\|channel\\|>(?:commentary|analysis)',
    '\\[TOOL_CALLS\\]',
    '(?<=^|\\n)[ \\t]*```',
    '(?<=^|\\n)[ \\t]*(?=[{[])',
  ].join('|'),
  'g',
)

// What stands around calls and says nothing itself. Closing marks are eaten with the call they close.
const filler =
  /(?:\s|[,;]|<\/?\|?(?:tool_calls?|function_calls?|functioncall|function)\|?>|<\|\/tool_call\|>|<\/?minimax:tool_call>|<\/invoke>|<\|[^|<>]*\|>|<｜[^｜<>]*｜>|\[TOOL_CALLS\]|\[\/TOOL_CALLS\]|function(?=<｜))+/y

interface Block {
  readonly calls: WrittenCall[]
  readonly end: number
}

function readBlock(text: string, start: number, openingLength: number, offered: Offered): Block | undefined {
  const opening = text.slice(start, start + openingLength)
  const fenced = opening.trimStart().startsWith('```')
  const bare = fenced || opening.trim() === ''
  let at = fenced ? after(text, start + openingLength, /[\w-]*[ \t]*\n?/y) : start
  const calls: WrittenCall[] = []
  for (;;) {
    // A call without a mark of its own ends where its JSON ends, but for a comma or a blank before the next.
    const next = after(text, at, bare ? /[\s,;]+/y : filler)
    const found = readOne(text, next, offered, bare)
    if (!found) break
    calls.push(...found.calls)
    at = found.end
  }
  if (calls.length === 0) return undefined
  return { calls, end: after(text, at, fenced ? /\s*(?:```)?/y : bare ? /\s+/y : filler) }
}

function after(text: string, at: number, form: RegExp): number {
  form.lastIndex = at
  return at + (form.exec(text)?.[0].length ?? 0)
}

type ReadsOne = (text: string, at: number, offered: Offered, bare: boolean) => Block | undefined

const readOne: ReadsOne = (text, at, offered, bare) => {
  for (const dialect of [asJson, asNameThenJson, asFunctionTag, asInvokeTag, asKeysAndValues, asPython]) {
    const found = dialect(text, at, offered, bare)
    if (found) return found
  }
  return undefined
}

/** `{"name": "layout", "arguments": {…}}`, or a list of such. */
const asJson: ReadsOne = (text, at, offered, bare) => {
  if (text[at] !== '{' && text[at] !== '[') return undefined
  const end = endOfJson(text, at)
  const written = text.slice(at, end)
  const value = parsed(written)
  if (value !== undefined) {
    const values: unknown[] = Array.isArray(value) ? value : [value]
    const calls = values.map((it) => namedIn(it, offered, bare))
    return calls.length > 0 && calls.every((call) => call !== undefined)
      ? { calls, end: end ?? text.length }
      : undefined
  }
  // Unreadable, but a call all the same where it names a tool: said to be one, so that it can be asked for again.
  if (!/^(?:\[\s*)?\{/.test(written)) return undefined
  const name = /"(?:name|tool_name|tool|function)"\s*:\s*"([^"]*)"/.exec(written)?.[1]
  const opensArguments = /"(?:arguments|parameters|args|input)"\s*:\s*/.exec(written)
  if (name === undefined || !offered.has(name) || (bare && !opensArguments)) return undefined
  const raw = opensArguments ? written.slice(opensArguments.index + opensArguments[0].length) : '{'
  return { calls: [{ name, raw: end === undefined ? raw : (wholeAtFront(raw) ?? raw) }], end: end ?? text.length }
}

const wholeAtFront = (raw: string): string | undefined => {
  const end = endOfJson(raw, 0)
  return end === undefined ? undefined : raw.slice(0, end)
}

function namedIn(value: unknown, offered: Offered, bare: boolean): WrittenCall | undefined {
  if (!isRecord(value)) return undefined
  if (isRecord(value.function)) return namedIn(value.function, offered, bare)
  const name = [value.name, value.tool_name, value.tool, value.function].find((it) => typeof it === 'string')
  const args = value.arguments ?? value.parameters ?? value.args ?? value.input
  if (typeof name !== 'string' || !offered.has(name) || (bare && args === undefined)) return undefined
  return { name, raw: typeof args === 'string' ? args : JSON.stringify(args ?? {}) }
}

/** `layout[ARGS]{…}`, `functions.layout:0<|…|>{…}`, a name, a fence and an object: marks between the two say nothing. */
const asNameThenJson: ReadsOne = (text, at, offered, bare) => {
  const head =
    /(?:to=)?(?:functions\.)?([A-Za-z_][\w-]*)(?::\d+)?(?:\s|<\|channel\|>\w+|\[CALL_ID\]\w*|\[ARGS\]|<\|constrain\|>\w*|<\|[^|<>]*\|>|<｜[^｜<>]*｜>|```(?:json)?|json(?=\s*<\|))*(?=\{|$)/y
  // Between channels the tool is named before or behind the word “commentary”.
  const from = after(text, at, /(?:assistant)?(?:<\|channel\|>)?(?:commentary|analysis)?\s*(?=to=functions\.)/y)
  head.lastIndex = from
  const found = head.exec(text)
  const name = found?.[1] ?? ''
  if (bare || !found || !offered.has(name)) return undefined
  const open = from + found[0].length
  const end = endOfJson(text, open) ?? text.length
  return { calls: [{ name, raw: text.slice(open, end) || '{' }], end: after(text, end, /\s*```/y) }
}

/** `<function=layout>{…}</function>`, or with `<parameter=length>96 ft</parameter>` inside. */
const asFunctionTag: ReadsOne = (text, at, offered) => {
  const found = stickyMatch(/<function=["']?([\w-]+)["']?>([\s\S]*?)(<\/function>|$)/y, text, at)
  return found && offered.has(found.name)
    ? tagged(found, offered, /<parameter=["']?([\w-]+)["']?>([\s\S]*?)(?:<\/parameter>|(?=<parameter=)|$)/g)
    : undefined
}

/** `<invoke name="layout"><parameter name="length">96 ft</parameter></invoke>` */
const asInvokeTag: ReadsOne = (text, at, offered) => {
  const found = stickyMatch(/<invoke name=["']([\w-]+)["']>([\s\S]*?)(<\/invoke>|$)/y, text, at)
  return found && offered.has(found.name)
    ? tagged(found, offered, /<parameter name=["']([\w-]+)["'][^>]*>([\s\S]*?)(?:<\/parameter>|$)/g)
    : undefined
}

/** `layout`, then `<arg_key>length</arg_key><arg_value>96 ft</arg_value>`, up to the end of the tag that holds them. */
const asKeysAndValues: ReadsOne = (text, at, offered, bare) => {
  const found = stickyMatch(/([\w-]+)\s*((?:<arg_key>[\s\S]*?)?)(<\/tool_call>|$)/y, text, at)
  return !bare && found && offered.has(found.name)
    ? tagged(found, offered, /<arg_key>([\s\S]*?)<\/arg_key>\s*<arg_value>([\s\S]*?)(?:<\/arg_value>|$)/g)
    : undefined
}

const asPython: ReadsOne = (text, at, offered) => {
  const found = readPythonCalls(text, at)
  if (!found?.calls.every((call) => offered.has(call.name))) return undefined
  return { calls: found.calls.map((call) => ({ name: call.name, raw: JSON.stringify(call.args) })), end: found.end }
}

interface Tagged {
  readonly name: string
  readonly inside: string
  readonly closed: boolean
  readonly end: number
}

function stickyMatch(form: RegExp, text: string, at: number): Tagged | undefined {
  form.lastIndex = at
  const found = form.exec(text)
  return found
    ? { name: found[1] ?? '', inside: found[2] ?? '', closed: found[3] !== '', end: at + found[0].length }
    : undefined
}

function tagged(found: Tagged, offered: Offered, parameters: RegExp): Block {
  const inside = found.inside.trim()
  const call = (raw: string): Block => ({ calls: [{ name: found.name, raw }], end: found.end })
  if (inside.startsWith('{')) return call(inside)
  // A tag that was never closed may lack its last parameters: half an object says so.
  if (!found.closed) return call(`{${JSON.stringify(inside)}`)
  const properties = offered.get(found.name)?.properties
  const args = [...inside.matchAll(parameters)].map(([, key = '', value = '']) => {
    const name = key.trim()
    return [name, meantBy(value.replace(/^\n|\n$/g, ''), isRecord(properties) ? properties[name] : undefined)] as const
  })
  return call(JSON.stringify(Object.fromEntries(args)))
}

/** Tags carry text only: the schema says whether it is text that was meant. */
function meantBy(text: string, schema: unknown): unknown {
  const value = parsed(text)
  if (value === undefined) return text
  if (value === null) return null
  return takesText(schema) && !isRecord(value) && !Array.isArray(value) ? text : value
}

const takesText = (schema: unknown): boolean => {
  if (!isRecord(schema)) return true
  if (Array.isArray(schema.anyOf)) return schema.anyOf.some(takesText)
  return schema.type === undefined || [schema.type].flat().includes('string')
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}
