// This file is about advice on looking after a fence: the yearly walk, washing, and the next coat.
import type { Note } from './note.ts'

const handbook = 'Wood Handbook, FPL-GTR-190 (2010), chapter 16'

export const upkeep: readonly Note[] = [
  {
    name: 'yearly-walk',
    title: 'The yearly walk',
    text: 'Once a year, in spring, walk the run with the plan in your hand. Push each post, and prod it at the ground with a screwdriver. Look at caps, hinges, loose pickets, soil and leaves against the wood, and drops of water on the finish. Write it down by post number, so that next year you see what moves. A screw today saves a bay.',
    called: [
      'every|spring check|inspect|look fence|post',
      'maintain|maintenance|upkeep fence|wooden|wood|picket',
      'look|care after fence wooden|wood|picket|year',
    ],
    asks: [
      'What should I check on the fence every year?',
      'how do i look after a wooden fence?',
      'what should I look at on my yearly check?',
      'what do i poke at in spring?',
      'what are the things to check after winter?',
    ],
    onward: [
      {
        after: ['yearly-walk'],
        asks: ['what do i check?', 'what do i look for?', 'what should i be poking at?', 'and what do i do then?'],
      },
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'when-to-recoat',
    title: 'When to coat again',
    text: 'Go by the fence, not by the calendar: when the colour pales, water no longer beads, or the first fine cracks show, coat the side that shows it. On upright wood, half-clear stain is printed to last between {{stainLow}} and {{stain}} where the wood is rough, less where it is smooth, and paint between {{paintLow}} and {{paint}}. The sunny side goes first: give each side its own clock. Coat before the wood is bare, and you only wash; wait, and you scrape.',
    figures: {
      stainLow: { label: 'half-clear stain on rough wood, least', value: '4 years' },
      stain: { label: 'half-clear stain on rough wood, most', value: '8 years' },
      paintLow: { label: 'paint, least', value: '10 years' },
      paint: { label: 'paint, most', value: '20 years' },
    },
    called: [
      'often|regularly recoat|restain|repaint|reseal',
      'recoat|restain|repaint|reseal|recoating|restaining|repainting know|tell|sign|due|need',
      'another|again coat|stain|paint|seal know|tell|sign',
    ],
    asks: ['How do I know the fence needs recoating?', 'how can i tell it needs another coat of stain?'],
    from: `${handbook}, table 16-5, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/374; the rest common practice, no source`,
    cautions: ['weather'],
  },
  {
    name: 'before-coating-grey-wood',
    title: 'Before you coat grey wood',
    text: 'Old paint on it: test for lead first. Grey wood is a loose skin of dead fibres, and a finish on it comes off with it. Wash with a deck cleaner and a stiff brush, rinse, let it dry for some days, and sand lightly until fresh wood shows. Then stain; paint wants it cleaner still, and a primer. A drop of water should soak in before you begin.',
    called: [
      'gray|grayed|greyed|weathered|silver stain|paint|coat|finish|restore over|before|prepare|prep|clean|sand|can|how|first fence|wood|boards|picket|cedar|before',
      'prepare|prep|clean old|weathered|gray fence|wood stain|paint|coat|before|restain|staining|painting',
    ],
    asks: [
      'Can I stain over grey weathered wood, what do I do first?',
      'how to prep an old weathered fence before staining',
    ],
    from: 'common practice, no source',
    cautions: ['weather', 'lead'],
  },
  {
    name: 'peeling-paint',
    title: 'Peeling paint',
    text: 'Old paint: test for lead first; until then scrape and sand nothing. Paint peels where water gets behind it: bare ends, cracks, soil at the foot, wood that was too wet on the day. Find that, or the next coat peels too. Then scrape what is loose, sand the edges, prime the bare spots the same day, and coat; if most of it comes off, strip that side and think of stain.',
    called: [
      'pressure|power wash|washer|washing peeling|flaking|old paint',
      'peel|peeling|blister|blistering|flake|flaking paint|finish|stain|coat|film',
      'paint|finish|stain peel|peeling|flaking|blister|blistering|off why|fix|repair|stop bottom|fence|picket',
    ],
    asks: ['Why is the paint peeling off my fence?', 'paint blisters at the bottom of the pickets, how do i fix it?'],
    from: `Too wet on the day: ${handbook}, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/362; the rest common practice, no source`,
    cautions: ['lead', 'weather'],
  },
  {
    name: 'washing-a-fence',
    title: 'Washing a fence',
    text: 'Old paint: test for lead first, and no pressure washer. A bucket, a mild cleaner and a stiff brush do it, from the bottom up, rinsed from the top down. A pressure washer held close tears soft wood into fur and drives water deep: low pressure, a wide fan, an arm’s length away, along the grain. Wet the plants first and after. Then let it dry before any coat.',
    called: [
      'moss|lichen|grime clean|wash|remove|off|rid fence|picket|board|wood|how',
      'pressure|power|jet washer|wash|washing',
      'pressure|power wash|washer|washing|washed|clean fence|wood|picket|cedar',
      'wash|washing|clean|cleaning fence|picket how|best|safe|with|way',
    ],
    asks: ['Is it ok to pressure wash the fence?', 'what is the best way to clean a picket fence?'],
    from: 'common practice, no source',
    cautions: ['lead'],
  },
  {
    name: 'green-and-black-growth',
    title: 'Green and black growth',
    text: 'Green film is algae and soft black spots are mildew: both live on damp and shade. Brush them off with a cleaner made for it, wait as its label says, rinse and let dry. Cut plants back so that air gets through, and turn sprinklers away. Never mix cleaners: bleach with others can make a poisonous gas. Black lines under screws are another matter: that is iron.',
    called: [
      'algae|moss|mildew|mold|lichen|fungus fence|picket|wood|boards|north',
      'black|green spots|dots|film|slime|growth|stuff fence|picket|wood|stain|paint',
    ],
    asks: ['How do I get green algae off the fence?', 'theres mildew on my pickets, what do i do?'],
    from: 'common practice (from memory)',
    cautions: [],
  },
]
