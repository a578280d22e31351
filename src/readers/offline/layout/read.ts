// This file is about layouts whose words say outright what is asked and what each number is: read by their pattern, before anything is weighed.
import type { Request } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { runPlaces } from '../../../../engine/index.ts'
import { type Marked, marked } from './marked.ts'
import { behindPin, lineFromHouse } from './from-house.ts'
import { lastBay, leftOverSplit, postsBetween } from './odd-bays.ts'
import { postCut, postOfLength, postOver, postToFrost, postUnderFrost } from './post-lengths.ts'
import { bayOnSlope, fallAgain, fallOfIncline, stepsTold, stepsTwice } from './slopes-told.ts'
import { archTold, placeOnArch } from './tops-told.ts'
import { gapAnew, gapAsWide, lotAgain, lotTold, picketsOfRun, windOpen } from './runs-told.ts'
import { corrected, leafBetween, picketsOfLength, spacingAnew } from './onward.ts'
import {
  gapOfBays,
  holeToFrost,
  kindsOfBays,
  picketsOfHeight,
  postOfParts,
  railsFromSticks,
  shortSections,
  sticksAnew,
  sticksPriced,
} from './parts.ts'
import { baysAgain, postsGiven, runsApart } from './posts.ts'
import { centresFromFace, faceOut, fenceOfYard, lineLess, setbacks } from './yards.ts'

const readers: readonly ((it: Marked) => Request | undefined)[] = [
  corrected,
  leftOverSplit,
  postsBetween,
  lastBay,
  postOver,
  postCut,
  postOfLength,
  postToFrost,
  postUnderFrost,
  lineFromHouse,
  behindPin,
  bayOnSlope,
  stepsTwice,
  stepsTold,
  fallAgain,
  fallOfIncline,
  archTold,
  placeOnArch,
  lotAgain,
  lotTold,
  picketsOfRun,
  gapAnew,
  gapAsWide,
  windOpen,
  postsGiven,
  runsApart,
  baysAgain,
  fenceOfYard,
  lineLess,
  centresFromFace,
  setbacks,
  faceOut,
  postOfParts,
  holeToFrost,
  picketsOfHeight,
  shortSections,
  kindsOfBays,
  railsFromSticks,
  gapOfBays,
  sticksPriced,
  sticksAnew,
  spacingAnew,
  picketsOfLength,
  leafBetween,
]

// A longer message is a story, and no one pattern holds it.
const longest = 500

/** The request of a message that one of the patterns holds whole; nothing in a fence that was told side by side. */
export function layoutIn(heard: Heard): Request | undefined {
  if (heard.said.length > longest || runPlaces(heard.job).length > 0) return undefined
  const it = marked(heard)
  for (const read of readers) {
    const request = read(it)
    if (request) return request
  }
  return undefined
}
