// This file is about evidence for posts between two that stand, leftovers split, lines from the house and one bay of a slope.
import type { Check } from '../check.ts'

const counted = 'second derivation: laid out one after the other'
/** Posts set one by one until the standing one is near enough. */
function postsSet(run: number, widest: number): number {
  for (let posts = 0; ; posts++) if (run / (posts + 1) <= widest) return posts
}
/** Whole bays laid until none fits any more. */
function leftAfter(run: number, bay: number): number {
  let left = run
  while (left >= bay) left -= bay
  return left
}

export const layoutToldChecks: readonly Check[] = [
  {
    calculation: 'posts-between',
    what: 'new posts over 31 m, none further apart than 2.4 m',
    kind: 'second derivation',
    source: counted,
    given: { runLength: '31 m', widestBay: '2.4 m' },
    gives: 'newPosts',
    unit: 'post',
    expected: () => postsSet(31_000, 2400),
    tolerance: 1e-9,
  },
  {
    calculation: 'leftover-at-ends',
    what: 'what bays of 2.7 m leave of 19.3 m, at each end',
    kind: 'second derivation',
    source: counted,
    given: { runLength: '19.3 m', fixedBay: '2.7 m' },
    gives: 'leftoverEachEnd',
    unit: 'mm',
    expected: () => leftAfter(19_300, 2700) / 2,
    tolerance: 1e-9,
  },
  {
    calculation: 'line-from-house',
    what: 'a middle of posts 90 mm wide, 700 mm back of 7.3 m',
    kind: 'second derivation',
    source: 'second derivation: from the street back to the house',
    given: { houseToStreet: '7.3 m', streetSetback: '700 mm', postOnLine: '90 mm' },
    gives: 'lineFromHouse',
    unit: 'mm',
    expected: () => 7300 - (700 + 45),
    tolerance: 1e-9,
  },
  {
    calculation: 'bay-on-slope',
    what: 'a bay of 2.1 m on ground that falls 840 mm in 12 m',
    kind: 'second derivation',
    source: 'second derivation: by the angle of the slope',
    given: { fall: '840 mm', levelDistance: '12 m', bayCentres: '2.1 m' },
    gives: 'rakedBay',
    unit: 'mm',
    expected: () => 2100 / Math.cos(Math.atan2(840, 12_000)),
    tolerance: 1e-9,
  },
]
