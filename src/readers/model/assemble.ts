// This file is about putting one answer together from raw events, or from one whole document, in any server's manner.
import { readArguments, separateObjects } from './arguments.ts'
import { createDrafts, type Draft, filled } from './drafts.ts'
import { isRecord, type Spoken, type ToolCall, type Trouble } from './speech.ts'
import { type Offered, readText } from './text-calls.ts'

/** An error that came inside an answer. */
export interface Failure {
  readonly code: number | undefined
  readonly words: unknown
}

export interface Assembly {
  take(event: unknown): void
  /** The text so far, thoughts and written calls still in it. */
  content(): string
  /** Whether the server has said that this is the end. */
  finished(): boolean
  failure(): Failure | undefined
  /** The answer. With trouble, nothing that was called may be run. */
  spoken(trouble?: Trouble): Spoken
}

export function createAssembly(offered: Offered, earlierCalls = 0): Assembly {
  const drafts = createDrafts((name) => offered.has(name))
  let content = ''
  let refusal = ''
  let reasoning = ''
  let finishReason = ''
  let failure: Failure | undefined
  let choiceIndex: unknown
  let usage: Record<string, unknown> | undefined
  const kept: Record<string, unknown> = {}

  const take = (event: unknown): void => {
    if (!isRecord(event)) return
    failure ??= failureIn(event)
    if (isRecord(event.usage)) usage = event.usage
    const choices = Array.isArray(event.choices) ? event.choices.filter(isRecord) : []
    const [first] = choices
    if (!first) return
    // Only one answer is read, the one that came first. A missing index is nought.
    choiceIndex ??= first.index ?? 0
    const choice = choices.find((it) => (it.index ?? 0) === choiceIndex)
    if (!choice) return
    failure ??= failureIn(choice)
    if (typeof choice.finish_reason === 'string' && choice.finish_reason !== '') finishReason = choice.finish_reason
    if (typeof choice.text === 'string') content += choice.text
    if (isRecord(choice.delta)) hear(choice.delta, false)
    // A whole message at the end of a stream repeats what was said in pieces.
    if (isRecord(choice.message) && content === '' && drafts.all().length === 0) hear(choice.message, true)
  }

  const hear = (said: Readonly<Record<string, unknown>>, whole: boolean): void => {
    failure ??= failureIn(said)
    const { role: _role, content: words, refusal: refused, tool_calls: calls, function_call: called, ...others } = said
    content += textIn(words)
    reasoning += thoughtIn(words) || firstText(others.reasoning_content, others.reasoning)
    refusal += typeof refused === 'string' ? refused : refusalIn(words)
    if (Array.isArray(calls)) drafts.take(calls, whole)
    else if (isRecord(calls)) drafts.take([calls], whole)
    if (isRecord(called)) drafts.take([{ index: 'function_call', function: called }], whole)
    for (const [name, value] of Object.entries(filled(others))) kept[name] = joined(kept[name], value)
  }

  const spoken = (trouble?: Trouble): Spoken => {
    const read = readText(content, offered)
    const heard = drafts.all()
    const written = heard.length > 0 ? heard.flatMap(callsOf) : read.calls.map((call) => ({ ...call, kept: {} }))
    const calls = written.map((call, place) =>
      finishedCall(call, `call${String(earlierCalls + place + 1).padStart(5, '0')}`, offered, trouble),
    )
    const finish = trouble ? 'failed' : finishOf(finishReason, refusal, calls.length > 0)
    const thought = [reasoning.trim(), read.reasoning].filter((part) => part !== '').join('\n')
    return {
      text: read.text,
      calls: finish === 'length' ? calls.map(asCutShort) : calls,
      finish,
      ...(finishReason === '' ? {} : { finishReason }),
      ...(thought === '' ? {} : { reasoning: thought }),
      ...(refusal === '' ? {} : { refusal }),
      ...(trouble ? { error: trouble } : {}),
      ...(usage ? { usage } : {}),
      ...(Object.keys(kept).length > 0 ? { kept } : {}),
    }
  }
  return { take, content: () => content, finished: () => finishReason !== '', failure: () => failure, spoken }
}

interface Written {
  readonly name: string
  readonly raw: string
  readonly kept: Readonly<Record<string, unknown>>
}

const callsOf = (draft: Draft): Written[] =>
  separateObjects(draft.args).map((raw) => ({ name: draft.name, raw, kept: draft.kept }))

function finishedCall(
  { name: said, raw, kept }: Written,
  id: string,
  offered: Offered,
  trouble: Trouble | undefined,
): ToolCall {
  const name = toolName(said, offered)
  const rest = { id, name, raw, ...(Object.keys(kept).length > 0 ? { kept } : {}) }
  // What was cut off may look whole and still lack its end.
  if (trouble) return { ...rest, args: null, state: 'truncated' }
  if (!offered.has(name)) return { ...rest, args: null, state: 'unknown-tool' }
  return { ...rest, ...readArguments(raw) }
}

/** At the limit of tokens, what cannot be read was cut. */
const asCutShort = (call: ToolCall): ToolCall => (call.state === 'bad-json' ? { ...call, state: 'truncated' } : call)

/** The name without what servers glue to it: control tokens, the namespace of functions, a running number. */
function toolName(said: string, offered: Offered): string {
  const name = said.replace(/<\|.*$/s, '').trim()
  const bare = name.replace(/^(?:functions|default_api|tools)[.:/]/, '').replace(/:\d+$/, '')
  return !offered.has(name) && offered.has(bare) ? bare : name
}

function finishOf(reason: string, refusal: string, called: boolean): Spoken['finish'] {
  const said = reason.toLowerCase()
  if (refusal !== '' || said === 'refusal') return 'refused'
  if (/^(content_filter|safety|recitation|blocklist|prohibited_content)$/.test(said)) return 'filtered'
  if (/^(length|max_tokens|max_output_tokens|model_length)$/.test(said)) return 'length'
  return called ? 'calls' : 'stop'
}

function failureIn(part: Readonly<Record<string, unknown>>): Failure | undefined {
  const { error } = part
  const bare =
    part.object === 'error' ||
    part.type === 'error' ||
    (part.detail !== undefined && part.choices === undefined && part.delta === undefined)
  const stated = isRecord(error) ? Object.values(filled(error)).some(Boolean) : Boolean(error)
  if (stated && isRecord(error)) {
    const refused = error.type === 'invalid_request_error' ? 400 : undefined
    return {
      code: codeOf(error.code) ?? codeOf(error.status) ?? codeOf(part.code ?? part.status) ?? refused,
      words: error,
    }
  }
  if (stated) return { code: codeOf(part.code ?? part.status), words: error }
  if (bare) return { code: codeOf(part.code ?? part.status), words: part }
  return part.finish_reason === 'error' ? { code: undefined, words: '' } : undefined
}

const codeOf = (code: unknown): number | undefined => (/^[1-5]\d\d$/.test(String(code)) ? Number(code) : undefined)

// Content may be text, or a list of blocks of which only some are meant to be read.
const blocks = (content: unknown): Record<string, unknown>[] =>
  (Array.isArray(content) ? content : [content]).filter(isRecord)

const textIn = (content: unknown): string =>
  typeof content === 'string'
    ? content
    : blocks(content)
        .map((block) => (/^(output_)?text$/.test(String(block.type)) ? firstText(block.text) : ''))
        .join('')

const thoughtIn = (content: unknown): string =>
  blocks(content)
    .map((block) => (block.type === 'thinking' ? firstText(block.thinking, textIn(block.thinking)) : ''))
    .join('')

const refusalIn = (content: unknown): string =>
  blocks(content)
    .map((block) => (block.type === 'refusal' ? firstText(block.refusal) : ''))
    .join('')

const firstText = (...values: readonly unknown[]): string =>
  values.find((value): value is string => typeof value === 'string' && value !== '') ?? ''

const joined = (before: unknown, value: unknown): unknown => {
  if (typeof before === 'string' && typeof value === 'string') return before + value
  if (Array.isArray(before) && Array.isArray(value)) return [...before, ...value]
  return value
}
