// Gravel, soil or concrete by the load: up to the step it is sold by, no less than the least load, with its price; and the same in bags.
//
//   needed    ▓▓▓▓▓▓▓▓▓
//   steps     ├────┼────┼────┤         the step that is begun is bought
//   least     ├──────────────┤         and less than this is charged as this
import { calculation } from '../../calculation.ts'
import { exact } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { equal, less, type Quantity, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { unitNamed } from '../../quantities/units.ts'
import {
  bagPriced,
  bagsInstead,
  bagsInsteadCost,
  bulkCost,
  bulkStep,
  bulkVolume,
  bulkWaste,
  cheaperSupply,
  leastLoad,
  orderedVolume,
  suppliesApart,
} from '../../words/bulk.ts'
import { bagYield } from '../../words/concrete.ts'
import { measurePrice, pricedBy } from '../../words/prices.ts'
import { deliveryPrice } from '../../words/take-off.ts'

export const bulkOrder = calculation({
  name: 'bulk-order',
  title: 'Gravel, soil or concrete by the load',
  answers:
    'How much to order of what is sold by steps or with a least load, what it costs with delivery, and whether bags are cheaper.',
  needs: {
    bulkVolume,
    bulkWaste,
    bulkStep,
    leastLoad,
    measurePrice,
    pricedBy,
    deliveryPrice,
    bagYield,
    bagPriced,
  },
  may: ['bulkWaste', 'bulkStep', 'leastLoad', 'measurePrice', 'pricedBy', 'deliveryPrice', 'bagYield', 'bagPriced'],
  gives: { orderedVolume, bulkCost, bagsInstead, bagsInsteadCost, cheaperSupply, suppliesApart },
  headlines: ['orderedVolume', 'bulkCost'],
  together: {
    orderedVolume: ['orderedVolume', 'bulkCost'],
    bulkCost: ['bulkCost', 'orderedVolume'],
    cheaperSupply: ['cheaperSupply', 'suppliesApart', 'bulkCost', 'bagsInsteadCost', 'bagsInstead', 'orderedVolume'],
  },
  plain: true,
  locals: { wanted: 'volume', ordered: 'volume', steps: 'number', one: 'volume', cent: 'money', delivery: 'money' },
  lines: {
    withWaste: ['bulkVolume * (1 + bulkWaste)', 'with what is added for waste'],
    steps: ['ceil(wanted / bulkStep)', 'the step that is begun is bought'],
    stepped: ['steps * bulkStep', 'whole steps'],
    orderedVolume: ['ordered', 'what they bring'],
    bulkCost: ['round(orderedVolume / one * measurePrice + delivery, cent)', 'so much at its price, and the delivery'],
    bagsInstead: ['ceil(wanted / bagYield)', 'whole bags for the same'],
    bagsInsteadCost: ['round(bagsInstead * bagPriced, cent)', 'at the price of one'],
    suppliesApart: ['abs(bulkCost - bagsInsteadCost)', 'the dearer less the cheaper'],
  },
  work(given, { line, has, put, tell, rows, need, refuse, remark }) {
    const wanted = put('wanted', has('bulkWaste') ? line('withWaste') : (rows('bulkVolume')[0] as Quantity))
    const inUnit = has('pricedBy') ? unitOfPrice(given.pricedBy) : has('bulkStep') ? given.bulkStep.unit : wanted.unit
    if (unitNamed(inUnit).kind !== 'volume')
      refuse('pricedBy', `${show(wanted)} is a volume, and the price is for something else. Check what it is sold by.`)
    if (has('bulkStep')) line('steps')
    const stepped = has('bulkStep') ? line('stepped') : wanted
    const isLeast = has('leastLoad') && less(stepped, given.leastLoad)
    put('ordered', { ...(isLeast ? given.leastLoad : stepped), unit: inUnit })
    line('orderedVolume', inUnit)
    if (isLeast) remark(`They charge for ${show(given.leastLoad)} at the least, so that is what you pay.`)
    if (has('measurePrice')) {
      if (!has('pricedBy')) need('pricedBy')
      put('one', quantity(1, inUnit))
      put('cent', { kind: 'money', amount: exact('1/100'), unit: given.measurePrice.unit })
      put('delivery', has('deliveryPrice') ? given.deliveryPrice : zero('money', given.measurePrice.unit))
      const unnamed = unnamedCurrency(given.measurePrice)
      if (unnamed) remark(unnamed)
      line('bulkCost')
    }
    if (has('bagPriced')) {
      if (!has('bagYield')) need('bagYield')
      if (!has('measurePrice')) put('cent', { kind: 'money', amount: exact('1/100'), unit: given.bagPriced.unit })
      line('bagsInstead')
      const bags = line('bagsInsteadCost')
      if (has('measurePrice')) {
        const [load] = rows('bulkCost') as [Quantity]
        tell('cheaperSupply', equal(load, bags) ? 'both alike' : less(load, bags) ? 'the load' : 'the bags')
        line('suppliesApart')
      }
    }
    if (!has('bulkWaste')) remark('Nothing is added for waste: say how many percent, if you want some.')
  },
  sources: [
    { fact: 'whole steps, rounded up', from: 'Arithmetic; needs no table.' },
    { fact: 'a yard of loose stuff is a cubic yard', from: 'common practice, no source' },
    { fact: 'prices, steps and the least load', from: 'As you gave them.' },
  ],
  cautions: [],
  examples: [
    // 1.3 / 0.5 = 2.6 → 3 × 0.5 = 1.5; × 40 + 70 = 130
    {
      ask: 'I need 1.3 yd³ of gravel, sold by the half yard at $40 a yard, delivery $70. What does the load cost?',
      given: {
        bulkVolume: '1.3 yd³',
        bulkStep: '1/2 yd³',
        measurePrice: '$40',
        pricedBy: 'yd',
        deliveryPrice: '$70',
      },
      expect: { bulkCost: '$130.00', orderedVolume: '1.5 yd³' },
    },
    // 0.8 m³ is charged as 1: 160; 800 / 9.36 = 85.5 → 86 × 6.20 = 533.20; − 160
    {
      ask: 'I need 0.8 m³ of concrete. The truck charges £160 per m³ with a 1 m³ minimum, or bags that make 9.36 L at £6.20: which is cheaper?',
      given: {
        bulkVolume: '0.8 m³',
        leastLoad: '1 m³',
        measurePrice: '£160',
        pricedBy: 'm3',
        bagYield: '9.36 L',
        bagPriced: '£6.20',
      },
      expect: {
        cheaperSupply: 'the load',
        bulkCost: '£160.00',
        bagsInstead: '86 bags',
        bagsInsteadCost: '£533.20',
        suppliesApart: '£373.20',
      },
    },
  ],
})

/** A yard of gravel, soil or concrete is a cubic yard, and a metre or foot of it a cubic one. */
const unitOfPrice = (by: string): string => ({ yd: 'yd3', m: 'm3', ft: 'ft3' })[by] ?? by
