// A real Chromium for the tests: the packaged one where it runs, else one that is installed.
import { execFile } from 'node:child_process'
import { chmodSync, existsSync, mkdtempSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { promisify } from 'node:util'
import { type Browser, chromium, type LaunchOptions } from 'playwright-core'

/**
 * Opens a browser, or throws with every way that was tried. Whoever opens it closes it.
 * @public
 */
export async function openBrowser(): Promise<Browser> {
  const found = await findBrowser()
  if ('none' in found) throw new Error(found.none)
  return found.browser
}

export type Found = { readonly browser: Browser } | { readonly none: string }

export async function findBrowser(): Promise<Found> {
  const named = process.env.PLUMBPOST_CHROME
  // A browser that was asked for by name and does not start is a fault, not a reason to take another.
  if (named) return { browser: await launch({ executablePath: named }) }
  const tried: string[] = []
  for (const [what, open] of ways()) {
    try {
      return { browser: await open() }
    } catch (fault) {
      tried.push(`  ${what}: ${fault instanceof Error ? fault.message.split('\n')[0] : String(fault)}`)
    }
  }
  return {
    none: `No browser could be started. Name one in PLUMBPOST_CHROME. Tried:\n${tried.join('\n')}`,
  }
}

function ways(): [string, () => Promise<Browser>][] {
  const packaged: [string, () => Promise<Browser>][] =
    process.platform === 'linux' && process.arch === 'x64' ? [['the packaged Chromium', openPackaged]] : []
  const installed = installedAt.filter((path) => existsSync(path))
  return [
    ...packaged,
    ...installed.map((path): [string, () => Promise<Browser>] => [path, () => launch({ executablePath: path })]),
    ['an installed Chrome', () => launch({ channel: 'chrome' })],
  ]
}

const installedAt = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/snap/bin/chromium',
  '/usr/bin/google-chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
]

// The sandbox of Chromium does not start as root nor in most containers. The pages here are our own.
const launch = (options: LaunchOptions): Promise<Browser> => chromium.launch({ chromiumSandbox: false, ...options })

async function openPackaged(): Promise<Browser> {
  const folder = await unpacked()
  const executablePath = join(folder, 'chromium')
  const env = { ...process.env, FONTCONFIG_FILE: join(folder, 'fonts.conf') }
  try {
    return await launch({ executablePath, env })
  } catch {
    // A bare machine lacks four system libraries. The package brings them, for want of better.
    const libraries = [join(folder, 'al2023', 'lib'), process.env.LD_LIBRARY_PATH].filter(Boolean).join(':')
    return await launch({
      executablePath,
      env: { ...env, LD_LIBRARY_PATH: libraries },
    })
  }
}

// Unpacking takes seconds and 200 MB, so it is done once for a version. It is done aside and moved into place whole:
// two test files may want it at once, and a run that was broken off must not leave half a browser behind.
async function unpacked(): Promise<string> {
  const place = join(tmpdir(), `plumbpost-chromium-${packagedVersion()}-${process.getuid?.() ?? 'user'}`)
  if (existsSync(place)) return place
  const aside = mkdtempSync(join(tmpdir(), 'plumbpost-chromium-'))
  try {
    await promisify(execFile)(process.execPath, [join('tests', 'browser', 'unpack-chromium.mjs')], {
      // The runtime's name makes the package unpack its spare system libraries too.
      env: {
        ...process.env,
        TMPDIR: aside,
        AWS_LAMBDA_JS_RUNTIME: 'nodejs20.x',
      },
    })
    chmodSync(join(aside, 'chromium'), 0o755)
    writeFileSync(join(aside, 'fonts.conf'), fontSettings(place))
    renameSync(aside, place)
  } catch (fault) {
    rmSync(aside, { recursive: true, force: true })
    if (!existsSync(place)) throw fault
  }
  return place
}

function packagedVersion(): string {
  const require = createRequire(import.meta.url)
  const within = dirname(require.resolve('@sparticuz/chromium'))
  return (require(join(within, '..', '..', 'package.json')) as { version: string }).version
}

// The machine's own fonts where it has any, and the packaged one where it has none: text without a font has no width.
const fontSettings = (folder: string): string => `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <include ignore_missing="yes">/etc/fonts/fonts.conf</include>
  <dir>${folder}/fonts</dir>
  <cachedir>${folder}/fonts-cache</cachedir>
</fontconfig>
`
