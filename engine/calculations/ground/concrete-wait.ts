// How long concrete is left alone, moved from the bag's temperature to the one it has here.
//
//   warmth ▲ ░░░░            ▒▒▒▒▒▒▒▒▒▒     The same area in both: temperature above the datum, times hours.
//          │ ░░░░            ▒▒▒▒▒▒▒▒▒▒     Half as warm above the datum, twice as long.
//    datum └─────── hours    ──────────────
//            by the bag      here
//
// Nurse and Saul's maturity: (bag's temperature − datum) × bag's hours = (temperature here − datum) × hours here.
import { calculation } from '../../calculation.ts'
import { waitDrawing } from '../../drawings/concrete-wait.ts'
import { compare, exact, over, subtract, times } from '../../quantities/amount.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show, showApart } from '../../quantities/show.ts'
import {
  bagTemperature,
  braceOff,
  braceWait,
  coldFactor,
  cureTemperature,
  datumTemperature,
  gateUp,
  gateWait,
  railsUp,
  railWait,
} from '../../words/curing.ts'

const freezing = quantity(0, 'C')
/** Concrete is worked with care for the cold from here down. */
const coldLimit = { imperial: quantity(40, 'F'), metric: quantity(5, 'C') }
/** So near the datum no time is given: a degree more or less would make weeks of it. */
const nearDatum = { imperial: quantity(4, 'dF'), metric: quantity(2, 'dC') }
const hour = quantity(1, 'h')
const day = quantity(1, 'day')
const threeDays = quantity(3, 'day')

/** What is waited for: the bag's figure, the mark it is rounded up to, and the wait here. */
const waits = [
  ['braceWait', 'braceMark', 'braceOff'],
  ['railWait', 'railMark', 'railsUp'],
  ['gateWait', 'gateMark', 'gateUp'],
] as const

export const concreteWait = calculation({
  name: 'concrete-wait',
  title: 'Waiting for concrete',
  answers:
    'How long before the braces come off, rails are hung or a gate is hung: the bag’s own waiting time, moved to the temperature there is.',
  needs: { cureTemperature, bagTemperature, braceWait, railWait, gateWait, datumTemperature },
  onlyFor: { braceWait: ['braceOff'], railWait: ['railsUp'], gateWait: ['gateUp'] },
  gives: { braceOff, railsUp, gateUp, coldFactor },
  called: [
    'hang the gate',
    'hanging the gate',
    'hang a gate',
    'braces off',
    'braces come off',
    'bracing off',
    'hang the rails',
    'hanging the rails',
    'concrete to set',
    'concrete to cure',
    'concrete to harden',
    'concrete sets',
  ],
  headlines: ['railsUp', 'gateUp', 'braceOff'],
  together: {
    braceOff: ['braceOff', 'coldFactor'],
    railsUp: ['railsUp', 'coldFactor'],
    gateUp: ['gateUp', 'coldFactor'],
  },
  locals: {
    warmthByBag: 'temperatureDifference',
    warmthHere: 'temperatureDifference',
    braceMark: 'duration',
    railMark: 'duration',
    gateMark: 'duration',
  },
  lines: {
    warmthByBag: ['bagTemperature - datumTemperature', 'as warm as the bag’s figure was found, above the datum'],
    warmthHere: ['cureTemperature - datumTemperature', 'as warm as it is here, above the datum'],
    coldFactor: [
      'max(warmthByBag / warmthHere, 1)',
      'half as warm takes twice as long; a warm day takes nothing off the bag’s figure',
    ],
    braceOff: ['ceil(braceWait * coldFactor / braceMark) * braceMark', 'rounded up, never down'],
    railsUp: ['ceil(railWait * coldFactor / railMark) * railMark', 'rounded up, never down'],
    gateUp: ['ceil(gateWait * coldFactor / gateMark) * gateMark', 'rounded up, never down'],
  },
  work(given, { line, put, tell, has, rows, refuse, doubt, remark, cite, system }) {
    const { cureTemperature, bagTemperature, datumTemperature } = given
    if (!less(freezing, cureTemperature))
      refuse(
        'cureTemperature',
        `At ${show(cureTemperature)} fresh concrete freezes, and what has frozen in its first day or two stays weak however long you wait. I give no time for that. Wait for warmer days, or ask the bag’s maker what it takes.`,
      )
    if (!less(datumTemperature, bagTemperature))
      refuse(
        'bagTemperature',
        `The bag’s ${show(bagTemperature)} is not above the datum of ${show(datumTemperature)}, where no hardening is counted. Check both.`,
      )
    const above = subtract(cureTemperature.amount, datumTemperature.amount)
    if (compare(above, nearDatum[system].amount) !== 1)
      refuse(
        'cureTemperature',
        `${show(cureTemperature)} is within ${showApart(nearDatum[system])} of the datum of ${show(datumTemperature)}, or below it, and there this method knows no time worth having. Wait for warmer days, or ask the bag’s maker.`,
      )
    line('warmthByBag')
    line('warmthHere')
    const factor = line('coldFactor')
    for (const [said, mark, wait] of waits) {
      if (!has(said)) continue
      const exactWait = { ...hour, amount: times((rows(said)[0] as Quantity).amount, factor.amount) }
      // Up to three days by the hour, from there by the day.
      const unit = put(mark, less(threeDays, exactWait) ? day : hour)
      tell(wait, { ...line(wait), unit: unit.unit })
    }
    const limit = coldLimit[system]
    if (less(cureTemperature, limit)) {
      const colder: Quantity = {
        ...cureTemperature,
        amount: subtract(cureTemperature.amount, oneDegree(cureTemperature)),
      }
      doubt(
        'implausible',
        'cureTemperature',
        `Below ${show(limit)} this reckoning hangs on every degree: at ${cite(colder, 'one degree colder')} it would be ${cite(factorAt(given, colder), 'times as long, one degree colder')} times the bag’s wait. A night of frost is not in it at all. Ask the bag’s maker about cold before you rely on it.`,
      )
    }
    if (less(bagTemperature, cureTemperature))
      remark(
        'It is warmer than the bag’s own temperature. Nothing is taken off for that: shade the concrete, keep it damp, and wait what the bag says.',
      )
    remark(
      'The bag’s print comes first, and where it names a time for cold weather, that one. A time of setting is not a waiting time: set concrete holds its shape, not a load. If your bag names no wait, ask its maker.',
    )
    remark(
      'The temperature is the concrete’s own, day and night together; keep frost off it, day and night. This reckons the hardening alone. It does not say that the post holds: too much water, a wet hole or loose ground are not in it.',
    )
  },
  sources: [
    {
      fact: '(temperature − datum) × time is the same for the same hardening',
      from: 'Nurse and Saul’s maturity, ASTM C1074 (from memory); usual datum 0 °C (32 °F)',
    },
    {
      fact: 'where hardening runs evenly with temperature, maturity is the temperature above a datum, summed over time',
      from: 'The Maturity Method: Theory and Application, Cement, Concrete, and Aggregates 6 (2), 1984, https://www.scribd.com/document/524744710/4-the-Maturity-Method-Theory-and-Application',
    },
    {
      fact: 'cold weather begins below a mean of 40 °F (5 °C)',
      from: 'ACI Concrete Terminology, https://concrete.org/topicsinconcrete/topicdetail/cold%20weather%20concrete?search=Cold+Weather+Concrete',
    },
    {
      fact: 'concrete frozen within hours of placing loses up to about half its strength; after about a day at ordinary temperatures it is through the worst',
      from: 'PCA, Cold-Weather Concreting, https://www.scribd.com/doc/218695401/PCA-Cold-Weather-Concreting-pdf',
    },
    {
      fact: 'no time is given within 2 °C (4 °F) of the datum',
      from: 'Decided here: a degree would make weeks of it.',
    },
    { fact: 'nothing is taken off for warmth', from: 'Decided here, so that no wait is shorter than the bag’s.' },
  ],
  cautions: ['structure', 'wet-cement'],
  drawing: waitDrawing,
  examples: [
    // (73 − 32)/(50 − 32) = 41/18 = 2.278; 4 h × 2.278 = 9.1 → 10 h
    {
      ask: 'The bag says 4 hours at 73 °F before the braces come off. It is 50 °F here: when can I take the braces off?',
      given: { braceWait: '4 h', bagTemperature: '73 F', cureTemperature: '50 F' },
      expect: { braceOff: '10 hours', coldFactor: '2.278' },
    },
    // (20 − 0)/(8 − 0) = 2.5; 48 h × 2.5 = 120 h = 5 days
    {
      ask: 'How long before I hang the rails? The bag says 48 hours at 20 °C before rails are hung, and it is 8 °C here.',
      given: { railWait: '48 h', bagTemperature: '20 C', cureTemperature: '8 C' },
      expect: { railsUp: '5 days', coldFactor: '2.5' },
    },
    // (73 − 32)/(60 − 32) = 41/28 = 1.464; 4 days × 1.464 = 5.86 → 6 days
    {
      ask: 'The bag says 4 days before a gate is hung. It is 60 °F here. How long before I hang the gate?',
      given: { gateWait: '4 day', cureTemperature: '60 F' },
      expect: { gateUp: '6 days', coldFactor: '1.464' },
    },
  ],
})

/** One degree of the scale in which it was said, in the base unit. */
const oneDegree = (t: Quantity) => exact(t.unit === 'C' ? '9/5' : 1)

/** How many times the bag's wait it would be at another temperature. */
function factorAt(
  { bagTemperature, datumTemperature }: { bagTemperature: Quantity; datumTemperature: Quantity },
  t: Quantity,
): Quantity {
  const above = (it: Quantity) => subtract(it.amount, datumTemperature.amount)
  return quantity(over(above(bagTemperature), above(t)), 'ratio')
}
