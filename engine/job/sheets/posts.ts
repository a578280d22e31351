// This file is about the sheets for digging and for cutting posts: where each stands, its hole, how long it is.
import { byTape } from '../../quantities/tape.ts'
import { gatesIn } from '../../post-centres.ts'
import { placeLabel, yard } from '../../places.ts'
import type { Quantity } from '../../quantities/quantity.ts'
import { decided, systemOf } from '../job.ts'
import type { Post, RunLaid } from '../laid-out.ts'
import { postSizeOf } from '../post-sizes.ts'
import type { Block, Sheet } from '../sheets.ts'
import {
  columns,
  givenIn,
  optionIn,
  postName,
  postsAlong,
  remarksOf,
  type Site,
  sizeAt,
  tapeOr,
  workedAt,
} from './site.ts'

export function stationsSheet(site: Site): Sheet | undefined {
  const { plan } = site
  if (plan.posts.length === 0) return undefined
  return {
    title: 'Stations and holes',
    blocks: [
      {
        kind: 'lines',
        lines: [
          '• Posts are numbered along the whole fence. A corner post stands in two tables under one number: its hole is written where it comes first.',
          ...remarksByRun(site),
        ],
      },
      ...plan.runs.map((it) => stationsOf(site, it)),
      {
        kind: 'lines',
        lines: remarksOf([...new Set(plan.posts.map((it) => it.kind))].map((kind) => plan.node('holeDepth', kind))),
      },
    ],
  }
}

/** What is to be said of each run: once where it holds for all, else with the run’s name before it. */
function remarksByRun({ plan }: Site): string[] {
  const each = plan.runs.map(({ run }) => ({ run, remarks: remarksOf([plan.node('bays', run.place)]) }))
  const all = [...new Set(each.flatMap((it) => it.remarks))]
  return all.map((remark) => {
    const theirs = each.filter((it) => it.remarks.includes(remark))
    const names = theirs.map((it) => placeLabel(it.run.place)).join(', ')
    return theirs.length === each.length ? remark : remark.replace('• ', `• ${names}: `)
  })
}

interface Hole {
  readonly wide: Quantity | undefined
  readonly deep: Quantity | undefined
  readonly stone: Quantity | undefined
}

/** The hole of a kind of post: as told, as its depth was worked, or as its concrete was. */
function holeOf(site: Site, kind: Post['kind']): Hole {
  const nodes = [site.plan.node('holeDepth', kind), site.plan.node('bags', yard)]
  const of = (word: string): Quantity | undefined =>
    sizeAt(site, word, kind) ?? nodes.map((it) => givenIn(it, word, kind)).find((it) => it !== undefined)
  return { wide: of('holeDiameter'), deep: of('holeDepth'), stone: of('stoneDepth') }
}

function stationsOf(site: Site, laid: RunLaid): Block {
  const { run } = laid
  const along = postsAlong(site, laid)
  const centres = workedAt(site, 'bays', run.place)?.outcome.tables.find((it) => it.title === 'Post centres')
  const isMetric = systemOf(site.job) === 'metric'
  const holes = along.map((post) => holeOf(site, post.kind))
  const has = (size: keyof Hole): boolean => holes.some((it) => it[size])
  const shape = decided(site.job, 'holeShape', yard)?.value ?? optionIn(site.plan.node('bags', yard), 'holeShape')
  const wide = shape === 'square' ? 'hole, square' : 'hole width'
  const starts = centres ? gatesIn(centres) : []
  const gateFrom = (i: number): number => starts.slice(0, i + 1).filter((it) => it).length
  const gatesAt = (i: number): string[] => [
    ...(starts[i - 1] ? [`gate ${gateFrom(i - 1)} ends`] : []),
    ...(starts[i] ? [`gate ${gateFrom(i)} begins`] : []),
  ]
  const isAtWall = (i: number): boolean =>
    (i === 0 && run.nearEnd === 'wall') || (i === along.length - 1 && run.farEnd === 'wall')
  const kindAt = (post: Post, i: number, isSeen: boolean): string => {
    const plain = postName(post).replace(/ post$/, '')
    const what = isSeen ? [plain, `see ${placeLabel(post.stands[0]?.run ?? '')}`] : gatesAt(i).length > 0 ? [] : [plain]
    return [...what, ...gatesAt(i), ...(isAtWall(i) ? ['at the wall'] : [])].join(', ')
  }
  return {
    kind: 'table',
    blanks: ['depth dug', 'plumb'],
    table: {
      title: `${placeLabel(run.place)}: from ${startOf(run.nearEnd)}`,
      columns: columns(
        'post',
        'kind',
        'by the tape',
        ...(isMetric ? ['exactly (mm)'] : []),
        ...(has('wide') ? [wide] : []),
        ...(has('deep') ? ['hole depth'] : []),
        ...(has('stone') ? ['of it stone'] : []),
      ),
      rows: along.map((post, i) => {
        const row = centres?.rows[i] ?? []
        const first = post.stands[0]
        // A loop comes back to its first post: that row, too, is only for the tape.
        const isSeen = first?.run !== run.place || first.station !== laid.stations[i]
        const { wide, deep, stone } = holes[i] as Hole
        const hole = (size: Quantity | undefined): string => (isSeen ? '' : tapeOr(size))
        return [
          String(post.number),
          kindAt(post, i, isSeen),
          String(row[2] ?? ''),
          ...(isMetric ? [row[3] ?? ''] : []),
          ...(has('wide') ? [hole(wide)] : []),
          ...(has('deep') ? [hole(deep)] : []),
          ...(has('stone') ? [hole(stone)] : []),
        ]
      }),
    },
  }
}

const startOf = (end: string): string =>
  end === 'wall'
    ? 'the wall'
    : end === 'outside'
      ? 'the outside face of its first post'
      : 'the centre of its first post'

export function postLengthsSheet(site: Site): Sheet | undefined {
  const { plan, job } = site
  const sized = plan.posts.flatMap((post) => {
    const size = postSizeOf(post, { ...plan, job, node: plan.node, worked: plan.worked })
    return size && !('problems' in size) ? [{ post, size }] : []
  })
  if (sized.length === 0) return undefined
  const has = { above: sized.some((it) => it.size.above), step: sized.some((it) => it.size.step) }
  const buried = new Map(plan.posts.map(({ kind }) => [kind, sizeAt(site, 'embedment', kind)] as const))
  const isBuried = [...buried.values()].some((it) => it)
  const groups = [plan.node('postsByLength', yard)]
  return {
    title: 'Post lengths and cut heights',
    blocks: [
      {
        kind: 'lines',
        lines: [
          '• Lengths are least lengths, for level ground between the steps. Set posts long where the ground is not even, string a line, and cut each to it.',
          '• Ground reading: from a level string down to the ground at the post. Cut mark: where the saw goes, from the ground up.',
          ...remarksOf(plan.runs.map((it) => plan.node('stepEach', it.run.place))),
          ...remarksOf(groups),
        ],
      },
      {
        kind: 'table',
        blanks: ['ground reading', 'cut mark'],
        table: {
          title: 'Post by post',
          columns: columns(
            'post',
            'kind',
            'post length, by the tape',
            ...(has.above ? ['above ground'] : []),
            ...(isBuried ? ['in the ground'] : []),
            ...(has.step ? ['longer for the step'] : []),
          ),
          rows: sized.map(({ post, size }) => [
            String(post.number),
            postName(post),
            byTape(size.length),
            ...(has.above ? [tapeOr(size.above)] : []),
            ...(isBuried ? [tapeOr(buried.get(post.kind))] : []),
            ...(has.step ? [tapeOr(size.step)] : []),
          ]),
        },
      },
    ],
  }
}
