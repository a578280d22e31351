// This file is about sums of any trade: quantities of one kind, what is done with them, and the unit the answer is wanted in.
// Whoever reads a message takes these words only where nothing of the trade is asked.
import type { Kind } from '../quantities/units.ts'
import { type Word, word } from './word.ts'

/** The kinds that are added up, and what one of them is called. */
const summed = {
  length: { noun: 'length', units: { imperial: 'in', metric: 'mm' } },
  area: { noun: 'area', units: { imperial: 'ft2', metric: 'm2' } },
  volume: { noun: 'volume', units: { imperial: 'ft3', metric: 'L' } },
  mass: { noun: 'weight', units: { imperial: 'lb', metric: 'kg' } },
  duration: { noun: 'time', units: { imperial: 'h', metric: 'h' } },
  money: { noun: 'amount of money', units: { imperial: 'USD', metric: 'USD' } },
} as const
export type Summed = keyof typeof summed
const plural = (noun: string): string => (noun === 'amount of money' ? 'amounts of money' : `${noun}s`)

const asks = {
  sum: [
    'add',
    'add up',
    'plus',
    'sum of',
    'the sum',
    'total of',
    'the total',
    'added to',
    'added together',
    'together',
    'altogether',
    'sum up',
    'in total',
    'total',
    'grand total',
  ],
  mean: ['mean', 'mean of', 'average', 'average of', 'on average', 'the middle of'],
  difference: [
    'less',
    'minus',
    'subtract',
    'take',
    'take away',
    'taken from',
    'taken off',
    'take off',
    'difference',
    'difference between',
    'subtracted from',
    'deduct',
  ],
  multiple: ['times', 'time', 'multiplied by', 'multiply', 'lots of', 'pieces of', 'lengths of'],
  share: ['divided by', 'divide', 'divided into', 'split into', 'split by', 'cut into', 'shared by', 'equal parts'],
  ratio: ['divided by', 'divide', 'goes into', 'go into', 'fit into', 'how often', 'how many times'],
  product: ['times', 'multiplied by', 'multiply', 'by'],
} as const

export const howManyTimes = word<'count'>('howManyTimes', {
  kind: 'count',
  noun: 'time',
  label: 'how many times, or into how many',
  measure: 'A plain number.',
  ask: 'How many times, or into how many parts?',
  called: {},
  possible: { above: '0' },
})

export const partPercent = word<'percent'>('partPercent', {
  kind: 'percent',
  label: 'percentage wanted of it',
  measure: 'Of the whole.',
  ask: 'How many percent of it?',
  called: {},
  possible: { least: '0 %' },
})

export interface SumWords {
  readonly values: Word
  readonly sum: Word
  readonly mean: Word
  readonly difference: Word
  readonly multiple: Word
  readonly share: Word
  readonly part: Word
  readonly ratio: Word
}

/** The words for sums of one kind: `lengths`, `lengthSum`, `lengthMean` … */
function sumWords<K extends Summed>(kind: K): SumWords {
  const { noun, units } = summed[kind]
  const result = (name: string, label: string, measure: string, asked: readonly string[]): Word =>
    word<Kind>(`${kind}${name}`, { kind, label, units, measure, ask: `What is the ${label}?`, called: { asks: asked } })
  return {
    values: word<Kind>(kind === 'money' ? 'amounts' : kind === 'mass' ? 'masses' : `${kind}s`, {
      kind,
      list: true,
      label: `${plural(noun)}, in order`,
      units,
      measure: `Any ${plural(noun)}, each with its unit.`,
      ask: `Which ${plural(noun)}? Give each with its unit.`,
      called: {},
    }),
    sum: result('Sum', `sum of the ${plural(noun)}`, 'All of them added up.', asks.sum),
    mean: result('Mean', `mean of the ${plural(noun)}`, 'Added up, and shared by how many there are.', asks.mean),
    difference: result(
      'Difference',
      `difference of the ${plural(noun)}`,
      'The largest less the others.',
      asks.difference,
    ),
    multiple: result('Multiple', `${noun} so many times`, 'So many of them.', asks.multiple),
    share: result('Share', `${noun} of each part`, 'Shared into so many equal parts.', asks.share),
    part: result('Part', `so many percent of the ${noun}`, 'The percentage of it.', []),
    ratio: word<'number'>(`${kind}Ratio`, {
      kind: 'number',
      label: `times the smaller ${noun} goes into the larger`,
      measure: 'One divided by the other: a plain number.',
      ask: 'How many times does one go into the other?',
      called: { asks: asks.ratio },
    }),
  }
}

export const lengthSums = sumWords('length')
export const areaSums = sumWords('area')
export const volumeSums = sumWords('volume')
export const massSums = sumWords('mass')
export const durationSums = sumWords('duration')
export const moneySums = sumWords('money')

export const lengthProduct = word<'area'>('lengthProduct', {
  kind: 'area',
  label: 'area of the two lengths',
  units: { imperial: 'ft2', metric: 'm2' },
  measure: 'One length times the other.',
  ask: 'What is the one times the other?',
  called: { asks: asks.product },
})

// ── temperatures: their mean and how far they lie apart; a sum of them means nothing ──

export const temperatures = word<'temperature'>('temperatures', {
  kind: 'temperature',
  list: true,
  label: 'temperatures, in order',
  measure: 'Any temperatures, each with its scale.',
  ask: 'Which temperatures? Give each with its scale.',
  called: {},
})
export const temperatureMean = word<'temperature'>('temperatureMean', {
  kind: 'temperature',
  label: 'mean of the temperatures',
  measure: 'Added up, and shared by how many there are.',
  ask: 'What is the mean of them?',
  called: { asks: asks.mean },
})
export const temperatureSpread = word<'temperatureDifference'>('temperatureSpread', {
  kind: 'temperatureDifference',
  label: 'from the coldest to the warmest',
  measure: 'The warmest less the coldest.',
  ask: 'How far do they lie apart?',
  called: { asks: asks.difference },
})

// ── plain numbers ──

export const numbers = word<'number'>('numbers', {
  kind: 'number',
  list: true,
  label: 'numbers, in order',
  measure: 'Any numbers, without a unit.',
  ask: 'Which numbers?',
  called: {},
})
const ofNumbers = (name: string, label: string, measure: string, asked: readonly string[]): Word<'number'> =>
  word<'number'>(name, { kind: 'number', label, measure, ask: `What is the ${label}?`, called: { asks: asked } })
export const numberSum = ofNumbers('numberSum', 'sum', 'All of them added up.', asks.sum)
export const numberMean = ofNumbers('numberMean', 'mean', 'Added up, and shared by how many there are.', asks.mean)
export const numberDifference = ofNumbers('numberDifference', 'difference', 'The first less the others.', [
  ...asks.difference,
])
export const numberProduct = ofNumbers('numberProduct', 'product', 'The one times the other.', asks.product)
export const numberPart = ofNumbers('numberPart', 'so many percent of the number', 'The percentage of it.', [])
export const numberQuotient = ofNumbers('numberQuotient', 'quotient', 'The first by the second.', [
  'divided by',
  'divide',
])

// ── the unit that is wanted ──

const unit = (...called: readonly string[]): readonly string[] =>
  called.flatMap((it) => [`in ${it}`, `to ${it}`, `into ${it}`, `as ${it}`, `how many ${it}`, `how much ${it}`])

const unitWord = (name: string, noun: string, options: NonNullable<Word['options']>): Word<'choice'> =>
  word<'choice'>(name, {
    kind: 'choice',
    label: `unit for the ${noun}`,
    measure: 'The unit you want it in.',
    ask: `In which unit do you want the ${noun}?`,
    called: {},
    options,
  })

export const lengthUnit = unitWord('lengthUnit', 'length', {
  in: { label: 'inches', called: unit('inch', 'in') },
  ft: { label: 'feet and inches', called: unit('foot and inches', 'foot', 'ft', 'ft and in', 'feet inches') },
  yd: { label: 'yards', called: unit('yard', 'yd') },
  mm: { label: 'millimetres', called: unit('millimeter', 'millimetre', 'mm') },
  cm: { label: 'centimetres', called: unit('centimeter', 'centimetre', 'cm') },
  m: { label: 'metres', called: unit('meter', 'm') },
})
export const areaUnit = unitWord('areaUnit', 'area', {
  in2: { label: 'square inches', called: unit('square inch', 'sq in', 'sq inch') },
  ft2: { label: 'square feet', called: unit('square foot', 'sq ft', 'sq foot', 'sqft', 'ft') },
  yd2: { label: 'square yards', called: unit('square yard', 'sq yd', 'sq yard', 'sqyd', 'yd') },
  cm2: { label: 'square centimetres', called: unit('square centimeter', 'square centimetre', 'sq cm') },
  m2: { label: 'square metres', called: unit('square meter', 'sq m', 'sqm', 'm') },
})
export const volumeUnit = unitWord('volumeUnit', 'volume', {
  in3: { label: 'cubic inches', called: unit('cubic inch', 'cu in') },
  ft3: { label: 'cubic feet', called: unit('cubic foot', 'cu ft', 'ft') },
  yd3: { label: 'cubic yards', called: unit('cubic yard', 'cu yd', 'yard') },
  gal: { label: 'US gallons', called: unit('gallon', 'us gallon', 'gal') },
  galUK: { label: 'imperial gallons', called: unit('imperial gallon', 'uk gallon') },
  L: { label: 'litres', called: unit('liter', 'l') },
  m3: { label: 'cubic metres', called: unit('cubic meter', 'cu m', 'cube', 'm') },
})
export const massUnit = unitWord('massUnit', 'weight', {
  lb: { label: 'pounds', called: unit('pound', 'lb', 'lbs') },
  stone: { label: 'stone', called: ['in stone', 'to stone', 'into stone', 'how many stone'] },
  ton: { label: 'US tons', called: unit('ton', 'us ton', 'short ton') },
  g: { label: 'grams', called: unit('gram', 'gramme', 'g') },
  kg: { label: 'kilograms', called: unit('kilogram', 'kilo', 'kg') },
  tonne: { label: 'tonnes', called: unit('tonne', 'metric ton') },
})
export const durationUnit = unitWord('durationUnit', 'time', {
  min: { label: 'minutes', called: unit('minute', 'min') },
  h: { label: 'hours', called: unit('hour', 'hr') },
  day: { label: 'days', called: unit('day') },
  week: { label: 'weeks', called: unit('week') },
})
export const temperatureUnit = unitWord('temperatureUnit', 'temperature', {
  F: { label: 'degrees Fahrenheit', called: unit('fahrenheit', 'degree fahrenheit', 'f', 'degree f') },
  C: { label: 'degrees Celsius', called: unit('celsius', 'centigrade', 'degree celsius', 'c', 'degree c') },
})
export const differenceUnit = unitWord('differenceUnit', 'difference of temperature', {
  dF: { label: 'Fahrenheit degrees', called: unit('fahrenheit', 'degree fahrenheit', 'f', 'degree f') },
  dC: { label: 'Celsius degrees', called: unit('celsius', 'centigrade', 'degree celsius', 'c', 'degree c') },
})

// ── what is to be said in another unit ──

// Temperatures are converted one at a time: their scales begin at different points.
const isListed = (kind: Kind): boolean => kind !== 'temperature' && kind !== 'temperatureDifference'
const asGiven = <K extends Kind>(name: string, kind: K, noun: string): Word<K> =>
  word<K>(name, {
    kind,
    list: isListed(kind),
    label: `${noun} to convert`,
    measure: 'With the unit it has now; several in order.',
    ask: `Which ${noun}? Give it with its unit.`,
    called: { byDefault: true },
  } as Omit<Word<K>, 'name'>)
const asWanted = <K extends Kind>(name: string, kind: K, noun: string): Word<K> =>
  word<K>(name, {
    kind,
    label: `the same ${noun}`,
    measure: 'The same, in the unit you want.',
    ask: `What is the ${noun} in that unit?`,
    called: { asks: ['convert', 'conversion'] },
  } as Omit<Word<K>, 'name'>)

export const lengthGiven = asGiven('lengthGiven', 'length', 'length')
export const lengthConverted = asWanted('lengthConverted', 'length', 'length')
export const areaGiven = asGiven('areaGiven', 'area', 'area')
export const areaConverted = asWanted('areaConverted', 'area', 'area')
export const volumeGiven = asGiven('volumeGiven', 'volume', 'volume')
export const volumeConverted = asWanted('volumeConverted', 'volume', 'volume')
export const massGiven = asGiven('massGiven', 'mass', 'weight')
export const massConverted = asWanted('massConverted', 'mass', 'weight')
export const durationGiven = asGiven('durationGiven', 'duration', 'time')
export const durationConverted = asWanted('durationConverted', 'duration', 'time')
export const temperatureGiven = asGiven('temperatureGiven', 'temperature', 'temperature')
export const temperatureConverted = asWanted('temperatureConverted', 'temperature', 'temperature')
export const differenceGiven = asGiven('differenceGiven', 'temperatureDifference', 'difference of temperature')
export const differenceConverted = asWanted('differenceConverted', 'temperatureDifference', 'difference of temperature')
