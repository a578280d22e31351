// This file is about where the sizes of a message stand: what is written before each and behind it, and which word that makes of it.
import { calculationNamed } from '../../../../engine/index.ts'
import type { Told } from '../../../request.ts'
import type { Heard, Tagged } from '../../reader.ts'
import { tell } from '../request-parts.ts'

/** A quantity with the text around it, in small letters, as far as the next quantity or the end of the sentence. */
export interface Spot {
  readonly reading: Tagged
  readonly before: string
  readonly after: string
}

/** What makes a size a word: the text right before it, or right behind it. */
export interface Role {
  readonly word: string
  readonly before?: RegExp
  readonly after?: RegExp
}

export function spotsOf({ said, readings }: Heard): Spot[] {
  return readings.map((reading, i) => {
    const [last, next] = [readings[i - 1]?.end ?? 0, readings[i + 1]?.start ?? said.length]
    return {
      reading,
      before: (
        plain(said.slice(last, reading.start))
          .split(/[.;?!\n](?=\s|$)/)
          .at(-1) ?? ''
      ).trimStart(),
      after: plain(said.slice(reading.end, next)).split(/[.;?!\n](?=\s|$)/)[0] ?? '',
    }
  })
}
const plain = (text: string): string => text.toLowerCase().replace(/’/g, "'")

export const isLength = ({ quantity, bare, section, proportion, clock, people, rails }: Tagged): boolean =>
  !section &&
  (quantity?.kind === 'length' || (bare !== null && quantity === null && !proportion && !clock && !people && !rails))
export const isMeasured = ({ quantity, section }: Tagged): boolean => !section && quantity?.kind === 'length'

/** A small number that counts what nobody measures: “my two gate posts”, “one side”. */
export const isIdle = ({ reading, after }: Spot): boolean =>
  reading.bare !== null &&
  /^(one|two|a couple|a pair|1|2)$/i.test(reading.said) &&
  /^\s+(?:\w+\s+)?(?:gate\s*)?(?:posts?|sides?|ends?|faces?|coats?|way|leg|side|of|hinges?|leaves|leaf|leafs|panels?)\b/.test(
    after,
  )

/** What each size is by its place, the first role that meets it; nothing where one has none, or two have the same. */
export function boundBy(spots: readonly Spot[], roles: readonly Role[]): Told[] | undefined {
  const bound: Told[] = []
  for (const spot of spots) {
    if (isIdle(spot)) continue
    const role = roles.find((it) => (it.before?.test(spot.before) ?? true) && (it.after?.test(spot.after) ?? true))
    if (!role || !isLength(spot.reading) || spot.reading.change?.way === 'times') return undefined
    if (bound.some((it) => it.word === role.word)) return undefined
    bound.push(tell(role.word, spot.reading.tag))
  }
  return bound
}

/** What was told before, told again. */
export const again = (word: string, of = `job.${word}`): Told => tell(word, of)

/** Whether the talk knows a word: it was told, or worked. */
export const knows = ({ job }: Heard, word: string): boolean =>
  job.decisions.some((it) => it.word === word) || job.results.some((it) => it.word === word)

/** Whether the talk is about one of those sums: it was worked, or asked for what it lacks. */
export const isAbout = ({ job }: Heard, ...calculations: readonly string[]): boolean =>
  job.wanted.length > 0 &&
  (calculations.includes(job.named ?? '') ||
    job.results.some(
      (it) => calculations.includes(it.calculation) && job.wanted.some(({ word }) => word === it.word),
    ) ||
    calculations.some((name) => {
      const of = calculationNamed(name)
      return job.wanted.every(({ word }) => of?.gives[word]) && job.asked.some(({ word }) => of?.needs[word])
    }))
