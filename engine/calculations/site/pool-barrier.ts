// A fence around a pool, held against the figures of the US model code. It says "fails" or "nothing checked here fails", and never more.
import { calculation } from '../../calculation.ts'
import type { Quantity } from '../../quantities/quantity.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { poolBarrier as code } from '../../tables/pool-barrier.ts'
import { published } from '../../tables/published.ts'
import { country } from '../../words/country.ts'
import {
  barrierGap,
  barrierHeight,
  gapUnderBarrier,
  groundUnder,
  latchHeight,
  poolHolds,
  railSide,
} from '../../words/pool.ts'
import { railsApart } from '../../words/framing.ts'

const limit = Object.fromEntries(
  Object.entries(code.values).map(([name, text]) => [name, published(text)]),
) as Readonly<Record<keyof typeof code.values, Quantity>>

export const poolBarrier = calculation({
  name: 'pool-barrier',
  title: 'A fence around a pool, against the model code',
  answers:
    'Whether the measures of a fence around a pool fail the figures of the US model code, and what no figure settles. Your own place’s rule decides.',
  needs: { country, barrierHeight, gapUnderBarrier, groundUnder, barrierGap, railsApart, railSide, latchHeight },
  may: ['barrierHeight', 'gapUnderBarrier', 'barrierGap', 'railsApart', 'railSide', 'latchHeight'],
  gives: { poolHolds },
  headlines: ['poolHolds'],
  called: ['pool'],
  lines: {},
  work(given, { has, need, tell, remark, table, doubt, cite }) {
    const eyes =
      'No figure settles the rest, so look yourself: does the gate close and latch by itself from any place, open away from the pool, and stay shut when pushed? Is there anything to climb within reach: a rail, a pot, a wall, a tree, an air conditioner? Do doors and windows of the house open onto the pool?'
    if (given.country !== 'us') {
      tell('poolHolds', null)
      remark(
        'I know only the model code of the US, and it does not hold where you are. Your building office or council gives you the rule, and often the inspection.',
      )
      remark(eyes)
      return
    }
    const measures = ['barrierHeight', 'gapUnderBarrier', 'barrierGap', 'railsApart', 'latchHeight'] as const
    if (!measures.some(has)) need('barrierHeight')
    const rows: [string, string, string, string][] = []
    let failed = false
    const check = (what: string, measured: string, fails: boolean, rule: string): void => {
      failed ||= fails
      rows.push([what, measured, rule, fails ? 'fails' : 'does not fail'])
    }
    const say = (name: keyof typeof limit, label: string): string => cite(limit[name], label, 'published')
    if (has('barrierHeight'))
      check(
        'height outside',
        show(given.barrierHeight),
        less(given.barrierHeight, limit.height),
        `at least ${say('height', 'least height')}`,
      )
    if (has('gapUnderBarrier')) {
      const name = given.groundUnder === 'solid' ? 'underSolid' : 'underSoft'
      check(
        'gap underneath',
        show(given.gapUnderBarrier),
        less(limit[name], given.gapUnderBarrier),
        `at most ${say(name, 'most underneath')} over ${given.groundUnder === 'solid' ? 'a solid surface' : 'soft ground'}`,
      )
    }
    const railsClose = has('railsApart') && less(given.railsApart, limit.railsApart)
    if (has('barrierGap')) {
      // A gap as wide as the ball lets it through.
      check(
        'gap between pickets, for the ball',
        show(given.barrierGap),
        !less(given.barrierGap, limit.ball),
        `less than ${say('ball', 'ball that must not pass')}`,
      )
      if (railsClose)
        check(
          'gap between pickets, rails close together',
          show(given.barrierGap),
          less(limit.closeGap, given.barrierGap),
          `at most ${say('closeGap', 'most with close rails')}, since the rails’ tops are less than ${say('railsApart', 'rails apart')} apart`,
        )
    }
    // Close rails belong on the pool side however narrow the gaps are.
    if (railsClose) {
      if (has('railSide'))
        check(
          'side of the rails',
          railSide.options?.[given.railSide]?.label ?? given.railSide,
          given.railSide === 'outside',
          `on the pool side, since the rails’ tops are less than ${say('railsApart', 'rails apart')} apart`,
        )
      else doubt('missing', 'railSide', 'Rails that close together must be on the pool side.', railSide.ask)
    }
    if (!has('railsApart') && (has('barrierGap') || has('railSide')))
      doubt(
        'missing',
        'railsApart',
        'How far apart the rails are decides how wide the gaps may be, and on which side the rails must be.',
        railsApart.ask,
      )
    if (has('latchHeight') && less(given.latchHeight, limit.latch))
      remark(
        `A latch release under ${say('latch', 'latch height')} must be on the pool side, well below the top of the gate, with no opening near it that a hand fits through. Yours is at ${show(given.latchHeight)}: check that with your building office.`,
      )
    else if (has('latchHeight'))
      rows.push(['latch release', show(given.latchHeight), `${say('latch', 'latch height')} or more`, 'does not fail'])
    if (rows.length === 0) {
      tell('poolHolds', null)
      remark(eyes)
      return
    }
    table({
      title: 'Checked against the model code',
      columns: [
        { label: 'what', unit: '' },
        { label: 'yours', unit: '' },
        { label: 'model code', unit: '' },
        { label: '', unit: '' },
      ],
      rows,
    })
    tell('poolHolds', !failed)
    remark(
      failed
        ? `Decided by: ${rows
            .filter((row) => row[3] === 'fails')
            .map((row) => `${row[0]}, ${row[1]} where it must be ${row[2]}`)
            .join('; ')}.`
        : `Decided by: ${rows.map((row) => row[0]).join(', ')}. That is no approval: your own place may be stricter, and only its inspector can say yes.`,
    )
    remark(eyes)
  },
  sources: [
    { fact: `${code.title}, ${code.edition}; holds ${code.holds}`, from: code.from },
    { fact: 'the height, the gaps underneath and the ball', from: code.secondHand },
  ],
  cautions: ['pool', 'utilities', 'lot-line', 'local-code'],
  examples: [
    // 2 1/2 is more than 1 3/4 where the rails are 42 in apart
    {
      ask: 'In the US, pool fence 48 in high, rails 42 in apart, gaps of 2 1/2 in, rails on the pool side: is that ok for a pool?',
      given: {
        country: 'us',
        barrierHeight: '48 in',
        railsApart: '42 in',
        barrierGap: '2 1/2 in',
        railSide: 'pool',
      },
      expect: { poolHolds: 'fails' },
    },
    // 45 in apart is widely spaced; 2 1/2 is less than 4
    {
      ask: 'In the US, pool fence 1220 mm high, rails 1200 mm apart, gaps of 60 mm: is my pool fence ok?',
      given: { country: 'us', barrierHeight: '1220 mm', railsApart: '1200 mm', barrierGap: '60 mm' },
      expect: { poolHolds: 'nothing checked here fails' },
    },
  ],
})
