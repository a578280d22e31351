// This file is about `npm run record`: the recorded conversations are asked again and written anew, when the program's words have changed.
// Where a model's part was answered by hand, the same answers are given again: they are the recording, and are never lost.
import { spawn } from 'node:child_process'
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:http'
import { basename, join } from 'node:path'
import { prepare, root } from './prepare.mjs'

// Faults name the address, so it is the same in every recording.
const port = 4699

await prepare()
const folder = join(root, 'transcripts-demo')
for (const name of readdirSync(folder).filter((it) => it.endsWith('.json'))) {
  const file = join(folder, name)
  const before = JSON.parse(readFileSync(file, 'utf8'))
  const said = before.turns.map((turn) => turn.said)
  const model = before.answeredByHand && (await answeringByHand(before.answeredByHand))
  await ask(['--export', file, ...said], {
    ...process.env,
    PLUMBPOST_FRONT: model ? 'model' : 'offline',
    ...(model ? { PLUMBPOST_MODEL: basename(name, '.json'), OPENAI_BASE_URL: `http://127.0.0.1:${port}/v1` } : {}),
  }).catch((fault) => {
    throw new Error(`${name}: ${fault.message}`)
  })
  model?.close()
  const after = JSON.parse(readFileSync(file, 'utf8'))
  after.conversation = before.conversation
  if (before.answeredByHand) after.answeredByHand = before.answeredByHand
  writeFileSync(file, `${JSON.stringify(after, null, 1)}\n`)
  process.stdout.write(`${name}: ${said.length} turns\n`)
}

function ask(args, env) {
  return new Promise((resolve, reject) => {
    const asked = spawn(process.execPath, [join(root, 'dist', 'ask.mjs'), ...args], {
      env,
      stdio: ['ignore', 'ignore', 'pipe'],
    })
    let fault = ''
    asked.stderr.on('data', (piece) => {
      fault += piece
    })
    asked.on('error', reject)
    asked.on('close', (code) => (code === 0 ? resolve() : reject(new Error(fault))))
  })
}

/** A model on this machine that says what the hand said, one answer after the other. */
function answeringByHand(answers) {
  let at = 0
  const server = createServer((request, response) => {
    request.resume().on('end', () => {
      const message = answers[at++]
      response.writeHead(message ? 200 : 500, { 'content-type': 'application/json' })
      response.end(JSON.stringify(message ? { choices: [{ index: 0, message, finish_reason: 'stop' }] } : {}))
    })
  })
  return new Promise((resolve, reject) => {
    server.on('error', reject)
    server.listen(port, '127.0.0.1', () => resolve({ close: () => server.close() }))
  })
}
