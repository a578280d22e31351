// This file is about messages that one reader of its own knows whole: which weight rides along, which day the work begins, how the air is.
import type { Request } from '../../request.ts'
import type { Heard } from '../reader.ts'
import { dryingAtRateIn, shrinkingByShareIn, shrinkingIn, weightAtMoistureIn } from './drying-said.ts'
import { haulingIn } from './hauling-said.ts'
import { bagsByHoleIn } from './hole-volumes-said.ts'
import { bagsOfGravelIn, bagsOfKindsIn, gravelIn, holesOfKindsIn, orderIn } from './holes-said.ts'
import { soilIn } from './loads-said.ts'
import { mixedLoadIn } from './mixed-loads-said.ts'
import { coatsClockIn, daysAtPaceIn, diggingRateIn } from './paces-said.ts'
import { cansIn, paintingByFaceIn, paintingSidesIn, paintingSticksIn } from './painting-said.ts'
import { paintingWeatherIn } from './painting-weather.ts'
import type { Token } from './stems.ts'
import { sticksOfSizesIn } from './sticks-said.ts'
import { weeksIn } from './weeks-said.ts'
import { asWorkingDaysIn, jobDaysIn, workDaysIn } from './work-days-said.ts'

const readers = [
  mixedLoadIn,
  diggingRateIn,
  coatsClockIn,
  weeksIn,
  bagsByHoleIn,
  haulingIn,
  paintingWeatherIn,
  soilIn,
  holesOfKindsIn,
  bagsOfKindsIn,
  gravelIn,
  bagsOfGravelIn,
  orderIn,
  asWorkingDaysIn,
  workDaysIn,
  jobDaysIn,
  daysAtPaceIn,
  paintingSidesIn,
  paintingByFaceIn,
  paintingSticksIn,
  cansIn,
  sticksOfSizesIn,
  dryingAtRateIn,
  shrinkingIn,
  shrinkingByShareIn,
  weightAtMoistureIn,
] as const

// Nobody tells one sum at greater length.
const longest = 600

/** The request of the first reader that knows the whole message; nothing where none does. */
export function wholeSumIn(heard: Heard, message: readonly Token[]): Request | undefined {
  if (heard.said.length > longest) return undefined
  for (const read of readers) {
    const request = read(heard, message)
    if (request) return request
  }
  return undefined
}
