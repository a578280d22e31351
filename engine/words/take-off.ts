// This file is about the take-off: what the whole fence is made of, what each costs, and what it weighs.
import { counted, word } from './word.ts'

const price = (name: string, of: string, called: readonly string[]) =>
  word<'money'>(name, {
    kind: 'money',
    label: `price of ${of}`,
    measure: `For ${of}, with or without tax, as long as all are alike.`,
    ask: `What does ${of} cost?`,
    called: { things: called },
    unsaid: true,
    possible: { least: '$0' },
  })

export const postPrice = price('postPrice', 'one post', ['post'])
export const railPrice = price('railPrice', 'one rail', ['rail'])
export const picketPrice = price('picketPrice', 'one picket', ['picket', 'paling', 'slat'])
export const bracketPrice = price('bracketPrice', 'one bracket', ['bracket', 'hanger'])
export const screwBoxPrice = price('screwBoxPrice', 'one box of screws', ['screw', 'box of screws'])
export const bagPrice = price('bagPrice', 'one bag of concrete', ['bag', 'concrete', 'cement'])
export const stonePrice = price('stonePrice', 'a cubic yard or cubic metre of stone', ['stone', 'gravel'])
export const canPrice = price('canPrice', 'one can of finish', ['can', 'tin', 'paint', 'stain'])
export const capPrice = price('capPrice', 'one post cap', ['cap'])
export const hingePrice = price('hingePrice', 'one hinge', ['hinge'])
export const latchPrice = price('latchPrice', 'one latch', ['latch'])
export const dropRodPrice = price('dropRodPrice', 'one drop rod', ['rod'])
export const deliveryPrice = word<'money'>('deliveryPrice', {
  kind: 'money',
  label: 'price of the delivery',
  measure: 'For all of it, set down at your yard.',
  ask: 'What does the delivery cost?',
  called: {
    names: ['delivery', 'deliver', 'delivered for', 'have it delivered', 'delivery fee', 'delivery charge'],
    things: ['delivery', 'deliver'],
    plainly: true,
  },
  possible: { least: '$0' },
})

const sum = (name: string, label: string) =>
  word<'money'>(name, {
    kind: 'money',
    label,
    measure: 'Number times price.',
    ask: `What do ${label} come to?`,
    called: {},
    unsaid: true,
  })

export const postsCost = sum('postsCost', 'posts as cut from what is sold')
export const railsCost = sum('railsCost', 'rails as cut from what is sold')
export const picketsCost = sum('picketsCost', 'pickets as cut from what is sold')

export const postsByLength = counted(
  'postsByLength',
  'posts of each length',
  'post',
  'Posts of each length, in the order of the lengths.',
  true,
)
export const postLengths = word<'length'>('postLengths', {
  kind: 'length',
  list: true,
  label: 'lengths of the posts',
  units: { imperial: 'ft', metric: 'mm' },
  measure: 'Each length that posts of the fence have.',
  ask: 'How long are the posts of each kind?',
  called: {},
  unsaid: true,
  possible: { above: '0 in' },
})
export const postBoards = counted(
  'postBoards',
  'sticks to cut the posts from',
  'stick',
  'Sticks as the yard sells them.',
)
export const railSticks = counted(
  'railSticks',
  'sticks to cut the rails from',
  'stick',
  'Sticks as the yard sells them.',
)
export const picketSticks = counted(
  'picketSticks',
  'sticks to cut the pickets from',
  'stick',
  'Sticks as the yard sells them.',
)

export const leavesInAll = counted('leavesInAll', 'gate leaves', 'leaf', 'A double gate has two.')
export const hingesEach = word<'count'>('hingesEach', {
  kind: 'count',
  noun: 'hinge',
  label: 'hinges on each leaf',
  whole: true,
  measure: 'On one leaf.',
  ask: 'How many hinges does each gate leaf have?',
  called: { names: ['hinges each', 'hinges per leaf', 'hinges on each gate', 'hinges a gate'] },
  possible: { least: '2', most: '4' },
  usual: {
    value: '2',
    because: 'two carry a light leaf; a tall or heavy one takes three',
    from: 'common practice, no source',
  },
})
export const hinges = counted('hinges', 'hinges', 'hinge', 'For all gate leaves.')
export const latches = counted('latches', 'latches', 'latch', 'One for each gate.')
export const dropRods = counted('dropRods', 'drop rods', 'rod', 'One for each double gate.')

const masses = (name: string, label: string, list = false) =>
  word<'mass'>(name, {
    kind: 'mass',
    label,
    ...(list ? { list } : {}),
    units: { imperial: 'lb', metric: 'kg' },
    measure: 'As it is loaded, wet or dry.',
    ask: `What do the ${label.replace('weight of the ', '')} weigh?`,
    called: {},
    unsaid: true,
  })

export const postsWeights = masses('postsWeights', 'weight of the posts, by kind', true)
export const railsWeights = masses('railsWeights', 'weight of the rails, by stretch', true)
export const picketsWeight = masses('picketsWeight', 'weight of the pickets')

export const takeOffCost = word<'money'>('takeOffCost', {
  kind: 'money',
  label: 'the fence, all that is priced',
  measure: 'Every line of the take-off that has a price, added up.',
  ask: 'What does the fence cost?',
  called: {
    names: [
      'take-off cost',
      'cost of the materials',
      'material cost',
      'materials cost',
      'bill for the fence',
      'shopping bill',
    ],
    asks: [
      'what will it all cost',
      'what does it all cost',
      'what do the materials cost',
      'how much for the materials',
      'how much will it all cost',
      'how much does it all come to',
      'what does the whole fence cost',
      'what will the whole fence cost',
      'what does the fence come to',
      'what is the bill for the fence',
    ],
  },
})

export const takeOffLines = word<'count'>('takeOffLines', {
  kind: 'count',
  noun: 'item',
  label: 'things to buy',
  whole: true,
  measure: 'Kinds of thing to buy.',
  ask: 'What do I have to buy?',
  called: {
    names: [
      'take-off',
      'take off',
      'takeoff',
      'material list',
      'materials list',
      'list of materials',
      'shopping list',
      'bill of materials',
      'bill of quantities',
    ],
    asks: [
      'what do i need to buy',
      'what do i have to buy',
      'what must i buy',
      'what should i buy',
      'what all do i need',
      'what materials do i need',
      'list of materials',
      'shopping list',
      'material list',
      'materials list',
      'what do i need to get',
      'what do i need from the yard',
      'what goes on the list',
      'everything i need to buy',
      'what to buy',
    ],
  },
})

export const takeOffWeight = word<'mass'>('takeOffWeight', {
  kind: 'mass',
  label: 'all that is weighed',
  units: { imperial: 'lb', metric: 'kg' },
  measure: 'Every line of the take-off whose weight is known, added up.',
  ask: 'What does it all weigh?',
  called: {
    names: ['weight of it all', 'weight of the materials', 'total weight of the fence'],
    asks: [
      'what does it all weigh',
      'how much does it all weigh',
      'how heavy is it all',
      'what do the materials weigh',
    ],
  },
})

export const stoneUnit = word<'volume'>('stoneUnit', {
  kind: 'volume',
  label: 'stone that its price is for',
  measure: 'A cubic yard, or a cubic metre.',
  ask: 'Is the stone priced by the cubic yard or by the cubic metre?',
  called: {},
  unsaid: true,
  possible: { above: '0 ft3' },
  usual: {
    value: '1 yd3',
    metric: '1 m3',
    because: 'stone in bulk is sold by it',
    from: 'common practice, no source',
  },
})

export const unweighedThings = counted(
  'unweighedThings',
  'kinds of thing that are not weighed',
  'sort',
  'Those of the take-off whose weight is not known: timber without its kind of wood, bags without their weight.',
)
