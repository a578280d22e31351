// This file is about the cautions that a person's own words call up, whatever is worked: water, a motor, a drop, wires overhead.
import type { CautionCode } from '../../engine/index.ts'
import { folded } from './form.ts'

const topics: readonly (readonly [CautionCode, RegExp])[] = [
  ['pool', /\b(?:pools?|ponds?|hot tubs?|swim(?:ming)? spas?|spa)\b(?! noodle)/],
  [
    'automatic-gate',
    /\b(?:motori[sz]ed|automatic|electric|powered|remote[- ]controlled) (?:\w+ ){0,2}gates?\b|\bgates? (?:\w+ ){0,4}(?:motors?|openers?|operators?|automat\w+)\b|\b(?:motors?|openers?|operators?) (?:\w+ ){0,4}gates?\b/,
  ],
  [
    'structure',
    /\b(?:steep|sheer|sudden|high|big|long) (?:drop|bank|embankment)\b|\bdrop[- ]?offs?\b|\bdrop (?:on|at|behind|below|beyond) the\b|\b(?:cliff|balcony|embankment|retaining wall)s?\b|\b(?:top of|on top|atop|above|edge of) (?:of )?(?:the|a|an|my|our|that)? ?(?:\w+ ){0,3}(?:wall|bank|ledge|terrace|deck|drop)\b|\b(?:near|by|over|along|beside|next to) (?:the|a|an|my|our) (?:\w+ ){0,2}(?:ledge|drop|bank|terrace)\b|\bfall(?:ing|s)? (?:off|over the edge|down the)\b/,
  ],
  [
    'overhead-lines',
    /\boverhead\b.{0,40}\b(?:lines?|wires?|cables?|power)\b|\b(?:lines?|wires?|cables?)\b.{0,40}\boverhead\b|\b(?:power lines?|wires?|cables?) (?:\w+ ){0,3}(?:above|over my|over the)\b/,
  ],
  [
    'lead',
    /\b(?:old|peeling|flaking) (?:\w+ )?paint(?:work)?\b|\bpainted (?:back )?(?:in|before|around) (?:the )?(?:18|19)\d\d|\blead(?:ed)? paint\b/,
  ],
  ['preserved-wood', /\b(?:railway|railroad) (?:sleepers?|ties?)\b|\bsleepers\b|\bcreosoted?\b|\bcca\b/],
]

/** The codes of what a message names, in the order they are read out. */
export function cautionsNamed(said: string): CautionCode[] {
  const text = folded(said).replace(/\s+/g, ' ')
  return topics.filter(([, topic]) => topic.test(text)).map(([code]) => code)
}
