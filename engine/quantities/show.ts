// This file is about showing quantities: in what people can measure, and so that reading it again gives the same quantity.
import Fraction from 'fraction.js'
import { showDate } from './calendar.ts'
import { type Amount, isExact, roundTo, toNumber } from './amount.ts'
import { amountIn, type Quantity } from './quantity.ts'
import { type Unit, unitNamed } from './units.ts'

const grouped = (whole: string): string => whole.replace(/\B(?=(\d{3})+$)/g, ',')

/** An exact number as a carpenter writes it: whole, then a fraction (`2 3/16`). */
export function mixed(number: Fraction): string {
  const sign = number.s < 0n ? '−' : ''
  const whole = number.n / number.d
  const rest = number.n % number.d
  if (rest === 0n) return `${sign}${grouped(String(whole))}`
  return `${sign}${whole > 0n ? `${grouped(String(whole))} ` : ''}${rest}/${number.d}`
}

const isDecimal = (number: Fraction): boolean => 10_000n % number.d === 0n

/** A decimal with at most so many places. */
export function decimal(number: number, places: number): string {
  const [whole = '0', rest = ''] = Math.abs(number).toFixed(places).split('.')
  const trimmed = rest.replace(/0+$/, '')
  const digits = `${grouped(whole)}${trimmed ? `.${trimmed}` : ''}`
  return number < 0 && /[1-9]/.test(digits) ? `−${digits}` : digits
}

/** Rounded for reading: four significant figures and at most four places; whole from a thousand up. */
export function rounded(number: number): string {
  const size = Math.abs(number)
  if (size === 0) return '0'
  const places = Math.max(0, Math.min(6, 3 - Math.floor(Math.log10(size))))
  return decimal(number, places)
}

// Longer fractions than these are not read by anybody: they are shown rounded and stay exact in the working.
const longestFraction = 999n
// Millimetres in inches come in parts of 127, which no tape has.
const isReadable = (amount: Fraction): boolean =>
  amount.d <= longestFraction && (amount.d % 127n !== 0n || amount.d === 1n)

function showNumber(amount: Amount, style: 'fraction' | 'decimal'): string {
  if (!isExact(amount)) return rounded(toNumber(amount))
  if (style === 'decimal' && isDecimal(amount)) return decimal(amount.valueOf(), 4)
  if (style === 'fraction' && isReadable(amount)) return mixed(amount)
  if (style === 'decimal' && amount.d === 1n) return mixed(amount)
  return rounded(amount.valueOf())
}

/** A difference of temperatures in a sentence that says so itself: “3.8 °C above the dew point”. */
export const showApart = (q: Quantity): string => show(q).replace(' difference', '')

const irregular: Record<string, string> = {
  foot: 'feet',
  inch: 'inches',
  leaf: 'leaves',
  'board foot': 'board feet',
  'o’clock': 'o’clock',
}
const plural = (noun: string): string =>
  irregular[noun] ??
  (/(s|x|ch|sh)$/.test(noun) ? `${noun}es` : /[^aeiou]y$/.test(noun) ? `${noun.slice(0, -1)}ies` : `${noun}s`)

/** `1 bag`, `23 bags`, `0 bags`. */
export const counted = (number: Amount, noun: string): string => {
  const one = isExact(number) && number.equals(1)
  return `${showNumber(number, 'decimal')} ${one ? noun : plural(noun)}`
}

function showFeet(amount: Fraction): string {
  const inches = amount.mul(12)
  const size = inches.abs()
  const whole = size.div(12).floor()
  const over = size.sub(whole.mul(12))
  if (over.d > longestFraction) return `${rounded(amount.valueOf())} ft`
  // 11.999 in over a foot, shown to two places, are two feet.
  const isFoot = !isReadable(over) && Math.round(over.valueOf() * 100) === 1200
  const [feet, rest] = isFoot ? [whole.add(1), new Fraction(0)] : [whole, over]
  const inchesOver = isReadable(rest) ? mixed(rest) : decimal(rest.valueOf(), 2)
  const sign = inches.s < 0n ? '−' : ''
  if (rest.equals(0)) return `${sign}${mixed(feet)} ft`
  if (feet.equals(0)) return `${sign}${inchesOver} in`
  // "22 ft 11/16 in" is misread: the nought says that there is no whole inch.
  return `${sign}${mixed(feet)} ft ${rest.compare(1) < 0 && isReadable(rest) ? '0 ' : ''}${inchesOver} in`
}

// From here up a foot is shown with its inches, to the sixteenth that a tape has.
const leastFeet = 3
const toSixteenths = (feet: number): Fraction => new Fraction(Math.round(feet * 192)).div(192)

const wordUnits: Readonly<Record<string, string>> = {
  second: 'second',
  min: 'minute',
  h: 'hour',
  day: 'day',
  week: 'week',
  month: 'month',
  year: 'year',
  ton: 'ton',
  tonne: 'tonne',
  knot: 'knot',
}

/** The quantity in its own unit. Exact fractions of an inch stay fractions; what is approximate is rounded to four figures. */
export function show(q: Quantity): string {
  const amount = amountIn(q, q.unit)
  const unit = unitNamed(q.unit)
  if (q.kind === 'date') return showDate(q)
  if (q.kind === 'count') return counted(amount, q.unit)
  const word = wordUnits[q.unit]
  if (word) return counted(amount, word)
  if (q.unit === 'ft' && (isExact(amount) ? amount.mul(12).d <= longestFraction : Math.abs(amount.value) >= leastFeet))
    return showFeet(isExact(amount) ? amount : toSixteenths(amount.value))
  // Metres are read to the millimetre.
  if (q.unit === 'm' && (!isExact(amount) || !isDecimal(amount)) && Math.abs(toNumber(amount)) >= 1)
    return `${decimal(toNumber(amount), 3)} m`
  if (q.kind === 'number') return showNumber(amount, 'decimal')
  if (q.kind === 'money') return showMoney(amount, unit)
  // Nobody measures a worked difference of temperatures finer than a tenth of a degree.
  if (q.kind === 'temperatureDifference' && !isExact(amount) && Math.abs(toNumber(amount)) >= 0.1)
    return `${decimal(toNumber(amount), 1)} ${unit.sign}`
  // A worked moisture or humidity is no finer than a tenth of a point.
  if (q.kind === 'percent' && !isExact(amount)) return `${decimal(toNumber(amount), 1)} %`
  if (q.unit === 'deg') return `${showNumber(amount, 'decimal')}°`
  // Metric sizes are written as decimals where they end, else as a fraction rather than a rounded figure (28 4/17 mm).
  const style =
    q.unit === 'in' || (unit.kind === 'length' && isExact(amount) && !isDecimal(amount)) ? 'fraction' : 'decimal'
  return `${showNumber(amount, style)} ${unit.sign}`
}

/** To the cent, half a cent up; what has a few more places and then ends is shown as it is: `$0.045` each, before it is rounded. */
function showMoney(amount: Amount, { name, sign }: Unit): string {
  const cents = roundTo(amount, new Fraction(1, 100))
  const [whole = '0', rest = ''] = cents.abs().toString(2).split('.')
  const inFull =
    isExact(amount) && isDecimal(amount) && !amount.equals(cents) ? decimal(Math.abs(amount.valueOf()), 4) : undefined
  // “€1.005” would be read as a thousand and five: a nought more says that it is not.
  const written = inFull
    ? isThousands(inFull) && pointParts.has(name)
      ? `${inFull}0`
      : inFull
    : `${grouped(whole)}.${rest.padEnd(2, '0')}`
  const minus = toNumber(amount) < 0 && /[1-9]/.test(written) ? '−' : ''
  return signBehind.has(name) ? `${minus}${written} ${sign}` : `${minus}${sign}${written}`
}
const signBehind = new Set(['CZK', 'PLN', 'kr'])
const pointParts = new Set(['EUR', ...signBehind])
const isThousands = (written: string): boolean => /^[1-9]\d{0,2}\.\d{3}$/.test(written)

/** The exact fraction in the quantity's own unit, as `37/17`; nothing when it is only approximate. */
export function exactText(q: Quantity): string | undefined {
  const amount = amountIn(q, q.unit)
  return isExact(amount) ? amount.toFraction() : undefined
}
