// This file is about what words weigh, alone and two by two, for caution-sense.ts: above 0 they speak for what only the program says.
// Made by `npm run teach -- guard` from tests/src/guard/contradictions.txt and harmless.txt; a test holds it to them. `^` begins a sentence, `$` ends it.

export const cautionWeights = `
  2.4 no
  2.0 nev, pip
  1.9 *, cabl
  1.8 fin, rul
  1.7 enough, kid, right, wir
  1.6 can, just, noth, of so, only, stand on
  1.5 ar, as a, burn, carry on, guard, in th, is, nobody, old, peopl, sweep, you can
  1.4 ^ it, fr, gas, main, need not, noth $, prop, their, top of, whil
  1.3 ^ tak, ash, by th, it, th wir, through th, troubl, wil
  1.2 ^ carry, ^ they, and carry, boundary, children, dust, hand, hold th, is mor, need no, rag, th kid, up aft, wo, wo not, you $
  1.1 ^ th, and do, ap, ash from, barbecu, deep than, dig $, is no, on your, run th, say, th aug, th pool, ther
  1.0 ^ ash, ^ thi, ^ you, aft $, and it, anyon, ar for, blad, build, can run, careful, cement, clear, could, flag, for you, gat open, harmles, heat
  1.0 if it, in your, insulat, is empty, no on, offic, old paint, on their, picket fenc, pool, post on, prop th, so you, stand, stop, tak th, th blad
  1.0 th check, th lin, th treat, that $, town, treat, you down
  0.9 ^ prop, ^ run, a bet, a rail, a ston, alway, be, can be, can not, check, climb, company, council, dig, don, door, down th, empty $, enough $
  0.9 feed, fenc, fenc $, gun, i look, ignor, in $, in and, insulat $, is a, it mak, lead, leav th, lift with, lik that, littl on, mask, may, mind, my
  0.9 neighbor, not, out in, pain, party, pas, reach, round th, rul $, sawdust, start th, steady, th drop, th main, th offic, thi $, thos, ti, us th
  0.9 wait, wal, with th, with your
  0.8 ^ do, ^ ignor, ^ just, ^ look, ^ old, a picket, a pip, about, afterward, afterward $, and sort, as long, bag $, between you, blad to, by itself
  0.8 don $, dry it, empty, feel, find, glov, good for, green, hard, hit, hous, hurt, is wher, keep going, kn, kn and, lad, last year, law, liv
  0.8 long as, look at, lot, may stand, money, not both, oily, on it, paint of, pas $, smok, stak is, stov, tap and, th boundary, th sawdust, th scrap
  0.8 th spray, th way, th yellow, they wil, thing, to it, up by, wherev, work as, work of, year, yellow, your kn
  0.7 ^ cabl, ^ children, ^ climb, ^ glov, ^ hold, ^ no, ^ put, ^ ti, ^ treat, and you, anyth $, ar to, cod, cut $, dril $, drop $, drop th, easy
  0.7 far deep, fast $, garag, get th, glas, ground is, indoor, inspector, is clear, is fin, is only, it al, know, lat $, lik $, lin, map, neighbour
  0.7 night, night $, not need, of with, oth, over th, plastic, plug, pour, quick $, rail at, right on, scrap, somebody, sort, spr, stov $, tel th
  0.7 th ey, th flag, th pip, th utility, thi, thumb, toddl, trust, utility, vegetabl, warning, wash, whil you, yellow tap, you may
  0.6 ^ lift, ^ most, ^ pul, ^ rul, ^ sweep, ^ wash, a cut, a mask, a toddl, advic, al that, alon, and dig, ask, away, bed, been, big, bother, buri
  0.6 burn th, can start, careful $, carry al, chanc, child, clear $, cut lin, dog, end $, enough for, fenc so, flak, fog, fog up, going, gras is
  0.6 harmles $, has been, heavy gat, hot, it com, lik, littl, liv $, manhol, mind th, motor, nail gun, on th, only a, over, overnight, permission
  0.6 permission $, permit, phon, pip $, plenty $, rag in, rid, saf, safety, sensor, simp, sleeper, smal, stil, tak it, tap round, th cabl, th dog
  0.6 th garag, th gas, th guard, th inspector, th lad, th manhol, th old, th shovel, th stov, than you, them in, ther $, til, to keep, to reach, used
  0.6 warn, was, what th, wher you, whil th, wil hold, your
  0.5 ^ burn, ^ cement, ^ dry, ^ feel, ^ frost, ^ on, ^ rins, ^ smok, ^ wedg, ^ work, a blind, a bucket, a fenc, a metal, al right, and go, anybody
  0.5 anywher, ask $, ask forgivenes, away $, bed $, below $, bin, bin $, blind, blind ey, blow, board with, brush out, can com, can sit, caution
  0.5 children learn, clos hing, cord, count $, cut as, deck $, do, do not, drop, edg $, electric, exempt, ey to, finish th, first ask, forgivenes
  0.5 form, from treat, gain, good, grip $, guard of, hang on, hard matter, has, hav, hear, heat $, height is, his, hol open, hol whil, hous $, i check
  0.5 if you, in on, is alway, is enough, is harmles, is noth, is plenty, is smal, it keep, keep your, kid help, kindl, land, lat, learn, learn to
  0.5 leav them, legal, let th, licenc, lin is, lock, look for, mak no, mat, metal, mor than, next door, not ap, not hurt, not want, noth is, notic $
  0.5 oily rag, on go, onc it, only if, open overnight, oth sid, overhead, overnight $, own, pet, pet wil, pond, pool gat, post hol, pow, pul out
  0.5 put som, replac, rins, root and, salt, salt $, scrap $, se it, se th, self, self clos, septic, sid of, sleev, slow you, so leav, stain into
  0.5 start dig, strict, suggestion, suggestion $, survey, surveyor, th bin, th deck, th dig, th dust, th form, th hol, th law, th neighbour, th outsid
  0.5 th paint, th pet, th pond, th saw, th sensor, th septic, th survey, th trig, th vegetabl, th warning, th wat, th weekend, that corn, thought
  0.5 thought $, to you, today, treat wood, trig, troubl $, try, turn a, view, wat main, way, way $, wedg th, weekend, weekend $, wher your, wil do
  0.5 wil stand, without, without a, work $, you don, you dril, you know, you lik, you should, you wait, you work
  0.4 ^ bar, ^ build, ^ ear, ^ fenc, ^ lean, ^ let, ^ mov, ^ my, ^ nobody, ^ point, ^ smal, ^ stack, ^ stand, ^ thos, ^ trust, ^ tug, ^ us, a child
  0.4 a loop, a pinch, a rough, a spr, a suggestion, a wast, accept, afternoon, allow, alon $, already, already know, alway say, and cut, ap to
  0.4 ar good, ar only, as tal, aug $, bar hand, begin $, being, bet $, bit $, bit of, block th, boot, boundary $, break it, build first, cabl can
  0.4 can it, carry, cav, cav in, chip, cod $, concret go, day $, differenc $, do it, dog can, drain $, dry as, dug, ear plug, easement, enough to
  0.4 everyth her, everywher $, exempt $, ey, fir, first and, for th, forget, fr $, fum, fum ar, gas smel, gat motor, giv a, go $, go with, go wrong
  0.4 going $, hand ar, harm, has no, hav to, hedg, her is, hit someth, hol is, homeowner, hot day, ignor th, is al, is buri, is good, is just, is left
  0.4 is legal, is your, it a, it back, it help, it quick, itself, just as, kid can, kindl $, kneel, kneel in, know wher, lift, lin ar, littl $, local
  0.4 loop, loop of, lov, machin, mak you, mark, matter, mean noth, met $, mix th, mov th, must, no differenc, no long, not mak, of oily, of salt
  0.4 offcut, old fenc, on person, onto, onto th, or no, over $, own land, patch, patch $, person, person can, pinch, pinch of, pit, plug ar, pour $
  0.4 rail to, rais bed, reach th, requir, row $, sam $, scrap th, se $, servic, shallow, shovel, sid to, skin, skip, slip, smok whil, so dig, so pick
  0.4 someth, speak, stack th, stay open, sun $, tal as, th drain, th driv, th fir, th flak, th fum, th green, th list, th oth, th pin, th pow, th rag
  0.4 th row, that alon, ther befor, thi meet, thrown, ti th, trust your, tug, turn, und thi, utility company, walk, wast of, wel as, with that
  0.4 work from, worth th, would hav, you already, you liv, you slip, you would, your own
  0.3 ^ chang, ^ get, ^ hand, ^ kid, ^ privat, ^ reach, ^ stor, ^ their, ^ turn, ^ wear, ^ wet, ^ whoev, a bag, a bit, a board, a corn, a formality
  0.3 a heap, a heat, a short, a smal, about a, about lin, aft a, afternoon $, against th, ago, ago $, an afternoon, an engin, any, anyon $, anyway
  0.3 anyway $, ar $, ar alway, ar exempt, ar fr, ar no, ar old, as good, asid, aug, back to, back wil, backfil, backfil $, be fin, been don
  0.3 befor they, bend $, bit, brac whil, cabl $, can leav, car about, city, colour, com of, corn lot, cov, deep, detector, dig right, disregard, do as
  0.3 dri, driv th, driver, dry $, dug ther, engin, ever, everywher, exaggerat, exaggerat $, far, few cut, fin $, fin for, fin to, find everyth
  0.3 firewood, firewood $, first to, for big, formality, fr of, from last, garag $, get used, giv $, go of, go on, good $, good enough, grab, gues
  0.3 guest, guest $, guid, gun tak, hand dig, harm $, hav guest, heap, heat gun, hedg is, help with, hol nev, hold $, hook wil, hous to, into th
  0.3 is as, is dead, is exaggerat, is fr, is money, is okay, is to, it as, it clear, it on, it wil, job $, lad on, lawn $, lawyer, lawyer $
  0.3 lead paint, lean th, leav that, lik thi, lot ar, machin $, mark ar, mat $, may go, mean it, measur a, metal detector, mild, modern, money $
  0.3 much th, mud, mud $, mulch, nev in, no harm, no need, not dig, not mind, not se, not worth, noth can, notic, of a, of for, okay, on its, on thi
  0.3 out of, outdoor, over it, paint in, paint is, pap, pap $, paperwork, past, picket end, plug in, pool $, pool is, pressur, pressur wash, print
  0.3 privat, privat lin, problem, program, property, property lin, prov, prov it, put it, rain wo, rais, remark, replac th, requir $, rest on, rins th
  0.3 road, root, rul ar, rul do, run along, saf $, sand th, say it, servic lin, set it, settl $, shallow to, shut, sort th, spray, squeez
  0.3 squeez through, stain $, stop $, stor th, storm, strip is, survey is, talk, tap in, th ash, th caution, th council, th electric, th hous
  0.3 th level, th mark, th met, th nail, th oily, th paperwork, th pit, th program, th property, th road, th stak, that rul, thos remark, tip, to cal
  0.3 to find, to go, to picket, to shallow, to stop, treat board, trust me, until it, used to, vegetabl $, wait for, wash th, wat $, whatev, whenev
  0.3 whenev you, whoev, with plastic, worry, would be, written, wrong, yard $, year ago, you could, you feel, your hand, your neighbour, your sid
  0.3 your town
  0.2 ^ an, ^ any, ^ corn, ^ easement, ^ everyth, ^ fresh, ^ gas, ^ leav, ^ modern, ^ permit, ^ railway, ^ scrub, ^ setback, ^ skip, ^ warning, ^ what
  0.2 a gas, a hol, a permit, a pool, a post, a surveyor, abov, again $, ahead, allow $, along it, and nobody, any mor, ar fin, ar insulat, ar just
  0.2 ar ther, ar written, around a, as they, asid $, association, at fenc, at it, back with, beginner, beginner $, best, board on, both th
  0.2 bottom rail, breath, build it, builder, busines, busines $, but root, cal is, can swing, can ti, can wait, can watch, catch th, caution do
  0.2 cement is, chair, check $, child can, climb $, concern, corn $, country, creosot, dang, dead $, deck, deed, deep hol, deep in, depth is, dig on
  0.2 district, dizzy, dizzy in, down ther, dril, edg of, engin for, extension, ey clear, feel dizzy, fenc ar, fenc can, fenc is, fenc lik, fenc thi
  0.2 fit th, for a, for beginner, for fenc, for hous, for shed, formality $, garden is, gas is, gas lin, gas pip, gat by, gat can, gat do, gat wil
  0.2 get in, go ahead, go as, go by, goggl, good as, good kindl, guard back, hal, hand $, hav told, herb, herb bed, hing ar, historic
  0.2 historic district, hol befor, hous so, in a, in that, is exempt, is ther, it and, it if, it is, it just, it only, it say, it that, it your, itch
  0.2 itch a, job, know $, land so, latch can, lead in, lean, leftov piec, level $, long rail, loos sleev, low $, ly, mak, mak fin, mak good, mark $
  0.2 meet cod, met is, mind a, mix $, morn $, mov, no lead, no problem, no wors, nobody at, nobody walk, not be, not get, not help, noth und, of
  0.2 of an, of wir, of your, offcut $, old $, on on, on top, onc you, only itch, other, overhead lin, own garden, peg, peopl $, peopl next, perfect
  0.2 permit ar, pip ar, pip is, post as, post over, pow lin, previou, previou own, put, railway, railway sleeper, reach anyth, real, red, right $
  0.2 root $, rubbish, run on, saw, saw so, scrub, setback, setback ar, shallow hol, shed $, sit low, skip th, sleeper ar, soil back, splash in, stak
  0.2 stil good, strong, swing, telephon, test, th bar, th big, th colour, th deed, th easement, th hedg, th homeowner, th mask, th motor, th not
  0.2 th offcut, th other, th overhead, th peopl, th previou, th shed, th skin, th smal, th town, th verg, th wait, th wind, that gap, that shallow
  0.2 ther but, ther no, thi fenc, thi height, thi low, thi wil, thos not, to build, to catch, to dig, to stay, told you, top $, treat scrap, trench
  0.2 tub, tub is, und, und ther, up th, us it, verg, verg $, wait is, wait til, walk ther, watch $, wel in, wet concret, wet gras, what it, wherev you
  0.2 whit, who, wil tak, wir $, wir ar, with no, with str, without troubl, wood to, work alon, worry about, wors, wors than, yard is, you about
  0.2 you ar, you do, you hit, you quick, you wher, your bar, your land, your post
  0.1 ^ driv, ^ hav, ^ lins, ^ measur, ^ mix, ^ nail, ^ onc, ^ overhead, ^ pour, ^ pressur, ^ rub, ^ shallow, ^ stain, ^ swing, ^ test, ^ that, a clean
  0.1 a quick, a splash, a wal, about it, abov ar, against it, and se, any $, ar and, ar high, ar rar, area, aug wil, back so, befor $, befor and, bend
  0.1 besid th, big builder, big deal, blow away, build ther, but it, by $, cabl ar, cal, can do, can go, can rely, cap $, car, car $, catch fir
  0.1 cement on, clos, contractor, country $, cut end, deal, deal $, deed is, dig work, down, drainag, driv, dry mix, eat, eat your, enforc, every rul
  0.1 everyon, exact, fenc keep, fenc wil, few inch, fir on, flag ar, flow, flow bed, for contractor, for lat, for machin, for oth, frost depth
  0.1 gap lik, garden hos, gat and, gat is, get, get of, go, go eith, go through, gon, gras, happen, hard $, harm anyon, hav a, help to, high
  0.1 high enough, hos, hurt a, hurt anyon, in as, in sum, inch, inch over, inspector wil, insulat so, is clos, is exact, it go, it hold, it out, it so
  0.1 itself $, just build, just say, just suggestion, know wo, latch, latch $, lawn, light, lin $, lins, lunch, lunch with, mark from, mov it, need
  0.1 need to, nev hurt, nev notic, nev reach, no big, no od, no permission, no pip, no say, no troubl, nobody se, non, non of, not becaus, not do
  0.1 not for, not hav, not let, not mat, now and, od $, of thumb, offcut in, offic is, old gas, old picket, only for, open whil, oth peopl, other $
  0.1 out by, out last, overhead wir, paint mark, paint on, pap and, pick th, plenty, point th, pool fenc, post against, post with, pow $, preservativ
  0.1 problem $, put th, reach over, rely, rely on, rest $, right to, round it, row, rub th, rul of, rul ther, sawdust on, say in, show th, show wher
  0.1 sit in, so a, so us, someon, spad, splash, sprinkl pip, stuck, swim, swim $, swing th, swing to, tap is, th afternoon, th brush, th flow
  0.1 th heavy, th lot, th phon, th view, th wal, than a, than it, than your, that bit, that for, that old, that pip, their own, them aft, them for
  0.1 thos wir, through a, throw, ti a, to ask, to climb, to fenc, to much, to worry, touch them, treatment, und your, up, was ther, way is, wedg, wer
  0.1 wet cement, whatev is, wher th, whit paint, wil just, wil nev, wil not, work round, worth, written for, you level, you wo, your fenc, your lunch
  0.1 your neighbor, your street, your yard
  -0.1 ^ ad, ^ ask, ^ brac, ^ brush, ^ cal, ^ cedar, ^ fasten, ^ giv, ^ lin, ^ picket, ^ pil, ^ pr, ^ prim, ^ replac, ^ say, ^ sight, ^ sinc, ^ slop
  -0.1 ^ so, ^ spread, ^ sprinkl, ^ stag, ^ tighten, ^ wid, ^ wind, a can, a chalk, a few, a gap, a garden, a hand, a jigsaw, a middl, a nail, a rak
  -0.1 a screw, a sheet, a slight, a stick, a stop, a straight, a tight, a touch, about th, ad a, ad it, ad up, aft, aft they, against, agr, agr $
  -0.1 and box, and finish, and is, and keep, and noth, and that, and trim, and us, any of, anyth els, ar a, ask mor, at both, at each, bank, bark
  -0.1 bark sid, bay on, be th, befor th, begin, best timb, between them, board befor, board cup, board is, board out, both direction, bottom and
  -0.1 bottom hing, bow fac, box, brac each, brac on, brac th, break, cam, cam out, can ad, can togeth, cap keep, chalk $, chalk lin, clamp to, clean $
  -0.1 coat or, colour match, concret so, corn and, corn is, count of, cup mor, deep you, did not, dig th, dip $, direction, do for, dril near, driv a
  -0.1 dry befor, dry ground, els $, end befor, end every, end up, even gap, every bay, every board, every tim, fac of, fasten any, feel $, few board
  -0.1 flush $, fresh paint, frost, gap to, gap would, garden, gat on, go in, grain and, gras $, ground fal, had, had tim, hair, hav had, height
  -0.1 height of, hing sid, hol first, hol tak, hold up, how deep, how much, how th, i hav, in both, is in, is nev, is stil, is what, it get, it giv
  -0.1 it would, jigsaw, keep rain, last gap, lay th, leftov, length befor, let wat, level lin, level on, lin acros, lin do, long picket, look befor
  -0.1 lot $, mark th, me th, measur $, measur between, measur th, meet th, middl and, middl rail, mix set, mov $, mow strip, much, much wat, nail at
  -0.1 not go, notch, noth to, now, now $, of $, of post, offcut for, on board, on sit, own $, parallel, parallel $, part bag, picket clear
  -0.1 picket from, picket on, picket to, picket with, picket would, pil th, plan $, plumb on, plumb th, pok, post com, post for, post go, post hav
  -0.1 post in, post or, post so, post stay, post then, pr, pr dril, pul from, pul it, quick and, rail follow, rail keep, rail that, rail up
  -0.1 rail would, rain out, rain run, rath, room, round, rub, run and, said th, sam end, screw at, set on, shed, sheet, short on, sid and, sid with
  -0.1 sight, siz $, slid, slop $, slow so, smel, so measur, so rain, so ther, soil $, someth to, stack so, stag, stag th, stand th, stay on, sticker
  -0.1 stiffen, ston $, strip keep, swap, swap th, tak of, tal picket, th bark, th best, th centr, th depth, th dip, th dry, th garden, th gras
  -0.1 th height, th joint, th land, th latch, th lawn, th leftov, th sid, th soil, th step, that has, then fil, thes, they, through, tighten th
  -0.1 tim to, to finish, to follow, to set, tool befor, top and, top ar, top from, top so, trip $, until th, up a, us coat, us screw, us wid, watch
  -0.1 way of, weath $, weight $, went, went up, wet edg, wet it, what they, whil it, wid bay, width th, wil get, wil se, with thi, wood dry
  -0.1 yard wheth, you buy, you chang, you did, you hang, you screw, you start, you tak, you th, your back, your ear, yourself $
  -0.2 ^ bend, ^ bevel, ^ board, ^ clamp, ^ clay, ^ gravel, ^ plant, ^ rak, ^ rest, ^ rip, ^ shar, ^ soak, ^ squar, ^ strap, ^ tel, ^ thin, a cap
  -0.2 a dab, a spad, a thin, aft you, again when, amount, an, an old, and check, and lift, and mov, and pin, and shar, and then, and ther, anoth
  -0.2 ar hung, as, as wel, ask th, at th, bag at, bas $, batten to, becaus you, bend a, best when, bevel, bevel th, board for, board from, both
  -0.2 both end, bottom to, bring, bring th, brush anyth, brush th, buy $, buy them, can fil, can stay, carry mor, catch, chalk, chang $, clamp a
  -0.2 clear of, cloth, concret $, crown, cup $, cut, cut to, dab, dab of, decid how, diagonal of, did, dig is, drain away, draw th, drawn, dri on
  -0.2 dry on, dust $, each picket, each rail, each sid, easiest, edg with, error, fac and, fal $, figur below, fil in, firm, flush, follow $, for how
  -0.2 from scrap, front run, gap $, gat aft, gat with, going back, grain $, gravel at, hang th, has to, hav fil, heav, help, help mak, hid th, hing $
  -0.2 hing corn, hol with, hook $, hous is, how wid, hung, hung $, if th, instead $, is cut, is for, is gentl, is normal, it along, it cur, it down
  -0.2 it from, it was, joint over, keep dry, leav between, left $, left out, let each, let it, level even, lift it, list of, long tap, long than
  -0.2 look best, mark so, match $, match th, measur every, middl of, mix has, mor easi, mor of, narrow hol, near, need tal, normal, not split, numb th
  -0.2 od, of befor, of each, on each, onc $, onc th, only get, out $, out even, outward $, picket first, picket of, pin it, plan th, plan you, plant
  -0.2 play, plumb again, post by, post if, practic, prim th, quick, rail ar, rail if, rail in, rail into, rail on, rail sit, rak th, rip th, ris
  -0.2 run straight, sam as, sandpap, sandpap so, sav on, sawn, scallop, scrap and, screw th, screw that, set post, shar equal, shar out, shar th
  -0.2 sheet $, sid out, sight down, slop th, so and, som, spac on, sprinkl a, squar and, squar th, squint, start at, step it, stick to, story, str and
  -0.2 tabl, tak them, th bow, th crown, th day, th easiest, th first, th high, th limit, th long, th od, th plan, th point, th prim, th wid, than on
  -0.2 that, ther ar, they do, thick, thin batten, through it, tighten, tim so, to and, to draw, to hang, to screw, touch th, trac it, unles, up if, us
  -0.2 want th, warm, wat drain, wat on, wear, weight, wet so, what is, what you, wheth th, wid hol, wid picket, with it, with sandpap, within th
  -0.2 work outward, work toward, would, you, you cut, you driv, you pour, you sav, you se, your board, your ey, your gat, your hol, your picket
  -0.2 your str, yourself
  -0.3 ^ al, ^ begin, ^ both, ^ choos, ^ coat, ^ cov, ^ fil, ^ for, ^ hang, ^ is, ^ paint, ^ plumb, ^ ring, ^ rough, ^ screw, ^ set, ^ sort, ^ step
  -0.3 ^ wait, ^ wher, ^ writ, a bay, a bright, a brush, a fresh, a good, a lean, a pencil, a sharp, a stain, a stif, a tim, abov th, acros, ad
  -0.3 again aft, al along, alik, alik $, already $, an extra, and leav, and rest, and stak, and strong, and trac, and wip, as you, at onc, aug is
  -0.3 back of, bay from, becaus th, begin at, behind $, below th, bet, block to, both fac, both run, bright, bubbl, can dig, can drop, can se, choic
  -0.3 clay hold, clos to, coat dry, coat soak, concret is, count as, count her, count th, cov th, cover, cut a, dat, depth and, dif, dip in, distanc
  -0.3 down on, drink, drink mor, dry to, each bay, each mark, eith, end gap, extra, fast, fast so, fil it, fil th, finish, finish on, first so, fit
  -0.3 for each, for loos, for no, for that, from acros, from th, front $, gat, gravel und, grey, grip bet, ground $, ground th, group, guid $, hand is
  -0.3 hardwar, haul, help you, hing on, hol ar, hol depth, hold a, hous and, i took, if a, if that, in thi, is and, is how, is paint, is slow
  -0.3 is steep, is why, it again, it dry, it fal, it over, it stif, it to, just clear, kept, kerb, kerb $, knot near, lean post, les than, lik it
  -0.3 lin up, longest, lumb, lumb yard, mad of, mean, middl $, morn, mow along, nail grip, need for, next to, nic, not $, not mov, not open, numb
  -0.3 numb of, on both, on dry, on is, onc they, or stainles, ord th, out on, out with, over al, paint th, pal, pal and, pencil $, picket $, pil
  -0.3 plain steel, play on, post and, post carry, rar, ring, rol, said, sam gap, sav you, shad so, shady, shady sid, sharp pencil, short of, shrink
  -0.3 sit, slight $, slow $, slump, smel is, so giv, stand in, steep $, step th, stock, ston, straight $, strap, street, stretch a, stuf, sun, tak a
  -0.3 tak up, th back, th bubbl, th figur, th finish, th fresh, th frost, th kerb, th last, th longest, th lumb, th measurement, th mow, th new
  -0.3 th shady, than smooth, that smal, them do, through $, tight, timb for, to fast, to lift, took, took th, top edg, top on, trac, tru $, und th
  -0.3 underneath, wel $, wel and, wet, wet th, wher each, wid board, wood $, wood so, wood tak, work in, work it, writ th, you hav
  -0.4 ^ brick, ^ clean, ^ compar, ^ dril, ^ flat, ^ hing, ^ lay, ^ rain, ^ sand, ^ to, ^ wood, a curv, a dip, a gat, a mitr, a narrow, a steep, a wid
  -0.4 al th, and i, and let, and pul, and tak, anyth on, around, around it, aug mak, back from, back in, bead of, befor it, below show, between th
  -0.4 bil, board and, board ar, borrow, bottom of, bought, bought togeth, brac of, bundl, but th, by hand, by length, cap on, centr, clamp, clean
  -0.4 com out, compar, cup, cut list, decid, depth $, diagonal $, each hol, easi $, easy to, end grain, equal, every picket, everyth, fac out
  -0.4 fast than, first coat, flar, flat $, gap is, gap so, gent, get a, go back, go up, hav th, head, heavy, help can, hol, hol $, hol th, i left
  -0.4 in treat, is $, is an, it against, it do, just th, knock, knot, know th, lay, light and, lin post, list, long length, look $, mad, match, me if
  -0.4 mean mor, meet, mention, mitr, mow, nam, nam $, need $, next $, nic $, not mention, of it, oil, oil th, old post, on $, on a, on an, on with
  -0.4 onc, only th, open as, out th, outsid, outward, over a, paling, picket and, piec $, point, post deep, post you, pul a, rail and, rail carry
  -0.4 rest th, root ar, rough, sag, sand, sand light, say $, say so, screw $, se how, several board, shift, should, sinc you, smal differenc, so air
  -0.4 so keep, so wat, spot $, spr and, spray is, spread, stack, stak $, stand back, start $, start with, stay put, steep bank, stick carry, stif rail
  -0.4 story stick, streak on, stretch, sum $, templat, th arch, th bil, th board, th cost, th far, th rest, th screw, th short, th ston, th story
  -0.4 th street, th sum, th sun, th usual, th weath, th weight, th width, th yard, th year, than th, that ar, that it, ther is, they wer, tim, to for
  -0.4 to hold, to se, told, top lin, top rail, toward, toward th, und it, up damp, upright, wedg whil, wer $, when you, wher it, whol run, wid $
  -0.4 width of, wil look, wind, wind $, you fasten, you fix, you hold, you stop, your tap
  -0.5 ^ bag, ^ between, ^ concret, ^ eith, ^ galvanis, ^ mak, ^ pick, ^ plan, ^ rent, ^ stainles, ^ stir, ^ tamp, ^ ther, ^ timb, a barrow, a finish
  -0.5 a friend, a gentl, a lin, a spac, a str, a timb, a trim, acros th, act, aft th, al, and a, arch, at a, aug for, bag that, bar and, bay tak, bead
  -0.5 can carry, can get, cedar $, check that, coat $, corner ar, cost, cur $, cut th, damp $, down $, down in, dry wood, ear, ear $, end of, even $
  -0.5 fal, fasten, fil low, finish $, fix th, follow from, for thi, for your, friend, friend to, frost lin, ful, galvanis, gat that, ham, handy
  -0.5 handy $, heavi, her $, in it, in spr, is cheap, is heavy, it $, keep, keep a, lap, larg, latch sid, layer, leav room, length $, les so, lift th
  -0.5 lin so, long board, loos, low, low hing, mak a, measurement, met, met read, most $, not count, not dry, not just, of concret, of them, on that
  -0.5 open at, piec, piec first, pin $, plac $, plain, rent, rest, se them, se what, sel, separat, settl, several, shad $, short bay, sid $, siz
  -0.5 sketch, slight, slow part, so they, spac block, split $, spoil, stain wil, start on, steel, stir, stir th, str $, streak, swing $, taken
  -0.5 taken out, tamp th, tel you, th answ, th bas, th bucket, th curv, th cut, th even, th head, th next, th on, th open, th slop, th slow, th spoil
  -0.5 th stack, that com, that leav, thin, to help, to thi, treat pin, undo, upright $, want $, want for, want to, wash $, wid than, width $, wint
  -0.5 wip, wip of, within, work is, work out, yard, you brush, you said, your bay
  -0.6 ^ follow, ^ oil, ^ snap, a turnbuckl, an open, and work, angl, answ, apart, ar not, ar quick, as far, bag you, batten, belong, below for, bet in
  -0.6 between coat, black, both sid, brush it, cap, cheap, corn, corn post, dew, dip, end post, exterior, fac $, far as, few, follow th, garden $
  -0.6 get pul, giv you, good sid, gravel drain, heartwood, i, in, leav, leav a, leav som, limit, load $, look, low spot, me about, me how, most, nail
  -0.6 on edg, on them, paint do, pallet, pencil, plac, post ar, pric of, prim, rack, rain, rot, screw hold, set $, set th, sharp, shed wat, shim
  -0.6 show $, sinc th, slack, slow th, snap, snap a, so that, soak in, som slack, stainles screw, step, straight on, street $, tamp, tap, th bag
  -0.6 th cap, th earli, th edg, th gat, th good, th layout, th load, th pric, th quot, th straightest, them $, they ar, timb $, to, to cut, told me
  -0.6 trim th, und a, until, us a, wast, what, what your, when th, with an
  -0.7 ^ her, ^ mark, ^ noth, ^ ord, ^ post, ^ rock, ^ round, ^ start, ^ which, ^ with, a, a dig, a littl, a step, and look, back and, bas, be rip
  -0.7 below, block, bord, bow, brick on, by ey, cut with, day, differenc, different, dig bar, dry spel, earli, ey $, fil $, first, fixing, from, front
  -0.7 gat swing, gentl, giv th, glu, ground, hang $, hid, hold, hold its, is by, is hard, is taken, it start, its shap, laid, let, lin on, most of
  -0.7 neat $, need and, next, open $, out, paint $, part, picket ar, post $, post is, pric, push, quick but, reason, reason to, run $, shap, so th
  -0.7 soil, soon than, spel, split, surfac, tak $, tap $, th corner, th deep, th differenc, th draw, th fram, th gravel, th low, th rul, th surfac
  -0.7 th timb, them, total, touch up, trail, trip, tru, turnbuckl, up $, usual, want a, whol job, wood is, you measur, you through
  -0.8 ^ buy, ^ read, ^ trim, a help, a level, air, along $, as it, becaus, chang, depth, dig to, do you, fenc need, hang, hol width, how it, if they
  -0.8 includ, last, last $, layout, long, mak th, new, of th, plan, post that, pul, rak, shad, shar, sinc, smooth, soft, spar, stainles, start to
  -0.8 stay as, steep, straightest, tel, th can, th shad, th spac, that th, to $, until you, wel, wheth, writ, you ask
  -0.9 ^ dig, a dry, a long, again, along, an aug, and th, as th, at, bottom, cedar, com from, com to, delivery is, divid, draw, dry, each post
  -0.9 easi to, edg, fix, her, holiday, in al, is not, left, me, moistur, noth els, of wat, open, panel, pay, quot, rip, rock, se, short, so it, soak
  -0.9 solid, spacer, stand $, stick, sum, th barrow, th bottom, th concret, th diagonal, th front, th grain, th ground, th mix, to th, touch, wher
  -0.9 work, you go, you need, you want
  -1.0 ^ check, ^ keep, behind, bet than, bolt, carry $, choos, com, cur, damp, every, flat, fram, fresh, gat $, if your, is quick, joint, middl
  -1.0 narrow $, not th, oak, ord, sound, spot, tal, th bay, th count, th middl, th work, that is, togeth $, with
  -1.1 ar th, board $, bracket, buy, first $, if, it pay, measur, often, pin, plumb, rail $, sam, soon, stay, th brac, th sam, th top, th whol, then
  -1.2 carry th, curv, delivery, do th, figur, follow, gat post, hing, les, neat, only as, stain, tak, th corn, th end, th fac, th post, weath, with a
  -1.2 yet
  -1.3 bag, but, easi, giv, grain, sav, slop, stif, tel me, th, th run, when, your open
  -1.4 barrow, between, brac, corner, diagonal, els, fac, keep th, level, or, show, sid, slow, th picket, top, wat, whol, width
  -1.5 and, brush, count, its, load, not in, rail, straight, th fenc, th hing, th rail, th tap, wood
  -1.6 bay $, befor, concret, even, mix, narrow, picket, set, squar, th gap, th wood, togeth, want, which
  -1.7 befor you, each, mor, so, th str, trim
  -1.8 coat, end, fil, length, spac, start, than, wid, you wil
  -1.9 gravel, how, str
  -2.0 gap, post, read
  -2.2 board, screw
  -2.3 timb
  -2.4 bay
  -2.6 is th
`
