// This file is about the worked examples of the reference book that we do not reproduce, each with its reason.

export const explained: Readonly<Record<string, string>> = {
  'agg-01':
    'A conversion of units, held in tests/engine/quantities/units.test.ts; the bucket itself is in gravel-for-holes.',
  'agg-02':
    'The definition of swell on earth-moving scale; the same definition is held on the scale of post holes (agg-06).',
  'agg-03': 'A load factor for quarry rock; nobody digs post holes in it.',
  'agg-04-pub':
    'Truck loads and fill on earth-moving scale; its swell is held by spoil-of-holes against the same printed figure.',
  'agg-05': 'Swell and shrink worked back from three densities; no builder has those three.',
  'agg-08': 'A conversion of units, held in tests/engine/quantities/units.test.ts.',
  'mow-03':
    'The book reckons a joint with every brick, so 50 ft take 150 and 158. Ours puts joints only between bricks, as they are laid: 150 of them end 3/8 in short of 50 ft, so ours says 151 and 159.',
}
