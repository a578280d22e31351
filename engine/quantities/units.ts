// This file is about units: every one the program reads or prints, what it measures, and its exact size.
import Fraction from 'fraction.js'

/** What sort of thing a quantity measures. `number` is a bare ratio; `count` counts things that have a name. */
export type Kind =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'density'
  | 'coverage'
  | 'temperature'
  | 'temperatureDifference'
  | 'duration'
  | 'percent'
  | 'angle'
  | 'count'
  | 'number'
  | 'money'
  | 'force'
  | 'moment'
  | 'pressure'
  | 'pressureByDepth'
  | 'speed'
  | 'lineWeight'
  | 'date'

/** Powers of the things that are measured for themselves. Lines of arithmetic are checked with these. */
export interface Dimension {
  readonly length: number
  readonly mass: number
  readonly heat: number
  readonly time: number
  readonly money: number
  readonly force: number
}

const dimension = (part: Partial<Dimension> = {}): Dimension => ({
  length: 0,
  mass: 0,
  heat: 0,
  time: 0,
  money: 0,
  force: 0,
  ...part,
})

export const dimensionOf: Record<Kind, Dimension> = {
  length: dimension({ length: 1 }),
  area: dimension({ length: 2 }),
  volume: dimension({ length: 3 }),
  mass: dimension({ mass: 1 }),
  density: dimension({ mass: 1, length: -3 }),
  coverage: dimension({ length: -1 }), // an area for a volume
  temperature: dimension({ heat: 1 }),
  temperatureDifference: dimension({ heat: 1 }),
  duration: dimension({ time: 1 }),
  percent: dimension(),
  angle: dimension(),
  count: dimension(),
  number: dimension(),
  money: dimension({ money: 1 }),
  force: dimension({ force: 1 }), // for itself, since nobody here reckons in pounds times inches a day squared
  moment: dimension({ force: 1, length: 1 }),
  pressure: dimension({ force: 1, length: -2 }),
  pressureByDepth: dimension({ force: 1, length: -3 }), // what soil bears for each foot of depth
  speed: dimension({ length: 1, time: -1 }),
  lineWeight: dimension({ mass: 1, length: -1 }),
  date: dimension({ time: 1 }), // days since the first of January 1970
}

/** One unit. Base units: inch, pound, pound-force, psi, °F, day, one (so 1 % is 1/100), degree for angles. */
export interface Unit {
  readonly name: string
  readonly kind: Kind
  /** How many base units one of it is. */
  readonly size: Fraction
  /** Temperatures only: base value where this scale reads zero. */
  readonly zero?: Fraction
  /** What is printed after the number. */
  readonly sign: string
  readonly system?: 'imperial' | 'metric'
}

const f = (value: number | string): Fraction => new Fraction(value)
const inch = { mm: f('5/127'), m: f('5000/127') } // 1 in = 25.4 mm exactly (international yard and pound agreement, 1959)
const kilogram = f(1).div(f('0.45359237')) // in pounds, exactly, same agreement
const newton = kilogram.div(f('9.80665')) // in pounds-force, exactly: standard gravity (CGPM 1901; NIST SP 811, appendix B)
const pascal = newton.div(inch.m.pow(2)!) // in pounds-force a square inch, exactly: a newton on a square metre
const gallon = f(231) // US gallon, cubic inches, exactly (NIST Handbook 44, appendix C)
const litre = inch.mm.pow(3)!.mul(1_000_000)
const year = f('365.25') // mean year in days; a month is a twelfth of it

const list: Unit[] = [
  { name: 'in', kind: 'length', size: f(1), sign: 'in', system: 'imperial' },
  { name: 'ft', kind: 'length', size: f(12), sign: 'ft', system: 'imperial' },
  { name: 'yd', kind: 'length', size: f(36), sign: 'yd', system: 'imperial' },
  { name: 'mm', kind: 'length', size: inch.mm, sign: 'mm', system: 'metric' },
  { name: 'cm', kind: 'length', size: inch.mm.mul(10), sign: 'cm', system: 'metric' },
  { name: 'm', kind: 'length', size: inch.m, sign: 'm', system: 'metric' },
  { name: 'mi', kind: 'length', size: f(63_360), sign: 'mi', system: 'imperial' }, // 5,280 ft (NIST Handbook 44, appendix C)
  { name: 'km', kind: 'length', size: inch.m.mul(1000), sign: 'km', system: 'metric' },
  { name: 'in2', kind: 'area', size: f(1), sign: 'in²', system: 'imperial' },
  { name: 'ft2', kind: 'area', size: f(144), sign: 'ft²', system: 'imperial' },
  { name: 'yd2', kind: 'area', size: f(1296), sign: 'yd²', system: 'imperial' },
  { name: 'mm2', kind: 'area', size: inch.mm.pow(2)!, sign: 'mm²', system: 'metric' },
  { name: 'cm2', kind: 'area', size: inch.mm.mul(10).pow(2)!, sign: 'cm²', system: 'metric' },
  { name: 'm2', kind: 'area', size: inch.m.pow(2)!, sign: 'm²', system: 'metric' },
  { name: 'in3', kind: 'volume', size: f(1), sign: 'in³', system: 'imperial' },
  { name: 'ft3', kind: 'volume', size: f(1728), sign: 'ft³', system: 'imperial' },
  { name: 'yd3', kind: 'volume', size: f(46656), sign: 'yd³', system: 'imperial' },
  { name: 'gal', kind: 'volume', size: gallon, sign: 'gal', system: 'imperial' },
  { name: 'qt', kind: 'volume', size: gallon.div(4), sign: 'qt', system: 'imperial' },
  { name: 'floz', kind: 'volume', size: gallon.div(128), sign: 'fl oz', system: 'imperial' },
  { name: 'galUK', kind: 'volume', size: litre.mul(f('4.54609')), sign: 'gal (imperial)', system: 'imperial' },
  { name: 'cm3', kind: 'volume', size: inch.mm.mul(10).pow(3)!, sign: 'cm³', system: 'metric' },
  { name: 'L', kind: 'volume', size: litre, sign: 'L', system: 'metric' },
  { name: 'm3', kind: 'volume', size: litre.mul(1000), sign: 'm³', system: 'metric' },
  { name: 'lb', kind: 'mass', size: f(1), sign: 'lb', system: 'imperial' },
  { name: 'oz', kind: 'mass', size: f('1/16'), sign: 'oz', system: 'imperial' },
  { name: 'stone', kind: 'mass', size: f(14), sign: 'stone', system: 'imperial' },
  { name: 'ton', kind: 'mass', size: f(2000), sign: 'ton', system: 'imperial' }, // US short ton
  { name: 'g', kind: 'mass', size: kilogram.div(1000), sign: 'g', system: 'metric' },
  { name: 'kg', kind: 'mass', size: kilogram, sign: 'kg', system: 'metric' },
  { name: 'tonne', kind: 'mass', size: kilogram.mul(1000), sign: 'tonne', system: 'metric' },
  { name: 'lb/ft3', kind: 'density', size: f('1/1728'), sign: 'lb/ft³', system: 'imperial' },
  { name: 'lb/yd3', kind: 'density', size: f('1/46656'), sign: 'lb/yd³', system: 'imperial' },
  { name: 'ton/yd3', kind: 'density', size: f('2000/46656'), sign: 'ton/yd³', system: 'imperial' },
  { name: 'tonne/m3', kind: 'density', size: kilogram.div(litre), sign: 'tonne/m³', system: 'metric' },
  { name: 'kg/m3', kind: 'density', size: kilogram.div(litre.mul(1000)), sign: 'kg/m³', system: 'metric' },
  { name: 'lb/ft', kind: 'lineWeight', size: f('1/12'), sign: 'lb/ft', system: 'imperial' },
  { name: 'kg/m', kind: 'lineWeight', size: kilogram.div(inch.m), sign: 'kg/m', system: 'metric' },
  { name: 'lbf', kind: 'force', size: f(1), sign: 'lbf', system: 'imperial' },
  { name: 'N', kind: 'force', size: newton, sign: 'N', system: 'metric' },
  { name: 'kN', kind: 'force', size: newton.mul(1000), sign: 'kN', system: 'metric' },
  { name: 'lbf-ft', kind: 'moment', size: f(12), sign: 'lbf-ft', system: 'imperial' },
  { name: 'N-m', kind: 'moment', size: newton.mul(inch.m), sign: 'N-m', system: 'metric' },
  { name: 'psi', kind: 'pressure', size: f(1), sign: 'psi', system: 'imperial' },
  { name: 'lb/ft2', kind: 'pressure', size: f('1/144'), sign: 'lb/ft²', system: 'imperial' }, // pounds-force, as it is said
  { name: 'kPa', kind: 'pressure', size: pascal.mul(1000), sign: 'kPa', system: 'metric' },
  { name: 'MPa', kind: 'pressure', size: pascal.mul(1_000_000), sign: 'MPa', system: 'metric' },
  { name: 'N/mm2', kind: 'pressure', size: pascal.mul(1_000_000), sign: 'N/mm²', system: 'metric' },
  { name: 'GPa', kind: 'pressure', size: pascal.mul(1_000_000_000), sign: 'GPa', system: 'metric' },
  { name: 'psf/ft', kind: 'pressureByDepth', size: f('1/1728'), sign: 'psf/ft', system: 'imperial' },
  { name: 'kPa/m', kind: 'pressureByDepth', size: pascal.mul(1000).div(inch.m), sign: 'kPa/m', system: 'metric' },
  { name: 'mph', kind: 'speed', size: f(63_360 * 24), sign: 'mph', system: 'imperial' }, // kept in inches a day
  { name: 'km/h', kind: 'speed', size: inch.m.mul(24_000), sign: 'km/h', system: 'metric' },
  { name: 'm/s', kind: 'speed', size: inch.m.mul(86_400), sign: 'm/s', system: 'metric' },
  { name: 'knot', kind: 'speed', size: inch.m.mul(1852 * 24), sign: 'knot' }, // 1852 m an hour exactly (SI brochure, table 8)
  { name: 'ft2/gal', kind: 'coverage', size: f(144).div(gallon), sign: 'ft²/gal', system: 'imperial' },
  { name: 'm2/L', kind: 'coverage', size: inch.m.pow(2)!.div(litre), sign: 'm²/L', system: 'metric' },
  { name: 'F', kind: 'temperature', size: f(1), zero: f(0), sign: '°F', system: 'imperial' },
  { name: 'C', kind: 'temperature', size: f('9/5'), zero: f(32), sign: '°C', system: 'metric' },
  { name: 'dF', kind: 'temperatureDifference', size: f(1), sign: '°F difference', system: 'imperial' },
  { name: 'dC', kind: 'temperatureDifference', size: f('9/5'), sign: '°C difference', system: 'metric' },
  { name: 'second', kind: 'duration', size: f('1/86400'), sign: 'second' },
  { name: 'min', kind: 'duration', size: f('1/1440'), sign: 'min' },
  { name: 'h', kind: 'duration', size: f('1/24'), sign: 'h' },
  { name: 'day', kind: 'duration', size: f(1), sign: 'day' },
  { name: 'week', kind: 'duration', size: f(7), sign: 'week' },
  { name: 'month', kind: 'duration', size: year.div(12), sign: 'month' },
  { name: 'year', kind: 'duration', size: year, sign: 'year' },
  { name: 'date', kind: 'date', size: f(1), sign: '' },
  { name: 'percent', kind: 'percent', size: f('1/100'), sign: '%' },
  { name: 'deg', kind: 'angle', size: f(1), sign: '°' }, // kept in degrees, since degrees are what people say
  { name: 'ratio', kind: 'number', size: f(1), sign: '' },
  // A plain $ is kept as USD, whoever's dollar it is: money is never changed into another, and is shown by its sign.
  { name: 'USD', kind: 'money', size: f(1), sign: '$' },
  { name: 'CAD', kind: 'money', size: f(1), sign: 'C$' },
  { name: 'GBP', kind: 'money', size: f(1), sign: '£' },
  { name: 'AUD', kind: 'money', size: f(1), sign: 'A$' },
  { name: 'NZD', kind: 'money', size: f(1), sign: 'NZ$' },
  { name: 'EUR', kind: 'money', size: f(1), sign: '€' },
  { name: 'CZK', kind: 'money', size: f(1), sign: 'Kč' },
  { name: 'PLN', kind: 'money', size: f(1), sign: 'zł' },
  // Krona or krone, whoever’s: as with the plain $, none is changed into another.
  { name: 'kr', kind: 'money', size: f(1), sign: 'kr' },
  // A price without its currency: “160 pickets at 2.85” is paid in whatever the person pays in.
  { name: 'money', kind: 'money', size: f(1), sign: '' },
]

const byName = new Map(list.map((unit) => [unit.name, unit]))

/** Every unit that is printed. */
export const unitNames: readonly string[] = list.map((unit) => unit.name)

/** The unit of that name; a name that is no unit is a thing that is counted (`bag`, `post`). */
export const unitNamed = (name: string): Unit => byName.get(name) ?? { name, kind: 'count', size: f(1), sign: name }
