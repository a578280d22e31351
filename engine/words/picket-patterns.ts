// This file is about other ways to fill a bay: pickets against the posts or past them, boards butted, lapped or in two layers.
import { word } from './word.ts'

export const pitch = word<'length'>('pitch', {
  kind: 'length',
  label: 'picket to picket',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the edge of one picket to the same edge of the next.',
  ask: 'How far is it from picket to picket?',
  called: { names: ['pitch', 'picket to picket'], asks: ['what pitch', 'pitch of the pickets', 'picket to picket'] },
})

// ── half a gap at each post, or one picket tight against one post ──

export const halfAtEachPost = [
  'half a gap',
  'half gap',
  'half the gap',
  'half a space',
  'half space',
  'half gaps',
  'half spaces',
].flatMap((half) =>
  [
    'at each post',
    'at the posts',
    'at the ends',
    'at each end',
    'at both ends',
    'at both posts',
    'at either end',
    'against each post',
  ].map((where) => `${half} ${where}`),
)
export const tightToOnePost = [
  'tight against',
  'tight to',
  'hard against',
  'against',
  'touching',
  'starting against',
].flatMap((tight) =>
  [
    'one post',
    'a post',
    'a single post',
    'one post only',
    'left post only',
    'right post only',
    'the left post',
    'the right post',
    'left post',
    'right post',
    'first post only',
    'the first post',
  ].map((post) => `${tight} ${post}`),
)

export const gapsAtPosts = word<'choice'>('gapsAtPosts', {
  kind: 'choice',
  label: 'gaps at the posts',
  measure: 'How the pickets begin and end at the posts.',
  ask: 'Is there half a gap at each post, or a picket tight against one post only?',
  called: { names: ['gaps at the posts'] },
  options: {
    half: { label: 'half a gap at each post', called: halfAtEachPost },
    one: { label: 'a picket tight against one post only', called: tightToOnePost },
  },
})

export const postGap = word<'length'>('postGap', {
  kind: 'length',
  label: 'gap at the post',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Half a gap at each post; or, with a picket against one post, the whole gap at the other.',
  ask: 'How wide is the gap at the post?',
  called: { names: ['gap at the post', 'end gap'], asks: ['what gap at the post', 'end gap', 'gap at the end'] },
})

export const picketsEachBay = word<'count'>('picketsEachBay', {
  kind: 'count',
  noun: 'picket',
  label: 'pickets to each bay, running past the posts',
  whole: true,
  measure: 'The same number stands in every bay, so the pattern repeats from post to post.',
  ask: 'How many pickets to each bay when they run past the posts?',
  called: {
    names: ['pickets past the posts'],
    asks: [
      'pickets past the posts',
      'run past the posts',
      'continuous pickets',
      'pickets over the posts',
      'pickets in front of the posts',
    ],
  },
})

export const boards = word<'count'>('boards', {
  kind: 'count',
  noun: 'board',
  label: 'boards in the bay',
  whole: true,
  measure: 'Whole ones and the one that is ripped.',
  ask: 'How many boards fill the bay?',
  called: {
    names: ['boards in the bay'],
    asks: [
      'how many boards fill',
      'boards fill the bay',
      'how many boards to fill',
      'boards butted',
      'boards with no gap',
      'boards tight together',
      'solid boards',
      'how many boards tight',
      'butted boards',
      'boards do i need to fill',
    ],
  },
})

export const lastBoard = word<'length'>('lastBoard', {
  kind: 'length',
  label: 'last board, ripped to',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What is left for the last board when all others are whole.',
  ask: 'How wide is the last board?',
  called: { names: ['last board'], asks: ['how wide is the last board', 'rip the last board', 'last board'] },
})

export const endBoards = word<'length'>('endBoards', {
  kind: 'length',
  label: 'both end boards, if the trim is shared',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The first and the last board ripped alike, so that the bay looks even.',
  ask: 'How wide are the two end boards?',
  called: { names: ['end boards'], asks: ['how wide are the end boards', 'trim both ends', 'end boards'] },
})

export const boardLap = word<'length'>('boardLap', {
  kind: 'length',
  label: 'lap of one board over the next',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far a board lies over its neighbor.',
  ask: 'How far do the boards lap over each other?',
  replaces: ['wantedGap', 'widestGap'],
  called: {
    names: ['lap', 'overlap', 'lapped', 'lapped by', 'laps over', 'overlapping by', 'lapping', 'lap of'],
    things: ['lap', 'overlap'],
    sides: ['lap', 'overlap', 'lapped', 'overlapping'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '4 in' },
})

export const lappedBoards = word<'count'>('lappedBoards', {
  kind: 'count',
  noun: 'board',
  label: 'lapped boards in the bay',
  whole: true,
  measure: 'The fewest with which every lap is at least what you want.',
  ask: 'How many lapped boards fill the bay?',
  called: {
    names: ['lapped boards'],
    asks: [
      'how many lapped boards',
      'lapped boards',
      'boards lapped',
      'overlapping boards',
      'feather edge boards',
      'featheredge',
      'shiplap boards',
      'how many boards overlapping',
    ],
  },
})

export const lapNow = word<'length'>('lapNow', {
  kind: 'length',
  label: 'lap that makes them come out even',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The same at every board.',
  ask: 'What lap makes them come out even?',
  called: { names: ['even lap'], asks: ['what lap', 'what overlap', 'how much overlap', 'how far to lap'] },
})

export const backBoards = word<'count'>('backBoards', {
  kind: 'count',
  noun: 'board',
  label: 'boards in the back layer',
  whole: true,
  measure: 'With gaps between them; a gap against each post is covered from the front too.',
  ask: 'How many boards are in the back layer?',
  called: { names: ['back boards'], asks: ['how many back boards'] },
})

export const frontBoards = word<'count'>('frontBoards', {
  kind: 'count',
  noun: 'board',
  label: 'boards in the front layer',
  whole: true,
  measure: 'One over each gap of the back layer.',
  ask: 'How many boards are in the front layer?',
  called: { names: ['front boards'], asks: ['how many front boards'] },
})

export const bothLayers = word<'count'>('bothLayers', {
  kind: 'count',
  noun: 'board',
  label: 'boards in both layers',
  whole: true,
  measure: 'Back and front together.',
  ask: 'How many boards in all?',
  called: {
    names: ['board on board'],
    asks: [
      'board on board',
      'board-on-board',
      'how many boards for board on board',
      'two layers of boards',
      'shadow box',
      'boards in two layers',
    ],
  },
})

export const coverEachSide = word<'length'>('coverEachSide', {
  kind: 'length',
  label: 'front board covers each back board by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'On both sides of the gap behind it.',
  ask: 'By how much does a front board cover the back ones?',
  called: { names: ['cover each side'], asks: ['how much does it cover', 'cover on each side'] },
})
