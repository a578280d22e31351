// Files to take along over HTTP: each ending with its type, a name that is safe anywhere, and a plain no where there is nothing.
import { PDFDocument } from 'pdf-lib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { createAssistant } from '../../../src/assistant.ts'
import { createApp } from '../../../src/http/app.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { calendar, spacing } from '../export/turns.ts'

let store: Store
let app: ReturnType<typeof createApp>
beforeAll(async () => {
  store = await openStore({ memory: true })
  const assistant = createAssistant(offlineReader)
  app = createApp({ assistant, store, version: '1', front: 'offline', renderReply: (it) => it, host: '127.0.0.1' })
})
afterAll(() => store.close())

async function talk(...messages: readonly string[]): Promise<(ending: string) => Promise<Response>> {
  const post = (path: string, body: unknown) =>
    app.request(path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    })
  const { id } = (await (await post('/api/conversations', {})).json()) as { id: string }
  for (const text of messages) expect((await post(`/api/conversations/${id}/turns`, { text })).status).toBe(200)
  return async (ending) => app.request(`/api/conversations/${id}/export.${ending}`)
}

describe('an export', () => {
  it('comes in its own type under a safe name', async () => {
    const take = await talk(spacing, calendar)
    const types = {
      json: 'application/json',
      md: 'text/markdown; charset=utf-8',
      pdf: 'application/pdf',
      csv: 'text/csv; charset=utf-8',
      ics: 'text/calendar; charset=utf-8',
      svg: 'image/svg+xml',
    }
    for (const [ending, type] of Object.entries(types)) {
      const response = await take(ending)
      expect([ending, response.status]).toEqual([ending, 200])
      expect(response.headers.get('content-type')).toBe(type)
      expect(response.headers.get('content-disposition')).toMatch(
        new RegExp(`^attachment; filename="[a-z]+(-[a-z0-9]+)*\\.${ending}"$`),
      )
      expect((await response.arrayBuffer()).byteLength).toBeGreaterThan(500)
    }
  })

  it('prints sheets that open, and the same bytes when asked again on the same day', async () => {
    const take = await talk(spacing)
    const [one, again] = await Promise.all([take('pdf'), take('pdf')].map(async (it) => (await it).arrayBuffer()))
    expect((await PDFDocument.load(one as ArrayBuffer)).getPageCount()).toBeGreaterThan(1)
    expect(Buffer.compare(Buffer.from(one as ArrayBuffer), Buffer.from(again as ArrayBuffer))).toBe(0)
  })

  it('of nothing says what to do instead', async () => {
    const refused = async (take: (ending: string) => Promise<Response>, ending: string) => {
      const response = await take(ending)
      const { error } = (await response.json()) as { error: { code: string; message: string } }
      return { status: response.status, ...error }
    }
    const empty = await talk()
    for (const ending of ['md', 'csv', 'pdf', 'ics', 'svg'])
      expect(await refused(empty, ending)).toMatchObject({
        status: 409,
        message: expect.stringMatching(/\b(Ask|ask)\b/),
      })
    expect((await empty('json')).status).toBe(200)
    expect(await refused(await talk(spacing), 'ics')).toMatchObject({ status: 409, code: 'no-dates' })
    expect(await refused(await talk('What spacing for a 70 5/8 in bay?'), 'svg')).toMatchObject({ code: 'no-drawing' })
  })

  it('of an unknown kind, or of a talk that is gone, is not found; it is only read', async () => {
    const take = await talk()
    for (const ending of ['docx', 'constructor']) {
      const response = await take(ending)
      expect(response.status).toBe(404)
      expect(((await response.json()) as { error: { code: string } }).error.code).toBe('no-such-export')
    }
    expect((await app.request('/api/conversations/none/export.pdf')).status).toBe(404)
    const posted = await app.request('/api/conversations/none/export.ics', { method: 'POST' })
    expect([posted.status, posted.headers.get('allow')]).toEqual([405, 'GET'])
  })
})
