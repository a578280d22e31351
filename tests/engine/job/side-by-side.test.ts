// Plans side by side, and what to settle next: every figure shown is some plan's own.
import { describe, expect, it } from 'vitest'
import { vocabulary } from '../../../engine/catalogue.ts'
import { showValue } from '../../../engine/job/explain.ts'
import { decide, type Job } from '../../../engine/job/job.ts'
import { assumptionsOf, openQuestions } from '../../../engine/job/next.ts'
import { newMemo, type Plan } from '../../../engine/job/node.ts'
import { looksAt, ownName } from '../../../engine/job/parts.ts'
import { compared, sideBySide } from '../../../engine/job/side-by-side.ts'
import { toNumber } from '../../../engine/quantities/amount.ts'
import { isQuantity, type Quantity, type Value } from '../../../engine/quantities/quantity.ts'
import { declaredValue } from '../../../engine/words/value.ts'
import type { Word } from '../../../engine/words/word.ts'
import { decisionsOf, jobOf, planFrom, type Told } from './fences.ts'

const fence: Told = {
  'runLength@front': '60 ft',
  'runLength@right': '84 ft',
  widestBay: '8 ft',
  'gateOpening@front': '42 in',
  picketWidth: '3 1/2 in',
  widestGap: '2 1/2 in',
  picketLength: '42 in',
  postAbove: '4 ft',
  holeDiameter: '10 in',
  bagWeight: '60 lb',
  picketPrice: '$3.19',
  bagPrice: '$6.75',
}
const with_ = (job: Job, told: Told): Job => decide(job, decisionsOf(told, 1))
const valueIn = (plan: Plan, word: string): Value | undefined => {
  const node = plan.node(word, 'yard')
  return node?.outcome.ok ? node.outcome.values.get(ownName(node.part, word)) : undefined
}
const isKnown = (plan: Plan): string[] => looksAt.filter((word) => valueIn(plan, word) !== undefined)

describe('plans side by side', () => {
  const narrow = jobOf(fence)
  const wide = with_(narrow, { picketWidth: '5 1/2 in' })
  const bare = jobOf({ 'runLength@front': '60 ft', widestBay: '8 ft' })
  const plans = [
    { name: 'narrow', job: narrow },
    { name: 'wide', job: wide },
    { name: 'bare', job: bare },
  ]

  it('each line holds what each plan comes to when it is worked alone', () => {
    const lines = compared(plans, [], newMemo(), 1)
    expect(lines.length).toBeGreaterThan(8)
    for (const { word, values } of lines)
      expect(values, word).toEqual(plans.map(({ job }) => valueIn(planFrom(job, newMemo(), 1), word)))
    // Every line that some plan can give is there.
    const known = new Set(plans.flatMap(({ job }) => isKnown(planFrom(job))))
    expect(lines.map((it) => it.word)).toEqual(looksAt.filter((it) => known.has(it)))
  })

  it('the table shows them as the plan does, what differs first, and says what is not known yet', () => {
    const lines = compared(plans, [], newMemo(), 1)
    const { columns, rows } = sideBySide(plans, lines)
    expect(columns.map((it) => it.label)).toEqual(['what', 'narrow', 'wide', 'bare'])
    for (const { word, values } of lines) {
      const label = (vocabulary.get(word) as Word).label
      const row = rows.find(([what]) => what === label || what === `${label} (alike)`)
      expect(row?.slice(1)).toEqual(
        values.map((it) => (it === undefined ? 'not known yet' : showValue(vocabulary.get(word) as Word, it))),
      )
    }
    const alike = rows.map(([what]) => String(what).endsWith('(alike)'))
    expect(alike).toEqual(alike.toSorted((a, b) => Number(a) - Number(b)))
  })

  // 3 1/2 in: 37 bays' worth of pickets; 5 1/2 in takes fewer; posts, bags and rails do not change
  it('what does not hang on the difference is alike', () => {
    const { rows } = sideBySide(plans.slice(0, 2), compared(plans.slice(0, 2), [], newMemo(), 1))
    const alike = rows.map(([what]) => String(what)).filter((it) => it.endsWith('(alike)'))
    for (const word of ['posts', 'bays', 'bags', 'railsInAll'])
      expect(alike).toContain(`${(vocabulary.get(word) as Word).label} (alike)`)
    expect(alike).not.toContain(`${(vocabulary.get('picketsToBuy') as Word).label} (alike)`)
  })

  it('what was asked last is held beside the rest, once', () => {
    const asked = [
      { word: 'concrete', at: 'yard' },
      { word: 'bags', at: 'yard' },
    ]
    const words = compared(plans.slice(0, 2), asked, newMemo(), 1).map((it) => it.word)
    expect(words.filter((it) => it === 'bags')).toHaveLength(1)
    expect(words.at(-1)).toBe('concrete')
  })
})

describe('what to settle next', () => {
  /** Plain answers, as somebody would give them. */
  const answers: Readonly<Record<string, string>> = {
    runLength: '60 ft',
    widestBay: '8 ft',
    picketWidth: '3 1/2 in',
    widestGap: '2 1/2 in',
    picketLength: '42 in',
    postAbove: '4 ft',
    holeDiameter: '10 in',
    bagYield: '0.45 ft3',
    bagWeight: '60 lb',
    coverageFirst: '300 ft2/gal',
    postPrice: '$18',
    railPrice: '$7',
    picketPrice: '$3',
    bagPrice: '$6',
    species: 'southern-pine',
    moistureNow: '19 %',
    railDepth: '3 1/2 in',
    railThickness: '1 1/2 in',
    stonePrice: '$41',
    gateOpening: '42 in',
  }

  it('each question is asked once, the one that most waits for first', () => {
    const questions = openQuestions(jobOf({ 'runLength@front': '60 ft', widestBay: '8 ft' }), newMemo(), 1)
    const waits = questions.map((it) => it.waits.length)
    expect(waits.length).toBeGreaterThan(2)
    expect(waits).toEqual(waits.toSorted((a, b) => b - a))
    expect(new Set(questions.map((it) => `${it.word}@${it.at}`)).size).toBe(questions.length)
    for (const it of questions) expect(it.question).toMatch(/\?$|\.$/)
  })

  it('answered one after the other they lead to a fence that is known, and no question comes back', () => {
    let job = jobOf({ 'runLength@front': '60 ft', 'runLength@right': '40 ft', 'gates@front': '1' })
    const asked = new Set<string>()
    const silent: string[] = []
    for (let turn = 1; turn < 30; turn++) {
      const [top] = openQuestions(job, newMemo(), turn)
      if (!top) break
      const place = `${top.word}@${top.at}`
      expect(asked, 'asked again').not.toContain(place)
      asked.add(place)
      const answer = answers[top.word]
      expect(answer, `${top.question} (${top.word})`).toBeDefined()
      const before = isKnown(planFrom(job))
      job = decide(job, decisionsOf({ [place]: answer as string }, turn))
      const after = isKnown(planFrom(job))
      // The area of what is known so far waits for the length of the pickets as soon as there are any.
      const lost = before.filter((it) => !after.includes(it))
      expect(
        lost.filter((it) => it !== 'finishArea'),
        place,
      ).toEqual([])
      if (after.length === before.length) silent.push(place)
    }
    expect(openQuestions(job, newMemo(), 30)).toEqual([])
    expect(isKnown(planFrom(job))).toEqual(
      expect.arrayContaining(['bays', 'posts', 'picketsToBuy', 'bags', 'finishCans']),
    )
    // A word that only opens the way to the next question may leave all lines as they were; few do.
    expect(silent.length).toBeLessThan(asked.size / 2)
  })

  it('the first answer makes at least one more line known', () => {
    const { picketWidth: _, ...rest } = fence
    for (const lacking of [rest, { ...rest, picketWidth: '3 1/2 in' }]) {
      const job = jobOf(lacking)
      const [top] = openQuestions(job, newMemo(), 1)
      const answer = answers[top?.word ?? '']
      expect(answer, top?.question).toBeDefined()
      const next = decide(job, decisionsOf({ [`${top?.word}@${top?.at}`]: answer as string }, 1))
      expect(isKnown(planFrom(next)).length).toBeGreaterThan(isKnown(planFrom(job)).length)
    }
  })

  it('nothing is asked that was told, or that the fence counts itself', () => {
    const job = jobOf({ ...fence, 'runLength@lane': '900 ft' })
    for (const { word, at, question } of openQuestions(job, newMemo(), 1)) {
      expect(
        job.decisions.some((it) => it.word === word && it.at === at),
        word,
      ).toBe(false)
      expect(vocabulary.get(word)?.unsaid, `${word}: ${question}`).not.toBe(true)
      expect(question).not.toMatch(/really/)
    }
  })

  it('assumptions stand by how much each moves, and each says what it was tried with', () => {
    const job = jobOf(fence)
    const found = assumptionsOf(job, newMemo(), 1)
    expect(found.length).toBeGreaterThan(5)
    // What moves the bill stands before what moves something else; in each the greatest share first.
    const ofBill = found.map((it) => it.moves?.word === 'takeOffCost')
    expect(ofBill).toEqual(ofBill.toSorted((a, b) => Number(b) - Number(a)))
    for (const isOfBill of [true, false]) {
      const shares = found.filter((_, i) => ofBill[i] === isOfBill).map((it) => it.moves?.share ?? 0)
      expect(shares).toEqual(shares.toSorted((a, b) => b - a))
    }
    const plan = planFrom(job)
    for (const { word, value, tried, usual, moves } of found) {
      const of = vocabulary.get(word) as Word
      expect(
        job.decisions.some((it) => it.word === word),
        word,
      ).toBe(false)
      const declared = of.kind === 'choice' ? usual.value : declaredValue(of, usual.value, 'imperial')
      expect(showValue(of, value)).toBe(showValue(of, declared))
      if (!moves) continue
      expect(moves.before).toEqual(valueIn(plan, moves.word))
      const other = planFrom(decide(job, [{ word, at: 'yard', value: tried, turn: 1 }]))
      expect(moves.after, word).toEqual(valueIn(other, moves.word))
      const [before, after] = [moves.before, moves.after] as [Quantity, Quantity]
      if (isQuantity(before))
        expect(moves.share).toBeCloseTo(Math.abs(toNumber(after.amount) / toNumber(before.amount) - 1), 9)
    }
  })
})
