// This file is about wood that dries, as it is told: “loses 1.5 points a week”, “a quarter of a per cent of its width for every per cent”, “what should it weigh at 15 %”, “shrinks 3 % by August”.
import { type Calculation, calculationNamed, toNumber, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { empty, from } from './plain-phrases.ts'
import { requestFor } from './request-parts.ts'

const byRate = calculationNamed('drying-by-rate') as Calculation

const tell = (word: string, { tag }: Tagged): Told => ({ word, at: yard, from: from(tag) })

const time = /\b(?:(?:a|an|per|each|every)\s+(day|week|month)|(dai|week|month)ly)\b/i
const ofTime =
  /^\s*(?:%|percent|per cent|points?|pts?)?\s*(?:(?:of )?moisture\s*)?(?:\/\s*|(?:a|an|per|each|every)\s+|in a\s+)?(?:(?:day|week|month)\b|daily|weekly|monthly)/i
const loses =
  /\b(?:los(?:e|es|ing|t)|drops?|dropping|dries|drying|falls?|falling|comes? down|coming down|goes down|sheds?)\b/i

const isShare = ({ quantity, bare, change }: Tagged): boolean =>
  quantity?.kind === 'percent' || (bare !== null && !change && bare.compare(100) < 0)
const isOneTime = ({ said }: Tagged): boolean => /^(?:a|an|one)\s+(?:day|week|month)$/i.test(said)
const sizeOf = ({ quantity, bare }: Tagged): number =>
  quantity ? toNumber(quantity.amount) * 100 : (bare?.valueOf() ?? 0)

/** “1.5 points a week”: how much, and in how long. */
function rateIn({ said, readings }: Heard): { reading: Tagged; told: Told[] } | undefined {
  const rates = readings.filter((it) => isShare(it) && ofTime.test(said.slice(it.end)))
  const [reading, more] = rates
  const found = reading && time.exec(said.slice(reading.end, reading.end + 40))
  if (!reading || more || !found) return undefined
  const option = (found[1] ?? (found[2] === 'dai' ? 'day' : found[2]) ?? '').toLowerCase()
  const per: Told = { word: 'ratePer', at: yard, from: { tag: null, quote: found[0], option, usual: null } }
  return { reading, told: [tell('dryingRate', reading), per] }
}

/** What it reads now and what it is to come down to: the more and the less of two. */
function moistures(of: readonly Tagged[]): Told[] | undefined {
  const [one, two, more] = [...of].sort((a, b) => sizeOf(b) - sizeOf(a))
  if (!one || !two || more || sizeOf(one) === sizeOf(two) || sizeOf(two) < 5) return undefined
  return [tell('moistureNow', one), tell('moistureLimit', two)]
}

/** The request of a message that tells how fast the wood dries, or goes on with another rate. */
export function dryingAtRateIn(heard: Heard): Request | undefined {
  const { said, readings, job } = heard
  const isOn = job.wanted.some(({ word }) => byRate.gives[word])
  const rate = rateIn(heard)
  if (!rate || !(isOn || loses.test(said))) return undefined
  const dates = readings.filter((it) => it.quantity?.kind === 'date')
  const idle = (it: Tagged): boolean => isOneTime(it) || it.quantity?.kind === 'coverage'
  const rest = readings.filter((it) => it !== rate.reading && !dates.includes(it) && !idle(it))
  const two = moistures(rest)
  if (dates.length > 1 || !(two ?? (isOn && rest.length === 0))) return undefined
  const ofWeeks =
    /\bweeks?\b/i.test(said.replace(/\b(?:a|per|each|every|points a) week\b/gi, '')) ||
    job.wanted.some((it) => it.word === 'weeksAtRate')
  const asksDate = /\b(?:date|what day|which day|when)\b/i.test(said)
  const wants =
    asksDate || dates.length > 0
      ? ['readyAtRate', 'daysAtRate']
      : two || ofWeeks
        ? [ofWeeks ? 'weeksAtRate' : 'daysAtRate']
        : []
  return {
    ...empty,
    told: [...rate.told, ...(two ?? []), ...dates.map((it) => tell('fromDay', it))],
    wants: wants.length > 0 ? wants.map((word) => ({ word, at: yard })) : [...job.wanted],
    calculation: byRate.name,
  }
}

const ofWidth = /^\s*(?:%|percent|per cent)?\s*(?:of (?:(?:its|the|their) )?(?:own )?(?:width|size)|in width|narrower)/i
const forEach = /\b(?:for|per|with)\s+(?:each|every|a)?\s*$/i
/** “100 wide”, “a 90 board”: a width that was said without its unit. */
const isBareWidth = ({ bare, end, section }: Tagged, said: string): boolean =>
  bare !== null && !section && /^\s*wide\b/i.test(said.slice(end))
/** “A quarter of a per cent of its width for every one per cent of moisture”: so much a board shrinks. */
export function shrinkingIn(heard: Heard): Request | undefined {
  const { said, readings, job } = heard
  const rates = readings.filter((it) => it.quantity?.kind === 'percent' && ofWidth.test(said.slice(it.end)))
  const each = readings.filter((it) => isShare(it) && sizeOf(it) === 1 && forEach.test(said.slice(0, it.start)))
  const gap = gapOnward(heard)
  if (gap) return gap
  const widths = readings.filter((it) => it.quantity?.kind === 'length' || isBareWidth(it, said))
  if (!/\b(?:shr[aiu]nk\w*|shrink\w*|narrower|los(?:e|es|ing))\b/i.test(said)) return undefined
  const rest = readings.filter((it) => ![...rates, ...each, ...widths].includes(it))
  const [rate, width] = [rates[0], widths[0]]
  const knows = ['moistureNow', 'moistureLimit'].every((word) => job.decisions.some((it) => it.word === word))
  const two = rest.length === 0 ? [] : moistures(rest)
  if (!rate || !width || rates.length + widths.length !== 2 || !two || (two.length === 0 && !knows)) return undefined
  return {
    ...empty,
    told: [tell('shrinkRate', rate), tell('picketWidth', width), ...two],
    wants: [
      {
        word: /\b(?:width|how wide|what width)\b[^.?]*(?:\bat\b|\bwhen\b|\bthen\b|\bend up\b|\?)/i.test(
          said.replace(ofItsWidth, ''),
        )
          ? 'shrunkWidth'
          : 'shrunkBy',
        at: yard,
      },
    ],
    calculation: byRate.name,
  }
}
const ofItsWidth = /of (?:its|the|their)? ?(?:own )?width/gi

/** “Nailed up with 40 gaps, what is the gap then?”, behind what a board shrinks by. */
function gapOnward({ said, readings, job }: Heard): Request | undefined {
  const [only, more] = readings
  const isOn = job.named === byRate.name && job.wanted.some(({ word }) => /^(?:shrunk|gapOpened)/.test(word))
  if (!isOn || !only || more || !/\bgaps?\b/i.test(said)) return undefined
  if (only.change || !(only.bare !== null || only.quantity?.kind === 'length')) return undefined
  return {
    ...empty,
    told: [tell('gapWhenWet', only)],
    wants: [{ word: 'gapOpened', at: yard }],
    calculation: byRate.name,
  }
}

const asksWeight =
  /\b(?:what|whats|what['’]ll|whatll|how much|how heavy|which)\b[^.?!]*\b(?:weigh\w*|weight|heavy|read|scales?)\b|\b(?:down|get|dry|dried) to what weight\b/i
const ofDry = /\b(?:oven|bone|dry|dried|no more water|lost no more|stopped losing)\b/i
/** “What should that bit weigh at 16 %?”, behind its two weighings or told with them; “7.5 kg at 25 %, what at 10 %?” */
export function weightAtMoistureIn(heard: Heard): Request | undefined {
  const { said, readings, job } = heard
  const shares = readings.filter((it) => it.quantity?.kind === 'percent' && !it.change)
  const masses = readings.filter((it) => it.quantity?.kind === 'mass' && !it.per)
  if (shares.length === 0 || shares.length > 2 || shares.length + masses.length < readings.length) return undefined
  const isOn = job.wanted.some(({ word }) => /^(?:dryBasis|wetBasis|weightAimed)$/.test(word))
  const asks = asksWeight.test(said)
  if (!(asks || (isOn && job.named === 'weight-at-moisture' && said.length < 60)) || masses.length > 2) return undefined
  if (/\b(?:wet basis|by (?:the )?wet weight|shrink\w*|wide|width|gap)\b/i.test(said)) return undefined
  const request = (told: readonly Told[]): Request => requestFor('weight-at-moisture', ['weightAimed'], told)
  const aim = shares.at(-1) as Tagged
  const [one, two] = masses
  if (!one) {
    const known = (word: string): boolean => job.decisions.some((it) => it.word === word)
    const weighed = (
      [
        ['pieceNow', 'wetWeight'],
        ['pieceDry', 'dryWeight'],
      ] as const
    ).filter(([, of]) => known(of))
    if (!isOn || shares.length > 1 || !(known('pieceDry') || known('pieceNow') || known('dryWeight'))) return undefined
    return request([...weighed.map(([word, of]) => linked(word, `told.${of}`)), tell('moistureAimed', aim)])
  }
  if (two) {
    // The heavier of the two is the wet one.
    const [wet, dry] = [one, two].sort((a, b) => sizeOf(b) - sizeOf(a)) as [Tagged, Tagged]
    const isWhole = shares.length === 1 && ofDry.test(said) && sizeOf(wet) > sizeOf(dry)
    return isWhole ? request([tell('pieceNow', wet), tell('pieceDry', dry), tell('moistureAimed', aim)]) : undefined
  }
  const isDry =
    /^[^,;.]{0,16}\b(?:oven|bone)?[- ]?dry\b/i.test(said.slice(one.end)) ||
    /\b(?:oven|bone)[- ]?dr(?:y|ied)\b[^,;.]{0,24}$/i.test(said.slice(0, one.start))
  const now = shares.length === 2 ? shares[0] : undefined
  if (now ? isDry : !isDry) return undefined
  return request([
    tell(isDry ? 'pieceDry' : 'pieceNow', one),
    ...(now ? [tell('pieceMoisture', now)] : []),
    tell('moistureAimed', aim),
  ])
}

const linked = (word: string, of: string): Told => ({ word, at: yard, from: from(of) })

const goesSmaller = /\b(?:shr[aiu]nk\w*|shrinks?|shrinkage|narrower|los(?:e|es|ing)|dry(?:ing)? (?:up|down|out))\b/i
const touching =
  /\b(?:touching|tight|butted|butt|hard up|no gaps?|without (?:a |any )?gaps?|edge to edge|side by side|snug)\b/i
const asksGap = /\bgaps?\b|\bopen(?:s|ed)? up\b|\bspaces? between\b/i
/** “5.5 wide wet, they shrink 3 percent by August, nailed up touching: how big are the gaps then?” */
export function shrinkingByShareIn(heard: Heard): Request | undefined {
  const { said, readings } = heard
  if (!goesSmaller.test(said) || /\b(?:moisture|meter|mc|reads?|points?)\b/i.test(said)) return undefined
  const shares = readings.filter((it) => it.quantity?.kind === 'percent')
  const sizes = readings.filter((it) => it.quantity?.kind === 'length' || (it.bare !== null && !it.section))
  const gaps = sizes.filter(
    (it) =>
      /^\s*(?:mm|in|inch(?:es)?)?\s*(?:wide )?gaps?\b/i.test(said.slice(it.end, it.end + 16)) ||
      /\bgaps?(?: of| at| are| is)?\s*$/i.test(said.slice(0, it.start)),
  )
  const [width, more] = sizes.filter((it) => !gaps.includes(it))
  const [share, another] = shares
  if (!share || another || !width || more || gaps.length > 1 || sizes.length + 1 < readings.length) return undefined
  const isWidth =
    /^\s*(?:mm|in|inch(?:es)?)?\s*(?:wide|across|pickets?|palings?|boards?|slats?)\b/i.test(said.slice(width.end)) ||
    /\b(?:pickets?|palings?|boards?|slats?|width|wide)\b[^.;]{0,20}$/i.test(said.slice(0, width.start))
  if (!isWidth) return undefined
  const isOfGap = asksGap.test(said) && (touching.test(said) || gaps.length === 1)
  const asksWidth = /\bhow (?:wide|narrow|much narrower)\b|\bwhat width\b|\bhow much\b[^.?!]*\b(?:shrink|lose)\b/i.test(
    said,
  )
  if (!isOfGap && !asksWidth) return undefined
  return requestFor(
    'shrink-by-share',
    [isOfGap ? 'gapShrunk' : 'widthShrunk'],
    [tell('widthBefore', width), tell('shareShrunk', share), ...gaps.map((it) => tell('gapBefore', it))],
  )
}
