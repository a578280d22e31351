// This file is about saving up: “I can put aside 40 a week, it costs 700 and I have 150 already, how many weeks?”.
import { yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { mayBeMoney, wordsBefore, wordsBehind } from './around.ts'
import { chosenBy, requestFor, tell } from './request-parts.ts'

const saves =
  /\b(put(ting)? (\S+ ){0,3}?(by|aside|away|in)|sav(e|es|ing|ed)|set(ting)? (\S+ ){0,2}?(by|aside)|spare)\b/i
const asks = /\b(how (many|long)|when|by what|which)\b/i
const everyWeek =
  /^\s*(?:dollars |bucks |quid |euros |pounds )?(?:(?:a|per|each|every|by the|\/)\s*(?:week|wk)|weekly)\b/
const everyFortnight =
  /^\s*(?:dollars |bucks |quid )?(?:(?:a|per|each|every) (?:fortnight|two weeks|other week|2 weeks|second week)|fortnightly)\b/
const everyMonth = /^\s*(?:dollars |bucks |quid |euros |pounds )?(?:(?:a|per|each|every|\/)\s*month|monthly)\b/
const wasThere =
  /\b(?:have|has|had|got|['’]ve|ve|already|saved|there['’]s|theres)(?: got| already| now| only| about)*\s*[$£€]?$/
const isThere =
  /^\s*(?:dollars |bucks |quid )?(?:already|saved|put by|so far|in the|there|now|to start|by now|set by|set aside)/

const often = (behind: string): readonly [string, string] | undefined => {
  for (const [option, said] of [
    ['fortnight', everyFortnight],
    ['week', everyWeek],
    ['month', everyMonth],
  ] as const) {
    const [quote] = said.exec(behind) ?? []
    if (quote) return [option, quote.replace(/^\s*(?:dollars|bucks|quid|euros|pounds)\s+/, '').trim()]
  }
  return undefined
}

/** The request of a message that says what is put by, and how often, or one that goes on with it. */
export function savingIn(heard: Heard): Request | undefined {
  const money = heard.readings.filter((it) => (mayBeMoney(it) || it.change?.way === 'more') && !it.per)
  if (money.length === 0 || money.length < heard.readings.filter((it) => it.quantity?.kind !== 'duration').length)
    return undefined
  const each = money.find((it) => often(wordsBehind(heard, it)))
  if (heard.job.named === 'saving-time') return onward(heard, money, each)
  if (!each || !saves.test(heard.said) || !asks.test(heard.said)) return undefined
  const [option, quote] = often(wordsBehind(heard, each)) as [string, string]
  const rest = money.filter((it) => it !== each)
  const already = rest.filter((it) => wasThere.test(wordsBefore(heard, it)) || isThere.test(wordsBehind(heard, it)))
  const goals = rest.filter((it) => !already.includes(it))
  if (goals.length > 1 || already.length > 1) return undefined
  return requestFor(
    'saving-time',
    ['savingTime'],
    [
      ...goals.map((it) => tell('savingGoal', it.tag)),
      ...already.map((it) => tell('savedAlready', it.tag)),
      tell('savedEach', each.tag),
      chosenBy('savedEvery', option, quote),
    ],
  )
}

/** “My aunt gave me another 60”, “what if it is 50 a week”. */
function onward(heard: Heard, [one, two]: readonly Tagged[], each: Tagged | undefined): Request | undefined {
  if (!one || two || heard.job.asked.length > 0) return undefined
  if (each) {
    const [option, quote] = often(wordsBehind(heard, each)) as [string, string]
    return requestFor(
      'saving-time',
      ['savingTime'],
      [tell('savedEach', each.tag), chosenBy('savedEvery', option, quote)],
    )
  }
  // “Another 60” is told as so much more of what is there.
  const isMore = one.change?.way === 'more' && !/\b(cost|costs|price|dearer|went up|goes up)\b/i.test(heard.said)
  const isThere = heard.job.decisions.some((it) => it.word === 'savedAlready' && it.at === yard)
  return isMore && isThere ? requestFor('saving-time', ['savingTime'], [tell('savedAlready', one.tag)]) : undefined
}
