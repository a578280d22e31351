// This file is about the HTTP front: every route, in the order of the contract.
import { setTimeout as pause } from 'node:timers/promises'
import { Hono, type Context } from 'hono'
import { bodyLimit } from 'hono/body-limit'
import { HTTPException } from 'hono/http-exception'
import { secureHeaders } from 'hono/secure-headers'
import { streamSSE } from 'hono/streaming'
import type { Answer, Turn } from '../answer.ts'
import type { Assistant } from '../assistant.ts'
import { type Changed, changeJob, changeUnits, undoChange, workIn } from '../changing.ts'
import { listCalculations, runCalculation } from '../direct.ts'
import { openIn } from '../next.ts'
import { jobSheet } from '../sheet.ts'
import { inHtml } from '../web/in-html.ts'
import { type Limits, limitsAlone } from '../settings.ts'
import type { KeptTurn, Store, TalkTurn } from '../store/store.ts'
import type { TurnEvent } from '../turn-event.ts'
import { confirmedIn, inputsIn, objectIn, textIn } from './body.ts'
import { callerOf } from './caller.ts'
import { letIn, ownNameOnly, ownPagesOnly, ownTalksOnly } from './doors.ts'
import { failed, faulted, noConversation, sayFault } from './errors.ts'
import type { Pace } from './elsewhere.ts'
import { exported, isFormat, noSuchExport } from './exports.ts'
import { addMcp } from './mcp.ts'
import { addDescription } from './openapi.ts'
import { createOwners, giveToken, type Owners, takeToken } from './owners.ts'
import { Rate } from './rate.ts'
import { type Asked, type Fault, isFault, type Running } from './running.ts'
import { createMetrics, metricsType } from './metrics.ts'
import { createGuards } from './limits.ts'
import { addSharing } from './sharing.ts'
import { Stopping } from './stopping.ts'
import { Turns } from './turns.ts'
import { type Log, logTo, watched } from './watching.ts'

export interface Parts {
  readonly assistant: Assistant
  readonly store: Store
  readonly version: string
  readonly front: 'offline' | 'model'
  readonly renderReply: (markdown: string) => string
  /** The address the server listens on. On this machine only, other names for it are refused, so that no web page can reach in. */
  readonly host: string
  /** What everybody must say who asks for more than whether the server is up. */
  readonly secret?: string | undefined
  /** Other names the server is known under, and the proxies whose word is taken for who asks. */
  readonly names?: readonly string[]
  readonly proxies?: readonly string[]
  readonly limits?: Limits
  readonly log?: Log
  readonly page?: Hono
  /** How long a turn with a key is worked on when nobody listens any more. */
  readonly patienceMs?: number
  /** How servers on one database hear of each other's turns. */
  readonly pace?: Pace
  /** Told when the server is to stop. */
  readonly stopping?: Stopping
}

/** A telephone that lost its line in the yard has it again by then, and no model is kept busy much longer for nobody. */
const usualPatienceMs = 60_000

export function createApp({
  assistant,
  store,
  version,
  front,
  renderReply,
  host,
  secret,
  names = [],
  proxies = [],
  limits = limitsAlone,
  log = logTo((line) => process.stderr.write(line), 'faults'),
  page,
  patienceMs = usualPatienceMs,
  pace,
  stopping = new Stopping(),
}: Parts): Hono {
  const app = new Hono()
  const withHtml = (answer: Answer): unknown => ({ ...answer, html: inHtml(answer, renderReply) })
  const shown = ({ n, said, answer, job, at, aside }: TalkTurn): object => ({
    n,
    said,
    at,
    answer: withHtml(answer),
    job,
    aside: aside.map((branch) => branch.map(shown)),
  })
  const turns = new Turns(store, withHtml, patienceMs, limits.turns, pace, stopping)
  const guards = createGuards(limits, store, proxies)

  const metrics = createMetrics(store.retries)
  app.use(watched(log, metrics))
  app.use(
    secureHeaders({
      contentSecurityPolicy: {
        defaultSrc: ["'none'"],
        scriptSrc: ["'self'"],
        styleSrc: ["'self'"],
        imgSrc: ["'self'", 'data:'],
        connectSrc: ["'self'"],
        formAction: ["'self'"],
        objectSrc: ["'none'"],
        baseUri: ["'none'"],
        frameAncestors: ["'none'"],
      },
      referrerPolicy: 'no-referrer',
      // A year, as ASVS 5.0 asks (3.4.1). Browsers heed it over TLS alone.
      strictTransportSecurity: 'max-age=31536000; includeSubDomains',
    }),
  )
  app.use(ownNameOnly(host, names))
  app.use(ownPagesOnly)
  const owners = secret === undefined ? null : createOwners(secret)
  app.use(
    secret !== undefined && owners
      ? letIn({ secret, store, owners, proxies, wrong: new Rate(limits.wrongSecrets) })
      : (c, next) => {
          c.set('visitor', 'everybody')
          return next()
        },
  )
  // What a talk holds stays in no browser's or proxy's store.
  app.use(async (c, next) => {
    await next()
    if (/^\/(api|shared|mcp)(\/|$)/.test(c.req.path)) c.header('Cache-Control', 'no-store')
  })
  app.use('/api/conversations/:id/*', ownTalksOnly(store))
  app.use(guards.notTooOften)
  app.use(
    bodyLimit({
      maxSize: limits.bytes,
      onError: (c) =>
        failed(
          c,
          413,
          'too-large',
          `The request is larger than ${limits.bytes} bytes, which is the most I take. Send less at once.`,
        ),
    }),
  )

  app.use(async (c, next) =>
    c.req.url.includes('%00')
      ? failed(c, 400, 'no-character', 'The address has a NUL character in it. Take it out.')
      : next(),
  )

  app.get('/healthz', (c) => c.json({ ok: true, version, front, retries: store.retries() }))

  app.get('/readyz', async (c) => {
    if (!stopping.begun && (await isReady(store))) return c.json({ ready: true })
    c.header('Retry-After', '5')
    return failed(
      c,
      503,
      'not-ready',
      'The database cannot be reached, or its tables are not made yet. Ask again in a moment.',
    )
  })
  app.get('/metrics', (c) => c.body(metrics.text(), 200, { 'Content-Type': metricsType }))

  app.post('/api/conversations', async (c) => {
    const body = await objectIn(c)
    if (body instanceof Response) return body
    const refused = await guards.anotherTalk(c)
    if (refused) return refused
    const visitor = c.get('visitor')
    if (visitor === 'everybody') return c.json({ id: (await store.create()).id }, 201)
    if (visitor !== 'newcomer') return c.json({ id: (await store.create(visitor.owner)).id }, 201)
    const token = (owners as Owners).mint()
    const { id } = await store.create(owners?.read(token)?.owner)
    giveToken(c, token, callerOf(c, proxies).isSecure)
    // A page has it as a cookie, out of reach of scripts; a program must be told.
    return c.json({ id, ...(c.req.header('origin') === undefined ? { owner: token } : {}) }, 201)
  })
  app.delete('/api/owner', async (c) => {
    const visitor = c.get('visitor')
    if (typeof visitor === 'object') await store.leave(visitor.owner)
    // What a browser keeps of the talks that were shown goes with it (ASVS 5.0, 14.3.1).
    c.header('Clear-Site-Data', '"cache", "storage"')
    takeToken(c, callerOf(c, proxies).isSecure)
    return c.body(null, 204)
  })
  app.get('/api/conversations', async (c) => {
    const visitor = c.get('visitor')
    if (visitor === 'everybody') return c.json(await store.list())
    return c.json(visitor === 'newcomer' ? [] : await store.list(visitor.owner))
  })
  app.get('/api/conversations/:id', async (c) => {
    const found = await store.read(c.req.param('id'))
    if (!found) return noConversation(c, c.req.param('id'))
    const { id, title, created } = found.conversation
    return c.json({
      id,
      title,
      created,
      isShared: (await store.sharedBy(id)) !== null,
      turns: found.turns.map(shown),
    })
  })
  app.delete('/api/conversations/:id', async (c) => {
    await turns.haltAll(c.req.param('id'))
    return (await store.remove(c.req.param('id'))) ? c.body(null, 204) : noConversation(c, c.req.param('id'))
  })

  app.post('/api/conversations/:id/turns', (c) => askedTurn(c, c.req.param('id'), null))
  app.post('/api/conversations/:id/turns/:n{[0-9]+}/again', (c) =>
    askedTurn(c, c.req.param('id'), Number(c.req.param('n'))),
  )
  app.post('/api/conversations/:id/turns/:n{[0-9]+}/resume', async (c) => {
    const body = await objectIn(c)
    if (body instanceof Response) return body
    if (typeof body.branch !== 'number')
      return failed(c, 422, 'no-branch', '“branch” must be the number of a branch that was set aside.', 'branch')
    const resumed = await turns.resume(c.req.param('id'), Number(c.req.param('n')), body.branch)
    return isFault(resumed)
      ? failed(c, resumed.status, resumed.code, resumed.message)
      : c.json({ turns: resumed.length })
  })
  app.post('/api/conversations/:id/turns/halt', async (c) => answered(c, await turns.halt(c.req.param('id'), keyOf(c))))

  app.post('/api/conversations/:id/job/change', async (c) => {
    const id = c.req.param('id')
    const body = await objectIn(c)
    if (body instanceof Response) return body
    const word = textIn(c, body, 'word', 200)
    if (word instanceof Response) return word
    const value = textIn(c, body, 'value', 200)
    if (value instanceof Response) return value
    const at = body.at === undefined ? undefined : textIn(c, body, 'at', 200)
    if (at instanceof Response) return at
    return writtenIn(c, id, 422, (before) => changeJob(before, { word, value, ...(at ? { at } : {}) }))
  })
  app.post('/api/conversations/:id/job/undo', (c) => writtenIn(c, c.req.param('id'), 409, undoChange))
  app.post('/api/conversations/:id/job/work', async (c) => {
    const body = await objectIn(c)
    if (body instanceof Response) return body
    const calculation = textIn(c, body, 'calculation', 200)
    if (calculation instanceof Response) return calculation
    const inputs = inputsIn(c, body)
    if (inputs instanceof Response) return inputs
    return writtenIn(c, c.req.param('id'), 422, (before) => workIn(before, { calculation, inputs }))
  })
  app.post('/api/conversations/:id/job/units', async (c) => {
    const body = await objectIn(c)
    if (body instanceof Response) return body
    const { system } = body
    if (system !== 'metric' && system !== 'imperial')
      return failed(c, 422, 'no-units', '“system” must be metric or imperial.', 'system')
    const id = c.req.param('id')
    const found = await store.read(id)
    if (!found) return noConversation(c, id)
    const { said } = await changeUnits(found.turns, system)
    return whole(c, await turns.begin(id, atTheEnd(said), (before) => changeUnits(before, system)))
  })
  app.get('/api/conversations/:id/job', async (c) => {
    const found = await store.read(c.req.param('id'))
    return found ? c.json(jobSheet(found.turns)) : noConversation(c, c.req.param('id'))
  })
  app.get('/api/conversations/:id/job/open', async (c) => {
    const found = await store.read(c.req.param('id'))
    return found ? c.json(openIn(found.turns)) : noConversation(c, c.req.param('id'))
  })
  app.get('/api/conversations/:id/:export{export\\.[a-z]+}', async (c) => {
    const ending = c.req.param('export').slice('export.'.length)
    if (!isFormat(ending)) return noSuchExport(c, ending)
    const found = await store.read(c.req.param('id'))
    return found ? exported(c, found, ending) : noConversation(c, c.req.param('id'))
  })

  addSharing(app, store, renderReply)

  app.get('/api/calculations', (c) => c.json(listCalculations()))
  app.post('/api/calculations/:name', async (c) => {
    const body = await objectIn(c)
    if (body instanceof Response) return body
    const inputs = inputsIn(c, body)
    if (inputs instanceof Response) return inputs
    const confirmed = confirmedIn(c, body)
    if (confirmed instanceof Response) return confirmed
    const call = await runCalculation(c.req.param('name'), inputs, confirmed)
    if (!call)
      return failed(
        c,
        404,
        'no-calculation',
        `There is no calculation “${c.req.param('name').slice(0, 60)}”. GET /api/calculations lists them.`,
      )
    return c.json(call, call.problems.length > 0 ? 422 : 200)
  })

  addMcp(app, store)
  addDescription(app)

  if (page) app.route('/', page)

  app.notFound((c) => {
    const allowed = methodsAt(app, c.req.path)
    if (allowed === '') return failed(c, 404, 'not-found', `There is nothing at ${c.req.path.slice(0, 100)}.`)
    c.header('Allow', allowed)
    return failed(c, 405, 'wrong-method', `${c.req.method} does not go here. Use ${allowed}.`)
  })
  app.onError((fault, c) => {
    if (fault instanceof HTTPException) return failed(c, fault.status as 400, 'refused', 'The request cannot be taken.')
    // Whoever sent it went away in the middle: nobody hears this answer, and no fault of ours is counted. A database's broken line is another fault.
    if ((fault as NodeJS.ErrnoException).code === 'ECONNRESET')
      return failed(c, 400, 'cut', 'The request was cut before it was whole. Send it again.')
    return faulted(c, fault)
  })
  return app

  /** A turn without a message, at the end of the talk; what cannot be is said, and nothing is written. */
  async function writtenIn(
    c: Context,
    id: string,
    refusal: 409 | 422,
    act: (before: readonly Turn[]) => Promise<Changed>,
  ): Promise<Response> {
    const found = await store.read(id)
    if (!found) return noConversation(c, id)
    const tried = await act(found.turns)
    if (!tried.ok) return failed(c, refusal, 'not-changed', tried.message, tried.field)
    const running = await turns.begin(id, atTheEnd(tried.said), async (before) => {
      const changed = await act(before)
      if (!changed.ok) throw new Error(changed.message)
      return changed
    })
    return whole(c, running)
  }

  /** A turn at the end of the talk, or in place of the turn of that number. */
  async function askedTurn(c: Context, id: string, inPlaceOf: number | null): Promise<Response> {
    const body = await objectIn(c)
    if (body instanceof Response) return body
    const said = textIn(c, body, 'text', limits.characters)
    if (said instanceof Response) return said
    const leave = guards.place(c)
    if (leave instanceof Response) return leave
    const running = await turns
      .begin(id, { said, key: keyOf(c), inPlaceOf }, async (before, watch, signal) => {
        const spared = front === 'model' ? await guards.spared(id) : undefined
        return assistant.turn({ said, before, spared }, watch, signal)
      })
      .catch((fault: unknown) => {
        leave()
        throw fault
      })
    if (isFault(running)) leave()
    else void running.done.catch(() => undefined).finally(leave)
    return !isFault(running) && c.req.header('accept')?.includes('text/event-stream')
      ? inPieces(c, running)
      : whole(c, running)
  }

  async function whole(c: Context, running: Running | Fault): Promise<Response> {
    if (isFault(running)) return answered(c, running)
    const leave = attend(c, running)
    return answered(c, await running.done.finally(leave))
  }

  function answered(c: Context, turn: KeptTurn | Fault): Response {
    return isFault(turn)
      ? failed(c, turn.status, turn.code, turn.message)
      : c.json(withHtml(turn.answer) as Record<string, unknown>)
  }

  function inPieces(c: Context, running: Running): Response {
    const last = Number(c.req.header('last-event-id') ?? -1)
    const after = Number.isInteger(last) ? last : -1
    return streamSSE(c, async (stream) => {
      let sent = after
      let isAnswered = false
      const write = async (event: TurnEvent, index: number): Promise<void> => {
        if (index <= sent) return
        sent = index
        isAnswered ||= event.event === 'answer'
        await stream.writeSSE({ id: String(index), event: event.event, data: JSON.stringify(event.data) })
      }
      let queue: Promise<void> = Promise.resolve()
      const push = (event: TurnEvent, index: number): void => {
        queue = queue.then(() => write(event, index))
      }
      const quiet = setInterval(() => void stream.write(': still here\n\n'), 15_000)
      const leave = attend(c, running, push)
      running.events.forEach(push)
      try {
        const turn = await running.done
        if (isFault(turn)) {
          await queue
          await stream.writeSSE({
            event: 'error',
            data: JSON.stringify({ error: { code: turn.code, message: turn.message } }),
          })
        } else {
          turn.events.forEach(push)
          await queue
          // A turn that was begun anew elsewhere may have fewer pieces than were heard of it. Its answer is told all the same.
          if (!isAnswered) await write(turn.events.at(-1) as TurnEvent, sent + 1)
        }
      } catch (fault) {
        await stream.writeSSE({ event: 'error', data: JSON.stringify({ error: sayFault(c, fault) }) })
      } finally {
        leave()
        clearInterval(quiet)
      }
    })
  }
}

/** Listens to a turn until its answer is handed out, or its connection is gone. */
function attend(c: Context, running: Running, hear: Parameters<Running['listen']>[0] = () => {}): () => void {
  const leave = running.listen(hear)
  const { signal } = c.req.raw
  if (signal.aborted) leave()
  signal.addEventListener('abort', leave, { once: true })
  return leave
}

/** Longer than a database takes that is there, shorter than whoever asks waits. */
const longestLookMs = 3_000

/** The tables answer, with the columns that came last. */
const isReady = (store: Store): Promise<boolean> => {
  const looked = Promise.all([store.isOf('', ''), store.tokens({ id: '' }), store.hasLeft('')]).then(
    () => true,
    () => false,
  )
  return Promise.race([looked, pause(longestLookMs, false, { ref: false })])
}

/** The methods that go there, as the routes have it. */
const methodsAt = (app: Hono, path: string): string =>
  ['GET', 'POST', 'DELETE']
    .filter((method) => app.router.match(method, path)[0].some(([[, route]]) => route.method !== 'ALL'))
    .join(', ')

const keyOf = (c: Context): string | null => c.req.header('idempotency-key')?.slice(0, 200) || null
const atTheEnd = (said: string): Asked => ({ said, key: null, inPlaceOf: null })
