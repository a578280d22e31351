// This file is about who is let in: the server's own name, its own pages, and the secret where others can reach it.
import { createHash, timingSafeEqual } from 'node:crypto'
import type { MiddlewareHandler } from 'hono'
import type { Settings } from '../settings.ts'
import { isThisMachine } from '../this-machine.ts'
import type { Store } from '../store/store.ts'
import { callerOf } from './caller.ts'
import { failed, noConversation } from './errors.ts'
import { giveToken, type Owners, type Shown, tokenIn } from './owners.ts'
import type { Rate } from './rate.ts'

/** From `openssl rand -hex 24` come twice as many as are asked for. The longest of the thirty thousand commonest passwords has 20 (the list in zxcvbn 4.4.2). */
const shortestSecret = 24
/** What `openssl rand -hex 24` prints has some 45 parts. Of sixty thousand of 12 bytes, which are just long enough, none had fewer. */
const fewestParts = 16
/** As people type them who want something long: the alphabet, and a keyboard's rows and columns, there and back. */
const rows = ['abcdefghijklmnopqrstuvwxyz', '01234567890', 'qwertyuiop', 'asdfghjkl', 'zxcvbnm']
const columns = ['1qaz2wsx3edc4rfv5tgb6yhn7ujm8ik9ol0p', '1q2w3e4r5t6y7u8i9o0p']
const runs = [...rows, ...columns].flatMap((it) => [it, [...it].reverse().join('')]).join('\n')

/** Throws with one plain sentence when others could walk in. */
export function checkDoor({ host, names, secret }: Pick<Settings, 'host' | 'names' | 'secret'>): void {
  if (names.length > 0 && secret === undefined)
    throw new Error(
      `PLUMBPOST_NAME is “${names.join(', ')}”, under which others can reach this server, and there is no access secret. Set PLUMBPOST_SECRET, for instance to what “openssl rand -hex 24” prints, or take PLUMBPOST_NAME away.`,
    )
  if (!isThisMachine(host) && secret === undefined)
    throw new Error(
      `HOST is “${host}”, where others can reach this server, and there is no access secret. Set PLUMBPOST_SECRET, for instance to what “openssl rand -hex 24” prints, or take HOST away.`,
    )
  const weakness = secret === undefined ? undefined : weaknessOf(secret)
  if (weakness !== undefined)
    throw new Error(`PLUMBPOST_SECRET is too easily guessed: ${weakness}. “openssl rand -hex 24” prints a good one.`)
}

/** What makes it easy to guess. Lists of common passwords have none that is so long, but for short ones said over and over and runs along the keyboard. */
function weaknessOf(secret: string): string | undefined {
  if (secret.length < shortestSecret) return `it needs at least ${shortestSecret} characters`
  return partsOf(secret.toLowerCase()) < fewestParts
    ? 'most of it is one thing said over and over, or runs along the alphabet or the keyboard'
    : undefined
}

/** Of how many it is made, each either a sign or three and more in a row that stood before, in it or in a run (Lempel and Ziv, 1977). */
function partsOf(secret: string): number {
  let parts = 0
  for (let at = 0; at < secret.length; parts++) {
    const before = `${runs}\n${secret.slice(0, at)}`
    let end = at + 3
    while (end <= secret.length && before.includes(secret.slice(at, end))) end++
    at = Math.max(at + 1, end > at + 3 ? end - 1 : 0)
  }
  return parts
}

/**
 * Only the names that were told are answered, and those of this machine: a name that somebody's page points at it is not one of them. Where others
 * reach the server and no name was told, any serves: the secret stands before everything.
 */
export const ownNameOnly =
  (host: string, names: readonly string[]): MiddlewareHandler =>
  async (c, next) => {
    const asked = c.req.header('host')?.replace(/:\d+$/, '').toLowerCase()
    const isAny = names.length === 0 && !isThisMachine(host)
    if (isAny || asked === undefined || isThisMachine(asked) || names.some((it) => it.toLowerCase() === asked))
      return next()
    return failed(
      c,
      403,
      'wrong-host',
      names.length === 0
        ? 'This server answers to localhost only.'
        : 'This server is not known under that name. Whoever runs it can set PLUMBPOST_NAME.',
    )
  }

export const ownPagesOnly: MiddlewareHandler = async (c, next) =>
  isOwnPage(c.req.header('origin'), c.req.header('host'), c.req.header('sec-fetch-site'))
    ? next()
    : failed(c, 403, 'other-site', 'A request from another site is refused.')

/** A browser says which site a request comes from; programs say nothing, and are answered. Reading is harmless: the answer stays out of other sites' reach. */
function isOwnPage(origin: string | undefined, host: string | undefined, site: string | undefined): boolean {
  if (site === 'cross-site' && origin !== undefined) return false
  if (origin === undefined) return true
  try {
    return new URL(origin).host === host
  } catch {
    return false
  }
}

/** Whether the server is up, and a talk for whoever holds its link, with what its page needs. */
const openToAll = /^\/(healthz|readyz|shared\/[^/]+|web\/page\.css|web\/mark\.svg)$/

interface Door {
  readonly secret: string
  readonly store: Pick<Store, 'hasLeft'>
  readonly owners: Owners
  readonly proxies: readonly string[]
  /** Wrong secrets, by address. */
  readonly wrong: Rate
}

/**
 * Who shows a token of their own is its owner. Else the secret is asked for: a program sends it as a bearer's token; a browser asks for a name,
 * which may be any, and a password. Who has left is nobody, by whatever copy of their token.
 */
export const letIn = ({ secret, store, owners, proxies, wrong }: Door): MiddlewareHandler => {
  const known = digest(secret)
  return async (c, next) => {
    if (openToAll.test(c.req.path)) return next()
    const { address, isSecure } = callerOf(c, proxies)
    const said = secretIn(c.req.header('authorization') ?? '')
    const kept = tokenIn(c, isSecure)
    const shown = owners.read(said ?? '') ?? owners.read(kept ?? '')
    if (shown?.isGood && !(await store.hasLeft(shown.owner))) return asOwner(shown)
    const seconds = said === null ? 0 : wrong.wait(address)
    if (seconds > 0) {
      c.header('Retry-After', String(seconds))
      return failed(
        c,
        429,
        'too-many-secrets',
        `Too many wrong secrets came from your address. Wait ${seconds} s, look the secret up, and try again.`,
      )
    }
    if (said !== null && timingSafeEqual(digest(said), known)) {
      if (shown && !(await store.hasLeft(shown.owner))) return asOwner(shown)
      c.set('visitor', 'newcomer')
      return next()
    }
    if (said !== null) wrong.count(address)
    c.header('WWW-Authenticate', 'Basic realm="Plumbpost", charset="UTF-8"')
    return failed(
      c,
      401,
      'no-secret',
      'This server asks for its access secret: as the password, with any name, or as “Authorization: Bearer …”.',
    )

    function asOwner({ owner, isGood, isOlder, renewed }: Shown): Promise<void> {
      c.set('visitor', { owner })
      if (kept !== undefined && (!isGood || isOlder)) giveToken(c, renewed, isSecure)
      return next()
    }
  }
}

/** A talk is there for its owner only; to everybody else it looks like one that never was. */
export const ownTalksOnly =
  (store: Store): MiddlewareHandler =>
  async (c, next) => {
    const visitor = c.get('visitor')
    if (visitor === 'everybody') return next()
    const id = c.req.param('id') ?? ''
    if (visitor === 'newcomer')
      return failed(
        c,
        401,
        'no-owner',
        'A talk is shown to its owner only. Send the token that came when it was begun: as the cookie, or as “Authorization: Bearer …”.',
      )
    return (await store.isOf(id, visitor.owner)) ? next() : noConversation(c, id)
  }

function secretIn(authorization: string): string | null {
  const [, kind, said] = /^(bearer|basic) +(\S+)$/i.exec(authorization) ?? []
  if (!kind || !said) return null
  if (kind.toLowerCase() === 'bearer') return said
  const pair = Buffer.from(said, 'base64').toString('utf8')
  const colon = pair.indexOf(':')
  return colon < 0 ? null : pair.slice(colon + 1)
}

/** Of one length whatever was said, so that comparing takes as long for every guess. */
const digest = (text: string): Buffer => createHash('sha256').update(text).digest()
