// This file is about advice on paint and stain: which, when, how, and what is dangerous about it.
import type { Note } from './note.ts'

const handbook = 'Wood Handbook, FPL-GTR-190 (2010), chapter 16'

export const finish: readonly Note[] = [
  {
    name: 'paint-stain-or-bare',
    title: 'Paint, stain or nothing',
    text: 'Paint lasts longest and hides most, and when it fails it must be scraped. Half-clear stain lasts less, shows the grain, never peels, and takes a fresh coat after a wash. Clear finish keeps the colour for between {{clearLow}} and {{clear}} only. Left bare, good wood turns grey and serves for years. Choose by the second coat, not by the first.',
    figures: {
      clearLow: { label: 'tinted clear finish, least life', value: '2 years' },
      clear: { label: 'tinted clear finish, most life', value: '3 years' },
    },
    called: [
      'paint stain or|better|best|versus|vs|instead',
      'paint stain or|better|best|versus|vs|which fence|picket|wood|which|better|best',
      'paint|stain|finish bare|grey|nothing|natural|unfinished or|leave|better|turn',
      'stain|finish solid|clear|semitransparent|transparent|opaque which|better|best|difference',
    ],
    asks: ['Is paint or stain better for a picket fence?', 'should i stain it or leave it to turn gray?'],
    from: `${handbook}, table 16-5, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/374; the rest common practice, no source`,
    cautions: ['weather'],
  },
  {
    name: 'keeping-the-colour-of-new-wood',
    title: 'Keeping the colour of new wood',
    text: 'Sun greys bare wood within a year, and a clear coat only slows it. What stops light is pigment: a lightly tinted, half-clear stain near the colour of the wood keeps it best, renewed before it has worn through. Nothing keeps cedar as it came from the saw. Cleaner and a brush bring much of the colour back before you coat it again.',
    called: [
      'keep|stop|prevent|preserve cedar|redwood|wood|fence gray|graying|greying|colour|natural|turning',
      'gray|graying|greying|silver why|stop|slow|how cedar|redwood|wood|fence turn|turning|going|goes|stop',
    ],
    asks: ['How do I keep cedar from going grey?', 'can i preserve the natural color of the redwood?'],
    from: 'common practice, no source',
    cautions: ['weather'],
  },
  {
    name: 'finish-before-hanging',
    title: 'Finishing before hanging',
    text: 'Before, if you have dry wood and a dry place: every face, edge and end gets its coat, and so do the parts that will touch and can never be reached again. Hang, fill and touch up cut ends and screw heads, then brush the last coat in place. If the wood is too wet to coat now, at least seal the ends and the backs of the joints.',
    called: [
      'paint|stain|finish|prime|seal|coat|painting|staining before|after hang|hanging|hung|install|installing|assemble|assembling|putting|put picket|board|everything|rail|them',
      'paint|stain|finish|prime|seal first put|putting|hang|hanging up|then everything|picket|board|it',
      'prime|primed|prefinish|prestain picket|board before|first|ground',
    ],
    asks: [
      'Do I paint the pickets before or after hanging them?',
      'should i stain everything first and then put it up?',
      'is it better to stain the boards before installing?',
    ],
    from: `${handbook}, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/379 for end grain; the rest common practice, no source`,
    cautions: ['weather', 'fire'],
  },
  {
    name: 'both-faces-and-ends',
    title: 'Both faces, and the ends twice',
    text: 'Coat both faces alike: a board sealed on one side only takes up water on the other and cups. The ends drink many times what a face does, so seal every one, and the bottoms first of all, because nobody can reach them later. A film on a fence whose ends are bare holds the water in and peels. Turn a picket upside down in a tray if a brush will not get there.',
    called: [
      'both side|face|back paint|stain|finish|seal|coat have|must|necessary|should',
      'back|inside paint|stain|seal|finish|coat picket|board|fence need|too|should|only',
      'grain seal|sealing|sealed|paint|stain|coat|finish|prime end|bottom|top',
      'end|bottom seal|sealing|sealed|prime picket|board',
    ],
    asks: [
      'Do I have to paint both sides of the pickets?',
      'should i seal the end grain at the bottom of the boards?',
      'do the bottoms of the boards need a coat as well?',
      'does the end grain want stain too?',
    ],
    onward: [
      {
        after: ['finish-quantity', 'finish-area', 'painting-by-area', 'painting-hours'],
        asks: ['do the ends need it too?', 'both sides?', 'the backs as well?', 'ends too?'],
      },
    ],
    from: `${handbook}, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/368 and 379; the cupping is common practice, no source`,
    cautions: ['weather'],
  },
  {
    name: 'mill-glaze',
    title: 'Mill glaze',
    text: 'Some planed boards shed water and take finish badly, and the trade calls their shine mill glaze. A laboratory that looked for it could not make it: it found raised grain under thin paint, weathering and damp. The cure is the same: wet smooth flat-grained boards, let them dry for {{dry}}, and sand with paper between {{coarse}} and {{fine}} grit. Then test with a drop of water.',
    figures: {
      dry: { label: 'drying after wetting', value: '3 days' },
      coarse: { label: 'coarsest paper', value: '50' },
      fine: { label: 'finest paper', value: '80' },
    },
    called: [
      'mill glaze|glazing|shine|glazed',
      'smooth|planed|shiny board|wood|cedar|picket sand|sanding|roughen before|stain|paint|finish|need',
    ],
    asks: ['What is mill glaze?', 'do i need to sand smooth boards before stain?'],
    from: `${handbook}, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/378 and 382; the rest common practice, no source`,
    cautions: ['dust'],
  },
  {
    name: 'painting-hours',
    title: 'Hours for painting, and dew',
    text: 'Begin when the night’s dew has dried off and stop while the coat can still dry before the evening damp. The wood should be {{above}} warmer than the dew point. For water-based paint the air stays above {{water}} for a day and a night afterwards, for oil above {{oil}}. Follow the shade round the fence: hot sun blisters a fresh film. No rain before, and none until the can’s time is up.',
    figures: {
      above: { label: 'wood above the dew point', value: '5 F°', metric: '3 C°' },
      water: { label: 'least for water-based paint', value: '50 °F', metric: '10 °C' },
      oil: { label: 'least for oil paint', value: '40 °F', metric: '4 °C' },
    },
    called: [
      'morning|evening|afternoon|early|late paint|painting|stain|staining ok|okay|better|best|bad|should',
      'dew|damp|humid|humidity paint|painting|stain|staining|coat evening|morning|before|problem|bad|matter',
      'sun|sunny|hot|shade paint|painting|stain|staining full|direct|ok|bad|which|avoid',
    ],
    asks: [
      'Is it better to paint in the morning or in the evening?',
      'is it ok to paint in the evening before the dew?',
      'should i stain in full sun or in the shade?',
    ],
    from: `${handbook}, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/378; dew point: a coating inspector’s manual, scribd.com/document/146044552; the rest common practice, no source`,
    cautions: ['weather'],
  },
  {
    name: 'rain-on-fresh-finish',
    title: 'Rain on a fresh coat',
    text: 'Leave it alone until it is dry, then look. Water-based paint that has run or pitted is sanded and done again; stain that washed out pale gets another thin coat. Milky spots often clear by themselves. For the next day’s work, believe the forecast and not the sky.',
    called: [
      'rain|rained|shower paint|stain|coat|finish fresh|ruined|ruin|got|washed',
      'rained on paint|painted|stain|stained|coat|finish',
    ],
    asks: ['It rained on my fresh paint, what now?', 'got rain on the stain, is it ruined?'],
    from: 'common practice, no source',
    cautions: ['weather'],
  },
  {
    name: 'primer-on-cedar',
    title: 'Primer under paint',
    text: 'Bare wood wants a primer under paint, and cedar and redwood one that blocks stains, or brown tannin bleeds through white. Let it dry between {{short}} and {{long}} before the top coat, and have that on within {{most}}. Knots bleed longest: prime them twice. A stain needs no primer.',
    figures: {
      short: { label: 'drying of a stain-blocking primer, least', value: '24 h' },
      long: { label: 'drying of a stain-blocking primer, most', value: '48 h' },
      most: { label: 'longest wait between coats', value: '2 weeks' },
    },
    called: [
      'primer|prime|priming need|should|necessary|worth cedar|redwood|knot|bare|white',
      'knot|tannin|brown|yellow bleed|bleeding|through|show paint|white|primer',
    ],
    asks: ['Do I need primer on cedar before white paint?', 'brown knots bleed through my white paint, why?'],
    from: `${handbook}, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/378; between coats: Iowa State University Extension, https://www.extension.iastate.edu/forestry/forest_products/finishext.html; the rest common practice, no source`,
    cautions: ['weather'],
  },
  {
    name: 'one-coat-or-two',
    title: 'One coat or two',
    text: 'Paint: a primer and two top coats last about twice as long as a primer and one. Stain: a second coat on rough wood, and on smooth new wood only what soaks in; wipe off what stands. Leave no more than {{most}} between coats. Thin coats, well brushed, outlast thick ones.',
    figures: { most: { label: 'longest wait between coats', value: '2 weeks' } },
    called: [
      'coat single|second enough|need|necessary|worth|or paint|stain|primer|fence',
      'coat second need|worth|necessary',
      'between coats long|soon|wait|time second|paint|stain|dry',
    ],
    asks: ['Is a single coat of stain enough?', 'do i really need more than a single coat of paint?'],
    from: `${handbook}, read at https://fliphtml5.com/kbpub/hdrb/Wood_Handbook/378; Iowa State University Extension, https://www.extension.iastate.edu/forestry/forest_products/finishext.html; thin coats are common practice, no source`,
    cautions: ['weather', 'fire'],
  },
  {
    name: 'brush-roller-or-sprayer',
    title: 'Brush, roller or sprayer',
    text: 'A brush works finish into the wood and is the surest. A small roller is quicker on flat faces, with a brush after it. A sprayer is quick on a long fence, needs a brush behind it too, and puts much of the finish on the lawn, the neighbour’s car and your lungs: sheets, mask, and a still day. Never put a hand before the tip: if the jet breaks the skin, go to hospital at once, however small the spot.',
    called: [
      'brush|roller|roll|sprayer|spray|spraying paint|stain|fence|picket better|best|ok|quicker|faster|which',
      'sprayer|spray|spraying paint|stain|fence wind|worth|mess|drift',
    ],
    asks: ['Is a brush or a sprayer better to stain pickets?', 'can I spray the fence, is it ok?'],
    from: 'common practice, no source',
    cautions: ['weather', 'fire'],
  },
  {
    name: 'mixing-the-cans',
    title: 'Mixing the cans together',
    text: 'Pour all cans of one colour into one bucket and stir, because two cans are never quite alike. Stir stain again and again while you work: the colour sinks. Stop for the day at a post or a corner, never in the middle of a run. Keep a closed jar of it with the date and the number from the can for touching up.',
    called: [
      'can|tin mix|mixing|stir|boxing together|all|one paint|stain|finish',
      'can|tin|batch colour|shade different|match|patchy|blotchy paint|stain|finish',
    ],
    asks: [
      'Should I mix all the paint cans together?',
      'the next can of stain is a different shade, what do i do?',
      'can I mix two part cans of the same stain?',
      'is it alright to pour what is left of two tins together?',
    ],
    onward: [
      {
        after: ['finish-quantity', 'painting-by-area', 'finish-area'],
        asks: [
          'can i mix what is left of two tins?',
          'can i mix the cans?',
          'is it ok to pour them together?',
          'i have two half cans, can they go together?',
        ],
      },
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'oily-rags',
    title: 'Oily rags',
    text: 'Rags, pads and steel wool wet with oil stain can heat up and catch fire by themselves, hours later, in a heap or a bin. Spread each flat outdoors, away from buildings, until it is stiff, or put them in a metal can full of water with a tight lid, and ask your waste office where they go. Never in a pile, a pocket, a bin or the car. Smoking or burning: keep back and ring the fire brigade. Water-based finish does not do it, but treat what you are not sure of as oil.',
    called: [
      'rag|rags|cloth pile|heap|bunch|bucket|bin|garage|shed|bag|balled|left',
      'rag|rags|cloth catch|burn|ignite|smoke|fire why|can|how|stop|prevent|really|will',
      'rag|cloth|pads|wool oil|oily|stain|linseed|paint|finish|used|dispose|fire',
      'rag|cloths dry|wash|dispose|trash|bin|leave|do|hang|catch',
    ],
    asks: ['my rags are in a pile', 'What do I do with oily rags?', 'where do i put the rags after staining?'],
    from: 'National Fire Protection Association, as cited at greatamericaninsurancegroup.com; the rest common practice, no source',
    cautions: ['fire'],
  },
  {
    name: 'lead-in-old-paint',
    title: 'Lead in old paint',
    text: 'Paint on an old fence may hold lead, and its dust harms children most. Test before you sand, scrape, wash or cut, with a kit or better a laboratory. If it is there: no dry sanding, no heat, no pressure washer; keep it wet, lay sheets, wear a mask with a {{mask}} filter, keep children and pets away, and wash before you eat. Taking the boards off whole is often the cleanest way; ask your waste office where they go.',
    asWritten: { mask: 'P100 or P3' },
    settles: true,
    called: [
      'was|were|been|originally painted sand|sanding|scrape|strip|heat|burn|blast|wash|cut',
      'heat|torch|burn|gun paint|painted off|strip|remove|old',
      'lead paint|painted|old|test|fence',
      'old|antique paint|painted sand|sanding|scrape|scraping|strip|safe|test|dust|remove fence|picket|safe|lead|how|can|is',
    ],
    asks: [
      'My fence was painted in 1955, can I sand it',
      'Is there lead in the old paint on my fence?',
      'can i sand the old paint off the pickets?',
    ],
    from: 'common practice (from memory: US lead paint rules); the mask is common practice, no source',
    cautions: ['lead', 'dust'],
  },
  {
    name: 'season-for-finish',
    title: 'The season for stain, paint and preservative',
    text: 'Late spring and early autumn are best: dry, mild, and without the sun that dries a coat before it is brushed out. Not in frost, not on hot boards, and not late in the day when dew is coming. The label gives the least temperature; it must hold through the night as well. Preservative asks for dry wood more than for warmth.',
    called: [
      'best|right|good month|season|year|time stain|paint|preservative|finish|treat|oil',
      'autumn|november|october|winter|spring|summer paint|stain|preservative|treat can|should|best|ok',
    ],
    asks: [
      'When is the best time of year to stain a fence?',
      'what is the best month to put preservative on?',
      'can i paint the fence in november?',
      'which season is right for painting a fence?',
      'do i need to wait till spring to oil it?',
      'which half of the year suits staining?',
    ],
    onward: [
      {
        after: ['season-check', 'painting-hours', 'paint-window', 'dew-point', 'recoat-calendar'],
        asks: [
          'what month is best?',
          'what is the best time of year?',
          'can it wait till spring?',
          'morning or afternoon?',
        ],
      },
    ],
    from: 'common practice, no source',
    cautions: ['weather'],
  },
  {
    name: 'old-tins',
    title: 'Old tins and leftovers',
    text: 'Paint that froze, smells rotten or will not stir smooth is done. Else lift off the skin, stir from the bottom for a while, strain it, and try it on a scrap overnight. Same maker, same kind and same colour may go together; water-based and oil-based never. An old tin beside a new one shows, so use it up on a back.',
    called: [
      'old|leftover|last tin|can|paint|stain good|still|use|keep|mix',
      'long|how paint|stain|oil keep|keeps|last tin|can|garage',
    ],
    asks: [
      'Can I use up an old tin of stain with a new one?',
      'is last year’s stain still good?',
      'how long does paint keep in the tin?',
      'the paint is going lumpy, is it still ok?',
      'stain from some years ago, use it?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
]
