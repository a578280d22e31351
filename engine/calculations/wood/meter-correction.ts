// What a pin meter's reading is worth, when the wood is colder or warmer than the meter's scale was made for.
//
//   colder wood lets less current through: the meter takes it for drier than it is, so points are added
//   published corrections differ, so the answer is a range:   reads 16 %   →   ├── 17 ───── 18.5 ──┤
import { calculation } from '../../calculation.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { finishLimits } from '../../tables/finish-limits.ts'
import { meterCorrections as table } from '../../tables/meter-corrections.ts'
import { published } from '../../tables/published.ts'
import {
  correctedFrom,
  correctedTo,
  meterTemperature,
  readingHolds,
  woodFace,
  woodTemperature,
  woodTreated,
} from '../../words/meter.ts'
import { depthReading, moistureReading, surfaceReading } from '../../words/wood.ts'

const freezing = quantity(32, 'F')
/** The reading that is corrected, where several were given: the deepest. */
const deepestFirst = ['depthReading', 'moistureReading', 'surfaceReading'] as const

export const meterCorrection = calculation({
  name: 'meter-correction',
  title: 'What a meter reading is worth',
  answers:
    'The moisture behind a pin meter’s reading, as a range, when the wood is colder or warmer than the meter is set for, or treated; and when no figure can be given.',
  needs: {
    moistureReading,
    depthReading,
    surfaceReading,
    woodTemperature,
    meterTemperature,
    woodTreated,
    woodFace,
  },
  may: ['moistureReading', 'depthReading', 'surfaceReading', 'woodTemperature', 'woodTreated', 'woodFace'],
  oneOf: [['moistureReading', 'depthReading', 'surfaceReading']],
  gives: { correctedFrom, correctedTo, readingHolds },
  headlines: ['correctedFrom', 'correctedTo', 'readingHolds'],
  called: [
    'calibrated at',
    'temperature correction',
    'wood at',
    'in wood at',
    'corrected for temperature',
    'meter in the cold',
  ],
  together: {
    correctedFrom: ['correctedFrom', 'correctedTo', 'readingHolds'],
    readingHolds: ['readingHolds', 'correctedFrom', 'correctedTo'],
  },
  locals: {
    reading: 'percent',
    colder: 'temperatureDifference',
    handbookPoints: 'percent',
    handbookEach: 'temperatureDifference',
    makerPoints: 'percent',
    makerEach: 'temperatureDifference',
    strongestPoints: 'percent',
    strongestEach: 'temperatureDifference',
    treatedLeast: 'percent',
    treatedMost: 'percent',
    byHandbook: 'percent',
    byMaker: 'percent',
    byStrongest: 'percent',
    driest: 'percent',
    wettest: 'percent',
    halfPoint: 'percent',
  },
  lines: {
    colder: ['meterTemperature - woodTemperature', 'how much colder the wood is than the meter is set for'],
    byHandbook: [
      'reading + handbookPoints * colder / handbookEach',
      'by the handbook: colder wood is wetter than it reads',
    ],
    byMaker: ['reading + makerPoints * colder / makerEach', 'by one maker’s manual'],
    byStrongest: ['reading + strongestPoints * colder / strongestEach', 'by another maker’s manual'],
    driest: [
      'max(min(byHandbook, byStrongest) - treatedMost, 0)',
      'the driest that they make of it, with the most that treatment adds',
    ],
    wettest: [
      'max(max(byHandbook, byStrongest) - treatedLeast, 0)',
      'the wettest that they make of it, with the least that treatment adds',
    ],
    correctedFrom: ['floor(driest / halfPoint) * halfPoint', 'to half a point, outwards: finer than that nobody knows'],
    correctedTo: ['ceil(wettest / halfPoint) * halfPoint', 'to half a point, outwards'],
  },
  work(given, { line, put, has, need, tell, remark, doubt, table: lay, cite, system }) {
    const [deepest, ...others] = deepestFirst.filter(has)
    const reading = put('reading', given[deepest as 'moistureReading'])
    if (others.length > 0)
      remark(
        `Of your readings I corrected the ${deepest === 'depthReading' ? 'deepest' : 'one whose depth you did not say'}, ${show(reading)}.`,
      )
    if (given.woodFace === 'wet') {
      tell('readingHolds', null)
      remark(
        `The wet face decides: rain or dew joins the pins, and ${show(reading)} is too high by no known amount. Wait until the face is dry to the hand, or read with insulated pins driven well below it.`,
      )
      return
    }
    if (!has('woodTemperature')) need('woodTemperature')
    if (less(given.woodTemperature, freezing)) {
      tell('readingHolds', null)
      remark(
        `The wood’s temperature decides: at ${show(given.woodTemperature)} the water in it is frozen, and a pin meter misleads. Read it again when the wood has thawed.`,
      )
      return
    }
    for (const name of ['handbook', 'maker', 'strongest'] as const) {
      put(`${name}Points`, published(table[name].points))
      put(`${name}Each`, { ...published(table[name].each), unit: system === 'metric' ? 'dC' : 'dF' })
    }
    put('halfPoint', quantity('0.5', 'percent'))
    const isTreated = given.woodTreated === 'treated'
    put('treatedLeast', isTreated ? published(table.treated.least) : quantity(0, 'percent'))
    put('treatedMost', isTreated ? published(table.treated.most) : quantity(0, 'percent'))
    line('colder')
    const by = [line('byHandbook'), line('byMaker'), line('byStrongest')]
    line('driest')
    line('wettest')
    const [from, to] = [line('correctedFrom'), line('correctedTo')]
    lay({
      title: 'Before treatment is allowed for',
      columns: [
        { label: 'correction by', unit: '' },
        { label: 'moisture', unit: 'percent' },
      ],
      rows: [table.handbook, table.maker, table.strongest].map(({ name }, i) => [name, show(by[i] as Quantity)]),
    })
    const [least, most] = [published(finishLimits.meter.least), published(finishLimits.meter.most)]
    const isWithin = !less(reading, least) && !less(most, reading)
    tell('readingHolds', isWithin)
    remark(
      isWithin
        ? `The reading itself decides that it can be used: ${show(reading)} lies within ${cite(least, 'least a pin meter shows', 'published')} to ${cite(most, 'most a pin meter shows', 'published')}.`
        : `The reading itself decides that it cannot be used as a figure: ${show(reading)} lies outside ${cite(least, 'least a pin meter shows', 'published')} to ${cite(most, 'most a pin meter shows', 'published')}. Take it as “${less(reading, least) ? 'very dry' : 'very wet'}” and no more.`,
    )
    if (isTreated)
      remark(
        `Treated wood reads ${cite(published(table.treated.least), 'least that treatment adds', 'published')} to ${cite(published(table.treated.most), 'most that treatment adds', 'published')} too high, so I took off the most at the dry end and the least at the wet one.`,
      )
    else if (!has('woodTreated'))
      doubt(
        'missing',
        'woodTreated',
        'If the wood is treated, its true moisture is a point or two lower than this.',
        woodTreated.ask,
      )
    if (!has('woodFace'))
      remark('I took it that the face is dry to the hand: on a wet one no reading is worth anything.')
    remark(
      `Plan with the wetter end, ${show(to)}, not with ${show(from)}: the sources differ by that much, and the kind of wood adds a point or two either way unless the meter is set to it.`,
    )
  },
  sources: [
    ...[table.handbook, table.maker, table.strongest].map(({ fact, from }) => ({ fact, from })),
    { fact: table.treated.fact, from: table.treated.from },
    { fact: table.surface.fact, from: table.surface.from },
    { fact: finishLimits.meter.fact, from: finishLimits.meter.from },
  ],
  cautions: [],
  examples: [
    // 15 C° colder: 16 + 0.5 × 27/10 = 17.35; + 0.5 × 15/5 = 17.5; + 1.5 × 15/10 = 18.25; outwards to half points
    {
      ask: 'My meter reads 16 % in untreated wood at 5 C. What is it really?',
      given: { moistureReading: '16 %', woodTemperature: '5 C', woodTreated: 'untreated' },
      expect: { correctedFrom: '17 %', correctedTo: '18.5 %', readingHolds: 'the reading can be used' },
    },
    // 30 F° warmer: 16 − 1.5 = 14.5; − 0.5 × 30/9 = 14.33; − 1.5 × 30/18 = 13.5; treated: 13.5 − 2 and 14.5 − 1
    {
      ask: 'Meter calibrated at 70 F reads 16 % in treated wood at 100 F: corrected reading?',
      given: { moistureReading: '16 %', woodTemperature: '100 F', meterTemperature: '70 F', woodTreated: 'treated' },
      expect: { correctedFrom: '11.5 %', correctedTo: '13.5 %' },
    },
  ],
})
