// This file is about telling a turn in the terminal: its card as soon as the figures are there, a model's sentences after it.
import type { Answer } from '../answer.ts'
import type { Answered, Assistant } from '../assistant.ts'
import { inTerminal, lookFor, wordsInTerminal } from './terminal.ts'

/** Where it is told: a terminal is watched, and what is no terminal is read when all is there. */
interface Output {
  readonly isTTY?: boolean
  readonly columns?: number
  write(text: string): unknown
}

export async function tell(
  assistant: Assistant,
  asked: Parameters<Assistant['turn']>[0],
  output: Output,
  env: Readonly<Record<string, string | undefined>>,
): Promise<Answered> {
  const look = lookFor(output, env)
  let isCardTold = false
  const answered = await assistant.turn(asked, ({ event, data }) => {
    if (event !== 'card' || output.isTTY !== true) return
    isCardTold = true
    output.write(`${inTerminal(asked.said, data as Answer, look)}\n`)
  })
  const { answer } = answered
  if (!isCardTold) output.write(`${inTerminal(asked.said, answer, look)}\n`)
  else {
    const words = answer.prose || answer.unwritten
    if (words) output.write(`${wordsInTerminal(words, look)}\n`)
  }
  return answered
}
