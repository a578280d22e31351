// This file is about sentences that only say again what stands above them: “So you need {{r1.bags}}.”, under “23 bags” in bold.
import type { Answer } from '../../answer.ts'
import { slotsIn, withoutSlots } from '../../guard/slots.ts'
import { stem, tokens } from '../offline/stems.ts'

/** Whether a sentence holds nothing but the figures that the card answers with, their names, and words that join them. */
export function isEchoOf(card: Answer): (sentence: string) => boolean {
  const answering = card.figures.filter((it) => it.headline)
  const names = new Set([...joining, ...answering.flatMap((it) => [...wordsOf(it.label), ...wordsOf(it.unit)])])
  const refs = new Set(answering.map((it) => it.ref))
  return (sentence) =>
    slotsIn(sentence).every((it) => refs.has(it.key)) && wordsOf(withoutSlots(sentence)).every((it) => names.has(it))
}

const wordsOf = (text: string): string[] => tokens(text).flatMap((it) => (/\p{L}/u.test(it.text) ? [it.stem] : []))

const joining =
  'so then and that this it is are be you your we i need will would have want get take make come give leave end up to with for the a an in on at all of here there answer'
    .split(' ')
    .map(stem)
