// This file is about serving the page: its frame, its script, its style and its mark, all from this server.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { createHash } from 'node:crypto'
import { type Context, Hono } from 'hono'
import type { Answer } from '../answer.ts'
import type { Evidence } from '../evidence.ts'
import { evidencePage } from './evidence.tsx'
import { inHtml } from './in-html.ts'
import { mark } from './mark.ts'
import { renderReply } from './markdown.ts'
import { Page } from './page.tsx'

const kinds = { 'page.js': 'text/javascript; charset=utf-8', 'page.css': 'text/css; charset=utf-8' } as const

/** An entry that was asked and worked, to be shown on a page that is still blank. */
export interface Example {
  readonly said: string
  readonly answer: Answer
}

interface Printed {
  /** Where the built script and style lie. */
  readonly assets: string
  readonly example: () => Promise<Example>
  readonly front: 'offline' | 'model'
  /** Several share the server, and each has pages of their own. */
  readonly asksWho?: boolean
  /** What the sums were held against, where the report was made. */
  readonly evidence?: () => Evidence | undefined
}

export function createPage({ assets, example, front, asksWho = false, evidence }: Printed): Hono {
  const app = new Hono()
  app.get('/', (c) => {
    c.header('Cache-Control', 'no-cache')
    return c.html(`<!doctype html>${String(<Page front={front} asksWho={asksWho} />)}`)
  })
  for (const [name, type] of Object.entries(kinds)) {
    const body = readFileSync(join(assets, name))
    const tag = tagOf(body)
    app.get(`/web/${name}`, (c) => cached(c, body, type, tag))
  }
  let worked: Promise<Example> | undefined
  app.get('/web/example.json', async (c) => {
    worked ??= example()
    const { said, answer } = await worked
    return c.json({ said, answer: { ...answer, html: inHtml(answer, renderReply) } })
  })
  app.get('/evidence', (c) => {
    c.header('Cache-Control', 'no-cache')
    return c.html(evidencePage(evidence?.()))
  })
  app.get('/web/mark.svg', (c) => cached(c, Buffer.from(mark), 'image/svg+xml', tagOf(mark)))
  return app
}

const tagOf = (body: string | Buffer): string =>
  `"${createHash('sha256').update(body).digest('base64url').slice(0, 16)}"`

/** Asked for anew each time, and sent only when it changed. */
function cached(c: Context, body: Buffer, type: string, tag: string): Response {
  c.header('ETag', tag)
  c.header('Cache-Control', 'no-cache')
  if (c.req.header('if-none-match') === tag) return c.body(null, 304)
  c.header('Content-Type', type)
  return c.body(new Uint8Array(body))
}
