// The hours of a day in which paint can go on, from a forecast hour by hour and the limits on the can.
//
//   06 07 08 09 10 11 12 13 14 15 16 17 18 19
//   ░░ ░░ ▓▓ ▓▓ ▓▓ ▓▓ ▓▓ ▓▓ ▓▓ ·· ·· ·· ░░ ░░     ▓ paint   · dry enough to paint, too late to dry   ░ a limit is broken
//
// An hour is good when it is warm enough and not too hot, not too damp, far enough above the dew point, and hardly likely to rain.
// Paint may go on in it when the hours in which it then dries are good too; heat does not stop it from drying.
import { calculation } from '../../calculation.ts'
import { dewPointOf, dewSource } from '../../dew.ts'
import { paintWindowDrawing } from '../../drawings/paint-window.ts'
import { compare, subtract } from '../../quantities/amount.ts'
import { less, numberIn, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { dewMargin, humidityLimit } from '../../words/dew.ts'
import {
  dryHours,
  firstHour,
  hourHumidities,
  hourTemperatures,
  leastPaintTemperature,
  mostPaintTemperature,
  mostRainChance,
  rainChances,
  windowHours,
  windowOpens,
  windowStart,
  windowStop,
} from '../../words/paint-hours.ts'

const mostHours = 48
/** What breaks a limit in an hour, in the order in which it is named. */
const faults = ['too cold', 'too hot', 'too damp', 'too near dew', 'rain'] as const
/** What stands in for a fault where the forecast is over before the paint is dry. */
const listEnds = 'end of the list'
type Fault = (typeof faults)[number]

interface Hour {
  readonly clock: string
  readonly fault?: Fault
  /** The first hour, while it dries, that breaks a limit; or that the list does not reach. */
  readonly late?: string
}

export const paintWindow = calculation({
  name: 'paint-window',
  title: 'The hours to paint in',
  answers:
    'When to start painting and when to stop, from hourly temperatures, humidities and chances of rain, by the limits on the can, with time to dry.',
  needs: {
    hourTemperatures,
    hourHumidities,
    rainChances,
    firstHour,
    leastPaintTemperature,
    mostPaintTemperature,
    humidityLimit,
    dewMargin,
    mostRainChance,
    dryHours,
  },
  may: ['rainChances'],
  gives: { windowStart, windowStop, windowHours, windowOpens },
  headlines: ['windowStart', 'windowStop', 'windowOpens'],
  called: ['painting window', 'paint window', 'weather window', 'hour by hour', 'hourly'],
  together: {
    windowStart: ['windowOpens', 'windowStart', 'windowStop', 'windowHours'],
    windowHours: ['windowOpens', 'windowHours', 'windowStart', 'windowStop'],
    windowOpens: ['windowOpens', 'windowStart', 'windowStop', 'windowHours'],
  },
  lines: {},
  work(given, tools) {
    const { has, rows, tell, refuse, remark, doubt, table, cite } = tools
    const temperatures = rows('hourTemperatures')
    const humidities = rows('hourHumidities')
    const rain = has('rainChances') ? rows('rainChances') : undefined
    const count = temperatures.length
    if (count < 2 || count > mostHours)
      refuse(
        'hourTemperatures',
        `I have ${show(quantity(count, 'temperature'))}. Give one for each hour, two or more, and no more than ${cite(quantity(mostHours, 'hour'), 'most hours')}.`,
      )
    for (const [name, list, noun] of [
      ['hourHumidities', humidities, 'humidity'],
      ['rainChances', rain ?? humidities, 'chance of rain'],
    ] as const)
      if (list.length !== count)
        refuse(
          name,
          `I have ${show(quantity(count, 'temperature'))} and ${show(quantity(list.length, noun === 'humidity' ? 'humidity' : 'rain chance'))}. Give one of each for the same hours, in the same order.`,
        )
    const start = numberIn(given.firstHour, given.firstHour.unit)
    const gap = gapIn(
      rows('firstHour').map((it) => numberIn(it, it.unit)),
      count,
    )
    if (gap) refuse('firstHour', gap)
    const dews = temperatures.map((it, i) => dewPointOf(it, humidities[i] as Quantity))
    const faultAt = (i: number, drying: boolean): Fault | undefined => {
      const [air, damp] = [temperatures[i], humidities[i]] as [Quantity, Quantity]
      if (less(air, given.leastPaintTemperature)) return 'too cold'
      if (!drying && less(given.mostPaintTemperature, air)) return 'too hot'
      if (less(given.humidityLimit, damp)) return 'too damp'
      const above = subtract(air.amount, (dews[i] as Quantity).amount)
      if (compare(above, given.dewMargin.amount) === -1) return 'too near dew'
      return rain && less(given.mostRainChance, rain[i] as Quantity) ? 'rain' : undefined
    }
    const drying = Math.ceil(numberIn(given.dryHours, 'h') - 1e-9)
    const hours = temperatures.map((_, i): Hour => {
      const clock = clockAt(start + i)
      const fault = faultAt(i, false)
      if (fault) return { clock, fault }
      for (let later = i + 1; later <= i + drying; later++) {
        if (later >= count) return { clock, late: listEnds }
        const then = faultAt(later, true)
        if (then) return { clock, late: then }
      }
      return { clock }
    })
    table({
      title: 'Hour by hour',
      columns: [
        { label: 'from', unit: '' },
        { label: 'air', unit: '' },
        { label: 'humidity', unit: '' },
        { label: 'dew point', unit: '' },
        { label: 'rain', unit: '' },
        { label: 'paint', unit: '' },
      ],
      rows: hours.map(({ clock, fault, late }, i) => [
        clock,
        show(temperatures[i] as Quantity),
        show(humidities[i] as Quantity),
        show(dews[i] as Quantity),
        rain ? show(rain[i] as Quantity) : '',
        fault ?? (late === listEnds ? 'the list ends too soon' : late ? `no time to dry: ${late}` : 'yes'),
      ]),
    })
    const [from, to] = longestRun(hours)
    if (from === to) {
      const cut = hours.find((it) => it.late === listEnds)
      if (cut && !hours.some((it) => it.late && it.late !== listEnds)) {
        tell('windowOpens', null)
        remark(
          `The list decides: from ${cut.clock} the hour is good, but the list ends before ${show(given.dryHours)} of drying are over. Give more hours.`,
        )
        return
      }
      tell('windowOpens', false)
      const worst = mostOften(hours.map(({ fault, late }) => fault ?? late ?? ''))
      remark(
        `${said(worst)} decides: in these hours there is always ${worst === listEnds ? 'too little left of the list' : 'a limit broken'}, most often that one.`,
      )
      return
    }
    tell('windowOpens', true)
    tell('windowStart', clockAt(start + from))
    tell('windowStop', clockAt(start + to, true))
    tell('windowHours', quantity(to - from, 'h'))
    const [before, after] = [hours[from - 1], hours[to]]
    const why = (hour: Hour | undefined, atEnd: string): string =>
      hour === undefined
        ? atEnd
        : (hour.fault ??
          (hour.late === listEnds
            ? `the list ends before ${show(given.dryHours)} of drying are over, so give more hours`
            : `too little time to dry (${hour.late})`))
    remark(
      `What decides the start: ${why(before, 'the list begins there')} before it. What decides the end: ${why(after, 'the list ends there')}.`,
    )
    if (start + to > 24) remark('The clock runs past midnight: those hours are of the next day.')
    const cold = temperatures.findIndex((it, i) => i >= from && i <= to + 24 && less(it, given.leastPaintTemperature))
    if (cold > 0)
      doubt(
        'implausible',
        'leastPaintTemperature',
        `At ${clockAt(start + cold)} it falls to ${show(temperatures[cold] as Quantity)}. The handbook wants a latex finish to stay above its least temperature for a whole day; read what your can says of the night after.`,
      )
    if (!rain) doubt('missing', 'rainChances', 'Without the chances of rain I left rain out.', rainChances.ask)
    remark(
      'Paint in the shade, following the sun round: a face in direct sun is far hotter than the air. Feel the wood before you begin; dew lies on it longer than in the air.',
    )
  },
  sources: [
    dewSource,
    {
      fact: 'latex at 50 °F (10 °C) and above for 24 hours, oil at 40 °F (4 °C); not in hot sun, nor so late that dew falls on it',
      from: 'Wood Handbook, FPL-GTR-190 (2010), chapter 16, https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/378',
    },
    {
      fact: '45 to 90 °F in general',
      from: 'Military Handbook 1110, 7.4.1; Iowa State University Extension says 50 to 90 °F',
    },
    {
      fact: '85 % humidity and 3 °C (5 °F) above the dew point',
      from: 'paint inspection practice, as printed at https://fr.scribd.com/document/146044552/',
    },
    {
      fact: 'one chance of rain in five, and four hours to dry',
      from: 'common practice, no source: your can comes first',
    },
  ],
  cautions: ['weather', 'dust', 'lead'],
  drawing: paintWindowDrawing,
  examples: [
    // 10:00 is the first within 85 % and over 5 F° above dew; painted by 14:00 it has 4 dry hours before 50 % rain at 18:00
    {
      ask: 'Painting window for a list starting at 7 o’clock: temperatures 48, 52, 57, 62, 66, 69, 71, 72, 71, 69, 66, 62 F; humidities 96, 92, 86, 78, 70, 64, 58, 55, 56, 60, 66, 74 %; chance of rain 0, 0, 0, 0, 0, 0, 10, 10, 10, 10, 20, 50 %?',
      given: {
        firstHour: '7',
        hourTemperatures: [
          '48 F',
          '52 F',
          '57 F',
          '62 F',
          '66 F',
          '69 F',
          '71 F',
          '72 F',
          '71 F',
          '69 F',
          '66 F',
          '62 F',
        ],
        hourHumidities: [
          '96 %',
          '92 %',
          '86 %',
          '78 %',
          '70 %',
          '64 %',
          '58 %',
          '55 %',
          '56 %',
          '60 %',
          '66 %',
          '74 %',
        ],
        rainChances: ['0 %', '0 %', '0 %', '0 %', '0 %', '0 %', '10 %', '10 %', '10 %', '10 %', '20 %', '50 %'],
      },
      expect: { windowOpens: 'there is a window', windowStart: '10:00', windowStop: '14:00', windowHours: '4 hours' },
    },
    // everywhere over 85 %
    {
      ask: 'Which hours can I paint: list starting at 9 o’clock, temperatures 12, 13, 14, 14, 13 C; humidities 95, 93, 90, 90, 94 %?',
      given: {
        firstHour: '9',
        hourTemperatures: ['12 C', '13 C', '14 C', '14 C', '13 C'],
        hourHumidities: ['95 %', '93 %', '90 %', '90 %', '94 %'],
      },
      expect: { windowOpens: 'no window in these hours' },
    },
  ],
})

/** What is wrong with the hours as they were given: the first, the first and the last, or every one in turn. */
function gapIn(hours: readonly number[], count: number): string | undefined {
  const [first, last] = [hours[0], hours.at(-1)] as [number, number]
  const span = last - first + (last < first ? 24 : 0)
  const each = `I read one figure for each hour.`
  if (hours.length === 1) return undefined
  if (hours.length === 2 && count > 2)
    // "from 7 to 19" may count the hour that begins at 19, or not.
    return span === count || span === count - 1
      ? undefined
      : `From ${clockAt(first)} to ${clockAt(last)} are ${span} hours, and there are ${count} temperatures. ${each}`
  const after = hours.findIndex((it, i) => i > 0 && it !== ((hours[i - 1] as number) + 1) % 24)
  if (after > 0)
    return `After ${clockAt(hours[after - 1] as number)} comes ${clockAt(hours[after] as number)}. ${each} Give a line for every hour.`
  return hours.length === count ? undefined : `There are ${hours.length} hours and ${count} temperatures. ${each}`
}

/** `09:00`; the end of a day is 24:00 where it ends something. */
function clockAt(hour: number, asEnd = false): string {
  const inDay = hour % 24
  return `${String(asEnd && inDay === 0 ? 24 : inDay).padStart(2, '0')}:00`
}

/** Where the longest stretch of hours to paint in begins and ends; both the same where there is none. The first of equals. */
function longestRun(hours: readonly Hour[]): readonly [from: number, to: number] {
  let best: readonly [number, number] = [0, 0]
  let from = 0
  hours.forEach((hour, i) => {
    if (hour.fault || hour.late) from = i + 1
    else if (i + 1 - from > best[1] - best[0]) best = [from, i + 1]
  })
  return best
}

const mostOften = (all: readonly string[]): string =>
  all.reduce((best, it) => (all.filter((x) => x === it).length > all.filter((x) => x === best).length ? it : best))

const said = (fault: string): string =>
  ({
    'too cold': 'Cold',
    'too hot': 'Heat',
    'too damp': 'Humidity',
    'too near dew': 'The dew point',
    rain: 'Rain',
    [listEnds]: 'The list',
  })[fault] ?? 'The list'
