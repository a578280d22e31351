// This file is about what cautions are about. A sentence on one of these subjects is the program's alone, whatever it says of it.
import { folded } from './form.ts'

// Topics, not single words: "mark the line on the rail" is carpentry; a line with paint, flags or a boundary is not.
const alone: readonly RegExp[] = [
  /\b(?:utilit(?:y|ies)|811|one-call|locat(?:e|es|ed|ing|or|ors) (?:service|request|ticket|company|crew|people|marks?|lines?|wires?|pipes?)|locators?|locates|dig (?:ticket|notice|safe)|dig-?line|hotline)\b/,
  /\b(?:buried|underground|below ground|hidden|live) (?:\w+ ){0,2}(?:lines?|wires?|wiring|cables?|pipes?|services?|conduits?|mains?|stuff|things)\b/,
  /\b(?:gas|sewer|water|power|electric(?:al)?|telephone|phone|fiber|fibre|cable|telecom|septic|sprinkler|irrigation) (?:line|lines|main|mains|pipe|pipes|cable|cables|wire|wires|supply|company|service|meter)\b/,
  /\b(?:cables?|conduits?|pipelines?|pipes|wires?)\b.*\b(?:dig|digging|hole|holes|ground|auger|buried|down there|hit|yard|deep|below|under|here|worry|shallow)\b/,
  /\b(?:dig|digging|hole|holes|ground|auger|hit)\b.*\b(?:cables?|conduits?|pipelines?|pipes|wires|mains?|gas|electric(?:ity|al)?|sewer)\b/,
  /\bcall(?:s|ed|ing)? (?:\w+ ){0,4}(?:before|first|ahead|anyone|anybody|the city|the town|the company|the county|in)\b.*\b(?:dig|digging|hole|ground|start|auger)\b/,
  /\b(?:dig|digging|start|auger)\b.*\b(?:without|before|no need to|don't|skip|instead of) (?:\w+ ){0,2}call(?:ing)?\b/,
  /\b(?:lot|property|boundary|survey|fence) lines?\b.*\b(?:neighbou?rs?|survey|legal|yours|move|guess|assume|trust|know|certain|sure|exact|wrong|matter|important|ignore|over|past|across|on|near|cross|inside)\b|\b(?:lot|property|boundary) (?:lines?|pins?|markers?|stakes?|corners?)\b|\b(?:boundary|boundaries|surveyors?|surveys?|surveyed|easements?|setbacks?|encroach\w*|trespass\w*|deeds?|plats?)\b/,
  /\bneighbou?rs?(?:'s?)?\b.*\b(?:side|land|line|permission|ask|consent|mind|notice|object|agree|approve|yard|grass|property|own|notify|tell|know|sue)\b/,
  /\b(?:ask|tell|notify|warn|consult)\w* (?:\w+ ){0,3}neighbou?rs?\b/,
  /\b(?:marks?|flags?|paint(?:ed)? (?:marks?|lines?)|spray paint)\b.*\b(?:utilit\w+|paint(?:ed)?|flags?|expired?|wash\w*|faded?|trust|ignore|ground|gas|electric|buried|orange|yellow|pink|blue|red)\b/,
  /\b(?:flags?|white lines?|coloured|colored) (?:\w+ ){0,3}(?:lawn|grass|ground|yard)\b/,
  /\bpermits?\b|\bpermitting\b|\b(?:zoning|ordinances?|bylaws?|by-laws?|regulations?|regulat\w+|covenants?|hoa|homeowners? association|inspect(?:or|ors|ion|ions)|authorit(?:y|ies)|municipal\w*|officials?|council|city hall|town hall|county office|planning (?:office|department)|paperwork|red tape|approval|approved by|licen[cs]e[ds]?|licensing)\b/,
  /\bcodes?\b.*\b(?:building|local|town|city|county|fire|meet|meets|met|require\w*|say|says|allow\w*|comply|compl\w+|satisf\w+|pass|passes|official|follow|apply|applies|worry|ignore|matter|check|safe|rule|rules)\b|\b(?:building|local|town|city|county|to|the|by|up to|per|meets?|any|no) codes?\b/,
  /\b(?:law|laws|lawful\w*|legal\w*|illegal\w*|liab\w+|lawsuits?|fined|prosecut\w+|enforce\w*)\b/,
  /\b(?:height|size|setback) (?:limit|limits|rule|rules|restriction|restrictions)\b/,
  /\blatch(?:es|ed|ing)?\b.*\b(?:pool|child|children|kids?|toddlers?|safe|safety|skip|need|needed|necessary|optional|open|unlatched|off|remove|disable|prop|propped|tie|wedge|leave|bother|matter|without|fail|close|closes|self|lock|locks|disabled|bypass|low|lower|inside|reach|height)\b/,
  /\b(?:pool|child|children|kids?|toddlers?|skip|remove|disable|prop|propped|tie|wedge|leave|without|self-closing|self-latching|bypass|no)\b.*\blatch(?:es|ed|ing)?\b/,
  /\bself-?(?:closing|latching)\b|\b(?:pool|pools|hot tub|spa|swimming|toddlers?|drown\w*)\b|\bprop(?:ped|ping)? (?:\w+ ){0,3}(?:gate|open)\b/,
  /\b(?:child|children|kids?|toddlers?|babies|baby)\b.*\b(?:safe|climb|gate|alone|fall|reach|play|harm|hurt|fine|ok|okay|near|hole|holes|through|head)\b|\b(?:hole|holes|gate)\b.*\b(?:child|children|kids?|toddlers?)\b/,
  /\bburn(?:s|t|ed|ing|able)?\b|\bbonfires?\b|\bcampfires?\b|\bkindling\b|\bfire ?(?:pit|place|wood|places|pits|side)s?\b|\bwood ?stoves?\b|\bstoves?\b|\bincinerat\w+\b|\bset (?:\w+ ){0,2}(?:alight|on fire)\b|\b(?:light|start|build|make|feed) (?:a|the|your) fire\b|\bon the fire\b|\bashes\b|\bbarbecue\b|\bgrill\b/,
  /\b(?:skip|skips|skipped|skipping|ignor\w+|disregard\w*|bypass\w*|overlook\w*|dispense with|forgo|forego|neglect\w*|pay no attention|take no notice)\b/,
  /\b(?:no need|not needed|needn't|need not|no reason|don't bother|do not bother|not bother|never bother|bother with|don't worry|do not worry|no worries|not worry|need to worry|nothing to worry|nothing to fear|forget (?:about|the|any|all|it|that)|feel free|go right ahead|no harm|harmless|no risk|risk-free|little risk|risks?|risky|without risk|worry about|unnecessary|optional|overcautious|overkill|scaremonger\w*|fuss|formality|waste of time|don't have to|do not have to|doesn't have to|not have to|you can leave out|leave out|get away with|won't matter|doesn't matter|don't matter|not matter|never mind|take (?:my|the program's) word|nobody (?:will|checks|cares)|no one (?:will|checks|cares|needs))\b/,
  /\b(?:safe|safely|safer|safety|safest|unsafe|danger|dangers|dangerous|dangerously|hazard|hazards|hazardous|poisonous|toxic|warn|warns|warning|warnings|cautions?|precautions?|accident|accidents|injur\w+|protective|protection)\b/,
  /\b(?:allowed|permitted|permissible|forbidden|prohibited|not allowed|allows you|entitled|compliant|comply|complies|compliance|authori[sz]ed|sanctioned|may legally|acceptable to|ok(?:ay)? to (?:dig|burn|cut|go|start|leave|drill)|fine to (?:dig|burn|go|start|leave))\b/,
  /\b(?:gloves?|masks?|goggles|respirators?|ear ?muffs|hearing|eye ?wear|safety glasses|glasses|dust mask|guards?)\b.*\b(?:need|needed|wear|without|off|skip|bother|remove|no|not|optional|useless|never|don't|doesn't)\b|\b(?:without|no|remove|off|don't|never|not)\b.*\b(?:gloves?|masks?|goggles|respirators?|guards?)\b/,
  /\b(?:lead|old) paint\b|\bleaded\b|\blead-based\b|\basbestos\b|\bsilica\b/,
  /\boverhead\b.*\b(?:line|lines|wire|wires|cable|cables|power)\b|\bpower lines?\b/,
  /\b(?:open|uncovered|empty) holes?\b.*\b(?:leave|left|overnight|fine|cover|uncovered|open)\b|\bleave (?:\w+ ){0,3}holes? (?:open|uncovered)\b|\bholes? (?:\w+ ){0,3}(?:uncovered)\b|\bcover(?:ing)? (?:\w+ ){0,2}holes?\b/,
  /\b(?:nothing|anything|something|whatever|what) (?:is |'s |lies |was |could be |has been )?(?:\w+ )?buried\b|\b(?:painted|sprayed) marks?\b|\bmarks? (?:from|on the (?:ground|lawn|grass))\b|\bpaint on the (?:ground|lawn|grass|street)\b/,
  /\bneighbou?rs?\b.*\b(?:say|opinion|complain\w*|care|right|rights|business)\b|\b(?:town|city|county|state|village|council|government)s?\b.*\b(?:allow\w*|rule|rules|permit\w*|requires?|demands?|cares?|minds?|limit|limits|says?)\b/,
  /\balready (?:took|taken|take) care\b|\b(?:already|have) (?:done|dealt with|handled) (?:all )?(?:that|the checks?)\b/,
  /\b(?:electrif\w+|electric fence|mains|retaining walls?|guard ?rails?)\b/,
  /\b(?:gas|smell)\b.*\b(?:leak|leaks|smell|smells|leave)\b/,
  /\b(?:rags?|heat ?strokes?|sunstroke|creosote\w*|electrocut\w*|electric shocks?|hiss(?:es|ing)?|first aid|ambulance|emergency|hospital)\b/,
]

/** Whether the piece speaks of a caution's subject. */
export function isCautionSubject(piece: string): boolean {
  const text = folded(piece)
    .replace(/[*_"“”]/g, '')
    .replace(/\s+/g, ' ')
    .slice(0, 4000)
  return alone.some((topic) => topic.test(text))
}
