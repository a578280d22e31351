// This file is about the revised NIOSH lifting equation: its figures, in inches and pounds.
// The metric form (23 kg, 25 cm, 75 cm, 0.003, 4.5 cm) is the same with rounded figures; ours works in inches whatever is said.

export const liftingEquation = {
  title: 'Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110',
  edition: '1994, revised 2021, https://doi.org/10.26616/NIOSHPUB94110revised092021',
  from: 'multipliers read at http://what-when-how.com/Tutorial/topic-53604/Fundamentals-and-Assessment-Tools-for-Occupational-Ergonomics-892.html and, as printed tables, at https://www.scribd.com/document/53505426/Lifting-Analysis-Worksheet',
  values: {
    most: '51 lb',
    bestReach: '10 in',
    furthestReach: '25 in',
    bestHeight: '30 in',
    highest: '70 in',
    leastTravel: '10 in',
    furthestTwist: '135 deg',
  },
  /** What a good, fair or poor grip leaves of it: with the hands below 30 in, and from there up. */
  grip: {
    good: { low: '1', high: '1' },
    fair: { low: '0.95', high: '1' },
    poor: { low: '0.9', high: '0.9' },
  },
  gripFrom: 'NIOSH 94-110, table of coupling multipliers; from memory, to be confirmed',
} as const
