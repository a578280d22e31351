// This file is about the sentences that the reader is taught by: what people say, with each quantity marked by the word it means.
//
//   ## concrete-for-posts
//   bags | {27|posts} posts {10in|holeDiameter} holes {3ft|holeDepth} deep bags?
//   -    | make that {14 in|holeDiameter}               nothing is asked: it tells, or changes what was told
//   bags | im {-|62}, how many for {4|posts} posts …    a number that means nothing here
//   bags | {4|posts} {square|holeShape:square} holes …  a choice, told in words
//
// And the talks, where each turn leans on those before it:
//
//   === nineteen holes
//   concrete-for-posts: bags | I got {19|posts} holes …
//   ? holeDepth                                          the program has asked for it
//   concrete-for-posts: - | {30|holeDepth}
//   bays-in-run: bays; picket-spacing: gap | …           two questions at once
//   advice | do i mix it dry                             a kind of message, or `act undo`
import { type MessageKind, kinds } from './kinds.ts'

/** A stretch of a sentence that tells something; `word` is null for a number that tells nothing. */
export interface Mark {
  readonly start: number
  readonly end: number
  readonly word: string | null
  /** The option of a choice; `+` and `-` for an amount by which something changes. */
  readonly option?: string
}

export interface Ask {
  readonly calculation: string
  /** Empty where it only tells. */
  readonly results: readonly string[]
}

export interface Turn {
  readonly said: string
  readonly marks: readonly Mark[]
  /** What it asks for; of no calculation where it wants no sum. */
  readonly asks: readonly Ask[]
  readonly kind: MessageKind | 'act'
  /** What the program asked for before it. */
  readonly open: readonly string[]
}

/** Reads talks as they are written down; a sentence under a calculation’s name is a talk of its own. Throws at a line that is none: the file is ours. */
export function talksIn(text: string): Turn[][] {
  const talks: Turn[][] = []
  let heading: string | undefined
  let inTalk = false
  let open: string[] = []
  for (const [at, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue
    if (line.startsWith('===')) {
      heading = undefined
      inTalk = true
      talks.push([])
    } else if (line.startsWith('## ')) {
      heading = line.slice(3).trim()
      inTalk = false
    } else if (line.startsWith('?'))
      open = line
        .slice(1)
        .split(',')
        .map((it) => it.trim())
    else if (!line.startsWith('#')) {
      const bar = line.indexOf('|')
      if (bar < 0) throw new Error(`line ${at + 1} is no sentence: ${line}`)
      const asked = line.slice(0, bar).trim()
      const turn = {
        ...askedFor(heading ? `${heading}: ${asked}` : asked),
        ...unmarked(line.slice(bar + 1).trim()),
        open,
      }
      open = []
      if (inTalk) talks.at(-1)?.push(turn)
      else talks.push([turn])
    }
  }
  return talks
}

function askedFor(asked: string): Pick<Turn, 'asks' | 'kind'> {
  const kind = kinds.find((it) => it === asked)
  if (kind) return { asks: [], kind }
  if (asked.startsWith('act ')) return { asks: [], kind: 'act' }
  const asks = asked.split(';').map((it) => {
    const [calculation = '', results = '-'] = it.split(':').map((part) => part.trim())
    return { calculation, results: results === '-' ? [] : results.split(/\s*,\s*/) }
  })
  return { asks, kind: asks.some((it) => it.results.length > 0) ? 'sum' : 'told' }
}

export function unmarked(marked: string): { said: string; marks: Mark[] } {
  const marks: Mark[] = []
  let said = ''
  let from = 0
  for (const it of marked.matchAll(/\{([^{}|]*)\|([^{}]*)\}/g)) {
    said += marked.slice(from, it.index)
    const [, first = '', second = ''] = it
    const [text, name] = first.trim() === '-' ? [second, null] : [first, second.trim()]
    const [word = '', option] = name?.split(':') ?? []
    marks.push({
      start: said.length,
      end: said.length + text.length,
      word: name === null ? null : word,
      ...(option ? { option } : {}),
    })
    said += text
    from = it.index + it[0].length
  }
  return { said: said + marked.slice(from), marks }
}
