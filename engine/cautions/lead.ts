import { caution } from './caution.ts'

export const lead = caution({
  code: 'lead',
  full: 'Old paint may hold lead; its dust and smoke poison children first. Likely before 1978 in the US and 1970 in Australia; later paint may hold it too. Test first, at a laboratory if you can. Do not sand, dry-scrape, heat, burn or pressure-wash it before. Children near it: ask a doctor for a blood test.',
  standing: 'Old paint: test it for lead before you sand, scrape, heat, burn or wash it.',
  from: 'Australian government, Lead Alert (1970); US lead paint rules (1978), from memory; the blood test is common practice, no source',
})
