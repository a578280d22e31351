// This file is about a fence line measured from the house: how far the sidewalk is, and how far back from it the fence must stay.
import type { Request } from '../../../request.ts'
import type { Tagged } from '../../reader.ts'
import { asked, type Marked, tell } from './marked.ts'

const firstOf = (it: Marked, pattern: RegExp): Tagged | undefined =>
  pattern
    .exec(it.text)
    ?.slice(1)
    .map(it.at)
    .find((one) => one !== undefined)

const street = '(?:sidewalk|side walk|pavement|footpath|footway|path|kerb|curb|road|street|lane|verge)'
const house = '(?:house|porch|wall|stoop|step|veranda|deck|garage|bay window|front door|building)'
const between = new RegExp(
  `§L(\\d+) (?:from|between|off) (?:the |my |our )?${house}[^.?§]*\\b${street}|${street}(?:'s)?(?: edge| itself)? is §L(\\d+) (?:from|off|away from|out from) (?:the |my |our )?${house}|§L(\\d+) from (?:the |my |our )?${street}(?: edge)? (?:back )?to (?:the |my |our )?${house}`,
)
const back = new RegExp(
  `§L(\\d+) (?:back |away |in |clear )*(?:from|off|behind|of) (?:the |that )?${street}|${street}[^.?§]{0,30}(?:set ?back|stay|keep)\\w* (?:of |is |back )?§L(\\d+)`,
)
const asksFrom = new RegExp(
  `how far (?:out |in |away )*(?:from|off) (?:the |my |our )?${house}|how far[^?.]*from (?:the |my |our )?${house}|distance from (?:the |my |our )?${house}`,
)
const ofMiddle = /middle of (?:the |my )?posts?|cent(?:re|er)s? of (?:the |my )?posts?|post cent(?:re|er)s?/
const ofStreetSide =
  /(?:street|outer|outside|front|road|sidewalk) (?:side|face|edge) of (?:the |my )?posts?|posts? (?:has|have|must|need)/
const post = /posts? (?:are|is|that are|measure) §[LN](\d+)|§[LN](\d+) (?:square |wide )?posts?/

/** “18 in back from the sidewalk, which is 22 ft 6 from my porch: how far from the porch is the line?” */
export function lineFromHouse(it: Marked): Request | undefined {
  if (!it.has(asksFrom)) return undefined
  const [far, set] = [firstOf(it, between), firstOf(it, back)]
  if (!far || !set || far === set) return undefined
  const wide = firstOf(it, post)
  if (it.heard.readings.some((one) => one !== far && one !== set && one !== wide)) return undefined
  // Half a post is taken off only where its street side keeps the distance, and its middle is asked for.
  const half = it.has(ofMiddle) && it.has(ofStreetSide)
  if (it.has(ofMiddle) && !(half && wide)) return undefined
  return asked(
    'line-from-house',
    [...tell('houseToStreet', far), ...tell('streetSetback', set), ...(half ? tell('postOnLine', wide) : [])],
    'lineFromHouse',
  )
}

const pinBehind = new RegExp(
  `(?:pin|stake|peg|marker|mark|corner)[^.?§]{0,24}§L(\\d+) (?:behind|back from|inside|in from|past|from) (?:the )?${street}`,
)
/** “0.6 m back from the sidewalk, and my pin lies 14 in behind it: how far behind the pin?” */
export function behindPin(it: Marked): Request | undefined {
  if (!it.has(/how far (?:behind|back|in|past|from)[^?.]*(?:pin|stake|peg|marker|mark)/)) return undefined
  const [pin, set] = [firstOf(it, pinBehind), firstOf(it, back)]
  if (!pin || !set || pin === set || it.heard.readings.length !== 2) return undefined
  return asked('line-from-house', [...tell('houseToStreet', set), ...tell('streetSetback', pin)], 'lineFromHouse')
}
