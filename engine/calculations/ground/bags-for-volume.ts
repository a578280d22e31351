// Concrete by the volume, a yard, a cubic metre, what the holes take: out of bags, or from the truck.
import { calculation } from '../../calculation.ts'
import { show } from '../../quantities/show.ts'
import { bagYield, concrete } from '../../words/concrete.ts'
import { bagsForVolume as bagsFor, freshDensity, freshWeight, orderStep, readyMix } from '../../words/mixing.ts'

export const bagsForVolume = calculation({
  name: 'bags-for-volume',
  title: 'A volume of concrete, in bags or as ready-mix',
  answers:
    'How many bags of mix make a given volume of concrete, or how much ready-mix to order instead, and what it weighs when it is mixed.',
  needs: { concrete, bagYield, orderStep, freshDensity },
  onlyFor: { bagYield: ['bagsForVolume'] },
  gives: { bagsForVolume: bagsFor, readyMix, freshWeight },
  headlines: ['bagsForVolume', 'readyMix', 'freshWeight'],
  together: {
    bagsForVolume: ['bagsForVolume', 'readyMix', 'freshWeight'],
    readyMix: ['readyMix', 'bagsForVolume', 'freshWeight'],
    freshWeight: ['freshWeight', 'bagsForVolume'],
  },
  lines: {
    bagsForVolume: ['ceil(concrete / bagYield)', 'rounded up once'],
    steps: ['ceil(concrete / orderStep)', 'the plant sells whole steps'],
    readyMix: ['steps * orderStep', 'the same concrete from the truck'],
    freshWeight: ['concrete * freshDensity', 'ordinary concrete, mixed'],
  },
  work({ orderStep }, { line, has, remark }) {
    if (has('bagYield')) line('bagsForVolume')
    line('steps')
    const ordered = line('readyMix')
    line('freshWeight')
    remark(
      `The bags, or ${show(ordered)} of ready-mix: one or the other, each for all of it. I took steps of ${show(orderStep)}; a plant may ask for more at the least, or charge for a small load.`,
    )
    remark(
      'From about a yard up a small load of ready-mix is easier on the back; it comes all at once, so have every hole ready.',
    )
  },
  sources: [
    { fact: 'bags = volume ÷ what one bag makes', from: 'Derived here; needs no table.' },
    { fact: 'ready-mix is sold by steps, commonly quarter yards', from: 'common practice, no source' },
  ],
  cautions: ['wet-cement', 'dust', 'lifting'],
  examples: [
    // 27 / 0.6 = 45; 27 × 145 = 3915; 1 / 0.25 = 4 steps
    {
      ask: 'How many bags in a yard: 1 yd3 of concrete with bags of 0.6 ft3?',
      given: { concrete: '1 yd3', bagYield: '0.6 ft3' },
      expect: { bagsForVolume: '45 bags', freshWeight: '3,915 lb', readyMix: '1 yd³' },
    },
    // 1000 / 9.36 = 106.8 → 107
    {
      ask: 'How many bags make 1 m3 of concrete, 9.36 L a bag?',
      given: { concrete: '1 m3', bagYield: '9.36 L' },
      expect: { bagsForVolume: '107 bags', freshWeight: '2,300 kg', readyMix: '1 m³' },
    },
    // 10.13 / 6.75 = 1.5007 → 2 quarter yards; 10.13 / 0.45 = 22.5 → 23
    {
      ask: 'How much ready mix should I order for 10.13 ft3 of concrete, sold by quarter yards, or in bags of 0.45 ft3?',
      given: { concrete: '10.13 ft3', bagYield: '0.45 ft3', orderStep: '1/4 yd3' },
      expect: { readyMix: '0.5 yd³', bagsForVolume: '23 bags' },
    },
    // 0.43 / 0.1 = 4.3 → 5 × 0.1
    {
      ask: 'How much ready mix to order for 0.43 m3 of concrete, sold in steps of 0.1 m3?',
      given: { concrete: '0.43 m3', orderStep: '0.1 m3' },
      expect: { readyMix: '0.5 m³' },
    },
  ],
})
