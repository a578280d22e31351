// Pickets cut from longer boards: how many one board gives, and how many boards so many pickets take.
//
//   ├── picket ──┤▒├── picket ──┤▒├ rest ┤      ▒ a saw cut between two
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { kerf, stockLength } from '../../words/lumber.ts'
import { picketLength } from '../../words/pickets.ts'
import { word } from '../../words/word.ts'

const picketsToCut = word<'count'>('picketsToCut', {
  kind: 'count',
  noun: 'picket',
  whole: true,
  label: 'pickets to cut',
  measure: 'All that you need, spares among them.',
  ask: 'How many pickets do you need?',
  called: { names: ['pickets to cut'] },
  possible: { least: '1' },
  plausible: { from: '1', to: '5000' },
})

const picketsPerBoard = word<'count'>('picketsPerBoard', {
  kind: 'count',
  noun: 'picket',
  whole: true,
  label: 'pickets from one board',
  measure: 'Whole pickets, a saw cut between two.',
  ask: 'How many pickets does one board give?',
  called: { asks: ['pickets from a board', 'pickets from one board', 'pickets out of a board', 'pickets per board'] },
})

const picketBoards = word<'count'>('picketBoards', {
  kind: 'count',
  noun: 'board',
  whole: true,
  label: 'boards for the pickets',
  measure: 'Whole boards, as they are bought.',
  ask: 'How many boards do the pickets take?',
  called: { asks: ['boards for the pickets', 'boards for pickets'] },
})

export const picketsFromBoards = calculation({
  name: 'pickets-from-boards',
  title: 'Pickets cut from longer boards',
  answers: 'How many pickets one board gives, and how many boards so many pickets take.',
  needs: { picketLength, stockLength, kerf, picketsToCut },
  onlyFor: { picketsToCut: ['picketBoards'] },
  gives: { picketsPerBoard, picketBoards },
  headlines: ['picketsPerBoard'],
  together: { picketBoards: ['picketBoards', 'picketsPerBoard'] },
  locals: {},
  lines: {
    picketsPerBoard: ['floor((stockLength + kerf) / (picketLength + kerf))', 'one cut fewer than pieces'],
    picketBoards: ['ceil(picketsToCut / picketsPerBoard)', 'whole boards'],
    rest: ['max(stockLength - picketsPerBoard * (picketLength + kerf), 0)', 'every picket takes its cut'],
  },
  work({ picketLength, stockLength }, { line, has, refuse, remark, cite }) {
    if (less(stockLength, picketLength))
      refuse(
        'stockLength',
        `A board of ${show(stockLength)} is shorter than a picket of ${show(picketLength)}. Check both measurements.`,
      )
    line('picketsPerBoard')
    if (has('picketsToCut')) line('picketBoards')
    remark(
      `Each board leaves ${cite({ ...line('rest'), unit: picketLength.unit }, 'left of a board')}. Knots and split ends cost some: buy a few boards more.`,
    )
  },
  sources: [{ fact: 'pieces with a saw cut between two', from: 'Derived here from the sketch; needs no table.' }],
  cautions: ['tools'],
  examples: [
    // (120 + 1/8)/(38 + 1/8) = 3.15 → 3
    {
      ask: 'My pickets are 38 in long. How many can I cut from a 10 ft board?',
      given: { picketLength: '38 in', stockLength: '10 ft' },
      expect: { picketsPerBoard: '3 pickets' },
    },
    // (3600 + 3)/(1180 + 3) = 3.05 → 3
    {
      ask: 'Pickets are 1180 mm long: how many do I get from a 3.6 m board?',
      given: { picketLength: '1180 mm', stockLength: '3.6 m' },
      expect: { picketsPerBoard: '3 pickets' },
    },
  ],
})
