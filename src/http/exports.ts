// This file is about a conversation taken along: one route, and a file for each ending.
import type { Context } from 'hono'
import { calendarFile } from '../export/ics.ts'
import { spreadsheet } from '../export/csv.ts'
import { drawingsInOne } from '../export/svg.ts'
import { exportConversation } from '../export/export.ts'
import { fieldPackPdf } from '../export/pdf.ts'
import { talkInMarkdown } from '../export/md.ts'
import { packOf, packWithCuts, standingLine } from '../export/pack.ts'
import type { Store } from '../store/store.ts'
import { today } from '../today.ts'
import { failed } from './errors.ts'

type Found = NonNullable<Awaited<ReturnType<Store['read']>>>
interface Made {
  readonly body: string | Uint8Array
  readonly name: string
}
/** Nothing to export yet: why, and what to do. */
interface Nothing {
  readonly code: string
  readonly message: string
}

/** What a talk can be taken along as, by the ending of the file. */
export const formatsOfExport = {
  json: 'application/json',
  md: 'text/markdown',
  pdf: 'application/pdf',
  csv: 'text/csv',
  ics: 'text/calendar',
  svg: 'image/svg+xml',
} as const
type Ending = keyof typeof formatsOfExport

const formats: Readonly<Record<Ending, (found: Found) => Made | Nothing | Promise<Made | Nothing>>> = {
  json: ({ conversation: { id, title, created }, turns }) => ({
    body: JSON.stringify(exportConversation(turns, { id, title, created })),
    name: 'conversation',
  }),
  md: ({ conversation: { title }, turns }) =>
    turns.length === 0
      ? nothingAsked
      : {
          body: talkInMarkdown(turns, { title, version: packOf(turns).version, date: today() }),
          name: 'talk',
        },
  pdf: async ({ turns }) => {
    const pack = await packWithCuts(turns)
    if (pack.sheets.length === 0)
      return {
        code: 'nothing-to-print',
        message:
          'No answer with figures stands yet, so there is no sheet to print. Ask for one first, such as the spacing of a bay.',
      }
    return {
      body: await fieldPackPdf(pack, { date: today(), caution: standingLine }),
      name: 'field-pack',
    }
  },
  csv: async ({ conversation: { title }, turns }) =>
    turns.length === 0
      ? nothingAsked
      : {
          body: await spreadsheet(turns, await packWithCuts(turns), { title, caution: standingLine }),
          name: 'figures',
        },
  ics: async ({ conversation: { id }, turns }) => {
    const pack = await packWithCuts(turns)
    const stamp = turns.at(-1)?.at
    if (pack.calendar.length === 0 || !stamp)
      return {
        code: 'no-dates',
        message:
          'No day is fixed yet, so there is nothing to put in a calendar. Say when you call or begin, and ask when the fence is finished.',
      }
    return {
      body: await calendarFile(pack, { id, stamp, caution: standingLine }),
      name: 'calendar',
    }
  },
  svg: ({ turns }) => {
    const body = drawingsInOne(turns, standingLine)
    return body === null
      ? {
          code: 'no-drawing',
          message: 'No answer here has a drawing yet. Ask for something that is drawn, such as the spacing of a bay.',
        }
      : { body, name: 'drawing' }
  },
}

const nothingAsked: Nothing = {
  code: 'nothing-asked',
  message: 'Nothing has been asked here yet, so there is nothing to export. Ask a question first.',
}

export const isFormat = (ending: string): ending is Ending => Object.hasOwn(formats, ending)

export const noSuchExport = (c: Context, ending: string): Response =>
  failed(
    c,
    404,
    'no-such-export',
    `There is no export as “${ending.slice(0, 20)}”. There is ${Object.keys(formats)
      .map((it) => `export.${it}`)
      .join(', ')}.`,
  )

export async function exported(c: Context, found: Found, ending: Ending): Promise<Response> {
  const made = await formats[ending](found)
  if ('code' in made) return failed(c, 409, made.code, made.message)
  // The turn in its name tells one plan from the next in a folder of downloads.
  const name = ending === 'json' ? made.name : `${made.name}-turn-${found.turns.length}`
  const type = formatsOfExport[ending]
  c.header('Content-Type', type.startsWith('text/') ? `${type}; charset=utf-8` : type)
  c.header('Content-Disposition', `attachment; filename="${name}.${ending}"`)
  return c.body(typeof made.body === 'string' ? made.body : new Uint8Array(made.body))
}
