// This file is about the wind on one bay: from the front what it sees, from the side where it pushes. Both to one scale.
import type { Seen } from '../calculation.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, down, earth, heading, line, sheet, shape, width, words } from './svg.ts'

const [frontLeft, postAt, top] = [76, 278, 62]
const room = { wide: 126, high: 128 }
const mostPickets = 90

export function windDrawing(seen: Seen): string | null {
  const [force, at] = [seen.maybe('sideForce'), seen.maybe('forceHeight')]
  if (!force || !at) return null
  const [bay, tall, foot] = [seen.one('bayCentres'), seen.one('postAbove'), seen.one('footGap')]
  const [picket, gap] = [seen.maybe('picketWidth'), seen.maybe('wantedGap')]
  const scale = Math.min(room.wide / numberIn(bay, 'in'), room.high / numberIn(tall, 'in'))
  const [wide, high, clear] = [numberIn(bay, 'in') * scale, numberIn(tall, 'in') * scale, numberIn(foot, 'in') * scale]
  const ground = top + high
  const boards = Math.max(1, high - clear)
  const parts: string[] = []
  // From the front: dark is what the wind sees.
  if (picket && gap) {
    const pitch = (numberIn(picket, 'in') + numberIn(gap, 'in')) * scale
    const count = Math.min(mostPickets, Math.floor(wide / pitch))
    const [rails, deep] = [numberIn(seen.one('rails'), 'rail'), numberIn(seen.one('railDepth'), 'in') * scale]
    for (let rail = 0; rail < rails; rail++) {
      const share = rails === 1 ? 0.5 : 0.16 + (0.68 * rail) / (rails - 1)
      parts.push(box(frontLeft, ground - clear - boards * share - deep / 2, wide, deep, '#777', 0.5))
    }
    const first = frontLeft + (wide - count * pitch + numberIn(gap, 'in') * scale) / 2
    for (let i = 0; i < count; i++)
      parts.push(box(first + i * pitch, top, numberIn(picket, 'in') * scale, boards, '#999', 0.5))
  } else parts.push(box(frontLeft, top, wide, boards, '#999', 1))
  const push = ground - numberIn(at, 'in') * scale
  parts.push(
    line(frontLeft - 6, ground, frontLeft + wide + 6, ground, 2),
    earth(frontLeft - 6, frontLeft + wide + 6, ground),
    down(frontLeft - 16, top, ground, show(tall), 'left'),
    across(frontLeft, frontLeft + wide, ground + 32, `bay ${show(bay)}`),
    // From the side: wind on the boards, and the one force that stands for it.
    box(postAt, top, 9, high, '#ddd', 1),
    box(postAt - 4, top, 4, boards, '#999', 0.75),
    line(postAt - 60, ground, postAt + 40, ground, 2),
    earth(postAt - 60, postAt + 40, ground),
    ...[0.12, 0.37, 0.62, 0.87].map((share) => arrow(postAt - 36, postAt - 6, top + boards * share, 0.75)),
    arrow(postAt - 64, postAt - 5, push, 3),
    down(postAt + 24, push, ground, show(at), 'right', '', top),
    words(frontLeft + wide / 2, 46, 'from the front', 'middle', 11),
    words(postAt - 4, 46, 'from the side', 'middle', 11),
    heading(`wind on one post: ${show(force)}`),
    aside(`bold: the force at working level; at the ground ${show(seen.one('tippingMoment'))}`, ground + 54),
  )
  if (picket) parts.push(aside('dark is what the wind sees; rails drawn where they usually are', ground + 71))
  return sheet(
    {
      width,
      height: ground + (picket ? 82 : 65),
      title: 'The wind on one bay, from the front and from the side',
      description: `One bay ${show(bay)} wide and ${show(tall)} high. The wind pushes one post with ${show(force)} at working level, ${show(at)} above the ground: ${show(seen.one('tippingMoment'))} at the ground.`,
    },
    parts,
  )
}

/** A level arrow to the right. */
function arrow(from: number, to: number, y: number, weight: number): string {
  const head = 4 + weight
  return (
    line(from, y, to - head, y, weight) +
    shape(
      [
        [to - head, y - head * 0.6],
        [to, y],
        [to - head, y + head * 0.6],
      ],
      '#111',
      0.5,
    )
  )
}
