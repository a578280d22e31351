// This file is about what sort of talk a message is: a greeting, a question how to do something, a question for a measure.
import type { Heard } from '../reader.ts'
import { stem, type Token } from './stems.ts'

const howWords = new Set(
  'should which why better best vs versus kind sort type ok okay worth necessary advice tip how can when need where what is are do does will or any safe good bad right wrong'
    .split(' ')
    .map(stem),
)
export const isAboutHow = (message: readonly Token[]): boolean => message.some((token) => howWords.has(token.stem))

/** "How far has the gate dropped?" asks for a figure, though it gives none. */
export const asksHowMuch = (message: readonly Token[]): boolean =>
  message.some(({ stem: word }, i) => word === 'how' && measures.has(message[i + 1]?.stem ?? ''))

const measures = new Set('much many far deep wide high tall long big large heavy thick strong'.split(' '))

/** "Hello", "thanks", "what can you do?": said to be polite, or to find out. */
export function isSmallTalk(message: readonly Token[]): boolean {
  const words = message.filter((token) => /\p{L}/u.test(token.text)).map((token) => token.stem)
  if (words.length === 0 || words.length > 6) return false
  return /^(hello|hi|hey|hiya|g'day|gday|howdy|morning|good morning|good afternoon|good evening|thank|thanks|cheer|cheers|ta|ok|okay|yes|yep|no|nope|great|nice|bye|goodbye|help|what can you do|what do you do|who are you|how do you work|how does this work)\b/.test(
    words.join(' '),
  )
}

/** "Yes" to "is it really …?" */
export function confirmsIn(message: readonly Token[], heard: Heard): string[] {
  if (heard.readings.length > 0) return []
  const first = message[0]?.stem ?? ''
  return /^(yes|yep|yeah|yup|right|correct|really|sure|confirmed|indeed|aye|true)$/.test(first)
    ? heard.job.asked.map((it) => it.word)
    : []
}
