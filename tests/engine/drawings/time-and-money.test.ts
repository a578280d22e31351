// The job's calendar and the break-even chart: to scale, and the same in words.
import { describe, expect, it } from 'vitest'
import { boxes, draw, linesIn, said, written } from './draw.ts'

const job = {
  callDate: '2026-06-01',
  noticeDays: '3',
  digWork: '2 days',
  setWork: '1 day',
  railsUp: '3 days',
  railWork: '1 day',
  picketWork: '2 days',
  dryWait: '14 days',
  coats: '2',
}

describe('the calendar of the job', () => {
  it('every bar is as long as its days, and begins where the one before it ends', () => {
    const bars = boxes(draw('job-calendar', job))
    // call 1, notice 3, holes 2, posts 1, concrete 3, rails 1, pickets 2, dry 14, coat 1, wait 1, coat 1: 30 days in one chain
    const days = [1, 3, 2, 1, 3, 1, 2, 14, 1, 1, 1]
    const day = bars.reduce((sum, [, , wide]) => sum + wide, 0) / 30
    expect(bars.map(([, , wide]) => wide / day)).toEqual(days.map((it) => expect.closeTo(it, 1)))
    for (const [i, [x, , wide]] of bars.entries()) if (bars[i + 1]) expect(bars[i + 1]?.[0]).toBeCloseTo(x + wide, 1)
  })

  it('what may slip is white, and says what decides in words', () => {
    const svg = draw('job-calendar', { ...job, woodWait: '2 days' })
    expect(svg.match(/fill="#fff" stroke/g)).toHaveLength(1)
    expect(said(svg)).toContain('wood comes 1 Jun to 2 Jun')
    expect(said(svg)).toContain('What decides the end: call, notice, holes')
    expect(written(svg)).toContain('last coat on Tuesday 30 June 2026')
  })
})

describe('the weekends of a calendar', () => {
  const shaded = (dryWait: string) =>
    [...draw('job-calendar', { ...job, dryWait }).matchAll(/<rect x="(.*?)" y="58" width="(.*?)" [^>]*#ececec/g)].map(
      (it) => it.slice(1).map(Number) as [number, number],
    )

  // 30 days with 14 of drying: 70 with 54, ten weeks from a Monday to a Sunday, on 340 − 92 = 248 or so across.
  it('are shaded in a job of 70 days, two days wide each, and in none of 71', () => {
    const all = shaded('54 days')
    expect(all).toHaveLength(10)
    const first = boxes(draw('job-calendar', { ...job, dryWait: '54 days' }))[0] as readonly number[]
    const day = ((all[1] as number[])[0] as number) - ((all[0] as number[])[0] as number)
    for (const [i, [x, wide]] of all.entries()) {
      expect(wide / day).toBeCloseTo(2 / 7, 2)
      // The first Saturday is the sixth day of the job.
      expect((x - (first[0] as number)) / day).toBeCloseTo(i + 5 / 7, 1)
    }
    expect(shaded('55 days')).toEqual([])
    expect(written(draw('job-calendar', { ...job, dryWait: '54 days' }))).toContain('grey: weekends')
    expect(written(draw('job-calendar', { ...job, dryWait: '55 days' }))).not.toContain('grey: weekends')
  })

  it('is as high as its rows, and higher by the line that tells the weekends', () => {
    const high = (dryWait: string): number =>
      Number(/viewBox="0 0 \d+ (\d+)"/.exec(draw('job-calendar', { ...job, dryWait }))?.[1])
    // 58 over them, 11 rows of 21, 44 or 28 under them.
    expect([high('54 days'), high('55 days')]).toEqual([58 + 11 * 21 + 44, 58 + 11 * 21 + 28])
    expect(linesIn(draw('job-calendar', { ...job, dryWait: '55 days' })).length).toBeGreaterThan(2)
  })
})

describe('the break-even chart', () => {
  const given = { rentADay: '$85', machineHoleTime: '10 minutes', holeTime: '50 minutes', hourWorth: '$20' }
  it('the two lines meet just before the number of holes that it names', () => {
    const svg = draw('rent-buy-dig', given)
    const paths = [...svg.matchAll(/<path d="M([^"]*)" fill="none"/g)].map((it) =>
      (it[1] ?? '').split('L').map((point) => point.split(' ').map(Number) as [number, number]),
    )
    const [hand, rent] = paths as [[number, number][], [number, number][]]
    const at = (line: [number, number][], x: number): number => {
      const [[x1, y1], [x2, y2]] = [line[0], line.at(-1)] as [[number, number], [number, number]]
      return y1 + ((x - x1) / (x2 - x1)) * (y2 - y1)
    }
    const left = (hand[0] as [number, number])[0]
    const hole = ((hand.at(-1) as [number, number])[0] - left) / 14
    // By hand it is cheaper at 6 holes, rented at 7: 85/13.33 = 6.375. Up the sheet is smaller.
    expect(at(hand, left + 6 * hole)).toBeGreaterThan(at(rent, left + 6 * hole))
    expect(at(hand, left + 7 * hole)).toBeLessThan(at(rent, left + 7 * hole))
    expect(written(svg)).toContain('a rented day pays from 7 holes on')
  })

  // By hand 52 × 20 = 1040; rented 8 days and 52 × 16.67: 680 + 866.67 = 1546.67, the highest. Bought for 800, 800 + n × 16.67 is that at 44.8 holes.
  it('the line of a machine bought ends where it leaves the chart, or with the holes', () => {
    const slow = {
      rentADay: '$85',
      machineHoleTime: '50 minutes',
      holeTime: '60 minutes',
      hourWorth: '$20',
      dayHours: '6 h',
    }
    const ends = (machinePrice: string) => {
      const svg = draw('rent-buy-dig', { ...slow, machinePrice }, { confirmed: ['machinePrice'] })
      return [...svg.matchAll(/<path d="M([^"]*)" fill="none"/g)].map(
        (it) => (it[1] as string).split('L').at(-1)?.split(' ').map(Number) as [number, number],
      )
    }
    const [hand, rented, bought] = ends('$800') as [[number, number], [number, number], [number, number]]
    expect(hand[0]).toBe(rented[0])
    expect(bought[1]).toBeCloseTo(rented[1], 1)
    expect((bought[0] - 52) / (hand[0] - 52)).toBeCloseTo(44.8 / 52, 3)
    // Bought for 500, all 52 holes come to 1366.67.
    expect(ends('$500')[2]?.[0]).toBe(hand[0])
    // Bought for more than anything on the chart, it has no line.
    expect(ends('$2000')).toHaveLength(2)
  })

  it('is not drawn before it is known what an hour is worth', () => {
    const { hourWorth: _, ...known } = given
    expect(() => draw('rent-buy-dig', { ...known, machinePrice: '$300' }, { wanted: ['buyDays'] })).toThrow()
  })
})
