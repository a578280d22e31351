import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { weightsIn } from '../../../src/guard/caution-sense.ts'
import { cautionWeights } from '../../../src/guard/caution-weights.ts'
import { guardProse, passProse } from '../../../src/guard/prose.ts'
import type { Refs } from '../../../src/guard/refs.ts'
import { refs } from './refs.ts'
import { contradictions, harmless, untaught } from './sentences.ts'
import { weightsTaught, written } from './teach.ts'

interface Given {
  readonly id: string
  readonly text_with_placeholders: string
  readonly available_refs: Refs
  readonly user_text: string
  readonly verdict: 'pass' | 'reject'
  readonly why: string
}
const given = JSON.parse(readFileSync(new URL('./cases.json', import.meta.url), 'utf8')) as Given[]

const said = 'What spacing for a 70 5/8 in opening? I want a double gate and two-by-four rails.'

describe('the given cases', () => {
  it.each(given.map((it) => [it.id, it.verdict, it.why, it] as const))('%s %s: %s', (_id, verdict, _why, it) => {
    expect(guardProse(it.text_with_placeholders, it.available_refs, it.user_text).pass).toBe(verdict === 'pass')
  })
})

describe('further cases', () => {
  it.each([
    'Buy {{r1.bags}} together.',
    'You need {{r1.bags}} for the posts.',
    'The gap by the tape is {{r1.tapeGap}}.',
    'Your opening of {{u1}} takes {{r1.pickets}}.',
    'Set {{r1.posts}} and fill around them.',
    'The wood is {{r2.dryEnough}}.',
    'Fill the holes with {{r1.concrete}} in all.',
    '**{{r1.pickets}}** come out even.',
    '- Pickets: {{r1.pickets}}\n- Gap: {{r1.tapeGap}}',
    '| what | how much |\n|---|---|\n| bags | {{r1.bags}} |\n| gap | {{r1.tapeGap}} |',
    '1. Mark the rail.\n2. Hang the pickets.',
    '### Pickets\n\nStart at the corner.',
    'One of the posts leans.',
    'Double-check the marks.',
    'Use a half-lap at the corner.',
    'The double gate hangs on the stout posts.',
    'Use the two-by-fours on edge.',
    'First, set the corners.',
    'Third, hang the rails.',
    'A gap against each post keeps it even.',
    'Give it a coat when it has dried.',
    'Work around the yard.',
    'The price per foot depends on the wood.',
    'Take them one at a time.',
    'Start from one end.',
    'Leave a hair of play.',
    'At once is best.',
    'The foot of the post stands on stone.',
    'MDF swells.',
    'Exactly {{r1.pickets}} come out even.',
    'It takes stain once a splash of water soaks in.',
    'Use a brace of scrap timber.',
    'The width of your gate decides the hinges.',
    'Rent the auger for the day you have a friend.',
    'Leave it the day you dig.',
    'The frost line does not move when the count drops.',
  ])('pass: %s', (text) => expect(guardProse(text, refs, said)).toEqual({ pass: true, reasons: [] }))

  it.each([
    'You need 23 bags.',
    'You need twenty three bags.',
    'Use {{r1.bags}} or so.',
    'Use about {{r1.bags}}.',
    'Use at least {{r1.bags}}.',
    'Just {{r1.concrete}} will do.',
    'Only {{r1.concrete}} goes in.',
    'Up to {{r1.bags}}.',
    'Over {{r1.bags}}.',
    '{{r1.bags}} more.',
    '{{r1.bags}} each.',
    '{{r1.bags}} per post.',
    '{{r1.bags}} times {{r1.posts}}.',
    '{{r1.bags}} to {{r1.posts}}.',
    '{{r1.bags}} or {{r1.posts}}.',
    '{{r1.bags}} x {{r1.posts}}',
    '{{r1.bags}}/{{r1.posts}}',
    '{{r1.bags}}{{r1.posts}}',
    '~{{r1.bags}}',
    '±{{r1.tapeGap}}',
    '{{r1.tapeGap}} + a bit',
    '{{r1.tapeGap}} inches.',
    '{{r1.tapeGap}} feet wide.',
    '{{r1.tapeGap}}-ish.',
    'x{{r1.bags}}',
    '{{r1.bags}}s',
    '{{r1.bags}} posts.',
    'Posts: {{r1.bags}}',
    'The posts are {{r1.bags}}.',
    'Pickets: {{r1.tapeGap}}',
    'The hole depth is {{r1.tapeGap}}.',
    'The gap is {{r1.holeDepth}}.',
    '{{r1.holeDepth}} wide.',
    '| posts | {{r1.bags}} |',
    '{{r0.bags}}',
    '{{r9.bags}}',
    '{{ r1.bags',
    'r1.bags }}',
    '{{__proto__}}',
    '{{toString}}',
    '{r1.bags}',
    '[r1.bags]',
    'Half the bags are spare.',
    'Twice as deep.',
    'A couple of bags.',
    'A pair of posts.',
    'A dozen.',
    'Thrice.',
    'Fivefold.',
    'Go a third deeper.',
    'The second coat.',
    'On the tenth post.',
    'Umpteen bags.',
    'A trio of posts.',
    'One bag.',
    'One more post.',
    'One inch.',
    'A single post.',
    'Every other picket.',
    'An inch.',
    'A few inches.',
    'Several feet.',
    'A foot of gravel.',
    'A yard of concrete.',
    'Some pounds of mix.',
    'Wait a week.',
    'Overnight.',
    'Until tomorrow.',
    'A fortnight.',
    'Daily.',
    'At noon.',
    "A pencil's width.",
    'Half an inch.',
    'Three-quarters.',
    'Post number XIV.',
    'II coats.',
    'Once a day.',
    'A grand in all.',
    'Scores of pickets.',
    'A brace of hinges.',
    'Budget a C-note for hinges.',
    'Leave it the weekend.',
    'Wait a full moon before staining.',
    'Give it until Tuesday.',
    'Dig down to the length of your arm.',
    'Leave the width of a pencil.',
    'The gap is as wide as your hand.',
    'Leave it a whole season.',
    'It sets by the next morning.',
    'Buy X bags.',
    'It dries in an afternoon.',
    'Let it sit through the night.',
    'Stain it once a season.',
    '½ in',
    '２ bags',
    '①',
    '⁵',
    '五',
    '🔟',
    '⚄',
    'Ⅳ',
    '3⁄8',
    '&frac12;',
    '&#50;3 bags',
    's e v e n',
    's-e-v-e-n bags',
    'sev\u200ben',
    'ѕeven',
    'sev**en**',
    'siete bolsas',
    'zwölf',
    'otto',
    'dwanaście',
    'seven\nteen bags',
    '- seven\n- teen',
    '5 %',
    'ten ‰',
    '!!!!',
    '----',
    '<b>hi</b>',
    '[a](http://x)',
    '![a](b)',
    '`code`',
    '~~no~~',
    '> quote',
    '***',
    '$x$',
    'See https://a.b',
    '&nosuch;',
    '1. a\n3. b',
    '2. a',
    'Привет',
    '你好',
    'مرحبا',
    'It is dry enough.',
    'That is deep enough.',
    'The wood is ready.',
    'It fits.',
    'Too shallow.',
    'This will hold.',
    'You can paint now.',
    'That is plenty, it is sufficient.',
  ])('refuse: %s', (text) => expect(guardProse(text, refs, said).pass).toBe(false))

  it('says which rule and which piece, never the words', () => {
    const { reasons } = guardProse('Start at the corner. You need seventeen secret posts.', refs, said)
    expect(reasons).toContainEqual({ rule: 'R7-number', place: 'sentence 2' })
    expect(JSON.stringify(reasons)).not.toMatch(/secret|seventeen/)
  })
})

describe('what is shown', () => {
  const show = (text: string) => passProse(text, refs, said)
  it('fills slots and redraws markers', () => {
    expect(show('1) Buy {{r1.bags}}.\n2) Mark the rail.').shown).toBe('1. Buy 23 bags.\n2. Mark the rail.')
    expect(show('# Pickets\nThe gap is {{r1.tapeGap}}.').shown).toBe('**Pickets**\n\nThe gap is 2 3/16 in.')
    expect(show('| what | how much |\n|---|---|\n| bags | {{r1.bags}} |').shown).toBe(
      '| what | how much |\n|---|---|\n| bags | 23 bags |',
    )
  })
  it('drops what is refused where others stand', () => {
    expect(show('Buy {{r1.bags}}. That makes 25 with spares. Start at the corner.')).toMatchObject({
      shown: 'Buy 23 bags. Start at the corner.',
      dropped: 1,
      whole: false,
    })
  })
  it('mends a unit or a noun said twice, and the person’s own quantity in their own spelling', () => {
    expect(show('The gap is {{r1.tapeGap}} inches.').shown).toBe('The gap is 2 3/16 in.')
    expect(show('You need {{r1.bags}} bags.').shown).toBe('You need 23 bags.')
    expect(show('Your opening is 70 5/8 in.').shown).toBe('Your opening is 70 5/8 in.')
    expect(show('Your opening is 70.625 in.').shown).toBe('')
    expect(show('An opening is 70 5/8 in.').shown).toBe('')
  })
  it('shows nothing of a text whose number runs over its pieces', () =>
    expect(show('Start at the corner.\n\nYou need seven\n\nteen posts.').shown).toBe(''))
})

describe('cautions', () => {
  it(`refuses ${contradictions.length} contradictions in words, every one`, () => {
    expect(contradictions.length).toBeGreaterThanOrEqual(500)
    expect(contradictions.filter((it) => guardProse(it, refs, said).pass)).toEqual([])
  })
  // A person may have said any of the words: then it is the subject that is refused, not a word nobody knows.
  it('refuses them by their subject, where the person has used the very words', () => {
    const passing = contradictions.filter((it) => guardProse(it, refs, it).pass)
    expect(passing.length / contradictions.length, passing.join('\n')).toBeLessThan(0.01)
  })
})

describe('harmless sentences', () => {
  it('fewer than three in a hundred are refused', () => {
    expect(harmless.length).toBeGreaterThanOrEqual(300)
    const refused = harmless.filter((it) => !guardProse(it, refs, said).pass)
    expect(refused.length / harmless.length, refused.join('\n')).toBeLessThan(0.03)
  })
})

describe('sentences that nothing was mended by', () => {
  const passes = (it: string): boolean => guardProse(it, refs, said).pass

  it('of roundabout contradictions three in four are refused, of harmless sentences fewer than one in twenty', () => {
    const passing = untaught.contradictions.filter(passes)
    expect(passing.length / untaught.contradictions.length, passing.join('\n')).toBeLessThan(0.25)
    const refused = untaught.harmless.filter((it) => !passes(it))
    expect(refused.length / untaught.harmless.length, refused.join('\n')).toBeLessThan(0.05)
  })

  it('stand among none of those that were', () => {
    for (const kind of ['contradictions', 'harmless'] as const) {
      const taught = new Set(kind === 'harmless' ? harmless : contradictions)
      expect(untaught[kind].filter((it) => taught.has(it))).toEqual([])
    }
  })
})

describe('what words weigh for a caution', () => {
  // The last digit may differ where another Node reckons an exponent otherwise.
  it('is what the sentences teach: `npm run teach -- guard` makes it anew', () => {
    const taught = weightsTaught(contradictions, harmless)
    const known = written(taught).split('\n').length
    expect(Math.abs(cautionWeights.trim().split('\n').length - known)).toBeLessThan(5)
    const kept = weightsIn(cautionWeights)
    const far = [...new Set([...taught.keys(), ...kept.keys()])].filter(
      (it) => Math.abs((taught.get(it) ?? 0) - (kept.get(it) ?? 0)) > 0.11,
    )
    expect(far).toEqual([])
  })
})

describe('hostile input', () => {
  it.each([
    '{{'.repeat(50_000),
    'a '.repeat(50_000),
    's '.repeat(50_000),
    '| '.repeat(50_000),
    '*'.repeat(100_000),
    '&'.repeat(100_000),
    'one '.repeat(25_000),
    '- '.repeat(50_000),
    '\n'.repeat(100_000),
    'dig '.repeat(25_000),
  ])('of 100 kB is refused or shown, and done with', (text) => {
    expect(typeof passProse(text, refs, said).shown).toBe('string')
    expect(typeof passProse(text.slice(0, 19_000), refs, said).shown).toBe('string')
  })
})
