// This file is about sticks of several sizes in one message: “22 2x4s 8 ft and 13 4x4s 8 ft, what’s all that weigh”. Each size has its length and its number.
import { type Calculation, calculationNamed, toNumber, unitNamed, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { empty, from } from './plain-phrases.ts'

const ofSizes = calculationNamed('sticks-of-sizes') as Calculation

const asksWeight = /\b(weigh\w*|weight|heavy)\b/i
const asksBoardFeet = /\b(board (?:feet|foot|footage)|bd\.? ?ft|bf)\b/i

type Kind = 'S' | 'L' | 'C'
const kindOf = ({ section, quantity, bare, change }: Tagged): Kind | undefined =>
  section ? 'S' : quantity?.kind === 'length' ? 'L' : bare?.d === 1n && !change ? 'C' : undefined
const wordOf = { S: 'listThickness', L: 'listLength', C: 'listSticks' } as const

/** The request of a message that tells sticks of two sizes or more, and asks for their board feet or weight; or goes on with one. */
export function sticksOfSizesIn(heard: Heard): Request | undefined {
  const { said, readings, job } = heard
  const wants = [
    ...(asksBoardFeet.test(said) ? ['listBoardFeet'] : []),
    ...(asksWeight.test(said) ? ['listWeight'] : []),
  ].map((word) => ({ word, at: yard }))
  const isOn = job.wanted.some(({ word }) => ofSizes.gives[word])
  if (isOn && readings.length === 0 && wants.length > 0) return { ...empty, wants, calculation: ofSizes.name }
  const [only, more] = readings
  const isMoisture = only?.quantity?.kind === 'percent' && !more && job.asked.some((it) => it.word === 'moistureNow')
  if (isOn && isMoisture)
    return {
      ...empty,
      told: [{ word: 'moistureNow', at: yard, from: from((only as Tagged).tag) }],
      wants: [...job.wanted],
      calculation: ofSizes.name,
    }
  if (wants.length === 0) return undefined
  const byDensity = asksWeight.test(said) ? sticksByDensity(heard) : undefined
  if (byDensity) return byDensity
  const kinds = readings.map(kindOf)
  const sizes = kinds.filter((it) => it === 'S').length
  const row = kinds.join('')
  const first = row.slice(0, row.length / sizes)
  const isRow =
    sizes >= 2 && kinds.every((it) => it) && row === first.repeat(sizes) && [...first].sort().join('') === 'CLS'
  if (!isRow) return undefined
  const told = readings.map((it, i): Told => ({ word: wordOf[kinds[i] as Kind], at: yard, from: from(it.tag) }))
  return { ...empty, told, wants, calculation: ofSizes.name }
}

const stick =
  '(?:pickets?|palings?|pales?|boards?|slats?|rails?|posts?|sticks?|planks?|battens?|lengths?|pieces?|timbers?|sleepers?)'
/** “180 pickets, each 90 mm by 20 and 1050 long, 590 kilos to the cubic metre, what do they weigh?”: its length is the largest of the three, its thickness the least. */
function sticksByDensity({ said, readings }: Heard): Request | undefined {
  const dense = readings.filter((it) => it.quantity?.kind === 'density')
  const [density, another] = dense
  if (!density || another || /\b(?:soil|dirt|spoil|gravel|stone|concrete|gate|leaf|trips?)\b/i.test(said))
    return undefined
  const rest = readings.filter((it) => it !== density)
  const counts = rest.filter(
    (it) =>
      it.bare?.d === 1n &&
      new RegExp(`^\\s+(?:\\p{L}+\\s+){0,2}?${stick}\\b`, 'iu').test(said.slice(it.end, it.end + 32)),
  )
  const sizes = rest.filter((it) => !counts.includes(it))
  if (counts.length > 1 || !sizes.every((it) => it.section || it.quantity?.kind === 'length' || it.bare !== null))
    return undefined
  const named = (it: Tagged): number =>
    ['thick', 'wide', 'long'].findIndex((name) =>
      new RegExp(`^\\s*(?:mm|cm|m|in|inch(?:es)?|ft|feet)?\\s*${name}\\b`, 'i').test(said.slice(it.end, it.end + 16)),
    )
  const sections = sizes.filter((it) => it.section)
  const told: Told[] = [tell('toldDensity', density), ...counts.map((it) => tell('sticks', it))]
  if (sections.length === 1 && sizes.length === 2) {
    const [section] = sections as [Tagged]
    const long = sizes.find((it) => it !== section) as Tagged
    told.push(tell('lumberThickness', section), tell('lumberWidth', section), tell('lumberLength', long))
  } else if (sections.length === 0 && sizes.length === 3) {
    const row = [...sizes].sort((a, b) => sizeOf(a, sizes) - sizeOf(b, sizes))
    // What a size is called holds against how large it is.
    if (row.some((it, i) => named(it) >= 0 && named(it) !== i)) return undefined
    told.push(...row.map((it, i) => tell(['lumberThickness', 'lumberWidth', 'lumberLength'][i] as string, it)))
  } else return undefined
  const want = counts.length === 1 ? 'sticksWeight' : 'stickWeight'
  return { ...empty, told, wants: [{ word: want, at: yard }], calculation: 'stick-weight' }
}

const tell = (word: string, { tag }: Tagged): Told => ({ word, at: yard, from: from(tag) })
/** Its size; a bare number is in the unit of a size beside it, millimetres or inches as they come. */
function sizeOf({ quantity, bare }: Tagged, sizes: readonly Tagged[]): number {
  if (quantity) return toNumber(quantity.amount)
  const unit = sizes.find((it) => it.quantity?.kind === 'length')?.quantity?.unit
  return (bare?.valueOf() ?? 0) * (unit ? toNumber(unitNamed(unit).size) : 1)
}
