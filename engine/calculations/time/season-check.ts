// The season that the coats fall into, on either half of the earth, and whether its nights are warm enough.
//
//   north   Dec Jan Feb winter · Mar Apr May spring · Jun Jul Aug summer · Sep Oct Nov autumn
//   south   Dec Jan Feb summer · Mar Apr May autumn · Jun Jul Aug winter · Sep Oct Nov spring
import { calculation } from '../../calculation.ts'
import { less } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { leastPaintTemperature } from '../../words/paint-hours.ts'
import { coatMonth, coatSeason, hemisphere, nightLow, warmEnough } from '../../words/season.ts'

const seasons = ['winter', 'spring', 'summer', 'autumn'] as const

export const seasonCheck = calculation({
  name: 'season-check',
  title: 'The season of the coats',
  answers:
    'Which season the coats fall into north or south of the equator, and whether its nights are warm enough for the can, from the night lows you give.',
  needs: { coatMonth, hemisphere, nightLow, leastPaintTemperature },
  onlyFor: {
    hemisphere: ['coatSeason'],
    coatMonth: ['coatSeason'],
    nightLow: ['warmEnough'],
    leastPaintTemperature: ['warmEnough'],
  },
  gives: { warmEnough, coatSeason },
  headlines: ['warmEnough', 'coatSeason'],
  together: { warmEnough: ['warmEnough', 'coatSeason'], coatSeason: ['coatSeason', 'warmEnough'] },
  locals: { warmer: 'temperatureDifference' },
  lines: {
    warmer: ['nightLow - leastPaintTemperature', 'how far the night stays above what the can allows'],
  },
  work({ coatMonth: month, hemisphere: half, nightLow: low, leastPaintTemperature: least }, tools) {
    const { has, line, tell, assumed, remark } = tools
    if (has('coatMonth') && has('hemisphere')) {
      const at = Object.keys(coatMonth.options ?? {}).indexOf(month)
      const north = Math.floor(((at + 1) % 12) / 3)
      const season = seasons[half === 'south' ? (north + 2) % 4 : north] as (typeof seasons)[number]
      tell('coatSeason', season)
      remark(
        `${coatMonth.options?.[month]?.label} is ${season} ${half === 'south' ? 'south' : 'north'} of the equator. ${advice[season]}`,
      )
    }
    if (has('nightLow') && has('leastPaintTemperature')) {
      line('warmer')
      const isWarm = !less(low, least)
      const isRead = !assumed('leastPaintTemperature')
      tell('warmEnough', isWarm || (isRead ? false : null))
      if (isWarm)
        remark(
          `What decides: the nights go down to ${show(low)}, and ${isRead ? 'the can allows' : 'most cans allow'} ${show(least)}.${isRead ? '' : ' Read yours, it comes first.'}`,
        )
      else if (isRead)
        remark(
          `What decides: the nights go down to ${show(low)}, colder than the ${show(least)} the can allows. The coat must be dry before the evening, or wait for warmer nights.`,
        )
      else
        remark(
          `What decides: the nights go down to ${show(low)}, and what your can allows I do not know. Many want ${show(least)}, some go colder: read it, and tell me.`,
        )
    }
    remark(
      'Dew, rain and a cold wall of wood stop a coat as well: look at the hours of the day itself before you open the can.',
    )
  },
  sources: [
    {
      fact: 'seasons by whole months, turned round south of the equator',
      from: 'As weather services count them (from memory).',
    },
    {
      fact: 'a coat needs the least temperature on its can through the night',
      from: 'common practice, no source; the can says it',
    },
  ],
  cautions: ['weather'],
  examples: [
    {
      ask: 'Is it warm enough to paint in October in the northern hemisphere, with night lows of 38 °F and paint that goes down to 50 °F?',
      given: { coatMonth: 'october', hemisphere: 'north', nightLow: '38 °F', leastPaintTemperature: '50 °F' },
      expect: { warmEnough: 'too cold at night', coatSeason: 'autumn' },
    },
    {
      ask: 'Is it warm enough to stain in November in Australia when the nights go down to 13 °C and the can says not below 10 °C?',
      given: { coatMonth: 'november', hemisphere: 'south', nightLow: '13 °C', leastPaintTemperature: '10 °C' },
      expect: { warmEnough: 'warm enough at night', coatSeason: 'spring' },
    },
  ],
})

const advice: Readonly<Record<(typeof seasons)[number], string>> = {
  spring: 'Days grow longer and warmer; wood may still be wet from the winter.',
  summer: 'Paint in the shade, and follow the sun round: hot wood dries a coat before it has spread.',
  autumn: 'Days grow short and dew comes early: stop in time for the coat to dry.',
  winter: 'A poor time for coats in most places: cold nights, short days, wet wood.',
}
