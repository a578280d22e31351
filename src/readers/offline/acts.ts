// This file is about what a message asks to be done with the job as a whole: take back, keep, compare, explain, say what is next.
import { boughtOf, type Job, vocabulary } from '../../../engine/index.ts'
import type { Act, Told } from '../../request.ts'
import type { Hit } from './lexicon.ts'
import { lengthAt, list, pairs, type Phrases, phrasesOf, type Words, wordsOf } from './phrases.ts'
import type { Token } from './stems.ts'

const act = (name: Act['act'], more: Partial<Act> = {}): Act => ({
  act: name,
  word: null,
  at: null,
  name: null,
  between: null,
  ...more,
})

const these = list('that, it, this, the last change, my last change, the last one, the change')
const undoes = phrasesOf([
  ...pairs(list('undo, revert, cancel, reverse, forget, scratch, drop'), [
    ...these,
    'what i said',
    'what i just said',
    'what i told you',
  ]),
  ...pairs(
    list('take, put, turn, change'),
    list('that back, it back, back that, back the last change, things back, everything back'),
  ),
  ...list(
    'undo, go back one, go back a step, one step back, as it was before, back to how it was, never mind that, no go back',
  ),
])
const redoes = phrasesOf([
  ...list('redo, do it after all, put it back in, put that back in, as you were, undo the undo'),
  ...pairs(list('redo, reinstate, restore'), these),
])
const explains = phrasesOf([
  ...list(
    'why that many, why so many, why so few, why that much, why so much, why is it, why is that, why are there, why do i need, why do we need, why does it take, why this many, how did you get, how do you get, how did you come to, how did you arrive, how did you work, how come, where does that, where do you get, where did you get, where does the, where did that, where do those, explain, show me how, show how, walk me through, what is that made of, what goes into, how was that, how is that, how does that come, how you get that, how you got that, how you got there, how did you come up, how do you come up, how did you figure, how do you figure, how did you reckon, how do you reckon, where is that from, what is that based on, what is behind that, show your working, show the working, show me the working, show the math, show the maths, break that down, break it down, talk me through',
  ),
  ...list("how'd you get, how'd you come, how'd you figure, how'd you work, where'd you get, where'd that"),
])
const nexts = phrasesOf([
  ...list(
    'what next, what now, what comes next, what is next, next question, whats next, what is left to decide, what is still open, what is still missing, what is missing',
  ),
  ...pairs(
    list(
      'what should i, what should we, what do i, what do we, what must i, what else should i, what else do i, what else must i',
    ),
    list(
      'decide, decide next, tell you, tell you next, settle, settle next, choose next, measure next, give you, give you next, do next, figure out next',
    ),
  ),
  ...pairs(
    list('what do you, what else do you, what more do you'),
    list('need, need to know, want to know, still need'),
  ),
])
const assumes = phrasesOf([
  ...pairs(
    list('what have you, what did you, what are you, what else have you, what all have you, which things have you'),
    list(
      'assumed, assume, assuming, guessed, guess, guessing, taken as usual, taken for granted, take for granted, take as usual, take as read, presume, presumed, presuming, count on, counting on, reckon on, made up, supposed',
    ),
  ),
  ...list(
    'what is assumed, what is still assumed, still assumed, your assumptions, the assumptions, list assumptions, list of assumptions, any assumptions, which assumptions, what assumptions, what is taken as usual, what is guessed',
  ),
])
const sensitives = phrasesOf([
  ...list(
    'what matters most, which matters most, what makes the most difference, what makes the biggest difference, what moves the bill, what changes the bill, what would change the bill, what drives the cost, what drives the price, how sensitive, where can i save, where could i save',
  ),
])
const compares = phrasesOf(
  list(
    'compare, side by side, versus, vs, what is the difference between, difference between, which comes out cheaper, against each other',
  ),
)
const keeps = phrasesOf([
  ...pairs(
    list('keep, save, remember, store, note, call, name, hold'),
    list('this as, this plan as, it as, that as, this version as, the plan as, this one as, as, this, this plan, it'),
  ),
])
const turns = phrasesOf(list('go back to, switch to, turn to, back to, use, go with, return to, take, load'))

const asksOfSpare =
  /\b(did you|have you|are you|does (that|this|it)|do those|is there|was there)\b.{0,20}\b(allow|add|count|include|figure|reckon|build|built|got|any|some)\w*\b.{0,16}\b(extra|waste|wastage|spare|spares|spill|spillage|slop|breakage|margin)\b/i

/** Where the first of some phrases begins, and how long it is. */
function find(phrases: Phrases, words: Words): { at: number; length: number } | undefined {
  for (let at = 0; at < words.length; at++) {
    const length = lengthAt(phrases, words, at)
    if (length > 0 && !denies(words, at)) return { at, length }
  }
  return undefined
}

/** “Do not undo anything”: what is denied is not asked for. */
const denies = (words: Words, at: number): boolean =>
  words
    .slice(Math.max(0, at - 2), at)
    .some((forms) => forms.some((it) => /^(not|n't|don't|dont|never|without)$/.test(it)))

const isEnd = (token: Token | undefined): boolean => token === undefined || /^[.;?!\n]$/.test(token.text)

/** The words after a phrase, to the end of the sentence, without quotes and small words: a plan's name. */
function nameAfter(message: readonly Token[], from: number, said: string): string | null {
  let to = from
  while (!isEnd(message[to])) to++
  let start = from
  while (start < to && /^(as|plan|the|called|named|“|"|'|:|,)$/.test((message[start] as Token).stem)) start++
  const [first, last] = [message[start], message[to - 1]]
  if (start >= to || !first || !last) return null
  const name = said
    .slice(first.start, last.end)
    .replace(/^["“'‘]|["”'’]$/g, '')
    .trim()
  return name.length > 0 && name.length <= 40 ? name : null
}

/** What is asked to be done. A message that tells or asks something else besides still does. */
export function actsIn(
  message: readonly Token[],
  hits: readonly Hit[],
  job: Job,
  said: string,
  between: () => Told[],
): Act[] {
  const words = wordsOf(message)
  const measured = message.some((token) => token.measured)
  const hasPlan = job.decisions.length > 0
  const start = find(undoes, words)
  // “No, forget the extra, back to how it was”: late in a long message it is said of something else.
  if (start && !measured && start.at <= (message.length <= 12 ? 8 : 4)) {
    const times = /\b(twice|two changes|last two)\b/i.test(said) ? 2 : 1
    return Array.from({ length: times }, () => act('undo'))
  }
  if (find(redoes, words) && !measured && hasPlan) return [act('redo')]
  const kept = keptIn(job, said)
  const keeping = find(keeps, words)
  if (keeping && keeping.at <= 3 && hasPlan) {
    const name = nameAfter(message, keeping.at + keeping.length, said)
    if (name) return [act('keep', { name })]
  }
  if (find(compares, words) && hasPlan) {
    const values = between()
    if (values.length > 1 || kept.length > 0 || !measured)
      return [act('compare', { name: kept[0] ?? null, between: values.length > 1 ? values : null })]
  }
  if (find(turns, words) && kept.length === 1) return [act('turn-to', { name: kept[0] as string })]
  if (!hasPlan) return []
  if (
    /\b(still|left|more|remaining|yet)\b[^.?!]{0,30}\b(buy|get|order|pick up|need)\b|\bhow many more\b|\b(buy|get|order)\b[^.?!]{0,20}\b(still|left|more)\b/i.test(
      said,
    ) &&
    boughtOf.some((it) => job.decisions.some((old) => old.word === it.bought.name))
  )
    return [act('still-to-buy')]
  // “Did you allow any extra?”: what was taken says so, and where it was told, the working does.
  const isOfSpare = !measured && job.results.length > 0 && asksOfSpare.test(said)
  if (isOfSpare && job.decisions.some(({ word }) => /spare/i.test(word))) return [act('explain')]
  if (
    isOfSpare ||
    find(assumes, words) ||
    (/\b(assum|guess)/i.test(said) && /\b(what|which|any|your|list)\b/i.test(said))
  )
    return [act('assumed')]
  if (
    find(sensitives, words) ||
    /\bmatters?\b.{0,80}\bmost\b|\b(most|biggest|largest) difference\b|\b(moves?|changes?|drives?) (the|my) (bill|cost|price)/i.test(
      said,
    )
  )
    return [act('sensitive')]
  if (
    (find(nexts, words) ||
      /^(so |ok |and )?what(['’]?s| is| are)? (next|now|missing|still (missing|open|needed)|left( to (decide|tell|settle|do))?)\b/i.test(
        said.trim(),
      )) &&
    !measured
  )
    return [act('next')]
  const asksWhy = find(explains, words) ?? (message[0]?.stem === 'why' ? { at: 0, length: 1 } : undefined)
  if (asksWhy && job.results.length > 0 && !measured) {
    const known = new Set(job.results.map((it) => it.word))
    const named = hits.find((hit) => hit.sort !== 'side' && hit.sort !== 'option' && isKnown(hit.word, known))
    const isBare = message.length <= 8 || named !== undefined
    if (isBare) return [act('explain', { word: named ? (nearestKnown(named.word, known) ?? null) : null })]
  }
  return []
}

const isKnown = (word: string, known: ReadonlySet<string>): boolean => nearestKnown(word, known) !== undefined

/** The word itself where it was answered, else one that counts the same thing: “why so many pickets” of those to buy. */
function nearestKnown(word: string, known: ReadonlySet<string>): string | undefined {
  if (known.has(word)) return word
  const noun = vocabulary.get(word)?.noun
  return noun ? [...known].find((it) => vocabulary.get(it)?.noun === noun) : undefined
}

/** Names of kept plans that the message speaks of. */
const keptIn = (job: Job, said: string): string[] =>
  job.kept.map((it) => it.name).filter((name) => said.toLowerCase().includes(name.toLowerCase()))
