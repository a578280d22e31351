// What the take-off leaves out of its sum it must name: the sums here were made by hand, beside each.
import { describe, expect, it } from 'vitest'
import { runNamed } from '../../run-named.ts'

const rowsOf = ({ outcome }: ReturnType<typeof runNamed>): string[][] =>
  outcome.ok ? (outcome.tables.find((it) => it.title === 'Take-off')?.rows.map((row) => row.map(String)) ?? []) : []

describe('what is cut from longer sticks', () => {
  const cut = { railsInAll: '38', railSticks: '19', railPrice: '$7.25', posts: '20', postPrice: '$18' }

  it('is not priced by the piece: 20 posts at $18 alone are in the sum', () => {
    const ran = runNamed('take-off', cut)
    expect(ran.shown.takeOffCost).toBe('$360.00')
    expect(ran.said).toContain('Not priced, and in no sum: rails (by the lengths they are cut from).')
    expect(rowsOf(ran).find(([what]) => what === 'rails')).toEqual([
      'rails',
      '38 rails, cut from 19 sticks',
      '',
      '',
      '',
      '',
    ])
  })

  it('costs what its cut plan costs: 360 + 174.80', () => {
    const ran = runNamed('take-off', { ...cut, railsCost: '$174.80' })
    expect(ran.shown.takeOffCost).toBe('$534.80')
    expect(ran.said).not.toContain('Not priced')
  })

  it('says the sticks of posts of several lengths once, on the last', () => {
    const ran = runNamed('take-off', { postsByLength: ['12', '27'], postLengths: ['76 in', '72 in'], postBoards: '39' })
    const posts = rowsOf(ran).filter(([what]) => what === 'posts')
    expect(posts.map(([, count]) => count)).toEqual(['12 posts', '27 posts; all posts cut from 39 sticks'])
  })
})

describe('what has no price', () => {
  it('is named, drop rods and screws too', () => {
    const { said } = runNamed('take-off', { posts: '20', postPrice: '$18', dropRods: '2', screwsToBuy: '480' })
    expect(said).toContain('Not priced, and in no sum: picket screws (how many are in a box?), drop rods.')
  })

  it('is not the screws once their boxes are known: 360 + 5 × 12', () => {
    const given = { posts: '20', postPrice: '$18', screwsToBuy: '480', screwBoxes: '5', screwBoxPrice: '$12' }
    const ran = runNamed('take-off', given)
    expect(ran.shown.takeOffCost).toBe('$420.00')
    expect(ran.said).not.toContain('Not priced')
  })

  it('is not a drop rod that was priced: 360 + 2 × 14.50', () => {
    const given = { posts: '20', postPrice: '$18', dropRods: '2', dropRodPrice: '$14.50' }
    expect(runNamed('take-off', given).shown.takeOffCost).toBe('$389.00')
  })
})
