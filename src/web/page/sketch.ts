// This file is about the sketch beside the working: drawn from the server's shapes alone, looked at closer, its parts telling what they are.
import type { Call, Figure } from '../../answer.ts'
import { element } from './element.ts'
import { originOf, type Within } from './origin.ts'
import { ofFigure, ofPart, type OnSlip, pin, showWhileAt } from './slip.ts'

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

/** A finger as near as this, in pixels, means a part of the drawing. */
const reach = 44
/** So many times as wide as it lies in the book. */
const closest = 4

/** What can be asked in a drawing: a picket, a post, a mark, or words that show a figure. */
interface Asked {
  readonly shape: SVGElement
  readonly on: OnSlip
}

export function sketchOf(call: Call & { readonly drawing: string }, within: Within): HTMLElement {
  const parsed = new DOMParser().parseFromString(call.drawing, 'image/svg+xml').documentElement
  // Cleaned before it comes onto the page: on it a picture would be fetched at once.
  keepShapes(parsed)
  const drawn = document.adoptNode(parsed) as unknown as SVGSVGElement
  const words = drawn.querySelector(':scope > desc')?.textContent ?? drawn.querySelector(':scope > title')?.textContent
  drawn.setAttribute('role', 'group')
  drawn.setAttribute('aria-label', words ?? 'Sketch')
  // Read out as its name already; and its title would hang at the pointer all over the sheet.
  for (const it of drawn.querySelectorAll(':scope > title, :scope > desc')) it.remove()
  const box = element('div', { class: 'sheet-of-paper', tabindex: '0', role: 'group', 'aria-label': 'Sketch' })
  box.append(drawn)
  letAsk(drawn, [...partsOf(drawn), ...wordsOf(drawn, call, within)])
  return element('figure', { class: 'sketch' }, box, closerBy(box))
}

/** The engine names a part in its title. */
const partsOf = (drawn: SVGElement): Asked[] =>
  [...drawn.querySelectorAll<SVGGElement>('g')].flatMap((shape) => {
    const title = shape.querySelector(':scope > title')
    const says = title?.textContent ?? ''
    title?.remove()
    return says === '' ? [] : [{ shape, on: ofPart(says) }]
  })

const wordsOf = (drawn: SVGElement, call: Call, within: Within): Asked[] =>
  [...drawn.querySelectorAll<SVGTextElement>('text')].flatMap((shape) => {
    const figure = figureIn(shape.textContent ?? '', call)
    if (!figure) return []
    shape.classList.add('asked-of')
    return [{ shape, on: ofFigure(figure, originOf(figure, within)) }]
  })

/** One stop for the keyboard, and the arrows from part to part; a finger takes what is nearest. */
function letAsk(drawn: SVGElement, asked: readonly Asked[]): void {
  for (const [i, { shape, on }] of asked.entries()) {
    shape.classList.add('part')
    shape.setAttribute('role', 'img')
    shape.setAttribute('aria-label', `${on.head}${on.label ? ` ${on.label}` : ''}: ${on.tells}`)
    shape.setAttribute('tabindex', i === 0 ? '0' : '-1')
    showWhileAt(shape, on)
  }
  const goTo = (one: Asked): void => {
    for (const { shape } of asked) shape.setAttribute('tabindex', shape === one.shape ? '0' : '-1')
    one.shape.focus()
  }
  drawn.addEventListener('keydown', (event) => {
    const i = asked.findIndex((it) => it.shape === event.target)
    const here = asked[i]
    if (!here) return
    const to = { ArrowRight: i + 1, ArrowDown: i + 1, ArrowLeft: i - 1, ArrowUp: i - 1, Home: 0, End: asked.length - 1 }
    if (event.key === 'Enter' || event.key === ' ') pin(here.shape, here.on)
    else if (event.key in to) goTo(asked[to[event.key as keyof typeof to]] ?? here)
    else return
    event.preventDefault()
  })
  drawn.addEventListener('click', (event) => {
    const [nearest] = asked
      .map((it) => {
        const { left, right, top, bottom } = it.shape.getBoundingClientRect()
        const far = Math.hypot(
          Math.max(left - event.clientX, 0, event.clientX - right),
          Math.max(top - event.clientY, 0, event.clientY - bottom),
        )
        return { ...it, far, area: (right - left) * (bottom - top) }
      })
      // Of two that lie over one another the smaller is meant.
      .sort((a, b) => a.far - b.far || a.area - b.area)
    if (nearest && nearest.far <= reach) pin(nearest.shape, nearest.on)
  })
}

/** The figure that a drawing's words show: the longest of the sum's that stands in them whole, and of those the one they name. */
function figureIn(words: string, { results, inputs }: Call): Figure | undefined {
  const standing = [...results, ...inputs]
    .filter((it) => /\d/.test(it.text) && ` ${words} `.includes(` ${it.text} `))
    .sort((a, b) => b.text.length - a.text.length)
  return standing.find((it) => it.label.split(' ').some((one) => one.length > 3 && words.includes(one))) ?? standing[0]
}

/** Nearer and farther, around what is in the middle. */
function closerBy(box: HTMLElement): HTMLElement {
  let times = 1
  const closer = element('button', { type: 'button' }, 'Closer')
  const farther = element('button', { type: 'button' }, 'Farther')
  const look = (anew: number): void => {
    const middle = (scroll: number, seen: number): number => ((scroll + seen / 2) * anew) / times - seen / 2
    const to = [middle(box.scrollLeft, box.clientWidth), middle(box.scrollTop, box.clientHeight)] as const
    times = anew
    box.style.setProperty('--times', String(times))
    box.scrollTo({ left: to[0], top: to[1], behavior: 'instant' })
    // Not taken out of reach: whoever pressed it last would be left nowhere.
    closer.setAttribute('aria-disabled', String(times >= closest))
    farther.setAttribute('aria-disabled', String(times <= 1))
  }
  farther.setAttribute('aria-disabled', 'true')
  closer.addEventListener('click', () => look(Math.min(closest, times * 2)))
  farther.addEventListener('click', () => look(Math.max(1, times / 2)))
  box.addEventListener('keydown', ({ key }) => {
    if (key === '+' || key === '=') look(Math.min(closest, times * 2))
    if (key === '-') look(Math.max(1, times / 2))
  })
  return element('div', { class: 'acts' }, closer, farther)
}

/** Nothing but shapes and words is let onto the page, and nothing that could run or reach out. */
function keepShapes(root: Element): void {
  for (const it of [root, ...root.querySelectorAll('*')]) {
    if (!shapes.has(it.localName)) {
      it.remove()
      continue
    }
    for (const { name } of [...it.attributes]) if (/^on|href|^style$|^id$|^class$/i.test(name)) it.removeAttribute(name)
  }
}
