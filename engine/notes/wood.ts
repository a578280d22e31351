// This file is about advice on wood: which kind for which part, treatment, and how it behaves.
import type { Note } from './note.ts'

export const wood: readonly Note[] = [
  {
    name: 'which-wood',
    title: 'Which wood for which part',
    text: 'Posts fail first, so spend there: wood treated for ground contact, or the heartwood of a lasting kind such as locust, cedar or redwood. Rails and pickets dry out in the air, and cedar, redwood or treated pine all serve. Pale sapwood rots soon, whatever the name on the stack. Ask what your yard keeps in stock before you fall in love with a kind.',
    called: [
      'wood|lumber|timber best|better|which|kind post|picket|rail|fence',
      'cedar|redwood|locust|oak|larch treated|pt|pine|spruce|redwood or|better|best|vs|versus picket|post|rail|fence',
    ],
    asks: ['What wood is best for fence posts?', 'cedar or treated pine for the pickets, which is better?'],
    from: 'common practice, no source',
    cautions: ['preserved-wood'],
  },
  {
    name: 'how-long-wood-lasts',
    title: 'How long the wood lasts',
    text: 'Nobody can promise years: how wet the ground is counts for more than the name of the wood. Heartwood of locust and cedar lasts long; the sapwood round it does not, and fast-grown posts have much of it. What you can do is let water away below, slope or cap the top, and keep soil and mulch off. Expect to replace single posts, and set them so that you can.',
    called: [
      'cedar|locust|redwood|oak|treated last|lifespan|life|survive ground|post|forever|years|really',
      'last|lifespan ground|soil wood|wooden|post',
    ],
    asks: ['Will cedar posts last in the ground?', 'does locust really last forever?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'reading-the-tag',
    title: 'Reading the tag',
    text: 'The tag on the end of a treated stick says what it may be used for. Posts want one that says ground contact; pickets and rails may be of the kind for above ground, but take ground contact for anything within {{close}} of soil, badly aired or hard to replace. The tag also says what it was treated with, and whether it was dried afterwards. No tag, no post.',
    figures: { close: { label: 'too close to soil for wood rated above ground', value: '6 in', metric: '150 mm' } },
    called: [
      'tag|stamp|label|rating treated|lumber|post|wood|end mean|read|say|look',
      'ground contact|rated above|contact|rated|treated difference|mean|need|post|picket|or',
    ],
    asks: ['How do I read the tag on treated lumber?', 'do the pickets need the ground contact kind?'],
    from: 'treatedwood.com/learn/uses-for-treated-wood; the rest common practice, no source',
    cautions: ['preserved-wood'],
  },
  {
    name: 'cut-ends',
    title: 'Cut ends and drilled holes',
    text: 'Treatment reaches only so deep: a cut or a drilled hole opens bare wood. Brush every one with the end-cut preservative that suits the treatment, commonly copper naphthenate, and let it soak in before you assemble. Put the factory end of a post in the ground and the cut end up, sloped or capped. Gloves on, and keep drips off plants.',
    called: [
      'cut|sawn|trimmed end treat|treated|seal|sealed|preservative|coat|paint|brush|protect|put',
      'end ground|down|bottom cut|factory which post',
      'drilled|hole cut|end preservative',
    ],
    asks: ['Do I need to treat the cut ends of my posts?', 'which end of the post goes in the ground, the cut end?'],
    from: 'treatedwood.com/news/end-cuts; which end goes down is common practice, no source',
    cautions: ['preserved-wood'],
  },
  {
    name: 'buying-wet-posts',
    title: 'Buying wet posts',
    text: 'Treated posts often come dripping from the plant, and shrink, twist and crack as they dry. Ask for wood dried again after treatment, or buy early and stack it under a roof. Choose posts that are straight today, with the centre of the tree near the middle and no slow spiral in the grain. Do not leave loose wet posts in the sun: set and tied by rails they twist less.',
    called: [
      'wet|soaking|dripping|damp post buy|buying|bought|store|yard|delivered|pile|ok|okay',
      'post twist|twisting|twisted|warp|warping keep|stop|prevent|from|why',
    ],
    asks: [
      'Should I buy wet treated posts?',
      'the posts at the store are soaking wet, is that ok?',
      'how do i keep treated posts from twisting as they dry?',
    ],
    from: 'common practice, no source; that it may be dried after treatment: southernpine.com/sealers-finishes-pressure-treated-lumber',
    cautions: ['preserved-wood', 'lifting'],
  },
  {
    name: 'choosing-boards-at-the-yard',
    title: 'Choosing boards at the yard',
    text: 'Lift each stick and look along it from one end, both ways. A slight bow can be pulled straight in a rail; a twist or a bend near the end cannot. Pass over loose knots, bark edges, soft spots and boards with a knot where a screw will go. Ask first if you may choose, and leave the stack as tidy as you found it.',
    called: [
      'pick|picking|choose|choosing|select|sort straight|good|bad board|post|picket|lumber|stick|wood yard|store|stack|pile|out',
      'look|check board|lumber|wood|picket buy|buying|yard|store knot|straight|bow|twist|for',
    ],
    asks: [
      'How do I pick out straight boards at the lumber yard?',
      'what do i look for when buying pickets, knots and so on?',
    ],
    from: 'common practice, no source',
    cautions: ['lifting'],
  },
  {
    name: 'treated-wood-by-vegetables',
    title: 'Treated wood beside vegetables',
    text: 'In the US, treated wood for homes is now made with copper and no arsenic; old stock, and new wood in some countries, may hold it, so read the tag and keep such wood away from food. If you would rather be careful, keep roots a step away from the posts, or plant in beds with sides of plain cedar. Never mulch or compost with its sawdust and shavings. Wash what you pick, as you would anyway.',
    called: [
      'treated|pressure|preserved|tanalised vegetable|veg|tomato|tomatoes|garden|food|edible|herbs|compost safe|next|near|by|beside|plant|grow|leach|poison|ok',
      'treated|pressure arsenic|leach soil|garden|post|wood',
    ],
    asks: ['Is treated wood safe next to vegetables?', 'can i plant tomatoes by a pressure treated fence?'],
    from: 'not as mulch: https://twwdisposal.org/tww-basics/handling/; the rest common practice (from memory)',
    cautions: ['preserved-wood'],
  },
  {
    name: 'treated-offcuts',
    title: 'Offcuts and sawdust of treated wood',
    text: 'Never into a fire, a stove or a grill: the smoke and the ash are poisonous, and the ash stays so in the soil. Saw over a sheet, gather dust and offcuts the same day, and put them in the trash or take them to the tip, as your place asks. Not as mulch, not as bedding, not as kindling for somebody else.',
    called: [
      'offcut|scrap|leftover|sawdust treated|pt|preserved|pressure do|throw|dispose|get|go|rid|trash|put|safe|where',
      'smoke|fumes|ash treated|preserved|pressure poisonous|toxic|bad|dangerous|why',
    ],
    asks: ['What do I do with treated offcuts and sawdust?', 'why is the smoke from pressure treated wood so bad?'],
    from: 'https://twwdisposal.org/tww-basics/handling/ and http://navalfacilities.tpub.com/mo312/mo3120138.htm; the rest common practice, no source',
    cautions: ['preserved-wood', 'dust'],
  },
  {
    name: 'which-way-wood-moves',
    title: 'Which way wood moves',
    text: 'Boards shrink across the grain as they dry and hardly along it: from wet to bone dry a stick loses some {{along}} of its length, and much more of its width. So gaps open in a dry summer and close in a wet winter, while the heights stay as you cut them. Leave room across, and none is needed along.',
    figures: { along: { label: 'shrinkage along the grain, from wet to bone dry', value: '0.3 %' } },
    called: [
      'shrink|shorter|shorten length|along|lengthwise|shorter|taller board|picket|wood|lumber|post dry|drying',
      'gap wider|bigger|open|narrower|close|smaller summer|winter|season|weather why|change|get',
    ],
    asks: ['Do boards get shorter as they dry?', 'why do the gaps get wider in summer and close in winter?'],
    from: 'Forest Products Laboratory report no. 1093, studylib.net/doc/13646897, which gives 0.1 to 0.3 %; the rest common practice, no source',
    cautions: [],
  },
  {
    name: 'names-and-real-sizes',
    title: 'Names of boards and their real size',
    text: 'The name is the size before drying and planing. A 1x4 is {{thick}} by {{wide}}, and a 4x4 post is {{wide}} square. Fence pickets are often thinner still, rough boards thicker, and wet ones a little larger. Measure a few of your own before any sum, and use the size you measured.',
    figures: {
      thick: { label: 'thickness of a dry, planed 1x4', value: '3/4 in', metric: '19 mm' },
      wide: { label: 'width of a dry, planed 1x4', value: '3 1/2 in', metric: '89 mm' },
    },
    called: [
      'nominal actual|real|true size|sizes|difference|mean|what',
      'board|lumber|post|picket smaller|thinner|narrower|less name|say|called|sold|label why|than',
    ],
    asks: ['Why are boards smaller than their name says?', 'what is the difference between nominal and actual size?'],
    from: 'PS 20, American Softwood Lumber Standard, as printed at engineeringtoolbox.com, softwood-lumber-standard d_1270; the rest common practice, no source',
    cautions: [],
  },
  {
    name: 'cupping-and-warping',
    title: 'Boards that cup or warp',
    text: 'A board cups when one face is drier than the other: sun on one side, wet ground below, finish on one face only. Finish both faces and all edges, give air on both sides, and fix wide boards near both edges. A little cup pulls flat with screws while the wood is damp; a dry board splits. Swap the few that will not come.',
    called: [
      'cup|cupping|cupped|warp|warped|warping|curl|curling board|picket sun|why|stop|month|dry|fix|happening|keep',
      'cup|cupping|cupped|curl|curling flat|flatten|straighten|why|stop',
    ],
    asks: ['Why are my pickets cupping?', 'boards warped in the sun, can i fix them?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'cracks-in-posts',
    title: 'Long cracks in posts',
    text: 'Cracks along the grain are where the post dried, and most do no harm to its strength. Look again where a crack runs across the grain, splits the post from face to face, or passes through a hinge or a bracket. Keep water out at the top with a cap or a slope. Do not fill them: filler holds the water in.',
    called: [
      'crack|cracked|cracking post strong|strength|weak|harm|bad|problem|normal|long|safe|fill|worry',
      'fill|seal|caulk crack|split post',
    ],
    asks: ['My post has long cracks, is it still strong?', 'should i fill the cracks in my posts?'],
    from: 'common practice, no source',
    cautions: [],
  },
]
