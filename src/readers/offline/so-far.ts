// This file is about what is bought and built already: “I have bought 300 pickets”, “the posts on the front are set”.
import { boughtOf, yard } from '../../../engine/index.ts'
import type { Told } from '../../request.ts'
import type { Bound } from './bound.ts'
import type { Stretch } from './runs.ts'
import { stem, type Token } from './stems.ts'

const buys = new Set('bought buy purchased ordered got have picked delivered'.split(' ').map(stem))
const sure = new Set('bought purchased ordered delivered already'.split(' ').map(stem))
const byThing = new Map(
  boughtOf.flatMap((it) => (it.bought.called.things ?? []).map((thing) => [stem(thing), it.bought.name] as const)),
)

/** “I bought 300 pickets and 40 bags”: each number with the thing right after it, in a sentence that says they are bought. */
export function boughtIn(message: readonly Token[]): Bound[] {
  const stems = message.map((it) => it.stem)
  const says = stems.some((it) => sure.has(it)) || stems.some((it, at) => buys.has(it) && stems[at - 1] === 'i')
  if (!says) return []
  return message.flatMap((token, at) => {
    if (token.reading?.bare?.d !== 1n) return []
    // “300 of the 3 1/2 in pickets”: the thing stands a few words on, past no other number of its own.
    for (let i = at + 1; i <= at + 5 && i < message.length; i++) {
      const thing = byThing.get(stems[i] as string)
      if (thing) return [{ reading: token.reading, word: thing, at: yard, score: 1 }]
      if (message[i]?.reading?.bare || /^[,.;?!\n]$/.test(message[i]?.text ?? '')) break
    }
    return []
  })
}

const things: readonly { readonly option: string; readonly thing: RegExp; readonly done: RegExp }[] = [
  { option: 'pickets', thing: /^(picket|paling)$/, done: /^(hung|on|up|done|finished|nailed|screwed|fixed)$/ },
  { option: 'rails', thing: /^rail$/, done: /^(hung|on|up|in|done|finished|fixed)$/ },
  { option: 'posts', thing: /^post$/, done: /^(set|in|up|standing|done|finished|concreted|cemented)$/ },
  { option: 'holes', thing: /^(hole|posthole)$/, done: /^(dug|done|finished)$/ },
]
const verbs = /^(is|are|have|has|got|been|all|we|i|now|already)$/

/** “The posts on the front are set”: what is finished where; the furthest of several. */
export function doneIn(message: readonly Token[], stretches: readonly Stretch[], said: string): Told[] {
  return stretches.flatMap((stretch) => {
    const part = message.slice(stretch.from, stretch.to)
    const found = things
      .map(({ option, thing, done }) => {
        const of = part.findIndex((it) => thing.test(it.stem))
        const at = part.findIndex(
          (it, i) => i > of && done.test(it.stem) && part.slice(of, i).some((word) => verbs.test(word.stem)),
        )
        return { option, of, at }
      })
      .find(({ of, at }) => of >= 0 && at > of && at - of <= 9)
    const [from, to] = [part[found?.of ?? -1], part[found?.at ?? -1]]
    if (!found || !from || !to || part.some((it) => it.text === '?' || it.measured)) return []
    const quote = said.slice(from.start, to.end)
    return stretch.places.map(
      (at): Told => ({ word: 'doneSoFar', at, from: { tag: null, quote, option: found.option, usual: null } }),
    )
  })
}
