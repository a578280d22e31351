// This file is about choices in a message: which option of a word was said, and what there is said to be none of.
import { ofRuns, vocabulary, type Wanted, yard } from '../../../engine/index.ts'
import type { Told } from '../../request.ts'
import type { Heard } from '../reader.ts'
import { thatNeed } from './calculations-by-word.ts'
import type { Bound } from './bound.ts'
import type { Hit } from './lexicon.ts'
import { placesFor, type Stretch } from './runs.ts'
import { filler, quoted, type Token, tokens } from './stems.ts'

/** Options that were said: only where the talk is about a calculation that needs the choice. */
export function choicesIn(
  heard: Heard,
  message: readonly Token[],
  hits: readonly Hit[],
  bound: readonly Bound[],
  context: readonly Wanted[],
  stretches: readonly Stretch[],
  isFence: boolean,
): Told[] {
  const about = new Set([
    ...context.map((it) => it.word),
    ...bound.map((it) => it.word),
    ...heard.job.asked.map((it) => it.word),
  ])
  // The shape of a hole concerns whoever has told its size.
  const hasSize = (word: string | undefined): boolean => heard.job.decisions.some((it) => it.word === word)
  const concerned = (word: string): boolean =>
    (isFence && ofRuns.has(word)) ||
    hasSize(vocabulary.get(word)?.saidOf) ||
    thatNeed(word).some((calc) => [...about].some((it) => calc.gives[it] || calc.needs[it]))
  // Where the fence is concerns every answer: whom to ring hangs on it.
  const isTold = (hit: Hit): boolean =>
    hit.word === 'country'
      ? !isOfTimber(hit, message) && (concerned(hit.word) || isPlaced(hit, message))
      : concerned(hit.word)
  // “Bay 3 is 93 in, centre to centre” says how the bay was measured, and nothing of its run's ends.
  const isOfBay = (hit: Hit): boolean =>
    bound.some(
      (it) =>
        it.word === 'bayCentres' &&
        it.at.includes('/bay-') &&
        stretches.some(
          ({ from, to }) =>
            from <= hit.from && hit.from < to && message.slice(from, to).some(({ tag }) => tag === it.reading.tag),
        ),
    )
  // In a fence the gates are read by themselves: “two gates” is no double one.
  const options = hits.filter(
    (hit) =>
      hit.sort === 'option' &&
      !(isFence && hit.word === 'gateLeaves') &&
      !(hit.word === 'runEnds' && isOfBay(hit)) &&
      isTold(hit) &&
      isSaidOfItsSize(hit, message, bound),
  )
  const told: Told[] = []
  // A shape is that of the holes whose size it stands beside: the corner posts' may be square, and the others' round.
  const runAt = (hit: Hit): readonly string[] =>
    stretches
      .filter((it) => it.from <= hit.from && hit.from < it.to)
      .flatMap((it) => placesFor(hit.word, hit.from, it, message))
  const placeOf = (hit: Hit): string =>
    // A fence closes as a whole, whichever run it is said of.
    (hit.option === 'loop' ? yard : runAt(hit).find((at) => at !== yard)) ??
    bound.find((it) => it.word === vocabulary.get(hit.word)?.saidOf && isBeside(hit, it, message))?.at ??
    yard
  const groups = new Map(options.map((hit) => [`${hit.word}@${placeOf(hit)}`, { word: hit.word, at: placeOf(hit) }]))
  for (const { word, at } of groups.values()) {
    const mine = options.filter((hit) => hit.word === word && placeOf(hit) === at)
    // "does not soak in" holds "soak in": the longer phrase is the one that was said. Of equals, the later.
    const longest = mine.filter(
      (hit) => !mine.some((other) => other.length > hit.length && other.from <= hit.from && other.to >= hit.to),
    )
    const said = longest.sort((a, b) => b.length - a.length || b.from - a.from)[0] as Hit
    // "No, round holes" says which; "not round" says which not.
    const before = message.slice(Math.max(0, said.from - 3), said.from)
    const clause = before.slice(before.findLastIndex((token) => /^[,.;:?!]$/.test(token.text)) + 1)
    const negated = clause.some((token) => /^(not|n't|never|no|doesn't|don't|isn't|won't|didn't)$/.test(token.stem))
    const both = Object.keys(vocabulary.get(word)?.options ?? {})
    const option = negated && both.length === 2 ? both.find((it) => it !== said.option) : said.option
    const quote = quoted(heard.said, message, said.from, said.to)
    if (option) told.push({ word, at, from: { tag: null, quote, option, usual: null } })
  }
  return told
}

/** "Norway spruce", "Virginia creeper": a country that something is named after, and no place. */
const isOfTimber = (hit: Hit, message: readonly Token[]): boolean => growing.has(message[hit.to]?.stem ?? '')
const growing = new Set(
  'pine spruce cedar oak fir larch hemlock redwood maple timber wood lumber creeper ivy rose stone'.split(' '),
)

/** "In Ohio", "…, Germany": said of where something stands. */
const isPlaced = (hit: Hit, message: readonly Token[]): boolean =>
  hit.from === 0 ||
  /^(in|near|from|,)$/.test(message[hit.from]?.stem ?? '') ||
  /^(in|near|from|,)$/.test(message[hit.from - 1]?.stem ?? '')

const longestAnswer = 6

/** "Houses close together", "US", "clay": a few words in answer to which of the options it is, where they are those of one option alone. */
export function choiceAnswered({ said, job, readings }: Heard, message: readonly Token[]): Told[] {
  const stems = message.filter((token) => /^\p{L}/u.test(token.text)).map((token) => token.stem)
  if (readings.length > 0 || stems.length === 0 || stems.length > longestAnswer) return []
  const told: Told[] = []
  for (const { word, at } of job.asked) {
    const options = Object.entries(vocabulary.get(word)?.options ?? {}).map(([option, { label, called }]) => {
      const own = new Set([option, label, ...called].flatMap((text) => tokens(text).map((it) => it.stem)))
      return { option, alike: stems.filter((it) => (!filler.has(it) || it === option) && own.has(it)).length }
    })
    const [best, next] = options.sort((a, b) => b.alike - a.alike)
    if (best && best.alike > (next?.alike ?? 0))
      told.push({ word, at, from: { tag: null, quote: said, option: best.option, usual: null } })
  }
  // Where it would answer two questions at once, it is open which of them is meant.
  return told.length === 1 ? told : []
}

/** “Holes 12 in square” speaks of the hole; “posts 3 1/2 in square” does not: one word says a shape only right beside its size. */
function isSaidOfItsSize(hit: Hit, message: readonly Token[], bound: readonly Bound[]): boolean {
  const size = vocabulary.get(hit.word)?.saidOf
  if (!size || hit.to - hit.from > 1) return true
  return bound.some((it) => it.word === size && isBeside(hit, it, message))
}

const isBeside = (hit: Hit, { reading }: Bound, message: readonly Token[]): boolean =>
  message[hit.from - 1]?.tag === reading.tag || message[hit.to]?.tag === reading.tag

/** What people say there is none of. Not gaps: "no gaps wider than 2 in" sets a limit. */
const mayBeNone = new Set([
  'stoneDepth',
  'concreteUnder',
  'gates',
  'spare',
  'brickJoint',
  'breakage',
  'picketSpare',
  'screwSpare',
  'fitAllowance',
  'setback',
])

/** The word that says there is none of what begins at a place: “no gravel”, “without the stone”, “if I left out the stones”. */
function denialBefore(from: number, message: readonly Token[]): Token | undefined {
  let at = from - 1
  while (/^(the|that|this|all|my|your|of)$/.test(message[at]?.stem ?? '')) at--
  const [before, earlier] = [message[at], message[at - 1]]
  if (/^(no|without|zero|skip|skipped|skipping|forget|drop|ditch)$/.test(before?.stem ?? '')) return before
  if (before?.stem === 'out' && /^(leave|left|leaving)$/.test(earlier?.stem ?? '')) return earlier
  return before?.stem === 'any' && /^(without|not|n't|don't|isn't)$/.test(earlier?.stem ?? '') ? before : undefined
}

/** "no gravel", "without stone": a length that is nought, said in words. */
export function noneIn(message: readonly Token[], hits: readonly Hit[], heard: Heard, bound: readonly Bound[]): Told[] {
  const told: Told[] = []
  for (const hit of hits) {
    if (hit.sort !== 'thing' && hit.sort !== 'name') continue
    const before = mayBeNone.has(hit.word) ? denialBefore(hit.from, message) : undefined
    if (!before) continue
    if (told.some((it) => it.word === hit.word) || bound.some((it) => it.word === hit.word)) continue
    const last = message[hit.to - 1] as Token
    told.push({
      word: hit.word,
      at: yard,
      from: { tag: null, quote: heard.said.slice(before.start, last.end), option: null, usual: null },
    })
  }
  // "none" in answer to a question about something that may be nought.
  const asked = heard.job.asked.find((it) => it.word === 'stoneDepth')
  if (
    asked &&
    told.length === 0 &&
    bound.length === 0 &&
    message.some((token) => token.stem === 'none' || token.stem === 'no')
  ) {
    const none = message.find((token) => token.stem === 'none' || token.stem === 'no') as Token
    told.push({ word: asked.word, at: asked.at, from: { tag: null, quote: none.text, option: null, usual: null } })
  }
  return told
}
