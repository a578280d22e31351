// This file is about verdicts: fits, dry enough, too shallow. They are refs as well, so a model may not give one in its own words.
import { folded } from './form.ts'

const verdicts: readonly RegExp[] = [
  /\b(?:dry|wet|deep|strong|wide|tall|high|long|thick|thin|narrow|stiff|heavy|light|sound|stable|solid|close|cured|warm|cool|shallow|short|much|many|big|large|small|good) enough\b/,
  /\b(?!(?:sure|fair|easy|simple|soon|often|oddly|funnily|plain|well|not|quick|far|is|are|be|just|have|has|with|leave|leaves|cut|buy|get|add|adds|need|want|keep|and|but|if|of|that|for|it|in|mix|order|take|gives?|use)\b)[a-z]+ enough\b(?! (?:to|of|for) (?:the|your|each|every|all|cover|fill|do|reach))/,
  /\benough (?:depth|strength|bags?|posts?|pickets?|room|cover|embedment)\b/,
  /\btoo (?:wet|dry|damp|shallow|deep|wide|narrow|short|tall|high|low|weak|thin|thick|big|small|large|tight|close|far|long|heavy|cold|hot|many|few|much|little|weathered|green)\b/,
  /\b(?:is|are|looks?|seems?|now|all|be|not|isn't|aren't|it's|wood's|surface's|nearly|fully|quite) ready\b|\bready (?:to (?:be )?(?:finish|paint|stain|seal|prime|coat|hang|load)|for (?:paint|stain|finish|primer|a coat|sealing))\w*\b/,
  /\b(?:fits|will fit|won't fit|does fit|doesn't fit|do not fit|don't fit|would fit|fit perfectly|fit fine|fit well)\b/,
  /\b(?:will hold(?! (?:the|it|them|a|everything) )|won't hold|holds up|will stand up|won't sag|will not sag|won't heave|won't lean|will last|won't move|can take|will withstand|withstands?|passes|fails|meets (?:the |your |a )?(?:rule|limit|code|standard|requirement|need|test)s?|satisfies|suffices|is sufficient|are sufficient|insufficient|is adequate|adequate|inadequate|is plenty|plenty of depth|falls short|comes up short)\b/,
  /\b(?:can|may|could|should) (?:now |safely )?(?:be )?(?:painted|stained|finished|sealed|primed)\b|\byou (?:can|may) (?:now )?(?:paint|stain|finish|seal|prime)\b/,
]

export const statesVerdict = (piece: string): boolean => {
  const text = folded(piece)
    .replace(/[*_"“”]/g, '')
    .replace(/\s+/g, ' ')
  return verdicts.some((it) => it.test(text))
}
