// This file is about making elements: text is always text, never markup.

type Child = Node | string | null | undefined

/** `element('p', { class: 'said' }, 'words')`. */
export function element<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Readonly<Record<string, string>> = {},
  ...children: Child[]
): HTMLElementTagNameMap[K] {
  const made = document.createElement(name)
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value)
  made.append(...children.filter((it): it is Node | string => it !== null && it !== undefined))
  return made
}

export function found<T extends HTMLElement>(id: string): T {
  const it = document.getElementById(id)
  if (!it) throw new Error(`the page has no “${id}”`)
  return it as T
}
