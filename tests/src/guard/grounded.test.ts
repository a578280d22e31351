// A model's request is held to the message: its words are the person's, or the program's, or none.
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { isQuantity, type Job, newJob, show } from '../../../engine/index.ts'
import type { Turn } from '../../../src/answer.ts'
import { answerTo, createAssistant } from '../../../src/assistant.ts'
import { hear, jobAfter } from '../../../src/hearing.ts'
import { checkBindings } from '../../../src/guard/bindings.ts'
import { grounded } from '../../../src/guard/grounded.ts'
import { wordsOfMessage } from '../../../src/guard/spans.ts'
import { offlineReader, readOffline } from '../../../src/readers/offline/offline.ts'
import type { Act, Request, Told } from '../../../src/request.ts'
import { talk } from '../talk.ts'

const from = (it: Partial<Told['from']>): Told['from'] => ({ tag: null, quote: null, option: null, usual: null, ...it })
const told = (word: string, origin: Partial<Told['from']>, at = 'yard'): Told => ({ word, at, from: from(origin) })
const act = (name: Act['act'], more: Partial<Act> = {}): Act => ({
  act: name,
  word: null,
  at: null,
  name: null,
  between: null,
  ...more,
})
const nothing: Request = { told: [], wants: [], calculation: null, confirms: [], declines: [] }
const check = (said: string, request: Partial<Request>, job: Job = newJob) => {
  const heard = hear(said, job)
  const own = readOffline(heard)
  return checkBindings(grounded({ ...nothing, ...request }, heard, own), heard, 0, own)
}
const answer = async (said: string, request: Partial<Request>, before: readonly string[] = []) => {
  const turns: Turn[] = []
  for (const earlier of before) {
    const turn = await createAssistant(offlineReader).turn({ said: earlier, before: turns })
    turns.push(JSON.parse(JSON.stringify({ n: turns.length, said: earlier, ...turn })) as Turn)
  }
  const heard = hear(said, jobAfter(turns))
  return (await answerTo({ request: { ...nothing, ...request }, by: 'model' }, heard, turns.length)).answer
}

describe('a quotation', () => {
  it.each([
    ['posts 12 in wide', '2 in'],
    ['a gap of 3 1/2 in', '1/2 in'],
    ['a gap of 3 1/2 in', '1/2'],
    ['a gap of 3 1/2 in', '2 in'],
    ['run of 1,250 mm', '250 mm'],
    ['run of 2.75 m', '75 m'],
    ['run of 2.75 m', '2'],
    ['opening 7′ 10 3/8″', '10 3/8″'],
    ['opening 7\' 10 3/8"', "7'"],
    ['6 to 8 in deep', '8 in'],
    ['6–8 in deep', '8 in'],
    ['6 in deep', '6'],
    ['twenty five posts', 'five posts'],
    ['two and a half feet deep', 'a half feet'],
    ['two and a half feet deep', 'half feet deep'],
    ['8 or 10 ft bays', '10 ft bays'],
    ['a 2x4 rail', '4 rail'],
    ['30 in deep', '0 in deep'],
    ['unwanted', 'wanted'],
    ['½ in gap, 3½ in pickets', '½ in pickets'],
    ['3⁄8 in gap', '8 in gap'],
    ['one hundred feet', 'hundred feet'],
    ['nineteen-foot run', 'foot run'],
  ])('of “%s” that begins or ends inside a word or a quantity is none: “%s”', (said, quote) => {
    expect(wordsOfMessage(said, quote, hear(said, newJob).readings)).toBeUndefined()
  })

  it.each([
    ['posts 12 in wide', '12 in wide', '12 in wide'],
    ['Holes with No  Gravel, please', 'no gravel', 'No  Gravel'],
    ['It’s clay', "it's clay", 'It’s clay'],
    ['opening 7′ 10 3/8″ wide', '7′ 10 3/8″', '7′ 10 3/8″'],
  ])('of “%s” is given in the person’s own spelling: “%s”', (said, quote, words) => {
    expect(wordsOfMessage(said, quote, hear(said, newJob).readings)).toBe(words)
  })

  it('that holds a tagged quantity is known by its tag, so that a swap is seen', () => {
    const { held, torn } = check('holes 12 in wide and 24 in deep', {
      told: [told('holeDiameter', { quote: '24 in' }), told('holeDepth', { quote: '12 in wide' })],
    })
    expect(held).toEqual([])
    expect(torn.map((it) => it.said).sort()).toEqual(['12 in', '24 in'])
  })

  // Whole quantities only: whatever is cut out of a message and read gives a quantity of the message, or nothing.
  it('of any stretch of a message gives no quantity that the message does not hold', () => {
    const said =
      'holes 12 in wide, 3 1/2 in pickets, 1,250 mm of rail, 7′ 10 3/8″ opening, two and a half feet deep, 6 to 8 in of stone'
    const heard = hear(said, newJob)
    const known = new Set(heard.readings.flatMap((it) => [it.quantity, it.high].flatMap((q) => (q ? [show(q)] : []))))
    // What is asked of the offline reader here is nothing: quotations are held to the message itself.
    fc.assert(
      fc.property(fc.nat(said.length), fc.nat(said.length), (a, b) => {
        const quote = said.slice(Math.min(a, b), Math.max(a, b))
        for (const word of ['holeDiameter', 'picketWidth', 'opening', 'stoneDepth']) {
          const request = grounded({ ...nothing, told: [told(word, { quote })] }, heard, nothing)
          for (const { value } of checkBindings(request, heard, 0).held)
            expect(isQuantity(value) && known.has(show(value)), quote).toBe(true)
        }
      }),
      { numRuns: 2000, seed: 7 },
    )
  })
})

describe('what a model writes into a request', () => {
  const secret = 'no need to call 811, use 99 bags'
  it('is neither shown nor kept, in whatever field it stands', async () => {
    const said = 'holes 12 in wide and 24 in deep, 80 lb bags. How many bags for 4 posts?'
    const all: Partial<Request> = {
      told: [
        told(secret, { tag: 'u1' }),
        told('holeDiameter', { tag: secret }),
        told('holeDepth', { quote: secret }),
        told('bagWeight', { tag: 'u3' }, secret),
        told('holeShape', { option: secret, quote: 'holes' }),
        told('waterTest', { option: 'beads', quote: secret }),
      ],
      wants: [
        { word: 'bags', at: secret },
        { word: secret, at: 'yard' },
      ],
      calculation: secret,
      confirms: [secret],
      notes: [secret],
      acts: [
        act('keep', { name: secret }),
        act('turn-to', { name: secret }),
        act('explain', { word: secret, at: secret }),
      ],
      declines: [
        { why: 'dangerous', quote: secret },
        { why: 'not-yet', quote: secret },
      ],
    }
    const one = await answer(said, all)
    expect(JSON.stringify(one)).not.toMatch(/99 bags|no need to call/)
    expect(one.reply).toContain('I will not help with this, because it can hurt someone. Stop there')
  })

  it('as the words of a refusal is shown only where the message says it, in whole quantities', async () => {
    const said = 'can I burn 12 in offcuts of treated wood'
    const quoted = await answer(said, { declines: [{ why: 'dangerous', quote: 'weld 12 in' }] })
    expect(quoted.reply).not.toContain('weld')
    const cutShort = await answer('is 112 kinds of weed killer fine', {
      declines: [{ why: 'dangerous', quote: '12 kinds' }],
    })
    expect(cutShort.reply).not.toContain('“12 kinds”')
  })
})

describe('what the message does not say', () => {
  const before = [
    '8 posts, holes 12 in wide and 24 in deep, 80 lb bags: how many bags?',
    'and if the holes are 10 in wide?',
  ]
  it('is not undone, put in again, or kept', async () => {
    for (const it of [act('undo'), act('redo'), act('keep', { name: 'bags' })]) {
      const one = await answer('what do those bags weigh?', { acts: [it] }, before)
      expect(one.reply).not.toMatch(/Taken back|In again|Kept as/)
      expect(one.changed).toEqual([])
    }
  })
  it('is undone when the message says so, and as often as it says', async () => {
    const one = await answer('put that back', { acts: [act('undo'), act('undo'), act('undo')] }, before)
    expect(one.reply.match(/Taken back/g)).toHaveLength(1)
    const other = await answer('I changed my mind, go back to how it was', { acts: [act('undo')] }, before)
    expect(other.reply).toContain('Taken back')
    const denied = await answer('do not undo anything, just tell me the bags', { acts: [act('undo')] }, before)
    expect(denied.reply).not.toContain('Taken back')
  })
  it('is not confirmed', async () => {
    const odd = ['4 posts in holes 12 in wide and 11 ft deep, 80 lb bags: how many bags?']
    const [first] = await talk(odd)
    expect(first?.asks.map((it) => it.word)).toContain('holeDepth')
    const unsaid = await answer(
      'and what if the bags are 60 lb?',
      { confirms: ['holeDepth'], wants: [{ word: 'bags', at: 'yard' }] },
      odd,
    )
    expect(unsaid.heard.request.confirms).toEqual([])
    const asked = await answer('is that right?', { confirms: ['holeDepth'] }, odd)
    expect(asked.heard.request.confirms).toEqual([])
    const other = await answer('yes', { confirms: ['picketWidth'] }, odd)
    expect(other.heard.request.confirms).toEqual([])
    const said = await answer('yes, it really is', { confirms: ['holeDepth'] }, odd)
    expect(said.heard.request.confirms).toEqual(['holeDepth'])
  })
  it('is no usual value that was accepted, and no earlier result that was meant', () => {
    expect(check('80 lb bags, how many?', { told: [told('widestGap', { usual: true })] }).held).toEqual([])
    expect(
      check('whatever is usual for the gap', { told: [told('tapeMark', { usual: true })] }).held.map(
        (it) => it.accepted,
      ),
    ).toEqual(['usual'])
    const job: Job = {
      ...newJob,
      results: [
        {
          word: 'posts',
          at: 'yard',
          value: { kind: 'count', unit: 'post', amount: 8 } as never,
          calculation: 'x',
          ref: 'r1.posts',
        },
      ],
    }
    expect(check('holes 10 in wide', { told: [told('posts', { tag: 'r1.posts' })] }, job).held).toEqual([])
  })
  it('is no none: a limit and a question take nothing away', () => {
    expect(check('pickets no wider than 4 in', { told: [told('stoneDepth', { quote: 'no wider' })] }).held).toEqual([])
    expect(check('do I need any gravel?', { told: [told('stoneDepth', { quote: 'any gravel' })] }).held).toEqual([])
  })
  it('is no place', () => {
    const { held } = check('holes 12 in wide', { told: [told('holeDiameter', { tag: 'u1' }, 'gate-posts')] })
    expect(held).toEqual([])
  })
})

describe('swapped places', () => {
  const said = 'corner posts in holes 14 in wide, gate posts in holes 18 in wide'
  it('are as the offline reader has them, or asked about', () => {
    const right = check(said, {
      told: [told('holeDiameter', { tag: 'u1' }, 'corner-posts'), told('holeDiameter', { tag: 'u2' }, 'gate-posts')],
    })
    expect(right.held.map((it) => it.at)).toEqual(['corner-posts', 'gate-posts'])
    const swapped = check(said, {
      told: [told('holeDiameter', { tag: 'u1' }, 'gate-posts'), told('holeDiameter', { tag: 'u2' }, 'corner-posts')],
    })
    expect(swapped.held).toEqual([])
    expect(swapped.torn.map((it) => it.said)).toEqual(['14 in', '18 in'])
  })
  it.each([
    'the corner posts go in 14 in holes and the gate posts in 18 in holes',
    '14 in holes for the corner posts, 18 in holes for the gate posts',
    'for the corner posts I dug 14 in; the gate posts got 18 in wide ones',
  ])('are never taken, however loosely it is said: %s', (loosely) => {
    const { held } = check(loosely, {
      told: [told('holeDiameter', { tag: 'u1' }, 'gate-posts'), told('holeDiameter', { tag: 'u2' }, 'corner-posts')],
    })
    expect(held).toEqual([])
  })
  it('are asked about in words of the fence', async () => {
    const one = await answer(said, { told: [told('holeDiameter', { tag: 'u1' }, 'gate-posts')] })
    expect(one.asks.map((it) => it.question)).toContain(
      'You said “14 in”. Is that the hole width of the gate posts, or of the corner posts?',
    )
  })
  it.each([
    ['the gate posts are in 30 in deep holes', 'holeDepth', 'corner-posts'],
    ['the gate posts are in 30 in deep holes', 'holeDepth', 'yard'],
    ['corner holes 30 in deep', 'holeDepth', 'gate-posts'],
    ['front run 60 ft, back run 40 ft', 'runLength', 'back'],
  ])('“%s” is not taken for %s of %s', (message, word, at) => {
    const { held } = check(message, { told: [told(word, { tag: 'u1' }, at)] })
    expect(held).toEqual([])
  })
  it('of what is wanted are answered both', () => {
    const message =
      'corner posts in 14 in holes, gate posts in 18 in holes, all 30 in deep, 80 lb bags: how many bags for the 4 gate posts?'
    const { wants } = check(message, { wants: [{ word: 'bags', at: 'end-posts' }] })
    expect(wants.map((it) => it.at)).not.toContain('end-posts')
  })
  it('the same word by another quantity is asked about', async () => {
    const { held, torn } = check('holes 12 in wide and 24 in deep', { told: [told('holeDepth', { tag: 'u1' })] })
    expect(held).toEqual([])
    expect(torn).toHaveLength(1)
  })
})
