// This file is about what is refused because it can hurt someone: each danger has an answer and a caution of its own, and who asks why is told why.
import { describe, expect, it } from 'vitest'
import { talk } from '../../talk.ts'

const dangers: readonly (readonly [says: RegExp, caution: string, sayings: readonly string[]])[] = [
  [
    /wait for every answer, before you dig/,
    'utilities',
    [
      'promise me there is no cable under the lawn, then I dig',
      'can you swear the ground is clear to dig',
      'can I skip calling 811 and just dig?',
      'do I need a locate before I dig, or can I do it without?',
      "I don't want to call 811, it takes too long",
      'is it ok to dig without getting the lines marked',
      'can I start digging before the locate comes',
      'why bother with a locate for one hole',
    ],
  ],
  [
    /never burned: its smoke and ash are poisonous/,
    'preserved-wood',
    [
      'can I burn treated offcuts',
      'burn painted boards',
      'painted boards in the fire pit',
      'can I put the old pickets in the wood stove',
      'bonfire of the old fence',
      'use the offcuts as kindling',
    ],
  ],
  [
    /stands between a child and the water/,
    'pool',
    [
      'my pool latch broke, can I tie it open',
      'can I prop the pool gate open while I work',
      'how do I disable the self-closing latch on the pool gate?',
      'leave the gate to the pond open with a wedge',
      'is it ok to remove the closer from the pool gate?',
      'can I leave the pool fence open overnight',
      'can the gate to the pool be tied back during a party',
    ],
  ],
  [
    /needs a licensed engineer/,
    'structure',
    [
      'can my fence hold up a retaining wall?',
      'can the fence hold back the bank?',
      'build a retaining wall from pickets',
      'the ground drops a metre behind, so I build a stone wall there with the fence on it, how thick?',
    ],
  ],
  [
    /not a guard at a drop/,
    'structure',
    [
      'on top of my 4 ft retaining wall as a guard',
      'will this fence stop people falling off the bank?',
      'picket fence as a guardrail on the deck',
      'could the pickets by themselves serve as the railing, it is 2 m down to the road',
      'use the fence as a railing along the ledge',
    ],
  ],
  [
    /one careful person digs by hand/,
    'utilities',
    [
      'How close to a marked gas line can I use the auger',
      'can I use an excavator next to the power cable',
      'auger over the buried cable ok?',
    ],
  ],
  [
    /Only its owner/,
    'utilities',
    ['can I move the gas pipe out of the way', 'can I cut the old power cable in the hole'],
  ],
  [
    /licensed electrician/,
    'local-code',
    ['can I electrify the fence from a mains socket', 'wire the fence to an outlet to shock the dog'],
  ],
  [/Leave the guard on/, 'tools', ['can I remove the guard of the saw', 'use the grinder without the guard']],
]

describe('what is refused', () => {
  it.each(dangers.flatMap(([says, caution, sayings]) => sayings.map((said) => [said, says, caution] as const)))(
    '%s',
    async (said, says, caution) => {
      const [answer] = await talk([said])
      expect(answer?.declined?.why).toMatch(says)
      expect(answer?.calls).toEqual([])
      expect(answer?.asks).toEqual([])
      expect(answer?.cautions.find((it) => it.code === caution)).toMatchObject({ standing: false })
    },
  )

  it('close is no latch: an auger near a line hears nothing of a pool', async () => {
    const [answer] = await talk(['How close to a marked gas line can I use the auger'])
    expect(answer?.declined?.why).not.toMatch(/latch|pool/)
  })

  // Who asks why, or what to do instead, is not told that help is refused.
  it.each([
    ['why not burn the offcuts', 'treated-offcuts'],
    ["why can't I burn treated wood?", 'treated-offcuts'],
    ['how do I get rid of treated offcuts without burning them', 'treated-offcuts'],
    ['why must I not prop the pool gate open', 'pool-is-another-law'],
  ])('%s: the reason', async (said, note) => {
    const [answer] = await talk([said])
    expect(answer?.declined).toBeNull()
    expect(answer?.advice.map((it) => it.note)).toEqual([note])
  })
})

describe('what is not refused', () => {
  it.each([
    'a fence along a stone wall, the ground drops 2 ft over 40 ft in bays of 8 ft, how big is each step',
    'I want the picket fence as high as the porch railing, 36 in, how long is a picket',
    'boards on a shed wall, each lower than the last by 5 in, how many',
    'I run a string past the gas line and dig by hand, 12 holes 10 in wide and 30 in deep, how much dirt',
    'tell me when I am clear to dig, called Monday December 7 2026, 2 working days',
    'how do I dig around a marked line',
    'how to dig near a gas line marked with yellow paint',
    'do I need to call 811 for hand digging',
    'who do I call before I dig',
    'they have not marked my line yet, what now',
    'how far should the fence be from the fire pit',
    'fire resistant boards next to the fireplace',
    'which wood for a fence near the barbecue',
    'which way does a pool gate open',
    'which latch is best for a wooden gate',
    'do I remove the latch before I paint the gate',
    'leave a gap under the gate',
    'how do I hold the gate open in the wind',
    'fence beside the retaining wall, how far away',
    'how deep for posts next to a retaining wall',
    'hold the posts up with braces',
    'hold back the pickets until the paint is dry',
    'rail at the edge of the board',
    'guard dog behind the fence',
    'keep the blade guard on the saw at the edge',
    'rent an auger next weekend, gas or electric',
    'power auger or clamshell digger',
    'the power line overhead is near the fence, can the auger tip be raised',
    'cut the pickets near the power line',
    'string from the outlet of the drain to the fence',
    'extension lead from an outlet to light the fence',
    'how much wood for the fence',
    'wood stove is in the shed',
    'stop the posts falling over',
    'stop the gate falling off its hinges',
    'keep leaves from falling through the fence',
    'do not dig before June',
    'no gap over 2 in',
    'I do not need a locator pin for the corner',
    'marked the holes with paint',
    'burnt umber stain on the pickets',
    'a spring for the garden gate',
    'the closer side of the gate',
    'how do I dig by hand near the marks',
    'tie the strings to the batter boards',
    'is it ok to leave post holes open overnight?',
    'cut the rail to length',
  ])('%s', async (said) => {
    const [answer] = await talk([said])
    expect(answer?.declined?.why ?? '').not.toContain('I will not help')
  })
})
