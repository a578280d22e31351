// This file is about loads that stick out behind a vehicle: from which length they must be marked, by country.
export interface Projecting {
  readonly where: string
  /** More than this behind the vehicle, and the end must be marked. */
  readonly beyond: string
  readonly how: string
  readonly from: string
}

export const projectingLoads: readonly Projecting[] = [
  {
    where: 'US',
    beyond: '4 ft',
    how: 'a red or orange flag of 18 in by 18 in on the end; some states allow no more than that at all',
    from: '49 CFR 393.87 (2005), for commercial vehicles, read as a forum quotes it; states have their own',
  },
  {
    where: 'UK',
    beyond: '1 m',
    how: 'the end made clearly visible; past 2 m marker boards',
    from: 'askthe.police.uk, question 748, of the Construction and Use Regulations',
  },
  {
    where: 'Tasmania',
    beyond: '1.2 m',
    how: 'a red or yellow flag of 30 cm by 30 cm by day, a red light at night; each state has its own limits, and a box trailer may allow none',
    from: 'transport.tas.gov.au, carrying loads',
  },
]
