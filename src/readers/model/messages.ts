// This file is about the message as the model sees it: quantities tagged, and what the talk has settled so far, last.
import { isQuantity, type Job, show, vocabulary } from '../../../engine/index.ts'
import type { Heard } from '../reader.ts'

/** The message with every quantity marked: `[u1: 12 in] holes [u2: 24 in] deep`. */
export function taggedMessage({ said, readings }: Heard): string {
  let text = ''
  let at = 0
  for (const reading of readings) {
    text += `${said.slice(at, reading.start)}[${reading.tag}: ${reading.said}]`
    at = reading.end
  }
  return text + said.slice(at)
}

/** What was decided, asked and wanted before: the last thing in the prompt, since it changes every turn. */
export function talkSoFar(job: Job): string {
  const lines = [
    ...job.decisions
      .filter((it) => !it.of)
      .map((it) => `known: ${it.word} at ${it.at} = ${isQuantity(it.value) ? show(it.value) : String(it.value)}`),
    ...job.wanted.map((it) => `wanted last: ${it.word} at ${it.at}`),
    ...job.asked.map((it) => `asked of the person: ${it.word} at ${it.at} (${vocabulary.get(it.word)?.ask ?? ''})`),
    ...job.results.map((it) => `earlier result: ${it.ref} (${vocabulary.get(it.word)?.label ?? it.word} at ${it.at})`),
  ]
  return lines.length === 0 ? 'This is the first message.' : lines.join('\n')
}
