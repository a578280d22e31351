// This file is about `npm run mutate`: whether the tests notice when the engine is changed. `formulas` changes each formula, `coverage` counts what the tests
// run, and a number tries so many mutants of the code, of all of engine/ or of the files named; `--seed WORD` draws others. Without any of these: all three, 300 mutants.
import { bounds } from '../../src/evidence.ts'
import { codeMutants, replaced } from './code.ts'
import { coverage } from './coverage.ts'
import { formulaMutants } from './formulas.ts'
import { keep, today } from './kept.ts'

const args = process.argv.slice(2)
const seedAt = args.indexOf('--seed')
const seed = seedAt < 0 ? 'first' : (args[seedAt + 1] ?? '')
const files = args.filter((it) => it.endsWith('.ts'))
const count = args.find((it) => /^\d+$/.test(it))
const isAll = args.length === 0
const say = (text: string): void => void process.stdout.write(`${text}\n`)
const percent = (it: number): string => `${(it * 100).toFixed(1)} %`

if (isAll || args.includes('formulas')) {
  const { mutants, noticed, refusedAtLoad, unnoticed } = formulaMutants()
  for (const it of unnoticed) say(`not noticed: ${it.calculation}: ${it.was}  →  ${it.is}`)
  say(
    `formulas: ${noticed} of ${mutants} mutants noticed, ${percent(noticed / mutants)}; ${refusedAtLoad} more refused when the catalogue loads`,
  )
  keep({ formulas: { on: today(), mutants, noticed, refusedAtLoad } })
}
if (isAll || args.includes('coverage')) keep({ coverage: coverage() })
if (isAll || count || files.length > 0) {
  const most = Number(count ?? (files.length > 0 ? Number.MAX_SAFE_INTEGER : 300))
  const { kept, unnoticed } = await codeMutants(most, seed, files.length > 0 ? files : undefined)
  for (const it of unnoticed)
    say(`not noticed (${it.status}): ${it.file}:${it.start.line + 1}: ${replaced(it)}  →  ${it.replacement}`)
  if (kept.tried === 0) {
    say('code: no mutant was tried. What is said above tells why: most often a test fails without any.')
    process.exitCode = 1
  } else {
    const of = kept.tried - kept.same
    const [low, high] = bounds(kept.noticed, of)
    say(
      `code: ${kept.noticed} of ${of} mutants noticed, ${percent(kept.noticed / of)} (95 %: ${percent(low)} to ${percent(high)}), drawn from ${kept.possible} by “${seed}”; ${kept.same} more make the same program`,
    )
    if (files.length === 0) keep({ code: kept })
  }
}
