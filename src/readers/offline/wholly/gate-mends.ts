// This file is about the packing of a gate's hinge, and its brace from outer corner to outer corner, told so plainly that every size has its place.
import type { Request } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { requestFor } from '../request-parts.ts'
import { isLength, type Place, placedBy } from './placed.ts'
import { isAbout, knows, spotsOf } from './spots.ts'

export const gateMendIn = (heard: Heard): Request | undefined => packingIn(heard) ?? braceIn(heard)

const unit = '(?:mm |cm |in(?:ches)? |ft |feet )?'
const wide: readonly Place[] = [
  {
    word: 'leafWidth',
    is: isLength,
    after: new RegExp(`^\\s*${unit}(?:wide\\b|across\\b|in width|width\\b|gate\\b|leaf\\b|long\\b)`),
  },
  { word: 'leafWidth', is: isLength, before: /(?:width|wide|gates?|leaf)(?: is| of| are|'s|:|=|,)*\s*$/ },
]
const tall: readonly Place[] = [
  { word: 'leafHeight', is: isLength, after: new RegExp(`^\\s*${unit}(?:high\\b|tall\\b|in height|height\\b)`) },
  { word: 'leafHeight', is: isLength, before: /(?:height|high|tall)(?: is| of| are|'s|:|=|,)*\s*$/ },
]
const dropped: readonly Place[] = [
  {
    word: 'hingeSpacing',
    is: isLength,
    before: /hinges?(?: are| is| sit| set| stand| at| placed| fixed|'re|:|=|,)*\s*$/,
  },
  {
    word: 'hingeSpacing',
    is: isLength,
    after: new RegExp(`^\\s*${unit}(?:apart|between (?:the |its )?hinges|hinge (?:to hinge|spacing)|cent(?:er|re)s)`),
  },
  {
    word: 'latchDrop',
    is: isLength,
    before:
      /(?:drops?|dropped|sags?|sagged|sagging|sunk|sinks|droops?|low|down|out)(?: by| about| around| a good| is| of|,)*\s*$/,
  },
  {
    word: 'latchDrop',
    is: isLength,
    after: new RegExp(
      `^\\s*${unit}(?:of )?(?:a )?(?:too )?(?:low\\b|lower|drop\\b|sag\\b|down\\b|out\\b|(?:at|on) the latch)`,
    ),
  },
  ...wide,
]
/** “It hangs 3/4 low at the latch, 48 wide, hinges 30 apart: how thick a shim?” */
function packingIn(heard: Heard): Request | undefined {
  const { said } = heard
  const goesOn = isAbout(heard, 'hinge-packing')
  const packs = /\b(?:pack(?:s|ed|ing|er|ers)?|shims?|shimming|washers?|wedges?|spacers?|let in)\b/i.test(said)
  if (!goesOn && !(packs && /\bhinges?\b/i.test(said))) return undefined
  if (/\b(?:cable|turnbuckle|brace|rails?|pickets?|swing)\b/i.test(said)) return undefined
  const told = placedBy(spotsOf(heard), dropped)
  const asks = /\bhow (?:much|far|thick)\b|\bwhat (?:thickness|size)\b|\bhow (?:big|wide) a\b/i.test(said)
  if (!told || told.length === 0 || (!goesOn && !asks)) return undefined
  return requestFor('hinge-packing', goesOn ? [] : ['hingePacking'], told)
}

const outerCorners =
  /\b(?:outside|outer|very|extreme|far) corners?\b|\bcorner[- ]to[- ]corner\b|\bcorner to opposite corner\b|\b(?:tip to tip|point to point)\b|\bfrom one corner to the (?:other|opposite)\b/i
/** “A brace from outer corner to outer corner, 1 m high”: as long as the diagonal of the leaf. Where its frame is told, its inside has the brace. */
function braceIn(heard: Heard): Request | undefined {
  const { said, readings } = heard
  if (
    !(outerCorners.test(said) || (/\bdiagonal brace\b/i.test(said) && isAbout(heard, 'gate-leaf'))) ||
    /\b(?:inside|cable|wire|turnbuckle|sag\w*|drop\w*|yard|fence|stake|string|frame members?)\b/i.test(said)
  )
    return undefined
  const isOfGate = isAbout(heard, 'gate-leaf', 'gate-brace', 'inside-of-frame', 'leaf-diagonal')
  if (!/\b(?:braces?|struts?|diagonals?)\b/i.test(said) || !(isOfGate || /\b(?:gates?|leaf)\b/i.test(said)))
    return undefined
  if (readings.some((it) => it.section)) return undefined
  const told = placedBy(spotsOf(heard), [...tall, ...wide])
  const has = (word: string): boolean => (told?.some((it) => it.word === word) ?? false) || knows(heard, word)
  return told && has('leafWidth') && has('leafHeight') ? requestFor('leaf-diagonal', ['leafDiagonal'], told) : undefined
}
