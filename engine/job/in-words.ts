// This file is about the fence in words: run by run as it was told, so that whoever plans sees what was understood.
import { inPlace, placeLabel } from '../places.ts'
import { isList, isQuantity, type Quantity } from '../quantities/quantity.ts'
import { show } from '../quantities/show.ts'
import type { RunTold } from './fence.ts'
import { decided, type Job } from './job.ts'
import { planOf } from './plan.ts'

/** “So far: front run 42 ft, with a gate of 4 ft; left run 30 ft. They meet at one corner.” Nothing while no run is told by itself. */
export function fenceInWords(job: Job): string | undefined {
  const fence = planOf(job)?.fence
  if (!fence?.isByRuns) return undefined
  const runs = fence.runs.map((run) => runInWords(job, run))
  const corners = fence.runs.filter((it) => it.meetsNext).length
  const apart = fence.runs.slice(0, -1).filter((it) => !it.meetsNext)
  const meets =
    fence.runs.length < 2
      ? ''
      : fence.isClosed
        ? ` The fence is closed, with ${corners} corners.`
        : ` They meet at ${corners === 0 ? 'no corner' : corners === 1 ? 'one corner' : `${corners} corners`}, in that order${apart.length > 0 ? `; ${apart.map((it) => inPlace(it.place)).join(' and ')} ${apart.length === 1 ? 'ends' : 'end'} before the next` : ''}.`
  return `So far: ${runs.join('; ')}.${meets}`
}

function runInWords(job: Job, run: RunTold): string {
  const fall = decided(job, 'fall', run.place)?.value
  const gates = run.gates.map(({ opening, start }) => {
    const [wide, at] = [opening?.value, start?.value].map((it) => (isQuantity(it) ? show(it as Quantity) : undefined))
    return `a gate${wide ? ` of ${wide}` : ''}${at ? ` at ${at}` : ''}`
  })
  const walls = [run.nearEnd === 'wall' ? 'from a wall' : '', run.farEnd === 'wall' ? 'to a wall' : ''].filter(
    (it) => it,
  )
  const pieces = decided(job, 'runPieces', run.place)?.value
  const long = run.length
    ? show(run.length.value)
    : isList(pieces)
      ? `of ${pieces.map((it) => show(it)).join(' and ')} beside its gates`
      : 'of unknown length'
  return [
    `${placeLabel(run.place)} ${long}`,
    ...walls,
    ...(gates.length > 0 ? [`with ${gates.join(' and ')}`] : []),
    ...(isQuantity(fall) ? [`falling ${show(fall)}`] : []),
  ].join(', ')
}
