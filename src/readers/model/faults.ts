// This file is about what a person is told when a model could not be asked, or did not answer: what is wrong, and which setting mends it.
import type { Endpoint, Spoken } from './endpoint.ts'
import type { Trouble } from './speech.ts'

type At = Pick<Endpoint, 'address' | 'model' | 'hasKey'>

/** A sentence or two for the person; undefined where there is an answer to read. */
export function faultOf(spoken: Spoken, at: At): string | undefined {
  if (spoken.error) return told(spoken.error, spoken, at)
  if (spoken.finish === 'filtered') return told('filtered', spoken, at)
  if (spoken.finish === 'refused') return `The model “${at.model}” would not read this message.`
  return undefined
}

function told(trouble: Trouble, { reason, patience }: Spoken, { address, model, hasKey }: At): string {
  switch (trouble) {
    case 'unauthorised':
      return hasKey
        ? `The server at ${address} did not accept the key. Look at OPENAI_API_KEY, and whether the key belongs to this address.`
        : `The server at ${address} wants a key, and none is set. Put it in OPENAI_API_KEY.`
    case 'no-credit':
      return `The account at ${address} has used up what it may spend. Look at the account, or set another key in OPENAI_API_KEY.`
    case 'unknown-model':
      return `The server at ${address} does not know the model “${model}”. Look at PLUMBPOST_MODEL.`
    case 'not-here':
      return `There is nothing at ${address} that answers questions. Look at OPENAI_BASE_URL: it usually ends in /v1.`
    case 'unreachable':
      return `Nothing answers at ${address}. Look at OPENAI_BASE_URL, and whether the server runs and this machine is online.`
    case 'unreadable':
      return `What answers at ${address} does not speak as a model’s server does. Look at OPENAI_BASE_URL: it usually ends in /v1.`
    case 'too-long':
      return `The model “${model}” cannot hold a question of this length. Name one that holds more in PLUMBPOST_MODEL, or let the server give it more room.`
    case 'filtered':
      return `A filter at ${address} stopped this message.`
    case 'busy':
      return patience === undefined
        ? `The server at ${address} is asked too much at the moment. Ask again in a while.`
        : `The server at ${address} is asked too much at the moment, and wants to be left alone for ${inWords(patience)}.`
    case 'idle':
      return `The server at ${address} began to answer and went quiet. Ask again in a while.`
    case 'cut':
      return `The server at ${address} broke off in the middle of its answer. Ask again.`
    case 'timeout':
      return `The server at ${address} did not answer in time. Ask again in a while; where the model is slow, give it more seconds in PLUMBPOST_PATIENCE.`
    case 'upstream':
      return `The server at ${address} failed while answering; that lies with it and not with you.${added(reason)} Ask again in a while.`
    case 'rejected':
      return `The server at ${address} did not take the question for the model “${model}”.${added(reason)} Look at PLUMBPOST_MODEL and OPENAI_BASE_URL.`
    case 'aborted':
      return 'The question was taken back before it was read.'
    default:
      return trouble satisfies never
  }
}

const added = (reason: string | undefined): string => (reason === undefined ? '' : ` ${reason}`)

// No number: every figure of a reply is the engine’s or the person’s own.
const inWords = (seconds: number): string =>
  seconds <= 20 ? 'some seconds' : seconds <= 90 ? 'a minute' : seconds < 3600 ? 'some minutes' : 'an hour or more'
