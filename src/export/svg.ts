// This file is about the drawings of an answer as one picture: one under the other, what each is of above it, the cautions under all.
import type { Turn } from '../answer.ts'
import { sizeOf } from './paper/drawing.ts'

const between = 34

/** Of the last answer that has a drawing; null where none has. */
export function drawingsInOne(turns: readonly Turn[], caution: string): string | null {
  const last = turns.findLast((turn) => turn.answer.calls.some((it) => it.drawing))
  if (!last) return null
  const drawn = last.answer.calls.flatMap(({ title, drawing }) => {
    if (!drawing) return []
    const [wide, high] = sizeOf(drawing)
    return [{ title, drawing, wide, high }]
  })
  const wide = Math.max(...drawn.map((it) => it.wide))
  const parts: string[] = []
  let y = 0
  for (const it of drawn) {
    parts.push(written(it.title, wide, y + 22, 13))
    parts.push(
      it.drawing.replace(
        '<svg ',
        `<svg x="${(wide - it.wide) / 2}" y="${y + between}" width="${it.wide}" height="${it.high}" `,
      ),
    )
    y += between + it.high + 8
  }
  const lines = caution.split(/(?<=\.) /)
  for (const line of lines) {
    y += 14
    parts.push(written(line, wide, y, 10))
  }
  const high = y + 12
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${wide} ${high}" width="${wide * 2}" height="${high * 2}" font-family="sans-serif"><title>${escaped(drawn.map((it) => it.title).join('; '))}</title><rect width="${wide}" height="${high}" fill="#fff"/>${parts.join('')}</svg>\n`
}

/** In the middle, and never wider than the picture. */
function written(text: string, wide: number, y: number, size: number): string {
  const most = (wide - 16) / ([...text].length * 0.6)
  return `<text x="${wide / 2}" y="${y}" text-anchor="middle" font-size="${Math.min(size, Math.floor(most * 10) / 10)}" fill="#111">${escaped(text)}</text>`
}

const escaped = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')
