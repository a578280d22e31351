// A test with a browser. Where none can be had the test is skipped, by name and with the reason.
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { type Found, findBrowser } from './chromium.ts'
import { type Watched, watched } from './watched.ts'

export const browserTest = test.extend<{
  browser: Browser
  /** Opens a watched page. After the test none may have broken the content policy or asked another host. */
  open: (options?: BrowserContextOptions) => Promise<Watched>
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
  open: async ({ browser }, use) => {
    const opened: Watched[] = []
    await use(async (options) => {
      const one = await watched(browser, options)
      opened.push(one)
      return one
    })
    for (const { page } of opened) await page.context().close()
    expect(
      opened.flatMap((it) => it.forbidden),
      'what the content policy had to stop',
    ).toEqual([])
    expect(
      opened.flatMap((it) => it.elsewhere),
      'other hosts that were asked',
    ).toEqual([])
  },
  page: async ({ open }, use) => {
    await use((await open()).page)
  },
})
