// This file is about making one request of a model’s calls: several in one reply, and those of a repair on top of the ones that stood.
import type { Act, Request, Told } from '../../request.ts'
import type { Called } from './tools.ts'

export const nothingYet: Request = {
  told: [],
  wants: [],
  calculation: null,
  confirms: [],
  notes: [],
  acts: [],
  either: [],
  declines: [],
}

/** The request with one more call in it. What is there already is not put in twice. */
export function withCall(request: Request, { name, args }: Called): Request {
  const acts = (act: Pick<Act, 'act'> & Partial<Act>): Request => ({
    ...request,
    acts: together(request.acts ?? [], [{ word: null, at: null, name: null, between: null, ...act }]),
  })
  switch (name) {
    case 'tell':
      return {
        ...request,
        told: together(
          request.told,
          args.facts.map((it) => toldOf(it.word, it.at, it)),
        ),
        confirms: together(request.confirms, args.confirms ?? []),
      }
    case 'want':
      return {
        ...request,
        wants: together(
          request.wants,
          args.words.map((it) => ({ word: it.word, at: placeOf(it.at) })),
        ),
        calculation: args.calculation || request.calculation,
        notes: together(request.notes ?? [], args.advice ?? []),
      }
    case 'change':
      return acts({ act: args.how, name: args.name || null })
    case 'compare': {
      const { word, at } = args
      return acts({
        act: 'compare',
        between: word ? args.values.map((it) => toldOf(word, at, it)) : null,
      })
    }
    case 'recall':
      return acts({ act: args.what, word: args.word || null, at: args.at || null })
    case 'ask':
      return { ...request, either: together(request.either ?? [], [args]) }
    case 'decline':
      return { ...request, declines: together(request.declines, [args]) }
    default:
      return name satisfies never
  }
}

interface Source {
  readonly tag?: string | null | undefined
  readonly quote?: string | null | undefined
  readonly option?: string | null | undefined
}

// An empty string is how some models write null.
function toldOf(word: string, at: string | null | undefined, { tag, quote, option }: Source): Told {
  const usual = tag === 'usual'
  return {
    word,
    at: placeOf(at),
    from: { tag: usual ? null : tag || null, quote: quote || null, option: option || null, usual: usual || null },
  }
}

const placeOf = (at: string | null | undefined): string => at || 'yard'

const together = <Item>(some: readonly Item[], more: readonly Item[]): Item[] => {
  const all = [...some, ...more].map((it) => JSON.stringify(it))
  return [...some, ...more].filter((_, i) => all.indexOf(all[i] as string) === i)
}
