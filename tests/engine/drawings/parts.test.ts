// What pickets, posts and marks of a drawing tell when they are asked: the figures of the tables, in the units of whoever asks.
import { describe, expect, it } from 'vitest'
import { yardPlanDrawing } from '../../../engine/drawings/yard-plan.ts'
import { quantity } from '../../../engine/quantities/quantity.ts'
import { runNamed } from '../run-named.ts'
import { draw } from './draw.ts'

const told = (svg: string): string[] => [...svg.matchAll(/<g><title>([^<]*)<\/title>/g)].map((it) => it[1] as string)

describe('what a part of a drawing tells', () => {
  it('each picket of a bay has its mark, as the table of running marks has it', () => {
    const given = { opening: '70 5/8 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' }
    const parts = told(draw('picket-spacing', given))
    // gap 229/104 in; picket 5 begins at 5 × 229/104 + 4 × 3 1/2 = 25.0096 in: 25 in by the tape.
    expect(parts[4]).toBe('picket 5 of 12: left edge at 25 in from the face of the left post; 3 1/2 in wide')
    const { outcome } = runNamed('picket-spacing', given)
    const rows = outcome.ok ? (outcome.tables[0]?.rows ?? []) : []
    expect(rows).toHaveLength(12)
    rows.forEach(([, mark], i) => {
      expect(parts[i]).toContain(`at ${mark} in from`)
    })
    expect(parts.at(-1)).toContain('70 5/8 in')
  })

  it('a bay in millimetres tells millimetres', () => {
    const parts = told(
      draw('picket-spacing', { opening: '2400 mm', picketWidth: '70 mm', widestGap: '30 mm' }, { system: 'metric' }),
    )
    // 28.8 + 70 = 98.8: picket 2 begins at 28.8 + 98.8 = 127.6 mm, 128 by the tape.
    expect(parts[1]).toBe('picket 2 of 24: left edge at 128 mm from the face of the left post; 70 mm wide')
    expect(parts.join()).not.toMatch(/\d in\b/)
  })

  it('each post of a run has its station, and a gate post says that it is one', () => {
    // The post at the end of a strip stands at the beginning of the next one too.
    const parts = [...new Set(told(draw('bays-in-run', { runLength: '48 ft', widestBay: '8 ft' })))]
    expect(parts).toHaveLength(7)
    expect(parts[3]).toBe('post 4 of 7: centre at 24 ft from the start')
    const withGate = told(
      draw('bays-in-run', { runLength: '40 ft', widestBay: '8 ft', gates: '1', gateOpening: '42 in' }),
    )
    expect(new Set(withGate.filter((it) => it.startsWith('gate post'))).size).toBe(2)
  })

  it('posts of a whole fence say their kind, their number and where they stand', () => {
    const at = (feet: number) => quantity(feet, 'ft')
    const parts = told(
      yardPlanDrawing({
        runs: [
          {
            name: 'the front run',
            length: '16 ft',
            posts: [
              { number: 1, kind: 'end', station: at(0) },
              { number: 2, kind: 'line', station: at(8) },
              { number: 3, kind: 'corner', station: at(16) },
            ],
            gates: [],
            corner: quantity(90, 'deg'),
            meetsNext: false,
            walls: { near: false, far: false },
          },
        ],
        isClosed: false,
        system: 'imperial',
        isFor: 'building',
      }),
    )
    expect(parts).toEqual([
      'end post 1: 0 ft along the front run',
      'line post 2: 8 ft along the front run',
      'corner post 3: 16 ft along the front run',
    ])
  })

  it('each rail tells how high its top edge is', () => {
    const parts = told(
      draw('rail-heights', {
        picketLength: '48 in',
        footGap: '2 in',
        overTop: '6 in',
        underBottom: '6 in',
        rails: '3',
      }),
    )
    // Top rail's edge: 2 + 48 − 6 = 44 in. The bottom rail's stands its depth over 2 + 6; the middle one half between.
    expect(parts[0]).toBe('rail 1 of 3: its top edge 44 in from the ground')
    expect(parts).toHaveLength(3)
  })

  it('of more pickets than anybody asks one by one none tells anything', () => {
    const parts = told(draw('picket-spacing', { opening: '190 in', picketWidth: '1 in', widestGap: '1/4 in' }))
    expect(parts.filter((it) => it.startsWith('picket'))).toEqual([])
  })
})
