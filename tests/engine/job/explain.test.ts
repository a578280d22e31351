// Why a figure is what it is: every row of the path stands in the plan, and the path ends in what was told, taken as usual or laid out.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { vocabulary } from '../../../engine/catalogue.ts'
import { pathOf, showValue } from '../../../engine/job/explain.ts'
import { decide, type Job, newJob } from '../../../engine/job/job.ts'
import { newMemo, type Plan } from '../../../engine/job/node.ts'
import { looksAt, parts } from '../../../engine/job/parts.ts'
import { placeLabel } from '../../../engine/places.ts'
import type { Value } from '../../../engine/quantities/quantity.ts'
import { decisionsOf, jobOf, planFrom, type Told } from './fences.ts'
import { randomFence } from './random-fences.ts'

/** Told over several turns, so that a row must know which. */
const turns: readonly Told[] = [
  { 'runLength@front': '60 ft', 'runLength@right': '84 ft', widestBay: '8 ft' },
  { 'gateOpening@front': '42 in', 'farEnd@right': 'wall' },
  { picketWidth: '3 1/2 in', widestGap: '2 1/2 in', picketLength: '42 in', 'gateStart@front': '20 ft' },
  { postAbove: '4 ft', holeDiameter: '10 in', bagWeight: '60 lb' },
  { 'picketWidth@right': '5 1/2 in', 'holeDiameter@gate-posts': '12 in', picketPrice: '$3.19' },
]
const told: Job = {
  ...turns.reduce<Job>((job, each, turn) => decide(job, decisionsOf(each, turn)), newJob),
  system: 'imperial',
}

interface Row {
  readonly depth: number
  readonly label: string
  readonly where: string
  readonly value: string
  readonly from: string
}
function rowsOf(plan: Plan, word: string, at = 'yard'): Row[] {
  const path = pathOf(plan, word, at)
  if (!path) throw new Error(`no path to ${word}`)
  return path.rows.map((row) => {
    const [what, where, value, from] = row.map(String) as [string, string, string, string]
    const [, dots = '', label = ''] = /^((?:· )*)(.*)$/.exec(what) ?? []
    return { depth: dots.length / 2, label, where, value, from }
  })
}

const where = (at: string): string => placeLabel(at) || 'yard'
const key = (label: string, at: string, value: string): string => `${label} | ${where(at)} | ${value}`

/** Everything that the plan knows of its parts, as rows would say it: results, and what each part was given. */
function known(plan: Plan): { results: ReadonlySet<string>; given: ReadonlySet<string> } {
  const [results, given] = [new Set<string>(), new Set<string>()]
  const places = [
    'yard',
    ...plan.fence.runs.flatMap((run) => [run.place, ...run.gates.map((it) => it.place)]),
    ...plan.stretches.map((it) => it.place),
    ...new Set(plan.posts.map((it) => it.kind)),
  ]
  const say = (name: string, value: Value | undefined): string => {
    const word = vocabulary.get(name)
    return word && value !== undefined ? showValue(word, value) : ''
  }
  const labelled = (name: string): string => vocabulary.get(name)?.label ?? name
  for (const part of parts)
    for (const at of places) {
      const outside = part.as ?? Object.fromEntries(Object.keys(part.calculation.gives).map((it) => [it, it]))
      const node = Object.values(outside)
        .map((name) => plan.node(name, at))
        .find((it) => it?.part === part)
      if (!node?.outcome.ok) continue
      for (const [name, value] of node.outcome.values)
        results.add(
          `${key(labelled(outside[name] ?? name), at, say(name, value))} | ${part.calculation.title}`.toLowerCase(),
        )
      for (const [name, it] of node.outcome.given)
        given.add(`${labelled(part.takes?.[name] ?? name)} | ${say(name, it.value)}`)
    }
  return { results, given }
}
const withoutPlace = ({ label, value }: Row): string => `${label} | ${value}`

describe('the path to a figure', () => {
  const plan = planFrom(told, newMemo(), 4)

  it('every figure on it is the plan’s own', () => {
    const { results, given } = known(plan)
    for (const word of looksAt.filter((it) => pathOf(plan, it, 'yard')))
      for (const row of rowsOf(plan, word).filter((it) => !/^and \d+ more$/.test(it.label))) {
        const { label, value, from } = row
        if (from.startsWith('worked: ')) {
          const title = from.slice('worked: '.length).replace(', see above', '')
          expect(results, word).toContain(`${label} | ${row.where} | ${value} | ${title}`.toLowerCase())
        } else expect(given, `${word}: ${label}`).toContain(withoutPlace(row))
      }
  })

  it('what was told says in which turn, for a run, a gate and a kind of post too', () => {
    for (const word of looksAt.filter((it) => pathOf(plan, it, 'yard')))
      for (const { label, from } of rowsOf(plan, word))
        if (from.startsWith('you said')) expect(from, `${word}: ${label}`).toMatch(/^you said, turns? \d/)
    const said = (word: string, label: string, of = 'front run'): string | undefined =>
      rowsOf(plan, word).find((it) => it.label === label && it.where === of)?.from
    expect(said('posts', 'length of the run')).toBe('you said, turn 1')
    expect(said('posts', 'gate openings, in order along the run')).toBe('you said, turn 2')
    expect(said('posts', 'where each gate starts')).toBe('you said, turn 3')
    expect(said('posts', 'where the run is measured to', 'right run')).toBe('you said, turn 2')
    expect(said('picketsToBuy', 'picket width', 'right run')).toBe('you said, turn 5')
    expect(said('bags', 'hole width', 'yard')).toBe('you said, turns 4 and 5')
  })

  it.each(looksAt)('%s: it ends in what was told, usual or laid out', (word) => {
    if (!pathOf(plan, word, 'yard')) return
    const rows = rowsOf(plan, word)
    const last = rows.at(-1)?.label ?? ''
    const isCut = /^and \d+ more$/.test(last)
    const ends = rows.filter((row, i) => !((rows[i + 1]?.depth ?? 0) > row.depth))
    const open = ends.filter((it) => it.from.startsWith('worked') && !it.from.endsWith(', see above'))
    expect(open.slice(0, isCut ? -1 : undefined)).toEqual([])
    // What is not told again was told above.
    for (const it of ends.filter((row) => row.from.endsWith(', see above')))
      expect(rows.some((row) => row.where === it.where && `${row.from}, see above` === it.from)).toBe(true)
  })

  // brackets = 2 × railsInAll, not rails × bays; screws hang on the crossings; a price is a told word of the cost.
  it('a result that came by a branch shows what it came from', () => {
    const labels = (word: string): string[] => rowsOf(plan, word).map((it) => it.label)
    expect(labels('brackets')).toContain('rails in all')
    expect(labels('screwsToBuy')).toContain('places where a picket crosses a rail')
    expect(labels('takeOffCost')).toContain('price of one picket')
    const frost = planFrom(
      jobOf({ 'runLength@front': '40 ft', widestBay: '8 ft', postAbove: '4 ft', frostDepth: '36 in' }),
    )
    expect(rowsOf(frost, 'embedment', 'line-posts').map((it) => it.label)).toContain('local frost depth')
  })

  it('a long path says that it was cut, and a figure is asked for alone', () => {
    const rows = rowsOf(plan, 'takeOffCost')
    expect(rows.length).toBeLessThanOrEqual(61)
    if (rows.length === 61) expect(rows.at(-1)?.label).toMatch(/^and \d+ more$/)
  })

  it('there is none to a figure that is not known', () => {
    expect(pathOf(planFrom(jobOf({ 'runLength@front': '40 ft' })), 'bags', 'yard')).toBeUndefined()
  })

  it('holds for any fence', () => {
    fc.assert(
      fc.property(randomFence, fc.constantFrom(...looksAt), ({ told: texts, system }, word) => {
        const any = planFrom(jobOf(texts, system))
        if (!pathOf(any, word, 'yard')) return
        const { results } = known(any)
        for (const { label, where: at, value, from } of rowsOf(any, word))
          if (from.startsWith('worked: '))
            expect(results).toContain(
              `${label} | ${at} | ${value} | ${from.slice('worked: '.length).replace(', see above', '')}`.toLowerCase(),
            )
      }),
      { numRuns: 25, seed: 20_260_521 },
    )
  })
})

describe('a figure gathered from several kinds of post', () => {
  // Told for the corner only, in the second turn: the others take what is usual, and have no turn.
  it('names the turns of those that were told', () => {
    const job = decide(
      jobOf({ 'runLength@front': '60 ft', 'runLength@right': '40 ft', widestBay: '8 ft', holeDiameter: '10 in' }),
      decisionsOf({ 'stoneDepth@corner-posts': '4 in' }, 1),
    )
    const rows = rowsOf(planFrom(job), 'gravel').filter((it) => it.label === 'stone under the post')
    expect(rows.find((it) => it.where === 'yard' && it.value.includes(','))).toMatchObject({
      value: '4 in, 6 in, 6 in',
      from: 'you said, turn 2',
    })
    expect(rows.map((it) => it.from).join()).not.toContain('NaN')
  })
})
