// The field pack of a whole fence: its figures are the plan's, its posts have one number each, and what is not known is asked for.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { letterOf } from '../../../engine/job/sheets/bays.ts'
import { fieldPackOf } from '../../../engine/job/field-pack.ts'
import { decide, newJob, redo, undo } from '../../../engine/job/job.ts'
import { newMemo } from '../../../engine/job/node.ts'
import type { FieldPack } from '../../../engine/job/sheets.ts'
import type { Table } from '../../../engine/outcome.ts'
import { isList, type Quantity } from '../../../engine/quantities/quantity.ts'
import { show } from '../../../engine/quantities/show.ts'
import { atNearestMark } from '../../../engine/quantities/tape.ts'
import { wellFormed } from '../drawings/draw.ts'
import { decisionsOf, jobOf, planFrom, shownOf, valueAt } from './fences.ts'
import { column, drawingsOf, linesOf, sixRuns, tablesOf, threeRuns } from './whole-fence.ts'

const packFrom = (told: Readonly<Record<string, string>>, system: 'imperial' | 'metric' = 'imperial'): FieldPack => {
  const pack = fieldPackOf(jobOf(told, system), 0)
  if (!pack) throw new Error('no pack')
  return pack
}
const byTape = (q: Quantity): string => show(atNearestMark(q) ?? q)
const six = packFrom(sixRuns)
const plan = planFrom(jobOf(sixRuns))

describe('the pack of six runs', () => {
  it('has its sheets in the order in which they are needed', () => {
    expect(six.sheets.map((it) => it.title)).toEqual([
      'Plan',
      'Stations and holes',
      'Post lengths and cut heights',
      'Bays and pickets',
      'Story stick',
      'Story stick A, true size',
      'Story stick B, true size',
      'Story stick C, true size',
      'Gate 1 of the front run',
      'Gate 1 of the left run',
      'Arch: back run, bays 1 to 5',
      'Shopping list',
      'Calendar',
      'Sketch for the permit desk',
      'Taken as usual',
      'Take care',
    ])
    expect(six.paper).toBe('letter')
  })

  // 600 in, gate of 42 + 3 1/2 at 20 ft: 240 in before it are 3 bays of 80, 314 1/2 behind it 4 of 78 5/8. 840/96 = 8.75 → 9; 480/96 = 5.
  it('counts its runs as they were laid out', () => {
    const [runs] = tablesOf(six, 'Plan')
    expect(runs && column(runs, 'bays')).toEqual(['7', '9', '5', '7', '9', '4'])
    expect(runs && column(runs, 'its posts')).toEqual([
      '1 to 9',
      '9 to 18',
      '18 to 23',
      '23 to 30',
      '30 to 39',
      '39 to 1',
    ])
    expect(linesOf(six, 'Plan')).toEqual(
      expect.arrayContaining([`posts: ${shownOf(plan, 'posts')}`, `bays: ${shownOf(plan, 'bays')}`]),
    )
  })

  it('gives every post one number, and each its hole once', () => {
    const tables = tablesOf(six, 'Stations and holes')
    const rows = tables.flatMap((table) =>
      column(table, 'post').map((post, i) => ({ post, depth: column(table, 'hole depth')[i] })),
    )
    const dug = rows.filter((it) => it.depth !== '').map((it) => it.post)
    const all = Array.from({ length: plan.posts.length }, (_, i) => String(i + 1))
    expect(dug).toEqual(all)
    expect(tablesOf(six, 'Post lengths and cut heights').flatMap((it) => column(it, 'post'))).toEqual(all)
    // Six corners stand in two tables each.
    expect(rows).toHaveLength(all.length + 6)
  })

  it('has the stations, holes and lengths of the plan', () => {
    const tables = tablesOf(six, 'Stations and holes')
    for (const [i, { run }] of plan.runs.entries()) {
      const stations = valueAt(plan, 'postStations', run.place)
      expect(column(tables[i] as Table, 'by the tape')).toEqual(isList(stations) ? stations.map(byTape) : [])
    }
    const [front] = tables as [Table]
    expect(column(front, 'hole width')).toEqual([
      '10 in',
      '10 in',
      '10 in',
      '12 in',
      '12 in',
      '10 in',
      '10 in',
      '10 in',
      '10 in',
    ])
    expect(column(front, 'kind').slice(3, 5)).toEqual(['gate 1 begins', 'gate 1 ends'])
    // 4 ft and half of it; where the run steps, 40 in over 9 bays more: 4 4/9, by the tape 4 7/16.
    const [lengths] = tablesOf(six, 'Post lengths and cut heights') as [Table]
    expect(new Set(column(lengths, 'post length, by the tape'))).toEqual(new Set(['6 ft', '6 ft 4 7/16 in']))
    expect(column(lengths, 'longer for the step').filter((it) => it !== '')).toHaveLength(10)
  })

  it('has the pickets, gaps and rails of each stretch, and says them on the stick alike', () => {
    const [bays] = tablesOf(six, 'Bays and pickets') as [Table]
    const places = plan.stretches.map((it) => it.place)
    expect(column(bays, 'rail as cut')).toEqual(places.map((it) => byTape(valueAt(plan, 'railCut', it) as Quantity)))
    expect(column(bays, 'gap')).toEqual(places.map((it) => byTape(valueAt(plan, 'tapeGap', it) as Quantity)))
    const [sticks, marks] = tablesOf(six, 'Story stick') as [Table, Table]
    for (const [i, opening] of column(sticks, 'opening').entries()) {
      const row = column(bays, 'opening').indexOf(opening)
      expect(column(bays, 'pickets')[row]).toBe(column(sticks, 'pickets')[i])
      const letter = column(sticks, 'stick')[i]
      expect(column(marks, `stick ${letter}`).filter((it) => it !== '')).toHaveLength(
        Number(column(sticks, 'pickets')[i]),
      )
    }
    // Right and garden have the same bays, so one stick serves both.
    expect(column(sticks, 'for')).toContain('right run, bays 1 to 9; garden run, bays 1 to 9')
  })

  it('has a sheet for each gate, with its leaf, its pickets and its brace', () => {
    // 42 − 3/8 − 1/2 = 41 1/8; less two stiles 34 1/8
    const lines = linesOf(six, 'Gate 1 of the front run')
    expect(lines).toEqual(
      expect.arrayContaining([
        'between posts: 4 (gate post) and 5 (gate post)',
        'leaf width: 41 1/8 in',
        'gap at the hinge side (usual, nobody said): 3/8 in',
        'inside width of the frame: 34 1/8 in',
        `pickets on each leaf, one at each edge: ${shownOf(plan, 'picketsEachGate', 'front/gate-1')}`,
      ]),
    )
    // A single leaf meets no other.
    expect(lines.join(' ')).not.toContain('where two leaves meet')
    expect(linesOf(six, 'Gate 1 of the left run').join(' ')).toContain('where two leaves meet')
  })

  it('has the take-off as its part wrote it', () => {
    const node = plan.node('takeOffLines', 'yard')
    const [list] = tablesOf(six, 'Shopping list') as [Table]
    const rows = node?.outcome.ok ? node.outcome.tables[0]?.rows : []
    expect(column(list, 'how many')).toEqual(rows?.map((it) => String(it[1])))
  })

  it('asks for what it lacks, and says what was taken as usual', () => {
    expect(linesOf(six, 'Plan').join(' ')).toMatch(/Still to settle.*How far does the first coat go/)
    const [usual] = tablesOf(six, 'Taken as usual') as [Table]
    expect(column(usual, 'what')).toContain('post width')
    expect(new Set(column(usual, 'what').map((it, i) => `${it}=${column(usual, 'taken')[i]}`)).size).toBe(
      column(usual, 'what').length,
    )
  })

  it('has every caution in full that its parts call for, the three that always stand first', () => {
    const lines = linesOf(six, 'Take care')
    expect(lines[0]).toMatch(/gas pipe or cable can kill/)
    expect(lines[1]).toMatch(/lot line/)
    expect(lines[2]).toMatch(/building office/)
    expect(lines.join(' ')).toMatch(/Wet concrete burns/)
    expect(lines.join(' ')).toMatch(/open hole/)
  })

  it('draws nothing that is no drawing', () => {
    for (const { title } of six.sheets)
      for (const svg of drawingsOf(six, title)) expect(wellFormed(svg), title).toBe(true)
  })
})

describe('the sticks at true size', () => {
  it('have each mark where the list has it, in millimetres', () => {
    for (const [told, system] of [
      [sixRuns, 'imperial'],
      [threeRuns, 'metric'],
    ] as const) {
      const pack = packFrom(told, system)
      const [sticks, marks] = tablesOf(pack, 'Story stick') as [Table, Table]
      for (const letter of column(sticks, 'stick').slice(0, 3)) {
        const sheet = pack.sheets.find((it) => it.title === `Story stick ${letter}, true size`)
        const block = sheet?.blocks[0]
        if (block?.kind !== 'full-size') throw new Error('no strip')
        const drawn = [
          ...block.svg.matchAll(/<line x1="([\d.]+)" y1="0" x2="\1" y2="36" stroke="#111" stroke-width="0.5"/g),
        ]
        const unit = system === 'metric' ? 1 : 25.4
        const listed = column(marks, `stick ${letter}`).filter((it) => it !== '')
        expect(drawn.map((it) => Number(it[1]))).toEqual(listed.map((it) => expect.closeTo(unit * inWhole(it), 2)))
        expect(block.wide).toBeGreaterThan(unit * inWhole(listed.at(-1) as string))
      }
    }
  })

  // 25.4 × 76 1/2 = 1943.1
  it('are as long as the opening', () => {
    const [block] = six.sheets.find((it) => it.title === 'Story stick A, true size')?.blocks ?? []
    expect(block?.kind === 'full-size' && block.wide).toBeCloseTo(1943.1, 5)
    expect(block?.kind === 'full-size' && block.svg).toContain('viewBox="0 0 1943.1 36"')
  })
})

/** “2 3/16”, “1,049”, “3/4”, as numbers. */
function inWhole(text: string): number {
  return text
    .replace(/,/g, '')
    .split(' ')
    .map((it) => it.split('/').map(Number))
    .reduce((sum, [over = 0, under = 1]) => sum + over / under, 0)
}

describe('the pack of three runs in millimetres', () => {
  const pack = packFrom(threeRuns, 'metric')

  it('has stations by the tape and exactly, from the wall', () => {
    const [front] = tablesOf(pack, 'Stations and holes') as [Table]
    expect(front.title).toBe('front run: from the wall')
    // Half a post from the wall.
    expect(column(front, 'exactly (mm)')[0]).toBe('45')
    expect(column(front, 'kind')[0]).toBe('end, at the wall')
    expect(pack.paper).toBe('a4')
  })

  it('says which corners were drawn square since nobody gave the angle', () => {
    expect(linesOf(pack, 'Plan').join(' ')).toMatch(
      /the front run: 100°, as told.*end of the right run: drawn square, 90°/,
    )
  })

  it('has the plumb cut where the rails follow the ground', () => {
    const [bays] = tablesOf(pack, 'Bays and pickets') as [Table]
    expect(column(bays, 'its ends').filter((it) => it !== '')).toEqual([
      shownOf(planFrom(jobOf(threeRuns, 'metric')), 'plumbCut', 'right/bay-1'),
    ])
    expect(linesOf(pack, 'Story stick').join(' ')).toContain('carry them plumb')
  })
})

describe('the calendar in the pack', () => {
  // Mon 1 call, 2 to 4 notice, Fri 5 and Sat 6 holes; 21 days from the call end on the 21st.
  it('has the parts of the job and the ticket', () => {
    expect(six.calendar.find((it) => it.what === 'holes')).toMatchObject({ first: '2026-06-05', last: '2026-06-06' })
    expect(six.calendar.find((it) => it.what === 'ticket runs out')).toMatchObject({ first: '2026-06-21' })
    expect(linesOf(six, 'Calendar').join(' ')).not.toContain('until after the ticket runs out')
  })

  // 9 days of holes end on Sat 13, a ticket of 9 days on Tue 9.
  it('says plainly when holes would be dug after the ticket has run out', () => {
    const late = packFrom({ ...sixRuns, digWork: '9 days', ticketLife: '9' })
    expect(linesOf(late, 'Calendar')[0]).toMatch(/go on until after the ticket runs out, Tuesday 9 June 2026/)
    expect(late.calendar.find((it) => it.what === 'ticket runs out')?.note).toMatch(/Renew it in time/)
  })

  it('is left out while no call is told', () => {
    const { callDate: _, ...quiet } = sixRuns
    expect(packFrom(quiet).sheets.map((it) => it.title)).not.toContain('Calendar')
    expect(packFrom(quiet).calendar).toEqual([])
  })
})

describe('the version of a plan', () => {
  const job = jobOf(sixRuns)
  const markOf = (of: typeof job): string | undefined => fieldPackOf(of, 0)?.version

  it('names the turn and a mark of what was decided', () => {
    expect(markOf(job)).toMatch(/^turn 1 · [0-9A-Z]{7}$/)
    expect(fieldPackOf(job, 4)?.version).toMatch(/^turn 5 · /)
  })

  it('changes with the plan, and comes back with it', () => {
    const wider = decide(job, decisionsOf({ picketWidth: '5 1/2 in' }, 1))
    expect(markOf(wider)).not.toBe(markOf(job))
    expect(markOf(undo(wider))).toBe(markOf(job))
    expect(markOf(redo(undo(wider)))).toBe(markOf(wider))
    // Told again as it was, in another order.
    expect(markOf(decide(wider, decisionsOf({ picketWidth: '3 1/2 in' }, 2)))).toBe(markOf(job))
  })
})

describe('a fence that is hardly told', () => {
  it('has no pack while no run is told', () => {
    expect(fieldPackOf(newJob, 0)).toBeUndefined()
    expect(fieldPackOf(jobOf({ holeDiameter: '10 in' }), 0)).toBeUndefined()
  })

  it('has a plan that asks, and the cautions', () => {
    const pack = packFrom({ 'runLength@front': '60 ft' })
    expect(pack.sheets.map((it) => it.title)).toEqual(['Plan', 'Taken as usual', 'Take care'])
    expect(linesOf(pack, 'Plan').join(' ')).toMatch(/☐ .*(apart|bay|posts)/)
  })

  it('says what cannot be', () => {
    const pack = packFrom({
      'runLength@front': '60 ft',
      widestBay: '8 ft',
      'gateOpening@front': '42 in',
      'gateStart@front': '70 ft',
    })
    expect(linesOf(pack, 'Plan').join(' ')).toMatch(
      /Look at this again: • The last gate starts at 70 ft and runs past the end/,
    )
  })
})

describe('whatever is told of a fence', () => {
  const names = ['front', 'right', 'back', 'left', 'lane', 'garden'] as const
  const one = <T>(...all: readonly T[]) => fc.constantFrom(...all)
  const run = fc.record(
    {
      runLength: fc.integer({ min: 2, max: 40 }).map((it) => `${it} m`),
      gates: one('1', '2'),
      slopeWay: one('stepped', 'raked'),
      fall: one('200 mm', '1 m'),
      cornerAngle: one('60 deg', '90 deg', '135 deg', '180 deg'),
      nearEnd: one('wall', 'outside', 'post'),
      farEnd: one('wall', 'outside', 'post'),
      archRise: one('100 mm', '200 mm'),
    },
    { requiredKeys: ['runLength'] },
  )
  const whole = fc.record(
    {
      widestBay: one('1.8 m', '2.4 m', '3 m'),
      runEnds: one('loop', 'walls', 'outside'),
      gateOpening: one('900 mm', '3 m'),
      picketWidth: one('70 mm', '90 mm', '140 mm'),
      widestGap: one('40 mm', '60 mm'),
      picketEnds: one('gap', 'picket'),
      picketLength: one('1 m', '1.2 m'),
      postAbove: one('1 m', '1.2 m', '1.8 m'),
      holeDiameter: one('250 mm', '300 mm'),
      bagWeight: one('20 kg', '25 kg'),
      insideHeight: one('700 mm'),
      braceWidth: one('70 mm'),
      memberWidth: one('90 mm'),
      callDate: one('2026-06-01'),
      noticeDays: one('2', '3'),
      ticketLife: one('10'),
      ticketCounts: one('calendar-from-call'),
    },
    { requiredKeys: [] },
  )

  it('gives a pack, whose posts are numbered alike on every sheet', () => {
    fc.assert(
      fc.property(
        fc.array(run, { minLength: 1, maxLength: 6 }),
        whole,
        one('imperial' as const, 'metric' as const),
        (runs, all, system) => {
          const told: Record<string, string> = { ...(all as Record<string, string>) }
          for (const [i, it] of runs.entries())
            for (const [word, text] of Object.entries(it)) told[`${word}@${names[i]}`] = text as string
          const job = { ...decide(newJob, decisionsOf(told, 0, system)), system }
          const pack = fieldPackOf(job, 0, newMemo()) as FieldPack
          expect(pack.sheets[0]?.title).toBe('Plan')
          expect(pack.sheets.at(-1)?.title).toBe('Take care')
          const { posts } = planFrom(job)
          const numbers = posts.map((it) => String(it.number))
          const stations = tablesOf(pack, 'Stations and holes').flatMap((it) => column(it, 'post'))
          expect([...new Set(stations)].sort()).toEqual([...numbers].sort())
          for (const table of tablesOf(pack, 'Post lengths and cut heights'))
            for (const number of column(table, 'post')) expect(numbers).toContain(number)
          for (const { blocks } of pack.sheets)
            for (const block of blocks) {
              if (block.kind === 'drawing' || block.kind === 'full-size') expect(wellFormed(block.svg)).toBe(true)
              if (block.kind === 'table')
                for (const row of block.table.rows) expect(row).toHaveLength(block.table.columns.length)
              expect(JSON.stringify(block)).not.toMatch(/undefined|NaN|\[object/)
            }
        },
      ),
      { numRuns: 60, seed: 11 },
    )
  })
})

it('sticks are lettered A to Z, then AA and on', () => {
  expect([0, 25, 26, 27, 51, 52, 77, 78].map(letterOf)).toEqual(['A', 'Z', 'AA', 'AB', 'AZ', 'BA', 'BZ', 'CA'])
})
