// This file is about who is at the other end: the address a request comes from, and whether it came over TLS.
import { isIPv6 } from 'node:net'
import type { Context } from 'hono'

export interface Caller {
  /** One that can be counted by: of an IPv6 address the first half, since the other is free to choose for who has it. */
  readonly address: string
  readonly isSecure: boolean
}

/** What a request says of its way is believed of the proxies that were named, and of nobody else. */
export function callerOf(c: Context, proxies: readonly string[]): Caller {
  const next = plain(neighbour(c))
  const trusted = new Set(proxies.map(plain))
  if (!trusted.has(next)) return { address: countable(next), isSecure: new URL(c.req.url).protocol === 'https:' }
  // Each proxy adds at the end whom it heard it from: the last that is no proxy of ours is who asks. What stands before can be anybody's invention.
  const way = (c.req.header('x-forwarded-for') ?? '').split(',').map((it) => plain(it.trim()))
  const address = way.findLast((it) => it !== '' && !trusted.has(it)) ?? next
  return { address: countable(address), isSecure: c.req.header('x-forwarded-proto')?.trim().toLowerCase() === 'https' }
}

const neighbour = (c: Context): string =>
  (c.env as { incoming?: { socket?: { remoteAddress?: string } } } | undefined)?.incoming?.socket?.remoteAddress ?? ''

/** An IPv4 address that came in IPv6's clothes is told as itself. */
const plain = (address: string): string => address.toLowerCase().replace(/^::ffff:(?=\d+\.)/, '')

function countable(address: string): string {
  if (!isIPv6(address)) return address.slice(0, 64)
  const [front = '', back] = address.replace(/%.*$/, '').split('::')
  const groups = front === '' ? [] : front.split(':')
  const left =
    back === undefined ? [] : Array<string>(8 - groups.length - (back === '' ? 0 : back.split(':').length)).fill('0')
  return [...groups, ...left, ...(back ?? '').split(':')]
    .slice(0, 4)
    .map((it) => Number.parseInt(it || '0', 16).toString(16))
    .join(':')
}
