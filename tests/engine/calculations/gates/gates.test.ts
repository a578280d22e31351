// Gates: what is refused, what is said, and laws. The figures against the outside are in tests/evidence/checks/gates.ts.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isQuantity, numberIn } from '../../../../engine/quantities/quantity.ts'
import { runNamed } from '../../run-named.ts'

const inches = (ran: ReturnType<typeof runNamed>, word: string): number => {
  const value = ran.outcome.ok ? ran.outcome.values.get(word) : undefined
  if (!isQuantity(value)) throw new Error(ran.said)
  return numberIn(value, 'in')
}

describe('a leaf', () => {
  it('gaps and leaves add back up to the opening, single and double', () => {
    const sixteenths = (least: number, most: number) => fc.integer({ min: least * 16, max: most * 16 })
    fc.assert(
      fc.property(
        sixteenths(24, 140),
        sixteenths(0, 2),
        sixteenths(0, 2),
        fc.boolean(),
        (opening, hinge, other, isDouble) => {
          const given = {
            gateOpening: `${opening}/16 in`,
            gateLeaves: isDouble ? 'double' : 'single',
            hingeGap: `${hinge}/16 in`,
            latchGap: `${other}/16 in`,
            meetingGap: `${other}/16 in`,
          }
          const leaf = inches(runNamed('gate-leaf', given, { confirmed: ['gateOpening'] }), 'leafWidth')
          const sum = isDouble ? 2 * hinge + other + 2 * leaf * 16 : hinge + other + leaf * 16
          expect(sum).toBeCloseTo(opening, 6)
        },
      ),
    )
  })

  it('an opening that the hardware fills is refused', () => {
    const { said } = runNamed(
      'gate-leaf',
      { gateOpening: '2 in', hingeGap: '1 in', latchGap: '1 in' },
      { confirmed: ['gateOpening'] },
    )
    expect(said).toContain('The hardware takes 2 in, and the opening is 2 in, so no leaf is left.')
  })

  it('a leaf wider than tall is worked, and said to be weak', () => {
    expect(runNamed('gate-leaf', { gateOpening: '60 in', leafHeight: '40 in' }).said).toContain('wider')
  })
})

describe('the inside of a frame', () => {
  // 36 − 7 = 29 across; how tall the leaf is was not told, and is asked for only where it is wanted.
  it('is worked across where only the width of the leaf is known', () => {
    const { shown } = runNamed(
      'inside-of-frame',
      { leafWidth: '36 in', memberWidth: '3 1/2 in' },
      { wanted: ['insideWidth'] },
    )
    expect(shown).toEqual({ insideWidth: '29 in' })
  })

  // 2 × 10 = 20 is all of 20, and leaves nothing; 2 × 9 15/16 = 19 7/8 leaves 1/8.
  it('is refused where the frame fills the leaf', () => {
    const narrow = { leafWidth: '20 in', leafHeight: '48 in' }
    const sure = { confirmed: ['memberWidth'] }
    expect(runNamed('inside-of-frame', { ...narrow, memberWidth: '10 in' }, sure).said).toContain(
      'Two frame members of 10 in leave nothing inside a leaf of 20 in.',
    )
    expect(runNamed('inside-of-frame', { ...narrow, memberWidth: '9 15/16 in' }, sure).shown.insideWidth).toBe('1/8 in')
  })
})

describe('a brace', () => {
  it('always runs from the bottom hinge to the top latch, and that is always said', () => {
    const { said } = runNamed('gate-brace', { insideWidth: '36 in', insideHeight: '40 in' })
    expect(said).toContain('bottom corner at the hinges up to the top corner at the latch')
  })

  it('one that lies flatter than 45° is said to hold less, one that stands steeper is not', () => {
    expect(runNamed('gate-brace', { insideWidth: '60 in', insideHeight: '36 in' }).said).toContain('flatter than 45°')
    expect(runNamed('gate-brace', { insideWidth: '30 in', insideHeight: '36 in' }).said).not.toContain('flatter')
  })

  it('stock as wide as the frame is refused', () => {
    expect(runNamed('gate-brace', { insideWidth: '12 in', insideHeight: '30 in', braceWidth: '12 in' }).said).toContain(
      'does not lie across',
    )
  })

  it('a wider brace stands steeper', () => {
    const angle = (stock: string): number => {
      const { outcome } = runNamed('gate-brace', { insideWidth: '36 in', insideHeight: '30 in', braceWidth: stock })
      const value = outcome.ok ? outcome.values.get('braceAngle') : undefined
      return isQuantity(value) ? numberIn(value, 'deg') : Number.NaN
    }
    expect(angle('5 1/2 in')).toBeGreaterThan(angle('3 1/2 in'))
    expect(angle('3 1/2 in')).toBeGreaterThan(angle('1 1/2 in'))
  })
})

describe('sag, swing and lean', () => {
  it('equal diagonals are square: nothing to take up', () => {
    const ran = runNamed('gate-sag', { tieDiagonal: '58 in', strutDiagonal: '58 in', leafHeight: '40 in' })
    expect(ran.shown).toMatchObject({ latchDrop: '0 in', takeUp: '0 in' })
    expect(ran.said).toContain('the leaf is square')
  })

  it('the other diagonal the longer: it stands high, and the names are questioned', () => {
    const { said } = runNamed('gate-sag', { tieDiagonal: '57 in', strutDiagonal: '58 in', leafHeight: '40 in' })
    expect(said).toContain('has not sagged')
    expect(said).toContain('named the right way round')
  })

  it('a diagonal shorter than the leaf is tall is refused', () => {
    expect(runNamed('gate-sag', { tieDiagonal: '38 in', strutDiagonal: '39 in', leafHeight: '40 in' }).said).toContain(
      'must be longer',
    )
  })

  it('a gap just as high as the rise drags; a hair more clears', () => {
    const given = { leafWidth: '50 in', slope: '4 %' }
    expect(runNamed('gate-swing', { ...given, gateGapBelow: '2 in' }).shown.gateClears).toBe('false')
    expect(runNamed('gate-swing', { ...given, gateGapBelow: '2 1/16 in' }).shown.gateClears).toBe('true')
  })

  it('a plumb post moves nothing', () => {
    expect(
      runNamed('gate-post-lean', { outOfPlumb: '0 in', plumbOver: '4 ft', leafWidth: '40 in' }).shown.latchMove,
    ).toBe('0 in')
  })
})
