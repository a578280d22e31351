// How far a rail sags between two posts: under its own weight, and under somebody who sits on it or leans against it.
//
//   ┃╲_          _╱┃      evenly loaded: sag = 5/384 × load × span³ / (E × I)
//   ┃  ╲_  ▼   _╱  ┃      in the middle:  sag = 1/48 × load × span³ / (E × I)
//   ┃    ╲____╱    ┃      I = width × height³ / 12, height taken the way it bends
//
// The trap: the height counts three times over. The same stick laid flat sags more than five times as far.
import { evenSag, isTurned, middleSag } from '../../beam.ts'
import { calculation } from '../../calculation.ts'
import { railSagDrawing } from '../../drawings/rail-sag.ts'
import { exact, over, power, roundTo, times, toNumber } from '../../quantities/amount.ts'
import { exactly, less, type Quantity, quantity, zero } from '../../quantities/quantity.ts'
import { rounded, show } from '../../quantities/show.ts'
import { greenWoodStiffness } from '../../tables/green-wood-stiffness.ts'
import { opening } from '../../words/pickets.ts'
import {
  hungWeight,
  leanSag,
  leanWeight,
  longSag,
  ownSag,
  pushBow,
  railLies,
  sagHolds,
  sagLimit,
  sagOneIn,
  woodDensity,
  woodStiffness,
} from '../../words/rail-sag.ts'
import { railDepth, railThickness } from '../../words/rails.ts'
import { species } from '../../words/wet-wood.ts'

// Bent further than this part of its span, a rail is past what the formula is made for.
const furthest = exact('1/10')

export const railSag = calculation({
  name: 'rail-sag',
  title: 'How far a rail sags',
  answers:
    'How far one rail sags between its posts, new and after years, and how far it gives when somebody sits on it or leans against it.',
  needs: {
    opening,
    railDepth,
    railThickness,
    railLies,
    woodStiffness,
    species,
    woodDensity,
    hungWeight,
    leanWeight,
    sagLimit,
  },
  may: ['railLies', 'woodStiffness', 'species', 'hungWeight', 'leanWeight', 'sagLimit'],
  onlyFor: { leanWeight: ['leanSag', 'pushBow'], sagLimit: ['sagHolds'] },
  oneOf: [['woodStiffness', 'species']],
  gives: { ownSag, longSag, leanSag, pushBow, sagOneIn, sagHolds },
  headlines: ['ownSag', 'longSag'],
  together: {
    ownSag: ['ownSag', 'longSag', 'sagOneIn', 'leanSag', 'pushBow', 'sagHolds'],
    longSag: ['longSag', 'ownSag', 'sagOneIn'],
    leanSag: ['leanSag', 'pushBow', 'ownSag', 'longSag'],
    pushBow: ['pushBow', 'leanSag'],
    sagHolds: ['sagHolds', 'ownSag', 'longSag', 'leanSag', 'pushBow'],
  },
  called: ['rail sag', 'sag of a rail', 'sag of the rail', 'rail sags', 'rails sag', 'sagging rail'],
  locals: { standing: 'length', lying: 'length' },
  lines: {
    wetStiffness: ['0.9 * woodStiffness', 'rain reaches it, and wet wood gives more'],
    ownWeight: ['weight(woodDensity * railDepth * railThickness * opening)', 'the rail itself, from post to post'],
    hung: ['weight(hungWeight * opening)', 'what the pickets add'],
    ownSag: [
      evenSag('(ownWeight + hung)', 'wetStiffness', 'lying', 'standing'),
      'a load spread evenly over a beam that rests on both ends',
    ],
    longSag: ['2 * ownSag', 'under what never leaves it, wet wood sags to about twice as far'],
    leanForce: ['weight(leanWeight)', 'all of it on one rail, in the middle'],
    leanSag: [
      middleSag('leanForce', 'wetStiffness', 'lying', 'standing'),
      'the worst place for it, and it goes back when they get off',
    ],
    pushBow: [
      middleSag('leanForce', 'wetStiffness', 'standing', 'lying'),
      'pushed sideways, width and height change places',
    ],
    furthestDown: ['longSag + leanSag', 'old, and with somebody on it'],
    sagOneIn: ['floor(opening / longSag)', 'the span over the sag after years'],
  },
  work(given, { line, has, put, rows, tell, refuse, doubt, remark, cite, table, system }) {
    const { opening, railDepth, railThickness } = given
    const turn = isTurned(given.railLies, railDepth, railThickness)
    const standing = put('standing', turn ? railThickness : railDepth)
    const lying = put('lying', turn ? railDepth : railThickness)
    if (!less(standing, opening))
      refuse(
        'railDepth',
        `A rail ${show(standing)} from top to bottom in a ${show(opening)} opening is a block, not a rail. Check both.`,
      )
    if (turn)
      remark(
        `You say it lies ${given.railLies === 'flat' ? 'flat, so the smaller' : 'on edge, so the larger'} size, ${show(standing)}, is taken from top to bottom.`,
      )
    stiffness()
    line('ownWeight')
    if (has('hungWeight')) line('hung')
    else put('hung', zero('force', 'lbf'))
    const own = line('ownSag')
    const long = line('longSag')
    if (less(part(opening, exact('1/2')), long))
      refuse(
        'opening',
        `Over ${show(opening)} a rail ${show(standing)} deep would hang by more than half its span. Check the sizes and the stiffness, with their units.`,
      )
    line('sagOneIn')
    let [down, side] = [long, long]
    if (has('leanWeight')) {
      line('leanForce')
      line('leanSag')
      side = line('pushBow')
      down = line('furthestDown')
    }
    sagTable()
    remark(
      `By the tape: ${onTape(long, 'sag after years, by the tape')} down after years${has('leanWeight') ? `, ${onTape(rows('leanSag')[0] as Quantity, 'sag under the person, by the tape')} further with the person on it, ${onTape(side, 'bow sideways, by the tape')} sideways when they lean against it` : ''}.`,
    )
    if (has('sagLimit')) {
      const limit = rows('sagLimit')[0] as Quantity
      const [worst, how] = less(down, side)
        ? [side, 'the bow sideways']
        : [down, has('leanWeight') ? 'the sag after years with the person on it' : 'the sag after years']
      tell('sagHolds', !less(limit, worst))
      remark(`Decided by: ${how}, ${cite(worst, how)}, against your limit of ${show(limit)}.`)
    }
    const worst = less(down, side) ? side : down
    if (less(part(opening, furthest), worst))
      doubt(
        'implausible',
        has('leanWeight') ? 'leanWeight' : 'opening',
        `It would bend ${cite(worst, 'furthest')} over ${show(opening)}. That is past what the formula is made for, and a rail is likelier to break first. Take it as: far too much.`,
      )
    remark(
      'What always hangs on wood goes on bending it: wet wood on the whole to about twice, but single boards from no further at all to three times as far.',
    )
    if (!has('leanWeight'))
      remark(
        'Tell me the weight of whoever may sit on it or lean against it for that sag too. I know of no code figure for a fence.',
      )
    else if (less(lying, standing))
      remark(
        `Sideways it gives ${cite(side, 'bow sideways')}: on edge a rail is weak that way. The pickets pass some of a push on to the other rails; that is not counted.`,
      )
    remark(
      'This is one rail that rests on its two posts: one that runs on over several sags less. Sag is not strength: whether it breaks, and whether its screws or brackets hold, is not looked at here. A fence is no guard rail: where somebody could fall, ask the building office.',
    )

    /** E of the person, made wet; or the handbook's for wet wood. */
    function stiffness(): void {
      if (has('woodStiffness')) {
        line('wetStiffness')
        remark('Rain reaches a fence, so nine tenths of the dry wood’s stiffness is taken.')
        return
      }
      const value = greenWoodStiffness.values[given.species]
      if (value === undefined) throw new Error(`no stiffness for ${given.species}`)
      const wet: Quantity = { ...quantity(value, 'psi'), unit: system === 'metric' ? 'MPa' : 'psi' }
      put('wetStiffness', wet)
      remark(
        `Its stiffness is the handbook’s for this wood, clear and wet: E = ${cite(wet, 'modulus of elasticity, wet', 'published')}. A board with knots gives more: a table of design values for your grade comes first.`,
      )
    }

    /** What a tape shows of it: a sag finer than its marks is not there to be measured. */
    function onTape(sag: Quantity, what: string): string {
      const mark = system === 'metric' ? quantity(1, 'mm') : quantity('1/16', 'in')
      const shown = { ...mark, amount: roundTo(sag.amount, exactly(mark)) }
      return shown.amount.equals(0) ? `less than ${cite(mark, 'finest mark')}` : cite(shown, what)
    }

    /** Each sag as a length and as one part in so many, as it hangs and turned a quarter turn. */
    function sagTable(): void {
      const unit = system === 'metric' ? 'mm' : 'in'
      const turned = power(over(standing.amount, lying.amount), 2)
      const bare = (q: Quantity): string => show({ ...q, unit }).replace(` ${unit}`, '')
      const row = (what: string, sag: Quantity, other: Quantity) => [
        what,
        bare(sag),
        rounded(Math.floor(toNumber(over(opening.amount, sag.amount)))),
        bare(other),
      ]
      const quarter = (sag: Quantity): Quantity => ({ ...sag, amount: times(sag.amount, turned) })
      const sags = [row('by itself, new', own, quarter(own)), row('by itself, after years', long, quarter(long))]
      if (has('leanWeight')) {
        const sat = rows('leanSag')[0] as Quantity
        sags.push(row('person on it, further down by', sat, side), row('person against it, sideways by', side, sat))
      }
      table({
        title: 'Sag in the middle of the span',
        columns: [
          { label: 'under what', unit: '' },
          { label: `sag (${unit})`, unit },
          { label: 'one part in', unit: '' },
          { label: `turned a quarter turn (${unit})`, unit },
        ],
        rows: sags,
      })
    }
  },
  sources: [
    {
      fact: 'evenly loaded 5/384 × load × span³/(E I), in the middle 1/48 × load × span³/(E I), with I = width × height³/12',
      from: 'Statics of a beam on two supports; the form of Wood Handbook, FPL-GTR-190, chapter 9, its constants from memory',
    },
    { fact: `${greenWoodStiffness.title}; holds for ${greenWoodStiffness.holds}`, from: greenWoodStiffness.from },
    {
      fact: 'wet service takes E to 0.9; wood regularly rained on is wet',
      from: 'National Design Specification for Wood Construction, Supplement, wet service factor, as reprinted in Building Design and Construction Handbook, table 10.6',
    },
    {
      fact: 'under a lasting load unseasoned lumber sags to 2.0 times, on average; from none to three times',
      from: 'American Wood Council, What is creep and how can I address it?, awc.org/faqs, quoting NDS 3.5.2',
    },
    { fact: 'past a tenth of the span the formula no longer holds', from: 'common practice, no source' },
  ],
  cautions: ['structure'],
  drawing: railSagDrawing,
  examples: [
    // own weight 36/1728 × 5.25 × 92.5 = 10.117 lbf; E 0.9 × 1,000,000; I = 1.5 × 3.5³/12 = 5.3594;
    // 5/384 × 10.117 × 92.5³ / (900,000 × 5.3594) = 0.02162; twice 0.04323; 92.5/0.04323 = 2139
    // 200 × 92.5³ / (48 × 900,000 × 5.3594) = 0.6837; sideways × (3.5/1.5)² = 3.7223
    {
      ask: 'How much does the rail sag over a 92 1/2 in opening, 3 1/2 in deep and 1 1/2 in thick, modulus of elasticity 1,000,000 psi, if a person of 200 lb sits on it?',
      given: {
        opening: '92 1/2 in',
        railDepth: '3 1/2 in',
        railThickness: '1 1/2 in',
        woodStiffness: '1000000 psi',
        woodDensity: '36 lb/ft3',
        leanWeight: '200 lb',
      },
      expect: {
        ownSag: '0.02162 in',
        longSag: '0.04323 in',
        sagOneIn: '2,139',
        leanSag: '0.6837 in',
        pushBow: '3.722 in',
      },
    },
    // laid flat: 35 mm stands. Weight 580 × 0.07 × 0.035 × 2.31 × 9.80665 = 32.19 N, pickets 3 × 2.31 × 9.80665 = 67.96 N
    // E 8,000 × 0.9 = 7,200 MPa; I = 70 × 35³/12 = 250,104 mm⁴; 5/384 × 100.15 × 2310³ / (7200 × 250,104) = 8.926; twice 17.85; ⌊129.4⌋ = 129
    {
      ask: 'Rails laid flat, 70 mm deep and 35 mm thick, opening 2310 mm, modulus of elasticity 8 GPa, pickets weigh 3 kg/m: how much will the rail sag, and sag at most 20 mm?',
      given: {
        opening: '2310 mm',
        railDepth: '70 mm',
        railThickness: '35 mm',
        railLies: 'flat',
        woodStiffness: '8 GPa',
        hungWeight: '3 kg/m',
        sagLimit: '20 mm',
      },
      expect: {
        ownSag: '8.926 mm',
        longSag: '17.85 mm',
        sagOneIn: '129',
        sagHolds: 'nothing worked here is over your limit',
      },
    },
    // Western redcedar, wet: 940,000 psi; 0.021616 × 900/940 = 0.020697; twice 0.041393
    {
      ask: 'Rail sag: western red cedar, opening 92 1/2 in, rail on edge, 3 1/2 in deep and 1 1/2 in thick?',
      given: { opening: '92 1/2 in', railDepth: '3 1/2 in', railThickness: '1 1/2 in', species: 'western-redcedar' },
      expect: { ownSag: '0.0207 in', longSag: '0.04139 in' },
    },
  ],
})

const part = (q: Quantity, by: ReturnType<typeof exact>): Quantity => ({ ...q, amount: times(q.amount, by) })
