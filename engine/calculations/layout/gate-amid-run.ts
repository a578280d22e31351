// A gate in the middle of a run: as much fence on either side of it, in equal bays.
//
//   ●────●────●  gate  ●────●────●
//   ◄─ one side ─►      ◄─ the other ─►     each side = (run − gate between post centres) ÷ 2
import { calculation } from '../../calculation.ts'
import { less, zero } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { bayCentres, bays, gateOpening, runEnds, runLength, widestBay } from '../../words/bays.ts'
import { opening } from '../../words/pickets.ts'
import { posts, postWidth } from '../../words/posts.ts'
import { word } from '../../words/word.ts'

const eachHalf = word<'length'>('eachHalf', {
  kind: 'length',
  label: 'fence on each side of the gate',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From the centre of the end post to that of the gate post.',
  ask: 'How much fence is on each side of the gate?',
  called: { names: ['each side of the gate'] },
})

const baysEachHalf = word<'count'>('baysEachHalf', {
  kind: 'count',
  noun: 'bay',
  label: 'bays on each side of the gate',
  measure: 'As many on either side.',
  ask: 'How many bays on each side of the gate?',
  called: { names: ['bays each side'] },
})

const gateCentres = word<'length'>('gateCentres', {
  replaces: ['gateOpening'],
  kind: 'length',
  label: 'gate, between the centres of its posts',
  units: { imperial: 'ft', metric: 'm' },
  measure: 'From the centre of one gate post to that of the other.',
  ask: 'How far apart are the centres of the gate posts?',
  called: { names: ['between gate post centres'] },
  possible: { above: '0 in' },
  plausible: { from: '2 ft', to: '30 ft' },
})

export const gateAmidRun = calculation({
  name: 'gate-amid-run',
  title: 'A gate in the middle of a run',
  answers: 'How many posts and equal bays a run has with a gate in its middle, as much fence on either side.',
  needs: { runLength, widestBay, runEnds, gateOpening, gateCentres, postWidth },
  may: ['gateOpening', 'gateCentres'],
  oneOf: [['gateOpening', 'gateCentres']],
  gives: { posts, bays, bayCentres, opening, eachHalf, baysEachHalf },
  headlines: ['posts', 'baysEachHalf', 'bayCentres'],
  together: {
    posts: ['posts', 'bays', 'baysEachHalf', 'bayCentres', 'eachHalf'],
    bays: ['bays', 'baysEachHalf', 'bayCentres', 'posts'],
    bayCentres: ['bayCentres', 'baysEachHalf', 'posts'],
  },
  locals: { centresRun: 'length', eachHalf: 'length' },
  lines: {
    centresOpen: ['runLength', 'measured between the centres of the end posts'],
    centresClear: ['runLength - postWidth', 'half a post stands at each end, so the centres are one post width closer'],
    eachBeside: ['(centresRun - gateCentres) / 2', 'what the gate takes between post centres, and the rest halved'],
    eachHalf: ['(centresRun - gateOpening - postWidth) / 2', 'what the gate leaves between post centres, halved'],
    baysEachHalf: ['ceil(eachHalf / widestBay)', 'the fewest that keep every bay within your limit'],
    bayCentres: ['eachHalf / baysEachHalf', 'shared equally'],
    opening: ['bayCentres - postWidth', 'between post faces: what the pickets fill'],
    baysBoth: ['2 * baysEachHalf', 'both sides'],
    postsBoth: ['2 * (baysEachHalf + 1)', 'one more than the bays on each side: a post at the end and one at the gate'],
  },
  work({ runLength, runEnds, gateOpening, gateCentres, postWidth }, { line, has, put, tell, refuse, remark, system }) {
    if (runEnds === 'loop') refuse('runEnds', 'A closed loop has no middle. Give the side where the gate stands.')
    put('centresRun', runEnds === 'walls' || runEnds === 'outside' ? line('centresClear') : runLength)
    const half = put('eachHalf', line(has('gateCentres') ? 'eachBeside' : 'eachHalf'))
    if (!less(zero('length', 'in'), half))
      refuse(
        has('gateCentres') ? 'gateCentres' : 'gateOpening',
        `A gate of ${show(has('gateCentres') ? gateCentres : gateOpening)} leaves no fence of a run of ${show(runLength)}. Check both measurements.`,
      )
    tell('eachHalf', { ...half, unit: system === 'metric' ? 'm' : 'ft' })
    line('baysEachHalf')
    const bay = line('bayCentres')
    if (!less(postWidth, bay))
      refuse(
        'widestBay',
        `Bays of ${show(bay)} leave nothing between ${show(postWidth)} posts. Check the measurements.`,
      )
    line('opening')
    tell('bays', { ...line('baysBoth'), kind: 'count', unit: 'bay' })
    tell('posts', { ...line('postsBoth'), kind: 'count', unit: 'post' })
    remark('Both gate posts are counted: one stands on each side of the opening.')
  },
  sources: [
    { fact: 'each side has one post more than it has bays', from: 'Derived here from the sketch; needs no table.' },
  ],
  cautions: ['utilities', 'lot-line', 'local-code', 'overhead-lines'],
  examples: [
    // 60 ft = 720; less 42 + 3 1/2 = 674 1/2; half 337 1/4; / 96 = 3.5 → 4; 84 5/16 in = 7 ft 5/16; posts 2 × 5
    {
      ask: 'A run of 60 ft between post centers with a 42 in gate in the middle, the same fence on each side, bays at most 8 ft: how many posts?',
      given: { runLength: '60 ft', gateOpening: '42 in', widestBay: '8 ft', runEnds: 'centres' },
      expect: {
        posts: '10 posts',
        bays: '8 bays',
        baysEachHalf: '4 bays',
        bayCentres: '7 ft 0 5/16 in',
        eachHalf: '28 ft 1 1/4 in',
      },
    },
    // 28.8 − 4 = 24.8; half 12.4; / 2.5 = 4.96 → 5; 2.48
    {
      ask: 'Run 28.8 m with a gate of 4 m from post centre to post centre in the middle of it, the same on either side, bays at most 2.5 m: how wide is each bay?',
      given: { runLength: '28.8 m', gateCentres: '4 m', widestBay: '2.5 m', runEnds: 'centres' },
      expect: { posts: '12 posts', baysEachHalf: '5 bays', bayCentres: '2,480 mm', eachHalf: '12.4 m' },
    },
    // 24,000 − 1100 − 100 = 22,800; half 11,400; / 2400 = 4.75 → 5; 2280; posts 2 × 6
    {
      ask: 'Run 24 m, a gate of 1100 mm in the middle of it, as much fence on either side, 100 mm posts no more than 2.4 m apart: how many posts?',
      given: { runLength: '24 m', gateOpening: '1100 mm', widestBay: '2.4 m', runEnds: 'centres', postWidth: '100 mm' },
      expect: { posts: '12 posts', baysEachHalf: '5 bays', bayCentres: '2,280 mm', eachHalf: '11.4 m' },
    },
  ],
})
