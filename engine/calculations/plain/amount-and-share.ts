// An amount of money, and so many percent of it on top: for what nobody foresees, or as a fee.
//
//   ├──────── amount ────────┼─ % ─┤
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { amountBefore, amountWithShare, shareAmount, shareOnTop } from '../../words/on-top.ts'

export const amountAndShare = calculation({
  name: 'amount-and-share',
  title: 'An amount, and so many percent on top',
  answers: 'What an amount comes to with so many percent on top, for surprises or as a fee.',
  needs: { amountBefore, shareOnTop },
  gives: { amountWithShare, shareAmount },
  headlines: ['amountWithShare'],
  together: { amountWithShare: ['amountWithShare', 'shareAmount'] },
  plain: true,
  locals: { cent: 'money' },
  lines: {
    shareAmount: ['round(amountBefore * shareOnTop, cent)', 'that share of it, to the cent; half a cent goes up'],
    amountWithShare: ['amountBefore + shareAmount', 'on top of it'],
  },
  work({ amountBefore: amount }, { line, put }) {
    put('cent', { kind: 'money', amount: exact('1/100'), unit: amount.unit })
    line('shareAmount')
    line('amountWithShare')
  },
  sources: [{ fact: 'the share, and the amount with it', from: 'Arithmetic; needs no table.' }],
  cautions: [],
  examples: [
    // 2400 × 0.1 = 240
    {
      ask: 'The job comes to $2,400. What is it with 10 % contingency on top?',
      given: { amountBefore: '$2,400', shareOnTop: '10 %' },
      expect: { amountWithShare: '$2,640.00', shareAmount: '$240.00' },
    },
    // 1350 × 0.15 = 202.50
    {
      ask: 'What does £1,350 come to with 15 % for contingencies?',
      given: { amountBefore: '£1,350', shareOnTop: '15 %' },
      expect: { amountWithShare: '£1,552.50', shareAmount: '£202.50' },
    },
  ],
})
