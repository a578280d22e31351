// This file is about what went wrong between us and a server, in words for a person. No key and no stack ever stands in them.
import { APIConnectionTimeoutError, APIError } from 'openai'
import type { Refusal } from './profile.ts'
import { isRecord, type Trouble } from './speech.ts'

export interface Mishap {
  readonly trouble: Trouble
  readonly message: string
  readonly reason?: string
  readonly patience?: number
  readonly refusal?: Refusal
}

const plainly: Readonly<Record<Trouble, string>> = {
  aborted: 'The question was taken back before the answer came.',
  idle: 'The server began to answer, then went quiet.',
  timeout: 'The server did not answer in time.',
  unreachable: 'Nothing answers at this address.',
  unauthorised: 'The server did not accept the key.',
  'no-credit': 'The account has used up what it may spend.',
  'unknown-model': 'The server does not know this model.',
  'not-here': 'There is nothing at this address that answers questions.',
  'too-long': 'The question is too long for this model.',
  filtered: 'The server’s filter stopped the question.',
  busy: 'The server is asked too much at the moment.',
  rejected: 'The server did not take the question.',
  upstream: 'The server failed while answering.',
  cut: 'The answer stopped before its end.',
  unreadable: 'The server sent something that is not an answer.',
}

/** What a status says, in our words: what a server writes beside it is as little trusted as what a model writes, and is not shown. */
const reasons: Readonly<Record<number, string>> = {
  400: 'It finds fault with how the question was put.',
  413: 'It finds the question too large.',
  422: 'It finds fault with how the question was put.',
  501: 'It cannot do what was asked of it.',
  502: 'Something stands before it and cannot reach it.',
  503: 'It is starting, or not taking questions now.',
}

export const mishap = (trouble: Trouble): Mishap => ({ trouble, message: plainly[trouble] })

export function mishapOf(fault: unknown): Mishap {
  if (fault instanceof APIConnectionTimeoutError) return mishap('timeout')
  if (!(fault instanceof APIError) || fault.status === undefined) return mishap('unreachable')
  const refused = refusedWith(Number(fault.status), fault.error)
  const patience = Number((fault.headers as Headers | undefined)?.get('retry-after') ?? Number.NaN)
  return refused.trouble === 'busy' && patience > 0 ? { ...refused, patience: Math.ceil(patience) } : refused
}

/** A status and a body, or an error inside an answer. */
export function refusedWith(status: number | undefined, body: unknown): Mishap {
  const words = wordsIn(body).join('\n')
  const trouble = troubleOf(status, words)
  const reason = status === undefined ? undefined : reasons[status]
  return {
    ...mishap(trouble),
    ...(reason === undefined ? {} : { reason }),
    ...(status === undefined || trouble === 'unauthorised' ? {} : { refusal: { status, words } }),
  }
}

function troubleOf(status: number | undefined, words: string): Trouble {
  if (status === 401 || status === 403 || /invalid_api_key|incorrect api key|invalid api key/i.test(words))
    return 'unauthorised'
  if (status === 402 || /insufficient_quota|billing|credit balance|no credit|out of credits/i.test(words))
    return 'no-credit'
  if (/content.?filter|content management policy|responsible.?ai/i.test(words)) return 'filtered'
  if (/context.?(length|window|size)|too many tokens|maximum context/i.test(words)) return 'too-long'
  if (
    /model_not_found|\bmodel\b.{0,80}(not (found|exist)|does not exist|unknown|not available|no such)|(unknown|no such|invalid) model/is.test(
      words,
    )
  )
    return 'unknown-model'
  if (status === 404 || status === 405) return 'not-here'
  if (status === 408 || status === 504) return 'timeout'
  if (status === 429) return 'busy'
  return status === undefined || status >= 500 ? 'upstream' : 'rejected'
}

/** Every text in a value, however deep. */
function wordsIn(value: unknown): string[] {
  if (typeof value === 'string') return [value]
  if (Array.isArray(value)) return value.flatMap(wordsIn)
  return isRecord(value) ? Object.values(value).flatMap(wordsIn) : []
}
