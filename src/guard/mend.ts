// This file is about mending: the two slips that leave no doubt what was meant.
import { isCount, printed, type Ref, type Refs } from './refs.ts'
import { slotsIn } from './slots.ts'

/** The piece with a unit or noun repeated after its slot taken away, and the person's own quantity, spelled as they did, put in its slot. */
export function mended(piece: string, refs: Refs, userText: string): string {
  return withoutRepeats(withSlots(piece, refs, userText), refs)
}

function withoutRepeats(piece: string, refs: Refs): string {
  let text = piece
  for (const slot of slotsIn(piece).reverse()) {
    const ref = Object.hasOwn(refs, slot.key) ? (refs[slot.key] as Ref) : undefined
    if (!ref) continue
    const shown = printed(ref)
    const after = text.slice(slot.end)
    const repeated = /^ ([\p{L}²³/%]+)(?=[\s.,;:!?)|]|$)/u.exec(after)?.[1]
    if (!repeated) continue
    const isUnit = ref.unit !== null && !isCount(ref) && namesOf(ref.unit).includes(repeated.toLowerCase())
    const isNoun = isCount(ref) && new RegExp(`\\b${escaped(repeated)}$`, 'i').test(shown)
    if (isUnit || isNoun) text = text.slice(0, slot.end) + after.slice(1 + repeated.length)
  }
  return text
}

/** A quantity the person said, same value, unit and spelling, introduced as theirs, becomes its slot. */
function withSlots(piece: string, refs: Refs, userText: string): string {
  if (!/\byou(?:r|rs)?\b|\bgave\b|\bsaid\b|\btold\b/i.test(piece)) return piece
  let text = piece
  for (const [key, ref] of Object.entries(refs)) {
    if (!/^(?:said|user)$/.test(ref.kind)) continue
    const said = ref.said ?? printed(ref)
    if (!/\d/.test(said) || !userText.includes(said) || text.includes(`{{${key}}}`)) continue
    const found = new RegExp(`(?<![\\w./])${escaped(said)}(?![\\w/]|\\.\\d)`, 'g')
    if ([...text.matchAll(found)].length === 1) text = text.replace(found, `{{${key}}}`)
  }
  return text
}

const names: Readonly<Record<string, readonly string[]>> = {
  in: ['in', 'inch', 'inches'],
  ft: ['ft', 'foot', 'feet'],
  mm: ['mm', 'millimeters', 'millimetres'],
  m: ['m', 'meters', 'metres'],
  lb: ['lb', 'lbs', 'pound', 'pounds'],
  kg: ['kg', 'kilos', 'kilograms'],
  percent: ['%', 'percent'],
  ft3: ['ft³', 'ft3'],
  L: ['l', 'liters', 'litres'],
  month: ['month', 'months'],
  week: ['week', 'weeks'],
  weeks: ['weeks'],
  day: ['day', 'days'],
  gal: ['gal', 'gallons'],
}
const namesOf = (unit: string): readonly string[] => names[unit] ?? [unit.toLowerCase()]
const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')
