// This file is about rails cut and hung: lengths, boards, brackets, heights, joints.
import { word } from './word.ts'

export const fitAllowance = word<'length'>('fitAllowance', {
  kind: 'length',
  label: 'play at each end of a rail',
  units: { imperial: 'in', metric: 'mm' },
  measure:
    'What is left between rail end and post so that it goes in: nothing in a tight joint, a little in a bracket.',
  ask: 'How much play do you want at each end of a rail?',
  called: {
    names: ['fit allowance', 'play at each end', 'play', 'clearance at each end', 'gap at each end of the rail'],
    things: ['play'],
    sides: ['play', 'allowance'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '1 in' },
  usual: {
    value: '1/8 in',
    metric: '3 mm',
    because: 'a rail cut to the exact opening does not go in',
    from: 'common practice, no source',
  },
})

export const railCut = word<'length'>('railCut', {
  kind: 'length',
  label: 'rail, as cut',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between the post faces, less the play at both ends.',
  ask: 'How long is a rail cut?',
  called: {
    names: ['rail length', 'length of the rails'],
    things: ['rail'],
    sides: ['long', 'length'],
    asks: [
      'how long do i cut the rails',
      'how long are the rails',
      'rail length',
      'cut the rails',
      'how long is a rail',
      'length of the rails',
      'how long each rail',
    ],
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '24 ft' },
})

export const railsInAll = word<'count'>('railsInAll', {
  kind: 'count',
  noun: 'rail',
  label: 'rails in all',
  whole: true,
  measure: 'Rails in a bay times the bays.',
  ask: 'How many rails in all?',
  called: {
    names: ['rails in all'],
    things: ['rail', 'rails', 'stringer'],
    asks: ['how many rails', 'rails do i need', 'number of rails', 'how many stringers'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '600' },
})

export const railsPerBoard = word<'count'>('railsPerBoard', {
  kind: 'count',
  noun: 'rail',
  label: 'rails from one board',
  whole: true,
  measure: 'With a saw cut between them.',
  ask: 'How many rails come out of one board?',
  called: {
    names: ['rails per board', 'rails from one board'],
    asks: ['how many rails from one board', 'rails per board', 'how many from each board'],
  },
})

export const railBoards = word<'count'>('railBoards', {
  kind: 'count',
  noun: 'board',
  label: 'boards to buy for the rails',
  whole: true,
  measure: 'Whole boards of the length given.',
  ask: 'How many boards for the rails?',
  called: {
    names: ['boards for the rails'],
    asks: [
      'how many boards for the rails',
      'how many 2x4',
      'boards to buy for rails',
      'how many boards do i buy',
      'boards for rails',
      'how many boards',
    ],
  },
})

export const railOffcut = word<'length'>('railOffcut', {
  kind: 'length',
  label: 'left over from each full board',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'After the rails and the cuts between them.',
  ask: 'What is left of each board?',
  called: { names: ['offcut of the rails'], asks: ['what is left of each board', 'offcut', 'waste per board'] },
})

// ── rails across the faces of the posts ──

export const jointEvery = word<'count'>('jointEvery', {
  kind: 'count',
  noun: 'bay',
  label: 'bays that one board spans',
  whole: true,
  measure: 'A joint must come on a post.',
  ask: 'How many bays does one board span?',
  called: {
    names: ['bays per board'],
    asks: [
      'how many bays does a board span',
      'where do the joints come',
      'where do the joints fall',
      'span two bays',
      'joints on posts',
      'which posts carry the joints',
    ],
  },
})

export const boardsPerRow = word<'count'>('boardsPerRow', {
  kind: 'count',
  noun: 'board',
  label: 'boards in one row of rail',
  whole: true,
  measure: 'End to end along the run.',
  ask: 'How many boards are in one row?',
  called: { names: ['boards in one row'], asks: ['boards per row', 'boards in a row'] },
})

export const faceBoards = word<'count'>('faceBoards', {
  kind: 'count',
  noun: 'board',
  label: 'boards for rails across the posts',
  whole: true,
  measure: 'All rows together.',
  ask: 'How many boards for rails across the posts?',
  called: {
    names: ['boards across the posts'],
    asks: [
      'boards across the posts',
      'how many boards across the faces',
      'how many boards for rails across',
      'boards for face rails',
      'rails across the face of the posts',
    ],
  },
})

export const faceCut = word<'length'>('faceCut', {
  kind: 'length',
  label: 'each board cut to',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From joint to joint, post centre to post centre.',
  ask: 'To what length is each board cut?',
  called: { names: ['board cut'], asks: ['how long is each board cut', 'length between joints'] },
})

export const endBoard = word<'length'>('endBoard', {
  kind: 'length',
  label: 'first and last board of a row',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From a joint to the outer face of the end post.',
  ask: 'How long are the boards at the ends of the run?',
  called: { names: ['end board'], asks: ['how long is the end board', 'how long are the end boards'] },
})

// ── heights of rails, brackets ──

export const overTop = word<'length'>('overTop', {
  downward: true,
  kind: 'length',
  label: 'picket above the top rail',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the top edge of the top rail to the top of the picket.',
  ask: 'How far do the pickets stand above the top rail?',
  called: {
    names: [
      'above the top rail',
      'over the top rail',
      'overhang at the top',
      'past the top rail',
      'below the tips',
      'below the tops',
      'below the picket tops',
      'below the points',
      'down from the tips',
      'down from the tops',
      'down from the top',
      'from the tips',
    ],
    things: ['top rail'],
    sides: ['above', 'over', 'past'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '1 in', to: '18 in' },
  usual: {
    value: '6 in',
    metric: '150 mm',
    because: 'the points stand clear of the rail',
    from: 'common practice, no source',
  },
})

export const underBottom = word<'length'>('underBottom', {
  kind: 'length',
  label: 'picket below the bottom rail',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the bottom edge of the bottom rail to the foot of the picket.',
  ask: 'How far do the pickets hang below the bottom rail?',
  called: {
    names: [
      'below the bottom rail',
      'under the bottom rail',
      'overhang at the bottom',
      'past the bottom rail',
      'above the picket bottoms',
      'above the bottoms',
      'above the feet',
      'up from the bottom',
      'up from the bottoms',
      'up from the feet',
    ],
    things: ['bottom rail'],
    sides: ['below', 'under', 'past'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '1 in', to: '18 in' },
  usual: {
    value: '6 in',
    metric: '150 mm',
    because: 'the foot is held, and the rail stays clear of grass',
    from: 'common practice, no source',
  },
})

export const footGap = word<'length'>('footGap', {
  kind: 'length',
  label: 'picket’s foot above the ground',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the ground to the foot of the picket.',
  ask: 'How far above the ground do the pickets end?',
  called: {
    names: ['off the ground', 'above the ground', 'clear of the ground', 'bottom clearance', 'gap at the bottom'],
    things: ['picket'],
    sides: ['off', 'clear'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '8 in' },
  usual: {
    value: '2 in',
    metric: '50 mm',
    because: 'end grain lasts longer clear of soil and wet grass',
    from: 'common practice, no source',
  },
})

export const bottomRailAt = word<'length'>('bottomRailAt', {
  kind: 'length',
  label: 'top edge of the bottom rail, above ground',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Mark it on every post from the ground, or level from a string.',
  ask: 'How high is the bottom rail?',
  called: {
    names: ['bottom rail height'],
    asks: ['how high is the bottom rail', 'where does the bottom rail go', 'bottom rail height'],
  },
})

export const topRailAt = word<'length'>('topRailAt', {
  kind: 'length',
  label: 'top edge of the top rail, above ground',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Mark it on every post from the ground, or level from a string.',
  ask: 'How high is the top rail?',
  called: {
    names: ['top rail height'],
    asks: [
      'how high are the rails',
      'rail heights',
      'where do the rails go',
      'how high is the top rail',
      'where does the top rail go',
      'height of the rails',
      'how high do i set the rails',
      'how high up',
    ],
  },
})

export const railsApart = word<'length'>('railsApart', {
  kind: 'length',
  label: 'rails apart, top edge to top edge',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From one rail to the next.',
  ask: 'How far are the rails apart?',
  called: {
    names: ['rails apart', 'rail tops apart', 'between the rails', 'rails are', 'tops of the rails'],
    things: ['rail'],
    sides: ['apart', 'tops', 'spacing'],
    plainly: true,
    asks: ['how far apart are the rails', 'rails apart', 'spacing of the rails'],
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '8 ft' },
})

export const brackets = word<'count'>('brackets', {
  kind: 'count',
  noun: 'bracket',
  label: 'brackets',
  whole: true,
  measure: 'One at each end of each rail.',
  ask: 'How many brackets?',
  called: {
    names: ['rail brackets'],
    things: ['bracket', 'hanger', 'rail bracket', 'fence bracket'],
    asks: ['how many brackets', 'how many rail brackets', 'brackets do i need', 'how many hangers'],
  },
})

export const screwsEachBracket = word<'count'>('screwsEachBracket', {
  kind: 'count',
  noun: 'screw',
  label: 'screws for one bracket',
  whole: true,
  measure: 'Count the holes in it, for post and rail.',
  ask: 'How many screws does one bracket take?',
  called: {
    names: ['screws per bracket', 'screws each bracket', 'holes in the bracket'],
    things: ['screws per bracket'],
  },
  possible: { least: '1' },
  plausible: { from: '2', to: '20' },
})

export const bracketScrews = word<'count'>('bracketScrews', {
  kind: 'count',
  noun: 'screw',
  label: 'screws for the brackets',
  whole: true,
  measure: 'All brackets together.',
  ask: 'How many screws for the brackets?',
  called: {
    names: ['bracket screws'],
    asks: ['how many screws for the brackets', 'bracket screws', 'screws for brackets'],
  },
})
