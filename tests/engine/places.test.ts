// What is a place of the job and what is none, what it is called, and where a word is looked for.
import { describe, expect, it } from 'vitest'
import { inPlace, isPlace, isRun, kindsIn, looksFrom, placeLabel, runOf, together } from '../../engine/places.ts'

describe('a place', () => {
  it.each([
    'yard',
    'front',
    'run-1',
    'run-99',
    'front/bay-1',
    'run-12/gate-3',
    'front/bay-9999',
    'corner-posts',
    'corner-posts+gate-posts',
  ])('%s is one', (place) => expect(isPlace(place)).toBe(true))

  it.each([
    '',
    'greenhouse',
    'run-0',
    'run-100',
    'run-01',
    'arun-1',
    'front/',
    'front/bay-0',
    'front/bay-10000',
    'front/abay-1',
    'front/bay-1x',
    'front/bay-1/gate-1',
    'front/post-1',
    'greenhouse/bay-1',
    'yard/bay-1',
    'corner-posts/bay-1',
    'corner-posts+',
    'corner-posts+greenhouse',
    'constructor',
    'toString',
  ])('“%s” is none', (place) => expect(isPlace(place)).toBe(false))

  it.each([
    ['yard', '', 'the '],
    ['front', 'front run', 'the front run'],
    ['run-2', 'run 2', 'run 2'],
    ['front/bay-3', 'bay 3 of the front run', 'bay 3 of the front run'],
    ['run-2/gate-1', 'gate 1 of run 2', 'gate 1 of run 2'],
    ['gate-posts', 'gate posts', 'the gate posts'],
    ['corner-posts+gate-posts', 'corner and gate posts', 'the corner and gate posts'],
    ['corner-posts+gate-posts+end-posts', 'corner, gate and end posts', 'the corner, gate and end posts'],
  ])('%s is called “%s”', (place, label, inSentence) => {
    expect(placeLabel(place)).toBe(label)
    expect(inPlace(place)).toBe(inSentence)
  })

  it('knows its run, and its kinds of post', () => {
    expect(runOf('front/bay-3')).toBe('front')
    expect(runOf('front')).toBe('front')
    expect(kindsIn('front/bay-3')).toEqual([])
    expect(kindsIn('front')).toEqual([])
    expect(kindsIn('yard')).toEqual([])
    expect(kindsIn('corner-posts+gate-posts')).toEqual(['corner-posts', 'gate-posts'])
    expect(isRun('front')).toBe(true)
    expect(isRun('front/bay-1')).toBe(false)
  })

  it('of several kinds has them in one order; of none it is the yard', () => {
    expect(together(['gate-posts', 'corner-posts'])).toBe('corner-posts+gate-posts')
    expect(together([])).toBe('yard')
  })

  it('is looked for nearest first', () => {
    expect(looksFrom('yard', ['corner-posts'])).toEqual(['yard'])
    expect(looksFrom('front', [])).toEqual(['front', 'yard'])
    expect(looksFrom('front/bay-1', [])).toEqual(['front/bay-1', 'front', 'yard'])
    const known = [
      'corner-posts+gate-posts+end-posts',
      'corner-posts',
      'corner-posts+gate-posts',
      'gate-posts+end-posts',
      'front',
      'yard',
    ]
    expect(looksFrom('corner-posts', known)).toEqual([
      'corner-posts',
      'corner-posts+gate-posts',
      'corner-posts+gate-posts+end-posts',
      'yard',
    ])
  })
})
