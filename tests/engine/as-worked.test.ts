// Every example as it was last worked and drawn, kept beside this file. It says nothing of right and wrong, which the tests of each calculation
// and the evidence say: it shows what a change changes. Look at the difference; where it is meant, `npx vitest run --config .config/vitest.config.ts tests/engine/as-worked.test.ts -u` keeps it.
import { describe, expect, it } from 'vitest'
import { catalogue } from '../../engine/catalogue.ts'
import { fieldPackOf } from '../../engine/job/field-pack.ts'
import { byShapes } from './drawings/draw.ts'
import { drawnInWords, inWords, packInWords } from './in-words.ts'
import { jobOf } from './job/fences.ts'
import { sixRuns, threeRuns } from './job/whole-fence.ts'
import { runNamed, systemOf } from './run-named.ts'

describe('the examples', () => {
  it.each(catalogue.map((it) => [it.name, it] as const))('%s', async (name, { examples, drawing }) => {
    const outcomes = examples.map(({ given }) => runNamed(name, given, { system: systemOf(given) }).outcome)
    const worked = outcomes.map((it, i) =>
      [`# ${examples[i]?.ask}`, ...inWords(it), ...(drawing ? [drawnInWords(it)] : []), ''].join('\n'),
    )
    await expect(worked.join('\n')).toMatchFileSnapshot(`as-worked/${name}.txt`)
    for (const [i, it] of outcomes.entries())
      if (it.ok && it.drawing) await expect(byShapes(it.drawing)).toMatchFileSnapshot(`as-worked/${name}-${i + 1}.svg`)
  })
})

describe('the field packs', () => {
  it.each([
    ['six-runs', sixRuns, 'imperial'],
    ['three-runs', threeRuns, 'imperial'],
    ['six-runs-metric', sixRuns, 'metric'],
  ] as const)('%s', async (name, told, system) => {
    const pack = fieldPackOf(jobOf(told, system), 0)
    const lines = pack ? packInWords(pack) : []
    expect(lines.length).toBeGreaterThan(0)
    await expect(`${lines.join('\n')}\n`).toMatchFileSnapshot(`as-worked/pack-of-${name}.txt`)
  })
})
