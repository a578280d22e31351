// This file is about places: where a word holds. The yard is above all; kinds of post stand below it, alone or several together.

export const yard = 'yard'

/** The kinds of post, and what people call them. */
export const postKinds: Readonly<Record<string, readonly string[]>> = {
  'corner-posts': ['corner'],
  'gate-posts': ['gate', 'gatepost', 'hinge', 'latch'],
  'end-posts': ['end', 'terminal'],
  'line-posts': ['line', 'intermediate', 'middle', 'inline', 'in-between', 'field'],
}

/** One place for several kinds together, always in the same order: `corner-posts+gate-posts`. */
export const together = (kinds: readonly string[]): string =>
  Object.keys(postKinds)
    .filter((kind) => kinds.includes(kind))
    .join('+') || yard

export const kindsIn = (place: string): string[] => (place === yard ? [] : place.split('+'))

export const isPlace = (place: string): boolean =>
  place === yard || (place !== '' && kindsIn(place).every((kind) => Object.hasOwn(postKinds, kind)))

/** `corner and gate posts`, as said on the page; nothing for the yard. */
export function placeLabel(place: string): string {
  const kinds = kindsIn(place).map((kind) => kind.replace('-posts', ''))
  if (kinds.length === 0) return ''
  const last = kinds.at(-1)
  return `${kinds.length > 1 ? `${kinds.slice(0, -1).join(', ')} and ${last}` : last} posts`
}

/** Where to look for a word, nearest first: the place itself, then wider groups that hold it, then the yard. */
export function looksFrom(place: string, known: readonly string[]): string[] {
  const kinds = kindsIn(place)
  const wider = known.filter(
    (other) =>
      other !== place && other !== yard && kinds.length > 0 && kinds.every((kind) => kindsIn(other).includes(kind)),
  )
  return [place, ...wider.sort((a, b) => kindsIn(a).length - kindsIn(b).length), ...(place === yard ? [] : [yard])]
}
