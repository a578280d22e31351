// This file is about what people call each unit.
import { isInMiddle } from './in-the-middle.ts'
import { numberAt } from './numbers.ts'
import { tableOf } from './table-of.ts'
import type { Scanned } from './scan.ts'
import { meantBySlip, shortestForgiven } from './slips.ts'

export interface UnitRead {
  readonly unit: string
  readonly next: number /** A bare `in`, `m`, `C` or `'`, which may be something else. */
  readonly doubtful?: boolean
}

const lengths = tableOf<string>({
  in: 'in',
  inch: 'in',
  inches: 'in',
  inchs: 'in',
  ins: 'in',
  incher: 'in',
  '"': 'in',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  foots: 'ft',
  feets: 'ft',
  fts: 'ft',
  lf: 'ft',
  lft: 'ft',
  footer: 'ft',
  footers: 'ft',
  "'": 'ft',
  yd: 'yd',
  yds: 'yd',
  yard: 'yd',
  yards: 'yd',
  mm: 'mm',
  mms: 'mm',
  millimeter: 'mm',
  millimetre: 'mm',
  millimeters: 'mm',
  millimetres: 'mm',
  mil: 'mm',
  mils: 'mm',
  cm: 'cm',
  cms: 'cm',
  centimeter: 'cm',
  centimetre: 'cm',
  centimeters: 'cm',
  centimetres: 'cm',
  m: 'm',
  meter: 'm',
  metre: 'm',
  meters: 'm',
  metres: 'm',
  lm: 'm',
  mtr: 'm',
  mtrs: 'm',
  km: 'km',
  kms: 'km',
  kilometer: 'km',
  kilometre: 'km',
  kilometers: 'km',
  kilometres: 'km',
  mi: 'mi',
  mile: 'mi',
  miles: 'mi',
})
const others = tableOf<string>({
  stone: 'stone',
  st: 'stone',
  // By weight: of paint it may be a measure, and is asked about.
  oz: 'oz',
  ounce: 'oz',
  ounces: 'oz',
  lb: 'lb',
  lbs: 'lb',
  pound: 'lb',
  pounds: 'lb',
  pounder: 'lb',
  pounders: 'lb',
  g: 'g',
  gram: 'g',
  grams: 'g',
  gramme: 'g',
  grammes: 'g',
  kg: 'kg',
  kgs: 'kg',
  kilo: 'kg',
  kilos: 'kg',
  kilogram: 'kg',
  kilograms: 'kg',
  kilogramme: 'kg',
  kilogrammes: 'kg',
  ton: 'ton',
  tons: 'ton',
  tonne: 'tonne',
  tonnes: 'tonne',
  l: 'L',
  liter: 'L',
  litre: 'L',
  liters: 'L',
  litres: 'L',
  // A millilitre is a cubic centimetre.
  ml: 'cm3',
  mls: 'cm3',
  milliliter: 'cm3',
  millilitre: 'cm3',
  milliliters: 'cm3',
  millilitres: 'cm3',
  cc: 'cm3',
  ltr: 'L',
  ltrs: 'L',
  qt: 'qt',
  qts: 'qt',
  quart: 'qt',
  quarts: 'qt',
  gal: 'gal',
  gals: 'gal',
  gallon: 'gal',
  gallons: 'gal',
  lbf: 'lbf',
  newton: 'N',
  newtons: 'N',
  kn: 'kN',
  kilonewton: 'kN',
  kilonewtons: 'kN',
  pcf: 'lb/ft3',
  plf: 'lb/ft',
  psi: 'psi',
  psf: 'lb/ft2',
  kpa: 'kPa',
  mpa: 'MPa',
  gpa: 'GPa',
  kilopascal: 'kPa',
  kilopascals: 'kPa',
  megapascal: 'MPa',
  megapascals: 'MPa',
  gigapascal: 'GPa',
  gigapascals: 'GPa',
  mph: 'mph',
  kph: 'km/h',
  kmh: 'km/h',
  kmph: 'km/h',
  knot: 'knot',
  knots: 'knot',
  kt: 'knot',
  kts: 'knot',
  '%': 'percent',
  percent: 'percent',
  pct: 'percent',
  percents: 'percent',
  // “Second” alone is which one, not how long.
  sec: 'second',
  secs: 'second',
  seconds: 'second',
  min: 'min',
  mins: 'min',
  minute: 'min',
  minutes: 'min',
  h: 'h',
  hr: 'h',
  hrs: 'h',
  hour: 'h',
  hours: 'h',
  day: 'day',
  days: 'day',
  week: 'week',
  weeks: 'week',
  wk: 'week',
  wks: 'week',
  month: 'month',
  months: 'month',
  mo: 'month',
  mos: 'month',
  mth: 'month',
  mths: 'month',
  year: 'year',
  years: 'year',
  yr: 'year',
  yrs: 'year',
  sqft: 'ft2',
  sf: 'ft2',
  sqm: 'm2',
  sqyd: 'yd2',
  cuft: 'ft3',
  cf: 'ft3',
  cuyd: 'yd3',
  cy: 'yd3',
  dollar: 'USD',
  dollars: 'USD',
  buck: 'USD',
  bucks: 'USD',
  euro: 'EUR',
  euros: 'EUR',
  quid: 'GBP',
})
const powers = tableOf<Readonly<Record<string, string>>>({
  square: { in: 'in2', ft: 'ft2', yd: 'yd2', mm: 'mm2', cm: 'cm2', m: 'm2' },
  cubic: { in: 'in3', ft: 'ft3', yd: 'yd3', cm: 'cm3', m: 'm3' },
})
const signOfPower = tableOf<'square' | 'cubic'>({
  '²': 'square',
  '2': 'square',
  '³': 'cubic',
  '3': 'cubic',
})

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

// Long words forgive one slip; short ones would catch too much.
const forgiving = Object.entries({ ...lengths, ...others }).filter(([word]) => word.length >= shortestForgiven)
const slipped = (word: string): string | undefined => meantBySlip(word, forgiving)

/** The unit that stands at a token, "8-foot" and "60 lb" alike. Longer ones first: "square feet a gallon" before "square feet". */
export function unitAt(tokens: readonly Scanned[], at: number, metric: boolean): UnitRead | null {
  let from = at
  if (tokens[from]?.text === '-' && tokens[from]?.glued && tokens[from + 1]?.glued && tokens[from + 1]?.sort === 'word')
    from++
  const single = oneUnit(tokens, from, metric)
  if (!single) return null
  const per = perUnit(tokens, single, metric)
  // "lb/ft2 per foot": what is for one thing may again be for another.
  return (per && perUnit(tokens, per, metric)) ?? per ?? single
}

function oneUnit(tokens: readonly Scanned[], at: number, metric: boolean): UnitRead | null {
  const token = tokens[at]
  const word = lower(token)
  if (!token) return null
  if (/^(square|sq|cubic|cu)$/.test(word)) {
    const power = word.startsWith('s') ? 'square' : 'cubic'
    const from = /^[.-]$/.test(tokens[at + 1]?.text ?? '') ? at + 2 : at + 1
    const base = lengths[lower(tokens[from])] ?? slipped(lower(tokens[from]))
    const unit = base && powers[power]?.[base]
    return unit ? { unit, next: dotAfter(tokens, from + 1, lower(tokens[from])) } : null
  }
  const behindDot = tokens[at + 1]?.text === '.' ? at + 2 : at + 1
  if (/^(fl|fluid)$/.test(word) && /^(oz|ounce|ounces)$/.test(lower(tokens[behindDot])))
    return { unit: 'floz', next: behindDot + 1 }
  const speed = speedAt(tokens, at)
  if (speed) return speed
  if (word === 'per' && lower(tokens[at + 1]) === 'cent') return { unit: 'percent', next: at + 2 }
  const named = namedApart(tokens, at)
  if (named) return named
  if (/^cubes?$/.test(word) && (metric || tokens.some(isMetricWord))) return { unit: 'm3', next: at + 1 }
  // A newton is a capital: a small n is a number of something.
  if (token.text === 'N') return moment(tokens, at, 'N', 'm', 'N-m')
  if (token.text === 'Nm') return { unit: 'N-m', next: at + 1 }
  if (/^(ft|foot)$/.test(word) && isHyphen(tokens[at + 1]) && /^(lbs?|lbf|pounds?)$/.test(lower(tokens[at + 2])))
    return { unit: 'lbf-ft', next: at + 3 }
  if (word === 'lbf') return moment(tokens, at, 'lbf', 'ft', 'lbf-ft')
  // “2.5 t” is a load; “4 T hinges” and “2 t posts” are counted.
  if (
    token.text === 't' &&
    (metric ||
      !/^\p{L}/u.test(tokens[at + 1]?.text ?? '') ||
      /^(of|and|truck|trailer|ute|load)$/.test(lower(tokens[at + 1])))
  )
    return { unit: 'tonne', next: at + 1 }
  if (token.text === "'" && tokens[at + 1]?.text === "'" && tokens[at + 1]?.glued) return { unit: 'in', next: at + 2 }
  if ((token.text === "'" || token.text === '"') && !token.glued) return null
  if (/^mils?$/.test(word) && !metric) return null
  const found = lengths[word] ?? others[word] ?? slipped(word)
  if (!found) return null
  // ft2, ft³, m^2; but 7'2 is seven foot two
  const raised = tokens[at + 1]?.text === '^' ? tokens[at + 2] : tokens[at + 1]
  const power = raised?.glued && token.sort === 'word' ? signOfPower[raised.text] : undefined
  const unit = power && powers[power]?.[found]
  if (unit) return { unit, next: at + (tokens[at + 1]?.text === '^' ? 3 : 2) }
  // "300 feet squared".
  const behind = powers[powerBehind[lower(tokens[at + 1])] ?? '']?.[found]
  if (behind) return { unit: behind, next: at + 2 }
  // As it is shown: "2 gal (imperial)".
  if (found === 'gal' && ['(', 'imperial', ')'].every((part, i) => lower(tokens[at + 1 + i]) === part))
    return { unit: 'galUK', next: at + 4 }
  return {
    unit: found,
    next: dotAfter(tokens, at + 1, word),
    ...(/^(in|m|l|h|min|mo|t|')$/.test(word) ? { doubtful: true } : {}),
  }
}

const isMetricWord = (it: Scanned): boolean => /^(mm|cm|m|metres?|meters?|l|litres?|liters?|kg|kilos?)$/.test(lower(it))
const powerBehind = tableOf<'square' | 'cubic'>({ squared: 'square', cubed: 'cubic' })
const isHyphen = (token: Scanned | undefined): boolean => token?.text === '-' && token.glued
/** Units with a word before them that says which: "linear feet", "US gallons", "metric tons", "short tons". */
function namedApart(tokens: readonly Scanned[], at: number): UnitRead | null {
  const word = lower(tokens[at])
  const from = tokens[at + 1]?.text === '.' ? at + 2 : at + 1
  const next = lower(tokens[from])
  if (/^(linear|lineal|lin|running)$/.test(word)) {
    const length = lengths[next]
    return length ? { unit: length, next: from + 1 } : null
  }
  const weight = others[next]
  if (/^(imperial|imp|uk)$/.test(word) && weight === 'gal') return { unit: 'galUK', next: from + 1 }
  if (word === 'us' && /^(gal|qt|ton)$/.test(weight ?? '')) return { unit: weight as string, next: from + 1 }
  if (word === 'metric' && (weight === 'ton' || weight === 'tonne')) return { unit: 'tonne', next: from + 1 }
  return word === 'short' && weight === 'ton' ? { unit: 'ton', next: from + 1 } : null
}

const farAnHour = tableOf<string>({
  mile: 'mph',
  miles: 'mph',
  mi: 'mph',
  km: 'km/h',
  kilometer: 'km/h',
  kilometers: 'km/h',
  kilometre: 'km/h',
  kilometres: 'km/h',
})

/** "115 miles an hour", "185 km/h", "50 metres per second". */
function speedAt(tokens: readonly Scanned[], at: number): UnitRead | null {
  if (['m', '.', 'p', '.', 'h'].every((part, i) => lower(tokens[at + i]) === part))
    return { unit: 'mph', next: tokens[at + 5]?.text === '.' ? at + 6 : at + 5 }
  if (!/^(\/|per|an|a)$/.test(lower(tokens[at + 1]))) return null
  const time = lower(tokens[at + 2])
  const [far, near] = [farAnHour[lower(tokens[at])], lengths[lower(tokens[at])] === 'm']
  if (far && /^(h|hr|hour)$/.test(time)) return { unit: far, next: at + 3 }
  return near && /^(s|sec|second)$/.test(time) ? { unit: 'm/s', next: at + 3 } : null
}

/** "105 lbf-ft", "522 N-m": a force with the length of its arm behind it. */
const moment = (tokens: readonly Scanned[], at: number, force: string, arm: string, unit: string): UnitRead =>
  /^[-·⋅*]$/.test(tokens[at + 1]?.text ?? '') && lower(tokens[at + 2]) === arm
    ? { unit, next: at + 3 }
    : { unit: force, next: at + 1 }

/** "6 in. of gravel": the point is the unit's own where the phrase goes on; before anything else it ends a sentence. */
const dotAfter = (tokens: readonly Scanned[], at: number, word: string): number =>
  tokens[at]?.text === '.' &&
  tokens[at]?.glued &&
  /^(in|ft|yd|lb|lbs|gal|sq|cu|hr|yr|wk|mo)$/.test(word) &&
  (/^[\dx,;]/.test(tokens[at + 1]?.text ?? '') || goesOn.has(tokens[at + 1]?.text ?? ''))
    ? at + 1
    : at
const goesOn = new Set(
  'of x by wide deep long tall high thick across apart square hole holes post posts picket pickets gap gaps board boards gravel stone rock concrete bag bags on between and or per to from in at max maximum the diameter dia bay bays gate'.split(
    ' ',
  ),
)

const perVolume = tableOf<Readonly<Record<string, string>>>({
  ft2: { gal: 'ft2/gal' },
  m2: { L: 'm2/L' },
  lb: { ft3: 'lb/ft3', ft: 'lb/ft', ft2: 'lb/ft2', in2: 'psi' },
  lbf: { ft2: 'lb/ft2', in2: 'psi' },
  N: { mm2: 'N/mm2' },
  kN: { m2: 'kPa', m3: 'kPa/m' },
  'lb/ft2': { ft: 'psf/ft' },
  kPa: { m: 'kPa/m' },
  kg: { m3: 'kg/m3', m: 'kg/m' },
})

/** "square feet a gallon", "m² per litre", "square feet for gallon", "lb/ft3". */
function perUnit(tokens: readonly Scanned[], read: UnitRead, metric: boolean): UnitRead | null {
  const below = perVolume[read.unit]
  if (!below) return null
  const [joint, article] = [lower(tokens[read.next]), lower(tokens[read.next + 1])]
  const isOut = joint === 'out' && article === 'of'
  const from =
    isOut || (/^(per|for|to|in|from)$/.test(joint) && /^(a|the|one|each|every)$/.test(article))
      ? read.next + (isOut ? 3 : 2)
      : /^(\/|per|a|an|each|every|for)$/.test(joint)
        ? read.next + 1
        : -1
  if (from < 0) return null
  const under = oneUnit(tokens, from, metric)
  const unit = under && below[under.unit]
  return unit ? { unit, next: under.next } : null
}

/** Where a unit stands after a number, but for the small words that only look like one: "93 in the opening", "5 in all". */
export function unitAfter(
  tokens: readonly Scanned[],
  at: number,
  metric: boolean,
  fractional = false,
): UnitRead | null {
  const unit = unitAt(tokens, at, metric)
  if (!unit) return null
  if (unit.unit === 'in' && lower(tokens[at]) === 'in') {
    if (unit.next > at + 1) return unit // "in."
    if (lower(tokens[unit.next]) === 'another' || isInMiddle(tokens, unit.next)) return null
    // Nobody puts 70 5/8 things in the opening.
    if (!fractional && prepositionAfter.has(lower(tokens[unit.next]))) return null
    // "6 foot 3 in cm": what it is wanted in. "drops 400 in 9 metres": inches and metres are no pair.
    if (isUnitWanted(tokens, at, metric) || (!fractional && isMetric(tokens, unit.next, metric))) return null
    // "one in side 1": a place that has a number of its own.
    if (!fractional && numberedPlace.has(lower(tokens[unit.next])) && tokens[unit.next + 1]?.sort === 'digits')
      return null
  }
  if (unit.doubtful && /^(m|l|h)$/i.test(tokens[at]?.text ?? '') && tokens[unit.next]?.text === "'") return null
  if (lower(tokens[at]) === 'min' && !isMinutes(tokens, at, unit.next)) return null
  if (unit.unit === 'stone' && !isOfBody(tokens, at, unit.next)) return null
  // "four by two foot": the foot is its unit; "2 foot of stone" too. "'": only glued, and not an apostrophe of a word.
  if (
    tokens[at]?.text === "'" &&
    tokens[at + 1]?.glued &&
    tokens[at + 1]?.sort === 'word' &&
    !/^[x]$/i.test(tokens[at + 1]?.text ?? '') &&
    unitAt(tokens, at + 1, metric) === null
  )
    return null
  return unit
}
/** Whether a number with a metric length behind it stands there. */
function isMetric(tokens: readonly Scanned[], at: number, metric: boolean): boolean {
  const number = tokens[at]?.sort === 'digits' ? numberAt(tokens, at, false) : null
  const unit = number && unitAt(tokens, number.next, metric)
  return unit !== null && /^(m|cm|mm)$/.test(unit.unit)
}
/** “6 foot 3 in cm”: the “in” only leads to the unit that the length is wanted in. */
export const isUnitWanted = (tokens: readonly Scanned[], at: number, metric: boolean): boolean => {
  const unit = lower(tokens[at]) === 'in' && lower(tokens[at + 1]) !== 'in' ? unitAt(tokens, at + 1, metric) : null
  return unit !== null && !unit.doubtful && tokens[unit.next]?.sort !== 'digits'
}
/** A minimum far more often than minutes, but for "40 min a hole", "a gate takes 90 min", and "90 min" alone. */
const isMinutes = (tokens: readonly Scanned[], at: number, next: number): boolean =>
  /^(a|an|per|each|apiece)$/.test(lower(tokens[next])) ||
  tokens.slice(Math.max(0, at - 6), at).some((it) => /^(take|takes|took|taking|spend|lasts?)$/.test(lower(it))) ||
  isAllThatIsSaid(tokens, at, next)
/** Fourteen pounds, where somebody weighs so much, or it is to be said in another unit, or nothing else is said; else it is what lies under a post. */
const isOfBody = (tokens: readonly Scanned[], at: number, next: number): boolean => {
  const before = tokens.slice(Math.max(0, at - 4), at).map(lower)
  const pounds = poundsBehind(tokens, next)
  return (
    pounds !== null ||
    (tokens[next]?.sort !== 'digits' &&
      (before.some((it) => /^(weigh|weighs|weighed|weighing|i'm|im|driver|passenger)$/.test(it)) ||
        (/^(in|into|to)$/.test(lower(tokens[next])) && /^(lb|kg)$/.test(others[lower(tokens[next + 1])] ?? '')) ||
        isAllThatIsSaid(tokens, at, next)))
  )
}
/** The pounds over, "13 stone 4 lb": less than a stone of them. */
export const poundsBehind = (tokens: readonly Scanned[], at: number): number | null =>
  /^(\d|1[0-3])$/.test(tokens[at]?.text ?? '') && others[lower(tokens[at + 1])] === 'lb'
    ? Number(tokens[at]?.text)
    : null
/** One number with the unit behind it: "90 min", "13 1/2 stone". */
const isAllThatIsSaid = (tokens: readonly Scanned[], at: number, next: number): boolean =>
  next >= tokens.length && numberAt(tokens, 0, false)?.next === at
const numberedPlace = new Set(['side', 'bay', 'run', 'section', 'stretch'])
const prepositionAfter = new Set(
  'the each every all either total my our your his her their its that this these those one place front back a an it them there both row stock one-piece any some which'.split(
    ' ',
  ),
)
