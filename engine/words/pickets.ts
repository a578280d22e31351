// This file is about pickets in a bay.
import { word } from './word.ts'

export const opening = word<'length'>('opening', {
  kind: 'length',
  label: 'opening',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Measure from post face to post face, at rail height: the clear opening, not centre to centre.',
  ask: 'How wide is the opening, from post face to post face?',
  called: {
    names: [
      'clear opening',
      'between posts',
      'between the posts',
      'between post faces',
      'opening',
      'clear width',
      'face to face',
      'clear between',
      'inside the posts',
      'odd bay',
      'space to fill',
      'width to fill',
      'gap to fill',
      'post to post',
      'in a gap',
      'gap of',
      'fit in',
      'fit into',
      'go in',
      'fit between',
      'bay width',
      'bay is',
      'bay of',
      'section is',
      'inside to inside',
    ],
    things: ['gap', 'opening', 'bay', 'section', 'panel', 'space', 'bays', 'stretch'],
    sides: ['wide', 'width', 'clear', 'between', 'across', 'odd', 'opening', 'inside'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '12 in', to: '16 ft' },
})

export const picketWidth = word<'length'>('picketWidth', {
  kind: 'length',
  label: 'picket width',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Measure across the face of a few: a 1x4 is 3 1/2 in.',
  ask: 'How wide is a picket, measured across its face?',
  called: {
    names: ['picket width', 'width of the picket', 'board width', 'picket face'],
    things: ['picket', 'board', 'slat', 'pale', 'paling', 'upright board', 'fence board', 'batten', 'pkt', 'stave'],
    sides: ['wide', 'width', 'across', 'face', 'actual'],
    plainly: true,
  },
  ofStick: 'width',
  possible: { above: '0 in' },
  plausible: { from: '3/4 in', to: '12 in' },
})

export const widestGap = word<'length'>('widestGap', {
  replaces: ['wantedGap', 'pickets'],
  kind: 'length',
  label: 'widest gap allowed',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'No gap may be wider than this; it may be just as wide.',
  ask: 'How wide may a gap between pickets be at most?',
  called: {
    names: [
      'gap',
      'spacing',
      'gap between',
      'space between',
      'widest gap',
      'maximum gap',
      'max gap',
      'biggest gap',
      'largest gap',
      'gap limit',
      'gaps no wider',
      'gaps of at most',
      'gap at most',
    ],
    things: ['gap', 'space', 'spacing', 'picket', 'board', 'slat', 'paling'],
    sides: ['most', 'max', 'maximum', 'limit', 'wider', 'apart', 'spaced'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '8 in' },
})

export const wantedGap = word<'length'>('wantedGap', {
  replaces: ['widestGap', 'pickets', 'boardLap'],
  kind: 'length',
  label: 'gap you would like',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The gap to come near to, either way.',
  ask: 'What gap between pickets would you like, about?',
  called: {
    names: ['gap', 'spacing', 'space between', 'gap between', 'of air'],
    things: ['gap', 'space', 'spacing', 'picket', 'board', 'slat', 'paling'],
    sides: ['apart', 'spaced'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '8 in' },
})

// A rule that names a ball stands beside the gap that is wished for: neither puts the other out of date.
export const sphere = word<'length'>('sphere', {
  replaces: ['pickets'],
  kind: 'length',
  label: 'ball that must not pass',
  units: { imperial: 'in', metric: 'mm' },
  measure:
    'The size of the ball your rule names. A gap of exactly this size lets it through, so every gap must be less.',
  ask: 'What ball must not pass between the pickets?',
  called: {
    names: [
      'sphere',
      'ball',
      'must not pass',
      "can't pass",
      'cannot pass',
      'sphere rule',
      'ball rule',
      'pass through',
      'fit through',
    ],
    things: ['sphere', 'ball', 'head'],
    sides: ['pass', 'through'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '8 in' },
})

export const tapeMark = word<'length'>('tapeMark', {
  kind: 'length',
  label: 'finest mark used on the tape',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The finest mark you will work to.',
  ask: 'To which mark on the tape do you work?',
  called: { names: ['tape mark', 'to the nearest', 'nearest', 'mark to'], sides: ['nearest', 'mark'] },
  possible: { above: '0 in' },
  plausible: { from: '1/64 in', to: '1 in' },
  usual: {
    value: '1/16 in',
    metric: '1 mm',
    because: 'the finest marks on a common tape',
    from: 'common practice, no source',
  },
})

export const pickets = word<'count'>('pickets', {
  replaces: ['widestGap', 'wantedGap', 'sphere'],
  kind: 'count',
  noun: 'picket',
  label: 'pickets in one bay',
  whole: true,
  // More are several bays at once, or a slip of the unit.
  possible: { least: '1', most: '20000' },
  plausible: { from: '1', to: '400' },
  measure: 'Counted between two posts.',
  ask: 'How many pickets in the bay?',
  called: {
    names: [
      'number of pickets',
      'picket count',
      'pickets per bay',
      'pickets a bay',
      'pickets in each bay',
      'pickets each bay',
      'per bay',
      'a bay',
      'in each bay',
    ],
    things: ['picket', 'board', 'slat', 'pale', 'paling', 'batten', 'pkt'],
    asks: [
      'how many pickets',
      'how many boards',
      'how many slats',
      'how many pales',
      'how many palings',
      'pickets do i need',
      'pickets fit',
      'pickets go',
      'pickets per',
      'how many fit',
      'how many go in',
    ],
  },
})

export const gap = word<'length'>('gap', {
  kind: 'length',
  label: 'gap, exactly',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The one gap that makes them come out even.',
  ask: 'What gap makes the pickets come out even?',
  called: { names: ['exact gap'], asks: ['exact gap', 'exact spacing', 'what exact gap'] },
})

export const tapeGap = word<'length'>('tapeGap', {
  kind: 'length',
  label: 'gap by the tape',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The gap at the nearest mark on the tape: for a spacer block, not for stepping the whole bay.',
  ask: 'What gap by the tape?',
  called: {
    names: ['gap by the tape', 'spacer', 'spacer block', 'gap on the tape'],
    things: ['gap', 'spacing', 'space'],
    asks: [
      'how wide a spacer',
      'spacer block',
      'what spacer',
      'what spacing',
      'what gap',
      'what gaps',
      'how far apart',
      'picket spacing',
      'spacing for',
      'what space',
      'how to space',
      'how should i space',
      'how do i space',
      'space the pickets',
      'space them',
      'even gaps',
      'come out even',
      'what is the gap',
      'spacing should',
      'gap should',
      'gap between',
      'work out the spacing',
      'space pickets',
      'spacing',
      'gap size',
      'equal gaps',
      'layout the pickets',
      'lay out the pickets',
    ],
  },
})

export const lastGap = word<'length'>('lastGap', {
  kind: 'length',
  label: 'last gap, if the tape gap were stepped along',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What would be left at the far post.',
  ask: 'What would the last gap be?',
  called: { names: ['last gap'], asks: ['last gap', 'left over at the end'] },
})

export const gapOneFewer = word<'length'>('gapOneFewer', {
  kind: 'length',
  label: 'gap with one picket fewer',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The next count down.',
  ask: 'What gap with one picket fewer?',
  called: {
    names: ['one picket fewer', 'one fewer', 'one less picket'],
    asks: ['one picket fewer', 'one fewer', 'one less picket'],
  },
})

export const gapOneMore = word<'length'>('gapOneMore', {
  kind: 'length',
  label: 'gap with one picket more',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The next count up.',
  ask: 'What gap with one picket more?',
  called: { names: ['one picket more', 'one more picket'], asks: ['one more picket', 'one picket more'] },
})

export const picketThickness = word<'length'>('picketThickness', {
  kind: 'length',
  label: 'picket thickness',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Measure a few, front to back: a 1x4 is 3/4 in.',
  ask: 'How thick is a picket, front to back?',
  called: {
    names: ['picket thickness', 'thickness of the picket', 'board thickness'],
    things: ['picket', 'board', 'slat', 'pale', 'paling'],
    sides: ['thick', 'thickness'],
  },
  ofStick: 'thickness',
  possible: { above: '0 in' },
  plausible: { from: '3/8 in', to: '3 in' },
  usual: {
    value: '3/4 in',
    metric: '19 mm',
    because: 'a nominal 1 in board is dressed to 3/4 in',
    from: 'PS 20, American Softwood Lumber Standard; the metric size is common practice, no source',
  },
})

export const picketLength = word<'length'>('picketLength', {
  kind: 'length',
  label: 'picket length',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the foot of the picket to the top of its point.',
  ask: 'How long is a picket, foot to top?',
  called: {
    names: ['picket length', 'length of the picket', 'picket height'],
    things: ['picket', 'board', 'slat', 'pale', 'paling'],
    sides: ['long', 'length', 'tall', 'high'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '8 ft' },
})
