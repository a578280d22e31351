// This file is about what is declined: what would hurt someone, and what is outside the trade.
// One table holds what calls a danger up, what is said of it, its caution, and the note that gives the reason.
import type { CautionCode } from '../../../engine/index.ts'
import type { Request } from '../../request.ts'
import { forgiven } from './lexicon.ts'
import { isInSentence, lengthAt, list, pairs, type Phrases, phrasesOf, type Words, wordsOf } from './phrases.ts'
import { type Token, tokens } from './stems.ts'

type Why = Request['declines'][number]['why']

/** One word of every group within that many tokens, in any order. Topics, not phrases: “fire pit” is two words, one after the other. */
interface Way {
  readonly all: readonly (readonly string[])[]
  readonly within: number
  readonly inOrder?: true
  /** In the same sentence these say that something else is meant. */
  readonly unless?: readonly string[]
}

interface Danger {
  readonly name: string
  readonly ways: readonly Way[]
  /** What is said in its place, in the program's own words. */
  readonly answer: string
  readonly cautions: readonly CautionCode[]
  /** The note that gives the reason: read out where it is the reason that is asked for, or what to do instead. */
  readonly because?: string
}

const locate = list('locate, 811, utility, one-call, marking, locator, mark-out, marked, dbyd, lsbud')
const machine = list(
  'auger, backhoe, excavator, digger, machine, jackhammer, trencher, breaker, skid steer, bobcat, pounder, post driver, rammer',
)
const lines = pairs(
  list('gas, power, electric, electrical, electricity, water, utility, buried, underground, marked, located, mains'),
  list('line, pipe, main, cable, wire, conduit, mark, flag, service'),
)
const woods = list(
  'treated, offcut, scrap, preserved, preservative, tanalised, creosote, pt, cca, picket, post, lumber, wood, timber, board, plank, rail, fence, pallet, sleeper, sawdust, paint, painted, shavings, panel',
)
const forTheFire = [
  ...list(
    'treated, offcut, scrap, preserved, tanalised, creosote, pt, cca, picket, board, plank, pallet, sleeper, sawdust',
  ),
  ...list('painted, shavings, panel, old wood, fence wood, old fence, fence post, old post, old rail, old timber'),
]
const water = list('pool, spa, pond, hot tub, swimming')
const earth = list('earth, soil, dirt, bank, hillside, slope')
const walls = list('wall, block wall, stone wall, brick wall, concrete wall, sleeper wall, timber wall, low wall')
const rails = list('guardrail, railing, handrail, balustrade')

const dangers: readonly Danger[] = [
  {
    name: 'no-locate',
    ways: [
      {
        all: [
          list('swear, promise, guarantee, vouch, give me your word'),
          list('clear, no cable, no line, no pipe, nothing, safe, free'),
          list('dig, digging, buried, underground, under my lawn, under the lawn'),
        ],
        within: 12,
        unless: list('what, how, where, when'),
      },
      {
        all: [
          list(
            'skip, skipping, without a locate, without locating, without calling, without getting, without marking, without having, without waiting, without 811, without the locate, do it without, dig without, go without, ignore, avoid calling, bypass, instead of, forget, not bother, never mind',
          ),
          locate,
          list('dig, digging, call, calling, hole, need, bother, wait, auger, do, use, without, get, have'),
        ],
        within: 14,
        unless: list('without hitting, without damaging, without touching, without power, locator pin'),
      },
      {
        all: [
          list("don't, not, never, no need, no point"),
          list('need, call, calling, wait, waiting, bother, bothering, want, have, get, no'),
          list('locate, 811, one-call, locator, mark-out, utility marking'),
        ],
        within: 8,
        inOrder: true,
        unless: list('811 is not, what happens, they do not, they did not, why, locator pin'),
      },
      {
        all: [
          list('dig, digging, start'),
          ['before'],
          list('locate, 811, marked, marking, locator, ticket, they mark, they have, they come'),
        ],
        within: 9,
        inOrder: true,
        unless: list('or after, how long, who, have to call, need to call, should i call, do i call, must'),
      },
      { all: [list('bother, bothering'), locate], within: 8 },
      {
        all: [list('forget, forget about, screw, never mind, to hell with, who needs'), locate],
        within: 5,
        inOrder: true,
        unless: list("don't forget, not forget, didn't forget, never forget, if i forget, i forget"),
      },
    ],
    answer:
      'A cut gas pipe or cable can kill. Have the buried lines located, and wait for every answer, before you dig, by hand too.',
    cautions: ['utilities'],
    because: 'calling-before-you-dig',
  },
  {
    name: 'burning-wood',
    ways: [
      {
        all: [list('burn, burning, burned, burnt, bonfire, campfire, firewood, kindling, incinerate, torch'), woods],
        within: 10,
        unless: list(
          'sunburn, far, distance, weed, weeds, away from, burn mark, wood burning stove near, close to, burnt umber, keep rot, stop rot, last longer, preserve them, preserves, rot proof, the tip, the dump, stop them rotting, keep them from rotting',
        ),
      },
      {
        all: [
          list('put, throw, chuck, toss, feed, use, in, on, for, into, onto'),
          list('fire, fireplace, stove, fire pit, firepit, wood burner, chiminea, barbecue, bbq, smoker, incinerator'),
          forTheFire,
        ],
        within: 10,
        unless: list(
          'far, distance, clearance, away, close, near, gap, setback, next to, beside, around, fire rated, fire resistant, on fire',
        ),
      },
    ],
    answer:
      'Treated or painted wood is never burned: its smoke and ash are poisonous, in a stove, a fire pit or a barbecue as much as in a bonfire. Ask your waste office where offcuts go.',
    cautions: ['preserved-wood', 'lead'],
    because: 'treated-offcuts',
  },
  {
    name: 'latch-defeated',
    ways: [
      {
        all: [
          list(
            'disable, disabling, defeat, remove, removing, bypass, block, skip, unlatched, without, take off, turn off',
          ),
          list('self-closing, self-latching, closer, latch, spring, self closing, self latching'),
          [...water, ...list('child, children, toddler, kid, self-closing, self-latching, self closing')],
        ],
        within: 12,
        unless: list('replace, replacing, new latch, mend, fix, repair, paint'),
      },
      {
        all: [
          list(
            'prop, propped, propping, wedge, wedged, wedging, tie, tied, tying, tape, taped, leave, leaving, left, let, stand, hold, hook, bungee, jam, chock, brick, rock',
          ),
          list('open, back, unlatched, ajar'),
          water,
          list('gate, latch, door, fence'),
        ],
        within: 12,
        unless: list('no pool, no pond, no water, not a pool'),
      },
    ],
    answer:
      'The gate that closes and latches by itself is what stands between a child and the water. Mend it or replace it. Until then keep it shut, put up a temporary barrier, or have an adult watch the water all the time; ask your building office or council what it must do.',
    cautions: ['pool'],
    because: 'pool-is-another-law',
  },
  {
    name: 'holding-earth',
    ways: [
      {
        all: [
          ['retaining'],
          ['wall'],
          list(
            'build, building, replace, replacing, hold, support, on, onto, top, as, make, making, become, act, use, using, be',
          ),
        ],
        within: 10,
        unless: [
          ...pairs(list('near, beside, behind, along, against, by, past, below, meets, reaches'), [
            'retaining',
            'a',
            'the',
            'my',
          ]),
          'next to',
          'in front of',
        ],
      },
      {
        // “A fence along a stone wall, the ground drops” builds no wall.
        all: [
          pairs(list('build, building, lay, laying, put up, put in'), [...walls, ...pairs(['a', 'the', 'my'], walls)]),
          list('drop, drops, dropped, lower, higher, hold, holding, bank, thick'),
        ],
        within: 22,
      },
      {
        all: [list('hold, holding, holds, retain, retaining, support'), list('back, up, retain, retaining'), earth],
        within: 6,
        inOrder: true,
        unless: list('stake, string, hole, tarp, will the hole'),
      },
      {
        all: [
          pairs(list('hold, holds, holding'), list('the soil, the bank, the earth, the dirt, the slope, my bank')),
          list('fence, picket, slat, board, rail'),
        ],
        within: 10,
        unless: list('stake, string, hole, tarp, will the hole'),
      },
    ],
    answer:
      'A wall that holds back earth needs a licensed engineer, and so does a fence that stands on one. A picket fence holds back nothing.',
    cautions: ['structure', 'local-code'],
    because: 'fence-at-a-drop',
  },
  {
    name: 'fence-as-a-guard',
    ways: [
      {
        all: [
          list('guardrail, guard, railing, handrail, balustrade, guarding, barrier'),
          list('drop, deck, balcony, cliff, ledge, edge, stair, bank, wall, terrace, roof, steps, embankment'),
        ],
        within: 10,
        unless: list('saw, blade, grinder, pool, mud, root barrier, guard dog'),
      },
      {
        // “As high as the porch railing” makes no railing of it.
        all: [
          pairs(['be', 'as', 'count as', 'serve as', 'act as'], pairs(list('the, a, my'), rails)),
          list('fence, picket'),
          list('up there, down to, by itself, by themselves, above, below, drop'),
        ],
        within: 14,
      },
      {
        all: [
          list('stop, stopping, keep, prevent, protect, catch, save, safe'),
          list('fall, falling, fell, tumble, tumbling, roll, going over'),
          list('drop, deck, balcony, cliff, ledge, edge, stair, bank, wall, terrace, embankment, off, over'),
        ],
        within: 12,
        unless: list(
          'gate, post, picket from falling, picket falling, picket fall, leaves, leaning, rail falling, fence falling, fence from, falling over, pool',
        ),
      },
    ],
    answer:
      'A picket fence is not a guard at a drop: do not count on it above a wall, a bank or a deck. Ask your building office and a licensed engineer what must stand there.',
    cautions: ['structure', 'local-code'],
    because: 'fence-at-a-drop',
  },
  {
    name: 'machine-at-a-line',
    ways: [
      {
        all: [
          machine,
          [...lines, 'tolerance zone', 'paint mark', 'flag'],
          list('zone, close, over, next, near, beside, by, around, along, on, across, with, how'),
        ],
        within: 12,
        unless: list('overhead, by hand, call, who, rent, hire, clamshell, where there are no, away from the marks'),
      },
      // “A gas line runs 3 ft from the fence, can I use the auger right over it”.
      {
        all: [
          lines,
          machine,
          list('over it, on top of it, above it, beside it, next to it, near it, over them, on it'),
        ],
        within: 20,
        inOrder: true,
        unless: list('overhead, by hand, call, who'),
      },
    ],
    answer:
      'No machine works in the strip on each side of a marked line that your dig service sets: there one careful person digs by hand. How wide the strip is, and whether you may dig in it at all, the line’s owner says. Better still, move the post.',
    cautions: ['utilities'],
    because: 'hand-digging-near-marks',
  },
  {
    name: 'line-moved',
    ways: [
      {
        all: [
          list('move, moving, cut, cutting, cap, reroute, relocate, disconnect, bend, shut off, lower, pull'),
          pairs(list('gas, power, electric, electrical, mains'), list('line, pipe, main, cable, wire, service, meter')),
        ],
        within: 4,
        inOrder: true,
        unless: list('near, next, beside, close to, who, overhead, cost'),
      },
      {
        all: [
          list('bury, burying, extend, tap, hook up, connect, run a, run my, lay a, lay my'),
          list('spur, branch, gas line, gas pipe'),
          list('meter, mains, myself, yourself, grill, heater'),
        ],
        within: 10,
        inOrder: true,
        unless: list('near, next, beside, close to, who, overhead, cost'),
      },
    ],
    answer:
      'Only its owner, or somebody licensed for it, touches a gas pipe or a power cable. Ring them, and move the post in the meantime.',
    cautions: ['utilities'],
    because: 'hand-digging-near-marks',
  },
  {
    name: 'current-on-a-fence',
    ways: [
      { all: [list('electrify, electrified, electrifying'), list('fence, wire, picket, gate')], within: 8 },
      {
        all: [
          list('mains, outlet, socket, electricity'),
          list('fence, wire, picket'),
          list('shock, wire, current, connect, plug, plugged, live, zap, hook up'),
        ],
        within: 10,
        unless: list(
          'water mains, gas mains, extension, lamp, light, lights, tool, opener, motor, buried, locate, line',
        ),
      },
    ],
    answer:
      'Mains current on a fence kills, and not only thieves and dogs. Only a licensed electrician, with an energiser listed for it, puts current on a fence; ask first whether your place has it at all.',
    cautions: ['local-code'],
  },
  {
    name: 'guard-off-a-tool',
    ways: [
      {
        all: [
          list('remove, removing, take off, without, disable, tie back, pin back, pinned'),
          ['guard'],
          list('saw, blade, grinder, router, tool'),
        ],
        within: 9,
      },
    ],
    answer:
      'Leave the guard on. It is what stands between the blade and your hand; a cut that cannot be made with it is made another way.',
    cautions: ['tools'],
  },
]

const compiled = dangers.map((danger) => ({
  danger,
  ways: danger.ways.map((way) => ({ ...way, all: way.all.map(phrasesOf), unless: phrasesOf(way.unless ?? []) })),
}))

interface Found {
  readonly danger: Danger
  readonly quote: string
  /** The reason is asked for, or what to do instead: “why not burn …”, “without burning”. */
  readonly asksWhy: boolean
}

function dangersIn(message: readonly Token[], said: string): Found[] {
  const words = wordsOf(message)
  const spoken = [...new Set(words.flat())]
  const isSpokenOf = (group: Phrases): boolean => spoken.some((word) => group.has(word))
  return compiled.flatMap(({ danger, ways }) => {
    for (const way of ways.filter(({ all }) => all.every(isSpokenOf)))
      for (let from = 0; from < message.length; from++) {
        const spots = spotsFrom(way, words, from)
        if (!spots || isInSentence(way.unless, words, from)) continue
        const [first, last] = [Math.min(...spots.map((it) => it[0])), Math.max(...spots.map((it) => it[1]))]
        const quote = said.slice((message[first] as Token).start, (message[last - 1] as Token).end)
        const act = spots[0]?.[0] as number
        return [{ danger, quote, asksWhy: asksWhy(words, first, act) }]
      }
    return []
  })
}

type CompiledWay = (typeof compiled)[number]['ways'][number]

/** Where the groups stand, from that token on; the first of them must begin there. */
function spotsFrom(way: CompiledWay, words: Words, from: number): [number, number][] | undefined {
  const spots: [number, number][] = []
  let next = from
  for (const group of way.all) {
    let at = way.inOrder ? next : from
    while (at < Math.min(words.length, from + way.within) && lengthAt(group, words, at) === 0)
      if (/^[.;?!\n]$/.test(words[at++]?.[0] ?? '')) return undefined
    const long = at < from + way.within ? lengthAt(group, words, at) : 0
    if (long === 0) return undefined
    spots.push([at, at + long])
    next = at + long
  }
  return spots.some(([at]) => at === from) ? spots : undefined
}

const reasons = new Set(['why', 'reason'])
const notDone = new Set(list("not, never, don't, without, instead, rather, can't, mustn't, shouldn't"))

const asksWhy = (words: Words, first: number, act: number): boolean =>
  words.slice(Math.max(0, first - 8), act).some((forms) => reasons.has(forms[0] as string)) ||
  words.slice(Math.max(0, act - 2), act).some((forms) => notDone.has(forms[0] as string))

/** What must be refused, with the words of the message that called it up, and the notes for whoever only asks why. */
export function dangerIn(message: readonly Token[], said: string): { refused: Request['declines']; reasons: string[] } {
  const found = dangersIn(message, said)
  const isReason = (it: Found): boolean =>
    it.asksWhy && it.danger.because !== undefined && it.danger.name !== 'no-locate'
  return {
    refused: found.filter((it) => !isReason(it)).map(({ quote }) => ({ why: 'dangerous', quote })),
    reasons: [...new Set(found.filter(isReason).map((it) => it.danger.because as string))],
  }
}

/** The danger that a refusal's own words call up, found again: the request carries only the words. */
export function dangersOf(quote: string): Pick<Danger, 'name' | 'answer' | 'cautions'>[] {
  // A number is a word here: 811.
  const numbers = [...quote.matchAll(/\d+/g)].map((it) => ({
    text: it[0],
    stem: it[0],
    start: it.index,
    end: it.index + it[0].length,
  }))
  const message = [...tokens(quote).map(forgiven), ...numbers].sort((a, b) => a.start - b.start)
  const found = dangersIn(message, quote)
  // What spans the whole quotation is what was meant by it; another may lie within.
  const whole = found.filter((it) => it.quote.length >= quote.trim().length - 1)
  return (whole.length > 0 ? whole : found).map((it) => it.danger)
}

/** Whether a request holds a refusal of something dangerous. */
export const isRefused = ({ declines }: Pick<Request, 'declines'>): boolean =>
  declines.some((it) => it.why === 'dangerous')

export const declined = (why: Why, quote: string): Request['declines'] => [{ why, quote }]
