import { digService } from '../by-country.ts'
import { caution } from './caution.ts'

export const utilities = caution({
  code: 'utilities',
  full: 'A cut gas pipe or cable can kill. Before any hole, post, stake or edging trench ask where the lines are buried, and wait for every answer: {{where}}. Private lines are in none of them. Dig by hand near any line. Gas smelt or heard: away on foot, no flame, switch or engine, then ring.',
  where: digService,
  standing: 'Buried lines: have them located and marked before you dig.',
  from: 'US: https://digline.com/utility-color-codes; Canada: novascotia.ca and healthpei.ca (811 is a health line); byda.com.au; chorus.co.nz (beforeUdig); lsbud.co.uk; rules differ by place; gas: energysafe.vic.gov.au and pgesafetyeducation.com',
})
