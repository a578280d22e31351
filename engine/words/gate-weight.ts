// This file is about what a gate weighs, and how it pulls and drops.
import { word } from './word.ts'

export const leafWeight = word<'mass'>('leafWeight', {
  kind: 'mass',
  label: 'weight of the leaf',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Weigh it: stand on a bathroom scale with and without it. Or add up its boards.',
  ask: 'What does the leaf of the gate weigh?',
  called: {
    names: ['gate weight', 'weight of the gate', 'weight of the leaf', 'gate weighs', 'leaf weighs', 'weighs'],
    things: ['gate', 'leaf'],
    sides: ['weigh', 'weighs', 'weight', 'heavy'],
    plainly: true,
  },
  possible: { above: '0 lb' },
  plausible: { from: '10 lb', to: '600 lb' },
})

export const hingeSpacing = word<'length'>('hingeSpacing', {
  kind: 'length',
  label: 'hinges apart',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the middle of the top hinge to the middle of the bottom hinge.',
  ask: 'How far apart are the two hinges, middle to middle?',
  called: {
    names: ['hinge spacing', 'hinges apart', 'between the hinges', 'distance between hinges', 'hinges'],
    things: ['hinge', 'hinges'],
    sides: ['apart', 'spacing', 'between', 'spaced'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '8 in', to: '8 ft' },
})

export const hangingWeight = word<'mass'>('hangingWeight', {
  kind: 'mass',
  label: 'weight hung on the latch end',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'A child swinging on the gate, or whoever leans on it.',
  ask: 'What weight may hang on the latch end?',
  called: {
    names: [
      'hanging on it',
      'hangs on it',
      'hanging on the latch',
      'swinging on it',
      'leaning on it',
      'on the latch end',
    ],
    things: ['child', 'kid', 'person', 'someone', 'somebody'],
    sides: ['hanging', 'hangs', 'swings', 'swinging'],
    plainly: true,
  },
  possible: { least: '0 lb' },
  plausible: { from: '0 lb', to: '400 lb' },
})

export const gateForce = word<'force'>('gateForce', {
  kind: 'force',
  label: 'weight of the leaf, as a force',
  units: { imperial: 'lbf', metric: 'N' },
  measure: 'The two hinges share it in a way nobody can foresee: size each of them for all of it.',
  ask: 'With what force does the leaf bear down?',
  called: { names: ['load on the hinges'], asks: ['load on the hinges', 'load on each hinge'] },
})

export const hingePull = word<'force'>('hingePull', {
  kind: 'force',
  label: 'pull at the top hinge',
  units: { imperial: 'lbf', metric: 'N' },
  measure: 'The top hinge is pulled away from the post with it; the bottom one is pushed against the post as hard.',
  ask: 'How hard does the gate pull at its top hinge?',
  called: {
    names: ['hinge pull', 'pull on the hinge'],
    asks: [
      'how hard does it pull',
      'how hard does the gate pull',
      'pull on the hinges',
      'pull on the top hinge',
      'hinge pull',
      'force on the hinges',
      'force on the top hinge',
      'what do the hinges carry',
      'how strong must the hinges',
      'how strong do the hinges',
    ],
  },
})

export const hingePullHung = word<'force'>('hingePullHung', {
  kind: 'force',
  label: 'pull at the top hinge with that weight on the latch end',
  units: { imperial: 'lbf', metric: 'N' },
  measure: 'The same, with somebody on the gate.',
  ask: 'How hard does it pull with somebody on it?',
  called: {
    names: ['pull with a child on it'],
    asks: ['pull with someone on it', 'if a child swings on it', 'with a kid hanging'],
  },
})

export const postCouple = word<'moment'>('postCouple', {
  kind: 'moment',
  label: 'turning force on the hinge post',
  units: { imperial: 'lbf-ft', metric: 'N-m' },
  measure: 'What tries to tip the post toward the opening.',
  ask: 'What turning force does the gate put on its post?',
  called: {
    names: ['moment on the post', 'couple on the post'],
    asks: ['moment on the post', 'couple on the post', 'turning force on the post', 'torque on the post'],
  },
})

// ── sag ──

export const strutDiagonal = word<'length'>('strutDiagonal', {
  kind: 'length',
  label: 'diagonal from the bottom hinge corner to the top latch corner',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Corner to corner of the leaf, from the bottom at the hinges to the top at the latch.',
  ask: 'What is the diagonal from the bottom hinge corner to the top latch corner?',
  called: {
    names: [
      'bottom hinge to top latch',
      'bottom hinge corner to top latch corner',
      'from bottom hinge',
      'rising diagonal',
      'brace diagonal',
    ],
    things: ['diagonal'],
    sides: ['rising', 'bottom hinge'],
  },
  possible: { above: '0 in' },
  plausible: { from: '20 in', to: '15 ft' },
})

export const tieDiagonal = word<'length'>('tieDiagonal', {
  kind: 'length',
  label: 'diagonal from the top hinge corner to the bottom latch corner',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Corner to corner of the leaf, from the top at the hinges to the bottom at the latch.',
  ask: 'What is the diagonal from the top hinge corner to the bottom latch corner?',
  called: {
    names: [
      'top hinge to bottom latch',
      'top hinge corner to bottom latch corner',
      'from top hinge',
      'falling diagonal',
      'cable diagonal',
    ],
    things: ['diagonal'],
    sides: ['falling', 'top hinge'],
  },
  possible: { above: '0 in' },
  plausible: { from: '20 in', to: '15 ft' },
})

export const latchDrop = word<'length'>('latchDrop', {
  kind: 'length',
  label: 'drop of the latch side',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far the latch side has sunk below square.',
  ask: 'How far has the latch side dropped?',
  called: {
    names: ['sag', 'drop of the latch side', 'gate drop'],
    asks: [
      'how much has it sagged',
      'how far has it dropped',
      'how far has the gate dropped',
      'how far out of square',
      'how much sag',
      'is the gate square',
      'has the gate sagged',
      'how much has the gate sagged',
      'sagged',
      'gate sagging',
      'gate sags',
    ],
  },
})

export const takeUp = word<'length'>('takeUp', {
  kind: 'length',
  label: 'take-up of a cable to bring it square',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How much shorter the cable from the top hinge to the bottom latch must become.',
  ask: 'How much must the cable be taken up?',
  called: {
    names: ['take-up', 'take up', 'turnbuckle'],
    asks: [
      'how much take up',
      'how far do i turn',
      'how much do i tighten',
      'how much must the cable',
      'turnbuckle take-up',
      'how much to tighten',
      'tighten the cable',
      'take up the turnbuckle',
    ],
  },
})

export const squareDiagonal = word<'length'>('squareDiagonal', {
  kind: 'length',
  label: 'both diagonals when it is square',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The two diagonals of a square leaf are alike.',
  ask: 'What should both diagonals be?',
  called: {
    names: ['right diagonal of the gate'],
    asks: ['what should the diagonals be', 'what should both diagonals be', 'right diagonal'],
  },
})

// ── swing and lean ──

export const swingRise = word<'length'>('swingRise', {
  kind: 'length',
  label: 'rise of the ground over the swing',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How much higher the ground is under the latch end when the gate stands open.',
  ask: 'How much does the ground rise over the swing?',
  called: {
    names: ['rise over the swing', 'gap under the gate'],
    asks: [
      'will the gate clear',
      'will it drag',
      'will the gate drag',
      'how much gap under the gate',
      'gap under the gate',
      'clear the ground',
      'how much does the ground rise',
      'scrape',
      'hit the ground',
      'swing uphill',
      'swing up the slope',
    ],
  },
})

export const gateGapBelow = word<'length'>('gateGapBelow', {
  kind: 'length',
  label: 'gap under the shut gate',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the ground to the bottom of the leaf, with the gate shut.',
  ask: 'How high is the bottom of the shut gate above the ground?',
  called: {
    names: [
      'gap under the gate',
      'under the gate',
      'off the ground',
      'ground clearance',
      'bottom gap',
      'gap below the gate',
      'above the ground',
    ],
    things: ['gate'],
    sides: ['off the ground', 'clearance', 'under'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '12 in' },
})

export const gateClears = word<'verdict'>('gateClears', {
  kind: 'verdict',
  label: 'gate over the ground',
  measure: 'Whether the leaf swings open without touching the ground.',
  ask: 'Does the gate clear the ground?',
  called: { names: ['gate clears'] },
  says: {
    yes: 'the leaf clears the ground',
    no: 'the leaf drags on the ground',
    unknown: 'cannot say whether the leaf clears',
  },
})

export const edgeRoom = word<'length'>('edgeRoom', {
  kind: 'length',
  label: 'room for the square edge as it turns',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How much further the leaf reaches while it turns than when it is shut, since its edge has a thickness.',
  ask: 'How much room does the edge need as it turns?',
  called: {
    names: ['swing clearance'],
    asks: ['swing clearance', 'how much room to swing', 'clear the latch post', 'corner clearance'],
  },
})

export const leafThickness = word<'length'>('leafThickness', {
  kind: 'length',
  label: 'leaf thickness',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The latch edge of the leaf, front to back.',
  ask: 'How thick is the leaf at its latch edge?',
  called: {
    names: ['leaf thickness', 'gate thickness', 'thickness of the gate'],
    things: ['gate', 'leaf'],
    sides: ['thick', 'thickness'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1/2 in', to: '6 in' },
  usual: {
    value: '1 1/2 in',
    metric: '45 mm',
    because: 'a frame of 2x4 is 1 1/2 in thick',
    from: 'PS 20, American Softwood Lumber Standard; the metric size is common practice, no source',
  },
})

export const outOfPlumb = word<'length'>('outOfPlumb', {
  kind: 'length',
  label: 'post out of plumb',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Hold a level upright against the post: how far it stands off at the end of the level.',
  ask: 'How far is the post out of plumb?',
  called: {
    names: ['out of plumb', 'off plumb', 'out of true', 'plumb', 'leans', 'leaning'],
    things: ['post', 'hinge post', 'gate post'],
    sides: ['lean', 'leans', 'leaning', 'plumb', 'out'],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '12 in' },
})

export const plumbOver = word<'length'>('plumbOver', {
  kind: 'length',
  label: 'height over which it was measured',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The length of the level, or the height at which the string was held off.',
  ask: 'Over what height is it out of plumb?',
  called: {
    names: ['over a height of', 'in a height of', 'length of the level'],
    sides: ['over'],
  },
  possible: { above: '0 in' },
  plausible: { from: '1 ft', to: '10 ft' },
})

export const leanAngle = word<'angle'>('leanAngle', {
  kind: 'angle',
  label: 'lean',
  measure: 'How far the post stands from upright.',
  ask: 'At what angle does the post lean?',
  called: {
    names: ['angle of the lean', 'lean angle'],
    asks: ['what angle does it lean', 'lean angle', 'how many degrees'],
  },
})

export const latchMove = word<'length'>('latchMove', {
  kind: 'length',
  label: 'latch end, up or down',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far the latch end of the leaf falls (or rises) when its post leans.',
  ask: 'How far does the latch end move when the post leans?',
  called: {
    names: ['drop from the lean'],
    asks: [
      'how much does the latch',
      'how far does the latch',
      'how far does the latch end',
      'how far does the gate drop',
      'how much will the gate drop',
      'how far will the latch',
      'latch end drop',
      'latch end move',
      'post leaning how much',
    ],
  },
})
