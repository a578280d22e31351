// This file is about the page's frame: the cover of the field book, before anything is written in it.

import { raw } from 'hono/html'

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

const countries = [
  ['us', 'United States'],
  ['canada', 'Canada'],
  ['uk', 'United Kingdom'],
  ['ireland', 'Ireland'],
  ['europe', 'elsewhere in Europe'],
  ['australia', 'Australia'],
  ['new-zealand', 'New Zealand'],
  ['elsewhere', 'another country'],
] as const

export const Page = ({ front, asksWho }: { front: 'offline' | 'model'; asksWho: boolean }) => (
  <html lang="en">
    <head>
      <meta charset="utf-8" />
      <meta name="viewport" content="width=device-width, initial-scale=1" />
      <meta name="color-scheme" content="light dark" />
      <title>Plumbpost: a field book for your picket fence</title>
      <link rel="icon" href="/web/mark.svg" type="image/svg+xml" />
      <link rel="stylesheet" href="/web/page.css" />
      {/* Painted once the box to ask in is there: drawn half read, the cover moves when the rest comes. As it stands, since JSX would take `blocking` out. */}
      {raw('<link rel="expect" href="#text" blocking="render">')}
      <script type="module" src="/web/page.js"></script>
    </head>
    <body>
      <a class="skip" id="skip" href="#text">
        Go to the question
      </a>
      <header id="cover" class="cover">
        <h1>Plumbpost</h1>
        <button type="button" id="inside" aria-expanded="false" aria-controls="settings pages-of-book">
          Pages and units
        </button>
        <p class="by">
          {front === 'model'
            ? 'A model reads your questions. Every figure is worked here.'
            : 'Your questions are read and worked on this machine.'}
        </p>
        <div class="settings" id="settings">
          <label>
            Units
            <select id="units">
              <option value="imperial">feet, inches</option>
              <option value="metric">metric</option>
            </select>
          </label>
          <label>
            Country
            <select id="country">
              <option value="">not said</option>
              {countries.map(([value, words]) => (
                <option value={value}>{words}</option>
              ))}
            </select>
          </label>
          <label>
            Paper
            <select id="paper">
              <option value="">as the device</option>
              <option value="day">day</option>
              <option value="night">night</option>
            </select>
          </label>
        </div>
        <nav id="pages-of-book" aria-label="Pages of the book">
          <button type="button" id="fresh">
            Fresh page
          </button>
          <button type="button" id="to-forms">
            Sums without talking
          </button>
          <details id="earlier" class="earlier">
            <summary>Earlier pages</summary>
            <ul id="pages" class="pages" />
          </details>
          <a href="/evidence">What the sums were held against</a>
          {asksWho && (
            <button type="button" id="leave">
              Leave for good
            </button>
          )}
        </nav>
      </header>
      <div class="spread">
        <main id="book" aria-label="Entries">
          <section id="forms" class="forms" aria-label="Sums without talking" hidden />
          <section id="empty" class="blank">
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
            <div id="example" class="worked" />
          </section>
          <div id="entries" />
        </main>
        <aside id="job" class="sheet" aria-labelledby="sheet-title">
          <div class="top">
            <h2 id="sheet-title" tabindex={-1}>
              Job sheet
            </h2>
            <button type="button" id="sheet-back">
              Back to the book
            </button>
          </div>
          <section class="middle" tabindex={0} aria-labelledby="sheet-title">
            <p id="sheet-empty">It fills as you decide things.</p>
            <div id="sheet" />
          </section>
          <div id="sheet-acts" class="foot" hidden>
            <button type="button" id="undo">
              Take the last change back
            </button>
            <details class="fold" name="foot">
              <summary>Plans side by side</summary>
              <div class="acts">
                <button type="button" id="usual">
                  What is still assumed?
                </button>
                <button type="button" id="compare">
                  Compare the plans
                </button>
              </div>
              <form id="keep" class="keep" autocomplete="off">
                <label for="keep-name">Keep this plan under a name</label>
                <div class="line">
                  <input id="keep-name" type="text" maxlength={40} />
                  <button type="submit">Keep it</button>
                </div>
              </form>
            </details>
            <details class="fold" name="foot">
              <summary id="take-title">Take it along</summary>
              <nav id="take" class="take" aria-labelledby="take-title">
                {taken.map(([ending, words]) => (
                  <a href={`#${ending}`} data-as={ending}>
                    {words}
                  </a>
                ))}
              </nav>
            </details>
            <details class="fold" name="foot">
              <summary>Let somebody read it</summary>
              <p id="lent-says" class="of" />
              <label for="lent-link" id="lent-label">
                The link
              </label>
              <input id="lent-link" type="text" readonly aria-describedby="lent-says" />
              <div class="acts">
                <button type="button" id="copy-link">
                  Copy the link
                </button>
                <button type="button" id="lend" aria-describedby="lent-says">
                  Make a link
                </button>
                <button type="button" id="withdraw">
                  Withdraw it
                </button>
              </div>
            </details>
          </div>
        </aside>
      </div>
      <section id="slip" class="slip" aria-label="Where a figure comes from" hidden />
      <form id="ask" class="ask" autocomplete="off" aria-label="Your question">
        <div class="over">
          <div>
            <label for="text">Ask about your fence</label>
            <p id="progress" role="status" />
          </div>
          <button type="button" id="lip" aria-expanded="false" aria-controls="job">
            Job sheet
          </button>
        </div>
        <div class="line">
          <textarea id="text" name="text" rows={1} maxlength={20000} />
          <button type="submit" id="send" class="main">
            Ask
          </button>
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
