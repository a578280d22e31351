// This file is about the evidence for what is worked of figures that people tell whole: filled holes, faces to paint, rates of drying, sticks of several sizes.
import type { Check } from '../check.ts'
import { dewPointsByPsychrolib } from '../dew-points.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const works = (
  calculation: string,
  what: string,
  it: Omit<Check, 'calculation' | 'what' | 'kind' | 'source'>,
): Check => ({
  calculation,
  what,
  kind: 'library',
  source: mathjsWorks,
  ...it,
})

export const asToldChecks: readonly Check[] = [
  works('holes-filled', 'sixteen round holes filled, with a tenth spare', {
    given: { posts: '16', holeDiameter: '250 mm', holeDepth: '600 mm', spare: '10 %' },
    system: 'metric',
    gives: 'concreteFilled',
    unit: 'L',
    expected: () => byMathjs('16 * pi / 4 * (250 mm)^2 * 600 mm * 1.1', 'litre'),
    tolerance: 1e-6,
  }),
  works('spoil-of-holes', 'loads of a trailer, by the room', {
    given: { posts: '16', holeDiameter: '350 mm', holeDepth: '800 mm', soilSwell: '30 %', loadSize: '0.75 m3' },
    system: 'metric',
    gives: 'vesselLoads',
    unit: 'load',
    expected: () => Math.ceil(byMathjs('16 * pi / 4 * (350 mm)^2 * 800 mm * 1.3 / (0.75 m^3) * 1 m', 'm')),
    tolerance: 0,
  }),
  works('finish-by-face', 'the faces of pickets with gaps, two coats', {
    given: {
      faceLength: '60 ft',
      faceHeight: '4 ft',
      picketWidth: '3 in',
      faceGap: '2 in',
      coats: '2',
      coverageFirst: '300 ft2/gal',
    },
    gives: 'finishNeeded',
    unit: 'gal',
    expected: () => byMathjs('60 * 4 * 2 * 3 / 5 * 2 / 300 * 1.1 * 1 m', 'm'),
    tolerance: 1e-9,
  }),
  works('drying-by-rate', 'days at half a point a day', {
    given: { moistureNow: '24 %', moistureLimit: '15 %', dryingRate: '0.5 %', ratePer: 'day' },
    gives: 'daysAtRate',
    unit: 'day',
    expected: () => byMathjs('(24 - 15) / 0.5 * 1 m', 'm'),
    tolerance: 1e-9,
  }),
  works('weight-at-moisture', 'a piece by its oven-dry weight at 14 %', {
    given: { pieceDry: '450 g', moistureAimed: '14 %' },
    gives: 'weightAimed',
    unit: 'g',
    expected: () => byMathjs('450 * 1.14 * 1 m', 'm'),
    tolerance: 1e-9,
  }),
  works('shrink-by-share', 'a board of 120 mm that shrinks by 2.5 %', {
    given: { widthBefore: '120 mm', shareShrunk: '2.5 %' },
    gives: 'widthShrunk',
    unit: 'mm',
    expected: () => byMathjs('120 * (1 - 0.025) * 1 m', 'm'),
    tolerance: 1e-9,
  }),
  works('sticks-of-sizes', 'board feet of two sizes', {
    given: {
      listThickness: ['2x4', '4x4'],
      listWidth: ['2x4', '4x4'],
      listLength: ['10 ft', '8 ft'],
      listSticks: ['10', '6'],
    },
    gives: 'listBoardFeet',
    unit: 'board foot',
    expected: () => byMathjs('(10 * 2 * 4 * 120 + 6 * 4 * 4 * 96) / 144 * 1 m', 'm'),
    tolerance: 1e-9,
  }),
  ...Object.entries(dewPointsByPsychrolib).flatMap(([airNow, row]) =>
    Object.entries(row)
      .slice(0, 1)
      .map(
        ([humidityNow, expected]): Check => ({
          calculation: 'air-for-paint',
          what: `dew point at ${airNow} °C and ${humidityNow} %, as psychrolib has it`,
          kind: 'library',
          source: 'psychrolib 1.1.1, worked once; tests/evidence/dew-points.ts',
          given: { airNow: `${airNow} C`, humidityNow: `${humidityNow} %` },
          system: 'metric',
          gives: 'dewPoint',
          unit: 'C',
          expected,
          tolerance: 0.01,
        }),
      ),
  ),
]
