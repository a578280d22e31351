// This file is about the offline reader: a message in, the typed request out, by the vocabulary, by what was taught, and by the talk so far.
import {
  isRun,
  runOf,
  runPlaces,
  wholeFence,
  type Calculation,
  calculationNamed,
  askable,
  type Wanted,
  type Word,
  yard,
} from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import { isForeign } from '../language.ts'
import type { Heard, Reader } from '../reader.ts'
import { alternativesIn } from './alternatives.ts'
import { askedAlike, isSameMeasure, isSameSort } from './asked-alike.ts'
import { choiceAnswered, choicesIn, noneIn } from './choices.ts'
import { actsIn } from './acts.ts'
import {
  atBay,
  atRuns,
  bareQuestion,
  bareWants,
  bayAsked,
  tagsDenied,
  gateAnswered,
  gatesOut,
  inAll,
  isAsked,
  isOfFence,
  leftOutIn,
  onwardAt,
} from './asked-of-fence.ts'
import { factsIn } from './fence-facts.ts'
import { bindingByRuns, sizesOfRuns, tagsOfNames } from './bind-by-runs.ts'
import { isOfParts, pricedPer } from './fits.ts'
import { fromTag, inOrder } from './bound.ts'
import { thatGiveAny } from './calculations-by-word.ts'
import { withoutDenied } from './denied.ts'
import { readingsByDate } from './dated-readings.ts'
import { dangerIn, declined } from './declines.ts'
import { saysNoHolidays, unreadHolidays } from './holidays.ts'
import { emergenciesIn, onlyThese } from './emergencies.ts'
import { calculationsIn, cuesIn, forgiven, type Hit, isOfTheTrade } from './lexicon.ts'
import { likestNote, nearestNote, notesIn, settles } from './notes.ts'
import { adviceOn, sizesIn } from './note-questions.ts'
import { isOutside } from './outside.ts'
import { placesIn } from './places.ts'
import { lacksSides, runsIn, stretchesByRun, wallsIn } from './runs.ts'
import { withTaxOnTop } from './taxes-said.ts'
import { boughtIn, doneIn } from './so-far.ts'
import { cutPlansAsked, pricesThings, thingsPriced } from './things-priced.ts'
import { isOfTax, pricesIn, soldByIn, tellsIt } from './prices-said.ts'
import { bestSense, asksSomething, askedOf, sensesOf } from './senses.ts'
import { asksHowMuch, confirmsIn, isAboutHow, isSmallTalk } from './small-talk.ts'
import { settled } from './settled.ts'
import { messageOf, type Token } from './stems.ts'
import { whatItIsAbout } from './subject.ts'
import { wantsIn } from './wants.ts'
import {
  atKind,
  chosenReading,
  hasAllSides,
  isOfKinds,
  isOneSum,
  isPlain,
  isWholeSum,
  tornOf,
} from './taught/choose.ts'
import { isLater, look } from './taught/features.ts'
import { sortOf, taughtReading } from './taught/read.ts'
import { isOfOneCalled, isUnmetChange, leavesOut, saysAnew } from './said-anew.ts'
import { talkedOf } from './taught/talked.ts'
import type { MessageKind } from './taught/kinds.ts'
import { whollyIn } from './wholly/wholly.ts'
import { asksThatFollow, walkReading, wantsOfWalk } from './walk/read.ts'

export const offlineReader: Reader = {
  front: 'offline',
  read: (heard) => Promise.resolve({ request: readOffline(heard), by: 'offline' }),
}

const readOnce = new WeakMap<Heard, Request>()

/** Reads a message by the vocabulary, by what was taught, and by the talk so far: once, however many ask for it in a turn. */
export function readOffline(heard: Heard): Request {
  const request = readOnce.get(heard) ?? withTaxOnTop(heard, settled(readAnew(heard), heard))
  readOnce.set(heard, request)
  return request
}

/** What it holds against a model that read the same: nothing where it is not sure of its own reading, or torn between two words. */
export function ownReading(heard: Heard): Request {
  const own = readOffline(heard)
  const isTorn = own.unsure || (own.either ?? []).length > 0
  return isTorn ? { ...own, told: [], wants: [], calculation: null, either: [], unsure: null } : own
}

function readAnew(all: Heard): Request {
  const heard = withoutDenied(all)
  const [reading] = heard.readings
  if (heard.picked && reading) return { ...onlyThese([]), told: [fromTag({ ...heard.picked, reading, score: 1 })] }
  const message = messageOf(heard).map(forgiven)
  const urgent = emergenciesIn(message)
  const outside = isOutside(message) ? declined('off-trade', heard.said.slice(0, 200)) : []
  if (urgent.length > 0) return { ...onlyThese(urgent), declines: outside }
  if (isForeign(heard.said)) return { ...onlyThese([]), declines: declined('not-english', heard.said.slice(0, 200)) }
  const cues = cuesIn(message)
  const hits = cues.filter((hit) => !tellsIt(hit, message))
  const places = placesIn(message)
  const { refused, reasons } = dangerIn(message, heard.said)
  const looked = look(heard, message, cues)
  const sort = sortOf(looked)
  const isSort = (kind: MessageKind, least: number): boolean =>
    sort.kind === kind && sort.share > least && (heard.job.asked.length === 0 || heard.readings.length === 0)
  const danger =
    refused.length === 0 && reasons.length === 0 && isSort('danger', 0.9)
      ? declined('dangerous', heard.said.slice(0, 200))
      : refused
  if (danger.length === 0 && reasons.length > 0) return { ...onlyThese([]), notes: reasons }
  if (outside.length > 0 && danger.length === 0) return { ...onlyThese([]), declines: outside }
  const advised =
    danger.length === 0 && (heard.job.asked.length === 0 || heard.readings.length === 0)
      ? adviceOn(message, talkedOf(heard.job), {
          ...sort,
          asksFigure: asksHowMuch(message) || hits.some((it) => it.sort === 'ask'),
          isOfTheTrade: isOfTheTrade(message),
        })
      : undefined
  const isWhatIf = isOfOneCalled(heard, message) || leavesOut(heard)
  if (advised?.isLikely && sizesIn(message) === 0 && !isWhatIf) return { ...onlyThese([]), notes: advised.notes }
  const met = notesIn(message)
  const points = heard.readings.filter((it) => it.point)
  const byRules = runsIn(message, heard.job)
  const walking =
    points.length === 0 && !isSort('advice', 0.5) ? walkReading(looked, isAsked(message), byRules) : undefined
  const sum = walking || /side by side/i.test(heard.said) ? taughtReading(looked, sort) : undefined
  const isOne = isOneSum(heard.job, sum)
  const walk = walking === 'torn' || isOne ? undefined : walking
  const runs = walk || isOne ? [] : byRules // bricks side by side are no side of a fence
  const stretches = stretchesByRun(message, runs)
  const { wants: asked, spent } = saysAnew(heard, message, hits)
    ? { wants: [], spent: [] }
    : wantsIn(message, hits, places, heard.job)
  // “The back run is 48 ft at 8 ft on centre, how many posts?” asks of one stretch: no fence of several is told.
  const isFence =
    points.length > 0 ||
    walk !== undefined ||
    runPlaces(heard.job).length > 0 ||
    runs.length > 1 ||
    (runs.length === 1 && !(isAsked(message) && new Set(runs.flatMap((it) => it.places)).size === 1))
  // “The front is 60 ft, with a gate 20 ft along”: the fence is told, and nothing is asked yet.
  const barely = bareQuestion(message, heard)
  const follows = runPlaces(heard.job).length > 0 && !walk && asked.length === 0 ? asksThatFollow(looked) : []
  const onlyTells = isFence && !isAsked(message) && barely.length === 0 && follows.length === 0
  const cuts = isFence ? cutPlansAsked(message, heard).map((word): Wanted => ({ word, at: yard })) : []
  const bare =
    isFence && asked.length === 0 && barely.length > 0 ? bareWants(barely, barely === message ? stretches : []) : []
  const onward = isFence ? onwardAt(message, stretches, heard.job) : []
  const asking = asked.flatMap((it) => atRuns(isFence ? inAll(it, message) : it, spent, stretches, message, runs))
  const wants = walk
    ? wantsOfWalk(walk, [...cuts, ...asking], message)
    : ([cuts, bare, onward, onlyTells ? [] : asking, follows].find((it) => it.length > 0) ?? [])
  const between = (): Told[] => alternativesIn(heard, message, hits, places)
  const acts = danger.length === 0 ? actsIn(message, hits, heard.job, heard.said, between) : []
  if (acts.length > 0) return { ...onlyThese([]), acts }
  const plain = danger.length === 0 ? whollyIn(all, heard, message, hits, wants.length > 0, readAnew) : undefined
  if (plain) return plain
  if (
    !advised?.isLikely &&
    isSort('off-trade', isOfTheTrade(message) ? 0.9 : 0.6) &&
    danger.length === 0 &&
    reasons.length === 0
  )
    return { ...onlyThese([]), declines: declined('off-trade', heard.said.slice(0, 200)) }
  const isShort = !walk && runs.length > 0 && runPlaces(heard.job).length === 0 && lacksSides(message, runs)
  const isLost =
    walking === 'torn' &&
    !isOneSum(heard.job, sum) &&
    !(runPlaces(heard.job).length === 0 && isWholeSum(sum) && hasAllSides(sum, message))
  if ((isLost || isShort) && danger.length === 0)
    return { ...onlyThese([]), declines: declined('unclear', heard.said.slice(0, 200)) }
  // “1:2:3” names the calculation that takes the parts of a mix, as a phrase of its own would.
  const byParts = heard.readings.some((it) => it.proportion) ? ofParts : []
  // So does “28 dollars a foot”, which is the price of a measure, and of nothing whole.
  const byPrice = priced.filter((it) => Object.values(it.needs).some((word) => word.per && isPricedBy(word.per, heard)))
  const byName = calculationsIn(message).map((name) => calculationNamed(name) as Calculation)
  // "200 palings at 1.95, how much?": things with their prices, and nothing else that is asked for by name.
  const ofBill =
    wants.length === 0 &&
    !pricesThings(heard, false) &&
    byName.length === 0 &&
    pricesIn(heard, message, new Set()).length > 0
  const named = onlyTells
    ? []
    : [
        ...byParts,
        ...byPrice,
        ...byName,
        ...(ofBill ? askable.filter((it) => it.needs.unitPrices) : []),
        ...(isOfTax(heard, message) && wants.length === 0 ? askable.filter((it) => it.needs.taxedAmounts) : []),
      ]
  // A calculation called by its own phrase answers in its own words: "how many pickets … past the posts" are those to each bay.
  const own = (calc: Calculation, want: Wanted): string | undefined =>
    calc.gives[want.word]
      ? want.word
      : (askedAlike(want.word, hits).find((it) => calc.gives[it]) ??
        Object.values(calc.gives).find((it) => isSameSort(it, want.word))?.name ??
        calc.headlines.find((it) => isSameMeasure(it, want.word)))
  // "26 % on 1 May, 22 % on 11 May": whatever is asked of it, it is the change over time.
  const followed = readingsByDate(heard)?.calculation
  const firstMeant =
    followed ?? named.find((calc) => wants.some((it) => own(calc, it))) ?? (wants.length === 0 ? named[0] : undefined)
  const first = askedOf(firstMeant, followed ? wants.filter((it) => own(followed, it)) : wants, own)
  const unspent = onlyTells ? hits : hits.filter((hit) => !isSpent(hit, spent))
  const asksTakeOff = [...wants, ...heard.job.wanted].some((it) => calculationNamed('take-off')?.gives[it.word])
  const have = isFence && !isAsked(message) ? boughtIn(message) : []
  const apart = [
    ...points.map((reading) => ({
      reading,
      word: reading.point === 'across' ? 'pointsAcross' : 'pointsAlong',
      at: yard,
      score: 1,
    })),
    ...(pricesThings(heard, asksTakeOff) ? thingsPriced(message) : []),
    ...have,
    ...(walk ? walk.bound : sizesOfRuns({ message, runs, stretches }, runPlaces(heard.job))),
  ]
  const removed = isFence ? gatesOut(message, runs, heard) : undefined
  const denied = isFence ? tagsDenied(message) : []
  const bay = isFence && !onlyTells ? bayAsked(message, runs, runPlaces(heard.job)) : undefined
  const facts =
    isFence && !walk
      ? factsIn(message, runs, heard, runPlaces(heard.job), [
          ...(bay?.tag ? [bay.tag] : []),
          ...denied,
          ...(removed ? heard.readings.map((it) => it.tag) : []),
          ...apart.map((it) => it.reading.tag),
          ...tagsOfNames(message, runs, stretches),
        ])
      : { bound: [], told: [] }
  const fenceHits = isFence ? unspent.filter((hit) => isOfFence(hit.word, [...wants, ...heard.job.asked])) : unspent
  const bindTo = bindingByRuns({
    heard,
    message,
    hits: fenceHits,
    places,
    runs,
    stretches,
    apart: [...apart, ...facts.bound],
    names: [
      ...denied,
      ...(bay?.tag ? [bay.tag] : []),
      // What a walk did not take for a side, a gate or what stands there is nothing of the fence.
      ...(removed || (walk && walk.sides > 0) ? heard.readings.map((it) => it.tag) : []),
    ],
  })
  const bindFor = (wanted: readonly Wanted[], asksNow: boolean, calc?: Calculation) =>
    bindTo(
      wanted.map((it) => it.word),
      asksNow,
      calc,
    )
  const isNew = heard.job.wanted.length === 0
  const sense = bestSense(
    { asks: first, meant: firstMeant },
    !walk && !onlyTells && asksSomething(message) && heard.readings.length > 0 && (first.length > 0 || isNew)
      ? sensesOf(wants, message, hits, own)
      : [],
    (it) => bindFor(it.asks.length > 0 ? it.asks : heard.job.wanted, it.asks.length > 0, it.meant),
    heard,
    runs.length === 0 && apart.length === 0,
  )
  let { asks, meant } = walk ? { asks: wants, meant: undefined } : sense
  let context = asks.length > 0 ? asks : onlyTells ? [] : heard.job.wanted
  let { bound, loose } = bindFor(context, asks.length > 0, meant ?? (onlyTells ? wholeFence : undefined))
  const ownTold = bound.length
  let learned: readonly Told[] = walk?.chosen ?? []
  const wantsNoSum =
    heard.readings.length === 0 &&
    !(isLater(heard.job)
      ? isSort('sum', 0) || isSort('told', 0)
      : isSort('sum', 0.6) && asks.length === 0 && meant === undefined)
  const tried = isFence || !isPlain(heard) || wantsNoSum ? undefined : taughtReading(looked, sort)
  const taught = tried && !isOfKinds(tried, heard, places) ? atKind(tried, heard, places) : undefined
  const which = taught ? chosenReading(taught, { meant, bound, loose, context, asks }, heard) : 'own'
  if (taught && which === 'torn' && met.length === 0 && danger.length === 0)
    return taught.doubtful
      ? { ...onlyThese([]), ...tornOf(taught, taught.doubtful) }
      : { ...onlyThese([]), declines: declined('unclear', heard.said.slice(0, 200)) }
  const unsure = which === 'unsure'
  const either = (which === 'taught' || unsure) && taught?.either ? [taught.either] : []
  if (taught && (which === 'taught' || unsure)) {
    learned = taught.chosen
    ;({ asks, bound, loose } = { asks: [...taught.asks], bound: [...taught.bound], loose: [...taught.loose] })
    meant = taught.calculation
    context = asks.length > 0 ? asks : heard.job.wanted
  }
  // Nothing is asked by name, and nothing was before: what the message is about is what is wanted, and helps to read it.
  const subject = context.length === 0 && !isFence ? whatItIsAbout(bound.map(fromTag), hits) : []
  if (subject.length > 0) {
    context = subject
    ;({ bound, loose } = bindFor(subject, true, meant))
  }
  // The answer to what was asked of one run is told of that run.
  if (runs.length === 0) bound = bound.map((it) => ({ ...it, at: it.at === yard ? askedPlace(it.word, heard) : it.at }))
  const chosen = [
    ...learned,
    ...choicesIn(heard, message, hits, bound, context, stretches, isFence).filter(
      (it) => !learned.some((other) => other.word === it.word),
    ),
  ]
  const sold = soldByIn(bound, heard.said)
  const walls = stretches.flatMap((it) => wallsIn(message, it))
  const sloping = heard.job.decisions
    .filter((it) => (it.word === 'fall' || it.word === 'slopeWay') && isRun(runOf(it.at)))
    .map((it) => it.at)
  const told = [
    ...inOrder(bound).map(fromTag),
    ...(chosen.length > 0 ? chosen : choiceAnswered(heard, message)).filter(
      (it) =>
        !sold.some((by) => by.word === it.word) &&
        !(walls.length > 0 && it.word === 'runEnds' && it.from.option === 'walls'),
    ),
    ...sold,
    ...noneIn(message, hits, heard, bound),
    ...facts.told,
    ...(removed ?? leftOutIn(message, runs, heard.said)),
    ...gateAnswered(heard, runs, bound),
    ...(onlyTells ? doneIn(message, stretches, heard.said) : []),
    ...walls.flatMap(({ places: ends, ...it }) => {
      const quote = heard.said.slice((message[it.from] as Token).start, (message[it.to - 1] as Token).end)
      return ends.map((at): Told => ({ word: it.word, at, from: { tag: null, quote, option: 'wall', usual: null } }))
    }),
    ...unreadHolidays(
      heard,
      message,
      bound,
      context.map((it) => it.word),
      meant?.name,
    ),
  ].flatMap((it): Told[] =>
    // “Make it follow the ground instead” is said of the runs that slope.
    it.word === 'slopeWay' && it.at === yard && sloping.length > 0
      ? [...new Set(sloping)].map((at) => ({ ...it, at }))
      : [it],
  )
  // "And for the line posts?", "and 10 line posts in 10 in holes?": the same question at another place.
  const spoken = [...places.map((it) => it.place), ...runs.flatMap((it) => it.places)]
  const isOfPlaces = told.every(({ at }) => spoken.includes(at))
  const isAsBefore = asks.every(({ word }) => heard.job.wanted.some((it) => it.word === word))
  const elsewhere =
    isAsBefore &&
    (asks.length === 0 || told.length === 0) &&
    isOfPlaces &&
    !(onlyTells && told.length > 0) &&
    (told.length === 0 || heard.job.asked.length === 0)
      ? [...new Set(spoken)].flatMap((at) => heard.job.wanted.map(({ word }) => ({ word, at })))
      : []
  const wanted = [...(elsewhere.length > 0 ? [] : asks), ...subject, ...elsewhere]
    .map((it) => atBay(it, bay?.place))
    .filter((want) => !told.some((it) => it.word === want.word && it.at === want.at))
  const confirms = saysNoHolidays(heard, message) ? ['holidays'] : confirmsIn(message, heard)

  const isTalk =
    asked.length === 0 &&
    byName.length === 0 &&
    asksSomething(message) &&
    !(places.length > 0 && message.at(-1)?.text !== '?') &&
    sizesIn(message) <= 1 &&
    !asksHowMuch(message) &&
    isSort('advice', 0.5)
  // What is told beside it is kept where the talk begins; later a size in it only describes: “I hit rock at 20, any way round it?”
  if (advised && !isWhatIf && (advised.isLikely || (isTalk && met.length === 0)))
    return { ...onlyThese([]), told: isLater(heard.job) ? [] : told, notes: advised.notes }
  if (isTalk && !isOfTheTrade(message) && danger.length === 0 && met.length === 0)
    return { ...onlyThese([]), declines: declined('off-trade', heard.said.slice(0, 200)) }
  const wantsAdvice =
    isTalk || (heard.readings.length === 0 && isAboutHow(message) && !asksHowMuch(message) && !isWhatIf)
  const likest = isTalk && isOfTheTrade(message) && !asksHowMuch(message) ? likestNote(message) : undefined
  const nearest = likest ? { note: likest, isSure: true } : wantsAdvice ? nearestNote(message) : undefined
  const called =
    met.length === 0 && nearest && ((nearest.isSure && asked.length === 0) || isTalk)
      ? [{ note: nearest.note, words: wordsBesideSum, isApart: true }]
      : met
  // "Should I set the posts in gravel or concrete?": nothing is measured and nothing known, so no sum is meant.
  const asksAdvice = wantsAdvice && called.length > 0 && (isTalk || !isKnownOf(wanted, heard))
  // “Is a 94 lb bag too heavy to lift?” sounds like a sum, and a note settles it.
  const settled =
    Math.min(told.length, ownTold) <= 1 ? called.filter((it) => settles(it.note)).map((it) => it.note) : []
  if (danger.length === 0 && settled.length > 0 && !isWhatIf) return { ...onlyThese([]), notes: settled }
  const left = asksAdvice || isTalk ? [] : wanted // where no note knows it, no sum is put in the place of advice

  const isSum = told.some((it) => it.word !== 'country') || left.length > 0
  const notes = called.filter((it) => !isSum || (it.isApart && it.words >= wordsBesideSum)).map((it) => it.note)

  const request: Request = {
    told,
    wants: left,
    calculation: meant?.name ?? null,
    confirms,
    notes,
    ...(either.length > 0 ? { either } : {}),
    ...(unsure ? { unsure } : {}),
    declines: danger,
  }
  if (danger.length > 0) return { ...request, told: [], wants: [], notes: [], either: [] }
  // "What is the capital of France?" says no more of the fence than where it is not.
  const onlyNames =
    !isSum && notes.length === 0 && confirms.length === 0 && asksSomething(message) && !isOfTheTrade(message)
  if (onlyNames && told.length > 0)
    return { ...request, told: [], declines: declined('off-trade', heard.said.slice(0, 200)) }
  if (
    [told, confirms, notes, either].every((it) => it.length === 0) &&
    isUnmetChange(heard, meant, [...left, ...(left.length === 0 ? heard.job.wanted : [])])
  )
    return { ...onlyThese([]), declines: declined('no-change', heard.said.slice(0, 200)) }
  if ([told, left, confirms, notes, either].some((it) => it.length > 0)) return request
  if (loose.length === 0 && isSmallTalk(message))
    return { ...request, declines: declined('small-talk', heard.said.slice(0, 200)) }
  // Quantities that belong to no word are named in the answer; alone they are a message not understood.
  if (loose.length > 0) return { ...request, declines: declined('not-understood', heard.said.slice(0, 200)) }
  const isOfTrade = isOfTheTrade(message)
  const isOfSum = isFence || (isLater(heard.job) && sort.ofSums > 0.5 && !isOfTrade) // “per stick”, in a talk about sums
  if (nearest && isOfTrade) return { ...request, notes: [nearest.note] } // nothing else answers it
  const why = isOfSum ? 'not-understood' : isOfTrade ? 'not-yet' : 'off-trade'
  return { ...request, declines: declined(why, heard.said.slice(0, 200)) }
}

const wordsBesideSum = 3 // of a message call for a note that is worth reading beside a sum
/** Whether anything is known of what the wanted words need. */
const isKnownOf = (wanted: readonly Wanted[], heard: Heard): boolean =>
  thatGiveAny(wanted.map((it) => it.word)).some((calc) =>
    heard.job.decisions.some((it) => calc.needs[it.word] !== undefined),
  )

const ofParts = askable.filter((it) => Object.values(it.needs).some(isOfParts))
const priced = askable.filter((it) => !it.plain && Object.values(it.needs).some((word) => word.per))
const isPricedBy = (per: Word['per'], { readings }: Heard): boolean => readings.some((it) => pricedPer(it) === per)
/** "What spacing …" asks; its "spacing" is no longer a cue for a quantity. A thing may still be: "how many 60 lb bags". */
const isSpent = (hit: Hit, spent: readonly Hit[]): boolean =>
  hit.sort !== 'thing' && spent.some((it) => hit.from >= it.from && hit.to <= it.to)
const askedPlace = (word: string, { job }: Heard): string => job.asked.find((it) => it.word === word)?.at ?? yard
