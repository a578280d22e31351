// This file is about the server: settings read, store opened, house furnished, and a door opened at an address that is printed.
import { serve } from '@hono/node-server'
import { fileURLToPath } from 'node:url'
import { version } from '../engine/index.ts'
import { furnish } from './house.ts'
import { createApp } from './http/app.ts'
import { checkDoor } from './http/doors.ts'
import { logTo } from './http/watching.ts'
import { legibly } from './http/listening.ts'
import { Stopping } from './http/stopping.ts'
import { keptEvidence } from './kept-evidence.ts'
import { readSettings, type Settings } from './settings.ts'
import { openStore } from './store/open.ts'
import { createPage } from './web/app.tsx'
import { workedExample } from './web/example.ts'
import { renderReply } from './web/markdown.ts'

/** A container is killed after ten seconds. */
const longestStopMs = 9500

async function main(settings: Settings): Promise<void> {
  checkDoor(settings)
  const house = furnish(settings)
  const store = await openStore(settings.store)
  const stopping = new Stopping()
  const app = createApp({
    assistant: house.assistant,
    store,
    version,
    front: house.front,
    renderReply,
    host: settings.host,
    secret: settings.secret,
    names: settings.names,
    proxies: settings.proxies,
    limits: settings.limits,
    stopping,
    log: logTo((line) => process.stderr.write(line), settings.log),
    page: createPage({
      assets: fileURLToPath(new URL('./web', import.meta.url)),
      example: workedExample,
      front: house.front,
      asksWho: settings.secret !== undefined,
      evidence: () => keptEvidence(new URL('.', import.meta.url)),
    }),
  })
  const server = serve({ fetch: app.fetch, port: settings.port, hostname: settings.host, ...legibly() }, (address) => {
    const host = settings.host.includes(':') ? `[${settings.host}]` : settings.host
    process.stdout.write(`Plumbpost is at http://${host}:${address.port}/\n${house.reads}\n`)
  })
  server.on('error', (fault: NodeJS.ErrnoException) => {
    process.stderr.write(
      fault.code === 'EADDRINUSE'
        ? `Port ${settings.port} is taken. Is Plumbpost running already? Choose another: PORT=4681 npm start\n`
        : `The server could not start: ${fault.message}\n`,
    )
    process.exit(1)
  })
  let isClosing = false
  const close = (): void => {
    if (isClosing) return
    isClosing = true
    // A database that does not answer must not keep it from ending.
    setTimeout(() => process.exit(1), longestStopMs).unref()
    // Nobody new is let in; who waits for an answer gets it, or what it has come to.
    const closed = new Promise<void>((resolve) => server.close(() => resolve()))
    stopping
      .finish()
      .then(() => {
        // Open event streams and idle connections would keep the server from closing.
        if ('closeAllConnections' in server) setTimeout(() => server.closeAllConnections(), 500).unref()
        return closed
      })
      .then(() => store.close())
      .then(
        () => process.exit(0),
        (fault: Error) => {
          process.stderr.write(`The store did not close: ${fault.message}\n`)
          process.exit(1)
        },
      )
  }
  process.on('SIGINT', close)
  process.on('SIGTERM', close)
}

try {
  await main(readSettings(process.env))
} catch (fault) {
  process.stderr.write(`${fault instanceof Error ? fault.message : String(fault)}\n`)
  process.exit(1)
}
