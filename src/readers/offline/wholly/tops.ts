// This file is about arched and dipped tops told by their heights: “1,200 at the posts, dips 200 in the middle, a paling 600 off the post”, “flip it”.
import type { Request, Told } from '../../../request.ts'
import type { Heard } from '../../reader.ts'
import { chosenBy, requestFor, tell } from '../request-parts.ts'
import { boundBy, isAbout, knows, type Role, spotsOf } from './spots.ts'

const ofCurve =
  /\b(?:arch(?:es|ed|ing)?|scallop\w*|swoops?|swooping|curv(?:es?|ed|ing)|humps?|humped|dips?|dipp(?:ed|ing)|crown(?:ed)?|convex|concave|bow(?:s|ed)?)\b/i
const roles: readonly Role[] = [
  {
    word: 'placeFromPost',
    after:
      /^\s*(?:mm |in )?(?:away |in |out |along |over )?(?:from|off|out from|of) (?:the |a |either |each |one |its )?(?:left |right |end )?(?:posts?|ends?|edge)\b/,
  },
  {
    word: 'placeFromMiddle',
    after:
      /^\s*(?:mm |in )?(?:away |out |either side |to (?:the |one |either )?(?:side|left|right) |left |right |over )?(?:from|off|of) (?:the )?(?:dead )?(?:middle|cent(?:re|er)|mid)\b/,
  },
  {
    word: 'archRise',
    before:
      /(?:dips?|dipping|rises?|rising|drops?|sags?|falls?|humps?|rise|arch(?:es)?|swoops?|goes (?:up|down)|scoops?)(?: by| of| is| down| up| about| only| a)*\s*$/,
  },
  {
    word: 'archRise',
    after:
      /^\s*(?:mm |in )?(?:of )?(?:a )?(?:dip|rise|hump|drop\b|sag|lower|higher|shorter|taller|deep(?:er)?\b|more|less)/,
  },
  {
    word: 'heightInMiddle',
    before:
      /(?:middle|cent(?:re|er)|mid(?:way)?)(?: one| picket| paling)?(?: is| are| at| of| to| stands?| only|'s|:|=|,)*\s*$/,
  },
  {
    word: 'heightInMiddle',
    after:
      /^\s*(?:mm |in )?(?:tall |high |long )?(?:in|at|for) (?:the )?(?:very |dead )?(?:middle|cent(?:re|er)|mid|top of the arch|bottom of the dip|lowest|highest)/,
  },
  {
    word: 'heightInMiddle',
    before: /(?:dips?|drops?|falls?|rises?|goes|going|down|up|sinks?|comes?)(?: down| up)? to(?: about| only)?\s*$/,
  },
  {
    word: 'heightAtPosts',
    after:
      /^\s*(?:mm |in )?(?:tall |high |long )?(?:at|by|against|near|beside|over|next to) (?:the |each |both |either )?(?:posts?|ends?|sides|edges)\b/,
  },
  {
    word: 'heightAtPosts',
    before:
      /(?:at|by|against|beside) (?:the |each |both )?(?:posts?|ends?)(?: is| are| they're| they are| it's|:|=|,)*\s*$/,
  },
  {
    word: 'opening',
    before:
      /(?:bays?|opening|span|between (?:the )?posts?|section|panel)(?: is| are| of| measures?|'s|:|=|,| each| width| wide| clear)*\s*$/,
  },
  {
    word: 'opening',
    after:
      /^\s*(?:mm |in )?(?:wide |clear |long )?(?:bays?|opening|span|between (?:the )?posts?|between|sections?|wide|across|post to post|panels?)\b/,
  },
]
const dips =
  /\b(?:dip(?:s|ped|ping)?|scallop\w*|swoops?|swooping|sags?|concave|hollow|scoop\w*|low(?:er|est)? in the (?:middle|cent(?:re|er)))\b/i
const rises =
  /\b(?:arch(?:es|ed|ing)?|humps?|humped|crown(?:ed)?|convex|ris(?:es?|ing)|high(?:er|est)? in the (?:middle|cent(?:re|er)))\b/i
const flips =
  /\b(?:flip(?:ped)?|the other way (?:up|round|around)|other way up|upside down|invert(?:ed)?|reversed?|turn(?:ed)? over|turn it over)\b/i
const offEnds =
  /\bhow (?:far|much)\b[^.?!]*\b(?:below|above|under|over|lower than|higher than)\b[^.?!]*\b(?:ends?|posts?|end pickets?)\b/i
const takenBack = /\b(?:not|instead of|rather than|no longer)\s+(?:an?\s+)?(?:the\s+)?[\w-]+/gi

/** The request of a message about one curve whose every size stands beside what it is; nothing for any other. */
export function topIn(heard: Heard): Request | undefined {
  const { said, job } = heard
  const goesOn = isAbout(heard, 'arch-at-place')
  const isFlipped = goesOn && heard.readings.length === 0 && said.split(/\s+/).length <= 12
  if (isFlipped) return turned(heard)
  if (!goesOn && !ofCurve.test(said)) return undefined
  if (/\b(?:template|trammel|odd bay|short bay|gap|how many)\b/i.test(said)) return undefined
  const spots = spotsOf(heard)
  if (spots.length === 0 || spots.some((it) => it.reading.section)) return undefined
  const told = boundBy(spots, roles)
  if (!told) return undefined
  const has = (word: string): boolean => told.some((it) => it.word === word) || knows(heard, word)
  const place = told.find((it) => /^placeFrom/.test(it.word))
  const isOffEnds = place !== undefined && offEnds.test(said) && has('opening') && has('archRise')
  if (
    !goesOn &&
    !isOffEnds &&
    !(told.some((it) => it.word === 'heightAtPosts') && has('opening') && (has('heightInMiddle') || has('archRise')))
  )
    return undefined
  if (place && !(has('heightAtPosts') || isOffEnds || job.asked.length > 0)) return undefined
  const asksRadius = /\bradius\b|\bstring\b|\bcompass\b/i.test(said)
  const asksTall = /\bhow (?:tall|high|long|much)\b|\bheight\b|\blength\b|\?/i.test(said)
  const wants = place
    ? [offEnds.test(said) ? 'curveOffEnds' : 'heightAtPlace', ...(asksRadius ? ['archRadius'] : [])]
    : asksRadius
      ? ['archRadius']
      : asksTall && /\b(?:middle|cent(?:re|er))\b/i.test(said) && told.some((it) => it.word === 'archRise')
        ? ['heightInMiddle']
        : goesOn
          ? []
          : ['archRadius']
  return requestFor('arch-at-place', wants, [...told, ...shapeOf(said)])
}

/** “Dips”, “hump not dip”: which way it goes, by the words that are not taken back. */
function shapeOf(said: string): Told[] {
  const kept = said.replace(takenBack, (it) => ' '.repeat(it.length))
  const [down, up] = [dips.exec(kept), rises.exec(kept)]
  if (down && !up) return [chosenBy('archShape', 'concave', down[0])]
  return up && !down ? [chosenBy('archShape', 'convex', up[0])] : []
}

/** “Flip it, hump not dip”: the same rise, the other way. */
function turned(heard: Heard): Request | undefined {
  const { said, job } = heard
  const shape = shapeOf(said)
  const flip = flips.exec(said)
  if (shape.length === 0 && !flip) return undefined
  const of = (word: string) => job.results.findLast((it) => it.word === word)
  const toldOf = (word: string) => job.decisions.find((it) => it.word === word)
  const [middle, ends] = [toldOf('heightInMiddle'), toldOf('heightAtPosts')]
  const rise = of('archRise')
  const before =
    toldOf('archShape')?.value === 'concave' ||
    (middle !== undefined && ends !== undefined && isLess(middle.value, ends.value))
  const option = shape[0]?.from.option ?? (before ? 'convex' : 'concave')
  const chosen = chosenBy('archShape', option, shape[0]?.from.quote ?? (flip as RegExpExecArray)[0])
  // The height in the middle was that of the other way; the rise stays.
  if (middle && !rise) return undefined
  return requestFor('arch-at-place', [], [...(middle && rise ? [tell('archRise', rise.ref)] : []), chosen])
}
const isLess = (a: unknown, b: unknown): boolean => {
  const [one, other] = [a, b].map((it) => (it as { amount?: { valueOf(): number } }).amount?.valueOf() ?? 0) as [
    number,
    number,
  ]
  return one < other
}
