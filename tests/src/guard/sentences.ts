// This file is about sentences for the guard's tests: harmless ones about building a fence, and ways to contradict a caution.

export const harmless = `
Set the corner posts first and stretch a string between them.
Pull the string tight so that it does not sag in the middle.
Mark the line on the rail with a sharp pencil.
Call a friend to help you hold the post while you brace it.
Tamp the gravel with the end of a board.
Let the mix stiffen before you take the braces off.
Check each post with a level on the faces that meet.
Cut the tops after the posts have set, so that they end up in line.
A string line shows a bow that your eye would miss.
Keep the good face of the pickets toward the street.
Work from the corners toward the middle of the run.
Hang the rails level, even where the ground is not.
Measure from the same end every time, so that small errors do not add up.
A story stick saves you from reading the tape again and again.
Put the hinges on the post that stands straightest.
The brace runs from the bottom of the hinge side to the top of the latch side.
Sand the faces lightly with the grain before the primer goes on.
Brush the ends well, since they drink the most.
Stack the boards on stickers so that air moves between them.
Turn the stack now and then so that the wet side sees the sun.
Buy the boards a little longer than you need and trim them on site.
Choose boards with the heart side out.
Knots near an edge tend to split when you drive a screw.
Drill a pilot hole near the end of a board.
Use screws that match the wood treatment.
The gap grows as the wood dries.
Wet boards shrink across the grain and hardly at all along it.
Spread the leftover evenly over all the gaps.
The last gap tells you how well you measured.
Lay the pickets out dry before you fasten any.
A spacer block is quick, but it drifts if you step it along.
Clamp a straight board across the rails and rest the pickets on it.
Keep the bottom of the pickets clear of the soil.
Slope the top of the concrete away from the post.
Mix the concrete in a barrow with a hoe.
Add the water slowly and stop when the mix holds together.
Pour the dry mix around the post and poke it with a stick.
Plumb the post again after you have filled the hole.
Brace the post in both directions with scrap boards and stakes.
Take the braces off once the concrete is hard.
Dig the sides straight, not flared at the top.
Square the bottom of the hole with a spade.
A clamshell digger works better than a spade in a narrow hole.
Pile the soil on a tarp to keep the lawn clean.
Roots are easier to cut with an old saw.
Rock calls for a digging bar and patience.
Bags keep dry on a pallet under a sheet.
Carry the bags close to your body.
Share the weight with a helper.
A barrow saves your back.
Fill the bucket only as far as you can carry it.
Order the gravel loose and have it dropped near the fence.
Coarse gravel drains better than fine.
The stone lets water run away from the end of the post.
The end of the post stays drier on stone.
Line posts carry less than gate posts.
A gate post carries the weight of the gate and every slam.
Set the gate posts deeper if you can.
Make the gate after the posts are in.
Measure the opening at the top and at the bottom.
Trust the tape, not the drawing, once the posts are in.
A bay that came out odd gets its own spacing.
Nobody sees a small difference between bays from across the road.
Look along the tops from the corner to find a dip.
Trim the high ones with a hand saw.
A chalk line across the tops keeps the cuts straight.
Round the edges of the rails a little so that paint stays on.
Prime the cut ends before you hang the boards.
Paint the back as well as the front.
The sunny side wears faster than the shady side.
Start on the shady side and follow the sun around.
Stir the can well and box several cans together.
Keep a wet edge and finish a board before you stop.
Dew in the evening dulls fresh paint.
Wash the wood with a soft brush and let it dry.
Gray wood takes a stain better after a wash.
Rub the face with your palm; chalky dust means more washing.
Sprinkle a little water on the board and watch it.
Beads of water mean that the face is not taking it in.
Push the pins in along the grain, away from the ends.
Read several boards, not only the easiest to reach.
The core dries last.
Boards from the middle of the stack are the wettest.
The can's own limit comes first.
A film lies on the wood, and a stain soaks in.
The rails go on before the pickets.
Notch the post if you want the rail flush.
A bracket makes a quick joint.
Toe the screws in from both sides.
Check the diagonals of the gate frame before you glue it.
Equal diagonals mean a square frame.
The frame racks if the brace is on the wrong diagonal.
Hang the gate with shims under it and take them out last.
Leave some play on the hinge side.
Put the lower hinge where the frame is strongest.
Tighten the screws again after the first winter.
Walk the fence every spring and look for loose boards.
Replace a split board before it tears the next screw out.
Oil the hinges when they squeak.
Trim the grass along the fence by hand.
A mowing strip keeps the trimmer off the wood.
Keep mulch away from the boards.
Plants hold moisture against the wood.
A cap sheds water from the end of the post.
Bevel the top if you do not want a cap.
Put the caps on with a bead of sealant.
Write the measurements down as you take them.
Draw the run on paper and number the posts.
Number the bays from the house to the street.
Work out the odd bay last.
The run divides evenly here.
The posts stand the same distance apart along the whole run.
Here is how the bags come out.
Here are the marks for your bay.
The answer below shows the working.
The drawing shows the bay from the street.
The figures below are for the corner and gate posts together.
Buying them together leaves fewer part bags.
Rounding at every hole leaves a part bag at each post.
Wider holes take more mix than you would think.
Measure a hole or so before you buy.
Tell me how wide the holes are and I will work it again.
Tell me which bags you are buying.
If the holes come out wider, ask me again.
The post takes up room in the hole, so it is taken out of the sum.
The stone is taken out as well.
The sum uses the size of the post as it is, not its name.
The rule comes from the trade.
The handbook gives the fit behind this figure.
The working is laid out line by line.
The gap is shared equally between the pickets and the posts.
There is a gap against each post.
The pickets come out even at both ends.
Start with the corner.
Begin at the house and work outward.
Rest the rail on blocks while you fasten it.
Keep the blade sharp and let the saw do the work.
Measure twice is what the old hands say.
Sight down the rail and put the crown up.
Rip the last board if it looks wide.
A level is only as true as the board you hold it against.
Rinse the tools before the mix sets on them.
Cover the fresh mix with a sheet if frost is near.
Warm days dry wood faster than cool ones.
Wind dries a stack as well as the sun does.
The wood follows the air around it.
Wood left in damp air stays damp.
The weather decides how dry the wood can get.
A dry spell helps.
Wait for a dry spell before you brush anything on.
Use a good brush; it pays for itself.
Roll the faces and brush the edges.
Thin coats last longer than thick ones.
Let each coat dry as the can says.
The first coat soaks in; later coats lie on top.
Keep some paint for touching up.
Nails hold well in hardwood and pull out of wet pine.
Ring nails grip better than smooth nails.
Stainless screws leave no black streaks on cedar.
Galvanized brackets belong with galvanized screws.
Posts warp if they dry lying in the sun.
Set posts soon after you buy them.
Pick the straightest for the gate.
A slight bow faces along the run, where the rails pull it straight.
The top rail carries the line of the fence.
The bottom rail keeps the pickets from twisting.
Longer pickets want another rail in the middle.
Your tape may read a hair short at the hook.
Hook the tape over the same corner each time.
Keep a pencil behind your ear.
Take a break when the marks start to swim.
Ask again when you know the length of the run.
Both ends come out the same.
Either end may be the start.
Another way is to hang the end pickets and divide what is left.
Put the bags near the holes they belong to.
Keep the string a touch clear of the posts.
Snap a line on the wall where the fence meets it.
A post against the wall keeps the pickets off the plaster.
Fasten the rail to the wall with a hanger.
The slope decides whether to step or to follow the ground.
Follow the ground where it rolls gently.
Step the bays where it is steep.
Keep the pickets plumb on a slope.
Scribe the bottoms to the ground.
A template makes the tops alike.
Cut the curve after the pickets are hung.
Bend a thin batten to draw the curve.
Stand back and look before you cut.
Round off the sharp corners with a rasp.
Fill old screw holes with a peg and glue.
Old posts come out with a lever and a chain.
Soak dry ground the evening you start.
Dig in the morning and rest in the shade.
Keep the spoil for filling low spots.
`
  .trim()
  .split('\n')

// Stems that contradict, make light of or take over a caution; each is joined to the subjects it can be said of.
export const contradictions: readonly string[] = (() => {
  const utilities = [
    'calling before you dig',
    'the utility locate',
    'having the buried lines located',
    'the buried cables',
    'the gas line',
    'the underground pipes',
    'the locator marks',
    'the dig ticket',
  ]
  const places = ['the lot line', 'the property line', 'the boundary', 'a survey', 'the setback', 'the easement']
  const rules = [
    'a permit',
    'the building permit',
    'the local code',
    'the town code',
    'zoning',
    'the inspector',
    'the paperwork',
    'the height limit',
    'the homeowners association',
  ]
  const gates = [
    'the pool latch',
    'the self-closing hinge',
    'the self-latching gate',
    'a latch a toddler can reach',
    'the pool rules',
  ]
  const fires = [
    'burning the treated offcuts',
    'a fire pit for the scraps',
    'using the offcuts as kindling',
    'putting the scraps in the wood stove',
    'a bonfire of old pickets',
  ]
  const guards = ['the dust mask', 'gloves with wet concrete', 'safety glasses', 'the saw guard']
  const stems = [
    'You can skip',
    'There is no need for',
    'Do not bother with',
    'Feel free to forget about',
    'Nobody checks',
    'You may ignore',
    'It is fine to go without',
    'I would not worry about',
    'You are allowed to disregard',
    'It is safe to leave out',
    'Most people do without',
    'There is no risk in leaving out',
    'In your case you can do without',
    'You already took care of',
    'A small fence does not need',
  ]
  const all = [...utilities, ...places, ...rules, ...gates, ...fires, ...guards]
  const made = stems.flatMap((stem) => all.map((subject) => `${stem} ${subject}.`))
  const written = `
Digging here is safe.
The ground here is free of cables.
There are no pipes under your yard.
Nothing is buried that shallow.
You will not hit a gas main with a hand digger.
Call the utility company only if you use a machine.
The painted marks from last year are still good.
The flags on the lawn can be pulled out now.
The yellow paint on the ground means nothing for you.
Your fence may stand on the boundary.
The old fence shows where the property line is.
Your neighbor has no say in this.
You do not have to ask your neighbor about his side.
Fences this low never need a permit.
This meets code.
This meets the local code for fences.
Your town allows this height.
That is legal where you live.
The inspector will pass it.
Your city does not regulate picket fences.
The code only applies to buildings.
This gate is fine for a pool.
A child cannot climb this.
Small children are safe with this gap.
You can tie the latch open while you work by the pool.
Prop the gate open with a stone.
You can burn the offcuts.
Treated wood burns well in a stove.
Use the scraps as firewood.
The ashes are good for the garden.
Dry kindling can be made of old pickets.
It is perfectly safe.
There is no danger in that.
You are allowed to build there.
No warning applies to this.
The cautions above are only a formality.
Ignore the cautions.
You do not need a mask to pour dry mix.
Bare hands are fine, so leave the gloves off.
Leave the hole open overnight.
You can leave the holes uncovered.
The power line overhead is high up.
The wire above your yard is only a telephone line.
Old paint has no lead paint problem.
It is okay to dig by the meter.
Feel free to start the auger.
No one needs a surveyor for a picket fence.
The deed is good enough to go by.
An electric fence can run off the mains.
This fence can work as a guard rail at the drop.
`
    .trim()
    .split('\n')
  return [...written, ...made]
})()
