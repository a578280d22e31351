// This file is about how a post is held by the soil against a sideways push.
import { word } from './word.ts'

export const soilClass = word<'choice'>('soilClass', {
  kind: 'choice',
  label: 'soil at the post',
  measure: 'What comes up out of the hole, below the topsoil.',
  ask: 'What soil do the posts stand in: sandy gravel, sand (also silty or clayey sand), clay or silt, rock, or fill, peat or mud?',
  called: { names: ['soil', 'kind of soil', 'ground'] },
  options: {
    gravel: { label: 'sandy gravel or gravel', called: ['sandy gravel', 'gravelly soil', 'gravel soil'] },
    sand: {
      label: 'sand, also silty or clayey',
      called: [
        'in sand',
        'sandy soil',
        'sandy ground',
        'soil is sand',
        'sand soil',
        'silty sand',
        'clayey sand',
        'sandy loam',
        'clayey gravel',
        'silty gravel',
      ],
    },
    clay: {
      label: 'clay or silt',
      called: ['clay', 'clay soil', 'silt', 'sandy clay', 'silty clay', 'clayey silt', 'sandy silt'],
    },
    'soft-rock': { label: 'layered rock', called: ['shale rock', 'sandstone', 'layered rock', 'sedimentary rock'] },
    bedrock: { label: 'hard bedrock', called: ['bedrock', 'solid rock', 'hard rock'] },
    none: {
      label: 'fill, peat, mud or topsoil',
      called: ['in fill', 'on fill', 'fill soil', 'made ground', 'peat', 'in mud', 'organic soil', 'topsoil only'],
    },
  },
})

export const lateralBearing = word<'pressureByDepth'>('lateralBearing', {
  kind: 'pressureByDepth',
  label: 'lateral bearing for each foot of depth',
  units: { imperial: 'psf/ft', metric: 'kPa/m' },
  measure:
    'From a soil report, or from your building office: what the soil may be pressed with sideways, growing with depth.',
  ask: 'What lateral bearing does your soil report give, for each foot or metre of depth?',
  called: {
    names: ['lateral bearing', 'lateral soil bearing', 'passive pressure'],
    things: ['soil'],
    sides: ['bearing'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 psf/ft' },
  plausible: { from: '50 psf/ft', to: '1200 psf/ft' },
})

export const bearingDoubled = word<'choice'>('bearingDoubled', {
  kind: 'choice',
  label: 'the code’s doubling for isolated poles',
  measure:
    'The code lets some poles take twice the presumed value: those standing alone that half an inch of movement at the ground does not harm. Whether a fence post is one is for your building office.',
  ask: 'Does your building office let you double the soil’s value, as for an isolated pole?',
  called: { names: ['doubling'] },
  options: {
    once: { label: 'not doubled', called: ['not doubled', 'no doubling', 'without doubling'] },
    doubled: {
      label: 'doubled, as your office allows',
      called: [
        'value doubled',
        'soil doubled',
        'doubled as',
        'double the soil',
        'isolated pole',
        'isolated poles',
        'twice the soil value',
      ],
    },
  },
  usual: {
    value: 'once',
    because: 'doubling is your choice, once your building office allows it',
    from: 'Decided here: the safe side.',
  },
})

export const postSetIn = word<'choice'>('postSetIn', {
  kind: 'choice',
  label: 'footing of the post',
  measure:
    'Concrete all the way up the hole pushes with its whole width; a post in tamped earth or stone only with its own.',
  ask: 'Is the post set in concrete, or in tamped earth or stone?',
  called: {},
  options: {
    concrete: {
      label: 'concrete',
      called: [
        'post in concrete',
        'set in concrete',
        'in concrete',
        'concrete collar',
        'concrete footing',
        'concreted',
      ],
    },
    earth: {
      label: 'tamped earth or stone',
      called: [
        'in tamped earth',
        'in tamped gravel',
        'in tamped stone',
        'bare in the soil',
        'straight in the ground',
        'without concrete',
        'no concrete',
        'post in gravel',
        'set in gravel',
      ],
    },
  },
})

export const postHeld = word<'choice'>('postHeld', {
  kind: 'choice',
  label: 'held at the ground',
  measure:
    'Only a rigid slab or pavement that the post cannot push away holds it. Turf, a brick edge or loose paving do not.',
  ask: 'Is the post held at the ground by a rigid slab, or free?',
  called: {},
  options: {
    free: { label: 'free at the ground', called: ['free at the ground', 'not held', 'no slab'] },
    held: {
      label: 'held by a rigid slab',
      called: [
        'held by a slab',
        'through a slab',
        'through the slab',
        'slab at grade',
        'held at grade',
        'rigid pavement',
        'in a concrete drive',
      ],
    },
  },
  usual: { value: 'free', because: 'most fence posts stand in turf or earth', from: 'Decided here: the safe side.' },
})

export const bearingWidth = word<'length'>('bearingWidth', {
  kind: 'length',
  label: 'width that pushes on the soil',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'A round footing’s diameter; a square one’s or a square post’s diagonal, as the code has it.',
  ask: 'How wide is what pushes on the soil?',
  called: { names: ['bearing width'] },
})

export const codeDepth = word<'length'>('codeDepth', {
  kind: 'length',
  label: 'depth by the code’s formula',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What the formula asks for against this push in this soil. A check, not a design.',
  ask: 'What depth does the code’s formula ask for?',
  called: {
    names: ['depth by the code', 'depth by code'],
    asks: [
      'embedment needed',
      'embedment for',
      'hole be for force',
      'post be for force',
      'how deep for a force',
      'how deep against the wind',
      'how deep do the posts need to be for the wind',
      'how deep do the posts need to be for wind',
      'how deep do posts go for the wind',
      'how deep must the posts be against the wind',
      'how deep to set posts for wind',
      'how deep for the wind',
      'how deep for that force',
      'deep against that',
      'how deep for wind',
      'how deep for that force',
      'how deep for this force',
      'how deep against that force',
      'how deep for a force',
      'how deep to hold',
      'how deep by the code',
      'how deep by code',
      'what depth by the code',
      'depth by the code',
      'depth by the building code',
      'depth against the wind',
    ],
  },
})

export const deepEnoughForForce = word<'verdict'>('deepEnoughForForce', {
  kind: 'verdict',
  label: 'your depth against that force',
  measure: 'The depth you plan against what the code’s formula asks for. Not frost, not the local code.',
  ask: 'Is the post deep enough for that force?',
  called: {
    names: ['deep enough for the wind'],
    asks: [
      'deep enough for the wind',
      'deep enough for wind',
      'deep enough for that wind',
      'deep enough for the force',
      'deep enough for that force',
      'deep enough against the wind',
      'deep enough for a force',
      'will the wind push it over',
      'will the wind blow it over',
      'hold against the wind',
      'hold up to the wind',
    ],
  },
  says: {
    yes: 'nothing checked here fails at that depth',
    no: 'fails at that depth',
    unknown: 'cannot say whether that depth is enough',
  },
})
