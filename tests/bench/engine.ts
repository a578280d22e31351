// This file is about how fast the engine works: every calculation with its working, and ten thousand pickets' marks.
import { compile } from 'mathjs'
import { run } from '../../engine/calculation.ts'
import { catalogue } from '../../engine/catalogue.ts'
import { exact } from '../../engine/quantities/amount.ts'
import { runningMarks } from '../../engine/running-marks.ts'
import { givenOf } from '../engine/run-named.ts'
import { type Measured, measure, type Reference } from './measure.ts'

const calculationLimit = 0.2
const marksLimit = 20

const formula = compile('(opening - pickets * picketWidth) / (pickets + 1)')
const general: Reference = {
  name: 'mathjs working one compiled formula ten times, without units or working',
  run: () => {
    for (let i = 0; i < 10; i++) formula.evaluate({ opening: 93, pickets: 16, picketWidth: 3.5 })
  },
}

const manyPickets = 10_000
const plainLoop: Reference = {
  name: 'a plain loop in floating point over as many pickets',
  run: () => {
    const gap = (61_253 - manyPickets * 3.5) / (manyPickets + 1)
    return Array.from({ length: manyPickets }, (_, i) => (Math.round((gap + i * (gap + 3.5)) * 16) / 16).toFixed(4))
  },
}

export function engineMeasures(): Measured[] {
  const calculations = catalogue.map((calc) => {
    const [example] = calc.examples
    if (!example) throw new Error(`${calc.name} has no example`)
    const told = givenOf(calc.name, example.given, 'imperial')
    const wanted = Object.keys(example.expect)
    return measure(`${calc.name}, with its working`, () => run(calc, told, { system: 'imperial', wanted }), general, {
      limitMs: calculationLimit,
    })
  })
  const marks = measure(
    'the marks of 10,000 pickets',
    () => runningMarks(exact(61_253), exact('7/2'), exact(manyPickets), exact('1/16')),
    plainLoop,
    { limitMs: marksLimit, rounds: 20 },
  )
  return [...calculations, marks]
}
