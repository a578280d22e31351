// This file is about advice on mending: rot, leaning posts, sagging gates, loose boards, and taking out what is past it.
import type { Note } from './note.ts'

export const repair: readonly Note[] = [
  {
    name: 'rot-at-the-ground-line',
    title: 'Rot at the ground',
    text: 'Dig a hand deep round the post and prod with a screwdriver: where it goes in easily, the wood is gone. Sound to the core with a soft skin: clear the soil and mulch away, dry it, brush on preservative, and look every year. Soft through: replace the post, or bolt a new short post beside it in a hole of its own. Take the load off with braces before you cut anything.',
    called: [
      'rot|rotten|rotting|soft|decay|decayed|rotted post ground|base|bottom|line|soil|level fix|repair|why',
      'post rot|rots|rotting|rotten why|where|repair|fix',
    ],
    asks: ['My post is rotten at the ground line, can I fix it?', 'posts are soft at the base, replace or repair?'],
    from: 'common practice, no source',
    cautions: ['preserved-wood', 'tools'],
  },
  {
    name: 'rotted-off-in-concrete',
    title: 'A post rotted off in its concrete',
    text: 'More concrete round a rotten post holds nothing: take it out. Brace the rails, cut the post at the ground, and lift the old footing, or break out the stump with a bar and a long drill. Where the footing is sound, a new post can be wedged into its socket over stone, but such a repair is for line posts and not for gates. If it cannot come out, move the post and the joint of the rails.',
    called: [
      'rot|rotten|rotted|rotting|broke|broken|snapped post|stump concrete|footing|cement',
      'stump|stub concrete|footing remove|out|get|dig|pull',
    ],
    asks: [
      'The post rotted off in the concrete, how do I replace it?',
      'post snapped at the footing, can i just add more concrete?',
    ],
    from: 'common practice, no source',
    cautions: ['utilities', 'tools', 'lifting'],
  },
  {
    name: 'leaning-after-a-storm',
    title: 'A post leaning after a storm',
    text: 'Look for wires first: one that is down makes it and the fence live, so stay back {{back}} or more, touch nothing, and ring the emergency number and the network. Then see whether the post broke, rotted or only moved: push it and watch the ground. Brace it upright, with the pickets off if they still catch wind. A sound post that moved: dig out one side, bring it plumb, and tamp stone in layers or pour concrete. A loose footing comes out and goes back deeper.',
    figures: { back: { label: 'distance to keep from a wire that is down', value: '35 ft', metric: '10 m' } },
    called: [
      'lean|leaning|leaned|tilted|tilting|crooked post|fence storm|wind|gale|blew|blown|hurricane|fix|push',
      'storm|wind|gale|hurricane blew|blown|down|over|knocked|damaged fence|post|panel',
      'straighten lean|leaning|tilted|crooked',
    ],
    asks: ['A post is leaning after the storm, what do I do?', 'wind blew part of the fence over, can i fix it?'],
    from: 'wires: nipsco.com and vector.co.nz; the rest common practice, no source',
    cautions: ['utilities', 'overhead-lines'],
  },
  {
    name: 'pushed-up-by-frost',
    title: 'A post pushed up by frost',
    text: 'Do not hammer it down: there is soil under it now. Mark it and wait until the ground has thawed and settled, because some go back by themselves. Then take it out and set it deeper, below the frost, with straight sides and stone below; a flared collar of concrete at the top goes too. Let the rails hang loose at that post meanwhile, so that they do not split.',
    called: [
      'post|footing frost|winter|freeze|heaved lifted|pushed|raised|risen|heaved back|down|hammer|fix|now|pound|reset',
      'frost|winter lifted|heaved|pushed|raised post|gate',
    ],
    asks: [
      'Frost heaved my post up last winter, can I hammer it back down?',
      'winter pushed two posts up, what do i do now?',
    ],
    from: 'common practice, no source',
    cautions: ['utilities'],
  },
  {
    name: 'sagging-gate',
    title: 'A gate that sags',
    text: 'See what has moved before you plane anything. Post leaning: straighten or tie it first. Hinges loose: longer screws or bolts. Leaf out of square, the two diagonals unlike: lift the latch end with a wedge until they agree, then fit the brace, from bottom hinge up to top latch, or a cable the other way. A gate planed to fit while it sags is a gap next summer.',
    called: [
      'gate sag|sagging|saggy|droop|drooping fix|stop|repair|cure|prevent|lift',
      'gate dropping|dragging|drags|scrapes fix|stop|repair|keep',
    ],
    asks: ['My gate sags, how do I fix it?', 'how do i stop the gate from dragging?'],
    from: 'common practice, no source',
    cautions: ['tools'],
  },
  {
    name: 'gate-sticks-when-wet',
    title: 'A gate that sticks in wet weather',
    text: 'Boards swell across the leaf in a wet season and take up the gap. Wait for a dry spell before you cut, and see first that it is not sagging. Then plane the latch side, no more than a coin’s thickness at a time, and seal the bare edge at once. Next time leave a wider gap when the wood is dry.',
    called: [
      'gate stick|sticking|stuck|jam|swell|swollen|binds|tight wet|rain|winter|weather|damp|humid|humidity|season|summer',
      'gate swell|swollen|swelling',
    ],
    asks: ['My gate sticks in wet weather, should I plane it?', 'gate is swollen and jams after rain'],
    from: 'common practice, no source',
    cautions: ['tools'],
  },
  {
    name: 'loose-pickets',
    title: 'Loose pickets',
    text: 'Pull the old nail or screw and put in a longer screw a finger’s width beside the old hole, drilled first. If the rail is split or soft there, screw a short piece of rail behind it. Nails that creep out each summer are smooth ones: change them for screws bay by bay. One picket can be swapped without touching the rest.',
    called: [
      'loose|rattle|rattling|wobbly|wobble picket|board|slat',
      'nail|screw pop|popping|backing|creep|working|come out|loose|up',
      'replace|swap|change single|broken|cracked picket|board can|without',
    ],
    asks: [
      'Some pickets are loose and rattle, how do I fix them?',
      'why do the nails keep popping out of the pickets?',
      'can i replace a single broken picket?',
    ],
    from: 'common practice, no source',
    cautions: ['tools'],
  },
  {
    name: 'pulling-old-posts',
    title: 'Pulling old posts',
    text: 'Take off pickets and rails first, nails out or bent over, and look for wires that have grown into the fence. Cut the sod round the post, soak the soil the day before, and lift with a chain round the post and a long lever over a block, or a jack. Rock it, do not jerk. Never pull with a car: chains and posts fly. Fill or cover each hole the same day.',
    called: [
      'pulling|remove|removing post',
      'pull old|existing post out',
      'demolish|demo|tear|remove old fence|post easiest|best|way',
    ],
    asks: ['How do I pull out old fence posts?', 'whats the easiest way to tear down the old fence?'],
    from: 'common practice, no source',
    cautions: ['utilities', 'lead', 'lifting', 'open-hole'],
  },
  {
    name: 'asbestos-sheet',
    title: 'A fence of asbestos cement',
    text: 'Do not break, drill, saw, sand or pressure-wash it: its fibres kill years later. Leave it as it is, keep children off, and have a piece tested by somebody who takes it safely; old grey or corrugated cement sheet is suspect until then. Let a licensed remover take it down, posts and fragments in the soil too. Ask your council what it wants and where it goes.',
    called: [
      'asbestos fence|sheet|sheets|cement|old|remove|break|cut|drill|is|how|wash|panel',
      'asbestos test|know|tell|paint|safe',
      'fibro|corrugated cement|sheet|fence old|remove|break|cut|asbestos|how|is',
      'cement sheet|sheets|sheeting fence|old|break|remove|cut',
    ],
    asks: ['old fence is asbestos cement sheet, how do I break it up', 'how do I know if the fence is asbestos?'],
    from: 'asbestaway.com.au and northam.wa.gov.au; the rest common practice, no source',
    cautions: ['local-code'],
  },
]
