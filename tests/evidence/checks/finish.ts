// This file is about the evidence for the calculations in finish/.
import { isQuantity, numberIn } from '../../../engine/quantities/quantity.ts'
import type { Check } from '../check.ts'
import { dewPointsByPsychrolib } from '../dew-points.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'
import type { Ran } from '../../engine/run-named.ts'

const book = 'Reference book, from the sources it names'
const handbook = 'Wood Handbook, FPL-GTR-190 (2010), chapter 16'

const bay = {
  picketsHung: '15',
  picketWidth: '3 1/2 in',
  picketThickness: '3/4 in',
  picketLength: '42 in',
  railsInAll: '2',
  railCut: '94 1/2 in',
  posts: '1',
  postAbove: '48 in',
}
const areaOf = (gives: string, what: string, expected: number, given: Record<string, string> = bay): Check => ({
  calculation: 'finish-area',
  what,
  kind: 'reference',
  source: `${book}: geometry`,
  reference: 'area-bay',
  given,
  gives,
  unit: 'ft2',
  expected,
  tolerance: 1e-6,
})

const twoCoats = {
  finishArea: '556.1 ft2',
  coats: '2',
  coverageFirst: '150 ft2/gal',
  coverageNext: '300 ft2/gal',
  finishSpare: '10 %',
}

/** The day's forecast of the example in paint-window. */
const day = {
  air: [48, 52, 57, 62, 66, 69, 71, 72, 71, 69, 66, 62],
  damp: [96, 92, 86, 78, 70, 64, 58, 55, 56, 60, 66, 74],
  rain: [0, 0, 0, 0, 0, 0, 10, 10, 10, 10, 20, 50],
}

const yearsBetween = (ran: Ran, from: number, word: string): number => {
  const value = ran.outcome.ok ? ran.outcome.values.get(word) : undefined
  return isQuantity(value) ? (numberIn(value, 'date') - from) / 365.25 : Number.NaN
}
/** 12 May 2026, in days from the first of January 1970. */
const may2026 = Date.UTC(2026, 4, 12) / 86_400_000

export const finishChecks: readonly Check[] = [
  {
    calculation: 'finish-area',
    what: 'a picket of 3/4 by 3 1/2 by 42 in, all round',
    kind: 'reference',
    source: `${book}: geometry`,
    reference: 'area-picket',
    given: { picketsHung: '1', picketWidth: '3 1/2 in', picketThickness: '3/4 in', picketLength: '42 in' },
    gives: 'finishArea',
    unit: 'ft2',
    expected: 2.515625,
    tolerance: 1e-9,
  },
  areaOf('picketsArea', '15 pickets of a bay', 37.734375),
  areaOf('railsArea', 'two rails of a bay', 13.125),
  areaOf('postsArea', 'a post of 48 in', 4.7517361),
  areaOf('finishArea', 'the whole bay', 55.611111),
  areaOf('hiddenArea', 'the faces that are covered once it is together', 5.1041667),
  {
    calculation: 'finish-area',
    what: 'the skin of the bay’s pickets, as what their bulk grows by under a film of no thickness',
    kind: 'second derivation',
    source:
      'second derivation: the volume of the picket with a film of a millionth of an inch all round, less its own, divided by the film',
    given: { picketsHung: '15', picketWidth: '3 1/2 in', picketThickness: '3/4 in', picketLength: '42 in' },
    gives: 'finishArea',
    unit: 'ft2',
    expected: () => {
      const film = 1e-6
      const bulk = (more: number): number => (3.5 + more) * (0.75 + more) * (42 + more)
      return (15 * (bulk(2 * film) - bulk(0))) / film / 144
    },
    tolerance: 1e-3,
  },
  {
    calculation: 'finish-quantity',
    what: 'two coats on 556.1 ft² at 150 and 300 ft² a gallon with 10 % spare',
    kind: 'reference',
    source: book,
    reference: 'paint-two-coats',
    given: twoCoats,
    gives: 'finishNeeded',
    unit: 'gal',
    expected: 6.1171,
    tolerance: 1e-9,
  },
  {
    calculation: 'finish-quantity',
    what: 'the same in gallon cans',
    kind: 'reference',
    source: book,
    reference: 'paint-two-coats',
    given: { ...twoCoats, canSize: '1 gal' },
    gives: 'finishCans',
    unit: 'can',
    expected: 7,
    tolerance: 0,
  },
  {
    calculation: 'finish-quantity',
    what: 'the same in litres, as mathjs works it',
    kind: 'library',
    source: mathjsWorks,
    given: twoCoats,
    gives: 'finishNeeded',
    unit: 'L',
    expected: () => byMathjs('556.1 * (1 / 150 + 1 / 300) * 1.1 gal', 'L'),
    tolerance: 1e-6,
  },
  ...(
    [
      ['200 ft2/gal', '4.9 m2', 'rate-units', 0.02 / 4.9],
      ['400 ft2/gal', '9.8 m2', 'rate-units-400', 0.03 / 9.8],
    ] as const
  ).map(
    ([coverageFirst, finishArea, reference, tolerance]): Check => ({
      calculation: 'finish-quantity',
      what: `a litre for ${finishArea} at ${coverageFirst}: the handbook prints both`,
      kind: 'published',
      source: `${handbook}, https://issuhub.com/view/index/5801?pageIndex=375`,
      reference,
      given: { finishArea, coats: '1', coverageFirst, finishSpare: '0 %' },
      system: 'metric',
      gives: 'finishNeeded',
      unit: 'L',
      expected: 1,
      tolerance,
    }),
  ),
  ...Object.entries(dewPointsByPsychrolib).flatMap(([airNow, row]) =>
    Object.entries(row).map(
      ([humidityNow, expected]): Check => ({
        calculation: 'dew-point',
        what: `dew point at ${airNow} °C and ${humidityNow} %, as psychrolib has it`,
        kind: 'library',
        source: 'psychrolib 1.1.1, worked once; tests/evidence/dew-points.ts',
        given: { airNow: `${airNow} C`, humidityNow: `${humidityNow} %` },
        system: 'metric',
        gives: 'dewPoint',
        unit: 'C',
        expected,
        // The program promises a tenth of a degree; it keeps a hundredth.
        tolerance: 0.01,
      }),
    ),
  ),
  ...(
    [
      [10, 90, 8.4372138],
      [16, 71, 10.750089],
      [20, 50, 9.2723923],
      [20, 80, 16.447058],
      [25, 60, 16.701132],
      [30, 70, 23.927892],
      [35, 40, 19.384649],
    ] as const
  ).map(
    ([air, damp, expected]): Check => ({
      calculation: 'dew-point',
      what: `dew point at ${air} °C and ${damp} %, by Hyland and Wexler’s equation solved by halving`,
      kind: 'second derivation',
      source: 'second derivation: the equation of ASHRAE’s handbook solved by halving between −100 and 100 °C',
      reference: `dew-${air}-${damp}`,
      given: { airNow: `${air} C`, humidityNow: `${damp} %` },
      system: 'metric',
      gives: 'dewPoint',
      unit: 'C',
      expected: () => {
        const halved = dewByHalving(air, damp)
        if (Math.abs(halved - expected) > 1e-3) throw new Error(`the reference book has ${expected}, halving ${halved}`)
        return halved
      },
      tolerance: 1e-3,
    }),
  ),
  {
    calculation: 'dew-point',
    what: 'the chart of a paint manual: 16 °C and 71 % give 11 °C',
    kind: 'published',
    source: 'https://fr.scribd.com/document/146044552/',
    reference: 'dew-chart-16-71',
    given: { airNow: '16 C', humidityNow: '71 %' },
    system: 'metric',
    gives: 'dewPoint',
    unit: 'C',
    expected: 11,
    tolerance: 0.5,
  },
  {
    calculation: 'dew-point',
    what: '75 °F and 70 %, by Magnus’s formula',
    kind: 'reference',
    source: book,
    reference: 'dew-F',
    given: { airNow: '75 F', humidityNow: '70 %' },
    gives: 'dewPoint',
    unit: 'F',
    expected: 64.55322,
    tolerance: 0.05,
  },
  {
    calculation: 'dew-point',
    what: 'a face of 18 °C in air of 21 °C and 65 % is far enough from dew',
    kind: 'handbook',
    source: 'face at least 3 °C above the dew point, at most 85 %: https://fr.scribd.com/document/146044552/',
    reference: 'dew-gate-ok',
    given: { airNow: '21 C', humidityNow: '65 %', surfaceTemperature: '18 C' },
    system: 'metric',
    gives: 'dewHolds',
    unit: 'verdict',
    expected: 1,
    tolerance: 0,
  },
  {
    calculation: 'dew-point',
    what: 'a face of 13 °C in air of 16 °C and 71 % is rejected, as the source does',
    kind: 'published',
    source: 'https://fr.scribd.com/document/146044552/',
    reference: 'dew-gate-fail',
    given: { airNow: '16 C', humidityNow: '71 %', surfaceTemperature: '13 C' },
    system: 'metric',
    gives: 'dewHolds',
    unit: 'verdict',
    expected: 0,
    tolerance: 0,
  },
  {
    calculation: 'paint-window',
    what: 'hours to paint in of a day, each judged by itself',
    kind: 'second derivation',
    source: 'second derivation: every hour judged in a loop of its own, dew by Magnus’s formula instead of ASHRAE’s',
    given: {
      firstHour: '7',
      hourTemperatures: day.air.map((it) => `${it} F`),
      hourHumidities: day.damp.map((it) => `${it} %`),
      rainChances: day.rain.map((it) => `${it} %`),
    },
    gives: 'windowHours',
    unit: 'h',
    expected: () => hoursByLoop(day),
    tolerance: 0,
  },
  {
    calculation: 'painting-hours',
    what: '60 pickets, 16 rails and 9 posts, two coats, as mathjs works it',
    kind: 'library',
    source: mathjsWorks,
    given: { picketsHung: '60', railsInAll: '16', posts: '9', coats: '2' },
    gives: 'paintingTime',
    unit: 'h',
    expected: () => byMathjs('2 * (60 * 5 minute + 16 * 8 minute + 9 * 8 minute + 45 minute)', 'hour'),
    tolerance: 1e-9,
  },
  ...(
    [
      ['semitransparent', 4, 8],
      ['solid', 6, 15],
      ['paint', 10, 20],
    ] as const
  ).flatMap(([finishType, least, most]): Check[] =>
    (
      [
        ['recoatFrom', least],
        ['recoatBy', most],
      ] as const
    ).map(([gives, expected]) => ({
      calculation: 'recoat-calendar',
      what: `years of ${finishType}, ${gives}`,
      kind: 'handbook',
      source: 'Wood Handbook, FPL-GTR-190 (2010), table 16-5, https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/374',
      given: { lastCoat: '2026-05-12', finishType },
      gives,
      unit: 'year',
      got: (ran) => yearsBetween(ran, may2026, gives),
      expected,
      tolerance: 0.005,
    })),
  ),
  {
    calculation: 'painting-by-area',
    what: '560 square feet twice by two people, painted minute by minute',
    kind: 'second derivation',
    source:
      'second derivation: two brushes at 80 square feet an hour, each minute off the area, sheets and brushes before',
    given: { finishArea: '560 ft2', areaAnHour: '80 ft2', coats: '2', painters: '2', coatSetUp: '45 min' },
    gives: 'paintingClock',
    unit: 'h',
    expected: () => {
      let minutes = 0
      for (let coat = 0; coat < 2; coat++) {
        minutes += 45
        for (let sixtieths = 560 * 60; sixtieths > 0; sixtieths -= 2 * 80) minutes++
      }
      return minutes / 60
    },
    tolerance: 1e-9,
  },
]

/** ASHRAE's saturation over water, written out again in °C, and the dew point found by halving. */
function dewByHalving(celsius: number, percent: number): number {
  const lnFull = (t: number): number => {
    const T = t + 273.15
    return (
      -5.8002206e3 / T +
      1.3914993 -
      4.8640239e-2 * T +
      4.1764768e-5 * T ** 2 -
      1.4452093e-8 * T ** 3 +
      6.5459673 * Math.log(T)
    )
  }
  const vapour = lnFull(celsius) + Math.log(percent / 100)
  let [low, high] = [-100, 100]
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2
    if (lnFull(middle) < vapour) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** 50 to 90 °F, at most 85 %, 5 °F over the dew point, at most one chance of rain in five, and four such hours after it (heat aside). */
function hoursByLoop({ air, damp, rain }: typeof day): number {
  const good = air.map((fahrenheit, i) => {
    const t = ((fahrenheit - 32) * 5) / 9
    const g = Math.log((damp[i] as number) / 100) + (17.625 * t) / (243.04 + t)
    const dew = ((243.04 * g) / (17.625 - g)) * 1.8 + 32
    return fahrenheit >= 50 && (damp[i] as number) <= 85 && fahrenheit - dew >= 5 && (rain[i] as number) <= 20
  })
  const paints = good.map((it, i) => it && (air[i] as number) <= 90 && [1, 2, 3, 4].every((later) => good[i + later]))
  let [longest, run] = [0, 0]
  for (const it of paints) {
    run = it ? run + 1 : 0
    longest = Math.max(longest, run)
  }
  return longest
}
