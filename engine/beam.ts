// This file is about a rail that rests on two posts: how far it sags, how hard it is bent, and which of its sizes stands.
//
//   ┃▔▔▔▔▔▔▔▔▔▔┃     evenly loaded: sag 5/384 × load × span³/(E I), bent by load × span/8
//   ┃    ▼     ┃     in the middle: sag 1/48 × load × span³/(E I), bent by load × span/4
//                    I = width × height³/12, S = width × height²/6, height taken the way it bends
import { less, type Quantity } from './quantities/quantity.ts'

/** The line for the sag of a load spread evenly over the opening. */
export const evenSag = (load: string, stiffness: string, width: string, height: string): string =>
  `5 / 384 * ${load} * opening ^ 3 / (${stiffness} * ${width} * ${height} ^ 3 / 12)`

/** The line for the sag of a load in the middle of the opening. */
export const middleSag = (load: string, stiffness: string, width: string, height: string): string =>
  `${load} * opening ^ 3 / (48 * ${stiffness} * ${width} * ${height} ^ 3 / 12)`

/** The line for the bending stress of a load spread evenly over the opening. */
export const evenStress = (load: string, width: string, height: string): string =>
  `${load} * opening / 8 / (${width} * ${height} ^ 2 / 6)`

/** The line for the bending stress of a load in the middle of the opening. */
export const middleStress = (load: string, width: string, height: string): string =>
  `${load} * opening / 4 / (${width} * ${height} ^ 2 / 6)`

/** Whether the sizes have to be turned round to lie as was said: on the flat the smaller one stands, on edge the larger. */
export const isTurned = (lies: string | undefined, depth: Quantity, thickness: Quantity): boolean =>
  lies !== undefined && (lies === 'flat') === less(thickness, depth)
