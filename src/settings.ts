// This file is about settings: the environment, read once into one typed object.
import { z } from 'zod'

const text = z.string().trim().min(1).optional().catch(undefined)

/** Several in one value, with commas between. */
const list = z
  .string()
  .transform((it) =>
    it
      .split(',')
      .map((one) => one.trim())
      .filter((one) => one !== ''),
  )
  .default([])

const most = z.coerce.number().int().min(1).optional()

const environment = z.object({
  PORT: z.coerce.number().int().min(0).max(65535).default(4680),
  HOST: z.string().trim().min(1).default('127.0.0.1'),
  PLUMBPOST_SECRET: text,
  PLUMBPOST_NAME: list,
  PLUMBPOST_PROXY: list,
  PLUMBPOST_MOST_BYTES: most,
  PLUMBPOST_MOST_CHARACTERS: most,
  PLUMBPOST_MOST_TURNS: most,
  PLUMBPOST_MOST_TURNS_A_MINUTE: most,
  PLUMBPOST_MOST_AT_ONCE: most,
  PLUMBPOST_MOST_TALKS: most,
  PLUMBPOST_MOST_TOKENS: most,
  PLUMBPOST_MOST_TOKENS_A_DAY: most,
  PLUMBPOST_MOST_WRONG_SECRETS: most,
  PLUMBPOST_LOG: z.enum(['all', 'faults']).optional(),
  PLUMBPOST_DATA: z.string().trim().min(1).default('.plumbpost'),
  DATABASE_URL: text,
  PLUMBPOST_MODEL: text,
  PLUMBPOST_FRONT: z.enum(['offline', 'model']).optional(),
  OPENAI_API_KEY: text,
  OPENAI_BASE_URL: text,
  PLUMBPOST_PATIENCE: z.coerce.number().int().min(1).max(3600).optional(),
})

export const settingNames: readonly string[] = Object.keys(environment.shape)

/** How much of what the server takes, and how often. Infinity where it is not counted. */
export interface Limits {
  /** Of the body of a request. */
  readonly bytes: number
  /** Of a message. */
  readonly characters: number
  /** Of one talk, those set aside among them. */
  readonly turns: number
  /** Of one owner: whatever is worked for them. */
  readonly turnsAMinute: number
  /** Turns under way of one owner, streams among them. */
  readonly atOnce: number
  /** Kept of one owner. */
  readonly talks: number
  /** Asked and answered by a model, of one talk. */
  readonly tokens: number
  /** The same of everybody, from midnight to midnight in UTC. */
  readonly tokensADay: number
  /** In a minute, from one address. */
  readonly wrongSecrets: number
}

/** Who is alone with the program on their own machine is not counted. */
export const limitsAlone: Limits = {
  bytes: 1_000_000,
  characters: 20_000,
  turns: Infinity,
  turnsAMinute: Infinity,
  atOnce: Infinity,
  talks: Infinity,
  tokens: Infinity,
  tokensADay: Infinity,
  wrongSecrets: 10,
}
/** More than a person who plans a fence comes to, and less than one program takes from the others. */
export const limitsAmongOthers: Limits = {
  ...limitsAlone,
  turns: 1000,
  turnsAMinute: 60,
  atOnce: 6,
  talks: 500,
  tokens: 1_000_000,
  tokensADay: 10_000_000,
}

export interface Settings {
  readonly port: number
  readonly host: string
  /** What everybody must say whom the server is to answer. */
  readonly secret?: string
  /** The names it is reached under besides its own, such as those of a proxy before it. */
  readonly names: readonly string[]
  /** Addresses of proxies whose word is taken for who asks, and whether over TLS. */
  readonly proxies: readonly string[]
  readonly limits: Limits
  /** What is written to standard error of the requests. */
  readonly log: 'all' | 'faults'
  readonly store: { readonly dataFolder: string } | { readonly databaseUrl: string }
  /** Set only when questions are to go to a model. A key alone sends nothing anywhere. */
  readonly model?: {
    readonly model: string
    readonly key?: string
    readonly baseUrl?: string
    /** How long its first sign is waited for. */
    readonly timeoutMs?: number
  }
}

/** Reads the environment. Throws with one plain sentence for a value that cannot be used. */
export function readSettings(env: Readonly<Record<string, string | undefined>>): Settings {
  const blankless = Object.fromEntries(Object.entries(env).filter(([, value]) => value !== ''))
  const parsed = environment.safeParse(blankless)
  if (!parsed.success) throw new Error(`The environment has a value I cannot use.\n${z.prettifyError(parsed.error)}`)
  const it = parsed.data
  if (it.PLUMBPOST_FRONT === 'model' && !it.PLUMBPOST_MODEL)
    throw new Error('PLUMBPOST_FRONT is “model”, but PLUMBPOST_MODEL names none. Set it, or take PLUMBPOST_FRONT away.')
  const usual = it.PLUMBPOST_SECRET === undefined ? limitsAlone : limitsAmongOthers
  const usesModel = it.PLUMBPOST_MODEL !== undefined && it.PLUMBPOST_FRONT !== 'offline'
  return {
    port: it.PORT,
    host: it.HOST,
    ...(it.PLUMBPOST_SECRET ? { secret: it.PLUMBPOST_SECRET } : {}),
    names: it.PLUMBPOST_NAME,
    proxies: it.PLUMBPOST_PROXY,
    limits: {
      bytes: it.PLUMBPOST_MOST_BYTES ?? usual.bytes,
      characters: it.PLUMBPOST_MOST_CHARACTERS ?? usual.characters,
      turns: it.PLUMBPOST_MOST_TURNS ?? usual.turns,
      turnsAMinute: it.PLUMBPOST_MOST_TURNS_A_MINUTE ?? usual.turnsAMinute,
      atOnce: it.PLUMBPOST_MOST_AT_ONCE ?? usual.atOnce,
      talks: it.PLUMBPOST_MOST_TALKS ?? usual.talks,
      tokens: it.PLUMBPOST_MOST_TOKENS ?? usual.tokens,
      tokensADay: it.PLUMBPOST_MOST_TOKENS_A_DAY ?? usual.tokensADay,
      wrongSecrets: it.PLUMBPOST_MOST_WRONG_SECRETS ?? usual.wrongSecrets,
    },
    log: it.PLUMBPOST_LOG ?? (it.PLUMBPOST_SECRET === undefined ? 'faults' : 'all'),
    store: it.DATABASE_URL ? { databaseUrl: it.DATABASE_URL } : { dataFolder: it.PLUMBPOST_DATA },
    ...(usesModel
      ? {
          model: {
            model: it.PLUMBPOST_MODEL as string,
            ...(it.OPENAI_API_KEY ? { key: it.OPENAI_API_KEY } : {}),
            ...(it.OPENAI_BASE_URL ? { baseUrl: it.OPENAI_BASE_URL } : {}),
            ...(it.PLUMBPOST_PATIENCE ? { timeoutMs: it.PLUMBPOST_PATIENCE * 1000 } : {}),
          },
        }
      : {}),
  }
}
