// This file is about what stands around a quantity in the message as it was typed.
import type { Heard, Tagged } from '../reader.ts'

const reach = 36
/** The words right before it, back to the stop of its sentence. */
export const wordsBefore = ({ said }: Heard, { start }: Tagged): string =>
  said
    .slice(Math.max(0, start - reach), start)
    .replace(/^.*[.;?!\n]\s/s, '')
    .toLowerCase()
/** The words right behind it, up to the stop of its sentence. */
export const wordsBehind = ({ said }: Heard, { end }: Tagged): string =>
  (/^.*?(?=[.;?!\n](?:\s|$)|$)/s.exec(said.slice(end, end + reach))?.[0] ?? '').toLowerCase()

/** Whether it can be money: with its currency, or a plain number. */
export const mayBeMoney = (it: Tagged): boolean =>
  it.quantity?.kind === 'money' ||
  (it.bare !== null &&
    !it.section &&
    !it.clock &&
    !it.proportion &&
    !it.people &&
    !it.change &&
    /^[\d,]+(\.\d\d?)?$/.test(it.said))
