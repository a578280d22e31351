// This file is about advice on drying wood before it is hung or finished.
import type { Note } from './note.ts'

export const drying: readonly Note[] = [
  {
    name: 'stacking-and-stickers',
    title: 'Stacking boards to dry',
    text: 'Stack level and a hand above the ground, with dry sticks of one thickness between the layers, about {{apart}} apart and exactly above each other. Weight on top, a roof over, sides open to the wind. Not in full sun, which warps the top layer, and never wrapped in a sheet, which keeps the wet in. Turn out the crooked ones before you stack: they pull their neighbours.',
    figures: { apart: { label: 'distance between the sticks', value: '24 in', metric: '600 mm' } },
    called: [
      'store|keep|stack lumber|timber|wood|board|picket before|until|building|garage|outside',
      'stack|stacking|pile|piling board|picket|lumber|wood|post dry|drying|how|flat|warp|store|sticker',
      'sticker|sticks between board|layer|picket',
      'store|storing|keep board|picket|lumber|wood dry|flat|straight|outside|tarp|cover',
    ],
    asks: [
      'How do I stack the boards so they dry?',
      'do i need stickers between the boards?',
      'how should the boards be piled?',
    ],
    from: 'common practice, no source',
    cautions: ['lifting'],
  },
  {
    name: 'trusting-the-meter',
    title: 'Trusting a moisture meter',
    text: 'A pin meter is good between about {{low}} and {{high}}; above that it only says wet. Set it to the kind of wood, allow for cold wood, which reads low, and for treated wood, which reads a little high. Measure several boards, away from the ends, on a dry face and deep in the board. What counts is the wettest place and whether it still falls from week to week.',
    figures: {
      low: { label: 'least that a meter reads well', value: '6 %' },
      high: { label: 'most that a meter reads well', value: '30 %' },
    },
    called: ['meter cheap|accurate|accuracy|reliable', 'meter use|using moisture|wood|board how|where|pins'],
    asks: ['Can I trust a cheap moisture meter?', 'how do i use a moisture meter on the boards?'],
    from: 'Wood Handbook, FPL-GTR-190 (2010), chapter 13, read at https://issuhub.com/view/index/5801?pageIndex=294; the rest common practice, no source',
    cautions: [],
  },
  {
    name: 'drops-of-water',
    title: 'The drop of water',
    text: 'Drip a little water on a clean board. If it soaks in within about {{soak}}, a finish will soak in too; if it stands in beads, wait, wash or sand, and try again. It tells whether the surface drinks, not whether the wood is dry inside: for that take a meter as well. A factory coat of water repellent beads for a long time on dry wood.',
    figures: { soak: { label: 'time for a drop to soak in', value: '30 seconds' } },
    called: [
      'drop|drip|sprinkle water test|trick|tell',
      'water test|trick wood|board|stain|paint|dry|lumber how|what|work|do',
    ],
    asks: ['How does the water drop test on wood work?', 'what is the water test before staining wood?'],
    from: 'todayshomeowner.com/radio/water-test-for-wood, a practice tip and not a standard; the rest common practice, no source',
    cautions: [],
  },
  {
    name: 'waiting-for-treated-wood',
    title: 'Waiting for treated wood',
    text: 'Wood dried again after treatment can be finished at once. Wood that came wet needs from {{short}} to {{long}}, by sun, wind and thickness: posts longest, pickets least. Go by a meter and a drop of water, not by the calendar, and once it is dry do not let it weather before the first coat.',
    figures: {
      short: { label: 'least wait for wet treated pine', value: '1 week' },
      long: { label: 'most that is commonly named', value: '2 months' },
    },
    called: [
      'treated|pt|tanalised paint|stain|finish|coat long|soon|before|when|after|wait',
      'treated|pt|preserved|pressure wait|waiting|soon|immediately|away stain|staining|paint|painting|finish|seal',
      'treated|pressure new|fresh stain|paint|seal|finish soon|wait',
    ],
    asks: ['Should I wait before staining new treated wood?', 'can i paint pressure treated pickets right away?'],
    from: 'southernpine.com/sealers-finishes-pressure-treated-lumber; the rest common practice, no source',
    cautions: ['weather', 'preserved-wood'],
  },
  {
    name: 'bare-wood-over-winter',
    title: 'Bare wood left to weather',
    text: 'Do not let bare smooth wood weather before paint: sun loosens its surface, and a film on it peels early. The first coat should be on within about {{soon}} of hanging, as soon as the wood is dry enough. If winter comes first, leave it bare, and wash, sand and dry it in spring before anything goes on. A penetrating stain minds the wait less than paint does.',
    figures: { soon: { label: 'longest wait in the weather before a film', value: '2 weeks' } },
    called: [
      'leave|leaving|left|bare|unfinished|unpainted winter|weather|weathered|year|spring|season|months paint|painting|stain|finish|bare|unpainted|unfinished',
      'weather|age new|bare|fresh fence|wood|picket before|first|let paint|painting|stain|finish',
    ],
    asks: [
      'Can I leave the wood bare over winter and paint in spring?',
      'old advice says let a new fence weather before paint, is that right?',
    ],
    from: 'Wood Handbook, FPL-GTR-190 (2010), chapter 16, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/378; the rest common practice, no source',
    cautions: ['weather'],
  },
  {
    name: 'drying-faster',
    title: 'Wood that is too wet still',
    text: 'Give it air, not heat: stack it on sticks under a roof with the sides open, and turn the heap’s long side to the wind. A fan that moves air through the heap helps as long as the air is dry; in damp weather it helps little. A heater or full sun dries the skin and cracks it. If it stays above the number on the can, hang it bare and finish it when it is dry; measure again after a dry week.',
    called: [
      'fan|heater|dehumidifier|faster|quicker|speed|hurry dry|drying|boards|wood|lumber|moisture',
      'too|still wet|damp|high boards|wood|lumber|pickets do|now|what',
    ],
    asks: [
      'Does a fan help to dry the boards?',
      'how can I dry my lumber faster?',
      'the boards are too wet to paint, what can i do about it?',
      'how do i get the moisture in the wood down?',
      'can i hurry up the drying?',
    ],
    onward: [
      {
        after: ['drying-forecast', 'ready-to-finish', 'air-for-moisture', 'equilibrium-moisture', 'board-movement'],
        asks: [
          'what do i do about that?',
          'so what now?',
          'how do i get it down?',
          'does a fan help?',
          'can i hurry it up?',
          'any way to speed it up?',
          'would the sun do it faster?',
          'it is too wet, what can i do?',
          'how should they be stored?',
          'will a heater get it there?',
          'so do i just wait or what?',
        ],
      },
    ],
    from: 'common practice, no source',
    cautions: ['fire'],
  },
]
