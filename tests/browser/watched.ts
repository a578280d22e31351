// A page that is watched from its first moment: what moved on it by itself, what its policy forbade, what it asked of other hosts, what it announced.
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'

interface Seen {
  moved: string[]
  told: string[]
}

export interface Watched {
  readonly page: Page
  /** What the content policy had to stop; nothing, where the page keeps to it. */
  readonly forbidden: readonly string[]
  /** Addresses of other hosts that were asked. */
  readonly elsewhere: readonly string[]
  /** What moved without a finger since the last look at it. */
  moved(): Promise<string[]>
  /** What the live regions said since the last look at them, in order; what is the same twice was said twice. */
  told(): Promise<string[]>
}

export async function watched(browser: Browser, options: BrowserContextOptions = {}): Promise<Watched> {
  const context = await browser.newContext(options)
  context.setDefaultTimeout(10_000)
  const forbidden: string[] = []
  const elsewhere: string[] = []
  await context.exposeBinding('wasForbidden', (_, what: string) => forbidden.push(what))
  await context.addInitScript(watch)
  const page = await context.newPage()
  page.on('request', (it) => {
    const { protocol, hostname } = new URL(it.url())
    if (!['blob:', 'data:', 'about:'].includes(protocol) && hostname !== '127.0.0.1') elsewhere.push(it.url())
  })
  const since = async (what: keyof Seen): Promise<string[]> => {
    // Shifts are told a picture later.
    await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => setTimeout(resolve, 50))))
    return page.evaluate((what) => {
      const { seen } = window as unknown as { seen: Seen }
      return seen[what].splice(0)
    }, what)
  }
  return { page, forbidden, elsewhere, moved: () => since('moved'), told: () => since('told') }
}

function watch(): void {
  const seen: Seen = { moved: [], told: [] }
  Object.assign(window, { seen })
  document.addEventListener('securitypolicyviolation', (it) => {
    ;(window as unknown as { wasForbidden(what: string): void }).wasForbidden(
      `${it.violatedDirective} ${it.blockedURI}`,
    )
  })
  type Shift = PerformanceEntry & {
    value: number
    sources: { node: Node | null; previousRect: DOMRect; currentRect: DOMRect }[]
  }
  new PerformanceObserver((list) => {
    for (const it of list.getEntries() as Shift[]) {
      // The line to write on grows with what the person types, and only that moves it.
      if (it.sources.every(({ node }) => (node instanceof Element ? node : node?.parentElement)?.closest('#ask')))
        continue
      const what = it.sources.map(
        ({ node, previousRect: was, currentRect: is }) =>
          `${node instanceof Element ? node.className || node.id : node?.textContent} ${[was.x, was.y, was.width].map(Math.round).join(' ')} → ${[is.x, is.y, is.width].map(Math.round).join(' ')}`,
      )
      seen.moved.push(`${it.value.toFixed(4)} ${what.join(', ')}`)
    }
  }).observe({ type: 'layout-shift', buffered: true })
  document.addEventListener('DOMContentLoaded', () => {
    for (const live of document.querySelectorAll('[aria-live], [role="status"], [role="alert"]'))
      new MutationObserver(() => {
        const says = live.textContent?.trim() ?? ''
        if (says !== '' && !(live as HTMLElement).hidden) seen.told.push(says)
      }).observe(live, { childList: true, subtree: true, characterData: true })
  })
}
