// This file is about talking to the assistant in a test: a list of messages in, the answers out.
import type { Answer, Turn } from '../../src/answer.ts'
import { createAssistant, type Writer } from '../../src/assistant.ts'
import { offlineReader } from '../../src/readers/offline/offline.ts'
import type { Reader } from '../../src/readers/reader.ts'

/** Holds a conversation, each turn standing on the ones before as they would come back from the store. */
export async function talk(
  messages: readonly string[],
  reader: Reader = offlineReader,
  writer?: Writer,
): Promise<Answer[]> {
  const assistant = createAssistant(reader, writer)
  const turns: Turn[] = []
  for (const said of messages) {
    const { answer, job } = await assistant.turn({ said, before: turns })
    turns.push(JSON.parse(JSON.stringify({ n: turns.length, said, answer, job })) as Turn)
  }
  return turns.map((turn) => turn.answer)
}

/** The figures that answer, as `word: text`. */
export const headlines = (answer: Answer | undefined): Record<string, string> =>
  Object.fromEntries(
    (answer?.calls ?? [])
      .flatMap((call) => call.results)
      .filter((it) => it.headline)
      .map((it) => [it.word, it.text]),
  )

/** Every result of the answer, as `word: text`. */
export const results = (answer: Answer | undefined): Record<string, string> =>
  Object.fromEntries((answer?.calls ?? []).flatMap((call) => call.results).map((it) => [it.word, it.text]))

export const asked = (answer: Answer | undefined): string[] => (answer?.asks ?? []).map((it) => it.word)
