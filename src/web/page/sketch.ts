// This file is about the sketch beside the working: drawn from the server's shapes alone, looked at closer, its parts telling what they are.
import type { Call, Figure } from '../../answer.ts'
import { element } from './element.ts'
import { originOf, type Within } from './origin.ts'
import { pin } from './slip.ts'

const shapes = new Set([
  'svg',
  'g',
  'line',
  'rect',
  'path',
  'circle',
  'ellipse',
  'polyline',
  'polygon',
  'text',
  'tspan',
  'title',
  'desc',
])

/** A finger as near as this means a figure of the drawing. */
const reach = 44

export function sketchOf(call: Call & { readonly drawing: string }, within: Within): HTMLElement {
  const svg = call.drawing
  const parsed = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement
  // Cleaned before it comes onto the page: on it a picture would be fetched at once.
  keepShapes(parsed)
  const drawn = document.adoptNode(parsed)
  const words = drawn.querySelector(':scope > desc')?.textContent ?? drawn.querySelector(':scope > title')?.textContent
  drawn.setAttribute('role', 'img')
  drawn.setAttribute('aria-label', words ?? 'Sketch')
  // Its own title would hang at the pointer all over the sheet.
  drawn.querySelector(':scope > title')?.remove()
  const box = element('div', { class: 'sheet-of-paper', tabindex: '0', role: 'group', 'aria-label': 'Sketch' })
  box.append(drawn)
  const asked = [...drawn.querySelectorAll<SVGTextElement>('text')].flatMap((text) => {
    const figure = figureIn(text.textContent ?? '', call)
    if (figure) text.setAttribute('class', 'asked-of')
    return figure ? [{ text, figure }] : []
  })
  drawn.addEventListener('click', (event) => {
    const [nearest] = asked
      .map((it) => ({ ...it, far: distance(it.text.getBoundingClientRect(), event as MouseEvent) }))
      .sort((a, b) => a.far - b.far)
    if (nearest && nearest.far <= reach) pin(box, { figure: nearest.figure, origin: originOf(nearest.figure, within) })
  })
  const closer = element('button', { type: 'button', 'aria-pressed': 'false' }, 'Look closer')
  closer.addEventListener('click', () => {
    const isClose = figure.classList.toggle('closer')
    closer.setAttribute('aria-pressed', String(isClose))
    closer.textContent = isClose ? 'Step back' : 'Look closer'
  })
  const figure = element('figure', { class: 'sketch' }, box, element('div', { class: 'acts' }, closer))
  return figure
}

/** The figure that a drawing's words show: the longest of the sum's that stands in them whole, and of those the one they name. */
function figureIn(words: string, { results, inputs }: Call): Figure | undefined {
  const standing = [...results, ...inputs]
    .filter((it) => /\d/.test(it.text) && ` ${words} `.includes(` ${it.text} `))
    .sort((a, b) => b.text.length - a.text.length)
  return standing.find((it) => it.label.split(' ').some((one) => one.length > 3 && words.includes(one))) ?? standing[0]
}

const distance = ({ left, right, top, bottom }: DOMRect, { clientX: x, clientY: y }: MouseEvent): number =>
  Math.hypot(Math.max(left - x, 0, x - right), Math.max(top - y, 0, y - bottom))

/** Nothing but shapes and words is let onto the page, and nothing that could run or reach out. */
function keepShapes(root: Element): void {
  for (const it of [root, ...root.querySelectorAll('*')]) {
    if (!shapes.has(it.localName)) {
      it.remove()
      continue
    }
    for (const { name } of [...it.attributes]) if (/^on|href|^style$|^id$/i.test(name)) it.removeAttribute(name)
  }
}
