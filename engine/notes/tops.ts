// This file is about advice on the tops of pickets: curves, points, and when to cut.
import type { Note } from './note.ts'

export const tops: readonly Note[] = [
  {
    name: 'cutting-a-curve-before-or-after',
    title: 'Cutting a curve before or after hanging',
    text: 'Hang them long, draw the curve across the whole bay, and cut them standing: the line then flows, whatever the posts do. Clamp a board behind so that the saw does not tear the wood, and never cut freehand above your chest. Cut on the bench when tops are pointed or round, with one jig for all. Brush the fresh ends before you go home.',
    called: [
      'cut|cutting curve|curved|arch|scallop|swoop|dip|top before|after|first|hung|place hang|hanging|hung|picket',
      'cut|cutting scallop|curve|swoop|arch standing|hung|bench|jigsaw|how|when',
    ],
    asks: ['Do I cut the curve before or after hanging the pickets?', 'cut the swoop on the bench or standing?'],
    from: 'common practice, no source',
    cautions: ['tools', 'dust'],
  },
  {
    name: 'drawing-a-swoop',
    title: 'Drawing the curve',
    text: 'Bend a thin straight batten between two screws at the posts and one in the middle, stand back, and shift the middle until it looks right. Draw along it on every picket. A chain hung from both ends and lifted against the boards gives a dip that the eye likes as well. Make a template of it when several bays are alike.',
    called: [
      'draw|trace|scribe curve|swoop|arch|scallop|dip|arc how|batten|chain|with',
      'batten|chain|template curve|swoop|arch|scallop|dip mark|draw|use|hang|with',
    ],
    asks: ['How do I draw the swoop on the pickets?', 'can i use a chain to mark the scallop?'],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'curve-in-a-short-bay',
    title: 'The curve in a shorter bay',
    text: 'Keep the depth of the dip the same and the ends of all bays meet at one height: that is what the eye follows along a fence. Keep the same roundness instead and the short bay dips less, which looks better where the short bay stands apart, beside a gate. Draw both full size on cardboard and look from the street.',
    called: [
      'curve|arch|swoop|scallop|dip short|shorter|narrow|narrower|end bay|section same|deep better|look|or|does|get|should',
      'same dip|curve|swoop|roundness short|shorter|narrower bay or|better|look',
    ],
    asks: [
      'The end bay is shorter, does its swoop get the same dip?',
      'arch in the short bays, which looks better, same dip or same curve?',
    ],
    from: 'common practice, no source',
    cautions: [],
  },
  {
    name: 'tops-that-shed-water',
    title: 'Tops that shed water',
    text: 'A point, a round or a slope lets rain run off; a flat top drinks it through the end grain. If you like the flat look, slope the cut a little, or put a rail cap along it. Whatever the shape, the top is end grain: seal it twice, and again at every recoat.',
    called: [
      'flat|pointed|round|square|sloped|shape top picket water|rain|rot|last|better|best|longer',
      'picket top shape|style|pointed|flat best|better|last|rot|which',
    ],
    asks: ['Do pointed picket tops last longer than flat ones?', 'which shape of picket top is best against rot?'],
    from: 'common practice, no source',
    cautions: [],
  },
]
