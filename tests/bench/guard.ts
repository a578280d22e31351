// This file is about what the guard of prose costs and what it stops: shares refused, time for an answer, and how time grows with what is written.
import { passProse } from '../../src/guard/prose.ts'
import { refs } from '../src/guard/refs.ts'
import { contradictions, harmless, untaught } from '../src/guard/sentences.ts'
import { chanceFrom, disguised, planted } from '../src/guard/spellings.ts'

const figures = 20_000
const answers = 200

export interface GuardMeasures {
  readonly harmlessRefused: number
  readonly contradictionsRefused: number
  /** The same of sentences that nothing was mended by: what to expect of new ones. */
  readonly untaught: { readonly harmlessRefused: number; readonly contradictionsRefused: number }
  /** Planted figures whose sentence was not shown; what a slip makes a plain word of is among the rest. */
  readonly figuresRefused: number
  /** Milliseconds for an answer of three harmless sentences, and that over the time to fold the case of it and cut it into words. */
  readonly msAnswer: number
  readonly ratio: number
  /** The slowest hostile text at each length, in characters: what may be read, twice as much, and what is refused unread. */
  readonly hostile: readonly { readonly characters: number; readonly ms: number }[]
}

const share = (texts: readonly string[], isRefused: (text: string) => boolean): number =>
  texts.filter(isRefused).length / texts.length
const isRefused = (text: string): boolean => !passProse(text, refs, '').whole

export function guardMeasures(): GuardMeasures {
  const chance = chanceFrom(1)
  const carriers = harmless.filter((it) => !it.includes('{{') && !isRefused(it))
  let stopped = 0
  for (let i = 0; i < figures; i++) {
    const { text, rest } = planted(carriers, disguised(chance), chance)
    const { shown } = passProse(text, refs, '')
    if (shown === '' || shown === rest) stopped++
  }
  const texts = Array.from({ length: answers }, (_, i) =>
    [0, 1, 2].map((k) => carriers[(i * 3 + k) % carriers.length]).join(' '),
  )
  const msAnswer = timeOf(() => texts.forEach((it) => void passProse(it, refs, ''))) / answers
  const msPlain = timeOf(() => texts.forEach((it) => void it.toLowerCase().match(/\p{L}+/gu))) / answers
  return {
    harmlessRefused: share(harmless, isRefused),
    contradictionsRefused: share(contradictions, isRefused),
    untaught: {
      harmlessRefused: share(untaught.harmless, isRefused),
      contradictionsRefused: share(untaught.contradictions, isRefused),
    },
    figuresRefused: stopped / figures,
    msAnswer,
    ratio: msAnswer / msPlain,
    hostile: [2500, 5000, 100_000].map((characters) => ({
      characters,
      ms: Math.max(
        ...hostileUnits.map((it) => timeOf(() => void passProse(it.repeat(characters / it.length), refs, it))),
      ),
    })),
  }
}

const hostileUnits = [
  '{{',
  'a ',
  's ',
  '| ',
  '*',
  '&',
  'one ',
  'dig ',
  '# ',
  '- a\n',
  '. ',
  'call before ',
  '| a | b |\n',
  'Keep it level. ',
  '&amp;',
]

function timeOf(run: () => void): number {
  run()
  const start = performance.now()
  run()
  return performance.now() - start
}

export const inWords = ({
  harmlessRefused,
  contradictionsRefused,
  untaught: fresh,
  figuresRefused,
  msAnswer,
  ratio,
  hostile,
}: GuardMeasures): string => {
  const percent = (it: number): string => `${(it * 100).toFixed(2)} %`
  return [
    `guard of prose: ${percent(contradictionsRefused)} of ${contradictions.length} contradictions refused, ${percent(figuresRefused)} of ${figures} planted figures, ${percent(harmlessRefused)} of ${harmless.length} harmless sentences`,
    `  of sentences that nothing was mended by: ${percent(fresh.contradictionsRefused)} of ${untaught.contradictions.length} roundabout contradictions refused, ${percent(fresh.harmlessRefused)} of ${untaught.harmless.length} harmless sentences`,
    `  ${msAnswer.toFixed(2)} ms for three sentences, ${ratio.toFixed(0)} × cutting them into words`,
    `  slowest hostile text: ${hostile.map((it) => `${it.ms.toFixed(1)} ms at ${it.characters / 1000} kB`).join(', ')}`,
  ].join('\n')
}
