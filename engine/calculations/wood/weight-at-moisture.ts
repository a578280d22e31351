// What a piece of wood weighs at another moisture: the dry wood in it stays, the water goes.
//
//   now    ███████ + water
//   then   ███████ + less of it          dry wood × (1 + moisture), by the dry weight
import { calculation } from '../../calculation.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { word } from '../../words/word.ts'

const moistureAimed = word<'percent'>('moistureAimed', {
  kind: 'percent',
  label: 'moisture that it is to have',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'By the dry weight, as meters mean it.',
  ask: 'What moisture is it to have?',
  called: {},
  possible: { least: '0 %', most: '200 %' },
  plausible: { from: '5 %', to: '40 %' },
})

const massOf = (name: string, label: string, measure: string) =>
  word<'mass'>(name, {
    kind: 'mass',
    label,
    units: { imperial: 'lb', metric: 'g' },
    measure,
    ask: `${label}?`,
    called: {},
  })
// Words of its own, which nobody says to another sum: “6 kg wet, 5 kg dry” alone asks for the moisture.
const pieceDry = massOf('pieceDry', 'weight of the piece oven-dry', 'On the scales, when it loses no more.')
const pieceNow = massOf('pieceNow', 'weight of the piece now', 'On the scales.')
const pieceMoisture = word<'percent'>('pieceMoisture', {
  kind: 'percent',
  label: 'moisture of the piece now',
  units: { imperial: 'percent', metric: 'percent' },
  measure: 'With a meter, or by weighing.',
  ask: 'What moisture has it now?',
  called: {},
  possible: { least: '0 %', most: '300 %' },
})
const weightAimed = massOf('weightAimed', 'weight at that moisture', 'Put it on the scales again until it weighs that.')
const waterToGo = massOf('waterToGo', 'water that goes until then', 'What it weighs now, less what it weighs then.')
const dryInIt = massOf('dryInIt', 'dry wood in it', 'What is left when all water is out.')

export const weightAtMoisture = calculation({
  name: 'weight-at-moisture',
  title: 'What a piece weighs at another moisture',
  answers:
    'What a piece of wood will weigh when it is down to a moisture, from its oven-dry weight, or from its weight and moisture now.',
  needs: { pieceDry, pieceNow, pieceMoisture, moistureAimed },
  may: ['pieceDry', 'pieceNow', 'pieceMoisture'],
  oneOf: [['pieceDry', 'pieceNow']],
  gives: { weightAimed, waterToGo, dryInIt },
  headlines: ['weightAimed'],
  together: { weightAimed: ['weightAimed', 'waterToGo', 'dryInIt'] },
  plain: true,
  locals: { dry: 'mass' },
  lines: {
    dryInIt: ['pieceNow / (1 + pieceMoisture)', 'its water taken out'],
    weightAimed: ['dry * (1 + moistureAimed)', 'the dry wood, with the water it may keep'],
    waterToGo: ['pieceNow - weightAimed', 'what it weighs now, less that'],
  },
  work({ pieceDry: oven, pieceNow: wet, moistureAimed: aim }, { line, put, has, need, refuse, remark }) {
    if (has('pieceDry') && has('pieceNow') && less(wet, oven))
      refuse('pieceDry', `The piece cannot weigh more dry (${show(oven)}) than wet (${show(wet)}). Check both.`)
    if (!has('pieceDry') && !has('pieceMoisture')) need('pieceMoisture')
    const dry = put('dry', has('pieceDry') ? oven : line('dryInIt', wet.unit)) as Quantity
    const then = line('weightAimed', dry.unit)
    if (has('pieceNow') && less(then, wet)) line('waterToGo', wet.unit)
    else if (has('pieceNow')) remark(`It weighs ${show(wet)} now, so it is at ${show(aim)} already, or drier.`)
    remark(`${show(dry)} of it are dry wood. Moisture is by the dry weight here, as meters mean it.`)
  },
  sources: [
    {
      fact: 'weight = dry weight × (1 + moisture content)',
      from: 'Wood Handbook, FPL-GTR-282 (2021), chapter 4, equation 4-2 turned round',
    },
  ],
  cautions: [],
  examples: [
    // 400 × 1.15 = 460; 520 − 460
    {
      ask: 'A sample weighs 520 g wet and 400 g oven-dry. What will it weigh at 15 %?',
      given: { pieceNow: '520 g', pieceDry: '400 g', moistureAimed: '15 %' },
      expect: { weightAimed: '460 g', waterToGo: '60 g' },
    },
    // 7.5 / 1.25 = 6; × 1.1 = 6.6
    {
      ask: 'A board weighs 7.5 kg at 25 % now. What should it weigh at 10 %?',
      given: { pieceNow: '7.5 kg', pieceMoisture: '25 %', moistureAimed: '10 %' },
      expect: { weightAimed: '6.6 kg', waterToGo: '0.9 kg', dryInIt: '6 kg' },
    },
  ],
})
