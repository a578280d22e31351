// This file is about what is asked of other trades: one’s health, the law, taxes, money lent and insured, and other building work.
import { isInSentence, lengthAt, list, pairs, type Phrases, phrasesOf, type Words, wordsOf } from './phrases.ts'
import { type Token, tokens } from './stems.ts'

/** A subject, by words of which one of every group stands in the message; `unless` says that something of the fence is meant. */
interface Subject {
  /** Who knows. */
  readonly ask?: string
  readonly all: readonly (readonly string[])[]
  readonly unless?: readonly string[]
}

const limbs = list(
  'hand, finger, thumb, wrist, arm, elbow, shoulder, neck, back, hip, knee, leg, ankle, foot, toe, eye, ear, skin, head, chest, spine, muscle, tendon',
)
const hurts = list(
  'hurt, hurts, hurting, sore, ache, aches, aching, pain, pains, painful, swell, swells, swollen, swelling, itch, itches, itching, numb, tingle, tingles, infected, sprained, bruised, blister, blisters, click, clicks, killing me, gone red',
)
const works = list(
  'driveway, patio, deck, slab, foundation, sidewalk, pavement, shed base, shed floor, garage floor, drywall, plasterboard, roof, shingles, gutter, bathroom, kitchen, ceiling, basement, attic, pergola, greenhouse, swimming pool, paving, lawn mower engine',
)

const subjects: readonly Subject[] = [
  // What to take and what it is are asked of a doctor; “my back is bad, what is the easiest way to dig” is not.
  {
    ask: 'What to take, and what it is, a doctor or a pharmacist can say.',
    all: [
      list(
        'antibiotic, antibiotics, vitamin, vitamins, supplement, supplements, ibuprofen, aspirin, paracetamol, acetaminophen, painkiller, painkillers, pill, pills, medicine, medication, meds, prescription, dosage, tetanus, arthritis, tendonitis, tendinitis, sciatica, carpal tunnel, hernia, blood pressure, cholesterol, diabetes, diabetic, heart condition, pacemaker, physio, chiropractor, diagnose, diagnosis, rash, fever, poison ivy, poison oak',
      ),
      list('can, should, do, does, is, what, which, how, have, need, will, am, could, would, or'),
    ],
    unless: list('kill the poison ivy, pull, pulling, get rid, spray, clear the, fence against, through the fence'),
  },
  {
    ask: 'What to take, and what it is, a doctor or a pharmacist can say.',
    all: [
      [...pairs(['my', 'his', 'her', 'the', 'a', 'lower', 'bad'], limbs), 'splinter'],
      [...hurts, 'splinter', 'into my', 'in my'],
      list(
        'what do i take, what should i take, what can i take, what to take, what do i put on it, what should i put on it, what can i put on it, put on it, what cream, which cream, what ointment, what do i do for it, is it serious, is it normal, is it broken, have i torn, have i broken, is it a, should i see, see a doctor, what helps, home remedy, stretches',
      ),
    ],
    unless: list('post, gate swells, picket swells'),
  },
  {
    ask: 'What the law gives you a lawyer can say, or a free advice office near you.',
    all: [
      list(
        'sue, sued, suing, lawsuit, lawyer, solicitor, attorney, barrister, small claims, in court, to court, the court, a court, a judge, the judge, tribunal, magistrate, legal action, legally binding, binding in, who is liable, who’s liable, am i liable, be liable, i be liable, liability, lien, fine me, fine us, fines me, fined me, fined us, being fined, can i appeal, to appeal, press charges, adverse possession, cease and desist, take legal, restraining order, power of attorney, custody, divorce',
      ),
    ],
    unless: list('tennis court, court yard'),
  },
  {
    ask: 'Your tax office or a tax adviser can say.',
    all: [
      list(
        'income tax, income taxes, tax return, tax returns, tax bracket, tax break, tax man, taxman, tax deduction, tax deductible, tax write off, property tax, property taxes, council tax, capital gains, on my taxes, my taxes, from my taxes, off my taxes, file taxes, irs, hmrc, write it off, write off the, deduct the fence, claim it back, claim that back, claim back, claim it as, business expense, form 1099, w2, depreciate, under the table, cash in hand',
      ),
    ],
    unless: list('under the table saw'),
  },
  // A form by its number, which is read as one.
  {
    all: [
      list('helper, worker, contractor, brother, kid, labourer, laborer, guy, him, them'),
      list('a 1099, the 1099'),
    ],
  },
  {
    ask: 'Your insurer or your bank can say.',
    all: [
      list(
        'insurance, insurer, insured, mortgage, refinance, refinancing, home loan, a loan, heloc, credit card, bankruptcy, bitcoin',
      ),
      list('can, should, will, does, do, is, how, what, which, would, cover, covers, pay'),
    ],
    unless: list('insurance quote, their insurance, contractor insurance, insured contractor'),
  },
  // “The fence runs along the driveway” is of the fence.
  {
    all: [
      [
        ...pairs(
          list(
            'how thick is a, how thick should a, how deep is a, for a, for my, for the, of a, of my, lay, lay a, lay my, pour a, pour my, pave, pave a, build a, build my, level a, level my, level the, insulate a, insulate my, insulate the, hang, fit a, fix my, tile a, tile my, wire a, install a',
          ),
          works,
        ),
      ],
    ],
    unless: list(
      'fence, post, picket, gate, rail, paling, slat, hole, pale, beside, next to, along, near, across, wheels, mower, mow',
    ),
  },
  {
    all: [list('calories, lose weight, recipe, horoscope, lottery, football, movie, song, poem, joke, limerick')],
  },
]

const compiled = subjects.map(({ ask, all, unless }) => ({
  ask,
  all: all.map(phrasesOf),
  unless: phrasesOf(unless ?? []),
}))

const spotOf = (phrases: Phrases, words: Words): number => words.findIndex((_, at) => lengthAt(phrases, words, at) > 0)

function outsideIn(message: readonly Token[]): (typeof compiled)[number] | undefined {
  const words = wordsOf(message)
  return compiled.find(({ all, unless }) => {
    const spots = all.map((it) => spotOf(it, words))
    return spots.every((it) => it >= 0) && !isInSentence(unless, words, spots[0] as number)
  })
}

/** Whether a message asks what somebody of another trade must answer, however much of a fence stands around it. */
export const isOutside = (message: readonly Token[]): boolean => outsideIn(message) !== undefined

/** Who knows what was asked, where it was not of the trade. */
export const whoElseKnows = (quote: string): string | undefined => outsideIn(tokens(quote))?.ask
