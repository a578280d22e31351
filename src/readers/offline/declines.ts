// This file is about what is declined: what would hurt someone, and what is outside the trade.
import type { Request } from '../../request.ts'
import { stem, type Token } from './stems.ts'

type Why = Request['declines'][number]['why']

interface Danger {
  readonly all: readonly (readonly string[])[]
  readonly within: number
}

// Each danger is a set of groups; one word of every group within that many tokens calls it up.
// These are topics, not phrases: the wording of the refusal is the program's, in ../../declined.ts.
const skipping = [
  'skip',
  'without',
  'ignore',
  'avoid',
  'bother',
  "don't",
  'not',
  'never',
  'no',
  'bypass',
  'instead',
  'forget',
  'around',
]
const dangers: readonly Danger[] = [
  {
    all: [
      skipping,
      ['locate', '811', 'utility', 'one-call', 'marking', 'locator', 'mark-out', 'marked'],
      ['dig', 'digging', 'call', 'calling', 'hole', 'need', 'bother', 'wait', 'auger', 'do', 'use', 'without'],
    ],
    within: 14,
  },
  {
    all: [
      ['burn', 'burning', 'bonfire', 'campfire', 'firewood', 'fireplace', 'fire', 'stove', 'firepit'],
      [
        'treated',
        'offcut',
        'scrap',
        'preserved',
        'preservative',
        'tanalised',
        'creosote',
        'pt',
        'picket',
        'post',
        'lumber',
        'wood',
      ],
    ],
    within: 10,
  },
  {
    all: [
      ['disable', 'defeat', 'prop', 'wedge', 'remove', 'tie', 'bypass', 'block', 'unlatched', 'skip', 'leave'],
      ['latch', 'self-closing', 'self-latching', 'closer'],
      ['pool', 'gate', 'latch', 'closer'],
    ],
    within: 12,
  },
  { all: [['retaining'], ['wall']], within: 3 },
  {
    all: [
      ['guardrail', 'guard', 'railing', 'handrail', 'balustrade'],
      ['drop', 'deck', 'balcony', 'cliff', 'ledge', 'edge', 'stair'],
    ],
    within: 10,
  },
  {
    all: [
      ['auger', 'backhoe', 'excavator', 'digger', 'power', 'machine'],
      ['gas', 'electric', 'tolerance', 'marked', 'cable', 'flag', 'paint'],
      ['zone', 'line', 'main', 'mark', 'close', 'over', 'next', 'near', 'pipe'],
    ],
    within: 12,
  },
  {
    all: [
      ['electrify', 'electrified', 'mains', 'outlet', 'socket'],
      ['fence', 'wire'],
      ['electrify', 'electrified', 'mains', 'outlet', 'socket', 'shock'],
    ],
    within: 10,
  },
]

const stemmed = dangers.map(({ all, within }) => ({ all: all.map((group) => new Set(group.map(stem))), within }))

/** What must be refused, with the words of the message that called it up. */
export function dangerIn(message: readonly Token[], said: string): Request['declines'] {
  const found: Request['declines'] = []
  for (const danger of stemmed) {
    for (let from = 0; from < message.length; from++) {
      const window = message.slice(from, from + danger.within)
      const used = danger.all.map((group) => window.find((token) => group.has(token.stem)))
      if (used.some((token) => token === undefined)) continue
      const spots = used as Token[]
      const [start, end] = [Math.min(...spots.map((it) => it.start)), Math.max(...spots.map((it) => it.end))]
      found.push({ why: 'dangerous', quote: said.slice(start, end) })
      break
    }
  }
  return found
}

export const declined = (why: Why, quote: string): Request['declines'] => [{ why, quote }]
