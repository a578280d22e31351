// This file is about sharing a talk: a link that nobody can guess, by which it can be read and nothing else.
import { createHash, randomBytes, timingSafeEqual } from 'node:crypto'
import type { Hono } from 'hono'
import type { Store } from '../store/store.ts'
import { sharedTalk } from '../web/shared.tsx'
import { failed, noConversation } from './errors.ts'

/** Kept as a hash, so that whoever reads the database still holds no link. */
const hashOf = (token: string): string => createHash('sha256').update(token).digest('base64url')

export function addSharing(app: Hono, store: Store, renderReply: (markdown: string) => string): void {
  app.post('/api/conversations/:id/share', async (c) => {
    const id = c.req.param('id')
    const token = randomBytes(32).toString('base64url')
    return (await store.share(id, hashOf(token)))
      ? c.json({ link: `/shared/${id}.${token}` }, 201)
      : noConversation(c, id)
  })
  app.delete('/api/conversations/:id/share', async (c) => {
    const id = c.req.param('id')
    return (await store.share(id, null)) ? c.body(null, 204) : noConversation(c, id)
  })

  app.get('/shared/:link', async (c) => {
    const [, id = '', token = ''] = /^(.{1,100})\.([\w-]{43})$/.exec(c.req.param('link')) ?? []
    const kept = id === '' ? null : await store.sharedBy(id)
    const isShared = kept !== null && timingSafeEqual(Buffer.from(kept), Buffer.from(hashOf(token)))
    const found = isShared ? await store.read(id) : null
    if (!found)
      return failed(
        c,
        404,
        'not-shared',
        'Nothing is shared under this link. It may have been withdrawn; ask for a new one.',
      )
    const turns = found.turns.map(({ said, answer }) => ({
      said,
      html: renderReply(answer.reply),
      sketches: answer.calls.flatMap(({ title, drawing }) => (drawing === null ? [] : [{ title, svg: drawing }])),
    }))
    c.header('X-Robots-Tag', 'noindex')
    return c.html(sharedTalk({ title: found.conversation.title, turns }))
  })
}
