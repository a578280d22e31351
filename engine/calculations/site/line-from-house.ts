// A fence line measured from the house instead of from the street.
//
//   house ├──────── to the sidewalk ────────┤
//         ├── line from the house ──●◄ back ►│
import { calculation } from '../../calculation.ts'
import { less, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { word } from '../../words/word.ts'

const houseToStreet = word<'length'>('houseToStreet', {
  kind: 'length',
  label: 'from the house to the sidewalk',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From where you will measure to the edge that the fence must stay back from, square to it.',
  ask: 'How far is it from the house to the sidewalk?',
  called: { names: ['from the house to the sidewalk', 'from the porch to the sidewalk'] },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '500 ft' },
})

const streetSetback = word<'length'>('streetSetback', {
  kind: 'length',
  label: 'back from the sidewalk',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the edge of the sidewalk to the fence.',
  ask: 'How far back from the sidewalk must the fence stay?',
  called: { names: ['back from the sidewalk', 'behind the sidewalk', 'back from the pavement'] },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '100 ft' },
})

const postOnLine = word<'length'>('postOnLine', {
  kind: 'length',
  label: 'posts on the line',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Where the middle of the posts is asked for, and their street side keeps the distance.',
  ask: 'How wide are the posts on that line?',
  called: { names: ['posts on the line'] },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '12 in' },
})

const lineFromHouse = word<'length'>('lineFromHouse', {
  kind: 'length',
  label: 'to the fence line',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From the house, or from the mark, to the line of the fence.',
  ask: 'How far from the house does the fence line go?',
  called: { asks: ['how far from the house', 'how far from the porch', 'how far from the house is the line'] },
})

export const lineFromHouseOf = calculation({
  name: 'line-from-house',
  title: 'The fence line, measured from the house',
  answers: 'How far from the house a fence line is that stays back from the sidewalk.',
  needs: { houseToStreet, streetSetback, postOnLine },
  may: ['postOnLine'],
  gives: { lineFromHouse },
  headlines: ['lineFromHouse'],
  lines: {
    lineFromHouse: ['houseToStreet - streetSetback', 'the whole way, less what the fence stays back'],
    middleFromHouse: [
      'houseToStreet - streetSetback - postOnLine / 2',
      'the whole way, less what the fence stays back, less half a post to its middle',
    ],
  },
  work({ houseToStreet, streetSetback }, { line, has, tell, refuse, remark }) {
    const at = line(has('postOnLine') ? 'middleFromHouse' : 'lineFromHouse')
    if (!less(zero('length', 'in'), at))
      refuse(
        'streetSetback',
        `${show(streetSetback)} back leaves nothing of the ${show(houseToStreet)} to the sidewalk. Check both.`,
      )
    tell('lineFromHouse', at)
    remark(
      has('postOnLine')
        ? 'That is the line of the post centres: the street side of the posts keeps the distance.'
        : 'That is the line which must keep the distance. Ask what is measured to: the posts, or the face of the pickets in front of them.',
    )
  },
  sources: [{ fact: 'the rest of the way is the whole less what is kept', from: 'Derived here; needs no table.' }],
  cautions: ['lot-line', 'local-code'],
  examples: [
    // 20 ft 6 in − 2 ft
    {
      ask: 'The fence stays 2 ft back from the sidewalk and it is 20 ft 6 in from the house to the sidewalk: how far from the house is the line?',
      given: { houseToStreet: '20 ft 6 in', streetSetback: '2 ft' },
      expect: { lineFromHouse: '18 ft 6 in' },
    },
    // 6 m − 600 mm
    {
      ask: 'It is 6 m from the house to the pavement and the fence stays 600 mm back from the pavement: how far from the house does it stand?',
      given: { houseToStreet: '6 m', streetSetback: '600 mm' },
      expect: { lineFromHouse: '5.4 m' },
    },
  ],
})
