// When the next coat is due: the day of the last one, and how long such a finish has lasted on other people's walls and fences.
//
//   last coat ├──────── least ────────┤▒▒▒▒▒▒▒ due ▒▒▒▒▒▒▒│ most
import { calculation } from '../../calculation.ts'
import { yearsAfter } from '../../quantities/calendar.ts'
import { quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { finishLife } from '../../tables/finish-life.ts'
import { coats, surfaceTexture } from '../../words/finish.ts'
import { finishType, lastCoat, recoatBy, recoatFrom } from '../../words/recoat.ts'

export const recoatCalendar = calculation({
  name: 'recoat-calendar',
  title: 'When the next coat is due',
  answers: 'From when and by when a finish is due again, from the day of its last coat and the kind of finish.',
  needs: { lastCoat, finishType, surfaceTexture, coats },
  may: ['surfaceTexture', 'coats'],
  gives: { recoatFrom, recoatBy },
  headlines: ['recoatFrom', 'recoatBy'],
  called: ['recoat', 'due again', 'next coat', 'last coat'],
  together: { recoatFrom: ['recoatFrom', 'recoatBy'], recoatBy: ['recoatFrom', 'recoatBy'] },
  lines: {},
  work(given, { has, assumed, tell, remark, cite, refuse }) {
    const first =
      given.finishType === 'semitransparent' &&
      has('surfaceTexture') &&
      given.surfaceTexture === 'smooth' &&
      has('coats') &&
      !assumed('coats') &&
      given.coats.amount.valueOf() === 1
    const life = first ? finishLife.firstOnSmooth : finishLife.values[given.finishType]
    if (!life) throw new Error(`no service life for ${given.finishType}`)
    const [from, by] = [yearsAfter(given.lastCoat, life.least), yearsAfter(given.lastCoat, life.most)]
    if (!from || !by) return refuse('lastCoat', `${show(given.lastCoat)} is too late for my calendar. Check the year.`)
    tell('recoatFrom', from)
    tell('recoatBy', by)
    const finish = finishType.options?.[given.finishType]?.label
    remark(
      `The finish decides: ${finish} lasts ${cite(quantity(life.least, 'year'), 'shortest life', 'published')} to ${cite(quantity(life.most, 'year'), 'longest life', 'published')}${first ? ', as one coat on new smooth wood' : ' on upright wood outdoors'}. A fence is wetted from both sides, so expect the early end.`,
    )
    remark(
      'Look at it each spring, the sunny side first: when drops no longer bead on a clear or semi-transparent finish, or paint begins to chalk or crack, it is due whatever the calendar says. Waiting until it peels makes scraping of what was washing.',
    )
  },
  sources: [
    { fact: finishLife.fact, from: finishLife.from },
    { fact: finishLife.firstOnSmoothFact, from: finishLife.firstOnSmoothFrom },
    { fact: 'the sunny side first; look each spring', from: 'common practice, no source' },
  ],
  cautions: ['lead'],
  examples: [
    // 4 and 8 years
    {
      ask: 'Semi-transparent stain, last coat on 12 May 2026. When do I restain?',
      given: { lastCoat: '2026-05-12', finishType: 'semitransparent' },
      expect: { recoatFrom: 'Sunday 12 May 2030', recoatBy: 'Friday 12 May 2034' },
    },
    // 6 and 15 years from a 29 February: the 28th where the year has none
    {
      ask: 'Solid stain, stained on 29 February 2024: when is the next coat due?',
      given: { lastCoat: '2024-02-29', finishType: 'solid' },
      expect: { recoatFrom: 'Thursday 28 February 2030', recoatBy: 'Monday 28 February 2039' },
    },
  ],
})
