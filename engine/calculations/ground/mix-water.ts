// Water for mixing, by what is printed on the bag.
import { calculation } from '../../calculation.ts'
import { less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bagsToMix, waterAll, waterAllMost, waterEach, waterEachMost, waterWeight } from '../../words/mixing.ts'

// A litre of cold water weighs a kilogram, near enough for a bucket.
const waterDensity = quantity(1000, 'kg/m3')

export const mixWater = calculation({
  name: 'mix-water',
  title: 'Water for mixing',
  answers:
    'How much water so many bags take by the amount printed on them, from the least to the most where two figures are printed, and what it weighs.',
  needs: { bagsToMix, waterEach, waterEachMost },
  may: ['waterEachMost'],
  gives: { waterAll, waterAllMost, waterWeight },
  headlines: ['waterAll', 'waterWeight'],
  together: { waterAll: ['waterAll', 'waterAllMost', 'waterWeight'], waterAllMost: ['waterAllMost', 'waterAll'] },
  locals: { water: 'density' },
  lines: {
    waterAll: ['bagsToMix * waterEach', 'so much for every bag'],
    waterAllMost: ['bagsToMix * waterEachMost', 'and never more than the bag says'],
    waterWeight: ['waterAll * water', 'to be carried too'],
  },
  work({ waterEach, waterEachMost }, { line, has, put, refuse, remark }) {
    if (has('waterEachMost') && less(waterEachMost, waterEach))
      refuse(
        'waterEachMost',
        `The most for a bag, ${show(waterEachMost)}, is less than what it begins with, ${show(waterEach)}. Check both on the bag.`,
      )
    const least = line('waterAll')
    const most = has('waterEachMost') ? line('waterAllMost') : undefined
    put('water', waterDensity)
    line('waterWeight')
    remark(
      most
        ? `Begin with ${show(least)} and add a little at a time, never past ${show(most)}. More water makes it run, and weak.`
        : 'Begin with the least that the bag names, and never go past the most. More water makes it run, and weak.',
    )
    remark('Where water is poured on dry mix in the hole, the bag’s own instructions hold.')
  },
  sources: [
    {
      fact: 'a litre of cold water weighs a kilogram',
      from: 'common knowledge; from memory, to be confirmed',
    },
  ],
  cautions: ['wet-cement', 'dust', 'lifting'],
  examples: [
    // 23 × 0.75 = 17.25 gal; × 8.345 lb
    {
      ask: 'How much water for 23 bags at 3/4 gal of water per bag?',
      given: { bagsToMix: '23', waterEach: '3/4 gal' },
      expect: { waterAll: '17.25 gal' },
    },
    // 10 × 0.7 = 7, 10 × 0.9 = 9
    {
      ask: 'The bag says 0.7 to 0.9 gal of water per bag. How much water for 10 bags?',
      given: { bagsToMix: '10', waterEach: '0.7 gal', waterEachMost: '0.9 gal' },
      expect: { waterAll: '7 gal', waterAllMost: '9 gal' },
    },
    // 14 × 2.5 = 35 L = 35 kg
    {
      ask: '14 bags with 2.5 L of water each: how much water in all?',
      given: { bagsToMix: '14', waterEach: '2.5 L' },
      expect: { waterAll: '35 L', waterWeight: '35 kg' },
    },
  ],
})
