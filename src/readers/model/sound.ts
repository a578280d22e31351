// This file is about what a model’s request holds that the message, the vocabulary or the talk do not: it is told so, once, in time to mend it.
import { calculationNamed, catalogue, isPlace, noteNamed, vocabulary } from '../../../engine/index.ts'
import { checkBindings } from '../../guard/bindings.ts'
import { wordsOfMessage } from '../../guard/spans.ts'
import type { Act, Request } from '../../request.ts'
import type { Heard } from '../reader.ts'

export interface Sound {
  /** The request without what does not hold. */
  readonly request: Request
  /** What does not hold, a sentence for the model each. */
  readonly unsound: readonly string[]
}

export function soundParts(request: Request, heard: Heard): Sound {
  // What the person wrote that nobody can bind, a range for one figure, is told to the person instead.
  const { held, refused: all } = checkBindings(request, heard, 0)
  const refused = all.filter((it) => !it.isOfTheWords)
  const isRefused = (word: string): boolean => refused.some((it) => it.word === word)
  const [told, wants] = [
    // Of a word that is told twice the first stays.
    request.told.filter((it) => !isRefused(it.word) || held.some(({ word, at }) => word === it.word && at === it.at)),
    request.wants.filter((it) => given.has(it.word) && isPlace(it.at)),
  ]
  const [notes, acts] = [
    (request.notes ?? []).filter(noteNamed),
    (request.acts ?? []).filter((it) => isNamed(it, heard)),
  ]
  const isCalculation = request.calculation === null || calculationNamed(request.calculation) !== undefined
  const either = (request.either ?? []).filter(
    ({ tag, words }) =>
      heard.readings.some((it) => it.tag === tag) && words.filter((it) => vocabulary.has(it)).length > 1,
  )
  const unsound = [
    ...refused.map((it) => `${it.word}${notTaken}${it.why}. Tell it anew, or leave it out.`),
    ...left(request.wants, wants).map((it) => `There is nothing to want called “${it.word}” at “${it.at}”.`),
    ...left(request.notes ?? [], notes).map((it) => `${noAdvice} “${it}” at hand.`),
    ...left(request.acts ?? [], acts).map(() => 'The name of a plan is in words of the message.'),
    ...left(request.either ?? [], either).map(() => 'Ask with a tag of the message and two words of the vocabulary.'),
    ...(isCalculation ? [] : [`There is no calculation “${request.calculation}”.`]),
  ]
  return {
    request: { ...request, told, wants, notes, acts, either, calculation: isCalculation ? request.calculation : null },
    unsound: [...new Set(unsound)],
  }
}

const notTaken = ' is not taken: '
/** Whether such a sentence is about a value that was told. */
export const isOfValues = (unsound: string): boolean => unsound.includes(notTaken)

const noAdvice = 'There is no advice'
/** Whether such a sentence is about advice that does not exist. */
export const isOfNotes = (unsound: string): boolean => unsound.startsWith(noAdvice)

/** The words that some calculation gives: nothing else can be wanted. */
const given = new Set(catalogue.flatMap((it) => Object.keys(it.gives)))

const left = <Item>(all: readonly Item[], kept: readonly Item[]): Item[] => all.filter((it) => !kept.includes(it))

/** A plan’s name is shown to the person, so it is theirs: in words of the message. */
const isNamed = ({ act, name }: Act, { said, readings }: Heard): boolean =>
  (act !== 'keep' && act !== 'turn-to') || (name !== null && wordsOfMessage(said, name, readings) !== undefined)
