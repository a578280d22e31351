// This file is about the gates of a walk: how wide each is, how many, and where it stands in its side.
import { type gatesTold, amountIn, toNumber } from '../../../../engine/index.ts'
import type { Tagged } from '../../reader.ts'
import type { Token } from '../stems.ts'
import { isStop, isWholeSide, type Item } from './items.ts'

export interface Gate {
  readonly at: number
  width: Tagged | undefined
  start: Tagged | undefined
  place: { readonly option: string; readonly item: Item } | undefined
  count: Tagged | undefined
  item: Item
}

export function gatesIn(message: readonly Token[], items: readonly Item[]): Gate[] {
  const gates: Gate[] = []
  let count: Tagged | undefined
  let shared: Tagged | undefined
  // “After 3.1 m is a gate”: told before the gate itself.
  let ahead: Tagged | undefined
  const begin = (item: Item, width: Tagged | undefined): void => {
    gates.push({ at: item.from, item, width, start: ahead, place: undefined, count })
    count = undefined
    ahead = undefined
  }
  for (const item of items) {
    const last = gates.at(-1)
    if (item.tag === 'gates') {
      const isOne = item.reading?.bare?.valueOf() === 1
      if (isOne && shared) {
        // “Two gates of 1 m, one in the north and one in the west”.
        if (last?.count) {
          last.count = undefined
          gates.pop()
        }
        begin(item, shared)
      } else if (!isOne) count = item.reading
    }
    if (item.tag === 'gateBare' && !isSameSentence(message, last, item)) begin(item, undefined)
    if (item.tag === 'gateOpening' && item.reading) {
      if (last && !last.width) last.width = item.reading
      else begin(item, item.reading)
      shared = item.reading
    }
    if (item.tag === 'gateStart' && item.reading && !isWholeSide(message, item))
      if (last && !last.start && isSameSentence(message, last, item)) last.start = item.reading
      else ahead = item.reading
    if (item.tag.startsWith('gateAt:') && last && !last.place && isOfGate(message, last, item))
      last.place = { option: item.tag.slice(7), item }
  }
  return gates
}

/** “In the middle”, and not “middle of post to middle of post”. */
function isOfGate(message: readonly Token[], gate: Gate, item: Item): boolean {
  const near = message.slice(item.from - 1, item.to + 3)
  return (
    isSameSentence(message, gate, item) &&
    !(item.tag === 'gateAt:middle' && near.some((it) => it.stem === 'post' || it.stem === 'to'))
  )
}

function isSameSentence(message: readonly Token[], gate: Gate | undefined, { from }: Item): boolean {
  return gate !== undefined && !message.slice(gate.at, from).some(isStop)
}

const wide = /^(double|drive|driveway|big|bigger|large|larger|wide|wider|truck|tractor|vehicle|car)$/
const narrow = /^(walk|single|small|smaller|little|garden|pedestrian|foot|narrow|person)$/
/** “The walk gate”, “the double gate”: which of several is meant, the narrowest or the widest; all of them where nothing says it. */
export function gatesOfKind<T extends ReturnType<typeof gatesTold>[number]>(
  gates: readonly T[],
  message: readonly Token[],
): readonly T[] {
  const said = message.flatMap((it, at) => (it.stem === 'gate' ? [message[at - 1]?.stem ?? ''] : []))
  const sign = said.some((it) => wide.test(it)) ? 1 : said.some((it) => narrow.test(it)) ? -1 : 0
  if (sign === 0 || gates.length < 2) return gates
  const size = ({ opening }: T): number => (opening ? sign * toNumber(amountIn(opening, 'ft')) : Number.NaN)
  const best = Math.max(...gates.map(size))
  return gates.filter((it) => size(it) === best)
}
