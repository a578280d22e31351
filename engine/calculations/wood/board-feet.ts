// Board feet: a board one inch thick, a foot wide and a foot long, by the size it is sold as.
//
//   ┌────────────┐
//   │ 1 in × 12 in × 12 in │   = 144 cubic inches by name, whatever is left of it planed
//   └────────────┘
import { calculation } from '../../calculation.ts'
import { less, quantity } from '../../quantities/quantity.ts'
import { boardFeet, nominalThickness, nominalWidth, soldVolume, lumberLength, sticks } from '../../words/sticks.ts'

export const boardFeetOf = calculation({
  name: 'board-feet',
  title: 'Board feet',
  answers: 'How many board feet, and what volume, so many sticks are by the size they are sold as.',
  needs: { nominalThickness, nominalWidth, lumberLength, sticks },
  gives: { boardFeet, soldVolume },
  headlines: ['boardFeet', 'soldVolume'],
  together: { boardFeet: ['boardFeet', 'soldVolume'], soldVolume: ['soldVolume', 'boardFeet'] },
  locals: { inch: 'length', one: 'volume' },
  lines: {
    counted: ['max(nominalThickness, inch)', 'thinner than an inch counts as an inch'],
    boardFeet: ['sticks * counted * nominalWidth * lumberLength / one', 'a board foot is 144 cubic inches'],
    soldVolume: ['sticks * nominalThickness * nominalWidth * lumberLength', 'by the size it is sold as'],
  },
  work({ nominalThickness, nominalWidth }, { line, put, refuse, remark, assumed }) {
    if (less(nominalWidth, nominalThickness))
      refuse('nominalWidth', 'The width is smaller than the thickness. The thinner side comes first in a name: 2x4.')
    const inch = put('inch', quantity(1, 'in'))
    put('one', quantity(144, 'in3'))
    line('counted')
    line('boardFeet')
    line('soldVolume')
    if (less(nominalThickness, inch))
      remark('It is thinner than an inch, and is counted as an inch: so boards are sold.')
    remark(
      `Board feet go by the name of the stick, not by what it measures: a 2x4 counts as 2 by 4. Dressed wood holds less than the volume says${assumed('sticks') ? '. That is for one stick' : ''}.`,
    )
  },
  sources: [
    {
      fact: 'board feet = thickness × width × length / 12, in nominal inches, nominal inches and feet; under 1 in counts as 1',
      from: 'a navy training manual, http://www.tpub.com/engbas/6-3.htm',
    },
  ],
  cautions: [],
  examples: [
    // 2 × 4 × 14 / 12 = 9 1/3
    {
      ask: 'How many board feet is a 14 ft long 2x4?',
      given: { nominalThickness: '2x4', nominalWidth: '2x4', lumberLength: '14 ft' },
      expect: { boardFeet: '9.333 board feet' },
    },
    // 60 × 25 × 150 × 2400 mm³ = 540 L = 0.54 m³; by the inch-foot: 540 / 2.35974
    {
      ask: 'How many cubic metres of timber are 60 boards of 25x150, each 2.4 m long?',
      given: { nominalThickness: '25x150', nominalWidth: '25x150', lumberLength: '2.4 m', sticks: '60' },
      expect: { soldVolume: '0.54 m³' },
    },
  ],
})
