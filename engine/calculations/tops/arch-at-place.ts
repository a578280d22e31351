// One curve over a bay, and how high it stands at any place.
//
//     ___----___        heights at the posts and in the middle: the rise is what lies between them
//   ▏            ▕      at a place: the curve's height over its ends, by how far it is from the middle
//   ▏◄─ place ┃  ▕
import { calculation } from '../../calculation.ts'
import { chainFor, type Curve, heightAt } from '../../curves.ts'
import { absolute, add, type Amount, compare, exact, over, subtract } from '../../quantities/amount.ts'
import { equal, less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  curveOffEnds,
  heightAtPlace,
  heightAtPosts,
  heightInMiddle,
  placeFromMiddle,
  placeFromPost,
} from '../../words/curve-places.ts'
import { opening } from '../../words/pickets.ts'
import { archCurve, archRadius, archRise, archShape } from '../../words/tops.ts'

export const archAtPlace = calculation({
  name: 'arch-at-place',
  title: 'An arch or a dip from its heights',
  answers:
    'The rise and the radius of an arched or dipping top from its height at the posts and in the middle, and how tall a picket is at any place.',
  needs: {
    opening,
    heightAtPosts,
    heightInMiddle,
    archRise,
    placeFromPost,
    placeFromMiddle,
    archShape,
    archCurve,
  },
  may: ['heightInMiddle', 'archRise', 'placeFromPost', 'placeFromMiddle', 'heightAtPosts'],
  oneOf: [['heightInMiddle', 'archRise']],
  onlyFor: {
    placeFromPost: ['heightAtPlace', 'curveOffEnds'],
    placeFromMiddle: ['heightAtPlace', 'curveOffEnds'],
  },
  gives: { archRise, archRadius, heightInMiddle, heightAtPlace, curveOffEnds },
  headlines: ['heightAtPlace', 'archRadius'],
  together: {
    archRadius: ['archRadius', 'archRise'],
    heightAtPlace: ['heightAtPlace', 'archRadius', 'archRise'],
    heightInMiddle: ['heightInMiddle', 'archRise'],
    curveOffEnds: ['curveOffEnds', 'archRise'],
  },
  locals: { fromMiddle: 'length', overEnds: 'length' },
  lines: {
    archRise: ['abs(heightInMiddle - heightAtPosts)', 'what lies between the two heights'],
    heightOfArch: ['heightAtPosts + archRise', 'it rises to the middle'],
    heightOfDip: ['heightAtPosts - archRise', 'it dips to the middle'],
    archRadius: ['(opening ^ 2 / 4 + archRise ^ 2) / (2 * archRise)', 'the circle through both ends and the middle'],
    offTheMiddle: ['abs(opening / 2 - placeFromPost)', 'half the bay, less how far it is from the post'],
    heightOverArch: ['heightAtPosts + overEnds', 'so much the curve stands over its ends there'],
    heightUnderDip: ['heightAtPosts - overEnds', 'so much the curve lies below its ends there'],
  },
  work({ opening, archShape: shape, archCurve }, { line, has, rows, put, tell, need, refuse, remark }) {
    const one = (name: 'heightAtPosts' | 'heightInMiddle' | 'archRise' | 'placeFromMiddle' | 'placeFromPost') =>
      rows(name)[0] as Quantity
    const curve = archCurve as Curve
    const isByHeights = has('heightInMiddle') && has('heightAtPosts')
    if (isByHeights && equal(one('heightAtPosts'), one('heightInMiddle')))
      refuse('heightInMiddle', `Both heights are ${show(one('heightInMiddle'))}: that top is straight. Check the two.`)
    if (has('heightInMiddle') && !has('heightAtPosts') && !has('archRise')) need('heightAtPosts')
    const isDip = isByHeights ? less(one('heightInMiddle'), one('heightAtPosts')) : shape === 'concave'
    if (isByHeights && has('archRise')) {
      const between = absolute(subtract(one('heightInMiddle').amount, one('heightAtPosts').amount))
      if (!equal({ ...one('archRise'), amount: between }, one('archRise')))
        refuse(
          'archRise',
          `From ${show(one('heightAtPosts'))} at the posts to ${show(one('heightInMiddle'))} in the middle is no rise of ${show(one('archRise'))}. Give me two of the three.`,
        )
    }
    const rise = has('archRise') ? one('archRise') : line('archRise')
    const half: Amount = over(opening.amount, exact(2))
    if (curve === 'circle' && compare(rise.amount, half) === 1)
      refuse(
        'archRise',
        `A rise of ${show(rise)} over a ${show(opening)} bay is more than half of it: a circle would bulge past the posts. Check both.`,
      )
    if (compare(rise.amount, opening.amount) === 1)
      refuse('archRise', `A rise of ${show(rise)} is more than the bay of ${show(opening)} is wide. Check both.`)
    const size: Amount =
      curve === 'circle'
        ? line('archRadius').amount
        : curve === 'chain'
          ? chainFor(opening.amount, rise.amount)
          : exact(0)
    if (has('heightAtPosts') && !has('heightInMiddle'))
      tell('heightInMiddle', line(isDip ? 'heightOfDip' : 'heightOfArch'))
    if (has('placeFromPost') || has('placeFromMiddle')) {
      const from = has('placeFromMiddle') ? one('placeFromMiddle') : line('offTheMiddle')
      const place = has('placeFromPost') ? one('placeFromPost') : from
      if (compare(from.amount, half) === 1)
        refuse(
          has('placeFromPost') ? 'placeFromPost' : 'placeFromMiddle',
          `A place ${show(place)} away lies outside a bay of ${show(opening)}. Check both.`,
        )
      put('fromMiddle', from)
      const over = put('overEnds', {
        ...rise,
        amount: add(heightAt(curve, from.amount, opening.amount, rise.amount, size), exact(0)),
      })
      tell('curveOffEnds', over)
      if (has('heightAtPosts')) tell('heightAtPlace', line(isDip ? 'heightUnderDip' : 'heightOverArch'))
      remark(
        'That is the curve at one line. A picket has a width: mark the curve at both its edges, and join the marks.',
      )
    }
    remark(
      `The top ${isDip ? 'dips' : 'rises'} by ${show(rise)} in the middle.${curve === 'circle' ? ' Draw it with a string and a nail: the nail stands on the middle line of the bay, a radius away from the curve.' : ''}`,
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
  examples: [
    // rise 48 − 42 = 6; (72²/4 + 36)/12 = 111; 12 from the middle: √(111² − 12²) − 105 = 5.3495; 42 + 5.3495
    {
      ask: 'Arched top over an opening of 72 in, 42 in tall at the posts and 48 in tall in the middle: how tall is the picket that stands 24 in from the post?',
      given: { opening: '72 in', heightAtPosts: '42 in', heightInMiddle: '48 in', placeFromPost: '24 in' },
      expect: { archRise: '6 in', archRadius: '111 in', heightAtPlace: '47.35 in' },
    },
    // (80²/4 + 5²)/10 = 162.5; 20 from the middle: √(162.5² − 20²) = 161.2645; less 157.5
    {
      ask: 'Scalloped top over an opening of 80 in, a dip of 5 in: how far below the ends is the curve 20 in from the middle?',
      given: { opening: '80 in', archRise: '5 in', placeFromMiddle: '20 in', archShape: 'concave' },
      expect: { curveOffEnds: '3.765 in', archRadius: '162 1/2 in' },
    },
    // (1800²/4 + 200²)/400 = 2125; 500 from the middle: √(2125² − 500²) − 1925 = 140.34; 1200 − 140.34
    {
      ask: 'Scalloped top: opening 1800 mm, 1200 mm tall at the posts, dip of 200 mm. How tall is the picket that stands 500 mm from the middle?',
      given: {
        opening: '1800 mm',
        heightAtPosts: '1200 mm',
        archRise: '200 mm',
        placeFromMiddle: '500 mm',
        archShape: 'concave',
      },
      expect: { archRadius: '2,125 mm', heightInMiddle: '1,000 mm', heightAtPlace: '1,060 mm' },
    },
  ],
})
