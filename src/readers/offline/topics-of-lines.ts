// This file is about the words in which people tell that a line was hit: gas, cables, wires overhead, water. The notes are in engine/notes/emergencies.ts.
import type { Topic } from './topic.ts'
import { list, pairs } from './phrases.ts'

const struck = list(
  'hit, hitting, hits, struck, strike, striking, nicked, nick, severed, sliced, punctured, ruptured, pierced, speared, clipped, grazed, snagged, dug into, dug through, went through, gone through, going through, caught, cut through, drilled into, drilled through, sawed through, banged',
)
const broken = list(
  'cut, broke, broken, burst, busted, damaged, scratched, cracked, ripped, tore, torn, touched, touching, smashed, chopped, bent, dented, pulled up, dug up',
)
const gas = list('gas, propane, lpg')
const gasLines = pairs(gas, list('line, pipe, main, service, lateral, meter, riser, pipeline, supply'))
const power = list('power, electric, electrical, electricity, live, mains, buried, underground, high voltage')
const powerLines = [...pairs(power, list('line, cable, wire, conduit, lead, supply')), 'powerline', 'electric main']
const waterLines = pairs(list('water, sewer, sewage'), list('line, pipe, main, service, lateral'))
const digging = list(
  'dig, digging, dug, auger, augering, shovel, spade, digger, hole, posthole, bar, excavator, backhoe, trench, trenching, stake, pick, mattock, spike, drilling',
)
const smells = list('smell, smells, smelled, smelt, smelling, odor, odour, stink, stinks, stinking, reek, reeks, whiff')
const isDown = list(
  'is down, are down, came down, come down, fell, fallen, downed, blown down, brought down, knocked down, is hanging, are hanging, hanging over, hanging on, hanging off, hanging from, lying on, lying across, laying on, laying across, draped over, draped across, dangling, snapped, across the fence, across my fence, on the ground, down on, down over, down in, down across',
)
const otherWires = list(
  'string, chicken wire, wire mesh, mesh, wire fence, barbed, turnbuckle, trellis, rose, climber, vine, gate, roll of, how far down, how deep, runs down, run down',
)

export const topicsOfLines: readonly Topic[] = [
  // Gas.
  { note: 'hit-gas', happened: [...struck, ...broken], near: [gasLines], within: 6, itself: true },
  {
    note: 'hit-gas',
    happened: [...struck, ...broken],
    near: [gas],
    within: 5,
    after: true,
    itself: true,
    unless: ['gas auger', 'gas powered', 'gas engine', 'gas can', 'gas tank', 'gas grill'],
  },
  { note: 'hit-gas', happened: pairs(['hit', 'struck', 'cut'], ['something', 'it']), near: [gasLines], within: 14 },
  {
    note: 'hit-gas',
    anyhow: true,
    happened: [
      ...smells,
      'leak',
      'leaking',
      'leaked',
      'escaping',
      'hiss',
      'hissing',
      'blowing',
      'rushing out',
      'coming out',
    ],
    near: [gas],
    within: 5,
    unless: [
      'gas can',
      'gas tank',
      'gas cap',
      'carburetor',
      'generator',
      'mower',
      'gasoline',
      'exhaust',
      'leak detector',
    ],
  },
  {
    note: 'hit-gas',
    anyhow: true,
    happened: ['hiss', 'hissing', 'hissed', 'hisses'],
    unless: list('nailer, nail gun, compressor, hose, sprayer, cat, snake, goose, tire, air, kettle'),
  },
  {
    note: 'hit-gas',
    anyhow: true,
    happened: list('rotten egg, bad egg, rotting egg, eggy, egg smell, smell of egg, smells of egg, smells like egg'),
  },
  { note: 'hit-gas', anyhow: true, happened: list('sulfur, sulphur, egg'), near: [smells], within: 5 },
  {
    note: 'hit-gas',
    anyhow: true,
    happened: smells,
    near: [list('strange, funny, weird, strong, odd'), list('hole, ground, trench, pipe, digging')],
    within: 10,
    unless: list('stain, paint, wood, treated, creosote, sewer, sewage, concrete, finish'),
  },
  {
    note: 'hit-gas',
    happened: list('stake, rod, bar, spike, pin, post, picket, spade, shovel, auger, nail, screw, drill'),
    near: [list('through, thru, into'), gasLines],
    within: 6,
    after: true,
  },
  {
    note: 'hit-gas',
    anyhow: true,
    happened: list('whistling, whistle, roaring, hissing'),
    near: [list('hole, pipe, auger, ground, smell, dug, digging, spade, shovel, bar')],
    within: 14,
    unless: list('wind, gale, picket, nailer, compressor, engine'),
  },
  {
    note: 'hit-gas',
    happened: ['help', 'emergency'],
    near: [gas],
    within: 3,
    unless: list('gas auger, gas powered, gas engine, gas can, how, which, rent, choose, emergency number'),
  },
  // Cables.
  { note: 'hit-cable', happened: [...struck, ...broken], near: [powerLines], within: 6, itself: true },
  { note: 'hit-cable', happened: pairs(['hit', 'struck', 'cut'], ['something', 'it']), near: [powerLines], within: 14 },
  {
    note: 'hit-cable',
    happened: [...struck, 'touched'],
    near: [list('cable, wire, electric, electrics, electricity')],
    within: 5,
    itself: true,
    unless: list('turnbuckle, gate, fence wire, wire fence, mesh, rope'),
  },
  {
    note: 'hit-cable',
    happened: broken,
    near: [list('cable, wire'), digging],
    within: 9,
    itself: true,
    unless: list('turnbuckle, gate, mesh, wire fence, rose'),
  },
  {
    note: 'hit-cable',
    happened: list('stake, rod, bar, spike, pin, post, picket, spade, shovel, auger, nail, screw, drill'),
    near: [list('through, thru, into'), powerLines],
    within: 6,
    after: true,
  },
  {
    note: 'hit-cable',
    happened: list('spark, sparked, sparking, arcing, arced, blue flash, big flash, bright flash'),
    near: [list('cable, wire, line, ground, hole, spade, shovel, digger, auger, bar')],
    within: 10,
    unless: list('grinder, grinding, saw, plug, arrestor, fire, rock, stone, nail, steel, bonfire'),
  },
  {
    note: 'hit-cable',
    happened: list(
      'got a shock, got shocked, gave me a shock, gives me a shock, gave him a shock, gave her a shock, had a shock, electric shock, electrical shock, electrocuted, got zapped, zapped me, shocked by the, shocked by a, shocked me, shocks me, shocking me, a shock from, shock off',
    ),
    unless: list('price, cost, quote, bill, collar, absorber'),
  },
  {
    note: 'hit-cable',
    happened: list('went out, went off, went dead, gone dead, gone out, cut out, tripped, has gone, is gone'),
    near: [list('power, lights, electricity, electric, breaker, fuse, internet'), digging],
    within: 8,
    unless: list('saw, drill, mixer, tool, battery'),
  },
  {
    note: 'hit-cable',
    happened: [...struck, ...broken],
    near: [pairs(list('internet, telephone, phone, fibre, fiber, broadband, tv'), list('cable, line, wire'))],
    within: 6,
    itself: true,
  },
  {
    note: 'hit-cable',
    happened: list('bang, explosion, exploded, flash'),
    near: [list('cable, wire, line')],
    within: 8,
  },
  {
    note: 'hit-cable',
    happened: list('stuck in, lodged in, jammed in, still in, into'),
    near: [pairs(list('live, power, electric, mains'), list('cable, wire, line'))],
    within: 4,
    after: true,
  },
  {
    note: 'hit-cable',
    happened: list('hit, touching, touched, struck, caught, snagged, against'),
    near: [
      pairs(['overhead'], list('line, wire, cable')),
      list('excavator, digger, ladder, auger, post, pole, truck, machine, tip, bucket'),
    ],
    within: 8,
    unless: list('keep, before, how far, how close'),
  },
  // Wires overhead.
  {
    note: 'wire-down',
    happened: [...isDown, 'down', 'hanging', 'lying', 'laying', 'hanging low'],
    near: [
      [
        ...pairs(
          list('power, electric, electrical, electricity, overhead, live, service, utility, telephone, phone'),
          list('line, wire, cable'),
        ),
        'powerline',
      ],
    ],
    within: 6,
    unless: [...otherWires, 'buried', 'underground'],
  },
  { note: 'wire-down', happened: isDown, near: [list('wire, cable')], within: 4, unless: otherWires },
  {
    note: 'wire-down',
    happened: [...isDown, 'down'],
    near: [list('line, wire, cable'), list('storm, gale, hurricane, tree, branch, pole')],
    within: 9,
    unless: [...otherWires, 'fence line', 'lot line', 'level', 'post', 'plumb'],
  },
  {
    note: 'wire-down',
    happened: list('live wire, live cable'),
    near: [list('fence, ground, yard, picket, across, grass, lawn')],
    within: 5,
  },
  {
    note: 'wire-down',
    happened: list('downed wire, downed line, downed cable, fallen wire, fallen line'),
  },
  {
    note: 'wire-down',
    happened: list(
      'move it, lift it, push it, shift it, touch it, move the wire, lift the wire, push the wire, move the cable, lift the cable, touch the wire',
    ),
    near: [list('wooden, wood, dry, broom, plastic'), list('pole, stick, broom, broomstick, branch, handle')],
    within: 8,
    after: true,
    anyhow: true,
    unless: ['post', 'gate'],
  },
  // Water, and what nobody knows yet.
  {
    note: 'hit-water',
    happened: [...struck, ...list('broke, broken, burst, busted, cracked, damaged, cut into')],
    near: [waterLines],
    within: 6,
    itself: true,
  },
  { note: 'hit-water', happened: ['cut'], near: [waterLines, digging], within: 9, itself: true },
  {
    note: 'hit-water',
    happened: list('burst, bursting, gushing, spraying'),
    near: [['pipe', 'water main', 'water line']],
    within: 6,
  },
  {
    note: 'hit-water',
    happened: list('gushing, fountain, spurting, shooting up, shooting out, spraying out, pouring up'),
    near: [['water'], list('hole, pipe, ground, dug, digging')],
    within: 10,
  },
  {
    note: 'hit-water',
    happened: smells,
    near: [list('sewage, sewer, drain'), list('hole, dug, digging, trench, ground')],
    within: 9,
  },
  {
    note: 'hitting-a-line',
    happened: [...struck, ...broken],
    near: [
      [
        ...list('pipe, conduit, pipeline, utility, utility line, service line, buried line, unknown line, a main'),
        ...pairs(list('a, the, some, yellow, red, orange, blue'), ['line']),
      ],
      digging,
    ],
    within: 10,
    itself: true,
    unless: list(
      'string, fence line, lot line, property line, boundary, chalk, plumb, sprinkler, irrigation, straight line, grass line, rock, root, pipe clamp, sleeve, downpipe, drainpipe, mark, marked, length, wax',
    ),
  },
  {
    note: 'hitting-a-line',
    happened: pairs(['hit', 'struck', 'nicked', 'cut'], ['something', 'it']),
    near: [list('pipe, conduit, line, cable, utility'), digging],
    within: 13,
    unless: list('string, fence line, lot line, property line, rock, root, sprinkler, irrigation, length, cut it to'),
  },
  {
    note: 'hitting-a-line',
    happened: struck,
    near: [list('a utility, the utility, utilities, a service line, utility line')],
    within: 4,
    itself: true,
  },
]
