// The rails of a whole fence whose bays differ: every stretch of bays alike, and all of them end to end.
import { calculation } from '../../calculation.ts'
import { bayRails, railCuts, railLengthAll, stretchBays } from '../../words/fence.ts'
import { railsInAll } from '../../words/framing.ts'

export const railsOfFence = calculation({
  name: 'rails-of-fence',
  title: 'Rails of the whole fence',
  answers: 'How many rails all bays take, and how long they are end to end.',
  needs: { bayRails, stretchBays, railCuts },
  gives: { railsInAll, railLengthAll },
  headlines: ['railsInAll'],
  together: { railsInAll: ['railsInAll', 'railLengthAll'] },
  ofTheFence: true,
  lines: {
    railsInAll: ['sum(bayRails * stretchBays)', 'every stretch: rails in a bay times its bays'],
    railLengthAll: ['sum(bayRails * stretchBays * railCuts)', 'each rail at its own length'],
  },
  work(_given, { line, rows, refuse, remark }) {
    const stretches = rows('stretchBays').length
    for (const name of ['bayRails', 'railCuts'] as const)
      if (rows(name).length !== stretches)
        refuse(name, `I have ${rows(name).length} values, and ${stretches} stretches of bays. Give one for each.`)
    line('railsInAll')
    line('railLengthAll')
    remark('Posts are never set quite evenly: measure each bay where its rail goes, and cut to that.')
  },
  sources: [{ fact: 'rails of a stretch = rails in a bay × bays', from: 'Derived here; needs no table.' }],
  cautions: ['tools'],
  examples: [
    // 2 × 5 + 2 × 8 = 26; 10 × 90 + 16 × 84 = 2244 in = 187 ft
    {
      ask: '5 bays with rails of 90 in and 8 bays with rails of 84 in, 2 rails each: how many rails?',
      given: { bayRails: ['2', '2'], stretchBays: ['5', '8'], railCuts: ['90 in', '84 in'] },
      expect: { railsInAll: '26 rails', railLengthAll: '187 ft' },
    },
    // 3 × 4 + 2 × 6 = 24; 12 × 2250 + 12 × 2000 = 51 000
    {
      ask: '4 bays with 3 rails of 2250 mm and 6 bays with 2 rails of 2000 mm: how many rails?',
      given: { bayRails: ['3', '2'], stretchBays: ['4', '6'], railCuts: ['2250 mm', '2000 mm'] },
      expect: { railsInAll: '24 rails', railLengthAll: '51 m' },
    },
  ],
})
