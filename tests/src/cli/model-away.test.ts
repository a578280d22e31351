// The terminal where the model cannot be reached, or its key is wrong: it says so in plain words, and answers without one.
import { spawn } from 'node:child_process'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { fileURLToPath } from 'node:url'
import { expect, it } from 'vitest'

const question = 'How deep do I set posts for a 4 ft fence with 6 in of gravel?'

/** Asks as somebody who has set a model, its address and a key. The server under test runs here, so nothing may block. */
const ask = (address: string, key: string) =>
  new Promise<{ stdout: string; status: number | null }>((resolve) => {
    const file = fileURLToPath(new URL('../../../src/cli/ask.ts', import.meta.url))
    const env = { ...process.env, PLUMBPOST_MODEL: 'any-model', OPENAI_BASE_URL: address, OPENAI_API_KEY: key }
    const child = spawn(process.execPath, ['--import', 'tsx', file, question], { env })
    let stdout = ''
    child.stdout.on('data', (text) => {
      stdout += text
    })
    child.once('close', (status) => resolve({ stdout, status }))
  })

/** The words of an answer in one line: the terminal breaks them as it is wide. */
const inOneLine = (text: string): string => text.replaceAll(/\s+/g, ' ')

it('a wrong key is said, with the setting to look at and never the key, and the question is answered all the same', async () => {
  const server = createServer((_, response) =>
    response
      .writeHead(401, { 'content-type': 'application/json' })
      .end('{"error":{"message":"Incorrect API key provided"}}'),
  )
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const { port } = server.address() as AddressInfo
  const { stdout, status } = await ask(`http://127.0.0.1:${port}/v1`, 'sk-not-the-right-one')
  server.close()
  const words = inOneLine(stdout)
  expect(words).toContain('did not accept the key. Look at OPENAI_API_KEY')
  expect(words).not.toContain('sk-not-the-right-one')
  expect(words).toContain('24 in – post in the ground.')
  expect(status).toBe(0)
})

it('an address where nobody answers is said, and the question is answered all the same', async () => {
  // A port that was free a moment ago.
  const server = createServer()
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done))
  const { port } = server.address() as AddressInfo
  await new Promise((done) => server.close(done))
  const { stdout, status } = await ask(`http://127.0.0.1:${port}/v1`, 'any')
  const words = inOneLine(stdout)
  expect(words).toContain(`127.0.0.1:${port}`)
  expect(words).toContain('OPENAI_BASE_URL')
  expect(words).toContain('24 in – post in the ground.')
  expect(status).toBe(0)
})
