// This file is about totals: what each of several things comes to, by its name, and what they come to together.
import type { Calculation } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import type { Heard } from '../reader.ts'
import { plains, requestOf, small } from './plain-phrases.ts'
import { filler, type Token } from './stems.ts'

const totals = /^(total|sum|altogether|together)$/

const byEach = /^(each|apiece|per|at|@|ea|a|an|every)$/

/** "Materials $2,140, concrete $186, hire $95: total"; "posts 380, rails 290, pickets 610, what is the total": what each comes to, by its name. */
export function totalOf(heard: Heard, message: readonly Token[]): Request | undefined {
  const { readings } = heard
  const at = message.findIndex((token) => totals.test(token.stem))
  if (at < 0 || readings.length < 2 || heard.job.asked.length > 0 || message[at]?.tag) return undefined
  // "What is the total price of 12 bags …": the total of something else than what stands here.
  const after = message.slice(at + 1).find((token) => token.tag === undefined && !/^[.,;:?!\n]$/.test(token.text))
  if (after && !filler.has(after.stem) && !small.test(after.stem) && !totals.test(after.stem)) return undefined
  const spots = readings.map((it) => message.findIndex((token) => token.tag === it.tag))
  if (spots.some((spot) => byEach.test(message[spot - 1]?.stem ?? '') || byEach.test(message[spot + 1]?.stem ?? '')))
    return undefined
  const isMoney = readings.every((it) => it.quantity?.kind === 'money' && !it.per)
  // A name before each number, and nothing behind it: no count of things, which its noun follows.
  const isNamed =
    readings.every((it) => it.bare !== null && !it.proportion && !it.clock && it.firmness === 'exactly') &&
    spots.every((spot, i) => {
      const before = message[spot - 1]
      const isName = before !== undefined && !before.tag && /^\p{L}/u.test(before.text) && !filler.has(before.stem)
      const next = message[spot + 1]
      const ends =
        next === undefined ||
        /^[.,;:?!\n]$/.test(next.text) ||
        /^(and|plus|what|what's|what'|whats|how|add|give|total|sum|altogether)$/.test(next.stem)
      return isName && ends && (i === 0 || spot - (spots[i - 1] as number) >= 2)
    }) &&
    !message.some((token) => measuredNames.test(token.stem))
  const kind = isMoney ? 'money' : isNamed ? 'number' : undefined
  const plain = kind && plains.find(({ calc, values }) => values.list && values.kind === kind && sumIn(calc))
  return plain ? requestOf(plain, sumIn(plain.calc) as string, readings, [], heard, message) : undefined
}

const sumIn = (calc: Calculation): string | undefined => Object.keys(calc.gives).find((it) => it.endsWith('Sum'))

/** Sizes, which nobody adds up with each other. */
const measuredNames =
  /^(opening|gap|width|wide|height|high|deep|depth|long|length|spacing|max|maximum|diameter|thick|thickness|run|hole|bay)$/
