// Whole fences as they were last understood and worked: read back, asked about, assumed, and why each figure is what it is. Kept as in as-worked.test.ts.
import { describe, expect, it } from 'vitest'
import { vocabulary } from '../../../engine/catalogue.ts'
import { pathOf, showValue } from '../../../engine/job/explain.ts'
import { fieldPackOf } from '../../../engine/job/field-pack.ts'
import { fenceInWords } from '../../../engine/job/in-words.ts'
import { decide, type Job } from '../../../engine/job/job.ts'
import { newMemo } from '../../../engine/job/node.ts'
import { assumptionsOf, openQuestions } from '../../../engine/job/next.ts'
import { looksAt } from '../../../engine/job/parts.ts'
import { work } from '../../../engine/job/work.ts'
import type { System } from '../../../engine/quantities/quantity.ts'
import { yard } from '../../../engine/places.ts'
import type { Word } from '../../../engine/words/word.ts'
import { inWords, packInWords, shapesOf, tableInWords } from '../in-words.ts'
import { decisionsOf, jobOf, oneFence, planFrom, type Told, yardOfSix } from './fences.ts'

const wordOf = (name: string): Word => vocabulary.get(name) as Word

const stocks: Told = {
  railStock: '8 ft; 12 ft; 16 ft',
  railStockPrices: '$6; $9.50; $14',
  postStock: '8 ft; 10 ft',
  picketStock: '12 ft; 16 ft',
  kerf: '1/8 in',
}
const fences: readonly (readonly [name: string, system: System, ...turns: Told[]])[] = [
  ['one-run', 'imperial', { ...oneFence, runLength: '60 ft' }],
  ['nothing-but-a-length', 'imperial', { 'runLength@front': '60 ft' }],
  ['cut-from-stock', 'imperial', { ...oneFence, ...stocks, 'runLength@front': '40 ft', 'runLength@left': '30 ft' }],
  [
    'by-its-corners',
    'imperial',
    { ...oneFence, pointsAcross: '0 ft; 40 ft; 40 ft; 20 ft', pointsAlong: '0 ft; 0 ft; 30 ft; 45 ft' },
  ],
  ['six-runs-in-two-turns', 'imperial', yardOfSix, { widestBay: '7 ft', 'picketWidth@front': '5 1/2 in' }],
  [
    'two-gates-in-one-run',
    'metric',
    {
      'runLength@front': '20 m',
      'gates@front': '2',
      'gateOpening@front/gate-1': '1 m',
      'gateOpening@front/gate-2': '3 m',
      widestBay: '2.4 m',
    },
    {
      'gateStart@front/gate-1': '2 m',
      'gateStart@front/gate-2': '12 m',
      'farEnd@front': 'wall',
      'fall@front': '600 mm',
    },
  ],
  // Round a yard that turns left once, told the other way round than the one above.
  [
    'by-corners-that-turn-left',
    'metric',
    {
      pointsAcross: '0 m; 0 m; 6 m; 6 m; 12 m; 12 m',
      pointsAlong: '0 m; 12 m; 12 m; 6 m; 6 m; 0 m',
      widestBay: '2.4 m',
      postWidth: '90 mm',
    },
  ],
  // What the first turn told is told otherwise in the second, and the sizes of the posts differ by kind.
  [
    'told-anew-with-gate-posts',
    'imperial',
    {
      ...oneFence,
      'runLength@front': '40 ft',
      'gates@front': '1',
      'gateOpening@front/gate-1': '42 in',
      'postWidth@gate-posts': '5 1/2 in',
      'holeDiameter@gate-posts': '16 in',
    },
    { 'runLength@front': '44 ft', 'gateOpening@front/gate-1': '48 in', 'postLength@gate-posts': '9 ft' },
  ],
  ['a-gate-without-its-width', 'imperial', { ...oneFence, 'runLength@front': '40 ft', 'gates@front': '1' }],
  [
    'posts-of-two-sizes',
    'imperial',
    {
      ...oneFence,
      'runLength@front': '40 ft',
      'runLength@left': '30 ft',
      'holeDiameter@corner-posts': '12 in',
      'postLength@end-posts': '8 ft',
    },
  ],
]

const jobIn = (system: System, turns: readonly Told[]): Job => ({
  ...turns.reduce<Job>((job, told, turn) => decide(job, decisionsOf(told, turn, system)), jobOf({})),
  system,
})

describe('a fence as it was told', () => {
  it.each(fences)('%s', async (name, system, ...told) => {
    const turns = told as readonly Told[]
    const job = jobIn(system as System, turns)
    const memo = newMemo()
    const turn = turns.length
    const plan = planFrom(job, memo, turn)
    const asked = openQuestions(job, memo, turn).map(
      ({ word, at, question, waits }) => `${word} at ${at}: ${question} For: ${waits.join(', ')}.`,
    )
    const assumed = assumptionsOf(job, memo, turn).map(({ word, at, value, usual, tried, moves }) =>
      [
        `${word} at ${at}: ${showValue(wordOf(word), value)}, ${usual.because}. With ${showValue(wordOf(word), tried)}`,
        moves
          ? `${moves.word} goes from ${showValue(wordOf(moves.word), moves.before)} to ${showValue(wordOf(moves.word), moves.after)}.`
          : 'nothing moves.',
      ].join(' '),
    )
    const paths = [...looksAt, 'opening', 'postLength'].flatMap((word) => {
      const path = pathOf(plan, word, yard)
      return path ? ['', ...tableInWords(path)] : []
    })
    const worked = work(
      job,
      [...looksAt, 'gap', 'railCut'].map((word) => ({ word, at: 'front' })),
      turn,
      { memo },
    ).flatMap((it) => [
      '',
      `${it.calculation.name} at ${it.at}: ${it.wanted.join(', ')}`,
      ...inWords(it.outcome.ok ? { ...it.outcome, steps: [] } : it.outcome).filter(
        (line) => !/^(said|known|assumed|result) /.test(line),
      ),
    ])
    const pack = fieldPackOf(job, 0)
    const lines = [
      fenceInWords(job) ?? 'no run is told by itself',
      '',
      ...asked,
      '',
      ...assumed,
      ...paths,
      ...worked,
      '',
      ...(pack ? packInWords(pack).filter((line) => !/^<|^$/.test(line)) : ['no field pack']),
      ...(pack?.sheets.flatMap(({ blocks }) => blocks.flatMap((it) => ('svg' in it ? [shapesOf(it.svg)] : []))) ?? []),
    ]
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`../as-worked/fences/${name}.txt`)
  })
})
