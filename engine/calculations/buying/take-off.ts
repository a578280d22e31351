// The take-off: every kind of thing the fence takes, how many, what they cost and what they weigh.
//
//   posts      20 × $18.00     360.00      a line stands here when its number is known;
//   pickets   237 × $ 3.20     758.40      it is priced when its price is, and weighed when its weight is
//   ─────────────────────────────────
//   all that is priced        1118.40      what is not priced is named, never passed over
import { calculation, type Tools } from '../../calculation.ts'
import { type Quantity, quantity, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { byTape } from '../../quantities/tape.ts'
import { add, toNumber } from '../../quantities/amount.ts'
import { bags, bagsLoad } from '../../words/concrete.ts'
import { capCount } from '../../words/caps.ts'
import { finishCans } from '../../words/finish.ts'
import { brackets, railsInAll } from '../../words/framing.ts'
import { gravel, gravelLoad } from '../../words/gravel.ts'
import { picketsToBuy } from '../../words/picket-count.ts'
import { posts } from '../../words/posts.ts'
import { picketLength } from '../../words/pickets.ts'
import { screwBoxes, screwsToBuy } from '../../words/screws.ts'
import {
  bagPrice,
  bracketPrice,
  canPrice,
  capPrice,
  deliveryPrice,
  dropRodPrice,
  dropRods,
  hingePrice,
  hinges,
  latches,
  latchPrice,
  picketPrice,
  picketsCost,
  picketSticks,
  picketsWeight,
  postBoards,
  postLengths,
  postPrice,
  postsByLength,
  postsCost,
  postsWeights,
  railPrice,
  railsCost,
  railSticks,
  railsWeights,
  screwBoxPrice,
  stonePrice,
  stoneUnit,
  takeOffCost,
  takeOffLines,
  takeOffWeight,
  unweighedThings,
} from '../../words/take-off.ts'

const needs = {
  posts,
  postsByLength,
  postLengths,
  postPrice,
  postBoards,
  postsCost,
  railsInAll,
  railPrice,
  railSticks,
  railsCost,
  picketsToBuy,
  picketLength,
  picketPrice,
  picketSticks,
  picketsCost,
  brackets,
  bracketPrice,
  screwsToBuy,
  screwBoxes,
  screwBoxPrice,
  hinges,
  hingePrice,
  latches,
  latchPrice,
  dropRodPrice,
  dropRods,
  bags,
  bagPrice,
  gravel,
  stonePrice,
  stoneUnit,
  capCount,
  capPrice,
  finishCans,
  canPrice,
  deliveryPrice,
  postsWeights,
  railsWeights,
  picketsWeight,
  bagsLoad,
  gravelLoad,
}
type Need = keyof typeof needs & string

const may = Object.keys(needs).filter((it) => it !== 'stoneUnit') as Need[]

/** One kind of thing: its number, its price, the line that multiplies them, and its weight. In the order one loads them. */
interface Item {
  readonly what: string
  readonly count: Need
  readonly price?: Need
  readonly sum?: string
  readonly weight?: Need
  /** A sum that a cut plan has already made, and the sticks it bought. */
  readonly cost?: Need
  readonly sticks?: Need
  readonly sized?: Need
}
const items: readonly Item[] = [
  {
    what: 'posts',
    count: 'postsByLength',
    price: 'postPrice',
    sum: 'postsSum',
    weight: 'postsWeights',
    cost: 'postsCost',
    sticks: 'postBoards',
    sized: 'postLengths',
  },
  {
    what: 'rails',
    count: 'railsInAll',
    price: 'railPrice',
    sum: 'railsSum',
    weight: 'railsWeights',
    cost: 'railsCost',
    sticks: 'railSticks',
  },
  {
    what: 'pickets',
    count: 'picketsToBuy',
    price: 'picketPrice',
    sum: 'picketsSum',
    weight: 'picketsWeight',
    cost: 'picketsCost',
    sticks: 'picketSticks',
    sized: 'picketLength',
  },
  { what: 'bags of concrete', count: 'bags', price: 'bagPrice', sum: 'bagsSum', weight: 'bagsLoad' },
  { what: 'stone', count: 'gravel', price: 'stonePrice', sum: 'stoneSum', weight: 'gravelLoad' },
  { what: 'rail brackets', count: 'brackets', price: 'bracketPrice', sum: 'bracketsSum' },
  { what: 'picket screws', count: 'screwsToBuy' },
  { what: 'boxes of picket screws', count: 'screwBoxes', price: 'screwBoxPrice', sum: 'screwsSum' },
  { what: 'hinges', count: 'hinges', price: 'hingePrice', sum: 'hingesSum' },
  { what: 'latches', count: 'latches', price: 'latchPrice', sum: 'latchesSum' },
  { what: 'drop rods', count: 'dropRods', price: 'dropRodPrice', sum: 'dropRodsSum' },
  { what: 'post caps', count: 'capCount', price: 'capPrice', sum: 'capsSum' },
  { what: 'cans of finish', count: 'finishCans', price: 'canPrice', sum: 'cansSum' },
]

const sums = items.flatMap((it) => it.sum ?? [])
const times = (count: string, price: string): string => `${count} * ${price}`

export const takeOff = calculation({
  name: 'take-off',
  title: 'Take-off of the whole fence',
  answers:
    'Everything the fence takes, how many of each, what it costs as far as prices are known, and what it weighs.',
  needs,
  may,
  oneOf: [
    [
      'posts',
      'postsByLength',
      'picketsToBuy',
      'railsInAll',
      'bags',
      'brackets',
      'screwsToBuy',
      'gravel',
      'finishCans',
      'hinges',
      'capCount',
    ],
  ],
  gives: { takeOffLines, takeOffCost, takeOffWeight, unweighedThings },
  headlines: ['takeOffLines', 'takeOffCost'],
  together: {
    takeOffLines: ['takeOffCost', 'takeOffWeight', 'takeOffLines'],
    takeOffCost: ['takeOffCost', 'takeOffWeight'],
    takeOffWeight: ['takeOffWeight'],
  },
  locals: {
    ...Object.fromEntries(sums.map((it) => [it, 'money' as const])),
    priced: 'money',
    cent: 'money',
    stoneToTheCent: 'money',
    postsAlike: 'money',
  },
  lines: {
    postsSum: ['sum(postsByLength) * postPrice', 'so many posts at that price'],
    postsAlike: ['posts * postPrice', 'so many posts at that price'],
    railsSum: [times('railsInAll', 'railPrice'), 'so many rails at that price'],
    picketsSum: [times('picketsToBuy', 'picketPrice'), 'so many pickets, spares among them'],
    bagsSum: [times('bags', 'bagPrice'), 'bags bought together, for the whole job'],
    stoneSum: ['gravel / stoneUnit * stonePrice', 'by the yard or metre of it'],
    bracketsSum: [times('brackets', 'bracketPrice'), 'so many brackets'],
    screwsSum: [times('screwBoxes', 'screwBoxPrice'), 'whole boxes'],
    hingesSum: [times('hinges', 'hingePrice'), 'so many hinges'],
    dropRodsSum: [times('dropRods', 'dropRodPrice'), 'so many drop rods'],
    latchesSum: [times('latches', 'latchPrice'), 'so many latches'],
    capsSum: [times('capCount', 'capPrice'), 'so many caps'],
    cansSum: [times('finishCans', 'canPrice'), 'whole cans'],
    stoneToTheCent: ['round(stoneSum, cent)', 'to the cent; half a cent goes up'],
    takeOffCost: ['sum(priced)', 'all that is priced, added up'],
  },
  work(_given, tools) {
    const { line, has, put, tell, rows, table, remark, system } = tools
    const unpriced: string[] = []
    const unweighed: string[] = []
    const priced = sumsOf(tools, unpriced)
    const written: string[][] = []
    let mass = zero('mass', system === 'metric' ? 'kg' : 'lb')
    for (const item of items) {
      const count = countOf(tools, item)
      if (!count) continue
      const weight = item.weight && has(item.weight) ? together(rows(item.weight)) : undefined
      if (weight) mass = { ...mass, amount: add(mass.amount, weight.amount) }
      else if (item.weight) unweighed.push(item.what)
      written.push(...linesOf(tools, item, count, priced.get(item.what), weight))
    }
    if (has('deliveryPrice')) {
      const delivery = rows('deliveryPrice')[0] as Quantity
      written.push(['delivery', '1', '', show(delivery), show(delivery), ''])
      priced.set('delivery', delivery)
    }
    tell('takeOffLines', quantity(written.length, 'item'))
    if (priced.size > 0) {
      put('priced', [...priced.values()])
      line('takeOffCost')
    }
    if (unweighed.length < items.filter((it) => it.weight && countOf(tools, it)).length) tell('takeOffWeight', mass)
    tell('unweighedThings', quantity(unweighed.length, 'sort'))
    table({
      title: 'Take-off',
      columns: [
        { label: 'what', unit: '' },
        { label: 'how many', unit: '' },
        { label: 'size', unit: '' },
        { label: 'price each', unit: '' },
        { label: 'comes to', unit: '' },
        { label: 'weight', unit: '' },
      ],
      rows: written,
    })
    if (unpriced.length > 0)
      remark(`Not priced, and in no sum: ${unpriced.join(', ')}. Tell me what each costs, and I add it.`)
    if (unweighed.length > 0)
      remark(
        `Not weighed: ${unweighed.join(', ')}. For timber I need the kind of wood and how wet it is; for bags, what one weighs.`,
      )
    remark(
      'Order what must match together: pickets and caps of one batch, hinges and latch before the gate posts are set.',
    )
  },
  sources: [{ fact: 'each number times its price, added up', from: 'Derived here; needs no table.' }],
  cautions: ['lifting', 'local-code'],
  examples: [
    // 20 × 18 = 360; 40 × 7.25 = 290; 237 × 3.20 = 758.40; 23 × 6.75 = 155.25; together 1563.65
    {
      ask: 'Take-off of the whole fence: 20 posts at $18, 40 rails at $7.25, 237 pickets at $3.20, 23 bags at $6.75',
      given: {
        posts: '20',
        postPrice: '$18',
        railsInAll: '40',
        railPrice: '$7.25',
        picketsToBuy: '237',
        picketPrice: '$3.20',
        bags: '23',
        bagPrice: '$6.75',
      },
      expect: { takeOffCost: '$1,563.65', takeOffLines: '4 items' },
    },
    // 14 × 21.50 = 301; 80 × 1.35 = 108; 301 + 108 + 45 = 454
    {
      ask: 'Take-off: 14 posts at £21.50 and 80 brackets at £1.35, delivery £45',
      given: {
        posts: '14',
        postPrice: '£21.50',
        brackets: '80',
        bracketPrice: '£1.35',
        deliveryPrice: '£45',
      },
      expect: { takeOffCost: '£454.00', takeOffLines: '3 items' },
    },
  ],
})

type Own = Tools<typeof needs>

const together = (each: readonly Quantity[]): Quantity => ({
  ...(each[0] as Quantity),
  amount: each.slice(1).reduce((sum, it) => add(sum, it.amount), (each[0] as Quantity).amount),
})

/** The word that says how many of a thing there are: of posts by their lengths where those are known, else all alike. */
function countOf({ has, rows }: Own, { count }: Item): Need | undefined {
  const name = has(count) ? count : count === 'postsByLength' && has('posts') ? 'posts' : undefined
  return name && rows(name).some((it) => toNumber(it.amount) > 0) ? name : undefined
}

/** What each kind of thing comes to, by its price or by its cut plan. */
function sumsOf(tools: Own, unpriced: string[]): Map<string, Quantity> {
  const { has, line, rows, put } = tools
  const priced = new Map<string, Quantity>()
  for (const item of items) {
    const { what, price, sum, cost, sticks } = item
    const count = countOf(tools, item)
    if (!count) continue
    if (!price || !sum) {
      // Screws are paid by the box, which has its own line once it is known what a box holds.
      if (count !== 'screwsToBuy') unpriced.push(what)
      else if (!has('screwBoxes')) unpriced.push(`${what} (how many are in a box?)`)
    } else if (cost && has(cost)) priced.set(what, put(sum, rows(cost)[0] as Quantity))
    // The yard is paid for the sticks, whatever one cut piece would cost.
    else if (sticks && has(sticks)) unpriced.push(`${what} (by the lengths they are cut from)`)
    else if (!has(price)) unpriced.push(what)
    else if (count === 'posts') priced.set(what, line('postsAlike'))
    else priced.set(what, line(sum))
  }
  if (priced.has('stone')) {
    const paid = priced.get('stone') as Quantity
    put('cent', { ...paid, amount: quantity('0.01', paid.unit).amount })
    priced.set('stone', line('stoneToTheCent'))
  }
  return priced
}

function linesOf(
  { has, rows }: Own,
  item: Item,
  counted: Need,
  sum: Quantity | undefined,
  weight: Quantity | undefined,
): string[][] {
  const counts = rows(counted)
  const sizes = item.sized && has(item.sized) ? rows(item.sized) : []
  const isCut = item.sticks !== undefined && has(item.sticks)
  const price = !isCut && item.price && has(item.price) ? show(rows(item.price)[0] as Quantity) : ''
  return counts.map((count, i) => {
    const size = sizes.length === counts.length ? sizes[i] : undefined
    // What is of all lengths together stands on the last of them.
    const isLast = i === counts.length - 1
    const sticks = isCut ? show(rows(item.sticks as Need)[0] as Quantity) : ''
    const from = counts.length === 1 ? `, cut from ${sticks}` : `; all ${item.what} cut from ${sticks}`
    return [
      item.what,
      isCut && isLast ? `${show(count)}${from}` : show(count),
      size ? byTape(size) : '',
      price,
      sum && isLast ? show(sum) : '',
      weight && isLast ? show(weight) : '',
    ]
  })
}
