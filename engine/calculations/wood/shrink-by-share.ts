// How much narrower boards become that shrink by a share of their width, and what gap that opens.
//
//   ▮▮▮▮▮▮▮▮▮▮      nailed up edge to edge
//   ▮▮▮▮ ▮▮▮▮ ▮     each loses as much, half from either edge: one whole loss between two
import { calculation } from '../../calculation.ts'
import { word } from '../../words/word.ts'

const lengthOf = (name: string, label: string, measure: string, ask: string) =>
  word<'length'>(name, {
    kind: 'length',
    label,
    units: { imperial: 'in', metric: 'mm' },
    measure,
    ask,
    called: {},
    possible: { least: '0 in' },
  })
const widthBefore = lengthOf('widthBefore', 'width before', 'With a tape, as it is now.', 'How wide is one before?')
const gapBefore = lengthOf('gapBefore', 'gap before', 'As it is nailed up.', 'What gap are they nailed up with?')
const narrowerBy = lengthOf('narrowerBy', 'so much narrower', 'The share of the width.', 'How much narrower is it?')
const widthShrunk = lengthOf('widthShrunk', 'width then', 'What is left of it.', 'How wide is it then?')
const gapShrunk = lengthOf('gapShrunk', 'gap then', 'Between two of them.', 'How wide is the gap then?')

const shareShrunk = word<'percent'>('shareShrunk', {
  kind: 'percent',
  label: 'shrinks by',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'Of its width, as you were told.',
  ask: 'By how many percent of its width does it shrink?',
  called: {},
  possible: { above: '0 %', most: '20 %' },
  plausible: { from: '0.2 %', to: '10 %' },
})

export const shrinkByShare = calculation({
  name: 'shrink-by-share',
  title: 'Shrinking by a share of the width',
  answers:
    'How much narrower a board becomes that shrinks by so many percent, and how wide the gap between two is then.',
  needs: { widthBefore, shareShrunk, gapBefore },
  may: ['gapBefore'],
  gives: { gapShrunk, widthShrunk, narrowerBy },
  headlines: ['widthShrunk'],
  together: {
    gapShrunk: ['gapShrunk', 'widthShrunk', 'narrowerBy'],
    widthShrunk: ['widthShrunk', 'narrowerBy'],
  },
  plain: true,
  lines: {
    narrowerBy: ['widthBefore * shareShrunk', 'the share of its width'],
    widthShrunk: ['widthBefore - narrowerBy', 'what is left'],
    gapOfTight: ['widthBefore * shareShrunk', 'they stood tight: half of it from the board on either side'],
    gapOfGap: ['gapBefore + narrowerBy', 'half of it from the board on either side'],
  },
  work(_, { line, has, tell, remark }) {
    line('narrowerBy')
    line('widthShrunk')
    tell('gapShrunk', line(has('gapBefore') ? 'gapOfGap' : 'gapOfTight'))
    if (!has('gapBefore')) remark('The gap is that of boards that were nailed up edge to edge.')
    remark('By how much it shrinks is your figure: boards differ, and swell again in wet weather.')
  },
  sources: [{ fact: 'narrower = width × share', from: 'Arithmetic; the share is yours.' }],
  cautions: [],
  examples: [
    // 6 × 0.02 = 0.12; 5.88
    {
      ask: 'Boards 6 in wide shrink 2 percent and are nailed up touching: how wide are the gaps then?',
      given: { widthBefore: '6 in', shareShrunk: '2 %' },
      expect: { narrowerBy: '3/25 in', widthShrunk: '5 22/25 in' },
    },
    // 100 × 0.04 = 4; 5 + 4
    {
      ask: 'Pickets 100 mm wide with 5 mm gaps shrink 4 percent: how wide are the gaps then?',
      given: { widthBefore: '100 mm', gapBefore: '5 mm', shareShrunk: '4 %' },
      expect: { gapShrunk: '9 mm', narrowerBy: '4 mm', widthShrunk: '96 mm' },
    },
  ],
})
