// This file is about the hours of a day in which paint can go on, from a forecast hour by hour and the limits on the can.
import { word } from './word.ts'

export const hourTemperatures = word<'temperature'>('hourTemperatures', {
  kind: 'temperature',
  list: true,
  label: 'temperatures hour by hour',
  units: { imperial: 'F', metric: 'C' },
  measure: 'From the forecast, one figure for each hour, in order.',
  ask: 'What are the temperatures, hour by hour, in order?',
  called: {
    names: ['temperatures', 'temperature', 'temps', 'temp'],
    things: ['temperature', 'forecast', 'temp'],
    sides: ['temperatures', 'temperature'],
    plainly: true,
    byDefault: true,
  },
  possible: { least: '-60 F', most: '140 F' },
  plausible: { from: '0 F', to: '120 F' },
})

export const hourHumidities = word<'percent'>('hourHumidities', {
  kind: 'percent',
  list: true,
  label: 'humidities hour by hour',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'From the forecast, for the same hours in the same order.',
  ask: 'What are the humidities, hour by hour, in the same order?',
  called: {
    names: ['humidities', 'humidity', 'rh', 'relative humidity'],
    things: ['humidity', 'forecast'],
    sides: ['humidities', 'humidity'],
    plainly: true,
  },
  possible: { above: '0 %', most: '100 %' },
  plausible: { from: '5 %', to: '100 %' },
})

export const rainChances = word<'percent'>('rainChances', {
  kind: 'percent',
  list: true,
  label: 'chances of rain hour by hour',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'From the forecast, for the same hours in the same order.',
  ask: 'What are the chances of rain, hour by hour, in the same order?',
  called: {
    names: ['chance of rain', 'rain chance', 'rain chances', 'chances of rain', 'rain'],
    things: ['rain', 'shower', 'showers'],
    sides: ['chance', 'rain'],
    plainly: true,
  },
  possible: { least: '0 %', most: '100 %' },
  plausible: { from: '0 %', to: '100 %' },
})

export const firstHour = word<'count'>('firstHour', {
  kind: 'count',
  noun: 'o’clock',
  list: true,
  label: 'hours of the list',
  whole: true,
  measure: 'The first of them, or first and last, or all: 6 is six in the morning, 18 six in the evening.',
  ask: 'At which hour does the list begin, by the 24-hour clock?',
  called: {
    names: ['starting at', 'starts at', 'begins at', 'beginning at', 'from hour', 'first hour', 'hourly from'],
    things: ['o’clock', "o'clock", 'hour', 'oclock'],
  },
  possible: { least: '0', most: '23' },
  plausible: { from: '0', to: '23' },
})

export const leastPaintTemperature = word<'temperature'>('leastPaintTemperature', {
  kind: 'temperature',
  label: 'coldest to paint in',
  units: { imperial: 'F', metric: 'C' },
  measure: 'On the can or its data sheet. It must stay above that while it dries.',
  ask: 'Down to what temperature may it be painted, by the can?',
  called: {
    names: [
      'coldest to paint in',
      'not below',
      'no colder than',
      'least temperature',
      'minimum temperature',
      'min temperature',
      'at least',
    ],
    things: ['can', 'paint', 'stain', 'tin'],
    sides: ['minimum', 'above', 'coldest', 'down to'],
  },
  possible: { least: '-20 F', most: '120 F' },
  plausible: { from: '30 F', to: '70 F' },
  usual: {
    value: '50 F',
    metric: '10 C',
    because: 'latex and acrylic go on at that or warmer; an oil paint from 40 °F (4 °C); your can comes first',
    from: 'Wood Handbook, FPL-GTR-190 (2010), chapter 16, https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/378',
  },
})

export const mostPaintTemperature = word<'temperature'>('mostPaintTemperature', {
  kind: 'temperature',
  label: 'hottest to paint in',
  units: { imperial: 'F', metric: 'C' },
  measure: 'On the can or its data sheet. In the sun the wood is far hotter than the air.',
  ask: 'Up to what temperature may it be painted, by the can?',
  called: {
    names: ['hottest to paint in', 'not above', 'no hotter than', 'maximum temperature', 'max temperature', 'at most'],
    things: ['can', 'paint', 'stain', 'tin'],
    sides: ['maximum', 'hottest', 'up to'],
  },
  possible: { least: '0 F', most: '140 F' },
  plausible: { from: '70 F', to: '120 F' },
  usual: {
    value: '90 F',
    metric: '32 C',
    because: 'in greater heat it dries before it has spread; your can comes first',
    from: 'Military Handbook 1110, 7.4.1 (45 to 90 °F), and Iowa State University Extension (50 to 90 °F)',
  },
})

export const mostRainChance = word<'percent'>('mostRainChance', {
  kind: 'percent',
  label: 'chance of rain you would take',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'In any hour while you paint and while it dries.',
  ask: 'What chance of rain would you take?',
  called: {
    names: ['rain up to', 'chance of rain under', 'rain under', 'risk of rain'],
    things: ['risk'],
    sides: ['risk', 'take'],
  },
  possible: { least: '0 %', most: '100 %' },
  plausible: { from: '0 %', to: '60 %' },
  usual: {
    value: '20 %',
    because: 'one chance in five is as much as most painters take',
    from: 'common practice, no source',
  },
})

export const dryHours = word<'duration'>('dryHours', {
  kind: 'duration',
  label: 'hours it must stay dry after painting',
  units: { imperial: 'h', metric: 'h' },
  measure: 'On the can: how long before rain or dew may touch it. Longer in cool or damp air.',
  ask: 'How many hours must it stay dry after painting, by the can?',
  called: {
    names: [
      'dry before rain',
      'dries in',
      'dry in',
      'rain-proof in',
      'rainproof after',
      'hours to dry',
      'drying time',
      'needs to dry',
      'to dry',
    ],
    things: ['can', 'paint', 'stain', 'coat'],
    sides: ['dry', 'dries', 'drying'],
    plainly: true,
    byDefault: true,
  },
  possible: { least: '0 h', most: '72 h' },
  plausible: { from: '0.5 h', to: '48 h' },
  usual: {
    value: '4 h',
    because: 'many acrylics bear a shower after about that; an oil takes longer, so see your can',
    from: 'common practice, no source',
  },
})

const hours = Object.fromEntries(
  Array.from({ length: 25 }, (_, i) => `${String(i).padStart(2, '0')}:00`).map((it) => [it, { label: it, called: [] }]),
)

export const windowStart = word<'choice'>('windowStart', {
  kind: 'choice',
  label: 'first stroke',
  measure: 'The first hour of the longest stretch that keeps every limit.',
  ask: 'When can I start painting?',
  called: {
    names: ['painting window', 'paint window', 'weather window'],
    asks: [
      'painting window',
      'paint window',
      'weather window',
      'which hours can i paint',
      'what hours can i paint',
      'when can i paint',
      'when can i start painting',
      'when do i start painting',
      'when do i stop painting',
      'when should i paint',
      'which hours can i stain',
      'when can i stain',
      'what time can i paint',
      'hours to paint',
      'when to paint',
      'time of day can i paint',
      'time of day to paint',
    ],
  },
  options: hours,
})

export const windowStop = word<'choice'>('windowStop', {
  kind: 'choice',
  label: 'last stroke',
  measure: 'After it everything must still dry in time.',
  ask: 'When do I stop painting?',
  called: {},
  options: hours,
})

export const windowHours = word<'duration'>('windowHours', {
  kind: 'duration',
  label: 'time to paint in',
  units: { imperial: 'h', metric: 'h' },
  measure: 'From the start to the last stroke.',
  ask: 'How many hours are there to paint in?',
  called: { asks: ['how many hours can i paint', 'how many hours to paint in', 'how many painting hours'] },
})

export const windowOpens = word<'verdict'>('windowOpens', {
  kind: 'verdict',
  label: 'a window to paint in',
  measure: 'An hour or more that keeps every limit, and time to dry after it.',
  ask: 'Is there a window to paint in?',
  called: {
    names: ['window to paint'],
    asks: ['is there a window', 'any window', 'can i paint at all today', 'is tomorrow a painting day'],
  },
  says: { yes: 'there is a window', no: 'no window in these hours', unknown: 'cannot say whether there is a window' },
})
