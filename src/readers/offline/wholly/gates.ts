// This file is about gates told so plainly that every size has its place: the leaf for its opening, its diagonal, its sag, its swing, its pickets.
import type { Request, Told } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { chosenBy, requestFor, tell } from '../request-parts.ts'
import { boundBy, isAbout, isLength, knows, type Role, type Spot, spotsOf } from './spots.ts'

const ofGates = /\b(?:gates?|leaf|leaves|leafs)\b/i
const gateSums = [
  'gate-leaf',
  'leaf-diagonal',
  'take-up-for-drop',
  'gate-over-rise',
  'pickets-on-leaf',
  'gate-weight',
  'gate-pull',
]
const gateTalk = (heard: Heard): boolean => ofGates.test(heard.said) || isAbout(heard, ...gateSums)

/** The request of a message about a gate in which each size stands beside what it is; nothing for any other. */
export function gateIn(heard: Heard): Request | undefined {
  if (!gateTalk(heard) || /\b(?:fence|yard) is\b|\bpassage\b/i.test(heard.said)) return undefined
  const spots = spotsOf(heard)
  const framed = insideIn(heard, spots)
  if (framed) return framed
  if (spots.some((it) => it.reading.section || it.reading.firmness === 'range')) return undefined
  return (
    dropIn(heard, spots) ??
    riseIn(heard, spots) ??
    picketsIn(heard, spots) ??
    hingesApartIn(heard, spots) ??
    braceAsked(heard, spots) ??
    diagonalIn(heard, spots) ??
    besideIn(heard, spots) ??
    leafIn(heard, spots)
  )
}

const clear = '(?:mm |in |inch(?:es)? )?(?:of )?(?:a )?(?:gap|clear(?:ance)?|room|space|free|play)?,?\\s*'
const side = (name: string): Role[] => [
  {
    word: name,
    after: new RegExp(
      `^\\s*${clear}(?:on|at|for|by|to|along)?\\s*(?:the |each |every |both )?${name === 'hingeGap' ? hinges : latches}`,
    ),
  },
  {
    word: name,
    before: new RegExp(
      `${name === 'hingeGap' ? hinges : latches}(?:(?!\\band\\b)[\\w\\s']){0,24}(?:gap|side|clearance|needs?|wants?|takes?|is|of|:|,|=)?\\s*$`,
    ),
  },
]
const hinges = '(?:hinges?|hung side|hanging side)'
const latches = '(?:latch(?:es)?|catch|lock|closing side|shutting side|bolt|striker?)'

// What stands behind a size says more than what the one before it was of.
const sides = [side('hingeGap'), side('latchGap')]

const leafRoles: readonly Role[] = [
  // “One leaf is 40 in”: the one may be a number of its own.
  { word: 'otherLeaf', before: /(?:^|\bone |\bother )leaf(?: is| was| to be| at| of|:)+\s*$/ },
  {
    word: 'bothGaps',
    after: new RegExp(`^\\s*${clear}(?:on|at|for)?\\s*(?:each|either|both|every) (?:sides?|ends?|posts?)`),
  },
  { word: 'bothGaps', before: /(?:each|either|both) (?:sides?|ends?)[\s,:=]*(?:of|is|gets?|needs?)?\s*$/ },
  {
    word: 'meetingGap',
    after: new RegExp(
      `^\\s*${clear}(?:in|at|for)?\\s*(?:the )?(?:middle|cent(?:re|er)|meeting|where (?:they|the leaves|the two) meet|between (?:them|the (?:two|leaves|gates|pair)|leaves|gates))`,
    ),
  },
  {
    word: 'meetingGap',
    before:
      /(?:middle|cent(?:re|er)|where they meet|between (?:them|the leaves|the two|leaves))[\s,:=]*(?:gap)?[\s,:=]*(?:of|is)?\s*$/,
  },
  ...sides.map((it) => it[0] as Role),
  ...sides.map((it) => it[1] as Role),
  {
    word: 'gateOpening',
    before:
      /(?:opening|posts?|space|apart|gateway|clear(?: width)?|hole|pillars?|piers?)(?: of| is| are| stand| between| measures?|'s|=|:|,| at| set| clear| wide| comes? to)*\s*$/,
  },
  {
    word: 'gateOpening',
    after:
      /^\s*(?:mm|in|clear|wide|between|gap|gate)?\s*(?:wide )?(?:opening|gateway|clear\b|between|apart|post to post|from post|gate opening|space)/,
  },
]
const isDouble =
  /\b(?:double|pair of|two leaves|two leafs|two gates|both leaves|each leaf|both gates|per leaf|twin|two-leaf|2 leaves)\b(?! (?:gate )?posts?)/i
const asksWidth =
  /\b(?:how (?:wide|big|large)|what (?:width|size)|width\b|leaf size|size (?:of|do|should)|make (?:the|my|each|it)|build (?:the|my|each|it))/i

/** “12 mm on the hinge side, 8 on the latch side, 1050 between the gate posts: how wide the gate?” */
function leafIn(heard: Heard, spots: readonly Spot[]): Request | undefined {
  const { said, readings } = heard
  const goesOn = isAbout(heard, 'gate-leaf')
  if (
    /\b(?:pickets?|palings?|rails?|braces?|cable|weigh\w*|heavy|drags?|rises?|slope|bays?|run|high|tall)\b/i.test(said)
  )
    return undefined
  if (readings.length === 0)
    // “How wide do I make the leaf?”
    return !goesOn &&
      /\b(?:how wide|what (?:width|size)|width|how big)\b[^.?]*\b(?:leaf|gate)\b/i.test(said) &&
      /\b(?:leaf|make|build|cut)\b/i.test(said)
      ? requestFor('gate-leaf', ['leafWidth'], isDouble.test(said) ? [doubleOf(said)] : [])
      : undefined
  if (!goesOn && !asksWidth.test(said)) return undefined
  const told = boundBy(spots, leafRoles)
  if (!told || told.length === 0) return undefined
  if (!told.some((it) => it.word === 'gateOpening') && !goesOn) return undefined
  const twice =
    isDouble.test(said) || heard.job.decisions.some((it) => it.word === 'gateLeaves' && it.value === 'double')
  const hasMeeting = told.some((it) => it.word === 'meetingGap')
  if (hasMeeting && !twice) return undefined
  const gaps = told.flatMap((it) => (it.word === 'bothGaps' ? both(it, twice || hasMeeting) : [it]))
  // Where one word is told twice, one of the two was read wrong.
  if (new Set(gaps.map((it) => it.word)).size < gaps.length) return undefined
  return requestFor('gate-leaf', ['leafWidth'], [...gaps, ...(isDouble.test(said) ? [doubleOf(said)] : [])])
}
const both = (it: Told, isPair: boolean): Told[] => [
  { ...it, word: 'hingeGap' },
  ...(isPair ? [] : [{ ...it, word: 'latchGap' }]),
]
const doubleOf = (said: string): Told => chosenBy('gateLeaves', 'double', (isDouble.exec(said) as RegExpExecArray)[0])

const tallRoles: readonly Role[] = [
  { word: 'leafHeight', after: /^\s*(?:mm |in )?(?:high|tall|in height|height|down|top to bottom)\b/ },
  { word: 'leafHeight', before: /(?:height|high|tall)(?: is| of| to be|'s|=|:)*\s*$/ },
]
const wideRoles: readonly Role[] = [
  { word: 'leafWidth', after: /^\s*(?:mm |in )?(?:wide|across|in width|width|long)\b/ },
  { word: 'leafWidth', before: /(?:width|wide|across)(?: is| of| to be|'s|=|:)*\s*$/ },
]

const asksApart = /\bhow far\b[^.?!]*\b(?:apart|between|hinges?)\b|\b(?:distance|spacing)\b[^.?!]*\bhinges?\b/i
/** “1100 high, a hinge 150 down from the top and one 150 up from the bottom: how far apart?”, and the pull on them next. */
function hingesApartIn(heard: Heard, spots: readonly Spot[]): Request | undefined {
  const { said, job } = heard
  const sum = isAbout(heard, 'lengths-together')
    ? job.results.findLast((it) => it.word === 'lengthDifference')
    : undefined
  if (sum && /\bhinge\b/i.test(said) && /\b(?:pull|force|load)\w*\b/i.test(said)) {
    const weight = spots.find((it) => it.reading.quantity?.kind === 'mass')
    const wide = spots.find((it) => isLength(it.reading) && /^\s*(?:mm |m |in |ft )?(?:wide|across)\b/.test(it.after))
    return weight && wide && spots.length === 2
      ? requestFor(
          'gate-pull',
          ['hingePull'],
          [tell('hingeSpacing', sum.ref), tell('leafWeight', weight.reading.tag), tell('leafWidth', wide.reading.tag)],
        )
      : undefined
  }
  if (!/\bhinges?\b/i.test(said) || !asksApart.test(said) || /\b(?:weigh\w*|pull|wide)\b/i.test(said)) return undefined
  const sizes = spots.filter((it) => !isIdleCount(it))
  const told = boundBy(sizes, [
    { word: 'top', after: /^\s*(?:mm |in )?(?:down )?(?:from|below|off|under) (?:the )?top/ },
    { word: 'bottom', after: /^\s*(?:mm |in )?(?:up )?(?:from|above|off) (?:the )?bottom/ },
    { word: 'high', after: /^\s*(?:mm |in )?(?:high|tall)\b/ },
    { word: 'high', before: /(?:gate|leaf|height)(?: is| of|:|,)*\s*$/ },
  ])
  return told?.length === 3
    ? requestFor(
        'lengths-together',
        ['lengthDifference'],
        told.map((it) => ({ ...it, word: 'lengths' })),
      )
    : undefined
}
const isIdleCount = ({ reading, after }: Spot): boolean =>
  reading.bare !== null &&
  /^(?:1|2|one|two|another)$/i.test(reading.said) &&
  /^\s*(?:hinges?\b|(?:is |at )?$)/.test(after)

/** “How long to cut the brace of a gate, from corner to corner?”; “the angle of the brace to the bottom rail”, where the leaf is known. */
function braceAsked(heard: Heard, spots: readonly Spot[]): Request | undefined {
  const { said } = heard
  if (
    !/\bbraces?\b/i.test(said) ||
    /\b(?:cable|wire|pickets?|weigh\w*|which way|wide is|inside|between the)\b/i.test(said)
  )
    return undefined
  const isDiagonal = /\bcorner[- ]to[- ]corner\b|\bdiagonal\b/i.test(said)
  const asksAngle =
    /\bangle\b|\bdegrees?\b|\bhow steep\b/i.test(said) && !/\b(?:cut|saw|mitre|miter|bevel)\b/i.test(said)
  const asksLong = /\bhow long\b|\bwhat length\b|\blength\b/i.test(said)
  const told = boundBy(spots, [...tallRoles, ...wideRoles])
  if (!told) return undefined
  const isKnown = ['leafWidth', 'leafHeight'].every((word) => told.some((it) => it.word === word) || knows(heard, word))
  if (asksAngle && isDiagonal && isKnown) return requestFor('leaf-diagonal', ['diagonalSteep'], told)
  if (asksLong && isKnown && told.length === 0 && isAbout(heard, 'leaf-diagonal'))
    return requestFor('leaf-diagonal', ['leafDiagonal'], [])
  return asksLong && spots.length === 0 && heard.job.wanted.length === 0
    ? requestFor('gate-brace', ['braceLength'], [])
    : undefined
}

/** “What if one leaf was 1 m and the other took up the rest?”, of two leaves that were worked alike; and told in one go. */
function besideIn(heard: Heard, spots: readonly Spot[]): Request | undefined {
  const { said, job } = heard
  const isOther =
    /\b(?:the )?other(?: one| leaf)?\b[^.?!]*\b(?:rest|remain\w*|what(?:'s| is)? left|left ?over|balance|wide)\b|\bhow wide\b[^.?!]*\bother\b/i
  if (!isOther.test(said) || !isAbout(heard, 'gate-leaf') || !/\bleaf\b|\bleaves\b|\bone\b/i.test(said))
    return undefined
  const isPair = job.decisions.some((it) => it.word === 'gateLeaves' && it.value === 'double')
  const [only, more] = spots.filter(
    (it) =>
      !(
        it.reading.bare?.equals(1) &&
        /^\s*(?:leaf|of|one)?\s*(?:leaf)?\s*(?:was|is|were|to be|at|made)?/.test(it.after) &&
        spots.length > 1
      ),
  )
  if (!isPair || !only || more || !isLength(only.reading)) return undefined
  return requestFor('gate-leaf', ['leafWidth'], [tell('otherLeaf', only.reading.tag)])
}

/** “Its frame is 900 high, how long is it from corner to corner?” */
function diagonalIn(heard: Heard, spots: readonly Spot[]): Request | undefined {
  const { said } = heard
  if (!/\bcorner[- ]to[- ]corner\b|\bdiagonals?\b|\bcorners? across\b/i.test(said)) return undefined
  if (
    /\b(?:brace|cable|wire|turnbuckle|sag\w*|drop\w*|strut|inside|fence|yard|measured|measures|reads?|getting|got)\b/i.test(
      said,
    )
  )
    return undefined
  if (!/\b(?:how (?:long|far|much)|what|length|should)\b|\?/i.test(said)) return undefined
  const told = boundBy(spots, [...tallRoles, ...wideRoles, ...byPair(spots)])
  if (!told || told.length === 0) return undefined
  const has = (word: string): boolean => told.some((it) => it.word === word) || knows(heard, word)
  return has('leafWidth') && has('leafHeight') ? requestFor('leaf-diagonal', ['leafDiagonal'], told) : undefined
}
/** “3 ft wide, 4 ft tall, a 2x4 frame all round, the diagonal?”: where a frame is told, its inside has it. */
function insideIn(heard: Heard, spots: readonly Spot[]): Request | undefined {
  const frame = spots.filter((it) => it.reading.section)
  if (frame.length !== 1 || !/\bframe\b/i.test(heard.said) || !/\bdiagonal\b/i.test(heard.said)) return undefined
  if (/\b(?:brace|cable|sag\w*)\b/i.test(heard.said)) return undefined
  const told = boundBy(
    spots.filter((it) => !frame.includes(it)),
    [...tallRoles, ...wideRoles],
  )
  return told?.length === 2
    ? requestFor('gate-brace', ['pointedLength'], [...told, ...frame.map((it) => tell('memberWidth', it.reading.tag))])
    : undefined
}

/** “A gate 36 by 48”: across first, then up. */
const byPair = (spots: readonly Spot[]): Role[] =>
  spots.length === 2 && /^\s*(?:mm |in )?(?:wide )?(?:x|by|×)\s*$/.test(spots[0]?.after ?? '')
    ? [
        { word: 'leafWidth', after: /^\s*(?:mm |in )?(?:x|by|×)\s*$/ },
        { word: 'leafHeight', before: /^(?:x|by|×)\s*$/ },
      ]
    : []

/** “It dropped 1 1/4 at the latch, 48 wide, 40 tall: how much do I take up the turnbuckle?” */
function dropIn(heard: Heard, spots: readonly Spot[]): Request | undefined {
  const { said } = heard
  const goesOn = isAbout(heard, 'take-up-for-drop')
  const isCable = /\b(?:take[- ]?up|turnbuckle|tighten\w*|shorten\w*|cable|wire|tension\w*|strainer)\b/i.test(said)
  const sinks = /\b(?:dropp?(?:ed|s|ing)?|sagg?(?:ed|s|ing)?|sunk|sinking|droop\w*|low|down)\b/i.test(said)
  if (!goesOn && !(isCable && sinks)) return undefined
  // Where the diagonals are measured they say more.
  if (/\b(?:diagonals?|top hinge|bottom hinge)\b[^.?]*\d/i.test(said) || knows(heard, 'tieDiagonal')) return undefined
  const told = boundBy(spots, [
    {
      word: 'latchDrop',
      before:
        /(?:dropp?(?:ed|s|ing)?|sagg?(?:ed|s|ing)?|sunk|droop\w*|low|down|out)(?: by| about| around| a good| is| of|'s|,)*\s*$/,
    },
    {
      word: 'latchDrop',
      after: /^\s*(?:mm |in )?(?:of )?(?:a )?(?:drop|sag|low\b|lower|down|out|at the latch|too low)/,
    },
    ...tallRoles,
    ...wideRoles,
    ...byPair(spots),
  ])
  if (!told || told.length === 0) return undefined
  return requestFor('take-up-for-drop', goesOn ? [] : ['takeUp'], told)
}

/** “The ground comes up 60 across the swing and I want 40 clear: how high at the hinge post?” */
function riseIn(heard: Heard, spots: readonly Spot[]): Request | undefined {
  const { said } = heard
  if (
    !/\b(?:ground|path|drive\w*|yard|grade|paving|lawn|it)\b[^.]*\b(?:ris(?:es|ing|e)|comes? up|climbs?|goes up|higher|runs up|slopes? up|lifts?)\b/i.test(
      said,
    )
  )
    return undefined
  if (!/\b(?:swings?|swung|arc|opens?|opening)\b/i.test(said) || /%|\bpercent|\bslope of\b/i.test(said))
    return undefined
  const told = boundBy(spots, [
    { word: 'clearOver', before: /(?:clear(?:ance)?|gap|leav(?:e|ing)|daylight)(?: of| is| at least| about| it)*\s*$/ },
    {
      word: 'clearOver',
      after:
        /^\s*(?:mm |in )?(?:of )?(?:clear(?:ance)?|gap|daylight|to spare|everywhere|all the way|all round|off the ground)/,
    },
    { word: 'swingRise', before: /(?:ris(?:es|ing|e)|up|climbs?|higher|lifts?)(?: by| about| around| is| of)*\s*$/ },
    {
      word: 'swingRise',
      after: /^\s*(?:mm |in )?(?:of )?(?:a )?(?:rise|higher|up\b|across the swing|over the swing|as it swings)/,
    },
  ])
  return told?.length === 2 ? requestFor('gate-over-rise', ['gateGapBelow'], told) : undefined
}

/** “65 mm pickets, gap about 20: how many on each leaf?” */
function picketsIn(heard: Heard, spots: readonly Spot[]): Request | undefined {
  const { said } = heard
  if (!/\bhow many\b/i.test(said) || !/\b(?:per|each|every|a|one|the|my|that) (?:leaf|gate|leaves)\b/i.test(said))
    return undefined
  const told = boundBy(spots, [
    {
      word: 'wantedGap',
      before: /(?:gaps?|spaces?|spacing|apart)(?: of| is| are| about| around| roughly| bout| between|'s|,)*\s*$/,
    },
    { word: 'wantedGap', after: /^\s*(?:mm |in )?(?:wide )?(?:gaps?|apart|spaces?|spacing|between)/ },
    { word: 'picketWidth', after: /^\s*(?:mm |in )?(?:wide )?(?:pickets?|palings?|pales?|slats?|boards?)/ },
    { word: 'picketWidth', before: /(?:pickets?|palings?|pales?|slats?|boards?)(?: are| of|'re| is|,)*\s*$/ },
    ...wideRoles,
  ])
  if (!told || !['wantedGap', 'picketWidth'].every((word) => told.some((it) => it.word === word))) return undefined
  const isWide = told.some((it) => it.word === 'leafWidth') || knows(heard, 'leafWidth')
  return isWide && spots.every((it) => isLength(it.reading))
    ? requestFor('pickets-on-leaf', ['picketsOnLeaf'], told)
    : undefined
}
