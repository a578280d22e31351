// This file is about emergencies in talk: what has just gone wrong calls up what to do, alone; what is only thought of does not.
import { describe, expect, it } from 'vitest'
import { noteNamed, notes } from '../../../../engine/index.ts'
import { talk } from '../../talk.ts'

const told: Readonly<Record<string, readonly string[]>> = {
  'hit-gas': [
    'I can smell gas',
    'could this be a gas leak?',
    'help gas',
    'a sound of hissing from the ground',

    'my auger just went through something and now there is a whistling sound and a bad smell',
    'is it safe to go back to the house, gas smell by the hole',

    'I hit a gas line with the post hole digger',
    'I hit the side of the gas line with my spade',
    'I punctured the wall of the gas main',
    'I struck with the spade a gas pipe',
    'the auger hit a gas pipe and it is hissing',
    'I hit a gas line',
    'Gas leak',
    'gas is hissing, help',
    'Hissing from the hole',
    'rotten egg smell',
    'stake through the gas main',
    'I may have hit a gas line',
    'think i nicked the gas with my spade',
    "i didn't mean to but I cut the gas pipe",
    'the gas line got hit by the auger',
    'I smell gas',
    'it smells like gas near the hole I dug, how many bags do I need for it?',
    'we struck something, I think it is a gas line',
    'there is a strange smell from the hole',
  ],
  'hit-cable': [
    'my spade is stuck in a live cable',
    'mini excavator is touching an overhead line',
    'the gate gives me a shock when I touch it',

    'Oh god the digger bucket caught a cable and there was a bang',
    'the power went out when I dug',
    'I think I cut the internet cable',
    'sparks came out of the hole',

    'auger touched a power cable and it sparked',
    'I drove a stake through a power cable',
    'we cut an electric cable with the digging bar',
    'hit a live wire',
    'the spade sparked when it went into the ground',
    'I got a shock from the fence',
    'my husband got an electric shock from the wire',
    'I broke a cable while digging the third hole',
  ],
  'wire-down': [
    'A wire is down on my fence',
    'can I move it with a wooden pole',
    'power line fell on the fence',
    'the storm brought the power lines down on my fence',
    "there's a live wire on my fence",
    'downed line across the yard',
    'a cable is hanging over my fence after the wind',
    'can I push the wire off with a dry stick',
  ],
  'heat-stroke': [
    'my helper is dizzy and confused in the heat',
    'stopped sweating and is confused in the heat',
    'he fainted in the heat',
    'I feel faint, it is really hot',
    'my dad collapsed in the sun',
    'heat stroke',
  ],
  burning: [
    'my fence caught fire from the fire pit',

    'my stain rags are smoking',
    'help the rags are on fire',
    'the pile of rags is getting hot',
    'the fence is on fire',
    'the shed caught fire',
  ],
  'caught-by-a-gate': [
    'The gate motor trapped my child',
    'my hand is trapped in the gate opener',
    'the automatic gate crushed his arm',
  ],
  'head-between-pickets': ['kid got his head stuck between the pickets', 'my dog is stuck in the fence by its neck'],
  'badly-hurt': [
    'my dad fell from his ladder',
    'my dad fell off a step ladder and does not move',
    'I’m having chest pains',
    'my arm got caught in the auger',
    'finger crushed by the auger',

    'stepped on a rusty nail',

    'I shot a nail through my hand',
    'nail in my foot',
    'I cut my finger off',
    'i sawed into my leg and its bleeding',
    'my friend fell off the ladder and is not moving',
    'a child fell in the post hole',
    'the hole caved in on him',
  ],
  'in-the-water': ['my son fell in the pool', 'a toddler is face down in the pond'],
  swallowed: ['my dog licked the wood preservative', 'my toddler swallowed some paint'],
  'cement-in-the-eye': ['cement in my eye', 'wet concrete splashed into his eyes'],
  'jet-through-the-skin': [
    'sprayed myself with the airless, small hole in my palm',

    'paint sprayer hit my finger',
    'the airless jet went through the skin of his hand and my hand',
  ],
  'hit-water': [
    'water is coming up out of the hole like a fountain',
    'sewage smell from the hole',
    'hit a water main',
    'I broke the sewer pipe digging',
    'pipe burst when I dug the hole',
  ],
  'hitting-a-line': [
    'I think I hit something with the auger, maybe a pipe',
    'I struck a utility',
    'I hit a pipe while digging, what now?',
    'nicked a conduit with the shovel',
    'auger hit a line',
  ],
}

describe('an emergency', () => {
  it.each(Object.entries(told).flatMap(([note, sayings]) => sayings.map((said) => [said, note] as const)))(
    '%s: %s, alone',
    async (said, note) => {
      const [answer] = await talk([said])
      expect(answer?.advice.map((it) => it.note)).toEqual([note])
      expect(answer?.calls).toEqual([])
      expect(answer?.asks).toEqual([])
      expect(answer?.declined).toBeNull()
      expect(answer?.reply.startsWith(`*${noteNamed(note)?.title}.*`)).toBe(true)
      expect(answer?.reply).not.toMatch(/I can work out|I did not|I will not|I have noted|I need to know/)
      expect(answer?.cautions.map(({ code, standing }) => [code, standing])).toEqual([
        ['utilities', true],
        ['lot-line', true],
        ['local-code', true],
      ])
    },
  )

  it('has a wording for each of its notes here', () => {
    expect(Object.keys(told).sort()).toEqual(
      notes
        .filter((it) => it.emergency)
        .map((it) => it.name)
        .sort(),
    )
  })

  it('comes before a sum that is half asked, and the full cautions come with the next sum', async () => {
    const answers = await talk([
      'How many 60 lb bags for 8 corner posts, 10 in holes?',
      '30 in deep. Wait, I hit a gas line!',
      'How many 60 lb bags for 8 corner posts, 10 in holes 30 in deep?',
    ])
    expect(answers[1]?.calls).toEqual([])
    expect(answers[1]?.advice.map((it) => it.note)).toEqual(['hit-gas'])
    expect(answers[2]?.cautions.find((it) => it.code === 'utilities')?.standing).toBe(false)
  })

  // A number is right in one country and wrong in the next.
  it('every number to ring stands beside its country', async () => {
    for (const note of notes.filter((it) => it.asWritten)) {
      const [answer] = await talk([note.asks[0] as string])
      for (const [number, where] of [
        ['911', 'in the US and Canada'],
        ['999', 'in the UK'],
        ['112', 'in Europe'],
        ['000', 'in Australia'],
        ['111', 'in New Zealand'],
        ['0800 111 999', 'in Great Britain'],
        ['0800 002 001', 'in Northern Ireland'],
      ])
        if (Object.values(note.asWritten ?? {}).includes(number as string))
          expect(answer?.reply).toContain(`${number} ${where}`)
    }
  })
})

describe('no emergency', () => {
  it.each([
    'how far from the gas meter can I set a post',
    'my dog dug a hole',
    'cut list for the pickets',
    'close the gate',
    'how hot may it be to paint',
    'how do I avoid hitting a gas line',
    "so I don't hit a gas line, how far away must the post be?",
    'will I hit a gas line if I dig here',
    'how deep are gas lines buried',
    'how do I dig safely near a gas line',
    'can I cut the root next to the gas pipe',
    'I hit a rock beside the gas line',
    'cut the posts near the power line',
    'gas powered auger hit a rock',
    'should I rent a gas auger or an electric one',
    'how close to the overhead wires can the fence be',
    'run the string line down the fence',
    'the string line broke while digging',
    'I hit a big rock with the digging bar',
    'the auger hit a root',
    'the fence line hits the drive at an angle',
    'mark the line for the holes and cut to it',
    'I broke the post hole digger',
    'I cut the cable for the gate brace too short',
    'cable for a sagging gate, which way down',
    'hang the wire for roses on the fence',
    'roll of wire is lying on the ground',
    'tannin is bleeding through my paint',
    'my gate is stuck',
    'a screw head is stuck in the picket',
    'the hole collapsed when I dug it, it is all sand',
    'fence fell over in the storm',
    'the post fell in the hole',
    "I'm confused about the heat treated wood",
    'a faint pencil line in the hot sun',
    'I was shocked by the price',
    'the paint is blistering in the sun',
    'hot day, how long to dry between coats',
    'cut the picket with my hand saw',
    'eye bolts in concrete',
    'a hose hisses',
    'how do I keep my toddler out of the pool',
    'stop my kid falling in the pond with a fence',
    "pickets so a child's head does not get stuck",
    'wire mesh down to the ground',
    'nail the picket in the middle of the rail',
    'how far down is the water table',
    'smell of creosote in the wood',
    'what does the yellow paint on my lawn mean',
    'is it safe to dig near a buried cable',
    'burning sun on fresh paint',
    'set the post on fire brick',
    'strike off the concrete',
    'break the concrete of the old footing',
    'the stain smells strong in the can',
    'spark plug of the auger',
    'where do I run the power line for the gate opener',
    'how do I stop oily rags catching fire',
    'why is smoke from treated wood bad',
    'my back hurts from digging in the heat',
    'how do I work safely in the heat',
    'the gate hits the post when it closes',
    'gate fell off its hinges',
    'I hit the post with a hammer to get it plumb',
    'the wind blew my fence down',
    'level line dropped, string is down',
    'wind whistling through the pickets',
    'I broke my hand drill',
    'I cut my hand saw blade on a nail',
    'stuck a nail in the foot of the post',
    'nail through the head of the picket',
    'a hole fell in, sand everywhere',
    'the string fell down on the fence',
    'a wire fence is down after the storm',
    'is a gas line usually on the street side?',
    'can I hang the gate from the gas meter pipe',
    'do not bury the head: a crushed ring holds water',
    'my dog ate the plans for the fence',
    'the saw cut out when I dug the cord up',
    'caught the string on the post',
    'how much stain do the boards drink',
    'stood on the rail to test it',
    'the old posts stood on gravel',
  ])('%s', async (said) => {
    const [answer] = await talk([said])
    expect(answer?.advice.filter((it) => noteNamed(it.note)?.emergency)).toEqual([])
  })
})
