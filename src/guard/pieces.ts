// This file is about pieces: a text cut into sentences, list items, table rows and headings. Nothing is shown until its piece has passed.

export interface Piece {
  readonly sort: 'sentence' | 'item' | 'row' | 'heading'
  readonly text: string
  /** Which one, for reasons: `sentence 2`. */
  readonly place: string
  /** Items: how deep, and their number where the list is numbered. Rows: which table. Sentences: which paragraph. */
  readonly depth: number
  readonly number: number | null
  readonly group: number
}

export interface Cut {
  readonly pieces: readonly Piece[]
  readonly faults: readonly { readonly rule: string; readonly place: string }[]
}

/** Cuts a text in its normal form. What is neither a paragraph, a list, a table nor a heading is a fault. */
export function cut(text: string): Cut {
  const pieces: Piece[] = []
  const faults: { rule: string; place: string }[] = []
  const counts = { sentence: 0, item: 0, row: 0, heading: 0 }
  let group = 0
  let expected = 0
  let paragraph: string[] = []
  const add = (sort: Piece['sort'], content: string, depth = 0, number: number | null = null): void => {
    counts[sort]++
    pieces.push({ sort, text: content.trim(), place: `${sort} ${counts[sort]}`, depth, number, group })
  }
  const endParagraph = (): void => {
    if (paragraph.length === 0) return
    group++
    for (const sentence of sentences(paragraph.join(' '))) add('sentence', sentence)
    paragraph = []
  }
  const lines = text.split('\n')
  lines.forEach((line, i) => {
    const heading = /^ {0,3}#{1,6}\s+(.*)$/.exec(line)
    const item = /^(\s*)(?:([-*+•])|(\d{1,4})([.)]))\s+(.*)$/.exec(line)
    if (line.trim() === '') {
      endParagraph()
      return
    }
    if (heading) {
      endParagraph()
      group++
      expected = 0
      add('heading', withoutEnd(heading[1] as string))
      return
    }
    if (/^ {0,3}(?:[-*_]\s*){3,}$/.test(line) || /^ {0,3}[=~-]{3,}\s*$/.test(line)) {
      endParagraph()
      faults.push({ rule: 'R3-markup', place: `line ${i + 1}` })
      return
    }
    if (/^\s*\|.*\|\s*$/.test(line)) {
      endParagraph()
      if (!/^\s*\|/.test(lines[i - 1] ?? '')) group++
      expected = 0
      if (!/^\s*\|(?:\s*:?-+:?\s*\|)+\s*$/.test(line)) add('row', line.trim())
      return
    }
    if (item) {
      endParagraph()
      const depth = Math.min(1, Math.floor((item[1] as string).length / 2))
      if ((item[1] as string).length > 5) faults.push({ rule: 'R5-list', place: `line ${i + 1}` })
      if (pieces.at(-1)?.sort !== 'item') group++
      const number = item[3] === undefined ? null : Number(item[3])
      if (number !== null && depth === 0) {
        // Markers run 1, 2, 3 …; a list that does not is a figure in disguise.
        if (number !== expected + 1) faults.push({ rule: 'R6-character', place: `line ${i + 1}` })
        expected = number
      } else if (number !== null) faults.push({ rule: 'R6-character', place: `line ${i + 1}` })
      add('item', item[5] as string, depth, number)
      return
    }
    if (paragraph.length === 0) expected = 0
    paragraph.push(line.trim())
  })
  endParagraph()
  return { pieces, faults }
}

/** A heading without the signs that may close it, one by one from the end. */
function withoutEnd(text: string): string {
  let end = text.length
  while (end > 0 && /[#\s]/.test(text[end - 1] as string)) end--
  return text.slice(0, end)
}

/** Sentences, without going back: an end mark, then a space. "in." and "ft." are refused as typed units elsewhere. */
function sentences(text: string): string[] {
  const found: string[] = []
  let start = 0
  for (let i = 0; i < text.length; i++) {
    if (!/[.!?…]/.test(text[i] as string)) continue
    let end = i + 1
    while (end < text.length && /[.!?…"'”’)*_\]]/.test(text[end] as string)) end++
    if (end >= text.length || text[end] === ' ') {
      found.push(text.slice(start, end).trim())
      start = end
      i = end
    }
  }
  if (text.slice(start).trim() !== '') found.push(text.slice(start).trim())
  return found.filter((it) => it !== '')
}

/** Rule 3: what markdown may not hold. Bold, italic and plain tables are left. */
export const hasMarkup = (piece: string): boolean =>
  /[<>`\\]|~~|!\[|\]\s*\(|\]\s*\[|\[[^\]]*\]:|https?:|www\.|:\/\/|\$\$|\$[^$]*\$|&[a-z#]\w*;|^\s*>|\bjavascript:|^\s{4,}\S/i.test(
    piece,
  ) || /(?:^|\s)\[[^\]]{0,80}\]/.test(piece)
