// This file is about which amount of a message is the money that there is to spend: “£650 to spend”, “700 put by”, “I’ve got $800”. Whoever asks what it buys, or what is left of it, asks here.
import type { Heard, Tagged } from '../reader.ts'
import { mayBeMoney, wordsBefore, wordsBehind } from './around.ts'

const speaksOfBudget =
  /\b(?:budget\w*|(?:left )?to spend|to work with|to play with|(?:put|set|laid|tucked) (?:\S+ )?(?:by|aside|away)|saved(?: up)?|afford|stretch to|run to|in (?:my pocket|hand|the (?:bank|kitty|jar|tin|pot))|(?:left|out|rest|remains|over) (?:of|from) (?:my|our|the)|is all (?:i|we)|for (?:the|my) money|allowance|kitty)\b/i
const behindBudget =
  /^\s*(?:(?:dollars|bucks|quid|euros?|pounds)\s+)?(?:(?:left )?to spend|to work with|to play with|(?:total )?budget|allowance|saved|(?:set|put|laid|tucked) (?:by|aside|away)|set by|is (?:all|my|our)|in (?:my pocket|hand|the (?:bank|kitty|jar|tin|pot))|total to spend|max\b|tops\b|limit)/
const beforeBudget =
  /\b(?:budget(?:['’]s| is| was| were| became| of|:)?|budget went (?:up|down) to|spend(?:ing)?|(?:put|set|laid|tucked|saved)(?: up| by| aside| away)*(?: is| of)?|allowed|afford|(?:left|out|rest|remains|remain|remaining|much|over) (?:of|from) (?:my|our|the|that|his|her)|limit(?: is| of)?|(?:i|we)(?: ?['’]?ve| have)?(?: only| just)?(?: got| have| had)?|have|got|my|our)\s*(?:only |just |about |around |roughly |up to |of |exactly )?[$£€]?$/
/** “I’ve got $800”, and nothing else that calls it money to spend. */
const hasIt =
  /(?:\b(?:i|we)(?: ?['’]?ve| have)?(?: only| just)?(?: got| have)|^(?:so |ok |right |hi |hey |well )*(?:(?:i|we) )?(?:only |just )?(?:got|have))\s*(?:about |only |just )?[$£€]?$/
/** “I have 14 posts”: things. “800 dollars”, “800.”, “800 and …”: money. */
const ofThings = /^\s*(?!(?:dollars|bucks|quid|euros?|pounds|to|for|and|in|so|but|left|only|all|total|cash)\b)\p{L}/u

/** The money that there is to spend: called that, or said to be had where the message asks what it buys or what is left of it. */
export function moneyToSpend(heard: Heard, { isOn = false, asks = false } = {}): Tagged | undefined {
  const money = heard.readings.filter((it) => mayBeMoney(it) && !it.per)
  const called =
    isOn || speaksOfBudget.test(heard.said)
      ? (money.find((it) => behindBudget.test(wordsBehind(heard, it))) ??
        money.find((it) => beforeBudget.test(wordsBefore(heard, it))))
      : undefined
  if (called || !asks) return called
  // “I have 60 and need 75”: without an amount that is money for sure, nothing says that these are.
  const isOfMoney = money.some(isSurelyMoney)
  return money.find(
    (it) =>
      hasIt.test(wordsBefore(heard, it)) &&
      (it.quantity?.kind === 'money' || (isOfMoney && !ofThings.test(wordsBehind(heard, it)))),
  )
}

const isSurelyMoney = (it: Tagged): boolean => it.quantity?.kind === 'money' || /\.\d\d$/.test(it.said)
