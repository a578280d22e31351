// This file is about the sheets on which the whole yard is seen from above: the plan to build by, and the sketch for an office.
import { byTape } from '../../quantities/tape.ts'
import { vocabulary } from '../../catalogue.ts'
import { baySideDrawing } from '../../drawings/bay-side.ts'
import { closes, type PostSeen, type RunFromAbove, yardPlanDrawing } from '../../drawings/yard-plan.ts'
import { placeLabel, yard } from '../../places.ts'
import { isList, isQuantity, numberIn, quantity, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { showValue } from '../explain.ts'
import { decided, type Job, systemOf } from '../job.ts'
import type { Post } from '../laid-out.ts'
import { openQuestions } from '../next.ts'
import type { Block, Sheet } from '../sheets.ts'
import {
  allNodes,
  columns,
  givenIn,
  lackingIn,
  optionIn,
  postsAlong,
  type Site,
  sizeAt,
  sizeIn,
  workedAt,
} from './site.ts'

export function planSheet(site: Site): Sheet {
  const { plan } = site
  const runs = plan.posts.length > 0 ? runsFromAbove(site) : []
  return {
    title: 'Plan',
    blocks: [
      ...(runs.length > 0 ? fromAbove(site, runs) : []),
      ...(plan.runs.length > 0 ? [runsTable(site)] : []),
      { kind: 'lines', lines: countsOf(site) },
      { kind: 'lines', lines: openOf(site) },
      {
        kind: 'lines',
        lines: ['• What nobody said was taken as usual: go through the sheet “Taken as usual” before you buy or dig.'],
      },
    ],
  }
}

/** For the desk where a permit is asked for: outside dimensions, heights, gates, and room to write. */
export function permitSheet(site: Site): Sheet | undefined {
  const { plan, job } = site
  if (plan.posts.length === 0) return undefined
  const runs = runsFromAbove(site)
  const blank = '_'.repeat(40)
  const setback = sizeAt(site, 'setback', yard)
  const side = sideOf(site)
  return {
    title: 'Sketch for the permit desk',
    blocks: [
      {
        kind: 'lines',
        lines: [
          'This is a sketch by the owner and no survey. Lengths are as measured with a tape; the lot line is not shown, since only a survey can say where it is.',
          ...['Owner', 'Address', 'Permit number', 'Date'].map((it) => `${it}: ${blank}`),
        ],
      },
      {
        kind: 'drawing',
        svg: yardPlanDrawing({ runs, isClosed: plan.fence.isClosed, system: systemOf(job), isFor: 'permit' }),
        caption: 'From above, to scale. Draw in the street, the house and the lot line, and which way is north.',
      },
      {
        kind: 'lines',
        lines: [
          ...turnsOf(site, runs),
          ...heightsOf(site),
          ...(setback ? [`setback from the lot line, as told: ${show(setback)}`] : []),
        ],
      },
      ...gatesTable(site),
      ...(side ? [{ kind: 'drawing', svg: side, caption: '' } satisfies Block] : []),
    ],
  }
}

const seenAs: Readonly<Record<Post['kind'], PostSeen>> = {
  'corner-posts': 'corner',
  'gate-posts': 'gate',
  'end-posts': 'end',
  'line-posts': 'line',
}
const square = quantity(90, 'deg')

/** The runs as they are told and laid out; a corner whose angle nobody gave is drawn square. */
function runsFromAbove(site: Site): RunFromAbove[] {
  const { plan, job } = site
  return plan.runs.map((laid): RunFromAbove => {
    const { run, gateSpaces, stations } = laid
    const angle = decided(job, 'cornerAngle', run.place)?.value
    const spaces = gateSpaces.flatMap((isGate, i) => (isGate ? [i] : []))
    return {
      name: placeLabel(run.place),
      length: run.length ? show(run.length.value) : '',
      posts: postsAlong(site, laid).map((post, i) => ({
        number: post.number,
        kind: seenAs[post.kind],
        station: stations[i] as Quantity,
      })),
      gates: spaces.map((after, i) => ({ after, name: gateSeen(run.gates[i]?.opening?.value, i) })),
      corner: isQuantity(angle) ? angle : (fromPoints(job, run.place) ?? square),
      meetsNext: run.meetsNext,
      walls: { near: run.nearEnd === 'wall', far: run.farEnd === 'wall' },
    }
  })
}

/** The angle to the right of the way one walks, where the corners were told as points: over half a turn where it turns left. */
function fromPoints(job: Job, place: string): Quantity | undefined {
  const [xs, ys] = ['pointsAcross', 'pointsAlong'].map((word) => decided(job, word, yard)?.value)
  const at = Number(place.replace('run-', '')) - 1
  if (!isList(xs) || !isList(ys) || !Number.isInteger(at)) return undefined
  const point = (i: number): [number, number] => {
    const of = i % xs.length
    return [numberIn(xs[of] as Quantity, 'in'), numberIn(ys[of] as Quantity, 'in')]
  }
  const [a, b, c] = [point(at), point(at + 1), point(at + 2)]
  const heading = (from: [number, number], to: [number, number]): number => Math.atan2(to[1] - from[1], to[0] - from[0])
  const turned = (((heading(b, c) - heading(a, b)) * 180) / Math.PI + 540) % 360
  return quantity(String(Math.round(turned * 1e6) / 1e6), 'deg')
}

const gateSeen = (opening: unknown, i: number): string =>
  isQuantity(opening as Quantity) ? `gate ${i + 1}, ${show(opening as Quantity)}` : `gate ${i + 1}`

function fromAbove(site: Site, runs: readonly RunFromAbove[]): Block[] {
  const { plan, job } = site
  return [
    {
      kind: 'drawing',
      svg: yardPlanDrawing({ runs, isClosed: plan.fence.isClosed, system: systemOf(job), isFor: 'building' }),
      caption: 'From above, to scale. Posts are numbered along the whole fence.',
    },
    { kind: 'lines', lines: turnsOf(site, runs) },
  ]
}

/** How the corners were drawn, and whether the fence comes round so. */
function turnsOf({ plan, job }: Site, runs: readonly RunFromAbove[]): string[] {
  const corners = plan.runs.filter(({ run }, i) => run.meetsNext && (i < plan.runs.length - 1 || plan.fence.isClosed))
  if (corners.length === 0) return apart(plan.runs.length, runs)
  if (decided(job, 'pointsAcross', yard))
    return ['• Corners are drawn as their points lie, turned so that the first run goes to the right.']
  const told = corners.filter(({ run }) => decided(job, 'cornerAngle', run.place))
  const open = corners.filter((it) => !told.includes(it))
  const angles = new Map<string, string[]>()
  for (const { run } of told) {
    const angle = show(decided(job, 'cornerAngle', run.place)?.value as Quantity)
    angles.set(angle, [...(angles.get(angle) ?? []), `the ${placeLabel(run.place)}`])
  }
  return [
    ...[...angles].map(([angle, at]) => `• Inside the corner at the end of ${listed(at)}: ${angle}, as told.`),
    ...(open.length > 0
      ? [
          `• Nobody gave the angle at the end of ${listed(open.map(({ run }) => `the ${placeLabel(run.place)}`))}: drawn square, ${show(square)}.`,
        ]
      : []),
    '• Every corner is drawn as a turn to the right as you walk along the fence, the first run from left to right. If yours turns left, the drawing does not show it; lengths and stations hold all the same.',
    ...(plan.fence.isClosed && runs.every((it) => it.meetsNext) && !closes(runs)
      ? [
          '• Drawn with these lengths and angles the last run does not come back to the first post. Measure the corners, or both diagonals.',
        ]
      : []),
    ...apart(plan.runs.length, runs),
  ]
}

const apart = (count: number, runs: readonly RunFromAbove[]): string[] =>
  count > 1 && runs.slice(0, -1).some((it) => !it.meetsNext)
    ? ['• Runs that do not meet are drawn one under the other: how they lie to each other was not told.']
    : []

const listed = (all: readonly string[]): string =>
  all.length > 1 ? `${all.slice(0, -1).join(', ')} and ${all.at(-1)}` : (all[0] ?? '')

function runsTable(site: Site): Block {
  return {
    kind: 'table',
    table: {
      title: 'Runs',
      columns: columns('run', 'length', 'measured from', 'to', 'bays', 'its posts', 'gates'),
      rows: site.plan.runs.map((laid) => {
        const { run } = laid
        const node = workedAt(site, 'bays', run.place)
        const along = postsAlong(site, laid)
        const [first, last] = [along[0], along.at(-1)]
        return [
          placeLabel(run.place),
          run.length ? show(run.length.value) : '',
          endName(optionIn(node, 'nearEnd') ?? run.nearEnd),
          endName(optionIn(node, 'farEnd') ?? run.farEnd),
          String(laid.bays.length),
          first && last ? `${first.number} to ${last.number}` : String(laid.stations.length),
          run.gates.length > 0 ? String(run.gates.length) : '',
        ]
      }),
    },
  }
}

const endName = (end: string): string =>
  ({ post: 'post’s centre', outside: 'post’s outside face', wall: 'wall, post against it' })[end] ?? end

const counted = ['posts', 'bays', 'picketsToBuy', 'railsInAll', 'bags', 'gravel'] as const

function countsOf(site: Site): string[] {
  const lines = counted.flatMap((word) => {
    const value = sizeIn(workedAt(site, word, yard), word)
    return value ? [`${vocabulary.get(word)?.label}: ${show(value)}`] : []
  })
  return lines.length > 0 ? ['The whole fence:', ...lines] : []
}

/** What is not known yet, and what came out as impossible or odd. */
function openOf(site: Site): string[] {
  const { job, memo, turn } = site
  const lacking = lackingIn(allNodes(site))
  const waiting = openQuestions(job, memo, turn)
  const known = new Set(waiting.map((it) => `${it.word}@${it.at}`))
  const others = lacking.filter(
    (it) => it.ask && !known.has(`${it.word}@${it.at ?? yard}`) && !known.has(`${it.word}@${yard}`),
  )
  const ask = (question: string, at: string): string =>
    placeLabel(at) === '' ? question : `${question} (${placeLabel(at)})`
  const questions = [
    ...waiting.map((it) => `☐ ${ask(it.question, it.at)} Without it: no ${listed(it.waits)}.`),
    ...others.map((it) => `☐ ${ask(it.ask as string, it.at ?? yard)}`),
  ]
  const wrong = [...new Set(lacking.filter((it) => !it.ask && it.code !== 'missing').map((it) => `• ${it.message}`))]
  return [
    ...(wrong.length > 0 ? ['Look at this again:', ...wrong] : []),
    ...(questions.length > 0 ? ['Still to settle, and missing in this pack:', ...new Set(questions)] : []),
  ]
}

/** How finely one measures, and what a price is for, is no guess about the fence. */
const isOfTheTape = new Set(['tapeMark', 'stoneUnit'])

/** What was taken since nobody said it, to be gone through before anything is bought. */
export function usualSheet(site: Site): Sheet {
  const taken = allNodes(site).flatMap(({ outcome }) =>
    [...outcome.given].flatMap(([name, given]) => {
      const word = vocabulary.get(name)
      if (!word || given.role !== 'assumed' || isOfTheTape.has(name)) return []
      return [{ label: word.label, value: showValue(word, given.value) }]
    }),
  )
  const once = [...new Map(taken.map((it) => [`${it.label} ${it.value}`, it])).values()]
  return {
    title: 'Taken as usual',
    blocks: [
      {
        kind: 'table',
        table: {
          title: 'Nobody said it: check each, and write in yours',
          columns: columns('what', 'taken'),
          rows: once.map((it) => [it.label, it.value]),
        },
        blanks: ['yours'],
      },
    ],
  }
}

/** How high the fence stands, kind by kind where they differ. */
function heightsOf(site: Site): string[] {
  const kinds = [...new Set(site.plan.posts.map((it) => it.kind))]
  const above = kinds.flatMap((kind) => {
    const value = givenIn(site.plan.node('postLength', kind), 'postAbove', kind) ?? sizeAt(site, 'postAbove', kind)
    return value ? [{ kind, text: show(value) }] : []
  })
  const alike = new Set(above.map((it) => it.text)).size === 1
  const long = sizeAt(site, 'picketLength', yard)
  const steps = site.plan.runs.flatMap(({ run }) => {
    const step = sizeIn(workedAt(site, 'stepEach', run.place), 'stepEach')
    return step ? [`${placeLabel(run.place)} steps down at each post by: ${byTape(step)}`] : []
  })
  return [
    ...(alike
      ? [`posts above the ground, on level ground: ${above[0]?.text}`]
      : above.map((it) => `${placeLabel(it.kind)} above the ground: ${it.text}`)),
    ...(long ? [`picket length: ${show(long)}`] : []),
    ...steps,
  ]
}

function gatesTable(site: Site): Block[] {
  const gates = site.plan.fence.runs.flatMap((it) => it.gates)
  if (gates.length === 0) return []
  const word = vocabulary.get('gateLeaves')
  return [
    {
      kind: 'table',
      blanks: ['swings in or out', 'hinges at post'],
      table: {
        title: 'Gates',
        columns: columns('gate', 'opening', 'leaves', 'between posts'),
        rows: gates.map(({ place, opening }) => {
          const leaves = optionIn(workedAt(site, 'leafWidth', place), 'gateLeaves')
          return [
            placeLabel(place),
            isQuantity(opening?.value) ? show(opening.value) : '',
            leaves ? (word?.options?.[leaves]?.label ?? leaves) : '',
            gatePosts(site, place)
              ?.map((it) => it.number)
              .join(' and ') ?? '',
          ]
        }),
      },
    },
  ]
}

/** The two posts that a gate stands between. */
export function gatePosts(site: Site, gate: string): [Post, Post] | undefined {
  const laid = site.plan.runs.find((it) => it.run.gates.some((of) => of.place === gate))
  if (!laid || site.plan.posts.length === 0) return undefined
  const which = laid.run.gates.findIndex((it) => it.place === gate)
  const space = laid.gateSpaces.flatMap((isGate, i) => (isGate ? [i] : []))[which]
  const along = postsAlong(site, laid)
  const [from, to] = space === undefined ? [] : [along[space], along[space + 1]]
  return from && to ? [from, to] : undefined
}

/** The first bay of the fence from outside. */
function sideOf(site: Site): string | undefined {
  const { plan } = site
  const stretch = plan.stretches[0]
  const bay = stretch?.bays[0]
  if (!stretch || !bay) return undefined
  const pickets = workedAt(site, 'pickets', stretch.place)
  const kind = plan.posts.find((it) => it.kind === 'line-posts')?.kind ?? (plan.posts[0] as Post).kind
  const postAbove = givenIn(plan.node('postLength', kind), 'postAbove', kind) ?? sizeAt(site, 'postAbove', kind)
  if (!postAbove) return undefined
  return baySideDrawing({
    centres: bay.centres,
    opening: bay.opening,
    postAbove,
    pickets: sizeIn(pickets, 'pickets'),
    picketWidth: givenIn(pickets, 'picketWidth', stretch.place),
    gap: sizeIn(pickets, 'tapeGap'),
    picketLength: sizeAt(site, 'picketLength', stretch.place),
    footGap: sizeAt(site, 'footGap', stretch.place),
    isTight: pickets?.part.calculation.name === 'pickets-touching-posts',
  })
}
