// English in every hurry is English; other languages are noticed, and little is taken of them.
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { isForeign, isPlainEverywhere } from '../../../src/readers/language.ts'
import { headlines, talk } from '../talk.ts'

const folder = new URL('../../bench/reading/', import.meta.url)
const said = ['first', 'third'].flatMap((part) =>
  readdirSync(new URL(part, folder)).flatMap((file) =>
    (JSON.parse(readFileSync(new URL(`${part}/${file}`, folder), 'utf8')) as { turns: { said: string }[] }[]).flatMap(
      (talk) => talk.turns.map((it) => it.said),
    ),
  ),
)

// From memory, by no native speaker of most of them.
const elsewhere = [
  '¿Cuántas bolsas de concreto necesito para 4 hoyos de 30 cm?',
  'Necesito saber cuantos postes para 30 metros',
  'los hoyos son de 12 pulgadas',
  'Combien de sacs de béton pour 4 trous de 30 cm ?',
  'Wie viele Säcke Beton brauche ich für vier Löcher?',
  'Zaun 30 m lang, wie viele Pfosten',
  'Die Löcher sind 30 cm breit und 60 cm tief',
  'Quantos sacos de cimento preciso para 4 buracos?',
  'Quanti sacchi di cemento servono per 4 buche?',
  'Hoeveel zakken beton heb ik nodig voor vier gaten?',
  'Ile worków betonu potrzebuję na 4 doły?',
  'Hur många säckar betong behöver jag?',
  'Hvor mange sekker betong trenger jeg?',
  'Kuinka monta säkkiä tarvitsen?',
  'kaç torba beton lazım',
  'Berapa sak semen yang saya butuh?',
  'Сколько мешков бетона нужно на 4 ямы?',
  '4つの穴にコンクリートは何袋必要ですか',
  '需要多少袋混凝土',
  'كم كيس خرسانة أحتاج',
  'मुझे कितने बैग चाहिए',
]

describe('a message', () => {
  it('of the reading sets is never taken for another language', () => {
    expect(said.length).toBeGreaterThan(500)
    expect(said.filter(isForeign)).toEqual([])
  })

  it.each(elsewhere)('in another language is noticed: %s', (text) => expect(isForeign(text)).toBe(true))

  it.each(['hola, how many bags for 4 holes?', 'gracias', '12 posts 8in hole 2ft deep', 'μ = 0.3, what now'])(
    'with a word or two of one is read as English: %s',
    (text) => expect(isForeign(text)).toBe(false),
  )

  it('in another language is not worked without a model, and that is said', async () => {
    const [answer] = await talk(['Wie viele Säcke Beton brauche ich für 4 Löcher, 30 cm breit und 60 cm tief?'])
    expect(headlines(answer)).toEqual({})
    expect(answer?.declined?.why).toContain('English is all I can read without a model')
    expect(answer?.cautions.map((it) => it.code)).toEqual(
      expect.arrayContaining(['utilities', 'lot-line', 'local-code']),
    )
  })
})

describe('a quantity of such a message', () => {
  it.each(['30 cm', '2,5 m', '600mm', '35 kg'])('is the same everywhere: %s', (text) =>
    expect(isPlainEverywhere(text)).toBe(true),
  )
  // A thousand and a half in one country, one and a half in another; “in” is a small word in many languages; a bare 30 may be metres.
  it.each(['1.500 mm', '1,250 mm', '4 in', '30', 'dos m'])('may be another one elsewhere: %s', (text) =>
    expect(isPlainEverywhere(text)).toBe(false),
  )
})
