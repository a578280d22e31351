// This file is about an amount held against another: is that a yard, is it more than 500, have we enough of them.
import type { Kind } from '../quantities/units.ts'
import { type Word, word } from './word.ts'

const kinds = {
  volume: { noun: 'volume', units: { imperial: 'ft3', metric: 'L' } },
  mass: { noun: 'weight', units: { imperial: 'lb', metric: 'kg' } },
  length: { noun: 'length', units: { imperial: 'ft', metric: 'm' } },
  money: { noun: 'amount of money', units: { imperial: 'USD', metric: 'USD' } },
} as const
export type Compared = keyof typeof kinds
export const comparedKinds = Object.keys(kinds) as Compared[]

const ofKind = <K extends Compared>(kind: K, name: string, label: string, measure: string): Word<Kind> =>
  word<Kind>(`${kind}${name}`, {
    kind: kind as Kind,
    label,
    units: kinds[kind].units,
    measure,
    ask: `What is the ${label}?`,
    called: {},
  })

/** The four words of each kind: `volumeHere`, `volumeMark`, `volumeAsMark`, `volumeApart` … */
export const comparedWords = Object.fromEntries(
  comparedKinds.map((kind) => {
    const { noun } = kinds[kind]
    return [
      kind,
      {
        here: ofKind(kind, 'Here', `${noun} it comes to`, 'As it was worked, or as you say it.'),
        mark: ofKind(kind, 'Mark', `${noun} it is held against`, 'One yard, half a ton, so much money.'),
        asMark: ofKind(
          kind,
          'AsMark',
          `the same ${noun}, said as the other is`,
          'In the unit of what it is held against.',
        ),
        apart: ofKind(kind, 'Apart', `${noun} between the two`, 'The larger less the smaller.'),
      },
    ]
  }),
) as Record<Compared, Record<'here' | 'mark' | 'asMark' | 'apart', Word<Kind>>>

export const comparison = word<'choice'>('comparison', {
  kind: 'choice',
  label: 'against that',
  measure: 'More, less, or just as much.',
  ask: 'Is it more or less than that?',
  called: {},
  options: {
    'more than that': { label: 'more than that', called: [] },
    'less than that': { label: 'less than that', called: [] },
    'just that': { label: 'just that', called: [] },
  },
})

export const piecesHad = word<'count'>('piecesHad', {
  kind: 'count',
  noun: 'piece',
  label: 'pieces there are already',
  whole: true,
  measure: 'Count those that are sound enough to use.',
  ask: 'How many have you got already?',
  called: {},
  possible: { least: '0' },
})

export const enoughPieces = word<'verdict'>('enoughPieces', {
  kind: 'verdict',
  label: 'whether there are enough',
  measure: 'What there is already, against what is needed.',
  ask: 'Are there enough of them?',
  called: {},
  says: { yes: 'enough', no: 'not enough', unknown: 'cannot say whether there are enough' },
})

export const piecesShort = word<'count'>('piecesShort', {
  kind: 'count',
  noun: 'piece',
  label: 'still to get',
  whole: true,
  measure: 'What is needed, less what there is already.',
  ask: 'How many more are needed?',
  called: {},
})

export const piecesBeyond = word<'count'>('piecesBeyond', {
  kind: 'count',
  noun: 'piece',
  label: 'more than needed',
  whole: true,
  measure: 'What there is already, less what is needed.',
  ask: 'How many are left over?',
  called: {},
})
