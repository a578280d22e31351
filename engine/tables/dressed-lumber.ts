// This file is about dressed sizes of softwood lumber: what a nominal size measures once it is planed and dry.

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
