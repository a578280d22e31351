import { caution } from './caution.ts'

export const dust = caution({
  code: 'dust',
  full: 'Dust from dry mix, brick, stone and concrete holds silica: it scars lungs for good. Never cut or grind these dry: water on the blade, or a vacuum on the tool, and a fitted mask (N95, P2 or FFP3). Pour low, wind at your back, and do not sweep dry. Wood dust harms too: same mask. Short of breath afterwards: see a doctor.',
  standing: 'Dust: fitted mask on, and stone and concrete are never cut dry.',
  from: 'silica: California Code of Regulations, Title 8, 1532.3, table 1, dir.ca.gov; water and mask: UK Health and Safety Executive, page on cutting paving, hse.gov.uk; grades of mask are common practice, no source',
})
