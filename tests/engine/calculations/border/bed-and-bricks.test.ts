import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

const modular = { brickLength: '7 5/8 in', brickWidth: '3 5/8 in', brickHeight: '2 1/4 in' }

describe('the bed of the strip', () => {
  it('soil alone asks for no base, and base alone for no depth dug', () => {
    const strip = { edgeRun: '50 ft', edgeWidth: '9 in' }
    const soil = runNamed('strip-bed', { ...strip, spoilDepth: '6 in' }, { wanted: ['soilOut', 'barrows'] })
    expect(soil.shown).toEqual({ soilOut: '0.8681 yd³', barrows: '8 loads' })
    const base = runNamed('strip-bed', { ...strip, baseDepth: '4 in' }, { wanted: ['baseToBuy', 'baseWeight'] })
    expect(base.shown).toEqual({ baseToBuy: '0.5324 yd³', baseWeight: '0.7188 tons' })
    if (!base.outcome.ok || !soil.outcome.ok) throw new Error('must be ok')
    // Usual values that nothing wanted hangs on are not read out.
    expect([...base.outcome.given.keys()]).not.toContain('soilSwell')
    expect([...soil.outcome.given.keys()]).not.toContain('sandDensity')
  })

  it('refuses a bed that leaves no room for bricks', () => {
    const bed = { baseDepth: '4 in', sandDepth: '1 in' }
    expect(runNamed('strip-bed', { ...bed, spoilDepth: '5 in' }).said).toContain('leave no room for bricks')
    expect(runNamed('strip-bed', { ...bed, spoilDepth: '4 in' }).said).toContain('are more than')
    expect(runNamed('strip-bed', { ...bed, spoilDepth: '7 1/4 in' }).shown.brickRoom).toBe('2 1/4 in')
  })
})

describe('how bricks lie', () => {
  it.each([
    ['end-to-end', '7 5/8 in'],
    ['across', '3 5/8 in'],
    ['on-edge', '2 1/4 in'],
    ['edge-to-end', '7 5/8 in'],
    ['on-end', '3 5/8 in'],
  ])('%s puts %s along the edge, as if it had been said', (brickLies, side) => {
    const byLie = runNamed('brick-edge', { edgeRun: '50 ft', brickLies, ...modular })
    expect(byLie.shown).toEqual(runNamed('brick-edge', { edgeRun: '50 ft', brickAlong: side }).shown)
    expect(byLie.said).toContain(`The side along the edge is ${side}`)
  })

  it('needs only the size that lies along the edge, and asks for that one', () => {
    expect(runNamed('brick-edge', { edgeRun: '50 ft', brickLies: 'on-edge' }).said).toContain('missing brickHeight')
    expect(runNamed('brick-edge', { edgeRun: '50 ft', brickLength: '8 in' }).said).toContain('missing brickLies')
    expect(runNamed('brick-edge', { edgeRun: '50 ft' }).said).toContain('missing brickAlong')
  })

  it('a side said outright wins, and a disagreement is shown', () => {
    const { shown, said } = runNamed('brick-edge', {
      edgeRun: '50 ft',
      brickAlong: '4 in',
      brickLies: 'on-edge',
      ...modular,
    })
    expect(shown).toEqual(runNamed('brick-edge', { edgeRun: '50 ft', brickAlong: '4 in' }).shown)
    expect(said).toContain('I went by 4 in')
  })

  it('says that 8 in with a joint is a brick’s name, and what such a brick measures', () => {
    expect(runNamed('brick-edge', { edgeRun: '50 ft', brickAlong: '8 in' }).said).toContain('measures 7 5/8 in')
    expect(runNamed('brick-edge', { edgeRun: '50 ft', brickAlong: '8 in', brickJoint: '0 in' }).said).not.toContain(
      'measures 7 5/8 in',
    )
    expect(runNamed('brick-edge', { edgeRun: '50 ft', brickAlong: '7 5/8 in' }).said).not.toContain('is what a side')
  })
})
