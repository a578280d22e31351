// This file is about going on from the last answer in money and measures: tax on it, so much more on top, “is that a yard?”, “we only have ten of them”.
import { askable, calculationNamed, yard } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { wordsBefore, wordsBehind } from './around.ts'
import { asksEnough, comparedAs } from './asked-of-last.ts'
import { chosenBy, requestFor, tell } from './request-parts.ts'
import { comparedTold, enoughTold, shareTold } from './told-together.ts'
import { lastCount, lastFigures, sumOf, workedBy } from './last-answer.ts'
import { weightOfLast } from './mixed-loads-said.ts'
import { empty, type Kind } from './plain-phrases.ts'
import { isTax } from './prices-said.ts'
import type { Token } from './stems.ts'

/** The request of a message that goes on from the last answer; nothing where it is another matter. */
export function goingOnIn(heard: Heard, message: readonly Token[]): Request | undefined {
  if (heard.said.length > 240 || heard.job.asked.length > 0) return undefined
  return (
    enoughTold(heard) ??
    comparedTold(heard) ??
    shareTold(heard, message) ??
    onTopOfLast(heard, message) ??
    againstLast(heard) ??
    enoughOfLast(heard, message) ??
    packsOfLast(heard, message) ??
    gapOfLast(heard) ??
    tripsOfLast(heard, message) ??
    weightOfLast(heard, message)
  )
}

const only = (readings: readonly Tagged[], kind: Kind): Tagged | undefined =>
  readings.length === 1 && readings[0]?.quantity?.kind === kind ? readings[0] : undefined

export const ofMore =
  /\b(contingen\w+|cushion|buffer|margin|surprises?|overruns?|unforeseen|just in case|on top|extra|markup|mark-up|add|plus|more|tip|fee)\b/i
const ofLess = /\b(off|discount|less|minus|knock\w*|rebate|deduct\w*)\b/i

/** “Add 9 % tax”, “plus 10 % contingency”, “5 % off that”: of the amount that was answered last. */
function onTopOfLast(heard: Heard, message: readonly Token[]): Request | undefined {
  const rate = only(heard.readings, 'percent')
  const [amount] = lastFigures(heard, 'money')
  if (!rate || !amount) return undefined
  const ofBill = heard.job.named === 'bill' || heard.job.named === 'tax-on-amounts'
  const taxed = message.find(isTax)
  if (taxed) {
    if (ofBill && amount.word === 'billTotal') return undefined
    const isIn = /\b(already|includ\w*|inclusive|incl?|in (it|that|there)|of (it|that))\b/i.test(heard.said)
    return requestFor(
      'tax-on-amounts',
      ['billTotal'],
      [
        tell('taxedAmounts', amount.tag),
        tell('taxRate', rate.tag),
        chosenBy('taxIncluded', isIn ? 'included' : 'added', taxed.text),
      ],
    )
  }
  const spare = ofSpare.test(heard.said) ? spareOfCounted(heard, rate) : undefined
  if (spare) return spare
  if (ofSpare.test(heard.said) || ofLess.test(heard.said) || !ofMore.test(heard.said)) return undefined
  return requestFor(
    'amount-and-share',
    ['amountWithShare'],
    [tell('amountBefore', amount.tag), tell('shareOnTop', rate.tag)],
  )
}

const ofSpare =
  /\b(spares?|waste|wastage|junk|splits?|culls?|breakages?|rejects?|bad ones|pickets?|screws?|bags?|boards?|nails?)\b/i
/** “Add 5 % spare screws”, where they were priced: of the sum that counted them, and so of the price. */
function spareOfCounted({ job }: Heard, rate: Tagged): Request | undefined {
  const of = job.decisions.find((it) => it.of && it.at === yard)?.of
  const word = Object.keys(calculationNamed(of ? sumOf(of, job) : '')?.needs ?? {}).find((it) => it.endsWith('Spare'))
  if (!word) return undefined
  return { ...empty, told: [tell(word, rate.tag)], wants: [...job.wanted], calculation: job.named }
}

const asksAgainst =
  /\b(?:is|are|isnt|isn['’]t|would|will|do|does) (?:that|it|this|those|they|these)\b(?: (?:prices?|costs?|amounts?|total|sum|lot))?(?: all| be| come to| come in| come| stay| keep| still| really| even| about| roughly| just){0,3} (?:more|less|over|under|above|below|at least|within|up to|as much|enough for|an?|one|half|bigger|smaller)\b|^(?:so |and |ok )*(?:that['’]?s|its|it['’]s) (?:more|less|over|under|about an?|an?|half)\b.*\?|^(?:so |and |ok )*(?:more|less|over|under) (?:than )?[^,.]{0,24}\?/i
/** “Is that a yard?”, “is it more than half a ton”, “under £500?”: the last answer, held against another amount. */
function againstLast(heard: Heard): Request | undefined {
  const [mark, more] = heard.readings
  const isBare = mark?.bare != null && mark.bare.compare(10) > 0 && !mark.section
  const kind = isBare ? 'money' : mark?.quantity?.kind
  const name = kind && comparedAs[kind]
  if (!mark || more || !name || mark.per || mark.change || heard.said.length > 90) return undefined
  if (!asksAgainst.test(heard.said)) return undefined
  const [here] = lastFigures(heard, kind)
  // Of a number alone it is the money only where that was all that was answered.
  if (!here || (isBare && heard.job.wanted.length > 1)) return undefined
  return requestFor('amount-against', ['comparison'], [tell(`${name}Here`, here.tag), tell(`${name}Mark`, mark.tag)])
}

export const had =
  /\b(?:(?:i|we|he|she|they)?\s*(?:only\s+|already\s+|just\s+)*(?:have|has|had|got|ve got|bought|found|own)|(?:gave|left|lent|sold) (?:me|us)|there are|there['’]s|theres|in the (?:shed|garage|barn|yard))\b/i
/** “We only have 10 of them, how many more?”, “gave us 60, is that enough?”: what is there, against what was counted last. */
function enoughOfLast(heard: Heard, message: readonly Token[]): Request | undefined {
  const [there, more] = heard.readings
  if (!there?.bare || more || there.bare.d !== 1n || there.change) return undefined
  // “They're 65. I had my glasses on”: what was had is said of the number.
  const beside = `${wordsBefore(heard, there)} ${there.said} ${wordsBehind(heard, there)}`
  if (!had.test(beside) || /\b(posts? apart|bays?|sections?|feet|inch)\b/i.test(heard.said)) return undefined
  const isOf = /^\s*(of (them|those|these|em)|already|left|here|\?|$)/i.test(wordsBehind(heard, there))
  if (!asksEnough.test(heard.said) && (!isOf || /\b(how|what|which)\b/i.test(heard.said))) return undefined
  const needed = lastCount(heard, message, true)
  if (
    !needed ||
    /PerHole|Each/.test(needed.word) ||
    !/picket|bag|post|rail|screw|nail|board|piece|brick|cap|pack|box|can|tin|paling|hinge|stick/.test(needed.value.unit)
  )
    return undefined
  const hung = hungOf(needed.tag)
  return requestFor(
    'enough-pieces',
    ['enoughPieces'],
    [tell('piecesWanted', hung ?? needed.tag), tell('piecesHad', there.tag)],
  )
}

/** What there is against what hangs on the fence: spares are not what somebody lacks. */
function hungOf(tag: string): string | undefined {
  const [, name = '', word = ''] = /^worked\.([^.]+)\.([^.]+)$/.exec(tag) ?? []
  const without = word === 'picketsToBuy' ? 'picketsHung' : word === 'screwsToBuy' ? 'screws' : undefined
  return without && calculationNamed(name)?.gives[without] ? workedBy(name, without) : undefined
}

const inPacks = /\b(bundles?|packs?|packets?|box(?:es)?|cartons?|pallets?|sleeves?|tubs?)\b/i
/** “They come in bundles of 12”: packs of what was counted last, whatever that is. */
function packsOfLast(heard: Heard, message: readonly Token[]): Request | undefined {
  const [many] = heard.readings.filter((it) => it.bare?.d === 1n && !it.section)
  const price = heard.readings.find(
    (it) => it !== many && (it.quantity?.kind === 'money' || /^\d+\.\d\d$/.test(it.said)),
  )
  if (!many || heard.readings.length > (price ? 2 : 1) || !inPacks.test(heard.said)) return undefined
  const isOf =
    /\b(of|in|has|have|holds?|is|are|come|comes|sold in)\s*$/.test(wordsBefore(heard, many)) ||
    /^\s*(to|in|per|a|each|pieces|pc)\b/.test(wordsBehind(heard, many)) ||
    /^\s*(pack|box|bundle)/.test(wordsBehind(heard, many))
  const of = isOf ? lastCount(heard, message, true) : undefined
  // Screws have their own boxes, and bags of concrete are no pieces to a box.
  if (!of || /^(screw|pack|box|bag|trip|post|bay|hole)$/.test(of.value.unit)) return undefined
  return requestFor(
    'packs',
    ['packs'],
    [tell('piecesWanted', of.tag), tell('piecesAPack', many.tag), ...(price ? [tell('packPrice', price.tag)] : [])],
  )
}

const vehicle = /\b(ute|truck|pickup|pick-up|van|trailer|car|payload|bakkie|suv|wagon|trips?|journeys?|runs|loads?)\b/i
/** “The ute takes 800 kg, how many trips?”: of the bags that were counted last. */
function tripsOfLast(heard: Heard, message: readonly Token[]): Request | undefined {
  const room = only(heard.readings, 'mass')
  if (!room || !vehicle.test(heard.said) || !/\b(trips?|journeys?|runs|loads?|go|goes)\b/i.test(heard.said))
    return undefined
  const isWeighed = heard.job.decisions.some((it) => it.word === 'bagWeight' && it.at === yard)
  const of = isWeighed ? lastCount(heard, message, true) : undefined
  if (of?.value.unit !== 'bag' || !askable.some((it) => it.name === 'haul-trips')) return undefined
  return requestFor(
    'haul-trips',
    ['trips'],
    [tell('payload', room.tag), tell('piecesToHaul', of.tag), tell('pieceWeight', 'told.bagWeight')],
  )
}

/** “What gap would make the 60 work?”: of a length that was counted with another gap. */
function gapOfLast(heard: Heard): Request | undefined {
  const [many, more] = heard.readings
  if (!many?.bare || more || many.bare.d !== 1n || many.bare.compare(2) < 0 || many.change) return undefined
  if (!/\bgaps?\b/i.test(heard.said) || !/\b(what|how (big|wide|much))\b/i.test(heard.said)) return undefined
  const isOfLength = heard.job.results.some((it) => it.calculation === 'pickets-by-length')
  if (!isOfLength || !heard.job.wanted.some((it) => /^(pickets|piecesShort|enoughPieces)/.test(it.word)))
    return undefined
  const request = requestFor(
    'gap-for-pickets',
    ['tapeGap'],
    [tell('opening', 'told.runLength'), tell('pickets', many.tag)],
  )
  // No bay is so wide, and it is the whole length that is shared out here.
  return { ...request, confirms: ['opening'] }
}
