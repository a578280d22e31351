// From the call to the first hole, and to the last day of the ticket: counted day by day.
//
//   Mon     Tue  Wed  Thu   Fri
//   call    ·    ·    ·     dig        three full working days: the day of the call does not count
//
// No law is built in. The notice and the ticket's life are the person's, from their own one-call centre.
import { calculation } from '../../calculation.ts'
import { less, type Quantity, quantity } from '../../quantities/quantity.ts'
import { daysAfter, weekdayOf, weekdays } from '../../quantities/calendar.ts'
import { toNumber } from '../../quantities/amount.ts'
import { calendarStripDrawing } from '../../drawings/calendar-strip.ts'
import { show } from '../../quantities/show.ts'
import {
  callDate,
  callWeekday,
  firstDigDay,
  firstDigWeekday,
  holesADay,
  holidays,
  lastTicketDay,
  noticeDays,
  renewBy,
  ticketCounts,
  ticketLife,
} from '../../words/digging-notice.ts'
import { posts } from '../../words/posts.ts'
import { firstAfterNotice, nthWorking, workingBetween, workingWithout } from '../../working-days.ts'

const longestNotice = 60
const longestLife = 400

export const digNotice = calculation({
  name: 'dig-notice',
  title: 'The days between the call and the first hole',
  answers:
    'The earliest day to dig, the last day of the ticket and the day to renew it by, from the day of the call and the notice your one-call centre asks, and how many holes a day that makes.',
  needs: { callDate, callWeekday, noticeDays, holidays, ticketLife, ticketCounts, posts },
  may: ['callDate', 'callWeekday', 'holidays', 'ticketLife', 'ticketCounts', 'posts'],
  oneOf: [['callDate', 'callWeekday']],
  onlyFor: {
    callDate: ['firstDigDay', 'lastTicketDay', 'renewBy', 'holesADay'],
    callWeekday: ['firstDigWeekday'],
    ticketLife: ['lastTicketDay', 'renewBy', 'holesADay'],
    ticketCounts: ['lastTicketDay', 'renewBy', 'holesADay'],
    posts: ['holesADay'],
  },
  gives: { firstDigDay, firstDigWeekday, lastTicketDay, renewBy, holesADay },
  headlines: ['firstDigDay', 'firstDigWeekday'],
  together: {
    firstDigDay: ['firstDigDay', 'firstDigWeekday', 'lastTicketDay', 'renewBy', 'holesADay'],
    firstDigWeekday: ['firstDigWeekday', 'firstDigDay'],
    lastTicketDay: ['lastTicketDay', 'renewBy', 'firstDigDay'],
    renewBy: ['renewBy', 'lastTicketDay', 'firstDigDay'],
    holesADay: ['holesADay', 'lastTicketDay', 'firstDigDay'],
  },
  locals: { workingDays: 'number' },
  lines: {
    holesADay: ['ceil(sum(posts) / workingDays)', 'every working day from the first to the last, both counted'],
  },
  work(given, { line, has, rows, put, tell, refuse, doubt, remark, table }) {
    const notice = toNumber(given.noticeDays.amount)
    if (notice > longestNotice)
      refuse(
        'noticeDays',
        `A notice of ${show(given.noticeDays)} is longer than any I can count. Check it with your one-call centre.`,
      )
    const closed = has('holidays') ? rows('holidays') : []
    const isWorking = workingWithout(closed)
    const theirs =
      'These days are counted by the notice you gave me, not by any law that I know. Your one-call centre gives the date that holds. Dig only when every utility has answered, whatever the calendar says.'
    if (!has('callDate')) {
      // A week without holidays stands in for the one that was not named: only its weekdays are told.
      const monday: Quantity = { kind: 'date', amount: quantity(4, 'ratio').amount, unit: 'date' }
      const call = daysAfter(monday, Object.keys(callWeekday.options ?? {}).indexOf(given.callWeekday))
      const day = firstAfterNotice(call, notice, isWorking)
      tell('firstDigWeekday', (weekdays[weekdayOf(day)] as string).toLowerCase())
      remark(
        `Counted: ${show(given.noticeDays)} after the day of the call, weekends left out. A holiday in between puts it off by a day.`,
      )
      remark(theirs)
      return
    }
    const weekday = (weekdays[weekdayOf(given.callDate)] as string).toLowerCase()
    if (has('callWeekday') && given.callWeekday !== weekday)
      refuse(
        'callWeekday',
        `You call on ${show(given.callDate)}, and said that it is a ${callWeekday.options?.[given.callWeekday]?.label}. Check the day.`,
      )
    const first = firstAfterNotice(given.callDate, notice, isWorking)
    tell('firstDigDay', first)
    remark(
      `Counted: the day of the call, ${show(given.callDate)}, does not count; then ${show(given.noticeDays)} pass whole, weekends${closed.length > 0 ? ` and ${closed.map(show).join(', ')}` : ''} left out.`,
    )
    if (closed.length === 0)
      remark('I know no holidays, and you named none: each that falls in between puts it off by a day. Name them.')
    if (has('ticketLife') && has('ticketCounts')) {
      const life = toNumber(given.ticketLife.amount)
      if (life > longestLife)
        refuse(
          'ticketLife',
          `A ticket for ${show(given.ticketLife)} is longer than any I can count. Check it with your one-call centre.`,
        )
      const last =
        given.ticketCounts === 'working-from-call'
          ? nthWorking(given.callDate, life, isWorking)
          : daysAfter(given.ticketCounts === 'calendar-from-dig' ? first : given.callDate, life - 1)
      if (less(last, first))
        refuse(
          'ticketLife',
          `The ticket would run out on ${show(last)}, before you may dig on ${show(first)}. Check its life and how it is counted.`,
        )
      tell('lastTicketDay', last)
      const renew = lastCall(last, notice, isWorking)
      if (renew && !less(renew, given.callDate)) {
        tell('renewBy', renew)
        const next = firstAfterNotice(renew, notice, isWorking)
        remark(
          less(daysAfter(last, 1), next)
            ? `Call again on ${show(renew)} at the latest: ${show(given.noticeDays)} then pass before the ticket runs out. From ${show(daysAfter(last, 1))} until ${show(next)} no ticket holds; call a day sooner to dig then.`
            : `Call again on ${show(renew)} at the latest: ${show(given.noticeDays)} then pass before the ticket runs out, and the new one begins on ${show(next)}.`,
        )
        remark(
          'Your centre may have a rule of its own for renewing: its date comes first. A holiday near the end of the ticket puts the call forward: name it.',
        )
      }
      const days = workingBetween(first, last, isWorking)
      if (has('posts') && days > 0) {
        put('workingDays', quantity(days, 'ratio'))
        line('holesADay')
        remark(
          'Rain, rock and a helper who does not come are not in that. Renew the ticket in good time if you fall behind: paint that still shows is not a ticket that still holds.',
        )
      } else if (has('posts'))
        doubt('contradictory', 'ticketLife', `There is no working day from ${show(first)} to ${show(last)}.`)
      table({
        title: 'Call, dig, expiry',
        columns: [
          { label: 'what', unit: '' },
          { label: 'day', unit: 'date' },
        ],
        rows: [
          ['call', show(given.callDate)],
          ['first day to dig', show(first)],
          ...(renew ? [['renew by', show(renew)]] : []),
          ['last day of the ticket', show(last)],
        ],
      })
    } else if (has('ticketLife'))
      doubt('missing', 'ticketCounts', 'How long a ticket lasts depends on which days are counted.', ticketCounts.ask)
    remark(theirs)
  },
  sources: [
    {
      fact: 'the day of the call does not count, and the days of notice must pass whole',
      from: 'As some one-call centres count, for instance https://www.sc811.com/notice-calendar/ : a Monday call and three full working days give Friday',
    },
    { fact: 'notice, holidays and the life of the ticket', from: 'As you gave them. Rules differ and change.' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code'],
  drawing: calendarStripDrawing,
  examples: [
    // Monday; Tuesday, Wednesday, Thursday pass whole; Friday
    {
      ask: 'I call on Monday 5 October 2026 and need 3 full working days notice. When can I dig?',
      given: { callDate: '2026-10-05', noticeDays: '3' },
      expect: { firstDigDay: 'Friday 9 October 2026' },
    },
    // Tuesday; Wednesday and Thursday pass; Friday
    {
      ask: 'If I call on a Tuesday and the rule is 2 full working days, which day can I dig?',
      given: { callWeekday: 'tuesday', noticeDays: '2' },
      expect: { firstDigWeekday: 'friday' },
    },
    // Thu 24 Dec + 2: Fri 25 is a holiday, Mon 28 and Tue 29 pass, Wed 30; 28 days with the call: 24 Dec … 20 Jan
    // A call on Mon 18 Jan lets Tue 19 and Wed 20 pass
    {
      ask: 'Called on 24 December 2026, 2 working days notice, holiday on 25 December 2026, ticket good for 28 calendar days including the call. When can I dig and when does it expire?',
      given: {
        callDate: '2026-12-24',
        noticeDays: '2',
        holidays: ['2026-12-25'],
        ticketLife: '28',
        ticketCounts: 'calendar-from-call',
      },
      expect: {
        firstDigDay: 'Wednesday 30 December 2026',
        lastTicketDay: 'Wednesday 20 January 2027',
        renewBy: 'Monday 18 January 2027',
      },
    },
  ],
})

/** The last working day from which so many full working days still pass by that day, itself included. */
function lastCall(end: Quantity, notice: number, isWorking: (day: Quantity) => boolean): Quantity | undefined {
  for (let back = 0; back <= 7 * (notice + 2) + longestLife; back++) {
    const day = daysAfter(end, -back)
    if (isWorking(day) && !less(end, nthWorking(day, notice, isWorking))) return day
  }
  return undefined
}
