// This file is about how far a finish goes: the spreads that have been published, low and high.

const handbook =
  'Wood Handbook, FPL-GTR-190 (2010), chapter 16, read at https://issuhub.com/view/index/5801?pageIndex=375'

export const finishCoverage = {
  stain: {
    smooth: { low: '200 ft2/gal', high: '400 ft2/gal' },
    rough: { low: '100 ft2/gal', high: '200 ft2/gal' },
    fact: 'semi-transparent oil stain goes 200 to 400 ft² a gallon (4.9 to 9.8 m² a litre) on smooth wood, and 100 to 200 (2.4 to 4.9) on saw-textured or weathered wood',
    from: handbook,
  },
} as const
