// Fabric under the stone, roll after roll with laps.
import { calculation } from '../../calculation.ts'
import { holdsMoreThan, less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { edgeRun, fabricLap, fabricReach, fabricRolls, rollLength } from '../../words/border.ts'

const mostRolls = 10_000

export const edgeFabric = calculation({
  name: 'edge-fabric',
  title: 'Fabric under the strip',
  answers: 'How many rolls of fabric a strip takes, with a lap at every joint.',
  needs: { edgeRun, rollLength, fabricLap },
  gives: { fabricRolls, fabricReach },
  headlines: ['fabricRolls'],
  together: { fabricRolls: ['fabricRolls', 'fabricReach'] },
  called: ['fabric'],
  lines: {
    fabricRolls: [
      'max(ceil((edgeRun - fabricLap) / (rollLength - fabricLap)), 1)',
      'every roll after the first loses a lap',
    ],
    fabricReach: ['fabricRolls * rollLength - (fabricRolls - 1) * fabricLap', 'all rolls, less the laps'],
  },
  work({ edgeRun, rollLength, fabricLap }, { line, refuse, remark }) {
    if (!less(fabricLap, rollLength))
      refuse('fabricLap', `A lap of ${show(fabricLap)} leaves nothing of a ${show(rollLength)} roll. Check both.`)
    if (holdsMoreThan(mostRolls, rollLength, edgeRun))
      refuse(
        'edgeRun',
        `${show(edgeRun)} in rolls of ${show(rollLength)} is more than I can count here. Check both units.`,
      )
    line('fabricRolls')
    line('fabricReach')
    remark('This is for a strip that one roll is wide enough to cover; turn the fabric up a little at both sides.')
  },
  sources: [{ fact: 'reach = rolls × length − (rolls − 1) × lap', from: 'Derived here; needs no table.' }],
  cautions: ['utilities', 'lot-line', 'local-code'],
  examples: [
    // (50 − 0.5)/(25 − 0.5) = 2.02 → 3; 75 − 1 = 74
    {
      ask: 'How many rolls of fabric for a strip 50 ft long, 25 ft rolls, 6 in overlap?',
      given: { edgeRun: '50 ft', rollLength: '25 ft', fabricLap: '6 in' },
      expect: { fabricRolls: '3 rolls', fabricReach: '74 ft' },
    },
    // (18 − 0.15)/(10 − 0.15) = 1.81 → 2
    {
      ask: 'Strip 18 m long, rolls of 10 m with 150 mm lap: how many rolls?',
      given: { edgeRun: '18 m', rollLength: '10 m', fabricLap: '150 mm' },
      expect: { fabricRolls: '2 rolls', fabricReach: '19.85 m' },
    },
  ],
})
