// That the house stays in order: who may import whom, no clock and no chance in the engine, and no litter.
// Code is read with the TypeScript parser, so a word in a comment or in a sentence is only a word.
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { describe, expect, it } from 'vitest'

const root = fileURLToPath(new URL('..', import.meta.url))
const notOurs = new Set(['node_modules', 'dist', 'coverage', '.git', '.plumbpost', '.DS_Store'])

const everything = filesIn('')
const code = everything.filter((path) => /^(engine|src|tests)\/.*\.tsx?$/.test(path))
const engine = code.filter((path) => path.startsWith('engine/'))
const src = code.filter((path) => path.startsWith('src/'))

describe('who may import whom', () => {
  it('the engine imports itself, zod and fraction.js, and nothing else', () => {
    expect(breaches(engine, (to) => !to.startsWith('engine/') && to !== 'zod' && to !== 'fraction.js')).toEqual([])
  })

  it('the assistant imports the engine through engine/index.ts only', () => {
    expect(breaches(src, (to) => to.startsWith('engine/') && to !== 'engine/index.ts')).toEqual([])
  })

  it('calculations never import each other: they meet in the job', () => {
    const calculations = engine.filter((path) => path.startsWith('engine/calculations/'))
    expect(calculations.length).toBeGreaterThan(0)
    expect(breaches(calculations, (to) => to.startsWith('engine/calculations/'))).toEqual([])
  })

  it('the server, the page, the command line and MCP never import a model', () => {
    const fronts = src.filter((path) => /^src\/(http|web|cli|mcp)\//.test(path))
    expect(fronts.length).toBeGreaterThan(0)
    expect(breaches(fronts, (to) => to.startsWith('src/readers/model/') || to === 'openai')).toEqual([])
  })

  it('readers know messages, words and the request: no store, no front, no calculation', () => {
    const readers = src.filter((path) => path.startsWith('src/readers/'))
    expect(readers.length).toBeGreaterThan(0)
    expect(breaches(readers, (to) => /^src\/(store|http|web|cli|mcp|export)\//.test(to))).toEqual([])
  })

  it('the program imports no test', () => {
    expect(breaches([...engine, ...src], (to) => to.startsWith('tests/'))).toEqual([])
  })

  it('every relative import names a file that is there, with its ending', () => {
    expect(breaches(code, (to) => /^(engine|src|tests)\//.test(to) && !existsSync(join(root, to)))).toEqual([])
  })

  it('a breach is seen in every way an import can be written', () => {
    const written = `
      import { a } from './a.ts'
      import type { B } from './b.ts'
      export * from './c.ts'
      const d = await import('./d.ts')
      type E = import('./e.ts').E
      // import './f.ts'
      const text = "import './g.ts'"`
    expect(importsIn(parse('engine/x.ts', written))).toEqual(['./a.ts', './b.ts', './c.ts', './d.ts', './e.ts'])
  })
})

describe('the picture in DEVELOPERS.md', () => {
  it('shows which folder imports which: all there are, and no others. Where it differs, what is received belongs there', () => {
    const drawn =
      /```mermaid\nflowchart LR\n(.*?)```/s.exec(readFileSync(join(root, 'DEVELOPERS.md'), 'utf8'))?.[1] ?? ''
    const lines = drawn.trimEnd().split('\n')
    expect(importsBetweenFolders()).toEqual(lines.map((it) => it.trim()))
  })
})

describe('the engine is pure', () => {
  it('has no clock, no chance, no files and no network', () => {
    expect(engine.flatMap((path) => worldly(read(path)).map((what) => `${path}: ${what}`))).toEqual([])
  })

  it('a clock in code is seen, and in a comment, a sentence or the name of a field it is not', () => {
    const seen = `const now = Date.now(); const dice = Math.random(); const { random } = Math; let late: Date; globalThis.x; setTimeout(f, 1); const o = { process }`
    expect(worldly(parse('engine/x.ts', seen))).toEqual([
      'Date',
      'Math.random',
      'Math',
      'Date',
      'globalThis',
      'setTimeout',
      'process',
    ])
    const unseen = `// Date.now() and Math.random()
      const text = 'the process takes a fetch'; const it = { process: 1, Date: 2 }; it.process; it.Date; interface X { performance: number }; Math.floor(2)`
    expect(worldly(parse('engine/x.ts', unseen))).toEqual([])
  })
})

describe('the program', () => {
  it('runs nothing that was said: no code is made of text, and no other program is started', () => {
    const starts = /^(node:)?(child_process|cluster|vm|worker_threads|repl)$/
    expect(breaches([...engine, ...src], (to) => starts.test(to))).toEqual([])
    expect([...engine, ...src].flatMap((path) => madeOfText(read(path)).map((what) => `${path}: ${what}`))).toEqual([])
    const seen = `eval('1'); new Function('a'); const f = Function; it.eval; const o = { eval: 1 }; setTimeout('a()', 1); setTimeout(a, 1)`
    expect(madeOfText(parse('src/x.ts', seen))).toEqual(['eval', 'Function', 'Function', 'setTimeout'])
  })

  it('hashes by SHA-256, and by nothing else', () => {
    const hashes = [...engine, ...src].flatMap((path) => hashesIn(read(path)))
    expect(hashes.length).toBeGreaterThan(5)
    expect(hashes.filter((it) => it !== "'sha256'")).toEqual([])
  })
})

describe('files and folders', () => {
  it('the top of the repository holds only what it should', () => {
    const known = [
      'README.md',
      'DEVELOPERS.md',
      'package.json',
      'package-lock.json',
      'tsconfig.json',
      'LICENSE',
      'src',
      'engine',
      'prompts',
      'tests',
      'transcripts-demo',
    ]
    const top = new Set(everything.map((path) => path.split('/')[0] ?? ''))
    expect([...top].filter((name) => !name.startsWith('.') && !known.includes(name))).toEqual([])
  })

  it('no file is called utils or helpers', () => {
    expect(everything.filter((path) => /(^|[/.-])(utils?|helpers?|misc|common)([/.-]|$)/i.test(path))).toEqual([])
  })

  it('names are in kebab-case', () => {
    expect(code.filter((path) => !/^[a-z0-9/-]+(\.test|\.d)?\.tsx?$/.test(path))).toEqual([])
  })

  it('no file of the engine or the assistant is longer than 450 lines, tables of figures excepted', () => {
    const long = [...engine, ...src].filter((path) => !path.startsWith('engine/tables/'))
    expect(long.map((path) => [path, lines(path)] as const).filter(([, count]) => count > 450)).toEqual([])
  })
})

describe('nothing is left lying about', () => {
  it('no type is given up as any', () => {
    expect(code.filter((path) => some(read(path), (node) => node.kind === ts.SyntaxKind.AnyKeyword))).toEqual([])
  })

  it('no test is singled out, left out or put off', () => {
    expect(code.flatMap((path) => sidelined(read(path)).map((what) => `${path}: ${what}`))).toEqual([])
  })

  it('a test that is singled out or left out is seen', () => {
    const written = `it.only('a', f); describe.skip('b', f); test.concurrent.todo('c'); it.skipIf(true)('d', f); xit('e', f); list.only; skip('why')`
    expect(sidelined(parse('tests/x.test.ts', written))).toEqual([
      'it.only',
      'describe.skip',
      'test.concurrent.todo',
      'it.skipIf',
      'xit',
    ])
  })

  it('the lock file names no registry, so that any registry serves', () => {
    const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
      packages: Record<string, { resolved?: string; link?: boolean }>
    }
    const packages = Object.entries(lock.packages)
    expect(packages.length).toBeGreaterThan(100)
    expect(packages.filter(([, it]) => it.resolved !== undefined || it.link).map(([name]) => name)).toEqual([])
  })

  it('every package is pinned to one version', () => {
    const manifest = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as Record<
      'dependencies' | 'devDependencies',
      Record<string, string>
    >
    const wanted = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies })
    expect(wanted.filter(([, version]) => !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version))).toEqual([])
  })

  it('no file names a folder of somebody’s machine', () => {
    // A path that begins with one of these belongs to one machine. Inside an address, or after a folder of ours, it does not begin.
    const machine = new RegExp(`(?<![\\w.:/~-])/(?:${['home', 'root', 'Users', 'work'].join('|')})/[\\w.-]+`)
    const texts = everything.filter((path) => !/\.(png|jpe?g|ico|woff2?|ttf|otf|pdf|wasm|log)$/.test(path))
    const found = texts.flatMap((path) => {
      const hit = readFileSync(join(root, path), 'utf8').match(machine)
      return hit ? [`${path}: ${hit[0]}`] : []
    })
    expect(found).toEqual([])
    expect(machine.test(`cd ${'/ho'}me/somebody/fence`)).toBe(true)
    expect(machine.test('https://example.org/work/paper and src/work/it.ts')).toBe(false)
  })
})

function filesIn(folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true })
    .filter((it) => !notOurs.has(it.name))
    .flatMap((it) => {
      const path = folder === '' ? it.name : `${folder}/${it.name}`
      return it.isDirectory() ? filesIn(path) : [path]
    })
}

function parse(path: string, text: string): ts.SourceFile {
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS
  return ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, kind)
}

function read(path: string): ts.SourceFile {
  return parse(path, readFileSync(join(root, path), 'utf8'))
}

function lines(path: string): number {
  return readFileSync(join(root, path), 'utf8').trimEnd().split('\n').length
}

/** What is imported, as written, in order. */
function importsIn(file: ts.SourceFile): string[] {
  const found: string[] = []
  walk(file, (node) => {
    const named = importedBy(node)
    if (named && ts.isStringLiteralLike(named)) found.push(named.text)
  })
  return found
}

function importedBy(node: ts.Node): ts.Node | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return node.moduleSpecifier
  if (ts.isImportTypeNode(node)) return ts.isLiteralTypeNode(node.argument) ? node.argument.literal : undefined
  if (!ts.isCallExpression(node)) return undefined
  const isImport = node.expression.kind === ts.SyntaxKind.ImportKeyword
  const isRequire = ts.isIdentifier(node.expression) && node.expression.text === 'require'
  return isImport || isRequire ? node.arguments[0] : undefined
}

/** The imports of these files that the rule forbids. Files are given from the top of the repository, packages by name. */
function breaches(files: readonly string[], forbidden: (to: string) => boolean): string[] {
  return files.flatMap((path) =>
    importsIn(read(path))
      .map((to) => (to.startsWith('.') ? relative(root, join(root, dirname(path), to)) : to))
      .filter(forbidden)
      .map((to) => `${path} imports ${to}`),
  )
}

/** `src/http --> src/store`, each once. The files that stand in no folder hold the folders together, and are left out; to `src` the engine is one. */
function importsBetweenFolders(): string[] {
  const folder = (path: string): string | undefined => /^(?:engine|src)\/[^/]+(?=\/)/.exec(path)?.[0]
  const lines = [...engine, ...src].flatMap((path) => {
    const from = folder(path)
    return importsIn(read(path)).flatMap((written) => {
      const to = written.startsWith('.') ? relative(root, join(root, dirname(path), written)) : ''
      const into = from?.startsWith('src/') && to.startsWith('engine/') ? 'engine' : folder(to)
      return from && into && from !== into ? [`${from} --> ${into}`] : []
    })
  })
  return [...new Set(lines)].sort()
}

const world = new Set([
  'Date',
  'performance',
  'process',
  'fetch',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'queueMicrotask',
  'globalThis',
  'window',
  'document',
  'crypto',
  'require',
  'Intl',
  'console',
  'navigator',
  'WebSocket',
  'XMLHttpRequest',
])

/** Names by which code would reach the world outside: clocks, chance, files, the network, the machine's habits. */
function worldly(file: ts.SourceFile): string[] {
  const found: string[] = []
  walk(file, (node) => {
    if (!ts.isIdentifier(node) || isOnlyAName(node)) return
    if (world.has(node.text)) found.push(node.text)
    if (node.text !== 'Math') return
    const { parent } = node
    if (!ts.isPropertyAccessExpression(parent)) found.push('Math')
    else if (parent.name.text === 'random') found.push('Math.random')
  })
  return found
}

// `it.process`, `{ process: 1 }` and `interface X { process: … }` name a field, and do not reach for the thing itself.
function isOnlyAName(node: ts.Identifier): boolean {
  const { parent } = node
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node
  if (ts.isQualifiedName(parent)) return parent.right === node
  if (ts.isBindingElement(parent)) return parent.propertyName === node
  return (
    (ts.isPropertyAssignment(parent) ||
      ts.isPropertySignature(parent) ||
      ts.isPropertyDeclaration(parent) ||
      ts.isMethodDeclaration(parent) ||
      ts.isMethodSignature(parent)) &&
    parent.name === node
  )
}

/** Names by which a text would be run. */
function madeOfText(file: ts.SourceFile): string[] {
  const found: string[] = []
  walk(file, (node) => {
    if (ts.isIdentifier(node) && /^(eval|Function)$/.test(node.text) && !isOnlyAName(node)) found.push(node.text)
    if (!ts.isCallExpression(node) || !ts.isIdentifier(node.expression)) return
    const [first] = node.arguments
    if (/^set(Timeout|Interval)$/.test(node.expression.text) && first && ts.isStringLiteralLike(first))
      found.push(node.expression.text)
  })
  return found
}

/** What is hashed by, as it is written. */
function hashesIn(file: ts.SourceFile): string[] {
  const found: string[] = []
  walk(file, (node) => {
    if (!ts.isCallExpression(node) || !/^create(Hash|Hmac)$/.test(node.expression.getText(file))) return
    found.push(node.arguments[0]?.getText(file) ?? '')
  })
  return found
}

/** Tests that would not run, or would keep others from running. */
function sidelined(file: ts.SourceFile): string[] {
  const found: string[] = []
  walk(file, (node) => {
    if (ts.isPropertyAccessExpression(node) && /^(only|skip|todo|fails|skipIf|runIf)$/.test(node.name.text)) {
      const said = node.getText(file)
      if (/^(it|test|describe|suite|bench|browserTest)\b/.test(said)) found.push(said)
    }
    if (
      ts.isCallExpression(node) &&
      ts.isIdentifier(node.expression) &&
      /^(xit|xtest|xdescribe|fit|fdescribe)$/.test(node.expression.text)
    ) {
      found.push(node.expression.text)
    }
  })
  return found
}

function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node)
  ts.forEachChild(node, (child) => walk(child, visit))
}

function some(node: ts.Node, is: (node: ts.Node) => boolean): boolean {
  return is(node) || (ts.forEachChild(node, (child) => some(child, is) || undefined) ?? false)
}
