// This file is about the sentences that the reader is taught by: what people say, with each quantity marked by the word it means.
//
//   ## concrete-for-posts
//   bags | {27|posts} posts {10in|holeDiameter} holes {3ft|holeDepth} deep bags?
//   -    | make that {14 in|holeDiameter}               nothing is asked: it tells, or changes what was told
//   bags | im {-|62}, how many for {4|posts} posts …    a number that means nothing here
//   bags | {4|posts} {square|holeShape:square} holes …  a choice, told in words

/** A stretch of a sentence that tells something; `word` is null for a number that tells nothing. */
export interface Mark {
  readonly start: number
  readonly end: number
  readonly word: string | null
  readonly option?: string
}

export interface Sentence {
  readonly calculation: string
  /** Empty where it only tells. */
  readonly results: readonly string[]
  readonly said: string
  readonly marks: readonly Mark[]
}

/** Reads sentences as they are written down. Throws at a line that is none: the file is ours. */
export function sentencesIn(text: string): Sentence[] {
  let calculation = ''
  return text.split('\n').flatMap((line, at) => {
    if (line.startsWith('## ')) {
      calculation = line.slice(3).trim()
      return []
    }
    if (line.trim() === '' || line.startsWith('#')) return []
    const bar = line.indexOf('|')
    if (calculation === '' || bar < 0) throw new Error(`line ${at + 1} is no sentence: ${line}`)
    const asked = line.slice(0, bar).trim()
    return [
      { calculation, results: asked === '-' ? [] : asked.split(/\s*,\s*/), ...unmarked(line.slice(bar + 1).trim()) },
    ]
  })
}

function unmarked(marked: string): { said: string; marks: Mark[] } {
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
