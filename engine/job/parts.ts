// This file is about which calculations make up a whole fence, and at which of its places each is worked.
// They join through words: what one gives, another takes. Only what is asked for, and what it hangs on, is ever worked.
import type { Calculation } from '../calculation.ts'
import { cutPlan } from '../calculations/buying/cut-plan.ts'
import { takeOff } from '../calculations/buying/take-off.ts'
import { finishAreaOf } from '../calculations/finish/finish-area.ts'
import { finishQuantity } from '../calculations/finish/finish-quantity.ts'
import { railBrackets } from '../calculations/frame/rail-brackets.ts'
import { railsBetweenPosts } from '../calculations/frame/rails-between-posts.ts'
import { railsOfFence } from '../calculations/frame/rails-of-fence.ts'
import { picketScrews } from '../calculations/frame/picket-screws.ts'
import { gateBrace } from '../calculations/gates/gate-brace.ts'
import { gateHardware } from '../calculations/gates/gate-hardware.ts'
import { gateLeaf } from '../calculations/gates/gate-leaf.ts'
import { picketsOnGates } from '../calculations/gates/pickets-on-gates.ts'
import { bagYieldByWeight } from '../calculations/ground/bag-yield.ts'
import { concreteForPosts } from '../calculations/ground/concrete-for-posts.ts'
import { diggingHours } from '../calculations/ground/digging-hours.ts'
import { gravelForHoles } from '../calculations/ground/gravel-for-holes.ts'
import { postDepth } from '../calculations/ground/post-depth.ts'
import { spoilOfHoles } from '../calculations/ground/spoil-of-holes.ts'
import { openingOfBay } from '../calculations/layout/opening-of-bay.ts'
import { postsOfFence } from '../calculations/layout/posts-of-fence.ts'
import { rakedRun } from '../calculations/layout/raked-run.ts'
import { runInPieces } from '../calculations/layout/run-in-pieces.ts'
import { runSetOut } from '../calculations/layout/run-set-out.ts'
import { stepOfRun } from '../calculations/layout/step-of-run.ts'
import { picketSpacing } from '../calculations/pickets/picket-spacing.ts'
import { picketsOfFence } from '../calculations/pickets/pickets-of-fence.ts'
import { picketsTouchingPosts } from '../calculations/pickets/pickets-touching-posts.ts'
import { deliverOrHaul } from '../calculations/buying/deliver-or-haul.ts'
import { loadOverhang } from '../calculations/ground/load-overhang.ts'
import { haulTrips } from '../calculations/ground/haul-trips.ts'
import { daysOfTasks } from '../calculations/time/days-of-tasks.ts'
import { jobHours } from '../calculations/time/job-hours.ts'
import { jobCalendar } from '../calculations/time/job-calendar.ts'
import { archedTop } from '../calculations/tops/arched-top.ts'
import { embedmentCheck } from '../calculations/strength/embedment-check.ts'
import { stickWeightOf } from '../calculations/wood/stick-weight.ts'
import { runsFromPoints } from '../calculations/site/runs-from-points.ts'
import { slopeOfGround } from '../calculations/site/slope-of-ground.ts'
import { digNotice } from '../calculations/site/dig-notice.ts'
import type { Value } from '../quantities/quantity.ts'

/** Where a part is worked: once for the yard, or for each run, bay, gate or kind of post. */
export type Level = 'yard' | 'run' | 'bay' | 'gate' | 'kind'

export interface Part {
  readonly calculation: Calculation
  readonly level: Level
  /** What it takes under another name: the level distance of a slope is the run's length. */
  readonly takes?: Readonly<Record<string, string>>
  /** What is taken in place of a word that nobody told. */
  readonly orElse?: Readonly<Record<string, string>>
  /** The only results that others take of it, and under which name; all of them, as they are called, when left out. */
  readonly as?: Readonly<Record<string, string>>
  /** Worked for the kinds of post side by side. */
  readonly byKind?: true
  /** What it took as usual, and others then take too: one fence has one depth of stone. */
  readonly shares?: readonly string[]
  /** What it may do without and still asks for, since it would leave out a part of the fence. */
  readonly asksFor?: readonly string[]
  /** Words that one working over all runs can take only where every run has the same. */
  readonly alike?: readonly string[]
  /** What it cannot do without; others that can do without it do not ask for it. */
  readonly needsTold?: string
  /** Holds only where this choice was made. */
  readonly when?: { readonly word: string; readonly is: (value: Value | undefined) => boolean }
}

const stepped = { word: 'slopeWay', is: (value: Value | undefined) => value === 'stepped' }
const raked = { word: 'slopeWay', is: (value: Value | undefined) => value === 'raked' }
const tight = { word: 'picketEnds', is: (value: Value | undefined) => value === 'picket' }
const gapped = { word: 'picketEnds', is: (value: Value | undefined) => value !== 'picket' }
const level = { word: 'slopeWay', is: (value: Value | undefined) => value !== 'raked' }
const centred = { word: 'bayCentres', is: (value: Value | undefined) => value !== undefined }
const arched = { word: 'archRise', is: (value: Value | undefined) => value !== undefined }
const framed = { word: 'insideHeight', is: (value: Value | undefined) => value !== undefined }
const timed = { word: 'dayHours', is: (value: Value | undefined) => value !== undefined }
const called = { word: 'callDate', is: (value: Value | undefined) => value !== undefined }

const ofOnePicket = ['picketWidth', 'picketLength', 'picketThickness', 'railDepth', 'railThickness', 'rails']

/** The cut plan of one section of timber, once it is told which lengths are sold. */
function cutFrom(stock: string, takes: Part['takes'], as: Part['as'], orElse: Part['orElse'] = {}): Part {
  return { calculation: cutPlan, level: 'yard', takes: takes ?? {}, as: as ?? {}, orElse, needsTold: stock }
}

/** In the order in which a job meets them. */
export const parts: readonly Part[] = [
  { calculation: runsFromPoints, level: 'yard', needsTold: 'pointsAcross' },
  { calculation: runInPieces, level: 'run', needsTold: 'runPieces' },
  { calculation: runSetOut, level: 'run' },
  { calculation: slopeOfGround, level: 'run', takes: { levelDistance: 'runLength' }, as: { slope: 'slope' } },
  { calculation: stepOfRun, level: 'run', when: stepped },
  { calculation: openingOfBay, level: 'bay', when: centred },
  { calculation: picketSpacing, level: 'bay', when: gapped },
  { calculation: picketsTouchingPosts, level: 'bay', when: tight, orElse: { widestGap: 'wantedGap' } },
  {
    calculation: railsBetweenPosts,
    level: 'bay',
    when: level,
    as: { railCut: 'railCut', railsInAll: 'railsOfStretch' },
  },
  { calculation: rakedRun, level: 'bay', when: raked, as: { rakedBlank: 'railCut', plumbCut: 'plumbCut' } },
  { calculation: archedTop, level: 'bay', when: arched },
  { calculation: gateLeaf, level: 'gate' },
  { calculation: gateLeaf, level: 'gate', as: { leafRail: 'insideWidth' }, when: framed },
  { calculation: gateBrace, level: 'gate', when: framed },
  {
    // The leaf's frame stands where posts would: a picket is flush with each of its edges.
    calculation: picketsTouchingPosts,
    level: 'gate',
    takes: { opening: 'leafWidth' },
    as: { pickets: 'picketsEachGate' },
    orElse: { widestGap: 'wantedGap' },
  },
  {
    calculation: stickWeightOf,
    level: 'bay',
    takes: {
      lumberLength: 'railCut',
      lumberWidth: 'railDepth',
      lumberThickness: 'railThickness',
      sticks: 'railsOfStretch',
    },
    as: { sticksWeight: 'railsWeight' },
  },
  { calculation: postsOfFence, level: 'yard' },
  {
    calculation: postDepth,
    level: 'kind',
    asksFor: ['codeDepth'],
    shares: ['stoneDepth'],
    as: { holeDepth: 'holeDepth', postLength: 'postLength', embedment: 'embedment' },
  },
  { calculation: embedmentCheck, level: 'kind', as: { codeDepth: 'codeDepth' }, needsTold: 'sideForce' },
  {
    calculation: stickWeightOf,
    level: 'kind',
    takes: { lumberLength: 'postLength', lumberWidth: 'postWidth', lumberThickness: 'postWidth', sticks: 'posts' },
    as: { sticksWeight: 'postsWeight' },
  },
  { calculation: bagYieldByWeight, level: 'yard', as: { bagYield: 'bagYield' } },
  { calculation: concreteForPosts, level: 'yard', byKind: true },
  {
    calculation: gravelForHoles,
    level: 'yard',
    byKind: true,
    as: { gravelInPlace: 'gravelInPlace', gravel: 'gravel', gravelLoad: 'gravelLoad', buckets: 'buckets' },
  },
  { calculation: spoilOfHoles, level: 'yard', byKind: true },
  { calculation: diggingHours, level: 'yard' },
  { calculation: picketsOnGates, level: 'yard' },
  { calculation: picketsOfFence, level: 'yard' },
  { calculation: railsOfFence, level: 'yard' },
  { calculation: concreteForPosts, level: 'run' },
  { calculation: gravelForHoles, level: 'run', as: { gravel: 'gravel', gravelLoad: 'gravelLoad', buckets: 'buckets' } },
  { calculation: picketsOnGates, level: 'run' },
  { calculation: picketsOfFence, level: 'run' },
  { calculation: railsOfFence, level: 'run' },
  { calculation: railBrackets, level: 'yard' },
  { calculation: picketScrews, level: 'yard' },
  {
    calculation: stickWeightOf,
    level: 'yard',
    takes: {
      lumberLength: 'picketLength',
      lumberWidth: 'picketWidth',
      lumberThickness: 'picketThickness',
      sticks: 'picketsToBuy',
    },
    alike: ofOnePicket,
    as: { sticksWeight: 'picketsWeight' },
  },
  cutFrom(
    'railStock',
    {
      pieceLengths: 'railPieces',
      pieceCounts: 'railsByLength',
      stockLengths: 'railStock',
      stockPrices: 'railStockPrices',
      smallLengths: 'capPieces',
      smallCounts: 'capPieceCounts',
    },
    {
      boardsToCut: 'railSticks',
      cutCost: 'railsCost',
      longestBoard: 'railsLongest',
      smallsFromOffcuts: 'capsFromRails',
    },
    { capPieces: 'smallLengths', capPieceCounts: 'smallCounts' },
  ),
  cutFrom(
    'postStock',
    {
      pieceLengths: 'postLengths',
      pieceCounts: 'postsByLength',
      stockLengths: 'postStock',
      stockPrices: 'postStockPrices',
    },
    { boardsToCut: 'postBoards', cutCost: 'postsCost', longestBoard: 'postsLongest' },
  ),
  cutFrom(
    'picketStock',
    {
      pieceLengths: 'picketLength',
      pieceCounts: 'picketsToBuy',
      stockLengths: 'picketStock',
      stockPrices: 'picketStockPrices',
    },
    { boardsToCut: 'picketSticks', cutCost: 'picketsCost', longestBoard: 'picketsLongest' },
  ),
  { calculation: gateHardware, level: 'yard' },
  { calculation: finishAreaOf, level: 'yard', asksFor: ['picketsHung', 'railLengthAll', 'posts'], alike: ofOnePicket },
  { calculation: finishQuantity, level: 'yard' },
  {
    calculation: takeOff,
    level: 'yard',
    asksFor: [
      'postsByLength',
      'railsInAll',
      'picketsToBuy',
      'bags',
      'gravel',
      'finishCans',
      'railSticks',
      'postBoards',
      'picketSticks',
    ],
  },
  { calculation: haulTrips, level: 'yard', takes: { loadWeight: 'takeOffWeight' } },
  { calculation: loadOverhang, level: 'yard' },
  { calculation: deliverOrHaul, level: 'yard', takes: { loadWeight: 'takeOffWeight' } },
  { calculation: jobHours, level: 'yard', asksFor: ['picketsHung', 'railsInAll', 'posts'] },
  { calculation: daysOfTasks, level: 'yard', when: timed },
  {
    calculation: digNotice,
    level: 'yard',
    as: { firstDigDay: 'firstDigDay', lastTicketDay: 'lastTicketDay', renewBy: 'renewBy', holesADay: 'holesADay' },
    when: called,
  },
  { calculation: jobCalendar, level: 'yard', when: called },
]

const givers = new Map<string, Part[]>()
for (const part of parts)
  for (const name of part.as ? Object.values(part.as) : Object.keys(part.calculation.gives))
    givers.set(name, [...(givers.get(name) ?? []), part])

/** The parts that give a word at such a place. */
export const givingAt = (word: string, at: Level): Part[] =>
  (givers.get(word) ?? []).filter((part) => part.level === at)

/** What a part calls the word that others know by another name. */
export const ownName = (part: Part, word: string): string =>
  part.as ? (Object.keys(part.as).find((name) => part.as?.[name] === word) ?? word) : word

/** Words that may be told of one run, or of a bay or gate in it: what the parts there take, and what stands in a run. */
export const ofRuns: ReadonlySet<string> = new Set([
  ...parts
    .filter((it) => it.level === 'run' || it.level === 'bay' || it.level === 'gate')
    .flatMap((it) => [
      ...Object.keys(it.calculation.needs),
      ...Object.values(it.takes ?? {}),
      ...(it.when ? [it.when.word] : []),
    ]),
  'gates',
  'gateOpening',
  'gateStart',
  'runEnds',
  'cornerAngle',
])

/** All that the parts take, as one: what a person may be telling who plans a whole fence and asks nothing yet. */
export const wholeFence: Calculation = {
  ...takeOff,
  name: 'whole-fence',
  needs: Object.fromEntries(
    parts.flatMap(({ calculation, takes }) =>
      Object.values(calculation.needs)
        .filter((word) => !word.unsaid && !takes?.[word.name])
        .map((word) => [word.name, word] as const),
    ),
  ),
  onlyFor: {},
  may: [],
}

/** What a person looks at first when something changes, or when plans stand side by side. */
export const looksAt: readonly string[] = [
  'bays',
  'posts',
  'picketsToBuy',
  'railsInAll',
  'brackets',
  'screwsToBuy',
  'bags',
  'gravel',
  'soilOut',
  'finishArea',
  'finishCans',
  'hinges',
  'workTime',
  'takeOffWeight',
  'takeOffCost',
]
