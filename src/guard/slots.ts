// This file is about slots: which may stand, and what may stand beside them.
import { folded } from './form.ts'
import { isCount, isExactKind, printed, type Ref, type Refs } from './refs.ts'
import { countables, measures, type Trouble, wordsOf } from './words.ts'

export interface Slot {
  readonly key: string
  readonly start: number
  readonly end: number
}

const slotForm = /\{\{ ?([A-Za-z0-9_.@+-]{1,80}) ?\}\}/g
export const slotsIn = (text: string): Slot[] =>
  [...text.matchAll(slotForm)].map((it) => ({ key: it[1] as string, start: it.index, end: it.index + it[0].length }))
/** The text with its slots taken out, each leaving one sign that is no letter. */
export const withoutSlots = (text: string): string => text.replace(slotForm, '\ufffc')

const hedges =
  `about around roughly approximately approx nearly almost circa some maybe perhaps say close-to near up-to at-least at-most more-than less-than fewer-than no-more-than not-more-than over under within between above below beyond
  exceeding minimum maximum min max good well-over just-over just-under upwards-of as-many-as as-few-as as-much-as as-little-as merely barely hardly easily or another extra additional further other`
    .split(/\s+/)
    .map((it) => it.replace(/-/g, ' '))
const exactOnly = ['only', 'just', 'exactly', 'precisely']
const afterwards =
  `more extra fewer less additional spare plus minus times or-so or-more or-less or-fewer or-deeper or-wider or-longer or-shorter or-narrower or-better or-thereabouts more-or-less ish give-or-take each apiece per and-a-half and-a-quarter and-a-bit and-then-some odd percent squared cubed doubled halved over`
    .split(/\s+/)
    .map((it) => it.replace(/-/g, ' '))
const joints = new Set([
  'to',
  'by',
  'per',
  'plus',
  'minus',
  'times',
  'x',
  'or',
  'through',
  'over',
  'into',
  'divided by',
  'multiplied by',
  'less',
  'against',
  'and up to',
])
const unitSigns = new Set([...measures, 'l', 'c', 'f'])
// Words that end the search for a noun: what follows them belongs to something else.
const stops = new Set(
  'of for in on at to and or with the a an per by is are was were be will you your so that if when from as but then than into across between each it they this these those before after while under over where which who we i do does can should'.split(
    ' ',
  ),
)
/** Property words: a slot under one of them must be such a property. */
const properties: Readonly<Record<string, string>> = {
  gap: 'gap',
  gaps: 'gap',
  spacing: 'gap',
  space: 'gap',
  depth: 'depth',
  deep: 'depth',
  width: 'width',
  wide: 'width',
  diameter: 'width',
  across: 'width',
  apart: 'gap',
  height: 'height',
  tall: 'height',
  high: 'height',
  length: 'length',
  long: 'length',
  thickness: 'thickness',
  thick: 'thickness',
  weight: 'weight',
  heavy: 'weight',
  moisture: 'moisture',
  humidity: 'humidity',
  temperature: 'temperature',
  opening: 'opening',
  volume: 'volume',
  limit: 'limit',
  age: 'age',
  time: 'age',
  price: 'price',
  cost: 'price',
}
/** Properties that one figure can go by: an opening has a width, a limit may be a gap's. */
const akin: Readonly<Record<string, readonly string[]>> = {
  width: ['opening', 'gap', 'thickness'],
  gap: ['width', 'limit', 'opening'],
  opening: ['width', 'length'],
  length: ['opening', 'height'],
  height: ['length'],
  thickness: ['width'],
  limit: ['gap', 'moisture', 'width', 'depth', 'height', 'length'],
  moisture: ['limit'],
}

/** Rules 2 and 10 over one piece. */
export function slotTroubles(piece: string, refs: Refs): Trouble[] {
  const troubles: Trouble[] = []
  const say = (rule: string): void => void troubles.push({ rule })
  if (/[{}]/.test(piece.replace(slotForm, ''))) say('R2-slot')
  if (
    /[<[(]\s*[ru]\d+(?:\.\w+)?\s*[>\])]/.test(piece) ||
    /(?<![{\w.])r\d+\.\w+(?![\w}])/.test(piece.replace(slotForm, ''))
  )
    say('R2-slot')
  const slots = slotsIn(piece)
  slots.forEach((slot, i) => {
    const ref = Object.hasOwn(refs, slot.key) ? refs[slot.key] : undefined
    if (!ref || (ref.state ?? 'good') !== 'good') {
      say('R2-slot')
      return
    }
    const before = piece.slice(0, slot.start)
    const after = piece.slice(slot.end)
    if (/[\p{L}\p{N}\-\ufffc}]$/u.test(before) || /^[\p{L}\p{N}\-'’{]/u.test(after)) say('R10-touching')
    beside(before, after, ref, say)
    const following = slots[i + 1]
    if (following) between(before, piece.slice(slot.end, following.start), say)
    nounAfter(after, ref, say)
    propertyAfter(after, ref, say)
    labelBefore(before, ref, say)
    if (piece.startsWith('|')) cellLabel(piece, slot, ref, say)
  })
  return troubles
}

/** Hedges, bounds, operators and units right beside a slot. */
function beside(before: string, after: string, ref: Ref, say: (rule: string) => void): void {
  const lead = ` ${folded(before.split(/\ufffc|\}\}/).at(-1) ?? '')
    .replace(/[*_"“”(]/g, '')
    .replace(/\s+/g, ' ')
    .trimEnd()}`
  const tail = `${folded(after.replace(/[*_"“”)]/g, '').split('{{')[0] ?? '')
    .replace(/^[\s-]+/, '')
    .replace(/\s+/g, ' ')} `
  if (hedges.some((it) => lead.endsWith(` ${it}`) && !(it === 'or' || it === 'other'))) say('R10-hedge')
  if (exactOnly.some((it) => lead.endsWith(` ${it}`)) && !isExactKind(ref)) say('R10-hedge')
  if (/[+−×÷*/=<>≤≥±~≈^#@$€£-]\s*$/.test(before.replace(/[*_]{1,2}$/, '')) && !/^\s*[-*+]\s*$/.test(before))
    say('R10-operator')
  if (
    /^\s*[+−×÷/=<>≤≥±~≈^%‰°]/.test(after.replace(/^[*_]{1,2}/, '')) ||
    /^\s*-\s*\S/.test(after) ||
    /^\s*\*\s+\S/.test(after)
  )
    say('R10-operator')
  if (
    wordsOf(tail.split(/[.,;:!?|]/)[0] ?? '')
      .slice(0, 3)
      .some((it) => it.text === 'minus' || it.text === 'plus')
  )
    say('R10-after')
  // The same after its noun or a comma: "{{bags}} bags each", "{{bags}}, give or take".
  const behindNoun = tail
    .replace(/^[,(]\s*/, '')
    .replace(/^(\p{L}+)\s+/u, (whole, word: string) =>
      countables.has(word) && word !== 'more' && word !== 'extra' && word !== 'less' ? '' : whole,
    )
  const isAfterwards = (text: string): boolean =>
    afterwards.some((it) => text.startsWith(`${it} `) || text.startsWith(`${it}.`) || text.startsWith(`${it},`))
  if (/^(?:\p{L}+ ){0,2}(?:or so|or thereabouts|give or take|more or less)\b/u.test(tail)) say('R10-after')
  if (isAfterwards(tail) || (behindNoun !== tail && isAfterwards(behindNoun))) say('R10-after')
  const unit = /^([\p{L}]+)(?=[\s.,;:!?)]|$)/u.exec(tail)?.[1]
  if (
    unit &&
    unitSigns.has(unit) &&
    !(
      unit === 'in' &&
      /^in (?:the|a|an|all|total|each|every|your|our|my|this|that|these|those|one|place|front|back|between|both|it|them|there|bays?|holes?|stock|which|concrete|gravel)\b/.test(
        tail,
      )
    ) &&
    !(unit === 'yard' || unit === 'yards' ? /^yards? (?:fence|gate|side)/.test(tail) : false)
  )
    say('R10-unit')
}

function between(before: string, middle: string, say: (rule: string) => void): void {
  const words = folded(middle).replace(/[*_]/g, '').trim()
  if ((/^[^\p{L}]*$/u.test(words) && !words.includes('|')) || joints.has(words)) say('R10-joined')
  else if (/^(?:to|by|per|plus|minus|times|or|x)\b/.test(words) && words.split(' ').length <= 2) say('R10-joined')
  else if (/\b(?:to|by|per|plus|minus|times|or)$/.test(words) && words.split(/\s+/).length <= 3) say('R10-joined')
  if (words === 'and' && /\bbetween\s*$/.test(folded(before))) say('R10-joined')
}

/** The next noun within three words must be the ref's own. */
function nounAfter(after: string, ref: Ref, say: (rule: string) => void): void {
  const nearby = after.replace(/\*/g, '').split(/[.,;:!?|()\ufffc{]/)[0] ?? ''
  for (const { text } of wordsOf(nearby).slice(0, 3)) {
    if (stops.has(text)) return
    if (!countables.has(text) || text === 'more' || text === 'extra' || text === 'less') continue
    if (!isCount(ref)) return
    if (!isOwnNoun(text, ref)) say('R10-noun')
    return
  }
}

const single = (word: string): string =>
  word
    .replace(/(?:ches|shes|xes)$/, (it) => it.slice(0, -2))
    .replace(/ies$/, 'y')
    .replace(/s$/, '')
const isOwnNoun = (word: string, ref: Ref): boolean =>
  ref.noun
    ? ref.noun.some((it) => single(it.toLowerCase()) === single(word))
    : wordsOf(`${ref.label} ${printed(ref)}`).some((it) => single(it.text) === single(word))

/** "{{hole depth}} wide": the property said after it must be its own. */
function propertyAfter(after: string, ref: Ref, say: (rule: string) => void): void {
  const [word] = wordsOf(after.replace(/^[*_]+/, '').split(/[.,;:!?|({]/)[0] ?? '')
  const said = word && properties[word.text]
  if (said && !isCount(ref) && !isProperty(said, ref)) say('R10-label')
}

function isProperty(said: string, ref: Ref): boolean {
  const own = wordsOf(ref.label)
    .map((it) => properties[it.text])
    .filter((it): it is string => it !== undefined)
  return own.length === 0 || own.some((it) => it === said || akin[it]?.includes(said) || akin[said]?.includes(it))
}

/** "Pickets: {{…}}", "the gap is {{…}}": the label before must be the ref's own. */
function labelBefore(before: string, ref: Ref, say: (rule: string) => void): void {
  const clause =
    folded(before)
      .replace(/[*_"“”]/g, '')
      .split(/[.;!?|\ufffc}]|, /)
      .at(-1) ?? ''
  const link =
    /^(.*?)(?:\s*:|\s+(?:is|are|was|were|be|comes to|come to|equals|equal|makes|totals?|measures?|of|at))\s*$/.exec(
      clause,
    )
  if (!link) return
  const phrase = wordsOf(link[1] as string)
    .slice(-4)
    .map((it) => it.text)
  const isOf = /\bof\s*$/.test(clause)
  testLabel(phrase, ref, say, isOf)
}

/** The other cells of a table row name what its slot holds. */
function cellLabel(row: string, slot: Slot, ref: Ref, say: (rule: string) => void): void {
  const first = row.split('|')[1] ?? ''
  if (slot.start <= row.indexOf('|', 1)) return
  testLabel(
    wordsOf(folded(first)).map((it) => it.text),
    ref,
    say,
    false,
  )
}

function testLabel(phrase: readonly string[], ref: Ref, say: (rule: string) => void, weak: boolean): void {
  const nouns = phrase.filter((word) => countables.has(word) && word !== 'more' && word !== 'extra' && word !== 'less')
  const said = phrase.map((word) => properties[word]).filter((it): it is string => it !== undefined)
  if (isCount(ref)) {
    // "pickets are {{bags}}": the last thing counted before it is what it would be taken for.
    const last = nouns.at(-1)
    if (last && !weak && !isOwnNoun(last, ref) && !nouns.some((it) => isOwnNoun(it, ref))) say('R10-label')
    if (!last && said.length > 0 && !weak) say('R10-label')
    return
  }
  const own = wordsOf(ref.label).map((it) => single(it.text))
  if (said.length > 0 && !said.some((it) => isProperty(it, ref))) say('R10-label')
  // A bare count before a measure: "Pickets: {{gap}}".
  if (
    !weak &&
    said.length === 0 &&
    nouns.length > 0 &&
    !nouns.some((it) => own.includes(single(it))) &&
    nouns.at(-1) === phrase.at(-1)
  )
    say('R10-label')
}
