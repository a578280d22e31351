// This file is about alternatives in a message: several values of one word, to be tried side by side.
import { ofRuns, yard } from '../../../engine/index.ts'
import type { Told } from '../../request.ts'
import type { Heard } from '../reader.ts'
import { bindingByRuns } from './bind-by-runs.ts'
import type { Hit } from './lexicon.ts'
import type { PlaceSaid } from './places.ts'
import { runsIn, stretchesByRun } from './runs.ts'
import { quoted, type Token } from './stems.ts'

/** “Compare 6 ft bays with 8 ft bays”, “stepped or following the ground”: values of one word, each read by itself. */
export function alternativesIn(
  heard: Heard,
  message: readonly Token[],
  hits: readonly Hit[],
  places: readonly PlaceSaid[],
): Told[] {
  const runs = runsIn(message, heard.job)
  const measured = heard.readings.flatMap((only) => {
    const others = new Set(heard.readings.filter((it) => it !== only).map((it) => it.tag))
    const alone = message.map((token) =>
      token.tag && others.has(token.tag)
        ? { ...token, tag: undefined, reading: undefined, measured: undefined }
        : token,
    ) as Token[]
    const bindTo = bindingByRuns({
      heard: { ...heard, readings: [only] },
      message: alone,
      hits,
      places,
      runs,
      stretches: stretchesByRun(alone, runs),
    })
    const { bound } = bindTo(
      heard.job.decisions.map((it) => it.word),
      false,
    )
    return bound.map(
      (it): Told => ({
        word: it.word,
        at: it.at,
        from: { tag: it.reading.tag, quote: null, option: null, usual: null },
      }),
    )
  })
  const [first] = measured
  const alike = measured.filter((it) => it.word === first?.word && it.at === first.at)
  if (alike.length > 1) return alike
  const options = hits.filter((hit) => hit.sort === 'option' && hit.option && ofRuns.has(hit.word))
  const word = options[0]?.word
  const each = new Map(options.filter((it) => it.word === word).map((it) => [it.option as string, it] as const))
  return [...each].map(([option, hit]) => ({
    word: word as string,
    at: yard,
    from: {
      tag: null,
      quote: quoted(heard.said, message, hit.from, hit.to),
      option,
      usual: null,
    },
  }))
}
