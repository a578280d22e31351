// This file is about `npm run record`: the recorded conversations are asked again and written anew, when the program's words have changed.
import { spawnSync } from 'node:child_process'
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { prepare, root } from './prepare.mjs'

await prepare()
const folder = join(root, 'transcripts-demo')
for (const name of readdirSync(folder).filter((it) => it.endsWith('.json'))) {
  const file = join(folder, name)
  const before = JSON.parse(readFileSync(file, 'utf8'))
  const said = before.turns.map((turn) => turn.said)
  const asked = spawnSync(process.execPath, [join(root, 'dist', 'ask.mjs'), '--export', file, ...said], {
    encoding: 'utf8',
    env: { ...process.env, PLUMBPOST_FRONT: 'offline' },
  })
  if (asked.status !== 0) throw new Error(`${name}: ${asked.stderr}`)
  const after = JSON.parse(readFileSync(file, 'utf8'))
  after.conversation = before.conversation
  writeFileSync(file, `${JSON.stringify(after, null, 1)}\n`)
  process.stdout.write(`${name}: ${said.length} turns\n`)
}
