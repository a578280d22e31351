// This file is about one slope told by its fall over a level distance: how long it is, at what angle, and how far apart posts stand along it.
import type { Request } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { requestFor } from '../request-parts.ts'
import { isLength, type Place, placedBy } from './placed.ts'
import { isAbout, spotsOf } from './spots.ts'

const sum = 'slope-of-ground'
const fall: readonly Place[] = [
  {
    word: 'levelDistance',
    is: isLength,
    after:
      /^\s*(?:mm |m |ft )?(?:on the )?(?:away\b|level\b|horizontal\w*|flat\b|of (?:level|run)|run\b|in length|as the crow)/,
  },
  {
    word: 'levelDistance',
    is: isLength,
    before:
      /(?:\bin|over|across|along|out|length|distance|run|level)(?: a| the| its)?(?: level| horizontal)?(?: length| distance| run)?(?: of| is|:|=)*\s*$/,
  },
  {
    word: 'fall',
    is: isLength,
    before:
      /(?:falls?|drops?|falling|dropping|dropped|slopes? down|slopes?|goes down|comes down|runs down|ris(?:es|ing|e)|climbs?|down|up)(?: by| of| about| is|'s|:|=)*\s*$/,
  },
  {
    word: 'fall',
    is: isLength,
    after: /^\s*(?:mm |in )?(?:of )?(?:a )?(?:total )?(?:fall\b|drop\b|rise\b|lower|higher|downhill)/,
  },
  // “Falls 1800 in 12000”: behind the small word stands what it falls over.
  { word: 'levelDistance', is: isLength, before: /^\s*in\s*$/ },
]
const spaced: readonly Place[] = [
  {
    word: 'bayCentres',
    is: isLength,
    before: /(?:posts?|bays?|cent(?:er|re)s?|spac(?:ing|ed))(?: are| is| at| of| every| stand|:|=|,)*\s*$/,
  },
  {
    word: 'bayCentres',
    is: isLength,
    after: /^\s*(?:mm |m |ft |in )?(?:apart|bays?\b|cent(?:er|re)s?|spacing|on the level|level\b)/,
  },
]
const others =
  /\b(?:steps?|stepp\w*|gates?|pickets?|palings?|rackable|swing|drain\w*|gutter|post top|cap|percent of|waste)\b|\$|£|€/i

/** The request of such a message; nothing for any other. */
export function alongSlopeIn(heard: Heard): Request | undefined {
  const { said } = heard
  if (others.test(said)) return undefined
  const goesOn = isAbout(heard, sum, 'raked-run')
  const asksAngle = /\b(?:angle|degrees?|bevel)\b/i.test(said)
  const asksAlong =
    /\b(?:along|up|down|on) (?:the |that )?(?:slope|ground|hill|bank)\b|\bslope length\b|\btape\b/i.test(said)
  const asksSteep =
    /\bhow steep\b|\b(?:what|which) (?:slope|grade|gradient|pitch)\b|\b(?:slope|grade|gradient) (?:in|as a) percent\b/i.test(
      said,
    )
  const spots = spotsOf(heard)
  if (goesOn && spots.length === 0)
    return asksAngle && !asksAlong && isAbout(heard, sum) ? requestFor(sum, ['slopeAngle'], []) : undefined
  if (goesOn && spots.length === 1 && /\b(?:spac\w*|apart|cent(?:er|re)s?)\b/i.test(said) && asksAlong) {
    const told = placedBy(spots, spaced)
    return told?.length === 1 ? requestFor('raked-run', ['rakedBay'], told) : undefined
  }
  const wants = asksSteep ? 'slope' : asksAngle ? 'slopeAngle' : asksAlong ? 'alongGround' : undefined
  if (!wants || /\b(?:bays?|posts?|panels?|rails?)\b/i.test(said)) return undefined
  const told = placedBy(spots, fall)
  return told?.length === 2 ? requestFor(sum, [wants], told) : undefined
}
