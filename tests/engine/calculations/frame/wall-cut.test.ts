import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

const cut = (given: Record<string, string>) => runNamed('leaning-wall-cut', given)

describe('a rail cut against a leaning wall', () => {
  // Square in plan the wall's lean and the rail's slope add up: 5 + 20 = 25 uphill, 5 − 20 = −15 downhill, 5 − 5 = 0.
  it('a rail that falls takes its slope off the lean, and the longer edge changes', () => {
    const up = cut({ wallLean: '5 deg', railPitch: '20 deg', railGoes: 'up' })
    expect(up.shown.wallMiter).toBe('25°')
    expect(up.said).toContain('top edge comes out the longer')
    const down = cut({ wallLean: '5 deg', railPitch: '20 deg', railGoes: 'down' })
    expect(down.shown.wallMiter).toBe('15°')
    expect(down.said).toContain('bottom edge comes out the longer')
    expect(down.outcome.ok && down.outcome.drawing).toContain('longest at its bottom edge')
    expect(cut({ wallLean: '5 deg', railPitch: '5 deg', railGoes: 'down' }).shown.wallMiter).toBe('0°')
  })

  it('asks which way a sloping rail goes, and does not ask it of a level one', () => {
    expect(cut({ wallLean: '5 deg', railPitch: '20 deg' }).said).toContain('missing railGoes')
    expect(cut({ wallLean: '5 deg' }).outcome.ok).toBe(true)
  })
})
