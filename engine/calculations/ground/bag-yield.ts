// What one bag of dry mix makes, when only its weight is known.
import { calculation } from '../../calculation.ts'
import { bagWeight, bagYield, dryMixDensity } from '../../words/concrete.ts'

export const bagYieldByWeight = calculation({
  name: 'bag-yield',
  title: 'What a bag of concrete makes, by its weight',
  answers: 'The volume of concrete one bag makes, when the yield printed on it is not known.',
  needs: { bagWeight, dryMixDensity },
  gives: { bagYield },
  headlines: ['bagYield'],
  joins: true,
  lines: { bagYield: ['bagWeight / dryMixDensity', 'the trade’s rule; the yield printed on your bag comes first'] },
  work(_given, { line, remark }) {
    line('bagYield')
    remark(
      'I took what a bag makes from its weight, by the trade’s rule. Read the yield printed on your bag: it comes first.',
    )
  },
  sources: [
    { fact: '20 lb of dry mix makes about 0.15 ft³ (60 lb: 0.45 ft³, 80 lb: 0.60 ft³)', from: 'trade rule, no source' },
  ],
  cautions: ['wet-cement', 'dust', 'lifting'],
  examples: [
    // 60 ÷ 133 1/3 = 0.45
    { ask: 'What does a 60 lb bag of concrete make?', given: { bagWeight: '60 lb' }, expect: { bagYield: '0.45 ft³' } },
    // 20 kg = 44.0925 lb; ÷ 133 1/3 = 0.330693 ft³ = 9.364 L
    { ask: 'What does a 20 kg bag make?', given: { bagWeight: '20 kg' }, expect: { bagYield: '9.364 L' } },
  ],
})
