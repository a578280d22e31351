// This file is about what is said when a message, or part of it, is not answered.
import { catalogue } from '../engine/index.ts'
import type { Request } from './request.ts'

type Decline = Request['declines'][number]

/** Why it is declined, and what to do instead, in the program's own words. */
export function whyDeclined(decline: Decline): string {
  switch (decline.why) {
    case 'dangerous':
      return `I will not help with this, because it can hurt someone: “${decline.quote}”. ${saferWay(decline.quote)}`
    case 'off-trade':
      return 'That is outside what I know. I work on wooden picket fences and their gates, and nothing else.'
    case 'not-yet':
      return `I cannot work that out yet, and I would rather say so than guess. ${whatCanBeAsked()}`
    case 'not-understood':
      return `I did not understand what to do with that. ${whatCanBeAsked()}`
    default:
      return decline.why satisfies never
  }
}

export const whatCanBeAsked = (): string =>
  `I can work out: ${catalogue
    .filter((calc) => !calc.joins || calc.headlines.length > 1)
    .map((calc) => calc.title.charAt(0).toLowerCase() + calc.title.slice(1))
    .join('; ')}.`

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
