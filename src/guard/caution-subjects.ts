// This file is about what cautions are about. A sentence on one of these subjects is the program's alone, whatever it says of it:
// what the subject is called, and the ways to wave a precaution aside that name no subject at all.
import { folded } from './form.ts'

const words = (text: string): string => text.trim().split(/\s+/).join('|').replaceAll('_', ' ')
const any = (text: string): RegExp => new RegExp(`\\b(?:${words(text)})\\b`)

/** Subjects that have no other meaning in a fence: one of these is enough. A `_` is a space. */
const subjects = any(`
  utilit(?:y|ies) 811 one-call locators? locates hotlines? dig_(?:tickets?|notice|safe) diglines? buried underground below_ground gas sewers? septic conduits? pipelines? mains voltages? low-voltage
  electric(?:al|ity|ian)? electrif\\w+ electrocut\\w+ telecoms? fib(?:er|re)_optic irrigation telephones? phon(?:e|es|ed|ing) overhead(?:_\\w+)?_(?:lines?|wires?|cables?|power) power_(?:lines?|cables?|supply|company|poles?|is|was) live_wires? hiss(?:es|ing)? meters_and
  lot_lines? property_(?:lines?|pins?|markers?|stakes?|corners?) property boundar(?:y|ies) survey(?:s|ed|ors?|ing)? easements? setbacks? encroach\\w* trespass\\w* deeds? plats? verges? next_door own_land your_land the_land_ends land_ends (?<!and_its_)neighbou?r(?:s|'s|s'|ly|ing|hood)?
  permits? permitting zon(?:ed|ing) ordinances? by-?laws? regulat\\w+ covenants? hoa association homeowners?'? inspect(?:ors?|ions?) authorit(?:y|ies) municipal\\w* officials? offices? councils? council's city_hall town_hall count(?:y|ies) paperwork red_tape approv\\w+ licen[cs]\\w+ bureaucra\\w+ rulebooks? height_limits?
  laws? lawful\\w* lawyers? legal\\w* illegal\\w* liab\\w+ lawsuits? sued? fin(?:ed|es) prosecut\\w+ enforce\\w* police courts? cops? jail exempt\\w* exceptions? comply complies complian\\w+ compliant permission historic_district conservation_area forgiveness
  child(?:ren|'s)? kids? toddlers? bab(?:y|ies) little_ones boys? girls? swim\\w* drown\\w* hot_tubs? spas? ponds? pool(?:s|side)? self-?(?:closing|latching) motors? sensors? openers?
  bonfires? campfires? kindling fire(?:s|wood|pits?|places?)? fire_(?:pits?|places?) wood_?stoves? stoves? incinerat\\w+ alight ash(?:es)? smok(?:e|es|ing|ed) barbecues? bbq grills? torch(?:es)? flames? ignite\\w* creosote\\w* sleepers? rags?
  safe(?:ly|r|st|ty)? unsafe danger\\w* hazard\\w* poison\\w* toxic\\w* warn\\w* cautions? cautious\\w* overcautious precautions? accidents? injur\\w+ protect(?:ive|ion) harm\\w* hurt\\w* risk\\w* emergenc(?:y|ies) first_aid ambulances? hospitals? doctors?
  allow(?:ed|able|s_you) permitted permissible forbidden prohibited entitled authori[sz]ed sanctioned optional unnecessary overkill exaggerat\\w+ scare\\w* formalit(?:y|ies) boilerplate foolproof
  gloves? masks? goggles respirators? ear_?(?:muffs|plugs) ears eyewear glasses boots trainers dust_masks? bare_hands? kneel\\w* lungs? silica asbestos leaded lead-based skin blisters? stings? dizz\\w+ numb numbness pains? sweat\\w* heat_?strokes? sunstroke guards? guard_?rails? railings?
  this_answer remarks? printed_for cleared pits? fingers? oily cloths knees heave_(?:it|that) by_yourself the_drop of_the_bank gales? keep_at_it the_(?:afternoon_)?heat vacuum\\w* limit_of_your your_lot folks? their_hedge wires over_by_a beneath_(?:their|anyone's|his)_notice blessing boss in_your_hand if_you_slip catch_you pool_fence
  alarms? adults? detectors? responsibility take_care the_supply chances? locate_(?:still|is|was) year's_locate corner_stakes? corner_lots? sight_lines? scarf scarves breath butter trousers wash_your_hands prove hold_on_tight engineers? retaining_walls? balcon(?:y|ies) cav(?:es?|ing)_in earthquakes? insurance insured
  skip(?:s|ped|ping)? ignor\\w+ disregard\\w* bypass\\w* overlook(?:s|ed|ing)? dispense_with forg?o(?:e|es|ing)? neglect\\w* pay_no_attention take_no_notice bother\\w* worr(?:y|ies|ied|ying) relax trust\\w* promis\\w+ guarantee\\w* assured? pretend\\w* secret\\w* blind_eye close_your_eyes quiet_about say_nothing between_you_and_me
  hydrants? manholes? sprinklers? ducts? live_feeds? crews? owners?(?!')
  triggers? blade_covers? sleeves clothing (?:under|below|beneath|down)_there get_(?:round|around)_to if_you_have_to money_grab grab hardly_used fumes? ventilat\\w+ solvents? ajar itch(?:es|y|ing)? one_person single-handed(?:ly)? with_no_help without_(?:any_)?(?:help|trouble) terraces? little_one
  (?:stand|stands|standing|sit|sits|sitting|step|steps|stepping|lean|leans|leaning|climb|climbs)_on_(?:the|a|your|its)_(?:top_|bottom_|middle_|new_|lower_|upper_)?(?:rails?|fence|gate|posts?)
  plugged_in unplug(?:ged)? a_swing swing_sets? hammocks? money_(?:thrown|down) thrown_away throwing_away without_(?:a_)?(?:brac(?:e|es|ing)|props?|propping|shoring)
  no_need no_reason no_use no_point pointless needless never_mind free_to feel_free go_(?:right_)?ahead carry_on get_away_with get_off_with get_in_trouble no_big_deal makes?_no_(?:odds|difference) waste_of_(?:time|money|your) worth_the_(?:money|trouble|bother) red_herring rest_assured good_to_go up_to_you your_(?:choice|business|responsibility|call)
  take_(?:it_from_me|a_chance|my_word|the_program's_word) chance_it the_odds common_sense gut_feeling your_(?:gut|instincts?) my_word i_must because_i_have_to you_know_better unlucky lucky
  breath(?:es?|ing) thumbs? elbows? wrists? your_(?:shoulders?|toes?|feet) barefoot bare_(?:feet|skin|arms) chew(?:s|ed|ing)? beers? wine drunk tired exhausted rested good_for_(?:you|your|him|her) (?:and|or)_for_you
  everyone everybody whoever (?:most|other|many|all)_people (?:the|a|any)_judge every_right right_to_(?:build|fence|dig|cut|take|put) wherever_(?:it|you) without_asking leaves?_out_(?:that|this|the)_(?:step|part|line|check)
  their_(?:ground|land|side|yard|lot|soil|garden|grass|roots?|trees?|wall|property) (?:who|whoever)_decides line_between_(?:you|us|them) tolerance_(?:strip|zone|area)s? your_street
  ladders? sparks? the_socket wall_sockets? outlets? current_(?:from|through) boilers? furnaces? heaters? (?:in|into)_the_trench the_digger_(?:works|runs|moves|swings) (?:hold|tape|tie|wedge)_the_(?:switch|button) (?:switch|button)_down both_hands_are_free door_(?:closed|shut) windows?_(?:closed|shut)
  (?:hold|holds|keep|keeps|holding|keeping)_(?:the_)?(?:soil|earth|dirt|bank)_back (?:soil|earth|dirt)_against (?:hold|holds|keep|keeps)_(?:back|up)_the_(?:soil|earth|dirt|bank|slope)
  (?:my|your)_town (?:the|your|any|this|that|every)_(?:town|city|village|state)(?:'s)?
`)

/** Words that are on a subject only beside one of a second kind, in whatever order. */
const pairs: readonly (readonly [RegExp, RegExp])[] = [
  [
    any('cables? wires? wiring pipes? tubes? clay_drain drainage services? tiles?'),
    any(
      'deeper run runs dig digging dug laid never always road gardens? hole holes ground auger deep shallow below under here hit yard garden house old dead empty live cut cutting chop move moved over tug lie lies lying years replaced plastic bend bends set against pour poured protects? lawn shock only just nothing grey yellow push aside found find near ladder soil out see through touch touched touches shovel above damaged wrap round backfill taped',
    ),
  ],
  [
    any('calls?(?!\\sfor) called calling ring rings rang rung ringing'),
    any(
      "before first ahead anyone anybody company city town county dig digging hole ground start auger big_jobs contractors? must needn't no them for_you changes who nobody",
    ),
  ],
  [
    any('lines? mains?'),
    any(
      'dead live empty hit hits hitting legal yours years moved replaced private sprinkler water gas sewer power guess trust cross crosses known ends own taken_out nicked is_clear no_big counts? count your_line is_your right_on_the are_for edge_of runs_along as_they_are advice lot decides? line_out line_is_where',
    ),
  ],
  [
    any('marks flags? flagged painted paint_on spray pins? markers? yellow_tape tape_in tape_round'),
    any(
      "old expired? faded? trust pull pulled wrong over ignore still rough_guide mean_little means_little mean means good_as rubbish litter decoration utility on_the_ground gas electric orange yellow pink blue between anywhere between the_right_one not_see didn't_see last_year last_year's lawn grass street where_your where_the_lot reach people put_it_back move in_the_way don't_count",
    ),
  ],
  [
    any('codes? rules? law standards? regulation'),
    any(
      'building local town city county fire meet meets met require required requires say says allow comply satisfy satisfies pass passes official follow apply applies worry ignore matter check never always nobody only changed change dropped old written everywhere same usual suggestions? houses other_people enforced of_thumb overcautious strictly reach every any to_the up_to',
    ),
  ],
  [
    any('latch(?:es|ed)?'),
    any(
      'pool child safe skip need needed necessary optional unlatched off remove disable prop propped tie wedge_(?:it|the_(?:gate|latch)) wedged matter without lock disabled sit_low set_low outside within_easy_reach can_reach height instead hook hooks loop',
    ),
  ],
  [
    any('prop propped propping wedge wedged tie tied hold kept keep stay stays leave'),
    any(
      'gate_open the_gate_open gate_propped gate_back the_gate_back it_open it_back gate_while gate_stays open_while stays?_back',
    ),
  ],
  [
    any('hinges? springs? gate'),
    any(
      'luxury nuisance water pond swing_free by_itself take_the_spring are_an_extra ride swing_on climb horizontal_rails',
    ),
  ],
  [
    any('climb climbing climbs fall falling falls lean ladder ladders chair'),
    any('over_it over_a over_the_wall help down outside anyone the_wall the_pole bushes fence hole rails'),
  ],
  [
    any('burn burns burnt burned burning'),
    /^(?!.*\b(?:dew|mist|fog|frost) \w* ?\w* ?burns?\b)(?!.*\bburns? off\b.*\b(?:dew|mist|fog)\b)/,
  ],
  [
    any('treated treatment preserved scraps offcuts sawdust chips? chipping chip sleepers green'),
    any(
      'lettuces? raised_beds? clean chemicals? compost mulch bedding vegetables? hens eat lunch sandpit salt mild roses feeds compost animals? food free_fuel stove clean_burn fresh_so',
    ),
  ],
  [
    any('lead old_paint flak(?:es|ing|y) peeling scraping'),
    any(
      'paint sand sanding scrape scraping burn heat heat_gun wash pressure_wash taste indoors thin lawn test testing dry too used',
    ),
  ],
  [
    any('creeks? streams? river ditch(?:es)? gutters? drains? sinks? flower_beds?'),
    any('wash(?:ed|ing)? rins(?:e|ed|ing) pour(?:ed|ing)? tip(?:ped|ping)? dump(?:ed|ing)? empty emptied emptying'),
  ],
  [any('extensions? cords? leads? power_tools?'), any('puddles? wet rain damp water dew lie lies coiled')],
  [
    any('hit hits strike strikes struck meet meets clinks? clunks? feel soft give gives resistance'),
    any('keep_(?:going|digging|at) push_(?:on|through|past) press_on go_on_digging work_round dig_round'),
  ],
  [
    any('hang load hanging mount fix fit attach'),
    any(
      'right_after_(?:the|you)_pour\\w* straight_after_(?:the|you)_pour\\w* (?:while|before)_the_(?:concrete|mix|cement)',
    ),
  ],
  [
    any('blades? bits? chains?'),
    any('reach reaching hands? under behind beside cover covers swap swaps swapping clear clearing jam jammed'),
  ],
  [any('dogs? cats? pets? heads?'), any('stuck trapped squeeze squeezes through holes? hurt')],
  [any('frost freeze freezes frozen'), any('stop_digging bother bothers short_post ignore matter matters or_no')],
  [
    any('auger machines? dig digging digger'),
    any('(?:by|near|beside|around|close_to|next_to|over)_the_(?:marks|flags|paint)'),
  ],
  [any('old_(?:coats?|paint|finish|layers?)'), any('sand sanding dry_sand scrape scraping strip heat torch comes_off')],
  [any('mix mixing cut cutting saw sawing sand sanding stain staining paint'), any('indoors')],
  [
    any('work working saw sawing cut cutting lift lifting carry carrying haul hauling dig digging pour pouring'),
    any('alone on_your_own solo in_the_dark after_dark in_one_go all_at_once hot_days? in_a_hurry'),
  ],
  [
    any('step steps ground lawn yard side area spot corner bed garden'),
    any('(?:side|area|spot|corner|ground|lawn|yard|bed|garden)_is_(?:free|clear|empty|yours)'),
  ],
  [any('forms? papers? filing'), any('later afterwards after first_and only never')],
  [any('tug tugs tugging yank yanks'), any('cords? roots? lines? cables?')],
  [any('digs? digging'), any('as_planned regardless anyhow as_normal as_usual')],
  [any('lift lifts lifting'), any('twist twists twisting faster jerk')],
  [any('tests? testing'), any("fussy isn't_worth not_worth kit money")],
  [
    any('dust dusty sawdust'),
    any(
      'natural easy settles? indoors closed never only just mind bit_of lung sweep blows? wash(?:es)? problem mask outside outdoors breath fine clears?',
    ),
  ],
  [
    any('bricks? stones? concrete pavers? blocks? cement mix'),
    any(
      'dry_sweep cut_dry cutting_dry cut_it_dry dry_cut grind_dry sweep cut_the_bricks grind bare hand_it just_mud in_the_eye your_eyes? trousers wash_your_hands breath mouth stings? nose',
    ),
  ],
  [
    any('cut cutting grind grinding saw sawing sweep'),
    any('bricks_dry stone_dry concrete_dry dry_it up_dry dry_with them_dry stones_dry pavers_dry dry,'),
  ],
  [any('eyes?'), any('splash rub rubbing grit clears squint wash always on_the_pool rinse')],
  [
    any('battery trigger blade blades nailer nail_guns? saw saws'),
    any(
      "battery_in won't_move guard point_(?:it|at|the|them) anywhere tip fires? reach_over reach_in over_the squint knee plenty one_hand your_hand wedge turns running without_glasses in_the_drizzle",
    ),
  ],
  [
    any('drill drilling drills saw sawing steady hold'),
    any('in_your_hand your_knee loose_sleeves sleeves one_hand drizzle wet_grass'),
  ],
  [
    any('lift lifting carry carrying lifts weight bags? load'),
    any(
      "alone your_back by_yourself one_arm each_arm quicker if_you're_quick strong_back man your_size don't_need_help moving light_work",
    ),
  ],
  [any('tools? saw lead extension breaker'), any('drizzle wet_grass all_right rain enough_for house_is')],
  [
    any('holes?'),
    any(
      'open uncovered weekend overnight cover covered covering uncover plastic twigs sheet_of tape climb inside stand lean down_the people night dog dogs fall falls bucket_over in_it nobody smallest deep_hole',
    ),
  ],
  [any('sides?'), any("hold_up hold_themselves by_themselves never_cave won't_cave won't_fall never_fall")],
  [
    any('auger digger'),
    any('lock lean_on your_weight push_harder harder throttle throw stand reach clear_the kick stops pipe meter aside'),
  ],
  [
    any('wind storms? gusts? weather blow blown'),
    any("can't never won't no any can_not cannot isn't_strong that_strong move_it over"),
  ],
  [
    any("paint the_cans? paint_cans? label labels maker's makers limits frost rain sun"),
    any(
      "whatever_the only_advice don't_read written_by same if_you're_quick never_minds won't_hurt midday just_advice",
    ),
  ],
  [
    any('note notes list advice below above bottom rest follows cautions that those these'),
    any(
      "concern out_of_date other_countries scroll because_i ignore apply applies beginners mind_the don't_apply doesn't_apply none_of never_mind old_rule dropped pinch_of",
    ),
  ],
  [
    any('checks? checked checking'),
    any(
      'later (?:checks?|checked)_(?:it_)?after after_(?:the_)?check afterwards end only_needed only_for can_come no_check needs_no check_once everything already nobody already for_you machines without who never_comes',
    ),
  ],
  [
    any('ask asks asking asked'),
    any(
      "later forgiveness slows only_slows pointless whether_to why if_anyone don't no_one around worth never should_ask next in_practice",
    ),
  ],
  [
    any('wait waiting waits'),
    any("don't no_use answer answers reply replies period tape other_people start_the without_waiting can_wait"),
  ],
  [
    any('fence fencing holes? digging post construction gate garden'),
    any(
      "is_exempt isn't_digging isn't_construction too_small too_low no_permit doesn't_count hardly_counts nothing_to_do a_wall the_deck (?:at|to|on)_(?:the_)?top_of_the",
    ),
  ],
  [any('careful carefully'), any("don't just_costs better so_careful too_careful costs than_careful")],
  [
    any('required needed wanted necessary'),
    any(
      "no_longer isn't not strictly any_more never don't_need_anyone tell_you no_permission need_anyone doesn't_need_to machines only_for sort_of_job",
    ),
  ],
  [any('afterwards later once after'), any('file apply sort_it do_that leave_that ask questions that_bit')],
  [any('through'), any('whatever chop keep_going cut_through tiles')],
  [any('dig digging build building built'), any('between_(?:the|them) beside_(?:the_(?!post)|a|an|it|them|your)')],
  [
    any('dig digging start starting started begin build building built'),
    any(
      'anywhere wherever today over_the right_over right_away now_and just without dig_away first,_ask anyway where_you_like where_the_old as_you_like before_they before_the_answer while_you_wait',
    ),
  ],
  [
    any('says? said tell tells told call'),
    any('it_was_there it_was_like temporary hedge trellis if_anyone nothing them_it me_there they_told'),
  ],
]

/** Sentences that wave things aside whatever they are about. */
const dismissals: readonly RegExp[] = [
  /\b(?:nobody|no one|no-one)\b(?! (?:trips|steps|has to lift|stumbles))/,
  /(?<!\badds )\bnothing\b(?! (?:else|more|(?:has |have )?chang(?:es|ed)|moves|fancy|special|to (?:trim|cut|plane)))/,
  /\b(?:anyone|anybody|somebody's|someone's)\b/,
  /\byou(?:'re| are| were|'ll be| will be) (?:all )?(?:fine|good|clear|okay|ok|cool|covered|right to|experienced|free|done)\b/,
  /\b(?:it|that|this|they|everything|all)(?:'s| is|'ll be| will be| are|'re) (?:all |perfectly |quite |just |totally |only )?(?:fine|ok|okay|all right|alright|clear|normal|nothing|harmless|yours|your|empty|dead|worth|rubbish|money|advice|mud|tar)\b/,
  /\b(?:all right|alright|be fine|just fine|is okay|are okay|is ok|okay to|ok to|fine to|fine without|do without|done without|go without|does as well|as good as|(?<!\b(?:box|pack|packet|bag|can|roll|tube|trip|load) )will do|it'll do)\b(?! (?:nicely |well )?for the (?:short |long |first |last |end |other )?(?:rails|pickets|caps|bays?|braces|ends|panels?|spacers))/,
  /\b(?:all|ground|land|area|spot|way) (?:is|'s) (?:all )?(?:clear|empty)\b|\bclear to\b/,
  /\b(?:need not|needn't|don't need to|do not need to|don't have to|do not have to|doesn't have to|does not have to|not have to|needs? no)\b(?! (?:be )?(?:measur|cut|rip|mark|buy|trim|sand|drill|notch|plan|mov|chang|mix|remember|shift|replac|match|land|line|spac|exact|perfect|order|work|recalc|redo|add|fill|sharpen|repeat|extra|trimming|cutting|ripping|spacer))/,
  /\b(?:don't|do not|never) (?:mind|tell|ask|wait|read the|call|ring|be so|need anyone|need anybody|need help)\b/,
  /\b(?:don't|do not) let (?:it|that|this|them|anyone) (?:hold|stop|slow|put|scare|tell)\b|\b(?:don't|do not) want (?:a mask|an engineer|to wait|to ask)\b/,
  /\b(?:can't|cannot|can not|couldn't|won't|will not|wouldn't|doesn't|does not|don't|do not|didn't|isn't|never|hardly|no longer) (?:ever |even |really |have to |want |like |actually |strictly |look |be )*(?:happens?|matters?(?! (?:which|how|whether))|notice|notices|objects?|complains?|cares?|minds?|applies|apply|counts?|concern|concerns|enforced?|stop you|make you|prove|tell from|hits?|look at|come|comes|do it|get hurt|get caught|go wrong|required|worth|a guard|digging|construction|really a|fails?|over|caves?|catch|fires?|dig it|charge|accept|agree|know|blow|move it|as strong)\b/,
  /\bno (?:licen[cs]e|law|rule|rules|issue|trouble|matter|problem|big|doctor|check|checks|permission|setback|one|difference|worse|storm|court|ladder|wait|engineer|guard|fence while)\b/,
  /\bno (?:[a-z]+ )?(?:rules?|laws?|codes?)\b|\bnever (?:reach(?:es)?|hits?|hurts?|meets?|touch(?:es)?|fails?|happens?|breaks?)\b|\b(?:holes?|ones?|others) (?:is|are|was|were) clear\b(?! of)|\bmeter is (?:on|over|by) \b/,
  // What may hurt is called good: “rain is fine”, “that heat is good for you”.
  /\b(?:rain|heat|wind|frost|sun|dust|sawdust|dark|ice|thunder|lightning|smells?|mud|cement|concrete|blades?|saws?|splash(?:es)?|fog|cold)\b[^.,;]{0,40}\b(?:is|are) (?:(?:quite|perfectly|just|all|always|mostly|usually) )?(?:fine|good for (?!the|your)|nothing|no problem|natural|healthy|mild|only)\b/,
  /\b(?:isn't|not|never|hardly) (?:really )?(?:worth|necessary|needed|required|strictly|a problem|an issue|digging|construction|the sort)\b/,
  /\b(?:is|are|was|it's|that's|they're) (?:only|just|merely|mostly|always|purely) (?:a |an |for |to |written |advice|suggestions?|recommend|paper|there|money|guess|scare|fine|free|allowed|deeper|the same|wood,|about)/,
  /\bas (?:[a-z]+ )?(?:as )?you (?:like|please|wish|fancy)\b|\b([a-z]+) or no \1\b|\bhowever (?:[a-z]+ )?you (?:like|please|want)\b|\bwhenever you (?:like|please)\b/,
  /\b(?:suggestions?|recommendation|a luxury|a nuisance|an extra(?! [a-z])|a rough guide|in theory|in practice|strictly speaking|free country|past caring|old wives|your own (?:garden|land|yard)|scare stories|for beginners|for contractors|for sheds|for houses|for big jobs|for other people|other countries)\b/,
  /\b(?:every|most|other|old) (?:builders?|people|hands|pros?|folks?|men) (?:does|do|never|did|don't)\b|\b(?:pros|professionals|experts)\b/,
  /\bi(?:'ve| have)? (?:already )?(?:checked|called|rang|rung|looked|phoned|asked|confirmed|am sure)\b|\bi'm sure\b|\b(?:has|have) been (?:checked|done|granted|confirmed|moved|cut off|taken out|turned off)\b|\bconfirmed (?:it )?to me\b/,
  /\b(?:could|can) go wrong\b|\b(?:rather|better) (?:to be )?quick\b|\bthis once\b|\bif you (?:must|insist|feel like)\b|\bon a sunday\b|\bact now\b|\bdig on\b|\byou already (?:know|have|did)\b|\banywhere\b|\bwherever you\b|\breplaced all\b|\buse the pick\b|\b(?:bar|pick|auger|spade) (?:down )?hard\b|\bmy way is\b|\bwall will carry\b|\b(?:pull|blow|push) (?:the post |it |the fence )?over\b|\bwhat (?:you|they) don't know\b|\bthe other way\b|\bwhether to ask\b|\bneither here nor there\b/,
  /\b(?:put|set|build|fence) (?:it|the posts|across|the fence)? ?(?:where|wherever|anywhere|across|on the (?:neighbou?r|other))\b.*\b(?:like|want|please|side|drain|room)\b|\bgain room\b|\b(?:yours|free) to (?:fence|cut|take)\b|\bbecomes yours\b|\bown business\b/,
  /\b(?:a few|some) (?:inches|feet) over\b|\bclose enough\b|\bbare hands\b|\bhold (?:it|the picket|the board) in your hand\b|\bwith (?:your|a) knee\b|\bheals\b|\bkeep moving\b|\bget used to\b|\bdries? by itself\b|\bclears? by itself\b/,
]

/** Lines that a builder draws or pulls tight, and the frost line: nobody buried those. */
const ownLines = /\b(?:frost|string|chalk|pencil|cut|cutting|level|center|centre|scribed?|saw) lines?\b/g

/** Whether the piece speaks of a caution's subject. */
export function isCautionSubject(piece: string): boolean {
  const text = folded(piece)
    .replace(/[*_"“”]/g, '')
    .replace(/\s+/g, ' ')
    .replace(ownLines, 'edge')
    .replace(/\bi (?:don't|do not) (?:yet )?know\b/g, 'i lack')
  return (
    (subjects.test(text) && !isOtherwise(text)) ||
    pairs.some(([one, other]) => one.test(text) && other.test(text)) ||
    dismissals.some((it) => it.test(text))
  )
}

/** The few sentences in which a subject's word is plainly about wood: water that pools, a moisture meter. */
const otherwise: readonly RegExp[] = [
  /\b(?:water|rain|it|puddles?)\b[^.]{0,30}\bpools? (?:on|in|at|around|against|behind)\b/,
]
const isOtherwise = (text: string): boolean =>
  otherwise.some((it) => it.test(text)) && !subjects.test(text.replace(/\bpools?\b/g, ''))
