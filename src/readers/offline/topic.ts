// This file is about what a topic is: the words by which something that has gone wrong is known.

/** A topic, not a phrase: what happened, and a word of each other group so near to it. “on fire” is two words, one after the other. */
export interface Topic {
  readonly note: string
  readonly happened: readonly string[]
  readonly near?: readonly (readonly string[])[]
  /** How many tokens away, before or after. */
  readonly within?: number
  /** The others come after what happened. */
  readonly after?: true
  /** Nothing between it and the first of them says that it was only close by: “hit a rock beside the gas line”. */
  readonly itself?: true
  /** Whatever stands before it: “I can smell gas”, “can I move it with a dry stick”. */
  readonly anyhow?: true
  /** In the same sentence these say that it is something else. */
  readonly unless?: readonly string[]
}
