// A curved run set out in straight bays.
//
//        ●───●
//      ╱       ╲        chord = 2 r sin(turn / 2), where the turn is arc ÷ radius
//     ●         ●       the curve bulges outside each straight rail by r (1 − cos(turn / 2))
//     └─ string ─┘      post i stands r (cos φ − cos(half)) off the string, half of it + r sin φ along it,
//                       where half is half the turn of the whole curve and φ = i × turn − half
import { calculation } from '../../calculation.ts'
import { curveDrawing } from '../../drawings/curve.ts'
import type { Table } from '../../outcome.ts'
import { about, type Amount, exact, roundTo, times, toNumber } from '../../quantities/amount.ts'
import { exactly, holdsMoreThan, less, type Quantity, quantity, type System } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { widestBay } from '../../words/bays.ts'
import {
  bulge,
  chord,
  chords,
  curveLength,
  curveRadius,
  deflection,
  longChord,
} from '../../words/corners-and-curves.ts'

const mostBays = 200

export const curveByChords = calculation({
  name: 'curve-by-chords',
  title: 'A curved run in straight bays',
  answers:
    'How many straight bays go round a curve, how far the posts are apart in a straight line, how far each bay turns, and where each post goes along the curve or off a string.',
  needs: { curveRadius, curveLength, widestBay },
  gives: { chords, chord, deflection, bulge, longChord },
  headlines: ['chords', 'chord', 'deflection'],
  together: {
    chords: ['chords', 'chord', 'deflection', 'bulge', 'longChord'],
    chord: ['chord', 'chords', 'deflection'],
    deflection: ['deflection', 'chord', 'chords'],
    bulge: ['bulge', 'chord'],
    longChord: ['longChord', 'chords', 'chord'],
  },
  called: ['curve', 'curved', 'radius'],
  lines: {
    chords: ['ceil(curveLength / widestBay)', 'the fewest bays within your limit along the curve'],
    arc: ['curveLength / chords', 'each bay’s share of the curve'],
    deflection: ['arc / curveRadius * 180 / pi', 'the turn of one bay, in degrees'],
    chord: ['2 * curveRadius * sin(deflection / 2)', 'straight from post centre to post centre'],
    bulge: [
      'curveRadius * (1 - cos(deflection / 2))',
      'in the middle of a bay, from the straight rail out to the curve',
    ],
    wholeTurn: ['chords * deflection', 'the turn of the whole curve'],
    longChord: ['2 * curveRadius * sin(wholeTurn / 2)', 'straight across, from the first post to the last'],
  },
  work({ curveRadius, curveLength, widestBay }, { line, refuse, remark, cite, table, system }) {
    const round: Quantity = { ...curveRadius, amount: times(curveRadius.amount, about(2 * Math.PI)) }
    if (less(round, curveLength))
      refuse(
        'curveLength',
        `A curve of ${show(curveRadius)} radius closes on itself after ${cite(round, 'once round, about')}, and you gave ${show(curveLength)}. Check the radius and the length.`,
      )
    if (holdsMoreThan(mostBays, widestBay, curveLength))
      refuse(
        'curveLength',
        `A curve ${show(curveLength)} long with bays of ${show(widestBay)} has more bays than I can set out at once. Check both units.`,
      )
    const bays = line('chords')
    const arc = line('arc')
    const turn = line('deflection')
    if (less(quantity(120, 'deg'), turn))
      refuse(
        'widestBay',
        `Bays of ${show(widestBay)} on a curve of ${show(curveRadius)} radius would turn ${show(turn)} each. Take shorter bays.`,
      )
    line('chord')
    const off = line('bulge')
    remark(
      `Swing a tape from the centre stake for the curve, and step the straight distance along it from post to post. Each rail lies inside the curve by ${show(off)} at its middle.`,
    )
    const isShallow = !less(quantity(180, 'deg'), line('wholeTurn'))
    if (isShallow) {
      const string = line('longChord')
      remark(
        `Where the centre cannot be reached, stretch a string of ${show(string)} from the first post to the last, mark it by the table, and measure out from each mark square to the string.`,
      )
    } else
      remark(
        'The curve turns more than half a circle, so it cannot be set out from one string: set it out in two halves, or from the centre.',
      )
    table(stationsTable(curveRadius, bays, arc, isShallow, system))
  },
  sources: [
    {
      fact: 'chord = 2 r sin(turn/2), middle ordinate = r (1 − cos(turn/2))',
      from: 'Plane geometry of the circle; derived here from the sketch.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  drawing: curveDrawing,
  examples: [
    // 30/6 = 5; 72 in/360 in = 0.2 rad = 11.459°; 2 × 360 × sin 0.1 = 71.880; 360 (1 − cos 0.1) = 1.7985
    {
      ask: 'I want to set out a curve with a radius of 30 ft, 30 ft along the curve, bays at most 6 ft. How many bays round the curve?',
      given: { curveRadius: '30 ft', curveLength: '30 ft', widestBay: '6 ft' },
      expect: { chords: '5 bays', chord: '71.88 in', deflection: '11.46°', bulge: '1.799 in' },
    },
    // 9/1.8 = 5; 1.8/12 = 0.15 rad = 8.594°; 24 × sin 0.075 = 1.79831 m; 12(1 − cos 0.075) = 33.73 mm
    {
      ask: 'Curved fence, radius 12 m, length of the curve 9 m, bays at most 1.8 m: chord length?',
      given: { curveRadius: '12 m', curveLength: '9 m', widestBay: '1.8 m' },
      expect: { chords: '5 bays', chord: '1,798 mm', deflection: '8.594°', bulge: '33.73 mm' },
    },
  ],
})

/** Post by post from the first: along the curve and, where one string spans it, along the string and square off it. */
function stationsTable(radius: Quantity, bays: Quantity, arc: Quantity, isShallow: boolean, system: System): Table {
  const unit = system === 'metric' ? 'mm' : 'ft'
  const mark = exactly(system === 'metric' ? quantity(1, 'mm') : quantity('1/16', 'in'))
  const onTape = (amount: Amount): string => show({ kind: 'length', amount: roundTo(amount, mark), unit })
  const [r, each, count] = [radius.amount, arc.amount, bays.amount].map(toNumber) as [number, number, number]
  const half = (each * count) / r / 2
  return {
    title: `Post by post, to the nearest ${show(system === 'metric' ? quantity(1, 'mm') : quantity('1/16', 'in'))}`,
    columns: [
      { label: 'post', unit: '' },
      { label: 'along the curve', unit: '' },
      ...(isShallow
        ? [
            { label: 'along the string', unit: '' },
            { label: 'out from the string', unit: '' },
          ]
        : []),
    ],
    rows: Array.from({ length: count + 1 }, (_, i) => {
      const turned = (i * each) / r - half
      const off = i === 0 || i === count ? 0 : r * (Math.cos(turned) - Math.cos(half))
      return [
        i + 1,
        onTape(times(exact(i), arc.amount)),
        ...(isShallow ? [onTape(about(r * (Math.sin(half) + Math.sin(turned)))), onTape(about(off))] : []),
      ]
    }),
  }
}
