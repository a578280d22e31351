// This file is about the slope that a talk knows by its fall over a distance, and one bay of it: its rail, its drop.
import { isQuantity, sameValue } from '../../../../engine/index.ts'
import type { Request } from '../../../request.ts'
import type { Tagged } from '../../reader.ts'
import { again, asked, isLast, knows, type Marked, tell, tellAgain } from './marked.ts'

const firstOf = (it: Marked, pattern: RegExp): Tagged | undefined =>
  pattern
    .exec(it.text)
    ?.slice(1)
    .map(it.at)
    .find((one) => one !== undefined)

const slope =
  /(?:falls?|drops?|slopes?|falling|dropping|rises?|goes down|comes down|drops off|falls off|falls away)(?: by| of| about| down| off)* §[LN](\d+) (?:mm |in )?(?:over|in|across|along|for|within)(?: a| the| its)?(?: run of| length of| distance of)? §L(\d+)/
const bay =
  /(?:bays?|sections?|panels?|rails?|posts?)[^.?§]{0,34}§[LN](\d+) (?:mm |ft |foot )?(?:apart |wide |long )?(?:on the (?:level|flat)|measured (?:level|flat)|level|horizontal\w*|apart|wide|cent|o\.?c|centres)|(?:cover|covers|span|spans|reach|reaches|over) §[LN](\d+) (?:measured |on the )?(?:level|flat|horizontal\w*)|§[LN](\d+) (?:bays?|sections?|panels?)\b|(?:bays?|sections?|panels?)(?: of| are| is)? §[LN](\d+)/
const asksRail =
  /how long[^?.]*(?:rail|board|stringer)|(?:rail|board|stringer)[^?.]*how long|length of (?:the |a |each )?(?:sloping |raked )?rail|(?:rail|board) (?:then|length|be)/
const asksDrop =
  /how (?:much|far)[^?.]*(?:drop|fall|lower|step|come down|go down)[^?.]*(?:each|per|every|a|one) |(?:drop|fall)[^?.]*(?:each|per|every) |each[^?.]*(?:drop|fall|step)/
const notThis = /gate|picket|step(?:ped|ping)? (?:it|fence|down)|swing/

/** “Falls 18 in over 30 ft; for a bay of 8 ft on the level, how long is the sloping rail?”, and the fall of each such bay. */
export function bayOnSlope(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const [fall, level] = it.find(slope) ?? []
  const isTold = fall !== undefined && level !== undefined
  const knowsSlope = knows(job, 'fall') && knows(job, 'levelDistance')
  if (!isTold && !knowsSlope) return undefined
  const wide = firstOf(it, bay)
  const isOldFall = (one: Tagged): boolean => {
    const before = job.decisions.findLast((old) => old.word === 'fall')?.value
    return isQuantity(before) && one.quantity !== null && sameValue(before, one.quantity)
  }
  const fresh = isTold ? undefined : firstOf(it, fallAnew)
  const rest = readings.filter(
    (one) => one !== fall && one !== level && one !== wide && one !== fresh && !one.bare?.equals(1),
  )
  const isOld = (one: Tagged): boolean => isOldFall(one) || (one.bare !== null && it.has(/\b(?:and )?not §/))
  if ((!wide && !(knows(job, 'bayCentres') && fresh)) || rest.some((one) => !isOld(one))) return undefined
  if (wide && [fall, level, fresh].includes(wide)) return undefined
  const told = [...tell('fall', fall ?? fresh), ...tell('levelDistance', level), ...tell('bayCentres', wide)]
  const of = (want: string): Request => asked('bay-on-slope', told, want)
  if ((it.has(asksRail) || (fresh && it.has(/rail/))) && !it.has(/between (?:the )?posts/)) return of('rakedBay')
  return it.has(asksDrop) && !it.has(notThis) ? of('dropPerBay') : undefined
}
const fallAnew =
  /(?:falls?|drops?|back to|make it|instead of|now|say|to)(?: (?:the|it|only|by|a))* §[LN](\d+)(?! (?:sections?|bays?|panels?|on the|measured))/

const stepsInAll =
  /§[LN](\d+) (?:of )?(?:fall|drop)|(?:fall|drop|falls|drops)(?: is| of| by)? §[LN](\d+)|§L(\d+) (?:in (?:all|total)|altogether|all told)/
const bays = /§N(\d+) (?:[a-z]+ )?(?:bays|panels|sections|steps)/
/** “Stepping it. What drop at each post?” “900 fall in all, 6 bays”. */
export function stepsTold(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (readings.length === 0)
    return job.wanted.length === 0 &&
      it.has(/\bstepp(?:ing|ed)\b/) &&
      it.has(/(?:what|how (?:much|big|far|tall))[^?.]*(?:drop|step)|(?:drop|step) (?:at|per) (?:each|every)/) &&
      !it.has(/picket|rail|gate|concrete/)
      ? asked('stepped-run', [], 'stepEach')
      : undefined
  // “How much does each 1 step down?”
  const real = readings.filter((one) => !one.bare?.equals(1))
  const count = firstOf(it, bays)
  const down = firstOf(it, stepsInAll)
  const isOpen = isLast(job, 'stepped-run') || job.asked.some((one) => one.word === 'fall' || one.word === 'slopeBays')
  if (
    it.has(/step/) &&
    it.has(/panels|bays|sections/) &&
    !isOpen &&
    count &&
    real.length === 1 &&
    !it.has(/gate|picket/)
  )
    return it.has(/how (?:much|far|big)|what/) ? asked('stepped-run', tell('slopeBays', count), 'stepEach') : undefined
  if (!isOpen || real.some((one) => one !== count && one !== down) || (!count && !down) || it.has(/rail|picket|gate/))
    return undefined
  if (knows(job, 'widestBay') && count) return undefined
  return again([...tell('fall', down), ...tell('slopeBays', count)])
}

const inPanels = /§N(\d+) §L(\d+) (?:wide |long )?(?:panels|bays|sections)/
/** “Drops 30 in over 60 ft, stepped in ten six foot panels”: both say how many there are. */
export function stepsTwice(it: Marked): Request | undefined {
  const [count, wide] = it.find(inPanels) ?? []
  const [fall, level] =
    it.find(
      /(?:falls?|drops?|slopes?)(?: off| down| by| away)* §[LN](\d+) (?:in|over|across|along)(?: the| a)? §L(\d+)/,
    ) ?? []
  if (
    !count ||
    !wide ||
    !fall ||
    !level ||
    it.heard.readings.some((one) => ![count, wide, fall, level].includes(one) && !one.bare?.equals(1))
  )
    return undefined
  const [number, size, all] = [count.bare, wide.quantity, level.quantity]
  if (!it.has(/step/) || !number || !size || !all) return undefined
  const isSame = Math.abs((number.valueOf() * Number(size.amount.valueOf())) / Number(all.amount.valueOf()) - 1) < 0.001
  return isSame
    ? asked(
        'stepped-run',
        [
          ...tell('fall', fall),
          ...tell('levelDistance', level),
          ...tell('widestBay', wide),
          ...tell('slopeBays', count),
        ],
        'stepEach',
      )
    : undefined
}

/** “What is the angle?” of a slope that was told. */
export const fallAgain = (it: Marked): Request | undefined =>
  it.heard.readings.length === 0 &&
  isLast(it.heard.job, 'raked-run') &&
  it.has(/\bangle\b|degrees/) &&
  !it.has(/cut|saw|bevel|plumb/) &&
  knows(it.heard.job, 'fall')
    ? asked('slope-of-ground', [...tellAgain('fall', 'job.fall')], 'slopeAngle')
    : undefined

const asksFall =
  /(?:what(?:'s|s| is| will be| would be)?|how (?:much|big|great))[^?.]*\b(?:fall|drop|difference in (?:height|level)|height difference)\b|how (?:much|far)[^?.]*(?:fall|drop|come down|go down|lower)/
/** “It falls away at one in twelve for 18 m: what is the fall from top to bottom?” */
export function fallOfIncline(it: Marked): Request | undefined {
  const [one, two, more] = it.heard.readings
  if (!one || !two || more || !it.has(asksFall) || it.has(/each|per (?:bay|post)|every|step|gate|picket|gravel/))
    return undefined
  const [slopeSaid, long] = one.quantity?.kind === 'length' ? [two, one] : [one, two]
  if (long.quantity?.kind !== 'length' || slopeSaid.quantity?.kind !== 'percent') return undefined
  return asked('fall-of-slope', [...tell('slope', slopeSaid), ...tell('levelDistance', long)], 'fall')
}
