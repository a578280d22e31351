// The critical path, against printed examples and against every path tried.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decidingPath, endOf, place, slackOf, type Task } from '../../engine/critical-path.ts'

/** So many days, then what must be over before. */
type Parts = Readonly<Record<string, readonly [days: number, ...after: string[]]>>
const tasksOf = (parts: Parts): Task[] =>
  Object.entries(parts).map(([name, [days, ...after]]) => ({ name, days, after }))

// Design, materials, order, manufacture, two assemblies, final: http://studylib.net/doc/8378728/example-1--draw-the-network-for-the-events-in-table-1
const printed: Parts = { A: [6], B: [2, 'A'], C: [2, 'A'], D: [3, 'B'], F: [2, 'C'], E: [4, 'D', 'F'], G: [1, 'E'] }
// https://www.scribd.com/document/783336345/Example-Problem
const other: Parts = { A: [4], B: [3, 'A'], C: [5, 'A'], D: [2, 'B'], E: [6, 'C', 'D'], F: [4, 'E'] }

describe('printed examples', () => {
  it('the first ends after 16, by A, B, D, E, G; C and F may slip by 1', () => {
    const tasks = tasksOf(printed)
    const placed = place(tasks, 1)
    expect(endOf(placed)).toBe(16)
    expect(decidingPath(placed)).toEqual(['A', 'B', 'D', 'E', 'G'])
    expect(Object.fromEntries(slackOf(placed))).toEqual({
      A: 0,
      B: 0,
      C: 1,
      D: 0,
      F: 1,
      E: 0,
      G: 0,
    })
  })

  it('the second ends after 19, and nothing in it may slip', () => {
    const tasks = tasksOf(other)
    const placed = place(tasks, 1)
    expect(endOf(placed)).toBe(19)
    expect([...slackOf(placed).values()]).toEqual(tasks.map(() => 0))
    // Its two longest paths are as long as each other: either decides.
    const path = decidingPath(placed)
    expect([
      ['A', 'B', 'D', 'E', 'F'],
      ['A', 'C', 'E', 'F'],
    ]).toContainEqual(path)
  })
})

/** A network of up to nine parts, each after some of those before it. */
const networks = fc
  .array(fc.tuple(fc.integer({ min: 0, max: 9 }), fc.array(fc.nat(), { maxLength: 3 })), { minLength: 1, maxLength: 9 })
  .map((all): Task[] =>
    all.map(([days, before], i) => ({
      name: `p${i}`,
      days,
      after: i === 0 ? [] : [...new Set(before.map((it) => `p${it % i}`))],
    })),
  )

/** Every path through the network, as lists of names. */
function pathsOf(tasks: readonly Task[]): Task[][] {
  const from = (task: Task): Task[][] => {
    const next = tasks.filter((it) => it.after.includes(task.name))
    return next.length === 0 ? [[task]] : next.flatMap((it) => from(it).map((path) => [task, ...path]))
  }
  return tasks.filter((it) => it.after.length === 0).flatMap(from)
}
const lengthOf = (path: readonly Task[]): number => path.reduce((sum, it) => sum + it.days, 0)

/** The same tasks, with so many days of delay put in behind one of them. */
const heldUp = (tasks: readonly Task[], name: string, days: number): Task[] =>
  tasks.flatMap((task) => {
    const waits = { ...task, after: task.after.map((it) => (it === name ? 'delay' : it)) }
    return task.name === name ? [waits, { name: 'delay', days, after: [name] }] : [waits]
  })

describe('against every path tried', () => {
  it('the end is the longest of all paths, and the deciding path is one of them', () => {
    fc.assert(
      fc.property(networks, fc.integer({ min: -100, max: 100 }), (tasks, start) => {
        const placed = place(tasks, start)
        const longest = Math.max(...pathsOf(tasks).map(lengthOf))
        expect(endOf(placed) - start + 1).toBe(longest)
        const path = decidingPath(placed)
        expect(path.reduce((sum, name) => sum + (tasks.find((it) => it.name === name)?.days ?? 0), 0)).toBe(longest)
      }),
      { numRuns: 500, seed: 3 },
    )
  })

  it('a part may slip by the longest of all paths less the longest through it', () => {
    fc.assert(
      fc.property(networks, (tasks) => {
        const paths = pathsOf(tasks)
        const longest = Math.max(...paths.map(lengthOf))
        for (const task of tasks.filter((it) => it.days > 0)) {
          const through = Math.max(...paths.filter((path) => path.includes(task)).map(lengthOf))
          expect(slackOf(place(tasks, 0)).get(task.name)).toBe(longest - through)
        }
      }),
      { numRuns: 300, seed: 5 },
    )
  })

  it('with days that do not count: it may slip so far, and not a day further', () => {
    const pattern = (of: readonly boolean[]) => (day: number) =>
      of[((day % of.length) + of.length) % of.length] as boolean
    const week = fc.array(fc.boolean(), { minLength: 1, maxLength: 7 }).filter((it) => it.includes(true))
    const withWeeks = networks.chain((tasks) =>
      fc
        .array(fc.record({ counts: fc.option(week), opens: fc.option(week) }), {
          minLength: tasks.length,
          maxLength: tasks.length,
        })
        .map((weeks) =>
          tasks.map(
            (task, i): Task => ({
              ...task,
              ...(weeks[i]?.counts ? { counts: pattern(weeks[i].counts) } : {}),
              ...(weeks[i]?.opens ? { opens: pattern(weeks[i].opens) } : {}),
            }),
          ),
        ),
    )
    fc.assert(
      fc.property(withWeeks, (tasks) => {
        const placed = place(tasks, 0)
        const end = endOf(placed)
        for (const [name, slack] of slackOf(placed)) {
          expect(endOf(place(heldUp(tasks, name, slack), 0)), name).toBe(end)
          expect(endOf(place(heldUp(tasks, name, slack + 1), 0)), name).toBeGreaterThan(end)
        }
      }),
      { numRuns: 500, seed: 9 },
    )
  })

  it('a day that does not count is waited over', () => {
    const even = (day: number): boolean => day % 2 === 0
    const [a, b] = place(
      [
        { name: 'a', days: 3, after: [], counts: even },
        { name: 'b', days: 2, after: ['a'] },
      ],
      1,
    )
    expect([a?.first, a?.last, b?.first, b?.last]).toEqual([2, 6, 7, 8])
  })
})
