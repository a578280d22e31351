// This file is about quantities that a message takes back: “the bit is twelve across, not ten”.
import type { Heard, Tagged } from '../reader.ts'

/** Whether a quantity is named only to say that it is not so. “Why not 8 ft?” asks for it. */
export const isDenied = ({ start }: Tagged, { said }: Heard): boolean =>
  /(?<!\bwhy\s+)\b(not|no longer|isn['’]?t|aren['’]?t|wasn['’]?t|instead of|rather than)\s+((a|an|the|at|of)\s+)?$/i.test(
    said.slice(Math.max(0, start - 40), start),
  )

/** What is heard without what it takes back. */
export const withoutDenied = (heard: Heard): Heard => ({
  ...heard,
  readings: heard.readings.filter((it) => !isDenied(it, heard)),
})
