// Water for mixing, by what is printed on the bag.
import { calculation } from '../../calculation.ts'
import { quantity } from '../../quantities/quantity.ts'
import { bagsToMix, waterAll, waterEach, waterWeight } from '../../words/mixing.ts'

// A litre of cold water weighs a kilogram, near enough for a bucket.
const waterDensity = quantity(1000, 'kg/m3')

export const mixWater = calculation({
  name: 'mix-water',
  title: 'Water for mixing',
  answers: 'How much water so many bags take by the amount printed on them, and what it weighs.',
  needs: { bagsToMix, waterEach },
  gives: { waterAll, waterWeight },
  headlines: ['waterAll', 'waterWeight'],
  together: { waterAll: ['waterAll', 'waterWeight'] },
  locals: { water: 'density' },
  lines: {
    waterAll: ['bagsToMix * waterEach', 'so much for every bag'],
    waterWeight: ['waterAll * water', 'to be carried too'],
  },
  work(_given, { line, put, remark }) {
    line('waterAll')
    put('water', waterDensity)
    line('waterWeight')
    remark(
      'Begin with the least that the bag names. More water makes it run, and weak. Where water is poured on dry mix in the hole, the bag’s own instructions hold.',
    )
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
    // 14 × 2.5 = 35 L = 35 kg
    {
      ask: '14 bags with 2.5 L of water each: how much water in all?',
      given: { bagsToMix: '14', waterEach: '2.5 L' },
      expect: { waterAll: '35 L', waterWeight: '35 kg' },
    },
  ],
})
