// Pickets cut to one curve over a bay.
//
//      convex          concave
//     ▄▄██▄▄          █▄    ▄█        the curve cuts each picket over its width, not at its middle:
//   ▄████████▄        ███▄▄███        both edges and the middle are given
//
//   circle: R = (chord² / 4 + rise²) / (2 × rise)
import { calculation } from '../../calculation.ts'
import { chainFor, type Curve, heightAt, lengthOf, slopeAt } from '../../curves.ts'
import { archDrawing } from '../../drawings/arch.ts'
import {
  add,
  type Amount,
  compare,
  exact,
  isExact,
  over,
  roundTo,
  subtract,
  times,
  toNumber,
} from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { decimal, show } from '../../quantities/show.ts'
import { opening, pickets, picketWidth, tapeMark } from '../../words/pickets.ts'
import {
  archCurve,
  archLength,
  archRadius,
  archRise,
  archShape,
  shortestPicket,
  tallestPicket,
  templateLong,
  templateMargin,
  templateWide,
} from '../../words/tops.ts'

const mostPickets = 200

export const archedTop = calculation({
  name: 'arched-top',
  title: 'Pickets cut to an arch or a dip',
  answers:
    'The radius of an arched or dipping top, how long each picket is at both edges and its middle, the cut at each, and the template.',
  needs: { opening, archRise, picketWidth, pickets, shortestPicket, archShape, archCurve, templateMargin, tapeMark },
  onlyFor: { pickets: ['tallestPicket'], picketWidth: ['tallestPicket'], shortestPicket: ['tallestPicket'] },
  gives: { archRadius, tallestPicket, archLength, templateLong, templateWide },
  headlines: ['archRadius', 'tallestPicket'],
  together: {
    archRadius: ['archRadius', 'archLength', 'templateLong', 'templateWide', 'tallestPicket'],
    tallestPicket: ['tallestPicket', 'archRadius', 'templateLong', 'templateWide'],
    templateLong: ['templateLong', 'templateWide', 'archRadius'],
  },
  called: [
    'arch',
    'arched',
    'scallop',
    'scalloped',
    'swoop',
    'dip in the middle',
    'hanging chain',
    'catenary',
    'parabola',
  ],
  lines: {
    archRadius: ['(opening ^ 2 / 4 + archRise ^ 2) / (2 * archRise)', 'the circle through both ends and the middle'],
    templateLong: ['opening + 2 * templateMargin', 'the whole bay, and something to hold'],
    templateWide: ['archRise + templateMargin', 'the rise, and something to hold'],
  },
  work(
    { opening, archRise, picketWidth, archShape, archCurve, tapeMark },
    { line, has, rows, tell, refuse, remark, table, cite, system },
  ) {
    const curve = archCurve as Curve
    const half: Quantity = { ...opening, amount: over(opening.amount, exact(2)) }
    if (less(half, archRise))
      refuse(
        'archRise',
        `A rise of ${show(archRise)} over a ${show(opening)} opening is more than half of it: a circle would bulge past the posts. Keep the rise under ${cite(half, 'half of the opening')}.`,
      )
    const size: Amount =
      curve === 'circle'
        ? line('archRadius').amount
        : curve === 'chain'
          ? chainFor(opening.amount, archRise.amount)
          : exact(0)
    const unit = system === 'metric' ? 'mm' : 'in'
    const long = lengthOf(curve, opening.amount, archRise.amount, size)
    tell('archLength', { kind: 'length', amount: long, unit })
    line('templateLong')
    line('templateWide')
    if (curve === 'circle')
      remark(
        'Draw it with a stick and a nail: the nail stands on the middle line of the bay, a radius away from the curve. Or bend a thin batten through both ends and the middle.',
      )
    else
      remark(
        curve === 'chain'
          ? 'Hang a light chain from two nails at the ends until it sags by the rise, and trace it. For a rising arch turn the template over.'
          : 'Mark the heights from the table and bend a thin batten through them.',
      )
    if (!has('pickets') || !has('shortestPicket') || !has('picketWidth')) return
    const count = rows('pickets')[0] as Quantity
    const base = rows('shortestPicket')[0] as Quantity
    const n = toNumber(count.amount)
    if (n > mostPickets) refuse('pickets', `${show(count)} are more than one arch can hold here. Check the number.`)
    const wood = times(count.amount, picketWidth.amount)
    if (compare(opening.amount, wood) === -1)
      refuse(
        'pickets',
        `${show(count)} of ${show(picketWidth)} are more wood than a ${show(opening)} opening holds. Check the three.`,
      )
    const gap = over(subtract(opening.amount, wood), add(count.amount, exact(1)))
    const height = (x: Amount): Amount => {
      const up = heightAt(curve, x, opening.amount, archRise.amount, size)
      return add(base.amount, archShape === 'concave' ? subtract(archRise.amount, up) : up)
    }
    const mark = (amount: Amount): string =>
      show({
        kind: 'length',
        amount: isExact(tapeMark.amount) ? roundTo(amount, tapeMark.amount) : amount,
        unit,
      }).replace(` ${unit}`, '')
    const places = Array.from({ length: n }, (_, i) => {
      const left = subtract(add(gap, times(exact(i), add(gap, picketWidth.amount))), half.amount)
      return [left, add(left, over(picketWidth.amount, exact(2))), add(left, picketWidth.amount)] as const
    })
    const heights = places.map((three) => three.map(height))
    const tallest = heights.flat().reduce((a, b) => (toNumber(a) < toNumber(b) ? b : a))
    tell('tallestPicket', { kind: 'length', amount: tallest, unit })
    table({
      title: 'Picket by picket, from its foot to the curve',
      columns: [
        { label: 'picket', unit: '' },
        { label: 'left edge', unit },
        { label: 'middle', unit },
        { label: 'right edge', unit },
        { label: 'cut from square', unit: 'deg' },
      ],
      rows: heights.map((three, i) => [
        i + 1,
        ...three.map(mark),
        `${decimal(slopeAt(curve, (places[i] as readonly [Amount, Amount, Amount])[1], opening.amount, archRise.amount, size), 1)}°`,
      ]),
    })
    remark(
      'Mark both edges of each picket, not only its middle, and join the marks. A height rule looks at the tallest one.',
    )
  },
  sources: [
    {
      fact: 'R = (chord² / 4 + rise²) / (2 × rise)',
      from: 'Plane geometry of the circle; derived here from the sketch.',
    },
    { fact: 'a hanging chain follows a·cosh(x/a)', from: 'Mechanics (the catenary); solved here by halving.' },
  ],
  cautions: ['tools', 'local-code'],
  drawing: archDrawing,
  examples: [
    // 36²/… : (72²/4 + 6²)/12 = (1296 + 36)/12 = 111; 72 + 4 = 76; 6 + 2 = 8
    {
      ask: 'What radius for an arched top with a rise of 6 in over a 72 in opening?',
      given: { opening: '72 in', archRise: '6 in' },
      expect: { archRadius: '111 in', archLength: '73.33 in', templateLong: '76 in', templateWide: '8 in' },
    },
    // 1800² / 4 + 200² over 400 = 2125; the middle one of 15 stands in the middle: 1000 + 200
    {
      ask: 'Arched pickets: opening 1800 mm, rise 200 mm, 15 pickets of 70 mm, shortest picket 1000 mm. How long is each picket?',
      given: { opening: '1800 mm', archRise: '200 mm', pickets: '15', picketWidth: '70 mm', shortestPicket: '1000 mm' },
      expect: { archRadius: '2,125 mm', tallestPicket: '1,200 mm' },
    },
  ],
})
