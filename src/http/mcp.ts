// This file is about MCP among the routes: it comes through the same doors, and sees the talks of whoever asks.
import type { Hono } from 'hono'
import { answerMcp } from '../mcp/over-http.ts'
import type { Talks } from '../mcp/resources.ts'
import type { Store } from '../store/store.ts'
import type { Visitor } from './owners.ts'

export const addMcp = (app: Hono, store: Store): void =>
  void app.post('/mcp', (c) => answerMcp(c.req.raw, talksOf(c.get('visitor'), store)))

function talksOf(visitor: Visitor, store: Store): Talks {
  if (visitor === 'everybody') return store
  if (visitor === 'newcomer') return { list: async () => [], read: async () => null }
  const { owner } = visitor
  return {
    list: () => store.list(owner),
    read: async (id) => ((await store.isOf(id, owner)) ? store.read(id) : null),
  }
}
