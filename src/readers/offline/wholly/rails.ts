// This file is about rails told so plainly that every size has its place: how long between posts, how many, of how many boards.
import type { Request } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { requestFor } from '../request-parts.ts'
import {
  howMany,
  isCount,
  isLength,
  isSquareStick,
  isStick,
  onCentre,
  type Place,
  placedBy,
  thePost,
} from './placed.ts'
import { isAbout, knows, spotsOf } from './spots.ts'

const sum = 'rails-between-posts'
const rail = '(?:rails?|stringers?|crosspieces?|horizontals?)'
const bay = '(?:bays?|sections?|panels?|spans?|spaces?)'
const board = '(?:boards?|lengths?|sticks?|timbers?|planks?|lumber|stock|2x4s?|pieces?)'

const places: readonly Place[] = [
  {
    word: 'rails',
    is: isCount,
    after: new RegExp(
      `^\\s*(?:${rail} )?(?:to|in|for|per|on|at|a|each|every)\\s*(?:each |every |a |the |one |any )?(?:single )?${bay}\\b`,
    ),
  },
  { word: 'rails', is: isCount, after: new RegExp(`^\\s*(?:${rail} )(?:each|apiece|high|up)\\b`) },
  howMany('bays', bay),
  howMany('rails', rail),
  {
    word: 'rails',
    is: isCount,
    before: new RegExp(`(?:each|every|per|a) (?:one |${bay} )?(?:has|have|gets?|takes?|with|of)\\s*$`),
  },
  ...onCentre,
  {
    word: 'opening',
    is: isLength,
    after:
      /^\s*(?:mm |in )?(?:clear\b|(?:wide )?openings?|between (?:the )?posts?|from (?:post|face) to (?:post|face)|post to post|face to face)/,
  },
  {
    word: 'opening',
    is: isLength,
    before: /(?:openings?|clear|between (?:the )?posts?|post faces?)(?: is| are| of| at|:|=|,)*\s*$/,
  },
  ...thePost,
  { word: 'stockLength', is: isLength, after: new RegExp(`^[\\s-]*(?:mm |in |foot |ft )?(?:long )?${board}\\b`) },
  {
    word: 'stockLength',
    is: isLength,
    before: new RegExp(`(?:${board}|out of|cut from|come in|comes in|sold in)(?: are| is| of| come| in| at|,)*\\s*$`),
  },
  // What the rails are made of does not change how long or how many they are.
  { word: '*', is: isStick, after: new RegExp(`^\\s*(?:for |as )?(?:the )?(?:${rail}|cut|lumber|timber)\\b`) },
  { word: '*', is: isStick, before: new RegExp(`${rail}(?: are| is| of| in| from| cut| made|,)*\\s*$`) },
  { word: 'postWidth', is: isSquareStick, before: /(?:they|these|those)(?: are|'re)(?: all)?\s*$/ },
]
const bareBay: Place = {
  word: 'bayCentres',
  is: isLength,
  before: new RegExp(`${bay}(?: are| is| of| at| each| measure| all|:|=|,)*\\s*$`),
}
const others =
  /\b(?:brackets?|screws?|nails?|sag\w*|bow\w*|heights?|high|heavy|weigh\w*|strong|across|over the (?:faces?|front)|on the (?:face|front|outside)s?|joints?|faces?|slope\w*|gates?|feet of rail|linear|metres of rail|top rail|bottom rail|paint|stain)\b|\$|£|€/i

/** The request of such a message; nothing for any other. */
export function railsIn(heard: Heard): Request | undefined {
  const { said } = heard
  const goesOn = isAbout(heard, sum)
  if (others.test(said) || !(goesOn || new RegExp(`\\b${rail}\\b`, 'i').test(said))) return undefined
  const asksLength =
    /\b(?:how long|what length|which length|length)\b[^.?!]*\b(?:rails?|stringers?|each|cut|they|one)\b|\brails?\b[^.?!]*\blength\b|\b(?:cut|saw)\b[^.?!]*\bto what length\b/i.test(
      said,
    )
  const asksBoards = new RegExp(`\\bhow many\\b[^.?!]{0,24}\\b(?:${board}|sixteens?|twelves?)\\b`, 'i').test(said)
  const asksNumber = new RegExp(
    `\\bhow many\\b(?: of (?:them|these|those))?[^.?!]{0,16}\\b${rail}\\b|\\bnumber of ${rail}\\b|\\b${rail} (?:do|will|shall|should|would) (?:i|we) need\\b|\\bhow many ${rail}\\b`,
    'i',
  ).test(said)
  if (!goesOn && !asksLength && !asksBoards && !asksNumber) return undefined
  const wants = asksLength
    ? ['railCut', ...(asksNumber ? ['railsInAll'] : [])]
    : asksBoards
      ? ['railBoards']
      : asksNumber
        ? ['railsInAll']
        : []
  // “8 ft bays” may be clear or on centre: that is told for the boards, where it hardly matters, and never for a length.
  const told = placedBy(spotsOf(heard), asksBoards && !asksLength ? [...places, bareBay] : places)
  if (!told) return undefined
  const has = (...words: readonly string[]): boolean =>
    words.some((word) => told.some((it) => it.word === word) || knows(heard, word))
  if (told.length === 0 && wants.length === 0) return undefined
  if (wants.length > 0 && !goesOn && !has(...(asksLength ? ['opening', 'bayCentres'] : ['bays']))) return undefined
  if (asksBoards && !has('stockLength')) return undefined
  // A rail goes between posts, and where its bay is told by the centres it is no opening.
  return requestFor(sum, wants, told)
}
