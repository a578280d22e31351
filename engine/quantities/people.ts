// This file is about people told without a number: “me and my brother”, “my wife helps”, “on my own”. Whoever speaks is one of them.
import Fraction from 'fraction.js'
import type { Found } from './found.ts'
import type { Scanned } from './scan.ts'

const person =
  /^(son|daughter|wife|husband|missus|brother|sister|dad|father|mum|mom|mother|uncle|aunt|cousin|nephew|niece|grandson|granddaughter|partner|boyfriend|girlfriend|mate|buddy|friend|pal|neighbor|neighbour|lad|boy|girl|kid|helper)$/
const whose = /^(my|our|a|one|the)$/
const self = /^(me|myself)$/
const works =
  /^(helps?|helping|digs?|digging|paints?|painting|works?|working|brushes|brushing|joins?|joining|pitches|pitching|chips|chipping)$/
const mayStand = /^(is|was|s|’s|will|ll|can|comes|keeps|starts|also|too|and|'|’)$/

const lower = (token: Scanned | undefined): string => token?.text.toLowerCase() ?? ''

/** “my brother”, “my older brother”, “one buddy”: the token after it; null where nobody is named. */
function personAt(tokens: readonly Scanned[], at: number): number | null {
  if (!whose.test(lower(tokens[at]))) return null
  const next = [at + 1, at + 2].find((it) => person.test(lower(tokens[it])))
  // “my brother's truck”, “my son in law has 3”: somebody else, or something of theirs.
  if (next === undefined || (lower(tokens[next + 1]) === "'" && lower(tokens[next + 2]) !== 's')) return null
  return next + 1
}

/** “What is the best way to hang a gate by myself?” counts nobody; beside hours, or as a what-if, it does. */
const countsWork = (tokens: readonly Scanned[]): boolean =>
  tokens.slice(0, mostLooked).some((it) => it.sort === 'digits') ||
  /^(and|if|just|only|on|by|now|so|actually|no|nah|ok)$/.test(lower(tokens[0])) ||
  (lower(tokens[0]) === 'what' && lower(tokens[1]) === 'if')

// A question with hours in it is no longer than that.
const mostLooked = 100

/** “On my own”, “by myself”, “just me”: the token after it; null where it says nothing of the kind. */
function aloneAt(tokens: readonly Scanned[], at: number): number | null {
  const [one, two, three] = [0, 1, 2].map((it) => lower(tokens[at + it]))
  if (one === 'on' && two === 'my' && three === 'own') return at + 3
  if (one === 'by' && two === 'myself') return at + 2
  if (one === 'single' && /^handed(ly)?$/.test(two ?? '')) return at + 2
  // “Just me and my brother” is two, and “it’s just me asking” tells nothing.
  const isEnd =
    three === '' ||
    /^[.,;:?!\n]$/.test(three ?? '') ||
    /^(digging|painting|working|on|so|then|now|doing)$/.test(three ?? '')
  return /^(just|only)$/.test(one ?? '') && two === 'me' && isEnd ? at + 2 : null
}

/** How many people work, as a place in the message tells it without a number; null where it does not. */
export function peopleAt(tokens: readonly Scanned[], at: number): Found | null {
  const alone = aloneAt(tokens, at)
  if (alone !== null && countsWork(tokens)) return found(1, alone)
  // “Buddy helps”, and nothing before it.
  if (at === 0 && person.test(lower(tokens[0])) && works.test(lower(tokens[1]))) return found(2, 2)
  if (self.test(lower(tokens[at]))) {
    let next: number | null = at + 1
    let others = 0
    while (/^(and|&|plus|with)$/.test(lower(tokens[next]))) {
      const after = personAt(tokens, next + 1)
      if (after === null) break
      others++
      next = after
    }
    return others > 0 ? found(others + 1, next) : null
  }
  // “Me and …” was read from its beginning.
  if (/^(and|&|plus)$/.test(lower(tokens[at - 1])) && self.test(lower(tokens[at - 2]))) return null
  const after = personAt(tokens, at)
  if (after === null || /^(a|one|the)$/.test(lower(tokens[at]))) return null
  if (/^(and|&)$/.test(lower(tokens[after])) && /^(me|i|myself)$/.test(lower(tokens[after + 1])))
    return found(2, after + 2)
  if (lower(tokens[at - 1]) === 'with' && /^(too|helping)$/.test(lower(tokens[after]))) return found(2, after)
  let verb = after
  while (verb < after + 2 && mayStand.test(lower(tokens[verb]))) verb++
  return works.test(lower(tokens[verb])) ? found(2, verb + 1) : null
}

const found = (many: number, next: number): Found => ({
  next,
  quantity: null,
  bare: new Fraction(many),
  people: true,
  note: many === 1 ? 'read as you alone' : `read as ${many} people, you among them`,
})
