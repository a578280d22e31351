// This file is about `npm run bench`: what waiting there is, as ratios to references in the same run; JSON with --json, to be kept, and `--against FILE`
// holds it beside one that was. `front` measures a model instead, `load` the whole server under load.
import { readFileSync } from 'node:fs'
import { againstInWords, type KeptBench } from './against.ts'
import { cuttingMeasures, inWords } from './cutting.ts'
import { engineMeasures } from './engine.ts'
import { fenceMeasures } from './fence.ts'
import { measureFront } from './front.ts'
import { guardMeasures, inWords as guardInWords } from './guard.ts'
import { growthMeasures, inWords as growthInWords } from './growth.ts'
import { loadInWords, loadMeasures } from './load.ts'
import { overheadInWords, overheadMeasure } from './own-reading.ts'
import { readingGrowth, inWords as readerInWords, readMeasures } from './reader.ts'
import { pageInWords, pageMeasures } from './page.ts'
import { programMeasures } from './program.ts'
import { ratiosOf } from './ratios.ts'
import { parts, inWords as readingInWords, played, talksOf } from './reading/measure.ts'

async function measureAll(asJson: boolean, before: KeptBench | undefined): Promise<void> {
  const measures = [...engineMeasures(), ...fenceMeasures(), ...readMeasures(), ...(await programMeasures())]
  const growth = growthMeasures()
  const readGrowth = readingGrowth()
  const guard = guardMeasures()
  const cutting = await cuttingMeasures()
  const folder = 'tests/bench/reading'
  const reading = await Promise.all(parts.map(async (part) => ({ part, heard: await played(talksOf(folder, part)) })))
  const [first] = reading
  const overhead = await overheadMeasure(talksOf(folder, 'first'), first?.heard ?? [])
  const page = await pageMeasures()
  const report = { measures, growth, readGrowth, guard, cutting, reading, overhead, page }
  const ratios = ratiosOf(report)
  if (asJson)
    process.stdout.write(`${JSON.stringify({ ratios, ...report }, null, 1)}
`)
  else {
    for (const it of measures)
      process.stdout.write(
        `${it.what}: ${it.ms.toFixed(4)} ${it.unit ?? 'ms'}, ${it.ratio.toFixed(1)} × ${it.reference}${it.limitMs === undefined ? '' : `; ${it.kept ? 'within' : 'OVER'} ${it.limitMs} ms`}\n`,
      )
    process.stdout.write(`${growthInWords(growth)}\n`)
    process.stdout.write(`${readerInWords(readGrowth)}\n`)
    process.stdout.write(`${guardInWords(guard)}\n`)
    process.stdout.write(`${inWords(cutting)}\n`)
    process.stdout.write(`${overheadInWords(overhead)}\n`)
    process.stdout.write(`${pageInWords(page)}\n`)
    for (const { part, heard } of reading)
      process.stdout.write(`reading without a model, ${part} part, ${heard.length} turns\n${readingInWords(heard)}\n`)
    if (before) process.stdout.write(`${againstInWords(before, { ratios })}\n`)
  }
}

const args = process.argv.slice(2)
const against = args.indexOf('--against')
const before = against < 0 ? undefined : (JSON.parse(readFileSync(args[against + 1] ?? '', 'utf8')) as KeptBench)
if (args.includes('load')) {
  const only = args.filter((it) => /^(sqlite|postgres|two|plain)$/.test(it))
  const loads = await loadMeasures(Number(args.find((it) => /^\d+$/.test(it)) ?? 400), only)
  process.stdout.write(`${args.includes('--json') ? JSON.stringify(loads, null, 1) : loadInWords(loads)}\n`)
} else if (!args.includes('front')) await measureAll(args.includes('--json'), before)
else
  await measureFront(args, process.env).then(
    (told) => void process.stdout.write(`${told}\n`),
    (fault: unknown) => {
      process.stderr.write(`${fault instanceof Error ? fault.message : String(fault)}\n`)
      process.exitCode = 1
    },
  )
