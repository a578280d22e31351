// This file is about how stiff wet wood is: its modulus of elasticity, for each kind of wood that the program knows.

export const greenWoodStiffness = {
  title: 'Modulus of elasticity of green, clear wood, in static bending',
  from: 'Wood Handbook, FPL-GTR-190 (2010), table 5–3b, green wood, averages. Western redcedar and Douglas-fir were read in a printed extract of its 1974 edition, northern white-cedar in a copy of the 2010 table (4,400 MPa), white fir in another table of clear wood (1.161 million psi); black locust (page 5–10), white ash, redwood (young growth), southern pine (loblolly) and western hemlock are from memory, to be confirmed',
  holds:
    'clear wood, straight grained and wet through; a board with knots is less stiff, and one board differs from the next',
  /** Pounds-force on a square inch. */
  values: {
    'western-redcedar': '940000',
    'northern-white-cedar': '640000',
    redwood: '960000',
    'southern-pine': '1400000',
    'douglas-fir': '1560000',
    'western-hemlock': '1310000',
    'white-fir': '1160000',
    'black-locust': '1850000',
    'white-ash': '1440000',
  } as Readonly<Record<string, string>>,
} as const
