// This file is about places, in words: `corner-posts+gate-posts` is “corner and gate posts”, `front/bay-3` “bay 3 of the front run”.

/** The place as it is said; nothing for the whole yard. */
export function placeInWords(at: string): string {
  if (at === 'yard') return ''
  const [run = '', part] = at.split('/')
  const named = /^run-\d+$/.test(run) ? run.replace('-', ' ') : `${run} run`
  if (part) return `${part.replace('-', ' ')} of ${/^run \d/.test(named) ? named : `the ${named}`}`
  if (!run.includes('posts')) return named
  const kinds = run.split('+').map((it) => it.replace(/-posts$/, ''))
  const last = kinds.pop() ?? ''
  return `${kinds.length > 0 ? `${kinds.join(', ')} and ${last}` : last} posts`
}

/** The same in a sentence: “the front run”, “run 2”. */
export const theBy = (place: string): string => (/^(run|bay|gate) \d/.test(place) ? place : `the ${place}`)
