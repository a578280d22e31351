// This file is about cautions: short, in full where the work calls for them, one line where nothing is worked yet.
import { describe, expect, it } from 'vitest'
import { cautionFor, standingCautions } from '../../../engine/index.ts'
import { cautionCodes } from '../../../src/answer.ts'
import { cautionsNamed } from '../../../src/guard/cautions-named.ts'
import { cautionsFor } from '../../../src/guard/cautions.ts'
import { talk } from '../talk.ts'

describe('every caution', () => {
  it.each(cautionCodes.map((code) => [code]))('%s is short, and its line is one sentence', (code) => {
    const { full, standing, from } = cautionFor(code)
    expect(full.length).toBeLessThanOrEqual(470)
    expect(standing.length).toBeLessThanOrEqual(110)
    expect(standing.match(/[.!?]/g)).toEqual(['.'])
    expect(from).not.toBe('')
  })
})

describe('the cautions of an answer', () => {
  it('what cannot be worked yet has its cautions as lines, what is worked has them in full', () => {
    const cautions = cautionsFor({ full: ['tools'], lines: ['tools', 'dust'], alreadyTold: standingCautions })
    expect(cautions.map(({ code, standing }) => [code, standing])).toEqual([
      ['utilities', true],
      ['lot-line', true],
      ['local-code', true],
      ['tools', false],
      ['dust', true],
    ])
  })

  it('a question asked back carries the lines of its calculation', async () => {
    const [answer] = await talk(['how many bags of concrete do I need?'])
    expect(answer?.asks).not.toEqual([])
    expect(answer?.cautions.find((it) => it.code === 'wet-cement')).toMatchObject({ standing: true })
    expect(answer?.cautions.find((it) => it.code === 'utilities')).toMatchObject({ standing: false })
  })

  it('a plain conversion has the three lines and no more, and the next sum has them in full', async () => {
    const [first, second] = await talk([
      'What is 8 ft in millimetres?',
      'Pickets 2 1/2 in wide in a 70 in opening, no gap over 2 in: how many pickets?',
    ])
    expect(first?.cautions.map((it) => it.standing)).toEqual([true, true, true])
    expect(second?.cautions.every((it) => !it.standing)).toBe(true)
  })

  it('a plain garden gate hears nothing of pools and motors', async () => {
    const [answer] = await talk(['How far has the gate dropped?', 'how wide is the gate leaf?'])
    expect(answer?.cautions.map((it) => it.code)).not.toContain('pool')
    expect(answer?.cautions.map((it) => it.code)).not.toContain('automatic-gate')
  })
})

describe('the country that a message names', () => {
  it.each([
    ['The fence is in Ohio.', 'call 811'],
    ['The fence is in Scotland.', 'lsbud.co.uk, and'],
    ['Norway spruce pickets 90 mm wide, opening 2 m, gap at most 40 mm: how many?', 'US 811'],
    ['Virginia creeper grows on the fence. How wide is the gap?', 'US 811'],
    ['16 oz of glue for the caps of 12 posts', 'US 811'],
  ])('%s', async (said, asks) => {
    const [answer] = await talk([said])
    expect(answer?.cautions.find((it) => it.code === 'utilities')?.text).toContain(asks)
  })
})

describe('cautions that the message itself names', () => {
  it.each([
    ['how wide is the gate to the pool', ['pool']],
    ['a gate with an opener, how wide is the leaf', ['automatic-gate']],
    ['fence next to a steep drop of 3 m', ['structure']],
    ['posts on top of my wall', ['structure']],
    ['posts at the edge of the terrace', ['structure']],
    ['there are overhead power lines', ['overhead-lines']],
    ['it was painted in 1955', ['lead']],
    ['old railway sleepers', ['preserved-wood']],
  ] as const)('%s', (said, codes) => {
    expect(cautionsNamed(said)).toEqual(codes)
  })

  it.each([
    'What slope is a drop of 600 mm over a level distance of 12 m?',
    'a fence along the wall of the house',
    'electric drill for the gate post',
    'the gate dropped',
    'old picket, new paint',
    'how many bags for 8 posts',
  ])('none: %s', (said) => {
    expect(cautionsNamed(said)).toEqual([])
  })
})
