// This file is about the evidence for the calculations in wood/.
import type { Check } from '../check.ts'

const table = 'Wood Handbook, FPL-GTR-190 (2010), table 4-2, https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/83'

// The whole table, all 190 cells, is held in tests/engine/calculations/wood/equilibrium-moisture.test.ts.
const cells: readonly (readonly [temperature: string, humidity: string, printed: number])[] = [
  ['30 F', '30 %', 6.3],
  ['30 F', '90 %', 21.0],
  ['50 F', '50 %', 9.5],
  ['70 F', '65 %', 12.0],
  ['70 F', '80 %', 16.0],
  ['90 F', '30 %', 5.9],
  ['110 F', '65 %', 11.0],
]

export const woodChecks: readonly Check[] = [
  ...cells.map(
    ([airTemperature, humidity, printed]): Check => ({
      calculation: 'equilibrium-moisture',
      what: `the moisture wood settles at in ${airTemperature} and ${humidity}`,
      kind: 'handbook',
      source: table,
      given: { airTemperature, humidity },
      gives: 'equilibriumMoisture',
      unit: 'percent',
      expected: printed,
      tolerance: 0.07,
    }),
  ),
  {
    calculation: 'ready-to-finish',
    what: 'at 21 % at depth, with a limit of 15 %, the wood is not dry enough',
    kind: 'handbook',
    source: 'Wood Handbook, FPL-GTR-190 (2010), chapter 16: over 20 % the risk of blistering and peeling rises',
    given: { depthReading: '21 %', moistureLimit: '15 %', waterTest: 'soaks' },
    gives: 'dryEnough',
    unit: 'verdict',
    expected: 0,
    tolerance: 0,
  },
  {
    calculation: 'ready-to-finish',
    what: 'planed wood three weeks in the weather is not ready for a film',
    kind: 'handbook',
    source: 'Wood Handbook, FPL-GTR-190 (2010), chapter 16: the first film coat within two weeks of exposure',
    given: { depthReading: '12 %', moistureLimit: '15 %', waterTest: 'soaks', woodAge: '3 weeks', finishKind: 'film' },
    gives: 'surfaceReady',
    unit: 'verdict',
    expected: 0,
    tolerance: 0,
  },
  {
    calculation: 'ready-to-finish',
    what: 'planed wood one week out, dry at depth, water soaking in, is ready',
    kind: 'handbook',
    source: 'Wood Handbook, FPL-GTR-190 (2010), chapter 16: the first film coat within two weeks of exposure',
    given: { depthReading: '12 %', moistureLimit: '15 %', waterTest: 'soaks', woodAge: '1 week', finishKind: 'film' },
    gives: 'surfaceReady',
    unit: 'verdict',
    expected: 1,
    tolerance: 0,
  },
]
