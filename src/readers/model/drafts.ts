// This file is about calls while they arrive in pieces: which piece belongs to which call.
// A known id decides; else the index, which is a label and no position; else the call that was opened last.
import { isEmptyObject, isWholeObject } from './arguments.ts'
import { isRecord } from './speech.ts'

export interface Draft {
  id: string | undefined
  name: string
  args: string
  kept: Record<string, unknown>
}

interface Piece {
  readonly id: string | undefined
  readonly label: string | undefined
  readonly name: string
  readonly args: string
  readonly kept: Record<string, unknown>
}

export interface Drafts {
  /** The pieces of one event. In a whole answer each entry is a call of its own. */
  take(entries: readonly unknown[], whole: boolean): void
  /** Every call but those with neither name nor arguments. */
  all(): readonly Draft[]
}

export function createDrafts(isTool: (name: string) => boolean): Drafts {
  const drafts: Draft[] = []
  const byId = new Map<string, Draft>()
  const byLabel = new Map<string, Draft>()

  const open = (name = ''): Draft => {
    const draft: Draft = { id: undefined, name, args: '', kept: {} }
    drafts.push(draft)
    return draft
  }
  const goOn = (draft: Draft, piece: Piece): Draft =>
    isAnother(draft, piece, isTool) ? open(piece.name || draft.name) : draft

  const draftFor = (piece: Piece, touched: ReadonlySet<Draft>): Draft => {
    const last = drafts.at(-1)
    const known = piece.id === undefined ? undefined : byId.get(piece.id)
    const there = piece.label === undefined ? undefined : byLabel.get(piece.label)
    if (known) {
      // Where one id serves for several calls, the index tells them apart.
      if (there && there.id === piece.id) return goOn(there, piece)
      return piece.label !== undefined && isRenamed(known, piece) ? open() : goOn(known, piece)
    }
    if (piece.id !== undefined) {
      // An id that comes late, or changes with every piece, opens nothing: a call is opened by its name.
      const before = piece.label === undefined ? last : there
      return before && piece.name === '' && !isWholeObject(before.args) ? before : open()
    }
    if (there) return goOn(there, piece)
    if (piece.label !== undefined) return last && piece.name === '' && !isWholeObject(last.args) ? last : open()
    if (!last) return open()
    if (piece.name === '') return goOn(last, piece)
    return touched.has(last) || piece.name !== last.name || isWholeObject(last.args) ? open() : last
  }

  const take = (entries: readonly unknown[], whole: boolean): void => {
    const touched = new Set<Draft>()
    for (const entry of entries) {
      const piece = pieceOf(entry)
      if (!piece) continue
      const draft = whole ? open() : draftFor(piece, touched)
      if (holdsPlaceFor(draft, piece)) draft.args = ''
      if (!isEcho(draft, piece)) draft.args += piece.args
      draft.id ??= piece.id
      draft.name ||= piece.name
      Object.assign(draft.kept, piece.kept)
      if (piece.id !== undefined) byId.set(piece.id, draft)
      if (piece.label !== undefined) byLabel.set(piece.label, draft)
      touched.add(draft)
    }
  }
  return { take, all: () => drafts.filter((draft) => draft.name !== '' || draft.args.trim() !== '') }
}

/** One whole object of arguments followed by the head of another is a second call, whatever its id or index. */
function isAnother(draft: Draft, piece: Piece, isTool: (name: string) => boolean): boolean {
  const renamed = isRenamed(draft, piece)
  if (!isWholeObject(draft.args)) return renamed && piece.id === undefined && isTool(draft.name) && isTool(piece.name)
  return renamed || (piece.args.trimStart().startsWith('{') && !isEcho(draft, piece) && !holdsPlaceFor(draft, piece))
}

const isRenamed = (draft: Draft, piece: Piece): boolean =>
  piece.name !== '' && draft.name !== '' && piece.name !== draft.name

/** Some servers end a call by saying all of it once more, under its id. */
const isEcho = (draft: Draft, piece: Piece): boolean =>
  piece.id !== undefined &&
  piece.id === draft.id &&
  isWholeObject(draft.args) &&
  piece.args.trim() === draft.args.trim()

/** Some servers open a call with an empty object and then send the filled one. */
const holdsPlaceFor = (draft: Draft, piece: Piece): boolean =>
  isEmptyObject(draft.args) && piece.args.trimStart().startsWith('{') && !isEmptyObject(piece.args)

function pieceOf(entry: unknown): Piece | undefined {
  if (!isRecord(entry)) return undefined
  const { index, id, type: _type, function: called, ...unknownFields } = entry
  const { name, arguments: args, ...unknownInside } = isRecord(called) ? called : {}
  const kept = {
    ...filled(unknownFields),
    ...(Object.keys(filled(unknownInside)).length > 0 ? { function: filled(unknownInside) } : {}),
  }
  return {
    id: typeof id === 'string' && id !== '' ? id : typeof id === 'number' ? String(id) : undefined,
    label: typeof index === 'number' || (typeof index === 'string' && index !== '') ? String(index) : undefined,
    name: typeof name === 'string' ? name.trim() : '',
    args: args === undefined || args === null ? '' : typeof args === 'string' ? args : JSON.stringify(args),
    kept,
  }
}

/** Fields that hold something. */
export const filled = (fields: Readonly<Record<string, unknown>>): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(fields).filter(
      ([, value]) => value !== null && value !== undefined && value !== '' && !isEmptyValue(value),
    ),
  )

const isEmptyValue = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && Object.keys(value).length === 0
