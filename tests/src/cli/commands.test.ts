// The commands as other programs run them, from a bundle as they ship: what goes to standard output, and the exit code.
import { spawn, spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { bundleOne } from '../../../.ci/build.mjs'
import { answerSchema } from '../../../src/answer.ts'
import { exportSchema } from '../../../src/export/export.ts'

const root = process.cwd()
const folder = mkdtempSync(join(tmpdir(), 'plumbpost-cli-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const { PLUMBPOST_MODEL: _, ...env } = process.env
const fileOf = (program: string): string => join(folder, 'dist', `${program}.mjs`)

// Bundled once, each of two dozen starts takes less than half as long.
beforeAll(async () => {
  for (const it of ['package.json', 'prompts', 'src/readers/offline/taught/weights.json'])
    cpSync(join(root, it), join(folder, it), { recursive: true })
  symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'), 'junction')
  for (const it of ['ask', 'audit']) await bundleOne(root, `src/cli/${it}.ts`, fileOf(it))
})

const run = (program: string, ...args: string[]) =>
  spawnSync(process.execPath, [fileOf(program), ...args], { encoding: 'utf8', env })
/** Asks, and shuts the pipe as soon as anything comes out of it, as `| head -1` does. */
const readOneByte = (...args: string[]) =>
  new Promise<{ status: number | null; stderr: string }>((resolve) => {
    const child = spawn(process.execPath, [fileOf('ask'), ...args], { env })
    let stderr = ''
    child.stdout.once('data', () => child.stdout.destroy())
    child.stderr.on('data', (text) => {
      stderr += text
    })
    child.once('close', (status) => resolve({ status, stderr }))
  })
const question = 'How deep do I set posts for a 4 ft fence with 6 in of gravel?'

describe('ask', () => {
  it('prints one Answer a line with --json, one line a turn, and nothing else', () => {
    const { stdout, stderr, status } = run('ask', '--json', question, 'what about 6 ft?')
    const answers = stdout
      .trimEnd()
      .split('\n')
      .map((line) => answerSchema.parse(JSON.parse(line)))
    expect(answers.map((it) => it.turn)).toEqual([0, 1])
    expect(answers[1]?.changed.map((it) => it.word)).toContain('postLength')
    expect([stderr, status]).toEqual(['', 0])
  })

  it('prints plain words when it is not a terminal: no colour, no markup, no line too long', () => {
    const { stdout } = run('ask', question)
    expect(stdout).toContain('24 in – post in the ground.')
    expect(stdout).not.toContain('\u001b')
    expect(stdout).not.toMatch(/\*\*|###|~~/)
    expect(Math.max(...stdout.split('\n').map((line) => [...line].length))).toBeLessThanOrEqual(80)
  })

  it('writes the sheets to print with --pack, and none where nothing was worked', () => {
    const sheets = join(folder, 'sheets.pdf')
    const { stdout, status } = run('ask', '--pack', sheets, question)
    expect([status, stdout.includes('24 in – post in the ground.')]).toEqual([0, true])
    expect(readFileSync(sheets, 'latin1')).toMatch(/^%PDF-/)
    const none = run('ask', '--pack', join(folder, 'none.pdf'), 'hello')
    expect([none.status, none.stderr]).toEqual([1, expect.stringContaining('no sheet to print')])
  })

  it('says how to use it when a question or the name of a file is left out', () => {
    expect(run('ask').status).toBe(2)
    const { stderr, status } = run('ask', question, '--pack')
    expect(stderr).toContain('Ask a question')
    expect(status).toBe(2)
    expect(run('ask', '--jsn', question).status).toBe(2)
    const help = run('ask', '--help')
    expect([help.status, help.stderr, help.stdout]).toEqual([0, '', expect.stringContaining('--pack FILE.pdf')])
  })

  it('draws the hole under its answer, and says the answer once more at the end', () => {
    const { stdout } = run('ask', question)
    expect(stdout).toMatch(/ 6 in │ {2}│[o ]+│/)
    const end = stdout.slice(stdout.indexOf('── In short'))
    expect(end).toContain('\n30 in – hole depth.\n')
    expect(end.split('\n').length).toBeLessThan(8)
  })

  it('obeys no escape that stands in a question', () => {
    const { stdout } = run('ask', 'posts for a \u001b[31m4 ft\u0007 fence')
    expect(stdout).toMatch(/^> posts for a \[31m4 ft fence$/m)
    expect(stdout).not.toMatch(/(?!\n)\p{Cc}/u)
  })

  it('ends quietly where its reader has read enough, and still writes the file', async () => {
    const kept = join(folder, 'kept.json')
    const { status, stderr } = await readOneByte('--export', kept, question, '5 ft')
    expect([status, stderr]).toEqual([0, ''])
    expect(exportSchema.parse(JSON.parse(readFileSync(kept, 'utf8'))).turns).toHaveLength(2)
  })

  it('says in a line which file it cannot write', () => {
    const { status, stderr } = run('ask', '--export', join(folder, 'none', 'talk.json'), question)
    expect(status).toBe(1)
    expect(stderr).toMatch(/^I cannot write “.*talk\.json”: ENOENT\.\n$/)
  })
})

describe('audit', () => {
  const file = join(folder, 'talk.json')
  it('exits 0 on an export as it came, 1 on a changed one, and names the figure', () => {
    expect(run('ask', '--export', file, question).status).toBe(0)
    const good = run('audit', file)
    expect([good.status, good.stdout]).toEqual([0, expect.stringContaining('no difference')])

    const talk = exportSchema.parse(JSON.parse(readFileSync(file, 'utf8')))
    const result = talk.turns[0]?.answer.calls[0]?.results.find((it) => it.word === 'holeDepth')
    if (!result) throw new Error('no hole depth')
    result.value = 36
    result.text = '36 in'
    writeFileSync(file, JSON.stringify(talk))
    const bad = run('audit', file)
    expect(bad.status).toBe(1)
    expect(bad.stdout).toContain('turn 0: r1.holeDepth (hole depth, worked)')
    expect(bad.stdout).toContain('exported: 36 in')
    expect(bad.stdout).toContain('worked:   30 in')
  })

  it('says what is wrong with a file that cannot be read, is no JSON, or is no export', () => {
    expect(run('audit', join(folder, 'none.json')).stderr).toContain('I cannot read')
    writeFileSync(file, '{')
    expect(run('audit', file).stderr).toContain('is not JSON')
    writeFileSync(file, '{"turns":[]}')
    const { stderr, status } = run('audit', file)
    expect(stderr).toContain('not a whole exported conversation')
    expect(status).toBe(2)
  })
})
