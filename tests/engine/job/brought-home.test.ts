// What a whole fence tells its hauling, its caps, its calendar and its post depth. Sums by hand beside each.
import { describe, expect, it } from 'vitest'
import { newMemo } from '../../../engine/job/node.ts'
import { cutSolver } from '../../../src/solver/highs.ts'
import { jobOf, numberOf, oneFence, planFrom, shownOf } from './fences.ts'

// 80 ft at 8 ft: 10 bays, 11 posts; 96 − 3 1/2 = 92 1/2 in between posts, and two rails a bay
const straight = { ...oneFence, 'runLength@front': '80 ft' }
// Two of 92 1/4 and a cut are 184 5/8: one 16 ft board for $18, or two of 8 ft for as much. Fewer boards are bought.
const sold = { railStock: '8 ft, 12 ft, 16 ft', railStockPrices: '$9, $13, $18' }

describe('bringing it home', () => {
  // A rail is 1/4 in shorter than its opening, so that it slips in: 92 1/4 − 60 = 32 1/4; a post is 4 ft and 2 ft in the ground, which is less
  it('the longest piece is a rail, cut to its bay', () => {
    expect(shownOf(planFrom(jobOf({ ...straight, bedLength: '5 ft' })), 'overhang')).toBe('2 ft 8 1/4 in')
  })

  it('and a board as it is bought, once the yard’s lengths are told', async () => {
    const plan = planFrom(jobOf({ ...straight, ...sold, bedLength: '6 ft' }), newMemo(await cutSolver()))
    expect(shownOf(plan, 'railsLongest')).toBe('16 ft')
    expect(shownOf(plan, 'overhang')).toBe('10 ft')
  })
})

describe('caps from the ends of rails', () => {
  // 192 − 184 5/8 − 1/8 = 7 1/4 left of each of ten boards: one cap of 5 1/2 from each, for eleven posts
  it('come out of rails that are wide enough', async () => {
    const job = jobOf({ ...straight, ...sold, railDepth: '5 1/2 in', capSize: '5 1/2 in' })
    expect(shownOf(planFrom(job, newMemo(await cutSolver())), 'capsFromRails')).toBe('10 smaller pieces')
  })

  it('and of no others', async () => {
    const plan = planFrom(jobOf({ ...straight, ...sold, capSize: '5 1/2 in' }), newMemo(await cutSolver()))
    expect(() => shownOf(plan, 'capsFromRails')).toThrow('does not give')
  })
})

describe('days of the calendar', () => {
  const called = { ...straight, callDate: '2027-05-03', noticeDays: '3' }

  // 11 holes of an hour: 11 h alone at 4 h a day are 3 days; by two, 2
  it('come from the hours of the fence, once a day has hours', () => {
    expect(shownOf(planFrom(jobOf({ ...called, holeTime: '1 h', dayHours: '4 h' })), 'digWork')).toBe('3 days')
    expect(shownOf(planFrom(jobOf({ ...called, holeTime: '1 h', dayHours: '4 h', helpers: '1' })), 'digWork')).toBe(
      '2 days',
    )
  })

  it('are later for it, and the usual ones stand while nobody says how long a day is', () => {
    const days = (more: Record<string, string>): number => numberOf(planFrom(jobOf({ ...called, ...more })), 'jobDays')
    expect(days({ holeTime: '1 h', dayHours: '1 h' })).toBeGreaterThan(days({ holeTime: '1 h' }))
    expect(() => shownOf(planFrom(jobOf({ ...called, holeTime: '1 h' })), 'digWork')).toThrow('no part gives')
  })
})

describe('the ways to a post’s depth', () => {
  const depthOf = (more: Record<string, string>) => {
    const node = planFrom(jobOf({ ...straight, ...more })).node('embedment', 'end-posts')
    if (!node?.outcome.ok) throw new Error('no depth')
    const table = node.outcome.tables.find((it) => it.title === 'Each way to the depth')
    return table?.rows.map((row) => row.map(String))
  }

  it('stand side by side, and the deepest governs', () => {
    expect(depthOf({ frostDepth: '36 in', officeDepth: '30 in' })).toEqual([
      ['one-third rule', '24 in', ''],
      ['frost depth', '36 in', 'yes'],
      ['building office’s depth', '30 in', ''],
    ])
  })

  it('the code’s formula among them, once the push of the wind is told', () => {
    const rows = depthOf({
      sideForce: '300 lbf',
      forceHeight: '2 ft',
      lateralBearing: '100 psf/ft',
      postSetIn: 'concrete',
    })
    expect(rows?.map(([way]) => way)).toEqual(['one-third rule', 'code’s formula for the wind'])
    expect(rows?.[1]?.[2]).toBe('yes')
  })
})
