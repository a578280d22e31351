// This file is about the calculations of gates. One line each, as in the catalogue.
import type { Calculation } from './calculation.ts'
import { gateForPassage } from './calculations/gates/gate-for-passage.ts'
import { gateLeaf } from './calculations/gates/gate-leaf.ts'
import { picketsOnLeafOf } from './calculations/gates/pickets-on-leaf.ts'
import { leafDiagonalOf } from './calculations/gates/leaf-diagonal.ts'
import { picketsOnGates } from './calculations/gates/pickets-on-gates.ts'
import { gateHardware } from './calculations/gates/gate-hardware.ts'
import { insideOfFrame } from './calculations/gates/inside-of-frame.ts'
import { gateBrace } from './calculations/gates/gate-brace.ts'
import { gateWeight } from './calculations/gates/gate-weight.ts'
import { gatePull } from './calculations/gates/gate-pull.ts'
import { gateSag } from './calculations/gates/gate-sag.ts'
import { takeUpForDrop } from './calculations/gates/take-up-for-drop.ts'
import { hingePackingOf } from './calculations/gates/hinge-packing.ts'
import { gateSwing } from './calculations/gates/gate-swing.ts'
import { gateOverRise } from './calculations/gates/gate-over-rise.ts'
import { gatePostLean } from './calculations/gates/gate-post-lean.ts'

export const gateSums: readonly Calculation[] = [
  gateForPassage,
  gateLeaf,
  picketsOnLeafOf,
  leafDiagonalOf,
  picketsOnGates,
  gateHardware,
  insideOfFrame,
  gateBrace,
  gateWeight,
  gatePull,
  gateSag,
  takeUpForDrop,
  hingePackingOf,
  gateSwing,
  gateOverRise,
  gatePostLean,
]
