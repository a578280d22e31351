// This file is about `npm run bench`: what waiting there is, as ratios to references in the same run; JSON with --json.
import { cuttingMeasures, inWords } from './cutting.ts'
import { engineMeasures } from './engine.ts'
import { fenceMeasures } from './fence.ts'
import { growthMeasures, inWords as growthInWords } from './growth.ts'
import { parts, inWords as readingInWords, played, talksOf } from './reading/measure.ts'

const measures = [...engineMeasures(), ...fenceMeasures()]
const growth = growthMeasures()
const cutting = await cuttingMeasures()
const folder = 'tests/bench/reading'
const reading = await Promise.all(parts.map(async (part) => ({ part, heard: await played(talksOf(folder, part)) })))
if (process.argv.includes('--json'))
  process.stdout.write(`${JSON.stringify({ measures, growth, cutting, reading }, null, 1)}\n`)
else {
  for (const it of measures)
    process.stdout.write(
      `${it.what}: ${it.ms.toFixed(4)} ms, ${it.ratio.toFixed(1)} × ${it.reference}${it.limitMs === undefined ? '' : `; ${it.kept ? 'within' : 'OVER'} ${it.limitMs} ms`}\n`,
    )
  process.stdout.write(`${growthInWords(growth)}\n`)
  process.stdout.write(`${inWords(cutting)}\n`)
  for (const { part, heard } of reading)
    process.stdout.write(`reading without a model, ${part} part, ${heard.length} turns\n${readingInWords(heard)}\n`)
}
