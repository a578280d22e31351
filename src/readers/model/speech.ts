// This file is about what goes to a model and what comes back, in our own shape, whatever the server's dialect.

export type JsonSchema = Readonly<Record<string, unknown>>

export interface Tool {
  readonly name: string
  readonly description: string
  readonly parameters: JsonSchema
}

export interface ToolCall {
  /** Nine letters and digits, ours, counted along the talk: some servers refuse any other form. */
  readonly id: string
  readonly name: string
  /** What was handed over, or null where it cannot be used. */
  readonly args: unknown
  readonly state: 'ok' | 'bad-json' | 'truncated' | 'unknown-tool'
  readonly raw: string
  /** Fields of the call that we do not know. Some servers want them back, such as signed thoughts. */
  readonly kept?: Readonly<Record<string, unknown>>
}

export interface Message {
  readonly role: 'system' | 'user' | 'assistant' | 'tool'
  readonly content: string
  readonly calls?: readonly ToolCall[]
  readonly callId?: string
  /** Fields of the message that we do not know, such as `reasoning_content`; sent back to servers that ask for them. */
  readonly kept?: Readonly<Record<string, unknown>>
}

/** `none` still shows the tools; a call made in spite of it is reported, and is the caller's to leave alone. */
export type Choice = 'auto' | 'required' | 'none' | { readonly name: string }

export type Trouble =
  | 'aborted'
  | 'idle'
  | 'timeout'
  | 'unreachable'
  | 'unauthorised'
  | 'no-credit'
  | 'unknown-model'
  | 'not-here'
  | 'too-long'
  | 'filtered'
  | 'busy'
  | 'rejected'
  | 'upstream'
  | 'cut'
  | 'unreadable'

export interface Spoken {
  readonly text: string
  readonly calls: readonly ToolCall[]
  /** Our own finding. Calls that are there count, whatever the server says; what the server said is in `finishReason`. */
  readonly finish: 'stop' | 'calls' | 'length' | 'filtered' | 'refused' | 'failed'
  readonly finishReason?: string
  readonly reasoning?: string
  readonly refusal?: string
  readonly error?: Trouble
  /** What went wrong, in plain words. Never the key, never a stack. */
  readonly message?: string
  /** What its status says, in our words; never the server’s. */
  readonly reason?: string
  /** How many seconds the server wants to be left alone. */
  readonly patience?: number
  /** How many requests it took, with those that were refused and sent otherwise. */
  readonly sent?: number
  readonly usage?: Readonly<Record<string, unknown>>
  /** What was asked and answered: counted by the server, or guessed where it did not say. */
  readonly tokens?: number
  readonly kept?: Readonly<Record<string, unknown>>
}

export interface Asking {
  readonly messages: readonly Message[]
  readonly tools?: readonly Tool[]
  readonly choice?: Choice
  readonly stream?: boolean
}

/** A request, or a part of one, as JSON. */
export type Body = Readonly<Record<string, unknown>>

export interface Endpoint {
  /** Where questions go, without user name, password or query: it may be printed. */
  readonly address: string
  readonly model: string
  readonly hasKey: boolean
  /** Never throws for a fault of the server: the fault is in what was spoken. */
  say(asking: Asking, options?: { signal?: AbortSignal; onText?: (piece: string) => void }): Promise<Spoken>
}

export const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)
