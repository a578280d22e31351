// This file is about an arched bay from the front: pickets cut to the curve, with their middle lengths.
import type { Seen } from '../calculation.ts'
import { chainFor, type Curve, heightAt } from '../curves.ts'
import { toNumber } from '../quantities/amount.ts'
import { numberIn } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import { across, aside, box, heading, line, part, shape, sheet, width } from './svg.ts'

export function archDrawing(seen: Seen): string | null {
  const [opening, rise] = [seen.one('opening'), seen.one('archRise')]
  const curve = (seen.option('archCurve') ?? 'circle') as Curve
  const dips = seen.option('archShape') === 'concave'
  const size =
    curve === 'circle'
      ? seen.one('archRadius').amount
      : curve === 'chain'
        ? chainFor(opening.amount, rise.amount)
        : rise.amount
  const [c, r] = [numberIn(opening, 'in'), numberIn(rise, 'in')]
  const up = (x: number): number => {
    const y = toNumber(heightAt(curve, { value: x, error: 0 }, opening.amount, rise.amount, size))
    return dips ? r - y : y
  }
  const pickets = seen.maybe('pickets')
  const base = seen.maybe('base')
  const stub = base ? Math.min(numberIn(base, 'in'), c * 0.45) : c * 0.25
  const scale = Math.min((width - 44) / c, 210 / (stub + r))
  const left = (width - c * scale) / 2
  const top = 60
  const ground = top + (r + stub) * scale
  const at = (x: number): readonly [number, number] => [left + (x + c / 2) * scale, ground - (stub + up(x)) * scale]
  const parts: string[] = [line(8, ground + 8, width - 8, ground + 8, 2)]
  const many = pickets ? Math.round(numberIn(pickets, pickets.unit)) : 0
  if (many > 0 && many <= 120 && base && seen.maybe('picketWidth')) {
    const w = numberIn(seen.one('picketWidth'), 'in')
    const gap = (c - many * w) / (many + 1)
    const bits = 2 * Math.ceil((w * scale) / 40) // of a picket's top: a wide one follows the curve in more of them
    for (let i = 0; i < many; i++) {
      const x = gap + i * (gap + w) - c / 2
      parts.push(
        part(
          picketSays(seen, i, many),
          shape(
            [
              [at(x)[0], ground],
              ...Array.from({ length: bits + 1 }, (_, k) => at(x + (k * w) / bits)),
              [at(x + w)[0], ground],
            ],
            '#f4f4f4',
            many > 40 ? 0.6 : 1,
          ),
        ),
      )
    }
  }
  const fine = Array.from({ length: 81 }, (_, i) => at((i / 80 - 0.5) * c)).map(
    ([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`,
  )
  parts.push(`<path d="M${fine.join('L')}" fill="none" stroke="#111" stroke-width="2"/>`)
  for (const x of [left - 8, left + c * scale]) parts.push(box(x, top + 4, 8, ground - top + 4, '#bbb'))
  parts.push(across(left, left + c * scale, ground + 34, `opening ${show(opening)}`))
  const radius = seen.maybe('archRadius')
  parts.push(heading(`${dips ? 'dips' : 'rises'} ${show(rise)}${radius ? `, radius ${show(radius)}` : ''}`))
  const tall = seen.maybe('tallestPicket')
  if (tall && base) parts.push(aside(`tallest ${show(tall)}, the curve’s base at ${show(base)}`, 42))
  // The curve is true. What stands under it is cut short where it would leave no room for the curve.
  const short = !base || stub < numberIn(base, 'in')
  if (short) parts.push(aside('the curve is to scale, the height under it is not', ground + 52))
  return sheet(
    {
      width,
      height: ground + (short ? 62 : 46),
      title: dips ? 'A bay that dips in the middle' : 'A bay that rises in the middle',
      description: `An opening of ${show(opening)} with a curve that ${dips ? 'dips' : 'rises'} ${show(rise)} in the middle${radius ? `, radius ${show(radius)}` : ''}.${tall ? ` The tallest picket is ${show(tall)}.` : ''}`,
    },
    parts,
  )
}

/** From its foot to the curve, as the table has it. */
function picketSays(seen: Seen, i: number, many: number): string {
  const table = seen.tables.find((it) => it.title.startsWith('Picket by picket'))
  const unit = table?.columns[1]?.unit
  const [, left, middle, right, cut] = table?.rows[i] ?? []
  const long = `${middle} ${unit} long in the middle, ${left} ${unit} at its left edge, ${right} ${unit} at its right`
  return `picket ${i + 1} of ${many}${table ? `: ${long}; its top is cut ${cut} from square` : ''}`
}
