// This file is about places: where a word holds. The yard is above all; below it stand runs, with their bays and gates,
// and kinds of post, alone or several together.
//
//   yard ─┬─ front ─┬─ front/bay-1, front/bay-2 …
//         │         └─ front/gate-1 …
//         ├─ run-2 …
//         └─ corner-posts, corner-posts+gate-posts …

/** The place that holds everything: what is said of no run and no kind of post holds there. */
export const yard = 'yard'

/** The kinds of post, and what people call them. */
export const postKinds: Readonly<Record<string, readonly string[]>> = {
  'corner-posts': ['corner'],
  'gate-posts': ['gate', 'gatepost', 'hinge', 'latch'],
  'end-posts': ['end', 'terminal'],
  'line-posts': ['line', 'intermediate', 'middle', 'inline', 'in-between', 'field'],
}

/** Runs that have a name of their own, and what else people call them. Others are `run-1`, `run-2` …, in the order they were told. */
export const runNames: Readonly<Record<string, readonly string[]>> = {
  front: ['frontage'],
  back: ['rear'],
  left: [],
  right: [],
  north: ['northern'],
  south: ['southern'],
  east: ['eastern'],
  west: ['western'],
  street: ['road', 'roadside', 'sidewalk', 'pavement', 'footpath', 'verge'],
  lane: ['alley', 'alleyway'],
  drive: ['driveway'],
  house: [],
  side: [],
  long: [],
  short: [],
  garden: ['orchard'],
  neighbour: ['neighbor', "neighbour's", "neighbor's", 'neighbours', 'neighbors'],
}

/** What else a run may be called by: what it goes along. Nothing else is meant by such a word only where a fence is told side by side. */
export const landmarks: Readonly<Record<string, readonly string[]>> = {
  barn: [],
  beach: ['sea', 'shore'],
  bottom: [],
  bush: ['scrub'],
  canal: [],
  church: [],
  corral: [],
  creek: ['stream', 'brook', 'burn', 'beck', 'crick'],
  deck: ['decking'],
  ditch: ['drain', 'dyke'],
  field: [],
  forest: ['wood', 'woods', 'trees'],
  garage: ['carport'],
  gully: ['ravine'],
  hedge: [],
  highway: ['freeway'],
  kitchen: [],
  lake: ['loch'],
  meadow: ['pasture'],
  middle: [],
  paddock: [],
  park: [],
  path: ['track', 'trail', 'towpath'],
  patio: ['terrace'],
  playground: [],
  pond: ['dam'],
  pool: [],
  porch: ['verandah', 'veranda', 'stoop'],
  railway: [],
  river: [],
  school: [],
  shed: [],
  top: [],
}

/** One place for several kinds together, always in the same order: `corner-posts+gate-posts`. */
export const together = (kinds: readonly string[]): string =>
  Object.keys(postKinds)
    .filter((kind) => kinds.includes(kind))
    .join('+') || yard

/** The kinds of post that a place is; none for the yard, a run and what stands in a run. */
export const kindsIn = (place: string): string[] => (isRun(runOf(place)) || place === yard ? [] : place.split('+'))

/** The run that a place is, or that it is part of. */
export function runOf(place: string): string {
  const end = place.indexOf('/')
  return end < 0 ? place : place.slice(0, end)
}

const numbered = /^run-([1-9]\d?)$/
/** Whether a place is a run: one with a name (`front`), or `run-1` to `run-99`. */
export const isRun = (place: string): boolean =>
  Object.hasOwn(runNames, place) || Object.hasOwn(landmarks, place) || numbered.test(place)
/** A bay or gate of a run: `front/bay-3`. */
export const partOf = (run: string, part: 'bay' | 'gate', number: number): string => `${run}/${part}-${number}`
const part = /^(bay|gate)-([1-9]\d{0,3})$/

/** Whether that names a place at all: the yard, a run, a bay or gate of one, or kinds of post. */
export function isPlace(place: string): boolean {
  if (place === yard) return true
  const [run, inRun, ...more] = place.split('/') as [string, ...string[]]
  if (isRun(run)) return more.length === 0 && (inRun === undefined || part.test(inRun))
  return inRun === undefined && place !== '' && place.split('+').every((kind) => Object.hasOwn(postKinds, kind))
}

/** `corner and gate posts`, `bay 3 of the front run`, as said on the page; nothing for the yard. */
export function placeLabel(place: string): string {
  if (place === yard) return ''
  const [run, inRun] = place.split('/') as [string, string | undefined]
  if (isRun(run)) {
    const [, which, number] = part.exec(inRun ?? '') ?? []
    return which ? `${which} ${number} of ${inPlace(run)}` : numbered.test(run) ? run.replace('-', ' ') : `${run} run`
  }
  const kinds = kindsIn(place).map((kind) => kind.replace('-posts', ''))
  const last = kinds.at(-1)
  return `${kinds.length > 1 ? `${kinds.slice(0, -1).join(', ')} and ${last}` : last} posts`
}

/** The same as it stands in a sentence: “the front run”, “run 2”, “bay 3 of the front run”, “the gate posts”. */
export const inPlace = (place: string): string => {
  const label = placeLabel(place)
  return /^(run|bay|gate) \d/.test(label) ? label : `the ${label}`
}

/** Where to look for a word, nearest first: the place itself, then what holds it (its run, wider groups of posts), then the yard. */
export function looksFrom(place: string, known: readonly string[]): string[] {
  if (place === yard) return [yard]
  const run = runOf(place)
  if (isRun(run)) return place === run ? [run, yard] : [place, run, yard]
  const kinds = kindsIn(place)
  const wider = known.filter((other) => {
    const theirs = kindsIn(other)
    return other !== place && theirs.length > 0 && kinds.every((kind) => theirs.includes(kind))
  })
  return [place, ...wider.sort((a, b) => kindsIn(a).length - kindsIn(b).length), yard]
}
