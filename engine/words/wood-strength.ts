// This file is about what a stick of wood may be stressed with, and what it is stressed with.
import { word } from './word.ts'

export const lumberGroup = word<'choice'>('lumberGroup', {
  kind: 'choice',
  label: 'wood by its grade stamp, No. 2',
  measure: 'Read the stamp on the stick. Unstamped wood has no design value.',
  ask: 'What does the grade stamp say: southern pine, Douglas fir-larch, hem-fir, spruce-pine-fir or western cedars, No. 2? I have no design values for others, radiata among them: an engineer or the table of your country has them.',
  called: { names: ['lumber group', 'grade stamp'] },
  options: {
    'southern-pine': {
      label: 'southern pine No. 2',
      called: ['southern pine', 'southern yellow pine', 'yellow pine', 'syp'],
    },
    'douglas-fir-larch': {
      label: 'Douglas fir-larch No. 2',
      called: ['douglas fir-larch', 'douglas fir larch', 'fir-larch', 'fir larch'],
    },
    'hem-fir': { label: 'hem-fir No. 2', called: ['hem-fir', 'hem fir', 'hemfir'] },
    'spruce-pine-fir': {
      label: 'spruce-pine-fir No. 2',
      called: ['spruce-pine-fir', 'spruce pine fir', 'spf', 's-p-f'],
    },
    'western-cedars': {
      label: 'western cedars No. 2',
      called: ['western cedar', 'western cedars', 'stamped cedar', 'cedar by its stamp'],
    },
  },
})

export const bendingValue = word<'pressure'>('bendingValue', {
  kind: 'pressure',
  label: 'allowed bending stress, all factors in',
  units: { imperial: 'psi', metric: 'MPa' },
  measure: 'From your engineer or a table of your country, with every factor in it: size, wet wood, time under load.',
  ask: 'What bending stress is allowed for your wood, with all factors in?',
  called: {
    names: ['allowed bending stress', 'allowable bending stress', 'bending stress allowed', 'bending value', 'fb'],
    things: ['bending'],
    sides: ['allowed', 'allowable'],
    plainly: true,
  },
  possible: { above: '0 psi' },
  plausible: { from: '300 psi', to: '6000 psi' },
})

export const incised = word<'choice'>('incised', {
  kind: 'choice',
  label: 'incised for treatment',
  measure: 'Rows of small slits in the faces. Southern pine has none.',
  ask: 'Are there rows of small slits in the faces of the wood (incised for treatment)?',
  called: {},
  options: {
    no: { label: 'no slits', called: ['not incised', 'no slits', 'no incisions'] },
    yes: { label: 'incised', called: ['incised', 'with slits', 'slits in the faces', 'incising'] },
  },
  usual: {
    value: 'no',
    because: 'you did not speak of slits in the faces',
    from: 'Decided here; say “incised” if there are some.',
  },
})

export const bendingAllowed = word<'pressure'>('bendingAllowed', {
  kind: 'pressure',
  label: 'allowed bending stress in a gust',
  units: { imperial: 'psi', metric: 'MPa' },
  measure: 'The design value with its factors: size, wet wood, slits, and the short time a gust lasts.',
  ask: 'What bending stress is allowed in a gust?',
  called: {
    names: ['adjusted bending value'],
    asks: ['what bending stress is allowed', 'allowed bending stress in a gust'],
  },
})

export const sectionModulus = word<'volume'>('sectionModulus', {
  kind: 'volume',
  label: 'section modulus of the whole post',
  units: { imperial: 'in3', metric: 'cm3' },
  measure: 'Width cubed over six, for a square post without rot.',
  ask: 'What is the section modulus of the post?',
  called: { names: ['section modulus'], asks: ['section modulus'] },
})

export const postStress = word<'pressure'>('postStress', {
  kind: 'pressure',
  label: 'bending stress in the post',
  units: { imperial: 'psi', metric: 'MPa' },
  measure: 'At the ground, where it bends hardest.',
  ask: 'What is the bending stress in the post?',
  called: {
    names: ['stress in the post'],
    asks: ['stress in the post', 'bending stress in the post', 'how much does the post bend in stress', 'post stress'],
  },
})

export const postUsed = word<'percent'>('postUsed', {
  kind: 'percent',
  label: 'of what the post may bear',
  measure: 'Stress over allowed stress, bending or shear, whichever is more. Over 100 % it fails.',
  ask: 'How much of its strength does the post use?',
  called: {
    names: ['post used'],
    asks: ['how much of its strength', 'how far is the post used', 'how much of the strength'],
  },
})

export const postShear = word<'pressure'>('postShear', {
  kind: 'pressure',
  label: 'shear stress in the post',
  units: { imperial: 'psi', metric: 'MPa' },
  measure: 'Half as much again as the force over the section.',
  ask: 'What is the shear stress in the post?',
  called: { names: ['shear in the post', 'shear stress'], asks: ['shear in the post', 'shear stress in the post'] },
})

export const postHolds = word<'verdict'>('postHolds', {
  kind: 'verdict',
  label: 'post against bending and shear',
  measure: 'The wood alone, sound and graded. Not its depth, not its joints.',
  ask: 'Is the post strong enough for that force?',
  called: {
    names: ['post strong enough'],
    asks: [
      'is the post strong enough',
      'are the posts strong enough',
      'is a post strong enough',
      'post strong enough',
      'posts strong enough',
      'will the post break',
      'will the posts break',
      'will the post snap',
      'will the posts snap',
      'does the post hold',
      'will the post hold',
      'strong enough for the wind',
      'strong enough for that force',
      'strong enough for that',
      'strong enough for it',
      'will a 4x4 hold',
      'will a 6x6 hold',
      'post take that',
      'posts take that',
    ],
  },
  says: {
    yes: 'nothing checked here fails in the post',
    no: 'the post fails this check',
    unknown: 'cannot say whether the post is strong enough',
  },
})

// ── rails ──

export const sitStress = word<'pressure'>('sitStress', {
  kind: 'pressure',
  label: 'stress with the person sitting on it',
  units: { imperial: 'psi', metric: 'MPa' },
  measure: 'In the middle of the rail, all of the weight on it.',
  ask: 'What is the stress in the rail with somebody sitting on it?',
  called: { names: ['sitting stress'], asks: ['stress if somebody sits', 'stress with somebody sitting'] },
})

export const pushStress = word<'pressure'>('pushStress', {
  kind: 'pressure',
  label: 'stress with the person leaning against it',
  units: { imperial: 'psi', metric: 'MPa' },
  measure: 'Bent sideways, all of the weight on one rail.',
  ask: 'What is the stress in the rail with somebody leaning against it?',
  called: { names: ['leaning stress'], asks: ['stress if somebody leans', 'stress with somebody leaning'] },
})

export const windStress = word<'pressure'>('windStress', {
  kind: 'pressure',
  label: 'stress under the wind',
  units: { imperial: 'psi', metric: 'MPa' },
  measure: 'Bent sideways by its share of the wind on the bay.',
  ask: 'What is the stress in the rail under the wind?',
  called: { names: ['wind stress'], asks: ['stress in the rail under the wind', 'stress of the wind in the rail'] },
})

export const windBow = word<'length'>('windBow', {
  kind: 'length',
  label: 'bow of the rail under the wind',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Sideways in the middle, while the gust lasts.',
  ask: 'How far does the rail bow under the wind?',
  called: {
    names: ['bow under the wind'],
    asks: ['how far does the rail bow under the wind', 'how far does the rail bow in the wind', 'rail bow in the wind'],
  },
})

export const railUsed = word<'percent'>('railUsed', {
  kind: 'percent',
  label: 'of what the rail may bear',
  measure: 'The worst of the stresses over what is allowed for it. Over 100 % it fails.',
  ask: 'How much of its strength does the rail use?',
  called: { names: ['rail used'], asks: ['how far is the rail used', 'how much of the rail’s strength'] },
})

export const railHolds = word<'verdict'>('railHolds', {
  kind: 'verdict',
  label: 'rail against bending',
  measure: 'One rail between two posts, sound and graded. Not its screws or brackets.',
  ask: 'Is the rail strong enough?',
  called: {
    names: ['rail strong enough'],
    asks: [
      'is the rail strong enough',
      'are the rails strong enough',
      'rail strong enough',
      'rails strong enough',
      'will the rail break',
      'will the rails break',
      'will the rail snap',
      'does the rail hold',
      'will the rail hold',
    ],
  },
  says: {
    yes: 'nothing checked here fails in the rail',
    no: 'the rail fails this check',
    unknown: 'cannot say whether the rail is strong enough',
  },
})
