// This file is about the build: the sources bundled into dist/, so that a start reads a handful of files.
import { mkdirSync, renameSync, writeFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { build } from 'esbuild'

// Native code cannot be bundled: libsql stays in node_modules. pg asks for pg-native if it is there; it never is.
// What writes files to take along, and what other programs' protocol needs, is read when it is first asked for: in the bundle it would be read at every start.
const writers = ['pdfkit', 'svg-to-pdfkit', 'ics', 'csv-stringify']
// The solver finds its WebAssembly beside itself, and is read when the first plan is asked for.
const leftOutside = [...writers, '@modelcontextprotocol/sdk', 'highs', 'libsql', 'pg-native']

const programs = {
  server: 'src/main.ts',
  ask: 'src/cli/ask.ts',
  audit: 'src/cli/audit.ts',
  backup: 'src/cli/backup.ts',
  restore: 'src/cli/restore.ts',
  evidence: 'src/cli/evidence.ts',
  mcp: 'src/cli/mcp.ts',
  plumbpost: 'src/cli/plumbpost.ts',
}

// Some packages are still CommonJS and call `require`, which an ES module has not got.
const requireForCommonJs =
  "import { createRequire as createRequireForBundle } from 'node:module'; const require = createRequireForBundle(import.meta.url);"

/** Writes everything into the folder and names what it wrote. Throws when an entry is missing or does not compile. */
export async function bundle(root, into) {
  const common = {
    absWorkingDir: root,
    bundle: true,
    write: false,
    sourcemap: true,
    logLevel: 'error',
    format: 'esm',
  }
  const built = await Promise.all([
    build({
      ...common,
      entryPoints: programs,
      outdir: into,
      outExtension: { '.js': '.mjs' },
      platform: 'node',
      target: 'node20',
      external: leftOutside,
      banner: { js: requireForCommonJs },
    }),
    build({
      ...common,
      entryPoints: { page: 'src/web/page/main.ts' },
      outdir: join(into, 'web'),
      platform: 'browser',
      target: 'es2022',
      minify: true,
    }),
    build({
      ...common,
      entryPoints: { page: 'src/web/page/page.css' },
      outdir: join(into, 'web'),
      minify: true,
    }),
  ])
  const files = built.flatMap((it) => it.outputFiles)
  for (const file of files) put(file)
  return files.map((file) => relative(into, file.path))
}

/** One program by itself, its packages left outside: what is measured is our code as it ships. */
export async function bundleOne(root, source, into) {
  const { outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: [source],
    outfile: into,
    bundle: true,
    write: false,
    packages: 'external',
    format: 'esm',
    platform: 'node',
    target: 'node20',
    logLevel: 'error',
  })
  for (const file of outputFiles) put(file)
}

// Written beside its place and moved there, so that a program that is starting never reads half a file.
function put({ path, contents }) {
  mkdirSync(dirname(path), { recursive: true })
  const beside = `${path}.${process.pid}`
  writeFileSync(beside, contents)
  renameSync(beside, path)
}
