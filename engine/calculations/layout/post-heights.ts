// Posts cut to a string: how long each post is, from the height of the string above its ground.
//
//   ───●──────●──────●───  string at the post tops
//      ┃      ┃      ┃
//   ▔▔▔┃▔▔──__┃      ┃     string above ground, and what is in the ground below
//             ▔▔▔──__┃
import { calculation } from '../../calculation.ts'
import { stringDrawing } from '../../drawings/slope.ts'
import { add, compare, subtract } from '../../quantities/amount.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { stockLength } from '../../words/lumber.ts'
import { groundReadings, shortestPost, tallestPost } from '../../words/sloping-fence.ts'
import { embedment } from '../../words/posts.ts'

const mostPosts = 200

export const postHeights = calculation({
  name: 'post-heights',
  title: 'Posts cut to a string',
  answers:
    'How long each post must be when the tops follow a string, from the height of the string above the ground at every post.',
  needs: { groundReadings, embedment, stockLength },
  may: ['stockLength'],
  gives: { tallestPost, shortestPost },
  headlines: ['tallestPost', 'shortestPost'],
  together: { tallestPost: ['tallestPost', 'shortestPost'] },
  called: ['string line', 'to the string', 'string heights', 'posts to a string', 'string above ground'],
  locals: { highest: 'length', lowest: 'length' },
  lines: {
    tallestPost: ['highest + embedment', 'where the string is highest above the ground'],
    shortestPost: ['lowest + embedment', 'where it is lowest'],
  },
  work({ embedment, stockLength }, { line, has, rows, put, refuse, remark, doubt, table }) {
    const heights = rows('groundReadings')
    if (heights.length > mostPosts)
      refuse(
        'groundReadings',
        `That is ${show(quantity(heights.length, 'post'))}. Take the fence in parts of at most ${show(quantity(mostPosts, 'post'))}.`,
      )
    const most = heights.reduce((a, b) => (compare(a.amount, b.amount) === -1 ? b : a))
    const least = heights.reduce((a, b) => (compare(b.amount, a.amount) === -1 ? b : a))
    put('highest', most)
    put('lowest', least)
    const tallest = line('tallestPost')
    line('shortestPost')
    const stock = has('stockLength') ? stockLength : undefined
    const whole = (height: Quantity): Quantity => ({ ...height, amount: add(height.amount, embedment.amount) })
    table({
      title: 'Post by post, in order',
      columns: [
        { label: 'post', unit: '' },
        { label: 'above ground', unit: most.unit },
        { label: 'whole post', unit: most.unit },
        ...(stock ? [{ label: 'cut off', unit: most.unit }] : []),
      ],
      rows: heights.map((it, i) => [
        i + 1,
        show(it),
        show(whole(it)),
        ...(stock
          ? [less(stock, whole(it)) ? 'too short' : show({ ...it, amount: subtract(stock.amount, whole(it).amount) })]
          : []),
      ]),
    })
    if (stock && less(stock, tallest))
      doubt(
        'contradictory',
        'stockLength',
        `Posts of ${show(stock)} are too short for the longest, which must be ${show(tallest)}. Buy longer ones, lower the string there, or step the tops.`,
      )
    remark(
      'Set the posts long, and cut them to the string when they stand. Number them on the string, and measure each one at its own place.',
    )
  },
  sources: [
    {
      fact: 'post = string above ground + what is in the ground',
      from: 'Derived here from the sketch; needs no table.',
    },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'tools', 'preserved-wood'],
  drawing: stringDrawing,
  examples: [
    // 58 + 24 = 82; 48 + 24 = 72
    {
      ask: 'String heights at the posts are 48, 51, 54 1/2 and 58 in, and 24 in of each post is in the ground. How long is the longest post?',
      given: { groundReadings: ['48 in', '51 in', '54 1/2 in', '58 in'], embedment: '24 in' },
      expect: { tallestPost: '82 in', shortestPost: '72 in' },
    },
    // 1450 + 600 = 2050
    {
      ask: 'Posts to a string: the string is 1200 mm, 1310 mm and 1450 mm above ground and the posts are buried 600 mm. How long must the posts be?',
      given: { groundReadings: ['1200 mm', '1310 mm', '1450 mm'], embedment: '600 mm' },
      expect: { tallestPost: '2,050 mm', shortestPost: '1,800 mm' },
    },
  ],
})
