// This file is about the guard of prose: every rule, over every piece, before anything a model wrote is shown.
import { soundsLikeCaution } from './caution-sense.ts'
import { isCautionSubject } from './caution-subjects.ts'
import { normalForm, unspaced } from './form.ts'
import { unknownWord, wordsSaid } from './known-words.ts'
import { mended } from './mend.ts'
import { cut, hasMarkup, type Piece } from './pieces.ts'
import { printed, type Ref, type Refs } from './refs.ts'
import { slotsIn, slotTroubles, withoutSlots } from './slots.ts'
import { statesVerdict } from './verdict-words.ts'
import { figuresInWords, ownTerms, romanNumeral } from './words.ts'

export interface Reason {
  readonly rule: string /** Which piece, never its words. */
  readonly place: string
}
export interface Verdict {
  readonly pass: boolean
  readonly reasons: readonly Reason[]
}
export interface Passed {
  /** Markdown with the slots filled; empty when nothing stood. */
  readonly shown: string
  readonly dropped: number
  /** Pieces that would have stood, and that nobody needs. */
  readonly spared: number
  readonly reasons: readonly Reason[]
  readonly whole: boolean
}

/** More than this no answer needs: it is refused unread. So is a piece longer than any sentence; what one piece costs is bounded by it. */
const longest = 5_000
const longestPiece = 600
const mostPieces = 40
const tooLong: Reason = { rule: 'R0-length', place: 'text' }

/** The verdict over a whole text, before anything is mended. */
export function guardProse(text: string, refs: Refs, userText: string): Verdict {
  if (text.length > longest) return { pass: false, reasons: [tooLong] }
  const { pieces, faults } = cut(normalForm(text))
  if (pieces.length > mostPieces) return { pass: false, reasons: [tooLong] }
  const own = ownOf(refs, userText)
  const reasons = [...faults, ...pieces.flatMap((piece) => troublesIn(piece, refs, own)), ...acrossPieces(pieces, own)]
  return { pass: reasons.length === 0, reasons }
}

/** What may be shown: pieces that pass, mended where they can be, redrawn with their slots filled. `isSpare` tells pieces that nobody needs, whatever they say. */
export function passProse(
  text: string,
  refs: Refs,
  userText: string,
  isSpare: (piece: string) => boolean = () => false,
): Passed {
  if (text.length > longest) return { shown: '', dropped: 1, spared: 0, reasons: [tooLong], whole: false }
  const { pieces, faults } = cut(normalForm(text))
  if (pieces.length > mostPieces)
    return { shown: '', dropped: pieces.length, spared: 0, reasons: [tooLong], whole: false }
  const own = ownOf(refs, userText)
  // A fault of structure, or a number broken over pieces, cannot be laid at one piece: then nothing stands.
  const structural = [...faults, ...acrossPieces(pieces, own)]
  if (structural.length > 0) return { shown: '', dropped: pieces.length, spared: 0, reasons: structural, whole: false }
  const reasons: Reason[] = []
  const kept: Piece[] = []
  let spared = 0
  for (const piece of pieces) {
    const better = { ...piece, text: mended(piece.text, refs, userText) }
    const troubles = troublesIn(better, refs, own)
    if (troubles.length > 0) reasons.push(...troubles)
    else if (isSpare(better.text)) spared++
    else kept.push(better)
  }
  return {
    shown: redraw(kept, refs),
    dropped: pieces.length - kept.length - spared,
    spared,
    reasons,
    whole: kept.length + spared === pieces.length,
  }
}

/** What is the person's own or the program's: terms that may hold a number word, and words that may be said back. */
interface Own {
  readonly terms: string
  readonly words: ReadonlySet<string>
}

function ownOf(refs: Refs, userText: string): Own {
  const said = normalForm(userText.slice(0, 20_000))
  const terms = Object.values(refs).filter((ref) => ref.kind === 'term')
  return {
    terms: ownTerms([said, ...terms.map((ref) => `${ref.label} | ${printed(ref)}`)]),
    words: wordsSaid([said, ...terms.map((ref) => ref.label), ...Object.values(refs).map((ref) => ref.label)]),
  }
}

// Letters and the signs of plain prose: numerals of every script, dice, tiles, keycaps and shares are none of them.
const plainSigns = /^[\p{L}\p{M}\s.,;:!?'"’‘“”()–—\-|*_…/&+{}\ufffc]*$/u
const numerals = /[零一二三四五六七八九十百千万億壹贰叁肆伍陆柒捌玖拾]/u

function troublesIn(piece: Piece, refs: Refs, own: Own): Reason[] {
  if (piece.text.length > longestPiece) return [{ rule: 'R0-length', place: piece.place }]
  const rules = new Set<string>()
  const bare = withoutSlots(piece.text)
  for (const { rule } of slotTroubles(piece.text, refs)) rules.add(rule)
  if (hasMarkup(piece.text.replace(/\|/g, ' '))) rules.add('R3-markup')
  if (/[^\P{L}\p{Script=Latin}]/u.test(bare)) rules.add('R4-script')
  if (!plainSigns.test(bare) || numerals.test(bare)) rules.add('R6-character')
  if (/([^\p{L}\p{N}\s.|*_-])\1{2,}/u.test(bare) || /([-_*])\1{3,}/.test(bare) || /\.{4,}/.test(bare))
    rules.add('R6-signs')
  for (const form of new Set([bare, unspaced(bare)])) {
    for (const { rule } of figuresInWords(form, own.terms)) rules.add(rule)
    if (romanNumeral(form)) rules.add('R9-roman')
  }
  if (unknownWord(bare, own.words) !== undefined) rules.add('R13-unknown')
  // What is refused already need not be looked at for its meaning: that takes the longest.
  if (rules.size === 0) {
    const text = unspaced(bare).replace(/\ufffc/g, ' ')
    if (isCautionSubject(text) || soundsLikeCaution(text)) rules.add('R11-caution')
    if (statesVerdict(text)) rules.add('R12-verdict')
  }
  return [...rules].map((rule) => ({ rule, place: piece.place }))
}

/** A number whose halves stand in two pieces: "seven" at one end, "teen" at the next beginning. */
function acrossPieces(pieces: readonly Piece[], own: Own): Reason[] {
  const reasons: Reason[] = []
  for (let i = 1; i < pieces.length; i++) {
    const [last, first] = [
      /[\p{L}]+[^\p{L}]*$/u.exec(pieces[i - 1]?.text ?? '')?.[0] ?? '',
      /^[^\p{L}]*[\p{L}]+/u.exec(pieces[i]?.text ?? '')?.[0] ?? '',
    ]
    const joined = `${last.replace(/[^\p{L}]/gu, '')} ${first.replace(/[^\p{L}]/gu, '')}`
    if (figuresInWords(joined, own.terms).some((it) => it.rule === 'R7-number'))
      reasons.push({ rule: 'R7-number', place: pieces[i]?.place ?? '' })
  }
  return reasons
}

/** The pieces as markdown again, markers redrawn by the program. */
function redraw(pieces: readonly Piece[], refs: Refs): string {
  const blocks: string[] = []
  let number = 0
  pieces.forEach((piece, i) => {
    const before = pieces[i - 1]
    const text = fill(piece.text, refs)
    const goesOn = before !== undefined && before.group === piece.group && before.sort === piece.sort
    if (!goesOn) number = 0
    const line =
      piece.sort === 'heading'
        ? `**${text.replace(/[*_]/g, '')}**`
        : piece.sort === 'item'
          ? `${piece.depth > 0 ? '  ' : ''}${piece.number === null ? '-' : `${++number}.`} ${text}`
          : piece.sort === 'row' && !goesOn
            ? `${text}\n${text
                .replace(/^\||\|$/g, '')
                .split('|')
                .map(() => '|---')
                .join('')}|`
            : text
    if (goesOn) blocks[blocks.length - 1] += `${piece.sort === 'sentence' ? ' ' : '\n'}${line}`
    else blocks.push(line)
  })
  return blocks.join('\n\n')
}

function fill(text: string, refs: Refs): string {
  let filled = ''
  let at = 0
  for (const slot of slotsIn(text)) {
    filled += text.slice(at, slot.start) + printed(refs[slot.key] as Ref)
    at = slot.end
  }
  return filled + text.slice(at)
}
