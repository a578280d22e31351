// This file is about places, in words: `corner-posts+gate-posts` is “corner and gate posts”.

/** The place as it is said; nothing for the whole yard. */
export function placeInWords(at: string): string {
  if (at === 'yard') return ''
  const kinds = at.split('+').map((it) => it.replace(/-posts$/, ''))
  const last = kinds.pop() ?? ''
  return `${kinds.length > 0 ? `${kinds.join(', ')} and ${last}` : last} posts`
}
