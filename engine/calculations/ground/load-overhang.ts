// How far the longest piece sticks out behind the bed, and whether it lies safely on it.
//
//   ┌──────── bed ────────┐
//   ├──────── longest piece ────────┤
//   ▐█████████████████████╞═════════      past the middle it tips; past a third of it, it sways and drags
//   ▐─────────────────────┘◄overhang►
import { calculation } from '../../calculation.ts'
import { loadOverhangDrawing } from '../../drawings/load-overhang.ts'
import { compare, exact } from '../../quantities/amount.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { projectingLoads } from '../../tables/projecting-loads.ts'
import { bedLength, longestPiece, overhang, overhangChecked, overhangShare } from '../../words/hauling.ts'

const of = (text: string): Quantity => {
  const [amount, unit] = text.split(' ') as [string, string]
  return quantity(amount, unit)
}

export const loadOverhang = calculation({
  name: 'load-overhang',
  title: 'How far a load sticks out behind',
  answers:
    'How far the longest piece sticks out behind the bed, trailer or rack, whether no more than a third of it does, and from which length it must be marked.',
  needs: { longestPiece, bedLength },
  gives: { overhang, overhangShare, overhangChecked },
  headlines: ['overhang', 'overhangChecked'],
  together: {
    overhang: ['overhang', 'overhangShare', 'overhangChecked'],
    overhangChecked: ['overhangChecked', 'overhang', 'overhangShare'],
  },
  called: ['overhang', 'stick out', 'sticks out', 'hang out', 'hangs out'],
  locals: { nothing: 'length' },
  lines: {
    overhang: ['max(longestPiece - bedLength, nothing)', 'pushed up to the front of the bed'],
    overhangShare: ['overhang / longestPiece', 'as a share of the piece'],
  },
  work({ longestPiece: piece, bedLength: bed }, { line, put, tell, remark, table, cite }) {
    put('nothing', quantity(0, 'in'))
    const out = line('overhang')
    const share = line('overhangShare')
    const third = compare(share.amount, exact('1/3'))
    tell('overhangChecked', third === null ? null : third !== 1)
    if (!less(bed, piece)) {
      remark(
        'Decided by: it lies on the bed whole. Tie it down all the same: what slides forward is stopped by the cab.',
      )
      return
    }
    remark(`Decided by: ${show(share)} of it is behind the bed, and a third is the most.`)
    if (compare(share.amount, exact('1/2')) === 1)
      remark(
        `More than half of ${show(piece)} is behind: it tips as soon as it is let go. Do not haul it so. Have it cut, or delivered.`,
      )
    else if (third === 1)
      remark(
        'Between a third and half behind, it sways, drags over bumps and lifts the strap in front. Use a longer bed, or have it delivered.',
      )
    table({
      title: 'When the end must be marked',
      columns: ['where', 'from more than', 'how', 'this load'].map((label) => ({ label, unit: '' })),
      rows: projectingLoads.map(({ where, beyond, how }) => {
        const limit = of(beyond)
        return [where, show(limit), how, less(limit, out) ? 'must be marked' : '']
      }),
    })
    const flag = cite(quantity(12, 'in'), 'flag where no law says', 'published')
    remark(
      `Your own road law governs: ask before you load. Where it asks for no mark, tie a bright cloth of at least ${flag} across to the end all the same, and a red light after dark.`,
    )
  },
  sources: [
    { fact: 'overhang = length − what it lies on', from: 'Derived here from the sketch; needs no table.' },
    {
      fact: 'a stick with more than half behind its last support tips',
      from: 'Its weight acts in its middle: statics.',
    },
    { fact: 'no more than a third behind', from: 'common practice, no source' },
    ...projectingLoads.map(({ where, beyond, from }) => ({ fact: `marked past ${beyond} (${where})`, from })),
    { fact: 'a bright cloth where no law asks for one', from: 'common practice, no source' },
  ],
  cautions: ['lifting', 'local-code'],
  drawing: loadOverhangDrawing,
  examples: [
    // 12 − 8 = 4 ft; 4/12 = 33 1/3 %: just a third
    {
      ask: 'How far do 12 ft boards stick out of an 8 ft truck bed?',
      given: { longestPiece: '12 ft', bedLength: '8 ft' },
      expect: { overhang: '4 ft', overhangShare: '33.33 %' },
    },
    // 3.6 − 2.1 = 1.5 m; 1.5/3.6 = 41.67 %
    {
      ask: 'My longest rail is 3.6 m and the trailer is 2.1 m long. How much sticks out the back?',
      given: { longestPiece: '3.6 m', bedLength: '2.1 m' },
      expect: { overhang: '1.5 m', overhangChecked: 'fails: more than a third of it is behind the bed' },
    },
  ],
})
