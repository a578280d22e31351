// How deep a post must stand against a sideways push, by the building code’s formula; the trade’s rule beside it, which is another thing.
//
//   P ──►┃           s b d³ = 7.02 P (d + 1.09 h)       free at the ground
//        ┃ h         s b d³ = 4.25 P h                  held there by a rigid slab
//   ═════╋══════     s: what the soil bears for each foot of depth; b: the width that pushes on it
//     ░░░┃░░░
//     ░░░┃░░░ d      The trap: the width is a square footing’s diagonal, and tamped stone widens nothing.
import { calculation } from '../../calculation.ts'
import { embedmentDrawing } from '../../drawings/embedment.ts'
import { about, add, type Amount, compare, exact, isExact, over, times, toNumber } from '../../quantities/amount.ts'
import { amountIn, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { published } from '../../tables/published.ts'
import { doubling, poleFormula, soilBearing } from '../../tables/soil-bearing.ts'
import { depthByRule, embedment, holeDiameter, holeShape, postAbove, postWidth } from '../../words/posts.ts'
import {
  bearingDoubled,
  bearingWidth,
  codeDepth,
  deepEnoughForForce,
  lateralBearing,
  postHeld,
  postSetIn,
  soilClass,
} from '../../words/soil-bearing.ts'
import { pressureUnit } from '../../wind.ts'
import { forceHeight, sideForce } from '../../words/wind.ts'

export const embedmentCheck = calculation({
  name: 'embedment-check',
  title: 'Post depth against a sideways force, by the code’s formula',
  answers:
    'How deep the building code’s formula wants a post that is pushed sideways with a known force, in the soil you name, beside what the trade’s rule says. A check, not a design.',
  needs: {
    sideForce,
    forceHeight,
    postSetIn,
    holeDiameter,
    holeShape,
    postWidth,
    soilClass,
    lateralBearing,
    bearingDoubled,
    postHeld,
    embedment,
    postAbove,
  },
  may: ['holeDiameter', 'soilClass', 'lateralBearing', 'postAbove'],
  oneOf: [['soilClass', 'lateralBearing']],
  onlyFor: { embedment: ['deepEnoughForForce'] },
  gives: { codeDepth, depthByRule, deepEnoughForForce, bearingWidth },
  headlines: ['codeDepth', 'deepEnoughForForce'],
  together: {
    codeDepth: ['codeDepth', 'depthByRule', 'bearingWidth'],
    deepEnoughForForce: ['deepEnoughForForce', 'codeDepth', 'depthByRule'],
  },
  locals: {
    soilValue: 'pressureByDepth',
    soilFactor: 'number',
    planned: 'length',
    bearingWidth: 'length',
    codeDepth: 'length',
  },
  lines: {
    roundWidth: ['holeDiameter', 'a round footing pushes with its diameter'],
    squareWidth: ['holeDiameter * sqrt(2)', 'the code takes the diagonal of a square footing'],
    postDiagonal: ['postWidth * sqrt(2)', 'no concrete: the post pushes with its own diagonal'],
    soilGrip: ['soilValue * soilFactor', 'what the soil may be pressed with, for each foot of depth'],
    // With the depth put in, the code’s own formula gives the same depth back: it was solved, not guessed.
    pressureThere: ['soilGrip * codeDepth / 3', 'the soil at a third of the depth'],
    lengthA: ['2.34 * sideForce / (pressureThere * bearingWidth)', 'the code calls it A'],
    depthBack: [
      '0.5 * lengthA * (1 + sqrt(1 + 4.36 * forceHeight / lengthA))',
      'the code’s formula gives the same depth back: it is solved',
    ],
    pressureBelow: ['soilGrip * codeDepth', 'the soil at the full depth'],
    heldBack: [
      'sqrt(4.25 * sideForce * forceHeight / (pressureBelow * bearingWidth))',
      'held at the ground; the code’s formula gives the same depth back: it is solved',
    ],
    plannedPressure: ['soilGrip * planned / 3', 'with the depth you plan: the soil at a third of it'],
    plannedA: ['2.34 * sideForce / (plannedPressure * bearingWidth)', 'A with the depth you plan'],
    depthFromPlan: [
      '0.5 * plannedA * (1 + sqrt(1 + 4.36 * forceHeight / plannedA))',
      'what the formula asks for when the soil is taken at your depth',
    ],
    depthByRule: ['postAbove / 2', 'the trade’s rule, which knows no wind and no soil: a third of the whole post'],
  },
  work(given, { line, has, put, tell, rows, need, refuse, remark, cite, table, system }) {
    // What pushes on the soil.
    if (given.postSetIn === 'concrete') {
      if (!has('holeDiameter')) need('holeDiameter')
      tell('bearingWidth', line(given.holeShape === 'square' ? 'squareWidth' : 'roundWidth'))
    } else {
      tell('bearingWidth', line('postDiagonal'))
      remark('In tamped earth or stone the post pushes with its own width; a wider hole of stone is not counted.')
    }
    const rule = has('postAbove') ? line('depthByRule') : undefined
    // What the soil bears.
    if (!has('lateralBearing') && given.soilClass === 'none') {
      tell('deepEnoughForForce', null)
      remark(
        'Decided by the soil: fill, peat, mud and organic soil have no presumed value in the code. Dig down to sound ground, or ask an engineer; the building office may allow a value for something light.',
      )
      if (rule) remark(`The trade’s rule would say ${show(rule)}; in such soil it is no guide.`)
      return
    }
    const presumed = published(soilBearing.values[given.soilClass] ?? '0 psf/ft')
    const value = has('lateralBearing')
      ? given.lateralBearing
      : { ...presumed, unit: system === 'metric' ? 'kPa/m' : presumed.unit }
    const isDoubled = given.bearingDoubled === 'doubled'
    put('soilValue', value)
    put('soilFactor', quantity(isDoubled ? 2 : 1, 'ratio'))
    const grip = line('soilGrip')
    remark(
      has('lateralBearing')
        ? `The soil’s ${show(value)} is the value you gave.`
        : `The soil’s ${cite(value, 'presumed lateral bearing', 'published')} is what the code presumes for ${soilClass.options?.[given.soilClass]?.label}, without a test.`,
    )
    remark(
      isDoubled
        ? 'The soil’s value is doubled because you said so. The condition: the post stands alone, as a flagpole or sign does, and half an inch of movement at the ground does no harm. Whether a fence post counts is for your building office.'
        : 'The code may let an isolated pole take twice the soil’s value; ask your building office, and say “value doubled” if it does.',
    )
    // The depth: the one positive root.
    const isHeld = given.postHeld === 'held'
    const force = given.sideForce
    const arm = given.forceHeight
    const unit = system === 'metric' ? 'mm' : 'in'
    const solved = solve(force.amount, arm.amount, grip.amount, (rows('bearingWidth')[0] as Quantity).amount, isHeld)
    const depth: Quantity = { kind: 'length', amount: solved, unit }
    if (less(published(poleFormula.most), depth))
      refuse(
        'sideForce',
        `The formula would want ${cite(depth, 'depth by the formula')}, and it is made for ${cite(published(poleFormula.most), 'most that it is made for', 'published')} at the most. ${show(force)} on one post is more than a fence post is for: ask an engineer.`,
      )
    tell('codeDepth', depth)
    if (isHeld) {
      line('pressureBelow', pressureUnit(system))
      agree(depth, line('heldBack'))
    } else {
      line('pressureThere', pressureUnit(system))
      line('lengthA')
      agree(depth, line('depthBack'))
    }
    const rowsOfTable = [['code’s formula, for this push in this soil', show(depth)]]
    if (rule) {
      rowsOfTable.unshift(['trade’s rule, a third of the whole post', show({ ...rule, unit })])
      remark(
        `Two different things: the trade’s rule says ${show(rule)} and knows no wind and no soil; the code’s formula says ${show(depth)} for ${show(force)} at ${show(arm)} and knows no frost. Neither says what your place asks for.`,
      )
    } else remark('Tell me the height of the post above ground, and the trade’s rule stands beside it.')
    if (has('embedment')) {
      put('planned', given.embedment)
      if (!isHeld) {
        line('plannedPressure', pressureUnit(system))
        line('plannedA')
        line('depthFromPlan')
      }
      const order = compare(given.embedment.amount, depth.amount)
      tell('deepEnoughForForce', order === null ? null : order >= 0)
      remark(
        order === null
          ? `Decided by: ${show(given.embedment)} is exactly on the edge of what the formula asks for.`
          : `Decided by: ${show(given.embedment)} of post in the ground against ${show(depth)} by the formula.`,
      )
      rowsOfTable.push(['what you plan', show({ ...given.embedment, unit })])
    }
    table({
      title: 'Depth of the post: a rule and a check',
      columns: [
        { label: 'by what', unit: '' },
        { label: 'depth', unit: '' },
      ],
      rows: rowsOfTable,
    })
    remark(
      'This is a check, not a design, and says nothing of frost. A fence on soft or sloping ground, beside a drop, or over 6 ft high belongs with an engineer; the building office decides.',
    )
  },
  sources: [
    { fact: poleFormula.free, from: poleFormula.from },
    { fact: poleFormula.held, from: poleFormula.from },
    { fact: soilBearing.title, from: soilBearing.from },
    { fact: doubling.title, from: doubling.from },
    {
      fact: 'a third of the whole post in the ground, which is half of the height above it',
      from: 'trade rule, no source',
    },
  ],
  cautions: ['utilities', 'structure', 'local-code', 'open-hole'],
  drawing: embedmentDrawing,
  examples: [
    // b 10 in, s 150 × 2 = 300 psf/ft: 300 × 0.83333 d³ = 7.02 × 120 (d + 2.18): d³ = 3.3696 d + 7.3457; d = 2.509: 15.794 = 8.454 + 7.346 ✓. rule 4/2 = 2 ft
    {
      ask: 'How deep by the code for a sideways force of 120 lb acting at 2 ft, post in concrete in a 10 in hole, sandy soil with its value doubled, fence 4 ft high?',
      given: {
        sideForce: '120 lb',
        forceHeight: '2 ft',
        postSetIn: 'concrete',
        holeDiameter: '10 in',
        soilClass: 'sand',
        bearingDoubled: 'doubled',
        postAbove: '4 ft',
      },
      expect: { codeDepth: '30.11 in', depthByRule: '24 in' },
    },
    // bare 90 mm post: b = 127.28 mm; clay 100 psf/ft = 15.709 kPa/m; 15.709 × 0.12728 d³ = 7.02 × 0.4 (d + 0.654): d³ = 1.40438 d + 0.91847; d = 1.4313: 2.932 = 2.010 + 0.918 + rounding
    {
      ask: 'Is a post 900 mm in the ground deep enough for a force of 400 N acting at 600 mm, 90 mm post in tamped earth, clay soil?',
      given: {
        sideForce: '400 N',
        forceHeight: '600 mm',
        postSetIn: 'earth',
        postWidth: '90 mm',
        soilClass: 'clay',
        embedment: '900 mm',
      },
      expect: { codeDepth: '1,431 mm', deepEnoughForForce: 'fails at that depth', bearingWidth: '127.3 mm' },
    },
  ],
})

/**
 * The depth at which the soil's grip is used up. Free: s b d³ = 7.02 P (d + 1.09 h), whose one positive root Newton's steps close in on
 * from above; held: s b d³ = 4.25 P h. A change of any input by a share of itself changes the depth by no larger a share.
 */
function solve(force: Amount, arm: Amount, grip: Amount, width: Amount, isHeld: boolean): Amount {
  const [P, h, sb] = [toNumber(force), toNumber(arm), toNumber(times(grip, width))]
  const start = Math.cbrt((4.25 * P * h) / sb)
  let d = isHeld ? start : Math.sqrt((7.02 * P) / sb) + Math.cbrt((7.02 * 1.09 * P * h) / sb)
  for (let i = 0; i < 100 && !isHeld; i++) {
    const next = d - (sb * d ** 3 - 7.02 * P * (d + 1.09 * h)) / (3 * sb * d ** 2 - 7.02 * P)
    if (Math.abs(next - d) <= d * 1e-15) break
    d = next
  }
  const off = [force, arm, grip, width].reduce((sum, it) => sum + share(it), 0)
  return about(d, d * (off + 1e-12))
}

const share = (amount: Amount): number => (isExact(amount) ? 0 : amount.error / Math.abs(amount.value))

/** What was solved must come back out of the code's own formula: anything else is our mistake. */
function agree(depth: Quantity, back: Quantity): void {
  const off = toNumber(add(over(back.amount, depth.amount), exact(-1)))
  if (Math.abs(off) > 1e-9) throw new Error(`the depth is not solved: ${toNumber(amountIn(depth, 'ft'))} ft`)
}
