// This file is about the classes that treated wood is sold in, by country: which one belongs to a part of a fence.

export interface Classes {
  /** Clear of the ground; in the ground, or so close to it that it stays damp; and in the ground where the place is hard on wood. */
  readonly clear: string
  readonly ground: string
  readonly severe: string
  readonly system: string
  readonly from: string
}

const british: Classes = {
  clear: 'use class 3',
  ground: 'use class 4',
  severe: 'use class 4',
  system: 'the use classes of EN 335 and BS 8417',
  from: 'EN 335 and BS 8417, as timber merchants and treaters quote them, the standards themselves not read: fence rails are use class 3 (3.2 when not painted), fence posts use class 4',
}

const european: Classes = {
  ...british,
  system: 'the use classes of EN 335',
  from: 'EN 335, as trade texts quote it, the standard itself not read: wood clear of the ground is use class 3, fence posts use class 4',
}

/** By the country's name in the word `country`. */
export const preservativeClasses: Readonly<Record<string, Classes>> = {
  us: {
    clear: 'UC3B',
    ground: 'UC4A',
    severe: 'UC4B',
    system: 'the use categories of AWPA',
    from: 'AWPA use categories, as a trade association gives them: fence pickets UC3B, fence posts UC4A, severe ground UC4B, https://www.treatedwood.com/learn/uses-for-treated-wood',
  },
  canada: {
    clear: 'UC3.2',
    ground: 'UC4.1',
    severe: 'UC4.2',
    system: 'the use categories of CSA O80',
    from: 'CSA O80 (from memory, to be confirmed at the yard)',
  },
  uk: british,
  ireland: british,
  europe: european,
  australia: {
    clear: 'H3',
    ground: 'H4',
    severe: 'H5',
    system: 'the hazard classes of AS 1604',
    from: 'AS 1604, as treaters quote it, the standard itself not read: fence palings H3, fence posts H4, critical wood in the ground H5',
  },
  'new-zealand': {
    clear: 'H3.2',
    ground: 'H4',
    severe: 'H5',
    system: 'the hazard classes of NZS 3640',
    from: 'NZS 3640, as the preservation council gives it: fencing H3.2, fence posts H4, severe wet ground H5, http://nztpc.co.nz/hazardClassDescription.php',
  },
}
