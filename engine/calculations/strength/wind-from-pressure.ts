// The force on one post from a wind pressure that somebody gave: a building office, an engineer, another country's standard.
//
//   ──►  ┌────────┐
//   ──►  │        │      force = pressure × height of the boards × width of a bay
//   ──►  └────────┘
import { calculation } from '../../calculation.ts'
import { windDrawing } from '../../drawings/wind.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { workingLevel } from '../../tables/wind-factors.ts'
import { bayCentres } from '../../words/bays.ts'
import { footGap } from '../../words/framing.ts'
import { postAbove } from '../../words/posts.ts'
import { word } from '../../words/word.ts'
import { forceHeight, givenPressure, pressureLevel, sideForce, tippingMoment } from '../../words/wind.ts'

const openPart = word<'percent'>('openPart', {
  kind: 'percent',
  label: 'open part',
  measure: 'Gaps, as a share of the face.',
  ask: 'How much of the face is open?',
  called: { names: ['open part', 'of it is open', 'part is open'] },
  possible: { least: '0 %', most: '99 %' },
})

const pressureOn = word<'choice'>('pressureOn', {
  kind: 'choice',
  label: 'what the pressure is for',
  measure: 'The whole face of the fence, gaps and all, or the wood alone.',
  ask: 'Is that pressure for the whole face of the fence, or for the wood alone?',
  called: {},
  options: {
    face: { label: 'the whole face', called: ['on the whole face', 'for the whole face', 'of the face'] },
    wood: {
      label: 'the wood alone',
      called: [
        'for the wood alone',
        'for the wood',
        'of solid wood',
        'of wood',
        'on the wood',
        'of timber',
        'of solid board',
      ],
    },
  },
  usual: {
    value: 'face',
    because: 'the wind on an open fence does not fall as its gaps grow',
    from: 'Decided here: the safe side. Factors for open fences in ASCE 7 rise as the fence gets more open.',
  },
})

export const windFromPressure = calculation({
  name: 'wind-from-pressure',
  title: 'Force on one post from a wind pressure you were given',
  answers:
    'The sideways force on one post and its moment at the ground, from a wind pressure that your office, engineer or standard gives for the whole face of the fence.',
  needs: { givenPressure, pressureLevel, pressureOn, postAbove, bayCentres, footGap, openPart },
  may: ['openPart'],
  usually: {
    footGap: {
      value: '0 in',
      metric: '0 mm',
      because: 'boards down to the ground catch the most',
      from: 'Decided here: the safe side.',
    },
  },
  gives: { sideForce, forceHeight, tippingMoment },
  headlines: ['sideForce'],
  together: { sideForce: ['sideForce', 'forceHeight', 'tippingMoment'], tippingMoment: ['tippingMoment', 'sideForce'] },
  joins: true,
  locals: { onWoodAlone: 'force' },
  lines: {
    bayForce: [
      'givenPressure * bayCentres * (postAbove - footGap)',
      'the pressure on the face that one post answers for',
    ],
    bayForceOpen: [
      'givenPressure * bayCentres * (postAbove - footGap) * (1 - openPart)',
      'the pressure on the wood of the face that one post answers for',
    ],
    workingForce: ['0.6 * bayForce', 'from strength level down to working level'],
    workingForceOpen: ['0.6 * bayForceOpen', 'from strength level down to working level'],
    sideForceOpen: ['bayForceOpen', 'already at working level'],
    sideForce: ['bayForce', 'already at working level'],
    onWoodAlone: ['sideForce * (1 - openPart)', 'were the pressure for the wood alone'],
    forceHeight: ['(postAbove + footGap) / 2', 'in the middle of the boards'],
    tippingMoment: ['sideForce * forceHeight', 'the force at the end of its arm, down to the ground'],
  },
  work({ pressureLevel, pressureOn: on, postAbove, footGap, givenPressure }, { line, has, tell, refuse, remark }) {
    if (!less(footGap, postAbove))
      refuse(
        'footGap',
        `Boards that end ${show(footGap)} above the ground do not fit under ${show(postAbove)}. Check both.`,
      )
    const isOpen = has('openPart') && on === 'wood'
    const whole = line(isOpen ? 'bayForceOpen' : 'bayForce')
    if (pressureLevel === 'strength') {
      tell('sideForce', line(isOpen ? 'workingForceOpen' : 'workingForce'))
      remark(`${show(whole)} is strength level, as you gave it. Wood and soil are checked at working level, 0.6 of it.`)
    } else tell('sideForce', line(isOpen ? 'sideForceOpen' : 'sideForce'))
    line('forceHeight')
    line('tippingMoment')
    remark(
      isOpen
        ? `The pressure of ${show(givenPressure)} is taken on the wood alone, as you told it. A pressure that is meant for a solid fence must not be cut by its gaps: ask whether yours is for the wood. Rails are not counted.`
        : `The pressure of ${show(givenPressure)} is the one you were given, taken on the whole face of the bay: on an open fence that is too much. Ask whether it is for the face or for the wood only, and whether end bays get more.`,
    )
    if (has('openPart') && on === 'face')
      remark(
        `Were it for the wood alone, the force would be ${show(line('onWoodAlone'))}: say so, and I work with that.`,
      )
    remark('This is a check, not a design: your building office decides, and an engineer designs.')
  },
  sources: [
    { fact: 'force = pressure × area, in the middle of it', from: 'Derived here from the sketch; needs no table.' },
    { fact: workingLevel.title, from: workingLevel.from },
  ],
  cautions: ['structure', 'local-code'],
  drawing: windDrawing,
  examples: [
    // 18.5 × 10 × 8 = 1480; at 4 ft: 5920
    {
      ask: 'I was given a wind pressure of 18.5 psf for a fence 8 ft high with posts 10 ft on center. What is the force on each post?',
      given: { givenPressure: '18.5 psf', postAbove: '8 ft', bayCentres: '10 ft' },
      expect: { sideForce: '1,480 lbf', forceHeight: '4 ft', tippingMoment: '5,920 lbf-ft' },
    },
    // 0.9 kPa × 2.4 × 1.8 = 3888 N; × 0.6 = 2332.8; × 0.9 m = 2099.52
    {
      ask: 'Wind pressure of 0.9 kPa, ultimate, fence 1.8 m high, posts 2.4 m apart: force on one post?',
      given: { givenPressure: '0.9 kPa', pressureLevel: 'strength', postAbove: '1.8 m', bayCentres: '2.4 m' },
      expect: { sideForce: '2,332.8 N', tippingMoment: '2,099.52 N-m' },
    },
  ],
})
