// Clients that send or take too little: none of them holds a line, or what waits to be sent over it, for ever; who is only slow gets everything.
import { once } from 'node:events'
import type { ServerOptions } from 'node:http'
import { connect, type AddressInfo, type Socket } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { serve, type ServerType } from '@hono/node-server'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { type Assistant, createAssistant } from '../../../src/assistant.ts'
import { legibly } from '../../../src/http/listening.ts'
import { offlineReader } from '../../../src/readers/offline/offline.ts'
import { openStore } from '../../../src/store/open.ts'
import type { Store } from '../../../src/store/store.ts'
import { openSign } from './hanging-model.ts'
import { talkingTo } from './talking.ts'

const question = 'How many feet is 96 in?'
/** Together more than the system keeps between two programs of one machine: it may be some ten megabytes. */
const manyPieces = 32
const pieceOf = 'word '.repeat(100_000)

let store: Store
let server: ServerType
const lines: Socket[] = []
beforeEach(async () => {
  store = await openStore({ memory: true })
})
afterEach(async () => {
  for (const it of lines.splice(0)) it.destroy()
  if ('closeAllConnections' in server) server.closeAllConnections()
  server.close()
  await store.close()
})

const offline = createAssistant(offlineReader)
/** Answers with so many pieces before the last. */
const longWinded: Assistant = {
  async turn(asked, watch, signal) {
    for (let i = 0; i < manyPieces; i++) watch?.({ event: 'prose', data: { text: pieceOf } })
    return offline.turn(asked, watch, signal)
  },
}

async function served(assistant: Assistant, unreadMs?: number, serverOptions: ServerOptions = {}) {
  const it = talkingTo(assistant, store, 0)
  server = serve({ fetch: it.app.fetch, port: 0, hostname: '127.0.0.1', ...legibly(unreadMs), serverOptions })
  await once(server, 'listening')
  const id = await it.start()
  return { ...it, id }
}

function line(): Socket {
  const it = connect((server.address() as AddressInfo).port, '127.0.0.1')
  it.on('error', () => {})
  lines.push(it)
  return it
}

const asking = (id: string, accept: string): string => {
  const body = JSON.stringify({ text: question })
  return `POST /api/conversations/${id}/turns HTTP/1.1\r\nHost: 127.0.0.1\r\nAccept: ${accept}\r\nContent-Type: application/json\r\nContent-Length: ${body.length}\r\n\r\n${body}`
}

describe('a client that asks and takes nothing of the answer', () => {
  it('has its stream ended, and the turn is kept', async () => {
    const { id, kept } = await served(longWinded, 200)
    const far = once(server, 'connection') as Promise<[Socket]>
    const near = line()
    near.write(asking(id, 'text/event-stream'))
    const [socket] = await far
    await once(socket, 'close')
    expect(socket.bytesWritten).toBeLessThan(manyPieces * pieceOf.length)
    await expect.poll(async () => (await kept(id)).map((it) => it.said)).toEqual([question])
  }, 30_000)

  it('while nothing is there to take yet is not ended: the answer may take its time', async () => {
    const time = openSign()
    const { id } = await served(
      {
        async turn(...asked) {
          await time.given
          return offline.turn(...asked)
        },
      },
      50,
    )
    const near = line()
    let heard = ''
    near.on('data', (it) => {
      heard += String(it)
    })
    near.write(asking(id, 'application/json'))
    await pause(300)
    expect(heard).toBe('')
    time.give()
    await expect.poll(() => heard).toMatch(/^HTTP\/1\.1 200 /)
  })
})

it('a client that takes an answer slowly gets all of it', async () => {
  const { id } = await served(longWinded, 3000)
  const near = line()
  near.write(asking(id, 'text/event-stream'))
  let heard = ''
  let rests = 0
  near.on('data', (it) => {
    heard += String(it)
    // It rests now and then, each time for less than a client may, and in all for longer.
    if (heard.length < (rests + 1) * 1_000_000) return
    rests++
    near.pause()
    setTimeout(() => near.resume(), 250)
  })
  await expect.poll(() => heard.includes('event: answer'), { timeout: 60_000 }).toBe(true)
  expect(rests * 250).toBeGreaterThan(3000)
  expect(heard.match(/^event: prose$/gm)).toHaveLength(manyPieces)
  expect(heard.length).toBeGreaterThan(manyPieces * pieceOf.length)
}, 90_000)

describe('a client that sends too slowly', () => {
  it.each([
    ['its headers', 'POST /api/conversations HTTP/1.1\r\nHost: 127.0.0.1\r\n'],
    ['its body', 'POST /api/conversations HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Length: 100\r\n\r\n{'],
  ])('%s is told so, and its line is closed', async (_, beginning) => {
    await served(offline, undefined, { headersTimeout: 100, requestTimeout: 200, connectionsCheckingInterval: 50 })
    const near = line()
    let heard = ''
    near.on('data', (it) => {
      heard += String(it)
    })
    near.write(beginning)
    await once(near, 'close')
    expect(heard).toMatch(/^HTTP\/1\.1 408 .*"code":"too-slow"/s)
  })
})
