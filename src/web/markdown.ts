// This file is about markdown: the reply as the page shows it, with nothing in it that could act.
import { Marked } from 'marked'
import sanitize from 'sanitize-html'

/** HTML of a reply: text, lists, tables and emphasis. Tags that are written in the text are shown as the text they are. */
export function renderReply(markdown: string): string {
  return sanitize(reader.parse(markdown, { async: false }), allowed)
}

const asText = (text: string): string =>
  text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;')

// Text that holds a tag is still text. A picture would be fetched from somewhere: its words stand for it.
const reader = new Marked({
  gfm: true,
  renderer: {
    html: ({ text, block }) => (block ? `<p>${asText(text)}</p>` : asText(text)),
    image: ({ text }) => asText(text),
    // A link leads to a page elsewhere, or it is no link: its words are left.
    link({ href, tokens }) {
      const words = this.parser.parseInline(tokens)
      return /^https?:\/\//i.test(href) ? `<a href="${asText(href)}">${words}</a>` : words
    },
  },
})

const allowed: sanitize.IOptions = {
  allowedTags: [
    ...['p', 'br', 'hr', 'blockquote', 'ul', 'ol', 'li', 'h3', 'h4'],
    ...['strong', 'em', 'del', 'code', 'a'],
    ...['table', 'thead', 'tbody', 'tr', 'th', 'td'],
  ],
  allowedAttributes: { a: ['href', 'rel'] },
  allowedSchemes: ['http', 'https'],
  allowProtocolRelative: false,
  disallowedTagsMode: 'discard',
  transformTags: {
    // A section begins at a heading of the third rank; no other heading may look like one.
    ...Object.fromEntries(['h1', 'h2', 'h5', 'h6'].map((name) => [name, 'h4'])),
    // Never into a tag that is not allowed: the cleaner would then close the next tag by the wrong name.
    a: sanitize.simpleTransform('a', { rel: 'noopener noreferrer nofollow' }),
  },
}
