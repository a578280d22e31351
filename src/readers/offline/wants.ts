// This file is about what a message wants to know.
import { catalogue, type Job, vocabulary, type Wanted, yard } from '../../../engine/index.ts'
import { type Hit, isResult } from './lexicon.ts'
import type { PlaceSaid } from './places.ts'
import type { Token } from './stems.ts'

const asking = new Set(['how', 'what', 'which', 'when', 'is', 'are', 'can', 'could', 'should', 'do', 'does', 'will', 'would', 'need', 'find', 'work', 'figure', 'calculate', 'tell', 'give', 'show', 'want', 'know', 'wondering', 'help', 'many', 'much'])

/** The words asked for, each with its place, in the order they were asked. */
export function wantsIn(message: readonly Token[], hits: readonly Hit[], places: readonly PlaceSaid[], job: Job): Wanted[] {
  const candidates = hits.filter((hit) => isResult(hit.word) && (hit.sort === 'ask' || asksByName(hit, message, places)))
  const things = new Set(hits.filter((hit) => hit.sort === 'thing' || hit.sort === 'name').map((hit) => hit.word))
  // The longest phrase wins where two overlap; then the one whose calculation the rest of the message speaks of.
  const spoken = (word: string): number => {
    const giving = catalogue.filter((calc) => calc.gives[word])
    return Math.max(0, ...giving.map((calc) => Object.keys(calc.needs).filter((need) => things.has(need)).length))
  }
  const settled: Hit[] = []
  const ranked = [...candidates].sort((a, b) => b.length - a.length || (a.sort === 'ask' ? 0 : 1) - (b.sort === 'ask' ? 0 : 1) || spoken(b.word) - spoken(a.word) || known(b.word, job) - known(a.word, job))
  for (const hit of ranked) if (!settled.some((it) => hit.from < it.to && it.from < hit.to)) settled.push(hit)
  settled.sort((a, b) => a.from - b.from)
  const wanted: Wanted[] = []
  for (const hit of settled) {
    const at = placeAsked(hit, places)
    if (!wanted.some((it) => it.word === hit.word && it.at === at)) wanted.push({ word: hit.word, at })
  }
  return wanted
}

/** How much of what the word needs was decided before: "and the gravel?" after a talk about holes. */
function known(word: string, job: Job): number {
  const decided = new Set(job.decisions.map((it) => it.word))
  return Math.max(0, ...catalogue.filter((calc) => calc.gives[word]).map((calc) => Object.keys(calc.needs).filter((need) => decided.has(need)).length))
}

/** "What is the …", "… bags?": a result called by its name or thing, in a clause that asks and gives it no value. */
function asksByName(hit: Hit, message: readonly Token[], places: readonly PlaceSaid[]): boolean {
  if (hit.sort !== 'name' && hit.sort !== 'thing') return false
  if (places.some((it) => hit.from >= it.from && hit.to <= it.to)) return false
  const word = vocabulary.get(hit.word)
  const next = message[hit.to]?.text
  const endsAsking = next === '?'
  if (endsAsking && (hit.sort === 'name' || word?.kind === 'count')) return startOfClause(hit, message)
  if (hit.sort !== 'name') return false
  const from = clauseStart(hit.from, message)
  return message.slice(from, hit.from).some((token) => asking.has(token.stem)) && message.slice(from, hit.from).length <= 5
}

/** "…deep, bags?": nothing but the thing itself stands between the last comma, number or question word and the question mark. */
const startOfClause = (hit: Hit, message: readonly Token[]): boolean => {
  const before = message[hit.from - 1]
  return before === undefined || message[hit.to]?.text === '?' || /^[,;.?!\n]$/.test(before.text)
}

function clauseStart(at: number, message: readonly Token[]): number {
  while (at > 0 && !/^[.;?!,\n]$/.test((message[at - 1] as Token).text)) at--
  return at
}

/** The kinds of post the question is about: those nearest after it, or the only ones in the message. */
function placeAsked(hit: Hit, places: readonly PlaceSaid[]): string {
  const word = vocabulary.get(hit.word)
  const atPosts = catalogue.some((calc) => calc.gives[hit.word] && calc.needs.posts)
  if (!word || !atPosts) return yard
  const all = [...new Set(places.map((it) => it.place))]
  if (all.length === 1) return all[0] as string
  const after = places.find((it) => it.from >= hit.to && it.from - hit.to <= 6)
  return all.length > 1 && after && places.filter((it) => it.place === after.place).length > 0 && places.every((it) => it.from >= hit.to - 1) ? (after.place) : yard
}
