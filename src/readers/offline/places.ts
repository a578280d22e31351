// This file is about kinds of post in a message: "corner and gate posts", "the gate holes".
import { postKinds, together, type Word, yard } from '../../../engine/index.ts'
import { stem, type Token } from './stems.ts'

export interface PlaceSaid {
  readonly place: string
  readonly from: number
  readonly to: number
  readonly of: 'post' | 'hole'
}

const kindOf = new Map(
  Object.entries(postKinds).flatMap(([kind, called]) => called.map((it) => [stem(it), kind] as const)),
)
const joints = new Set(['and', ',', '&', 'or', 'plus'])
const standing = new Map<string, 'post' | 'hole'>([
  ['post', 'post'],
  ['hole', 'hole'],
  ['posthole', 'hole'],
  ['footing', 'hole'],
])

/** Runs of kinds followed by what they are kinds of. "gate" alone is a gate, not a gate post. */
export function placesIn(message: readonly Token[]): PlaceSaid[] {
  const found: PlaceSaid[] = []
  for (let from = 0; from < message.length; from++) {
    const kinds: string[] = []
    let at = from
    while (at < message.length) {
      const kind = kindOf.get((message[at] as Token).stem)
      if (kind) {
        kinds.push(kind)
        at++
        continue
      }
      if (kinds.length > 0 && joints.has((message[at] as Token).stem) && continues(message, at)) {
        at++
        continue
      }
      break
    }
    // A post of each kind may be named again: "corner posts and gate posts" is two places, each with its own number.
    const of = standing.get(message[at]?.stem ?? '')
    // "A line post, not a gate post" speaks of one of them.
    if (kinds.length > 0 && of && !isDenied(message, from)) found.push({ place: together(kinds), from, to: at + 1, of })
    // A run that is of nothing is so from each of its words on.
    if (kinds.length > 0) from = at
  }
  return found
}

const isDenied = (message: readonly Token[], from: number): boolean => {
  const before = /^(a|an|the|one|at|of|for)$/.test(message[from - 1]?.stem ?? '')
    ? message[from - 2]
    : message[from - 1]
  return /^(not|isn't|never)$/.test(before?.stem ?? '')
}

/**
 * Where each counted kind has holes of its own, the stretch of the message that tells them:
 * "4 corner posts in 12 in holes 30 in deep and 10 line posts in 10 in holes 24 in deep".
 * One kind alone has a stretch only where the talk already counted posts of another.
 */
export function stretchesByKind(
  message: readonly Token[],
  places: readonly PlaceSaid[],
  othersCounted: boolean,
): (spot: number) => string | undefined {
  // "4 corner posts", "Line posts: 18".
  const counts = (token: Token | undefined): boolean => token?.tag !== undefined && token.measured !== true
  const counted = places.filter(
    ({ from, to }) => counts(message[from - 1]) || (message[to]?.text === ':' && counts(message[to + 1])),
  )
  const stretches = counted
    .map(({ place, to }, i) => {
      const following = counted[i + 1]
      const next = following ? following.from - (counts(message[following.from - 1]) ? 1 : 0) : message.length
      const stop = message.findIndex((token, at) => at >= to && at < next && /^[.;?!\n]$/.test(token.text))
      return { place, from: to, to: stop < 0 ? next : stop }
    })
    .filter(({ from, to }) => {
      const said = message.slice(from, to)
      return said.some((token) => token.measured) && said.some((token) => /^(hole|deep|footing)$/.test(token.stem))
    })
  if (new Set(stretches.map((it) => it.place)).size < (othersCounted ? 1 : 2)) return () => undefined
  return (spot) =>
    // "… all 30 in deep" is said of every kind.
    message.slice(Math.max(0, spot - 2), spot).some((token) => /^(all|every|each|both)$/.test(token.stem))
      ? undefined
      : stretches.find((it) => spot >= it.from && spot < it.to)?.place
}

const continues = (message: readonly Token[], joint: number): boolean =>
  kindOf.has(message[joint + 1]?.stem ?? '') ||
  (joints.has(message[joint + 1]?.stem ?? '') && kindOf.has(message[joint + 2]?.stem ?? ''))

/** The kinds of post that are spoken of, and the one whose holes a stretch of the message tells. */
export interface Kinds {
  readonly places: readonly PlaceSaid[]
  readonly ofKind: (spot: number) => string | undefined
}

/** Which kind of post it is said of: the run of kinds that stands nearest, for numbers of posts and sizes of holes. */
export function placeFor(word: Word, spot: number, { places, ofKind }: Kinds, message: readonly Token[]): string {
  const isOfHole = ['holeDiameter', 'holeDepth', 'stoneDepth', 'concreteBelowGrade'].includes(word.name)
  const own = isOfHole || word.name === 'postWidth' ? ofKind(spot) : undefined
  if (own) return own
  const distance = (it: PlaceSaid): number => (it.from > spot ? it.from - spot - 1 : spot - it.to)
  const apart = (it: PlaceSaid): boolean =>
    message
      .slice(...(it.from > spot ? [spot + 1, it.from] : [it.to, spot]))
      .some((token) => token.tag !== undefined || /^[,.;?!\n]$/.test(token.text))
  const nearest = places.filter((it) => distance(it) <= 3 && !apart(it)).sort((a, b) => distance(a) - distance(b))[0]
  if (!nearest) return yard
  if (word.name === 'posts') return nearest.place
  return nearest.of === 'hole' && isOfHole ? nearest.place : yard
}
