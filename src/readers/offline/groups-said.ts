// This file is about so many to each of so many: “13 sections, 2 rails each, at 4.85”: how many that is, and what it comes to.
import { yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import { tell } from './request-parts.ts'
import type { Heard, Tagged } from '../reader.ts'
import { wordsBehind } from './around.ts'
import { billSaid } from './bill-lines.ts'
import { workedBy } from './last-answer.ts'
import { empty } from './plain-phrases.ts'
import { howTaxed } from './bills.ts'
import { messageOf, type Token } from './stems.ts'

const ofGroups = /^\s*(?:\p{L}+\s)?(sections?|panels?|bays?|spans?|lengths?|runs?|bundles?|frames?)\b/u
const ofEach =
  /^\s*(?:(?:\p{L}+\s){1,2})?(each|apiece|(?:a|per|to (?:a|each|every)|in (?:a|each|every)|for each|every) (?:section|panel|bay|span|length|run|one|frame))\b/u

/** Groups, so many to each, and the price of one of them; nothing where anything else is said. */
export function eachOfGroups(heard: Heard, message: readonly Token[]): Request | undefined {
  const counts = heard.readings.filter((it) => it.bare?.d === 1n && !it.section && !it.clock && !it.change)
  const groups = counts.filter((it) => ofGroups.test(wordsBehind(heard, it)) && !ofEach.test(wordsBehind(heard, it)))
  const each = counts.filter((it) => ofEach.test(wordsBehind(heard, it).replace(/^\s*(\p{L}+\s)?each\s/u, 'x each ')))
  const [group, pieces] = [groups[0], each[0]]
  if (!group || !pieces || groups.length > 1 || each.length > 1) return undefined
  const rest = { ...heard, readings: heard.readings.filter((it) => it !== group && it !== pieces) }
  const said = billSaid(rest, messageOf(rest))
  const [line, more] = said?.lines ?? []
  if (!said || !line?.price || line.count || more || said.discount || said.spare) return undefined
  if (!said.isPriced && !/\b(cost|total|come to|how much|price)\b/i.test(heard.said)) return undefined
  if (said.others.some((it) => !isSize(it))) return undefined
  return {
    ...empty,
    told: [
      tell('groups', group.tag),
      tell('piecesEach', pieces.tag),
      { ...tell('itemCounts', workedBy('so-many-each', 'piecesInAll')), thing: '' },
      tell('unitPrices', line.price.tag),
      ...(said.delivery ? [tell('deliveryPrice', said.delivery.tag)] : []),
      ...(said.tax ? [tell('taxRate', said.tax.tag)] : []),
      ...howTaxed(heard, message),
    ],
    wants: [
      { word: 'piecesInAll', at: yard },
      { word: 'billTotal', at: yard },
    ],
    calculation: 'bill',
  }
}

const isSize = ({ section, quantity }: Tagged): boolean =>
  section !== undefined || /^(length|mass|volume)$/.test(quantity?.kind ?? '')
