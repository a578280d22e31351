// This file is about reading a printed pack back: the words on each page, and every line that is drawn, where it stands on the paper.
import { decodePDFRawStream, PDFArray, PDFDocument, PDFRawStream, type PDFPage } from 'pdf-lib'
import { getDocumentProxy } from 'unpdf'

export interface Stroke {
  readonly from: readonly [x: number, y: number]
  readonly to: readonly [x: number, y: number]
}
export interface Written {
  readonly text: string
  readonly x: number
  readonly y: number
  readonly wide: number
  readonly size: number
}
export interface ReadPage {
  readonly width: number
  readonly height: number
  readonly text: string
  /** Each piece of text with its left end on the line it stands on, in points from the lower left corner, and the size of its letters. */
  readonly words: readonly Written[]
  readonly strokes: readonly Stroke[]
}

export async function readPdf(bytes: Uint8Array): Promise<ReadPage[]> {
  const drawn = await PDFDocument.load(bytes)
  const written = await getDocumentProxy(new Uint8Array(bytes))
  return Promise.all(
    drawn.getPages().map(async (page, i) => {
      const { items } = await (await written.getPage(i + 1)).getTextContent()
      const words = items.flatMap((it) =>
        'str' in it && it.str.trim() !== ''
          ? [
              {
                text: it.str,
                x: it.transform[4] as number,
                y: it.transform[5] as number,
                wide: it.width,
                size: it.height,
              },
            ]
          : [],
      )
      const text = words.map((it) => it.text).join(' ')
      return { ...page.getSize(), text, words, strokes: strokesOf(page) }
    }),
  )
}

type Matrix = readonly [number, number, number, number, number, number]

/** Only what moves the paper and what draws straight lines on it: q Q cm m l S B. */
function strokesOf(page: PDFPage): Stroke[] {
  const strokes: Stroke[] = []
  const kept: Matrix[] = []
  let now: Matrix = [1, 0, 0, 1, 0, 0]
  let [path, at]: [Stroke[], readonly [number, number]] = [[], [0, 0]]
  let given: number[] = []
  for (const token of contentOf(page).split(/\s+/)) {
    const number = Number(token)
    if (token !== '' && !Number.isNaN(number)) {
      given.push(number)
      continue
    }
    if (token === 'q') kept.push(now)
    if (token === 'Q') now = kept.pop() ?? now
    if (token === 'cm') now = times(given as unknown as Matrix, now)
    if (token === 'm') at = onPaper(given, now)
    if (token === 'l') {
      const to = onPaper(given, now)
      path.push({ from: at, to })
      at = to
    }
    if (token === 'S' || token === 'B') strokes.push(...path)
    if (/^(S|s|f|f\*|B|n)$/.test(token)) path = []
    given = []
  }
  return strokes
}

function contentOf(page: PDFPage): string {
  const contents = page.node.Contents()
  const parts = contents instanceof PDFArray ? contents.asArray().map((it) => page.doc.context.lookup(it)) : [contents]
  return parts
    .map((it) => (it instanceof PDFRawStream ? Buffer.from(decodePDFRawStream(it).decode()).toString('latin1') : ''))
    .join('\n')
}

const times = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + b * i,
  a * h + b * j,
  c * g + d * i,
  c * h + d * j,
  e * g + f * i + k,
  e * h + f * j + l,
]

const onPaper = ([x = 0, y = 0]: readonly number[], [a, b, c, d, e, f]: Matrix): readonly [number, number] => [
  a * x + c * y + e,
  b * x + d * y + f,
]
