import { describe, expect, it } from 'vitest'
import { vocabulary } from '../../../engine/catalogue.ts'
import { decide, newJob, type Wanted } from '../../../engine/job/job.ts'
import { type Worked, work } from '../../../engine/job/work.ts'
import type { Outcome } from '../../../engine/outcome.ts'
import { isList, isQuantity, type Value } from '../../../engine/quantities/quantity.ts'
import { show } from '../../../engine/quantities/show.ts'
import { parseValue } from '../../../engine/words/value.ts'

type Told = Readonly<Record<string, string>>

/** A job from texts, each word at the yard or, as `holeDepth@corner-posts`, at some of the posts. */
function workedFrom(told: Told, wanted: Wanted = { word: 'bags', at: 'yard' }): Worked {
  const decisions = Object.entries(told).map(([key, text]) => {
    const [word = '', at = 'yard'] = key.split('@')
    const value = parseValue(vocabulary.get(word) as never, text, 'imperial')
    if (value === undefined) throw new Error(`“${text}” does not read as ${word}`)
    return { word, at, value, turn: 0 }
  })
  const worked = work(decide(newJob, decisions), [wanted], 0).find((it) => it.wanted.includes(wanted.word))
  if (!worked) throw new Error(`nothing gives ${wanted.word}`)
  return worked
}

const text = (value: Value | undefined): string =>
  isList(value) ? value.map(show).join('; ') : isQuantity(value) ? show(value) : String(value)
const result = ({ outcome }: Worked, word: string): string =>
  outcome.ok ? text(outcome.values.get(word)) : problems(outcome)
const problems = (outcome: Outcome): string =>
  outcome.ok ? '' : outcome.problems.map((it) => `${it.word}: ${it.message} ${it.ask ?? ''}`).join(' ')

const kinds = { 'posts@corner-posts': '4', 'posts@gate-posts': '3', bagYield: '0.6 ft3' }
const twelve = { ...kinds, holeDiameter: '12 in', holeDepth: '30 in' }

describe('words told for one kind of post', () => {
  // Corners: (π/4 × 144 − 5.5²) × 30 = 2485.4 in³ = 1.438 ft³; gates: (113.097 − 3.5²) × 30 = 3025.4 in³ = 1.751 ft³
  // 4 × 1.4383 + 3 × 1.7508 = 11.006; / 0.6 = 18.3 → 19
  it('the other kind takes the usual value, and it is kept who said which', () => {
    const worked = workedFrom({ ...twelve, 'postWidth@corner-posts': '5 1/2 in' })
    expect(result(worked, 'concretePerHole')).toBe('1.438 ft³; 1.751 ft³')
    expect(result(worked, 'concrete')).toBe('11.01 ft³')
    expect(result(worked, 'bags')).toBe('19 bags')
    expect(worked.places).toEqual(['corner-posts', 'gate-posts'])
    expect(worked.outcome.given.get('postWidth')?.roles).toEqual(['said', 'assumed'])
  })

  it('a word with no usual value is asked for, and the question names the kind of post that lacks it', () => {
    const { outcome } = workedFrom({ ...kinds, holeDiameter: '12 in', 'holeDepth@corner-posts': '36 in' })
    expect(problems(outcome)).toBe(
      'holeDepth: I need the hole depth for the gate posts as well. For the gate posts: how deep are the holes, stone included?',
    )
  })

  it('so is a word that the calculation could do without', () => {
    expect(result(workedFrom({ ...twelve, 'bagWeight@corner-posts': '80 lb' }), 'bags')).toContain(
      'I need the weight of a bag for the gate posts as well',
    )
  })

  it('two shapes of hole are not worked as one', () => {
    const said = 'The shape of the hole is not the same for all: square (corner posts), round'
    expect(
      result(workedFrom({ ...twelve, 'holeShape@corner-posts': 'square', 'holeShape@gate-posts': 'round' }), 'bags'),
    ).toContain(`${said} (gate posts)`)
    expect(result(workedFrom({ ...twelve, 'holeShape@corner-posts': 'square' }), 'bags')).toContain(
      `${said} as usual (gate posts)`,
    )
    const alike = { ...twelve, 'holeShape@corner-posts': 'square', 'holeShape@gate-posts': 'square' }
    expect(result(workedFrom(alike), 'bags')).toBe(result(workedFrom({ ...twelve, holeShape: 'square' }), 'bags'))
  })

  it('what the whole job shares must be one: spares, and what a bag makes', () => {
    expect(result(workedFrom({ ...twelve, 'spare@corner-posts': '10 %' }), 'concrete')).toContain(
      'I have more than one value for the added for spills and rough holes: 10 % (corner posts), 0 % (gate posts)',
    )
    const { bagYield: _, ...rest } = twelve
    expect(
      result(workedFrom({ ...rest, 'bagYield@corner-posts': '0.6 ft3', 'bagYield@gate-posts': '0.45 ft3' }), 'bags'),
    ).toContain('I have more than one value for what a bag makes: 0.6 ft³ (corner posts), 0.45 ft³ (gate posts)')
  })

  // 60 lb at the gates would be another bag than 80 lb at the corners: what feeds the sum is worked kind by kind too.
  it('what another calculation gives is worked for each kind by its own words', () => {
    const { bagYield: _, ...rest } = twelve
    expect(
      result(workedFrom({ ...rest, 'bagWeight@corner-posts': '80 lb', 'bagWeight@gate-posts': '60 lb' }), 'bags'),
    ).toContain('0.6 ft³ (corner posts), 0.45 ft³ (gate posts)')
  })
})

describe('posts in all, and some of them apart', () => {
  const all = { posts: '20', holeDiameter: '10 in', holeDepth: '30 in', bagYield: '0.6 ft3' }
  const corners = { ...all, 'posts@corner-posts': '4', 'holeDiameter@corner-posts': '12 in' }

  it('are not all worked with the holes of most of them: it asks whether the corner posts are among them', () => {
    expect(problems(workedFrom(corners).outcome)).toBe(
      'posts: The corner posts have their own hole width, so I must know how many posts of each kind there are. ' +
        'Are the 4 corner posts among the 20 posts? Then say “16 line posts”. If they come on top, say “24 posts in all, 20 line posts”.',
    )
  })

  // 4 × 1.7508 + 16 × 1.1508 = 25.416 ft³; / 0.6 = 42.4 → 43. On top: 7.003 + 20 × 1.1508 = 30.019; / 0.6 = 50.03 → 51
  it('are worked kind by kind once the kinds make up the whole', () => {
    const among = workedFrom({ ...corners, 'posts@line-posts': '16' })
    expect([result(among, 'concrete'), result(among, 'bags')]).toEqual(['25.42 ft³', '43 bags'])
    const onTop = workedFrom({ ...corners, posts: '24', 'posts@line-posts': '20' })
    expect([result(onTop, 'concrete'), result(onTop, 'bags')]).toEqual(['30.02 ft³', '51 bags'])
  })

  it('asks for the numbers where a kind has a hole of its own and no number', () => {
    const { 'posts@corner-posts': _, ...rest } = corners
    expect(problems(workedFrom(rest).outcome)).toContain('How many corner posts are there, and how many others?')
  })

  // 20 × 1.1508 = 23.016; / 0.6 = 38.4 → 39
  it('with holes all alike are worked together, and it is said that the corner posts are taken to be among them', () => {
    const worked = workedFrom({ ...all, 'posts@corner-posts': '4' })
    expect(result(worked, 'bags')).toBe('39 bags')
    expect(worked.outcome.ok && worked.outcome.doubts.map((it) => it.message)).toEqual([
      'I took the 4 corner posts to be among the 20 posts.',
    ])
  })

  it('refuses more posts by kind than there are', () => {
    expect(problems(workedFrom({ ...all, 'posts@corner-posts': '24' }).outcome)).toContain(
      'You said 20 posts in all, and by kind 24 corner posts: that is more.',
    )
  })

  // 4 corner and 7 gate posts said as eleven: corners in 12 in holes. 4 × 1.7508 + 7 × 1.1508 = 15.06; / 0.6 = 25.1 → 26
  it('a group of kinds is looked into just as the whole yard is', () => {
    const eleven = { ...all, 'posts@corner-posts+gate-posts': '11', 'holeDiameter@corner-posts': '12 in' }
    const wanted = { word: 'bags', at: 'corner-posts+gate-posts' }
    expect(problems(workedFrom(eleven, wanted).outcome)).toContain('The corner posts have their own hole width')
    const apart = { ...eleven, 'posts@corner-posts': '4', 'posts@gate-posts': '7' }
    expect(result(workedFrom(apart, wanted), 'bags')).toBe('26 bags')
  })
})

describe('words that stand for one another', () => {
  const holes = { posts: '12', holeDiameter: '12 in', stoneDepth: '6 in', holeShape: 'square' }
  const strip = { edgeRun: '20 ft', edgeWidth: '18 in', edgeDepth: '3 in' }
  const bag = { looseBag: '0.5 ft3' }
  /** Bags, where gravel and then stone for a strip were worked before. */
  const bagged = (told: Told, before: readonly (readonly [string, string])[]) => {
    const decisions = Object.entries(told).map(([word, text]) => {
      const value = parseValue(vocabulary.get(word) as never, text, 'imperial') as Value
      return { word, at: 'yard', value, turn: 0 }
    })
    const results = before.map(([word, calculation]) => ({ word, at: 'yard', calculation, value: null, ref: 'r1' }))
    return work({ ...decide(newJob, decisions), results }, [{ word: 'looseBags', at: 'yard' }], 1)
  }
  const ran = (worked: readonly Worked[]): string[] => worked.map((it) => it.calculation.name)
  const bags = (worked: readonly Worked[]): string =>
    result(worked.find((it) => it.calculation.name === 'loose-in-bags') as Worked, 'looseBags')

  // 12 × 1 × 0.5 × 1.15 = 6.9 ft³ → 14 bags; 20 × 1.5 × 0.25 = 7.5 → 15
  it('the one that was worked last is taken, and only that', () => {
    const both = [
      ['gravel', 'gravel-for-holes'],
      ['stripStone', 'stone-strip'],
    ] as const
    const last = bagged({ ...holes, ...strip, ...bag }, both)
    expect([bags(last), ran(last)]).toEqual(['15 bags', ['stone-strip', 'loose-in-bags']])
    const other = bagged({ ...holes, ...strip, ...bag }, [...both].reverse())
    expect([bags(other), ran(other)]).toEqual(['14 bags', ['gravel-for-holes', 'loose-in-bags']])
  })

  it('the one that is told is enough', () => {
    const told = bagged({ ...holes, ...bag, looseVolume: '3 ft3' }, [['gravel', 'gravel-for-holes']])
    expect([bags(told), ran(told)]).toEqual(['6 bags', ['loose-in-bags']])
  })
})

describe('pickets of a length, and bay by bay', () => {
  const line = { runLength: '60 ft', picketWidth: '3 1/2 in', wantedGap: '2 1/2 in' }
  const hung: Wanted = { word: 'picketsHung', at: 'yard' }

  // 720 / 6 = 120
  it('are counted straight along while nothing is known of the posts', () => {
    const worked = workedFrom(line, hung)
    expect(worked.calculation.name).toBe('pickets-by-length')
    expect(result(worked, 'picketsHung')).toBe('120 pickets')
  })

  // 8 bays of 90 in: 86 1/2 clear takes 14 at 2 1/2 in, and 8 × 14 = 112
  it('are counted bay by bay once the posts are, also where the other count is named', () => {
    for (const calculation of [undefined, 'pickets-by-length']) {
      const worked = workedFrom({ ...line, widestBay: '8 ft' }, { ...hung, ...(calculation ? { calculation } : {}) })
      expect(worked.calculation.name).toBe('picket-count')
      expect(result(worked, 'picketsHung')).toBe('112 pickets')
    }
  })
})

describe('a word told for some of the posts that are asked about', () => {
  const base = { bagYield: '0.6 ft3', holeDiameter: '12 in', holeDepth: '30 in' }
  const asked = { word: 'bags', at: 'corner-posts+gate-posts' }

  it('keeps the sum back, though it holds for others as well', () => {
    const told = { ...base, 'posts@corner-posts+gate-posts': '7' }
    expect(result(workedFrom({ ...told, 'holeDepth@gate-posts+end-posts': '36 in' }, asked), 'bags')).toContain(
      'The gate and end posts have their own hole depth',
    )
    // (π/4 × 144 − 3.5²) × 30 = 3025.4 in³ = 1.751 ft³; × 7 = 12.26; / 0.6 = 20.4
    expect(result(workedFrom({ ...told, 'holeDepth@end-posts+line-posts': '36 in' }, asked), 'bags')).toBe('21 bags')
  })
})
