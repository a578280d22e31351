// Money put by a little at a time: how long until it reaches.
//
//   ├── there ──┼──┼──┼──┼──┼──┤        the last one reaches, or goes past it
//   ├─────────── the price ───────┤
import { calculation } from '../../calculation.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { less, quantity, zero } from '../../quantities/quantity.ts'
import { toNumber } from '../../quantities/amount.ts'
import { savedAlready, savedEach, savedEvery, savingGoal, savingTime, stillToSave } from '../../words/saving.ts'

export const savingTimeOf = calculation({
  name: 'saving-time',
  title: 'Saving up for it',
  answers: 'How many weeks or months until so much put by each of them reaches a price, with what is there already.',
  needs: { savingGoal, savedAlready, savedEach, savedEvery },
  may: ['savedAlready'],
  gives: { savingTime, stillToSave },
  headlines: ['savingTime'],
  together: { savingTime: ['savingTime', 'stillToSave'] },
  plain: true,
  locals: { there: 'money', every: 'duration' },
  lines: {
    stillToSave: ['savingGoal - there', 'the price, less what is there'],
    savingTime: ['ceil(stillToSave / savedEach) * every', 'the last time reaches it, or goes past it'],
  },
  work(given, { line, put, has, refuse, remark }) {
    const { savingGoal: goal, savedEach: each, savedEvery: how } = given
    if (toNumber(each.amount) === 0) refuse('savedEach', 'With nothing put by it never reaches. Check the amount.')
    const there = put('there', has('savedAlready') ? given.savedAlready : zero('money', goal.unit))
    if (!less(there, goal)) refuse('savedAlready', 'What is there reaches already: nothing more has to be saved.')
    line('stillToSave')
    put('every', quantity(how === 'fortnight' ? 2 : 1, how === 'month' ? 'month' : 'week'))
    line('savingTime', how === 'month' ? 'month' : 'week')
    const unnamed = unnamedCurrency(goal)
    if (unnamed) remark(unnamed)
    remark(`I took it that the first amount is put by a ${how} from now.`)
  },
  sources: [
    { fact: 'times = what is lacking ÷ what is put by each time, rounded up', from: 'Arithmetic; needs no table.' },
  ],
  cautions: [],
  examples: [
    // 500 − 120 = 380; / 30 = 12.7
    {
      ask: 'I save $30 a week. The fence costs $500 and I have $120 already. How many weeks until I can buy it?',
      given: { savingGoal: '$500', savedAlready: '$120', savedEach: '$30', savedEvery: 'week' },
      expect: { savingTime: '13 weeks', stillToSave: '$380.00' },
    },
    // 900 / 75
    {
      ask: 'I can put aside £75 a month and the fence is priced at £900. How many months will that take?',
      given: { savingGoal: '£900', savedEach: '£75', savedEvery: 'month' },
      expect: { savingTime: '12 months', stillToSave: '£900.00' },
    },
  ],
})
