// A test with a browser. Where none can be had the test is skipped, by name and with the reason.
import type { Browser, Page } from 'playwright-core'
import { test } from 'vitest'
import { type Found, findBrowser } from './chromium.ts'

export const browserTest = test.extend<{
  browser: Browser
  page: Page
  found: Found
}>({
  found: [
    // biome-ignore lint/correctness/noEmptyPattern: vitest reads from the pattern what a fixture needs
    async ({}, use) => {
      const found = await findBrowser()
      if ('none' in found) console.warn(`\nBROWSER TESTS ARE SKIPPED. ${found.none}\n`)
      await use(found)
      if ('browser' in found) await found.browser.close()
    },
    { scope: 'file' },
  ],
  browser: async ({ found, skip }, use) => {
    if ('none' in found) return skip(found.none)
    await use(found.browser)
  },
  page: async ({ browser }, use) => {
    const context = await browser.newContext()
    await use(await context.newPage())
    await context.close()
  },
})
