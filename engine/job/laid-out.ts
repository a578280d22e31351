// This file is about a fence whose runs are set out: its bays and posts, which of them are alike, and what is counted over all.
//
//   1    2    3    4        posts are numbered along the fence, and shared where runs meet
//   ●────●────●────◆ 5
//        front     │        bays are numbered in their run: front/bay-1 …
//                  ● 6
import type { Outcome } from '../outcome.ts'
import { partOf } from '../places.ts'
import { gatesIn } from '../post-centres.ts'
import { equal, isList, type Quantity } from '../quantities/quantity.ts'
import type { Fence, RunTold } from './fence.ts'

export interface Bay {
  readonly place: string
  readonly run: string
  readonly number: number
  readonly centres: Quantity
  readonly opening: Quantity
}

export interface Post {
  /** Counted along the whole fence, from 1. */
  readonly number: number
  readonly kind: 'corner-posts' | 'gate-posts' | 'end-posts' | 'line-posts'
  /** The runs it stands in, and how far along each. */
  readonly stands: readonly { readonly run: string; readonly station: Quantity }[]
}

/** Bays of one run that are alike: worked once, and counted. */
export interface Stretch {
  readonly place: string
  readonly run: string
  readonly bays: readonly Bay[]
}

export interface RunLaid {
  readonly run: RunTold
  readonly bays: readonly Bay[]
  /** Whether each space between its posts is a gate. */
  readonly gateSpaces: readonly boolean[]
  readonly stations: readonly Quantity[]
}

/** One run's bays and posts, from its working. */
export function layRun(run: RunTold, outcome: Extract<Outcome, { ok: true }>): RunLaid {
  const listOf = (name: string): readonly Quantity[] => {
    const value = outcome.values.get(name)
    return isList(value) ? value : []
  }
  const [centres, openings] = [listOf('bayRow'), listOf('openings')]
  const table = outcome.tables.find((it) => it.title === 'Post centres')
  return {
    run,
    bays: centres.map((each, i) => ({
      place: partOf(run.place, 'bay', i + 1),
      run: run.place,
      number: i + 1,
      centres: each,
      opening: openings[i] as Quantity,
    })),
    gateSpaces: table ? gatesIn(table) : [],
    stations: listOf('postStations'),
  }
}

/** Bays alike in a run, but for those that something was told of by their own number. */
export function stretchesOf({ bays }: RunLaid, isApart: (place: string) => boolean): Stretch[] {
  const stretches: { place: string; run: string; bays: Bay[] }[] = []
  for (const bay of bays) {
    const alike = isApart(bay.place)
      ? undefined
      : stretches.find((it) => !isApart(it.place) && equal((it.bays[0] as Bay).centres, bay.centres))
    if (alike) alike.bays.push(bay)
    else stretches.push({ place: bay.place, run: bay.run, bays: [bay] })
  }
  return stretches
}

/** Every post once, those that two runs share among them. */
export function postsOf(fence: Fence, runs: readonly RunLaid[]): Post[] {
  const posts: { number: number; gate: boolean; shared: boolean; end: boolean; stands: Post['stands'][number][] }[] = []
  for (const [i, { run, stations, gateSpaces }] of runs.entries()) {
    const previous = runs[i - 1]?.run
    for (const [s, station] of stations.entries()) {
      const stand = { run: run.place, station }
      const gate = Boolean(gateSpaces[s] || gateSpaces[s - 1])
      const closes = fence.isClosed && i === runs.length - 1 && s === stations.length - 1 && run.meetsNext
      const shared = s === 0 && previous?.meetsNext ? posts.at(-1) : closes ? posts[0] : undefined
      if (shared) {
        shared.stands.push(stand)
        shared.gate ||= gate
        shared.shared = true
        shared.end = false
      } else {
        const end = s === 0 || s === stations.length - 1
        posts.push({ number: posts.length + 1, gate, shared: false, end, stands: [stand] })
      }
    }
  }
  return posts.map(({ number, gate, shared, end, stands }) => ({
    number,
    kind: gate ? 'gate-posts' : shared ? 'corner-posts' : end ? 'end-posts' : 'line-posts',
    stands,
  }))
}
