// An amount against another of its kind: is that a yard, is it more than half a ton, is it under 500.
//
//   ▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓▓   46.2 ft³ of concrete
//   ├────────────┤           a cubic yard, 27 ft³:   more, by 19.2 ft³
import { calculation } from '../../calculation.ts'
import { equal, less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { comparedKinds, comparedWords, comparison } from '../../words/compared.ts'
import type { Word } from '../../words/word.ts'

const named = (of: 'here' | 'mark' | 'asMark' | 'apart'): Record<string, Word> =>
  Object.fromEntries(comparedKinds.map((kind) => [comparedWords[kind][of].name, comparedWords[kind][of]]))
const [here, mark] = [named('here'), named('mark')]

export const amountAgainst = calculation<Record<string, Word>>({
  name: 'amount-against',
  title: 'An amount against another',
  answers: 'Whether a volume, weight, length or sum of money is more or less than another, and by how much.',
  needs: { ...here, ...mark },
  may: [...Object.keys(here), ...Object.keys(mark)],
  oneOf: [Object.keys(here), Object.keys(mark)],
  gives: { comparison, ...named('asMark'), ...named('apart') },
  headlines: ['comparison'],
  together: {
    comparison: ['comparison', ...Object.keys(named('asMark')), ...Object.keys(named('apart'))],
  },
  plain: true,
  lines: Object.fromEntries(
    comparedKinds.flatMap((kind) => [
      [`${kind}AsMark`, [`${kind}Here`, 'the same, in the unit of what it is held against']],
      [`${kind}Apart`, [`abs(${kind}Here - ${kind}Mark)`, 'the larger less the smaller']],
    ]),
  ) as Record<string, readonly [string, string]>,
  work(_, { line, has, rows, tell, need, refuse, remark }) {
    const kind = comparedKinds.find((it) => has(`${it}Here`)) as (typeof comparedKinds)[number]
    const one = rows(`${kind}Here`)[0] as Quantity
    if (!has(`${kind}Mark`)) {
      if (comparedKinds.some((it) => has(`${it}Mark`)))
        refuse(`${kind}Here`, `${show(one)} can only be held against another of its kind. Say it with its unit.`)
      need(`${kind}Mark`)
    }
    const other = rows(`${kind}Mark`)[0] as Quantity
    tell('comparison', equal(one, other) ? 'just that' : less(other, one) ? 'more than that' : 'less than that')
    line(`${kind}AsMark`, other.unit)
    line(`${kind}Apart`, other.unit)
    remark(`Held against ${show(other)}.`)
  },
  sources: [{ fact: 'the larger less the smaller', from: 'Arithmetic; needs no table.' }],
  cautions: [],
  examples: [
    // 46.22 / 27 = 1.7118…; 46.22 − 27 = 19.22 ft³ = 0.7118… yd³
    {
      ask: 'Is 46.22 ft³ more than a cubic yard?',
      given: { volumeHere: '46.22 ft³', volumeMark: '1 yd³' },
      expect: { comparison: 'more than that', volumeAsMark: '1.712 yd³', volumeApart: '0.7119 yd³' },
    },
    // 500 − 412.80
    {
      ask: 'Is $412.80 less than $500?',
      given: { moneyHere: '$412.80', moneyMark: '$500' },
      expect: { comparison: 'less than that', moneyApart: '$87.20' },
    },
  ],
})
