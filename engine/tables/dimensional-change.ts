// This file is about how much wood moves across its grain for each point of moisture, within 6 to 14 % or so.

export const dimensionalChange = {
  title: 'Coefficients for dimensional change due to shrinkage or swelling within moisture content limits of 6 to 14 %',
  from: 'Wood Handbook, FPL-GTR-190 (2010), table 13-5, read for white ash, black locust and white fir with edge grain; the others worked here from the shrinkage of table 4-3, the cedars with fibre saturation at 22 %, which is from memory, to be confirmed',
  holds: 'about 6 to 14 % moisture; beyond, the straight line is only near',
  saturation: {
    percent: 30,
    fact: 'wood shrinks and swells only below fibre saturation, at about 30 % moisture',
    from: 'Wood Handbook, FPL-GTR-190 (2010), chapters 4 and 13, whose shrinkage formula is not used above 30 %',
  },
  /** Change of width for a width of one and a point of moisture: edge grain (radial) and flat grain (tangential). */
  values: {
    'western-redcedar': { edge: '0.00111', flat: '0.00234' },
    'northern-white-cedar': { edge: '0.00101', flat: '0.00229' },
    'douglas-fir': { edge: '0.00165', flat: '0.00267' },
    'white-fir': { edge: '0.00112', flat: '0.00245' },
    'black-locust': { edge: '0.00158', flat: '0.00252' },
    'white-ash': { edge: '0.00169', flat: '0.00274' },
  } as Readonly<Record<string, { readonly edge: string; readonly flat: string }>>,
} as const
