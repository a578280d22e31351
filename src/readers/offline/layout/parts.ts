// This file is about lengths of posts and pickets from their parts, what boards give, sections of which some are short, and rails from boards.
import { calculationNamed, isQuantity, quantity, sameValue } from '../../../../engine/index.ts'
import type { Request } from '../../../request.ts'
import type { Tagged } from '../../reader.ts'
import { declined } from '../declines.ts'
import { isStickLength } from '../fits.ts'
import { again, asked, isLast, isLonger, knows, type Marked, tell } from './marked.ts'

const groups = (it: Marked, pattern: RegExp): Tagged | undefined =>
  pattern
    .exec(it.text)
    ?.slice(1)
    .map(it.at)
    .find((one) => one !== undefined)

const fenceTall =
  /fence (?:is |will be |of |about |to be )?§[LN](\d+) (?:tall|high|above|out of)|§[LN](\d+) (?:ft |foot |in |inch )?(?:tall|high|above (?:the )?ground|out of (?:the )?ground|fence|showing)|(?:fence|overall|total) (?:height|tall)?(?: is| of| at)? ?§[LN](\d+)/
const inGround =
  /§[LN](\d+) (?:in|into|below|under|beneath) (?:the )?(?:ground|earth|soil|dirt|grade)|§[LN](\d+) (?:buried|underground|deep)|(?:buried|embedded|sunk|in the ground|go down|goes down)(?: by| about| is)? §[LN](\d+)/
const overPickets =
  /(?:stick\w*|stand\w*|poke\w*|go\w*|run\w*|rise\w*|extend\w*|proud|up|post tops?(?: are| is)?) (?:up |out |by |about |proud )*§[LN](\d+)[^.?§]*(?:above|over|past|higher than|beyond|proud of)|§[LN](\d+) (?:above|over|past|higher than|taller than|proud of|beyond) (?:the )?(?:top of (?:the )?)?(?:pickets?|palings?|fence|boards)/
const asksPost =
  /how long[^?.]* posts?\b|posts?[^?.,]* how long|length of (?:the |my |each )?posts?|post length|what (?:length|size)[^?.]* post|long (?:a|are the|do the|should the|must the) posts?|how long a post/
const postSold =
  /§L(\d+) (?:long |footer |4x4 |fence )?posts?\b|posts? (?:of|that (?:is|are)|i have (?:is|are)|are|is) §L(\d+)(?: long)?/
const suits = /get away|long enough|be enough|enough\b|\bok\b|okay|will|would|do it|work|can i|could i|use|buy/

/** “Fence 4 ft tall, posts 3 in above the pickets and 30 in in the ground: how long a post?”, and whether one that is sold will do. */
export function postOfParts(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const [only, more] = readings
  if (only && !more && isLast(job, 'post-in-parts') && it.has(suits) && (isStickLength(only) || it.has(/post|long/)))
    return asked('post-in-parts', tell('postBought', only), 'postIsLongEnough')
  const asksDepth = it.has(/how deep|how far (?:in|down)|how much[^?]*ground/)
  const isRuled = isLast(job, 'post-depth') || isLast(job, 'post-as-bought') || isLast(job, 'post-split')
  if (only && !more && isStickLength(only) && isRuled && knows(job, 'postAbove') && (asksDepth || it.has(suits)))
    return asked('post-as-bought', tell('postLength', only), asksDepth ? 'embedment' : 'deepEnoughByRule')
  const sold = it.has(suits) ? groups(it, postSold) : undefined
  if (!(it.has(asksPost) || sold) || it.has(/frost|rule|third|concrete|gravel|stone|string/)) return undefined
  const above = groups(it, overPickets)
  const down = groups(it, inGround)
  const tall = groups(it, fenceTall)
  if (!tall || !down || tall === down || tall === above || down === above) return undefined
  if (readings.some((one) => ![tall, down, above, sold].includes(one) && !one.section)) return undefined
  const parts = [...tell('postAbove', tall), ...tell('postOverFence', above), ...tell('embedment', down)]
  return sold
    ? asked('post-in-parts', [...parts, ...tell('postBought', sold)], 'postIsLongEnough')
    : asked('post-in-parts', parts)
}

const atFrost = /frost(?: line| depth| level)?[^.?§]{0,30}§[LN](\d+)|§[LN](\d+) (?:is )?(?:the )?frost/
const ofStone = /§[LN](\d+) (?:of |in )?(?:gravel|stone|rock|crushed)|(?:gravel|stone|rock)[^.?§]{0,14}§[LN](\d+)/
/** “Frost line is 36 in, the post sits on it with 6 in of gravel below: how deep do I dig?” */
export function holeToFrost(it: Marked): Request | undefined {
  if (!it.has(/how deep|how far down|depth of the hole|hole depth/) || knows(it.heard.job, 'postAbove'))
    return undefined
  const [frost, stone] = [groups(it, atFrost), groups(it, ofStone)]
  if (!frost || !stone || frost === stone || it.heard.readings.length !== 2) return undefined
  return asked('hole-to-frost', [...tell('frostDepth', frost), ...tell('stoneDepth', stone)])
}

const asksPicket =
  /how long[^?.]*(?:pickets?|palings?|slats?)|(?:pickets?|palings?|slats?)[^?.]*how long|(?:picket|paling) length|length of (?:the |my |each )?(?:pickets?|palings?)|what length[^?.]*(?:pickets?|palings?)/
const overall =
  /(?:overall|total|fence|height|tall|high)(?: height)?(?: is| of| at| to be|,)? ?(?:overall )?§[LN](\d+)|§[LN](\d+) (?:in |inch |ft |foot |mm )?(?:overall|tall|high|in all|total|finished)/
const clear =
  /§[LN](\d+) (?:in |inch |inches |mm )?(?:clear|off|above|gap|clearance|up off|from the ground|of clearance|space)|(?:clearance|gap (?:at the bottom|underneath|below|under)|clear)(?: of| is)? §[LN](\d+)/
const asksOfBoard =
  /how many[^?.§]*(?:from|out of|per|off|in)(?: of)?(?: a| an| one| each)? §[LN](\d+)|how many[^?.§]* (?:does|do|will|would|can)[^?§]* §[LN](\d+)[^?§]*(?:board|give|make|yield)/
const boardFirst = /§[LN](\d+)[^?§]*how many[^?.§]*(?:get|cut|from|out of)/
const pickets =
  /(?:need|want|for|all|total of|have to cut|cut) §N(\d+) (?:[a-z]+ )?(?:pickets?|palings?|slats?)|§N(\d+) (?:pickets?|palings?|slats?)/

/** How long pickets are for a fence clear of the ground, how many a board gives, and how many boards they take. */
export function picketsOfHeight(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (it.has(asksPicket) && readings.length === 2 && !it.has(/rail|post|arch|dip|scallop|step/)) {
    const [tall, gap] = [groups(it, overall), groups(it, clear)]
    if (tall && gap && tall !== gap)
      return asked('picket-length', [...tell('fenceHeight', tall), ...tell('footGap', gap)])
  }
  const long = groups(it, picketLong)
  if (!(long || knows(job, 'picketLength')) || it.has(/cap|rail|post\b/)) return undefined
  const count = groups(it, pickets)
  if (isLast(job, 'pickets-from-boards') && count && readings.length === 1 && it.has(/board|how many|stick|length/))
    return asked('pickets-from-boards', tell('picketsToCut', count), 'picketBoards')
  const board = groups(it, asksOfBoard) ?? groups(it, boardFirst)
  const isBoard =
    board && (isStickLength(board) || isLonger(board, shortestBoard)) && it.has(/board|stick|plank|length|footer|one/)
  if (!isBoard || board === long || readings.some((one) => ![board, count, long].includes(one))) return undefined
  return count
    ? asked(
        'pickets-from-boards',
        [...tell('picketLength', long), ...tell('stockLength', board), ...tell('picketsToCut', count)],
        'picketBoards',
      )
    : asked('pickets-from-boards', [...tell('picketLength', long), ...tell('stockLength', board)], 'picketsPerBoard')
}
const picketLong = /(?:pickets?|palings?|slats?)(?: are| is| of|,)? §[LN](\d+) long\b/
const shortestBoard = quantity(5, 'ft')

const eachSection =
  /§N(\d+) (?:[a-z]+ )?(?:pickets?|palings?|slats?)? ?(?:a|per|each|in each|to a|to each|in a|every|for each) (?:[a-z]+ )?(?:section|bay|panel)|(?:section|bay|panel)s? (?:takes?|has|have|holds?|with|of|gets?) §N(\d+)/
const sections = /§N(\d+) (?:[a-z]+ )?(?:sections|bays|panels)/
const short =
  /§N(\d+) (?:of (?:them|em|those|these|the (?:sections|bays|panels)) )?(?:sections |bays |panels |ones )?(?:are |r |is |being |will be )?(?:only )?(?:short|shorter|half|narrow|small|smaller|take|takes|have|get|hold)\b[^§]{0,30}§N(\d+)|§N(\d+) (?:short|shorter|narrow|small|smaller|half)(?: sections| bays| panels| ones)?\b[^§]{0,30}§N(\d+)/
/** “19 pickets a section, 9 sections but two of them are short with only 11”. */
export function shortSections(it: Marked): Request | undefined {
  if (!it.has(/picket|paling|slat/) || !it.has(/total|how many|in all|altogether|all together/)) return undefined
  const each = groups(it, eachSection)
  const all = groups(it, sections)
  const [few, less, few2, less2] = short.exec(it.text)?.slice(1).map(it.at) ?? []
  const [count, own] = [few ?? few2, less ?? less2]
  if (!each || !all || !count || !own || new Set([each, all, count, own]).size < 4) return undefined
  const rest = it.heard.readings.filter((one) => ![each, all, count, own].includes(one))
  if (rest.some((one) => one.quantity?.kind !== 'percent')) return undefined
  return asked(
    'picket-count',
    [
      ...tell('pickets', each),
      ...tell('bays', all),
      ...tell('shortBays', count),
      ...tell('shortBayPickets', own),
      ...tell('picketSpare', rest[0]),
    ],
    'picketsHung',
  )
}

/** “Eleven of the full bays and the odd one, how many altogether?”, of two kinds of bay that were worked one after the other: the last one's number is not that of both. */
export const kindsOfBays = (it: Marked): Request | undefined =>
  knows(it.heard.job, 'pickets') &&
  it.has(/(?:full|whole|standard|normal|regular|big|bigger|long|wide) (?:bays?|sections?|panels?|ones)\b/) &&
  it.has(/(?:odd|short|shorter|small|smaller|narrow|half|last|end) (?:ones?|bays?|sections?|panels?)\b/) &&
  it.has(/altogether|all together|in all|in total|total/) &&
  it.has(/how many|total|pickets/)
    ? { ...again([]), declines: declined('unclear', it.heard.said.slice(0, 200)) }
    : undefined

const railsOfBay = /§N(\d+) rails?\b|rails?\b[^.?§]{0,12}§N(\d+)/
/** “Two rails a bay cut between the posts out of twelve footers, how many?”: of the boards, in a run that was told. */
export function railsFromSticks(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  const stick = readings.find(isStickLength)
  if (!stick || readings.some((one) => one !== stick && one.bare === null && !one.section)) return undefined
  if (!(knows(job, 'widestBay') && knows(job, 'runLength')) && !(knows(job, 'opening') && knows(job, 'bays')))
    return undefined
  const rails = groups(it, railsOfBay)
  if (!rails || !it.has(/how many/) || it.has(/across|over the|face of|outside/) || readings.length > 2)
    return undefined
  return asked('rails-between-posts', [...tell('rails', rails), ...tell('stockLength', stick)], 'railBoards')
}

/** “And twelves?”, “what if they come as sixteen footers”: the boards that were told, told anew. */
export function sticksAnew(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  // “They were out of 16s, got 8s”: what was told before is said again beside it.
  const before = job.decisions.findLast((one) => one.word === 'stockLength')?.value
  const isBefore = (one: Tagged): boolean =>
    isQuantity(before) && one.quantity !== null && sameValue(before, one.quantity)
  const sticks = readings.filter((one) => !one.section)
  const [only, ...others] = sticks.length > 1 ? sticks.filter((one) => !isBefore(one)) : sticks
  if (!only || others.length > 0 || !isStickLength(only) || job.asked.some((one) => one.word !== 'stockLength'))
    return undefined
  if (it.has(/post|picket|\$|cost|price/)) return undefined
  const told = job.decisions.findLast((one) => one.word === 'stockLength' || one.word === 'stockLengths')
  const [want] = job.wanted
  const last = job.results.findLast((one) => one.word === want?.word)?.calculation
  const calc = last ? calculationNamed(last) : undefined
  // What the sticks are called by is no size of that sum: “what if the two by fours come as sixteen footers?”
  return told && want && calc?.needs[told.word] ? asked(calc.name, tell(told.word, only), want.word) : undefined
}

const priced = / §L(\d+) (?:are |is |at |for |cost |costs |= |: ?|- )?§[NM](\d+)/g
/** “8s are 6.20, 12s 9.80”: what the yard sells, each with its price, for pieces that were told. */
export function sticksPriced(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (!knows(job, 'pieceLengths')) return undefined
  const pairs = [...it.text.matchAll(priced)].map((found) => [it.at(found[1]), it.at(found[2])] as const)
  const isAll = pairs.length > 0 && pairs.length * 2 === readings.length
  if (!isAll || !pairs.every(([stick]) => stick && isStickLength(stick))) return undefined
  return again(pairs.flatMap(([stick, price]) => [...tell('stockLengths', stick), ...tell('stockPrices', price)]))
}

/** “Twelve pickets of 75 mm in each bay, posts 100 mm thick: how wide is each gap?”: in a run that was told. */
export function gapOfBays(it: Marked): Request | undefined {
  const { job, readings } = it.heard
  if (!(knows(job, 'runLength') && knows(job, 'widestBay')) || !it.has(/gap|space between|apart/)) return undefined
  const found =
    /§N(\d+) (?:pickets?|palings?)(?: of| at| each| that are)? §[LN](\d+)|§N(\d+) §[LN](\d+) (?:in |inch |mm |wide )?(?:pickets?|palings?)/.exec(
      it.text,
    )
  const [count, wide, count2, wide2] = found?.slice(1).map(it.at) ?? []
  const post = groups(
    it,
    /posts? (?:are |is |of )?§[LN](\d+) (?:thick|wide|square)|§[LN](\d+) (?:thick |wide |square )?posts?/,
  )
  const [pickets, width] = [count ?? count2, wide ?? wide2]
  if (!pickets || !width || readings.some((one) => ![pickets, width, post].includes(one))) return undefined
  return asked(
    'gap-for-pickets',
    [...tell('pickets', pickets), ...tell('picketWidth', width), ...tell('postWidth', post)],
    'tapeGap',
  )
}
