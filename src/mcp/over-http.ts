// This file is about MCP over HTTP: each request by itself, with no session to keep. The doors it comes through are those of the whole server.
import type { Talks } from './resources.ts'
import { createMcp } from './server.ts'

/** Answers one request, as JSON. */
export async function answerMcp(request: Request, talks: Talks): Promise<Response> {
  const { WebStandardStreamableHTTPServerTransport } = await import(
    '@modelcontextprotocol/sdk/server/webStandardStreamableHttp.js'
  )
  const transport = new WebStandardStreamableHTTPServerTransport({ enableJsonResponse: true })
  const server = await createMcp(talks)
  await server.connect(transport)
  try {
    return await transport.handleRequest(request)
  } finally {
    await server.close()
  }
}
