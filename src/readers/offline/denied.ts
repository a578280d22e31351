// This file is about quantities that a message takes back: “the bit is twelve across, not ten”.
import type { Heard, Tagged } from '../reader.ts'

/** Whether a quantity is named only to say that it is not so, or by how much it changes what is said anew right behind it. “Why not 8 ft?” asks for it. */
export const isDenied = (reading: Tagged, heard: Heard): boolean =>
  /(?<!\bwhy\s+)\b(not|no longer|isn['’]?t|aren['’]?t|wasn['’]?t|instead of|rather than)\s+((a|an|the|at|of)\s+)?$/i.test(
    heard.said.slice(Math.max(0, reading.start - 40), reading.start),
  ) ||
  isSaidWrong(reading, heard) ||
  isChangeToValue(reading, heard) ||
  isOfEachTool(reading, heard)

/** “One person per auger”: how a tool is worked, and not how many people dig. */
const isOfEachTool = ({ bare, end }: Tagged, { said }: Heard): boolean =>
  bare !== null &&
  /^\s*(?:person|people|man|men|guys?|operators?|hands?)?\s*(?:per|on each|on every|to an?|to each|for each|behind each|with each|on an?)\s+(?:auger|machine|digger|spade|shovel)\b/i.test(
    said.slice(end, end + 40),
  )

/** “No sorry, I said 42, it's 38”: what was said by mistake, where what is right stands behind it. */
const isSaidWrong = ({ start, end }: Tagged, { said, readings }: Heard): boolean =>
  /\b(?:sorry|wrong|mistake|oops|whoops|correction|misread)\b/i.test(said) &&
  /\b(?:i|we) (?:said|told you|wrote|put|had|typed)\s+(?:(?:it|that) (?:was|is)\s+|an?\s+)?$/i.test(
    said.slice(0, start),
  ) &&
  readings.some((it) => it.start > end)

/** “Make the holes 2 in less, 10 in”: the 2 in, where the size is said too. */
const isChangeToValue = ({ change, end }: Tagged, { said, readings }: Heard): boolean =>
  change !== undefined &&
  readings.some(
    ({ start }) =>
      start > end &&
      /^\s*(less|more|wider|narrower|deeper|shallower|longer|shorter|taller|lower|higher|smaller|bigger)\s*(,|=|so|to|making it|that['’]?s)\s*$/i.test(
        said.slice(end, start),
      ),
  )

/** What is heard without what it takes back. */
export const withoutDenied = (heard: Heard): Heard => ({
  ...heard,
  readings: heard.readings.filter((it) => !isDenied(it, heard)),
})
