// Jobs told turn by turn, as they were last worked: posts by kind, runs and gates, what is bought and built, taken back and put again, plans side by side.
// In turn-by-turn.txt a line that begins with a sign tells: = a new job and its system, + what a turn tells, ? what is asked, < taken back, > done again,
// * kept under a name. Below stands what is said then and was not said before. Kept as in as-worked.test.ts; the sums by hand are in the files beside it.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { fenceInWords } from '../../../engine/job/in-words.ts'
import {
  countryOf,
  decide,
  type Job,
  keep,
  newJob,
  readJob,
  redo,
  turnTo,
  undo,
  writeJob,
} from '../../../engine/job/job.ts'
import { type Memo, newMemo } from '../../../engine/job/node.ts'
import { openQuestions } from '../../../engine/job/next.ts'
import { planOf } from '../../../engine/job/plan.ts'
import { compared, sideBySide } from '../../../engine/job/side-by-side.ts'
import { rivalsOf, rivalText, touched } from '../../../engine/job/touched.ts'
import { work } from '../../../engine/job/work.ts'
import type { System } from '../../../engine/quantities/quantity.ts'
import { show } from '../../../engine/quantities/show.ts'
import { inWords, tableInWords } from '../in-words.ts'
import { decisionsOf } from './fences.ts'

const file = join(import.meta.dirname, 'turn-by-turn.txt')
const indent = '    '

interface Story {
  job: Job
  memo: Memo
  turn: number
  asked: { word: string; at: string }[]
  said: ReadonlySet<string>
}

/** “posts@yard, gap@front by picket-spacing”. */
function askedIn(text: string): { wanted: Story['asked']; named: string | undefined } {
  const [words = '', named] = text.split(' by ')
  const wanted = words.split(', ').map((it) => {
    const [word = '', at = 'yard'] = it.split('@')
    return { word, at }
  })
  return { wanted, named }
}

function workedFor({ job, memo, turn }: Story, text: string): string[] {
  const { wanted, named } = askedIn(text)
  return work(job, wanted, turn, { memo, named }).flatMap(
    ({ calculation, at, places, wanted: words, outcome, answers }) => [
      `${calculation.name} at ${at}${places.length > 0 ? ` of ${places.join(' and ')}` : ''}: ${words.join(', ')}${answers ? '' : ' (apart)'}`,
      ...inWords(outcome.ok ? { ...outcome, steps: [], tables: [] } : outcome).filter(
        (it) => !/^(said|result) /.test(it),
      ),
    ],
  )
}

/** What is there to say of the job as it stands. */
const standing = ({ job, memo, turn }: Story): string[] => [
  fenceInWords(job) ?? 'no fence by its runs',
  ...(planOf(job, memo, turn)?.posts ?? []).map(
    ({ number, kind, stands }) =>
      `post ${number}: ${kind} of ${stands.map((it) => `${it.run} at ${show(it.station)}`).join(' and ')}`,
  ),
  ...openQuestions(job, memo, turn).map(
    (it) => `open: ${it.word} at ${it.at}: ${it.question} For: ${it.waits.join(', ')}.`,
  ),
]

function next(story: Story, line: string): string[] {
  const [sign, text] = [line.slice(0, 1), line.slice(2)]
  const before = story.job
  if (sign === '?') {
    story.asked = askedIn(text).wanted
    return workedFor(story, text)
  }
  if (sign === '*') story.job = keep(before, text)
  if (sign === '<') story.job = undo(before)
  if (sign === '>') story.job = redo(before)
  if (sign === '=') {
    Object.assign(story, {
      job: { ...newJob, system: text.split(': ')[1] as System },
      memo: newMemo(),
      turn: 0,
      asked: [],
    })
    story.said = new Set()
    return []
  }
  if (sign === '+') {
    story.turn++
    const told = Object.fromEntries(
      text.split(' | ').map((it) => [it.slice(0, it.indexOf(': ')), it.slice(it.indexOf(': ') + 2)]),
    )
    const decisions = decisionsOf(told, story.turn, story.job.system ?? 'imperial')
    story.job = decide(before, decisions)
    const rivals = rivalsOf(story.job, decisions, story.memo, story.turn).map(rivalText)
    return [...touched(before, story.job, story.memo, story.turn), ...rivals, ...standing(story)]
  }
  const plans = story.job.kept.map((it) => ({ name: it.name, job: turnTo(story.job, it) }))
  const all = [{ name: 'now', job: story.job }, ...plans]
  return [
    ...touched(before, story.job, story.memo, story.turn),
    ...standing(story),
    ...(sign === '*' || plans.length > 0
      ? tableInWords(sideBySide(all, compared(all, story.asked, story.memo, story.turn)))
      : []),
  ]
}

const told = readFileSync(file, 'utf8')
  .split('\n')
  .filter((it) => /^[=+?<>*]/.test(it))

it('is worked turn by turn as it was', async () => {
  const story: Story = { job: newJob, memo: newMemo(), turn: 0, asked: [], said: new Set() }
  const lines = told.flatMap((line) => {
    const said = next(story, line)
    const fresh = said.filter((it) => !story.said.has(it))
    story.said = new Set([...story.said, ...said])
    return [line, ...fresh.map((it) => `${indent}${it}`)]
  })
  await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(file)
}, 60_000)

it('is the same when it was written down and read again, at every turn', () => {
  const story: Story = { job: newJob, memo: newMemo(), turn: 0, asked: [], said: new Set() }
  for (const line of told.filter((it) => !it.startsWith('?'))) {
    next({ ...story, memo: newMemo() }, line)
    const again = readJob(JSON.parse(JSON.stringify(writeJob(story.job))))
    expect(writeJob(again)).toEqual(writeJob(story.job))
    expect(countryOf(again)).toEqual(countryOf(story.job))
  }
})
