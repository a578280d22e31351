// This file is about the talks that the reader learns whole fences from: what people say who tell their fence side by side.
//
//   === L round the herb garden
//   posts, bays | From the shed {6.2 metres|stretch} to the {corner|corner}, {4 and a half|runLength} along the {back|name}, …
//   - | no sorry the {back|name} is {5 m|runLength} not {-|4 and a half}
//
// `runLength` is a whole side, `stretch` a piece of one between two things in a walk; `gateBare` is a gate spoken of without a width, `gateAt:…` says where it is;
// `again` is as long as the side before, `times` says how many sides a length is told of. The rest are words of the vocabulary.
import { type Mark, unmarked } from '../taught/sentences.ts'

export interface Walk {
  readonly said: string
  readonly marks: readonly Mark[]
  /** Results that it asks for, by their words. */
  readonly asks: readonly string[]
  readonly isFirst: boolean
}

/** Reads the talks as they are written down. Throws at a line that is none: the file is ours. */
export function walksIn(text: string): Walk[] {
  let isFirst = true
  return text.split('\n').flatMap((line, at): Walk[] => {
    if (line.trim() === '' || line.startsWith('#')) return []
    if (line.startsWith('===')) {
      isFirst = true
      return []
    }
    const bar = line.indexOf('|')
    if (bar < 0) throw new Error(`line ${at + 1} is no turn: ${line}`)
    const asked = line.slice(0, bar).trim()
    const walk = {
      ...unmarked(line.slice(bar + 1).trim()),
      asks: asked === '-' ? [] : asked.split(/\s*,\s*/),
      isFirst,
    }
    isFirst = false
    return [walk]
  })
}
