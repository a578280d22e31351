// This file is about making the program ready to run: packages installed, sources built, and neither done twice.
// Nothing here needs a package, and nothing is written to standard output: that belongs to the program.
import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { basename, join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('..', import.meta.url))
const inRoot = (...parts) => join(root, ...parts)
const dist = inRoot('dist')
const stamp = join(dist, '.built.json')
const turnstile = join(dist, '.preparing')

export const say = (text) => void process.stderr.write(`${text}\n`)

/** Packages and build, as far as they are missing. Returns at once when all is there. */
export async function prepare() {
  if (!newEnough()) throw new Unready(`Plumbpost needs Node 20 or newer. This is Node ${process.versions.node}.`)
  if (isInstalled() && isBuilt()) return
  await oneAtATime(async () => {
    await install()
    await build()
  })
}

export async function prepareInstall() {
  if (!newEnough()) throw new Unready(`Plumbpost needs Node 20 or newer. This is Node ${process.versions.node}.`)
  if (!isInstalled()) await oneAtATime(install)
}

/** Prepares, then becomes the built program: same process, so arguments, signals, input and exit code are its own. */
export async function become(program) {
  try {
    await prepare()
  } catch (fault) {
    end(fault)
  }
  await import(new URL(`../dist/${program}.mjs`, import.meta.url).href)
}

/** Prepares, builds one program of the tests, and becomes it: a report, a benchmark. Some start the built server. */
export async function becomeReport(name, source) {
  try {
    await prepare()
    const { bundleOne } = await import('./build.mjs')
    await bundleOne(root, source, join(dist, `${name}-report.mjs`))
  } catch (fault) {
    end(fault)
  }
  await import(new URL(`../dist/${name}-report.mjs`, import.meta.url).href)
}

/** What went wrong in getting ready, in words for whoever typed the command. */
class Unready extends Error {}

export function end(fault) {
  tell(fault)
  process.exit(1)
}

export const tell = (fault) => say(fault instanceof Unready ? fault.message : (fault?.stack ?? String(fault)))

const newEnough = () => Number(process.versions.node.split('.')[0]) >= 20

// npm writes what it has put in place into node_modules/.package-lock.json when it is done, and only then.
// An interrupted install leaves none. So that file is the stamp.
function isInstalled() {
  const wanted = readPackages(inRoot('package-lock.json'))
  const got = readPackages(inRoot('node_modules', '.package-lock.json'))
  if (!wanted || !got) return false
  return Object.entries(wanted).every(([where, it]) => {
    if (where === '') return true
    const here = got[where]
    // Packages for other machines are optional and rightly absent.
    if (!here) return it.optional === true
    return here.version === it.version && here.integrity === it.integrity
  })
}

function readPackages(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages
  } catch {
    return undefined
  }
}

async function install() {
  if (isInstalled()) return
  say(
    existsSync(inRoot('node_modules'))
      ? 'The packages here are not those that this version needs. Fetching them.'
      : 'First run: fetching the packages that Plumbpost is built from. This takes a minute, once.',
  )
  const start = Date.now()
  // Building needs the development packages too, whatever NODE_ENV says.
  const { code, said } = await npm(['ci', '--include=dev', '--include=optional', '--prefer-offline', ...soonTold])
  if (code !== 0) throw new Unready(whyNotInstalled(said))
  if (!isInstalled())
    throw new Unready('npm finished, but the packages are still not those in package-lock.json. Try: npm ci')
  say(`Packages are in place (${seconds(start)}).`)
}

// npm would try for minutes before it says that there is no network.
const soonTold = ['--loglevel=error', '--fetch-retry-mintimeout=2000', '--fetch-retry-maxtimeout=8000']

function whyNotInstalled(said) {
  if (
    /ENOTFOUND|EAI_AGAIN|ECONNREFUSED|ECONNRESET|ETIMEDOUT|ERR_SOCKET_TIMEOUT|ENETUNREACH|EHOSTUNREACH|ENOTCACHED|EIDLETIMEOUT|ERR_SSL|CERT/.test(
      said,
    )
  ) {
    return 'The packages could not be fetched: the network, or the package registry, cannot be reached from here.\nPlumbpost needs the network for its first run only. Connect, and run the same command again.'
  }
  if (/ENOSPC/.test(said)) return 'The packages could not be written: the disk is full.'
  if (/EACCES|EPERM/.test(said)) return 'The packages could not be written: this account may not write in this folder.'
  return `npm could not install the packages. It said:\n${said}`
}

async function npm(args) {
  // Inside `npm start` and its like, npm says where it is; that is the npm to use.
  const asked = process.env.npm_execpath
  const [command, before] =
    asked && /^npm(-cli)?\.c?js$/.test(basename(asked)) ? [process.execPath, [asked]] : ['npm', []]
  const child = spawn(command, [...before, ...args], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'pipe'],
    shell: command === 'npm' && process.platform === 'win32',
  })
  let said = ''
  for (const stream of [child.stdout, child.stderr]) {
    stream.setEncoding('utf8')
    stream.on('data', (text) => {
      said += text
    })
  }
  return { code: await ended(child), said }
}

/** Waits for a child, handing on the signals that would end us. Gives its exit code. */
export function ended(child) {
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP']
  const hand = (signal) => {
    child.kill(signal)
    child.once('close', () => process.exit(signal === 'SIGINT' ? 130 : signal === 'SIGHUP' ? 129 : 143))
  }
  for (const signal of signals) process.on(signal, hand)
  return new Promise((resolve) => {
    const done = (code) => {
      for (const signal of signals) process.off(signal, hand)
      resolve(code)
    }
    child.once('error', (fault) => {
      say(`${child.spawnfile} could not be started: ${fault.message}`)
      done(127)
    })
    child.once('close', (code) => done(code ?? 1))
  })
}

// A build is as fresh as the list of its sources, each with size and time of change.
function sourcesNow() {
  const hash = createHash('sha256')
  const add = (path) => {
    const it = statSync(inRoot(path), { throwIfNoEntry: false })
    hash.update(it ? `${path} ${it.size} ${it.mtimeMs}\n` : `${path} absent\n`)
  }
  for (const folder of ['engine', 'src']) for (const path of filesIn(folder)) add(path)
  for (const path of ['package.json', 'package-lock.json', 'tsconfig.json', '.ci/build.mjs']) add(path)
  return hash.digest('hex')
}

function filesIn(folder) {
  const entries = readdirSync(inRoot(folder), { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))
  return entries.flatMap((it) => (it.isDirectory() ? filesIn(`${folder}/${it.name}`) : [`${folder}/${it.name}`]))
}

function isBuilt(sources = sourcesNow()) {
  try {
    const last = JSON.parse(readFileSync(stamp, 'utf8'))
    return last.sources === sources && last.outputs.every((file) => existsSync(join(dist, file)))
  } catch {
    return false
  }
}

async function build() {
  const sources = sourcesNow()
  if (isBuilt(sources)) return
  say('Building Plumbpost from its sources.')
  const start = Date.now()
  const { bundle } = await import('./build.mjs')
  const outputs = await bundle(root, dist).catch((fault) => {
    // esbuild has already printed where; its own stack would say nothing more.
    throw new Unready(`The build failed. ${fault instanceof Error ? fault.message : String(fault)}`)
  })
  writeFileSync(stamp, `${JSON.stringify({ sources, outputs }, null, 2)}\n`)
  say(`Built (${seconds(start)}).`)
}

const seconds = (start) => `${((Date.now() - start) / 1000).toFixed(1)} s`

// Two commands started together must not both install or build. The first holds the turnstile; its process number is inside.
async function oneAtATime(work) {
  mkdirSync(dist, { recursive: true })
  let told = false
  for (;;) {
    try {
      writeFileSync(turnstile, String(process.pid), { flag: 'wx' })
      break
    } catch (fault) {
      if (fault.code !== 'EEXIST') throw fault
    }
    if (holderIsGone()) {
      rmSync(turnstile, { force: true })
      continue
    }
    if (!told) say('Another command is getting Plumbpost ready. Waiting for it.')
    told = true
    await new Promise((resolve) => setTimeout(resolve, 200))
  }
  const release = () => rmSync(turnstile, { force: true })
  process.on('exit', release)
  try {
    await work()
  } finally {
    process.off('exit', release)
    release()
  }
}

function holderIsGone() {
  try {
    const holder = Number(readFileSync(turnstile, 'utf8'))
    // Empty: the holder has made the file and not yet written its number.
    if (!holder) return Date.now() - statSync(turnstile).mtimeMs > 10_000
    process.kill(holder, 0)
    return false
  } catch (fault) {
    return fault.code === 'ESRCH' || fault.code === 'ENOENT'
  }
}
