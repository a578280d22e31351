// This file is about a talk as it stands, made of its turns in the order they were written. None is ever changed or taken out.
import type { KeptTurn, TalkTurn } from './store.ts'

/** A turn asked anew has the number of the one it replaces: that one, and those after it, are set aside with it. */
export function asItStands(written: readonly KeptTurn[]): TalkTurn[] {
  const talk: TalkTurn[] = []
  for (const turn of written) {
    const [replaced, ...later] = talk.splice(turn.n)
    talk.push({ ...turn, aside: replaced ? [...replaced.aside, [{ ...replaced, aside: [] }, ...later]] : [] })
  }
  return talk
}
