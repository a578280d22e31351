// This file is about amounts by which something is to change: “2 in wider”, “3 more posts”, “deepen them by 6 in”, “half that gap”.
import Fraction from 'fraction.js'
import type { Found } from './found.ts'
import type { Reading } from './reading.ts'
import type { Scanned } from './scan.ts'
import { tableOf } from './table-of.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

const larger = /^(wider|fatter|deeper|longer|taller|thicker|bigger|larger|broader|higher|further|farther|heavier)$/
const smaller = /^(narrower|slimmer|shallower|shorter|thinner|smaller|closer|lower|tighter|lighter)$/
const movesAs = (word: string): { readonly moves?: true } => (/^(higher|lower)$/.test(word) ? { moves: true } : {})
// “The lower rail”, “a shorter post”: what a thing is behind it, not by how much it changes.
const closing =
  /^(apart|please|instead|now|then|all|each|ok|okay|pls|though|and|but|so|if|what|how|does|do|would|will|is|i|we|it|that|this|on|for|with|because|as|at|out|too|from|off|to|all|round|around|over|down|up|while|per|than|by|along|in|once)$/
const isSign = (token: Scanned | undefined): boolean => token === undefined || token.sort === 'sign'
// “2 more questions”, “one more thing”: nothing that is built.
const idle = /^(things?|questions?|times?|try|go|note|idea|point|way|one)$/

/** By how much something changes, where a quantity says that: which way, and the words that say so. */
export function changeAt(tokens: readonly Scanned[], at: number, found: Found): Reading['change'] {
  if (found.high ?? found.bareHigh ?? found.section) return undefined
  if (found.change) return found.change
  const { next } = found
  const isPercent = found.quantity?.kind === 'percent'
  const span = (way: 'more' | 'less', from: number, to: number, moves?: true): Reading['change'] => ({
    way,
    ...(moves ? { moves } : {}),
    start: (tokens[from] as Scanned).start,
    end: (tokens[to - 1] as Scanned).end,
  })
  const [one, two] = [lower(tokens[next]), lower(tokens[next + 1])]
  const before = lower(tokens[at - 1])
  const by = before === 'by' ? verbBefore(tokens, at - 1) : undefined
  if (by && !isPercent) return span(by.way, by.at, next, by.moves)
  // “2 in wider than the posts” is held against the posts; “than now”, “than that”, against what it is.
  const isHeldAgainst = (than: number): boolean =>
    lower(tokens[than]) === 'than' &&
    !/^(now|that|it|before|this|i|i['’].*|we|planned|said|last)$/.test(lower(tokens[than + 1]))
  const way = larger.test(one) ? 'more' : smaller.test(one) ? 'less' : undefined
  if (way) {
    if (isHeldAgainst(next + 1)) return undefined
    // “7 in lower and 36 in upper” are rails.
    const isRail = /^(lower|higher)$/.test(one) && two !== '' && !/^(please|now|then|instead|than|all)$/.test(two)
    const ends = isSign(tokens[next + 1]) || closing.test(two) || found.quantity !== null
    return ends && !(isRail && !isSign(tokens[next + 1])) ? span(way, at, next + 1, movesAs(one).moves) : undefined
  }
  if (isPercent) return undefined
  // “Shorten 3 posts by 2 in”: three are to be shortened.
  const isCount = found.bare !== null && !isOver(tokens, next)
  const widens = isCount || /^(to|from|at|is|are|be|of)$/.test(before) ? undefined : sizeVerbBefore(tokens, at)
  if (widens) return span(widens.way, widens.at, next)
  const takesOff = takenOff(tokens, at, next)
  if (takesOff) return span('less', takesOff.from, takesOff.to)
  // “Plus 4 bays”, “minus 2”: with nothing before it that it could be added to.
  const isAtStart = at === 1 || isSign(tokens[at - 2]) || /^(and|ok|okay|then|so|now)$/.test(lower(tokens[at - 2]))
  if (/^(plus|minus)$/.test(before) && isAtStart && !isPriced(tokens, next))
    return span(before === 'plus' ? 'more' : 'less', at - 1, next)
  if (found.bare !== null && !isPriced(tokens, next)) {
    if (/^(add|adding)$/.test(before) && at <= 4) return span('more', at - 1, next)
    if (/^(lose|drop|remove|skip|scrap)$/.test(before) && at <= 4) return span('less', at - 1, next)
  }
  if (/^(more|extra|further|additional|less|fewer)$/.test(one)) {
    if (found.bare !== null && isPriced(tokens, next)) return undefined
    if (isHeldAgainst(next + 1) || idle.test(two) || /^(or|and)$/.test(two)) return undefined
    // “$3,450 less 12 percent” is a sum.
    if (one === 'less' && (tokens[next + 1]?.sort === 'digits' || /^[$£€]$/.test(two))) return undefined
    return span(/^(less|fewer)$/.test(one) ? 'less' : 'more', at, next + 1)
  }
  // “3 posts more”, “one gate post fewer”: the things stand between.
  if (found.bare !== null && !/^(or|not|and|no)$/.test(one))
    for (const far of [1, 2]) {
      const word = lower(tokens[next + far])
      if (/^(more|extra|fewer|less)$/.test(word) && !isHeldAgainst(next + far + 1) && isOver(tokens, next + far + 1))
        return span(/^(more|extra)$/.test(word) ? 'more' : 'less', at, next + far + 1)
      // “3 posts or more”: that many at least.
      if (isSign(tokens[next + far]) || /^(or|and)$/.test(word)) break
    }
  const beyond = lower(tokens[at - 2])
  if (before === 'another' && !idle.test(one)) return span('more', at - 1, next)
  if (/^(extra|additional|further)$/.test(before) && /^(an|a|the|and|plus)$/.test(beyond))
    return span('more', at - 1, next)
  return undefined
}

const isOver = (tokens: readonly Scanned[], at: number): boolean =>
  isSign(tokens[at]) || closing.test(lower(tokens[at]))

interface Way {
  readonly way: 'more' | 'less'
  readonly moves?: true
}

/** What a word within reach before a token says of a change, and where it stands; nothing once another number is met. */
function wordBefore(
  tokens: readonly Scanned[],
  before: number,
  reach: number,
  wayOf: (word: string, steps: number) => Way | 'stop' | undefined,
): (Way & { readonly at: number }) | undefined {
  for (let at = before - 1; at >= Math.max(0, before - reach); at--) {
    const token = tokens[at] as Scanned
    if (token.sort === 'digits') return undefined
    const found = wayOf(lower(token), before - at)
    if (found === 'stop') return undefined
    if (found) return { ...found, at }
    if (token.sort === 'sign' && !/^[,'’]$/.test(token.text)) return undefined
  }
  return undefined
}

const ends = '(?:s|d|ed|ing)?$'
const sizing = {
  more: new RegExp(`^(?:(?:widen|deepen|lengthen|thicken|heighten)${ends}|widening$)`),
  less: new RegExp(`^(?:shorten|narrow)${ends}`),
} as const
const changing = {
  more: new RegExp(`^(?:(?:extend|increase|grow)${ends}|increasing$|grew$|grown$)`),
  less: new RegExp(`^(?:(?:reduce|cut|decrease|trim)${ends}|reducing$|decreasing$|cutting$|trimming$|trimmed$)`),
} as const
// What is raised stands higher: its distance from what is above it is less.
const moving = {
  more: new RegExp(`^(?:(?:raise|lift|bump)${ends}|raising$|raised$)`),
  less: new RegExp(`^(?:(?:lower|drop)${ends}|dropping$|dropped$)`),
} as const

const sizingWay = (word: string): Way | undefined =>
  sizing.more.test(word) ? { way: 'more' } : sizing.less.test(word) ? { way: 'less' } : undefined

/** “Deepen the holes by”, “shortened by”; “taller, by 150”, “a bit less, by 10 mm”. */
const verbBefore = (tokens: readonly Scanned[], by: number): (Way & { readonly at: number }) | undefined =>
  wordBefore(tokens, by, 6, (word, steps) => {
    if (steps <= 2 && (larger.test(word) || word === 'more')) return { way: 'more', ...movesAs(word) }
    if (steps <= 2 && (smaller.test(word) || word === 'less')) return { way: 'less', ...movesAs(word) }
    if (changing.more.test(word)) return { way: 'more' }
    if (changing.less.test(word)) return { way: 'less' }
    if (moving.more.test(word)) return { way: 'more', moves: true }
    if (moving.less.test(word)) return { way: 'less', moves: true }
    return sizingWay(word)
  })

/** “Widen them an inch”, “shorten up the bays 2 ft”: verbs that say nothing but a change of size. */
const sizeVerbBefore = (tokens: readonly Scanned[], before: number): (Way & { readonly at: number }) | undefined =>
  wordBefore(tokens, before, 4, (word) => (word === 'to' ? 'stop' : sizingWay(word)))

/** “5 more posts at 28.75”: an entry of a bill. */
const isPriced = (tokens: readonly Scanned[], next: number): boolean =>
  tokens
    .slice(next, next + 6)
    .some(
      (it, i) =>
        /^(?:[@$£€]|\d+\.\d\d)$/.test(it.text) || (lower(it) === 'at' && tokens[next + i + 1]?.sort === 'digits'),
    )

/** “Take 2 in off”, “knock off 3”, “200 off the opening”. */
function takenOff(
  tokens: readonly Scanned[],
  at: number,
  next: number,
): { readonly from: number; readonly to: number } | undefined {
  const [before, beyond] = [lower(tokens[at - 1]), lower(tokens[at - 2])]
  const takes = /^(take|knock|taking|knocking|shave|lop|chop|cut|trim)$/
  if (takes.test(before) && lower(tokens[next]) === 'off') return { from: at - 1, to: next + 1 }
  if (/^(off|away|out)$/.test(before) && takes.test(beyond)) return { from: at - 2, to: next }
  if (takes.test(before) && /^(away|out)$/.test(lower(tokens[next]))) return { from: at - 1, to: next + 1 }
  // “7 in off the ground” is where it is.
  const isOffSize =
    lower(tokens[next]) === 'off' &&
    /^(the|your|its|that)$/.test(lower(tokens[next + 1])) &&
    /^(width|depth|length|gap|gaps|opening|height|run|thickness|bays?)$/.test(lower(tokens[next + 2]))
  return isOffSize ? { from: at, to: next + 1 } : undefined
}

const factors = tableOf<Fraction>({
  half: new Fraction(1, 2),
  halve: new Fraction(1, 2),
  double: new Fraction(2),
  twice: new Fraction(2),
  triple: new Fraction(3),
  treble: new Fraction(3),
})

/** “Half that gap”, “twice as deep”, “double the posts”: so many times what it is; null where it is something else, as in “half the posts are in”. */
export function timesAt(tokens: readonly Scanned[], at: number): Found | null {
  const said = lower(tokens[at])
  const times = factors[said]
  if (!times) return null
  const [one, two] = [lower(tokens[at + 1]), lower(tokens[at + 2])]
  const isSame = one === 'that' || one === 'as' || (one === 'it' && isSign(tokens[at + 2]))
  const isWhole = /^(the|your|our|this)$/.test(one) && !/^(cost|price|soil|bearing|strength|load|way|time)$/.test(two)
  // “Half the pickets”, “half the fence”: a part of them, and not how many there are.
  const isPart = said === 'half'
  if (!isSame && !(isWhole && !isPart)) return null
  const { start, end } = tokens[at] as Scanned
  return {
    next: at + 1,
    quantity: null,
    bare: times,
    change: { way: 'times', start, end },
    note: `read as ${times.toFraction()} times what it is`,
  }
}
