// This file is about the facts of a fence that is told run by run: gates, bays, slopes, heights, pickets and gaps.
// A size belongs to the thing it is said of, in its own clause: “a 4 ft gate” is never the answer to how tall the posts are.
import { partOf, vocabulary, type Word, yard } from '../../../engine/index.ts'
import type { Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import type { Bound } from './bound.ts'
import { isCountOfBay, sparesIn } from './counts-of-bays.ts'
import { likelihood } from './likelihood.ts'
import { type RunSaid, runNamed } from './runs.ts'
import { stem, type Token } from './stems.ts'

export interface Facts {
  readonly bound: readonly Bound[]
  readonly told: readonly Told[]
}

const words = (text: string): ReadonlySet<string> => new Set(text.split(' ').map(stem))
const isStop = (token: Token | undefined): boolean => token === undefined || /^[.;?!\n]$/.test(token.text)
const isComma = (token: Token | undefined): boolean =>
  isStop(token) || /^[,:()]$/.test(token?.text ?? '') || /^(and|but|with|plus|then)$/.test(token?.stem ?? '')
const isSize = (token: Token | undefined): boolean =>
  token?.reading !== undefined &&
  !token.reading.section &&
  (token.reading.quantity?.kind === 'length' || token.reading.bare !== null) &&
  !token.reading.clock

interface Ground {
  readonly message: readonly Token[]
  readonly runs: readonly RunSaid[]
  readonly heard: Heard
  /** Runs that the fence has already. */
  readonly known: readonly string[]
  readonly taken: Set<string>
}

/** All facts whose thing stands beside them. What is left is bound by the words of a fence alone. */
export function factsIn(
  message: readonly Token[],
  runs: readonly RunSaid[],
  heard: Heard,
  known: readonly string[],
  spent: readonly string[],
): Facts {
  const ground: Ground = { message, runs, heard, known, taken: new Set(spent) }
  const gates = gatesIn(ground)
  const sizes = message.flatMap((token, at) => {
    if (!isSize(token) || ground.taken.has(token.tag as string)) return []
    const fact = factOf(ground, at)
    // “Bays at most 8 ft. Pickets 3 1/2 in”: a size that the thing can hardly have was said of another.
    if (!fact || likelihood(vocabulary.get(fact.word) as Word, token.reading as Tagged, heard) < 0) return []
    ground.taken.add(token.tag as string)
    return fact.places.map(
      (place): Bound => ({ reading: token.reading as Tagged, word: fact.word, at: place, score: 1 }),
    )
  })
  return { bound: [...gates.bound, ...sizes, ...sparesIn(message, heard, ground.taken)], told: gates.told }
}

// ── gates ──

const ofGates = words(
  'wide walk drive double single garden pedestrian opening clear side yard vehicle person big small wooden picket leaf',
)
const notGate = words('post leaf hinge latch hardware brace picket frame gap')
const sizesGate = words('is are of opening wide width : , a an the in on at it be about clear and its')
const starts = words('at start starts starting begin begins from')

function gatesIn(ground: Ground): Facts {
  const { message, taken, runs } = ground
  const found: {
    at: number
    width: number | undefined
    start: number | undefined
    double: boolean
    places: readonly string[]
    count: Token | undefined
  }[] = []
  message.forEach((token, at) => {
    if (!/^(gate|gateway)$/.test(token.stem) || notGate.has(message[at + 1]?.stem ?? '')) return
    // “Gates: 3 m double on the lane, 1 m single on the street”.
    if (message[at + 1]?.text === ':') {
      for (let next = at + 2; next < message.length && !isStop(message[next]) && found.length < 12; next++) {
        if (!isSize(message[next]) || taken.has(message[next]?.tag as string)) continue
        taken.add(message[next]?.tag as string)
        const behind = message.slice(next + 1, next + 4)
        const own = runs.find((it) => it.from > next && it.from - next <= 5)
        found.push({
          at: next,
          width: next,
          start: undefined,
          count: undefined,
          double: behind.some((it) => it.stem === 'double'),
          places: own?.places ?? runsOfGate(ground, at),
        })
      }
      return
    }
    const width = widthBefore(message, at, taken) ?? widthAfter(message, at, taken)
    // “One of the gates is 4 ft”: which of several is not said, and nothing is told.
    const isOneOf =
      message[at - 2]?.stem === 'of' && ground.heard.job.decisions.filter((it) => it.word === 'gateOpening').length > 1
    if (isOneOf && width !== undefined) {
      taken.add(message[width]?.tag as string)
      return
    }
    if (width !== undefined) taken.add(message[width]?.tag as string)
    const start = startOf(message, at, taken)
    if (start !== undefined) taken.add(message[start]?.tag as string)
    const count = countBefore(message, at) ?? countBefore(message, width ?? at)
    const near = message.slice(Math.max(0, at - 4), at + 5)
    found.push({
      at,
      width,
      start,
      count,
      double: near.some((it) => /^(double|pair)$/.test(it.stem)),
      places: runsOfGate(ground, at),
    })
    // “Two gates, 3 ft and 10 ft”.
    if (count && width !== undefined && width > at) {
      let next = width + 1
      while (next < message.length && !isStop(message[next]) && found.length < 12) {
        if (
          isSize(message[next]) &&
          !taken.has(message[next]?.tag as string) &&
          !limits.has(message[next + 1]?.stem ?? '')
        ) {
          taken.add(message[next]?.tag as string)
          found.push({
            at,
            width: next,
            start: undefined,
            count: undefined,
            double: false,
            places: runsOfGate(ground, at),
          })
        } else if (!/^(,|and|&)$/.test(message[next]?.text ?? '')) break
        next++
      }
    }
  })
  const bound: Bound[] = []
  const told: Told[] = []
  const numbers = new Map<string, number>()
  const perRun = new Map<string, number>()
  for (const it of found)
    if (it.width !== undefined) for (const run of it.places) perRun.set(run, (perRun.get(run) ?? 0) + 1)
  for (const { at, width, start, double, places, count } of found) {
    const sized = width !== undefined ? (message[width] as Token) : undefined
    for (const run of places.length > 0 ? places : sized ? [yard] : []) {
      const first = ground.heard.job.decisions.filter(
        (it) => it.word === 'gateOpening' && (it.at === run || it.at.startsWith(`${run}/gate-`)),
      ).length
      const isMore =
        /^(another|second|extra|further|more|also)$/.test(message[at - 1]?.stem ?? '') ||
        /^(another|second|extra|further|more|also)$/.test(message[(width ?? at) - 1]?.stem ?? '')
      const number = (numbers.get(run) ?? (isMore ? first : 0)) + 1
      numbers.set(run, number)
      const place = run === yard || ((perRun.get(run) ?? 0) < 2 && !isMore) ? run : partOf(run, 'gate', number)
      if (sized?.reading) bound.push({ reading: sized.reading, word: 'gateOpening', at: place, score: 1 })
      if (start !== undefined)
        bound.push({ reading: (message[start] as Token).reading as Tagged, word: 'gateStart', at: place, score: 1 })
      if (count?.reading && run !== yard && (perRun.get(run) ?? 0) < 2)
        bound.push({ reading: count.reading, word: 'gates', at: run, score: 1 })
      const middle = message
        .slice(Math.max(0, at - 6), at + 9)
        .find((it) => /^(middle|midway|halfway|center)$/.test(it.stem))
      if (middle && run !== yard && start === undefined)
        told.push({
          word: 'gatePlace',
          at: place,
          from: { tag: null, quote: ground.heard.said.slice(middle.start, middle.end), option: 'middle', usual: null },
        })
      if (double)
        told.push({
          word: 'gateLeaves',
          at: place,
          from: { tag: null, quote: doubleQuote(message, at, ground.heard.said), option: 'double', usual: null },
        })
    }
  }
  return { bound, told }
}

function doubleQuote(message: readonly Token[], at: number, said: string): string {
  const token = message.slice(Math.max(0, at - 4), at + 5).find((it) => /^(double|pair)$/.test(it.stem)) as Token
  return said.slice(token.start, token.end)
}

/** “A 4 ft gate”, “a 10 ft wide double gate”. */
function widthBefore(message: readonly Token[], at: number, taken: ReadonlySet<string>): number | undefined {
  let back = at - 1
  while (back >= at - 4 && message[back] && !message[back]?.tag && ofGates.has((message[back] as Token).stem)) back--
  const token = message[back]
  return isSize(token) && token?.reading?.quantity && !taken.has(token.tag as string) ? back : undefined
}

/** “Gate in the front run: 4 ft”, “the gate is 4 foot”, “gate opening of 42 in”; no place along the run. */
function widthAfter(message: readonly Token[], at: number, taken: ReadonlySet<string>): number | undefined {
  for (let next = at + 1; next < message.length && next - at <= 9; next++) {
    const token = message[next] as Token
    if (isStop(token) && !/^[;]$/.test(token.text)) return undefined
    if (token.stem === 'gate' && next > at + 1) return undefined
    if (!isSize(token) || taken.has(token.tag as string)) continue
    const before = message[next - 1]?.stem ?? ''
    const after = message[next + 1]?.stem ?? ''
    if (/^(from|along)$/.test(after) || (after === 'in' && message[next + 2]?.stem === 'from')) continue
    if (before === 'at' || starts.has(before)) continue
    if (/^(high|tall|deep|long)$/.test(after)) continue
    // A size that stands behind another thing's name is that thing's.
    const between = message.slice(at + 1, next)
    if (between.some((it) => /^(post|bay|picket|rail|hole|fence|panel|pale)$/.test(it.stem))) return undefined
    if (isRunLength(message, next)) return undefined
    return token.reading?.quantity || sizesGate.has(before) || before === 'gate' ? next : undefined
  }
  return undefined
}

/** “… left 30 ft”: a length right behind a run's name. */
const isRunLength = (message: readonly Token[], at: number): boolean =>
  [message[at - 1], /^(is|run|side|:)$/.test(message[at - 1]?.stem ?? '') ? message[at - 2] : undefined].some(
    (token) => runNamed(token) !== undefined,
  )

/** “20 ft along”, “3 m from the left end”, “at 20 ft”, “starts at 3 m”. */
function startOf(message: readonly Token[], at: number, taken: ReadonlySet<string>): number | undefined {
  for (let next = at + 1; next < message.length && next - at <= 12 && !isStop(message[next]); next++) {
    const token = message[next] as Token
    if (token.stem === 'gate') return undefined
    if (!isSize(token) || taken.has(token.tag as string)) continue
    const before = message[next - 1]?.stem ?? ''
    const after = message[next + 1]?.stem ?? ''
    if (
      /^(from|along|down)$/.test(after) ||
      (after === 'in' && message[next + 2]?.stem === 'from') ||
      before === 'at' ||
      starts.has(before)
    )
      return next
  }
  return undefined
}

/** “Two gates”, “two 4 ft gates”: the number that says how many there are, where it is more than one. */
const countBefore = (message: readonly Token[], at: number): Token | undefined => {
  const isCount = ({ reading, measured }: Token): boolean =>
    reading?.bare?.d === 1n && !measured && reading.bare.compare(1) > 0 && reading.bare.compare(mostGates) <= 0
  const back = message.slice(Math.max(0, at - 3), at).reverse()
  const far = back.findIndex(isCount)
  // “The 40 has the gate in it” counts none.
  return back.slice(0, far).every((it) => it.reading !== undefined || ofGates.has(it.stem)) ? back[far] : undefined
}
const mostGates = 12

/** The run of a gate: “front gate”, “in the front”, the run whose sentence it is, or the only one there is. */
function runsOfGate({ message, runs, known }: Ground, at: number): readonly string[] {
  const isThere = (run: string | undefined): run is string =>
    run !== undefined && (known.includes(run) || runs.some((it) => it.places.includes(run)))
  const after = runNamed(message[at + 1])
  if (isThere(after)) return [after]
  const before = runNamed(message[at - 1])
  if (isThere(before) && !/^(drive|garden|side)$/.test(message[at - 1]?.stem ?? '')) return [before]
  const { from, to } = sentenceOf(message, at)
  const named = runs.filter((it) => it.from >= from && it.from < to)
  const behind = named.find(
    (it) =>
      it.from > at &&
      it.from - at <= 12 &&
      !message.slice(at, it.from).some((token, i) => i > 0 && token.stem === 'gate') &&
      /^(in|on|at|for|into|along|of|,|:|the)$/.test(message[it.from - 1]?.stem ?? message[it.from - 1]?.text ?? ''),
  )
  const joined =
    behind && [1, 2].some((back) => /^(in|on|at|for|into|along)$/.test(message[behind.from - back]?.stem ?? ''))
  if (behind && joined) return behind.places
  const ahead = named.findLast((it) => it.from < at)
  if (ahead) return ahead.places
  if (behind) return behind.places
  const name = message
    .slice(from, to)
    .map(runNamed)
    .find((run) => run !== undefined && known.includes(run))
  if (name) return [name]
  const all = [...new Set([...known, ...runs.flatMap((it) => it.places)])]
  // “… 84 ft. It has a 4 ft gate”: the run that was spoken of last.
  if (/^(it|there|that|this)$/.test(message[from]?.stem ?? '')) {
    const last = runs.findLast((it) => it.from < from)
    if (last) return last.places
  }
  return all.length === 1 ? all : []
}

// ── other sizes, each by the things in its clause ──

const bayThings = words('bay panel section span spacing centre center centres centers apart')
const limits = words('max maximum most more over exceed wider than under within limit tops no up')
const others: readonly { readonly word: string; readonly is: (clause: Clause) => boolean }[] = [
  { word: 'pickets', is: (it) => it.isCount && it.has('picket', 'paling', 'slat', 'pale') },
  { word: 'rails', is: (it) => it.isCount && it.has('rail') },
  { word: 'wantedGap', is: (it) => it.thing === 'gap' && !it.has('gate') && !it.limited },
  { word: 'widestGap', is: (it) => it.thing === 'gap' && !it.has('gate') && it.limited },
  {
    word: 'fall',
    is: (it) => it.nearby(/^(fall|falls|falling|drop|drops|rise|rises|climb|climbs|slope|slopes|sloping)$/) && it.ofRun,
  },
  {
    word: 'widestBay',
    is: (it) =>
      !it.has('gate', 'picket', 'paling', 'rail', 'hole', 'gap', 'screw', 'pale') &&
      !it.nearby(/^(tall|high|deep|above|long|square|thick|dia|diameter)$/) &&
      !it.hasText(/^(came|come|measured|measures|turned|built|first|second|third|fourth|fifth|last)$/) &&
      !it.numbered &&
      (it.hasAny(bayThings) || (it.has('post') && (it.limited || it.hasText(/^(every|between|apart)$/)))),
  },
  { word: 'picketLength', is: (it) => it.has('picket', 'paling', 'slat') && it.behind(/^(long|tall|high|length)$/) },
  {
    word: 'picketWidth',
    is: (it) =>
      it.thing === 'picket' &&
      it.has('picket', 'paling', 'slat') &&
      !it.has('rail', 'hole') &&
      (it.behind(/^(wide|width|across|face)$/) || it.adjacent(/^(picket|paling|slat)$/)),
  },
  { word: 'postAbove', is: (it) => it.has('fence') && !it.has('gate') && it.nearby(/^(tall|high|height)$/) },
]

interface Clause {
  has(...things: string[]): boolean
  hasAny(things: ReadonlySet<string>): boolean
  hasText(text: RegExp): boolean
  /** Right beside the size, two words on either side. */
  nearby(text: RegExp): boolean
  behind(text: RegExp): boolean
  adjacent(text: RegExp): boolean
  readonly limited: boolean
  /** “Bay 3”: one of them by its number. */
  readonly numbered: boolean
  readonly ofRun: boolean
  /** “12 pickets a bay”, “14 go in a full bay”, “3 to each bay”: so many of a thing in one bay. */
  readonly isCount: boolean
  /** Whether a picket or a gap is what it is said of, where either is spoken of. */
  readonly thing: 'picket' | 'gap' | undefined
}

function factOf(ground: Ground, at: number): { word: string; places: readonly string[] } | undefined {
  const { message, runs, known } = ground
  let from = at
  while (from > 0 && !isComma(message[from - 1])) from--
  let to = at + 1
  while (to < message.length && !isComma(message[to])) to++
  const part = message.slice(from, to)
  // “Pickets are 3 1/2 in wide and 42 in long”: what the clause before named still holds where this one names nothing.
  const named = part.some((it) =>
    /^(picket|paling|slat|gap|post|bay|panel|section|gate|rail|hole|fence|bag|board|stone|gravel)$/.test(it.stem),
  )
  const earlier = !named && from > 0 && !isStop(message[from - 1]) ? clauseBefore(message, from - 1) : []
  const all = [...earlier, ...part]
  const text = (i: number): string => message[i]?.stem ?? ''
  const sentence = sentenceOf(message, at)
  const here = runs.filter((it) => it.from >= sentence.from && it.from < sentence.to)
  const spoken = here.findLast((it) => it.from < at) ?? here[0]
  const clause: Clause = {
    has: (...things) => all.some((it) => things.includes(it.stem)),
    hasAny: (things) => all.some((it) => things.has(it.stem)),
    hasText: (pattern) => all.some((it) => pattern.test(it.stem) || pattern.test(it.text)),
    nearby: (pattern) =>
      [at - 3, at - 2, at - 1, at + 1, at + 2].some((i) => i >= from - 1 && i < to && pattern.test(text(i))),
    behind: (pattern) => pattern.test(text(at + 1)),
    adjacent: (pattern) =>
      pattern.test(text(at + 1)) ||
      pattern.test(text(at - 1)) ||
      (/^(are|is|be)$/.test(text(at - 1)) && pattern.test(text(at - 2))),
    numbered: part.some(
      (it, i) =>
        /^(bay|panel|section)$/.test(it.stem) &&
        part[i + 1]?.reading?.bare?.d === 1n &&
        part[i + 1] !== message[at] &&
        !part[i + 1]?.measured,
    ),
    limited:
      part.some((it) => limits.has(it.stem)) || /^(at-most|less-than)$/.test(message[at]?.reading?.firmness ?? ''),
    ofRun: spoken !== undefined || known.length === 1,
    isCount: isCountOfBay(message, at, from, to),
    thing:
      thingOf(message, at, from, to) ??
      (earlier.some((it) => it.stem === 'gap') ? 'gap' : earlier.some((it) => isPicket(it)) ? 'picket' : undefined),
  }
  // “Max 8”: a limit, and nothing else is spoken of.
  const isPlainLimit =
    part.every((it, i) => from + i === at || limits.has(it.stem) || /^(spacing|,|is|be|at|not)$/.test(it.stem)) &&
    part.some((it) => limits.has(it.stem))
  const fact = isPlainLimit ? { word: 'widestBay' } : others.find((it) => it.is(clause))
  if (!fact) return undefined
  const inClause = runs.find((it) => it.from >= from && it.from < to && !isLengthOf(ground, it))
  const leads = here.find((it) => it.leads && !isLengthOf(ground, it))
  const places = fact.word === 'fall' ? (spoken?.places ?? known) : (inClause ?? leads)?.places
  return { word: fact.word, places: places && fact.word !== 'postAbove' ? places : [yard] }
}

const isPicket = (token: Token): boolean => /^(picket|paling|slat|pale)$/.test(token.stem)
const isGap = (token: Token, next?: Token): boolean =>
  /^(gap|space)$/.test(token.stem) ||
  (token.stem === 'between' && (isComma(next) || /^(them|each|picket|paling)$/.test(next?.stem ?? '')))

/** “Pickets 3.5 in gap 2.5”: a thing right behind a size is its own, unless another size follows there; else the one before it. */
function thingOf(message: readonly Token[], at: number, from: number, to: number): 'picket' | 'gap' | undefined {
  const named = (i: number): 'picket' | 'gap' | undefined => {
    const token = message[i]
    return !token ? undefined : isPicket(token) ? 'picket' : isGap(token, message[i + 1]) ? 'gap' : undefined
  }
  const next = [at + 1, at + 2].find((i) => i < to && named(i) !== undefined)
  if (next !== undefined && !isSize(message[next + 1])) return named(next)
  for (let i = at - 1; i >= from; i--) if (named(i)) return named(i)
  return next === undefined ? undefined : named(next)
}

/** Whether a run is named there to tell its length. */
const isLengthOf = ({ message, taken }: Ground, { from, to }: RunSaid): boolean =>
  message.slice(Math.max(0, from - 4), to + 4).some((token) => token.tag !== undefined && taken.has(token.tag))

function clauseBefore(message: readonly Token[], end: number): readonly Token[] {
  let from = end
  while (from > 0 && !isComma(message[from - 1])) from--
  return message.slice(from, end)
}

function sentenceOf(message: readonly Token[], at: number): { from: number; to: number } {
  const from = message.slice(0, at).findLastIndex((token) => isStop(token)) + 1
  const stop = message.findIndex((token, i) => i > at && isStop(token))
  return { from, to: stop < 0 ? message.length : stop }
}
