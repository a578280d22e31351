// This file is about what comes down the line before it is a request: what cannot be read is refused in the same shape as everything else.
import {
  createServer,
  type IncomingMessage,
  type RequestListener,
  type Server,
  type ServerOptions,
  STATUS_CODES,
} from 'node:http'

/** As long as a telephone may be without its line and still be there. */
const usualUnreadMs = 60_000

/**
 * How `serve` of Hono's Node server makes its server: one that answers also what Node would close the line on without a word, and closes the line on
 * whoever takes nothing of an answer for so long.
 */
export const legibly = (unreadMs = usualUnreadMs) => ({
  createServer: ((options: ServerOptions, listen: RequestListener) =>
    createLegibleServer(options, listen, unreadMs)) as typeof createServer,
})

function createLegibleServer(options: ServerOptions, listen: RequestListener, unreadMs: number): Server {
  const server = createServer({ ...options, requireHostHeader: false }, (request, response) => {
    const { socket } = request
    // Nothing went over the line for so long. That is no fault while an answer is in the making; what waits to be taken would wait in memory for ever.
    response.setTimeout(unreadMs, () => {
      if (socket.writableLength > 0) socket.destroy()
    })
    if (isLegible(request)) return listen(request, response)
    response.writeHead(400, { ...headers, connection: 'close' })
    response.end(
      told('bad-request', 'The address or the Host of the request cannot be read. Send a path, and one Host.'),
    )
  })
  server.on('checkExpectation', (_request, response) => {
    response.writeHead(417, headers)
    response.end(told('no-expectation', 'I meet no expectation but “100-continue”. Take the Expect header away.'))
  })
  server.on('clientError', (fault: NodeJS.ErrnoException, socket) => {
    if (fault.code === 'ECONNRESET' || !socket.writable) return void socket.destroy()
    const [status, code, message] = unreadable[fault.code ?? ''] ?? otherwise
    const body = told(code, message)
    const lines = Object.entries({ ...headers, 'content-length': Buffer.byteLength(body), connection: 'close' })
    socket.end(
      `HTTP/1.1 ${status} ${STATUS_CODES[status]}\r\n${lines.map(([name, it]) => `${name}: ${it}\r\n`).join('')}\r\n${body}`,
    )
  })
  return server
}

const headers = { 'content-type': 'application/json', 'x-content-type-options': 'nosniff' }

const told = (code: string, message: string): string => JSON.stringify({ error: { code, message } })

type Said = readonly [status: number, code: string, message: string]
const otherwise: Said = [400, 'bad-request', 'This is no HTTP request that I can read.']
const unreadable: Readonly<Record<string, Said>> = {
  HPE_HEADER_OVERFLOW: [431, 'headers-too-large', 'The address and headers are larger than 16 KiB. Send less of them.'],
  ERR_HTTP_REQUEST_TIMEOUT: [408, 'too-slow', 'The request did not come to its end in time. Send it again.'],
}

/** One host, as a name, an address or neither with a port; and a path, not another's address. Before HTTP/1.1 no host was said. */
function isLegible({ url = '', headersDistinct: { host = [] }, httpVersion }: IncomingMessage): boolean {
  if (!url.startsWith('/') || url.includes('\\')) return false
  if (host.length === 0) return httpVersion === '1.0'
  const [name = ''] = host
  return host.length === 1 && /^([\w.-]+|\[[\da-f:.]+\])(:\d{1,5})?$/i.test(name) && URL.canParse(`http://${name}`)
}
