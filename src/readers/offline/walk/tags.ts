// This file is about the tags of a fence that is told side by side: which token is a side’s length, its name, a corner, a gate, or nothing.
// They are found from left to right; what was found last says much about what comes next.
import { contextOf, type Looked, shapeOf, unitOf } from '../taught/features.ts'
import { normal, scoreOf } from '../taught/weights.ts'
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
  const isSmall = token.reading.bare !== null && /^\p{L}/u.test(token.text) && token.reading.bare.compare(10) < 0
  const isNumbered = /^(side|run|leg|length|stretch)$/.test(message[at - 1]?.stem ?? '')
  const isNoLength = isSmall || token.reading.section !== undefined
  return known.filter((it) => !(isNoLength && ofSize.test(it)) && (it !== 'name' || isNumbered) && it !== 'again')
}

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

/** The features of a token that hang on the tags before it. */
export function behindOf({ message }: Looked, at: number, tags: readonly string[]): string[] {
  const last = tags.findLastIndex((it) => it !== untagged)
  const isStop = (token: Token): boolean => /^[.;?!\n]$/.test(token.text)
  const between = last < 0 ? [] : message.slice(last + 1, at)
  const far = last < 0 ? '' : between.length === 0 ? ' beside' : between.some(isStop) ? ' past' : ''
  const sizes = tags.filter((it, i) => message[i]?.reading && it !== untagged)
  const [lastSize, sizeBefore] = [sizes.at(-1) ?? '^', sizes.at(-2) ?? '^']
  const own = shapeOfToken(message[at] as Token)
  return [
    `t ${tags[at - 1] ?? '^'}`,
    `t ${tags[at - 1] ?? '^'} ${own}`,
    `l ${last < 0 ? '^' : tags[last]}${far}`,
    `s ${lastSize}`,
    `s ${sizeBefore} ${lastSize}`,
  ]
}

const beam = 8

/** One way to tag a message. */
export interface Tagging {
  readonly tags: readonly string[]
  /** How sure each tag is: its share beside the others. */
  readonly shares: readonly number[]
}

/** The likeliest ways to tag all of a message, the best first. */
export function taggings(looked: Looked, by: WalkWeights): Tagging[] {
  let ways: (Tagging & { readonly score: number })[] = [{ tags: [], shares: [], score: 0 }]
  looked.message.forEach((_, at) => {
    const able = tagsFor(by.seen, looked.message, at)
    const standing = standingOf(looked, at)
    const fixed = able.map((tag) => scoreOf(by.tags, features(tag, standing)))
    ways = ways
      .flatMap(({ tags, shares, score }) => {
        const behind = behindOf(looked, at, tags)
        const each = normal(able.map((tag, i) => (fixed[i] as number) + scoreOf(by.tags, features(tag, behind))))
        return able.map((tag, i) => ({
          tags: [...tags, tag],
          shares: [...shares, Math.exp(each[i] as number)],
          score: score + (each[i] as number),
        }))
      })
      .sort((a, b) => b.score - a.score)
      .slice(0, beam)
  })
  return ways
}

export const features = (tag: string, of: readonly string[]): [string, number][] => of.map((it) => [`${tag} ${it}`, 1])

/** What a message asks for, in features: its words, and what stands beside them. */
export function askedFeatures({ message }: Looked): string[] {
  const words = message.filter((it) => !/^[.,;:!\n]$/.test(it.text)).map(shapeOfToken)
  return [...new Set(['*', ...words, ...words.slice(1).map((it, i) => `${words[i]} ${it}`)])]
}

/** How much a message looks like a fence told side by side, beside all else that people say: in logarithms, more than 0 where that is likelier. */
export const looksLikeFence = (looked: Looked, by: WalkWeights): number =>
  scoreOf(by.asks, features('fence', askedFeatures(looked)))

/** Results that a message is likelier to ask for than not. */
export function asksOf(looked: Looked, by: WalkWeights): string[] {
  const words = askedFeatures(looked)
  const results = [...new Set(Object.keys(by.asks).map((it) => it.slice(0, it.indexOf(' '))))]
  return results.filter((it) => it !== 'fence' && scoreOf(by.asks, features(it, words)) > 0)
}
