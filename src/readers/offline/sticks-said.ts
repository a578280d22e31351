// This file is about sticks of several sizes in one message: “22 2x4s 8 ft and 13 4x4s 8 ft, what’s all that weigh”. Each size has its length and its number.
import { type Calculation, calculationNamed, yard } from '../../../engine/index.ts'
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
