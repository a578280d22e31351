// What a fence costs for each foot and each metre of its length.
//
//   ├────────── run ──────────┤       the whole cost, shared by the whole length
//   $ $ $ $ $ $ $ $ $ $ $ $ $ $
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { quantity } from '../../quantities/quantity.ts'
import { runLength } from '../../words/bays.ts'
import { costPerFoot, costPerMetre, fenceCost } from '../../words/prices.ts'

export const costOfLength = calculation({
  name: 'cost-of-length',
  title: 'What the fence costs by the foot and the metre',
  answers: 'What each foot and each metre of fence costs, from its whole cost and its length.',
  needs: { fenceCost, runLength },
  gives: { costPerFoot, costPerMetre },
  headlines: ['costPerFoot', 'costPerMetre'],
  together: { costPerFoot: ['costPerFoot', 'costPerMetre'], costPerMetre: ['costPerMetre', 'costPerFoot'] },
  called: ['cost per foot', 'cost per metre', 'cost by the foot', 'cost by the metre', 'fence cost per'],
  locals: { oneFoot: 'length', oneMetre: 'length', cent: 'money' },
  lines: {
    costPerFoot: ['round(fenceCost / (runLength / oneFoot), cent)', 'shared by its feet, to the cent'],
    costPerMetre: ['round(fenceCost / (runLength / oneMetre), cent)', 'shared by its metres, to the cent'],
  },
  work({ fenceCost: cost }, { line, put, remark }) {
    put('oneFoot', quantity(1, 'ft'))
    put('oneMetre', quantity(1, 'm'))
    put('cent', { kind: 'money', amount: exact('1/100'), unit: cost.unit })
    const unnamed = unnamedCurrency(cost)
    if (unnamed) remark(unnamed)
    line('costPerFoot')
    line('costPerMetre')
    remark(
      'It compares only with a price that has the same things in it. A gate costs as much as many feet of fence: ask for gates, taking away the old fence, and tax on lines of their own.',
    )
  },
  sources: [
    { fact: 'cost for one = cost / length', from: 'Arithmetic; needs no table.' },
    { fact: 'a gate costs as much as many feet of fence', from: 'common practice, no source' },
  ],
  cautions: [],
  examples: [
    // 4310 / 118 = 36.5254…; 118 ft = 35.9664 m: 119.834…
    {
      ask: 'The fence came to $4,310 for 118 ft. What is the cost per foot?',
      given: { fenceCost: '$4,310', runLength: '118 ft' },
      expect: { costPerFoot: '$36.53', costPerMetre: '$119.83' },
    },
    // 5200 / 42 = 123.8095…; × 0.3048 = 37.737…
    {
      ask: 'I spent €5,200 on 42 m of fence. What is the cost per metre?',
      given: { fenceCost: '€5,200', runLength: '42 m' },
      expect: { costPerMetre: '€123.81', costPerFoot: '€37.74' },
    },
  ],
})
