// This file is about the faces that finish goes on, member by member.
import { word } from './word.ts'

export const gateFrame = word<'length'>('gateFrame', {
  kind: 'length',
  label: 'gate frames and braces, end to end',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'Every stick of the gates’ frames with their braces, laid end to end. Taken to be of the rails’ size.',
  ask: 'How long are the sticks of the gate frames, laid end to end?',
  called: {
    names: ['gate frames', 'gate frame', 'frame of the gate', 'gate sticks', 'of gate frame', 'frames and braces'],
    things: ['gate frame', 'frame'],
    sides: ['end to end', 'of frame'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '4 ft', to: '200 ft' },
})

export const capThickness = word<'length'>('capThickness', {
  kind: 'length',
  label: 'thickness of a cap',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'At its edge.',
  ask: 'How thick is a cap at its edge?',
  called: {
    names: ['cap thickness', 'thickness of the cap'],
    things: ['cap', 'caps', 'post cap'],
    sides: ['thick', 'thickness'],
  },
  ofStick: 'thickness',
  possible: { above: '0 in' },
  plausible: { from: '1/2 in', to: '6 in' },
  usual: {
    value: '3/4 in',
    metric: '19 mm',
    because: 'a plain cap is often cut from a nominal 1 in board',
    from: 'common practice, no source',
  },
})

export const sidesCoated = word<'choice'>('sidesCoated', {
  kind: 'choice',
  label: 'sides that are finished',
  measure: 'Both sides, or the one that you see. Wood finished on one side only cups and peels sooner.',
  ask: 'Do you finish both sides or only one?',
  called: { names: ['sides finished'] },
  options: {
    both: {
      label: 'both sides',
      called: ['both sides', 'two sides', 'all sides', 'front and back', 'all round', 'every face', 'all faces'],
    },
    one: {
      label: 'one side',
      called: ['one side', 'front only', 'only the front', 'my side', 'one face', 'single side', 'street side'],
    },
  },
  usual: {
    value: 'both',
    because: 'wood wants the same finish on both sides',
    from: 'common practice, no source',
  },
})

const area = {
  kind: 'area',
  units: { imperial: 'ft2', metric: 'm2' },
} as const

export const picketsArea = word<'area'>('picketsArea', {
  ...area,
  label: 'pickets, all their faces',
  measure: 'Faces, edges and ends.',
  ask: 'What area have the pickets?',
  called: { names: ['area of the pickets', 'picket area'], asks: ['area of the pickets', 'picket area'] },
})

export const railsArea = word<'area'>('railsArea', {
  ...area,
  label: 'rails, all round',
  measure: 'Their four sides; the ends are left out.',
  ask: 'What area have the rails?',
  called: { names: ['area of the rails'], asks: ['area of the rails'] },
})

export const postsArea = word<'area'>('postsArea', {
  ...area,
  label: 'posts, above the ground',
  measure: 'Four sides and the top.',
  ask: 'What area have the posts?',
  called: { names: ['area of the posts'], asks: ['area of the posts'] },
})

export const gatesArea = word<'area'>('gatesArea', {
  ...area,
  label: 'gates, pickets and frames',
  measure: 'Their pickets as the others, their frames all round.',
  ask: 'What area have the gates?',
  called: { names: ['area of the gates'], asks: ['area of the gates'] },
})

export const capsArea = word<'area'>('capsArea', {
  ...area,
  label: 'caps',
  measure: 'Top, edges, and what shows below.',
  ask: 'What area have the caps?',
  called: { names: ['area of the caps'], asks: ['area of the caps'] },
})

export const finishArea = word<'area'>('finishArea', {
  ...area,
  label: 'area to finish',
  measure: 'All faces together, those included that are covered once it is put together.',
  ask: 'How large is the area to finish?',
  called: {
    names: [
      'area to finish',
      'area to paint',
      'area to stain',
      'surface area',
      'paint area',
      'of fence to paint',
      'of fence to stain',
      'of wood to paint',
      'of wood to stain',
    ],
    things: ['fence', 'wood', 'area', 'surface', 'face', 'paint', 'stain'],
    sides: ['area', 'to paint', 'to stain', 'to finish', 'to cover'],
    plainly: true,
    byDefault: true,
    asks: [
      'area to paint',
      'area to stain',
      'area to finish',
      'surface area',
      'square feet to paint',
      'square feet to stain',
      'square metres to paint',
      'square metres to stain',
      'how much area',
      'how many square feet of fence',
      'how many square feet do i paint',
      'how many square feet do i stain',
      'how many square metres do i paint',
    ],
  },
  possible: { above: '0 in2' },
  plausible: { from: '5 ft2', to: '20000 ft2' },
})

export const hiddenArea = word<'area'>('hiddenArea', {
  ...area,
  label: 'of that covered once it is together',
  measure: 'Where pickets lie on rails, both faces. Coat them before.',
  ask: 'How much of the area is covered once it is together?',
  called: {
    names: ['hidden area', 'hidden faces', 'covered faces'],
    asks: ['hidden faces', 'hidden area', 'covered faces', 'how much is hidden'],
  },
})
