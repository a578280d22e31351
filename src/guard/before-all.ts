// This file is about what comes before anything a model returned: an emergency, and what must be refused. The program reads both itself.
import { isRefused } from '../readers/offline/declines.ts'
import { isUrgent, onlyThese } from '../readers/offline/emergencies.ts'
import type { Request } from '../request.ts'

/** The request that is worked: a model’s, unless the message tells of an emergency or asks for something dangerous. */
export function beforeAll(request: Request, own: Request): Request {
  const urgent = [own, request].find(isUrgent)
  if (urgent) return onlyThese(urgent.notes ?? [])
  return isRefused(own) ? own : request
}
