// Room around a meter, a hydrant, a transformer: measured from the nearest face, against the rule of whoever owns it.
import { calculation } from '../../calculation.ts'
import { subtract } from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { clearanceHolds, clearanceMeasured, clearanceRule, clearanceShort } from '../../words/clearance.ts'

export const clearance = calculation({
  name: 'clearance',
  title: 'Room around a meter or hydrant',
  answers:
    'Whether the fence keeps the clearance that a utility or the fire office asks around a meter, hydrant or the like, and how far to move it.',
  needs: { clearanceRule, clearanceMeasured },
  gives: { clearanceHolds, clearanceShort },
  headlines: ['clearanceHolds', 'clearanceShort'],
  together: {
    clearanceHolds: ['clearanceHolds', 'clearanceShort'],
    clearanceShort: ['clearanceShort', 'clearanceHolds'],
  },
  lines: {
    clearanceShort: ['max(clearanceRule - clearanceMeasured, 0)', 'what is missing, or nothing'],
  },
  work({ clearanceRule, clearanceMeasured }, { line, tell, remark }) {
    line('clearanceShort')
    const holds = !less(clearanceMeasured, clearanceRule)
    tell('clearanceHolds', holds)
    const spare: Quantity = {
      ...clearanceMeasured,
      amount: subtract(clearanceMeasured.amount, clearanceRule.amount),
    }
    remark(
      holds
        ? `Decided by: ${show(clearanceMeasured)} of room against the ${show(clearanceRule)} you gave; ${show(spare)} to spare.`
        : `Decided by: only ${show(clearanceMeasured)} of room against the ${show(clearanceRule)} you gave.`,
    )
    remark(
      'Measure from the nearest face of the thing, not its middle, to the nearest part of the fence, and with any gate standing open. A reader or a firefighter must also get to it: ask whoever owns it whether a gate will do.',
    )
  },
  sources: [
    {
      fact: 'how much room is asked, and how it is measured',
      from: 'The rule of the utility or fire office, as you gave it.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  examples: [
    // 36 − 30 = 6
    {
      ask: 'The fence is 30 in from the meter, the rule says 36 in. Is it too close to the meter?',
      given: { clearanceRule: '36 in', clearanceMeasured: '30 in' },
      expect: { clearanceHolds: 'fails: closer than the rule you gave', clearanceShort: '6 in' },
    },
    // 1.2 m ≥ 1 m
    {
      ask: 'Clearance required is 1 m and I have 1.2 m to the hydrant: far enough from the hydrant?',
      given: { clearanceRule: '1 m', clearanceMeasured: '1.2 m' },
      expect: { clearanceHolds: 'nothing checked here fails', clearanceShort: '0 mm' },
    },
  ],
})
