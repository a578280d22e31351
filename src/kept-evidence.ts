// This file is about the report that was made, as it lies beside the built programs.
import { existsSync, readFileSync } from 'node:fs'
import { type Evidence, evidenceSchema } from './evidence.ts'

/** Nothing where none was made, or one of another shape. */
export function keptEvidence(folder: URL): Evidence | undefined {
  const file = new URL('evidence.json', folder)
  if (!existsSync(file)) return undefined
  try {
    return evidenceSchema.parse(JSON.parse(readFileSync(file, 'utf8')))
  } catch {
    return undefined
  }
}
