// This file is about what soil is presumed to bear sideways, and the code’s formula for a post in it.

export const soilBearing = {
  title: 'Presumptive lateral bearing, for each foot below grade, by class of soil',
  from: 'International Building Code 2012, table 1806.2, as reprinted at http://what-when-how.com/Tutorial/topic-10034nh/Geotechnical-Earthquake-Engineering-484.html',
  values: {
    bedrock: '1200 psf/ft',
    'soft-rock': '400 psf/ft',
    gravel: '200 psf/ft',
    sand: '150 psf/ft',
    clay: '100 psf/ft',
  } as Readonly<Record<string, string>>,
} as const

export const poleFormula = {
  free: 'not held at the ground: d = 0.5 A (1 + √(1 + 4.36 h/A)), A = 2.34 P/(S1 b), S1 at a third of the depth; solved here as s b d³ = 7.02 P (d + 1.09 h)',
  held: 'held at the ground by a rigid slab: d² = 4.25 P h/(S3 b), S3 at the full depth',
  from: 'International Building Code, 1807.3.2.1 and 1807.3.2.2, text at https://up.codes/s/design-criteria ; the form of the equations by four worked answers that others printed',
  most: '12 ft',
} as const

export const doubling = {
  title:
    'twice the presumed value for isolated poles, such as flagpoles and signs, that half an inch of movement at the ground does not harm',
  from: 'International Building Code, 1806.3.4 (1804.3.1 before), as engineers quote it, the code itself not read; the factor 2 as used in a printed flagpole calculation',
} as const
