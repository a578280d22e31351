// This file is about drawings one under the other as one, so that a page of paper holds more than one of them.
import { letter, width, words } from './svg.ts'

export interface Piece {
  readonly svg: string
  /** What stands under it. */
  readonly under: string
}

const underHigh = 26

/** Each as it is, in the middle of the widest. */
export function stacked(pieces: readonly Piece[]): string {
  const sized = pieces.map(({ svg, under }) => {
    const [, wide, high] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? []
    if (!Number(wide) || !Number(high)) throw new Error('a drawing has no viewBox with a width and a height')
    return { wide: Number(wide), high: Number(high), under, inside: svg.replace(/<\/?svg[^>]*>/g, '') }
  })
  const most = Math.max(width, ...sized.map((it) => it.wide))
  let y = 0
  const parts = sized.map(({ wide, high, under, inside }) => {
    const drawn = `<g transform="translate(${(most - wide) / 2} ${y})">${inside}</g>`
    y += high + underHigh
    return drawn + words(most / 2, y - 12, under, 'middle', 11)
  })
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${most} ${y}" role="img" font-family="sans-serif" font-size="${letter}"><rect width="${most}" height="${y}" fill="#fff"/>${parts.join('')}</svg>`
}
