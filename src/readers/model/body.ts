// This file is about the request as it is sent. Its front, the tools and the system text, is the same bytes every time.
import type { Profile } from './profile.ts'
import { leanSchema } from './schemas.ts'
import type { Asking, Body, Message, Tool, ToolCall } from './speech.ts'

export interface Wishes {
  readonly model: string
  /** The most tokens an answer may take; the server's own limit where it is not set. */
  readonly limit?: number
  /** Asks the server to count tokens in a stream too. */
  readonly usage?: boolean
}

export function bodyOf(asking: Asking, profile: Profile, wishes: Wishes): Body {
  const tools = asking.tools ?? []
  const inWords = profile.tools === 'in-words' && tools.length > 0
  const streams = profile.streams && asking.stream !== false
  const choice = inWords || tools.length === 0 ? undefined : choiceOf(asking, profile)
  const all = {
    model: wishes.model,
    ...(tools.length > 0 && !inWords ? { tools: tools.map((tool) => toolOf(tool, profile)) } : {}),
    messages: messagesOf(inWords ? toldInWords(asking, tools) : asking.messages, profile),
    ...(streams ? { stream: true } : {}),
    ...(choice === undefined ? {} : { tool_choice: choice }),
    ...(wishes.limit === undefined ? {} : { [profile.limitName]: wishes.limit }),
    ...(wishes.usage && streams ? { stream_options: { include_usage: true } } : {}),
  }
  return Object.fromEntries(Object.entries(all).filter(([field]) => !profile.without.includes(field)))
}

/** Left unsaid where it says nothing: with tools, `auto` is what every server does. */
function choiceOf({ choice }: Asking, profile: Profile): unknown {
  if (choice === undefined || choice === 'auto' || profile.choice === 'unsaid') return undefined
  if (typeof choice === 'string') return choice
  return profile.choice === 'required' ? 'required' : { type: 'function', function: { name: choice.name } }
}

const toolOf = ({ name, description, parameters }: Tool, profile: Profile): Body => ({
  type: 'function',
  function: {
    name,
    description,
    parameters: leanSchema(parameters, profile.schemas),
    ...(profile.strict ? { strict: true } : {}),
  },
})

function messagesOf(messages: readonly Message[], profile: Profile): Body[] {
  const names = new Map(messages.flatMap((message) => message.calls ?? []).map((call) => [call.id, historyName(call)]))
  const sent = messages.flatMap((message) => messageOf(message, profile, names))
  const folded = profile.systemRole === 'user' ? mergeSameRole(sent, (place) => place === 1) : sent
  return profile.alternates ? mergeSameRole(folded, () => true) : folded
}

function messageOf(message: Message, profile: Profile, names: ReadonlyMap<string, string>): Body[] {
  const { role, content, calls = [], callId, kept } = message
  if (role === 'system') return [{ role: profile.systemRole, content }]
  if (role === 'tool' && callId !== undefined) {
    return [
      {
        role,
        tool_call_id: callId,
        ...(profile.namedResults ? { name: names.get(callId) ?? 'unnamed' } : {}),
        content,
      },
    ]
  }
  if (role !== 'assistant') return [{ role: 'user', content }]
  // A turn in which nothing was said is refused by many servers and tells the others nothing.
  if (content === '' && calls.length === 0) return []
  return [
    {
      role,
      content: content === '' ? profile.emptyContent : content,
      ...(profile.thoughtsBack ? thoughtsIn(kept) : {}),
      ...(calls.length > 0 ? { tool_calls: calls.map(callOf) } : {}),
    },
  ]
}

const thoughtsIn = (kept: Readonly<Record<string, unknown>> = {}): Body =>
  Object.fromEntries(
    Object.entries(kept).filter(([field]) => /reason|think|thought|signature|extra_content/i.test(field)),
  )

/** Half a JSON in the history breaks some servers, so what could not be read goes back as no arguments. */
function callOf(call: ToolCall): Body {
  const { function: inside, ...others } = call.kept ?? {}
  const written = call.args === null ? '{}' : JSON.stringify(call.args)
  return {
    ...others,
    id: call.id,
    type: 'function',
    function: { ...(inside as object | undefined), name: historyName(call), arguments: written },
  }
}

/** Names that servers take, whatever the model invented. */
const historyName = (call: ToolCall): string => call.name.replace(/[^\w-]/g, '_').slice(0, 64) || 'unnamed'

function mergeSameRole(messages: readonly Body[], mayMerge: (place: number) => boolean): Body[] {
  const merged: Body[] = []
  messages.forEach((message, place) => {
    const before = merged.at(-1)
    const plain =
      before &&
      before.role === message.role &&
      !('tool_calls' in before) &&
      !('tool_calls' in message) &&
      message.role !== 'tool'
    if (before && plain && mayMerge(place))
      merged[merged.length - 1] = { ...before, content: `${before.content}\n\n${message.content}` }
    else merged.push(message)
  })
  return merged
}

/** For servers that take no tools: the tools go into the system text, and calls and results are written as text. */
function toldInWords({ messages, choice }: Asking, tools: readonly Tool[]): Message[] {
  const form = '<tool_call>{"name": "…", "arguments": {…}}</tool_call>'
  const how =
    choice === 'none'
      ? 'Do not call them now: answer in words.'
      : `To call one, answer with this form and nothing else: ${form}`
  const must =
    choice === 'required' ? ' You must call one.' : typeof choice === 'object' ? ` You must call “${choice.name}”.` : ''
  const listed = tools
    .map(({ name, description, parameters }) =>
      JSON.stringify({ name, description, parameters: leanSchema(parameters) }),
    )
    .join('\n')
  const told = `You have these tools, one a line:\n${listed}\n\n${how}${must}`
  const [first, ...others] = messages
  const front: Message =
    first?.role === 'system' ? { ...first, content: `${first.content}\n\n${told}` } : { role: 'system', content: told }
  const rest = first === undefined || first.role === 'system' ? others : messages
  return [front, ...rest.map(inWords)]
}

function inWords(message: Message): Message {
  if (message.role === 'tool') return { role: 'user', content: `<tool_response>${message.content}</tool_response>` }
  const calls = (message.calls ?? []).map(
    (call) => `<tool_call>${JSON.stringify({ name: call.name, arguments: call.args ?? {} })}</tool_call>`,
  )
  return { role: message.role, content: [message.content, ...calls].filter((part) => part !== '').join('\n') }
}
