// This file is about the evidence for the calculations in pickets/.
import type { Check } from '../check.ts'
import { decimalsWork, inDecimals } from '../decimals.ts'

const ours = 'Reference book, spacing (geometry)'

/** Pickets laid one by one: the fewest with which the gap, shared by one more than there are, keeps the limit. */
function fewest(opening: number, width: number, keeps: (gap: number) => boolean): number {
  for (let n = 1; n * width <= opening; n++) if (keeps((opening - n * width) / (n + 1))) return n
  throw new Error('none')
}
/** The gap found by laying: widen it by a little until the last one against the far post is alike. */
function gapByHalving(opening: number, width: number, count: number): number {
  let low = 0
  let high = opening
  for (let i = 0; i < 80; i++) {
    const gap = (low + high) / 2
    let at = gap
    for (let k = 0; k < count; k++) at += width + gap
    if (at > opening) high = gap
    else low = gap
  }
  return low
}

export const picketsChecks: readonly Check[] = [
  {
    calculation: 'picket-spacing',
    what: 'the fewest 3 1/2 in pickets in 94 1/2 in with no gap over 2 1/2 in',
    kind: 'second derivation',
    source: 'second derivation: pickets laid one by one until the gap keeps the limit',
    reference: 'n-from-target',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
    gives: 'pickets',
    unit: 'picket',
    expected: () => fewest(94.5, 3.5, (gap) => gap <= 2.5),
    tolerance: 0,
  },
  {
    calculation: 'picket-spacing',
    what: 'their gap',
    kind: 'reference',
    source: ours,
    reference: 'gap-16',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
    gives: 'gap',
    unit: 'in',
    expected: 2.2647059,
    tolerance: 5e-8,
  },
  {
    calculation: 'picket-spacing',
    what: 'a 4 in ball must not pass between 1 1/2 in pickets in 70 in',
    kind: 'second derivation',
    source:
      'second derivation: pickets laid one by one until every gap is less than the ball; rule text: https://codelibrary.amlegal.com/codes/camdencounty/latest/camdencounty_nc/0-0-0-3017',
    reference: 'sphere-4in',
    given: { opening: '70 in', picketWidth: '1 1/2 in', sphere: '4 in' },
    gives: 'pickets',
    unit: 'picket',
    expected: () => fewest(70, 1.5, (gap) => gap < 4),
    tolerance: 0,
  },
  {
    calculation: 'picket-spacing',
    what: '2400 mm with 70 mm pickets and no gap over 30 mm',
    kind: 'reference',
    source: ours,
    reference: 'gap-metric',
    given: { opening: '2400 mm', picketWidth: '70 mm', widestGap: '30 mm' },
    system: 'metric',
    gives: 'gap',
    unit: 'mm',
    expected: 28.8,
    tolerance: 1e-9,
  },
  {
    calculation: 'gap-for-pickets',
    what: '15 pickets of 3 1/2 in in 94 1/2 in',
    kind: 'reference',
    source: ours,
    reference: 'gap-15',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '15' },
    gives: 'gap',
    unit: 'in',
    expected: 2.625,
    tolerance: 0,
  },
  {
    calculation: 'gap-for-pickets',
    what: '15 pickets of 3 1/2 in in 94 1/2 in, laid by hand',
    kind: 'second derivation',
    source: 'second derivation: the gap halved until the pickets laid with it end at the far post',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '15' },
    gives: 'gap',
    unit: 'in',
    expected: () => gapByHalving(94.5, 3.5, 15),
    tolerance: 1e-9,
  },
  {
    calculation: 'gap-for-pickets',
    what: 'what is left at the far post when the rounded gap of 16 is stepped along',
    kind: 'reference',
    source: ours,
    reference: 'round-16ths',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '16' },
    gives: 'lastGap',
    unit: 'in',
    expected: 2.5,
    tolerance: 1e-9,
  },
  {
    calculation: 'gap-for-pickets',
    what: 'what is left in millimetres, 23 pickets in 2385 mm',
    kind: 'reference',
    source: ours,
    reference: 'round-mm',
    given: { opening: '2385 mm', picketWidth: '70 mm', pickets: '23' },
    system: 'metric',
    gives: 'lastGap',
    unit: 'mm',
    expected: 39,
    tolerance: 1e-9,
  },
  {
    calculation: 'pickets-touching-posts',
    what: 'pickets laid with one against each post until every gap keeps the limit',
    kind: 'second derivation',
    source: 'second derivation: pickets added one by one, the gap shared by one fewer',
    given: { opening: '93 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
    gives: 'pickets',
    unit: 'picket',
    expected: () => {
      let n = 2
      while ((93 - n * 3.5) / (n - 1) > 2.5) n++
      return n
    },
    tolerance: 0,
  },
  ...(['half', 'one'] as const).map(
    (gapsAtPosts): Check => ({
      calculation: 'as-many-gaps',
      what: `the gap with ${gapsAtPosts === 'half' ? 'half of it at each post' : 'one picket tight against one post'}, laid by hand`,
      kind: 'second derivation',
      source:
        'second derivation: pickets added until no gap is over the limit, the gap widened by halving until the last gap ends at the far post',
      given: { opening: '92 1/2 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in', gapsAtPosts },
      gives: 'gap',
      unit: 'in',
      expected: () => {
        const before = gapsAtPosts === 'half' ? 0.5 : 0
        const gapOf = (count: number): number => {
          let [low, high] = [-10, 92.5]
          for (let i = 0; i < 80; i++) {
            const gap = (low + high) / 2
            let at = before * gap
            for (let k = 0; k < count; k++) at += 3.5 + (k === count - 1 ? (1 - before) * gap : gap)
            if (at > 92.5) high = gap
            else low = gap
          }
          return low
        }
        let count = 1
        while (gapOf(count) > 2.5) count++
        return gapOf(count)
      },
      tolerance: 1e-9,
    }),
  ),
  {
    calculation: 'pickets-past-posts',
    what: 'the pattern comes round again at the next post',
    kind: 'second derivation',
    source: 'second derivation: pickets laid from one post centre at the pitch until one falls on the next centre',
    given: { bayCentres: '91 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' },
    gives: 'picketsEachBay',
    unit: 'picket',
    expected: () => {
      let n = 1
      while (91 / n - 3.5 > 2.5) n++
      return n
    },
    tolerance: 0,
  },
  {
    calculation: 'butted-boards',
    what: 'boards laid one by one until the opening is full',
    kind: 'second derivation',
    source: 'second derivation: whole boards laid from one post, the rest measured',
    given: { opening: '93 in', picketWidth: '5 1/2 in' },
    gives: 'lastBoard',
    unit: 'in',
    expected: () => {
      let at = 0
      while (at + 5.5 < 93) at += 5.5
      return 93 - at
    },
    tolerance: 1e-12,
  },
  {
    calculation: 'lapped-boards',
    what: 'lapped boards laid at the even lap end at the far post',
    kind: 'second derivation',
    source: 'second derivation: the lap found by halving until the last board ends at the post',
    given: { opening: '93 in', picketWidth: '5 1/2 in', boardLap: '1 in' },
    gives: 'lapNow',
    unit: 'in',
    expected: () => {
      let [low, high] = [0, 5.5]
      for (let i = 0; i < 80; i++) {
        const lap = (low + high) / 2
        if (5.5 + 20 * (5.5 - lap) > 93) low = lap
        else high = lap
      }
      return low
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'board-on-board',
    what: 'front boards laid over the middle of each gap: what they cover',
    kind: 'second derivation',
    source: 'second derivation: edges of back and front boards by their places across the bay',
    given: { opening: '93 in', picketWidth: '5 1/2 in', boardLap: '1 in' },
    gives: 'coverEachSide',
    unit: 'in',
    expected: () => {
      const gap = (93 - 10 * 5.5) / 11
      const backEnds = gap + 5.5
      const middle = backEnds + gap / 2
      return backEnds - (middle - 5.5 / 2)
    },
    tolerance: 1e-9,
  },
  ...(
    [
      ['pitch', 'in', 6.125, 1e-9],
      ['stickAngle', 'deg', 19.557214, 1e-5],
      ['stickLength', 'in', 100.28571, 1e-4],
      ['stickDrop', 'in', 33.570441, 1e-4],
      ['firstStickMark', 'in', 4.6428571, 1e-5],
    ] as const
  ).map(
    ([gives, unit, expected, tolerance]): Check => ({
      calculation: 'story-stick',
      what: `${gives} of a stick marked every 6 1/2 in`,
      kind: 'reference',
      source: ours,
      reference: 'stick-main',
      given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '15', stickPitch: '6 1/2 in' },
      gives,
      unit,
      expected,
      tolerance,
    }),
  ),
  {
    calculation: 'story-stick',
    what: 'marks dropped plumb from the stick fall on the middles of evenly spaced pickets',
    kind: 'second derivation',
    source: 'second derivation: the last mark’s place across the opening by coordinates',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '15', stickPitch: '6 1/2 in' },
    gives: 'firstStickMark',
    unit: 'in',
    expected: () => {
      // The first picket’s middle lies a gap and half a picket from the post: along the stick that is longer by step over pitch.
      const [gap, pitch] = [(94.5 - 15 * 3.5) / 16, (94.5 - 15 * 3.5) / 16 + 3.5]
      return ((gap + 1.75) * 6.5) / pitch
    },
    tolerance: 1e-9,
  },
  ...(
    [
      // The book's drop is rounded to 33.56957 in; exactly it is 33.57044.
      ['swingShort', 'stick-yaw', 0.19036316, 4e-4],
      ['swingPitch', 'stick-yaw', 6.1140848, 2e-5],
      ['swingOver', 'stick-yaw', 0.15281675, 3e-4],
      ['squaredPitch', 'stick-perp-transfer', 6.8979073, 6e-5],
      ['bowShort', 'stick-bow', 0.026590697, 1e-8],
    ] as const
  ).map(
    ([gives, reference, expected, tolerance]): Check => ({
      calculation: 'stick-errors',
      what: `${gives} of a stick marked every 6 1/2 in`,
      kind: 'reference',
      source: ours,
      reference,
      given: {
        opening: '94 1/2 in',
        picketWidth: '3 1/2 in',
        pickets: '15',
        stickPitch: '6 1/2 in',
        stickSwing: '6 in',
        stickBow: '1 in',
      },
      gives,
      unit: 'in',
      expected,
      tolerance,
    }),
  ),
  {
    calculation: 'stick-errors',
    what: 'a stick of 100 2/7 in bent into an arc 1 in high: its two ends, straight across',
    kind: 'second derivation',
    source: 'second derivation: the circle found by halving whose arc is the stick and whose height is the bow',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '15', stickPitch: '6 1/2 in', stickBow: '1 in' },
    gives: 'bowShort',
    unit: 'in',
    expected: () => {
      const long = 702 / 7
      let [low, high] = [0, 1]
      for (let i = 0; i < 100; i++) {
        const half = (low + high) / 2
        if ((long / 2 / half) * (1 - Math.cos(half)) > 1) high = half
        else low = half
      }
      return long - (long / low) * Math.sin(low)
    },
    tolerance: 2e-5,
  },
  {
    calculation: 'stick-errors',
    what: 'a stick whose far end is swung round until it is 6 in out of line: how far it still reaches',
    kind: 'second derivation',
    source:
      'second derivation: the level run of the stick turned about the near post by a thousandth of a degree at a time',
    given: { opening: '94 1/2 in', picketWidth: '3 1/2 in', pickets: '15', stickPitch: '6 1/2 in', stickSwing: '6 in' },
    gives: 'swingShort',
    unit: 'in',
    expected: () => {
      let turned = 0
      while (94.5 * Math.sin(turned) < 6) turned += Math.PI / 180_000
      return 94.5 - 94.5 * Math.cos(turned)
    },
    tolerance: 1e-4,
  },
  {
    calculation: 'stick-errors',
    what: 'two neighbouring marks squared off a stick on to a level rail, by coordinates',
    kind: 'second derivation',
    source: 'second derivation: both square lines cut with the rail as straight lines in the plane',
    given: { opening: '1800 mm', picketWidth: '70 mm', pickets: '18', stickPitch: '110 mm' },
    gives: 'squaredPitch',
    unit: 'mm',
    expected: () => {
      const angle = Math.acos(1870 / 19 / 110)
      const onRail = (along: number): number => {
        const [x, y] = [along * Math.cos(angle), along * Math.sin(angle)]
        // Square to the stick: (x' − x) cos + (y' − y) sin = 0, with the rail at y' = 2000.
        return x - ((2000 - y) * Math.sin(angle)) / Math.cos(angle)
      }
      return onRail(330) - onRail(220)
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'bays-alike',
    what: 'the least difference of gaps, every pattern of counts tried',
    kind: 'second derivation',
    source: 'second derivation: all combinations of the two counts nearest to the gap wanted, in each bay',
    given: { openings: ['93 in', '70 5/8 in', '84 in', '61 in'], picketWidth: '3 1/2 in', wantedGap: '2 1/2 in' },
    gives: 'gapsDiffer',
    unit: 'in',
    expected: () => {
      const options = [93, 70.625, 84, 61].map((space) =>
        Array.from({ length: Math.floor(space / 3.5) }, (_, k) => (space - (k + 1) * 3.5) / (k + 2))
          .sort((a, b) => Math.abs(a - 2.5) - Math.abs(b - 2.5))
          .slice(0, 2),
      )
      let best = Number.POSITIVE_INFINITY
      for (const a of options[0] ?? [])
        for (const b of options[1] ?? [])
          for (const c of options[2] ?? [])
            for (const d of options[3] ?? []) best = Math.min(best, Math.max(a, b, c, d) - Math.min(a, b, c, d))
      return best
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'gap-now',
    what: 'what a 5 1/2 in redcedar board loses from 19 to 12 %',
    kind: 'handbook',
    source: 'Wood Handbook, FPL-GTR-190 (2010), equation 13-3 and table 4-3',
    given: {
      picketWidth: '5 1/2 in',
      species: 'western-redcedar',
      grain: 'flat',
      moistureNow: '19 %',
      equilibriumMoisture: '12 %',
    },
    gives: 'widthChange',
    unit: 'in',
    expected: (5.5 * (12 - 19)) / (3000 / 5 - 30 + 19),
    tolerance: 1e-9,
  },
  {
    calculation: 'gap-now',
    what: 'the handbook’s example: a flat-grain white fir board of 232 mm from 8 to 11 % becomes 233.7 mm',
    kind: 'published',
    source: 'Wood Handbook, FPL-GTR-190 (2010), chapter 13, https://issuhub.com/view/index/5801?pageIndex=308',
    given: {
      picketWidth: '232 mm',
      species: 'white-fir',
      grain: 'flat',
      moistureNow: '8 %',
      equilibriumMoisture: '11 %',
    },
    system: 'metric',
    gives: 'widthChange',
    unit: 'mm',
    expected: 233.7 - 232,
    tolerance: 0.06,
  },
  {
    calculation: 'gap-later',
    what: 'what a gap of 4 mm becomes between 140 mm redcedar boards from 30 to 13 %',
    kind: 'handbook',
    source: 'Wood Handbook, FPL-GTR-190 (2010), equation 13-3 and table 4-3',
    given: {
      gapNow: '4 mm',
      picketWidth: '140 mm',
      species: 'western-redcedar',
      grain: 'flat',
      moistureNow: '30 %',
      equilibriumMoisture: '13 %',
    },
    system: 'metric',
    gives: 'gapDry',
    unit: 'mm',
    expected: 4 + (140 * (30 - 13)) / (3000 / 5 - 30 + 30),
    tolerance: 1e-9,
  },
  {
    calculation: 'see-through',
    what: 'the open share, counted in hundredths along a fence',
    kind: 'second derivation',
    source: 'second derivation: six hundred places along one gap and picket, the open ones counted',
    given: { picketWidth: '3 1/2 in', wantedGap: '2 1/2 in' },
    gives: 'openShare',
    unit: 'percent',
    expected: () =>
      (Array.from({ length: 600 }, (_, i) => (i + 0.5) / 100).filter((at) => at > 3.5).length / 600) * 100,
    tolerance: 1e-9,
  },
  {
    calculation: 'picket-count',
    what: 'pickets counted bay by bay, spares to every twentieth',
    kind: 'second derivation',
    source: 'second derivation: counted up one bay after the other, a spare for each twenty begun',
    given: { pickets: '16', bays: '13', gatePickets: '12', picketSpare: '5 %' },
    gives: 'picketsToBuy',
    unit: 'picket',
    expected: () => {
      let hung = 12
      for (let bay = 0; bay < 13; bay++) hung += 16
      let spares = 0
      for (let i = 0; i < hung; i += 20) spares++
      return hung + spares
    },
    tolerance: 0,
  },
  {
    calculation: 'board-on-board',
    what: 'boards 3 1/2 in wide behind gaps of 3 in at the most in 92 1/2 in, and one before each gap',
    kind: 'second derivation',
    source: 'second derivation: boards added one by one until their gaps keep the limit, then one for each gap counted',
    given: { opening: '92 1/2 in', picketWidth: '3 1/2 in', widestGap: '3 in' },
    gives: 'bothLayers',
    unit: 'board',
    expected: () => {
      const behind = fewest(92.5, 3.5, (gap) => gap <= 3)
      return behind + (behind + 1)
    },
    tolerance: 0,
  },
  {
    calculation: 'pickets-by-length',
    what: '21 m of 85 mm pickets 60 mm apart, laid one by one until the end is covered',
    kind: 'second derivation',
    source: 'second derivation: pickets and gaps laid along the length one after the other',
    given: { runLength: '21 m', picketWidth: '85 mm', wantedGap: '60 mm' },
    gives: 'picketsHung',
    unit: 'picket',
    expected: () => {
      let [laid, at] = [0, 0]
      while (at < 21000) {
        at += 85 + 60
        laid++
      }
      return laid
    },
    tolerance: 0,
  },
  {
    calculation: 'pickets-by-length',
    what: '60 ft with two gates, the lengths beside them laid one by one, and one in twenty to spare',
    kind: 'second derivation',
    source: 'second derivation: pickets and gaps laid along what the gates leave, spares counted out by twenties',
    given: { runLength: '60 ft', picketWidth: '3 in', wantedGap: '2 in', gates: '2', gateOpening: '42 in' },
    gives: 'picketsToBuy',
    unit: 'picket',
    expected: () => {
      let laid = 0
      for (let at = 0; at < 60 * 12 - 42 - 42; at += 5) laid++
      return laid + Math.ceil(laid / 20)
    },
    tolerance: 0,
  },
  ...(
    [
      ['perMetre', '1000 / 95.25'],
      ['perFoot', '304.8 / 95.25'],
    ] as const
  ).map(
    ([gives, sum]): Check => ({
      calculation: 'pickets-a-metre',
      what: `${gives} of pickets 2 1/2 in wide, 1 1/4 in apart, in millimetres`,
      kind: 'library',
      source: decimalsWork,
      given: { picketWidth: '2 1/2 in', wantedGap: '1 1/4 in' },
      gives,
      unit: 'ratio',
      expected: () => inDecimals(sum),
      tolerance: 1e-9,
    }),
  ),
  {
    calculation: 'pickets-a-metre',
    what: '137 pickets of 68 mm laid 42 mm apart, one by one, in feet',
    kind: 'second derivation',
    source: 'second derivation: each picket and its gap added up, then divided by 304.8 mm',
    given: { picketsHung: '137', picketWidth: '68 mm', wantedGap: '42 mm' },
    gives: 'fenceCovered',
    unit: 'ft',
    expected: () => {
      let at = 0
      for (let i = 0; i < 137; i++) at += 68 + 42
      return at / 304.8
    },
    tolerance: 1e-9,
  },
]
