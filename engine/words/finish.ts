// This file is about the finish: the faces it goes on, how much of it, how long the work takes, and when it is due again.
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

export const coats = word<'count'>('coats', {
  kind: 'count',
  noun: 'coat',
  label: 'coats',
  whole: true,
  measure: 'Primer counts as one.',
  ask: 'How many coats?',
  called: { names: ['number of coats'], things: ['coat', 'coats'] },
  possible: { least: '1', most: '6' },
  plausible: { from: '1', to: '4' },
  usual: {
    value: '2',
    because: 'two coats are usual; film paint on new wood takes a primer and two more',
    from: 'common practice, no source; Wood Handbook, chapter 16, for the primer and two',
  },
})

export const surfaceTexture = word<'choice'>('surfaceTexture', {
  kind: 'choice',
  label: 'rough or smooth wood',
  measure: 'Planed is smooth; sawn or weathered is rough, and drinks about twice as much.',
  ask: 'Is the wood planed smooth, or rough (sawn or weathered)?',
  called: { names: ['texture'] },
  options: {
    smooth: { label: 'smooth (planed)', called: ['smooth', 'planed', 'dressed', 'smooth wood', 's4s'] },
    rough: {
      label: 'rough (sawn or weathered)',
      called: [
        'rough',
        'rough sawn',
        'rough-sawn',
        'sawn',
        'saw-textured',
        'roughsawn',
        'weathered wood',
        'rough wood',
        'old wood',
      ],
    },
  },
})

export const coverageFirst = word<'coverage'>('coverageFirst', {
  kind: 'coverage',
  label: 'spread of the first coat',
  units: { imperial: 'ft2/gal', metric: 'm2/L' },
  measure: 'On the can, for wood as rough as yours. The lower figure buys enough.',
  ask: 'How far does the first coat go, by the can?',
  called: {
    names: [
      'coverage',
      'first coat',
      'spread',
      'spreading rate',
      'covers',
      'for the first',
      'first coat at',
      'on the first coat',
      'covers first',
    ],
    things: ['can', 'coat', 'stain', 'paint'],
    sides: ['covers', 'coverage', 'first', 'goes'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 ft2/gal' },
  plausible: { from: '40 ft2/gal', to: '700 ft2/gal' },
})

export const coverageNext = word<'coverage'>('coverageNext', {
  kind: 'coverage',
  label: 'spread of each later coat',
  units: { imperial: 'ft2/gal', metric: 'm2/L' },
  measure: 'On the can. A second coat goes further, since the wood drinks less.',
  ask: 'How far does each later coat go, by the can?',
  called: {
    names: [
      'second coat',
      'later coats',
      'next coat',
      'second coat at',
      'for the second',
      'on the second coat',
      'then',
    ],
    things: ['second', 'second coat'],
    sides: ['second', 'later', 'next'],
    plainly: true,
  },
  possible: { above: '0 ft2/gal' },
  plausible: { from: '40 ft2/gal', to: '900 ft2/gal' },
})

export const finishSpare = word<'percent'>('finishSpare', {
  kind: 'percent',
  label: 'spare finish',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'For what stays in brush, tray and can, and runs off edges. A sprayer loses far more.',
  ask: 'How much spare finish, in percent?',
  called: {
    names: ['waste', 'spare', 'extra', 'loss', 'for waste'],
    things: ['waste', 'spare', 'extra'],
    sides: ['waste', 'spare', 'extra'],
    plainly: true,
    byDefault: true,
  },
  possible: { least: '0 %', most: '200 %' },
  plausible: { from: '0 %', to: '60 %' },
  usual: { value: '10 %', because: 'a brush and a can keep some for themselves', from: 'common practice, no source' },
})

export const canSize = word<'volume'>('canSize', {
  kind: 'volume',
  label: 'size of the can',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'On the label.',
  ask: 'How large is a can?',
  called: {
    names: ['can size', 'cans of', 'tins of', 'size of the can', 'sold in'],
    things: ['can', 'tin', 'pail', 'bucket of stain', 'pot'],
    sides: ['can', 'cans', 'tin', 'tins', 'pail'],
    plainly: true,
    byDefault: true,
  },
  possible: { above: '0 gal' },
  plausible: { from: '0.1 gal', to: '6 gal' },
  usual: {
    value: '1 gal',
    metric: '5 L',
    because: 'a common size of can',
    from: 'common practice, no source',
  },
})

export const finishNeeded = word<'volume'>('finishNeeded', {
  kind: 'volume',
  label: 'finish needed',
  units: { imperial: 'gal', metric: 'L' },
  measure: 'All coats, with what is spare.',
  ask: 'How much finish is needed?',
  called: {
    names: ['amount of stain', 'amount of paint', 'finish needed'],
    asks: [
      'how much stain',
      'how much paint',
      'how much finish',
      'how much primer',
      'how much sealer',
      'how many gallons of stain',
      'how many gallons of paint',
      'how many gallons',
      'how many litres of stain',
      'how many litres of paint',
      'how many litres',
      'how many liters',
      'gallons of stain',
      'gallons of paint',
      'litres of stain',
      'litres of paint',
      'stain do i need',
      'paint do i need',
      'stain will i need',
      'paint will i need',
    ],
  },
})

export const finishCans = word<'count'>('finishCans', {
  kind: 'count',
  noun: 'can',
  label: 'cans to buy',
  whole: true,
  measure: 'Whole cans of that size. Stir them together before you begin: no two batches match.',
  ask: 'How many cans?',
  called: {
    names: ['cans to buy'],
    things: ['can', 'tin', 'pail'],
    asks: ['cans of stain', 'cans of paint', 'tins of paint', 'tins of stain', 'cans do i need', 'tins do i need'],
  },
})

export const lastCoat = word<'date'>('lastCoat', {
  kind: 'date',
  label: 'day of the last coat',
  measure: 'The day on which the last coat went on, with its year.',
  ask: 'On which day did the last coat go on? Give the date with its year.',
  called: {
    names: [
      'painted on',
      'stained on',
      'last coat',
      'last coated',
      'finished on',
      'last painted',
      'last stained',
      'coated on',
      'last coat on',
    ],
    things: ['coat', 'paint', 'stain'],
    sides: ['last', 'painted', 'stained', 'coated'],
    plainly: true,
    byDefault: true,
  },
})

export const finishType = word<'choice'>('finishType', {
  kind: 'choice',
  label: 'which finish it has',
  measure: 'On the can: what it calls itself.',
  ask: 'Which finish has it: water repellent, tinted clear, semi-transparent stain, solid stain or paint?',
  called: { names: ['type of finish'] },
  options: {
    repellent: {
      label: 'water-repellent preservative',
      called: [
        'water repellent',
        'water-repellent',
        'repellent',
        'wood preservative',
        'clear sealer',
        'sealer',
        'waterproofer',
      ],
    },
    tinted: {
      label: 'tinted clear finish',
      called: [
        'tinted clear',
        'toner',
        'transparent stain',
        'tinted oil',
        'decking oil',
        'clear finish',
        'translucent',
      ],
    },
    semitransparent: {
      label: 'semi-transparent stain',
      called: [
        'semi-transparent',
        'semitransparent',
        'semi transparent',
        'semi-transparent stain',
        'semi transparent stain',
        'penetrating stain',
      ],
    },
    solid: {
      label: 'solid-colour stain',
      called: [
        'solid stain',
        'solid color',
        'solid colour',
        'solid-color',
        'solid-colour',
        'opaque stain',
        'solid color stain',
        'solid colour stain',
      ],
    },
    paint: {
      label: 'paint',
      called: ['paint', 'painted', 'paint system', 'latex paint', 'acrylic paint', 'oil paint', 'gloss'],
    },
  },
})

export const recoatFrom = word<'date'>('recoatFrom', {
  kind: 'date',
  label: 'look at it from',
  measure:
    'The early end of the published range. South and west faces go first; on the southern half of the earth north and west.',
  ask: 'From when may it be due?',
  called: {
    names: ['recoat'],
    asks: [
      'when is it due',
      'when is the next coat',
      'when do i recoat',
      'when do i repaint',
      'when do i restain',
      'when should i recoat',
      'when should i repaint',
      'when should i restain',
      'when does it need another coat',
      'when does it need painting again',
      'when does it need staining again',
      'next coat due',
      'recoat date',
      'when to recoat',
      'when will it need',
      'how long will the paint last',
      'how long will the stain last',
      'how long does paint last',
      'how long does stain last',
      'how long will it last',
    ],
  },
})

export const recoatBy = word<'date'>('recoatBy', {
  kind: 'date',
  label: 'due by',
  measure: 'The late end of the published range.',
  ask: 'By when is it due at the latest?',
  called: {},
})

const each = {
  kind: 'duration',
  units: { imperial: 'min', metric: 'min' },
  possible: { above: '0 min' },
} as const
const pace = 'common practice, no source; time your own first one'

export const picketTime = word<'duration'>('picketTime', {
  ...each,
  label: 'time for one picket, one coat',
  measure: 'By the clock, with your own brush: both faces and the edges.',
  ask: 'How long does one picket take, one coat?',
  called: {
    names: ['a picket', 'per picket', 'each picket', 'one picket'],
    things: ['picket', 'board', 'paling'],
    sides: ['each', 'per', 'take', 'takes'],
    plainly: true,
  },
  plausible: { from: '0.5 min', to: '45 min' },
  usual: { value: '5 min', because: 'a 3 to 4 ft picket takes about that with a brush, all round', from: pace },
})

export const railTime = word<'duration'>('railTime', {
  ...each,
  label: 'time for one rail, one coat',
  measure: 'By the clock, with your own brush, all four sides.',
  ask: 'How long does one rail take, one coat?',
  called: {
    names: ['a rail', 'per rail', 'each rail', 'one rail'],
    things: ['rail', 'stringer'],
    sides: ['each', 'per', 'take', 'takes'],
    plainly: true,
  },
  plausible: { from: '1 min', to: '60 min' },
  usual: { value: '8 min', because: 'an 8 ft rail takes about that with a brush, all round', from: pace },
})

export const postTime = word<'duration'>('postTime', {
  ...each,
  label: 'time for one post, one coat',
  measure: 'By the clock, with your own brush: four sides and the top.',
  ask: 'How long does one post take, one coat?',
  called: {
    names: ['a post', 'per post', 'each post', 'one post'],
    things: ['post'],
    sides: ['each', 'per', 'take', 'takes'],
    plainly: true,
  },
  plausible: { from: '1 min', to: '60 min' },
  usual: { value: '8 min', because: 'a 4 ft post takes about that with a brush', from: pace },
})

export const coatSetUp = word<'duration'>('coatSetUp', {
  ...each,
  label: 'setting up and cleaning, each coat',
  measure: 'Sheets down, stirring, brushes washed.',
  ask: 'How long do setting up and cleaning take for each coat?',
  called: {
    names: ['setting up', 'set up', 'cleaning', 'clean up', 'cleanup', 'setup'],
    things: ['set up', 'cleaning', 'brushes'],
    sides: ['set up', 'clean'],
    plainly: true,
  },
  possible: { least: '0 min' },
  plausible: { from: '0 min', to: '6 h' },
  usual: {
    value: '45 min',
    because: 'sheets, stirring and brushes take that at least',
    from: 'common practice, no source',
  },
})

export const painters = word<'count'>('painters', {
  kind: 'count',
  noun: 'painter',
  label: 'people painting',
  whole: true,
  measure: 'You included.',
  ask: 'How many people paint, you included?',
  called: {
    names: ['people painting', 'painters', 'of us', 'people', 'brushes'],
    things: ['painter', 'people', 'person', 'brush'],
  },
  possible: { least: '1' },
  plausible: { from: '1', to: '12' },
  usual: { value: '1', because: 'you did not speak of help', from: 'Decided here; say how many you are.' },
})

export const paintingTime = word<'duration'>('paintingTime', {
  kind: 'duration',
  label: 'painting in all',
  units: { imperial: 'h', metric: 'h' },
  measure: 'All coats by one person. The time between coats is not in it.',
  ask: 'How many hours of painting is it in all?',
  called: {
    names: ['painting time', 'time to paint', 'painting hours'],
    asks: [
      'how long to paint',
      'how long to stain',
      'how long will it take to paint',
      'how long will it take to stain',
      'how long does it take to paint',
      'how long does it take to stain',
      'hours of painting',
      'hours of staining',
      'how many hours to paint',
      'how many hours to stain',
      'how long will the painting take',
      'how long will the staining take',
      'how long does the painting take',
      'painting take',
      'staining take',
    ],
  },
})

export const paintingClock = word<'duration'>('paintingClock', {
  kind: 'duration',
  label: 'painting by the clock',
  units: { imperial: 'h', metric: 'h' },
  measure: 'With all who paint at once.',
  ask: 'How long is that by the clock?',
  called: {},
})

export const paintingDays = word<'count'>('paintingDays', {
  kind: 'count',
  noun: 'painting day',
  label: 'days of painting',
  whole: true,
  measure: 'A day begun counts, and each coat begins on a day of its own.',
  ask: 'How many days of painting is it?',
  called: {
    things: ['days of painting'],
    asks: [
      'how many days to paint',
      'how many days to stain',
      'how many days of painting',
      'how many days will the painting',
    ],
  },
})

export const paintDayHours = word<'duration'>('paintDayHours', {
  kind: 'duration',
  label: 'hours of painting a day',
  units: { imperial: 'h', metric: 'h' },
  measure: 'From when the dew is off until it must be drying.',
  ask: 'How many hours a day can you paint?',
  called: {
    names: ['hours a day', 'a day', 'per day', 'each day', 'every day'],
    things: ['day'],
    sides: ['a day', 'per day'],
    plainly: true,
  },
  possible: { above: '0 h', most: '24 h' },
  plausible: { from: '1 h', to: '12 h' },
})
