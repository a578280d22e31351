// This file is about advice on buying, comparing prices, and getting it all home.
import type { Note } from './note.ts'

export const buyingAndHauling: readonly Note[] = [
  {
    name: 'delivery-or-own-vehicle',
    title: 'Delivery or your own vehicle',
    text: 'Add up the weight before you decide: stone, bags and wet posts are far heavier than they look, and several trips cost fuel and a day. A delivery that sets pallets down beside the run saves your back as well. Ask where the lorry can stand, what it may drive over, and who unloads. Check the boards before you sign.',
    called: [
      'delivery|deliver|delivered worth|or|better|pay|should truck|haul|pick|own|myself|trailer|car',
      'delivery|delivered lumber|wood|bags|stone|order check|ask|where|before|what',
    ],
    asks: [
      'Is delivery worth it or should I haul it in my own truck?',
      'lumber gets delivered tomorrow, what do i check?',
    ],
    from: 'common practice, no source',
    cautions: ['lifting'],
  },
  {
    name: 'payload-sticker',
    title: 'What the vehicle may carry',
    text: 'The sticker in the driver’s door frame gives the weight of people and load together, for that very vehicle. Take off everybody in it and what already lies in the bed; what is left is for stone and bags. The name of a truck is no measure of what it carries. With a trailer look at its plate, the hitch and the tongue too, and leave a margin.',
    called: [
      'payload sticker|placard|label|where|find|mean',
      'truck|pickup|vehicle|trailer|car carry|overload|overloaded know|limit|safe|safely|sticker',
    ],
    asks: ['Where do I find the payload sticker?', 'how do i know what my truck can safely carry?'],
    from: 'common practice (from memory)',
    cautions: ['lifting'],
  },
  {
    name: 'tying-down-long-boards',
    title: 'Tying down long boards',
    text: 'Strap bundles to the vehicle at two places and once round the load itself, so that nothing slides out of the middle. Tie the front down as well on a roof rack. What sticks out behind wants a flag, and a light at night; your road law says how far it may. Stop after the first mile and pull every strap again.',
    called: [
      'tie|tying|strap|secure|rope board|lumber|load|post|rails|long down|truck|roof|how|car|trailer',
      'long|overhang|sticking board|lumber|rails|load truck|car|roof|trailer|bed transport|carry|stick|out|flag|how',
    ],
    asks: [
      'How do I tie down long boards on the truck?',
      'rails stick out of the truck bed, long boards, do I need a flag?',
      'can I strap them to a roof rack?',
      'how do i get long boards home in a small car?',
    ],
    onward: [
      {
        after: ['load-overhang', 'haul-trips', 'deliver-or-haul'],
        asks: ['how do i tie it down?', 'do i need a flag?', 'what do i do about that?'],
      },
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'buying-spare',
    title: 'Buying spare',
    text: 'Buy about {{spare}} more pickets and rails than the sum, because some will be crooked, split or cut wrong. Posts: one over, and a longer one than you need. Screws by the box. Ask whether unopened bags and whole boards may come back, and keep two or three pickets in the shed for later: the next batch never matches.',
    figures: { spare: { label: 'spare on pickets and rails', value: '10 %' } },
    called: [
      'spare|extra|waste buy|buying|order|ordering|need picket|rail|boards|lumber|post should|worth|good|allow|necessary',
      'return unused|leftover|unopened bags|boards|picket',
    ],
    asks: [
      'Should I buy extra pickets?',
      'is it worth ordering some spare boards?',
      'how much waste should I allow?',
      'what is a fair waste allowance?',
    ],
    onward: [
      {
        after: ['packs', 'lengths-bill', 'cut-plan', 'picket-count', 'bill', 'take-off', 'pickets-of-fence'],
        asks: ['should i get a few more?', 'do i need spares?', 'how many extra?'],
      },
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'buying-concrete-in-stages',
    title: 'Buying concrete in stages',
    text: 'Dig a few holes first: they come out wider than the drawing, and soil or a rock may change the plan. Buy for those, see what each takes, then buy the rest. Stack bags on boards off the floor, under a roof and wrapped: a bag that has drawn damp sets in its paper. Lumps that crumble in the hand are all right, hard ones are not.',
    called: [
      'buy|buying|order concrete|cement|bags all once|together|ahead|first',
      'bag store|storing|keep|damp|hard|lumps|lumpy|rain|wet concrete|cement|mix dry|use|store|good|still|ok|outside',
    ],
    asks: ['Should I buy all the concrete at once?', 'some concrete bags got damp and lumpy, are they still good?'],
    from: 'common practice, no source',
    cautions: ['dust'],
  },
  {
    name: 'comparing-quotes',
    title: 'Comparing quotes',
    text: 'Have each one name the same things: length, height, kind and real size of wood, post depth, stone or concrete, screws, gates with their hardware, finish, taking away the old fence and the soil. A cheap one usually leaves something out. Ask who calls for the locate, who gets the permit, and what a rock costs. Pay in steps, the last when it is done.',
    called: [
      'quote|bid|estimate ask|include|included|fair|cheap|cheaper|expensive|missing',
      'contractor|installer deposit|trust|questions fence|before|hire|hiring|quote',
    ],
    asks: ['Is this contractor quote fair, what should it include?', 'a fence quote seems too cheap, what is missing?'],
    onward: [
      {
        after: ['compare-quotes', 'quote-by-length', 'price-range', 'cost-of-length'],
        asks: ['is that fair?', 'which one should i take?', 'what should it include?', 'is that a lot?'],
      },
    ],
    from: 'common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'boards-in-a-bundle',
    title: 'How many come in a bundle or a lift',
    text: 'There is no one number: each mill bundles by its own habit, by size and length, and yards break bundles. Ask the yard how many are in theirs, whether it is sold broken, and what returns cost. The tag on the bundle often says it. For few bays, pick boards singly.',
    called: [
      'many boards|board|pickets|picket|2x4|lumber|studs|rails bundle|lift|unit|pallet|pack',
      'bundle|lift|unit|pallet how|many',
    ],
    asks: [
      'How many boards are in a bundle?',
      'how many pickets come on a pallet?',
      'how many rails are in a lift or a unit?',
      'does the yard sell rails by the bundle?',
    ],
    from: 'common practice, no source',
    cautions: ['lifting'],
  },
]
