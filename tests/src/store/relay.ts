// This file is about a relay before a database: it stands for the network, and for an address that moves from one server to another.
import { connect, createServer, type AddressInfo, type Socket } from 'node:net'

/** `before`: the connection breaks before COMMIT has come to the database. `after`: before its reply has come back. */
export type Cut = 'before' | 'after'

export interface Relay {
  readonly port: number
  /** Where connections go from now on; those that there are break. Null: nobody is there. */
  moveTo(port: number | null): void
  /** From now on nothing comes through, either way, and nobody is told: the machine behind it has lost its power. */
  hush(): void
  /** The next transaction that is committed loses its connection. With `awayAfter` nobody is there from then on. */
  cutAtCommit(cut: Cut, awayAfter?: boolean): void
  /** How many connections broke at COMMIT. */
  cuts(): number
  close(): Promise<void>
}

export async function openRelay(port: number): Promise<Relay> {
  let to: number | null = port
  let next: { readonly cut: Cut; readonly awayAfter: boolean } | undefined
  let cuts = 0
  let isHushed = false
  const open = new Set<Socket>()
  const breakAll = (): void => {
    for (const it of open) it.destroy()
  }
  const server = createServer((near) => {
    if (to === null) return void near.resetAndDestroy()
    const far = connect(to, '127.0.0.1')
    let isCutting = false
    const both = [near, far]
    const end = (): void => {
      for (const it of both) it.destroy()
    }
    for (const it of both) {
      open.add(it)
      it.on('error', end)
      it.on('close', () => {
        open.delete(it)
        end()
      })
    }
    const cut = (): void => {
      cuts++
      if (next?.awayAfter) to = null
      next = undefined
      end()
    }
    near.on('data', (data) => {
      if (isHushed) return
      if (next && !isCutting && data.includes('commit')) {
        if (next.cut === 'before') return cut()
        isCutting = true
      }
      far.write(data)
    })
    far.on('data', (data) => {
      if (isHushed) return
      if (!isCutting) return void near.write(data)
      // The database says that it has committed, and nobody hears it.
      if (data.includes('COMMIT')) cut()
    })
  })
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  return {
    port: (server.address() as AddressInfo).port,
    hush() {
      isHushed = true
    },
    moveTo(there) {
      isHushed = false
      to = there
      breakAll()
    },
    cutAtCommit(cut, awayAfter = false) {
      next = { cut, awayAfter }
    },
    cuts: () => cuts,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        breakAll()
      }),
  }
}
