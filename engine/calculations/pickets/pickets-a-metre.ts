// How many pickets go to the metre and to the foot, from the width of one and the gap; and how far so many of them go.
//
//   █ gap █ gap █ gap █ gap
//   ◄pitch►                          pitch = width + gap
//
import { calculation } from '../../calculation.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { quantity } from '../../quantities/quantity.ts'
import { picketsHung } from '../../words/picket-count.ts'
import { pitch } from '../../words/picket-patterns.ts'
import { fenceCovered, perFoot, perMetre } from '../../words/pickets-by-length.ts'
import { picketWidth, wantedGap } from '../../words/pickets.ts'

export const picketsAMetre = calculation({
  name: 'pickets-a-metre',
  title: 'Pickets to the metre and to the foot, and how much fence so many cover',
  answers:
    'How many pickets go to the metre and to the foot, how far it is from the left edge of one to the left edge of the next, and how much fence a number of them covers.',
  needs: { picketWidth, wantedGap, picketsHung },
  onlyFor: { picketsHung: ['fenceCovered'] },
  gives: { perMetre, perFoot, pitch, fenceCovered },
  headlines: ['perMetre', 'perFoot'],
  together: {
    perMetre: ['perMetre', 'perFoot', 'pitch'],
    perFoot: ['perFoot', 'perMetre', 'pitch'],
    pitch: ['pitch', 'perMetre', 'perFoot'],
  },
  called: ['how far will they go', 'how far do they go', 'will they cover', 'how much fence'],
  locals: { oneMetre: 'length', oneFoot: 'length' },
  lines: {
    pitch: ['picketWidth + wantedGap', 'one picket and one gap'],
    perMetre: ['oneMetre / pitch', 'so many of them in a metre'],
    perFoot: ['oneFoot / pitch', 'so many of them in a foot'],
    fenceCovered: ['picketsHung * pitch', 'each takes its own width and one gap'],
  },
  work({ wantedGap }, { line, put, has, wants, remark }) {
    line('pitch')
    if (wants('perMetre') || wants('perFoot')) {
      put('oneMetre', quantity(1, 'm'))
      put('oneFoot', quantity(1, 'ft'))
      line('perMetre')
      line('perFoot')
      remark(
        compare(wantedGap.amount, exact(0)) === 0
          ? 'Without a gap every picket takes just its own width.'
          : 'Multiply by the whole length, and round up only then. A length that ends with a picket at both ends has one gap less.',
      )
    }
    if (!has('picketsHung') || !wants('fenceCovered')) return
    line('fenceCovered')
    remark(
      'Leave out the split and crooked ones before you count. Gates come on top: no pickets stand in their opening.',
    )
  },
  sources: [{ fact: 'pitch = width + gap', from: 'Derived here from the sketch; needs no table.' }],
  cautions: [],
  examples: [
    // 1000 / (65 + 40) = 9.5238; 304.8 / 105 = 2.90286
    {
      ask: 'How many pickets to the metre with 65 mm pickets and 40 mm gaps?',
      given: { picketWidth: '65 mm', wantedGap: '40 mm' },
      expect: { perMetre: '9.524', perFoot: '2.903', pitch: '105 mm' },
    },
    // 12 / (3 1/2 + 2 1/2) = 2; 39.37/6
    {
      ask: 'How many pickets per foot, 3 1/2 in wide with 2 1/2 in between?',
      given: { picketWidth: '3 1/2 in', wantedGap: '2 1/2 in' },
      expect: { perFoot: '2', perMetre: '6.562', pitch: '6 in' },
    },
    // 130 × 6 in = 780 in = 65 ft
    {
      ask: 'I have 130 pickets of 3 1/2 in and want 2 1/2 in gaps. How much fence will they cover?',
      given: { picketsHung: '130', picketWidth: '3 1/2 in', wantedGap: '2 1/2 in' },
      expect: { fenceCovered: '65 ft' },
    },
    // 88 × 105 = 9240
    {
      ask: 'How far will 88 pickets go, 65 mm wide with 40 mm between them?',
      given: { picketsHung: '88', picketWidth: '65 mm', wantedGap: '40 mm' },
      expect: { fenceCovered: '9.24 m' },
    },
  ],
})
