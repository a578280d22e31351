// This file is about plain English: the words that a model may use of its own accord, one form of each. No number, and no word that only a caution needs.
// Made for this purpose by reading what is said of fences. A sentence with a word that stands neither here, nor in the vocabulary, nor in the message is not shown:
// so a figure in a spelling that nobody thought of is refused for being no word.

export const plainWords: ReadonlySet<string> = new Set(
  `
  a able about above absolute absorb acacia accept access acclimatise acclimatize accordingly account accurate achieve
  acid acre across acrylic act actual adapt add additionally adhesive adjacent adjoin adjust adjusted admire adult
  advance afford afresh after afternoon afterward afterwards again against age aggregate agree agreement ahead aim ain
  air airless akin alcove algae algebra align alike alkyd all allen alley allotment allow allows almost alone along
  alongside already alright also alternate although altogether aluminium aluminum always am america american amid
  among amongst amount an anchor and anew angle animal another answer anti anticlockwise any anyhow anything anyway
  anywhere apart apex apiece app apparent appear appearance appendix apple apply approach appropriate approve approx
  approximate apr april apron arbor arborvitae arbour arc arch arched are area aren argument arise arithmetic arm arms
  around arrange arris arrive arrow article artisan as aside ask asked aslant aspect assemble assist association assume
  assumed at ate attach attempt attention attic attractive aug auger august aussie australia australian author
  automatic autumn available avenue average avoid away awkward awl axle
  back backfill background backwards backyard bad badge bag baked balance balcony ball ballast ballpark band bands
  bandsaw bang bank bar bare barely bargain bark barn barrel barrier barrow barrowfuls base basecoat basement basic
  basically basis batch bathroom batten batter battery bay be beach bead beam bear beat beauty because become bed
  bedrock been bees before beforehand began begin begun behind being believe bell belly belong below belt bench bend
  bendy beneath benefit bent beside best beton better between bevel beveled bevelled beyond bid big bigger biggest
  bill bin bind bit bite bits black blade blank blast bleach bleed bleeding blend blew blind blister block bloom
  blotch blow blown blue bluish blunt board boards boat boathouse bob body bog boggy boiler boiling bold bolt bolts
  bone book border bore borrow both bottle bottom bought boulder bound bout bow bowed bowl box boy brace bracket brad
  brake branches brand brass breadth break breakage breathe breeze breezy brick brief bright brine bring brisk britain
  british broad broke broken broom brother brought brown brownish bruise brush bubble bucket bucketfuls buckle bucks
  buddy budget bug build built bulb bulge bulk bump bumpy bundle burn burst bury bus bush business busy but butt
  butted buy by byre
  cabin cable calc calendar calibrated calibration california call calm camber came can canada canadian candidate cane
  cannot cant cap capable capacity capital capping caps carbide card cardboard care carolina carpenter carpet carport
  carriage carry cart carve case cash cast casual cat catalogue catch category catenary caught caulk caulking cause
  cease cedar ceil cell celsius cement cent center centigrade centimeter centimetre centre certain chain chainsaw
  chair chalk chalky chamfer chance change channel chap chapter char character chatty cheap cheaper check checked
  checks cheer chemicals chest chestnut chew chicken chiefly chimney chip chisel chlorine choice choose chop chord
  chose chosen christmas chuck chunk chunky churchyard circ circle circular cite clamp clamshell clay clayey clean
  cleaner clear clearance clearly cliff climb clings clip clock clockwise close closeboard closely closer closest
  closure cloth cloudy club clump coarse coast coastal coat coated coefficient coin cold colder collar collect colon
  color colour columbia column comb combine come comfort comfortable comfy coming comma common compact compacted
  compaction company compare comparison compass complete compound compress concave concern conclude concolor concrete
  conditioner conditions cone confident confirmed confirms confuse confused connect connectors consequently
  conservatory consider consistent const constant consumption contact contain content continental contingency continue
  continuous contour contractor contradictory contrast control convenient convert convex cooked cool cooler coop
  copper copy cord cordless core cork corner correct correction corrode corrugated cosine cost cottage could couldn
  count counter counterclockwise countersink coupon course courtyard cove cover coverage crack craft crane creak
  create creek creep crest crete crew crisp critical croft crook crooked cross crossbar crosscut crosspiece
  crosspieces crossways crosswise crowbar crowd crown crowned crumb crumble crumbly crush cube cubic cup cupped
  cupping curb cure curl currency current curve curved customary cut cycle
  dab dado dadoed dam damage damp dandelion dark dash data date datum day daylight ddd dead deal dear dearer debris
  dec decay december decent decide decision deck deckboards declared decorative deep deeper deepest default define
  definite deflection degree dehumidifier delay deliver delivery demand denominator dense density department depend depends
  deposit depth derived describe description desert deserve design desire desk detail detector determine develop
  device devon dew dewpoint dia diag diagonal diagonally diagram dial diam diameter dictated dictating dictation did
  didn differ difference different differently difficult dig digger dimension dimensional dip direct direction dirt
  disagree disappears discard discount discuss display dispose distance distribute disused ditch divide do dock docket
  does doesn dog dogears dogleg doing dome domed dominate don done door doorstep dot doubt doug douglas dowel down
  downhill downpipe downward downwards drag drain drainage drape draw drawn dress dressed drew drier drift drill drink
  drip drive driven driver driveway drizzle droop drop droplets droppers drought drove drum dry dryer due dug dull
  dump durable duration during dust
  each eager ear earlier early earn earth earthwork ease easier easily easing east eastern easy eat eaten edge edition
  effect effort either elasticity electroplated elegant element elephant elevation else elsewhere embed embedment
  emerge empty enamel enclosed enclosing end endwise engine english enjoy enough ensure enter entire entirely entrance
  entry epoxy equal equation equator equilibrium equip error especially essential estate estimate even evenly
  eventually ever every everybody everyone everything everywhere exact exactly example excavate excavator exceed
  except excess exchange excl excluding exclusive excuse exhaustion existing expand expansion expect expected
  expensive experience explain exponent export expose exposed exposure extend extends extension exterior extra eye
  eyebrow
  fabric face facet facing fact factor factory fade faded fail fair fairly fall fallen false familiar family fan fancy
  far farm farmhouse farmland farther fashion fast fasten fastener fat father fault favor favour feather featheredge
  feature feb february fed fee feel feet fell felt fence fern fetch few fewer fibre field fierce figure file fill
  filler film filter final finally find fine finial finials finish fir firm firmly firmness first firstly fit fitting
  fix fixing fixings flag flagpole flaking flare flared flashing flat flatbed flatten flatter flatways flatwise flaw
  flax flew flex flexible flip float flooded floods floor flour flow flower fluff fluid flush flute foam focus fold
  folks follow font food foot footage footing footpath for force forecast forestry forever forget forgive forgot
  forgotten form formula formwork forth forward fought found foundation frame framing free freeze freezing fresh
  fresher friday friend from front frontage frost frosty froze frozen frustum full fully fun function funny further
  furthest fuss fussy
  gable gains gallon galv galvanise galvanised galvanize galvanized gap garage garden gate gatepost gateposts gateway
  gather gathered gauge gave general generation generous gentle gentler gently geometry geotextile get give given
  giving glance glass glaze glide gloss glue go goal goes going gone good got gothic gotten govern grab grade graders
  gradient gradual grain grainy gramm grand granite grass gravel gravity gray grayish great green grew grey grind grip
  grit groin grommet groove ground group grout grow grown growth grumpy gst gudgeon gudgeons guess guests guide gust
  gusts gutter gutters guy
  habit had hadn hail hair half halved hammer hand handbook handle handsaw handy hang happen happens happily happy
  hard hardcore harden harder hardly hardware hardwood has hasn hasp haste hat hatch hats haul have haven having he
  head headline heal health heap heard heart heartwood heat heave heavier heavily heavy hedge heel heft height held
  help helper helpful hemisphere hemlock hen hence her here herringbone hers hex hid hidden hide high higher highest
  hill hilltop him hinge hingepost hint hinted hipped hire his hit hoe hold hole holiday hollow home honest hook hope
  horizontal horizontally horse hose hot hotter hour house how however huge humid humidity hump hung hurdle hurricane
  hurry hygrometer hyphen hypotenuse
  i ice icy ideal ideally identical if illustrate imagine immediate imperial implausible important impress improve in
  inc inch incising incl inclination incline include inclusive increase increments indeed independent index indicate
  individual indoors infill info information infrared inherits initial injected ink inland inner input insert inset
  inside insist inspect install instance instead instruct instructions insulate insulated insulation intend interest
  interface interior interlock internal intersection interval into invite inward inwards ireland irish iron irregular
  is island isn isolated it item its itself ivy
  jackhammer jam january jar jet jig jigsaw job jog jogs join joiner joinery joint joist joke journeys joy judge jul july
  jump jun june just
  keen keep keeper kelvin kept kerb kerf key kick kickback kickboard kiln kind kinda kit kitchen knack kneepad knew
  knife knock knot knotting knotty know knowledge known kwh
  lab label labor laboratory labour lack lacquer ladder lag laid lake laminate lamp land landlord landscape lane
  language lap lapped lapse larch large larger largest laser last lastly latch late later lateral latest latex lath
  latter lattice lawn lay layer layout leach leading leaf leaflet lean leaners learn lease least leave led ledge left
  leftover legend length lengthways lengthwise lent less let letterbox level leveling lever lichen lid lie life
  lifespan lift light lighter lightly lightweight like likely lime limestone limit lin line lineal linear linseed lip
  list lit liter litre little live load loam loan local locally lock locust log logarithm long longer longest longways
  look loop loose loosely loosen lorry lose loss lost lot lots love lovely low lower lowest lumber lumberyard lump
  lumpy lunch lying
  machine made magnet mail mailbox main mainly maintain maintenance make making mallet man manage manner manual
  manufacturer many map maple mar march margin mark marker markup mason masonry mass massive mat match mate material
  matt matte matter maturity max maximum may maybe me mean meant meantime meanwhile measure measurement mechanical
  medium meet meeting melt melting member memo memory mend mention merchant merely mesh mess message met metal method
  metre metri metric mid middle might mild mildew mile mill millimetre min mind mine mini minimum minor minute mirror
  mislead misread miss mist mistake mister miter mitered mitre mitred mitt mix mixer mixture mobile model moderate
  modern modest modular modulus moist moisture molding moment monday money month monument moon more moreover morning
  mortar mortise mortised moss most mostly motion motor mould mounded mount mountain mouth move movement mow mower mtr
  much muck mud muddy mulch multiple multipliers must mustn my myself
  nail name namely narrow narrower natural naturally navy near nearby nearer nearest nearly nearness neat neater
  neatly necessary neck need needn negative neither nervous net netting never nevertheless new newer next nice nicely
  nicer nick nicked night no nobody noise noisy nominal none nor normal normally north northern nose not notch notched
  note notice noticeable november now nudge number numerous nut
  oak object obvious obviously occasion occasional occur oct october odd of off offcut offer office offset often oh
  oil ok okay old older on once one ones only onto onward onwards opaque open opening operate operator opinion
  opposite or orange order ordinary ordinate organic organise organize orient origin original other otherwise ought
  ounces our ours ourselves out outcome outdoor outdoors outer outermost outlast outlay outlet outline outset outside
  outward outwards oval oven over overall overcut overfill overhang overlap overlook overshoots oversize overtime
  overturning owe own oxide
  pace pack packet pad paddock page paid pail pain paint painter pale pales paling palings pallet palm panel paper
  parabola parabolic parallel park part partial particular particularly partly party pascal pass past patch path
  patience patient patio pattern pause pave paved pavement paver paving paw pay payload pea peak pearls peat pebble
  pebbles pedestrian peel peg pegs pen pencil penetrate penetrating penny people per percent perches perfect perfectly
  pergola perhaps perimeter period permanent perpendicular person perspective perth photo pick picket pickup picnic
  picture piece pier pigment pile pillar pilot pin pinch pinched pine pink pintle pintles pints pitch pivot place
  plain plan plane planed plank planner plant planter plaster plastic plate play pleasant please plenty plinth plot
  plug plumb plumbline plural plus ply plywood pocket point pointy poke pole polish polite poly poor pop porch porous
  position positive possible possibly post postcrete posthole postholes postmix pot pound pour powder power practical
  practice prairie pre predrill prefer preference preferred premix prep preparation prepare presence present
  preservative preservatives preserve press pressure presumed pretty prevent previous previously price pricey
  primarily primary prime primer primers print priority privacy private pro probably probe problem proceed process
  prod produce product professional profile program progress project prone prop propane proper properly property
  proportion protect protractor proud prove provide prune pry public published puddle pull pump punctuation punky
  purchase pure purple purpose push put putty puzzle pyramid
  qty qualified quality quantity quartersawn question quick quicker quickly quiet quietly quit quite quote quotient
  rabbeted race rack racked rad radial radians radio radius rafter rail rain rainfall rainy raise rake raked raking
  ram rambling ramp ran ranch random range rank rapid rare rarely rasp ratchet rate rather rating ratings ratio rattle
  raw reach reaction read reader ready readymix real really rear reason reasonable rebar rebated recall receipt
  receive recent recently recess recheck recipe reciprocating reckon reclaimed recoat recommend recommended rect
  rectangle rectangular recut red redo redone reduce redwood ref refer reference referred refine reflect refresh
  refuse regard regardless region register regiven regular regularly reinforce relate relative relax release reliable
  relied rely remain remainder remaining remark remeasured remember remind remote remove renew renewal rent rental
  repaint repair repeat repeats repellent replace reply report represent reprinted request require rescue reseal reset
  resetting resist resistant resists respect rest restain restore result retain return reuse reverse review revised
  rework rhythm ribbon rid right rigid rim ring rinse rip ripple rise risen rivals river riving road roadbase roadside
  rock rocky rod rode rods role roll roller roof rooftop room root rope rose rot rotate rotten rough roughly roughsawn
  round rounder roundness route router row rowlock rub rubber rubbish rubble run runny rural rust rustic rusty
  sack sag saggy said sail sale salt salvage same sample sand sandbox sandpaper sandpit sandstone sandy sank sapwood
  sat satin satisfies satisfy saturated saturation saturday save saw sawdust sawhorse sawmill sawn say scale scallop
  scalloped scarcity scarf scatter scattered scene schedule scoop scoot scorch scoria scottish scrap scrape scratch
  screed screen screw screwdriver scribe scrub scuff sea seal sealant sealer seam search seaside season seasonal
  seasoned seat seats secondary section secure securely see seed seem seems seen segment seldom select self sell semi
  semicircle semicolons semitransparent send sense sensible sent sentence separate separately sept september sequence
  sequoia series serious serve service set setting settle setup several severe shade shadow shady shaft shake shaken
  shakes shale shall shallow shallower shank shape share sharp sharpen sharper shave shavings shear shed sheen sheet
  shell shellac shelter shield shift shim shine shingle shiny ship shiplap shoes shook shop shore short shortage
  shorten shorter shortest shortfall shot should shoulder shouldn shout shove shovel show shower showers shown shrank
  shrink shrinkage shrub shrunk shut shy side sided sidewalk sideways sieve sight sign silt silty silver similar similarly
  simple simpler simplify simply sin since sine sink sister sistered sit site situation size sketch skew skill skin
  skinny slab slack slam slant slanty slash slat slate sledge sleek sleeve slice slid slide slight slightly slim slime
  slip slit sliver slop slope sloppy slot slow slower slowly sludge slump slurring slurry small smaller smallest smart
  smell smile smooth snag snap snow snowy snug snugly so soak sock socket sod soft soften softer softwood soggy soil
  solar sold soldier solid solution solve some somebody somehow someone something somewhat somewhere sonotube soon
  sooner sopping sore sorry sort sound soupy source sourdough south southern sow space spacer spacing spade span spare
  spark speak special species specific specify speckled speed spell spelled spend spent spf sphere spigot spike spill
  spills spin spiral spirit splash splay splice splint splinter split splits spoil spoke spoken sponge spot sprang
  spray spread spreading spreadsheet spring sprinkle sprinkled sprinkler spruce spun spur square squarely squareness
  squeak squeeze squint stable stack stage stagger stain stainblocker stainless stair stake stamp stand standard
  staple starboard start starting state stateside station status stay steadily steady steam steel steep steeper
  steeply steepness stencil step stepped stick sticker sticky stiff stiffen stiffer stiffness stile still stir stitch
  stock stockade stone stony stood stool stop storage store storey storm stormy story stout stove straight
  straightaway straightedge straighten straighter straightforward strain strap straps straw stray streak stream street
  strength strengthen stress stretch strict stricter strike strimmer string strip stroke strong stronger strongest
  struck structural structure strut stub stuck stuff stumbling stump sturdy style subbase subgrade subsoil substantial
  subtle subtotal subtract suburb suburban succeed such sudden suffer sufficient sugar suggest suggestion suit
  suitable sum summarise summary summer sun sunday sunk sunken sunlight sunny super supplier supply support suppose
  sure surely surface surplus surprise surprises surround survive swallow swampy swap swatch sway sways sweep sweet
  swell swept swing switch swollen swoop swung symmetric symmetrical symmetrically symmetry system
  table tablets tack tackle tacky tag tail tailgate tailor take taken taking talk tall taller tallest tally tamp
  tamper tamping tan tanalised tangent tangential tangle tank tannin tannins tap tape taper tar target tarp tarpaulin
  task taste tau taut tea tear teeth tell temp temperature template temporarily temporary tend tendency tenon tension
  tent term terrace terrain terse test text texture textured than thanks that thaw thawing the their theirs them theme
  themselves then there thereabouts therefore thermometer these theta they theyre thick thicken thicker thickest
  thickness thin thing think thinner this thorough thoroughly those though thought thread threads threshold threw
  through throughout throw thrown thrust thumb thurs thus tick ticket tidier tidy tie tight tighten tightly till tilt
  timber time tin tinted tiny tip tire tired title to today toe toenail toenailing together told tolerance tolls tone
  tongue too took tool tooth top topcoat topic topsoil torch tore torn torque total totally touch tough tow toward
  towards town trace track tractor trade traditional traffic trail trailer train trammel trample transcribed transfer
  transform transition translate translucent transparent transport trap trapped trash travel tray treat treated
  treatment tree trellis trench trend trestle trestles triage trial triangle trick trigger trim trip tropical tropics
  trousers trowel truck true truer truly trunk try tube tuck tuesday tung turf turn turnbuckle tweak twine twist
  twisted twisty tying type typical typically
  ugly ultimate ultimately unbroken uncoated uncommon uncovered uncut under undercoat undercut underlying underneath
  understand understood undiscounted undo unequal uneven unevenly unfasten unfinished uniform unique unit unknown
  unless unlike unlikely unload unnamed unopened unpainted unplaned unroll unseasoned unsure until untouched untreated
  unused unusual unwritten up uphill upkeep upper upright ups upset upside upward upwards upwind urethane us usable
  use useful using usual usually ute
  valid valley value valve van vapour variation variety various varnish vary vehicle vent verandah verdict verge
  verses version versus vertical vertically very via vibrate video view vine vinegar vise visibility visible visibly
  vision visit visitor visual vocabulary voice volts volume
  wagon waist wait walk walkway wall wallpaper wander wane waney want warm warmer warmth warning warp warped was wash
  washer wasn wastage waste watch water waterproofer wave wavy wax way we weak weaken weaker wear weather weathered
  weave wedge wednesday weed week weekday weekend weigh weight welcome weld well went were weren west western wet
  wetter what whatever wheel wheelbarrow wheelchair wheelie when whenever where wherever whether which whichever while
  white whiter whitewash whitewood who whoever whole whom whose why wich wick wicket wide widen wider widow width
  wiggle will willing win wind winding window windy wing winter wipe wire wise wish with within without wobble wobbly
  won wonder wonky wood wooden wool word wore work workable workbench workday worker workers workshop world worm worn
  worse worst worth worthwhile would wouldn wound woven wrap wrench wrist write written wrong wrote
  yard year yellow yes yesterday yet yew yield you young your yours yourself yourselves
  zinc ziptie
`.split(/\s+/),
)
