// This file is about a word that is told to be another one: what a sum of the talk gives, or what was told of something else.
import {
  calculationNamed,
  type Decision,
  isList,
  isQuantity,
  type Job,
  vocabulary,
  type Word,
  yard,
} from '../../engine/index.ts'

type OfOther = Pick<Decision, 'value' | 'of'> & {
  readonly tag: null
  readonly firmness: 'exactly'
  readonly accepted: 'said'
}

/** The value of such a tag; nothing for any other. */
export const ofOther = (tag: string, word: Word, job: Job): OfOther | undefined =>
  givenBySum(tag, job) ?? toldOfOther(tag, word, job)

/** `worked.pickets-by-length.picketsToBuy`: what that sum gives, now or when it can be worked. */
function givenBySum(tag: string, job: Job): OfOther | undefined {
  const [, calculation = '', word = ''] = /^worked\.([^.]+)\.([^.]+)$/.exec(tag) ?? []
  const isAny = calculation === '*' && vocabulary.has(word)
  if (!isAny && !calculationNamed(calculation)?.gives[word]) return undefined
  const known = job.results.findLast(
    (it) => it.word === word && (isAny || it.calculation === calculation) && it.at === yard,
  )?.value
  const value = isQuantity(known) ? known : null
  return { value, tag: null, firmness: 'exactly', accepted: 'said', of: { word, calculation } }
}

/** `told.bagWeight`, `told.spentPrices.2`: what was told of another word, which is this one now: what a bag weighs, of what a piece weighs. */
function toldOfOther(tag: string, word: Word, job: Job): OfOther | undefined {
  const told = tag.startsWith('told.')
    ? job.decisions.find((it) => `told.${it.word}` === tag && it.at === yard)
    : undefined
  const [, list = '', at = ''] = /^told\.(\w+)\.(\d+)$/.exec(tag) ?? []
  const inList = job.decisions.find((it) => it.word === list && it.at === yard)?.value
  const one = isList(inList) ? inList[Number(at)] : undefined
  if (one && isQuantity(one) && one.kind === word.kind)
    return { value: one, tag: null, firmness: 'exactly', accepted: 'said' }
  if (!isQuantity(told?.value) || told.value.kind !== word.kind) return undefined
  return { value: told.value, tag: null, firmness: 'exactly', accepted: 'said' }
}
