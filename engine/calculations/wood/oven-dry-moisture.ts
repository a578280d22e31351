// Moisture by weighing: a slice of the board as it is, and the same slice when the oven has taken all its water.
//
//   as it is   ███████ + water        moisture by the dry weight = water / dry wood      (what meters mean)
//   oven-dry   ███████                moisture by the wet weight = water / the whole     (what firewood sellers mean)
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { dryBasis, dryWeight, wetBasis, wetWeight } from '../../words/weighed-wood.ts'

export const ovenDryMoisture = calculation({
  name: 'oven-dry-moisture',
  title: 'Moisture by weighing',
  answers:
    'The moisture of a sample from its weight as it is and its weight oven-dry, by the dry weight and by the wet.',
  needs: { wetWeight, dryWeight },
  gives: { dryBasis, wetBasis },
  headlines: ['dryBasis', 'wetBasis'],
  together: { dryBasis: ['dryBasis', 'wetBasis'], wetBasis: ['wetBasis', 'dryBasis'] },
  lines: {
    water: ['wetWeight - dryWeight', 'what the oven drove out'],
    dryBasis: ['water / dryWeight', 'against the dry wood: this is what meters and handbooks call moisture content'],
    wetBasis: ['water / wetWeight', 'against the whole wet piece'],
  },
  work({ wetWeight, dryWeight }, { line, refuse, remark }) {
    if (less(wetWeight, dryWeight))
      refuse(
        'dryWeight',
        `The sample cannot weigh more dry (${show(dryWeight)}) than wet (${show(wetWeight)}). Check both weights, and their units.`,
      )
    line('water')
    line('dryBasis')
    line('wetBasis')
    remark(
      'Cut the slice two hand widths from the end, an inch or so along the grain, and weigh it at once. It is dry when two weighings a few hours apart agree.',
    )
    remark(
      'Stay with the oven and keep it at 103 °C (217 °F). Never put treated, painted or oiled wood in a kitchen oven.',
    )
  },
  sources: [
    {
      fact: 'moisture content = (wet − dry) / dry; oven at 103 ± 2 °C until the weight no longer changes',
      from: 'Wood Handbook, FPL-GTR-282 (2021), chapter 4, equation 4-2, as quoted in a public fact sheet',
    },
    { fact: 'where to cut the slice', from: 'common practice, no source' },
  ],
  cautions: ['preserved-wood'],
  examples: [
    // (58.3 − 50) / 50 = 16.6 %; 8.3 / 58.3 = 14.24 %
    {
      ask: 'How wet is a sample that weighs 58.3 g wet and 50 g oven-dry?',
      given: { wetWeight: '58.3 g', dryWeight: '50 g' },
      expect: { dryBasis: '16.6 %', wetBasis: '14.24 %' },
    },
    // (0.6 − 0.5) / 0.5 = 20 %; 0.1 / 0.6 = 16 2/3 %
    {
      ask: 'A sample weighs 0.6 lb wet and 0.5 lb dry. What is the moisture of the sample?',
      given: { wetWeight: '0.6 lb', dryWeight: '0.5 lb' },
      expect: { dryBasis: '20 %', wetBasis: '16.67 %' },
    },
  ],
})
