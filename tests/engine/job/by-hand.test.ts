// Small parts of working a job, each by hand: values written into a table, questions asked once, what is tried a little larger, plans side by side, and a job written down.
import { entriesIn, partByPart } from '../../../engine/job/calendar-entries.ts'
import { describe, expect, it } from 'vitest'
import { vocabulary } from '../../../engine/catalogue.ts'
import { pathOf, showValue } from '../../../engine/job/explain.ts'
import { decide, decided, decidedAt, keep, readJob, redo, sameValue, undo, writeJob } from '../../../engine/job/job.ts'
import { byMove, larger, openQuestions } from '../../../engine/job/next.ts'
import { newMemo } from '../../../engine/job/node.ts'
import { askedOnce } from '../../../engine/job/over-all.ts'
import { compared, sideBySide } from '../../../engine/job/side-by-side.ts'
import { work } from '../../../engine/job/work.ts'
import type { Problem } from '../../../engine/outcome.ts'
import { about } from '../../../engine/quantities/amount.ts'
import { quantity, type Quantity } from '../../../engine/quantities/quantity.ts'
import { show } from '../../../engine/quantities/show.ts'
import type { Word } from '../../../engine/words/word.ts'
import { decisionsOf, jobOf, oneFence, planFrom, type Told } from './fences.ts'

const word = (name: string): Word => vocabulary.get(name) as Word

describe('a value in a table', () => {
  const inches = (many: number) => Array.from({ length: many }, (_, i) => quantity(i + 1, 'in'))

  it('is a list in full up to six, and of more the first three and the last', () => {
    expect(showValue(word('fenceSides'), inches(6))).toBe('1 in, 2 in, 3 in, 4 in, 5 in, 6 in')
    expect(showValue(word('fenceSides'), inches(7))).toBe('1 in, 2 in, 3 in … 7 in (7)')
  })

  it('is a choice by its label, and one that has none as it is', () => {
    expect(showValue(word('holeShape'), 'square')).toBe('square')
    expect(showValue(word('holeShape'), 'heptagon')).toBe('heptagon')
    const plain = { ...word('holeShape'), says: undefined } as Word
    expect([true, false, null].map((it) => showValue(plain, it))).toEqual(['yes', 'no', 'cannot say'])
  })
})

describe('what is missing at several places', () => {
  const missing = (at: string, message = 'I need the hole width.'): Problem => ({
    code: 'missing',
    word: 'holeDiameter',
    message,
    ask: 'How wide are the holes?',
    at,
  })

  it('is asked for once: of the one place, or of the yard', () => {
    expect(askedOnce([missing('front'), missing('front')])).toEqual([missing('front')])
    expect(askedOnce([missing('front'), missing('right')])).toEqual([missing('yard')])
    expect(askedOnce([])).toEqual([])
  })

  it('is not mixed with what is wrong: each of that is said, the same of it once', () => {
    const wrong = (message: string, at: string): Problem => ({ ...missing(at, message), code: 'impossible' })
    const all = [missing('front'), wrong('too wide', 'front'), wrong('too narrow', 'right'), wrong('too wide', 'right')]
    expect(askedOnce(all).map((it) => [it.code, it.message])).toEqual([
      ['missing', 'I need the hole width.'],
      ['impossible', 'too wide'],
      ['impossible', 'too narrow'],
    ])
  })
})

describe('a little larger', () => {
  it.each([
    [quantity(3, 'post'), '4 posts'],
    [quantity(10, 'percent'), '15 %'],
    [quantity(30, 'USD'), '$33.00'],
    // By size: an eighth under 2 in, an inch under a yard, 6 in under 20 ft, then a foot.
    [quantity('15/8', 'in'), '2 in'],
    [quantity(2, 'in'), '3 in'],
    [quantity('71/2', 'in'), '36 1/2 in'],
    [quantity(36, 'in'), '42 in'],
    [quantity(239, 'in'), '245 in'],
    [quantity(20, 'ft'), '21 ft'],
    [quantity(50, 'mm'), '53 mm'],
    [quantity(51, 'mm'), '76 mm'],
    [quantity(1, 'm'), '1.15 m'],
    [quantity(7, 'm'), '7.3 m'],
  ])('%o is %s', (q, expected) => expect(show(larger(q))).toBe(expected))

  it('of what is not exact is a tenth more as well', () =>
    expect(larger({ kind: 'area', amount: about(10), unit: 'ft2' }).amount).toMatchObject({ value: 11 }))

  it('moves the bill first, then what moves most, then what moves nothing', () => {
    const moves = (name: string, share: number) => ({
      moves: { word: name, before: quantity(1, 'bag'), after: quantity(2, 'bag'), share },
    })
    const [bill, small, large, none] = [
      moves('takeOffCost', 0.01),
      moves('bags', 0.1),
      moves('gravel', 0.5),
      { moves: undefined },
    ]
    const dearer = moves('takeOffCost', 0.02)
    expect([none, small, bill, large, dearer].sort(byMove)).toEqual([dearer, bill, large, small, none])
  })
})

describe('questions still open', () => {
  it('are those that most waits for first, and none once there is nothing to ask, or no run', () => {
    const open = openQuestions(jobOf({ 'runLength@front': '60 ft' }), newMemo(), 0)
    expect(open[0]).toMatchObject({
      word: 'widestBay',
      at: 'front',
      question: 'How far apart may the posts be at most, centre to centre?',
    })
    expect(open[0]?.waits.slice(0, 2)).toEqual(['bays', 'posts'])
    const waits = open.map((it) => it.waits.length)
    expect(waits).toEqual([...waits].sort((a, b) => b - a))
    expect(new Set(open.map((it) => `${it.word} ${it.at}`)).size).toBe(open.length)
    expect(openQuestions(jobOf({ postAbove: '4 ft' }), newMemo(), 0)).toEqual([])
  })
})

// A hole of 12 in and 30 in deep round a 3 1/2 in post is (36 π − 12.25) × 30 = 3025.4 in³ = 1.7508 ft³; of 10 in 1.1508, of 14 in 2.4599.
// 7 × 1.7508 / 0.6 = 20.4; 4 × = 11.7; 3 × = 8.8; 7 × 1.1508 / 0.6 = 13.4; 4 × = 7.7; (4 × 2.4599 + 3 × 1.7508) / 0.6 = 25.2; 4 × 2.4599 / 0.6 = 16.4.
const kinds: Told = {
  'posts@corner-posts': '4',
  'posts@gate-posts': '3',
  bagYield: '0.6 ft3',
  holeDiameter: '12 in',
  holeDepth: '30 in',
}

describe('plans side by side', () => {
  const table = (plans: Readonly<Record<string, Told>>, asked: readonly (readonly [word: string, at: string])[]) => {
    const named = Object.entries(plans).map(([name, told]) => ({ name, job: jobOf(told) }))
    const lines = compared(
      named,
      asked.map(([name, at]) => ({ word: name, at })),
      newMemo(),
      0,
    )
    return sideBySide(named, lines).rows
  }
  const bags = 'bags, bought together'

  it('are worked each at the place that is asked about', () => {
    const plans = { a: kinds, b: { ...kinds, holeDiameter: '10 in' }, none: {} }
    expect(table(plans, [['bags', 'yard']])).toEqual([[bags, '21 bags', '14 bags', 'not known yet']])
    expect(table(plans, [['bags', 'corner-posts']])).toEqual([[bags, '12 bags', '8 bags', 'not known yet']])
  })

  it('leave what is alike to the end, and what none of them gives away', () => {
    const plans = { a: kinds, b: { ...kinds, 'holeDiameter@corner-posts': '14 in' } }
    const asked = [
      ['bags', 'gate-posts'],
      ['bags', 'yard'],
      ['bags', 'corner-posts'],
      ['takeOffCost', 'yard'],
    ] as const
    expect(table(plans, asked)).toEqual([
      [bags, '21 bags', '26 bags'],
      [bags, '12 bags', '17 bags'],
      [`${bags} (alike)`, '9 bags', '9 bags'],
    ])
  })
})

describe('a choice for each kind of post', () => {
  const said = (told: Told): string =>
    work(jobOf({ ...kinds, ...told }), [{ word: 'bags', at: 'yard' }], 0)
      .map(({ outcome }) => (outcome.ok ? 'worked' : outcome.problems.map((it) => it.message).join(' ')))
      .join(' ')
  const alone = 'I can work only one at a time: ask for each kind of post on its own.'

  it('is worked where it is the same, and refused with both where it is not', () => {
    expect(said({ 'holeShape@corner-posts': 'square', 'holeShape@gate-posts': 'square' })).toBe('worked')
    expect(said({ 'holeShape@corner-posts': 'square', 'holeShape@gate-posts': 'round' })).toBe(
      `The shape of the hole is not the same for all: square (corner posts), round (gate posts). ${alone}`,
    )
    expect(said({ 'holeShape@corner-posts': 'square' })).toBe(
      `The shape of the hole is not the same for all: square (corner posts), round as usual (gate posts). ${alone}`,
    )
  })
})

describe('the take-off', () => {
  const fence: Told = { ...oneFence, 'runLength@front': '60 ft', 'runLength@right': '40 ft' }
  const asked = (at: string) => work(jobOf(fence), [{ word: 'takeOffCost', at }], 0, { memo: newMemo() })

  it('asked of one run is that of the whole fence, and says so', () => {
    const [of, whole] = [asked('front'), asked('yard')]
    expect([of, whole].map((it) => it.map(({ calculation, at, answers }) => [calculation.name, at, answers]))).toEqual([
      [['take-off', 'yard', true]],
      [['take-off', 'yard', true]],
    ])
    const [remarks, others] = [of, whole].map(([it]) => (it?.outcome.ok ? it.outcome.remarks : [])) as [
      string[],
      string[],
    ]
    expect(remarks).toEqual(['That is for the whole fence: I do not take off one run alone.', ...others])
    const cost = (worked: typeof of) => {
      const [it] = worked
      const value = it?.outcome.ok ? it.outcome.values.get('takeOffCost') : undefined
      if (value === undefined) throw new Error('it is not worked')
      return value
    }
    expect(sameValue(cost(of), cost(whole))).toBe(true)
  })

  it('has no path of one run to it', () => {
    const plan = planFrom(jobOf(fence))
    expect(pathOf(plan, 'takeOffCost', 'yard')?.columns.map((it) => it.label)).toEqual([
      'what',
      'where',
      'value',
      'from',
    ])
    expect(pathOf(plan, 'noWordAtAll', 'yard')).toBeUndefined()
  })
})

describe('a job written down', () => {
  it('is read back as it was: moves, what was taken back, what was kept, and results, exact or not', () => {
    const told = jobOf({ ...kinds, fenceSides: '60 ft, 40 ft', holeShape: 'square' })
    const moved = decide(keep(told, 'first'), decisionsOf({ holeDepth: '36 in' }, 1))
    const job = {
      ...undo(moved),
      results: [
        {
          word: 'concrete',
          at: 'yard',
          calculation: 'concrete-for-posts',
          value: { kind: 'volume', amount: about(21178, 0.5), unit: 'ft3' },
          ref: 'r1',
        },
        { word: 'bags', at: 'yard', calculation: 'concrete-for-posts', value: quantity(21, 'bag'), ref: 'r2' },
        {
          word: 'runPosts',
          at: 'yard',
          calculation: 'x',
          value: [quantity('1/3', 'in'), quantity(2, 'in')],
          ref: 'r3',
        },
        { word: 'holeShape', at: 'yard', calculation: 'x', value: 'square', ref: 'r4' },
      ],
    } as unknown as typeof told
    const again = readJob(JSON.parse(JSON.stringify(writeJob(job))))
    expect(again.results).toEqual(job.results)
    expect(again.takenBack).toEqual(job.takenBack)
    expect(again.kept).toEqual(job.kept)
    expect(again.decisions).toEqual(job.decisions)
    expect(redo(again).decisions).toEqual(redo(job).decisions)
    expect(JSON.stringify(writeJob(job))).toContain('"amount":"1/3"')
  })
})

describe('a calculation asked for by its name', () => {
  const fence: Told = { ...oneFence, 'runLength@front': '60 ft' }
  const worked = (named?: string) =>
    work(jobOf(fence), [{ word: 'posts', at: 'yard' }], 0, { named, memo: newMemo() }).map((it) => it.calculation.name)

  it('is worked where it gives the word, and the plan answers where it does not', () => {
    expect(worked()).toEqual(['posts-of-fence'])
    expect(worked('posts-of-fence')).toEqual(['posts-of-fence'])
    expect(worked('bays-in-run')).toEqual(['bays-in-run'])
    expect(worked('bag-yield')).toEqual(['posts-of-fence'])
    expect(worked('there-is-none-of-that-name')).toEqual(['posts-of-fence'])
  })
})

it('a row of the calendar is an entry where both its days are known, and says how far it may slip', () => {
  const rows = [
    ['Notice', 'Monday 5 October 2026', 'Wednesday 7 October 2026', 'yes', 0],
    ['Digging', '2026-10-08', '2026-10-09', 'no', 1],
    ['Pickets', '2026-10-08', '2026-10-12', 'no', '2'],
    ['Rails', '2026-10-08', '2026-10-09', 'no', 0],
    ['Paint', '2026-10-08', '', 'no', 2],
    ['Caps', '12 ft', '2026-10-09', 'no', 2],
  ]
  expect(entriesIn({ title: partByPart, columns: [], rows })).toEqual([
    { what: 'Notice', first: '2026-10-05', last: '2026-10-07', note: 'A day lost here moves the end.' },
    { what: 'Digging', first: '2026-10-08', last: '2026-10-09', note: 'May slip 1 day.' },
    { what: 'Pickets', first: '2026-10-08', last: '2026-10-12', note: 'May slip 2 days.' },
    { what: 'Rails', first: '2026-10-08', last: '2026-10-09', note: 'A day lost here moves the end.' },
  ])
})

describe('what holds at a place', () => {
  const job = jobOf({
    holeDiameter: '10 in',
    'holeDiameter@corner-posts+gate-posts+end-posts': '12 in',
    'holeDiameter@corner-posts+gate-posts': '14 in',
    'holeDiameter@gate-posts': '16 in',
    'picketWidth@front': '3 1/2 in',
    'posts@front': '9',
  })
  const held = (name: string, at: string): string | undefined => {
    const found = decided(job, name, at)?.value
    return found === undefined ? undefined : show(found as Quantity)
  }

  it('is what was said of that kind of post, then of the fewest kinds that it is one of, then of all', () => {
    expect(held('holeDiameter', 'gate-posts')).toBe('16 in')
    expect(held('holeDiameter', 'corner-posts')).toBe('14 in')
    expect(held('holeDiameter', 'end-posts')).toBe('12 in')
    expect(held('holeDiameter', 'line-posts')).toBe('10 in')
    expect(held('holeDiameter', 'corner-posts+end-posts')).toBe('12 in')
    expect(held('holeDiameter', 'corner-posts+line-posts')).toBe('10 in')
    expect(held('holeDiameter', 'yard')).toBe('10 in')
  })

  it('of a bay is what was said of its run, and of no other run', () => {
    expect(held('picketWidth', 'front/bay-2')).toBe('3 1/2 in')
    expect(held('picketWidth', 'front')).toBe('3 1/2 in')
    expect(held('picketWidth', 'right')).toBeUndefined()
    expect(held('holeDiameter', 'front/bay-2')).toBe('10 in')
    expect(decidedAt(job, 'picketWidth', 'front/bay-2')).toBeUndefined()
  })

  it('of a number that was told of a run is none of its bays', () => {
    expect(held('posts', 'front')).toBe('9 posts')
    expect(held('posts', 'front/bay-2')).toBeUndefined()
  })
})
