// Bags for a volume: a yard, a cubic metre, what a drawing says.
import { calculation } from '../../calculation.ts'
import { bagYield } from '../../words/concrete.ts'
import { bagsForVolume as bagsFor, freshDensity, freshWeight, volumeWanted } from '../../words/mixing.ts'

export const bagsForVolume = calculation({
  name: 'bags-for-volume',
  title: 'Bags for a given volume of concrete',
  answers: 'How many bags of mix make a given volume of concrete, and what it weighs when it is mixed.',
  needs: { volumeWanted, bagYield, freshDensity },
  onlyFor: { bagYield: ['bagsForVolume'] },
  gives: { bagsForVolume: bagsFor, freshWeight },
  headlines: ['bagsForVolume', 'freshWeight'],
  together: { bagsForVolume: ['bagsForVolume', 'freshWeight'], freshWeight: ['freshWeight', 'bagsForVolume'] },
  lines: {
    bagsForVolume: ['ceil(volumeWanted / bagYield)', 'rounded up once'],
    freshWeight: ['volumeWanted * freshDensity', 'ordinary concrete, mixed'],
  },
  work(_given, { line, has, remark }) {
    if (has('bagYield')) line('bagsForVolume')
    line('freshWeight')
    remark(
      'From about a yard up a small load of ready-mix is easier on the back; it comes all at once, so have every hole ready.',
    )
  },
  sources: [{ fact: 'bags = volume ÷ what one bag makes', from: 'Derived here; needs no table.' }],
  cautions: ['wet-cement', 'dust', 'lifting'],
  examples: [
    // 27 / 0.6 = 45; 27 × 145 = 3915
    {
      ask: 'How many bags in a yard: 1 yd3 of concrete with bags of 0.6 ft3?',
      given: { volumeWanted: '1 yd3', bagYield: '0.6 ft3' },
      expect: { bagsForVolume: '45 bags', freshWeight: '3,915 lb' },
    },
    // 1000 / 9.36 = 106.8 → 107
    {
      ask: 'How many bags make 1 m3 of concrete, 9.36 L a bag?',
      given: { volumeWanted: '1 m3', bagYield: '9.36 L' },
      expect: { bagsForVolume: '107 bags', freshWeight: '2,300 kg' },
    },
  ],
})
