// This file is about a gate told part by part: “11 pickets 900 mm long, 70 wide and 18 thick, three rails 1,030 by 75 by 38, and a brace …”.
import { yard } from '../../../../engine/index.ts'
import type { Request, Told } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { requestFor, tell } from '../request-parts.ts'
import { isLength, type Spot, spotsOf } from './spots.ts'

const part =
  '(?:pickets?|palings?|pales?|slats?|boards?|rails?|stiles?|braces?|uprights?|crosspieces?|ledges?|members?|sides?|struts?|battens?)'
const sides = ['gatePartLengths', 'gatePartWidths', 'gatePartThicknesses'] as const

/** What all its parts are, where the weight of a gate is asked for and every part has its number and its three sizes. */
export function gatePartsIn(heard: Heard): Request | undefined {
  const { said } = heard
  if (!/\b(?:how heavy|weigh\w*|weight)\b/i.test(said) || !/\b(?:gate|leaf)\b/i.test(said)) return undefined
  const told: Told[] = []
  const spots = spotsOf(heard)
  const left: Spot[] = []
  for (let i = 0; i < spots.length; ) {
    const count = countAt(spots, i)
    const sizes = count && sizesFrom(spots, count.next)
    if (!count || !sizes) {
      left.push(spots[i++] as Spot)
      continue
    }
    told.push(count.told, ...sizes)
    i = count.next + (spots[count.next + 1]?.reading.section ? 2 : 3)
  }
  const density = left.find((it) => it.reading.quantity?.kind === 'density')
  const others = left.filter((it) => it !== density)
  // Beside a long story stand sizes that have nothing to do with the parts; a short message has none too many.
  const isStory = said.split(/\s+/).length > 40
  if (told.length === 0 || (others.length > 0 && !isStory)) return undefined
  return requestFor(
    'gate-weight',
    ['leafWeight'],
    [...told, ...(density ? [tell('woodDensity', density.reading.tag)] : [])],
  )
}

/** “Three rails”, “11 pickets”; “a brace” is one. */
function countAt(spots: readonly Spot[], i: number): { told: Told; next: number } | undefined {
  const spot = spots[i] as Spot
  const { bare } = spot.reading
  if (bare && bare.d === 1n && new RegExp(`^\\s+(?:\\w+\\s+)?${part}\\b`).test(spot.after))
    return { told: tell('gatePartCounts', spot.reading.tag), next: i + 1 }
  const one = new RegExp(`\\b(an?|one|single) ((?:\\w+ )?${part})\\b[^,;]*$`).exec(spot.before)
  if (!one || !isLength(spot.reading)) return undefined
  const quote = `${one[1]} ${one[2]}`
  return { told: { word: 'gatePartCounts', at: yard, from: { tag: null, quote, option: null, usual: null } }, next: i }
}

/** Its length, width and thickness: by their names, else in that order; a stick called by its size tells two of them. */
function sizesFrom(spots: readonly Spot[], from: number): Told[] | undefined {
  const [first, second] = [spots[from], spots[from + 1]]
  if (first && second?.reading.section && isLength(first.reading))
    return [tell(sides[0], first.reading.tag), tell(sides[1], second.reading.tag), tell(sides[2], second.reading.tag)]
  const three = spots.slice(from, from + 3)
  if (
    three.length < 3 ||
    !three.every((it) => isLength(it.reading) && !/^\s+(?:\w+\s+)?(?:pickets|rails|braces)\b/.test(it.after))
  )
    return undefined
  const named = three.map((it) =>
    ['long', 'wide', 'thick'].findIndex((name) => new RegExp(`^\\s*(?:mm |in )?${name}\\b`).test(it.after)),
  )
  const order = named.map((at, i) => (at >= 0 ? at : named.includes(i) ? -1 : i))
  if (new Set(order).size < 3 || order.includes(-1)) return undefined
  return sides.map((word, i) => tell(word, (three[order.indexOf(i)] as Spot).reading.tag))
}
