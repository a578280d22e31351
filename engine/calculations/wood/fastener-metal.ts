// Which metal holds in which wood: copper in treated wood eats zinc, cedar and redwood are stained by iron, and salt eats nearly everything.
//
//   salt water near           →  stainless
//   treated with copper       →  hot-dip galvanised, or stainless
//   cedar, redwood, untreated →  stainless, unless paint covers it
import { calculation } from '../../calculation.ts'
import { fastenerMetal, metalHolds, metalInHand, saltAir } from '../../words/fastener-metal.ts'
import { woodTreated } from '../../words/meter.ts'
import { species } from '../../words/wet-wood.ts'
import { finishKind } from '../../words/wood.ts'

/** Woods whose own acids take up iron and turn it black. */
const staining: readonly string[] = ['western-redcedar', 'northern-white-cedar', 'redwood']

export const fastenerMetalOf = calculation({
  name: 'fastener-metal',
  title: 'The metal for screws and nails',
  answers:
    'Which metal the screws, nails and brackets should be, for the kind of wood, its treatment, its finish and salt air; and whether what you have will do.',
  needs: { woodTreated, species, finishKind, saltAir, metalInHand },
  may: ['species', 'finishKind', 'metalInHand'],
  gives: { fastenerMetal, metalHolds },
  headlines: ['fastenerMetal'],
  onlyFor: { metalInHand: ['metalHolds'] },
  called: [
    'fastener metal',
    'screw metal',
    'suit treated',
    'suit untreated',
    'suit pressure treated',
    'suit cedar',
    'suit redwood',
    'electroplated',
  ],
  together: { fastenerMetal: ['fastenerMetal', 'metalHolds'], metalHolds: ['metalHolds', 'fastenerMetal'] },
  lines: {},
  work(given, { has, tell, remark, doubt }) {
    const isTreated = given.woodTreated === 'treated'
    const stains = !isTreated && has('species') && staining.includes(given.species)
    const isCovered = has('finishKind') && given.finishKind === 'film'
    const [metal, reason] =
      given.saltAir === 'near'
        ? (['stainless', 'Salt water near by decides: there zinc is soon gone.'] as const)
        : isTreated
          ? ([
              'hot-dip galvanised',
              'The treatment decides: copper preservative eats thin zinc, so it takes the thick coat of hot-dip, or stainless.',
            ] as const)
          : stains && !isCovered
            ? ([
                'stainless',
                `The kind of wood decides: ${species.options?.[given.species]?.label} turns black round iron and zinc${has('finishKind') ? ' under a finish that lets it show' : ', and no paint was spoken of'}.`,
              ] as const)
            : ([
                'hot-dip galvanised',
                stains
                  ? 'The finish decides: under a primer with paint or solid stain, hot-dip will do.'
                  : 'Rain decides: outdoors it takes the thick coat of hot-dip, or stainless.',
              ] as const)
    tell('fastenerMetal', metal)
    remark(reason)
    if (!isTreated && !has('species'))
      doubt('missing', 'species', 'In cedar or redwood it would be stainless, unless paint covers it.', species.ask)
    if (has('metalInHand')) {
      const nearSalt = given.saltAir === 'near'
      const [verdict, why] = judged({ inHand: given.metalInHand, wanted: metal, isTreated, stains, nearSalt })
      tell('metalHolds', verdict)
      remark(why)
    }
    remark(
      'Take one metal for screw and bracket: two metals touching eat each other. Hot-dip nails and screws are ASTM A153 class D in the US; brackets for treated wood are coated G185.',
    )
  },
  sources: [
    {
      fact: 'copper preservatives are two to three times as hard on zinc as the old CCA; one metal for screw and bracket',
      from: 'a bolt maker on ASTM A153, https://www.portlandbolt.com',
    },
    {
      fact: 'stainless for cedar and redwood under clear or semi-transparent finish; hot-dip under primer and paint; no electroplate, no copper',
      from: 'as a lumber yard tells it; the trade, no standard',
    },
    { fact: 'stainless within about 5 miles of salt water', from: 'one trade text; no standard' },
    {
      fact: 'coating G185 for connectors, and no aluminium against copper-treated wood',
      from: 'US Forest Service, https://www.fs.fed.us/t-d/pubs/htmlpubs/htm06772809/page10.htm',
    },
    { fact: 'hot-dip outdoors in other wood', from: 'common practice, no source' },
  ],
  cautions: ['preserved-wood'],
  examples: [
    {
      ask: 'Fastener metal for untreated western redcedar with a semi-transparent finish?',
      given: { woodTreated: 'untreated', species: 'western-redcedar', finishKind: 'penetrating' },
      expect: { fastenerMetal: 'stainless' },
    },
    {
      ask: 'Do electroplated screws suit pressure treated southern pine?',
      given: { woodTreated: 'treated', species: 'southern-pine', metalInHand: 'electroplated' },
      expect: { metalHolds: 'the metal does not suit', fastenerMetal: 'hot-dip galvanised' },
    },
  ],
})

interface InHand {
  readonly inHand: string
  readonly wanted: 'hot-dip galvanised' | 'stainless'
  readonly isTreated: boolean
  readonly stains: boolean
  readonly nearSalt: boolean
}

/** Whether the metal in hand suits, and the fact that decides it. */
function judged({
  inHand,
  wanted,
  isTreated,
  stains,
  nearSalt,
}: InHand): readonly [verdict: boolean | null, why: string] {
  if (inHand === 'stainless')
    return [
      true,
      `The metal in hand decides: stainless suits${nearSalt ? '; by the sea 316 (A4) lasts better than 304 (A2)' : ''}.`,
    ]
  if (inHand === 'hotDip')
    return wanted === 'hot-dip galvanised'
      ? [true, 'The metal in hand decides: hot-dip zinc is what it takes.']
      : [false, `${nearSalt ? 'Salt water near by' : 'The kind of wood'} decides against hot-dip: it takes stainless.`]
  if (inHand === 'aluminium')
    return isTreated
      ? [false, 'The treatment decides: aluminium against copper-treated wood is eaten away.']
      : [null, 'I have no source for aluminium in untreated wood, so I cannot say.']
  if (inHand === 'copper')
    return stains
      ? [false, 'The kind of wood decides: copper leaves streaks in it.']
      : [null, 'I have no source for copper or brass in this wood, so I cannot say.']
  const thin = inHand === 'electroplated' ? 'electroplated zinc is too thin for outdoors' : 'plain steel rusts outdoors'
  const worse = isTreated
    ? ', and copper in the wood eats it all the sooner'
    : stains
      ? ', and it streaks this wood black'
      : ''
  return [false, `The metal in hand decides: ${thin}${worse}.`]
}
