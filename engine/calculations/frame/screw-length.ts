// How long a screw must be to hold a picket, and how long it may be.
//
//   ┌──┬─────────┐
//   │══╪══►      │   through the picket, then into the rail: six diameters at least, ten for full bite,
//   └──┴─────────┘   and never out of its back
import { calculation } from '../../calculation.ts'
import { screwDrawing } from '../../drawings/screw.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { picketThickness } from '../../words/pickets.ts'
import { railThickness } from '../../words/rails.ts'
import { fullScrew, leastScrew, mostScrew, screwDiameter, wantedBite } from '../../words/screws.ts'

export const screwLength = calculation({
  name: 'screw-length',
  title: 'How long the screws are',
  answers:
    'How long screws must be to hold pickets on rails, and how long they may be before they come out of the back.',
  needs: { picketThickness, railThickness, screwDiameter, wantedBite },
  may: ['wantedBite'],
  gives: { leastScrew, fullScrew, mostScrew },
  headlines: ['leastScrew', 'mostScrew'],
  together: { leastScrew: ['leastScrew', 'mostScrew'], mostScrew: ['mostScrew', 'leastScrew'] },
  lines: {
    leastScrew: ['picketThickness + 6 * screwDiameter', 'six diameters in the rail are the least that counts'],
    withBite: ['picketThickness + wantedBite', 'the picket, and the bite you want behind it'],
    fullScrew: ['picketThickness + 10 * screwDiameter', 'with ten diameters it holds sideways as well as it can'],
    mostScrew: ['picketThickness + railThickness', 'any longer, and the point comes out of the rail'],
  },
  work({ railThickness, screwDiameter, wantedBite }, { line, has, tell, refuse, remark, doubt }) {
    const byRule = line('leastScrew')
    const least = has('wantedBite') ? tell('leastScrew', line('withBite')) : byRule
    if (less(least, byRule))
      doubt(
        'contradictory',
        'wantedBite',
        `Six diameters of bite are the least that counts: that takes ${show(byRule)}, and ${show(wantedBite)} of bite only ${show(least)}.`,
      )
    const full = line('fullScrew')
    const most = line('mostScrew')
    if (less(most, least))
      refuse(
        'railThickness',
        has('wantedBite')
          ? `A rail ${show(railThickness)} thick does not hold ${show(wantedBite)} of bite: the screw comes out after ${show(most)}. Take less bite or a thicker rail.`
          : `A rail ${show(railThickness)} thick is too thin for a screw ${show(screwDiameter)} across: it would need ${show(least)} and comes out after ${show(most)}. Take thinner screws or a thicker rail.`,
      )
    if (less(most, full))
      doubt(
        'contradictory',
        'railThickness',
        `Full bite would take ${show(full)}, and the screw comes out of the back after ${show(most)}. Stay under that.`,
      )
    remark(
      'Take the stock length between the two, a little short of the longest. Drill ahead near the ends, or the picket splits.',
    )
  },
  sources: [
    {
      fact: 'six diameters of bite at least, ten for the full lateral value',
      from: 'NDS, wood screws; from memory, to be confirmed',
    },
    { fact: 'screw diameters by number', from: 'ASME B18.6.1; from memory, to be confirmed' },
  ],
  cautions: ['tools'],
  drawing: screwDrawing,
  examples: [
    // 0.75 + 6 × 0.164 = 1.734; + 10 × 0.164 = 2.39; 0.75 + 1.5 = 2.25
    {
      ask: 'How long a screw for 3/4 in thick pickets on rails 1 1/2 in thick?',
      given: { picketThickness: '3/4 in', railThickness: '1 1/2 in', screwDiameter: '0.164 in' },
      expect: { leastScrew: '1 367/500 in', fullScrew: '2 39/100 in', mostScrew: '2 1/4 in' },
    },
    // 19 + 25.2 = 44.2; 19 + 42 = 61; 19 + 45 = 64
    {
      ask: 'What length screws for 19 mm thick pickets and 45 mm thick rails?',
      given: { picketThickness: '19 mm', railThickness: '45 mm', screwDiameter: '4.2 mm' },
      expect: { leastScrew: '44.2 mm', fullScrew: '61 mm', mostScrew: '64 mm' },
    },
    // 0.75 + 1.25 = 2; 0.75 + 1.5 = 2.25
    {
      ask: 'What length screw for 3/4 in thick pickets with 1 1/4 in of bite in a rail 1 1/2 in thick?',
      given: { picketThickness: '3/4 in', railThickness: '1 1/2 in', wantedBite: '1 1/4 in' },
      expect: { leastScrew: '2 in', mostScrew: '2 1/4 in' },
    },
  ],
})
