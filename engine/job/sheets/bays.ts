// This file is about the sheets for rails and pickets: what fills each bay, the marks of its story stick, and its arch.
import { byTape } from '../../quantities/tape.ts'
import type { Curve } from '../../curves.ts'
import { halfArchFullSize, stripFullSize } from '../../drawings/full-size.ts'
import { stacked } from '../../drawings/stacked.ts'
import type { Table } from '../../outcome.ts'
import { equal, isQuantity, less, numberIn, quantity, type Quantity } from '../../quantities/quantity.ts'
import { readQuantities } from '../../quantities/read.ts'
import { show } from '../../quantities/show.ts'
import type { Stretch } from '../laid-out.ts'
import type { Node } from '../node.ts'
import type { Block, Sheet } from '../sheets.ts'
import {
  columns,
  figure,
  givenIn,
  optionIn,
  remarksOf,
  type Site,
  sizeIn,
  stretchName,
  tapeOr,
  valueIn,
  workedAt,
} from './site.ts'

export function baysSheet(site: Site): Sheet | undefined {
  const { plan } = site
  const filled = plan.stretches.map((stretch) => ({
    stretch,
    pickets: workedAt(site, 'pickets', stretch.place),
    rail: workedAt(site, 'railCut', stretch.place),
  }))
  if (!filled.some((it) => it.pickets || it.rail)) return undefined
  const cut = (node: Node | undefined): string => {
    const angle = valueIn(node, 'plumbCut')
    return isQuantity(angle) ? show(angle) : ''
  }
  const has = {
    pickets: filled.some((it) => it.pickets),
    rail: filled.some((it) => it.rail),
    cut: filled.some((it) => cut(it.rail) !== ''),
  }
  return {
    title: 'Bays and pickets',
    blocks: [
      {
        kind: 'table',
        table: {
          title: 'Bays that are alike, by the tape',
          columns: columns(
            'bays',
            'centre to centre',
            'opening',
            ...(has.pickets ? ['pickets', 'gap'] : []),
            ...(has.rail ? ['rail as cut'] : []),
            ...(has.cut ? ['its ends'] : []),
          ),
          rows: filled.map(({ stretch, pickets, rail }) => {
            const bay = stretch.bays[0] as Stretch['bays'][number]
            return [
              stretchName(stretch),
              byTape(bay.centres),
              byTape(bay.opening),
              ...(has.pickets ? [countIn(pickets), tapeOr(sizeIn(pickets, 'tapeGap'))] : []),
              ...(has.rail ? [tapeOr(sizeIn(rail, 'railCut'))] : []),
              ...(has.cut ? [cut(rail)] : []),
            ]
          }),
        },
      },
      { kind: 'lines', lines: remarksOf(filled.map((it) => it.rail)) },
      ...drawingsOf(filled.map(({ stretch, pickets }) => ({ name: stretchName(stretch), node: pickets }))),
    ],
  }
}

/** The number alone, under a heading that says of what. */
const countIn = (node: Node | undefined): string => {
  const pickets = sizeIn(node, 'pickets')
  return pickets ? String(numberIn(pickets, pickets.unit)) : ''
}

/** Each drawing once, with all that it is of under it. */
function drawingsOf(all: readonly { readonly name: string; readonly node: Node | undefined }[]): Block[] {
  const names = new Map<string, string[]>()
  for (const { name, node } of all) {
    const svg = node?.outcome.ok ? node.outcome.drawing : null
    if (svg) names.set(svg, [...(names.get(svg) ?? []), name])
  }
  const pieces = [...names].map(([svg, of]) => ({ svg, under: of.join('; ') }))
  return pieces
    .flatMap((_, i) => (i % perPage === 0 ? [pieces.slice(i, i + perPage)] : []))
    .map((it): Block => ({ kind: 'drawing', svg: stacked(it), caption: '' }))
}
const perPage = 2

/** Bays whose pickets stand alike take one stick. */
interface Stick {
  readonly names: readonly string[]
  readonly node: Node
  readonly at: string
  readonly opening: Quantity
  readonly marks: Table
}

function sticksOf(site: Site): Stick[] {
  const sticks: Stick[] = []
  for (const stretch of site.plan.stretches) {
    const node = workedAt(site, 'pickets', stretch.place)
    const marks = node?.outcome.tables.find((it) => it.title.startsWith('Running marks'))
    const opening = stretch.bays[0]?.opening
    if (!node || !marks || !opening) continue
    const alike = sticks.findIndex(
      (it) => equal(it.opening, opening) && JSON.stringify(it.marks.rows) === JSON.stringify(marks.rows),
    )
    const known = sticks[alike]
    if (known) sticks[alike] = { ...known, names: [...known.names, stretchName(stretch)] }
    else sticks.push({ names: [stretchName(stretch)], node, at: stretch.place, opening, marks })
  }
  return sticks
}

/** As many are printed at their true size; each takes several pages. */
const mostPrinted = 3
const longestPrinted = quantity(4, 'm')
const mostMarks = 200

export function stickSheets(site: Site): Sheet[] {
  const sticks = sticksOf(site)
  if (sticks.length === 0) return []
  const printed = sticks
    .filter((it) => !less(longestPrinted, it.opening) && it.marks.rows.length <= mostMarks)
    .slice(0, mostPrinted)
  const raked = site.plan.stretches.some((it) => valueIn(workedAt(site, 'railCut', it.place), 'plumbCut') !== undefined)
  const isLeft = sticks.length > printed.length
  return [
    {
      title: 'Story stick',
      blocks: [
        {
          kind: 'lines',
          lines: [
            ...remarksOf(sticks.map((it) => it.node)).filter((it) => !it.includes('say so')),
            ...(raked
              ? ['• Where the fence follows the ground the marks are level ones: carry them plumb to the rail.']
              : []),
            ...(printed.length > 0 && isLeft
              ? ['• Only the first sticks follow at true size: mark the others from the list.']
              : []),
          ],
        },
        {
          kind: 'table',
          table: {
            title: 'Sticks',
            columns: columns('stick', 'for', 'opening', 'pickets', 'gap by the tape'),
            rows: sticks.map(({ names, node, opening }, i) => [
              letterOf(i),
              names.join('; '),
              byTape(opening),
              countIn(node),
              tapeOr(sizeIn(node, 'tapeGap')),
            ]),
          },
        },
        ...sticks.flatMap((_, i) => (i % perTable === 0 ? [marksTable(sticks, i)] : [])),
      ],
    },
    ...printed.map((it) => fullSize(it, sticks.indexOf(it))),
  ]
}

/** So many sticks stand side by side in one table of marks. */
const perTable = 6
/** A to Z, then AA, AB. */
export const letterOf = (i: number): string =>
  `${i >= 26 ? String.fromCharCode(64 + Math.floor(i / 26)) : ''}${String.fromCharCode(65 + (i % 26))}`

function marksTable(all: readonly Stick[], from: number): Block {
  const sticks = all.slice(from, from + perTable)
  const most = Math.max(...sticks.map((it) => it.marks.rows.length))
  const unit = sticks[0]?.marks.columns[1]?.unit ?? ''
  const longest = sticks.find((it) => it.marks.rows.length === most)?.marks.rows ?? []
  return {
    kind: 'table',
    table: {
      title: `Left edge of each picket in ${unit === 'mm' ? 'millimetres' : 'inches'}, from the face of the left post`,
      columns: columns('picket', ...sticks.map((_, i) => `stick ${letterOf(from + i)}`)),
      rows: longest.map(([number]) => [
        String(number),
        ...sticks.map(({ marks }) => String(marks.rows.find((it) => it[0] === number)?.[1] ?? '')),
      ]),
    },
  }
}

function fullSize({ names, node, at, opening, marks }: Stick, i: number): Sheet {
  const width = givenIn(node, 'picketWidth', at) as Quantity
  const name = `stick ${letterOf(i)}: ${names.join('; ')}`
  const tight = node.part.calculation.name === 'pickets-touching-posts'
  return {
    title: `Story stick ${letterOf(i)}, true size`,
    blocks: [
      {
        kind: 'full-size',
        ...stripFullSize(opening, width, marksIn(marks), name),
        caption: `For ${names.join('; ')}. Glue it on a lath. The left end goes against the face of the left post${tight ? ', and so does the first picket' : ''}; each line is the left edge of a picket, with the picket on the side of the cross.`,
      },
    ],
  }
}

/** The marks of the table, read back as they are written there. */
function marksIn({ columns, rows }: Table): { number: number; at: Quantity; text: string }[] {
  const unit = columns[1]?.unit ?? ''
  return rows.flatMap(([number, mark]) => {
    const text = `${mark} ${unit}`
    const at = readQuantities(text)[0]?.quantity
    return at ? [{ number: Number(number), at, text }] : []
  })
}

/** Half a template is printed of bays up to that opening, and of that rise with what is left to hold. */
const longestArch = quantity(5000, 'mm')
const widestTemplate = quantity(600, 'mm')

export function archSheets(site: Site): Sheet[] {
  const arched = site.plan.stretches.flatMap((stretch) => {
    const node = workedAt(site, 'archLength', stretch.place)
    const opening = stretch.bays[0]?.opening
    return node && opening ? [{ stretch, node, opening }] : []
  })
  const groups: { names: string[]; node: (typeof arched)[number]['node']; opening: Quantity; at: string }[] = []
  for (const { stretch, node, opening } of arched) {
    const alike = groups.find((it) => equal(it.opening, opening) && it.node.outcome.drawing === node.outcome.drawing)
    if (alike) alike.names.push(stretchName(stretch))
    else groups.push({ names: [stretchName(stretch)], node, opening, at: stretch.place })
  }
  return groups.map(({ names, node, opening, at }, i): Sheet => {
    const rise = givenIn(node, 'archRise', at)
    const size = (word: string): Quantity | undefined => sizeIn(node, word)
    const [radius, wide] = [size('archRadius'), size('templateWide')]
    const fits = wide && !less(widestTemplate, wide) && !less(longestArch, opening)
    const lines = (
      [
        ['rise of the arch', rise],
        ['radius', radius],
        ['tallest picket', size('tallestPicket')],
        ['template, long', size('templateLong')],
        ['template, wide', wide],
      ] as const
    ).flatMap(([label, value]) => (value ? [`${label}: ${figure(value)}`] : []))
    return {
      title: `Arch: ${names[0]}${names.length > 1 ? ' and others' : ''}`,
      blocks: [
        { kind: 'lines', lines: [`• For ${names.join('; ')}.`, ...lines] },
        ...node.outcome.tables.map((table): Block => ({ kind: 'table', table })),
        ...(node.outcome.drawing
          ? [{ kind: 'drawing', svg: node.outcome.drawing, caption: names.join('; ') } satisfies Block]
          : []),
        { kind: 'lines', lines: remarksOf([node]) },
        ...(i === 0 && fits && rise
          ? [
              {
                kind: 'full-size' as const,
                ...halfArchFullSize({
                  opening,
                  rise,
                  curve: (optionIn(node, 'archCurve') ?? 'circle') as Curve,
                  dips: optionIn(node, 'archShape') === 'concave',
                  radius,
                }),
                caption: `Half of the arch of ${names.join('; ')}. Cut along the curve; turned over it is the other half.`,
              },
            ]
          : []),
      ],
    }
  })
}
