// This file is about a story stick laid aslant between two posts.
import { word } from './word.ts'

export const stickPitch = word<'length'>('stickPitch', {
  kind: 'length',
  label: 'step marked on the stick',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'A handy step, longer than from picket to picket: laid aslant, the stick shortens it to fit.',
  ask: 'How far apart are the marks on the stick?',
  called: {
    names: [
      'marks on the stick',
      'step on the stick',
      'stick marked every',
      'marked every',
      'stick marks',
      'marks every',
    ],
    things: ['stick', 'story stick', 'storey stick', 'marks'],
    sides: ['marked', 'marks', 'every'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '24 in' },
})

export const stickAngle = word<'angle'>('stickAngle', {
  kind: 'angle',
  label: 'stick, from level',
  measure: 'How steeply the stick lies between the posts.',
  ask: 'How steeply does the stick lie?',
  called: {
    names: ['angle of the stick'],
    asks: [
      'what angle for the stick',
      'how do i lay the stick',
      'lay the stick',
      'slanted stick',
      'story stick at an angle',
      'story stick',
      'storey stick',
      'stick aslant',
    ],
  },
})

export const stickLength = word<'length'>('stickLength', {
  kind: 'length',
  label: 'stick, from post face to post face',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Along the stick.',
  ask: 'How long is the stick between the posts?',
  called: { names: ['length of the stick'], asks: ['how long is the stick', 'how long a stick'] },
})

export const stickDrop = word<'length'>('stickDrop', {
  kind: 'length',
  label: 'one end of the stick lower by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between its two ends at the post faces.',
  ask: 'How much lower is one end of the stick?',
  called: { names: ['drop of the stick'], asks: ['how much lower is one end', 'drop of the stick'] },
})

export const firstStickMark = word<'length'>('firstStickMark', {
  kind: 'length',
  label: 'first mark, along the stick from the post face',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The middle of the first picket.',
  ask: 'Where on the stick is the first mark?',
  called: { names: ['first mark'], asks: ['where is the first mark', 'first mark on the stick'] },
})

// ── what a stick gets wrong when it is not held right ──

export const stickSwing = word<'length'>('stickSwing', {
  kind: 'length',
  label: 'far end of the stick out of line by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far one end stands in front of or behind the line from post to post.',
  ask: 'How far out of line does one end of the stick stand?',
  called: {
    names: [
      'out of line',
      'out of the plane',
      'off the line',
      'swung out',
      'swings out',
      'end swings',
      'end of the stick is out',
    ],
    things: ['end of the stick', 'far end'],
    sides: ['out', 'swings', 'swung'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '24 in' },
})

export const stickBow = word<'length'>('stickBow', {
  kind: 'length',
  label: 'bow of the stick',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Between its middle and a string from end to end.',
  ask: 'How far is the stick bowed in the middle?',
  called: {
    names: ['bow of the stick', 'bow in the stick', 'stick is bowed', 'stick bows', 'bowed by', 'bowed', 'bow'],
    things: ['bow', 'bend'],
    sides: ['bowed', 'bow', 'bent'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/16 in', to: '6 in' },
})

export const swingShort = word<'length'>('swingShort', {
  kind: 'length',
  label: 'stick falls short by, swung out of line',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Its length and drop kept as they were set.',
  ask: 'How much does a swung stick fall short?',
  called: {
    names: ['short by when swung'],
    asks: [
      'how far off is the stick',
      'how far off does the stick come',
      'how much does the stick fall short',
      'stick falls short',
      'error of the stick',
      'errors of the stick',
      'stick is not straight',
    ],
  },
})

export const swingPitch = word<'length'>('swingPitch', {
  kind: 'length',
  label: 'picket to picket, if the swung stick still touches both posts',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The marks stay even, but stand closer than they should.',
  ask: 'How far from picket to picket with a swung stick?',
  called: { names: ['pitch of a swung stick'], asks: ['pitch of a swung stick'] },
})

export const swingOver = word<'length'>('swingOver', {
  kind: 'length',
  label: 'pickets too close by, all together',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the first picket to the last; it ends up shared by the two gaps at the posts.',
  ask: 'How much do they come too close together?',
  called: { names: ['too close by'], asks: ['how much too close'] },
})

export const bowShort = word<'length'>('bowShort', {
  kind: 'length',
  label: 'stick falls short by, bowed',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Straight from end to end, against its length along the wood.',
  ask: 'How much does a bowed stick fall short?',
  called: {
    names: ['short by when bowed'],
    asks: ['how much shorter is a bowed stick', 'how much does the bow cost', 'bowed stick', 'how much does a bow'],
  },
})

export const squaredPitch = word<'length'>('squaredPitch', {
  kind: 'length',
  label: 'picket to picket, if marks are squared off the stick',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Carried square to the stick on to a level rail instead of plumb.',
  ask: 'How far from picket to picket if the marks are squared off the stick?',
  called: {
    names: ['squared off the stick'],
    asks: [
      'if i square the marks off the stick',
      'square off the stick',
      'square the marks',
      'squared off the stick',
      'not plumb off the stick',
    ],
  },
})

export const squaredOver = word<'length'>('squaredOver', {
  kind: 'length',
  label: 'last picket out of place by, squared off the stick',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Counted from the first picket.',
  ask: 'How far out of place is the last picket?',
  called: { names: ['last picket out of place'], asks: ['how far out is the last picket'] },
})
