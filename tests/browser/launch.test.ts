// That the browser tests run in a real browser, and not in an imitation of one.
import { expect } from 'vitest'
import { browserTest } from './browser-test.ts'

browserTest('a real Chromium opens a page, runs its script and lays out its text', async ({ browser, page }) => {
  console.log(`Browser tests run in Chromium ${browser.version()}.`)
  await page.goto(
    'data:text/html,<title>Front run</title><p style="display:inline-block">Eight bays</p><script>document.title += ", bay " + (1 + 1)</script>',
  )
  expect(await page.title()).toBe('Front run, bay 2')
  const box = await page.getByText('Eight bays').boundingBox()
  expect(box?.width).toBeGreaterThan(20)
  expect(browser.version()).toMatch(/^\d+\.\d+\.\d+\.\d+$/)
})

browserTest('a screenshot is a PNG picture of the size of the window', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 })
  await page.goto('data:text/html,<title>Bay</title><body style="background:%23284">')
  const picture = await page.screenshot()
  // A PNG begins with eight fixed bytes; width and height stand in bytes 16 to 23.
  expect(picture.subarray(1, 4).toString('latin1')).toBe('PNG')
  expect(picture.readUInt32BE(16)).toBe(390)
  expect(picture.readUInt32BE(20)).toBe(844)
})
