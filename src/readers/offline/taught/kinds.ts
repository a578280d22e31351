// This file is about the kinds of message: what a person wants of us with it.

/** A sum, to tell something, advice, or what must be declined. */
export const kinds = ['sum', 'told', 'advice', 'off-trade', 'danger'] as const
export type MessageKind = (typeof kinds)[number]
