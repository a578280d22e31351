// What a change touches that is bought or built. A run of 48 ft in bays of 8 ft has 6 bays and 7 posts; one of 56 ft has 7 and 8; one of 40 ft has 5 and 6.
import { describe, expect, it } from 'vitest'
import { decide, type Job } from '../../../engine/job/job.ts'
import { newMemo } from '../../../engine/job/node.ts'
import { boughtSoFar, rivalsOf, rivalText, touched } from '../../../engine/job/touched.ts'
import { show } from '../../../engine/quantities/show.ts'
import { decisionsOf, jobOf, planFrom, type Told } from './fences.ts'

const run = { 'runLength@front': '48 ft', widestBay: '8 ft', postWidth: '3 1/2 in', postAbove: '4 ft' }

/** What is said when that is told next. */
function saidAfter(told: Told, change: Told): string[] {
  const before = jobOf(told)
  return touched(before, decide(before, decisionsOf(change, 1)), newMemo(), 1)
}

describe('what was bought', () => {
  it('stands beside what the fence takes, and what is open may be less than none', () => {
    const open = (bought: string) =>
      boughtSoFar(planFrom(jobOf({ ...run, postsBought: bought }))).map((it) => [
        it.word,
        show(it.bought),
        show(it.needed),
        show(it.open),
      ])
    expect(open('5')).toEqual([['posts', '5 posts', '7 posts', '2 posts']])
    expect(open('9')).toEqual([['posts', '9 posts', '7 posts', '−2 posts']])
  })

  it('is left out where nothing was bought of it, and where it is not known yet what the fence takes', () => {
    expect(boughtSoFar(planFrom(jobOf(run)))).toEqual([])
    expect(boughtSoFar(planFrom(jobOf({ ...run, picketsBought: '50' })))).toEqual([])
  })
})

describe('a change', () => {
  it.each([
    ['5', 'You have 5 posts of the 8 posts the fence takes: 3 posts still to buy.'],
    ['7', 'You have 7 posts of the 8 posts the fence takes: 1 post still to buy.'],
    ['8', 'You have 8 posts of the 8 posts the fence takes.'],
    ['9', 'You have 9 posts, and the fence takes 8 posts now: 1 post too many.'],
  ])('to 56 ft, with %s posts bought, says what is still to buy', (postsBought, said) => {
    expect(saidAfter({ ...run, postsBought }, { 'runLength@front': '56 ft' })).toEqual([said])
  })

  it('that leaves what is bought and needed as it was says nothing; one of what is bought does', () => {
    expect(saidAfter({ ...run, postsBought: '5' }, { picketWidth: '3 1/2 in' })).toEqual([])
    expect(saidAfter({ ...run, postsBought: '5' }, { postsBought: '6' })).toEqual([
      'You have 6 posts of the 7 posts the fence takes: 1 post still to buy.',
    ])
    const job = jobOf({ ...run, postsBought: '5' })
    expect(touched(job, job, newMemo(), 1)).toEqual([])
  })

  it('before there is any run, or after the runs are gone, says nothing', () => {
    expect(saidAfter({ postsBought: '5' }, { 'runLength@front': '48 ft' })).toEqual([])
  })

  const again = (what: string): string => `On the front run ${what} done already: this would be work done again there.`
  it.each([
    ['holes', { 'runLength@front': '56 ft' }, [again('the holes are')]],
    ['posts', { 'runLength@front': '56 ft' }, [again('the holes and the posts are')]],
    ['holes', { postLength: '8 ft' }, []],
    ['posts', { postLength: '8 ft' }, [again('the posts are')]],
    ['rails', { postLength: '8 ft' }, [again('the posts are')]],
    ['posts', { picketWidth: '3 1/2 in' }, []],
  ] as const)('where %s are done and %j is told says what is done again', (doneSoFar, change, said) => {
    expect(saidAfter({ ...run, 'doneSoFar@front': doneSoFar }, change)).toEqual(said)
    expect(saidAfter({ ...run, doneSoFar }, change)).toEqual(said)
  })

  it('on one run is no work done again on the other', () => {
    const two = { ...run, 'runLength@left': '40 ft', 'doneSoFar@front': 'posts', 'doneSoFar@left': 'holes' }
    expect(saidAfter(two, { 'runLength@left': '48 ft' })).toEqual([
      'On the left run the holes are done already: this would be work done again there.',
    ])
  })
})

describe('what was told beside what is worked', () => {
  const rivals = (job: Job): string[] => rivalsOf(job, job.decisions, newMemo(), 0).map(rivalText)

  // 48 ft between the centres of the end posts in 6 bays: 96 in from centre to centre, 92 1/2 in between the faces.
  it.each([
    [
      { 'opening@front/bay-1': '90 in' },
      ['You said 90 in for the opening; the run as it is set out gives 92 1/2 in. I use yours, 2 1/2 in less.'],
    ],
    [
      { 'opening@front/bay-1': '94 in' },
      ['You said 94 in for the opening; the run as it is set out gives 92 1/2 in. I use yours, 1 1/2 in more.'],
    ],
    [{ 'opening@front/bay-1': '92 1/2 in' }, []],
    [
      { 'bayCentres@front/bay-2': '97 in' },
      ['You said 97 in for the bay, centre to centre; the run as it is set out gives 96 in. I use yours, 1 in more.'],
    ],
    [{ 'picketWidth@front/bay-1': '3 1/2 in' }, []],
  ])('%j: what was told governs, and the other is named', (told, said) => {
    expect(rivals(jobOf({ ...run, ...told } as Told))).toEqual(said)
  })
})
