// Finish for a fence told as so long and so tall: its faces alone, gaps left out where they are told.
//
//   ┌──┐ ┌──┐ ┌──┐ ┌──┐
//   │▒▒│ │▒▒│ │▒▒│ │▒▒│   height      of each picket and the gap beside it
//   └──┘ └──┘ └──┘ └──┘               the picket is painted
//   ├───── length ─────┤
import { calculation } from '../../calculation.ts'
import { quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  canSize,
  coats,
  coverageFirst,
  coverageNext,
  finishCans,
  finishCost,
  finishNeeded,
  finishSpare,
} from '../../words/finish.ts'
import { sidesCoated } from '../../words/finish-area.ts'
import { picketWidth } from '../../words/pickets.ts'
import { canPrice } from '../../words/take-off.ts'
import { word } from '../../words/word.ts'

const faceLength = word<'length'>('faceLength', {
  kind: 'length',
  label: 'length of fence to finish',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Along the fence, gates and all that is painted.',
  ask: 'How long is the fence that is painted?',
  called: { names: ['fence to paint is long'] },
  possible: { above: '0 in' },
  plausible: { from: '3 ft', to: '3000 ft' },
})

const faceHeight = word<'length'>('faceHeight', {
  kind: 'length',
  label: 'height of the boards',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the foot of the boards to their tops.',
  ask: 'How tall are the boards that are painted?',
  called: { names: ['boards to paint are tall'] },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '10 ft' },
})

const faceGap = word<'length'>('faceGap', {
  kind: 'length',
  label: 'gap between the boards',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'As it is; nothing for boards that stand tight.',
  ask: 'How wide are the gaps between the boards?',
  called: { names: ['gap of the boards to paint'] },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '8 in' },
})

const faceShare = word<'percent'>('faceShare', {
  kind: 'percent',
  label: 'part of the face that is wood',
  measure: 'Two thirds, where the gaps are a third.',
  ask: 'What part of the face is wood, and no gap?',
  called: {},
  possible: { above: '0 %', most: '100 %' },
})

const faceOpen = word<'percent'>('faceOpen', {
  kind: 'percent',
  label: 'part of the face that is gap',
  measure: 'A third, where two thirds are wood.',
  ask: 'What part of the face is gap, and no wood?',
  called: {},
  possible: { least: '0 %', most: '95 %' },
})

const sideArea = word<'area'>('sideArea', {
  kind: 'area',
  label: 'area of one side',
  units: { imperial: 'ft2', metric: 'm2' },
  measure: 'The boards of one side of the fence.',
  ask: 'How large is one side?',
  called: {},
  possible: { above: '0 ft2' },
  plausible: { from: '5 ft2', to: '20000 ft2' },
})

const faceArea = word<'area'>('faceArea', {
  kind: 'area',
  label: 'faces to finish',
  units: { imperial: 'ft2', metric: 'm2' },
  measure: 'The faces of the boards, on as many sides as are painted.',
  ask: 'How large are the faces?',
  called: { names: ['area of the faces'] },
})

export const finishByFace = calculation({
  name: 'finish-by-face',
  title: 'Finish by the length and height of a fence',
  answers:
    'How much paint or stain the faces of a fence take, from its length and height, on one side or both, the gaps left out, and how many cans.',
  needs: {
    faceLength,
    faceHeight,
    picketWidth,
    faceGap,
    faceShare,
    faceOpen,
    sideArea,
    sidesCoated,
    coats,
    coverageFirst,
    coverageNext,
    finishSpare,
    canSize,
    canPrice,
  },
  may: [
    'faceLength',
    'faceHeight',
    'picketWidth',
    'faceGap',
    'faceShare',
    'faceOpen',
    'sideArea',
    'coverageNext',
    'canPrice',
  ],
  oneOf: [
    ['faceLength', 'sideArea'],
    ['faceHeight', 'sideArea'],
  ],
  onlyFor: {
    coats: ['finishNeeded', 'finishCans', 'finishCost'],
    coverageFirst: ['finishNeeded', 'finishCans', 'finishCost'],
    coverageNext: ['finishNeeded', 'finishCans', 'finishCost'],
    finishSpare: ['finishNeeded', 'finishCans', 'finishCost'],
    canSize: ['finishCans', 'finishCost'],
    canPrice: ['finishCost'],
  },
  gives: { faceArea, finishNeeded, finishCans, finishCost },
  headlines: ['finishNeeded', 'finishCans'],
  together: {
    finishNeeded: ['finishNeeded', 'finishCans', 'faceArea'],
    finishCans: ['finishCans', 'finishNeeded', 'faceArea'],
    finishCost: ['finishCost', 'finishCans', 'finishNeeded'],
  },
  locals: { sides: 'number', share: 'number', woodShare: 'number', oneCoat: 'count', allCoats: 'volume' },
  lines: {
    share: ['picketWidth / (picketWidth + faceGap)', 'of each picket and the gap beside it, the picket'],
    faceArea: ['faceLength * faceHeight * sides', 'as if it were a wall'],
    facesOfPickets: ['faceLength * faceHeight * sides * share', 'the gaps take no paint'],
    facesOfShare: ['faceLength * faceHeight * sides * faceShare', 'the gaps take no paint'],
    facesOfOpen: ['faceLength * faceHeight * sides * (1 - faceOpen)', 'the gaps take no paint'],
    facesOfSide: ['sideArea * sides', 'one side, as often as there are sides to paint'],
    woodOfSide: ['sideArea * sides * woodShare', 'the gaps take no paint'],
    woodOfGap: ['share', 'the picket, of picket and gap'],
    woodOfShare: ['faceShare', 'as you told it'],
    woodOfOpen: ['1 - faceOpen', 'what is no gap'],
    bare: ['coats * faceArea / coverageFirst', 'every coat goes as far'],
    bareByCoat: [
      'faceArea / coverageFirst + (coats - oneCoat) / oneCoat * faceArea / coverageNext',
      'the first coat drinks most; each after it goes further',
    ],
    finishNeeded: ['allCoats * (1 + finishSpare)', 'all coats, with what is spare'],
    finishCans: ['ceil(finishNeeded / canSize)', 'whole cans, rounded up once'],
    finishCost: ['finishCans * canPrice', 'so many cans at that'],
  },
  work({ sidesCoated: sides }, { line, put, tell, has, need, remark, system }) {
    put('sides', quantity(sides === 'one' ? 1 : 2, 'ratio'))
    if (has('faceGap') && !has('picketWidth')) need('picketWidth')
    const isOfSide = has('sideArea') && !(has('faceLength') && has('faceHeight'))
    const wood = has('faceGap')
      ? 'woodOfGap'
      : has('faceShare')
        ? 'woodOfShare'
        : has('faceOpen')
          ? 'woodOfOpen'
          : undefined
    const by = isOfSide
      ? wood
        ? 'woodOfSide'
        : 'facesOfSide'
      : has('faceGap')
        ? 'facesOfPickets'
        : has('faceShare')
          ? 'facesOfShare'
          : has('faceOpen')
            ? 'facesOfOpen'
            : undefined
    if (has('faceGap')) line('share')
    if (isOfSide && wood) put('woodShare', line(wood))
    const area = by ? tell('faceArea', line(by, system === 'metric' ? 'm2' : 'ft2')) : line('faceArea')
    if (has('coats') && has('coverageFirst') && has('finishSpare')) {
      put('oneCoat', quantity(1, 'coat'))
      const bare = put('allCoats', line(has('coverageNext') ? 'bareByCoat' : 'bare', system === 'metric' ? 'L' : 'gal'))
      line('finishNeeded')
      remark(`Without what is spare it is ${show(bare)}.`)
      if (has('canSize')) {
        line('finishCans')
        if (has('canPrice')) line('finishCost')
      }
    }
    remark(
      `${show(area)} are the faces of the boards alone, on ${sides === 'one' ? 'one side' : 'both sides'}${wood ? '' : ', with no gap between them'}. Edges, rails and posts take more: give me their sizes, and I count them.`,
    )
  },
  sources: [
    { fact: 'finish = area × coats / spread, with spare', from: 'Derived here; needs no table.' },
    { fact: 'of a fence the pickets’ share is their width over width and gap', from: 'Derived here from the sketch.' },
  ],
  cautions: ['fire', 'lead', 'dust'],
  examples: [
    // 25 × 1.5 × 2 = 75 m²; × 2 / 10 = 15 L; × 1.1 = 16.5; / 5 → 4
    {
      ask: 'Stain for a solid fence of 25 m x 1500 mm, both sides, 2 coats, 10 m2 a litre: how many litres?',
      given: { faceLength: '25 m', faceHeight: '1500 mm', coats: '2', coverageFirst: '10 m2/L' },
      expect: { faceArea: '75 m²', finishNeeded: '16.5 L', finishCans: '4 cans' },
    },
    // 60 × 4 × 2 × 3 / (3 + 2) = 288 ft²; / 300 = 0.96 gal; × 1.1 = 1.056 → 2
    {
      ask: 'Paint for a fence 60 ft long and 4 ft tall, 3 in pickets and 2 in gaps, both sides, 1 coat, 300 square feet per gallon?',
      given: {
        faceLength: '60 ft',
        faceHeight: '4 ft',
        picketWidth: '3 in',
        faceGap: '2 in',
        coats: '1',
        coverageFirst: '300 ft2/gal',
      },
      expect: { faceArea: '288 ft²', finishNeeded: '1.056 gal', finishCans: '2 cans' },
    },
  ],
})
