// Which boards to buy and how to cut them: the least price, then the fewest boards, then the longest single offcut.
//
//   ├─ 45 in ─┊─ 45 in ─┊ offcut ┤        ┊ a saw cut: m pieces take m − 1 of them, and one more where an offcut is left
//   ├trim
import { calculation, type Tools } from '../../calculation.ts'
import { type CutPlan, type Planned, planCuts, type Stick } from '../../cutting/plan.ts'
import type { CutProblem } from '../../cutting/problem.ts'
import { offered } from '../../cutting/smaller-pieces.ts'
import { cutPlanDrawing } from '../../drawings/cut-plan.ts'
import { exact, isExact, toNumber } from '../../quantities/amount.ts'
import { unnamedCurrency } from '../../quantities/money.ts'
import { exactly, less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { byTape } from '../../quantities/tape.ts'
import { unitNamed } from '../../quantities/units.ts'
import {
  boardsToCut,
  cutCost,
  endTrim,
  leastOffcut,
  longestBoard,
  longestOffcut,
  pieceCounts,
  pieceLengths,
  smallCounts,
  smallLengths,
  smallsFromOffcuts,
  stockLengths,
  stockPrices,
  timberBought,
  timberUsed,
} from '../../words/cutting.ts'
import { kerf } from '../../words/lumber.ts'
import Fraction from 'fraction.js'

const needs = {
  pieceLengths,
  pieceCounts,
  stockLengths,
  stockPrices,
  kerf,
  endTrim,
  leastOffcut,
  smallLengths,
  smallCounts,
}
type Bench = Tools<typeof needs>
type Told = { readonly [name in 'pieceLengths' | 'pieceCounts' | 'stockLengths' | 'kerf']: Quantity }

const mostPieces = 2_000
const mostLengths = 60
const mostStocks = 12

export const cutPlan = calculation({
  name: 'cut-plan',
  title: 'What to buy and how to cut it',
  answers:
    'Which boards of one section to buy for a list of pieces and how to cut each, for the least price, then the fewest boards, then the longest offcut, and whether that is proved.',
  needs,
  may: ['stockPrices', 'smallLengths', 'smallCounts'],
  gives: { boardsToCut, cutCost, longestOffcut, longestBoard, timberUsed, timberBought, smallsFromOffcuts },
  headlines: ['boardsToCut', 'cutCost', 'longestOffcut'],
  together: {
    boardsToCut: ['boardsToCut', 'cutCost', 'longestOffcut', 'timberUsed', 'smallsFromOffcuts'],
    cutCost: ['cutCost', 'boardsToCut', 'longestOffcut'],
  },
  solves: true,
  called: ['cut plan', 'cut list', 'cutting list', 'cut from'],
  locals: {
    bought: 'count',
    sticksAlike: 'count',
    stickLengths: 'length',
    stickOffcuts: 'length',
    piecesOnStick: 'count',
    cutPieces: 'length',
  },
  lines: {
    timberNeeded: ['sum(pieceLengths * pieceCounts)', 'each length times its number, added up'],
    boardsToCut: ['sum(bought)', 'the plan takes so many of each length'],
    timberBought: ['sum(stockLengths * bought)', 'those boards end to end'],
    cutCost: ['sum(stockPrices * bought)', 'each length at its price'],
    timberUsed: ['timberNeeded / timberBought', 'the rest is saw cuts, trim and offcuts'],
  },
  work(given, tools) {
    const { line, has, rows, put, tell, wants, need, remark, solver } = tools
    checkLists(tools)
    if (wants('cutCost') && !wants('boardsToCut') && !has('stockPrices')) need('stockPrices')
    const [lengths, counts, stocks] = [rows('pieceLengths'), rows('pieceCounts'), rows('stockLengths')]
    const prices = has('stockPrices') ? rows('stockPrices') : []
    // Prices as whole numbers of the smallest coin that they are all told in: a cent, as a rule.
    const coin = prices.reduce((most, it) => most.lcm(new Fraction(exactly(it).d)), exact(100))
    const problem: CutProblem = {
      pieces: lengths.map((it, i) => ({ length: onTheTape(it), count: whole(counts[i] as Quantity) })),
      stocks: stocks.map((it, i) => ({
        length: exactly(it),
        ...(prices[i] ? { price: Number(exactly(prices[i] as Quantity).mul(coin)) } : {}),
      })),
      kerf: exactly(given.kerf),
      endTrim: exactly(given.endTrim),
      leastOffcut: exactly(given.leastOffcut),
    }
    if (lengths.some((it) => !isExact(it.amount)))
      remark('Lengths that come out of a slope or a root are planned to the nearest mark of the tape.')
    const plan = planOrRefuse(planCuts(problem, solver), given, tools)
    const { sticks } = plan

    put(
      'bought',
      stocks.map((_, stock) =>
        quantity(
          sticks.reduce((sum, it) => sum + (it.stock === stock ? it.times : 0), 0),
          'board',
        ),
      ),
    )
    line('boardsToCut')
    line('timberNeeded')
    line('timberBought', stocks[0]?.unit === 'm' || tools.system === 'metric' ? 'm' : 'ft')
    if (has('stockPrices')) line('cutCost')
    line('timberUsed')
    const used = stocks.filter((_, stock) => sticks.some((it) => it.stock === stock))
    tell(
      'longestBoard',
      used.reduce((a, b) => (less(a, b) ? b : a)),
    )
    const inTheirs = (amount: Fraction): Quantity => ({ ...given.pieceLengths, amount })
    tell('longestOffcut', inTheirs(plan.unit.mul(plan.longest.value)))

    put(
      'sticksAlike',
      sticks.map((it) => quantity(it.times, 'board')),
    )
    put(
      'stickLengths',
      sticks.map((it) => stocks[it.stock] as Quantity),
    )
    put(
      'stickOffcuts',
      sticks.map((it) => inTheirs(it.offcut)),
    )
    put(
      'piecesOnStick',
      sticks.map((it) => quantity(piecesOf(plan, it).length, 'piece')),
    )
    put('cutPieces', sticks.flatMap((it) => piecesOf(plan, it)).map(inTheirs))
    if (prices.length > 0) {
      const unnamed = unnamedCurrency(prices[0] as Quantity)
      if (unnamed) remark(unnamed)
    }
    sayWhatIsProved(plan, coin, inTheirs, tools)
    sayHowToMark(problem, plan, inTheirs, tools)
    if (has('smallLengths')) offerOffcuts(problem, plan, inTheirs, tools)
    showTables(problem, plan, coin, inTheirs, tools)
  },
  sources: [
    {
      fact: 'pieces + (pieces − 1) × cut ≤ board − trim; the offcut is what is left, less one cut more',
      from: 'Derived here from the sketch; needs no table.',
    },
    {
      fact: 'no plan costs less than all the pieces at prices at which no board holds pieces worth more than it costs',
      from: 'Duality in linear programming; the prices by column generation (P. C. Gilmore and R. E. Gomory, 1961), named from memory.',
    },
    {
      fact: 'the fewest boards of one length that pieces take',
      from: 'The bound L2 of S. Martello and P. Toth (1990), named from memory; tested here against searches.',
    },
  ],
  cautions: ['tools', 'preserved-wood'],
  drawing: cutPlanDrawing,
  examples: [
    // 45 + 1/8 + 45 = 90 1/8: 2 to a board, 3 boards; 3 × 30 + 2/8 = 90 1/4: 3 and 1, 2 boards. 96 − 30 − 1/8 = 65 7/8 left; 390/480; 5 × 6.80
    {
      ask: 'I need 6 pieces at 45 in and 4 at 30 in, cut from 8 ft boards at $6.80. What do I buy?',
      given: {
        pieceLengths: ['45 in', '30 in'],
        pieceCounts: ['6', '4'],
        stockLengths: '8 ft',
        stockPrices: '$6.80',
      },
      expect: { boardsToCut: '5 boards', cutCost: '$34.00', longestOffcut: '65 7/8 in', timberUsed: '81.25 %' },
    },
    // 2 × 58 + 1/8 = 116 1/8: 2 from 10 ft, 1 from 8 ft. 5 × 9.20 = 46.00, 10 × 6.80 = 68.00. 120 − 116 − 2/8 = 3 3/4
    {
      ask: 'Cut plan for 10 pieces at 58 in from 8 ft boards at $6.80 or 10 ft boards at $9.20?',
      given: {
        pieceLengths: '58 in',
        pieceCounts: '10',
        stockLengths: ['8 ft', '10 ft'],
        stockPrices: ['$6.80', '$9.20'],
      },
      expect: { boardsToCut: '5 boards', cutCost: '$46.00', longestOffcut: '3 3/4 in' },
    },
    // 2 × 1750 + 3 = 3503: 3 boards; 3 × 1150 + 6 = 3456: 3, 3, 3 and 1, 4 boards. 3600 − 1150 − 3 = 2447
    {
      ask: 'What do I buy for 6 pieces at 1750 mm and 10 at 1150 mm out of 3600 mm boards?',
      given: {
        pieceLengths: ['1750 mm', '1150 mm'],
        pieceCounts: ['6', '10'],
        stockLengths: '3600 mm',
      },
      expect: { boardsToCut: '7 boards', longestOffcut: '2,447 mm', timberUsed: '87.3 %' },
    },
  ],
})

const whole = (it: Quantity): number => Number(exactly(it))

/** Lists that go together must be as long as each other, and no longer than can be planned. */
function checkLists({ rows, has, refuse, need }: Bench): void {
  const [lengths, counts, stocks] = [rows('pieceLengths'), rows('pieceCounts'), rows('stockLengths')]
  const many = (number: number, noun: string): string => show(quantity(number, noun))
  if (lengths.length !== counts.length)
    refuse(
      'pieceCounts',
      `I have ${many(lengths.length, 'length')} of pieces and ${many(counts.length, 'number')}. Give one number for each length, in the same order.`,
    )
  if (has('stockPrices') && rows('stockPrices').length !== stocks.length)
    refuse(
      'stockPrices',
      `I have ${many(rows('stockPrices').length, 'price')} for ${many(stocks.length, 'length')} of board. Give the price of every length, or leave all prices out: then I buy the least timber.`,
    )
  if (has('smallLengths') && !has('smallCounts')) need('smallCounts')
  if (has('smallCounts') && !has('smallLengths')) need('smallLengths')
  if (has('smallLengths') && rows('smallLengths').length !== rows('smallCounts').length)
    refuse(
      'smallCounts',
      `I have ${many(rows('smallLengths').length, 'length')} of smaller pieces and ${many(rows('smallCounts').length, 'number')}. Give one number for each length.`,
    )
  const sum = (name: 'pieceCounts' | 'smallCounts'): number => rows(name).reduce((all, it) => all + whole(it), 0)
  const pieces = sum('pieceCounts') + (has('smallCounts') ? sum('smallCounts') : 0)
  if (pieces > mostPieces)
    refuse(
      'pieceCounts',
      `That is ${many(pieces, 'piece')}. I plan at most ${many(mostPieces, 'piece')} at once: make two lists.`,
    )
  if (lengths.length > mostLengths || stocks.length > mostStocks)
    refuse(
      'pieceLengths',
      `I plan at most ${many(mostLengths, 'length')} of pieces from ${many(mostStocks, 'length')} of board at once: make two lists.`,
    )
}

function planOrRefuse(planned: Planned, { pieceLengths: first, kerf }: Told, { refuse, rows }: Bench): CutPlan {
  if (planned.ok) return planned.plan
  if (planned.why === 'too long')
    return refuse(
      'pieceLengths',
      `A piece of ${show({ ...first, amount: planned.length })} is longer than any board leaves: the boards are ${rows('stockLengths').map(show).join(', ')}. Check both, or joint that piece.`,
    )
  return refuse(
    'pieceLengths',
    `These lengths and the saw cut of ${show(kerf)} have no common measure that I can plan by. Give them to the sixteenth, or to the millimetre.`,
  )
}

/** The pieces of a stick, the longest first, one by one. */
const piecesOf = ({ lengths }: CutPlan, { counts }: Stick): Fraction[] =>
  counts.flatMap((count, kind) => Array.from({ length: count }, () => lengths[kind] as Fraction))

type InTheirs = (amount: Fraction) => Quantity

function sayWhatIsProved(plan: CutPlan, coin: Fraction, inTheirs: InTheirs, tools: Bench): void {
  const { remark, cite, rows, solver } = tools
  const { price, boards, longest } = plan
  const sum = (value: number): Quantity =>
    plan.byPrice
      ? { ...(rows('stockPrices')[0] as Quantity), amount: exact(value).div(coin) }
      : { ...(rows('stockLengths')[0] as Quantity), amount: plan.unit.mul(value) }
  const all = cite(sum(price.value), 'this plan')
  if (!plan.byPrice)
    remark(
      'No prices are given, so I buy the least timber, and of such plans the fewest boards. With the price of each length I buy for the least money.',
    )
  if (price.proved)
    remark(
      plan.byPrice
        ? `No plan costs less than this one, ${all}: that is proved.`
        : `No plan buys less than these ${all}, end to end: that is proved.`,
    )
  else {
    const least = cite(sum(price.bound), 'no plan is below')
    const more = new Fraction(1000 * (price.value - price.bound), Math.max(1, price.bound)).round()
    const share = more.equals(0)
      ? 'a hair more'
      : `${cite(quantity(more.div(10), 'percent'), 'more than the bound')} more`
    remark(
      `${plan.byPrice ? `No plan can be cheaper than ${least}; this one is ${all}` : `No plan can buy less than ${least} end to end; this one buys ${all}`}, ${share}. Whether there is one between is not proved.`,
    )
  }
  if (!solver && !(price.proved && boards.proved && longest.proved))
    remark('It was made by plain rules, longest pieces first, without a search for a better one.')
  const that = plan.byPrice ? 'price' : 'length'
  remark(
    `${
      boards.proved
        ? `At that ${that} no plan takes fewer boards`
        : `Whether fewer boards would do at that ${that} is not proved; fewer than ${cite(quantity(boards.bound, 'board'), 'no plan takes fewer')} would not`
    }${
      longest.proved
        ? `, and ${boards.proved ? 'of those' : 'of plans with so many'} none leaves a longer single offcut.`
        : `. No single offcut longer than ${cite(inTheirs(plan.unit.mul(longest.bound)), 'no offcut is longer')} can be left; whether one longer than this plan’s can is not proved.`
    }`,
  )
}

function sayHowToMark(problem: CutProblem, plan: CutPlan, inTheirs: InTheirs, { remark, cite }: Bench): void {
  remark(
    `Measure all marks of a board from the same end${problem.endTrim.equals(0) ? '' : `, once ${cite(inTheirs(problem.endTrim), 'trim')} is squared off it: the marks count from the end as bought`}. They hold the saw cuts already. Saw on the far side of each mark.`,
  )
  const kept = plan.sticks.filter((it) => it.offcut.compare(0) > 0 && it.offcut.compare(problem.leastOffcut) >= 0)
  const number = kept.reduce((sum, it) => sum + it.times, 0)
  const least = cite(inTheirs(problem.leastOffcut), 'shortest offcut worth keeping')
  remark(
    number === 0
      ? `No offcut is ${least} or longer.`
      : `${cite(quantity(number, 'offcut'), 'offcuts worth keeping')} of ${least} or longer ${number === 1 ? 'is' : 'are'} left.`,
  )
}

function offerOffcuts(problem: CutProblem, plan: CutPlan, inTheirs: InTheirs, tools: Bench): void {
  const { rows, tell, remark, table, cite } = tools
  const counts = rows('smallCounts')
  const smaller = rows('smallLengths').map((it, i) => ({ length: exactly(it), count: whole(counts[i] as Quantity) }))
  const { fit, wanted, from } = offered(problem, plan, smaller)
  tell('smallsFromOffcuts', quantity(fit, 'smaller piece'))
  remark(
    fit === wanted
      ? 'All the smaller pieces come out of the offcuts.'
      : `Of ${cite(quantity(wanted, 'smaller piece'), 'wanted from offcuts')}, ${fit === 0 ? 'none comes' : `${cite(quantity(fit, 'smaller piece'), 'out of offcuts')} ${fit === 1 ? 'comes' : 'come'}`} out of the offcuts, by plain packing, the shortest first. The rest needs other wood.`,
  )
  if (fit > 0)
    table({
      title: 'Smaller pieces from the offcuts',
      columns: [
        { label: 'boards', unit: '' },
        { label: 'offcut', unit: '' },
        { label: 'smaller pieces', unit: '' },
      ],
      rows: from.map((it) => [
        it.times,
        show(inTheirs(it.stick.offcut)),
        grouped(it.pieces)
          .map(([length, count]) => `${count} × ${show(inTheirs(length))}`)
          .join(' + '),
      ]),
    })
}

/** Equal lengths that follow one another, with their number. */
function grouped(pieces: readonly Fraction[]): [Fraction, number][] {
  const groups: [Fraction, number][] = []
  for (const piece of pieces) {
    const last = groups.at(-1)
    if (last?.[0].equals(piece)) last[1]++
    else groups.push([piece, 1])
  }
  return groups
}

/** Where the far end of each piece is marked, from the end as bought; the last is no mark where it is the end of the board. */
function marksOf(problem: CutProblem, plan: CutPlan, stick: Stick): Fraction[] {
  const length = (problem.stocks[stick.stock] as { length: Fraction }).length
  let at = problem.endTrim
  return piecesOf(plan, stick).flatMap((piece, i) => {
    at = at.add(piece).add(i === 0 ? 0 : problem.kerf)
    return at.equals(length) ? [] : [at]
  })
}

/** A length to plan with: as it is where it is exact, else at the nearest sixteenth or millimetre, which is as near as anybody saws. */
function onTheTape(q: Quantity): Fraction {
  if (isExact(q.amount)) return q.amount
  const mark = unitNamed(q.unit).system === 'metric' ? new Fraction(5, 127) : new Fraction(1, 16)
  return new Fraction(Math.round(toNumber(q.amount) / mark.valueOf())).mul(mark)
}

function showTables(problem: CutProblem, plan: CutPlan, coin: Fraction, inTheirs: InTheirs, tools: Bench): void {
  const { rows, has, table } = tools
  const stocks = rows('stockLengths')
  const prices = has('stockPrices') ? rows('stockPrices') : []
  const plainLabel = (label: string) => ({ label, unit: '' })
  table({
    title: 'What to buy',
    columns: ['length', 'boards', ...(prices.length > 0 ? ['price of one', 'together'] : [])].map(plainLabel),
    rows: stocks.flatMap((stock, i) => {
      const bought = whole(rows('bought')[i] as Quantity)
      const price = prices[i]
      const money = price ? [show(price), show({ ...price, amount: exactly(price).mul(bought) })] : []
      return bought > 0 ? [[show(stock), bought, ...money]] : []
    }),
  })
  table({
    title: 'Stick by stick',
    columns: ['boards alike', 'length', 'pieces', 'marks from one end', 'offcut'].map(plainLabel),
    rows: plan.sticks.map((it) => [
      it.times,
      show(stocks[it.stock] as Quantity),
      grouped(piecesOf(plan, it))
        .map(([length, count]) => `${count} × ${byTape(inTheirs(length))}`)
        .join(' + '),
      marksOf(problem, plan, it)
        .map((mark) => byTape(inTheirs(mark)))
        .join(', '),
      it.offcut.equals(0) ? 'none' : byTape(inTheirs(it.offcut)),
    ]),
  })
  const { proof } = plan
  const worth = (it: Fraction): string =>
    plan.byPrice ? it.div(coin).toFraction() : show({ ...(stocks[0] as Quantity), amount: it.mul(plan.unit) })
  const how = {
    duals: 'these prices: no board holds pieces worth more than it costs, and all pieces at them come to the bound',
    sticks: 'the count of pieces that can share no board',
    search: 'a search over all patterns that could be cheaper, which can be made again',
    none: 'nothing: the bound is as far as it goes',
  }[proof.by]
  table({
    title: 'What proves it',
    columns: ['what', 'figure'].map(plainLabel),
    rows: [
      ['the price rests on', how],
      ['solver', proof.solver ?? 'none'],
      ...plan.lengths.map((length, i) => [
        `worth of a ${show(inTheirs(length))} piece, ${plan.byPrice ? `in ${(prices[0] as Quantity).unit}` : 'as length of board'}`,
        worth(proof.worth[i] as Fraction),
      ]),
      ...proof.searches.map((it) => [
        `search for the ${{ price: 'least price', boards: 'fewest boards', offcut: 'longest offcut' }[it.after]}`,
        `${it.patterns} patterns${it.all ? ', all that matter' : ', not all that matter'}; at most ${it.nodeLimit} nodes, ${it.nodes} taken`,
      ]),
    ],
  })
}
