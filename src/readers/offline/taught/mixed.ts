// This file is about orders that are mixed and always the same: what is taught must come out alike everywhere.

/** Numbers from 0 to 1, by a linear congruential generator with the numbers of W. H. Press and others, Numerical Recipes, from memory. */
export function mixedBy(seed: number): () => number {
  let now = seed + 1
  return () => {
    now = (Math.imul(now, 1664525) + 1013904223) >>> 0
    return now / 2 ** 32
  }
}

/** The numbers up to a count, mixed. */
export function mixed(count: number, seed: number): number[] {
  const order = Array.from({ length: count }, (_, i) => i)
  const next = mixedBy(seed)
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(next() * (i + 1))
    ;[order[i], order[j]] = [order[j] as number, order[i] as number]
  }
  return order
}
