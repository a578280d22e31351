// This file is about how a gate's frame is told: by its inside, or by its outside and the stock that it is made of.
import { quantity, toNumber, vocabulary } from '../../../engine/index.ts'
import type { Tagged } from '../reader.ts'
import type { Token } from './stems.ts'

/** What is measured within a frame. */
export const ofInsides: ReadonlySet<string> = new Set(
  [...vocabulary.values()].flatMap((it) => (/^inside (width|height)\b/.test(it.label) ? [it.name] : [])),
)

const widest = toNumber(quantity(8, 'in').amount)
const isStock = ({ section, quantity: size }: Tagged): boolean =>
  section !== undefined || (size?.kind === 'length' && toNumber(size.amount) <= widest)

const beside = 4
const ofFrame = /^(frame|framed|framing|stile|member|box|edge)$/
const ofInside = /^(inside|inner|between|clear|daylight|opening|hole)$/

/** “Gate 3 ft by 4 ft, 2x4 frame all round”: who says outside, or what a frame is made of, has measured it outside; unless inside is said too. */
export function tellsOutside(message: readonly Token[]): boolean {
  if (message.some((it) => ofInside.test(it.stem))) return false
  return message.some((token, at) => {
    if (/^(outside|overall|outer)$/.test(token.stem)) return true
    if (!token.reading || !isStock(token.reading) || /^(brace|diagonal)$/.test(message[at + 1]?.stem ?? ''))
      return false
    const stops = (it: Token): boolean => /^[.,;:?!\n]$/.test(it.text) || /^(brace|diagonal)$/.test(it.stem)
    const until = (near: readonly Token[]): readonly Token[] => {
      const end = near.findIndex(stops)
      return end < 0 ? near : near.slice(0, end)
    }
    const [before, after] = [
      until(message.slice(Math.max(0, at - beside), at).reverse()),
      until(message.slice(at + 1, at + 1 + beside)),
    ]
    return [...before, ...after].some((it) => ofFrame.test(it.stem))
  })
}
