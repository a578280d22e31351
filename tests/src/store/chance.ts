// This file is about chance that can be had again: the same numbers from the same seed.

/** From 0 up to 1. Mulberry32, public domain. */
export function chanceFrom(seed: number): () => number {
  let state = seed | 0
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let it = Math.imul(state ^ (state >>> 15), 1 | state)
    it = (it + Math.imul(it ^ (it >>> 7), 61 | it)) ^ it
    return ((it ^ (it >>> 14)) >>> 0) / 2 ** 32
  }
}
