// This file is about an answer of another kind than the question: whoever asks outright for a weight gets no area, and whoever asks for an angle no length.
import { isQuantity, type Word, type Worked } from '../engine/index.ts'
import { heldBack } from './held-back.ts'

interface Outright {
  /** The question, where it leaves no doubt about the kind of its answer. */
  readonly asks: RegExp
  readonly kinds: readonly Word['kind'][]
  /** What it is called, to the person. */
  readonly called: string
}
const outright: readonly Outright[] = [
  {
    asks: /\bhow heavy\b|\bwhat weight\b|\b(?:how much|how many (?:kilos?|kg|pounds?|lbs?|tons?|tonnes?)|what)(?:['’]?s|['’]?ll)? (?:[^?.]{0,40}\s)?weighs?\b/i,
    kinds: ['mass', 'force'],
    called: 'a weight',
  },
  { asks: /\b(?:what|which) length\b/i, kinds: ['length'], called: 'a length' },
  {
    asks: /\bhow many (?:of \p{L}+ )?(?:can|could|do|should) (?:i|we) (?:still )?(?:get|buy|afford|have)\b/iu,
    kinds: ['count', 'number'],
    called: 'a number of things',
  },
  { asks: /\b(?:what|which) angle\b|\bhow many degrees\b/i, kinds: ['angle', 'temperature'], called: 'an angle' },
  {
    asks: /\b(?:what|how much) (?:will|would|does|do|did|is|are)\b[^?.]{0,50}\bcosts?\b|\bwhat do i pay\b|\bset me back\b|\bhow much money\b/i,
    kinds: ['money'],
    called: 'a sum of money',
  },
  { asks: /\bhow many (?:lit(?:re|er)s|gallons|gal)\b/i, kinds: ['volume'], called: 'a volume' },
  { asks: /\b(?:what|which) radius\b|\bhow (?:wide|tall|high|deep)\b/i, kinds: ['length'], called: 'a length' },
  {
    asks: /\bhow many (?:posts|pickets|palings|pales|rails|bags|boards|bricks|screws|nails|bays|panels|boxes|packs|trips|holes|slats|tins|cans)\b/i,
    kinds: ['count', 'number'],
    called: 'a number of things',
  },
]

/** A message that asks outright for one kind of figure, and would be answered by none of that kind, gets no figure: it is asked what it means. */
export function withoutOtherKind(worked: readonly Worked[], said: string): Worked[] {
  const due = outright.find(({ asks }) => asks.test(said))
  if (!due) return [...worked]
  const isOne = (value: unknown): boolean =>
    isQuantity(value as never) && due.kinds.includes((value as { kind: Word['kind'] }).kind)
  // What is wanted of that kind and still lacks something is asked for as it is.
  const isThere = worked.some(
    ({ outcome, calculation, wanted }) =>
      wanted.some((name) => due.kinds.includes(calculation.gives[name]?.kind as Word['kind'])) ||
      (outcome.ok &&
        [...outcome.values.values()].flatMap((it) => (Array.isArray(it) ? (it as unknown[]) : [it])).some(isOne)),
  )
  if (isThere) return [...worked]
  return worked.map((it) =>
    heldBack(it, {
      code: 'unreadable',
      word: it.wanted[0] as string,
      message: `You ask for ${due.called}, and I understood a sum that gives none, so I give no figure.`,
      ask: `Of what do you want ${due.called}? Say it in one sentence, with each number beside what it is of.`,
      isIdle: true,
    }),
  )
}
