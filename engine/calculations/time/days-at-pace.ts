// How many days a piece of work takes at so much a day: metres of fence, pickets, holes, whatever is told.
//
//   ├── 8 m ──┼── 8 m ──┼── 8 m ──┼─ 5 m ─┤      a day begun counts
import { calculation } from '../../calculation.ts'
import { word } from '../../words/word.ts'

const lengthToDo = word<'length'>('lengthToDo', {
  kind: 'length',
  label: 'length to build',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Along the fence, all of it.',
  ask: 'How long is the fence to build?',
  called: {},
  possible: { above: '0 in' },
  plausible: { from: '3 ft', to: '10000 ft' },
})

const lengthADay = word<'length'>('lengthADay', {
  kind: 'length',
  label: 'built in a day',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From your own first day.',
  ask: 'How much of it do you build in a day?',
  called: {},
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '500 ft' },
})

const countOf = (name: string, label: string, ask: string) =>
  word<'count'>(name, {
    kind: 'count',
    noun: 'piece',
    label,
    measure: 'Pickets, posts, holes, bays: the same thing in both.',
    ask,
    called: {},
    possible: { above: '0' },
    plausible: { from: '1', to: '5000' },
  })
const piecesToDo = countOf('piecesToDo', 'pieces to do', 'How many are there to do?')
const piecesADay = countOf('piecesADay', 'done in a day', 'How many do you do in a day?')

const daysAtPace = word<'count'>('daysAtPace', {
  kind: 'count',
  noun: 'working day',
  label: 'days at that pace',
  whole: true,
  measure: 'A day begun counts.',
  ask: 'How many days is that?',
  called: {},
})

export const daysAtThatPace = calculation({
  name: 'days-at-pace',
  title: 'Days at so much a day',
  answers: 'How many days of work a fence takes when so much of it is built in a day.',
  needs: { lengthToDo, lengthADay, piecesToDo, piecesADay },
  may: ['lengthToDo', 'lengthADay', 'piecesToDo', 'piecesADay'],
  gives: { daysAtPace },
  headlines: ['daysAtPace'],
  lines: {
    daysAtPace: ['ceil(lengthToDo / lengthADay)', 'a day begun counts'],
    daysOfPieces: ['ceil(piecesToDo / piecesADay)', 'a day begun counts'],
  },
  work(_, { line, has, need, tell, remark }) {
    if (has('piecesToDo') || has('piecesADay')) {
      if (!has('piecesToDo')) need('piecesToDo')
      if (!has('piecesADay')) need('piecesADay')
      tell('daysAtPace', line('daysOfPieces', 'working day'))
    } else {
      if (!has('lengthToDo')) need('lengthToDo')
      if (!has('lengthADay')) need('lengthADay')
      line('daysAtPace')
    }
    remark('These are days worked: none lost to weather, or to waiting for concrete or paint.')
  },
  locals: { daysOfPieces: 'count' },
  sources: [
    { fact: 'days = what there is to do ÷ what is done in a day, rounded up', from: 'Arithmetic; needs no table.' },
  ],
  cautions: ['weather'],
  examples: [
    // 29 / 8 = 3.6 → 4
    {
      ask: 'We build 8 m of fence a day and it is 29 m: how many days?',
      given: { lengthToDo: '29 m', lengthADay: '8 m' },
      expect: { daysAtPace: '4 working days' },
    },
    // 130 / 45 = 2.9 → 3
    {
      ask: 'I hang 45 pickets a day and there are 130 pickets. How many days?',
      given: { piecesToDo: '130', piecesADay: '45' },
      expect: { daysAtPace: '3 working days' },
    },
  ],
})
