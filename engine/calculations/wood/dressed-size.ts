// What a stick measures that is called 2x4, or sold as 50 × 100 sawn.
//
//   ┌ ─ ─ ─ ─ ─ ─ ─ ┐   the name: rough from the saw, or not even that
//     ┌───────────┐
//   │ │           │ │   what is left when it is dry and planed
//     └───────────┘
//   └ ─ ─ ─ ─ ─ ─ ─ ┘
import { calculation } from '../../calculation.ts'
import { stickSectionDrawing } from '../../drawings/stick-section.ts'
import { amountIn, type Quantity, quantity } from '../../quantities/quantity.ts'
import { isExact } from '../../quantities/amount.ts'
import { show } from '../../quantities/show.ts'
import { dressedLumber, greenLumber, planedTimber } from '../../tables/dressed-lumber.ts'
import { country } from '../../words/country.ts'
import { dressedThickness, dressedWidth, nominalThickness, nominalWidth, soldGreen } from '../../words/sticks.ts'

type Side = 'nominalThickness' | 'nominalWidth'

export const dressedSize = calculation({
  name: 'dressed-size',
  title: 'What a stick measures',
  answers: 'The real thickness and width of a stick that is called by its nominal or sawn size: a 2x4, a 50 × 100.',
  needs: { nominalThickness, nominalWidth, soldGreen, country },
  may: ['country'],
  gives: { dressedThickness, dressedWidth },
  headlines: ['dressedThickness', 'dressedWidth'],
  together: {
    dressedThickness: ['dressedThickness', 'dressedWidth'],
    dressedWidth: ['dressedThickness', 'dressedWidth'],
  },
  lines: {},
  work(given, { has, tell, need, refuse, remark, doubt }) {
    // By the figure itself, whatever unit it was told in: nobody sells a 2x4 by the millimetre.
    const isMetric = ([given.nominalThickness, given.nominalWidth] as const).some((it) => !isWholeQuarter(it))
    if (isMetric && !has('country')) need('country')
    const table = isMetric ? planedTimber[given.country as keyof typeof planedTimber] : undefined
    if (isMetric && !table)
      return refuse(
        'country',
        `I have no table of planed sizes for ${country.options?.[given.country]?.label}. Ask the yard what a ${show(given.nominalThickness)} × ${show(given.nominalWidth)} measures planed, or measure one.`,
      )
    const sized = (side: Side): Quantity => {
      const sold = given[side]
      const found = table ? planed(sold, table.sizes) : dressed(sold, given, side)
      if (found) return found
      return refuse(
        side,
        `No stick is sold as ${show(sold)} in the table that I have${table ? ` for ${country.options?.[given.country]?.label}` : ''}. If that is what it measures, it is its size already; else give the size on its label.`,
      )
    }
    tell('dressedThickness', sized('nominalThickness'))
    tell('dressedWidth', sized('nominalWidth'))
    remark(
      table
        ? `${table.remark} Where a stick is sold by the size it measures, 90x45 for instance, nothing comes off.`
        : `That is the least it measures ${given.soldGreen === 'green' ? 'planed green; dry it is a little less' : 'planed and dry'}. Cedar and rough-sawn fence boards are often thinner or fuller: measure a few before you order the rest.`,
    )
    if (!table && has('country') && !['us', 'canada'].includes(given.country))
      doubt(
        'implausible',
        'country',
        `Those are the sizes of the US and Canada. In ${country.options?.[given.country]?.label} sticks go by other names: measure one.`,
      )
  },
  sources: [
    {
      fact: 'least dressed sizes, dry and green',
      from: 'PS 20, American Softwood Lumber Standard, as reprinted at engineeringtoolbox.com, d_1270; widths from nominal 8 up are from memory',
    },
    ...Object.values(planedTimber).map(({ fact, from }) => ({ fact, from })),
  ].filter((it, i, all) => all.findIndex((other) => other.fact === it.fact) === i),
  cautions: [],
  drawing: stickSectionDrawing,
  examples: [
    {
      ask: 'What does a 2x4 really measure?',
      given: { nominalThickness: '2x4', nominalWidth: '2x4' },
      expect: { dressedThickness: '1 1/2 in', dressedWidth: '3 1/2 in' },
    },
    {
      ask: 'What is a 50x100 planed to in the UK?',
      given: { nominalThickness: '50x100', nominalWidth: '50x100', country: 'uk' },
      expect: { dressedThickness: '47 mm', dressedWidth: '97 mm' },
    },
  ],
})

const isWholeQuarter = (sold: Quantity): boolean => {
  const amount = amountIn(sold, 'in')
  return isExact(amount) && amount.mul(4).d === 1n
}

const inInches = (sold: Quantity): string => {
  const amount = amountIn(sold, 'in')
  return isExact(amount) ? amount.toFraction() : ''
}

/** PS 20 takes half an inch off both sides of a timber, which is nominal 5 or more in its thinner side; off boards and dimension lumber by its table. */
function dressed(
  sold: Quantity,
  given: Readonly<Record<Side, Quantity>> & { readonly soldGreen: string },
  side: Side,
): Quantity | undefined {
  const name = inInches(sold)
  const thin = amountIn(given.nominalThickness, 'in')
  const isTimber = isExact(thin) && thin.compare(5) >= 0
  if (isTimber && /^\d+$/.test(name) && Number(name) <= 16) return quantity(`${2 * Number(name) - 1}/2`, 'in')
  const table = given.soldGreen === 'green' ? greenLumber : dressedLumber
  // A width is never five quarters, and nothing thicker than 4 in is a board.
  const known = side === 'nominalThickness' ? ['1', '5/4', '2', '3', '4'] : ['2', '3', '4', '6', '8', '10', '12']
  const found = known.includes(name) ? table[name] : undefined
  return found === undefined ? undefined : quantity(found, 'in')
}

function planed(sold: Quantity, sizes: Readonly<Record<string, string>>): Quantity | undefined {
  const amount = amountIn(sold, 'mm')
  const found = isExact(amount) ? sizes[amount.toFraction()] : undefined
  return found === undefined ? undefined : quantity(found, 'mm')
}
