// This file is about the run of the fence and its bays.
import { word } from './word.ts'

export const runLength = word<'length'>('runLength', {
  kind: 'length', label: 'length of the run', units: { imperial: 'ft', metric: 'm' },
  measure: 'Measure level, along the string, not along the slope.',
  ask: 'How long is the run?',
  called: { names: ['between post centers', 'between the post centers', 'between the end posts', 'between centers', 'wall to wall', 'between walls', 'between two walls', 'run length', 'length of the run', 'length of fence', 'of fence', 'fence line', 'fence length', 'long run', 'run of', 'perimeter', 'all the way round', 'all the way around', 'total length', 'side of the yard', 'along the side', 'line of', 'of fencing', 'boundary of', 'frontage'], things: ['run', 'fence', 'side', 'line', 'yard', 'boundary', 'fencing', 'stretch', 'length', 'front', 'back', 'garden', 'perimeter', 'wall'], sides: ['long', 'length', 'run', 'total', 'along', 'straight'], plainly: true },
  possible: { above: '0 ft' }, plausible: { from: '3 ft', to: '3000 ft' },
})

export const widestBay = word<'length'>('widestBay', {
  kind: 'length', label: 'widest bay allowed', units: { imperial: 'ft', metric: 'm' },
  measure: 'The most that posts may stand apart, centre to centre.',
  ask: 'How far apart may the posts be at most, centre to centre?',
  called: { names: ['post spacing', 'on center', 'on centre', 'on centers', 'on centres', 'oc', 'o.c.', 'bay at most', 'bays no wider', 'posts apart', 'between posts', 'maximum bay', 'max bay', 'widest bay', 'spacing of posts', 'posts every', 'post every', 'centres', 'centers', 'bays of', 'bays no more', 'rail length', 'a bay'], things: ['bay', 'bays', 'rail', 'post', 'span', 'section', 'panel'], sides: ['apart', 'spacing', 'most', 'max', 'maximum', 'every', 'center', 'centre', 'than', 'spaced', 'limit', 'wide', 'centers', 'centres'], plainly: true },
  possible: { above: '0 ft' }, plausible: { from: '2 ft', to: '12 ft' },
})

export const runEnds = word<'choice'>('runEnds', {
  kind: 'choice', label: 'what the length runs between',
  measure: 'Say what you held the tape to at each end.',
  ask: 'What did you measure between: the centres of the end posts, the outside faces of the end posts, or two walls?',
  called: {},
  options: {
    centres: { label: 'centres of the end posts', called: ['between centers', 'between centres', 'center to center', 'centre to centre', 'post centers', 'post centres', 'between post centers', 'between post centres', 'c to c', 'stake to stake', 'end post centers', 'end post centres'] },
    walls: { label: 'two walls, a post against each', called: ['between walls', 'between two walls', 'wall to wall', 'between the walls', 'house to', 'between the house and', 'between the house', 'between buildings', 'between the garage', 'house wall', 'between two houses'] },
    outside: { label: 'outside faces of the end posts', called: ['outside to outside', 'outside faces', 'out to out', 'outside of the posts', 'overall', 'outside edges'] },
    loop: { label: 'a closed loop, back to the first post', called: ['closed loop', 'all the way round', 'all the way around', 'all round', 'all around', 'enclosed', 'closed', 'perimeter', 'back to the start', 'loop', 'right round', 'goes around', 'whole yard', 'enclosing', 'enclose', 'around the whole', 'four sides', 'fully around'] },
  },
  usual: { value: 'centres', because: 'a run is set out from stake to stake, and the stakes are the post centres', from: 'common practice, no source' },
})

export const gates = word<'count'>('gates', {
  kind: 'count', noun: 'gate', label: 'gates', whole: true, 
  measure: 'Gates in this run.', ask: 'How many gates are in the run?',
  called: { names: ['number of gates'], things: ['gate', 'gateway'], asks: ['how many gates'] },
  possible: { least: '0' }, plausible: { from: '0', to: '12' },
})

export const gateOpening = word<'length'>('gateOpening', {
  kind: 'length', label: 'gate opening', units: { imperial: 'in', metric: 'mm' },
  measure: 'Clear, from gate post face to gate post face.',
  ask: 'How wide is the gate opening, from post face to post face?',
  called: { names: ['gate opening', 'gate width', 'wide gate', 'width of the gate', 'gateway'], things: ['gate', 'gateway', 'walk gate', 'drive gate', 'double gate'], sides: ['wide', 'opening', 'width', 'clear'], plainly: true },
  possible: { above: '0 in' }, plausible: { from: '24 in', to: '20 ft' },
})

export const gateStart = word<'length'>('gateStart', {
  kind: 'length', label: 'first gate post centre from the start of the run', units: { imperial: 'ft', metric: 'm' },
  measure: 'From the first post centre (or the wall) to the centre of the nearer gate post.',
  ask: 'How far from the start of the run is the gate?',
  called: { names: ['gate starts', 'gate is at', 'gate begins', 'from the start', 'gate stands', 'from the first post', 'from the corner', 'from the end'], things: ['gate'], sides: ['from', 'start', 'starts', 'begins', 'along'] },
  possible: { least: '0 ft' }, plausible: { from: '0 ft', to: '3000 ft' },
})

export const bays = word<'count'>('bays', {
  kind: 'count', noun: 'bay', label: 'bays', whole: true,
  measure: 'Spaces between posts that are filled with fence.', ask: 'How many bays?',
  called: { names: ['number of bays'], things: ['bay', 'section', 'panel'], asks: ['how many bays', 'how many sections', 'how many panels', 'bays do i', 'how many spans'] },
})

export const bayCentres = word<'length'>('bayCentres', {
  kind: 'length', label: 'bay, centre to centre', units: { imperial: 'ft', metric: 'mm' },
  measure: 'From post centre to post centre.', ask: 'How wide is a bay, centre to centre?',
  called: { names: ['equal bays', 'bay size', 'post centres', 'post centers'], things: ['bay', 'post'], sides: ['apart', 'spacing', 'centres', 'centers'], asks: ['how far apart', 'how far apart should the posts', 'how far apart do the posts', 'how far apart are the posts', 'post spacing', 'what spacing for the posts', 'what spacing between posts', 'how wide is each bay', 'how wide are the bays', 'bay width', 'equal bays', 'how to divide', 'how should i divide', 'space the posts', 'how far apart to put the posts', 'how far apart to set the posts', 'posts evenly', 'where do the posts go', 'where should the posts go', 'post layout', 'lay out the posts', 'how wide will each bay', 'how far apart posts'] },
})

export const bayOpening = word<'length'>('bayOpening', {
  kind: 'length', label: 'opening of a bay', units: { imperial: 'in', metric: 'mm' },
  measure: 'Post face to post face: centre to centre less one post width.', ask: 'How wide is a bay between post faces?',
  called: { names: ['clear bay'], asks: ['how wide between the posts', 'how wide is the opening', 'what is the clear opening', 'how wide is the clear'] },
})
