// This file is about laying out a reply: cut at its headings, its results as ruled rows, its sums aligned.
import { element } from './element.ts'

export interface Section {
  readonly title: string
  readonly content: HTMLElement
}

/** What stands before the first heading answers; the rest shows how. The reply was cleaned on the server, and is parsed apart from the page, so nothing in it runs. */
export function layOut(html: string): { answer: HTMLElement; rest: Section[] } {
  const parsed = new DOMParser().parseFromString(html, 'text/html')
  const answer = element('div', { class: 'text' })
  const rest: Section[] = []
  let into = answer
  for (const node of [...parsed.body.childNodes]) {
    if (node instanceof Element && node.tagName === 'H3') {
      into = element('div', { class: 'text' })
      rest.push({ title: node.textContent ?? '', content: into })
    } else into.append(document.adoptNode(node))
  }
  for (const list of answer.querySelectorAll('ul')) ruleRows(list)
  for (const { title, content } of rest) {
    if (title === 'Working') for (const step of content.querySelectorAll('li')) alignSum(step)
    for (const table of content.querySelectorAll('table')) boxTable(table, title)
  }
  for (const table of answer.querySelectorAll('table')) boxTable(table, 'Table')
  return { answer, rest }
}

/** A long table scrolls in its own box, also with the keyboard. */
function boxTable(table: HTMLTableElement, title: string): void {
  const box = element('div', { class: 'table', tabindex: '0', role: 'group', 'aria-label': title })
  table.replaceWith(box)
  box.append(table)
}

const longestValue = 40

/** “Gap by the tape: 2 3/16 in” becomes a row: the words left, the figure right. Other lines stay as they are. */
function ruleRows(list: HTMLUListElement): void {
  for (const row of list.children) {
    const first = row.firstChild
    const colon = first instanceof Text ? first.data.indexOf(': ') : -1
    if (!(first instanceof Text) || colon < 0) continue
    if ((row.textContent ?? '').length - colon > 2 * longestValue) continue
    const value = element('span', { class: 'value' }, first.data.slice(colon + 2))
    first.data = first.data.slice(0, colon + 2)
    while (first.nextSibling) value.append(first.nextSibling)
    markNew(value)
    row.replaceChildren(element('span', {}, first), value)
    row.classList.add('row')
    // Without its dots a list is no longer read out as one, unless it says so.
    list.setAttribute('role', 'list')
    list.classList.add('rows')
  }
}

/** “~~16 pickets~~ → 12 pickets”: the old one is struck through, the new one is written in. */
function markNew(value: HTMLElement): void {
  const last = value.lastChild
  if (!value.querySelector('del') || !(last instanceof Text)) return
  const arrow = last.data.indexOf('→ ')
  if (arrow < 0) return
  const now = last.data.slice(arrow + 2)
  last.data = last.data.slice(0, arrow + 2)
  value.append(element('ins', {}, now))
}

/** The formula, the numbers put in and the result, one under the other at their equals signs. */
function alignSum(step: HTMLLIElement): void {
  const formula = step.querySelector('code')
  const result = step.querySelector('strong')
  const [name, ...worked] = formula?.textContent?.split(' = ') ?? []
  const between = formula?.nextSibling
  if (!formula || !result || !name || worked.length === 0 || !(between instanceof Text)) return
  const numbers = between.data.replace(/\s*=\s*$/, '').trim()
  const sum = element(
    'div',
    { class: 'sum' },
    element('code', { class: 'name' }, `${name} `),
    element('code', {}, `= ${worked.join(' = ')} `),
    element('span', {}, `${numbers} `),
    element('span', {}, '= ', result),
  )
  formula.remove()
  between.remove()
  step.append(sum)
  step.classList.add('step')
  step.parentElement?.setAttribute('role', 'list')
}
