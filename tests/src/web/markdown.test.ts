// The reply as HTML: what the page needs of markdown, and nothing that could act, reach out or pass for a section.
import { describe, expect, it } from 'vitest'
import { renderReply } from '../../../src/web/markdown.ts'

describe('what a reply needs comes out as HTML', () => {
  it('headings, lists, emphasis, code and struck-through words', () => {
    const html = renderReply(
      '**23 bags**\n\n- Pickets: ~~16~~ → 12\n\n### Working\n\n`bags = ceil(concrete / bagYield)`',
    )
    expect(html).toBe(
      '<p><strong>23 bags</strong></p>\n<ul>\n<li>Pickets: <del>16</del> → 12</li>\n</ul>\n<h3>Working</h3>\n<p><code>bags = ceil(concrete / bagYield)</code></p>\n',
    )
  })

  it('a table keeps its head and its rows', () => {
    const html = renderReply('| picket | mark (in) |\n|---|--:|\n| 1 | 2 3/16 |').replace(/\n/g, '')
    expect(html).toBe(
      '<table><thead><tr><th>picket</th><th>mark (in)</th></tr></thead><tbody><tr><td>1</td><td>2 3/16</td></tr></tbody></table>',
    )
  })

  it('a link to a page elsewhere tells that page nothing and cannot reach back', () => {
    expect(renderReply('[the table](https://wood.example/t1)')).toBe(
      '<p><a href="https://wood.example/t1" rel="noopener noreferrer nofollow">the table</a></p>\n',
    )
  })

  it('signs that mean something in HTML stay the signs they are', () => {
    expect(renderReply('3 < 4 & 5 > 4, "so"')).toBe('<p>3 &lt; 4 &amp; 5 &gt; 4, "so"</p>\n')
    expect(renderReply('&lt;script&gt;')).toBe('<p>&lt;script&gt;</p>\n')
  })
})

describe('tags written in a reply are shown as text', () => {
  const written = [
    '<script>alert(1)</script>',
    'a <script>alert(1)</script> b',
    '<ScRiPt src=//bad.example></sCrIpT>',
    '<img src=x onerror=alert(1)>',
    'x <img src="data:image/svg+xml,<svg onload=alert(1)>"> y',
    '<svg onload=alert(1)><circle/></svg>',
    '<svg><script>alert(1)</script></svg>',
    '<math><mtext><style><img src onerror=alert(1)></style></mtext></math>',
    '<iframe srcdoc="<script>alert(1)</script>"></iframe>',
    '<object data="x"></object><embed src="x">',
    '<style>.care { display: none }</style>',
    '<link rel=stylesheet href=//bad.example>',
    '<meta http-equiv=refresh content="0;url=//bad.example">',
    '<base href="//bad.example/">',
    '<form action="//bad.example"><input name=a><button>Send</button></form>',
    '<a href="javascript:alert(1)" onclick=alert(1)>press</a>',
    '<p style="position:fixed;inset:0" id="ask" class="care">over everything</p>',
    '<details open ontoggle=alert(1)><summary>x</summary></details>',
    '<video><source onerror=alert(1)></video>',
    '<noscript><p title="</noscript><img src=x onerror=alert(1)>"></noscript>',
    '<textarea><p>',
    '<!-- hidden --> <![CDATA[ x ]]> <?php x ?>',
    '<b>bold</b>',
    '<h3>Take care</h3>',
    '- <img src=x onerror=alert(1)>\n- <script>alert(1)</script>',
    '| a |\n|---|\n| <img src=x onerror=alert(1)> |',
    '**<script>alert(1)</script>**',
    '`</code><script>alert(1)</script>`',
    '<scr<script>ipt>alert(1)</scr</script>ipt>',
    '<img src=x onerror=alert(1)',
    '<<script>alert(1)//<</script>',
  ]
  // Everything that still is a tag in the HTML must be one that the page needs, bare of attributes.
  const harmless = /^<\/?(p|br|hr|blockquote|ul|ol|li|h4|strong|em|del|code|table|thead|tbody|tr|th|td)( \/)?>$/
  for (const text of written)
    it(JSON.stringify(text), () => {
      const html = renderReply(text)
      expect((html.match(/<[^>]*>?/g) ?? []).filter((tag) => !harmless.test(tag))).toEqual([])
    })

  it('the words of a tag are not lost', () => {
    expect(renderReply('cut at <b>2 3/16</b>')).toBe('<p>cut at &lt;b&gt;2 3/16&lt;/b&gt;</p>\n')
    expect(renderReply('<script>alert(1)</script>')).toBe('<p>&lt;script&gt;alert(1)&lt;/script&gt;</p>')
  })
})

describe('links and pictures', () => {
  const elsewhere = [
    'javascript:alert(1)',
    'JaVaScRiPt:alert(1)',
    'java&#10;script:alert(1)',
    '&#106;avascript:alert(1)',
    'vbscript:x',
    'data:text/html,<script>alert(1)</script>',
    'file:///etc/hosts',
    '//bad.example/x',
    '/api/conversations',
    '#ask',
    'mailto:a@b.example',
  ]
  for (const address of elsewhere)
    it(`“${address}” is no link, and its words are left`, () => {
      const html = renderReply(`[press](<${address}>)`)
      expect(html).not.toContain('<a')
      expect(html).toContain('press')
    })

  it('what comes after a link that was taken out stands as it was written', () => {
    expect(renderReply('[press](javascript:alert(1)) www.bad.example\n\n**23 bags**')).toBe(
      '<p>press <a href="http://www.bad.example" rel="noopener noreferrer nofollow">www.bad.example</a></p>\n<p><strong>23 bags</strong></p>\n',
    )
    expect(renderReply('[**the** table](/api/x)\n\n### Take care')).toBe(
      '<p><strong>the</strong> table</p>\n<h3>Take care</h3>\n',
    )
  })

  it('a picture is not fetched: its words stand for it', () => {
    expect(renderReply('![a bay](http://tracker.example/x.png)')).toBe('<p>a bay</p>\n')
    expect(renderReply('![" onerror="alert(1)](x)')).toBe('<p>" onerror="alert(1)</p>\n')
  })

  it('a title of a link cannot smuggle an attribute in', () => {
    expect(renderReply(`[a](https://a.example '" onmouseover="alert(1)')`)).toBe(
      '<p><a href="https://a.example" rel="noopener noreferrer nofollow">a</a></p>\n',
    )
  })
})

describe('sections', () => {
  it('only a heading of the third rank begins one', () => {
    const html = renderReply('# Take care\n\n## Take care\n\n###### Take care\n\n### Take care')
    expect(html.match(/<h\d>/g)).toEqual(['<h4>', '<h4>', '<h4>', '<h3>'])
  })
})
