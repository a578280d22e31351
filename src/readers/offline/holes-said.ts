// This file is about what goes into holes, where the sentence tells it apart: two kinds of posts with their own holes, gravel and no concrete, holes filled as if there were no post.
import { type Calculation, calculationNamed, postKinds, yard } from '../../../engine/index.ts'
import type { Request, Told } from '../../request.ts'
import type { Heard, Tagged } from '../reader.ts'
import { empty, from } from './plain-phrases.ts'
import { stem, type Token } from './stems.ts'

const filled = calculationNamed('holes-filled') as Calculation
const concreteOf = calculationNamed('concrete-for-posts') as Calculation
const gravelOf = calculationNamed('gravel-for-holes') as Calculation
const bagged = calculationNamed('loose-in-bags') as Calculation

const kindOf = new Map(
  Object.entries(postKinds).flatMap(([kind, called]) => called.map((it) => [stem(it), kind] as const)),
)

const asksConcrete = /\b(concrete|cement|postmix|post mix|bags?|mix|premix|readymix)\b/i
const squareHoles = /\bsquare\s+(?:post\s*)?holes?\b|\bholes?\s+(?:are\s+)?square\b/i
const asksHowMuch = /\b(how (much|many)|total|altogether|in all|what|need)\b|\?/i

interface Named {
  readonly kind: string
  readonly at: number
}

const isLength = ({ quantity, bare, section, change }: Tagged): boolean =>
  !section && !change && (quantity?.kind === 'length' || bare !== null)

/**
 * “10 line posts in 10 in holes and 4 gate posts in 14 in holes, all 30 deep, 4x4 for line and 6x6 for gate”: each kind has its number and its holes,
 * and what is asked is asked of all.
 */
export function holesOfKindsIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, job } = heard
  if (!asksConcrete.test(said) || !asksHowMuch.test(said) || job.asked.length > 0) return undefined
  // A shape is told of all holes at once: where one kind is square, it is refused as two shapes are.
  if (squareHoles.test(said)) return undefined
  const named = message.flatMap((it, at): Named[] => {
    const kind = it.tag ? undefined : kindOf.get(it.stem)
    return kind ? [{ kind, at }] : []
  })
  const counts = new Map<string, number>()
  const told: Told[] = []
  const tell = (word: string, at: string, { tag }: Tagged): void => {
    told.push({ word, at, from: from(tag) })
  }
  for (const { kind, at } of named) {
    const spot = [at - 1, at - 2].find((i) => message[i]?.reading?.bare?.d === 1n)
    const stands = [1, 2].some((i) => /^(post|gatepost)$/.test(message[at + i]?.stem ?? ''))
    if (spot === undefined || !stands || counts.has(kind)) continue
    counts.set(kind, spot)
    tell('posts', kind, message[spot]?.reading as Tagged)
  }
  if (counts.size < 2) return undefined
  const spots = [...counts].sort(([, a], [, b]) => a - b)
  /** Within the stretch that begins with a count of that kind. */
  const stretchOf = (at: number): string | undefined => spots.findLast(([, spot]) => spot <= at)?.[0]
  /** The kind that is named right beside: “4x4 for line”, “6x6 gate posts”, “line holes 10 in”. */
  const besideOf = (at: number): string | undefined =>
    [1, 2, 3]
      .map((i) => (message.slice(at + 1, at + i).every((it) => /^(for|the|on|at|in)$/.test(it.stem)) ? at + i : -1))
      .flatMap((i) => kindOf.get(message[i]?.tag ? '' : (message[i]?.stem ?? '')) ?? [])[0] ??
    [1, 2, 3]
      .map((i) =>
        message.slice(at - i + 1, at).every((it) => /^(post|hole|is|be|are|in|at|get|the|:)$/.test(it.stem))
          ? at - i
          : -1,
      )
      .flatMap((i) => kindOf.get(message[i]?.tag ? '' : (message[i]?.stem ?? '')) ?? [])[0]
  for (const [at, token] of message.entries()) {
    const { reading } = token
    if (!reading || told.some((it) => it.from.tag === reading.tag)) continue
    const next = [1, 2, 3].map((i) => message[at + i]?.stem ?? '')
    const before = [1, 2, 3].map((i) => message[at - i]?.stem ?? '')
    const kind = besideOf(at) ?? stretchOf(at)
    if (reading.section) {
      if (!kind) return undefined
      tell('postWidth', kind, reading)
    } else if (reading.quantity?.kind === 'mass' && /^(bag|sack)$/.test(next[0] ?? '')) tell('bagWeight', yard, reading)
    else if (reading.quantity?.kind === 'percent') tell('spare', yard, reading)
    else if (!isLength(reading)) return undefined
    else if (next.slice(0, 2).some((it) => /^(gravel|stone|rock)$/.test(it))) tell('stoneDepth', yard, reading)
    else if (/^(deep|down)$/.test(next[0] ?? '') || before.slice(0, 2).includes('deep')) {
      const isOfAll = before.some((it) => /^(all|each|every|both|everything)$/.test(it))
      const deep = message.filter((_, i) => message[i + 1]?.stem === 'deep' && message[i]?.reading).length
      tell('holeDepth', isOfAll || deep === 1 ? yard : (kind ?? yard), reading)
    } else if (
      next.some((it) => /^(hole|posthole|diameter|wide|across|round|auger|bit)$/.test(it)) ||
      before[0] === 'hole'
    ) {
      if (!kind) return undefined
      tell('holeDiameter', kind, reading)
    } else return undefined
  }
  const ofKinds = (word: string): string[] => told.filter((it) => it.word === word).map((it) => it.at)
  const isWhole =
    [...counts.keys()].every((kind) => ofKinds('holeDiameter').includes(kind)) && ofKinds('holeDepth').length > 0
  const isOnce = new Set(told.map((it) => `${it.word} ${it.at}`)).size === told.length
  if (!isWhole || !isOnce) return undefined
  const wantsBags = /\bbags?\b/i.test(said)
  return {
    ...empty,
    told,
    wants: [{ word: wantsBags ? 'bags' : 'concrete', at: yard }],
    calculation: concreteOf.name,
  }
}

/** “So how many 60 lb bags”, behind the concrete of two kinds of posts: of all of them. */
export function bagsOfKindsIn(heard: Heard, message: readonly Token[]): Request | undefined {
  const { said, job, readings } = heard
  const kinds = job.decisions.filter((it) => it.word === 'posts' && it.at !== yard)
  const isBehind = job.wanted.some(({ word, at }) => at === yard && concreteOf.gives[word])
  const named = message.some((it) => !it.tag && kindOf.has(it.stem))
  const [only] = readings
  const isOfBags = readings.every((it) => it === only && it.quantity?.kind === 'mass')
  if (kinds.length < 2 || !isBehind || named || !isOfBags || !/\bhow many\b[^?]*\bbags?\b/i.test(said)) return undefined
  return {
    ...empty,
    told: only ? [{ word: 'bagWeight', at: yard, from: from(only.tag) }] : [],
    wants: [{ word: 'bags', at: yard }],
    calculation: concreteOf.name,
  }
}

const ofGravel = /\bhow (?:much|many)\b[^.?!]{0,40}?\b(gravel|stone|rock|scoria|pea shingle|shingle|ballast)\b/i
/** “And how many litres of gravel is that altogether?”, behind the concrete of the same holes. */
export function gravelIn(heard: Heard): Request | undefined {
  const { said, job, readings } = heard
  const knows = ['posts', 'holeDiameter', 'stoneDepth'].every((word) => job.decisions.some((it) => it.word === word))
  const isOther = /\b(bags?|cost|price|buckets?|barrows?|trips?|concrete|strip)\b/i.test(said)
  if (!knows || readings.length > 0 || job.asked.length > 0 || isOther || !ofGravel.test(said)) return undefined
  return { ...empty, wants: [{ word: 'gravel', at: yard }], calculation: gravelOf.name }
}

/** “The bags at the store are half a cubic foot”, behind a sum of gravel: bags of it, and none of concrete. */
export function bagsOfGravelIn(heard: Heard): Request | undefined {
  const { said, job, readings } = heard
  const isBehind = job.results.some((it) => it.word === 'gravel') && job.wanted.some((it) => gravelOf.gives[it.word])
  const [only, more] = readings
  const isBag = /\b(bags?|sacks?)\b/i.test(said) && !/\b(concrete|cement|mix|postmix)\b/i.test(said)
  if (!isBehind || !only || more || !isBag || job.asked.length > 0) return undefined
  const kind = only.quantity?.kind
  const word = kind === 'volume' ? 'looseBag' : kind === 'mass' ? 'looseBagWeight' : undefined
  return word === undefined
    ? undefined
    : {
        ...empty,
        told: [{ word, at: yard, from: from(only.tag) }],
        wants: [{ word: 'looseBags', at: yard }],
        calculation: bagged.name,
      }
}

const byTheStep = /\b(lots?|steps?|increments?|multiples|at a time|loads? of)\b/i
const asksOrder = /\b(order\w*|truck|plant|ready[- ]?mix|readymix)\b/i
/** “10 % waste, the truck only does 0.2 lots, what do I order?”, behind a volume of concrete. */
export function orderIn(heard: Heard): Request | undefined {
  const { said, job, readings } = heard
  const of = job.wanted.find((it) => it.word === 'concrete' || it.word === 'concreteFilled')
  const spares = readings.filter((it) => it.quantity?.kind === 'percent')
  const [step, more] = readings.filter((it) => it.quantity?.kind !== 'percent')
  const isStep = step && (step.quantity?.kind === 'volume' || (step.bare?.d !== 1n && step.bare !== null))
  if (!of || !step || more || !isStep || spares.length > 1 || !byTheStep.test(said) || !asksOrder.test(said))
    return undefined
  const isFilled = of.word === 'concreteFilled'
  return {
    ...empty,
    told: [
      ...spares.map((it) => ({ word: 'spare', at: yard, from: from(it.tag) })),
      { word: 'orderStep', at: yard, from: from(step.tag) },
    ],
    wants: [{ word: isFilled ? 'orderFilled' : 'readyMix', at: yard }],
    calculation: isFilled ? filled.name : 'bags-for-volume',
  }
}

const noPosts =
  /\b(?:forget|ignore|ignoring|leave out|leaving out|never mind|not counting|without(?: counting)?|don['’]?t (?:count|deduct|take off|subtract)|disregard|skip) (?:the |any |for the )?(?:posts?|timber|wood)\b|\bas if (?:there were|there was|there['’]?s) no posts?\b|\b(?:full|whole|empty|solid) holes?\b|\bno posts? (?:in them|taken off|deducted)\b/i
/** “22 holes 300 dia 750 deep, forget the posts”: no post is taken off. */
export function withHolesFilled(request: Request, { said, job }: Heard): Request {
  const gives: Readonly<Record<string, string>> = { concrete: 'concreteFilled', bags: 'bagsFilled' }
  const isOfConcrete = request.calculation === concreteOf.name && request.wants.some((it) => gives[it.word])
  const isOn = job.wanted.some((it) => filled.gives[it.word])
  if (!noPosts.test(said) || !(isOfConcrete || isOn)) return request
  return {
    ...request,
    told: request.told.filter((it) => it.word !== 'postWidth'),
    wants: request.wants.flatMap((it) => (gives[it.word] ? [{ ...it, word: gives[it.word] as string }] : [it])),
    calculation: filled.name,
  }
}
