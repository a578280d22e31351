// How wide a hole is dug, by the trade's rule: three times the post. The trap is whose width: the post's own, or its name.
import { calculation } from '../../calculation.ts'
import { holeByName, holeByRule, postName } from '../../words/holes.ts'
import { postWidth } from '../../words/posts.ts'

export const holeWidthByRule = calculation({
  name: 'hole-width-by-rule',
  title: 'How wide to dig, by the trade’s rule',
  answers: 'How wide a post hole is by the rule of three times the post, for its actual width and for its name.',
  needs: { postWidth, postName },
  may: ['postName'],
  onlyFor: { postName: ['holeByName'] },
  gives: { holeByRule, holeByName },
  headlines: ['holeByRule'],
  together: { holeByRule: ['holeByRule', 'holeByName'] },
  lines: {
    holeByRule: ['3 * postWidth', 'three times the post itself'],
    holeByName: ['3 * postName', 'three times what it is called'],
  },
  work(_given, { line, has, remark }) {
    line('holeByRule')
    if (has('postName')) line('holeByName')
    remark(
      'It is a rule, not a check: gate posts, soft ground and wind may want more. Take the nearest auger that is not smaller. A wider hole takes much more concrete: its width counts twice.',
    )
  },
  sources: [{ fact: 'a hole is about three times as wide as its post', from: 'trade rule, no source' }],
  cautions: ['utilities', 'lot-line', 'local-code', 'open-hole'],
  examples: [
    {
      ask: 'How wide should the holes be for 3 1/2 in posts?',
      given: { postWidth: '3 1/2 in' },
      expect: { holeByRule: '10 1/2 in' },
    },
    { ask: 'What diameter hole for 90 mm posts?', given: { postWidth: '90 mm' }, expect: { holeByRule: '270 mm' } },
  ],
})
