// This file is about how much wood moves across its grain: for each point of moisture within 6 to 14 % or so, and from green to oven-dry.

interface Moves {
  /** Change of width for a width of one and a point of moisture: edge grain (radial) and flat grain (tangential). */
  readonly edge: string
  readonly flat: string
  /** Shrinkage from green to oven-dry, in per cent: radial and tangential. */
  readonly dryEdge: string
  readonly dryFlat: string
}

export const dimensionalChange = {
  title: 'Coefficients for dimensional change due to shrinkage or swelling within moisture content limits of 6 to 14 %',
  from: 'Wood Handbook, FPL-GTR-190 (2010), table 13-5, read for white ash, black locust and white fir with edge grain; the others worked here from the shrinkage of table 4-3, the cedars and redwood with fibre saturation at 22 %, which is from memory, to be confirmed',
  least: '6 %',
  most: '14 %',
  saturation: {
    percent: 30,
    fact: 'wood shrinks and swells only below fibre saturation, at about 30 % moisture',
    from: 'Wood Handbook, FPL-GTR-190 (2010), chapters 4 and 13, whose shrinkage formula is not used above 30 %',
  },
  wider: {
    fact: 'change = width × points / (3000 / shrinkage − 30 + moisture now), both moistures up to 30 %; it says rather too much for boards that are not truly flat grain',
    from: 'Wood Handbook, FPL-GTR-190 (2010), chapter 13, equation 13-3, read in part at https://issuhub.com/view/index/5801?pageIndex=308; its algebra derived here',
  },
  shrinkage: {
    fact: 'shrinkage from green to oven-dry, radial and tangential',
    from: 'Wood Handbook, FPL-GTR-190 (2010), table 4-3, read at https://issuhub.com/view/index/5801?pageIndex=85; southern pine (loblolly), redwood (young growth), western hemlock and black locust are from memory, to be confirmed',
  },
  values: {
    'western-redcedar': { edge: '0.00111', flat: '0.00234', dryEdge: '2.4', dryFlat: '5.0' },
    'northern-white-cedar': { edge: '0.00101', flat: '0.00229', dryEdge: '2.2', dryFlat: '4.9' },
    redwood: { edge: '0.00101', flat: '0.00229', dryEdge: '2.2', dryFlat: '4.9' },
    'southern-pine': { edge: '0.00165', flat: '0.00259', dryEdge: '4.8', dryFlat: '7.4' },
    'douglas-fir': { edge: '0.00165', flat: '0.00267', dryEdge: '4.8', dryFlat: '7.6' },
    'western-hemlock': { edge: '0.00144', flat: '0.00274', dryEdge: '4.2', dryFlat: '7.8' },
    'white-fir': { edge: '0.00112', flat: '0.00245', dryEdge: '3.3', dryFlat: '7.0' },
    'black-locust': { edge: '0.00158', flat: '0.00252', dryEdge: '4.6', dryFlat: '7.2' },
    'white-ash': { edge: '0.00169', flat: '0.00274', dryEdge: '4.9', dryFlat: '7.8' },
  } as Readonly<Record<string, Moves>>,
} as const
