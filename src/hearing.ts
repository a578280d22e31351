// This file is about what is heard: a message with its quantities read and tagged, beside the job it is said into; alone, or together with the messages before it that got no figure.
import {
  isQuantity,
  type Job,
  newJob,
  readJob,
  type Reading,
  readQuantities,
  sameValue,
  unitNamed,
  type WrittenJob,
} from '../engine/index.ts'
import type { Answer, Turn } from './answer.ts'
import { pickedBetween, wordPicked } from './between.ts'
import type { Heard, Tagged } from './readers/reader.ts'

/** The units that a quantity was said in; none where it may be of either: “30 degrees” is an angle too, or °C. */
function systemIn({ quantity, rivals, section }: Reading): Job['system'] | undefined {
  // “90x45” is called by its millimetres.
  if (section && !section.nominal) return unitNamed(section.width.unit).system === 'metric' ? 'metric' : undefined
  const [of, ...others] = [...(quantity ? [quantity] : []), ...rivals].map((it) => unitNamed(it.unit).system)
  return others.some((it) => it && it !== of) ? undefined : of
}

/** “Litres of concrete”, “how many m3”: what is asked for in metric units is told in them. */
const asksInMetric =
  /\b(?:lit(?:re|er)s|m[23]|m[²³]|cubic met(?:re|er)s|square met(?:re|er)s|kilos?|millimet(?:re|er)s|centimet(?:re|er)s)(?![\w²³])/i

/** The message with its quantities read and tagged, beside the job it is said into. */
export function hear(said: string, job: Job): Heard {
  const near = job.decisions.map((it) => it.value).findLast((it) => isQuantity(it) && it.kind === 'date')
  const ofWords = wordPicked(said, job)
  const picked = ofWords?.reading ?? pickedBetween(said, job)
  const readings = picked
    ? [picked]
    : readQuantities(said, { ...(job.system ? { system: job.system } : {}), ...(isQuantity(near) ? { near } : {}) })
  // Bare numbers beside metric ones are metric: "300 mm holes 600 deep".
  // “All in metres”: said once for every number.
  const saidOfAll =
    /\b(?:all|everything|measures?|figures?|points?)\b[^.;]{0,16}\bin (?:metres|meters|millimet(?:re|er)s|mm)\b/i.test(
      said,
    )
  // “Timber comes in 4.8s”: lengths by the foot are whole ones.
  const isByMetre = /\b[1-6]\.\d['’]?s\b/.test(said)
  const system =
    (saidOfAll || isByMetre ? 'metric' : undefined) ??
    readings.map(systemIn).findLast((it) => it) ??
    job.system ??
    (asksInMetric.test(said) ? 'metric' : null)
  return {
    said,
    job: { ...job, system },
    readings: readings.map((it, i) => ({ ...it, tag: `u${i + 1}` })),
    ...(ofWords ? { picked: ofWords.word } : {}),
  }
}

/** The job as the last turn left it. */
export const jobAfter = (turns: readonly Turn[]): Job => {
  const last = turns.at(-1)
  return last ? readJob(last.job as WrittenJob) : newJob
}

/** The message, read as if it had been said in one with those from turn `since` on. */
export function hearSince(since: number, before: readonly Turn[], said: string): Heard {
  const messages = [...before.slice(since).map((it) => it.said.trim()), said]
  const joined = messages.reduce((all, it) => (/[.!?,;:]$/.test(all) ? `${all} ${it}` : `${all}. ${it}`))
  return hear(joined, jobAfter(before.slice(0, since)))
}

/**
 * The turns at the end of the talk of which any may be where this question began, the nearest first: a sum was meant and no figure came.
 * Nothing where the message says a quantity of theirs again: then it says anew what they said, and both in one would count it twice.
 */
export function unansweredBefore(before: readonly Turn[], { said, readings, job }: Heard): number[] {
  // What was asked back is answered, or asked again.
  if (takesBack.test(said) || job.asked.some((it) => it.sum || it.either)) return []
  const answered = before.findLastIndex((it) => !isUnanswered(it.answer))
  const since = Math.max(answered + 1, before.length - mostTogether)
  const earlier = before.slice(since).flatMap((it) => hear(it.said, newJob).readings)
  if (earlier.length === 0 || readings.some((it) => earlier.some((other) => isSameSize(it, other)))) return []
  // A number alone answers the question before it, and is nothing without that.
  const lastAlone = [...before.map((it) => it.said), said].findLastIndex((it) => /^[\s\d.,/]+$/.test(it))
  return before.flatMap((it, i) => (i >= Math.max(since, lastAlone) && !goesOn.test(it.said) ? [i] : [])).reverse()
}
const takesBack = /\b(?:undo|back to|go back|instead|scrap that|never ?mind)\b/i
/** “Same but …”, “minus 14 posts”: said of what was before it, so no question begins there. */
const goesOn = /^\W*(?:and|also|plus|minus|less|same|but|so|then|now|or|no|not|what (?:about|if)|how about|with|of)\b/i
const mostTogether = 3 // messages before; a question that took more was given up

/** A sum was meant, as far as was understood, and no figure came of it. */
const isUnanswered = ({ figures, advice, heard: { request } }: Answer): boolean =>
  advice.length === 0 &&
  (request.acts ?? []).length === 0 &&
  request.declines.every(({ why }) => ['not-understood', 'unclear', 'not-yet', 'no-change'].includes(why)) &&
  !figures.some((it) => it.role === 'result')

/** Said the same: the same size, or the same bare number. */
const isSameSize = (a: Tagged, b: Tagged): boolean =>
  a.quantity && b.quantity ? sameValue(a.quantity, b.quantity) : a.bare?.equals(b.bare ?? -1) === true
