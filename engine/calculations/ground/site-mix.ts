// Concrete mixed on site: so many parts of cement, of sand and of stone, all measured in the same bucket.
//
//   ┌──┐ ┌──┐┌──┐ ┌──┐┌──┐┌──┐        ┌──────────┐
//   │ce│ │sand  │ │  stone   │   ──►  │ concrete │   the sand goes into the gaps between the stones and the cement
//   └──┘ └──┘└──┘ └──┘└──┘└──┘        └──────────┘   into those between the grains: it makes less than it measured
//     1      2          3
import { calculation } from '../../calculation.ts'
import { mixDrawing } from '../../drawings/mix.ts'
import { ceiling, over } from '../../quantities/amount.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import type { Table } from '../../outcome.ts'
import { concrete } from '../../words/concrete.ts'
import { bucketFill, bucketSize } from '../../words/gravel.ts'
import {
  batchMakes,
  cementBags,
  cementBagWeight,
  cementDensity,
  cementVolume,
  dryExtra,
  mixBatches,
  mixParts,
  sandForMix,
  stoneForMix,
} from '../../words/site-mix.ts'

// Bags of cement as they are commonly sold (from memory): the US; Australia and New Zealand; the UK; Canada.
const soldAs = [quantity(94, 'lb'), quantity(20, 'kg'), quantity(25, 'kg'), quantity(40, 'kg')]

export const siteMix = calculation({
  name: 'site-mix',
  title: 'Concrete mixed on site, by parts',
  answers:
    'How many bags of plain cement, how much sand and how much stone a volume of concrete takes when it is mixed by parts, and in how many batches.',
  needs: { concrete, mixParts, dryExtra, cementDensity, cementBagWeight, bucketSize, bucketFill },
  gives: { cementBags, cementVolume, sandForMix, stoneForMix, mixBatches, batchMakes },
  headlines: ['cementBags', 'sandForMix', 'stoneForMix'],
  together: {
    cementBags: ['cementBags', 'sandForMix', 'stoneForMix', 'mixBatches'],
    sandForMix: ['sandForMix', 'stoneForMix', 'cementBags'],
    stoneForMix: ['stoneForMix', 'sandForMix', 'cementBags'],
    mixBatches: ['mixBatches', 'batchMakes'],
  },
  called: [
    'mix it myself',
    'mix my own',
    'mixing my own',
    'mixing it myself',
    'mix on site',
    'mix it on site',
    'mixed on site',
    'mixed by hand from',
    'site mix',
    'from scratch',
    'by parts',
    'part cement',
    'part of cement',
    'cement and sand',
    'sand and cement',
    'sand and stone',
    'sand and gravel',
  ],
  locals: { cementPart: 'count', sandPart: 'count', stonePart: 'count' },
  lines: {
    dryVolume: [
      'concrete * (1 + dryExtra)',
      'what all of it measures dry, before the small fills the gaps of the large',
    ],
    onePart: ['dryVolume / sum(mixParts)', 'shared out over the parts'],
    cementVolume: ['cementPart * onePart', 'the parts of cement'],
    sandForMix: ['sandPart * onePart', 'the parts of sand'],
    stoneForMix: ['stonePart * onePart', 'the parts of stone'],
    cementWeight: ['cementVolume * cementDensity', 'cement is sold by weight'],
    cementBags: ['ceil(cementWeight / cementBagWeight)', 'whole bags'],
    bucketHolds: ['bucketSize * bucketFill', 'what one bucket is filled with'],
    batchMakes: ['sum(mixParts) * bucketHolds / (1 + dryExtra)', 'one bucket to a part'],
    mixBatches: ['ceil(concrete / batchMakes)', 'whole batches; the last may be a smaller one'],
  },
  work({ bucketSize }, { line, rows, put, refuse, remark, cite, table }) {
    const parts = rows('mixParts')
    const [cement, sand, stone] = parts as readonly [Quantity, Quantity, Quantity]
    if (parts.length !== 3)
      refuse(
        'mixParts',
        `A mix has three parts here, cement, sand and stone in that order; I have ${parts.map(show).join(', ')}. Cement with all-in ballast I do not work: its sand lies in the gaps of its stone already.`,
      )
    if (less(stone, cement))
      refuse(
        'mixParts',
        `I read the parts in the order cement, sand, stone: ${show(cement)} of cement to ${show(stone)} of stone would be more cement than stone. Check the order.`,
      )
    put('cementPart', cement)
    put('sandPart', sand)
    put('stonePart', stone)
    for (const name of ['dryVolume', 'onePart', 'cementVolume', 'sandForMix', 'stoneForMix']) line(name)
    const weight = line('cementWeight')
    line('cementBags')
    const holds = line('bucketHolds')
    const makes = line('batchMakes')
    line('mixBatches')
    table(bagsTable(weight))
    remark(
      `Measure all three in the same bucket to the same mark, ${cite({ ...holds, unit: bucketSize.unit }, 'what one bucket is filled with')}: one bucket to a part. A batch makes ${show(makes)}; see that your mixer or barrow takes it.`,
    )
    remark(
      'Damp sand lies looser than dry, and its bucket wants filling higher. Add water a little at a time: more makes the concrete run, and weak. These parts promise no strength; where your building office asks for one, follow it.',
    )
  },
  sources: [
    {
      fact: 'dry materials measure 1.54 times the concrete; at 1 : 2 : 4 a cubic metre takes 0.22 m³ of cement, 0.44 of sand, 0.88 of stone',
      from: 'trade rule, no source; worked examples in print take it',
    },
    {
      fact: 'at 1 : 2 : 4 a cubic foot takes 0.0163 yd³ of sand and 0.0326 yd³ of stone, which is the same',
      from: 'Atlas Portland Cement Company, Concrete Construction for the Home and the Farm, Table III, https://bitlit.ru/page/en/atlas-portland-cement-company/concrete-construction-for-the-home-and-the-farm/17',
    },
    { fact: 'damp sand takes more room than dry', from: 'common practice, no source (from memory)' },
    { fact: 'a US bag of cement is 94 lb and a cubic foot; bags elsewhere', from: 'common practice (from memory)' },
  ],
  cautions: ['wet-cement', 'dust', 'lifting'],
  drawing: mixDrawing,
  examples: [
    {
      // 13.5 × 1.54 = 20.79; /6 = 3.465 ft³ a part; × 94 = 325.7 lb → ⌈3.465⌉ = 4 bags; sand 6.93, stone 10.395
      // bucket 5 gal × 2/3 = 0.4456 ft³; × 6 / 1.54 = 1.736 ft³ a batch; 13.5 / 1.736 = 7.78 → 8
      ask: 'How many bags of cement, and how much sand and stone, for 13.5 ft3 of concrete in a 1:2:3 mix?',
      given: { concrete: '13.5 ft3', mixParts: '1 : 2 : 3', cementBagWeight: '94 lb' },
      expect: {
        cementBags: '4 bags',
        cementVolume: '3.465 ft³',
        sandForMix: '6.93 ft³',
        stoneForMix: '10.395 ft³',
        mixBatches: '8 batches',
      },
    },
    {
      // 500 × 1.54 = 770; /7 = 110 L; × 1.44 = 158.4 kg; / 25 = 6.3 → 7; 15 L × 2/3 = 10 L; × 7 / 1.54 = 45.45 L a batch; 500/45.45 = 11
      ask: 'Mixing my own, 0.5 m3 of concrete at 1:2:4 with 25 kg bags of cement: how many bags, and how much sand and gravel?',
      given: {
        concrete: '0.5 m3',
        mixParts: '1 : 2 : 4',
        cementBagWeight: '25 kg',
        cementDensity: '1440 kg/m3',
        bucketSize: '15 L',
      },
      expect: {
        cementBags: '7 bags',
        cementVolume: '110 L',
        sandForMix: '220 L',
        stoneForMix: '440 L',
        mixBatches: '11 batches',
      },
    },
  ],
})

/** The same cement in bags as they are sold from place to place. */
const bagsTable = (weight: Quantity): Table => ({
  title: 'The same cement, by what a bag weighs where you are',
  columns: [
    { label: 'weight of a bag', unit: '' },
    { label: 'bags', unit: '' },
  ],
  rows: soldAs.map((bag) => [show(bag), Number(ceiling(over(weight.amount, bag.amount)).whole)]),
})
