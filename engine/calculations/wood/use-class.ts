// How strongly a part of the fence has to be treated, by where it stands and in which country it is sold.
//
//   ▯ ▯ ▯  pickets, rails, caps     clear of the ground: rained on, and dry again
//   ▯ ▯ ▯  a board near the soil    never quite dry: as if it stood in it
//  ─┃──────────┃─ post               in the ground
import { calculation } from '../../calculation.ts'
import { preservativeClasses } from '../../tables/preservative-classes.ts'
import { country } from '../../words/country.ts'
import { decayRisk, fenceMember, memberStands, useClass } from '../../words/preservative.ts'

export const useClassOf = calculation({
  name: 'use-class',
  title: 'The class of treatment for a part of the fence',
  answers:
    'Which class of preservative treatment a post, rail, picket or board is sold under for the place where it stands, in your country.',
  needs: { fenceMember, country, memberStands, decayRisk },
  may: ['memberStands'],
  gives: { useClass },
  headlines: ['useClass'],
  called: [
    'use class',
    'hazard class',
    'treatment class',
    'class of treatment',
    'use category',
    'ground contact rating',
  ],
  lines: {},
  work(given, { has, tell, remark, doubt, refuse }) {
    const classes = preservativeClasses[given.country]
    if (!classes)
      return refuse(
        'country',
        'I know the classes of the US, Canada, the UK, Ireland, the rest of Europe, Australia and New Zealand. Ask a treater or the yard which class is for wood in the ground where you are.',
      )
    const member = fenceMember.options?.[given.fenceMember]?.label
    // What stands in or near the ground by its nature, unless it was said where it stands.
    const byNature = given.fenceMember === 'post' ? 'ground' : given.fenceMember === 'groundBoard' ? 'close' : 'clear'
    const stands = has('memberStands') ? given.memberStands : byNature
    const isSevere = given.decayRisk === 'severe' && stands !== 'clear'
    tell('useClass', stands === 'clear' ? classes.clear : isSevere ? classes.severe : classes.ground)
    const where = memberStands.options?.[stands]?.label
    remark(
      `Where it stands decides: a ${member} ${where}${has('memberStands') ? '' : ', as I took it'}. The class is one of ${classes.system}.`,
    )
    if (stands === 'close')
      remark(
        'Within 6 in (150 mm) of the soil, or where leaves lie on it, wood stays damp: it is taken as if it stood in the ground.',
      )
    if (given.decayRisk === 'severe' && stands === 'clear')
      doubt(
        'implausible',
        'decayRisk',
        'For wood clear of the ground I know no stronger class. Ask the treater what he would use where you are.',
      )
    if (isSevere && classes.severe === classes.ground)
      remark('That system has no stronger class for soil: ask for the longest service life it is sold for.')
    if (given.country === 'canada') remark('The Canadian class is from memory: check it at the yard.')
    remark(
      'Look for the class on the tag of each stick; “pressure treated” alone says nothing. Put the factory end in the ground, and brush preservative on every cut, notch and hole.',
    )
  },
  sources: [
    ...Object.values(preservativeClasses).map(({ system, from }) => ({ fact: system, from })),
    {
      fact: 'wood under 6 in from the soil, badly aired or hard to replace is taken as in the ground',
      from: 'a trade association on AWPA use categories, https://www.treatedwood.com/learn/uses-for-treated-wood; elsewhere common practice, no source',
    },
    {
      fact: 'every cut and hole is treated again',
      from: 'AWPA M4, as quoted at https://preservedwood.org/how-to/field-treatment',
    },
  ].filter((it, i, all) => all.findIndex((other) => other.from === it.from) === i),
  cautions: ['preserved-wood', 'local-code'],
  examples: [
    {
      ask: 'Which use class of treatment for fence posts in the US?',
      given: { fenceMember: 'post', country: 'us' },
      expect: { useClass: 'UC4A' },
    },
    {
      ask: 'What hazard class do fence palings need in Australia?',
      given: { fenceMember: 'picket', country: 'australia' },
      expect: { useClass: 'H3' },
    },
    {
      ask: 'What treatment class for a gravel board in the UK?',
      given: { fenceMember: 'groundBoard', country: 'uk' },
      expect: { useClass: 'use class 4' },
    },
  ],
})
