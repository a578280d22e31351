// This file is about the page's frame: the cover of the field book, before anything is written in it.

const examples = [
  'How many 60 lb bags for 11 corner and gate posts? Holes 10 in wide, 30 in deep, 6 in of gravel.',
  'What spacing for a 70 5/8 in bay, 3 1/2 in pickets, gaps at most 2 1/2 in?',
  'The meter reads 14 % at the surface and 20 % at depth. Water still beads. Is it dry enough to finish?',
  'How deep do I set posts for a 4 ft fence?',
]

/** What a page can be taken along as, and what that is called. */
const taken = [
  ['pdf', 'Sheets to print'],
  ['ics', 'Calendar'],
  ['csv', 'Spreadsheet'],
  ['svg', 'Drawing'],
  ['md', 'Text'],
  ['json', 'Record'],
] as const

export const Page = () => (
  <html lang="en">
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <meta name="color-scheme" content="light dark" />
      <title>Plumbpost: a field book for your picket fence</title>
      <link rel="icon" href="/web/mark.svg" type="image/svg+xml" />
      <link rel="stylesheet" href="/web/page.css" />
      <script type="module" src="/web/page.js"></script>
    </head>
    <body>
      <a class="skip" id="skip" href="#text">
        Go to the question
      </a>
      <header class="cover">
        <h1>Plumbpost</h1>
        <p class="by" id="front" aria-live="polite">
          &nbsp;
        </p>
        <nav aria-label="Pages of the book">
          <button type="button" id="fresh">
            Turn to a fresh page
          </button>
          <details id="earlier">
            <summary>Earlier pages</summary>
            <ul id="pages" />
          </details>
        </nav>
      </header>
      <div class="spread">
        <main id="book" aria-label="Entries">
          <section id="empty">
            <p>Ask about your fence in your own words. Every answer shows the numbers it used and how it was worked.</p>
            <ul class="examples">
              {examples.map((text) => (
                <li>
                  <button type="button" class="example">
                    {text}
                  </button>
                </li>
              ))}
            </ul>
          </section>
          <div id="entries" />
          <p id="progress" role="status" aria-live="polite" />
        </main>
        <aside class="sheet" aria-labelledby="sheet-title" tabindex={0}>
          <h2 id="sheet-title">Job sheet</h2>
          <p id="sheet-empty">It fills as you decide things.</p>
          <div id="sheet" />
          <nav id="take" class="take" aria-labelledby="take-title" hidden>
            <h3 id="take-title">Take it along</h3>
            {taken.map(([ending, words]) => (
              <a href={`#${ending}`} data-as={ending}>
                {words}
              </a>
            ))}
          </nav>
        </aside>
      </div>
      <form id="ask" class="ask" autocomplete="off" aria-label="Your question">
        <label for="text">Ask about your fence</label>
        <div class="line">
          <textarea id="text" name="text" rows={2} maxlength={20000} required />
          <button type="submit">Ask</button>
        </div>
        <div id="fault" role="alert" hidden>
          <p id="fault-text" />
          <button type="button" id="again">
            Try again
          </button>
        </div>
      </form>
      <noscript>
        <p>This page needs its script. Without it, ask in the terminal: npm run --silent ask -- "your question"</p>
      </noscript>
    </body>
  </html>
)
