// This file is about the whole server as a process of its own: built as it ships, started with settings, talked to over the network.
import { spawn } from 'node:child_process'
import { cpSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { bundle } from '../../../.ci/build.mjs'

export interface ServerProcess {
  readonly address: string
  readonly pid: number
  post(path: string, body: object, headers?: Record<string, string>): Promise<Response>
  kill(signal: NodeJS.Signals): void
  /** With its exit code; null when it was killed. */
  readonly ended: Promise<number | null>
}

/** Builds the server, in the program's own folder so that it finds its packages. */
export async function buildServer() {
  const built = join(process.cwd(), 'dist', `tried-${process.pid}`)
  await bundle(process.cwd(), built)
  // The program looks for them beside the folder it lies in.
  cpSync('prompts', join(process.cwd(), 'dist', 'prompts'), { recursive: true })
  return {
    async start(settings: Readonly<Record<string, string>>): Promise<ServerProcess> {
      const child = spawn(process.execPath, [join(built, 'server.mjs')], {
        stdio: ['ignore', 'pipe', 'ignore'],
        env: { PATH: process.env.PATH, PORT: '0', PLUMBPOST_LOG: 'faults', ...settings },
      })
      const ended = new Promise<number | null>((resolve) => child.on('exit', resolve))
      const address = await new Promise<string>((resolve, reject) => {
        child.stdout.on('data', (data: Buffer) => {
          const found = /http:\/\/[\d.:]+/.exec(String(data))
          if (found) resolve(found[0])
        })
        void ended.then(() => reject(new Error('The server ended before it served.')))
      })
      return {
        address,
        pid: child.pid as number,
        post: (path, body, headers = {}) =>
          fetch(address + path, {
            method: 'POST',
            headers: { 'content-type': 'application/json', ...headers },
            body: JSON.stringify(body),
          }),
        kill: (signal) => void child.kill(signal),
        ended,
      }
    },
    remove: () => rmSync(built, { recursive: true, force: true }),
  }
}
