// Things that are sold in bundles, boxes or packs: whole ones, and what is left over.
//
//   need 213:  ▤▤▤▤▤▤▤▤▤▤▤▤▤▤▤▤▤▤▤▤▤▤   22 bundles of 10, and 7 over
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { equal, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import {
  countedBy,
  packPrice,
  packs as packsToBuy,
  packsCost,
  packWeight,
  piecesAPack,
  piecesAWeight,
  piecesInPack,
  piecesNotNeeded,
  piecesOver,
  piecesWanted,
  singlePrice,
  singlesCost,
} from '../../words/packs.ts'
import { picketsToBuy } from '../../words/picket-count.ts'
import { screwsToBuy } from '../../words/screws.ts'

/** What is needed, as it was told or as another sum gave it. */
const needed = ['piecesWanted', 'picketsToBuy', 'screwsToBuy'] as const

export const packs = calculation({
  name: 'packs',
  title: 'Things sold in bundles, boxes or packs',
  answers:
    'How many bundles, boxes or packs to buy for so many pieces, how many are left over, what they cost, and how many are in a box that is sold by weight.',
  needs: {
    piecesWanted,
    picketsToBuy,
    screwsToBuy,
    piecesNotNeeded,
    piecesAPack,
    piecesAWeight,
    countedBy,
    packWeight,
    packPrice,
    singlePrice,
  },
  may: [
    ...needed,
    'piecesNotNeeded',
    'piecesAPack',
    'piecesAWeight',
    'countedBy',
    'packWeight',
    'packPrice',
    'singlePrice',
  ],
  oneOf: [['piecesAPack', 'piecesAWeight']],
  standIns: [needed],
  gives: { packs: packsToBuy, piecesInPack, piecesOver, packsCost, singlesCost },
  headlines: ['packs'],
  together: {
    packs: ['packs', 'piecesOver', 'packsCost', 'piecesInPack'],
    packsCost: ['packsCost', 'packs', 'piecesOver', 'singlesCost'],
    singlesCost: ['singlesCost', 'packsCost', 'packs', 'piecesOver'],
    piecesOver: ['piecesOver', 'packs'],
  },
  called: ['come in bundles', 'sold in bundles', 'sold in packs', 'in a bundle', 'to the pound', 'to the kilo'],
  locals: { asked: 'count', stillWanted: 'count', wanted: 'count', inOne: 'count', oneWeight: 'mass', cent: 'money' },
  lines: {
    piecesInPack: ['floor(piecesAWeight * (packWeight / oneWeight))', 'so many to one, times what the pack weighs'],
    stillWanted: ['asked - piecesNotNeeded', 'those that need none are left out'],
    packs: ['ceil(wanted / inOne)', 'whole packs: the last is begun'],
    piecesOver: ['packs * inOne - wanted', 'what is in them all, less what you need'],
    packsCost: ['round(packs * packPrice, cent)', 'whole packs at the price of one'],
    singlesCost: ['round(wanted * singlePrice, cent)', 'as many as you need, one by one'],
  },
  work(given, { line, has, put, need, wants, rows, refuse, remark }) {
    const isWeighed = !has('piecesAPack')
    if (isWeighed) {
      if (!has('packWeight')) need('packWeight')
      if (!has('countedBy')) need('countedBy')
      put('oneWeight', quantity(1, given.countedBy))
      const inOne = line('piecesInPack')
      if (compare(inOne.amount, exact(0)) === 0)
        refuse(
          'packWeight',
          `A pack of ${show(given.packWeight)} does not hold one whole piece at that many to the ${countedBy.options?.[given.countedBy]?.label ?? given.countedBy}. Check both.`,
        )
      put('inOne', inOne)
    } else put('inOne', rows('piecesAPack')[0] as Quantity)
    const from = needed.find(has)
    if (isWeighed && !from && !wants('packs')) return
    if (!from) return need('piecesWanted')
    const [asked] = rows(from) as [Quantity]
    if (has('piecesNotNeeded') && !less(given.piecesNotNeeded, asked))
      refuse('piecesNotNeeded', `Of ${show(asked)} none is left when ${show(given.piecesNotNeeded)} are not needed.`)
    put('asked', asked)
    put('wanted', has('piecesNotNeeded') ? line('stillWanted', asked.unit) : asked)
    line('packs')
    const over = line('piecesOver')
    if (has('packPrice')) {
      put('cent', { kind: 'money', amount: exact('1/100'), unit: given.packPrice.unit })
      const unnamed = unnamedCurrency(given.packPrice)
      if (unnamed) remark(unnamed)
      line('packsCost')
      if (has('singlePrice')) bySingles()
    }
    if (from !== 'piecesWanted') remark(`I took the ${show(asked)} that were worked before, spares included.`)
    else if (compare(over.amount, exact(0)) === 0)
      remark(
        'They come out even, with none to spare: some split, some are crooked. Count in a few more if you have not.',
      )
    if (isWeighed) remark('A count to the pound or the kilogram is an average: a box may hold a few less.')

    function bySingles() {
      const [ofPacks] = rows('packsCost') as [Quantity]
      const singles = line('singlesCost')
      if (equal(ofPacks, singles)) remark('Packs and single ones cost the same.')
      else
        remark(less(singles, ofPacks) ? 'Single ones cost less than packs only.' : 'Packs cost less than single ones.')
    }
  },
  sources: [
    { fact: 'packs = pieces ÷ pieces in a pack, rounded up', from: 'Arithmetic; needs no table.' },
    { fact: 'pieces in a pack = its weight × pieces to the pound or kilogram', from: 'Derived here; needs no table.' },
    { fact: 'a few more than are needed', from: 'common practice, no source' },
  ],
  cautions: [],
  examples: [
    // 213/10 = 21.3 → 22; 220 − 213
    {
      ask: 'Pickets come 10 in a bundle and I need 213. How many bundles?',
      given: { piecesWanted: '213', piecesAPack: '10' },
      expect: { packs: '22 packs', piecesOver: '7 pieces' },
    },
    // 75 × 5 = 375; 1100/375 = 2.93 → 3; 1125 − 1100; 3 × 31.50
    {
      ask: 'Screws are 75 to the pound in a 5 lb box at $31.50 a box. I need 1100, how many boxes?',
      given: { piecesAWeight: '75', countedBy: 'lb', packWeight: '5 lb', packPrice: '$31.50', piecesWanted: '1100' },
      expect: { packs: '3 packs', piecesInPack: '375 pieces', piecesOver: '25 pieces', packsCost: '$94.50' },
    },
    // 220 × 2.5 = 550; 900/550 → 2; 1100 − 900
    {
      ask: 'Nails go 220 to the kilo and a tub is 2.5 kg. How many tubs for 900?',
      given: { piecesAWeight: '220', countedBy: 'kg', packWeight: '2.5 kg', piecesWanted: '900' },
      expect: { packs: '2 packs', piecesInPack: '550 pieces', piecesOver: '200 pieces' },
    },
  ],
})
