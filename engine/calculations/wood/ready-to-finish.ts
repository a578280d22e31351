// Is the wood ready to finish? Two verdicts, kept apart: dry enough, and surface ready.
//
//   wettest reading  against  the limit            →  dry enough
//   water on the face, and time in the weather     →  surface ready
//
// Wood can be dry and its face not ready (weathered, glazed, repellent), or its face thirsty and the wood wet inside.
import { calculation } from '../../calculation.ts'
import { moistureDrawing } from '../../drawings/moisture.ts'
import { less, type Quantity } from '../../quantities/quantity.ts'
import { show } from '../../quantities/show.ts'
import { finishLimits } from '../../tables/finish-limits.ts'
import { published } from '../../tables/published.ts'
import { equilibriumMoisture } from '../../words/air.ts'
import {
  depthReading,
  dryEnough,
  finishKind,
  moistureLimit,
  moistureReading,
  soakTime,
  surfaceReading,
  surfaceReady,
  waterTest,
  woodAge,
} from '../../words/wood.ts'

export const readyToFinish = calculation({
  name: 'ready-to-finish',
  title: 'Is the wood ready to finish?',
  answers:
    'Whether the wood is dry enough, and whether its surface is ready, from meter readings, water on the face, its time in the weather and the limit on the can.',
  needs: {
    depthReading,
    surfaceReading,
    moistureReading,
    moistureLimit,
    waterTest,
    soakTime,
    woodAge,
    equilibriumMoisture,
    finishKind,
  },
  may: [
    'depthReading',
    'surfaceReading',
    'moistureReading',
    'waterTest',
    'soakTime',
    'woodAge',
    'equilibriumMoisture',
    'finishKind',
  ],
  gives: { dryEnough, surfaceReady },
  headlines: ['dryEnough', 'surfaceReady'],
  together: { dryEnough: ['dryEnough', 'surfaceReady'] },
  lines: {},
  work(given, tools) {
    const { has, need, doubt } = tools
    const meter = ['depthReading', 'surfaceReading', 'moistureReading'] as const
    if (![...meter, 'waterTest', 'soakTime', 'woodAge'].some((name) => has(name as 'waterTest')))
      need('moistureReading')
    const readings = meter.filter(has).map((name) => ({ name, value: given[name] }))
    for (const { name, value } of readings)
      if (less(value, published(finishLimits.meter.least)) || less(published(finishLimits.meter.most), value))
        doubt(
          'implausible',
          name,
          `A pin meter can be relied on from about ${finishLimits.meter.least} to ${finishLimits.meter.most}. ${show(value)} is outside that, so take it as “${less(value, published(finishLimits.meter.least)) ? 'very dry' : 'very wet'}” and no more.`,
        )
    judgeDryness(given.moistureLimit, readings, given.equilibriumMoisture, tools)
    judgeSurface(given.waterTest, given.soakTime, given.woodAge, given.finishKind, tools)
  },
  sources: [
    { fact: 'the limit on your own can or its data sheet comes first', from: 'common practice, no source' },
    ...[
      finishLimits.service,
      finishLimits.wanted,
      finishLimits.upper,
      finishLimits.fresh,
      finishLimits.water,
      finishLimits.meter,
    ].map(({ fact, from }) => ({ fact, from })),
  ],
  cautions: ['weather', 'lead', 'dust'],
  drawing: moistureDrawing,
  examples: [
    {
      // 20 over 15: depth decides; water still beads
      ask: 'The meter says 14 % at the surface and 20 % at depth and water still beads. Is it dry enough to finish?',
      given: { surfaceReading: '14 %', depthReading: '20 %', waterTest: 'beads' },
      expect: { dryEnough: 'not dry enough', surfaceReady: 'surface not ready' },
    },
    {
      // 11 under 15; eight months is more than two weeks
      ask: 'Eight months later it reads 11 % and water soaks in. Can I paint?',
      given: { moistureReading: '11 %', woodAge: '8 months', waterTest: 'soaks' },
      expect: { dryEnough: 'dry enough', surfaceReady: 'surface not ready' },
    },
    {
      // five minutes against half a minute
      ask: 'The wood reads 12 % at depth, it was hung a week ago and water soaks in after 5 minutes. Can I paint?',
      given: { depthReading: '12 %', woodAge: '1 week', soakTime: '5 minutes' },
      expect: { dryEnough: 'dry enough', surfaceReady: 'surface not ready' },
    },
    {
      // 13 at the limit of the can, 13: within it; one week is fresh
      ask: 'Pins deep read 13 %, the can says 13 % or less, hung one week ago, water soaks in: can I paint?',
      given: { depthReading: '13 %', moistureLimit: '13 %', woodAge: '1 week', waterTest: 'soaks', finishKind: 'film' },
      expect: { dryEnough: 'dry enough', surfaceReady: 'surface ready' },
    },
  ],
})

type Tools = Parameters<typeof readyToFinish.work>[1]

/** The wettest reading decides. A surface reading alone can condemn the wood, never clear it: faces dry first. */
function judgeDryness(
  limit: Quantity,
  readings: readonly { name: string; value: Quantity }[],
  settles: Quantity | undefined,
  { tell, remark, doubt, cite }: Tools,
): void {
  const where: Record<string, string> = {
    depthReading: 'at depth',
    surfaceReading: 'at the surface',
    moistureReading: 'on the meter, depth not said',
  }
  const wettest = readings.reduce<{ name: string; value: Quantity } | undefined>(
    (most, it) => (!most || less(most.value, it.value) ? it : most),
    undefined,
  )
  if (!wettest) {
    tell('dryEnough', null)
    doubt(
      'missing',
      'moistureReading',
      'Without a meter reading I cannot say whether the wood is dry.',
      moistureReading.ask,
    )
    return
  }
  const reading = `${show(wettest.value)} ${where[wettest.name]}`
  if (less(limit, wettest.value)) {
    tell('dryEnough', false)
    remark(`Dryness is decided by the reading of ${reading}: over the limit of ${show(limit)}.`)
    if (less(published(finishLimits.upper.value), wettest.value))
      remark(
        `Over ${cite(published(finishLimits.upper.value), 'moisture over which blisters are likelier', 'published')} the risk of blistering and peeling rises.`,
      )
  } else if (readings.every(({ name }) => name === 'surfaceReading')) {
    tell('dryEnough', null)
    doubt(
      'missing',
      'depthReading',
      `The surface reads ${show(wettest.value)}, within the limit of ${show(limit)}, but faces dry first. A reading at depth decides.`,
      depthReading.ask,
    )
  } else {
    tell('dryEnough', true)
    remark(`Dryness is decided by the reading of ${reading}: within the limit of ${show(limit)}.`)
    if (wettest.name === 'moistureReading')
      remark(
        'You did not say how deep the pins were. Check a few boards at a fifth to a quarter of their thickness; faces dry first.',
      )
  }
  if (!settles) return
  const air = `In this air the wood settles at ${show(settles)}`
  const wet = less(limit, wettest.value)
  if (less(limit, settles))
    remark(
      `${air}, over the limit of ${show(limit)}: it will ${wet ? 'not get there by waiting' : 'not stay dry enough'} in this weather.`,
    )
  else
    remark(wet ? `${air}, so ${show(limit)} can be reached by waiting.` : `${air}, within the limit of ${show(limit)}.`)
}

function judgeSurface(
  water: string | undefined,
  soaking: Quantity | undefined,
  age: Quantity | undefined,
  finish: string | undefined,
  { tell, remark, doubt, cite }: Tools,
): void {
  const weathered = age !== undefined && less(published(finishLimits.fresh.value), age)
  const soaksIn = finish === 'penetrating'
  const soonEnough = published(finishLimits.water.most)
  if (soaking && less(soonEnough, soaking)) {
    tell('surfaceReady', false)
    remark(
      `The surface is decided by the water: it takes ${show(soaking)} to soak in, and ${cite(soonEnough, 'time for drops to soak in', 'published')} is what tells. That may be wet wood, mill glaze or a factory repellent. Wait if the wood is wet; if it is dry, sand it lightly and try the water again.`,
    )
  } else if (water === 'beads') {
    tell('surfaceReady', false)
    remark(
      'The surface is decided by the water: it still beads. That may be wet wood, mill glaze or a factory repellent. Wait if the wood is wet; if it is dry, wet a planed face, let it dry a few days and sand it lightly, then try the water again.',
    )
  } else if (weathered && !soaksIn) {
    tell('surfaceReady', false)
    remark(
      `The surface is decided by its time in the weather: ${show(age)}, against ${cite(published(finishLimits.fresh.value), 'time before the first film coat', 'published')} for a film finish on planed wood. The face is weathered. Wash or sand it and let it dry before ${finish === 'film' ? 'the film goes on' : 'a film finish (paint or solid stain)'}.`,
    )
    if (!finish)
      remark('A finish that soaks in takes weathered wood better; clean it all the same. Tell me which finish it is.')
  } else if (water === undefined && !soaking) {
    tell('surfaceReady', null)
    doubt(
      'missing',
      'waterTest',
      'Whether the surface is ready I cannot say before a few drops of water have been tried on it.',
      waterTest.ask,
    )
  } else if (weathered) {
    tell('surfaceReady', true)
    remark(
      `Water soaks in, and a finish that soaks in takes weathered wood. Wash off the grey and the dirt first, and let it dry.`,
    )
  } else if (age === undefined) {
    tell('surfaceReady', null)
    doubt(
      'missing',
      'woodAge',
      'Water soaks in. Whether the face is fresh or weathered depends on how long it has been out.',
      woodAge.ask,
    )
  } else {
    tell('surfaceReady', true)
    remark(
      `The surface is decided by two facts: water soaks in, and it has been out ${show(age)}, within ${cite(published(finishLimits.fresh.value), 'time before the first film coat', 'published')}.`,
    )
  }
}
