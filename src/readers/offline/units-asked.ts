// This file is about the unit that an answer is asked for in: “how many millimetres narrower”, “and how long is it, in centimetres?”
import { calculationNamed, systemOf, unitNamed, vocabulary, yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import type { Heard } from '../reader.ts'
import { workedBy } from './last-answer.ts'
import { chosenBy, tell } from './request-parts.ts'

const named: readonly (readonly [option: string, said: string])[] = [
  ['mm', 'mm|milli-?met(?:er|re)s?|mills|mils'],
  ['cm', 'cms?|centi-?met(?:er|re)s?'],
  ['m', 'met(?:er|re)s'],
  ['in', 'inch(?:es)?'],
  ['ft', 'feet|foot'],
]
const all = named.map(([, said]) => said).join('|')
const askedIn = new RegExp(
  `\\bhow many (${all})\\b(?! (?:of )?(?:boards?|timber|rails?|lumber|fence|fencing)\\b)|\\b(?:in|into|as|to) (${all})\\b(?=\\s*(?:$|[?.!,;]|please|pls|then|too|thanks|does|do|is|are|will|must|should|now|as well))`,
  'gi',
)
const asks = /\?|\b(?:how|what|whats|which|give|tell|show|convert|need|want)\b/i
/** “All sizes are in mm” says how the numbers are read, and asks for nothing. */
const tells = /\b(?:all|everything|sizes?|measurements?|measures|dimensions?|numbers?|figures|units?)\b[^.?!]{0,14}$/i

/** The unit that the message asks for, where it is not told of a size. */
function unitIn({ said, readings }: Heard): { readonly option: string; readonly quote: string } | undefined {
  const found = [...said.matchAll(askedIn)].flatMap((it) => {
    const unit = it[1] ?? it[2] ?? ''
    const start = it.index + it[0].length - unit.length
    const isOfSize = readings.some((one) => one.start < start + unit.length && one.end > start)
    const sentence = /[^.?!\n]*$/.exec(said.slice(0, it.index))?.[0] ?? ''
    const rest = /^[^.?!\n]*[.?!]?/.exec(said.slice(it.index))?.[0] ?? ''
    if (isOfSize || !asks.test(sentence + rest) || tells.test(sentence)) return []
    const option = named.find(([, name]) => new RegExp(`^(?:${name})$`, 'i').test(unit))?.[0]
    return option ? [{ option, quote: unit }] : []
  })
  const [only, ...others] = found
  return only && others.every((it) => it.option === only.option) ? only : undefined
}

/** The request with its one length given in the unit that is asked for, where it would come in the other system's, or in centimetres. */
export function inUnitAsked(request: Request, heard: Heard): Request {
  const [want, more] = request.wants
  const word = want && vocabulary.get(want.word)
  if (!want || more || word?.kind !== 'length' || word.list || want.at !== yard || request.unsure) return request
  if (calculationNamed(request.calculation ?? '')?.plain) return request
  const unit = unitIn(heard)
  if (!unit) return request
  const lengths = heard.readings.flatMap(({ quantity }) =>
    quantity?.kind === 'length' ? [unitNamed(quantity.unit).system] : [],
  )
  const system = heard.job.system ?? lengths[0] ?? systemOf(heard.job)
  if (unitNamed(unit.option).system === system && unit.option !== 'cm') return request
  const isOwn = calculationNamed(request.calculation ?? '')?.gives[want.word] !== undefined
  return {
    ...request,
    told: [
      ...request.told,
      tell('lengthGiven', workedBy(isOwn ? (request.calculation as string) : '*', want.word)),
      chosenBy('lengthUnit', unit.option, unit.quote),
    ],
    wants: [...request.wants, { word: 'lengthConverted', at: yard }],
  }
}
