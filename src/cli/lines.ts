// This file is about lines that a terminal can hold: broken between words, never inside a figure, never wider than the terminal.

/** Without what a terminal would obey instead of show. The escapes that make text bold or faint are ours, and put in later. */
export const harmless = (text: string): string => text.replace(/(?![\n\t])\p{Cc}|[\u202a-\u202e\u2066-\u2069]/gu, '')

// biome-ignore lint/suspicious/noControlCharactersInRegex: the escape that makes text bold takes no room on the screen
const escapes = /\u001b\[\d+m/g
export const unstyled = (text: string): string => text.replace(escapes, '')
const twoCells = /[\u1100-\u115f\u2e80-\ua4cf\uac00-\ud7a3\uf900-\ufaff\ufe30-\ufe6f\uff00-\uff60\uffe0-\uffe6]/
const noCell = /\p{Mark}|[\u200b-\u200d\u2060\ufeff]/u

/** Cells of the terminal that a text takes. */
export function cells(text: string): number {
  let sum = 0
  for (const sign of unstyled(text))
    sum += noCell.test(sign) ? 0 : twoCells.test(sign) || /\p{Emoji_Presentation}/u.test(sign) ? 2 : 1
  return sum
}

export const padEnd = (text: string, wide: number): string => text + ' '.repeat(Math.max(0, wide - cells(text)))

/** In lines of so many columns at most; those after the first hang under it by `hang`. Space before the first word is kept. */
export function wrap(text: string, columns: number, hang = ''): string[] {
  const lead = /^ */.exec(text)?.[0] ?? ''
  const lines: string[] = []
  let line = ''
  for (const word of wordsOf(text)) {
    const start = lines.length === 0 ? lead : hang
    if (line !== '' && cells(`${start}${line} ${word}`) > columns) {
      lines.push(start + line)
      line = ''
    }
    if (line !== '') line = `${line} ${word}`
    else {
      // Only what is longer than a whole line is broken inside.
      const pieces = broken(word, columns - cells(lines.length === 0 ? lead : hang), columns - cells(hang))
      for (const piece of pieces.slice(0, -1)) lines.push((lines.length === 0 ? lead : hang) + piece)
      line = pieces.at(-1) ?? ''
    }
  }
  if (line !== '' || lines.length === 0) lines.push((lines.length === 0 ? lead : hang) + line)
  return lines
}

const unit =
  /^(?:in|ft|yd|mm|cm|m|km|lb|lbs|kg|oz|tons?|tonnes?|gal|L|floz|[kM]?Pa|psi|psf|mph|lbf|k?N|deg|min|hours?|days?|weeks?|months?|years?|in²|ft²|m²|in³|ft³|yd³|m³|lb\/ft³?|kg\/m³?|%|°[CF]?|°)(?![A-Za-z])/
const fraction = /^\d+\/\d+/
const isAmount = /(?:^|[^A-Za-z\d])\d[\d,.]*(?:\/\d+)?$/

/** Words, a figure with its fraction and its unit as one: “2 3/17 in” is never torn. */
function wordsOf(text: string): string[] {
  const words: string[] = []
  for (const word of text.trim().split(/\s+/)) {
    const last = words.at(-1)
    const plain = unstyled(word)
    const before = unstyled(last ?? '')
    const belongs = (isAmount.test(before) && (unit.test(plain) || fraction.test(plain))) || /^[=→–-]$/.test(before)
    if (last !== undefined && belongs && cells(`${last} ${word}`) <= longestFigure)
      words[words.length - 1] = `${last} ${word}`
    else words.push(word)
  }
  return words
}

/** Longer than this, a figure may be torn rather than leave half a line empty. */
const longestFigure = 24

/** A word in pieces: after a stroke, a dot or a hyphen where there is one, else where the line ends. */
function broken(word: string, room: number, roomAfter: number): string[] {
  const pieces: string[] = []
  let rest = word
  for (let most = Math.max(1, room); cells(rest) > most; most = Math.max(1, roomAfter)) {
    let end = 0
    while (end < rest.length && cells(rest.slice(0, nextSign(rest, end))) <= most) end = nextSign(rest, end)
    const soft = rest.slice(0, end).search(/[/.\-_&?=,;][^/.\-_&?=,;]*$/)
    const at = soft > end / 3 ? soft + 1 : Math.max(end, nextSign(rest, 0))
    pieces.push(rest.slice(0, at))
    rest = rest.slice(at)
  }
  return [...pieces, rest]
}

/** Where the sign at a place ends: an escape with what follows it, a pair of surrogates whole. */
function nextSign(text: string, at: number): number {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: the escape that makes text bold
  const before = /^(?:\u001b\[\d+m)+/.exec(text.slice(at))?.[0].length ?? 0
  return Math.min(text.length, at + before + ((text.codePointAt(at + before) ?? 0) > 0xffff ? 2 : 1))
}

/** A sum in lines: broken before a plus or minus rather than a times, and outside brackets rather than inside. */
export function wrapSum(sum: string, columns: number, hang: string): string[] {
  const lines: string[] = []
  let rest = sum
  while (cells(rest) > columns && cells(hang) < columns / 2) {
    const at = bestBreak(rest, columns)
    if (at === undefined) break
    lines.push(rest.slice(0, at).trimEnd())
    rest = hang + rest.slice(at).trimStart()
  }
  return [...lines, ...wrap(rest, columns, hang)]
}

function bestBreak(sum: string, columns: number): number | undefined {
  const lead = /^ */.exec(sum)?.[0].length ?? 0
  let depth = 0
  let [best, least] = [undefined as number | undefined, Number.POSITIVE_INFINITY]
  for (const { 0: sign, index } of sum.matchAll(/[()]| (?=[-+−*/×] )|(?<=[,;]) /g)) {
    if (sign === '(') depth++
    else if (sign === ')') depth--
    else if (index > lead) {
      if (cells(sum.slice(0, index)) > columns) break
      // A line that ends early is worse than a break that is a little deeper.
      const isEarly = index - lead < (columns - lead) * 0.45
      const cost = depth * 2 + (/^ [*/×]/.test(sum.slice(index, index + 2)) ? 1 : 0) + (isEarly ? 5 : 0)
      if (cost <= least) [best, least] = [index, cost]
    }
  }
  return best
}
