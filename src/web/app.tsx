// This file is about serving the page: its frame, its script, its style and its mark, all from this server.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { createHash } from 'node:crypto'
import { type Context, Hono } from 'hono'
import { mark } from './mark.ts'
import { Page } from './page.tsx'

const kinds = { 'page.js': 'text/javascript; charset=utf-8', 'page.css': 'text/css; charset=utf-8' } as const

export function createPage(assets: string): Hono {
  const app = new Hono()
  app.get('/', (c) => {
    c.header('Cache-Control', 'no-cache')
    return c.html(`<!doctype html>${String(<Page />)}`)
  })
  for (const [name, type] of Object.entries(kinds)) {
    const body = readFileSync(join(assets, name))
    const tag = tagOf(body)
    app.get(`/web/${name}`, (c) => cached(c, body, type, tag))
  }
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
