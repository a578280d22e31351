import { type Check, step } from '../check.ts'

const book = 'Reference book, wind and embedment'
const corrected = 'Reference book, corrections found on review (a): the rails seen through the gaps are counted'

const published = {
  trial: 'engineering forum thread, http://www.eng-tips.com/viewthread.cfm?qid=276653 : A = 17.6 ft',
  signPost: 'sign-post thread, http://www.eng-tips.com/viewthread.cfm?qid=266547 : almost 6.5 ft',
  lightPole:
    'one-page light-pole sheet, https://tr.scribd.com/doc/90622087/Deep-Foundation-Design-IBC-8-0m : b 0.849 m, S1 16.223 kPa, A 0.226 m, d 1.52 m',
  flagpole:
    'computer-algebra sheet for a flagpole footing, https://www.scribd.com/document/560795266/FlagpoleFooting-flow : 1.509 m, 166.0 kPa',
}
const lightPole = {
  sideForce: '1.33 kN',
  forceHeight: '8 m',
  postSetIn: 'concrete',
  holeDiameter: '0.6 m',
  holeShape: 'square',
  lateralBearing: '31.4 kPa/m',
  embedment: '1.55 m',
}
const flagpole = {
  sideForce: '30000 lb',
  forceHeight: '3 ft',
  postSetIn: 'concrete',
  holeDiameter: '54 in',
  lateralBearing: '350 psf/ft',
  bearingDoubled: 'doubled',
  postHeld: 'held',
}
const odd = ['sideForce', 'forceHeight', 'holeDiameter', 'lateralBearing', 'embedment', 'postWidth']
const collar = {
  forceHeight: '2 ft',
  postSetIn: 'concrete',
  holeDiameter: '10 in',
  soilClass: 'sand',
  bearingDoubled: 'doubled',
}

/** The depth at which the soil's hold is just used up, closed in on by halving between nothing and 40 ft: s b d³ − 7.02 P (d + 1.09 h). */
function depthByHalving(force: number, arm: number, grip: number, wide: number): number {
  let [low, high] = [0, 40]
  for (let i = 0; i < 200; i++) {
    const middle = (low + high) / 2
    const A = (2.34 * force) / (((grip * middle) / 3) * wide)
    // Too shallow while the formula asks for more than the depth that its soil was taken at.
    if (0.5 * A * (1 + Math.sqrt(1 + (4.36 * arm) / A)) > middle) low = middle
    else high = middle
  }
  return low
}

export const embedmentChecks: readonly Check[] = [
  {
    calculation: 'embedment-check',
    what: 'A of the code’s formula at a trial depth of 6 ft',
    kind: 'published',
    source: published.trial,
    reference: 'emb-01-pub',
    // 150 × 1.33 = 199.5 psf/ft. A does not hang on the height of the force.
    given: {
      sideForce: '3000 lb',
      forceHeight: '2 ft',
      postSetIn: 'concrete',
      holeDiameter: '12 in',
      lateralBearing: '199.5 psf/ft',
      embedment: '6 ft',
    },
    confirmed: odd,
    gives: 'plannedA',
    unit: 'ft',
    got: step('plannedA', 'ft'),
    expected: 17.6,
    tolerance: 0.05,
  },
  {
    calculation: 'embedment-check',
    what: 'depth of a sign post: 480 lb at 5 ft in clay, 18 in footing',
    kind: 'published',
    source: published.signPost,
    reference: 'emb-02-pub',
    given: {
      sideForce: '480 lb',
      forceHeight: '5 ft',
      postSetIn: 'concrete',
      holeDiameter: '18 in',
      soilClass: 'clay',
    },
    gives: 'codeDepth',
    unit: 'ft',
    expected: 6.5,
    tolerance: 0.12,
  },
  ...(
    [
      ['bearingWidth', 'm', 0.849, 0.001],
      ['plannedPressure', 'kPa', 16.223, 0.002],
      ['plannedA', 'm', 0.226, 0.0006],
      ['depthFromPlan', 'm', 1.52, 0.006],
    ] as const
  ).map(
    ([gives, unit, expected, tolerance]): Check => ({
      calculation: 'embedment-check',
      what: `${gives} of a light pole on a footing 0.6 m square`,
      kind: 'published',
      source: published.lightPole,
      reference: 'emb-03-pub',
      given: lightPole,
      system: 'metric',
      confirmed: odd,
      gives,
      unit,
      got: gives === 'bearingWidth' ? undefined : step(gives, unit),
      expected,
      tolerance,
    }),
  ),
  ...(
    [
      ['codeDepth', 'm', 1.509, 0.001],
      ['pressureBelow', 'kPa', 166, 0.1],
    ] as const
  ).map(
    ([gives, unit, expected, tolerance]): Check => ({
      calculation: 'embedment-check',
      what: `${gives} of a flagpole held at the ground`,
      kind: 'published',
      source: published.flagpole,
      reference: 'emb-04-pub',
      given: flagpole,
      confirmed: odd,
      gives,
      unit,
      got: gives === 'codeDepth' ? undefined : step(gives, unit),
      expected,
      tolerance,
    }),
  ),
  ...(
    [
      [
        'emb-05',
        {
          sideForce: '120 lb',
          forceHeight: '2 ft',
          postSetIn: 'earth',
          postWidth: '3 1/2 in',
          soilClass: 'sand',
          bearingDoubled: 'doubled',
        },
        3.352,
        'a bare 4x4 in sand',
      ],
      ['emb-06', { ...collar, sideForce: '120 lb' }, 2.509, 'the same in a 10 in collar'],
      [
        'emb-07',
        { ...collar, sideForce: '120 lb', soilClass: 'clay', bearingDoubled: 'once' },
        3.959,
        'the same in clay, not doubled',
      ],
      ['emb-08', { ...collar, sideForce: '120 lb', postHeld: 'held' }, 1.598, 'the same held by a slab'],
      ['emb-10', { ...collar, sideForce: '187.4 lb' }, 3.012, 'the push of that example’s picket bay'],
      ['emb-10', { ...collar, sideForce: '206.9 lb' }, 3.14, 'the same bay with its rails counted'],
    ] as const
  ).map(
    ([reference, given, expected, what]): Check => ({
      calculation: 'embedment-check',
      what,
      kind: 'reference',
      source: expected === 3.14 ? corrected : book,
      reference,
      given,
      gives: 'codeDepth',
      unit: 'ft',
      expected,
      tolerance: expected === 3.14 ? 0.005 : 0.0005,
    }),
  ),
  {
    calculation: 'embedment-check',
    what: '0.6 kN at 0.75 m, 0.25 m collar, in SI',
    kind: 'reference',
    source: book,
    reference: 'emb-09-si',
    given: {
      sideForce: '0.6 kN',
      forceHeight: '0.75 m',
      postSetIn: 'concrete',
      holeDiameter: '0.25 m',
      lateralBearing: '23.55 kPa/m',
      bearingDoubled: 'doubled',
    },
    system: 'metric',
    gives: 'codeDepth',
    unit: 'm',
    expected: 0.84,
    tolerance: 0.0005,
  },
  {
    calculation: 'embedment-check',
    what: 'the depth, solved and not guessed',
    kind: 'second derivation',
    source: 'second derivation: the code’s own formula, its depth closed in on by halving two hundred times',
    given: {
      sideForce: '333 lb',
      forceHeight: '31 in',
      postSetIn: 'concrete',
      holeDiameter: '14 in',
      soilClass: 'gravel',
    },
    gives: 'codeDepth',
    unit: 'ft',
    expected: () => depthByHalving(333, 31 / 12, 200, 14 / 12),
    tolerance: 1e-9,
  },
]
