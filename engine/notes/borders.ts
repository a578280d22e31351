// This file is about advice on caps, and on what meets the fence at its foot: soil, mulch, mowers, plants and water.
import type { Note } from './note.ts'

export const borders: readonly Note[] = [
  {
    name: 'caps',
    title: 'Caps on the posts',
    text: 'The top of a post is end grain and drinks rain: slope it, or cap it, or both. Measure a post of yours before you buy caps: a 4x4 is {{post}} planed and more when rough or wet, and a tight cap splits as the post swells. Fix it so that it can come off again, and seal the top under it first.',
    figures: { post: { label: 'a planed 4x4, each way', value: '3 1/2 in', metric: '89 mm' } },
    called: [
      'cap|caps matter|matters|point|purpose|help|useful|do',
      'cap need|worth|necessary|why|better',
      'cap fix|fasten|glue|nail|attach|seal|put how|post|under',
    ],
    asks: ['Do I need caps on the posts?', 'how do i fix the post caps, glue or nail?'],
    from: 'size: PS 20, American Softwood Lumber Standard; the rest common practice, no source',
    cautions: [],
  },
  {
    name: 'mowing-strip-first',
    title: 'The mowing strip before the pickets',
    text: 'Lay it after the posts and before the pickets: you have room to dig, to level and to tamp, and no fresh board gets splashed. Let it fall a little away from the posts, and keep wood clear of it. Hang the pickets above it with room for a blade of grass, not for a foot. Its trench is digging too: the locate must cover it.',
    called: [
      'mow|mowing|mower|edging|edge|brick strip|border before|after|first|when|or picket|board|fence',
      'strip|edging|border before|after|first picket',
      'mowing|mow strip|edge why|worth|good fence|under|below',
    ],
    asks: ['Do I lay the mowing strip before or after the pickets?', 'is a mowing strip under the fence worth it?'],
    from: 'common practice, no source',
    cautions: ['utilities', 'wet-cement'],
  },
  {
    name: 'wood-off-the-soil',
    title: 'Wood kept off soil and mulch',
    text: 'Keep pickets and rails about {{clear}} above the ground, and above the mulch as it will be next year, not as it is today. Wood that touches damp soil, mulch or leaves stays wet and rots, treated or not, and finish peels there first. Never heap soil against a fence to close a gap; use stone. Only posts go into the ground.',
    figures: { clear: { label: 'clear below the pickets', value: '2 in', metric: '50 mm' } },
    called: [
      'picket|board|wood|fence touch|touching|against|contact|rest ground|soil|mulch|dirt|earth|leaves',
      'mulch|soil|dirt fence|picket|wood|board against|pile|piled|heap|raise|fill',
      'picket|board ground|grass|soil above|off|clear why|should|keep|ok',
    ],
    asks: [
      'Can the pickets touch the ground?',
      'is it ok to pile mulch up against the fence?',
      'how big a gap should there be under the fence?',
      'how high off the ground should the boards be?',
      'should i leave a gap between the pickets and the soil?',
      'do the boards run down to the ground or stop above it?',
      'boards resting on the soil, is that a problem?',
    ],
    onward: [
      {
        after: [
          'picket-spacing',
          'gap-for-pickets',
          'picket-count',
          'pickets-past-posts',
          'gap-now',
          'gap-later',
          'rail-heights',
          'post-heights',
        ],
        asks: [
          'and under?',
          'and underneath?',

          'how far off the ground?',
          'can they touch the grass?',
        ],
      },
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'weeds-along-the-fence',
    title: 'Weeds and grass along the fence',
    text: 'A strip of stone or brick under the pickets saves more hours than anything else at the foot of a fence. Fabric below the stone keeps it out of the soil; seeds still land on top. Keep the string trimmer off the wood: it cuts through finish in a summer. Weedkiller drifts, and grass dead in a line looks worse than grass.',
    called: [
      'weed|grass fence|picket stop|keep|kill|grow|growing|control through|under|along|between|from',
      'trimmer|strimmer|weedeater fence|picket|post',
    ],
    asks: ['How do I stop weeds growing through the fence?', 'grass keeps growing under the pickets, how to stop it?'],
    from: 'common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'sprinklers-on-the-fence',
    title: 'Sprinklers on the fence',
    text: 'Water thrown on one face every night swells and cups boards, greys and peels the finish and leaves rust marks. Turn the heads away, move them out from the fence, or change them for drip lines. Do it before you finish the wood, and find their pipes before you dig.',
    called: [
      'sprinkler|irrigation|watering spray|hit|hitting|wet|splash|water|on fence|picket|boards|wood',
      'sprinkler move|turn|aim|bad|harm|ruin fence',
    ],
    asks: ['Is it bad if the sprinkler hits the fence?', 'should i move the sprinklers away from the fence?'],
    from: 'common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'climbers-on-the-fence',
    title: 'Roses and other climbers',
    text: 'Give a climber wires of its own, held a hand away from the boards, so that air gets behind and you can still paint. Twining kinds pull pickets off and ivy works into every gap; a rose tied with string does neither. In leaf it catches wind like a solid fence, so think of the posts. Plant it a step out, clear of the footings.',
    called: [
      'rose|climber|climbing|ivy|vine|clematis|jasmine fence|picket|post grow|harm|plant|on|against|damage|ok|up|hold|bad',
      'plant|shrub|hedge climb|climbing|against|up fence|picket',
    ],
    asks: [
      'Can I grow roses on the fence?',
      'will ivy damage a picket fence if it grows on it?',
      'can i grow climbers on it?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
]
