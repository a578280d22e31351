// This file is about the model as a reader: its calls make up the same typed request as the offline reader returns, or it is not believed.
import type { Allowance } from '../../allowance.ts'
import { readingPrompt } from '../../prompts.ts'
import type { Request } from '../../request.ts'
import { isUrgent } from '../offline/emergencies.ts'
import { ownReading, readOffline } from '../offline/offline.ts'
import { isForeign } from '../language.ts'
import type { Heard, Heed, Reader } from '../reader.ts'
import type { Endpoint, Message, Spoken, ToolCall } from './endpoint.ts'
import { faultOf } from './faults.ts'
import { nothingYet, withCall } from './merging.ts'
import { talkSoFar, taggedMessage } from './messages.ts'
import { isOfNotes, isOfValues, soundParts } from './sound.ts'
import { calledAs, toolsOffered } from './tools.ts'
import { catalogueText, wordsFor } from './vocabulary.ts'

export function createModelReader(endpoint: Endpoint): Reader {
  const system = `${readingPrompt()}\n\n${catalogueText()}`

  async function read(heard: Heard, allowance: Allowance, signal?: AbortSignal): Promise<Heed | 'halted'> {
    // An emergency is not sent anywhere first: every second counts.
    const own = ownReading(heard)
    if (isUrgent(own)) return { request: own, by: 'offline' }
    const messages: Message[] = [
      { role: 'system', content: system },
      { role: 'user', content: messageWith(heard) },
    ]
    let request = nothingYet
    let before: readonly string[] = []
    let namedNoNote = false
    let toldAmiss = false
    for (let why: 'work' | 'repair' = 'work'; allowance.spend(why); why = 'repair') {
      const spoken = await endpoint.say({ messages, tools: toolsOffered, choice: 'required' }, signal ? { signal } : {})
      allowance.count(spoken.tokens ?? 0)
      if (spoken.error === 'aborted') return 'halted'
      const fault = faultOf(spoken, endpoint)
      if (fault) return fallBack(heard, fault)
      const taken = takeCalls(spoken, request, heard)
      request = taken.request
      if (taken.wrong.length === 0) {
        before = []
        break
      }
      // The same mistake twice is not waited upon a third time.
      const isAgain = taken.wrong.every((it) => before.includes(it))
      before = taken.wrong
      namedNoNote ||= taken.wrong.some(isOfNotes)
      toldAmiss ||= taken.wrong.some(isOfValues)
      messages.push(asSaid(spoken), ...taken.replies)
      if (isAgain) break
    }
    // What cannot be traced to the message is left out, and said to be. What could not even be read may have held anything.
    if (before.some((it) => it.startsWith(untold)))
      return fallBack(heard, `The model “${endpoint.model}” did not hand over what I could use. ${otherModel}`)
    // Where it meant something by a size that we could not take, another reading of that size is no answer.
    if (isEmpty(request) && !toldAmiss && !isEmpty({ ...own, declines: [] }))
      return fallBack(heard, `The model “${endpoint.model}” made nothing of this.`)
    // Advice that it asked for by names of its own making: the message may say which.
    const notes = namedNoNote && request.notes?.length === 0 ? own.notes : request.notes
    return readBy(heard, { ...request, ...(notes ? { notes } : {}) })
  }
  return { front: 'model', read }
}

const readBy = ({ said }: Heard, request: Request): Heed => ({
  request,
  by: 'model',
  ...(isForeign(said)
    ? {
        notice:
          'I answer in English: only there have I been over the numbers, units and cautions with care. Look under “How I read it” whether I understood you.',
      }
    : {}),
})

const isEmpty = ({ told, wants, calculation, confirms, notes, acts, either, declines }: Request): boolean =>
  calculation === null && [told, wants, confirms, notes, acts, either, declines].every((it) => (it ?? []).length === 0)

const otherModel = 'If that goes on, name another model in PLUMBPOST_MODEL.'

const messageWith = (heard: Heard): string =>
  [wordsFor(heard), talkSoFar(heard.job), `The message:\n${taggedMessage(heard)}`]
    .filter((part) => part !== '')
    .join('\n\n')

const fallBack = (heard: Heard, fault: string): Heed => ({
  request: readOffline(heard),
  by: 'offline',
  notice: `${fault} So I read this without a model.`,
})

/** Marks what could not be read at all. */
const untold = 'Not taken. '

interface Taken {
  readonly request: Request
  readonly wrong: readonly string[]
  readonly replies: readonly Message[]
}

/** The calls of one reply on top of what stood before, and an answer to each for the model. */
function takeCalls(spoken: Spoken, stood: Request, heard: Heard): Taken {
  if (spoken.calls.length === 0) {
    const content = `${untold}Call the tools. Do not answer in words.`
    return { request: stood, wrong: [content], replies: [{ role: 'user', content }] }
  }
  const called = spoken.calls.map(calledBy)
  const all = called.reduce((request, it) => ('wrong' in it ? request : withCall(request, it)), stood)
  const { request, unsound } = soundParts(all, heard)
  const unreadable = called.flatMap((it) => ('wrong' in it ? [it.wrong] : []))
  const replies = spoken.calls.map((call, i): Message => {
    const it = called[i]
    const content = it && 'wrong' in it ? it.wrong : i === 0 && unsound.length > 0 ? unsound.join('\n') : 'Taken.'
    return { role: 'tool', content, callId: call.id }
  })
  return { request, wrong: [...unreadable, ...unsound], replies }
}

function calledBy(call: ToolCall): ReturnType<typeof calledAs> {
  const it =
    call.state === 'ok' || call.state === 'unknown-tool'
      ? calledAs(call.name, call.args)
      : { wrong: 'The arguments are not whole JSON. Send them again.' }
  return 'wrong' in it ? { wrong: `${untold}${it.wrong}` } : it
}

const asSaid = (spoken: Spoken): Message => ({
  role: 'assistant',
  content: spoken.text,
  ...(spoken.calls.length > 0 ? { calls: spoken.calls } : {}),
  ...(spoken.kept ? { kept: spoken.kept } : {}),
})
