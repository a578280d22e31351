// The measure of a front, measured: a model of our own that is right the first time, then wrong, then no model at all.
import { describe, expect, it } from 'vitest'
import type { Endpoint, Spoken } from '../../src/readers/model/speech.ts'
import { readOffline } from '../../src/readers/offline/offline.ts'
import { hear } from '../../src/hearing.ts'
import { newJob } from '../../engine/index.ts'
import { nothingYet, withCall } from '../../src/readers/model/merging.ts'
import { calledAs } from '../../src/readers/model/tools.ts'
import { allOf, frontInWords, frontMeasure, measureFront } from './front.ts'
import { callsOf, ownReading } from './own-reading.ts'
import { played, talksOf } from './reading/measure.ts'
import type { Talk } from './reading/question.ts'

const said = 'How many 3 1/2 in pickets go in a 93 in opening with gaps no wider than 2 1/2 in?'
const given = { opening: '93 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' }
const talks: Talk[] = [
  {
    talk: 'one bay',
    who: 'the test',
    turns: [{ said, expect: { work: [{ calc: 'picket-spacing', given, results: ['pickets'] }] } }],
  },
]

const usage = { prompt_tokens: 100, completion_tokens: 10, prompt_tokens_details: { cached_tokens: 60 } }
const calling = (...calls: { name: string; args: unknown }[]): Spoken => ({
  text: '',
  calls: calls.map(({ name, args }, i) => ({ id: `call0000${i}`, name, args, state: 'ok', raw: '' })),
  finish: 'calls',
  usage,
  sent: 2,
})
const fact = (word: string, tag: string) => ({ word, tag })
const want = { name: 'want', args: { words: [{ word: 'pickets' }] } }
const right = calling(
  { name: 'tell', args: { facts: [fact('picketWidth', 'u1'), fact('opening', 'u2'), fact('widestGap', 'u3')] } },
  want,
)
const asksOnly = calling({ name: 'tell', args: { facts: [fact('opening', 'u2')] } }, want)
const gone: Spoken = { text: '', calls: [], finish: 'failed', error: 'unreachable', message: 'Nothing answers.' }

function scripted(...answers: readonly Spoken[]): Endpoint {
  let at = 0
  return {
    address: 'http://model.test/v1',
    model: 'scripted',
    hasKey: false,
    say: async () => answers[Math.min(at++, answers.length - 1)] as Spoken,
  }
}

describe('a front is measured', () => {
  it('turn by turn: what came out, what it took, and where the offline reader had to read', async () => {
    const measured = await frontMeasure(scripted(right, asksOnly, gone, right), talks, 4)
    expect(measured.turns.map((it) => [it.verdict, it.chosen, it.argued, it.reads, it.fellBack, it.failed])).toEqual([
      ['right', true, true, 1, false, 0],
      ['asked', true, false, 1, false, 0],
      ['right', true, true, 1, true, 1],
      ['right', true, true, 1, false, 0],
    ])
    expect(measured.turns[0]).toMatchObject({ sent: 2, resent: 1, tokens: { in: 100, out: 10, cached: 60 } })
    expect(measured).toMatchObject({ passOnce: 3 / 4, passFour: 0 })
    const words = frontInWords(measured)
    expect(words).toContain('the model “scripted” at http://model.test/v1: 1 talks, 4 times, 4 turns')
    expect(words).toContain('calculation chosen 100.0 %, arguments right 75.0 %')
    expect(words).toContain('tokens in 300, of them cached 180; out 30')
  })

  // C(3,2)/C(4,2) = 3/6; C(5,4)/C(8,4) = 5/70
  it('by the chance that k of n playings are all right', () => {
    expect(allOf(2, 3, 4)).toBeCloseTo(1 / 2)
    expect(allOf(4, 5, 8)).toBeCloseTo(5 / 70)
    expect(allOf(4, 3, 8)).toBe(0)
  })

  it('only where a model is named', async () => {
    await expect(measureFront(['front'], {})).rejects.toThrow('Name a model first: set PLUMBPOST_MODEL')
    await expect(measureFront(['front', '--times', 'x'], { PLUMBPOST_MODEL: 'm' })).rejects.toThrow('a whole number')
  })
})

describe('a model that reads as the offline reader', () => {
  const some = talksOf('tests/bench/reading', 'first').slice(0, 15)

  it('hands over calls that make up the same request again', () => {
    for (const { turns } of some) {
      const request = readOffline(hear(turns[0]?.said ?? '', newJob))
      const again = callsOf(request).reduce((all, { name, args }) => {
        const called = calledAs(name, args)
        if ('wrong' in called) throw new Error(called.wrong)
        return withCall(all, called)
      }, nothingYet)
      expect(again).toMatchObject({ told: request.told, wants: request.wants, calculation: request.calculation })
    }
  })

  it('comes to the same verdicts as the offline reader itself', async () => {
    const [without, withModel] = [await played(some), await played(some, ownReading().assistant)]
    const verdicts = (all: typeof without) => all.map((it) => `${it.talk} ${it.turn}: ${it.verdict}`)
    expect(verdicts(withModel)).toEqual(verdicts(without))
  })
})
