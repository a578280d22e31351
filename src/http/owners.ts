// This file is about whose a talk is, where several share a server: a token of everybody's own, which only this server can have made.
import { createHash, createHmac, randomBytes, timingSafeEqual } from 'node:crypto'
import type { Context } from 'hono'
import { getCookie, setCookie } from 'hono/cookie'

/** Who asks: `everybody` where nobody is asked who they are, `newcomer` who showed the secret and no token yet, or an owner. */
export type Visitor = 'everybody' | 'newcomer' | { readonly owner: string }

declare module 'hono' {
  interface ContextVariableMap {
    visitor: Visitor
  }
}

const cookie = 'plumbpost-owner'
const daysGood = 90
const shape = /^([\w-]{43})\.([0-9a-z]{1,8})\.([\w-]{43})$/

export interface Shown {
  readonly owner: string
  /** False where it is too old, or was made under another secret: then the secret must be shown too. */
  readonly isGood: boolean
  /** Not of today: a new one is given out, so that who comes again need not show the secret each quarter. */
  readonly isOlder: boolean
  /** The same owner's, made today. */
  readonly renewed: string
}

export interface Owners {
  /** A token for somebody new: 256 bits of chance, the day, and a mark that only the secret makes. */
  mint(): string
  /** Null for what is no token at all. */
  read(token: string): Shown | null
}

export function createOwners(secret: string, clock: () => Date = () => new Date()): Owners {
  const key = createHash('sha256').update(`plumbpost owner\n${secret}`).digest()
  const today = (): number => Math.floor(clock().getTime() / 86_400_000)
  const marked = (random: string, day: string): string =>
    createHmac('sha256', key).update(`${random}.${day}`).digest('base64url')
  const made = (random: string): string => {
    const day = today().toString(36)
    return `${random}.${day}.${marked(random, day)}`
  }
  return {
    mint: () => made(randomBytes(32).toString('base64url')),
    read(token) {
      const [, random, day, mark] = shape.exec(token) ?? []
      if (!random || !day || !mark) return null
      const age = today() - Number.parseInt(day, 36)
      const isOurs = timingSafeEqual(Buffer.from(mark), Buffer.from(marked(random, day)))
      return {
        owner: ownerOf(random),
        // A clock that was put back is no reason to turn anybody away.
        isGood: isOurs && age <= daysGood,
        isOlder: age !== 0,
        renewed: made(random),
      }
    },
  }
}

/** What is kept: from it nobody can make the token. */
const ownerOf = (random: string): string => createHash('sha256').update(random).digest('base64url')

/** Over TLS under a name that no other host and no plain page can set (RFC 6265bis, “__Host-”). */
export const tokenIn = (c: Context, isSecure: boolean): string | undefined =>
  isSecure ? getCookie(c, cookie, 'host') : getCookie(c, cookie)

export const giveToken = (c: Context, token: string, isSecure: boolean): void => leave(c, token, daysGood, isSecure)
export const takeToken = (c: Context, isSecure: boolean): void => leave(c, '', 0, isSecure)

function leave(c: Context, token: string, days: number, isSecure: boolean): void {
  const options = { path: '/', httpOnly: true, sameSite: 'Strict', maxAge: days * 86_400 } as const
  if (isSecure) setCookie(c, cookie, token, { ...options, secure: true, prefix: 'host' })
  else setCookie(c, cookie, token, options)
}
