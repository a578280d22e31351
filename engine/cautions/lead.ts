import { caution } from './caution.ts'

export const lead = caution({
  code: 'lead',
  full: 'Old paint may hold lead, most of all on work from before 1978. Do not sand, scrape dry or burn it before it has been tested.',
  from: 'from memory: US lead paint rules',
})
