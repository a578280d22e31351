// This file is about a fence of several runs: where each run begins and ends, the gates in it, and what the runs make together.
import { counted, word } from './word.ts'

const whereMeasured = (end: string) => ({
  post: { label: 'at a post’s centre', called: [] },
  outside: { label: 'at a post’s outside face', called: [] },
  wall: { label: `at a wall, with a post against it${end}`, called: [] },
})
const usualEnd = {
  value: 'post',
  because: 'runs that share a corner post are measured to its centre',
  from: 'common practice, no source',
}

export const nearEnd = word<'choice'>('nearEnd', {
  kind: 'choice',
  label: 'where the run is measured from',
  measure: 'From the first post’s centre, from its outside face, or from a wall that it stands against.',
  ask: 'Is the run measured from the first post’s centre, from its outside face, or from a wall?',
  called: {},
  unsaid: true,
  options: whereMeasured(''),
  usual: usualEnd,
})

export const farEnd = word<'choice'>('farEnd', {
  kind: 'choice',
  label: 'where the run is measured to',
  measure: 'To the last post’s centre, to its outside face, or to a wall that it stands against.',
  ask: 'Is the run measured to the last post’s centre, to its outside face, or to a wall?',
  called: {},
  unsaid: true,
  options: whereMeasured(''),
  usual: usualEnd,
})

export const gateOpenings = word<'length'>('gateOpenings', {
  kind: 'length',
  list: true,
  label: 'gate openings, in order along the run',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Each clear, from gate post face to gate post face, in the order you meet them.',
  ask: 'How wide is each gate opening, in the order you meet them?',
  called: {},
  unsaid: true,
  possible: { above: '0 in' },
  plausible: { from: '24 in', to: '20 ft' },
})

export const runPieces = word<'length'>('runPieces', {
  kind: 'length',
  list: true,
  label: 'pieces of the run, in order',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From post centre to post centre, up to each gate and from it on, in the order you walk.',
  ask: 'How long is each piece of fence before, between and after the gates of the run, in the order you walk?',
  called: {},
  unsaid: true,
  possible: { above: '0 ft' },
  plausible: { from: '1 ft', to: '3000 ft' },
})

export const gateStarts = word<'length'>('gateStarts', {
  kind: 'length',
  list: true,
  label: 'where each gate starts',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From where the tape is held at the start of the run to the centre of each gate’s nearer post.',
  ask: 'How far along the run does each gate start?',
  called: {},
  unsaid: true,
  possible: { least: '0 ft' },
  plausible: { from: '0 ft', to: '3000 ft' },
})

export const gatePlace = word<'choice'>('gatePlace', {
  kind: 'choice',
  label: 'place of the gate',
  measure: 'In the middle of the run, or wherever two bays meet.',
  ask: 'Does the gate stand in the middle of the run, or wherever two bays meet?',
  called: {},
  unsaid: true,
  options: {
    middle: { label: 'in the middle of the run', called: [] },
    joint: { label: 'where two bays meet', called: [] },
  },
})

export const bayRow = word<'length'>('bayRow', {
  kind: 'length',
  list: true,
  label: 'bays one by one, centre to centre',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'From post centre to post centre, in the order you walk.',
  ask: 'How wide is each bay, centre to centre?',
  called: {},
  unsaid: true,
})

export const postStations = word<'length'>('postStations', {
  kind: 'length',
  list: true,
  label: 'post centres from the start',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'From where the tape is held at the start of the run.',
  ask: 'Where does each post stand along the run?',
  called: {},
  unsaid: true,
})

export const runPosts = counted(
  'runPosts',
  'posts of each run',
  'post',
  'Posts of each run, both its ends counted.',
  true,
)
export const runBays = counted('runBays', 'bays of each run', 'bay', 'Bays of each run.', true)
export const gatePostCount = counted(
  'gatePostCount',
  'gate posts',
  'post',
  'Posts beside a gate, corner posts among them.',
)
export const cornerPostCount = counted(
  'cornerPostCount',
  'corner posts',
  'post',
  'Posts where two runs meet, those beside a gate left out.',
)
export const endPostCount = counted(
  'endPostCount',
  'end posts',
  'post',
  'Posts at the free ends, those beside a gate left out.',
)
export const linePostCount = counted('linePostCount', 'line posts', 'post', 'All other posts.')
export const leafPickets = counted('leafPickets', 'pickets on each leaf', 'picket', 'Pickets on each gate leaf.', true)
export const stretchBays = counted(
  'stretchBays',
  'bays in each stretch',
  'bay',
  'Bays alike in each stretch of the fence.',
  true,
)
export const bayPickets = counted(
  'bayPickets',
  'pickets in each bay, stretch by stretch',
  'picket',
  'Pickets in one bay of each stretch.',
  true,
)
export const bayRails = counted(
  'bayRails',
  'rails in each bay, stretch by stretch',
  'rail',
  'Rails in one bay of each stretch.',
  true,
)

export const railCuts = word<'length'>('railCuts', {
  kind: 'length',
  list: true,
  label: 'rails as cut, stretch by stretch',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The length of a rail in each stretch.',
  ask: 'How long are the rails of each stretch?',
  called: {},
  unsaid: true,
  possible: { above: '0 in' },
})

export const picketCrossings = counted(
  'picketCrossings',
  'places where a picket crosses a rail',
  'place',
  'Pickets times the rails behind each.',
)

export const railLengthAll = word<'length'>('railLengthAll', {
  kind: 'length',
  label: 'all rails, end to end',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'The rails of all bays laid end to end.',
  ask: 'How long are all the rails end to end?',
  called: {},
  unsaid: true,
  possible: { above: '0 in' },
})

export const longerAtGates = word<'length'>('longerAtGates', {
  kind: 'length',
  label: 'post beside a gate, longer by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'What the ground falls over the width of the gate.',
  ask: 'How much longer are the posts beside the gate?',
  called: {},
  unsaid: true,
})

export const slopeWay = word<'choice'>('slopeWay', {
  kind: 'choice',
  label: 'how the fence takes a slope',
  measure: 'Level bays with a step at each post, or rails that follow the ground.',
  ask: 'Does the fence step down the slope, bay by bay, or follow the ground?',
  called: {},
  options: {
    stepped: {
      label: 'in steps, each bay level',
      called: ['step', 'stepped', 'steps', 'steps down', 'stepping', 'in steps', 'step it', 'level bays'],
    },
    raked: {
      label: 'following the ground',
      called: [
        'follow the ground',
        'follows the ground',
        'follow the slope',
        'follows the slope',
        'raked',
        'rake',
        'racked',
        'parallel to the ground',
      ],
    },
  },
})

export const picketEnds = word<'choice'>('picketEnds', {
  kind: 'choice',
  label: 'how the pickets meet the posts',
  measure: 'A gap at each post, or a picket tight against each post.',
  ask: 'Is there a gap at each post, or a picket tight against each post?',
  called: {},
  options: {
    gap: { label: 'a gap at each post', called: ['gap at each post', 'gap at the posts', 'a gap against each post'] },
    picket: {
      label: 'a picket against each post',
      called: [
        'picket against each post',
        'pickets against the posts',
        'picket at each post',
        'tight against the posts',
      ],
    },
  },
  usual: {
    value: 'gap',
    because: 'posts then look like one more picket in the row',
    from: 'common practice, no source',
  },
})

export const leftOut = word<'choice'>('leftOut', {
  kind: 'choice',
  label: 'part of the fence',
  measure: 'Whether this run is still to be built.',
  ask: 'Is this run part of the fence?',
  called: {},
  unsaid: true,
  options: {
    out: { label: 'left out', called: [] },
    in: { label: 'part of it', called: [] },
  },
})

/** Words of the fence as a whole that no calculation takes: they decide which ones are worked. */
export const fenceWords = [slopeWay, picketEnds, leftOut]
