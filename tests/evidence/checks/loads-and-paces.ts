import type { Check } from '../check.ts'

/** What is loaded one by one, and what is done a little at a time: counted, where the formulas divide. */
export const loadAndPaceChecks: readonly Check[] = [
  {
    calculation: 'mixed-load',
    what: '12 bags and 9 posts put on one by one',
    kind: 'second derivation',
    source: 'second derivation: piece by piece onto the scale',
    given: { loadCounts: ['12', '9'], loadWeights: ['25 kg', '11 kg'], payload: '350 kg' },
    gives: 'overPayload',
    unit: 'kg',
    expected: () => [...Array(12).fill(25), ...Array(9).fill(11)].reduce((sum, it) => sum + it, 0) - 350,
    tolerance: 1e-9,
  },
  {
    calculation: 'money-left',
    what: '150 pickets at 2.40 paid one by one out of 700',
    kind: 'second derivation',
    source: 'second derivation: in whole cents, one picket after another',
    given: { budget: '$700', spentCounts: '150', spentPrices: '$2.40' },
    gives: 'budgetLeft',
    unit: 'USD',
    expected: () => Array.from({ length: 150 }).reduce((cents: number) => cents - 240, 70000) / 100,
    tolerance: 1e-9,
  },
  {
    calculation: 'money-left',
    what: '14 posts at 16.50 and 120 pickets at 2.15 paid one by one out of 600',
    kind: 'second derivation',
    source: 'second derivation: in whole cents, one piece after another',
    given: { budget: '$600', spentCounts: ['14', '120'], spentPrices: ['$16.50', '$2.15'] },
    gives: 'budgetLeft',
    unit: 'USD',
    expected: () => [...Array(14).fill(1650), ...Array(120).fill(215)].reduce((cents, it) => cents - it, 60000) / 100,
    tolerance: 1e-9,
  },
  {
    calculation: 'saving-time',
    what: '45 put by each week until 610 is reached, from 75',
    kind: 'second derivation',
    source: 'second derivation: week by week',
    given: { savingGoal: '$610', savedAlready: '$75', savedEach: '$45', savedEvery: 'week' },
    gives: 'savingTime',
    unit: 'week',
    expected: () => {
      let weeks = 0
      for (let there = 75; there < 610; there += 45) weeks++
      return weeks
    },
    tolerance: 1e-9,
  },
  {
    calculation: 'price-apart',
    what: 'both bills added up, and one taken from the other',
    kind: 'second derivation',
    source: 'second derivation: 14 of each in whole cents',
    given: { onePrice: '$12.30', otherPrice: '$19.80', piecesWanted: '14' },
    gives: 'moreForAll',
    unit: 'USD',
    expected: () => (14 * 1980 - 14 * 1230) / 100,
    tolerance: 1e-9,
  },
  {
    calculation: 'days-at-pace',
    what: '29 m built 8 m at a time until none is left',
    kind: 'second derivation',
    source: 'second derivation: day by day',
    given: { lengthToDo: '29 m', lengthADay: '8 m' },
    gives: 'daysAtPace',
    unit: 'working day',
    expected: () => {
      let [left, days] = [29, 0]
      for (; left > 0; days++) left -= 8
      return days
    },
    tolerance: 0,
  },
  {
    calculation: 'days-by-the-week',
    what: '26 panels twice over, 8 of an evening, Sundays off, walked by the calendar',
    kind: 'second derivation',
    source: 'second derivation: evening by evening with the dates of the language itself',
    given: { thingsToDo: '26', thingsATime: '8', timesOver: '2', weekWorked: 'notSundays', fromDay: '2026-09-07' },
    gives: 'dayOfIt',
    unit: 'calendar day',
    expected: () => {
      let [left, day] = [26 * 2, 0]
      for (; left > 0; day++) if (new Date(Date.UTC(2026, 8, 7 + day)).getUTCDay() !== 0) left -= 8
      return day
    },
    tolerance: 0,
  },
  {
    calculation: 'digging-by-rate',
    what: '22 holes, a quarter of an hour each, two hours of an evening',
    kind: 'second derivation',
    source: 'second derivation: evening by evening, eight holes in each',
    given: { posts: '22', holesByHour: '4', dayHours: '2 h' },
    gives: 'diggingDays',
    unit: 'digging day',
    expected: () => {
      let [left, evenings] = [22, 0]
      for (; left > 0; evenings++) left -= 8
      return evenings
    },
    tolerance: 0,
  },
  {
    calculation: 'bags-by-hole',
    what: '275 L poured out of bags of 9.5 L, one after another',
    kind: 'second derivation',
    source: 'second derivation: bag by bag',
    given: { posts: '11', concreteInHole: '25 L', bagYield: '9.5 L' },
    gives: 'bags',
    unit: 'bag',
    expected: () => {
      let [left, bags] = [275, 0]
      for (; left > 0; bags++) left -= 9.5
      return bags
    },
    tolerance: 0,
  },
  {
    calculation: 'coats-by-clock',
    what: 'coat after coat from 7 to 18',
    kind: 'second derivation',
    source: 'second derivation: an hour to put on, four to wait',
    given: { coatTime: '1 h', coatWait: '4 h', startsAt: '7', stopsAt: '18' },
    gives: 'coatsDone',
    unit: 'coat',
    expected: () => {
      let [hour, done] = [7, 0]
      for (; hour + 1 <= 18; hour += 5) done++
      return done
    },
    tolerance: 0,
  },
]
