// This file is about the fit that the Wood Handbook gives for equilibrium moisture content, in degrees Fahrenheit.

export const equilibriumMoistureFit = {
  title: 'Wood Handbook, FPL-GTR-190 (2010), chapter 4, equation 4-5, coefficients for °F',
  holds: '30 to 270 °F and 5 to 95 % relative humidity, the range of the printed table 4-2',
  /** The fit differs from the printed table by up to 0.067 point, all of it the table's rounding and the coefficients'. */
  within: '0.07',
  address: 'https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/82',
} as const
