// Slopes, corners, curves, a moved post: laws and refusals. The figures against the outside are in tests/evidence/checks/layout.ts.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isQuantity, numberIn } from '../../../../engine/quantities/quantity.ts'
import { runNamed } from '../../run-named.ts'

const figure = (ran: ReturnType<typeof runNamed>, word: string, unit: string): number => {
  const value = ran.outcome.ok ? ran.outcome.values.get(word) : undefined
  if (!isQuantity(value)) throw new Error(ran.said)
  return numberIn(value, value.kind === 'count' ? value.unit : unit)
}

describe('a stepped run', () => {
  it('steps add back up to the fall, bays to the distance, and no bay is too wide', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 120 }),
        fc.integer({ min: 10, max: 200 }),
        fc.integer({ min: 4, max: 10 }),
        (fall, distance, widest) => {
          const ran = runNamed('stepped-run', {
            fall: `${fall} in`,
            levelDistance: `${distance} ft`,
            widestBay: `${widest} ft`,
          })
          const bays = figure(ran, 'slopeBays', 'bay')
          expect(bays * figure(ran, 'stepEach', 'in')).toBeCloseTo(fall, 9)
          expect(bays * figure(ran, 'bayCentres', 'ft')).toBeCloseTo(distance, 9)
          expect(figure(ran, 'bayCentres', 'ft')).toBeLessThanOrEqual(widest + 1e-9)
        },
      ),
    )
  })

  // 48 ft in 6 bays are 8 ft each, in 5 bays 9 3/5 ft.
  it('so many bays as were told are taken, and said to be wider than was allowed', () => {
    const given = { fall: '22 in', levelDistance: '48 ft', widestBay: '8 ft' }
    const six = runNamed('stepped-run', { ...given, slopeBays: '6' })
    expect(six.shown).toMatchObject({ stepEach: '3 2/3 in', bayCentres: '8 ft' })
    expect(six.said).not.toContain('you allowed')
    const five = runNamed('stepped-run', { ...given, slopeBays: '5' })
    expect(five.shown.stepEach).toBe('4 2/5 in')
    expect(five.said).toContain('you allowed 8 ft at most')
  })

  it('asks how wide a bay may be where neither that nor their number is known', () => {
    const { outcome } = runNamed('stepped-run', { fall: '22 in', levelDistance: '48 ft' })
    expect(outcome.ok ? [] : outcome.problems.map((it) => it.word)).toEqual(['widestBay'])
  })

  it('a gap just at the limit holds, a hair more does not', () => {
    const given = { fall: '24 in', levelDistance: '48 ft', widestBay: '8 ft', highEndGap: '2 in' }
    expect(runNamed('stepped-run', { ...given, widestUnder: '6 in' }).shown.underHolds).toBe('true')
    expect(runNamed('stepped-run', { ...given, widestUnder: '5 15/16 in' }).shown.underHolds).toBe('false')
    expect(runNamed('stepped-run', given).shown.underHolds).toBeUndefined()
  })
})

describe('a raked run', () => {
  it('on level ground the rail is the opening and the cut is square', () => {
    const ran = runNamed('raked-run', { slope: '0 %', bayCentres: '8 ft', postWidth: '3 1/2 in' })
    expect(figure(ran, 'rakedRail', 'in')).toBeCloseTo(92.5, 9)
    expect(figure(ran, 'plumbCut', 'deg')).toBeCloseTo(0, 9)
  })

  it('posts as wide as the bay are refused', () => {
    expect(
      runNamed(
        'raked-run',
        { slope: '5 %', bayCentres: '3 1/2 in', postWidth: '3 1/2 in' },
        { confirmed: ['bayCentres'] },
      ).said,
    ).toContain('leave nothing between')
  })
})

describe('posts to a string', () => {
  it('stock that is too short is said so, and for which post', () => {
    const ran = runNamed('post-heights', {
      groundReadings: ['48 in', '60 in'],
      embedment: '30 in',
      stockLength: '7 ft',
    })
    expect(ran.said).toContain('too short for the longest')
    expect(ran.outcome.ok && ran.outcome.tables[0]?.rows.map((row) => row.at(-1))).toEqual(['6 in', 'too short'])
  })
})

describe('corners and curves', () => {
  it('a square corner is mitred at 45° and butted square', () => {
    expect(runNamed('corner-post', { cornerAngle: '90 deg' }).shown).toMatchObject({ miterCut: '45°', buttCut: '0°' })
  })

  it('a corner too sharp for a post is refused', () => {
    expect(runNamed('corner-post', { cornerAngle: '10 deg' }, { confirmed: ['cornerAngle'] }).said).toContain(
      'too sharp to frame',
    )
  })

  it('bays round a curve add up to nearly its length, and never to more', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 200 }),
        fc.integer({ min: 5, max: 50 }),
        fc.integer({ min: 4, max: 8 }),
        (radius, length, widest) => {
          const ran = runNamed('curve-by-chords', {
            curveRadius: `${radius} ft`,
            curveLength: `${length} ft`,
            widestBay: `${widest} ft`,
          })
          const straight = figure(ran, 'chords', 'bay') * figure(ran, 'chord', 'ft')
          expect(straight).toBeLessThan(length)
          expect(straight).toBeGreaterThan(length * 0.95)
        },
      ),
    )
  })

  it('a curve longer than once round is refused', () => {
    expect(
      runNamed('curve-by-chords', { curveRadius: '10 ft', curveLength: '70 ft', widestBay: '6 ft' }).said,
    ).toContain('closes on itself')
  })

  it('a post moved into its neighbor is refused', () => {
    expect(runNamed('moved-post', { bayBeforePost: '30 in', postMoved: '27 in' }).said).toContain(
      'runs into its neighbor',
    )
  })

  it('what one bay gains the other loses', () => {
    const ran = runNamed('moved-post', { bayBeforePost: '96 in', postMoved: '7 3/16 in' })
    expect(figure(ran, 'longerBay', 'in') + figure(ran, 'shorterBay', 'in')).toBe(192)
  })

  it('pickets and gaps fill both new openings, and no gap is over the limit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 24 }), fc.integer({ min: 2, max: 5 }), (moved, widest) => {
        const ran = runNamed('moved-post', {
          bayBeforePost: '96 in',
          postMoved: `${moved} in`,
          picketWidth: '3 1/2 in',
          widestGap: `${widest} in`,
        })
        for (const [count, gap, opening] of [
          ['longerPickets', 'longerGap', 'longerOpening'],
          ['shorterPickets', 'shorterGap', 'shorterOpening'],
        ] as const) {
          const [n, g] = [figure(ran, count, 'picket'), figure(ran, gap, 'in')]
          expect(n * 3.5 + (n + 1) * g).toBeCloseTo(figure(ran, opening, 'in'), 9)
          expect(g).toBeLessThanOrEqual(widest)
        }
      }),
    )
  })

  it('a board just as long as the longer opening reaches, a hair less does not', () => {
    // 96 + 5 − 3 1/2 = 97 1/2
    const given = { bayBeforePost: '96 in', postMoved: '5 in' }
    expect(runNamed('moved-post', { ...given, stockLength: '97 1/2 in' }).shown.stockReaches).toBe('true')
    expect(runNamed('moved-post', { ...given, stockLength: '97 7/16 in' }).shown.stockReaches).toBe('false')
    expect(runNamed('moved-post', given).shown.stockReaches).toBeUndefined()
  })

  it('a miter that the saw does not reach comes with what to do instead', () => {
    const said = (given: Record<string, string>): string => runNamed('corner-post', given).said
    expect(said({ cornerAngle: '90 deg' })).not.toContain('no further')
    expect(said({ cornerAngle: '89 deg' })).toContain('no further than 45°. Instead let one rail run through')
    expect(said({ cornerAngle: '75 deg', sawReach: '60 deg' })).not.toContain('no further')
    // |90 − 40| = 50 is past 45 as well
    expect(said({ cornerAngle: '40 deg' })).toContain('out of its reach too')
    expect(
      runNamed('leaning-wall-cut', { wallLean: '8 deg', planAngle: '40 deg', sawReach: '50 deg' }).said,
    ).not.toContain('by hand')
  })

  it('a curve of more than half a circle is not set out from one string', () => {
    const ran = runNamed('curve-by-chords', { curveRadius: '10 ft', curveLength: '50 ft', widestBay: '6 ft' })
    expect(ran.shown.longChord).toBeUndefined()
    expect(ran.said).toContain('more than half a circle')
    expect(ran.outcome.ok && ran.outcome.tables[0]?.columns).toHaveLength(2)
  })
})
