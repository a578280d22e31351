// This file is about words that are figures: numbers, shares, multiples, places in a row, amounts of a measure, and the idioms that are none.
import { oneSlip } from '../../engine/index.ts'
import { folded } from './form.ts'

const set = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/).filter(Boolean))

const cardinals =
  set(`zero nil nought naught two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen
  twenty thirty forty fourty fifty sixty seventy eighty ninety hundred hundreds thousand thousands million millions billion billions trillion umpteen dozen dozens score scores gross trio duo quartet
  twos threes fours fives sixes sevens eights nines tens twenties thirties forties fifties sixties zeros zeroes twosome threesome couple couples pair pairs`)
const multiples = set(
  'double doubles doubled doubling twice thrice triple tripled triples treble trebled quadruple quadrupled quintuple twofold threefold fourfold fivefold tenfold manifold half halves halved halving halfway twin twins',
)
const ordinals =
  set(`second seconds third thirds fourth fourths fifth fifths sixth sixths seventh sevenths eighth eighths ninth ninths tenth tenths eleventh twelfth twelfths thirteenth fourteenth fifteenth sixteenth sixteenths seventeenth
  eighteenth nineteenth twentieth thirtieth fortieth fiftieth sixtieth seventieth eightieth ninetieth hundredth hundredths thousandth thousandths quarter quarters thirtysecond thirtyseconds umpteenth nth penultimate`)
const foreign =
  set(`deux trois quatre cinq sept huit neuf dix onze douze treize quatorze quinze vingt trente quarante cinquante soixante mille
  dos tres cuatro cinco seis siete ocho nueve diez doce trece catorce quince dieciseis veinte treinta cuarenta cincuenta sesenta cien ciento
  eins zwei zwo drei vier funf fuenf sechs sieben acht neun zehn zwolf zwoelf elf dreizehn vierzehn funfzehn zwanzig dreissig vierzig funfzig hundert tausend
  tre quattro cinque sei sette otto nove dieci undici dodici tredici quindici venti trenta quaranta cinquanta cento
  dois duas quatro sete oito dez doze treze catorze vinte trinta quarenta cinquenta
  twee drie vijf zes zeven negen tien twaalf dertien veertien vijftien twintig dertig veertig vijftig honderd
  dwa dwie trzy cztery piec szesc siedem osiem dziewiec dziesiec jedenascie dwanascie trzynascie pietnascie dwadziescia trzydziesci piecdziesiat`)
const times = set(
  'overnight fortnight fortnightly daily weekly hourly monthly yearly annually annual biweekly noon midday midnight tomorrow decade decades century centuries',
)

const longNumbers = [...cardinals, ...ordinals, ...multiples].filter((it) => it.length > 3)

/** A word that is a number by itself, or a share of one: the reader of quotations asks. */
export const isNumberWord = (word: string): boolean => {
  const plain = folded(word)
  return plain === 'one' || cardinals.has(plain) || multiples.has(plain) || ordinals.has(plain)
}

/** A word that is a number, looks like one, or is one slip of the finger away from it: “fiveteen”, “sevn”, “twleve”. */
export const isNearNumber = (word: string): boolean => {
  const plain = folded(word).replace(/'s$/, '')
  if (isNumberWord(plain) || foreign.has(plain) || /(?:teens?|teenths?|tieths?|fold)$/.test(plain)) return true
  return plain.length > 3 && longNumbers.some((it) => oneSlip(plain, it))
}

/** Measure units in words: an article or a vague word before one is an amount. */
export const measures =
  set(`inch inches foot feet yard yards mile miles millimeter millimeters millimetre millimetres centimeter centimeters centimetre centimetres meter meters metre metres mm cm km in ft yd
  gallon gallons quart quarts pint pints cup cups ounce ounces oz pound pounds lb lbs kilo kilos kilogram kilograms gram grams ton tons tonne tonnes liter liters litre litres
  hour hours minute minutes day days week weeks month months year years hr hrs degree degrees percent percentage dollar dollars cent cents buck bucks euro euros psi psf pcf mph kg kn acre acres sq weekend weekends moon moons`)
const adjectives = set(
  'good full bare scant whole solid short long further extra additional mere rough generous big small little cubic square linear running',
)

/** Things that are counted on site: "one bag", "single post". */
export const countables =
  set(`post posts picket pickets bag bags gate gates rail rails hole holes bay bays board boards bucket buckets trip trips screw screws nail nails bracket brackets brick bricks roll rolls can cans coat coats cap caps
  gap gaps step steps stake stakes hinge hinges latch latches panel panels section sections brace braces load loads sack sacks slat slats paling palings batch batches bolt bolts corner corners reading readings mark marks layer layers helper helpers joint joints string strings footing footings stick sticks piece pieces length lengths person people more extra less`)

export interface Word {
  readonly text: string
  readonly start: number
  readonly end: number
}

/** Lower-case words with where they stand; hyphenated words come apart, and the hyphen is remembered by the gap. */
export const wordsOf = (text: string): Word[] =>
  [...text.matchAll(/[\p{L}\p{M}]+(?:['’][\p{L}]+)?/gu)].map((it) => ({
    text: folded(it[0]),
    start: it.index,
    end: it.index + it[0].length,
  }))

const passes: readonly RegExp[] = [
  /\bdouble-check(?:s|ed|ing)?\b/g,
  /\bhalf[- ]lap(?:s|ped)?\b/g,
  /\bquarter[- ]?sawn\b/g,
  /\bquarter-round\b/g,
  /\bone of (?:the|these|those|them|your|my|our|its)\b/g,
  /\bat once\b/g,
  /\bone (?:way|thing|side|another|after the other)\b/g,
  /\b(?:at|from|to) one end\b/g,
  /\b(?:on|in) one hand\b/g,
  /\bone by one\b/g,
  /\bone at a time\b/g,
  /\bsecond-hand\b|(?<!\b(?:the|a|an|your|this|that|every|each) )\bsecond hand\b/g,
  /\bsecond nature\b/g,
  /\bsecond thoughts?\b/g,
  /\bon second\b/g,
]

export interface Trouble {
  readonly rule: string
}

/** Rules 7 and 8 over one piece. `own` holds the person's and the program's own terms, folded. */
export function figuresInWords(piece: string, own: string): Trouble[] {
  const plain = folded(piece)
  let text = plain
  for (const idiom of passes) text = text.replace(idiom, (it) => it.replace(/\p{L}/gu, '·'))
  const words = wordsOf(text)
  const troubles: Trouble[] = []
  const say = (rule: string): void => void troubles.push({ rule })
  const near = (i: number): string => words[i]?.text ?? ''
  const gapAfter = (i: number): string =>
    words[i] && words[i + 1] ? text.slice((words[i] as Word).end, (words[i + 1] as Word).start) : ''

  if (lapses.test(text) || until.test(text)) say('R7-time')
  if (asLarge.test(text)) say('R8-object')
  words.forEach(({ text: word, start }, i) => {
    const next = near(i + 1)
    const term = (): boolean => isOwnTerm(words, i, own)
    if (cardinals.has(word) && !(isNominal(words, i) && term())) say('R7-number')
    else if (isBroken(word, next) && gapAfter(i).trim() === '') say('R7-number')
    if (/(?:teen|ty)(?:two|three|four|five|six|seven|eight|nine)$/.test(word) && word.length > 7) say('R7-number')
    if (multiples.has(word) && !term()) say('R7-multiple')
    if (
      /fold$/.test(word) &&
      word.length > 5 &&
      !/^(?:scaffold|unfold|blindfold|refold|enfold)$/.test(word) &&
      cardinals.has(word.slice(0, -4))
    )
      say('R7-multiple')
    if (/-fold\b/.test(text.slice(start, start + 30)) && text[start + word.length] === '-' && next === 'fold')
      say('R7-multiple')
    if (ordinals.has(word) && !opensWithComma(text, start, word) && !term()) say('R7-ordinal')
    if (foreign.has(word)) say('R7-foreign')
    if (times.has(word)) say('R7-time')
    if (word === 'once' && /^(?:a|an|per|every|each)$/.test(next) && isTime(near(i + 2))) say('R7-multiple')
    if (word === 'brace' && next === 'of' && isSeveral(near(i + 2))) say('R7-number')
    if (word === 'c' && /^notes?$/.test(next)) say('R7-number')
    if (word === 'grand' && near(i - 1) === 'a') say('R7-number')
    if (word === 'one' && isCounting(words, i, text) && !term()) say('R7-one')
    if (
      (word === 'single' || word === 'alternate' || (word === 'every' && next === 'other')) &&
      (countables.has(next) || countables.has(near(i + 2))) &&
      !term()
    )
      say('R7-multiple')
    // "four" folded into a compound: two-by-four, five-eighths.
    if (/^(?:an?|another|few|several|some|many|one|half|couple|every|each|per)$/.test(word))
      vagueMeasure(words, i, text, say)
    if (
      /'s$/.test(word) &&
      /^(?:width|breadth|thickness|length|depth|height|worth|span)$/.test(next) &&
      /^(?:a|an|one|your|the)$/.test(near(i - 1)) &&
      !/^(?:fence|gate|yard|run|hole|post|picket|rail|board|bay|opening)'s$/.test(word)
    )
      say('R8-object')
    if (
      /^(?:palm|finger|thumb|pencil|knuckle|fist|handspan)$/.test(word) &&
      /^(?:width|wide|breadth|deep|thick)$/.test(next)
    )
      say('R8-object')
  })
  return troubles
}

/** A wait told by what passes meanwhile: “leave it the weekend”, “let it sit through the night”; “the day you dig” is a day of theirs. */
const lapses =
  /\b(?:leave|give|let|wait|stands?|sits?|rests?|cures?|dry|dries|sets?|hardens?)\b[^,.;:]{0,24}\bthe (?:whole |entire |full |best part of the |rest of the )?(?:weekend|night|day|week|month|morning|afternoon|winter|season)\b(?! (?:you|they|that|it|we|sun|rain|before|after))/

/** A wait told by its end, or by a part of a day: “until Tuesday”, “by the next morning”, “in an afternoon”. */
const until =
  /\b(?:by|until|till?|to|within) (?:the )?(?:(?:next|following) (?:morning|afternoon|evening|day|night|week|weekend|month)|(?:mon|tues|wednes|thurs|fri|satur|sun)day)\b|\b(?:within the (?:hour|day|week|month)|(?:in|takes?|leave (?:it|them)|let (?:it|them) sit) an? (?:whole |full |single )?(?:morning|afternoon|evening|night|season))\b/

/** A size told by a thing or a part of the body: “as wide as your hand”, “the length of your arm”. The fence's own parts are no such thing. */
const asLarge =
  /\b(?:as (?:wide|deep|long|thick|tall|high|big) as|the (?:length|width|breadth|depth|thickness|height|span|size) of) (?:an?|your|one's|my) (?!(?:[a-z]+ )?(?:fence|gate|yard|run|holes?|posts?|pickets?|rails?|boards?|bays?|opening|panel|slat|paling|gap|lot|garden|drive|path|side|auger|spacer|screw|wood|timber|bags?)\b)/

const isTime = (word: string): boolean =>
  measures.has(word) || /^(?:season|spring|summer|autumn|fall|winter|morning|night|evening)$/.test(word)

/** Countable things named as more than one. */
const isSeveral = (word: string): boolean => word.endsWith('s') && countables.has(word)

/** "two-by-four", "four by four". */
const isNominal = (words: readonly Word[], i: number): boolean =>
  words[i + 1]?.text === 'by' || words[i - 1]?.text === 'by' || words[i + 1]?.text === 'piece'

/** A number word in two halves: "seven teen", "thir ty", "for ty". */
function isBroken(word: string, next: string): boolean {
  return (
    /^(?:teen|ty|enty|irty|een|lve|ght|ven|ree|ive|ine|leven|welve|teenth|tieth)$/.test(next) &&
    (cardinals.has(word + next) || ordinals.has(word + next))
  )
}

/** "Second, check the string": an ordinal that opens a sentence before a comma only tells the order of telling. */
const opensWithComma = (text: string, start: number, word: string): boolean =>
  /^[\s*_"'(]*$/.test(text.slice(0, start)) && /^ly?\s*,|^\s*,/.test(text.slice(start + word.length))

/** "one" before something counted or measured, within two words; "one" alone stands for a thing. */
function isCounting(words: readonly Word[], i: number, text: string): boolean {
  for (let step = 1; step <= 2; step++) {
    const word = words[i + step]
    if (!word || /[,.;:!?]/.test(text.slice((words[i] as Word).end, word.start))) return false
    if (countables.has(word.text) || measures.has(word.text)) return true
    if (/^(?:of|is|at|in|on|that|which|who|and|or|to|for|with|carries|sits|stands|has|goes|you|the|a)$/.test(word.text))
      return false
  }
  return false
}

/** An article or a vague word, perhaps an adjective or two, and a measure: "a foot", "a few feet", "a good yard of concrete". */
function vagueMeasure(words: readonly Word[], i: number, text: string, say: (rule: string) => void): void {
  const start = words[i] as Word
  let at = i + 1
  while (at <= i + 3 && adjectives.has(words[at]?.text ?? '')) at++
  const unit = words[at]
  if (!unit || !measures.has(unit.text) || /[,.;:!?|]/.test(text.slice(start.end, unit.start))) return
  if (
    start.text === 'per' ||
    ((start.text === 'each' || start.text === 'every') &&
      !/^(?:day|week|hour|month|year|minute|inch|foot)s?$/.test(unit.text))
  )
    return
  if (unit.text === 'in') return // "a in" is no measure; "some in" neither
  const after = words[at + 1]?.text ?? ''
  if (/^yards?$/.test(unit.text)) {
    if (
      after === 'of' ||
      (start.text !== 'a' &&
        start.text !== 'an' &&
        start.text !== 'one' &&
        start.text !== 'another' &&
        start.text !== 'every' &&
        start.text !== 'each')
    )
      say('R8-measure')
    return
  }
  if (start.text === 'half') return // counted as a share already
  say('R8-measure')
}

/** A term with a number word in it that the person or the program used: "double gate", "two-by-four". Joiners and plural do not matter. */
function isOwnTerm(words: readonly Word[], i: number, own: string): boolean {
  const plainTerm = (list: readonly (Word | undefined)[]): string =>
    ` ${list.map((it) => (it?.text ?? '').replace(/s$/, '')).join(' ')} `
  const spans: (readonly (Word | undefined)[])[] = [
    [words[i], words[i + 1], words[i + 2]],
    [words[i - 1], words[i], words[i + 1]],
    [words[i - 2], words[i - 1], words[i]],
    [words[i], words[i + 1]],
    [words[i - 1], words[i]],
  ]
  const isBy = words[i + 1]?.text === 'by' || words[i - 1]?.text === 'by'
  return spans.some((span) => span.every(Boolean) && (!isBy || span.length === 3) && own.includes(plainTerm(span)))
}

/** The person's words and the program's terms, as `isOwnTerm` compares them. */
export const ownTerms = (texts: readonly string[]): string =>
  ` ${texts.flatMap((text) => [...wordsOf(folded(text)).map((it) => it.text.replace(/s$/, '')), '|']).join(' ')} `

/** Rule 9: Roman numerals of two capitals or more, but for the trade's abbreviations; and one that stands before things counted. */
export const romanNumeral = (piece: string): boolean =>
  [...piece.matchAll(/(?<![\p{L}\p{N}])[IVXLCDM]{2,}(?![\p{L}\p{N}])/gu)].some(
    ([it]) =>
      !/^(?:MC|CD|CM|MDF|DC|MM|CC)$/.test(it) &&
      /^M{0,4}(?:CM|CD|D?C{0,4})(?:XC|XL|L?X{0,4})(?:IX|IV|V?I{0,4})$/.test(it),
  ) ||
  [...piece.matchAll(/(?<![\p{L}\p{N}'’-])[VXLCDMK] +(\p{L}+)/gu)].some(
    ([, thing = '']) =>
      isSeveral(folded(thing)) && !/^(?:braces|brackets|joints|stakes|screws|caps)$/.test(folded(thing)),
  )
