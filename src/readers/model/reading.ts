// This file is about the model as a reader: it returns the same typed request as the offline reader, or is not believed.
import { z } from 'zod'
import { readingPrompt } from '../../prompts.ts'
import { type Request, requestSchema } from '../../request.ts'
import { isUrgent } from '../offline/emergencies.ts'
import { readOffline } from '../offline/offline.ts'
import type { Heard, Heed, Reader } from '../reader.ts'
import type { Endpoint, Message, Spoken, Tool } from './endpoint.ts'
import { talkSoFar, taggedMessage } from './messages.ts'
import { portableSchema } from './schemas.ts'
import { catalogueText, wordsFor } from './vocabulary.ts'

/** A turn may call the model four times in all, two of them repairs: one repair here, one for the prose. */
const repairs = 1

export function createModelReader(endpoint: Endpoint): Reader {
  const system = `${readingPrompt()}\n\n${catalogueText()}`
  const tool: Tool = {
    name: 'request',
    description: 'Hands over what the message tells and wants.',
    parameters: portableSchema(requestSchema),
  }

  async function read(heard: Heard, signal?: AbortSignal): Promise<Heed | 'halted'> {
    // An emergency is not sent anywhere first: every second counts.
    const own = readOffline(heard)
    if (isUrgent(own)) return { request: own, by: 'offline' }
    const messages: Message[] = [
      { role: 'system', content: system },
      {
        role: 'user',
        content: [wordsFor(heard), talkSoFar(heard.job), `The message:\n${taggedMessage(heard)}`]
          .filter((part) => part !== '')
          .join('\n\n'),
      },
    ]
    for (let attempt = 0; attempt <= repairs; attempt++) {
      const spoken = await endpoint.say({ messages, tools: [tool], choice: 'required' }, signal ? { signal } : {})
      if (spoken.error === 'aborted') return 'halted'
      if (spoken.error)
        return fallBack(
          heard,
          `I could not reach the model at ${endpoint.address} (${spoken.message ?? spoken.error}). I read this myself.`,
        )
      const understood = requestIn(spoken)
      if (understood.ok) return { request: understood.request, by: 'model' }
      messages.push(...said(spoken), ...complaint(spoken, understood.why))
    }
    return fallBack(heard, 'The model did not hand over a request I could use. I read this myself.')
  }
  return { front: 'model', read }
}

const fallBack = (heard: Heard, notice: string): Heed => ({ request: readOffline(heard), by: 'offline', notice })

function requestIn(spoken: Spoken): { ok: true; request: Request } | { ok: false; why: string } {
  const call = spoken.calls[0]
  if (!call) return { ok: false, why: 'Call the tool `request`. Do not answer in words.' }
  if (call.name !== 'request') return { ok: false, why: `There is no tool “${call.name}”. The tools are: request.` }
  if (call.state !== 'ok') return { ok: false, why: 'The arguments are not whole JSON. Send them again.' }
  const parsed = requestSchema.safeParse(call.args)
  return parsed.success
    ? { ok: true, request: parsed.data }
    : { ok: false, why: `The request does not fit: ${z.prettifyError(parsed.error)}` }
}

const said = (spoken: Spoken): Message[] => [
  {
    role: 'assistant',
    content: spoken.text,
    ...(spoken.calls.length > 0 ? { calls: spoken.calls } : {}),
    ...(spoken.kept ? { kept: spoken.kept } : {}),
  },
]

const complaint = (spoken: Spoken, why: string): Message[] =>
  spoken.calls.length > 0
    ? spoken.calls.map((call) => ({ role: 'tool' as const, content: why, callId: call.id }))
    : [{ role: 'user', content: why }]
