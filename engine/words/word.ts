// This file is about what a word of the job is: one meaning, over the whole job, and what people call it.
import type { Kind } from '../quantities/units.ts'

export type WordKind = Kind | 'choice' | 'verdict'

/** A value that is taken when nobody said one. It is always said aloud, with its reason. */
export interface Usual {
  /** As people would write it; the metric one where the trade's habit differs. A choice names its option. */
  readonly value: string
  readonly metric?: string
  readonly because: string
  readonly from: string
}

/**
 * How people speak of it, for whoever reads a message without a model.
 * `names` say the word whole ("picket width"). `things` and `sides` say it together ("pickets … wide"): what is measured, and how.
 * `asks` are ways to ask for it beyond "how many/how much/what" with those.
 */
export interface Called {
  readonly names?: readonly string[]
  readonly things?: readonly string[]
  readonly sides?: readonly string[]
  readonly asks?: readonly string[]
  /** True when a size beside the thing alone means this word: "3 1/2 in pickets" is a width. `sticks` when only a stick called by its size does: "2x6 rails", and not "8 ft rails". */
  readonly plainly?: boolean | 'sticks'
  /** True when a quantity of its kind means this word where the question needs it and nothing else is said of it. */
  readonly byDefault?: boolean
}

/** One word of the vocabulary: its kind, how to measure it, the question that asks for it, its usual value and its limits. */
export interface Word<K extends WordKind = WordKind> {
  readonly name: string
  readonly kind: K
  /** What it is called on the page, lower case: `picket width`. */
  readonly label: string
  /** How to measure or find it. */
  readonly measure: string
  /** The question that asks for it. */
  readonly ask: string
  readonly called: Called
  /** The word that takes the upper end where this one is said as a range: “2.5 to 3 L of water a bag”. */
  readonly upTo?: string
  /** Money: what it is the price of, where that is no whole thing: a measure, “28 dollars a foot”, or a board foot. */
  readonly per?: 'measure' | 'board foot'
  /** Counts: the singular noun of what is counted. */
  readonly noun?: string
  /** The unit it is shown in when worked; told values keep the person's own. */
  readonly units?: { readonly imperial: string; readonly metric: string }
  readonly usual?: Usual
  /** Which side of a stick it is, for one called by its size: a “2x4” on edge is wide in depth and thin in thickness. Without it a stick is no value of the word. */
  readonly ofStick?: 'width' | 'thickness' | 'name' | 'name thickness'
  /** The word that takes the other side of a stick called by its size, where one name tells both: “a 2x4” is as thick and as wide as it is. */
  readonly otherSide?: string
  /** Outside these it cannot be. As people write quantities; ends included unless `above`. */
  readonly possible?: { readonly above?: string; readonly least?: string; readonly most?: string }
  /** Outside these it is asked about before it is worked. Source: common practice, no source, unless the word's file says else. */
  readonly plausible?: { readonly from: string; readonly to: string }
  readonly whole?: boolean
  /** True when it holds several values in order: the sides of a yard, the readings along a string. A calculation takes them with `rows`. */
  readonly list?: boolean
  /** Choices: each option, what it is called on the page and what people call it. */
  readonly options?: Readonly<Record<string, { readonly label: string; readonly called: readonly string[] }>>
  /** Choices: the size that an option may stand right beside, “holes 12 in square”; a single word of an option counts nowhere else. */
  readonly saidOf?: string
  /** Verdicts: the words for yes, no and cannot say. */
  readonly says?: { readonly yes: string; readonly no: string; readonly unknown: string }
  /** Words that an earlier turn decided and that this one puts out of date: a new bag weight, the old bag's yield. */
  readonly replaces?: readonly string[]
  /** The same, where it was said that there is none: a gate that somebody forgot. */
  readonly replacesNone?: readonly string[]
  /** The same, where this one was told before and is told anew: other legs, the diagonal that was measured over the old ones. */
  readonly replacesAnew?: readonly string[]
  /** True when it is itself how much two things differ: “2 in wider” is its value, and no change of it. */
  readonly difference?: true
  /** True when it is measured down from what is above: what is raised makes it less. */
  readonly downward?: true
  /** True when nobody says it: it passes between the parts of a fence, and no reader looks for it. */
  readonly unsaid?: true
  /** False for a count that belongs to its own place: the corner posts are not as many as the yard's. */
  readonly inherits?: boolean
}

/** Declares a word. The kind is kept as a type, so that a calculation knows what it is handed. */
export const word = <K extends WordKind>(name: string, it: Omit<Word<K>, 'name'>): Word<K> => ({ name, ...it })

/** “the picket width”, and plain “what the fence costs in all”: the label as it stands in a sentence. */
export const inSentence = ({ label }: Word): string =>
  /^(the|an?|one|each|all|half|what|how|whether|which) /.test(label) ? label : `the ${label}`

/** A count that is worked out, or gathered from the fence, and that nobody says by name. */
export const counted = (name: string, label: string, noun: string, measure: string, list = false): Word<'count'> =>
  word<'count'>(name, {
    kind: 'count',
    noun,
    label,
    whole: true,
    ...(list ? { list } : {}),
    measure,
    ask: `How many ${label}?`,
    called: {},
    unsaid: true,
    possible: { least: '0' },
  })
