// Sticks of several sizes together: their board feet, and what they weigh.
//
//   22 × 2x4 × 8 ft   ▭▭▭▭      each size by itself,
//   13 × 4x4 × 8 ft   ▢▢▢       then all of them added up
import { calculation } from '../../calculation.ts'
import { isExact } from '../../quantities/amount.ts'
import { amountIn, type Quantity, quantity } from '../../quantities/quantity.ts'
import { dressedLumber } from '../../tables/dressed-lumber.ts'
import { woodDensity } from '../../words/rail-sag.ts'
import { moistureNow, species } from '../../words/wet-wood.ts'
import { word } from '../../words/word.ts'
import { densityLines, densityLocals, densityRemark, densitySources, workDensity } from '../../wood-density.ts'

const each = { kind: 'length', list: true } as const

const listThickness = word<'length'>('listThickness', {
  ...each,
  label: 'thickness of each size, as sold',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The first figure of each name, in their order.',
  ask: 'What sizes are the sticks?',
  called: { names: ['thickness of each size'] },
  ofStick: 'name thickness',
  otherSide: 'listWidth',
  possible: { above: '0 in' },
})

const listWidth = word<'length'>('listWidth', {
  ...each,
  label: 'width of each size, as sold',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The second figure of each name, in their order.',
  ask: 'How wide are the sticks of each size?',
  called: { names: ['width of each size'] },
  ofStick: 'name',
  possible: { above: '0 in' },
})

const listLength = word<'length'>('listLength', {
  ...each,
  label: 'length of each size',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'One for each size, in their order.',
  ask: 'How long are the sticks of each size?',
  called: { names: ['length of each size'] },
  possible: { above: '0 in' },
})

const listSticks = word<'count'>('listSticks', {
  kind: 'count',
  noun: 'stick',
  list: true,
  whole: true,
  label: 'sticks of each size',
  measure: 'One number for each size, in their order.',
  ask: 'How many sticks of each size?',
  called: { names: ['sticks of each size'] },
  possible: { least: '1' },
})

const listBoardFeet = word<'count'>('listBoardFeet', {
  kind: 'count',
  noun: 'board foot',
  label: 'board feet of all sizes',
  measure: 'By the sizes they are sold as; under 1 in thick counts as 1 in.',
  ask: 'How many board feet are all sizes together?',
  called: { names: ['board feet of all sizes'] },
})

const listWeight = word<'mass'>('listWeight', {
  kind: 'mass',
  label: 'weight of all sizes',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'All the sticks together, by what they measure planed.',
  ask: 'What do all sizes weigh together?',
  called: { names: ['weight of all sizes'] },
})

const lists = ['listThickness', 'listWidth', 'listLength', 'listSticks'] as const

export const sticksOfSizes = calculation({
  name: 'sticks-of-sizes',
  title: 'Sticks of several sizes together',
  answers:
    'How many board feet sticks of two sizes or more are together, and what they weigh by their wood and its moisture.',
  needs: { listThickness, listWidth, listLength, listSticks, species, moistureNow },
  onlyFor: { species: ['listWeight'], moistureNow: ['listWeight'] },
  gives: { listBoardFeet, listWeight, woodDensity },
  headlines: ['listBoardFeet', 'listWeight'],
  together: { listWeight: ['listWeight', 'woodDensity'] },
  locals: {
    ...densityLocals,
    inch: 'length',
    one: 'volume',
    planedThickness: 'length',
    planedWidth: 'length',
  },
  lines: {
    ...densityLines,
    counted: ['max(listThickness, inch)', 'thinner than an inch counts as an inch'],
    listBoardFeet: [
      'sum(listSticks * counted * listWidth * listLength / one)',
      'a board foot is 144 cubic inches; each size by itself, then all',
    ],
    listWeight: [
      'sum(listSticks * (woodDensity * planedThickness * planedWidth * listLength))',
      'each size by what it measures, then all',
    ],
  },
  work({ species: kind }, { line, put, rows, has, refuse, remark }) {
    const sizes = rows('listThickness').length
    const short = lists.find((name) => rows(name).length !== sizes)
    if (short) refuse(short, 'Give for every size its name, its length and how many there are, in the same order.')
    put('inch', quantity(1, 'in'))
    put('one', quantity(144, 'in3'))
    line('counted')
    line('listBoardFeet')
    if (!has('species') || !has('moistureNow')) return
    put('planedThickness', rows('listThickness').map(planed))
    put('planedWidth', rows('listWidth').map(planed))
    workDensity(kind, { line, put })
    line('listWeight')
    remark(densityRemark)
    remark('Sizes by their names in inches are weighed as they measure planed dry; others as they were told.')
  },
  sources: [
    {
      fact: 'board feet = thickness × width × length / 12, in nominal inches, nominal inches and feet; under 1 in counts as 1',
      from: 'a navy training manual, http://www.tpub.com/engbas/6-3.htm',
    },
    {
      fact: 'least dressed sizes, dry',
      from: 'PS 20, American Softwood Lumber Standard, as reprinted at engineeringtoolbox.com, d_1270; widths from nominal 8 up are from memory',
    },
    ...densitySources,
  ],
  cautions: ['lifting'],
  examples: [
    // 10 × 2 × 4 × 10 / 12 = 66 2/3; 6 × 4 × 4 × 8 / 12 = 64
    {
      ask: 'How many board feet are 10 2x4s of 10 ft and 6 4x4s of 8 ft together?',
      given: {
        listThickness: ['2x4', '4x4'],
        listWidth: ['2x4', '4x4'],
        listLength: ['10 ft', '8 ft'],
        listSticks: ['10', '6'],
      },
      expect: { listBoardFeet: '130.7 board feet' },
    },
    // 12 × 1 × 6 × 8 / 12 = 48; 5 × 2 × 6 × 12 / 12 = 60
    {
      ask: 'How many board feet are 12 1x6s of 8 ft and 5 2x6s of 12 ft together?',
      given: {
        listThickness: ['1x6', '2x6'],
        listWidth: ['1x6', '2x6'],
        listLength: ['8 ft', '12 ft'],
        listSticks: ['12', '5'],
      },
      expect: { listBoardFeet: '108 board feet' },
    },
  ],
})

/** What a side that is called by whole inches measures planed; any other is as it was told. */
const planed = (sold: Quantity): Quantity => {
  const inches = amountIn(sold, 'in')
  const found = isExact(inches) ? dressedLumber[inches.toFraction()] : undefined
  return found ? quantity(found, 'in') : sold
}
