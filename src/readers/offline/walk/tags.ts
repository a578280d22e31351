// This file is about the tags of a fence that is told side by side: which token is a side’s length, its name, a corner, a gate, or nothing.
// They are found from left to right; what was found last says much about what comes next.
import { contextOf, type Looked, shapeOf, unitOf } from '../taught/features.ts'
import { speaksOf } from '../taught/table.ts'
import { normal } from '../taught/table.ts'
import type { Token } from '../stems.ts'
import type { WalkWeights } from './walk-weights.ts'

export const untagged = '-'

/** A word is itself; a quantity is what kind of thing it is. */
export const shapeOfToken = ({ reading, stem }: Token): string =>
  !reading ? stem : reading.section ? '<stick>' : reading.quantity ? `<${reading.quantity.kind}>` : '<number>'

const unknownTags = [untagged, 'name']

/** What a token may be. “Three lengths” measures nothing, and a number names a side only behind the word for one: “side 2”. */
export function tagsFor(seen: WalkWeights['seen'], message: readonly Token[], at: number): readonly string[] {
  const token = message[at] as Token
  const known = seen[shapeOfToken(token)] ?? (token.reading ? [untagged] : unknownTags)
  if (!token.reading) return known
  // “Nine point six” measures; “nine” does where no thing behind it is counted.
  const isWord = token.reading.bare !== null && /^\p{L}+$/u.test(token.text)
  const isSmall =
    isWord &&
    token.reading.bare !== null &&
    (token.reading.bare.compare(4) < 0 ||
      (token.reading.bare.compare(10) < 0 && counted.test(message[at + 1]?.stem ?? '')))
  const isNumbered = /^(side|run|leg|length|stretch)$/.test(message[at - 1]?.stem ?? '')
  // “20-45-20 ft” is read as a range, and is three sides.
  const isNoLength = isSmall || token.reading.section !== undefined || /^\d+ ?- ?\d+$/.test(token.reading.said)
  const isSpacing = isLimit(message, at)
  return known.filter(
    (it) =>
      !(isNoLength && ofSize.test(it)) &&
      !(isSpacing && ofSide.test(it)) &&
      (it !== 'name' || isNumbered || message[at + 1]?.text === ':') &&
      it !== 'again',
  )
}

// “8 ft on center”, “no more than 8”: how far the posts are apart, and no side.
const limitBehind = /^(max|maximum|tops|apart|oc|o\.c\.|o\.c|centers|centres|center|centre|bay|spacing|limit)$/i
const limitBefore = /^(than|exceed|every|max|maximum)$/
const isLimit = (message: readonly Token[], at: number): boolean => {
  const next = message[at + 1]
  const behind = next?.stem === 'on' || next?.stem === 'between' ? message[at + 2] : next
  return (
    limitBehind.test(behind?.text ?? '') ||
    limitBehind.test(behind?.stem ?? '') ||
    limitBefore.test(message[at - 1]?.stem ?? '')
  )
}
const ofSide = /^(runLength|stretch|ref)$/
const counted =
  /^(side|length|run|stretch|leg|piece|bit|lot|gate|rail|post|bay|section|panel|corner|picket|fence|of|more|other|wall|part|line)$/
const ofSize = /^(runLength|stretch|ref|gateOpening|gateStart|fall)$/

/** The features of a token that do not hang on the tags before it. */
export function standingOf(looked: Looked, at: number): string[] {
  const token = looked.message[at] as Token
  const own = shapeOfToken(token)
  const [before, after] = [-1, 1].map((step) => looked.message[at + step])
  const found = [
    '*',
    `w ${own}`,
    ...contextOf(looked, at),
    `b ${before ? shapeOfToken(before) : '^'} ${own}`,
    `a ${own} ${after ? shapeOfToken(after) : '$'}`,
    `p ${before?.text ?? '^'}`,
    `f ${after?.text ?? '$'}`,
  ]
  if (token.reading) found.push(`u ${unitOf(token.reading)}`, `n ${shapeOf(token.reading)}`)
  return found
}

/** What stands behind a token: the tag right before it, the last that says something and how far off it is, and the last two of sizes. */
export interface Behind {
  readonly tag: string
  readonly last: string
  readonly far: '' | ' beside' | ' past'
  readonly size: string
  readonly sizeBefore: string
}
export const beginning: Behind = { tag: '^', last: '^', far: '', size: '^', sizeBefore: '^' }

/** What stands behind the next token. */
export function passing(behind: Behind, token: Token, tag: string): Behind {
  if (tag === untagged) {
    const isPast = behind.far === ' past' || /^[.;?!\n]$/.test(token.text)
    return { ...behind, tag, far: isPast && behind.last !== '^' ? ' past' : '' }
  }
  const sizes = token.reading ? { size: tag, sizeBefore: behind.size } : {}
  return { ...behind, tag, last: tag, far: ' beside', ...sizes }
}

/** The features of a token that hang on the tags before it. */
export function behindOf(token: Token, { tag, last, far, size, sizeBefore }: Behind): string[] {
  return [`t ${tag}`, `t ${tag} ${shapeOfToken(token)}`, `l ${last}${far}`, `s ${size}`, `s ${sizeBefore} ${size}`]
}

const beam = 8

/** One way to tag a message. */
export interface Tagging {
  readonly tags: readonly string[]
  /** How sure each tag is: its share beside the others. */
  readonly shares: readonly number[]
}

/** One way to tag a message as far as it was read, from its last token back. */
interface Way {
  readonly before: Way | undefined
  readonly behind: Behind
  readonly share: number
  readonly score: number
}

/** The likeliest ways to tag all of a message, the best first. */
export function taggings(looked: Looked, by: WalkWeights): Tagging[] {
  let ways: Way[] = [{ before: undefined, behind: beginning, share: 1, score: 0 }]
  looked.message.forEach((token, at) => {
    const able = tagsFor(by.seen, looked.message, at)
    const [only, more] = able
    if (only !== undefined && more === undefined) {
      ways = ways.map((before) => ({ ...before, before, behind: passing(before.behind, token, only), share: 1 }))
      return
    }
    const standing = standingOf(looked, at)
    const fixed = able.map((tag) => speaksOf(by.tags[tag], standing))
    ways = ways
      .flatMap((before) => {
        const behind = behindOf(token, before.behind)
        const each = normal(able.map((tag, i) => (fixed[i] as number) + speaksOf(by.tags[tag], behind)))
        return able.map((tag, i) => ({
          before,
          tag,
          share: each[i] as number,
          score: before.score + (each[i] as number),
        }))
      })
      .sort((a, b) => b.score - a.score)
      .slice(0, beam)
      .map(({ before, tag, share, score }) => ({
        before,
        behind: passing(before.behind, token, tag),
        share: Math.exp(share),
        score,
      }))
  })
  return ways.map(wholeOf)
}

function wholeOf(way: Way): Tagging {
  const [tags, shares]: [string[], number[]] = [[], []]
  for (let at = way; at.before; at = at.before) {
    tags.push(at.behind.tag)
    shares.push(at.share)
  }
  return { tags: tags.reverse(), shares: shares.reverse() }
}

/** What a message asks for, in features: its words, and what stands beside them. */
export function askedFeatures({ message }: Looked): string[] {
  const words = message.filter((it) => !/^[.,;:!\n]$/.test(it.text)).map(shapeOfToken)
  return [...new Set(['*', ...words, ...words.slice(1).map((it, i) => `${words[i]} ${it}`)])]
}

/** How much a message looks like a fence told side by side, beside all else that people say: in logarithms, more than 0 where that is likelier. */
export const looksLikeFence = (looked: Looked, by: WalkWeights): number =>
  speaksOf(by.asks.fence, askedFeatures(looked))

/** Results that a message is likelier to ask for than not, by so much at least, in logarithms. */
export function asksOf(looked: Looked, by: WalkWeights, least = 0): string[] {
  const words = askedFeatures(looked)
  return Object.keys(by.asks).filter((it) => it !== 'fence' && speaksOf(by.asks[it], words) > least)
}
