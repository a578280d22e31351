// This file is about the sums that are of no fence: a measure in other units, some together, one against another. One line each, as in the catalogue.
import type { Calculation } from './calculation.ts'
import { amountAgainst } from './calculations/plain/amount-against.ts'
import { amountAndShare } from './calculations/plain/amount-and-share.ts'
import { areasTogether } from './calculations/plain/areas-together.ts'
import { convertArea } from './calculations/plain/convert-area.ts'
import { convertDuration } from './calculations/plain/convert-duration.ts'
import { convertLength } from './calculations/plain/convert-length.ts'
import { convertMass } from './calculations/plain/convert-mass.ts'
import { convertTemperature } from './calculations/plain/convert-temperature.ts'
import { convertTemperatureDifference } from './calculations/plain/convert-temperature-difference.ts'
import { convertVolume } from './calculations/plain/convert-volume.ts'
import { durationsTogether } from './calculations/plain/durations-together.ts'
import { lengthsTogether } from './calculations/plain/lengths-together.ts'
import { massesTogether } from './calculations/plain/masses-together.ts'
import { moneyTogether } from './calculations/plain/money-together.ts'
import { numbersTogether } from './calculations/plain/numbers-together.ts'
import { soManyEach } from './calculations/plain/so-many-each.ts'
import { temperaturesTogether } from './calculations/plain/temperatures-together.ts'
import { volumesTogether } from './calculations/plain/volumes-together.ts'

export const plainSums: readonly Calculation[] = [
  convertLength,
  convertArea,
  convertVolume,
  convertMass,
  convertTemperature,
  convertTemperatureDifference,
  convertDuration,
  lengthsTogether,
  areasTogether,
  volumesTogether,
  massesTogether,
  durationsTogether,
  moneyTogether,
  temperaturesTogether,
  numbersTogether,
  amountAgainst,
  amountAndShare,
  soManyEach,
]
