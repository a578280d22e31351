import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

const eleven = {
  posts: '11',
  holeDiameter: '10 in',
  holeDepth: '30 in',
  stoneDepth: '6 in',
  postWidth: '3 1/2 in',
  bagYield: '0.45 ft3',
  bagWeight: '60 lb',
}

describe('concrete for posts', () => {
  // (π/4 × 100 − 12.25) × 24 = 1590.96 in³ = 0.92069 ft³; × 11 = 10.1276; / 0.45 = 22.51; ⌈2.046⌉ × 11 = 33
  // 11 in: (95.0332 − 12.25) × 24 / 1728 × 11 = 12.6474; / 0.45 = 28.11
  it('eleven posts in 10 in holes 30 in deep take 23 bags of 60 lb, 33 hole by hole, 29 if the holes come out an inch wide', () => {
    const { shown, said } = runNamed('concrete-for-posts', eleven)
    expect(shown).toMatchObject({
      concrete: '10.13 ft³',
      bags: '23 bags',
      bagsByHole: '33 bags',
      bagsIfWider: '29 bags',
      bagsLoad: '1,380 lb',
    })
    expect(said).toContain('The stone does not count as depth: each post is 24 in in the ground, not 30 in.')
  })

  // Worked example of the reference book: 10 × 24 in hole, 4 in gravel, 3 1/2 in post: 0.7672 ft³; 18 holes and 10 %: 15.19 ft³,
  // 26 bags of 80 lb (0.60 ft³) together, 36 if each hole rounds up.
  it('eighteen 10 × 24 in holes with 4 in of gravel and a tenth to spare take 26 bags of 80 lb, or 36 hole by hole', () => {
    const { shown } = runNamed('concrete-for-posts', {
      posts: '18',
      holeDiameter: '10 in',
      holeDepth: '24 in',
      stoneDepth: '4 in',
      postWidth: '3 1/2 in',
      bagYield: '0.6 ft3',
      spare: '10 %',
    })
    expect(shown).toMatchObject({
      concretePerHole: '0.7672 ft³',
      concrete: '15.19 ft³',
      bags: '26 bags',
      bagsByHole: '36 bags',
    })
  })

  // Reference book: 12 × 36 in, 6 in gravel: 1.7508 ft³, 3 bags of 80 lb.
  it('a 12 × 36 in hole with 6 in of gravel takes 1.751 ft³, 3 bags of 80 lb', () => {
    const { shown } = runNamed('concrete-for-posts', {
      posts: '1',
      holeDiameter: '12 in',
      holeDepth: '36 in',
      stoneDepth: '6 in',
      postWidth: '3 1/2 in',
      bagYield: '0.6 ft3',
    })
    expect(shown).toMatchObject({ concretePerHole: '1.751 ft³', bags: '3 bags' })
  })

  // Reference book, metric: 300 × 600 mm, 100 mm gravel, 90 mm post: 31.29 L, 4 bags of 20 kg.
  it('a 300 × 600 mm hole with 100 mm of gravel takes 31.29 L, 4 bags of 20 kg', () => {
    const { shown } = runNamed(
      'concrete-for-posts',
      {
        posts: '1',
        holeDiameter: '300 mm',
        holeDepth: '600 mm',
        stoneDepth: '100 mm',
        postWidth: '90 mm',
        bagYield: '9.36 L',
      },
      { system: 'metric' },
    )
    expect(shown).toMatchObject({ concretePerHole: '31.29 L', bags: '4 bags' })
  })

  // 4 corner posts in 12 in holes: (113.0973 − 12.25) × 24/1728 = 1.40066 each; 7 gate posts in 10 in holes: 0.92069 each
  // 4 × 1.40066 + 7 × 0.92069 = 12.0475; / 0.6 = 20.08 → 21; 4 × 3 + 7 × 2 = 26
  it('kinds of post with different holes are worked apart and bought together', () => {
    const { shown, outcome } = runNamed(
      'concrete-for-posts',
      {
        posts: ['4', '7'],
        holeDiameter: ['12 in', '10 in'],
        holeDepth: '30 in',
        stoneDepth: '6 in',
        postWidth: '3 1/2 in',
        bagYield: '0.6 ft3',
      },
      { places: ['corner-posts', 'gate-posts'] },
    )
    expect(shown).toMatchObject({
      concretePerHole: '1.401 ft³; 0.9207 ft³',
      concrete: '12.05 ft³',
      bags: '21 bags',
      bagsByHole: '26 bags',
    })
    if (!outcome.ok) throw new Error('must be ok')
    expect(outcome.steps.find((it) => it.gives === 'concrete')?.substituted).toContain('4 × 1.401 ft³ + 7 × 0.9207 ft³')
  })

  // 42 − 6 = 36 in and 30 − 6 = 24 in
  it('kinds of post in holes of different depth have their depths told kind by kind, not as one', () => {
    const { shown, said } = runNamed(
      'concrete-for-posts',
      { ...eleven, posts: ['4', '7'], holeDepth: ['42 in', '30 in'] },
      { places: ['corner-posts', 'gate-posts'] },
    )
    expect(shown.embedment).toBe('36 in; 24 in')
    expect(said).toContain('The stone does not count as depth.')
    expect(said).not.toContain('each post is')
  })

  it('asks which bags before it counts them, and works the volume without', () => {
    const { bagYield: _, bagWeight: __, ...rest } = eleven
    const { outcome, shown } = runNamed('concrete-for-posts', rest, { wanted: ['bags'] })
    if (!outcome.ok) throw new Error('the volume can be had')
    expect(outcome.doubts).toEqual([
      expect.objectContaining({ code: 'missing', word: 'bagYield', ask: expect.stringContaining('Which bags') }),
    ])
    expect(shown.bags).toBeUndefined()
    expect(runNamed('concrete-for-posts', rest, { wanted: ['concrete'] }).shown.concrete).toBe('10.13 ft³')
  })

  it('refuses a hole that the stone fills, a post that does not fit, and concrete that stops below the stone', () => {
    expect(runNamed('concrete-for-posts', { ...eleven, holeDepth: '12 in', stoneDepth: '12 in' }).said).toContain(
      '12 in of stone fills a 12 in hole',
    )
    expect(runNamed('concrete-for-posts', { ...eleven, holeDiameter: '4 in' }).said).toContain(
      'A 3 1/2 in post does not fit in a 4 in hole, corner to corner',
    )
    expect(
      runNamed('concrete-for-posts', { ...eleven, holeDepth: '16 in', concreteBelowGrade: '11 in' }).said,
    ).toContain('there is none')
  })

  it('asks about an 11 ft wide hole before it works it, and works it once it is confirmed', () => {
    const wide = { ...eleven, holeDiameter: '11 ft' }
    expect(runNamed('concrete-for-posts', wide).said).toContain(
      'implausible holeDiameter: I read the hole width as 11 ft',
    )
    expect(runNamed('concrete-for-posts', wide, { confirmed: ['holeDiameter'] }).outcome.ok).toBe(true)
  })

  const bagsFor = (holeDiameter: number): number => {
    const { outcome } = runNamed('concrete-for-posts', { ...eleven, holeDiameter: `${holeDiameter}/8 in` })
    if (!outcome.ok) throw new Error('must be ok')
    return (outcome.values.get('bags') as { amount: { valueOf(): number } }).amount.valueOf()
  }
  it('a wider hole never needs fewer bags', () => {
    fc.assert(
      fc.property(fc.integer({ min: 48, max: 200 }), (eighths) => {
        expect(bagsFor(eighths + 1)).toBeGreaterThanOrEqual(bagsFor(eighths))
      }),
      { numRuns: 120, seed: 3 },
    )
  })

  // (36 π − 12.25) × 15 / 1728 = 0.8754 ft³; × 10 × 1.2 = 10.505; / 0.93 = 11.3 → 12 together. One hole 1.0505 / 0.93 → 2, ten 20;
  // without the fifth to spare one hole would seem to take 1 bag, and ten fewer than all together.
  it.each([
    ['concrete-for-posts', { posts: '10', holeDiameter: '12 in', holeDepth: '15 in', bagYield: '0.93 ft3' }],
    [
      'belled-hole',
      {
        posts: '10',
        holeDiameter: '8 in',
        holeDepth: '36 in',
        bellWidth: '14 in',
        bellHeight: '12 in',
        bagYield: '1.13 ft3',
      },
    ],
  ] as const)('%s adds what is to spare at every hole too', (name, given) => {
    expect(runNamed(name, { ...given, spare: '20 %' }).shown).toMatchObject({
      bags: '12 bags',
      bagsPerHole: '2 bags',
      bagsByHole: '20 bags',
    })
  })

  it('bags together never exceed bags hole by hole, with or without spare', () => {
    const number = (value: unknown): number => (value as { amount: { valueOf(): number } }).amount.valueOf()
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 64, max: 160 }),
        fc.integer({ min: 0, max: 40 }),
        fc.integer({ min: 30, max: 120 }),
        (posts, eighths, spare, bag) => {
          const { outcome } = runNamed('concrete-for-posts', {
            ...eleven,
            posts: `${posts}`,
            holeDiameter: `${eighths}/8 in`,
            spare: `${spare} %`,
            bagYield: `${bag / 100} ft3`,
          })
          if (!outcome.ok) throw new Error('must be ok')
          expect(number(outcome.values.get('bags'))).toBeLessThanOrEqual(number(outcome.values.get('bagsByHole')))
        },
      ),
      { numRuns: 120, seed: 3 },
    )
  })

  // square: (100 − 12.25) × 24 = 2106 in³ = 1.21875 ft³; × 11 = 13.40625; / 0.45 = 29.8 → 30
  it('eleven posts in 10 in square holes take 30 bags, where round ones take 23', () => {
    const { shown, said } = runNamed('concrete-for-posts', { ...eleven, holeShape: 'square' })
    expect(shown).toMatchObject({ concretePerHole: '1.219 ft³', bags: '30 bags' })
    expect(said).toContain('The holes are square, as you said')
  })

  // A 4 in post goes into a 4 1/2 in square hole, and not into a round one of 5 1/2 in (its diagonal is 5.66 in).
  it('a post goes into a square hole by its width, into a round one by its diagonal', () => {
    const post = { ...eleven, postWidth: '4 in' }
    expect(runNamed('concrete-for-posts', { ...post, holeShape: 'square', holeDiameter: '4 1/2 in' }).outcome.ok).toBe(
      true,
    )
    expect(runNamed('concrete-for-posts', { ...post, holeDiameter: '5 1/2 in' }).said).toContain(
      'A 4 in post does not fit in a 5 1/2 in hole, corner to corner.',
    )
    expect(runNamed('concrete-for-posts', { ...post, holeShape: 'square', holeDiameter: '4 in' }).said).toContain(
      'A 4 in post does not fit in a square hole of 4 in.',
    )
  })

  // 30 − 6 − 4 = 20 in of post; (78.5398 − 12.25) × 20 + 78.5398 × 4 = 1325.80 + 314.16 = 1639.96 in³ = 0.9490 ft³
  it('a post hung in the concrete takes no room under its foot, and the depth there does not count', () => {
    const { shown, said } = runNamed('concrete-for-posts', { ...eleven, concreteUnder: '4 in' })
    expect(shown).toMatchObject({ concretePerHole: '0.949 ft³', embedment: '20 in' })
    expect(said).toContain(
      'The stone and the concrete under the post does not count as depth: each post is 20 in in the ground, not 30 in.',
    )
  })

  it('refuses concrete under the post that leaves it nothing to stand in', () => {
    expect(runNamed('concrete-for-posts', { ...eleven, concreteUnder: '24 in' }).said).toContain(
      '24 in of concrete under the post fills the 24 in of hole over the stone',
    )
  })

  it('a wider or deeper square hole never needs fewer bags; a square hole never fewer than a round one; a hung post never fewer than one on stone', () => {
    const bags = (given: Readonly<Record<string, string>>): number => {
      const { outcome } = runNamed('concrete-for-posts', { ...eleven, ...given })
      if (!outcome.ok) throw new Error('must be ok')
      return (outcome.values.get('bags') as { amount: { valueOf(): number } }).amount.valueOf()
    }
    fc.assert(
      fc.property(
        fc.integer({ min: 48, max: 200 }),
        fc.integer({ min: 80, max: 400 }),
        fc.integer({ min: 0, max: 10 }),
        (width, depth, under) => {
          const [holeDiameter, holeDepth, concreteUnder] = [`${width}/8 in`, `${depth}/8 in`, `${under}/4 in`]
          const square = bags({ holeShape: 'square', holeDiameter, holeDepth, concreteUnder })
          expect(
            bags({ holeShape: 'square', holeDiameter: `${width + 1}/8 in`, holeDepth, concreteUnder }),
          ).toBeGreaterThanOrEqual(square)
          expect(
            bags({ holeShape: 'square', holeDiameter, holeDepth: `${depth + 1}/8 in`, concreteUnder }),
          ).toBeGreaterThanOrEqual(square)
          expect(square).toBeGreaterThanOrEqual(bags({ holeDiameter, holeDepth, concreteUnder }))
          expect(square).toBeGreaterThanOrEqual(bags({ holeShape: 'square', holeDiameter, holeDepth }))
        },
      ),
      { numRuns: 60, seed: 5 },
    )
  })

  // A second derivation: the hole cut into thin slices, each a polygon of many sides, less the post.
  it('agrees with slicing the hole into many-sided plates', () => {
    const sides = 20_000
    const area = 0.5 * sides * 25 * Math.sin((2 * Math.PI) / sides) - 12.25
    const { outcome } = runNamed('concrete-for-posts', eleven)
    if (!outcome.ok) throw new Error('must be ok')
    const worked = (outcome.values.get('concretePerHole') as { amount: { value: number } }).amount.value
    expect(worked).toBeCloseTo(area * 24, 3)
  })
})
