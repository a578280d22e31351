// This file is about tasks that wait for each other: when each can begin and end, which of them decide the end, and how late the others may be.
//
//   call ── notice ── holes ── posts ── concrete ── rails ── pickets ── dry ── coats
//     └──── wood on its way ─────┘  └── gates ──┘
//
// Days are whole numbers. Nothing here knows what a day is called.

export interface Task {
  readonly name: string
  /** What must be over before it. All of them stand earlier in the list. */
  readonly after: readonly string[]
  /** So many days that count. None: it is over as soon as what is before it. */
  readonly days: number
  /** Whether a day counts for it: your own days for work, working days for an office. Without it every day does, as for what only takes time. */
  readonly counts?: (day: number) => boolean
  /** The days on which it may open; then it waits for the next day that counts. */
  readonly opens?: (day: number) => boolean
}

export interface Placed extends Task {
  /** The first and the last day of it; the last lies before the first where it takes none. */
  readonly first: number
  readonly last: number
  /** What it waited for longest: it could not begin sooner because of this. */
  readonly heldBy: readonly string[]
}

/** Each task as soon as it can be, from the first day of the job on. */
export function place(tasks: readonly Task[], start: number): Placed[] {
  const placed: Placed[] = []
  for (const task of tasks) {
    const before = task.after.map((name) => placed.find((it) => it.name === name) as Placed)
    const ready = Math.max(start, ...before.map((it) => it.last + 1))
    const heldBy = before.filter((it) => it.last + 1 === ready).map((it) => it.name)
    let first = ready
    while (task.opens && !task.opens(first)) first++
    while (task.days > 0 && task.counts && !task.counts(first)) first++
    placed.push({ ...task, first, last: task.days > 0 ? lastOf(task, first) : first - 1, heldBy })
  }
  return placed
}

function lastOf({ days, counts }: Task, first: number): number {
  if (!counts) return first + days - 1
  let last = first
  for (let left = days - 1; left > 0; ) if (counts(++last)) left--
  return last
}

export const endOf = (placed: readonly Placed[]): number => Math.max(...placed.map((it) => it.last))

/** The tasks that decide the end, in order: from the last one back, always by what held it up. */
export function decidingPath(placed: readonly Placed[]): string[] {
  const end = endOf(placed)
  const path: string[] = []
  let at = placed.findLast((it) => it.last === end)
  while (at) {
    if (at.days > 0) path.unshift(at.name)
    const before: Placed = at
    at = placed.find((it) => it.name === before.heldBy[0])
  }
  return path
}

/** By how many days each task may end late and the whole still ends on the same day: from the end backwards, each by those that wait for it. */
export function slackOf(placed: readonly Placed[]): ReadonlyMap<string, number> {
  const latest = new Map<string, number>()
  const slack = new Map<string, number>()
  const end = endOf(placed)
  for (const task of placed.toReversed()) {
    const last = latest.get(task.name) ?? end
    slack.set(task.name, last - task.last)
    const before = latestReady(task, last) - 1
    for (const name of task.after) latest.set(name, Math.min(before, latest.get(name) ?? end))
  }
  return slack
}

/** The latest day on which a task may be ready to begin and still be over by that one. */
function latestReady({ days, counts, opens }: Task, last: number): number {
  let day = last + 1
  if (!counts) day -= days
  else for (let left = days; left > 0; ) if (counts(--day)) left--
  while (opens && !opens(day)) day--
  return day
}
