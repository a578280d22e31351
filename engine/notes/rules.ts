// This file is about advice on rules: permits, associations, easements, corners, pools, and how inspectors look at a fence.
import type { Note } from './note.ts'

export const rules: readonly Note[] = [
  {
    name: 'permit',
    title: 'Permits',
    text: 'Only your building office can say. Some places want a permit for every fence and others only above a height, and a fence without one must still keep every other rule. Ask before you buy about height, setback, corners, frost depth, which face looks out, and what they want to see before it is covered.',
    called: [
      'permit|planning|zoning need|get|require|required|have fence|build|gate|low',
      'permit without|skip|need|apply|who|when|where|how|low',
    ],
    asks: ['Do I need a permit for a fence?', 'what about a permit, who do i ask and when?'],
    from: 'https://www.townofguilderland.org/building-zoning/faq/what-do-i-need-do-installing-fence and https://southprairie.municipal.codes/SPMC/15.80.008, as examples: places differ; the rest common practice, no source',
    cautions: ['local-code'],
  },
  {
    name: 'association-rules',
    title: 'An association’s rules',
    text: 'An association’s rules come on top of the building office’s, and you have to keep both. Send a drawing with height, style, colour and place, and wait for the answer in writing before you buy. A yes from one is not a yes from the other. Keep the letter with the house papers.',
    called: [
      'hoa|covenant|homeowner|association fence|rule|say|approve|approval|allow|permission|letter|want',
      'hoa|association ask|colour|style|paint|height',
    ],
    asks: ['Does my HOA have to approve the fence?', 'what do i send the homeowners association about the fence?'],
    from: 'common practice, no source',
    cautions: ['local-code'],
  },
  {
    name: 'easements',
    title: 'Easements',
    text: 'An easement is a strip where somebody else may come in, for pipes, wires, drainage or a path. The deed or the plat shows it. A fence across one may have to come down again, at your cost, years later. Find out who holds it, ask in writing, and plan a gate or panels that lift out.',
    called: [
      'easement build|fence|cross|across|post|put|over|along',
      'easement what|who|find|mean|where|ask',
      'right of way cross|build|over|fence',
    ],
    asks: [
      'Can I build a fence across an easement?',
      'theres an easement along the back, what does that mean for my posts?',
    ],
    from: 'https://codelibrary.amlegal.com/codes/hinckley/latest/hinckley_mn/0-0-0-2846, as an example: ask your own office; the rest common practice, no source',
    cautions: ['utilities', 'lot-line', 'local-code'],
  },
  {
    name: 'seeing-past-the-corner',
    title: 'Fences at corners and drives',
    text: 'Where two streets meet, or a drive meets the street, drivers and children must see each other past the fence. Most places keep a triangle there clear above a low height, and each measures it its own way. Get the figures from your building office before you set the corner post.',
    called: [
      'corner|intersection|driveway tall|high|block|blocking|low|view street|road|traffic|car|driver fence',
      'driveway|corner see|visibility|view car|traffic|driver',
    ],
    asks: [
      'Why can I not have a tall fence at the street corner?',
      'will a fence by the driveway block the view of cars?',
      'the fence is near a street corner and drivers cannot see',
    ],
    from: 'https://www.townofhudson.org/building-department/pages/fence-requirements, as an example: places differ; the rest common practice, no source',
    cautions: ['local-code'],
  },
  {
    name: 'where-height-is-measured',
    title: 'Where the height is measured',
    text: 'Places differ: some go by the lower ground, some by the higher, some by the ground as it was before you changed it. Ask your building office which, and at which point of a bay. Until you know, plan for the stricter reading, the height above the lowest ground beside the fence.',
    called: [
      'height measured|measure|counted my|his|their|which|neighbor|neighbour side',
      'height measured|measure inspector|office|they|city|council from|where',
    ],
    asks: [
      'Is the height measured from my side or his when the ground slopes?',
      'where do they measure the fence height from?',
    ],
    from: 'common practice, no source',
    cautions: ['local-code'],
  },
  {
    name: 'pool-is-another-law',
    title: 'Pools, ponds and hot tubs',
    text: 'In many places a fence round water has rules of its own: its height, its gaps, rails that make a ladder, the space below, which way the gate opens, and that it closes and latches by itself. Which waters count differs too; garden ponds are in some places left out. The house wall and its doors may count as part of it. Ask your building office or council before you draw anything, have it inspected, and watch the water all the time while the fence is down or open.',
    settles: true,
    called: [
      'pool|pond|spa|tub need|needs|must|require fence|fenced|barrier',
      'pool|pond fence|gate|barrier down|off|replace|replacing|repair|while|days',
      'party|back|tied pool|pond gate',
      'why pool|pond|spa|tub gate|latch|prop|open',
      'pool|pond|spa|tub rule|law|requirement|different|special fence|garden|yard',
      'pool|pond|spa|tub picket|ordinary|normal|garden count|ok|okay|good|enough|work|around|round',
    ],
    asks: [
      'does my pond need a fence',
      'my pool fence will be down for two days while I replace posts, what should I do',
      'Are the rules different if the fence goes round a pool?',
      'we have a small pond, is a picket fence enough for that?',
    ],
    onward: [
      {
        after: ['pool-barrier'],
        asks: ['and under?', 'and underneath?', 'does that count for a pond?', 'who checks it?'],
      },
    ],
    from: 'https://rutherfordcountytn.gov/index.asp?SEC=82400DDA-9562-43FE-AB5D-7A6C09EA4F0F, as an example; the rules are those of your place; the rest common practice, no source',
    cautions: ['pool', 'local-code'],
  },
  {
    name: 'fence-at-a-drop',
    title: 'A fence at a drop',
    text: 'A picket fence is not a guard: do not count on it above a wall, a bank, a ledge or a deck. A guard has to hold a person who falls against it, has small gaps and no foothold, and is fixed to something that carries it. Posts near an edge have little ground to hold them, and a fence pushes on the wall it stands on. Ask your building office what must stand there and a licensed engineer how; set the fence back from the edge.',
    called: [
      'drop|bank other|far|neighbor|neighbour side',
      'fence|picket|railing balcony|rooftop|roof',
      'fence|post|picket|railing drop|bank|ledge|cliff|embankment|terrace steep|sheer|near|next|above|beside|close',
      'fence top|onto|above wall|retaining can|ok|safe|how|should|put|build',
      'falling|falls bank|ledge|cliff|deck|edge fence|stop|picket',
      'post|fence close|near edge bank|drop|ledge|cliff',
    ],
    asks: [
      '2 ft drop on the other side of the fence, is it ok?',
      'fence next to a steep drop',
      'how close to the edge of the bank can I set posts?',
      'can I put the fence on top of a wall?',
    ],
    from: 'what a guard is: International Residential Code, R312 (places differ); the rest common practice, no source',
    cautions: ['structure', 'local-code'],
  },
  {
    name: 'inspection',
    title: 'When the inspector comes',
    text: 'If there is a permit, ask what must be seen before it is covered: often the open holes, before any concrete. Have the permit, the plan and the locate ticket at hand, the string up and the depth easy to measure. Do not pour on the morning of the visit and hope.',
    called: [
      'inspector|inspection when|before come|see|look|visit|concrete|hole',
      'inspector|inspection what|check|want look|see|check|fence',
    ],
    asks: ['When does the inspector come, before the concrete?', 'what does a fence inspection look at?'],
    from: 'common practice, no source',
    cautions: ['local-code', 'open-hole'],
  },
]
