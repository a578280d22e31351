// This file is about the caps and tops of posts.
import { word } from './word.ts'

export const capSize = word<'length'>('capSize', {
  kind: 'length',
  label: 'side of a square cap',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across the cap, edge to edge.',
  ask: 'How big is a cap, edge to edge?',
  called: {
    names: [
      'cap size',
      'size of the cap',
      'square cap',
      'caps of',
      'square caps',
      'cap is',
      'cap blank',
      'blank',
      'blanks',
      'blanks of',
    ],
    things: ['cap', 'caps', 'blank', 'blanks', 'post cap'],
    sides: ['square', 'wide', 'across', 'size'],
    plainly: true,
    asks: [
      'what size cap',
      'what size caps',
      'what size of cap',
      'how big a cap',
      'how big are the caps',
      'how wide a cap',
      'cap size',
      'size of the cap',
    ],
  },
  possible: { above: '0 in' },
  plausible: { from: '2 in', to: '16 in' },
})

export const capCount = word<'count'>('capCount', {
  kind: 'count',
  noun: 'cap',
  label: 'caps wanted',
  whole: true,
  measure: 'One for each post that gets one.',
  ask: 'How many caps do you want?',
  called: { names: ['number of caps', 'caps wanted'], things: ['cap', 'caps', 'post cap', 'post caps', 'post'] },
  possible: { least: '1' },
  plausible: { from: '1', to: '300' },
})

export const capsPerBoard = word<'count'>('capsPerBoard', {
  kind: 'count',
  noun: 'cap',
  label: 'caps from one board',
  whole: true,
  measure: 'With a saw cut between them.',
  ask: 'How many caps come out of one board?',
  called: {
    names: ['caps per board'],
    asks: [
      'how many caps from one board',
      'how many caps from a board',
      'caps per board',
      'how many blanks',
      'how many cap blanks',
      'how many caps can i get',
      'how many caps',
      'blanks from a board',
    ],
  },
})

export const capBoards = word<'count'>('capBoards', {
  kind: 'count',
  noun: 'board',
  label: 'boards for the caps',
  whole: true,
  measure: 'Whole boards.',
  ask: 'How many boards for the caps?',
  called: {
    names: ['boards for the caps'],
    asks: ['how many boards for the caps', 'boards for caps', 'boards for the caps'],
  },
})

export const capOverhang = word<'length'>('capOverhang', {
  kind: 'length',
  label: 'cap past the post, on each side',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Beyond the actual face of the post, not its name.',
  ask: 'How far does the cap stand past the post?',
  called: {
    names: ['cap overhang', 'caps overhang', 'caps overhanging', 'caps stand out', 'caps with an overhang of'],
    things: ['cap', 'caps', 'post cap', 'post caps'],
    sides: ['overhang', 'overhanging', 'past the post', 'past the posts'],
    asks: [
      'how much overhang',
      'cap overhang',
      'how far does the cap overhang',
      'overhang of the cap',
      'past the post on each side',
    ],
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '4 in' },
})

export const capRise = word<'length'>('capRise', {
  kind: 'length',
  label: 'rise of the pyramid',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From the edge of the cap up to its tip.',
  ask: 'How much does the pyramid rise from edge to tip?',
  called: {
    names: ['pyramid rise', 'rise of the pyramid', 'rises', 'rise', 'peak'],
    things: ['pyramid', 'peak', 'tip'],
    sides: ['rise', 'high', 'tall'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '8 in' },
})

export const capSlope = word<'angle'>('capSlope', {
  kind: 'angle',
  label: 'slope of each face',
  measure: 'From level; tilt the blade so far with the cap on edge.',
  ask: 'How steep is each face of the pyramid?',
  called: {
    names: ['slope of the faces'],
    asks: [
      'what angle for a pyramid cap',
      'pyramid cap',
      'blade angle for the pyramid',
      'slope of the pyramid',
      'bevel for the pyramid',
      'what angle do i cut the pyramid',
      'pyramid caps',
      'angle of the pyramid',
    ],
  },
})

export const capSlant = word<'length'>('capSlant', {
  kind: 'length',
  label: 'each face, edge to tip',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Up the middle of one face.',
  ask: 'How long is each face?',
  called: { names: ['slant'], asks: ['how long is each face', 'slant of the pyramid'] },
})

export const capFaces = word<'area'>('capFaces', {
  kind: 'area',
  label: 'four faces together',
  units: { imperial: 'in2', metric: 'm2' },
  measure: 'For the paint.',
  ask: 'What is the area of the faces?',
  called: { names: ['area of the pyramid'], asks: ['area of the pyramid', 'area of the cap'] },
})

export const blockLong = word<'length'>('blockLong', {
  kind: 'length',
  label: 'block, its longer side',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The inside of the moulding frame: the block or post that it goes round.',
  ask: 'How long is the longer side of the block that the moulding goes round?',
  called: {
    names: ['longer side of the block', 'block', 'inside of the frame', 'round a block', 'around a block', 'block of'],
    things: ['block'],
    sides: ['long', 'longer', 'square'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '36 in' },
})

export const blockShort = word<'length'>('blockShort', {
  kind: 'length',
  label: 'block, its shorter side',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The other inside of the moulding frame; the same for a square block.',
  ask: 'How long is the shorter side of the block?',
  called: { names: ['shorter side of the block', 'by'], things: ['block'], sides: ['shorter', 'short'] },
  possible: { above: '0 in' },
  plausible: { from: '1 in', to: '36 in' },
})

export const mouldingWidth = word<'length'>('mouldingWidth', {
  kind: 'length',
  label: 'moulding, out from the block',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far it stands out all round, seen from above.',
  ask: 'How far does the moulding stand out from the block?',
  called: {
    names: ['moulding width', 'molding width', 'width of the moulding', 'width of the molding', 'moulding', 'molding'],
    things: ['moulding', 'molding', 'trim'],
    sides: ['wide', 'width', 'out'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/4 in', to: '6 in' },
})

export const outerLong = word<'length'>('outerLong', {
  kind: 'length',
  label: 'longer pieces of moulding, long point to long point',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Two of them, mitred at both ends.',
  ask: 'How long are the longer pieces of moulding?',
  called: {
    names: ['moulding pieces'],
    asks: [
      'how long are the moulding pieces',
      'how do i cut the moulding',
      'how do i cut the molding',
      'moulding lengths',
      'molding lengths',
      'cut the moulding',
      'cut the molding',
      'mitred frame',
      'mitered frame',
      'moulding frame',
      'molding frame',
      'built up cap',
      'built-up cap',
    ],
  },
})

export const outerShort = word<'length'>('outerShort', {
  kind: 'length',
  label: 'shorter pieces of moulding, long point to long point',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Two of them, mitred at both ends.',
  ask: 'How long are the shorter pieces of moulding?',
  called: { names: ['shorter moulding pieces'], asks: ['shorter pieces of moulding'] },
})

export const mouldingEach = word<'length'>('mouldingEach', {
  kind: 'length',
  label: 'moulding for one cap, saw cuts counted',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Four pieces and the four cuts between them, cut one after the other.',
  ask: 'How much moulding does one cap take?',
  called: {
    names: ['moulding for one cap'],
    asks: ['moulding per cap', 'molding per cap', 'moulding for one cap', 'how much moulding for one'],
  },
})

export const mouldingAll = word<'length'>('mouldingAll', {
  kind: 'length',
  label: 'moulding for all caps',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'All caps together, before the waste at the ends of each stick.',
  ask: 'How much moulding for all caps?',
  called: {
    names: ['moulding in all'],
    asks: [
      'how much moulding',
      'how much molding',
      'moulding in all',
      'total moulding',
      'moulding do i need',
      'molding do i need',
    ],
  },
})

export const chamferLeg = word<'length'>('chamferLeg', {
  kind: 'length',
  label: 'chamfer, marked from the edge',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far from the edge it is marked on the face.',
  ask: 'How far from the edge is the chamfer marked?',
  called: {
    names: ['chamfer of', 'chamfer', 'chamfer leg'],
    things: ['chamfer', 'bevel', 'edge'],
    sides: ['chamfer', 'from the edge'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '1/16 in', to: '2 in' },
})

export const chamferAngle = word<'angle'>('chamferAngle', {
  kind: 'angle',
  label: 'chamfer, off the face',
  measure: 'The angle between the face and the chamfer: 45° takes as much off both sides.',
  ask: 'At what angle is the chamfer?',
  called: { names: ['chamfer angle'], things: ['chamfer'], sides: ['angle', 'degrees'] },
  possible: { above: '0 deg', most: '85 deg' },
  plausible: { from: '15 deg', to: '75 deg' },
  usual: { value: '45 deg', because: 'most chamfers take the same off both sides', from: 'common practice, no source' },
})

export const chamferFace = word<'length'>('chamferFace', {
  kind: 'length',
  label: 'face of the chamfer',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Across the new face.',
  ask: 'How wide is the face of the chamfer?',
  called: {
    names: ['face of the chamfer'],
    asks: ['how wide is the chamfer', 'face of the chamfer', 'width of the chamfer', 'how wide is the face'],
  },
})

export const chamferDepth = word<'length'>('chamferDepth', {
  kind: 'length',
  label: 'chamfer, down the side',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'How far down the side it is marked.',
  ask: 'How far down the side does the chamfer go?',
  called: { names: ['chamfer depth'], asks: ['how deep is the chamfer', 'mark on the side for the chamfer'] },
})

export const topSlope = word<'angle'>('topSlope', {
  kind: 'angle',
  label: 'slope of the post’s top',
  measure: 'From level: enough to shed water.',
  ask: 'At what angle is the post’s top cut?',
  called: {
    names: [
      'slope of the top',
      'shed cut',
      'slope cut',
      'sloped top',
      'cut at',
      'top cut',
      'beveled top',
      'bevelled top',
    ],
    things: ['top', 'post top'],
    sides: ['slope', 'sloped', 'angle', 'degrees', 'cut'],
    plainly: true,
  },
  possible: { above: '0 deg', most: '75 deg' },
  plausible: { from: '5 deg', to: '45 deg' },
})

export const topDrop = word<'length'>('topDrop', {
  kind: 'length',
  label: 'one side of the top lower by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Mark it on the two sides of the post.',
  ask: 'How much lower is one side of the top?',
  called: {
    names: ['drop across the top'],
    asks: [
      'how much lower is one side',
      'how far down do i mark',
      'drop across the post',
      'drop across the top',
      'slope the post tops',
      'sloped post top',
      'shed the water',
      'bevel the post tops',
      'how much does the top drop',
    ],
  },
})

export const topFace = word<'length'>('topFace', {
  kind: 'length',
  label: 'sloped face of the top',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Along the cut.',
  ask: 'How long is the sloped face?',
  called: { names: ['face of the sloped top'], asks: ['length of the sloped cut', 'how long is the sloped face'] },
})
