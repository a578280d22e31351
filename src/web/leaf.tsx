// This file is about a leaf: a page of the book’s own paper that has nothing of the book’s to press, to be read.
import type { Child } from 'hono/jsx'

interface Leaf {
  readonly title: string
  /** What stands under the name of the book. */
  readonly cover?: Child
  readonly children: Child
  /** Whether it is somebody’s own, and no search engine may keep it. */
  readonly isPrivate?: boolean
}

export const Leaf = ({ title, cover, children, isPrivate = false }: Leaf) => (
  <html lang="en">
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <meta name="color-scheme" content="light dark" />
      {isPrivate && <meta name="robots" content="noindex" />}
      <title>{title} · Plumbpost</title>
      <link rel="icon" href="/web/mark.svg" type="image/svg+xml" />
      <link rel="stylesheet" href="/web/page.css" />
    </head>
    <body>
      <header class="cover">
        <h1>Plumbpost</h1>
        {cover}
      </header>
      {children}
    </body>
  </html>
)
