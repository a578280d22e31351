import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

const hours = (cureTemperature: string, more: Record<string, string> = {}): number => {
  const { outcome } = runNamed(
    'concrete-wait',
    { gateWait: '96 h', bagTemperature: '20 C', cureTemperature, ...more },
    { system: 'metric' },
  )
  if (!outcome.ok) throw new Error('must be ok')
  return Number((outcome.values.get('gateUp') as { amount: { valueOf(): number } }).amount.valueOf()) * 24
}

describe('waiting for concrete', () => {
  // (20 − 0)/(10 − 0) = 2: 96 h become 192 h
  it('half as warm above the datum takes twice as long', () => {
    expect(hours('10 C')).toBe(192)
  })

  it('never waits less than the bag says, however warm it is', () => {
    for (const warm of ['20 C', '25 C', '38 C']) expect(hours(warm)).toBe(96)
    expect(
      runNamed('concrete-wait', { gateWait: '4 days', bagTemperature: '20 C', cureTemperature: '30 C' }).said,
    ).toContain('Nothing is taken off for that')
  })

  it('a colder place never waits less than a warmer one', () => {
    let before = Number.POSITIVE_INFINITY
    for (let t = 3; t <= 25; t++) {
      const now = hours(`${t} C`)
      expect(now).toBeLessThanOrEqual(before)
      before = now
    }
  })

  // Temperature-adjusted age of EN 1992-1-1, annex B (from memory): e^(4000/293 − 4000/(273 + T)) hours at 20 °C for one hour at T.
  // A law of another shape, and no check of the figure: ours must only be the longer wait of the two in the cold.
  it('waits at least as long in the cold as the Eurocode’s adjusted age would', () => {
    for (let t = 3; t <= 20; t++)
      expect(hours(`${t} C`)).toBeGreaterThanOrEqual(96 * Math.exp(4000 / (273 + t) - 4000 / 293) - 1e-9)
  })

  it('gives no time at or below freezing, and none near the datum, and never calls anything safe', () => {
    const told = { gateWait: '4 days', bagTemperature: '20 C' }
    for (const cold of ['0 C', '-3 C', '32 F', '28 F'])
      expect(runNamed('concrete-wait', { ...told, cureTemperature: cold }).said).toContain('fresh concrete freezes')
    expect(runNamed('concrete-wait', { ...told, cureTemperature: '34 F' }).said).toContain('within 4 °F of the datum')
    expect(
      runNamed('concrete-wait', { ...told, cureTemperature: '1 C', datumTemperature: '-10 C' }, { system: 'metric' })
        .said,
    ).toContain('hangs on every degree')
    for (const t of ['3 C', '8 C', '25 C'])
      expect(runNamed('concrete-wait', { ...told, cureTemperature: t }).said).not.toMatch(/\bsafe/i)
  })

  it('asks for the bag’s figure when there is none', () => {
    const { outcome } = runNamed('concrete-wait', { cureTemperature: '50 F' }, { wanted: ['gateUp'] })
    const asked = outcome.ok ? outcome.doubts : outcome.problems
    expect(asked.map((it) => [it.code, it.word])).toEqual([['missing', 'gateWait']])
  })

  it('asks again about forty minutes before a gate: that is a time of setting', () => {
    expect(runNamed('concrete-wait', { gateWait: '40 minutes', cureTemperature: '60 F' }).said).toContain(
      'implausible gateWait',
    )
  })
})
