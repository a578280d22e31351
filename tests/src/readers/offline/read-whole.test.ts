// Messages in which every size stands beside what it is: gates, slopes, tops, corners, bricks. Each figure is worked beside it.
import { describe, expect, it } from 'vitest'
import { readQuantities } from '../../../../engine/index.ts'
import { asked, results, talk } from '../../talk.ts'

const last = async (...messages: string[]): Promise<Record<string, string>> => results((await talk(messages)).at(-1))

describe('gates', () => {
  it('“my two gate posts” make no double gate, and the diagonal is that of the leaf', async () => {
    // 1100 − 10 − 15 = 1075; √(1075² + 1000²) = 1468.2
    const first =
      'My two gate posts stand 1,100 mm apart, 10 mm for the hinges, 15 mm at the latch. How wide should the gate be?'
    expect(await last(first)).toMatchObject({ leafWidth: '1,075 mm' })
    expect(await last(first, 'It will be 1 m tall. What should it measure corner to corner?')).toMatchObject({
      leafDiagonal: '1,468 mm',
    })
  })

  it('“in middle” is no inch, and a gap each side is that of the hinges', async () => {
    // (2800 − 2 × 12 − 16) / 2 = 1380; (1380 + 30)/(70 + 30) = 14.1: 14 have (1380 − 980)/13 = 30 10/13
    const first = 'pair of gates 2800 opening. 12 each side 16 in middle. width of each leaf'
    expect(await last(first)).toMatchObject({ leafWidth: '1,380 mm' })
    expect(await last(first, '70 palings, gap about 30, how many on each leaf')).toMatchObject({
      picketsOnLeaf: '14 pickets',
    })
  })

  it('the opening is asked for where nobody said it, and one gap each side is two', async () => {
    expect(asked((await talk(['gate. how wide to build the leaf'])).at(-1))).toEqual(['gateOpening'])
    // 40 − 2 × 1/2
    expect(await last('gate. how wide to build the leaf', '40 in opening, 1/2 in gap each side')).toMatchObject({
      leafWidth: '39 in',
    })
  })

  it('a drop at the latch is taken up by a cable', async () => {
    // √(36² + 48²) = 60; √(3600 + 2 × 48 × 1) = 60.795
    expect(
      await last('gate sagged by 1 in, its 36 in wide, how much do i tighten the turnbuckle', 'it is 48 in tall'),
    ).toMatchObject({ takeUp: '0.7947 in', squareDiagonal: '60 in' })
  })

  it('it is hung over ground that rises across its swing', async () => {
    expect(
      await last('path comes up 2 in as the gate swings, i want 1 in clear all the way. how high at the hinge post'),
    ).toMatchObject({ gateGapBelow: '3 in' })
  })

  it('it weighs what its parts weigh, and pulls at its hinges with that', async () => {
    // 10 × 1 × 0.07 × 0.02 = 0.014; 2 × 1 × 0.1 × 0.04 = 0.008; 1.25 × 0.1 × 0.04 = 0.005; 0.027 m³ × 500 = 13.5 kg
    const gate =
      'How heavy is a gate of 10 pickets 1000 mm long, 70 mm wide and 20 mm thick, two rails 1000 mm by 100 mm by 40 mm and a brace 1250 mm by 100 mm by 40 mm? Timber at 500 kg per cubic metre.'
    expect(await last(gate)).toMatchObject({ leafWeight: '13.5 kg' })
    // 13.5 × 9.80665 × 0.5 / 0.5 = 132.4 N
    expect(await last(gate, 'Hinges 500 mm apart, gate 1000 mm wide: pull on the top hinge?')).toMatchObject({
      hingePull: '132.4 N',
    })
  })
})

describe('slopes', () => {
  it('so many panels share the fall, however long they are; a post between two of them takes the step too', async () => {
    // 750 / 5 = 150; 600 + 40 + 150 + 1000
    const first = 'Five panels stepped down a bank that drops 750 mm. How big is each step?'
    expect(await last(first)).toMatchObject({ stepEach: '150 mm' })
    expect(
      await last(
        first,
        'Panels are 1000 mm tall, 40 mm clear at the high end, posts 600 mm in the ground. How long is a post between two panels?',
      ),
    ).toMatchObject({ stepPost: '1,790 mm' })
  })

  it('8 ft bays say how many there are', async () => {
    // 48/8 = 6; 30/6 = 5; 3 + 5
    const first =
      'The lot drops 30 in over 48 ft and I step the fence in 8 ft bays, 4 ft tall. What is the step at each post?'
    expect(await last(first)).toMatchObject({ stepEach: '5 in' })
    expect(await last(first, 'and the low end if the high end clears 3 in?')).toMatchObject({ gapUnderStep: '8 in' })
  })

  it('“1 in 10” is a slope where something is raked', async () => {
    // 10 % of 2000 = 200; 2000 × √1.01 = 2009.98; × 6 = 1200
    const first = 'racked fence, 1 in 10, bays 2000 mm centres, how long is the rail on the slope'
    expect(await last(first)).toMatchObject({ dropPerBay: '200 mm', rakedBay: '2,010 mm' })
    expect(await last(first, 'what angle do i cut')).toMatchObject({ plumbCut: '5.711°' })
    expect(await last(first, 'total drop over 6 bays')).toMatchObject({ totalFall: '1,200 mm' })
  })
})

describe('tops', () => {
  const arch = 'Arched top, bays 2000 mm wide, 1000 mm tall at the posts and 1200 mm in the middle. What radius?'
  // (1000² + 200²) / 400 = 2600; 500 from the middle: √(2600² − 500²) − 2400 = 151.47
  it('the rise is what lies between the two heights', async () => {
    expect(await last(arch)).toMatchObject({ archRadius: '2,600 mm', archRise: '200 mm' })
    expect(await last(arch, 'how tall is the one 500 mm from the post')).toMatchObject({ heightAtPlace: '1,151 mm' })
  })
  it('turned over, it dips as much', async () => {
    expect(await last(arch, 'how tall is the one 500 mm from the post', 'flip it, a dip not a hump')).toMatchObject({
      heightAtPlace: '848.5 mm',
    })
  })
})

describe('corners', () => {
  it('new legs have no measured diagonal yet, and what was told first keeps its own', async () => {
    const first = ['my corner, 9 ft one way and 12 ft the other, what diagonal', 'getting 15 ft 1 in']
    expect(await last(...first)).toHaveProperty('cornerAngle')
    const anew = await last(...first, 'can do 12 and 16. what is the diag then')
    expect(anew).toMatchObject({ squareAcross: '20 ft' })
    expect(anew).not.toHaveProperty('cornerAngle')
  })
  it('a leg that is named by its length is no new size', async () => {
    // cos C = (36 + 64 − 100.2001)/96 → 90.119°; 2 × 8 × sin(0.0597°) = 16.68 mm
    expect(
      await last(
        'corner, legs 6 m and 8 m, diagonal measures 10.01 m, how many degrees out',
        'how far do i swing the end of the 8 m string',
      ),
    ).toMatchObject({ moveStake: '16.68 mm' })
  })
})

it('bricks lie across by their width, and sit on mortar', async () => {
  // (9000 + 10)/(100 + 10) = 81.9 → 82; 9 × 0.21 × 0.02 = 0.0378 m³
  const first = 'Brick mowing edge 9 m long, bricks 210 mm by 100 mm laid side by side, 10 mm joints. How many bricks?'
  expect(await last(first)).toMatchObject({ bricks: '82 bricks' })
  expect(await last(first, 'They sit on 20 mm of mortar, 210 mm wide. How many litres of mortar?')).toMatchObject({
    mortarBed: '37.8 L',
  })
})

it('a size that was said by mistake is put right by the figure that it had', async () => {
  const first = 'gate is 40 in wide outside and 44 in tall outside, brace corner to corner, how long a brace'
  const answer = (await talk([first, "sorry i said 40 it's 36 wide"])).at(-1)
  expect(answer?.calls.flatMap((it) => it.inputs).find((it) => it.word === 'leafWidth')?.text).toBe('36 in')
})

it('who asks what size hole wants its width and its depth', async () => {
  const answer = (await talk(['what size hole should i dig for my posts'])).at(-1)
  expect(results(answer)).toMatchObject({ holeByRule: '10 1/2 in' })
  expect(asked(answer)).toEqual(['postAbove'])
})

it('“in middle” is an inch only before what it is the middle of', () => {
  const unit = (said: string) => readQuantities(said)[0]?.quantity?.unit
  expect([unit('15 in middle'), unit('2 in middle rail')]).toEqual([undefined, 'in'])
})
