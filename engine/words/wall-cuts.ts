// This file is about a rail that ends at a wall which leans.
import { word } from './word.ts'

export const planAngle = word<'angle'>('planAngle', {
  kind: 'angle',
  label: 'angle between fence and wall, seen from above',
  measure: '90° when the fence meets the wall square.',
  ask: 'At what angle does the fence meet the wall, seen from above?',
  called: {
    names: ['angle to the wall', 'meets the wall at', 'plan angle', 'seen from above'],
    things: ['wall', 'fence'],
    sides: ['angle', 'meets'],
    plainly: true,
  },
  possible: { above: '0 deg', most: '90 deg' },
  plausible: { from: '20 deg', to: '90 deg' },
  usual: {
    value: '90 deg',
    because: 'most fences meet a wall square',
    from: 'Decided here; say the angle if yours does not.',
  },
})

export const wallLean = word<'angle'>('wallLean', {
  kind: 'angle',
  label: 'lean of the wall from upright',
  measure: 'How far the wall leans away from the fence as it goes up (a batter).',
  ask: 'How many degrees does the wall lean from upright?',
  called: {
    names: ['wall leans', 'lean of the wall', 'leans', 'leaning', 'batter', 'out of plumb by'],
    things: ['wall'],
    sides: ['lean', 'leans', 'leaning', 'batter'],
    plainly: true,
  },
  possible: { least: '0 deg', most: '60 deg' },
  plausible: { from: '0 deg', to: '30 deg' },
})

export const railPitch = word<'angle'>('railPitch', {
  kind: 'angle',
  label: 'slope of the rail',
  measure: 'From level; 0° for a level rail.',
  ask: 'At what angle from level does the rail run?',
  called: {
    names: [
      'rail rises',
      'rail falls',
      'slope of the rail',
      'pitch of the rail',
      'rail slopes',
      'rail drops',
      'rail climbs',
    ],
    things: ['rail'],
    sides: ['rises', 'falls', 'slope', 'slopes', 'pitch', 'drops', 'climbs'],
    plainly: true,
  },
  possible: { least: '0 deg', most: '45 deg' },
  plausible: { from: '0 deg', to: '30 deg' },
  usual: {
    value: '0 deg',
    because: 'a rail is level unless the fence follows a slope',
    from: 'Decided here; say the slope if yours has one.',
  },
})

export const railGoes = word<'choice'>('railGoes', {
  kind: 'choice',
  label: 'way the rail goes',
  measure: 'Toward the wall, as the fence runs up or down to it.',
  ask: 'Does the rail rise toward the wall, or fall toward it?',
  called: { names: ['way the rail goes'] },
  options: {
    up: {
      label: 'up toward the wall',
      called: [
        'rail rises',
        'rises',
        'rail climbs',
        'climbs',
        'uphill',
        'up toward the wall',
        'up to the wall',
        'slopes up',
      ],
    },
    down: {
      label: 'down toward the wall',
      called: [
        'rail falls',
        'falls',
        'rail drops',
        'drops',
        'downhill',
        'down toward the wall',
        'down to the wall',
        'slopes down',
      ],
    },
  },
})

export const wallMiter = word<'angle'>('wallMiter', {
  kind: 'angle',
  label: 'miter: the saw turned, from square',
  measure: 'With the rail lying on its face: turn the saw by this much.',
  ask: 'To what is the saw turned?',
  called: {
    names: ['miter against the wall'],
    asks: [
      'what miter against the wall',
      'cut the rail against the wall',
      'cut against a leaning wall',
      'compound cut',
      'rail to fit the wall',
      'fit the wall',
      'leaning wall',
      'compound angle',
      'saw settings',
    ],
  },
})

export const wallBevel = word<'angle'>('wallBevel', {
  kind: 'angle',
  label: 'bevel: the blade tilted',
  measure: 'Tilt the blade by this much.',
  ask: 'How far is the blade tilted?',
  called: { names: ['bevel against the wall'], asks: ['what bevel', 'blade tilt', 'tilt the blade'] },
})
