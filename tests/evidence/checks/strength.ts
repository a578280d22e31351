// This file is about the evidence for posts and rails against bending and shear.
import { isQuantity, numberIn } from '../../../engine/quantities/quantity.ts'
import type { Ran } from '../../engine/run-named.ts'
import { type Check, step } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const cedarPost = { sideForce: '187.4 lb', forceHeight: '2 ft', postWidth: '3 1/2 in', lumberGroup: 'western-cedars' }
const tallPost = { sideForce: '522 lb', forceHeight: '3.3 ft', postWidth: '3 1/2 in' }
const lumber = 'Reference book, lumber structure (NDS values and factors, those of cedar in part from memory)'
const bookRail = {
  opening: '92 1/2 in',
  railDepth: '3 1/2 in',
  railThickness: '1 1/2 in',
  leanWeight: '200 lb',
  lumberGroup: 'western-cedars',
}

/** The stress that holds a moment in balance, the section cut into thin strips whose stress grows with their distance from the middle. */
function stressByStrips(moment: number, wide: number, high: number): number {
  const strips = 20_000
  let held = 0
  for (let i = 0; i < strips; i++) {
    const from = ((i + 0.5) / strips - 0.5) * high
    held += (from / (high / 2)) * from * wide * (high / strips)
  }
  return moment / held
}

export const strengthChecks: readonly Check[] = [
  ...(
    [
      ['southern-pine', 1760],
      ['western-cedars', 1680],
      ['douglas-fir-larch', 1836],
      ['hem-fir', 1734],
    ] as const
  ).map(
    ([lumberGroup, expected]): Check => ({
      calculation: 'post-strength',
      what: `allowed bending stress in a gust, wet: ${lumberGroup}`,
      kind: 'reference',
      source: lumber,
      reference: 'lum-02',
      given: { ...cedarPost, lumberGroup },
      gives: 'bendingAllowed',
      unit: 'psi',
      expected,
      tolerance: 0.5,
    }),
  ),
  ...(
    [
      ['postStress', 'psi', 629.4, 0.05],
      ['postUsed', 'ratio', 0.375, 0.0005],
    ] as const
  ).map(
    ([gives, unit, expected, tolerance]): Check => ({
      calculation: 'post-strength',
      what: `${gives} of a cedar 4x4 under the push of that example`,
      kind: 'reference',
      source: lumber,
      reference: 'lum-03',
      given: cedarPost,
      gives,
      unit: unit === 'ratio' ? 'percent' : unit,
      got: gives === 'postUsed' ? ({ outcome }) => shareOf(outcome, 'postUsed') : undefined,
      expected,
      tolerance,
    }),
  ),
  ...(
    [
      ['southern-pine', 1.644],
      ['western-cedars', 1.722],
    ] as const
  ).map(
    ([lumberGroup, expected]): Check => ({
      calculation: 'post-strength',
      what: `a 4x4 behind a solid 6 ft fence uses more than it has: ${lumberGroup}`,
      kind: 'reference',
      source: lumber,
      reference: 'lum-04',
      given: { ...tallPost, lumberGroup },
      gives: 'postUsed',
      unit: 'ratio',
      got: ({ outcome }) => shareOf(outcome, 'postUsed'),
      expected,
      tolerance: 0.0005,
    }),
  ),
  ...(
    [
      ['sitStress', 1510],
      ['pushStress', 3524],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'rail-strength',
      what: `${gives} of a rail under 200 lb`,
      kind: 'reference',
      source: lumber,
      reference: 'lum-06',
      given: bookRail,
      gives,
      unit: 'psi',
      expected,
      tolerance: 0.5,
    }),
  ),
  {
    calculation: 'post-strength',
    what: 'bending value of southern pine against the metric one of its makers’ guide, 7.6 MPa',
    kind: 'handbook',
    source:
      'Southern Pine use guide, metric values, as carried in a public program: 7.6 MPa; a gust makes it 1.6 times that',
    reference: 'lum-07',
    given: { ...cedarPost, lumberGroup: 'southern-pine' },
    gives: 'bendingAllowed',
    unit: 'MPa',
    expected: 7.6 * 1.6,
    // The guide prints one place: half of it, in a gust.
    tolerance: 0.05 * 1.6,
  },
  ...(
    [
      ['postShear', 63.9],
      ['shearAllowed', 271.6],
    ] as const
  ).map(
    ([gives, expected]): Check => ({
      calculation: 'post-strength',
      what: `${gives}: shear never governs a fence post`,
      kind: 'reference',
      source: lumber,
      reference: 'lum-08',
      given: { ...tallPost, lumberGroup: 'southern-pine' },
      gives,
      unit: 'psi',
      got: step(gives, 'psi'),
      expected,
      tolerance: 0.05,
    }),
  ),
  {
    calculation: 'post-strength',
    what: 'section modulus of a 4x4',
    kind: 'reference',
    source: lumber,
    reference: 'lum-01',
    given: cedarPost,
    gives: 'sectionModulus',
    unit: 'in3',
    expected: 7.146,
    tolerance: 0.0005,
  },
  {
    calculation: 'post-strength',
    what: 'bending stress, in newtons and millimetres',
    kind: 'second derivation',
    source:
      'second derivation: the section cut into twenty thousand strips that share the moment by their distance from the middle',
    given: { sideForce: '900 N', forceHeight: '600 mm', postWidth: '90 mm' },
    system: 'metric',
    gives: 'postStress',
    unit: 'MPa',
    expected: () => stressByStrips(900 * 600, 90, 90),
    tolerance: 1e-6,
  },
  {
    calculation: 'rail-strength',
    what: 'stress under the wind on a bay of two rails',
    kind: 'second derivation',
    source:
      'second derivation: the moment in the middle summed from small loads along the rail, the section cut into strips',
    given: { opening: '2310 mm', railDepth: '90 mm', railThickness: '45 mm', rails: '2', sideForce: '900 N' },
    system: 'metric',
    gives: 'windStress',
    unit: 'MPa',
    expected: () => {
      const loads = 10_000
      let moment = (450 / 2) * (2310 / 2)
      for (let i = 0; i < loads / 2; i++) moment -= (450 / loads) * (2310 / 2 - (i + 0.5) * (2310 / loads))
      return stressByStrips(moment, 90, 45)
    },
    tolerance: 1e-5,
  },
  {
    calculation: 'rail-strength',
    what: 'stress with somebody sitting on it',
    kind: 'library',
    source: mathjsWorks,
    given: bookRail,
    gives: 'sitStress',
    unit: 'psi',
    expected: () => byMathjs('200 lbf * 92.5 inch / 4 / (1.5 inch * (3.5 inch)^2 / 6)', 'psi'),
    tolerance: 1e-6,
  },
]

const shareOf = (outcome: Ran['outcome'], name: string): number => {
  const value = outcome.ok ? outcome.values.get(name) : undefined
  if (!isQuantity(value)) throw new Error(`no ${name}`)
  return numberIn(value, 'percent') / 100
}
