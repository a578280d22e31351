// This file is about markdown: the reply as the page shows it, with nothing in it that could act.
import { marked } from 'marked'
import sanitize from 'sanitize-html'

/** HTML of a reply: text, lists, tables and emphasis. Whatever else is in it is shown as the text it is, or left out. */
export function renderReply(markdown: string): string {
  const html = marked.parse(markdown, { async: false, gfm: true })
  return sanitize(html, {
    allowedTags: [
      'p',
      'ul',
      'ol',
      'li',
      'strong',
      'em',
      'del',
      'code',
      'br',
      'hr',
      'h3',
      'h4',
      'table',
      'thead',
      'tbody',
      'tr',
      'th',
      'td',
      'a',
      'blockquote',
    ],
    allowedAttributes: { a: ['href', 'rel'] },
    allowedSchemes: ['http', 'https'],
    disallowedTagsMode: 'discard',
    transformTags: { a: sanitize.simpleTransform('a', { rel: 'noopener noreferrer nofollow' }) },
  })
}
