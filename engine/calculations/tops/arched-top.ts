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
  curveBase,
  endPicket,
  longestPicket,
  shortestPicket,
  tallestPicket,
  templateLong,
  templateMargin,
  templateWide,
} from '../../words/tops.ts'

const mostPickets = 200
/** What may fix how high the curve stands over the pickets' feet: one of these. */
const heldWords = { shortestPicket, longestPicket, endPicket, curveBase }

// Steeper than this no top is cut, and a chain’s figures run out of what a number can hold.
const steepest = exact(10)

export const archedTop = calculation({
  name: 'arched-top',
  title: 'Pickets cut to an arch or a dip',
  answers:
    'The radius of an arched or dipping top, how long each picket is at both edges and its middle, the cut at each, and the template.',
  needs: {
    opening,
    archRise,
    picketWidth,
    pickets,
    shortestPicket,
    longestPicket,
    endPicket,
    curveBase,
    archShape,
    archCurve,
    templateMargin,
    tapeMark,
  },
  may: ['shortestPicket', 'longestPicket', 'endPicket', 'curveBase'],
  onlyFor: { pickets: ['tallestPicket'], picketWidth: ['tallestPicket'] },
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
  locals: { base: 'length' },
  lines: {
    archRadius: ['(opening ^ 2 / 4 + archRise ^ 2) / (2 * archRise)', 'the circle through both ends and the middle'],
    templateLong: ['opening + 2 * templateMargin', 'the whole bay, and something to hold'],
    templateWide: ['archRise + templateMargin', 'the rise, and something to hold'],
  },
  work(
    { opening, archRise, picketWidth, archShape, archCurve, tapeMark },
    { line, has, rows, put, tell, refuse, remark, doubt, table, cite, system },
  ) {
    const curve = archCurve as Curve
    const half: Quantity = { ...opening, amount: over(opening.amount, exact(2)) }
    if (curve === 'circle' && less(half, archRise))
      refuse(
        'archRise',
        `A rise of ${show(archRise)} over a ${show(opening)} opening is more than half of it: a circle would bulge past the posts. Keep the rise within ${cite(half, 'half of the opening')}, or take a parabola or a hanging chain.`,
      )
    if (less({ ...opening, amount: times(opening.amount, steepest) }, archRise))
      refuse(
        'archRise',
        `A rise of ${show(archRise)} over a ${show(opening)} opening is a spike and no fence top. Check both measurements and their units.`,
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
    if (!has('pickets') || !has('picketWidth')) return
    const [by, another] = (Object.keys(heldWords) as (keyof typeof heldWords)[]).filter(has)
    if (another)
      refuse(
        another,
        'The shortest picket, the longest, the one at the end and the base of the curve follow from one another. Give me one of them.',
      )
    if (!by) {
      doubt('missing', 'shortestPicket', 'How long each picket is follows from one of them.', shortestPicket.ask)
      return
    }
    const held = rows(by)[0] as Quantity
    const count = rows('pickets')[0] as Quantity
    const n = toNumber(count.amount)
    if (n > mostPickets) refuse('pickets', `${show(count)} are more than one arch can hold here. Check the number.`)
    const wood = times(count.amount, picketWidth.amount)
    if (compare(opening.amount, wood) === -1)
      refuse(
        'pickets',
        `${show(count)} of ${show(picketWidth)} are more wood than a ${show(opening)} opening holds. Check the three.`,
      )
    const gap = over(subtract(opening.amount, wood), add(count.amount, exact(1)))
    const overBase = (x: Amount): Amount => {
      const up = heightAt(curve, x, opening.amount, archRise.amount, size)
      return archShape === 'concave' ? subtract(archRise.amount, up) : up
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
    const risen = places.map((three) => three.map(overBase))
    // The gap at the post keeps the first picket off the curve's end: its shorter edge is longer than the base, and so for the others.
    const [least, most] = [risen.flat().reduce(lesser), risen.flat().reduce(greater)]
    const heldOver = {
      shortestPicket: least,
      longestPicket: most,
      endPicket: risen[0]?.[0] as Amount,
      curveBase: exact(0),
    }
    const base = subtract(held.amount, heldOver[by])
    if (compare(add(base, least), exact(0)) !== 1)
      refuse(
        by,
        `With ${show(held)} for the ${heldWords[by].label} nothing is left of the shortest: the curve rises ${show(archRise)}. Check both.`,
      )
    put('base', { kind: 'length', amount: base, unit })
    const heights = risen.map((three) => three.map((up) => add(base, up)))
    const tallest = add(base, most)
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
      `The shortest picket is ${cite({ kind: 'length', amount: add(base, least), unit }, 'shortest picket, at its shorter edge')} at its shorter edge. The curve’s own base, ${archShape === 'concave' ? 'in the middle of the bay' : 'at the post faces'}, lies ${cite({ kind: 'length', amount: base, unit }, 'base of the curve')} above the pickets’ feet.`,
    )
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
    // 1800² / 4 + 200² over 400 = 2125; gaps (1800 − 1050)/16 = 46.875; the first outer edge 853.125 from the middle stands
    // √(2125² − 853.125²) − 1925 = 21.228 over the base; the middle one of 15 in the middle: 1000 − 21.228 + 200
    {
      ask: 'Arched pickets: opening 1800 mm, rise 200 mm, 15 pickets of 70 mm, shortest picket 1000 mm. How long is each picket?',
      given: { opening: '1800 mm', archRise: '200 mm', pickets: '15', picketWidth: '70 mm', shortestPicket: '1000 mm' },
      expect: { archRadius: '2,125 mm', tallestPicket: '1,179 mm' },
    },
    // a dip of 8 in over 72 in, 12 pickets: gaps (72 − 42)/13 = 2.308; the end pickets' outer edges are the longest: 48
    {
      ask: 'Scalloped pickets: opening 72 in, dip 8 in, 12 pickets of 3 1/2 in, longest picket 48 in. How long is each picket?',
      given: {
        opening: '72 in',
        archRise: '8 in',
        pickets: '12',
        picketWidth: '3 1/2 in',
        longestPicket: '48 in',
        archShape: 'concave',
      },
      expect: { archRadius: '85 in', tallestPicket: '48 in' },
    },
  ],
})

const lesser = (a: Amount, b: Amount): Amount => (toNumber(b) < toNumber(a) ? b : a)
const greater = (a: Amount, b: Amount): Amount => (toNumber(a) < toNumber(b) ? b : a)
