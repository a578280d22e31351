// This file is about dressed sizes of softwood lumber: what a nominal or a sawn size measures once it is planed.

/** Inches, by nominal inches. PS 20, American Softwood Lumber Standard: minimum dressed dry sizes, as reprinted at engineeringtoolbox.com, d_1270. */
export const dressedLumber: Readonly<Record<string, string>> = {
  '1': '3/4',
  '5/4': '1',
  '2': '3/2',
  '3': '5/2',
  '4': '7/2',
  '6': '11/2',
  // From memory: PS 20 takes 3/4 in off from nominal 8 up.
  '8': '29/4',
  '10': '37/4',
  '12': '45/4',
}

/** The same, planed while green: PS 20, as reprinted at the same place; from nominal 8 up from memory. */
export const greenLumber: Readonly<Record<string, string>> = {
  '1': '25/32',
  '5/4': '33/32',
  '2': '25/16',
  '3': '41/16',
  '4': '57/16',
  '6': '45/8',
  '8': '15/2',
  '10': '19/2',
  '12': '23/2',
}

interface Planed {
  /** Millimetres planed, by millimetres sawn. */
  readonly sizes: Readonly<Record<string, string>>
  readonly remark: string
  readonly fact: string
  readonly from: string
}

const british: Planed = {
  sizes: { '50': '47', '63': '60', '75': '72', '100': '97', '125': '120', '150': '145', '175': '170', '200': '195' },
  remark: 'Those are the target sizes for planed structural softwood.',
  fact: 'planed target sizes of structural softwood',
  from: 'BS EN 336, as quoted at buildersengineer.info',
}
const southern: Planed = {
  sizes: {
    '25': '19',
    '38': '35',
    '50': '45',
    '75': '70',
    '100': '90',
    '125': '120',
    '150': '140',
    '200': '190',
    '250': '240',
  },
  remark: 'Those sizes are from memory: check them at the yard.',
  fact: 'planed sizes in Australia and New Zealand',
  from: 'common practice (from memory)',
}

/** By the country's name in the word `country`. */
export const planedTimber: Readonly<Record<'uk' | 'ireland' | 'australia' | 'new-zealand', Planed>> = {
  uk: british,
  ireland: british,
  australia: southern,
  'new-zealand': southern,
}
