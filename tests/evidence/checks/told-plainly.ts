// This file is about evidence for rows of pickets, gates in the middle, hinges packed out, posts beside pickets and as they are sold.
import type { Check } from '../check.ts'
import { byMathjs, mathjsWorks } from '../mathjs.ts'

const laid = 'second derivation: wood and gaps laid one after the other'
/** Pickets and gaps laid one after the other, and the outer gaps where posts stand. */
function rowOf(count: number, width: number, gap: number, outer: boolean): number {
  let at = outer ? gap : 0
  for (let i = 0; i < count; i++) at += width + (i < count - 1 || outer ? gap : 0)
  return at
}
const row = { picketsHung: '17', picketWidth: '88 mm', wantedGap: '42 mm' }
const halves = { runLength: '27 m', gateOpening: '1.3 m', widestBay: '2.2 m', runEnds: 'outside', postWidth: '90 mm' }
/** Where the posts of one half stand, one bay after the other, none wider than the limit. */
function halfBays(): number {
  const half = (27_000 - 90 - 1300 - 90) / 2
  for (let bays = 1; ; bays++) if (half / bays <= 2200) return bays
}

export const toldPlainlyChecks: readonly Check[] = [
  {
    calculation: 'pickets-end-to-end',
    what: '17 pickets of 88 mm with 42 mm between them',
    kind: 'second derivation',
    source: laid,
    given: row,
    gives: 'picketRow',
    unit: 'mm',
    expected: () => rowOf(17, 88, 42, false),
    tolerance: 1e-9,
  },
  {
    calculation: 'pickets-end-to-end',
    what: 'the same with a gap at both ends',
    kind: 'second derivation',
    source: laid,
    given: row,
    gives: 'picketRowGaps',
    unit: 'mm',
    expected: () => rowOf(17, 88, 42, true),
    tolerance: 1e-9,
  },
  {
    calculation: 'gate-amid-run',
    what: 'the posts of 27 m with a gate in the middle, bay after bay',
    kind: 'second derivation',
    source: 'second derivation: bays counted one by one on each side',
    given: halves,
    gives: 'posts',
    unit: 'post',
    expected: () => 2 * (halfBays() + 1),
    tolerance: 1e-9,
  },
  {
    calculation: 'gate-amid-run',
    what: 'the bay of the same run',
    kind: 'library',
    source: mathjsWorks,
    given: halves,
    gives: 'bayCentres',
    unit: 'mm',
    expected: () => byMathjs('((27 m - 90 mm - 1.3 m - 90 mm) / 2) / 6', 'mm'),
    tolerance: 1e-6,
  },
  {
    calculation: 'gate-amid-run',
    what: 'the posts of 60 ft between centres, where no end post is taken off',
    kind: 'library',
    source: mathjsWorks,
    given: { runLength: '60 ft', gateOpening: '42 in', widestBay: '8 ft', runEnds: 'centres' },
    gives: 'eachHalf',
    unit: 'ft',
    expected: () => byMathjs('(60 ft - 42 inch - 3.5 inch) / 2', 'ft'),
    tolerance: 1e-6,
  },
  {
    calculation: 'hinge-packing',
    what: 'a leaf of 1180 mm that hangs 14 mm low, hinges 640 mm apart, turned about its top hinge',
    kind: 'second derivation',
    source: 'second derivation: the leaf turned by the angle that its latch side sank',
    given: { latchDrop: '14 mm', leafWidth: '1180 mm', hingeSpacing: '640 mm' },
    gives: 'hingePacking',
    unit: 'mm',
    expected: () => 640 * Math.tan(Math.atan(14 / 1180)),
    tolerance: 1e-6,
  },
  {
    calculation: 'line-between-lots',
    what: 'a lot of 66 ft, 30 in kept free on each side',
    kind: 'library',
    source: mathjsWorks,
    given: { lotWidth: '66 ft', keptEachSide: '30 in' },
    gives: 'runLength',
    unit: 'ft',
    expected: () => byMathjs('66 ft - 30 inch - 30 inch', 'ft'),
    tolerance: 1e-9,
  },
  {
    calculation: 'post-beside-pickets',
    what: 'pickets of 1050 mm, 45 mm up, the post 25 mm below their tops and 620 mm in the ground',
    kind: 'library',
    source: mathjsWorks,
    given: { picketLength: '1050 mm', footGap: '45 mm', postBelowTop: '25 mm', embedment: '620 mm' },
    gives: 'postLength',
    unit: 'mm',
    expected: () => byMathjs('45 mm + 1050 mm - 25 mm + 620 mm', 'mm'),
    tolerance: 1e-9,
  },
  {
    calculation: 'post-as-sold',
    what: 'a post of 79 in out of 6, 7, 8 and 10 ft',
    kind: 'library',
    source: mathjsWorks,
    given: { postLength: '79 in', stockLengths: ['10 ft', '6 ft', '8 ft', '7 ft'] },
    gives: 'postOffcut',
    unit: 'in',
    expected: () => byMathjs('7 ft - 79 inch', 'inch'),
    tolerance: 1e-6,
  },
]
