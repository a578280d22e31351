// This file is about the elevation of one bay: two posts, two rails, pickets with equal gaps, widths to scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, heading, line, mostParts, part, shape, sheet, width } from './svg.ts'

const side = 26
const ground = 196
const tops = 62

/** How pickets begin and end at the posts: what share of a gap stands before the first, and how that is said. */
interface Ends {
  readonly before: number
  readonly heading: string
  readonly inWords: string
}
const wholeGaps: Ends = { before: 1, heading: 'the same gap at every post', inWords: 'between them and at each post' }
const halfGaps: Ends = {
  before: 0.5,
  heading: 'half a gap at each post',
  inWords: 'between them and half of it at each post',
}
const oneTight: Ends = { before: 0, heading: 'tight against one post', inWords: 'between them and at the other post' }
const bothTight: Ends = {
  before: 0,
  heading: 'one tight against each post',
  inWords: 'between them and none at the posts',
}

export const bayDrawing = (seen: Seen): string => bayWith(seen, wholeGaps)
export const asManyGapsDrawing = (seen: Seen): string =>
  bayWith(seen, seen.option('gapsAtPosts') === 'half' ? halfGaps : oneTight)
export const touchingDrawing = (seen: Seen): string => bayWith(seen, bothTight)

function bayWith(seen: Seen, ends: Ends): string {
  const [opening, picket, count, gap, tape] = [
    seen.one('opening'),
    seen.one('picketWidth'),
    seen.one('pickets'),
    seen.one('gap'),
    seen.one('tapeGap'),
  ]
  const many = Math.round(numberIn(count, count.unit))
  const space = numberIn(opening, 'in')
  const post = 3.5 // drawn as wide as a common 4x4; the posts are not part of the sum
  const scale = (width - 2 * side) / (space + 2 * post)
  const [left, right] = [side + post * scale, side + (post + space) * scale]
  const [pitch, wide, open] = [
    numberIn(gap, 'in') + numberIn(picket, 'in'),
    numberIn(picket, 'in') * scale,
    numberIn(gap, 'in') * scale,
  ]
  const first = left + open * ends.before
  const parts = [line(8, ground, width - 8, ground, 2)]
  for (const y of [tops + 26, ground - 38]) parts.push(box(left, y, right - left, 8, '#ddd', 0.75))
  for (let i = 0; i < many; i++) {
    const x = first + i * pitch * scale
    const point = Math.min(wide / 2, 10)
    const drawn = shape(
      [
        [x, ground - 8],
        [x, tops + point],
        [x + wide / 2, tops],
        [x + wide, tops + point],
        [x + wide, ground - 8],
      ],
      '#fff',
      // So many that their edges stand close together are drawn finer, or they would run into one black.
      Math.min(many > 40 ? 0.6 : 1, (pitch * scale) / 8),
    )
    parts.push(many > mostParts ? drawn : part(picketSays(seen, i, many), drawn))
  }
  for (const [x, says] of [
    [side, 'left post: the opening begins at its face'],
    [right, `right post: its face is ${show(opening)} from the left one's`],
  ] as const)
    parts.push(part(says, box(x, tops - 8, post * scale, ground - tops + 8, '#bbb')))
  parts.push(across(left, right, 44, `opening ${show(opening)}`))
  // The gap's dimension stands under the gap before the first picket where that is a whole one, else under the gap behind it.
  const gapFrom = ends.before === 1 ? left : first + wide
  const hasGap = ends.before === 1 || many > 1
  // The words of what stands further left are the lower ones.
  const [pickets, gaps] = ends.before === 1 || !hasGap ? [24, 44] : [44, 24]
  const dimensions = [
    { from: first, to: first + wide, below: pickets, text: `picket ${show(picket)}` },
    ...(hasGap ? [{ from: gapFrom, to: gapFrom + open, below: gaps, text: `gap ${show(tape)} by the tape` }] : []),
  ]
  for (const { from, to, below } of dimensions)
    for (const x of [from, to]) parts.push(line(x, ground + 2, x, ground + below + 4, 0.5, '#6b6b6b', '2 2'))
  for (const { from, to, below, text } of dimensions)
    parts.push(`<g>${across(from, to, ground + below, text, width, true)}</g>`)
  parts.push(heading(`${show(count)}, ${ends.heading}`, 18))
  parts.push(aside('widths to scale, height not', ground + 68))
  return sheet(
    {
      width,
      height: ground + 76,
      title: 'One bay, from the street',
      description: `A bay with an opening of ${show(opening)}: ${show(count)}, each ${show(picket)} wide, with a gap of ${show(tape)} by the tape ${ends.inWords}.`,
    },
    parts,
  )
}

/** Its mark as the table of running marks has it, and where that is measured from. */
function picketSays(seen: Seen, i: number, many: number): string {
  const [table, width] = [seen.tables.find((it) => it.title.startsWith('Running marks')), show(seen.one('picketWidth'))]
  const mark = table?.rows[i]?.[1]
  const from = table?.title.split(', from ')[1]?.replace(/ \(.*/, '')
  const unit = table?.columns[1]?.unit
  const at = mark === undefined ? '' : `left edge at ${mark} ${unit} from ${from}; `
  return `picket ${i + 1} of ${many}: ${at}${width} wide`
}
