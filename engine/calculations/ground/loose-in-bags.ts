// Gravel, stone, sand or soil by the bag: how many bags hold the volume that another sum gave, or that you say.
//
//   ┌────┐┌────┐┌────┐┌────┐
//   │::::││::::││::::││:   │      whole bags; the last is begun
//   └────┘└────┘└────┘└────┘
import { calculation } from '../../calculation.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { stripStone } from '../../words/border.ts'
import {
  gravel,
  gravelDensity,
  inBags,
  looseBag,
  looseBags,
  looseBagsWeight,
  looseBagWeight,
  looseVolume,
} from '../../words/gravel.ts'
import { baseToBuy, sandToBuy } from '../../words/strip-bed.ts'

/** What is needed, as it was told or as another sum gave it. */
const volumes = ['looseVolume', 'gravel', 'stripStone', 'baseToBuy', 'sandToBuy'] as const

export const looseInBags = calculation({
  name: 'loose-in-bags',
  title: 'Gravel, stone, sand or soil in bags',
  answers:
    'How many bags of gravel, stone, sand, soil or mulch hold a volume that you say or that was worked before, and what they weigh.',
  needs: { looseVolume, gravel, stripStone, baseToBuy, sandToBuy, looseBag, looseBagWeight, gravelDensity },
  may: [...volumes, 'looseBag', 'looseBagWeight'],
  oneOf: [volumes, ['looseBag', 'looseBagWeight']],
  standIns: [volumes],
  gives: { looseBags, inBags, looseBagsWeight },
  headlines: ['looseBags'],
  together: { looseBags: ['looseBags', 'inBags', 'looseBagsWeight'] },
  called: ['bags of gravel', 'bags of stone', 'bags of sand', 'bags of soil', 'bags of topsoil', 'bags of mulch'],
  locals: { loose: 'volume', bagHolds: 'volume' },
  lines: {
    fromWeight: ['looseBagWeight / gravelDensity', 'what a bag of that weight holds'],
    looseBags: ['ceil(loose / bagHolds)', 'whole bags, rounded up once'],
    inBags: ['looseBags * bagHolds', 'what is in all of them'],
    looseBagsWeight: ['inBags * gravelDensity', 'dry, as it is bagged'],
  },
  work({ gravelDensity }, { line, has, put, rows, remark, cite }) {
    const from = volumes.find(has) as (typeof volumes)[number]
    const [loose] = rows(from) as [Quantity]
    put('loose', loose)
    put('bagHolds', has('looseBag') ? (rows('looseBag')[0] as Quantity) : line('fromWeight'))
    line('looseBags')
    const all = line('inBags')
    line('looseBagsWeight')
    if (from !== 'looseVolume') remark(`I took the ${show(loose)} that was worked before, loose, as it is sold.`)
    remark(
      `Weighed as gravel, ${show(gravelDensity)}: soil is a little lighter, mulch far lighter.${has('looseBag') ? '' : ' A bag sold by weight holds less where the stuff is damp.'}`,
    )
    const cubicYard: Quantity = { ...all, amount: quantity(1, 'yd3').amount }
    if (!less(all, cubicYard))
      remark(
        `From about ${cite(quantity(1, 'yd3'), 'from which loose delivery pays', 'published')} up it is cheaper loose: ask the yard what it costs by the load.`,
      )
  },
  sources: [
    {
      fact: 'bags = volume ÷ what one bag holds; what a bag holds = its weight ÷ density',
      from: 'Derived here; needs no table.',
    },
    { fact: 'from about a cubic yard up, loose is cheaper than bags', from: 'common practice, no source' },
  ],
  cautions: ['lifting'],
  examples: [
    // 8.2 / 0.5 = 16.4 → 17; 8.5 ft³ × 100
    {
      ask: 'How many bags of gravel for 8.2 cubic feet, in bags of half a cubic foot?',
      given: { looseVolume: '8.2 ft3', looseBag: '1/2 ft3' },
      expect: { looseBags: '17 bags', inBags: '8.5 ft³', looseBagsWeight: '850 lb' },
    },
    // 25 / 1600 = 15.625 L; 140 / 15.625 = 8.96 → 9; 140.625 L; 225 kg
    {
      ask: 'How many bags of sand make 140 L, when a bag weighs 25 kg?',
      given: { looseVolume: '140 L', looseBagWeight: '25 kg' },
      expect: { looseBags: '9 bags', inBags: '140.625 L', looseBagsWeight: '225 kg' },
    },
  ],
})
