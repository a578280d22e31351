// Known weaknesses of packages: what a registry tells of them is passed on, and where none answers that is said, and is no failure.
import { spawn } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, describe, expect, it } from 'vitest'

const closing: (() => void)[] = []
afterEach(() => {
  for (const it of closing.splice(0)) it()
})

/** A registry that knows so much of hono, and answers with that status. */
async function registry(status: number, advisories: object): Promise<string> {
  const server = createServer((request, response) => {
    request.resume()
    response.writeHead(request.url?.includes('advisories/bulk') ? status : 404, { 'content-type': 'application/json' })
    response.end(JSON.stringify(advisories))
  }).listen(0, '127.0.0.1')
  await new Promise((resolve) => server.once('listening', resolve))
  closing.push(() => server.close())
  return `http://127.0.0.1:${(server.address() as AddressInfo).port}/`
}

/** A fresh one each time: npm keeps what it was told. */
function cache(): string {
  const folder = mkdtempSync(join(tmpdir(), 'plumbpost-advisories-'))
  closing.push(() => rmSync(folder, { recursive: true, force: true }))
  return folder
}

const asked = (address: string): Promise<{ code: number | null; said: string }> =>
  new Promise((resolve) => {
    const env = { ...process.env, npm_config_registry: address, npm_config_cache: cache() }
    const child = spawn(process.execPath, ['.ci/advisories.mjs'], { env, stdio: ['ignore', 'ignore', 'pipe'] })
    let said = ''
    child.stderr.on('data', (data: Buffer) => {
      said += String(data)
    })
    child.on('close', (code) => resolve({ code, said }))
  })

const weakness = (severity: string) => ({
  hono: [{ id: 1, url: 'https://advisories.test/1', title: 'made up', severity, vulnerable_versions: '<9999' }],
})

describe('known weaknesses of what is shipped', () => {
  it('are a failure when they are high, and none when they are lesser or there are none', async () => {
    expect(await asked(await registry(200, weakness('high')))).toMatchObject({
      code: 1,
      said: expect.stringMatching(/^FAILED .*: [1-9]\d* high, 0 critical/),
    })
    expect(await asked(await registry(200, weakness('low')))).toMatchObject({
      code: 0,
      said: expect.stringContaining('none that is high or critical'),
    })
    expect(await asked(await registry(200, {}))).toMatchObject({ code: 0, said: expect.stringMatching(/^passed/) })
  })

  it('are not known where no registry answers, or it does not tell: that is said aloud, and is no failure', async () => {
    for (const address of ['http://127.0.0.1:1/', await registry(405, {}), await registry(500, {})])
      expect(await asked(address)).toMatchObject({ code: 0, said: expect.stringMatching(/^SKIPPED .* did not tell/) })
  })
})
