// This file is about the evidence for cut plans: a published problem, the reference book's, and small ones by going through everything.
import Fraction from 'fraction.js'
import type { CutProblem } from '../../../engine/cutting/problem.ts'
import { cutSolver } from '../../../src/solver/highs.ts'
import { bestOfAll } from '../../engine/cutting/exhaustive.ts'
import { u120 } from '../../engine/cutting/published.ts'
import type { Check } from '../check.ts'

const solver = await cutSolver()

const texts = (all: readonly { readonly length: Fraction; readonly count: number }[]) => ({
  pieceLengths: all.map((it) => `${it.length.toFraction(true)} in`),
  pieceCounts: all.map((it) => String(it.count)),
})

const plain = { kerf: '0 in', endTrim: '0 in', leastOffcut: '12 in' }
const confirmed = ['pieceLengths', 'pieceCounts', 'stockLengths']

/** A job in whole inches and cents, worked by going through every way of laying its pieces. */
const job: CutProblem = {
  pieces: [
    { length: new Fraction(58), count: 2 },
    { length: new Fraction(45), count: 2 },
    { length: new Fraction(31), count: 2 },
    { length: new Fraction(22), count: 1 },
  ],
  stocks: [
    { length: new Fraction(96), price: 680 },
    { length: new Fraction(120), price: 920 },
  ],
  kerf: new Fraction(1),
  endTrim: new Fraction(1),
  leastOffcut: new Fraction(12),
}

const hand = (
  sticks: number,
  stock: number,
  pieces: readonly (readonly [number, number])[],
  reference: string,
): Check => ({
  calculation: 'cut-plan',
  what: `${pieces.reduce((sum, [, count]) => sum + count, 0)} pieces from sticks of ${stock} in`,
  kind: 'reference',
  source: 'Reference book, cutting stock; the fewest by exhaustive search there',
  reference,
  given: {
    ...plain,
    ...texts(pieces.map(([length, count]) => ({ length: new Fraction(length), count }))),
    stockLengths: `${stock} in`,
  },
  confirmed,
  solver,
  gives: 'boardsToCut',
  unit: 'board',
  expected: sticks,
  tolerance: 0,
})

const once = (...lengths: readonly number[]): [number, number][] =>
  [...new Set(lengths)].map((it) => [it, lengths.filter((other) => other === it).length])

export const cuttingChecks: readonly Check[] = [
  {
    calculation: 'cut-plan',
    what: 'Falkenauer u120_00: 120 pieces from sticks of 150, the fewest sticks',
    kind: 'published',
    source:
      'E. Falkenauer, bin packing problem u120_00, best known and proved 48: Bounds.txt and test/data/bpp of https://github.com/rafaelmartinelli/BPPLib.jl, commit 2b30a398, licence MIT',
    reference: 'bp-u120_00',
    given: { ...plain, ...texts(u120.pieces), stockLengths: '150 in' },
    confirmed,
    solver,
    gives: 'boardsToCut',
    unit: 'board',
    expected: 48,
    tolerance: 0,
  },
  hand(
    5,
    100,
    [
      [60, 5],
      [30, 1],
    ],
    'bp-l2-beats-l1',
  ),
  hand(2, 96, once(45, 42, 36, 27, 21, 14), 'bp-ffd-not-opt'),
  hand(3, 96, once(51, 50, 39, 38, 30, 21, 19, 14, 13), 'bp-ffd-not-opt2'),
  hand(4, 96, once(55, 52, 44, 39, 38, 31, 28), 'bp-bound-not-tight'),
  hand(5, 96, once(52, 52, 47, 45, 42, 37, 36, 26, 21, 21), 'bp-l2-5'),
  {
    // 6 × 42 in, 4 × 30 in, 5 × 23 in from 96 in, cuts of 1/8 in.
    ...hand(
      6,
      96,
      [
        [42, 6],
        [30, 4],
        [23, 5],
      ],
      'bp-kerf',
    ),
    given: {
      ...plain,
      kerf: '1/8 in',
      pieceLengths: ['42 in', '30 in', '23 in'],
      pieceCounts: ['6', '4', '5'],
      stockLengths: '96 in',
    },
  },
  ...(
    [
      ['cutCost', 'USD', (): number => (bestOfAll(job)?.price ?? 0) / 100],
      ['boardsToCut', 'board', (): number => bestOfAll(job)?.boards ?? 0],
      ['longestOffcut', 'in', (): number => bestOfAll(job)?.longest ?? 0],
    ] as const
  ).map(
    ([gives, unit, expected]): Check => ({
      calculation: 'cut-plan',
      what: `${gives} of seven pieces from boards of 8 and 10 ft, each with its price`,
      kind: 'second derivation',
      source: 'second derivation: every way of laying the pieces on boards gone through one by one',
      given: {
        ...texts(job.pieces),
        stockLengths: ['96 in', '120 in'],
        stockPrices: ['$6.80', '$9.20'],
        kerf: '1 in',
        endTrim: '1 in',
        leastOffcut: '12 in',
      },
      confirmed: [...confirmed, 'kerf', 'endTrim'],
      solver,
      gives,
      unit,
      expected,
      tolerance: 0,
    }),
  ),
]
