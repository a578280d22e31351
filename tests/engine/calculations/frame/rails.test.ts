// Rails that sag, and rails across the posts: laws and refusals. The figures against the outside are in tests/evidence/checks/frame.ts.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isQuantity, numberIn } from '../../../../engine/quantities/quantity.ts'
import { runNamed } from '../../run-named.ts'

const figure = (ran: ReturnType<typeof runNamed>, word: string, unit: string): number => {
  const value = ran.outcome.ok ? ran.outcome.values.get(word) : undefined
  if (!isQuantity(value)) throw new Error(ran.said)
  return numberIn(value, value.kind === 'count' ? value.unit : unit)
}
const rowsOf = (ran: ReturnType<typeof runNamed>): readonly (readonly (string | number)[])[] => {
  if (!ran.outcome.ok) throw new Error(ran.said)
  return ran.outcome.tables[0]?.rows ?? []
}

describe('a rail that sags', () => {
  const rail = {
    opening: '92 1/2 in',
    railDepth: '3 1/2 in',
    railThickness: '1 1/2 in',
    woodStiffness: '1.4 million psi',
    leanWeight: '150 lb',
  }

  it('gives down when laid flat what it gives sideways on edge, and the other way about', () => {
    const [edge, flat] = ['edge', 'flat'].map((railLies) => runNamed('rail-sag', { ...rail, railLies })) as [
      ReturnType<typeof runNamed>,
      ReturnType<typeof runNamed>,
    ]
    expect(flat.shown.leanSag).toBe(edge.shown.pushBow)
    expect(flat.shown.pushBow).toBe(edge.shown.leanSag)
    // (3 1/2 / 1 1/2)² = 49/9 = 5.44
    expect(figure(flat, 'ownSag', 'in') / figure(edge, 'ownSag', 'in')).toBeCloseTo(49 / 9, 9)
    expect(flat.said).toContain('You say it lies flat')
    expect(edge.said).not.toContain('You say')
  })

  it('twice the span sags sixteen times by itself, and eight times under a person', () => {
    const [short, long] = ['48 in', '96 in'].map((opening) => runNamed('rail-sag', { ...rail, opening })) as [
      ReturnType<typeof runNamed>,
      ReturnType<typeof runNamed>,
    ]
    expect(figure(long, 'ownSag', 'in') / figure(short, 'ownSag', 'in')).toBeCloseTo(16, 9)
    expect(figure(long, 'leanSag', 'in') / figure(short, 'leanSag', 'in')).toBeCloseTo(8, 9)
  })

  it('asks for the stiffness where neither it nor the wood is said, and takes the one that is said first', () => {
    const { woodStiffness: _, ...bare } = rail
    expect(runNamed('rail-sag', bare).said).toContain('missing woodStiffness')
    const cedar = runNamed('rail-sag', { ...bare, species: 'western-redcedar' })
    expect(cedar.said).toContain('940,000 psi')
    expect(runNamed('rail-sag', { ...rail, species: 'western-redcedar' }).shown.leanSag).toBe(
      runNamed('rail-sag', rail).shown.leanSag,
    )
  })

  it('compares with a limit only where one is given, and names what decides', () => {
    expect(runNamed('rail-sag', rail).shown.sagHolds).toBeUndefined()
    const held = runNamed('rail-sag', { ...rail, sagLimit: '1/4 in' })
    expect(held.shown.sagHolds).toBe('false')
    expect(held.said).toContain('Decided by: the bow sideways')
    const { leanWeight: _, ...alone } = rail
    expect(runNamed('rail-sag', { ...alone, sagLimit: '1/4 in' }).shown.sagHolds).toBe('true')
  })

  it('says what it does not look at, and doubts what no rail does', () => {
    const ran = runNamed('rail-sag', { ...rail, railThickness: '3/4 in' })
    expect(ran.said).toContain('Sag is not strength')
    expect(ran.said).toContain('far too much')
    expect(runNamed('rail-sag', { ...rail, opening: '12 in', railDepth: '12 in' }).said).toContain(
      'a block, not a rail',
    )
  })
})

describe('rails across the posts', () => {
  it('boards of a row reach from end post to end post, and joints come on posts', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 8, max: 24 }),
        (bays, rails, stock) => {
          const ran = runNamed('rails-across-faces', {
            bayCentres: '8 ft',
            bays: String(bays),
            rails: String(rails),
            stockLength: `${stock} ft`,
          })
          const span = Math.floor(stock / 8)
          for (const [row, joints] of rowsOf(ran)) {
            const posts = String(joints)
              .split(', ')
              .filter((it) => /^\d+$/.test(it))
              .map(Number)
            const shift = ((row as number) - 1) % span
            for (const post of posts) {
              expect(post).toBeGreaterThan(1)
              expect(post).toBeLessThanOrEqual(bays)
              expect((post - 1 + shift) % span).toBe(0)
            }
          }
        },
      ),
    )
  })

  it('two rows never have their joints on the same posts while a board spans two bays', () => {
    const [first, second] = rowsOf(
      runNamed('rails-across-faces', { bayCentres: '6 ft', bays: '9', rails: '2', stockLength: '12 ft' }),
    )
    expect(first).toEqual([1, '3, 5, 7, 9', '145 3/4', '73 3/4'])
    expect(second).toEqual([2, '2, 4, 6, 8', '73 3/4', '145 3/4'])
  })

  it('a run that one board covers has no joint', () => {
    const ran = runNamed('rails-across-faces', {
      bayCentres: '6 ft',
      bays: '2',
      rails: '2',
      stockLength: '13 ft',
    })
    // 2 × 72 + 3 1/2
    expect(ran.said).toContain('Cut it to 147 1/2 in')
    expect(ran.shown.faceBoards).toBe('2 boards')
    expect(rowsOf(ran)).toEqual([])
  })
})

describe('rails between the posts', () => {
  const rail = { opening: '92 1/2 in', rails: '2', bays: '1' }
  const offcut = (stockLength: string) =>
    figure(runNamed('rails-between-posts', { ...rail, stockLength }), 'railOffcut', 'in')

  // 92 1/2 − 1/4 = 92 1/4; the saw takes 1/8 to part it from the rest
  it('the last rail takes its cut as well, unless it ends where the board does', () => {
    expect(offcut('96 in')).toBe(3.625)
    expect(offcut('92 1/4 in')).toBe(0)
    // Less is left than the saw takes: nothing comes off whole.
    expect(offcut('92 5/16 in')).toBe(0)
  })

  // Twice 1/16 is the whole of 1/8.
  it('play that leaves nothing of the opening is refused, and a board shorter than the rail', () => {
    const short = (opening: string) =>
      runNamed(
        'rails-between-posts',
        { opening, fitAllowance: '1/16 in' },
        { confirmed: ['opening'], wanted: ['railCut'] },
      )
    expect(short('1/8 in').said).toContain('leaves nothing of a 1/8 in opening')
    expect(short('1/16 in').said).toContain('leaves nothing of a 1/16 in opening')
    expect(short('3/16 in').shown.railCut).toBe('1/16 in')
    expect(runNamed('rails-between-posts', { ...rail, stockLength: '92 3/16 in' }).said).toContain(
      'is shorter than the rail, 92 1/4 in',
    )
  })
})

describe('screws with a bite that is wanted', () => {
  const rail = { picketThickness: '3/4 in', railThickness: '1 1/2 in' }

  // 3/4 + 1 1/4 = 2; six diameters of 0.164 are 0.984: 1.734 in all
  it('are as long as picket and bite, and it is said where that is under six diameters', () => {
    expect(runNamed('screw-length', { ...rail, wantedBite: '1 1/4 in' }).shown).toMatchObject({ leastScrew: '2 in' })
    const shallow = runNamed('screw-length', { ...rail, wantedBite: '1/2 in' })
    expect(shallow.shown).toMatchObject({ leastScrew: '1 1/4 in' })
    expect(shallow.said).toContain('Six diameters of bite are the least that counts')
  })

  it('are refused where the bite is more than the rail is thick', () => {
    expect(runNamed('screw-length', { ...rail, wantedBite: '1 3/4 in' }).said).toContain(
      'does not hold 1 3/4 in of bite',
    )
  })
})
