// This file is about the sketch beside the working: drawn from the server's shapes alone, looked at closer, its parts telling what they are.
import { element } from './element.ts'

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

export function sketchOf(svg: string): HTMLElement {
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
  const closer = element('button', { type: 'button', 'aria-pressed': 'false' }, 'Look closer')
  closer.addEventListener('click', () => {
    const isClose = figure.classList.toggle('closer')
    closer.setAttribute('aria-pressed', String(isClose))
    closer.textContent = isClose ? 'Step back' : 'Look closer'
  })
  const figure = element('figure', { class: 'sketch' }, box, element('div', { class: 'acts' }, closer))
  return figure
}

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
