// This file is about pickets that are told by the panel: “each 8 ft panel takes 16 pickets, and there are 14 panels”. None of the two is their number in all.
import { type Word, yard } from '../../../engine/index.ts'
import type { Bound } from './bound.ts'
import { weight } from './cue-score.ts'
import type { Token } from './stems.ts'

const panel = /^(panel|section|bay|span)$/
const picket = /^(picket|paling|slat|pale)$/
const ofEach = /^(each|every|per|a|one)$/

/** So many pickets to a panel, and so many panels, for a sum that takes the pickets in all. */
export function pickedByPanel(message: readonly Token[], needs: Readonly<Record<string, Word>>): Bound[] {
  if (!needs.picketsHung) return []
  const counts = message.flatMap(({ reading }, at) =>
    reading?.bare?.d === 1n && !reading.change ? [{ reading, at }] : [],
  )
  const ofThing = (at: number, thing: RegExp): boolean =>
    thing.test(message[at + 1]?.stem ?? '') ||
    // “14 equal panels”, “16 4 in pickets”.
    (thing.test(message[at + 2]?.stem ?? '') &&
      !ofEach.test(message[at + 1]?.stem ?? '') &&
      !message[at + 1]?.reading?.bare)
  const panels = counts.filter(({ at }) => ofThing(at, panel))
  const pickets = counts.filter(({ at }) => ofThing(at, picket) && isOfEach(message, at))
  const [many, each] = [panels[0], pickets[0]]
  if (!many || !each || panels.length > 1 || pickets.length > 1) return []
  return [
    { reading: each.reading, word: 'pickets', at: yard, score: weight.byPlace },
    { reading: many.reading, word: 'bays', at: yard, score: weight.byPlace },
  ]
}

const reach = 7
/** Whether its sentence says “each panel”, “a section” near it. */
function isOfEach(message: readonly Token[], at: number): boolean {
  const isStop = (it: Token | undefined): boolean =>
    it === undefined || it.reading?.bare != null || /^[.,;?!\n]$/.test(it.text)
  for (const step of [-1, 1])
    for (let i = at + step; Math.abs(i - at) <= reach && !isStop(message[i]); i += step) {
      if (!panel.test(message[i]?.stem ?? '')) continue
      const before = message[i - 1]?.reading?.quantity ? message[i - 2] : message[i - 1]
      if (ofEach.test(before?.stem ?? '')) return true
    }
  return false
}
