// This file is about temperatures as people write them, differences of temperature, and degrees that are an angle.
import Fraction from 'fraction.js'
import type { Found, Habits } from './found.ts'
import { type NumberRead, numberAt } from './numbers.ts'
import { quantity, type Quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'
import { unitNamed } from './units.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** °F, °C, degrees; a difference when it is above, below, warmer or cooler. */
export function temperatureAt(tokens: readonly Scanned[], number: NumberRead, habits: Habits): Found | null {
  // "a 45-degree cut".
  let at =
    tokens[number.next]?.text === '-' && /^deg/i.test(tokens[number.next + 1]?.text ?? '')
      ? number.next + 1
      : number.next
  const word = lower(tokens[at])
  const degree = tokens[at]?.text === '°' || /^(degree|degrees|deg|degs)$/.test(word)
  if (degree) at++
  const scale = tokens[at]?.text
  const named = fahrenheit.test(scale ?? '') ? 'F' : celsius.test(scale ?? '') ? 'C' : undefined
  const letter =
    named ??
    (scale === 'F' || scale === 'C'
      ? scale
      : (scale === 'f' || scale === 'c') && (degree || tokens[at]?.glued)
        ? scale.toUpperCase()
        : undefined)
  const dotted = /^(dF|dC)$/.test(scale ?? '') && !degree
  if (dotted) return { next: at + 1, quantity: quantity(number.value, scale as string), bare: null }
  if (letter) {
    const after = tokens[at + 1]
    if (after?.text === '°') return { next: at + 2, quantity: quantity(number.value, `d${letter}`), bare: null }
    const next = at + 1
    const other = lower(after)
    if (other === 'difference') return { next: next + 1, quantity: quantity(number.value, `d${letter}`), bare: null }
    if (
      /^(warmer|cooler|colder|hotter|difference|higher|lower|drop|rise|swing)$/.test(other) ||
      isOfDew(tokens, number, next)
    )
      return { next, quantity: quantity(number.value, `d${letter}`), bare: null }
    const under = underIn(tokens, next)
    return { next: under.next, quantity: under.of(number.value, letter), bare: null }
  }
  if (!degree) return null
  const turned = [...tokens.slice(at, at + 3), ...tokens.slice(Math.max(0, at - 12), at)].some((token) =>
    /^(angles?|slopes?|pitch|cuts?|bevels?|miters?|mitres?|corners?|turns?|lean|leans|tilt)$/i.test(token.text),
  )
  const scaleOfOthers = scaleSaid(tokens)
  const unit = scaleOfOthers ?? (habits.system === 'metric' ? 'C' : 'F')
  const isOneScale = scaleOfOthers !== undefined || habits.system !== undefined
  if (isOfDew(tokens, number, at)) {
    const likely = isOneScale ? unit : likelyScale(tokens)
    const [one, other] = (likely ?? unit) === 'F' ? ['dF', 'dC'] : ['dC', 'dF']
    const rivals = likely ? [] : [quantity(number.value, other as string)]
    return { next: at, quantity: quantity(number.value, one as string), bare: null, rivals }
  }
  const under = underIn(tokens, at)
  const warmth = under.of(number.value, unit)
  const otherScale = isOneScale ? [] : [under.of(number.value, unit === 'F' ? 'C' : 'F')]
  if (under.next > at)
    return { next: under.next, quantity: warmth, bare: null, rivals: otherScale, note: `read as °${unit}` }
  const angle = quantity(number.value, 'deg')
  // What sounds like an angle may still be a temperature: "the corner posts are dry, it is 70 degrees out".
  if (turned || tokens[at - 1]?.text === '°')
    return { next: at, quantity: angle, bare: null, rivals: [warmth, ...otherScale] }
  return { next: at, quantity: warmth, bare: null, rivals: [...otherScale, angle], note: `read as °${unit}` }
}

/** “5 degrees above the dew point”, “within 3 of it”, “is it 4 degrees over that?”, where the dew point is spoken of: how far apart the two are. */
function isOfDew(tokens: readonly Scanned[], number: Pick<NumberRead, 'next'>, next: number): boolean {
  const isDew = (token: Scanned | undefined): boolean => /^(dew|dewpoint)$/i.test(token?.text ?? '')
  const word = lower(tokens[next])
  const isApart =
    /^(above|over|below|under|from|clear|away|off)$/.test(word) ||
    (word === 'of' && tokens.slice(Math.max(0, number.next - 4), number.next).some((it) => lower(it) === 'within'))
  if (!isApart) return false
  const behind = tokens.slice(next + 1, next + 6)
  const pointed = lower(behind[0]) === 'of' ? behind[1] : behind[0]
  return behind.some(isDew) || (/^(it|that|this)$/.test(lower(pointed)) && tokens.slice(0, mostLooked).some(isDew))
}

// A question of paint and weather is no longer than that.
const mostLooked = 300

/** “8 degrees … 11 degrees”: paint goes on in air that is so warm in °C, and in °F nobody would ask. Nothing where the others may be of either. */
function likelyScale(tokens: readonly Scanned[]): 'F' | 'C' | undefined {
  if (tokens.length > mostLooked) return undefined
  const warm = tokens.flatMap((it, i) =>
    /^(degrees?|degs?|°)$/.test(lower(it)) && tokens[i - 1]?.sort === 'digits' && !isOfDew(tokens, { next: i }, i + 1)
      ? [Number(tokens[i - 1]?.text)]
      : [],
  )
  if (warm.length === 0) return undefined
  return warm.every((it) => it <= 32) ? 'C' : warm.every((it) => it >= 46) ? 'F' : undefined
}

/** The one scale that the other temperatures of the message name. */
function scaleSaid(tokens: readonly Scanned[]): 'F' | 'C' | undefined {
  const known = scales.get(tokens)
  if (known !== undefined) return known ?? undefined
  const scale = scaleIn(tokens)
  scales.set(tokens, scale ?? null)
  return scale
}
/** Looked for once in a message, however many temperatures it has. */
const scales = new WeakMap<readonly Scanned[], 'F' | 'C' | null>()

function scaleIn(tokens: readonly Scanned[]): 'F' | 'C' | undefined {
  const named = tokens.flatMap(({ text }, i): ('F' | 'C')[] => {
    const isBehind = tokens[i - 1]?.text === '°' || tokens[i - 1]?.sort === 'digits'
    if (fahrenheit.test(text) || (isBehind && text === 'F')) return ['F']
    return celsius.test(text) || (isBehind && text === 'C') ? ['C'] : []
  })
  return new Set(named).size === 1 ? named[0] : undefined
}

// As they are spelt, well and badly.
const fahrenheit = /^(℉|f[ae]h?r[ae]n?h[ei]{2}t)$/i
const celsius = /^(℃|[cs]el[sc]i[uo]s|centigrade)$/i

/** "5 degrees below zero", "3 °C below freezing": counted down from there. */
function underIn(
  tokens: readonly Scanned[],
  at: number,
): { readonly next: number; of(value: Fraction, scale: string): Quantity } {
  const from = /^(below|under)$/.test(lower(tokens[at])) ? lower(tokens[at + 1]) : ''
  if (from === 'zero' || from === '0') return { next: at + 2, of: (value, scale) => quantity(value.neg(), scale) }
  if (from === 'freezing')
    return { next: at + 2, of: (value, scale) => quantity(value.neg().add(scale === 'F' ? 32 : 0), scale) }
  return { next: at, of: quantity }
}

/** "-5 °C", "minus 5 degrees": a temperature below nought. A dash that joins two numbers is none. */
export function coldAt(tokens: readonly Scanned[], at: number, habits: Habits): Found | null {
  const [sign, digits] = [tokens[at] as Scanned, tokens[at + 1]]
  const apart = !sign.glued || tokens[at - 1]?.sort === 'sign'
  const isSign = sign.text === '-' && apart && digits?.sort === 'digits' && digits.glued
  if (!isSign && !/^(minus|negative)$/.test(lower(sign))) return null
  const number = numberAt(tokens, at + 1, habits.decimalComma ?? false)
  const warm = number && temperatureAt(tokens, number, habits)
  if (warm?.quantity?.kind !== 'temperature') return null
  return {
    ...warm,
    quantity: opposite(warm.quantity),
    rivals: (warm.rivals ?? []).filter((it) => it.kind === 'temperature').map(opposite),
  }
}

/** The same number below nought, in its own unit: 10 °C becomes −10 °C, whatever that is in °F. */
export function opposite(q: Quantity): Quantity {
  const zero = unitNamed(q.unit).zero ?? new Fraction(0)
  return { ...q, amount: zero.mul(2).sub(q.amount as Fraction) }
}
