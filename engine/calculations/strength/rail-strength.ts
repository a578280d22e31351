// Whether the wood of a rail stands a person who sits on it or leans against it, and the wind on its bay.
//
//   ┃    ▼     ┃     in the middle: bent by load × span ÷ 4
//   ┃▔▔▔▔▔▔▔▔▔▔┃     evenly, by the wind: load × span ÷ 8
//                    stress = that ÷ (width × height²/6), height taken the way it bends
//
// How far it sags under somebody is in rail-sag; under the wind it is here.
import { evenSag, evenStress, isTurned, middleStress } from '../../beam.ts'
import { calculation } from '../../calculation.ts'
import { compare, over, toNumber } from '../../quantities/amount.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { lumberLocals, lumberSources, putLumber } from '../../lumber.ts'
import { lumberValues } from '../../tables/lumber-values.ts'
import { opening } from '../../words/pickets.ts'
import { leanWeight, railLies } from '../../words/rail-sag.ts'
import { railDepth, rails, railThickness } from '../../words/rails.ts'
import { sideForce } from '../../words/wind.ts'
import {
  bendingValue,
  incised,
  lumberGroup,
  pushStress,
  railHolds,
  railUsed,
  sitStress,
  windBow,
  windStress,
} from '../../words/wood-strength.ts'

export const railStrength = calculation({
  name: 'rail-strength',
  title: 'A rail against bending',
  answers:
    'How hard a rail is bent by somebody who sits on it or leans against it, and by the wind on its bay, against what its wood may bear. A check, not a design.',
  needs: {
    opening,
    railDepth,
    railThickness,
    railLies,
    leanWeight,
    sideForce,
    rails,
    lumberGroup,
    incised,
    bendingValue,
  },
  may: ['railLies', 'leanWeight', 'sideForce', 'lumberGroup', 'incised', 'bendingValue'],
  oneOf: [['leanWeight', 'sideForce']],
  onlyFor: { rails: ['windStress', 'windBow', 'railUsed', 'railHolds'] },
  gives: { railHolds, railUsed, sitStress, pushStress, windStress, windBow },
  headlines: ['railHolds', 'railUsed'],
  together: {
    railHolds: ['railHolds', 'railUsed', 'sitStress', 'pushStress', 'windStress', 'windBow'],
    railUsed: ['railUsed', 'railHolds'],
    windBow: ['windBow', 'windStress'],
  },
  locals: { ...lumberLocals, standing: 'length', lying: 'length' },
  lines: {
    personForce: ['weight(leanWeight)', 'all of it on one rail, in the middle'],
    sitStress: [middleStress('personForce', 'lying', 'standing'), 'sitting on it bends it downward'],
    pushStress: [
      middleStress('personForce', 'standing', 'lying'),
      'leaning against it bends it sideways: width and height change places',
    ],
    railWind: ['sideForce / rails', 'the wind on the bay, shared by its rails'],
    windStress: [
      evenStress('railWind', 'standing', 'lying'),
      'the pickets hand the wind on evenly, and it bends the rail sideways',
    ],
    wetStiffness: ['0.9 * dryStiffness', 'rain reaches it, and wet wood gives more'],
    windBow: [evenSag('railWind', 'wetStiffness', 'standing', 'lying'), 'how far it gives in the gust'],
    personAllowed: [
      'designBending * 1.25 * sizeFactor * wetFactor * slitFactor',
      'people are on it for days in its life',
    ],
    windAllowed: ['designBending * 1.6 * sizeFactor * wetFactor * slitFactor', 'a gust is short'],
  },
  work(given, { line, has, need, put, tell, rows, refuse, remark, doubt, cite, system }) {
    const { opening, railDepth, railThickness } = given
    const turn = isTurned(given.railLies, railDepth, railThickness)
    const standing = put('standing', turn ? railThickness : railDepth)
    put('lying', turn ? railDepth : railThickness)
    if (!less(standing, opening))
      refuse(
        'railDepth',
        `A rail ${show(standing)} from top to bottom in a ${show(opening)} opening is a block, not a rail. Check both.`,
      )
    const loads: {
      readonly what: string
      readonly stress: string
      readonly allowed: 'personAllowed' | 'windAllowed'
    }[] = []
    if (has('leanWeight')) {
      line('personForce')
      line('sitStress')
      line('pushStress')
      loads.push(
        { what: 'sitting on it', stress: 'sitStress', allowed: 'personAllowed' },
        { what: 'leaning against it', stress: 'pushStress', allowed: 'personAllowed' },
      )
    }
    const inWind = has('sideForce') && has('rails')
    if (inWind) {
      line('railWind')
      line('windStress')
      loads.push({ what: 'the wind', stress: 'windStress', allowed: 'windAllowed' })
    }
    if (loads.length === 0) need('leanWeight')
    const sizes = [railDepth, railThickness]
    if (has('bendingValue')) {
      remark('The allowed stress is the one you gave, taken with all its factors in.')
      judge(() => given.bendingValue)
    } else if (!has('lumberGroup')) {
      tell('railHolds', null)
      doubt('missing', 'lumberGroup', 'Whether the wood of the rail stands that depends on its grade.', lumberGroup.ask)
    } else if (!putLumber(given.lumberGroup, has('incised') ? given.incised : 'no', sizes, { put, system })) {
      tell('railHolds', null)
      remark(
        `Decided by the size: the values I have hold up to ${lumberValues.widest}, and a rail of ${show(railDepth)} by ${show(railThickness)} has others. Give me the allowed bending stress, with all factors in.`,
      )
    } else {
      const [person, wind] = [line('personAllowed'), line('windAllowed')]
      if (inWind) {
        line('wetStiffness')
        line('windBow')
      }
      judge((load) => (load === 'windAllowed' ? wind : person))
      remark(
        `That is ${lumberGroup.options?.[given.lumberGroup]?.label}, stamped and wet from rain; for people its value × 1.25, for a gust × 1.6. Unstamped wood and a large knot in the middle bear less.`,
      )
    }
    if (has('leanWeight'))
      remark(
        'I know of no code figure for people on a fence; the weight is yours. The pickets pass some of a push on to the other rails; that is not counted.',
      )
    remark(
      'Screws, nails and brackets usually give before the rail breaks, and are not looked at. A fence is no guard rail: where somebody could fall, ask the building office. A check, not a design.',
    )

    /** The load that comes nearest to what is allowed for it decides. */
    function judge(allowedFor: (load: 'personAllowed' | 'windAllowed') => Quantity): void {
      const shares = loads.map(({ what, stress, allowed }) => {
        const worked = rows(stress)[0] as Quantity
        const most = allowedFor(allowed)
        return { what, worked, most, share: over(worked.amount, most.amount) }
      })
      const worst = shares.reduce((a, b) => (toNumber(b.share) > toNumber(a.share) ? b : a))
      tell('railUsed', { kind: 'percent', amount: worst.share, unit: 'percent' })
      const order = compare(worst.worked.amount, worst.most.amount)
      tell('railHolds', order === null ? null : order <= 0)
      remark(
        `Decided by ${worst.what}: ${show(worst.worked)} against ${cite(worst.most, 'allowed bending stress')} allowed.`,
      )
      for (const it of shares)
        if (it !== worst)
          remark(`With ${it.what}: ${show(it.worked)} against ${cite(it.most, 'allowed bending stress')} allowed.`)
    }
  },
  sources: [
    {
      fact: 'bent in the middle by load × span ÷ 4, evenly by load × span ÷ 8; stress = bending ÷ (width × height²/6)',
      from: 'Statics of a beam on two supports; the form of Wood Handbook, FPL-GTR-190, chapter 9',
    },
    ...lumberSources,
  ],
  cautions: ['structure', 'local-code'],
  examples: [
    // S standing 1.5 × 3.5²/6 = 3.0625, lying 1.3125 in³; 200 × 92.5/4 = 4625: 1510 and 3524 psi; cedar 700 × 1.25 × 1.5 = 1312.5; 3524/1312.5 = 268.5 %
    {
      ask: 'Is the rail strong enough for a person of 200 lb: opening 92 1/2 in, rail 3 1/2 in deep and 1 1/2 in thick, western cedar?',
      given: {
        opening: '92 1/2 in',
        railDepth: '3 1/2 in',
        railThickness: '1 1/2 in',
        leanWeight: '200 lb',
        lumberGroup: 'western-cedars',
      },
      expect: {
        railHolds: 'the rail fails this check',
        sitStress: '1,510 psi',
        pushStress: '3,524 psi',
        railUsed: '268.5 %',
      },
    },
    // 900 N over 2 rails = 450 N; × 2310/8 = 129,937.5 N-mm; S lying 90 × 45²/6 = 30,375 mm³ → 4.278 MPa; against 12 MPa: 35.6 %
    {
      ask: 'Will the rail break in the wind: opening 2310 mm, rail 90 mm deep and 45 mm thick, 2 rails, wind force of 900 N, allowed bending stress 12 MPa?',
      given: {
        opening: '2310 mm',
        railDepth: '90 mm',
        railThickness: '45 mm',
        rails: '2',
        sideForce: '900 N',
        bendingValue: '12 MPa',
      },
      expect: { railHolds: 'nothing checked here fails in the rail', windStress: '4.278 MPa' },
    },
  ],
})
