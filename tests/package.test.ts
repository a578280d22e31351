// The package as somebody else gets it: packed, unpacked in a folder of its own, and used there by Node, by TypeScript, by a bundler and as a command.
import { execFileSync, spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { createContext, runInContext } from 'node:vm'
import { build } from 'esbuild'
import ts from 'typescript'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { bundle } from '../.ci/build.mjs'
import { makeLibrary } from '../.ci/library.mjs'
import { answerSchema } from '../src/answer.ts'

const root = process.cwd()
const folder = mkdtempSync(join(tmpdir(), 'plumbpost-package-'))
const packed = join(folder, 'packed')
const theirs = join(folder, 'theirs')
const installed = join(theirs, 'node_modules', 'plumbpost')
afterAll(() => rmSync(folder, { recursive: true, force: true }))

beforeAll(async () => {
  const from = join(folder, 'from')
  for (const it of ['package.json', 'README.md', 'LICENSE', 'prompts', 'src/readers/offline/taught/weights.json'])
    cpSync(join(root, it), join(from, it), { recursive: true })
  await bundle(root, join(from, 'dist'))
  makeLibrary(root, join(from, 'dist', 'engine'))
  mkdirSync(packed)
  // npm is a script on some systems and a program on others.
  const npm = ['pack', '--ignore-scripts', '--silent', '--pack-destination', packed]
  execFileSync('npm', npm, { cwd: from, shell: process.platform === 'win32' })
  mkdirSync(installed, { recursive: true })
  execFileSync('tar', ['-xzf', join(packed, 'plumbpost-0.1.0.tgz'), '-C', installed, '--strip-components', '1'])
  // What npm would install beside it.
  const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
    dependencies: Record<string, string>
  }
  for (const name of Object.keys(dependencies)) {
    const place = join(theirs, 'node_modules', name)
    mkdirSync(join(place, '..'), { recursive: true })
    symlinkSync(join(root, 'node_modules', name), place, 'junction')
  }
  writeFileSync(join(theirs, 'package.json'), '{"type":"module"}')
}, 120_000)

/** The programs that README shows, each with what it says will be printed. */
const shown = [...readFileSync(join(root, 'README.md'), 'utf8').matchAll(/```ts\n(.*?)```/gs)].map(([, program]) => ({
  program: program as string,
  prints: [...(program as string).matchAll(/\/\/ → (.*)/g)].map(([, text]) => text),
}))

describe('what README shows', () => {
  it('there are programs, and each says what it prints', () => {
    expect(shown.length).toBeGreaterThan(1)
    expect(shown.filter(({ prints }) => prints.length === 0)).toEqual([])
  })

  it('they print what they say', async () => {
    for (const [i, { program, prints }] of shown.entries()) {
      const file = join(theirs, `shown-${i}.mjs`)
      writeFileSync(file, ts.transpile(program, { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.ESNext }))
      const { stdout, stderr } = spawnSync(process.execPath, [file], { encoding: 'utf8' })
      expect([stdout.trimEnd().split('\n'), stderr]).toEqual([prints, ''])
    }
  })

  it('their types hold as Node resolves them and as a bundler does, and a wrong use is refused', () => {
    const wrong = join(theirs, 'wrong.ts')
    writeFileSync(wrong, "import { show } from 'plumbpost/engine'\nexport const inches: string = show('93 in')\n")
    const files = shown.map(({ program }, i) => {
      const file = join(theirs, `shown-${i}.ts`)
      writeFileSync(file, program)
      return file
    })
    for (const [module, moduleResolution] of [
      [ts.ModuleKind.NodeNext, ts.ModuleResolutionKind.NodeNext],
      [ts.ModuleKind.ESNext, ts.ModuleResolutionKind.Bundler],
    ] as const) {
      const program = ts.createProgram([...files, wrong], {
        strict: true,
        noEmit: true,
        target: ts.ScriptTarget.ES2023,
        module,
        moduleResolution,
        types: [],
        // The declarations themselves are checked once.
        skipLibCheck: module !== ts.ModuleKind.NodeNext,
      })
      const faults = ts.getPreEmitDiagnostics(program).map((it) => [it.file?.fileName.replace(/.*\//, ''), it.code])
      // 2345: an argument of another type.
      expect(faults).toEqual([['wrong.ts', 2345]])
    }
  })
})

describe('in a browser', () => {
  const bundled = async (program: string): Promise<{ text: string; holds: string[] }> => {
    const { outputFiles, metafile } = await build({
      stdin: { contents: program, resolveDir: theirs, loader: 'ts' },
      bundle: true,
      write: false,
      minify: true,
      metafile: true,
      format: 'iife',
      globalName: 'made',
      platform: 'browser',
      target: 'es2022',
      logLevel: 'error',
    })
    const [output] = Object.values(metafile.outputs)
    const holds = Object.entries(output?.inputs ?? {}).flatMap(([path, it]) => (it.bytesInOutput > 0 ? [path] : []))
    return { text: outputFiles[0]?.text ?? '', holds }
  }
  const two = `
    import { isQuantity, show, workWritten } from 'plumbpost/engine'
    import { picketSpacing } from 'plumbpost/engine/calculations/pickets/picket-spacing'
    import { postDepth } from 'plumbpost/engine/calculations/ground/post-depth'
    const shown = (calc, inputs) => {
      const outcome = workWritten(calc, inputs)
      return outcome.ok ? Object.fromEntries([...outcome.values].map(([name, it]) => [name, isQuantity(it) ? show(it) : it])) : outcome.problems
    }
    export const spacing = shown(picketSpacing, { opening: '93 in', picketWidth: '3 1/2 in', widestGap: '2 1/2 in' })
    export const depth = shown(postDepth, { postAbove: '4 ft', stoneDepth: '6 in' })`

  it('two calculations work where there is nothing but the language: no Node, no page, no text encoder', async () => {
    const { text } = await bundled(two)
    const bare = createContext(Object.create(null) as object, { codeGeneration: { strings: false, wasm: false } })
    const made = JSON.parse(runInContext(`${text};JSON.stringify(made)`, bare) as string) as unknown
    // 16 × 3 1/2 = 56; 93 − 56 = 37; 37/17 = 2 3/17. Half of 4 ft is 24 in, and 6 in of stone make a hole of 30 in.
    expect(made).toMatchObject({
      spacing: { pickets: '16 pickets', gap: '2 3/17 in' },
      depth: { embedment: '24 in', holeDepth: '30 in' },
    })
  })

  it('one calculation takes in no other, and weighs less than a fifth of all', async () => {
    const one = await bundled(`export { workWritten } from 'plumbpost/engine'
      export { picketSpacing } from 'plumbpost/engine/calculations/pickets/picket-spacing'`)
    const all = await bundled(`export { workWritten, catalogue } from 'plumbpost/engine'`)
    expect(one.holds.filter((it) => it.includes('/calculations/')).map((it) => it.replace(/.*\//, ''))).toEqual([
      'picket-spacing.js',
    ])
    expect(one.text.length).toBeLessThan(all.text.length / 5)
  })
})

describe('what is packed', () => {
  it('holds the programs, the engine and what they read: no source, no test, no map', () => {
    const files = readdirSync(installed, { recursive: true, withFileTypes: true })
      .filter((it) => it.isFile())
      .map((it) =>
        join(it.parentPath, it.name)
          .slice(installed.length + 1)
          .replaceAll('\\', '/'),
      )
    const beyond = files.filter(
      (it) =>
        !/^(package\.json|README\.md|LICENSE|prompts\/(planning\/)?[\w-]+\.md|dist\/[\w-]+\.mjs|dist\/web\/page\.(js|css)|dist\/engine\/.*\.(js|d\.ts)|dist\/engine\/API\.md|dist\/evidence\.json)$/.test(
          it,
        ),
    )
    expect(beyond).toEqual(['src/readers/offline/taught/weights.json'])
  })

  it('the page of the library names every export of the engine', () => {
    const page = readFileSync(join(installed, 'dist', 'engine', 'API.md'), 'utf8')
    const names = [...page.matchAll(/^### (\w+)$/gm)].map(([, name]) => name)
    const listed = readFileSync(join(root, 'engine', 'index.ts'), 'utf8').match(/(?<=\{[^}]*)\b\w+(?=\s*[,}])/g)
    expect(new Set(names)).toEqual(new Set(listed))
  })

  it('the command asks, lists what it can do, and knows no other', () => {
    const plumbpost = (...args: string[]) => {
      const { PLUMBPOST_MODEL: _, ...env } = process.env
      return spawnSync(process.execPath, [join(installed, 'dist', 'plumbpost.mjs'), ...args], { encoding: 'utf8', env })
    }
    const asked = plumbpost('ask', '--json', 'How deep do I set posts for a 4 ft fence with 6 in of gravel?')
    expect([asked.status, asked.stderr]).toEqual([0, ''])
    const figures = answerSchema.parse(JSON.parse(asked.stdout)).figures
    expect(figures.find((it) => it.word === 'holeDepth' && it.role === 'result')?.text).toBe('30 in')
    expect(plumbpost('ask', '--help').stdout).toMatch(/^plumbpost ask "question"/)
    expect(plumbpost('--help').stdout).toContain('serve')
    expect(plumbpost('--version').stdout).toBe('0.1.0\n')
    const none = plumbpost('asks')
    expect([none.status, none.stderr]).toEqual([2, expect.stringContaining('There is no command “asks”.')])
  })
})
