// This file is about the engine as a package of its own entry: plain modules with their types, one file for one file, so that
// a bundler takes only what is used; and a page that lists what may be imported.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import ts from 'typescript'

/** Writes the engine's modules, types and API page into the folder. Throws when something does not compile. */
export function makeLibrary(root, into) {
  const { config } = ts.readConfigFile(join(root, '.config/library.json'), ts.sys.readFile)
  const { options, fileNames } = ts.parseJsonConfigFileContent(config, ts.sys, join(root, '.config'))
  const program = ts.createProgram(fileNames, { ...options, outDir: into })
  const declarations = new Map()
  const files = new Map()
  const { diagnostics } = program.emit(undefined, (path, text, _mark, _fault, [source]) => {
    files.set(path, text)
    if (path.endsWith('.d.ts')) declarations.set(source.fileName, text)
  })
  const faults = [...ts.getPreEmitDiagnostics(program), ...diagnostics]
  if (faults.length > 0)
    throw new Error(
      ts.formatDiagnostics(faults, {
        getCanonicalFileName: (it) => it,
        getCurrentDirectory: () => root,
        getNewLine: () => '\n',
      }),
    )
  files.set(join(into, 'API.md'), apiPage(root, program, declarations))
  // What was there of a file that has gone must not be packed.
  rmSync(into, { recursive: true, force: true })
  for (const [path, text] of files) {
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(path, text)
  }
}

/** Every name of engine/index.ts as it is declared, and every calculation with the path it is imported by. */
function apiPage(root, program, declarations) {
  const checker = program.getTypeChecker()
  const exported = (path) => {
    const file = program.getSourceFile(path)
    return checker.getExportsOfModule(checker.getSymbolAtLocation(file)).map((it) => ({
      name: it.name,
      symbol: it.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(it) : it,
    }))
  }
  const names = exported(join(root, 'engine/index.ts')).map(({ name, symbol }) => {
    const from = symbol.declarations[0].getSourceFile().fileName
    const text = declared(declarations.get(from), symbol.name)
    if (!text) throw new Error(`engine/index.ts exports “${name}”, whose declaration is not found in ${from}`)
    if (symbol.getDocumentationComment(checker).length === 0)
      throw new Error(`“${name}” is exported by engine/index.ts and has no line that says what it is: ${from}`)
    return `### ${name}\n\n\`\`\`ts\n${text}\n\`\`\`\n`
  })
  const calculations = program
    .getSourceFiles()
    .map((it) => it.fileName)
    .filter((path) => path.startsWith(join(root, 'engine/calculations/')))
    .flatMap((path) => exported(path).map(({ name }) => ({ name, path: relative(join(root, 'engine'), path) })))
    .sort((a, b) => (a.path < b.path ? -1 : 1))
    .map(({ name, path }) => `import { ${name} } from 'plumbpost/engine/${path.replace(/\.ts$/, '')}'`)
  return [
    '# plumbpost/engine\n\nMade from the sources. README.md shows how it is used.\n',
    '## What may be imported from plumbpost/engine\n',
    ...names,
    '## Each calculation by itself\n\n```ts',
    ...calculations,
    '```\n',
  ].join('\n')
}

/** The statement of a declaration file that declares the name, with what is said above it. */
function declared(text, name) {
  const file = ts.createSourceFile('x.d.ts', text, ts.ScriptTarget.Latest, true)
  const found = file.statements.find((it) =>
    ts.isVariableStatement(it)
      ? it.declarationList.declarations.some((one) => one.name.getText(file) === name)
      : it.name?.text === name,
  )
  return found?.getFullText(file).trim()
}
