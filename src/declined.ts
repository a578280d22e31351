// This file is about what is said when a message, or part of it, is not answered.
import { subjects } from '../engine/index.ts'
import type { Request } from './request.ts'

type Decline = Request['declines'][number]

/** Why it is declined, and what to do instead, in the program's own words. */
export function whyDeclined(decline: Decline): string {
  switch (decline.why) {
    case 'dangerous':
      return `I will not help with this, because it can hurt someone: “${decline.quote}”. ${saferWay(decline.quote)}`
    case 'off-trade':
      return 'That is outside what I know. I work on wooden picket fences and their gates, and nothing else.'
    case 'small-talk':
      return `Ask me about your fence, in your own words. ${whatCanBeAsked()}`
    case 'not-yet':
      return (
        whoDecides(decline.quote) ??
        `I cannot work that out yet, and I would rather say so than guess. ${whatCanBeAsked()}`
      )
    case 'not-understood':
      return `I did not understand what to do with that. ${whatCanBeAsked()}`
    default:
      return decline.why satisfies never
  }
}

export const whatCanBeAsked = (): string =>
  `I can work out sums about: ${subjects.map((it) => it.subject).join('; ')}. Ask with your measures in it.`

/** Questions that no sum settles, and who does settle them. */
const deciders: readonly (readonly [RegExp, string])[] = [
  [
    /\bpermit|\bcode\b|\binspect|\bzoning|\bhoa\b|\bassociation|\blegal|\ballowed\b|\bheight limit/i,
    'Only your building office can say, and any association you belong to. Ask before you buy.',
  ],
  [
    /\bsafe to dig|\bdig here|\bburied|\butilit|\bgas line|\bcable|\b811\b|\blocate/i,
    'Only a locate can say. Have the buried lines located, and wait for the answer, before you dig. In the US call 811, it is free.',
  ],
  [
    /\b(?:property|lot|boundary) line|\bboundary|\bsurvey|\bneighbou?r/i,
    'Only a licensed surveyor can say where the line is. Grass edges, old fences and a tape from the house cannot.',
  ],
  [
    /\bpool\b|\btoddler/i,
    'Pool rules are a law of their own. Ask your building office what the fence, the gate and the latch must be.',
  ],
]

const whoDecides = (quote: string): string | undefined => deciders.find(([topic]) => topic.test(quote))?.[1]

const safer: readonly (readonly [RegExp, string])[] = [
  [
    /burn|fire|stove/i,
    'Treated wood is never burned: its smoke and ash are poisonous. Put offcuts in the trash as your place allows.',
  ],
  [
    /latch|clos|prop|wedge/i,
    'A self-closing, self-latching gate is what stands between a child and the water. Mend it or replace it; ask your building office what it must do.',
  ],
  [/retaining/i, 'A wall that holds back earth needs a licensed engineer.'],
  [/guard|rail|balustrade/i, 'A fence is not a guard at a drop. Ask your building office or a licensed engineer.'],
  [
    /outlet|mains|socket|electrif/i,
    'Only a licensed electrician, with equipment listed for it, puts current on a fence.',
  ],
  [
    /auger|machine|digger|backhoe|excavator|power/i,
    'Near a marked line, dig by hand, and ask the line’s owner before you dig at all.',
  ],
]

const saferWay = (quote: string): string =>
  safer.find(([topic]) => topic.test(quote))?.[1] ??
  'Have the buried lines located, and wait for the answer, before you dig. In the US call 811, it is free.'
