// In which order the runs of a fence stand, whichever way they are told, where they meet, and at which end a wall is. Common practice, no source.
import { describe, expect, it } from 'vitest'
import { fenceOf } from '../../../engine/job/fence.ts'
import { jobOf, type Told } from './fences.ts'

const everyOrder = (all: readonly string[]): string[][] =>
  all.length < 2
    ? [[...all]]
    : all.flatMap((it) => everyOrder(all.filter((other) => other !== it)).map((rest) => [it, ...rest]))
const told = (places: readonly string[], more: Told = {}) =>
  fenceOf(jobOf({ ...Object.fromEntries(places.map((it) => [`runLength@${it}`, '20 ft'])), ...more }))
const placesOf = (places: readonly string[], more: Told = {}): string[] => told(places, more).runs.map((it) => it.place)

const rings = [
  ['left', 'front', 'right', 'back'],
  ['west', 'north', 'east', 'south'],
]

describe('sides of a yard', () => {
  it('three of them stand as one walks round, and are open where the fourth would be', () => {
    for (const ring of rings)
      for (const [i, missing] of ring.entries()) {
        const walked = [1, 2, 3].map((step) => ring[(i + step) % 4])
        for (const order of everyOrder(ring.filter((it) => it !== missing))) {
          const { runs } = told(order)
          expect(runs.map((it) => it.place)).toEqual(walked)
          expect(runs.map((it) => it.meetsNext)).toEqual([true, true, false])
        }
      }
  })

  it('all four meet each the next, from the one that was told first, in whatever order they are told', () => {
    for (const ring of rings)
      for (const order of everyOrder(ring)) {
        const { runs } = told(order, { runEnds: 'loop' })
        const places = runs.map((it) => it.place)
        expect(places[0]).toBe(order[0])
        expect(
          runs.map((it) => it.meetsNext),
          order.join(),
        ).toEqual([true, true, true, true])
        const steps = places.map((it, at) => (ring.indexOf(places[(at + 1) % 4] as string) - ring.indexOf(it) + 4) % 4)
        expect(new Set(steps).size, order.join()).toBe(1)
        // Told as one walks, either way round, they stand as they were told.
        const isWalked = order.every(
          (it, at) => Math.abs(ring.indexOf(it) - ring.indexOf(order[(at + 1) % 4] as string)) % 2 === 1,
        )
        if (isWalked) expect(places).toEqual(order)
      }
  })

  it('without a loop the last meets nothing', () =>
    expect(told(['left', 'front', 'right', 'back']).runs.map((it) => it.meetsNext)).toEqual([true, true, true, false]))

  it('two stand as they were told: the front and the back meet nowhere', () => {
    expect(told(['back', 'front']).runs.map((it) => [it.place, it.meetsNext])).toEqual([
      ['back', false],
      ['front', false],
    ])
    expect(told(['right', 'front']).runs.map((it) => [it.place, it.meetsNext])).toEqual([
      ['right', true],
      ['front', false],
    ])
  })

  it('of two rings, or of any other name, stand as they were told', () => {
    expect(placesOf(['right', 'north', 'left'])).toEqual(['right', 'north', 'left'])
    expect(placesOf(['lane', 'left', 'front', 'right'])).toEqual(['lane', 'left', 'front', 'right'])
  })
})

describe('a wall at the end of a side', () => {
  const ends = (places: readonly string[], more: Told): string[] =>
    told(places, more).runs.map((it) => `${it.place} ${it.nearEnd} ${it.farEnd}`)

  it('is at the end that meets no other, whichever way it was told', () => {
    const open = ['left wall post', 'front post post', 'right post wall']
    for (const [near, far] of [
      ['nearEnd', 'farEnd'],
      ['farEnd', 'nearEnd'],
      ['farEnd', 'farEnd'],
      ['nearEnd', 'nearEnd'],
    ])
      expect(ends(['left', 'front', 'right'], { [`${near}@left`]: 'wall', [`${far}@right`]: 'wall' })).toEqual(open)
  })

  it('at both ends stays at both', () =>
    expect(ends(['left', 'front'], { 'nearEnd@left': 'wall', 'farEnd@left': 'wall' })).toEqual([
      'left wall wall',
      'front post post',
    ]))

  it('of a side in the middle, or of sides that meet nowhere, stays where it was told', () => {
    expect(ends(['left', 'front', 'right'], { 'farEnd@front': 'wall' })[1]).toBe('front post wall')
    expect(ends(['front', 'back'], { 'farEnd@front': 'wall', 'nearEnd@back': 'wall' })).toEqual([
      'front post wall',
      'back wall post',
    ])
  })

  it('parts what would meet', () =>
    expect(told(['left', 'front', 'right'], { 'farEnd@front': 'wall' }).runs.map((it) => it.meetsNext)).toEqual([
      true,
      false,
      false,
    ]))

  it('of all ends is at the two free ones, and of one run at both of its own', () => {
    expect(ends(['left', 'front', 'right'], { runEnds: 'walls' })).toEqual([
      'left wall post',
      'front post post',
      'right post wall',
    ])
    expect(ends(['left', 'front', 'right'], { 'runEnds@front': 'walls' })[1]).toBe('front wall wall')
    expect(ends(['left', 'front'], { runEnds: 'outside' })).toEqual(['left outside outside', 'front outside outside'])
  })
})

describe('gates told of a run', () => {
  const gates = (more: Told) => told(['front', 'right'], more).runs[0]?.gates.map((it) => it.place)

  it.each<[Told, readonly string[]]>([
    [{}, []],
    [{ 'gates@front': '2' }, ['front/gate-1', 'front/gate-2']],
    [{ 'gateOpening@front': '42 in' }, ['front/gate-1']],
    [{ 'gateStart@front': '10 ft' }, ['front/gate-1']],
    [{ 'gates@front': '1', 'gateStart@front/gate-3': '10 ft' }, ['front/gate-1', 'front/gate-2', 'front/gate-3']],
    [{ 'gates@front': '0', 'gateOpening@front': '42 in' }, []],
    [{ 'gateOpening@right': '42 in' }, []],
    [{ 'gates@front': '3', 'leftOut@front/gate-2': 'out' }, ['front/gate-1', 'front/gate-3']],
  ])('%j: %j', (more, places) => expect(gates(more)).toEqual(places))

  it('have the opening said of the gate, else of the run, else of all; a start said of the run only where it is alone', () => {
    const all = { gateOpening: '36 in', 'gateOpening@front': '42 in', 'gateOpening@front/gate-2': '48 in' }
    const [one, two] = told(['front'], { 'gates@front': '2', ...all, 'gateStart@front': '10 ft' }).runs[0]?.gates ?? []
    expect([one?.opening?.at, two?.opening?.at]).toEqual(['front', 'front/gate-2'])
    expect([one?.start, two?.start]).toEqual([undefined, undefined])
    const [right] =
      told(['front', 'right'], { 'gates@right': '1', gateOpening: '36 in', 'gateStart@right': '4 ft' }).runs[1]
        ?.gates ?? []
    expect([right?.opening?.at, right?.start?.at]).toEqual(['yard', 'right'])
  })
})

describe('runs told by more than their length', () => {
  const places = (more: Told): string[] => fenceOf(jobOf(more)).runs.map((it) => it.place)

  it('stand in the order of their lengths, whatever else was told before', () => {
    const lengths = { 'runLength@front': '20 ft', 'runLength@right': '20 ft' }
    expect(places({ 'gateOpening@right': '42 in', ...lengths })).toEqual(['front', 'right'])
    expect(
      places({ 'gateOpening@right': '42 in', 'runPieces@front': '20 ft; 10 ft', 'runLength@right': '20 ft' }),
    ).toEqual(['front', 'right'])
    expect(places({ 'gateOpening@right': '42 in', 'runLength@front': '20 ft' })).toEqual(['front', 'right'])
  })

  it('that were left out do not stand', () => {
    const both = { 'runLength@front': '20 ft', 'runLength@right': '20 ft' }
    expect(places({ ...both, 'leftOut@front': 'out' })).toEqual(['right'])
    expect(places({ ...both, 'leftOut@right': 'in' })).toEqual(['front', 'right'])
  })
})
