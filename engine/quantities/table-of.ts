// This file is about tables that are looked up by what a person typed: “constructor” is a word, and no table has an entry for it that we did not write.

/** The entries alone, without what every object inherits. */
export const tableOf = <T>(entries: Readonly<Record<string, T>>): Readonly<Record<string, T>> =>
  Object.assign(Object.create(null), entries)
