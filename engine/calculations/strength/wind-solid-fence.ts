// The wind on one bay of a solid fence, away from the ends of its run, and what it comes to on one post.
//
//   ──►  ┌────┬────┬────┐     the force coefficient hangs on two shapes:
//   ──►  │    │    │    │     the run over the height of the boards, and the height of the boards over that of the fence
//   ──►  └────┴────┴────┘
//   ══════════════════════    The first bays from a free end get far more: that is not in it.
import { calculation } from '../../calculation.ts'
import { windDrawing } from '../../drawings/wind.ts'
import { equal, less, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { forceOverMiddle, openingsFactor, openShapeFactors, solidShapeFit } from '../../tables/wind-factors.ts'
import { published } from '../../tables/published.ts'
import { bayCentres, runLength } from '../../words/bays.ts'
import { footGap } from '../../words/framing.ts'
import { postAbove } from '../../words/posts.ts'
import {
  exposure,
  forceHeight,
  givenFactor,
  seenShare,
  sideForce,
  strengthForce,
  tippingMoment,
  windPressure,
  windSpeed,
} from '../../words/wind.ts'
import { postLines, sayLevels, windLines, windLocals, windSources, workPressure, workWind } from '../../wind.ts'

export const windSolidFence = calculation({
  name: 'wind-solid-fence',
  title: 'Wind on a bay of a solid fence',
  answers:
    'The wind’s pressure on a solid fence and the sideways force on one post away from the ends of the run, from the wind speed you were given. A check, not a design.',
  needs: { windSpeed, exposure, postAbove, bayCentres, runLength, footGap, seenShare, givenFactor },
  may: ['runLength', 'givenFactor'],
  oneOf: [['runLength', 'givenFactor']],
  usually: {
    footGap: {
      value: '0 in',
      metric: '0 mm',
      because: 'boards down to the ground catch the most',
      from: 'Decided here: the safe side.',
    },
    seenShare: {
      value: '100 %',
      because: 'boards without gaps; say how much is solid if there are some',
      from: 'Decided here: the safe side.',
    },
  },
  gives: { sideForce, windPressure, strengthForce, forceHeight, tippingMoment },
  headlines: ['sideForce', 'windPressure'],
  together: {
    sideForce: ['sideForce', 'strengthForce', 'windPressure', 'forceHeight', 'tippingMoment'],
    windPressure: ['windPressure', 'strengthForce', 'sideForce'],
    tippingMoment: ['tippingMoment', 'sideForce', 'forceHeight'],
  },
  called: ['wind on a solid fence', 'wind on the solid fence', 'wind on a board fence'],
  joins: true,
  locals: { ...windLocals, standardFactor: 'number', openingsFactor: 'number' },
  lines: {
    boardHeight: ['postAbove - footGap', 'the boards from their foot to the top'],
    runOverBoards: [
      'min(max(runLength / boardHeight, 0.05), 45)',
      'the run over the height of the boards, as far as the standard’s figure goes',
    ],
    boardsOverHeight: ['max(boardHeight / postAbove, 0.16)', 'the height of the boards over that of the fence'],
    logRun: ['ln(runOverBoards)', 'the fit goes by its logarithm'],
    fittedFactor: [
      '(1.563 + 0.008542 * logRun - 0.06148 * boardsOverHeight + 0.009011 * logRun ^ 2 - 0.2603 * boardsOverHeight ^ 2 - 0.08393 * boardsOverHeight * logRun) / 0.85',
      'the published fit to the standard’s figure',
    ],
    roundedFactor: ['round(fittedFactor, 0.05)', 'rounded to 0.05, as the figure itself is'],
    openingsFactor: ['1 - (1 - seenShare) * sqrt(1 - seenShare)', 'gaps of less than 30 % take a little off'],
    shapeFactor: ['standardFactor * openingsFactor', 'the shape of the fence'],
    ...windLines,
    strengthForce: ['windPressure * boardHeight * bayCentres', 'the pressure on one bay'],
    forceHeight: ['footGap + boardHeight / 2', 'in the middle of the boards'],
    forceOverMiddle: ['0.55 * postAbove', 'boards that reach the ground are pushed a little above their middle'],
    ...postLines,
  },
  work({ exposure, postAbove, footGap, seenShare, givenFactor }, tools) {
    const { line, has, put, tell, refuse, remark } = tools
    if (!less(footGap, postAbove))
      refuse(
        'footGap',
        `Boards that end ${show(footGap)} above the ground do not fit under ${show(postAbove)}. Check both.`,
      )
    if (!less(published(openShapeFactors.most), seenShare))
      refuse(
        'seenShare',
        `A fence that is ${show(seenShare)} solid is an open one: up to ${openShapeFactors.most} the wind is reckoned on its pickets and rails. Ask for the wind on a picket fence, with the width of the pickets and their gap.`,
      )
    line('boardHeight')
    if (has('givenFactor')) {
      put('standardFactor', givenFactor)
      remark(`The force coefficient of ${show(givenFactor)} is the one you gave.`)
    } else {
      line('runOverBoards')
      line('boardsOverHeight')
      line('logRun')
      line('fittedFactor')
      put('standardFactor', line('roundedFactor'))
      remark(
        'This is a bay away from the ends. At a free end the first stretch, as long as the fence is high, gets about two and a half times as much on a long solid fence, and the next about one and a half times. The standard has a figure for that which is not in this program: give me the force coefficient for the end bay, or ask an engineer.',
      )
    }
    if (equal(seenShare, quantity(100, 'percent'))) put('openingsFactor', quantity(1, 'ratio'))
    else line('openingsFactor')
    line('shapeFactor')
    workWind(exposure, postAbove, tools)
    workPressure(tools)
    const strength = line('strengthForce')
    if (footGap.amount.valueOf() === 0) tell('forceHeight', { ...line('forceOverMiddle'), unit: postAbove.unit })
    else line('forceHeight')
    const working = line('sideForce')
    line('tippingMoment')
    sayLevels(strength, working, tools)
  },
  sources: [
    { fact: solidShapeFit.title, from: solidShapeFit.from },
    { fact: openingsFactor.title, from: openingsFactor.from },
    { fact: forceOverMiddle.title, from: forceOverMiddle.from },
    {
      fact: 'the ends of a long solid wall get about two and a half times as much, then about one and a half times',
      from: 'ASCE 7, case C for a run of ten heights and more, as reprinted in the Bangladesh National Building Code, part 6, chapter 2, figure 6.2.20; only the proportion is told here',
    },
    ...windSources,
  ],
  cautions: ['structure', 'local-code'],
  drawing: windDrawing,
  examples: [
    // 120/6 = 20, 6/6 = 1: ln 20 = 2.99573; (1.563 + 0.02559 − 0.06148 + 0.08087 − 0.2603 − 0.25143)/0.85 = 1.2897 → 1.30
    // q 16.4034 × 0.85 × 1.30 = 18.1258; × 48 ft² = 870.0; × 0.6 = 522.0; 0.55 × 6 = 3.3 ft; 1722.7
    {
      ask: 'Wind on a solid fence: 6 ft high, posts 8 ft on center, run of 120 ft, wind speed 115 mph, exposure B?',
      given: { windSpeed: '115 mph', exposure: 'b', postAbove: '6 ft', bayCentres: '8 ft', runLength: '120 ft' },
      expect: {
        sideForce: '522 lbf',
        strengthForce: '870 lbf',
        windPressure: '18.13 lb/ft²',
        forceHeight: '3 ft 3 3/5 in',
        tippingMoment: '1,723 lbf-ft',
      },
    },
    // boards 1.75 m of 1.8, 24/1.75 = 13.714: ln 2.61837; 1.75/1.8 = 0.97222
    // (1.563 + 0.02237 − 0.05977 + 0.06178 − 0.24604 − 0.21365)/0.85 = 1.3267 → 1.35 (nearer than 1.30)
    // 0.61334 × 0.57 × 0.85 × 45² = 601.76 Pa × 0.85 × 1.35 = 690.5 Pa < 766.1 (16 lb/ft²); × 1.75 × 2.4 = 3217.6 N; × 0.6 = 1930.5; height 0.05 + 0.875 = 925 mm
    {
      ask: 'Wind on a solid fence 1800 mm high, boards 50 mm off the ground, posts 2.4 m apart, run of 24 m, wind speed 45 m/s, in a suburb?',
      given: {
        windSpeed: '45 m/s',
        exposure: 'b',
        postAbove: '1800 mm',
        footGap: '50 mm',
        bayCentres: '2.4 m',
        runLength: '24 m',
      },
      expect: { sideForce: '1,931 N', windPressure: '0.7661 kPa', forceHeight: '925 mm' },
    },
  ],
})
