// This file is about the parts of a fence job, and which waits for which.
//
//   call ── notice ── holes ──(inspection)── posts ── concrete ── rails ── pickets ── drying ── coat ── wait ── coat
//     └───── wood on its way ──────────────────┘  └── gates ──┘
import type { Task } from './critical-path.ts'
import { ceiling, exact, toNumber } from './quantities/amount.ts'
import { weekdayOf } from './quantities/calendar.ts'
import { amountIn, type Quantity } from './quantities/quantity.ts'
import { workingWithout } from './working-days.ts'

/** What is known of the job; nothing for a part that is not in it. */
export interface Plan {
  /** A value by the name of its word. */
  readonly maybe: (name: string) => Quantity | undefined
  readonly ownDays: string
  readonly holidays: readonly Quantity[]
}

/** A duration in whole days, one begun counted; a count as it is; nought for what is not known. */
export function wholeDays(q: Quantity | undefined): number {
  if (!q) return 0
  return q.kind === 'duration' ? Number(ceiling(amountIn(q, 'day')).whole.n) : toNumber(q.amount)
}

/** The parts in order, each after those that it waits for. */
export function tasksOf({ maybe, ownDays, holidays }: Plan): Task[] {
  const isWorking = workingWithout(holidays)
  const asDate = (day: number): Quantity => ({ kind: 'date', amount: exact(day), unit: 'date' })
  const weekday = remembered((day) => weekdayOf(asDate(day)))
  const office = remembered((day) => isWorking(asDate(day)))
  const own =
    ownDays === 'weekends'
      ? (day: number) => weekday(day) > 4
      : ownDays === 'weekdays'
        ? (day: number) => weekday(day) < 5
        : undefined
  const part = (name: string, after: readonly string[], word: string, counts?: Task['counts']): Task => ({
    name,
    after,
    days: wholeDays(maybe(word)),
    ...(counts ? { counts } : {}),
  })
  const coats = Array.from({ length: wholeDays(maybe('coats')) }, (_, i) => i + 1)
  return [
    // The day of the call passes whatever day it is.
    { name: 'call', after: [], days: 1 },
    part('notice', ['call'], 'noticeDays', office),
    part('wood comes', [], 'woodWait'),
    // After the notice comes the next working day: no ticket begins on a Sunday.
    { ...part('holes', ['notice'], 'digWork', own), opens: office },
    part('inspection', ['holes'], 'inspectionWait', office),
    part('posts set', ['inspection', 'wood comes'], 'setWork', own),
    part('concrete', ['posts set'], 'railsUp'),
    part('gates built', ['posts set'], 'gateWork', own),
    part('rails', ['concrete', 'gates built'], 'railWork', own),
    part('pickets', ['rails'], 'picketWork', own),
    part('drying', ['pickets'], 'dryWait'),
    ...coats.flatMap((coat) => [
      ...(coat > 1 ? [part(`wait ${coat - 1}`, [`coat ${coat - 1}`], 'betweenCoats')] : []),
      part(`coat ${coat}`, [coat > 1 ? `wait ${coat - 1}` : 'drying'], 'coatWork', own),
    ]),
  ]
}

/** The same days are looked at again and again. */
function remembered<T>(of: (day: number) => T): (day: number) => T {
  const known = new Map<number, T>()
  return (day) => {
    const found = known.get(day)
    if (found !== undefined) return found
    const value = of(day)
    known.set(day, value)
    return value
  }
}
