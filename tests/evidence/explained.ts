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
  'lum-09':
    'A density formula from memory, for graded lumber at 19 %. What a stick weighs is in stick-weight, by the handbook’s own form and the kind of wood.',
  'mow-03':
    'The book reckons a joint with every brick, so 50 ft take 150 and 158. Ours puts joints only between bricks, as they are laid: 150 of them end 3/8 in short of 50 ft, so ours says 151 and 159.',
  'emc-table-all':
    'A count over the whole printed table by the coefficients for °C; ours are those for °F. All cells to 120 °F are held within 0.07 point in tests/engine/calculations/wood/equilibrium-moisture.test.ts.',
  'emc-table-allF':
    'A count over the whole printed table. All cells to 120 °F are held within 0.07 point in tests/engine/calculations/wood/equilibrium-moisture.test.ts.',
  'shrink-vol-add':
    'Shrinkage by volume, which the product formula overstates: nobody on a fence needs it, and the table itself says less.',
  'ps20-shrink-13.25':
    'A page whose printed answer does not follow from its own inputs; and a formula for lumber of any kind, where ours goes by the kind of wood.',
  'ps20-15pct': 'The same formula for lumber of any kind, where ours goes by the kind of wood.',
  'meter-depth':
    'How deep the pins go, from memory: it is told with the question for a reading at depth, and worked nowhere.',
  'meter-gradient-mean': 'Why pins a fifth deep read the mean: the reason for that question, worked nowhere.',
  'dew-wetbulb': 'Dew point from a wet bulb, which nobody brings to a fence; ours takes the humidity.',
  'film-thickness':
    'Thickness of the film from its spread and solids: for whoever inspects paint, not for whoever buys it.',
  'dry-thickness':
    'From memory: how much slower thick wood dries. Ours takes the pace from readings of the very wood, so its thickness is in it.',
  'wd-spruce-10': 'Withdrawal of screws is a design value: ours goes by penetration (screw-length) and gives no load.',
  'wd-syp-8': 'Withdrawal of screws is a design value, here with factors from memory: ours gives no load.',
  'wd-wrc-8': 'Withdrawal of screws is a design value, here with a gravity from memory: ours gives no load.',
  'zinc-units': 'Coating weight to thickness: the class on the box says it, and ours names the class.',
}
