// This file is about the figures by which the wind on a fence is reckoned: single factors and a published fit, in the form of ASCE 7.
// The tables of that standard are its publisher's; none of them is copied here.

const reprinted = 'as reprinted in the Bangladesh National Building Code, part 6, chapter 2'

/** How much of the wind's speed pressure is left near the ground, up to 15 ft (4.6 m), by what stands round about. */
export const exposureFactors = {
  title: 'Velocity pressure exposure coefficient up to 15 ft, main structure',
  /** No higher: above it there is more wind. */
  upTo: '15 ft',
  from: `ASCE 7, ${reprinted}, table 6.2.11 (its exposures A, B and C are these B, C and D)`,
  values: { b: '0.57', c: '0.85', d: '1.03' } as Readonly<Record<string, string>>,
} as const

/** The wind hardly ever comes at its worst from the one worst side. */
export const directionFactor = {
  title: 'wind directionality factor 0.85 for solid and for open signs',
  from: `ASCE 7, ${reprinted}, table 6.2.12`,
} as const

export const gustFactor = { title: 'gust factor 0.85 for what is stiff', from: 'ASCE 7, from memory' } as const

export const speedPressure = {
  title: 'speed pressure = 0.00256 lb/ft² × speed² in mph: half of the density of air',
  from: 'ASCE 7-22, equation 26.10-1, as public programs carry it; flat ground and sea level taken',
} as const

/** Flat-sided members with air between them: the force on their own area, by the share of the whole that is solid. */
export const openShapeFactors = {
  title: 'force coefficient of flat members in an open sign: 2.0, 1.8 from 10 % solid, 1.6 from 30 to 70 % solid',
  from: `ASCE 7-16, as printed in a permit calculation, https://lfportal.everettwa.gov/WebLink/0/doc/1852116/Page79.aspx ; the same ${reprinted}, figure 6.2.22`,
  /** From this share of solid on, the factor. */
  steps: [
    { from: '30 %', factor: '1.6' },
    { from: '10 %', factor: '1.8' },
    { from: '0 %', factor: '2' },
  ],
  /** More solid than this it counts as a solid fence. */
  most: '70 %',
} as const

export const solidShapeFit = {
  title:
    'force coefficient of a solid wall, by a fit to the height of the boards over the height of the fence and the length of the run over the height of the boards, rounded to 0.05',
  from: 'ASCE 7-16, the commentary’s fit to figure 29.3-1, as carried in CIRSOC 102-2025, figure 4.4-1',
  /** Beyond these the standard’s figure keeps its last value. */
  run: { least: '0.05', most: '45' },
  boards: { least: '0.16' },
} as const

export const openingsFactor = {
  title: 'a solid wall with openings of less than 30 %: × 1 − (1 − solid share)^1.5',
  from: `ASCE 7, ${reprinted}, figure 6.2.20, note 2`,
} as const

export const forceOverMiddle = {
  title: 'a wall that stands on the ground is pushed 0.05 of its height above its middle',
  from: `ASCE 7, ${reprinted}, figure 6.2.20, note 3`,
} as const

export const leastPressure = {
  value: '16 psf',
  title: 'never less than 16 lb/ft² on the area, strength level',
  from: 'ASCE 7-16, as printed in a permit calculation, https://lfportal.everettwa.gov/WebLink/0/doc/1852116/Page79.aspx',
} as const

export const workingLevel = {
  title: 'strength level × 0.6 is working level, since ASCE 7-10',
  from: 'Crandell, Why 0.6W?, 2016, https://www.scribd.com/document/354049847/Why-the-0-6-in-wind-load-pdf',
} as const
