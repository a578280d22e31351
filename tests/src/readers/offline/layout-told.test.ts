// Layouts told in a story or in a talk: bays from one end, posts that stay, posts over pickets, lines from the house, slopes, arches. Each figure is worked beside it.
import { describe, expect, it } from 'vitest'
import { results, talk } from '../../talk.ts'

const last = async (...messages: string[]): Promise<Record<string, string>> => results((await talk(messages)).at(-1))

describe('layouts told in a talk', () => {
  it('keep whole bays from one end, and split what is left over both', async () => {
    // 41 − 6 × 6 = 5 ft
    const first =
      '41 ft of fence, posts every 6 ft from the garage end, what is left over goes by the gate post. How wide is the last bay?'
    expect(await last(first)).toMatchObject({ oddBay: '60 in' })
    // 11,900 − 4 × 2,700 = 1,100; half
    expect(
      await last(
        '11900 run full bays 2700 starting at the right, what is the last bay',
        'keep the 4 full ones and split the leftover between both ends, how big is each',
      ),
    ).toMatchObject({ leftoverEachEnd: '550 mm' })
  })

  it('set new posts between two that stay', async () => {
    // 40/8 = 5 bays, 5 − 1
    expect(
      await last('Two end posts stay. The gap is 40 ft long, at most 8 ft apart, how many new posts between them?'),
    ).toMatchObject({ newPosts: '4 posts' })
  })

  it('put a post above the pickets on top of what was told, and cut what is sold', async () => {
    // 1,100 + 60 + 550; 2,100 − 1,710
    const talked = [
      'how long must the posts be, fence 1.1 m above ground and 550 in the ground',
      'and they stick up 60mm above the pickets',
    ]
    expect(await last(...talked)).toMatchObject({ postLength: '1,710 mm' })
    expect(await last(...talked, 'they only sell 2.1m ones, how much do we cut off each')).toMatchObject({
      postOffcut: '390 mm',
    })
    // 36 + 40 + 3 = 79 in; 36 + 4
    const frost =
      'Frost goes to 36 in and the foot of the post sits at that depth. Pickets 40 in above the ground, posts rise 3 in above the pickets. What length of post is it?'
    expect(await last(frost)).toMatchObject({ postLength: '6 ft 7 in' })
    expect(await last(frost, 'And four inches of gravel under it, how deep do I dig?')).toMatchObject({
      holeDepth: '40 in',
    })
  })

  it('measure the line from the house, with half a post only where its middle is asked for', async () => {
    // 19 ft 4 − 2 ft
    const line = 'The fence must stay 2 ft back from the sidewalk and it is 19 ft 4 in from the porch to the sidewalk.'
    expect(await last(`${line} How far from the porch does the fence go?`)).toMatchObject({
      lineFromHouse: '17 ft 4 in',
    })
  })

  it('take one bay of a slope, and its drop', async () => {
    // 20/480 × 96 = 4; √(96² + 4²)
    expect(
      await last(
        'The lawn drops 20 in over 40 ft and my rails follow the ground. Bays are 8 ft on the level: how long is the sloping rail?',
      ),
    ).toMatchObject({ rakedBay: '96.08 in' })
    // 750/5, then 750/6
    const steps = ['It falls away here and I am stepping it. How big a drop at each post?', '750 fall in all, 5 bays']
    expect(await last(...steps)).toMatchObject({ stepEach: '150 mm' })
    expect(await last(...steps, 'same but 6 bays')).toMatchObject({ stepEach: '125 mm' })
  })

  it('read the heights of an arch in a story', async () => {
    // rise 6; (36² + 6²)/12 = 111; 24 from the middle: 42 − (111 − √(111² − 24²)) = 39.37
    expect(
      await last(
        'The top humps up. The ends are 3 ft tall, the middle is 3 ft 6 across a 6 ft bay. How tall is the picket 1 ft in from the post?',
      ),
    ).toMatchObject({ heightAtPlace: '39.37 in' })
  })

  it('take a lot less its sides, and a run of pickets that no opening is', async () => {
    // 90 ft − 2 × 10 in
    expect(
      await last('I must be ten inches inside my line at both ends and the stakes are 90 ft apart, how long a fence?'),
    ).toMatchObject({ runLength: '88 ft 4 in' })
    // (7,200 + 80)/160 = 45.5
    expect(
      await last('how many pickets do I need?', '7.2m fence, palings 80 wide', 'gap same as the paling'),
    ).toHaveProperty('picketsHung')
  })

  it('take the open half of a face off a pressure that is for the wood alone', async () => {
    const told =
      'say 15 pounds to the square foot on a six foot bay four foot high and half of it is open, how many pounds push on each post'
    // 15 × 6 × 4; × (1 − 1/2)
    expect(await last(told)).toMatchObject({ sideForce: '360 lbf' })
    expect(await last(told, 'the pressure is for the wood alone')).toMatchObject({ sideForce: '180 lbf' })
  })
})
