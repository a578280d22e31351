// This file is about temperatures as people write them, differences of temperature, and degrees that are an angle.
import type { Found, Habits } from './found.ts'
import type { NumberRead } from './numbers.ts'
import { quantity } from './quantity.ts'
import type { Scanned } from './scan.ts'

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** °F, °C, degrees; a difference when it is above, below, warmer or cooler. */
export function temperatureAt(tokens: readonly Scanned[], number: NumberRead, habits: Habits): Found | null {
  let at = number.next
  const word = lower(tokens[at])
  const degree = tokens[at]?.text === '°' || /^(degree|degrees|deg|degs)$/.test(word)
  if (degree) at++
  const scale = tokens[at]?.text
  const named = /^(fahrenheit|celsius|centigrade)$/i.test(scale ?? '')
    ? /^f/i.test(scale ?? '')
      ? 'F'
      : 'C'
    : undefined
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
    if (
      /^(warmer|cooler|colder|hotter|difference|higher|lower|drop|rise|swing)$/.test(other) ||
      (/^(above|over|below|under|from)$/.test(other) &&
        tokens.slice(next, next + 5).some((token) => /^(dew|dewpoint)$/i.test(token.text)))
    )
      return { next, quantity: quantity(number.value, `d${letter}`), bare: null }
    return { next, quantity: quantity(number.value, letter), bare: null }
  }
  if (!degree) return null
  const turned = [...tokens.slice(at, at + 3), ...tokens.slice(Math.max(0, at - 12), at)].some((token) =>
    /^(angles?|slopes?|pitch|cuts?|bevels?|miters?|mitres?|corners?|turns?|lean|leans|tilt)$/i.test(token.text),
  )
  const unit = habits.system === 'metric' ? 'C' : 'F'
  const warmth = quantity(number.value, unit)
  const otherScale = habits.system ? [] : [quantity(number.value, unit === 'F' ? 'C' : 'F')]
  const angle = quantity(number.value, 'deg')
  // What sounds like an angle may still be a temperature: "the corner posts are dry, it is 70 degrees out".
  if (turned || tokens[at - 1]?.text === '°')
    return { next: at, quantity: angle, bare: null, rivals: [warmth, ...otherScale] }
  return { next: at, quantity: warmth, bare: null, rivals: [...otherScale, angle], note: `read as °${unit}` }
}
