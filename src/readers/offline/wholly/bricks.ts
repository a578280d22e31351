// This file is about a mowing edge of bricks: “13.4 m, side by side across, 215 by 103, 10 mm joints”, “they sit on 30 mm of mortar, 215 wide”.
import type { Request, Told } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { chosenBy, requestFor, tell } from '../request-parts.ts'
import { boundBy, isAbout, knows, type Role, type Spot, spotsOf } from './spots.ts'

const ofBricks = /\b(?:bricks?|pavers?|mowing (?:edge|strip))\b/i

export const brickIn = (heard: Heard): Request | undefined => concreteStripIn(heard) ?? mortarIn(heard) ?? edgeIn(heard)

const runRoles: readonly Role[] = [
  {
    word: 'edgeRun',
    after: /^\s*(?:m |ft |feet |metres? )?(?:long|of (?:edge|edging|fence|it)|run|in length|edge|mowing|length)/,
  },
  { word: 'edgeRun', before: /(?:edge|strip|run|length|fence|border|for|is|along)(?: of| is| a| the|:|=|,)*\s*$/ },
]

/** “A concrete strip 250 wide, 80 deep and 24 m of it: how many cubic metres?” */
function concreteStripIn(heard: Heard): Request | undefined {
  const { said } = heard
  if (
    !/\bconcrete\b[^.?!]*\b(?:strip|edge|edging|kerb|curb|border|band)\b|\b(?:strip|edge|edging|kerb|curb|border|band) of concrete\b/i.test(
      said,
    )
  )
    return undefined
  if (!/\bhow (?:much|many)\b|\bvolume\b/i.test(said) || /\b(?:holes?|posts?|bags?|gravel|stone|sand)\b/i.test(said))
    return undefined
  const told = boundBy(spotsOf(heard), [
    { word: 'edgeWidth', after: /^\s*(?:mm |in |cm )?(?:wide|across)\b/ },
    { word: 'edgeDepth', after: /^\s*(?:mm |in |cm )?(?:deep|thick)\b/ },
    ...runRoles,
    { word: 'edgeRun', after: /^\s*(?:m |ft |feet |metres? )?(?:of (?:it|strip|them)|all (?:along|told))/ },
  ])
  return told?.length === 3 ? requestFor('cast-edge', ['stripConcrete'], told) : undefined
}

/** “On 30 mm of mortar, 215 wide: how many litres?” */
function mortarIn(heard: Heard): Request | undefined {
  const { said } = heard
  if (
    !/\b(?:mortar|muck|bedding|bed)\b/i.test(said) ||
    !(ofBricks.test(said) || isAbout(heard, 'brick-edge', 'brick-mortar'))
  )
    return undefined
  if (!/\b(?:how (?:much|many)|lit(?:re|er)s|what)\b/i.test(said) || /\bbags?|sand|joints?\b/i.test(said))
    return undefined
  const told = boundBy(spotsOf(heard), [
    { word: 'edgeWidth', after: /^\s*(?:mm |in )?wide/ },
    { word: 'edgeWidth', before: /(?:wide|width)(?: of| is|:|=)*\s*$/ },
    {
      word: 'mortarDepth',
      after: /^\s*(?:mm |in )?(?:of )?(?:thick |deep )?(?:mortar|muck|bed)|^\s*(?:mm |in )?(?:thick|deep)\b/,
    },
    { word: 'mortarDepth', before: /(?:mortar|bed)(?: is| of| bed|,|:|=| about)*\s*$/ },
    ...runRoles,
  ])
  const has = (word: string): boolean => (told ?? []).some((it) => it.word === word) || knows(heard, word)
  return told && told.length > 0 && has('edgeRun') && has('mortarDepth')
    ? requestFor('brick-mortar', ['mortarBed'], told)
    : undefined
}

const lies: readonly (readonly [option: string, said: RegExp])[] = [
  ['on-end', /\b(?:on end|stood up|standing up(?:right)?|upright)\b/i],
  ['edge-to-end', /\bon edge,? end to end\b/i],
  ['on-edge', /\bon (?:edge|their edges?|its edge)\b/i],
  [
    'across',
    /\b(?:side by side|soldier(?: course)?|(?:laid |lying |turned )?across(?: it| the (?:strip|edge|line))?|crosswise|crossways|header course)\b/i,
  ],
  ['end-to-end', /\b(?:end to end|end-to-end|lengthwise|lengthways|long ways?|nose to tail|stretchers?)\b/i],
]

/** “215 by 103, laid side by side across”: the larger size is its length. */
function edgeIn(heard: Heard): Request | undefined {
  const { said } = heard
  if (
    !ofBricks.test(said) ||
    !/\bhow many\b/i.test(said) ||
    /\b(?:sand|base|gravel|concrete|pallets?|rows?|cost|price)\b/i.test(said)
  )
    return undefined
  const spots = spotsOf(heard)
  const at = spots.findIndex((it, i) => /^\s*(?:mm |in )?(?:x|by|×)\s*$/.test(it.after) && spots[i + 1])
  const lie = lies.find((it) => it[1].test(said))
  if (at < 0 || !lie) return undefined
  const third = /^\s*(?:mm |in )?(?:x|by|×)\s*$/.test(spots[at + 1]?.after ?? '') ? spots[at + 2] : undefined
  const sizes = [spots[at], spots[at + 1], ...(third ? [third] : [])] as Spot[]
  const order = [...sizes].sort((a, b) => sizeOf(b) - sizeOf(a))
  const words = ['brickLength', 'brickWidth', 'brickHeight']
  if (new Set(order.map(sizeOf)).size < order.length || (third === undefined && lie[0].includes('edge')))
    return undefined
  const rest = boundBy(
    spots.filter((it) => !sizes.includes(it)),
    [
      { word: 'brickJoint', after: /^\s*(?:mm |in )?(?:wide )?(?:mortar )?(?:joints?|gaps?|between)/ },
      { word: 'brickJoint', before: /(?:joints?|gaps?)(?: of| are| is|:|=| about)*\s*$/ },
      ...runRoles,
    ],
  )
  if (!rest || !(rest.some((it) => it.word === 'edgeRun') || knows(heard, 'edgeRun'))) return undefined
  const told: Told[] = [
    ...rest,
    ...order.map((it, i) => tell(words[i] as string, it.reading.tag)),
    chosenBy('brickLies', lie[0], (lie[1].exec(said) as RegExpExecArray)[0]),
  ]
  return requestFor('brick-edge', ['bricks'], told)
}
const sizeOf = ({ reading: { quantity, bare } }: Spot): number =>
  (quantity?.amount as { valueOf(): number } | undefined)?.valueOf() ?? bare?.valueOf() ?? 0
