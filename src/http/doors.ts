// This file is about who is let in: the server's own name, its own pages, and the secret where others can reach it.
import { createHash, timingSafeEqual } from 'node:crypto'
import type { MiddlewareHandler } from 'hono'
import { isThisMachine } from '../this-machine.ts'
import { failed } from './errors.ts'

/** From `openssl rand -hex 24` come twice as many as are asked for. */
const shortestSecret = 24

/** Throws with one plain sentence when others could walk in. */
export function checkDoor({ host, secret }: { readonly host: string; readonly secret?: string }): void {
  if (!isThisMachine(host) && secret === undefined)
    throw new Error(
      `HOST is “${host}”, where others can reach this server, and there is no access secret. Set PLUMBPOST_SECRET, for instance to what “openssl rand -hex 24” prints, or take HOST away.`,
    )
  if (secret !== undefined && secret.length < shortestSecret)
    throw new Error(
      `PLUMBPOST_SECRET is too easily guessed: it needs at least ${shortestSecret} characters. “openssl rand -hex 24” prints a good one.`,
    )
}

/** On this machine only its own names are answered: a name that somebody's page points at it is not one of them. */
export const ownNameOnly =
  (host: string): MiddlewareHandler =>
  async (c, next) => {
    const asked = c.req.header('host')
    if (!isThisMachine(host) || asked === undefined || isThisMachine(asked.replace(/:\d+$/, ''))) return next()
    return failed(c, 403, 'wrong-host', 'This server answers to localhost only.')
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

/** A program sends the secret as a bearer's token; a browser asks for a name, which may be any, and a password. */
export const secretOnly = (secret: string): MiddlewareHandler => {
  const known = digest(secret)
  return async (c, next) => {
    // Whoever watches whether the server is up need not know it.
    if (c.req.path === '/healthz') return next()
    const said = secretIn(c.req.header('authorization') ?? '')
    if (said !== null && timingSafeEqual(digest(said), known)) return next()
    c.header('WWW-Authenticate', 'Basic realm="Plumbpost", charset="UTF-8"')
    return failed(
      c,
      401,
      'no-secret',
      'This server asks for its access secret: as the password, with any name, or as “Authorization: Bearer …”.',
    )
  }
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
