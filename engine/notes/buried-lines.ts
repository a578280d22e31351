// This file is about advice on buried lines: who is called, what the marks say, and how to dig beside them.
import type { Note } from './note.ts'

export const buriedLines: readonly Note[] = [
  {
    name: 'calling-before-you-dig',
    title: 'Calling before you dig',
    text: 'Every hole counts, dug by hand too, and so do stakes and edging. Mark the run in white, call your dig service or fill in its form, and wait until every owner of a line has answered. Start only then, and keep the ticket with you. If the run moves, call again.',
    called: [
      'call|calling before dig|digging|hole hand|post|have|who|need|fence',
      'who|number call dig|digging|locate|marked hole|post|before|line',
    ],
    asks: ['Do I have to call before digging by hand?', 'who do i call before i dig post holes?'],
    from: 'https://digline.com/utility-color-codes; rules differ by place; the rest common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'private-lines',
    title: 'Lines that nobody marks',
    text: 'A dig service marks what its members own, up to the meter. Sprinkler pipes, garden lighting, gas to a grill, a cable to the shed and a dog’s hidden wire are not marked. Look for heads, boxes and the places where a line leaves the house, switch off what you can, and hire a private locator when in doubt. Dig by hand across the likely track.',
    called: [
      'sprinkler|irrigation|private|lighting|lights|grill|shed|septic mark|marked|locate|find pipe|line|wire|cable|they|who',
      'sprinkler|irrigation pipe|line dig|digging|hit|hole|post',
    ],
    asks: ['Do they mark my sprinkler pipes too?', 'who locates private lines like garden lighting?'],
    from: 'https://digline.com/utility-color-codes; the rest common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'hand-digging-near-marks',
    title: 'Digging by hand near marks',
    text: 'In the strip on each side of a mark that your dig service sets, {{strip}} in some places, counted to the edge of the hole, one careful adult digs, by hand. No machine and no pointed bar there. Loosen a little with a blunt spade, feel, and clear the rest with your hands until the line shows or the hole is deep enough. Do not pry against a line or hang on it. Better still, move the post.',
    figures: { strip: { label: 'strip on each side of a mark', value: '24 in', metric: '600 mm' } },
    called: [
      'hand dig|digging near|beside|close|next|around mark|line|marked|flag|pipe|cable',
      'dig|digging safely|safe|careful|carefully near|beside|close|next mark|marked|line|pipe|cable|gas',
    ],
    asks: ['Who digs by hand near the marks, and how close?', 'how do i dig safely close to a marked line?'],
    from: 'https://kremc.com/safety/digging-safely/ for the strip, which differs by place; the rest common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'colours-of-the-marks',
    title: 'What the colours on the ground mean',
    text: 'White is where somebody means to dig, and pink a survey. Red is electric, yellow gas, oil or steam, orange telephone and data, blue drinking water, purple irrigation and reclaimed water, green sewers and drains. These are the US colours; other countries have their own. A mark says what and roughly where, and never how deep.',
    called: [
      'red|yellow|orange|blue|green|purple|pink|white|colour paint|flag|mark|spray mean|is|for grass|lawn|ground|yard|gas|water|line|electric',
      'red|yellow|orange|blue|green|purple|pink|white flag|mark|paint|line mean',
      'colour mark|flag|spray mean|which|stand',
    ],
    asks: ['What does the red paint on my lawn mean?', 'which colour flag is the gas line?'],
    from: 'https://digline.com/utility-color-codes',
    cautions: ['utilities'],
  },
  {
    name: 'ticket-has-run-out',
    title: 'When the ticket has run out',
    text: 'Paint that you can still see is not a ticket that still counts. When it has run out, stop and call again: lines are added, flags get pulled, and the rain moves paint. Count the holes you can dig inside one ticket, and call for a new one before the old one ends.',
    called: [
      'ticket|locate ran|expired|lapsed|over dig|digging|still|now|paint|again',
      'mark|paint|flags still|old|faded|visible dig|digging ticket|expired|again|valid',
    ],
    asks: [
      'The ticket ran out but the paint is still there, can I keep digging?',
      'my locate ticket expired, what do i do now?',
    ],
    from: 'https://ne1call.com/ticket-life/ and https://digline.com/utility-color-codes; the life of a ticket differs by place; the rest common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'hitting-a-line',
    title: 'When you have hit a line',
    text: 'Stop, and get everybody away. If you smell or hear gas, leave, touch no switch and start no engine, and call the emergency number from a distance. If it is a cable, touch neither it nor the tool that is in it, keep others off, and call its owner. Report a scratch too: never bury it and hope.',
    called: [
      'hit|nick|nicked|cut|struck|broke|damaged|scratched cable|pipe|wire|gas|line dig|digging|shovel|spade|hole|do|now|if',
      'smell|smelled gas',
    ],
    asks: ['I hit a cable while digging, what do I do?', 'i nicked a gas pipe with the shovel, what now?'],
    from: 'common practice, no source',
    cautions: ['utilities'],
  },
]
