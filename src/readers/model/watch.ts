// This file is about giving up: when the caller takes the question back, or the server stays quiet too long.
import type { Trouble } from './speech.ts'

export interface Watch {
  /** Closes the connection to the server when the watch stops. */
  readonly upstream: AbortSignal
  /** Why it stopped, once it has. */
  why(): Trouble | undefined
  /** Waits for the work, or for the watch to stop. */
  orStopped<Result>(work: Promise<Result>): Promise<Result | 'stopped'>
  /** Starts the wait of this name anew. */
  expect(wait: string, ms: number, trouble: Trouble): void
  forget(wait: string): void
  /** Always called at the end: takes back every timer and closes what is still open. */
  close(): void
}

export function createWatch(signal: AbortSignal | undefined): Watch {
  const upstream = new AbortController()
  const timers = new Map<string, ReturnType<typeof setTimeout>>()
  let why: Trouble | undefined
  let tell: (stopped: 'stopped') => void = () => {}
  const stopped = new Promise<'stopped'>((resolve) => {
    tell = resolve
  })
  const stop = (trouble: Trouble): void => {
    why ??= trouble
    upstream.abort()
    tell('stopped')
  }
  const takenBack = (): void => stop('aborted')
  if (signal?.aborted) takenBack()
  signal?.addEventListener('abort', takenBack, { once: true })

  const forget = (wait: string): void => {
    clearTimeout(timers.get(wait))
    timers.delete(wait)
  }
  return {
    upstream: upstream.signal,
    why: () => why,
    orStopped: (work) => Promise.race([stopped, work]),
    expect: (wait, ms, trouble) => {
      forget(wait)
      timers.set(wait, setTimeout(stop, ms, trouble))
    },
    forget,
    close: () => {
      for (const wait of [...timers.keys()]) forget(wait)
      signal?.removeEventListener('abort', takenBack)
      upstream.abort()
    },
  }
}
