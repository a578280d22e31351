import { beforeAll, describe, expect, it } from 'vitest'
import type { Answer } from '../../../src/answer.ts'
import { cells, unstyled } from '../../../src/cli/lines.ts'
import { inTerminal, lookFor } from '../../../src/cli/terminal.ts'
import { talk } from '../talk.ts'

const plainly = (width: number) => ({ colour: false, width })
const squeezed = (text: string): string => text.replace(/\s/g, '')

const questions = [
  'How many pickets, 3 1/2 in wide, in a 93 in opening with gaps no wider than 2 1/2 in?',
  'How deep do I set posts for a 4 ft fence with 6 in of gravel?',
  'cut plan: 6 pieces of 45 in and 4 of 30 in from 8 ft boards',
  'how far apart should I put pickets',
  'can you design me a deck',
  'is it ok to set posts in gravel only?',
  'hello',
]
const widths = [24, 33, 40, 60, 80, 100, 120]
const answers: (readonly [said: string, answer: Answer])[] = []
beforeAll(async () => {
  for (const said of questions) answers.push([said, (await talk([said]))[0] as Answer])
})

describe('an answer in the terminal', () => {
  it('is never wider than the terminal', () => {
    for (const width of widths)
      for (const [said, answer] of answers)
        for (const line of inTerminal(said, answer, plainly(width)).split('\n'))
          expect(cells(line), `${width}: ${line}`).toBeLessThanOrEqual(width)
  })

  it('is the same sign for sign with colour and without', () => {
    for (const width of widths)
      for (const [said, answer] of answers) {
        const coloured = inTerminal(said, answer, { colour: true, width })
        expect(coloured).toContain('\u001b[1m')
        expect(unstyled(coloured)).toBe(inTerminal(said, answer, plainly(width)))
        // A pager shows each line by itself: none leaves its style on.
        for (const line of coloured.split('\n'))
          expect(line.lastIndexOf('\u001b[')).toBe(line.lastIndexOf('\u001b[22m'))
      }
  })

  it('leaves no caution out, no figure, and nothing that is asked', () => {
    for (const width of widths)
      for (const [said, answer] of answers) {
        const told = squeezed(inTerminal(said, answer, plainly(width)))
        for (const { text } of answer.cautions) expect(told).toContain(squeezed(text))
        for (const { question } of answer.asks) expect(told).toContain(squeezed(question))
        for (const { text } of answer.calls.flatMap((it) => it.results)) expect(told).toContain(squeezed(text))
        for (const { because, result } of answer.calls.flatMap((it) => it.steps)) {
          expect(told).toContain(squeezed(because.slice(1)))
          expect(told).toContain(squeezed(`= ${result}`))
        }
      }
  })

  it('sets the equals signs of a step under one another', () => {
    const [said, answer] = answers[0] as readonly [string, Answer]
    expect(inTerminal(said, answer, plainly(80))).toContain(
      [
        '  - The wood is taken out, and what is left is shared equally:',
        '      gap = (opening - pickets * picketWidth) / (pickets + 1)',
        '          = (93 in − 16 × 3 1/2 in) / (16 + 1)',
        '          = 2 3/17 in',
      ].join('\n'),
    )
  })

  it('has its drawing between the answer and how it was worked', () => {
    const [said, answer] = answers[0] as readonly [string, Answer]
    const told = inTerminal(said, answer, plainly(80))
    const drawn = told.indexOf('/\\ /\\ /\\')
    expect(drawn).toBeGreaterThan(told.indexOf('16 pickets'))
    expect(drawn).toBeLessThan(told.indexOf('── How I read it'))
  })

  it('says of a drawing for which there is no room that it is not here, and where it is', () => {
    const [said, answer] = answers[0] as readonly [string, Answer]
    const named = squeezed('Not drawn here: “Pickets in one bay, with equal gaps”.')
    expect(squeezed(inTerminal(said, answer, plainly(50)))).toContain(named)
    expect(inTerminal(said, answer, plainly(80))).not.toContain('Not drawn here')
  })

  it('repeats the answer at the end where it is long, and not where it is short or there is none', () => {
    for (const [said, answer] of answers) {
      const told = inTerminal(said, answer, plainly(80))
      const end = told.slice(told.indexOf('── In short'))
      const headlines = answer.calls.flatMap((it) => it.results).filter((it) => it.headline)
      if (headlines.length === 0) expect(told).not.toContain('In short')
      for (const { text } of headlines) expect(squeezed(end)).toContain(squeezed(text))
    }
    expect(inTerminal('hm', { reply: '**16 pickets** – pickets in one bay.' }, plainly(80))).toBe(
      '> hm\n\n16 pickets – pickets in one bay.\n',
    )
  })

  it('shows a figure that is only taken over once', () => {
    const reply = '### Working\n\n**Depth**\n\n- The deeper:\n  `depth = byRule`\n  = 24 in\n  = **24 in**'
    expect(inTerminal('q', { reply }, plainly(80)).split('\n').slice(-5)).toEqual([
      '',
      '  - The deeper:',
      '      depth = byRule',
      '            = 24 in',
      '',
    ])
  })
})

describe('colour', () => {
  it('is for a terminal only, and not where NO_COLOR is set or the terminal is dumb', () => {
    const terminal = { isTTY: true, columns: 120 }
    expect(lookFor(terminal, { TERM: 'xterm' })).toEqual({ colour: true, width: 120 })
    expect(lookFor(terminal, { TERM: 'xterm', NO_COLOR: '1' }).colour).toBe(false)
    expect(lookFor(terminal, { TERM: 'dumb' }).colour).toBe(false)
    expect(lookFor({ columns: 120 }, { TERM: 'xterm' })).toEqual({ colour: false, width: 80 })
  })

  it('or no colour, the width is what the terminal says, and 80 where it does not', () => {
    expect(lookFor({ isTTY: true }, {}).width).toBe(80)
    expect(lookFor({ isTTY: true, columns: 0 }, {}).width).toBe(80)
    expect(lookFor({ isTTY: true, columns: 7 }, {}).width).toBe(24)
  })
})
