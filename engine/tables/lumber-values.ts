// This file is about what graded softwood may be stressed with: single design values for No. 2, and the factors that go with them.

const design = 'National Design Specification for Wood Construction 2018, Supplement'

export interface LumberValue {
  /** Bending and shear, psi, and modulus of elasticity, psi, before any factor. */
  readonly bending: string
  readonly shear: string
  readonly stiffness: string
  /** On bending for sizes of 4 in nominal and under; southern pine has it in its value already. */
  readonly size: string
  readonly from: string
}

export const lumberValues = {
  title: 'Design values of No. 2 dimension lumber, 2 to 4 in thick',
  holds:
    'lumber that is stamped No. 2, 4 in nominal (3 1/2 in dressed) at the most, sound and dry when graded. Unstamped wood, rough posts and other grades may bear less',
  /** A post or rail wider than this falls under other values. */
  widest: '4 in',
  values: {
    'southern-pine': {
      bending: '1100',
      shear: '175',
      stiffness: '1400000',
      size: '1',
      from: `${design}, table 4B, as transcribed in a public program, its metric values held against these`,
    },
    'douglas-fir-larch': {
      bending: '900',
      shear: '180',
      stiffness: '1600000',
      size: '1.5',
      from: `${design}, table 4A, as transcribed in a public program`,
    },
    'hem-fir': {
      bending: '850',
      shear: '150',
      stiffness: '1300000',
      size: '1.5',
      from: `${design}, table 4A, as transcribed in a public program`,
    },
    'spruce-pine-fir': {
      bending: '875',
      shear: '135',
      stiffness: '1400000',
      size: '1.5',
      from: `${design}, table 4A, as transcribed in a public program`,
    },
    'western-cedars': {
      bending: '700',
      shear: '155',
      stiffness: '1000000',
      size: '1.5',
      from: `${design}, table 4A: shear and stiffness from memory, bending as engineers quote it`,
    },
  } as Readonly<Record<string, LumberValue>>,
} as const

export const lumberFactors = {
  size: {
    fact: 'bending × 1.5 for 4 in nominal and narrower',
    from: 'Northeastern Lumber Manufacturers Association, grading rules, section 8, https://issuu.com./nelma1933/docs/08_section',
  },
  wet: {
    fact: 'wood that rain reaches is wet: bending × 0.85, or × 1 where value × size is 1150 psi or less; shear × 0.97; stiffness × 0.9',
    from: 'National Design Specification, wet service factors, as reprinted in Building Design and Construction Handbook, table 10.6; rained-on wood is wet by its commentary C4.1.4',
    bending: '0.85',
    shear: '0.97',
    upTo: '1150 psi',
  },
  time: {
    fact: 'for ten minutes in all, as in a gust, × 1.6; for seven days in all, as under people, × 1.25; for ten years × 1',
    from: 'National Design Specification, 2.3.2, as public programs carry it',
  },
  incised: {
    fact: 'incised (small slits cut in for the treatment): bending and shear × 0.8',
    from: 'National Design Specification, table 4.3.8, as others quote it; the table itself not read',
    factor: '0.8',
  },
} as const
