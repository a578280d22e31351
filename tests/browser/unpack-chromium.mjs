// Unpacks the packaged Chromium into TMPDIR and ends. A program of its own, because the package takes its folder
// from the environment and changes the environment of whoever imports it.
import chromium from '@sparticuz/chromium'

await chromium.executablePath()
