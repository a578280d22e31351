// This file is about loads that stick out behind a vehicle: from which length they must be marked, by country.
import type { Country } from '../by-country.ts'

export interface Projecting {
  readonly where: string
  readonly country: Country
  /** More than this behind the vehicle, and the end must be marked. */
  readonly beyond: string
  readonly how: string
  readonly from: string
}

export const projectingLoads: readonly Projecting[] = [
  {
    where: 'US',
    country: 'us',
    beyond: '4 ft',
    how: 'a red or orange flag on the end; some states allow no more than that at all',
    from: '49 CFR 393.87 (2005), for commercial vehicles; states have their own',
  },
  {
    where: 'UK',
    country: 'uk',
    beyond: '1 m',
    how: 'the end made clearly visible; past 2 m marker boards',
    from: 'askthe.police.uk, question 748, of the Construction and Use Regulations',
  },
  {
    where: 'Tasmania',
    country: 'australia',
    beyond: '1.2 m',
    how: 'a red or yellow flag by day, a red light at night; each state has its own limits, and a box trailer may allow none',
    from: 'transport.tas.gov.au, carrying loads',
  },
]
