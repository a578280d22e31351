// This file is about painting in the air of a day: “is it okay to stain tomorrow”, “nine degrees and 88 per cent, would that do?”, with the limits that the tin gives.
import { type Calculation, calculationNamed, toNumber, type Word, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import { empty, from } from './plain-phrases.ts'
import type { Token } from './stems.ts'

const air = calculationNamed('air-for-paint') as Calculation
const face = calculationNamed('dew-point') as Calculation

const coats = /\b(paint\w*|stain\w*|varnish\w*|oil(?:ing)?|seal\w*|coat\w*|brush|finish\w*|start)\b/i
const asksLeave =
  /\b((?:may|can|could|should|shall|would) (?:i|we)|am i|(?:is|would|will|'?s|be)(?: it| that| this| they| we)?(?: be)? (?:it |that )?(?:ok|okay|all ?right|alright|fine|safe|good|wise|warm enough|too (?:cold|damp|humid|wet|cool|warm|hot))|good to go|do(?:able)?\?|go ahead|too (?:cold|damp|humid))\b/i
const ofForecast =
  /\b(?:tomorrow|tonight|later|forecast|promis\w*|predict\w*|next (?:week|day)|(?:this|in the) (?:afternoon|evening|weekend)|(?:mon|tues|wednes|thurs|fri|satur|sun)day)\b/i
const ofFace =
  /\b(?:surface|face|boards?|wood|pickets?|planks?|palings?|timber|rails?|posts?)\b[^.;:?!]{0,24}?\b(?:is|are|at|reads?|reading|measures?|only)\b[^.;:?!\d]{0,12}$/i
// What a season’s nights come to has a sum of its own.
const ofSeason =
  /\b(?:nights?|overnight|season|winter|summer|spring|autumn|january|february|april|august|september|october|november|december)\b/i
const ofWood = /\b(moisture|meter|wet wood|dry enough|new wood|green|treated|pressure)\b/i

/** What a tin or the question itself limits: no temperature of anything. */
interface Limits {
  readonly least: Tagged | undefined
  readonly margin: Tagged | undefined
  readonly most: Tagged | undefined
}

const behindLeast =
  /(?:not|never|don['’]?t|do not|nor|no)(?: to)? (?:\w+ )?(?:be )?(?:paint\w* |us\w+ |appl\w+ |stain\w* )?(?:it )?(?:below|under|colder than|lower than|beneath)\s*$|(?:above|over|at least|minimum(?: of)?|min|or|down to)\s*$/i
const behindMost =
  /(?:below|under|up to|no more than|not over|not above|over|above|max(?:imum)?(?: of)?|most|at most)\s*(?:a\s+)?$/i

function limitsIn({ said, readings }: Heard): Limits {
  const tail = (it: Tagged): string => said.slice(Math.max(0, it.start - 60), it.start)
  const isOfTin =
    /\b(tin|can|label|says|data sheet|instructions?|maker|manufacturer|want|wants|must|need|needs)\b/i.test(said)
  const temperatures = readings.filter((it) => it.quantity?.kind === 'temperature')
  const shares = readings.filter((it) => it.quantity?.kind === 'percent')
  return {
    least:
      isOfTin || temperatures.length > 1
        ? temperatures.find((it) => it.firmness === 'at-least' || (behindLeast.test(tail(it)) && isOfTin))
        : undefined,
    margin: readings.find((it) => it.quantity?.kind === 'temperatureDifference'),
    most: isOfTin && shares.length > 1 ? shares.find((it) => behindMost.test(tail(it))) : undefined,
  }
}

/** The request of a message that asks whether the air is fit to paint in; nothing for any other. */
export function paintingWeatherIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, readings, job } = heard
  const goesOn = job.wanted.some((it) => it.word === 'airHolds')
  const asked = new Set(job.asked.map((it) => it.word))
  if (ofWood.test(said) || ofSeason.test(said) || (asked.size > 0 && !asked.has('airNow') && !asked.has('humidityNow')))
    return undefined
  const { least, margin, most } = limitsIn(heard)
  const temperatures = readings.filter((it) => it.quantity?.kind === 'temperature' && it !== least)
  const shares = readings.filter((it) => isShare(it, heard) && it !== most)
  const others = readings.filter((it) => ![...temperatures, ...shares, least, margin, most].includes(it))
  if (others.some((it) => it.quantity?.kind !== 'speed' && it.quantity?.kind !== 'date')) return undefined
  const ofWoods = temperatures.filter((it) => ofFace.test(said.slice(Math.max(0, it.start - 60), it.start)))
  const [ofBoards] = ofWoods
  const airs = temperatures.filter((it) => it !== ofBoards)
  if (airs.length > 1 || ofWoods.length > 1 || shares.length > 1) return undefined
  const one = (word: string, reading: Tagged | undefined): Told[] =>
    reading ? [{ word, at: yard, from: from(reading.tag) }] : []
  const ofAir = [...one('airNow', airs[0]), ...one('humidityNow', shares[0]), ...one('dewMargin', margin)]
  if (ofBoards) {
    const isOfDew = goesOn || (readings.length > 1 && /\bdew/i.test(said) && margin !== undefined)
    const told = [...ofAir, ...one('surfaceTemperature', ofBoards), ...one('humidityLimit', most)]
    return isOfDew && !least
      ? { ...empty, told, wants: [{ word: 'dewHolds', at: yard }], calculation: face.name }
      : undefined
  }
  // Of a talk that knows the face of the wood, its own sum goes on.
  if (job.decisions.some((it) => it.word === 'surfaceTemperature')) return undefined
  // Of the air of this hour the face of the wood can be measured, and its own sum asks for it.
  const isAsked = coats.test(said) && asksLeave.test(said) && (ofForecast.test(said) || least !== undefined)
  // “The pales read 26 %”: a share without the air’s temperature is its humidity only where it is called so.
  if (shares.length > 0 && airs.length === 0 && asked.size === 0 && !/\b(?:humid\w*|rh)\b/i.test(said)) return undefined
  const answers = asked.size > 0 && goesOn && (temperatures.length > 0 || shares.length > 0)
  const tellsAir = goesOn && (temperatures.length > 0 || shares.length > 0)
  if (!isAsked && !answers && !tellsAir) return undefined
  if (readings.length === 0 && (goesOn || message.length > 16)) return undefined
  const told = [...ofAir, ...one('leastPaintTemperature', least), ...one('humidityLimit', most)]
  const isPoint = /\bdew ?point\b/i.test(said) && temperatures.length > 0
  const wants = ['airHolds', ...(isPoint ? ['dewPoint'] : [])].map((word) => ({ word, at: yard }))
  return { ...empty, told, wants, calculation: air.name }
}

/** “88 %”, “the humidity’s eighty eight”. */
const isShare = ({ quantity, bare, high, start, end }: Tagged, { said, job }: Heard): boolean =>
  quantity?.kind === 'percent' ||
  (bare !== null &&
    !high &&
    bare.compare(10) >= 0 &&
    bare.compare(100) <= 0 &&
    (/\b(?:humid\w*|rh)\b[^.;?!\d]{0,16}$/i.test(said.slice(Math.max(0, start - 40), start)) ||
      /^\s*(?:rh|humid\w*)\b/i.test(said.slice(end)) ||
      (job.asked.length === 1 && job.asked[0]?.word === 'humidityNow')))

/** “Is the surface more than 5 degrees above it?”: the margin that is wanted, and the verdict is asked for. */
export function marginIn(message: readonly Token[], needs: Readonly<Record<string, Word>>): Bound[] {
  if (!needs.dewMargin || !face.needs.dewMargin) return []
  const apart = message.flatMap(({ reading }) =>
    reading?.quantity?.kind === 'temperatureDifference' && toNumber(reading.quantity.amount) > 0 ? [reading] : [],
  )
  const [only, more] = apart
  return only && !more ? [{ reading: only, word: 'dewMargin', at: yard, score: weight.byPlace }] : []
}
