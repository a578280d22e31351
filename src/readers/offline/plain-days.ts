// This file is about a date and a stretch of time: “90 days after June 15 2025”, “first coat on May 3 2025, recoat after 24 hours”.
import { askable, vocabulary, yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import type { Heard } from '../reader.ts'
import { empty, from, type Kind, small } from './plain-phrases.ts'
import { filler, type Token } from './stems.ts'

const onTheWay = /^(after|from|before|later|earlier|past|plus|minus|following|since|ahead|prior|less|add)$/

const ofDays =
  /^(date|day|when|fall|on|be|will|first|second|last|next|coat|re-coat|recoat|repaint|paint|painted|stain|went|dry|wait|due|calendar|week|month|the|it|start|started|today|begin|land|call|finish|end)$/

/** "90 days after June 15 2025", "first coat on May 3 2025, recoat after 24 hours": one date, one stretch of time, and which way. */
export function dayFrom(heard: Heard, message: readonly Token[]): Request | undefined {
  const [date, ...dates] = heard.readings.filter((it) => it.quantity?.kind === 'date')
  const [time, ...times] = heard.readings.filter((it) => it.quantity?.kind === 'duration')
  if (!date || !time || dates.length + times.length > 0 || heard.readings.length !== 2) return undefined
  if (heard.job.asked.length > 0 && heard.job.asked.some((it) => vocabulary.get(it.word)?.kind === 'date'))
    return undefined
  const way = message.find((token) => onTheWay.test(token.stem))
  const isPlain = message.every(
    (token) =>
      token.tag !== undefined ||
      !/\p{L}/u.test(token.text) ||
      filler.has(token.stem) ||
      small.test(token.stem) ||
      ofDays.test(token.stem) ||
      onTheWay.test(token.stem),
  )
  const calc = askable.find((it) => it.plain && Object.values(it.needs).some((word) => word.kind === 'date'))
  if (!way || !isPlain || !calc) return undefined
  const isBack = /^(before|earlier|minus|ahead|prior|less)$/.test(way.stem)
  const wordOf = (kind: Kind): string => Object.values(calc.needs).find((it) => it.kind === kind)?.name ?? ''
  const told = [date, time]
    .sort((a, b) => a.start - b.start)
    .map((it) => ({ word: wordOf(it === date ? 'date' : 'duration'), at: yard, from: from(it.tag) }))
  const [later, earlier] = calc.headlines
  return { ...empty, told, wants: [{ word: (isBack ? earlier : later) as string, at: yard }], calculation: calc.name }
}
