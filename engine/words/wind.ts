// This file is about the wind on a fence: its speed, what stands round about, and the force that comes of it.
import { word } from './word.ts'

export const windSpeed = word<'speed'>('windSpeed', {
  kind: 'speed',
  label: 'wind speed',
  units: { imperial: 'mph', metric: 'm/s' },
  measure:
    'Your building office gives it: the basic wind speed of ASCE 7-10 or later, a gust of three seconds, for your place. No wind map is looked up here.',
  ask: 'What basic wind speed does your building office give for your place (ASCE 7-10 or later)?',
  called: {
    names: ['wind speed', 'basic wind speed', 'design wind', 'winds of', 'wind of', 'gusts of', 'wind'],
    things: ['wind', 'gust', 'storm'],
    sides: ['blows', 'gusts'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 mph' },
  plausible: { from: '60 mph', to: '220 mph' },
})

export const exposure = word<'choice'>('exposure', {
  kind: 'choice',
  label: 'surroundings (exposure)',
  measure:
    'Look half a mile upwind from every side. B: houses or trees close together. C: open country with little over 30 ft. D: flat, beside open water.',
  ask: 'What stands round about: houses or trees close together (exposure B), open country (C), or flat shore with open water before it (D)?',
  called: { names: ['exposure'] },
  options: {
    b: {
      label: 'houses or trees close together (exposure B)',
      called: [
        'exposure b',
        'in town',
        'in a town',
        'suburb',
        'suburbs',
        'suburban',
        'built-up area',
        'among houses',
        'wooded',
        'not open country',
        'no open country',
      ],
    },
    c: {
      label: 'open country (exposure C)',
      called: ['exposure c', 'open country', 'open fields', 'flat open country', 'open farmland', 'on the prairie'],
    },
    d: {
      label: 'flat shore, open water (exposure D)',
      called: [
        'exposure d',
        'open water',
        'by the sea',
        'on the shore',
        'at the shore',
        'lakeshore',
        'seafront',
        'on the coast',
      ],
    },
  },
})

export const seenShare = word<'percent'>('seenShare', {
  kind: 'percent',
  label: 'solid to the wind, rails counted',
  measure: 'The area of the pickets, and of the rails where they show between them, over the whole area of the bay.',
  ask: 'How much of the fence is solid, rails counted?',
  called: {
    names: ['solid to the wind', 'solid with the rails', 'solid, rails counted'],
    asks: ['how solid with the rails', 'how solid is it to the wind', 'how much does the wind see'],
    sides: ['solid'],
  },
  possible: { above: '0 %', most: '100 %' },
  plausible: { from: '10 %', to: '100 %' },
})

export const windPressure = word<'pressure'>('windPressure', {
  kind: 'pressure',
  label: 'wind pressure on the wood, strength level',
  units: { imperial: 'lb/ft2', metric: 'kPa' },
  measure: 'On the area that the wind sees, front and back together.',
  ask: 'What pressure does the wind put on the fence?',
  called: {
    names: ['wind pressure'],
    asks: [
      'what wind pressure',
      'how much wind pressure',
      'what pressure does the wind',
      'pressure of the wind',
      'wind pressure on',
    ],
  },
})

export const strengthForce = word<'force'>('strengthForce', {
  kind: 'force',
  label: 'wind on one bay, strength level',
  units: { imperial: 'lbf', metric: 'N' },
  measure:
    'The whole of it, as the standard reckons it. What wood and soil are allowed to bear is set against working level, not against this.',
  ask: 'How hard does the wind push one bay, at strength level?',
  called: { names: ['force at strength level', 'strength level force'], asks: ['strength level force'] },
})

export const sideForce = word<'force'>('sideForce', {
  kind: 'force',
  label: 'sideways force on one post, working level',
  units: { imperial: 'lbf', metric: 'N' },
  measure: 'What pushes one post over: the wind on one bay at working level, which is 0.6 of strength level.',
  ask: 'What sideways force must one post bear, at working level (0.6 of strength level)? Or tell me the wind speed and the fence.',
  called: {
    names: [
      'force',
      'sideways force',
      'side force',
      'wind force',
      'wind load',
      'lateral force',
      'lateral load',
      'force of',
      'pushes with',
    ],
    things: ['force', 'wind load', 'push'],
    sides: ['sideways', 'push', 'pushes'],
    plainly: true,
    asks: [
      'force on a post',
      'force on the post',
      'what force',
      'how much force',
      'wind force',
      'wind load',
      'force of the wind',
      'how hard does the wind push',
      'how hard does wind push',
      'how much force does the wind',
      'what force does the wind',
      'force on each post',
      'force on one post',
      'force on a post',
      'force on the post',
      'how much wind does the post',
    ],
  },
  possible: { above: '0 lbf' },
  plausible: { from: '5 lbf', to: '2000 lbf' },
})

export const forceHeight = word<'length'>('forceHeight', {
  kind: 'length',
  label: 'height of the force above the ground',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'From the ground to where the push acts: about the middle of the boards.',
  ask: 'How high above the ground does the force act?',
  called: {
    names: ['acting at', 'acts at', 'height of the force', 'up the post', 'force height', 'acting', 'acts'],
    things: ['force'],
    sides: ['up', 'acting', 'acts'],
  },
  possible: { above: '0 in' },
  plausible: { from: '6 in', to: '8 ft' },
})

export const tippingMoment = word<'moment'>('tippingMoment', {
  kind: 'moment',
  label: 'tipping moment at the ground, working level',
  units: { imperial: 'lbf-ft', metric: 'N-m' },
  measure: 'The force times its height above the ground.',
  ask: 'What moment is there at the ground?',
  called: {
    names: ['tipping moment', 'overturning moment'],
    asks: ['moment at the ground', 'moment at grade', 'tipping moment', 'overturning moment'],
  },
})

export const givenFactor = word<'number'>('givenFactor', {
  kind: 'number',
  label: 'force coefficient that you were given',
  measure:
    'From your engineer or your office, for this bay: the end bays of a solid fence get far more than the others.',
  ask: 'Which force coefficient does your engineer give for this bay?',
  called: { names: ['force coefficient', 'coefficient of'], things: ['force coefficient'], plainly: true },
  possible: { above: '0' },
  plausible: { from: '0.5', to: '4.5' },
})

export const givenPressure = word<'pressure'>('givenPressure', {
  kind: 'pressure',
  label: 'wind pressure that was given to you',
  units: { imperial: 'lb/ft2', metric: 'kPa' },
  measure: 'From your building office, your engineer, or the standard of your country, for a fence of this kind.',
  ask: 'What wind pressure were you given for the fence? If you have none, tell me the wind speed and the fence instead: its height, the posts apart, the width of the pickets and their gap.',
  called: {
    names: [
      'design pressure',
      'wind pressure of',
      'given pressure',
      'pressure of',
      'wind pressure is',
      'at a pressure of',
    ],
    things: ['pressure', 'wind pressure'],
    sides: ['pressure'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 psi' },
  plausible: { from: '5 lb/ft2', to: '80 lb/ft2' },
})

export const pressureLevel = word<'choice'>('pressureLevel', {
  kind: 'choice',
  label: 'level of that pressure',
  measure: 'Ask who gave it: at strength level (ultimate) 0.6 of it counts against what wood and soil may bear.',
  ask: 'Is that pressure at working level, or at strength level (ultimate)?',
  called: { names: ['level of the pressure'] },
  options: {
    working: {
      label: 'working level, nothing taken off',
      called: ['working level', 'service level', 'allowable stress', 'asd', 'serviceability'],
    },
    strength: { label: 'strength level', called: ['strength level', 'ultimate', 'ultimate level', 'factored', 'lrfd'] },
  },
  usual: {
    value: 'working',
    because: 'you did not say which level it is, and nothing is taken off: that is the safe side',
    from: 'Decided here.',
  },
})
