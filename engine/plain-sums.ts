// This file is about sums of any trade, alike for lengths, areas, volumes, weights, times and money: what is added, taken away, multiplied, shared.
// Kinds must agree: lengths go with lengths. Everything is exact, and shown in the unit that was said or asked for.
import { type Calculation, calculation, type Example } from './calculation.ts'
import { type Amount, add, compare, exact, isExact } from './quantities/amount.ts'
import { amountIn, type Quantity, quantity } from './quantities/quantity.ts'
import { show } from './quantities/show.ts'
import { type Kind, unitNamed } from './quantities/units.ts'
import { howManyTimes, partPercent, type SumWords } from './words/plain-sums.ts'
import type { Word } from './words/word.ts'

const mostValues = 500

export interface Sums {
  readonly name: string
  readonly title: string
  readonly answers: string
  readonly kind: Kind
  readonly words: SumWords
  /** The word for the unit that is wanted, where there is more than one. */
  readonly unit?: Word<'choice'>
  /** One value times the other, where that has a kind: two lengths give an area. */
  readonly product?: Word
  readonly examples: readonly Example[]
}

/** Adds, averages, takes away, multiplies and shares quantities of one kind. */
export function sumsOf({ name, title, answers, kind, words, unit, product, examples }: Sums): Calculation {
  const { values, sum, mean, difference, multiple, share, part, ratio } = words
  const results = [sum, mean, difference, multiple, share, part, ratio, ...(product ? [product] : [])]
  const list = values.name
  const noun = values.label.split(',')[0] as string
  // Money is paid in cents: what does not come out even is rounded where it is shared.
  const shared = (line: string): string => (kind === 'money' ? `round(${line}, cent)` : line)
  const byName = (all: readonly Word[]): Record<string, Word> => Object.fromEntries(all.map((it) => [it.name, it]))
  return calculation<Record<string, Word>>({
    name,
    title,
    answers,
    needs: byName([values, howManyTimes, partPercent, ...(unit ? [unit] : [])]),
    may: [howManyTimes.name, partPercent.name, ...(unit ? [unit.name] : [])],
    gives: byName(results),
    headlines: [sum.name, difference.name, multiple.name, share.name, part.name],
    plain: true,
    locals: { many: 'number', largest: kind, others: kind, first: kind, second: kind, over: kind, cent: 'money' },
    lines: {
      [sum.name]: [`sum(${list})`, 'all of them added up'],
      [mean.name]: [shared(`sum(${list}) / many`), 'added up, and shared by how many there are'],
      [difference.name]: ['largest - sum(others)', 'the largest less the others'],
      [multiple.name]: [`howManyTimes * sum(${list})`, 'so many times'],
      [share.name]: [shared(`sum(${list}) / howManyTimes`), 'shared into so many equal parts'],
      [part.name]: [shared(`partPercent * sum(${list})`), 'that share of the whole'],
      [ratio.name]: ['largest / sum(others)', 'how many times the smaller goes into the larger'],
      whole: [`floor(${ratio.name})`, 'whole times'],
      over: ['largest - whole * sum(others)', 'what is left over then'],
      ...(product ? { [product.name]: ['first * second', 'the one times the other'] as const } : {}),
    },
    work(given, { line, rows, has, put, wants, worked, refuse, remark }) {
      const all = rows(list)
      const only = all[0] as Quantity
      if (all.length > mostValues)
        refuse(
          list,
          `That is ${show(quantity(all.length, 'value'))}. I take at most ${show(quantity(mostValues, 'value'))} at once.`,
        )
      const inUnit = unit && has(unit.name) ? String(given[unit.name]) : unitOf(all)
      put('many', quantity(all.length, 'ratio'))
      if (kind === 'money') put('cent', { kind, amount: exact('1/100'), unit: only.unit })
      // What is wanted and cannot be done: said when nothing else can be done either.
      const cannot: string[] = []
      if (all.length > 1) {
        if (wants(sum.name)) line(sum.name, inUnit)
        if (wants(mean.name)) line(mean.name, inUnit)
        takeApart()
      } else if ([sum, mean, difference, ratio].some((it) => wants(it.name)))
        cannot.push(
          `I have ${show(only)}, and nothing of its kind beside it. Only ${noun} go with ${noun}: check that everything has its unit.`,
        )
      if (has(howManyTimes.name)) {
        if (wants(multiple.name)) line(multiple.name, inUnit)
        if (wants(share.name)) line(share.name, inUnit)
      } else if (wants(multiple.name) || wants(share.name))
        cannot.push(`I have ${show(only)}, and no number to multiply or share it by. Say how many.`)
      if (wants(part.name)) {
        if (has(partPercent.name)) line(part.name, inUnit)
        else if (cannot.length === 0)
          cannot.push(`I have ${show(only)}, and no percentage of it. Say how many percent.`)
      }
      if (product && wants(product.name)) {
        if (all.length === 2) {
          put('first', only)
          put('second', all[1] as Quantity)
          line(product.name, squareOf(all))
        } else cannot.push(`For an area I need two ${noun}, and I have ${show(quantity(all.length, 'value'))}.`)
      }
      if (kind === 'duration')
        for (const it of results.filter((each) => each.kind === kind && worked(each.name))) {
          const said = byTheClock(rows(it.name)[0] as Quantity)
          if (said) remark(`In hours and minutes: ${said}.`)
        }
      if (cannot.length > 0 && !results.some((it) => worked(it.name))) refuse(list, cannot[0] as string)

      function takeApart(): void {
        const largest = all.reduce((most, it) => (compare(it.amount, most.amount) === 1 ? it : most))
        const others = all.filter((it) => it !== largest)
        const rest: Quantity = {
          ...(others[0] as Quantity),
          amount: others.map((it) => it.amount).reduce<Amount>(add, exact(0)),
        }
        put('largest', largest)
        put('others', others)
        const isClear = all.length === 2 || largest === only || largest === all.at(-1)
        if (wants(difference.name)) {
          if (isClear && compare(largest.amount, rest.amount) !== -1) {
            line(difference.name, inUnit)
            if (all.length === 2 && largest !== only) remark(`I took ${show(only)} from ${show(largest)}, the larger.`)
          } else
            cannot.push(
              `I take the others from the largest, ${show(largest)}, and they come to ${show(rest)}. Say what is taken from what, two at a time.`,
            )
        }
        if (!wants(ratio.name)) return
        if (compare(rest.amount, exact(0)) !== 1) {
          cannot.push(`${show(rest)} goes into ${show(largest)} without end. Check both.`)
          return
        }
        line(ratio.name)
        const whole = line('whole')
        const over = line('over', inUnit)
        if (compare(over.amount, exact(0)) === 1)
          remark(
            `${show(rest)} goes into ${show(largest)} ${show({ ...whole, kind: 'count', unit: 'time' })}, and ${show(over)} is left over.`,
          )
      }
    },
    sources: [
      { fact: 'adding, taking away, multiplying, sharing', from: 'Arithmetic, in exact fractions; needs no table.' },
    ],
    cautions: [],
    examples,
  })
}

/** `6 h 5 min`: nobody reads 6.083 hours off a clock. */
function byTheClock(q: Quantity): string | undefined {
  const minutes = amountIn(q, 'min')
  if (!isExact(minutes) || minutes.d !== 1n || minutes.n < 60n || minutes.n % 60n === 0n) return undefined
  return `${minutes.n / 60n} h ${minutes.n % 60n} min`
}

/** The unit for the answer: the one of all of them, or the largest that was said in the system of the first. */
function unitOf(all: readonly Quantity[]): string {
  const [first, ...rest] = all.map((it) => unitNamed(it.unit)) as [
    ReturnType<typeof unitNamed>,
    ...ReturnType<typeof unitNamed>[],
  ]
  return rest
    .filter((it) => it.system === first.system)
    .reduce((largest, it) => (it.size.compare(largest.size) > 0 ? it : largest), first).name
}

const squares: Readonly<Record<string, string>> = { in: 'in2', ft: 'ft2', yd: 'ft2', mm: 'mm2', cm: 'cm2', m: 'm2' }
const squareOf = (all: readonly Quantity[]): string => squares[unitOf(all)] ?? 'ft2'
