// The real server with its page, in memory, for the tests with a browser: answers can be held back, streams cut, readers changed.
import { mkdtempSync, rmSync } from 'node:fs'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { serve, type ServerType } from '@hono/node-server'
import axe from 'axe-core'
import type { Page } from 'playwright-core'
import { bundle } from '../../.ci/build.mjs'
import { picketSpacing } from '../../engine/calculations/pickets/picket-spacing.ts'
import { type Assistant, createAssistant } from '../../src/assistant.ts'
import type { Evidence } from '../../src/evidence.ts'
import { createApp } from '../../src/http/app.ts'
import { offlineReader } from '../../src/readers/offline/offline.ts'
import { openStore } from '../../src/store/open.ts'
import type { Store } from '../../src/store/store.ts'
import { createPage } from '../../src/web/app.tsx'
import { workedExample } from '../../src/web/example.ts'
import { renderReply } from '../../src/web/markdown.ts'

export const bags =
  'How many 60 lb bags, 0.45 ft3 each, for eleven corner and gate posts, 10 in holes 30 in deep, 6 in of gravel in the bottom?'

/** A report as long in its lines as the real one, of one calculation. 93 − 16 × 3 1/2 = 37, shared by 17 gaps. */
const reportOfOne: Evidence = {
  version: 'test',
  mutation: {},
  calculations: [
    {
      name: picketSpacing.name,
      title: picketSpacing.title,
      formulas: [
        {
          formula: 'pickets = ceil((opening - widestGap) / (picketWidth + widestGap))',
          because: 'the fewest that keep every gap within your limit',
        },
      ],
      checks: [
        {
          what: 'gap in a 93 in opening',
          kind: 'second derivation',
          source: '93 − 16 × 3 1/2, shared by 17 gaps',
          unit: 'in',
          expected: 37 / 17,
          got: 37 / 17,
          tolerance: 0,
          pass: true,
        },
      ],
      sourced: [],
      habit: [{ fact: 'the finest mark on a common tape', from: 'common practice, no source' }],
      memory: [],
    },
  ],
  explained: {},
}

export interface Served {
  readonly address: string
  readonly store: Store
  /** Where the page's script and style were built. */
  readonly built: string
  /** Whoever answers now; a test may put another in. */
  assistant: Assistant
  /** How many of the next streams are cut after their first piece. */
  cuts: number
  close(): Promise<void>
}

/** With a secret it asks who comes, as a server does that several share. */
export async function serveThePage(secret?: string): Promise<Served> {
  const built = mkdtempSync(join(tmpdir(), 'plumbpost-page-'))
  await bundle(process.cwd(), built)
  const store = await openStore({ memory: true })
  const app = createApp({
    assistant: { turn: (...asked) => served.assistant.turn(...asked) },
    store,
    version: 'test',
    front: 'offline',
    renderReply,
    host: '127.0.0.1',
    secret,
    page: createPage({
      assets: join(built, 'web'),
      example: workedExample,
      front: 'offline',
      asksWho: secret !== undefined,
      evidence: () => reportOfOne,
    }),
  })
  const server: ServerType = serve({
    port: 0,
    hostname: '127.0.0.1',
    fetch: async (request) => {
      const response = await app.fetch(request)
      if (served.cuts === 0 || !response.headers.get('content-type')?.includes('event-stream')) return response
      served.cuts--
      const reader = (response.body as ReadableStream<Uint8Array>).getReader()
      const { value } = await reader.read()
      return new Response(new Blob([value as BlobPart]), { headers: response.headers })
    },
  })
  await new Promise((resolve) => server.once('listening', resolve))
  const served: Served = {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    store,
    built,
    assistant: createAssistant(offlineReader),
    cuts: 0,
    async close() {
      server.close()
      await store.close()
      rmSync(built, { recursive: true, force: true })
    },
  }
  return served
}

/** The entry of that number, as it stands on the page that lies open. */
export const entry = (page: Page, number: number) => page.locator(`#entries > [data-number="${number}"]`)

/** Asks, and waits until the entry is whole. */
export async function ask(page: Page, text: string): Promise<void> {
  const entries = await page.locator('#entries > .entry').count()
  await page.getByLabel('Ask about your fence').fill(text)
  await page.getByLabel('Ask about your fence').press('Enter')
  await whole(page, entries + 1)
}
export const whole = (page: Page, number: number): Promise<void> =>
  page.locator(`#entries > [data-number="${number}"][aria-busy="false"]`).waitFor({ timeout: 10_000 })

/** Lets every answer be worked, and holds it back until the gate is opened. */
export function holdAnswers(served: Served): { open: () => void } {
  const real = createAssistant(offlineReader)
  const gate = { open: () => {} }
  const opened = new Promise<void>((resolve) => {
    gate.open = resolve
  })
  served.assistant = {
    turn: async (...asked) => {
      const answered = await real.turn(...asked)
      await opened
      return answered
    },
  }
  return gate
}

export const fitsAcross = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth)

/** Everything that can be pressed and is smaller than a gloved fingertip: 48 px. */
export const tooSmall = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('a, button, input, select, textarea, summary')]
      .filter((it) => it.checkVisibility({ visibilityProperty: true }) && !it.classList.contains('skip'))
      .map((it) => ({ it, box: it.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.height < 48 || box.width < 48))
      .map(
        ({ it, box }) =>
          `${it.className || it.id || it.localName} “${it.textContent?.slice(0, 20)}” ${Math.round(box.width)} × ${Math.round(box.height)}`,
      ),
  )

interface Finding {
  readonly id: string
  readonly nodes: readonly { readonly target: readonly string[]; readonly failureSummary?: string }[]
}

/** What axe finds against WCAG 2.2 A and AA, and against good practice. The policy of the page lets no script in but its own: axe goes past it. */
export async function withAxe(page: Page): Promise<string[]> {
  // What unfolds is seen through for a moment: colours are looked at when it is there.
  await page.evaluate(() => {
    for (const it of document.getAnimations()) it.finish()
  })
  const session = await page.context().newCDPSession(page)
  await session.send('Runtime.evaluate', { expression: axe.source })
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']
  const { result } = await session.send('Runtime.evaluate', {
    expression: `axe.run({ runOnly: ${JSON.stringify(tags)} }).then((it) => JSON.stringify(it.violations))`,
    awaitPromise: true,
    returnByValue: true,
  })
  return (JSON.parse(String(result.value)) as Finding[]).map(
    (it) => `${it.id}: ${it.nodes.map((n) => `${n.target} ${n.failureSummary?.slice(0, 160)}`).join(', ')}`,
  )
}
