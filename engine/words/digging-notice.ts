// This file is about the time between a call and the first hole, and about paint marks on the ground.
import { word } from './word.ts'

const theirs = 'Your one-call centre or utility says it: ask them, rules differ and change.'
const days = {
  monday: { label: 'Monday', called: ['monday', 'mon'] },
  tuesday: { label: 'Tuesday', called: ['tuesday', 'tue', 'tues'] },
  wednesday: { label: 'Wednesday', called: ['wednesday', 'wed'] },
  thursday: { label: 'Thursday', called: ['thursday', 'thu', 'thurs'] },
  friday: { label: 'Friday', called: ['friday', 'fri'] },
  saturday: { label: 'Saturday', called: ['saturday', 'sat'] },
  sunday: { label: 'Sunday', called: ['sunday', 'sun'] },
} as const

export const callDate = word<'date'>('callDate', {
  kind: 'date',
  label: 'day of the call',
  measure: 'The day on which you call or file the request, with its year.',
  ask: 'On which day do you call? Give the date with its year, or the weekday.',
  called: {
    names: ['call on', 'i call', 'called on', 'calling on', 'call date', 'file on', 'request on'],
    things: ['call', 'ticket', 'request', 'locate'],
    sides: ['on'],
    plainly: true,
    byDefault: true,
  },
  replaces: ['callWeekday'],
})

export const callWeekday = word<'choice'>('callWeekday', {
  kind: 'choice',
  label: 'weekday of the call',
  measure: 'The weekday on which you call.',
  ask: 'On which weekday do you call?',
  called: { names: ['call weekday'] },
  options: days,
})

export const noticeDays = word<'count'>('noticeDays', {
  kind: 'count',
  noun: 'working day',
  label: 'full working days of notice',
  whole: true,
  measure: `Working days that must pass whole before you dig. ${theirs}`,
  ask: 'How many full working days of notice does your one-call centre ask?',
  called: {
    names: [
      'full working days',
      'working days notice',
      'business days notice',
      'days notice',
      'working days',
      'business days',
      'full business days',
      'clear days',
      'days of notice',
    ],
    things: ['notice', 'full working day', 'full business day', 'day notice'],
    sides: ['notice'],
    plainly: true,
  },
  possible: { least: '0' },
  plausible: { from: '1', to: '15' },
})

export const ticketLife = word<'count'>('ticketLife', {
  kind: 'count',
  noun: 'ticket day',
  label: 'days the ticket is good for',
  whole: true,
  measure: theirs,
  ask: 'For how many days is the ticket good?',
  called: {
    names: [
      'ticket life',
      'ticket lasts',
      'ticket is good for',
      'good for',
      'valid for',
      'marks are valid',
      'expires after',
      'lasts',
    ],
    things: ['ticket', 'marks'],
    sides: ['good', 'valid', 'lasts', 'life'],
    plainly: true,
  },
  possible: { least: '1' },
  plausible: { from: '5', to: '120' },
})

export const ticketCounts = word<'choice'>('ticketCounts', {
  kind: 'choice',
  label: 'how the ticket’s days are counted',
  measure: `Which days count, and from when. ${theirs}`,
  ask: 'Are the ticket’s days calendar days or working days, and counted from the call or from the first day you may dig?',
  called: { names: ['ticket counting'] },
  options: {
    'calendar-from-call': {
      label: 'calendar days, the day of the call counted',
      called: [
        'calendar days including the call',
        'calendar days from the call',
        'calendar days',
        'including the call day',
      ],
    },
    'calendar-from-dig': {
      label: 'calendar days from the first day you may dig',
      called: [
        'calendar days from the start',
        'calendar days from the dig date',
        'from the start date',
        'from the legal start',
      ],
    },
    'working-from-call': {
      label: 'working days after the day of the call',
      called: ['working days from the call', 'business days from the call', 'working days after the call'],
    },
  },
})

export const holidays = word<'date'>('holidays', {
  kind: 'date',
  list: true,
  label: 'holidays in between',
  measure: 'Days besides weekends on which nobody works: as your utility, office or yard keeps them.',
  ask: 'Which holidays fall in between? Give each date with its year.',
  called: {
    names: ['holiday', 'holidays', 'closed on', 'public holiday', 'bank holiday', 'day off'],
    things: ['holiday', 'holidays', 'off', 'closed', 'shut', 'day off', 'except', 'excluding'],
    sides: ['holiday', 'closed'],
    plainly: true,
  },
})

export const firstDigDay = word<'date'>('firstDigDay', {
  kind: 'date',
  label: 'earliest day to dig',
  measure: 'By the notice you gave me, if every utility has answered by then.',
  ask: 'When may you dig?',
  called: {
    names: ['earliest dig day'],
    asks: [
      'when can i dig',
      'when may i dig',
      'when can i start digging',
      'earliest i can dig',
      'earliest day to dig',
      'earliest dig day',
      'when can we dig',
      'first day to dig',
      'how soon can i dig',
      'when can i start',
    ],
  },
})

export const firstDigWeekday = word<'choice'>('firstDigWeekday', {
  kind: 'choice',
  label: 'earliest weekday to dig',
  measure: 'By the notice you gave me, if no holiday falls in between and every utility has answered.',
  ask: 'On which weekday may you dig?',
  called: { names: ['earliest dig weekday'], asks: ['which day can i dig', 'what day can i dig', 'which weekday'] },
  options: days,
})

export const lastTicketDay = word<'date'>('lastTicketDay', {
  kind: 'date',
  label: 'last day of the ticket',
  measure: 'After it the ticket is dead, however bright the paint.',
  ask: 'When does the ticket run out?',
  called: {
    names: ['last day of the ticket', 'expiry'],
    asks: [
      'when does the ticket expire',
      'when does it expire',
      'when does the ticket run out',
      'how long is the ticket good',
      'ticket expiry',
      'last day to dig',
      'until when can i dig',
    ],
  },
})

export const renewBy = word<'date'>('renewBy', {
  kind: 'date',
  label: 'renew the ticket by',
  measure: 'The last working day on which a new call leaves the whole notice before the ticket runs out.',
  ask: 'By when must the ticket be renewed?',
  called: {
    names: ['renew by'],
    asks: [
      'when do i renew the ticket',
      'when must i renew',
      'when should i renew',
      'when do i have to renew',
      'when do i call again',
      'by when must i renew',
      'renew the ticket',
      'last day to renew',
    ],
  },
})

export const holesADay = word<'count'>('holesADay', {
  kind: 'count',
  noun: 'hole',
  label: 'holes a working day, to be done inside the ticket',
  measure: 'Holes divided by the working days from the first day to the last, rounded up.',
  ask: 'How many holes a day?',
  called: {
    names: ['holes a day'],
    asks: ['how many holes a day', 'holes per day', 'how many holes each day', 'how many a day'],
  },
})

// ── paint marks ──

export const markDistance = word<'length'>('markDistance', {
  kind: 'length',
  label: 'centre of the hole to the mark',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Level, from the middle of the hole to the middle of the paint mark.',
  ask: 'How far is the centre of the hole from the middle of the mark?',
  called: {
    names: [
      'from the mark',
      'to the mark',
      'from the paint',
      'from the line mark',
      'center to the mark',
      'from the flag',
      'from the gas line',
      'from the paint mark',
      'to the paint',
      'from the yellow line',
      'from the red line',
      'from the marked line',
    ],
    things: ['mark', 'paint', 'flag', 'paint mark'],
    sides: ['from', 'away', 'off'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '50 ft' },
})

export const zoneEachSide = word<'length'>('zoneEachSide', {
  kind: 'length',
  label: 'tolerance zone on each side',
  units: { imperial: 'in', metric: 'mm' },
  measure: `Measured from the outside of the buried line, not from the paint. ${theirs}`,
  ask: 'How wide is the tolerance zone on each side of the line, by your one-call centre’s rule?',
  called: {
    names: [
      'tolerance zone',
      'zone is',
      'tolerance of',
      'hand dig zone',
      'zone of',
      'each side',
      'on each side',
      'either side',
      'tolerance',
    ],
    things: ['zone', 'tolerance'],
    sides: ['zone', 'tolerance', 'each side', 'either side'],
    plainly: true,
  },
  possible: { above: '0 in' },
  plausible: { from: '6 in', to: '10 ft' },
})

export const facilityWidth = word<'length'>('facilityWidth', {
  kind: 'length',
  label: 'width of the buried line',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Pipe or cable, outside to outside, when the mark says it.',
  ask: 'How wide is the buried line itself, if the mark says it?',
  called: {
    names: ['pipe', 'pipe is', 'pipe diameter', 'line is', 'width of the pipe', 'inch pipe', 'facility'],
    things: ['pipe', 'cable', 'main', 'duct'],
    sides: ['wide', 'diameter'],
    plainly: true,
  },
  possible: { least: '0 in' },
  plausible: { from: '0 in', to: '6 ft' },
  usual: {
    value: '0 in',
    because: 'the mark does not say how wide the line is; a wide one reaches further',
    from: 'Decided here. Ask for its width: the zone begins at its outside.',
  },
})

export const zoneWidth = word<'length'>('zoneWidth', {
  kind: 'length',
  label: 'whole tolerance zone',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'The buried line and the zone on both its sides.',
  ask: 'How wide is the whole tolerance zone?',
  called: {
    names: ['whole zone', 'zone width'],
    asks: [
      'how wide is the tolerance zone',
      'how wide is the zone',
      'width of the tolerance zone',
      'how wide is the hand dig zone',
    ],
  },
})

export const edgeToZone = word<'length'>('edgeToZone', {
  kind: 'length',
  label: 'edge of the hole to the zone',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Less than nothing when the hole reaches into the zone.',
  ask: 'How far is the edge of the hole from the zone?',
  called: {
    names: ['edge to the zone'],
    asks: ['how far is the edge', 'how close is the hole', 'edge of the hole from', 'how far is the hole from'],
  },
})

export const moveHole = word<'length'>('moveHole', {
  kind: 'length',
  label: 'move the hole by',
  units: { imperial: 'in', metric: 'mm' },
  measure: 'Away from the mark, so that its edge is outside this mark’s zone.',
  ask: 'How far must the hole move?',
  called: {
    names: ['shift of the hole'],
    asks: ['how far must the hole move', 'how far do i move the hole', 'move the hole', 'how far to move the post'],
  },
})

export const outsideZone = word<'verdict'>('outsideZone', {
  kind: 'verdict',
  label: 'hole and this mark',
  measure: 'The edge of the hole against the tolerance zone of this one mark. No other line is judged by it.',
  ask: 'Is the hole outside this mark’s zone?',
  called: {
    names: ['outside the zone'],
    asks: [
      'can i dig there',
      'is the hole too close',
      'is it too close to the line',
      'is my hole in the zone',
      'do i have to hand dig',
      'hand dig',
      'inside the tolerance zone',
      'too close to the gas line',
      'too close to the mark',
      'in the tolerance zone',
      'ok to auger',
      'can i use an auger',
    ],
  },
  says: {
    yes: 'outside this mark’s zone',
    no: 'inside this mark’s zone: dig by hand only',
    unknown: 'cannot say where the hole lies',
  },
})
