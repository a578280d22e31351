// This file is about what is said when a message, or part of it, is not answered.
import { type CautionCode, subjects } from '../engine/index.ts'
import { dangersOf } from './readers/offline/declines.ts'
import { whoElseKnows } from './readers/offline/outside.ts'
import type { Request } from './request.ts'

type Decline = Request['declines'][number]

/** Why it is declined, and what to do instead, in the program's own words. */
export function whyDeclined(decline: Decline): string {
  switch (decline.why) {
    case 'dangerous':
      return `I will not help with this, because it can hurt someone${decline.quote ? `: “${decline.quote}”` : ''}. ${saferWay(decline.quote)}`
    case 'off-trade':
      return [
        'That is outside what I know. I work on wooden picket fences and their gates, and nothing else.',
        whoElseKnows(decline.quote),
      ]
        .filter((it) => it !== undefined)
        .join(' ')
    case 'small-talk':
      return `Ask me about your fence, in your own words. ${whatCanBeAsked()}`
    case 'not-yet':
      return (
        whoDecides(decline.quote) ??
        `I cannot work that out yet, and I would rather say so than guess. ${whatCanBeAsked()}`
      )
    case 'unclear':
      return 'I can take that in more than one way, and would rather ask than guess. Say once more what you want to know, and of what each number is.'
    case 'no-change':
      return 'Something changes, and I did not find what, so I have not worked it again. Say the part and what it is now, for instance “hole depth 30 in”, “no stone” or “two helpers”.'
    case 'not-understood':
      return `I did not understand what to do with that. ${whatCanBeAsked()}`
    case 'not-english':
      return 'That does not look like English, and English is all I can read without a model. A number or a unit of another language is easily taken wrongly, so I worked nothing of it. Ask in English, in as few words as you like.'
    default:
      return decline.why satisfies never
  }
}

export const whatCanBeAsked = (): string =>
  `I can work out sums about: ${subjects.map((it) => it.subject).join('; ')}. Ask with your measures in it.`

/** What a refusal warns of, in full. */
export const cautionsOfDeclined = (declines: readonly Decline[]): CautionCode[] =>
  declines
    .filter((it) => it.why === 'dangerous')
    .flatMap((it) => dangersOf(it.quote))
    .flatMap((it) => it.cautions)

/** Questions that no sum settles, and who does settle them. */
const deciders: readonly (readonly [RegExp, string])[] = [
  [
    /\bpermit|\bcode\b|\binspect|\bzoning|\bhoa\b|\bassociation|\blegal|\ballowed\b|\bheight limit/i,
    'Only your building office or council can say, and any association you belong to. Ask before you buy.',
  ],
  [
    /\bsafe to dig|\bdig here|\bburied|\butilit|\bgas line|\bcable|\b811\b|\blocate/i,
    'Only whoever owns the lines can say. Have them located, and wait for every answer, before you dig.',
  ],
  [
    /\b(?:property|lot|boundary) line|\bboundary|\bsurvey|\bneighbou?r/i,
    'Only a surveyor (licensed, where your country licenses them) can say where the line is. Grass edges, old fences and a tape from the house cannot.',
  ],
  [
    /\bpool\b|\btoddler/i,
    'Places differ about fences round water. Ask your building office or council what the fence, the gate and the latch must be.',
  ],
]

const whoDecides = (quote: string): string | undefined => deciders.find(([topic]) => topic.test(quote))?.[1]

/** What each danger says of itself. What is not in the table was called dangerous by a model: nothing is guessed about it. */
function saferWay(quote: string): string {
  const answers = dangersOf(quote).map((it) => it.answer)
  return answers.length > 0
    ? answers.join(' ')
    : 'Stop there, and ask somebody who is qualified for it before you go on.'
}
