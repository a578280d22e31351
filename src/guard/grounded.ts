// This file is about a model's request held to the message, before anything is made of it. What is left in it is names that the program knows,
// tags, and the person's own words: nothing that a model wrote is ever read out, kept or exported.
import { calculationNamed, isPlace, type Job, noteNamed, vocabulary } from '../../engine/index.ts'
import type { Heard } from '../readers/reader.ts'
import type { Act, Request, Told } from '../request.ts'
import { folded } from './form.ts'
import { spansOf, wordsOfMessage } from './spans.ts'

/** The request of a model without what the message does not say. `own` is the offline reader's of the same message. */
export function grounded(request: Request, heard: Heard, own: Request): Request {
  const taken = new Set(request.told.flatMap((it) => it.from.tag ?? []))
  const told = (list: readonly Told[]): Told[] => list.flatMap((it) => toldIn(it, heard, own, taken))
  return {
    told: told(request.told),
    wants: request.wants.filter((it) => vocabulary.has(it.word) && isPlace(it.at)),
    calculation: request.calculation !== null && calculationNamed(request.calculation) ? request.calculation : null,
    confirms: request.confirms.filter((word) => own.confirms.includes(word) || isConfirmed(word, heard)),
    notes: (request.notes ?? []).filter((name) => noteNamed(name)),
    acts: actsSaid(request.acts ?? [], heard, own).map((it) => ({
      ...it,
      between: it.between ? told(it.between) : null,
    })),
    either: (request.either ?? []).filter(({ tag }) => heard.readings.some((it) => it.tag === tag)),
    declines: request.declines.map(({ why, quote }) => ({
      why,
      quote: wordsOfMessage(heard.said, quote, heard.readings) ?? '',
    })),
  }
}

/** A told value whose origin is a tag, an option or words of the message; else it says where it comes from no more. */
function toldIn(told: Told, heard: Heard, own: Request, taken: Set<string>): Told[] {
  const { tag, quote, option, usual } = told.from
  const word = vocabulary.get(told.word)
  if (!word || !isPlace(told.at)) return []
  const nothing: Told['from'] = { tag: null, quote: null, option: null, usual: null }
  const from = (it: Partial<Told['from']>): Told[] => [{ word: word.name, at: told.at, from: { ...nothing, ...it } }]
  if (option !== null) {
    const words = quote === null ? undefined : wordsOfMessage(heard.said, quote, heard.readings)
    const known = Object.hasOwn(word.options ?? {}, option)
    // “5 C is what in F”: a letter tells it where the offline reader takes it so.
    const isOwn = own.told.some((it) => it.word === told.word && it.from.option === option)
    return from(known && words !== undefined && (isOwn || tellsSomething(words)) ? { option, quote: words } : {})
  }
  if (tag !== null) {
    if (heard.readings.some((it) => it.tag === tag)) return from({ tag })
    return from(isEarlier(tag, heard.job) && pointsBack(told, heard, own) ? { tag } : {})
  }
  if (quote !== null) {
    const spans = spansOf(heard.said, quote, heard.readings)
    const [span] = spans
    if (!span) return from({})
    // What the program has tagged is known by its tag, however it is quoted.
    const within = spans.map(({ start, end }) => heard.readings.filter((it) => it.start >= start && it.end <= end))
    const tagged = within.find(([one, more]) => one && !more && !taken.has(one.tag)) ?? within[0] ?? []
    const [only] = tagged
    if (only && tagged.length === 1) {
      taken.add(only.tag)
      return from({ tag: only.tag })
    }
    return from({ quote: heard.said.slice(span.start, span.end) })
  }
  return usual && saysUsual.test(folded(heard.said)) ? from({ usual: true }) : []
}

/** Words that could say which option: more than "the" and "is". */
const tellsSomething = (words: string): boolean =>
  (folded(words).match(/\p{L}+/gu) ?? []).some(
    (it) =>
      it.length > 1 &&
      !/^(?:the|an|is|it|are|of|in|on|to|and|or|for|my|we|our|you|be|at|by|how|what|with|as)$/.test(it),
  )

const saysUsual =
  /\b(?:usual|usually|normal|normally|standard|default|typical|typically|common|ordinary|regular|average|whatever|whichever|any will do|either|you (?:choose|pick|decide|say)|your (?:choice|pick|call)|up to you|(?:don't|do not|dont) (?:know|care|mind)|no idea|not sure|unsure|recommend(?:ed)?|suggest(?:ed)?|go with|go for|fine|yes|yep|yeah|ok|okay|sure|assume|guess|same as everyone|most people)\b/

const isEarlier = (tag: string, job: Job): boolean =>
  job.results.some((it) => it.ref === tag) || job.decisions.some((it) => `job.${it.word}` === tag)

/** Whether the message speaks of something that was told or worked before. */
function pointsBack({ word, from }: Told, heard: Heard, own: Request): boolean {
  if (own.told.some((it) => it.word === word && it.from.tag === from.tag)) return true
  const said = folded(heard.said)
  if (
    /\b(?:that|those|these|this|them|they|it|its|same|such|so many|so much|each of|all of|the (?:result|answer|number|figure|amount|total))\b/.test(
      said,
    )
  )
    return true
  const label = vocabulary.get(from.tag?.split('.').at(-1) ?? '')?.label ?? ''
  return folded(label)
    .split(/[^\p{L}]+/u)
    .some((it) => it.length > 3 && said.includes(it.replace(/s$/, '')))
}

const affirms =
  /^\W*(?:yes|yep|yeah|yup|right|correct|really|sure|confirmed?|indeed|aye|true|ok|okay|exactly|definitely|absolutely|certainly|of course)\b|\b(?:i (?:do )?mean it|i meant|that's (?:right|correct|it|true)|that is (?:right|correct|it|true)|it (?:really|truly) is|they (?:really|truly) are|it is really|it's really|really (?:is|are|that|so)|as i said|no (?:mistake|typo)|not a (?:mistake|typo)|i(?:'m| am) (?:sure|certain|positive)|i confirm|you heard (?:me )?right|i checked|measured it twice)\b/
const denies =
  /\b(?:not (?:sure|right|correct|really|true)|isn't (?:right|correct)|no longer|i was wrong|my mistake|a typo|wrong)\b/

/** A word that the program asked about, and a message that says yes to it. */
const isConfirmed = (word: string, { said, job }: Heard): boolean => {
  const text = folded(said).trim()
  const isYes =
    affirms.test(text) && !text.endsWith('?') && !(denies.test(text) && !/\bnot a (?:mistake|typo)\b/.test(text))
  return isYes && job.asked.some((it) => it.word === word)
}

const undoing =
  /\b(?:undo|undone|revert\w*|cancel\w*|reverse|forget|scratch|never ?mind|last change|as it was|as they were|how it was|before that|(?:take|put|turn|change|roll|switch|go|set|bring|step)\b.{0,40}\bback|back (?:to|again|one|a step|up|out)|(?:drop|strike|remove|withdraw|ignore|disregard|delete|discard) (?:it|that|this|my last|the last|what i))\b/
const redoing =
  /\b(?:redo|do it again|after all|back in|reinstate|restore|as you were|undo the undo|put .{0,30}\bagain)\b/
const keeping = /\b(?:keep|save|remember|store|note|call|name|hold|label|park|put .{0,20}\baside|set .{0,20}\baside)\b/
const denied =
  /\b(?:don't|do not|dont|never) (?:\w+ )?(?:undo|redo|revert|cancel|reverse|forget|drop|take|put|go|keep|save)\b/

/** What is done with the job hangs on words of the message; what only shows something does not. */
function actsSaid(acts: readonly Act[], heard: Heard, own: Request): Act[] {
  const said = folded(heard.said)
  const ownCount = (act: Act['act']): number => (own.acts ?? []).filter((it) => it.act === act).length
  const isSaid = (act: Act['act'], cue: RegExp): boolean => !denied.test(said) && (ownCount(act) > 0 || cue.test(said))
  const done = { undo: 0, redo: 0 }
  return acts.flatMap((it): Act[] => {
    const known: Act = {
      act: it.act,
      word: it.word !== null && vocabulary.has(it.word) ? it.word : null,
      at: it.at !== null && isPlace(it.at) ? it.at : null,
      name: nameIn(it.name, heard),
      between: it.between,
    }
    switch (it.act) {
      case 'undo':
      case 'redo':
        return isSaid(it.act, it.act === 'undo' ? undoing : redoing) && done[it.act]++ < Math.max(1, ownCount(it.act))
          ? [known]
          : []
      case 'keep':
        return known.name !== null && isSaid('keep', keeping) ? [known] : []
      case 'turn-to':
        return known.name === null ? [] : [known]
      case 'explain':
      case 'compare':
      case 'next':
      case 'assumed':
      case 'sensitive':
      case 'still-to-buy':
        return [known]
      // Chosen at the head of the page, never by a model.
      case 'units':
        return []
      default:
        return it.act satisfies never
    }
  })
}

/** A plan's name in words of the message, short enough for one. */
function nameIn(name: string | null, { said, readings }: Heard): string | null {
  const words = name === null ? undefined : wordsOfMessage(said, name, readings)
  return words !== undefined && words.length <= 40 ? words : null
}
