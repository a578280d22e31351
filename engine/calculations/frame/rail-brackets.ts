// Brackets: one at each end of each rail.
import { calculation } from '../../calculation.ts'
import { brackets, bracketScrews, railsInAll, screwsEachBracket } from '../../words/framing.ts'
import { rails } from '../../words/rails.ts'
import { bays } from '../../words/bays.ts'

export const railBrackets = calculation({
  name: 'rail-brackets',
  title: 'Brackets for the rails',
  answers: 'How many brackets the rails take, and how many screws for them.',
  needs: { rails, bays, railsInAll, screwsEachBracket },
  may: ['railsInAll', 'screwsEachBracket'],
  onlyFor: { screwsEachBracket: ['bracketScrews'] },
  gives: { brackets, bracketScrews },
  headlines: ['brackets'],
  together: { brackets: ['brackets', 'bracketScrews'], bracketScrews: ['bracketScrews', 'brackets'] },
  lines: {
    brackets: ['2 * rails * bays', 'one at each end of each rail'],
    bracketsOfAll: ['2 * railsInAll', 'one at each end of each rail'],
    bracketScrews: ['brackets * screwsEachBracket', 'every hole filled'],
  },
  work(_given, { line, has, tell, remark }) {
    if (has('railsInAll')) tell('brackets', { ...line('bracketsOfAll'), kind: 'count', unit: 'bracket' })
    else line('brackets')
    if (has('screwsEachBracket')) line('bracketScrews')
    remark(
      'Rails that run across the faces of the posts take none. In treated or tannin-rich wood use brackets and screws made for it.',
    )
  },
  sources: [{ fact: 'two ends to each rail', from: 'Derived here; needs no table.' }],
  cautions: ['tools'],
  examples: [
    // 2 × 2 × 13 = 52; × 8 = 416
    {
      ask: 'How many brackets for 13 bays with 2 rails, and 8 screws per bracket?',
      given: { bays: '13', rails: '2', screwsEachBracket: '8' },
      expect: { brackets: '52 brackets', bracketScrews: '416 screws' },
    },
    // 2 × 3 × 10
    {
      ask: '10 bays, 3 rails each: how many rail brackets?',
      given: { bays: '10', rails: '3' },
      expect: { brackets: '60 brackets' },
    },
  ],
})
