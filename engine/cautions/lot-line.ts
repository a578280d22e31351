import { caution } from './caution.ts'

export const lotLine = caution({
  code: 'lot-line',
  full: 'Know where the lot line is before you set a post. Grass edges, old fences and tapes from the house are not the line; only a surveyor (licensed, where your country licenses them) can say where it is. Ask about easements, and talk to the neighbour first.',
  standing: 'Lot line: a surveyor’s pins decide, not the grass or the old fence.',
  from: 'http://www.surveylaw.net/lot-surveys.html; that countries differ is common practice, no source',
})
