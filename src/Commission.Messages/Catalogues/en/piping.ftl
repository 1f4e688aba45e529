### Pipework: lines, branches, supports.

branch-joints-placed = The branch joints stand as the maker asks.
branch-joints-not-placed = A branch joint does not stand as the maker asks: one side gets the liquid, the other starves.

## What was not told of the lines

insulation-not-seen = it is not written that the vapor line is insulated all the way
insulation-not-seen-next = Walk along the vapor line, and see that it is insulated all the way.
flushed-not-written = it is not written whether the reused lines were flushed
flushed-not-written-next = Find out whether the old lines were flushed before the new unit was fitted to them.
traps-not-counted = the number of traps is not written
traps-not-counted-next = Count the oil traps in the risers.
lengths-no-rise = no rise is written
lengths-no-rise-next = Measure how much higher the indoor end of each line is than its outdoor end.
lengths-no-tree = the lines are not written as a tree from the outdoor unit to the indoor units
lengths-no-tree-next = Say of each run where it begins and where it ends, from the outdoor unit to the last indoor unit.
lengths-no-maximum = the maker's maximum is not written
lengths-no-maximum-next = Take from the manual how long and how high the lines may be: in all, the longest run, beyond the first branch, the height.
long-line-no-list = what the maker asks for on long lines is not written
long-line-no-list-next = Look up in the manual what long lines ask for, and see what of it is fitted.
velocity-no-lowest-next = Take the capacity at the lowest stage from the maker's data, or say that the compressor has one speed.
flare-not-told = neither a torque nor a turn is written
flare-not-told-next = Tighten the nut with a torque wrench, and say at what torque.

# $turn (text) - the turn as written
flare-no-angle = "{ $turn }" says no angle
flare-no-angle-next = Say by how many degrees the nut was turned after it touched, or tighten it with a torque wrench.
flare-maker-next = Look up the torque in the maker's manual.

definition = definition

## Names of readings, and subjects

# $number (number) - which flare, counted from one
# $tube (text) - its diameter, as written
subject-flare = flare { $number }, { $tube }

# $number (number) - which run, counted from one
subject-run = run { $number }
subject-traps = traps
subject-fall = fall
reading-tube = tube diameter

# $flare (text) - which flare
reading-torque = torque, { $flare }
reading-torque-least = maker's torque, least
reading-torque-most = maker's torque, most
reading-turn = turn after contact
reading-oil-on-face = oil on the flare's face only
reading-remade = flare made anew
reading-line-from = line from
reading-line-to = line to
reading-riser-traps = riser traps
reading-vapor-traps = traps of the vapor line
reading-oil-added = oil added
reading-accessory = accessory
reading-asked-accessory = asked for on long lines
reading-liquid-length = liquid line: length
reading-liquid-rise = liquid line: rise
reading-liquid-elbows = liquid line: elbows
reading-rise-of-liquid = rise of the liquid line
reading-length-of-liquid = length of the liquid line
reading-rise = rise
reading-vapor-insulated = vapor line insulated
reading-liquid-insulated = liquid line insulated
reading-thickness = thickness
reading-joints-sealed = joints sealed
reading-weatherproof = weatherproof
reading-penetrations = penetrations sealed
reading-pipe-rated = pipe rated for refrigerant
reading-reused = lines used again
reading-flushed = flushed
reading-supports = distance of supports
reading-slope = vapor line slopes to compressor
reading-branch-joints = branch joints placed
reading-total-index = total index

# $line (message) - which line
reading-length = { $line }: length

# $line (message) - which line
reading-rise-of = { $line }: rise

# $line (message) - which line
reading-diameter = { $line }: diameter

# $line (message) - which line
reading-wall = { $line }: wall
line-liquid = liquid line
line-vapor = vapor line
network-line = line

# $end (text) - where it leads
network-line-to = line to { $end }
network-line-to-end = line to its end
source-wall = wall as written
cause-capacity = capacity in these conditions
source-capacity = rated capacity, common practice

## The table of the lines

table = Lines
table-run = Run
table-line = Line
table-diameter = Diameter
table-bore = Bore
table-length = Length
table-rise = Rise
table-elbows = Elbows
table-liquid = liquid
table-vapor = vapor

# $from (text) - where it begins
# $to (text) - where it ends
table-from-to = { $from } to { $to }

# $to (text) - where it ends
table-to = to { $to }
table-line-set = line set

## Flares

# $least (number) - least torque, in the unit of the most
# $most (quantity) - most torque
limit-torque = { $least } to { $most }

# $least (number) - least turn, degrees
# $most (number) - most turn, degrees
limit-turn = { $least }° to { $most }°

# $tube (text) - its diameter, as written
flare-no-torque = there is no published torque for a tube of { $tube }
flare-no-torque-next = Take the torque from the maker's manual.

# $tube (text) - its diameter, as written
flare-no-turn = there is no published turn for a tube of { $tube }
flare-no-turn-next = Write the maker's torque and use a torque wrench.

# $torque (text) - as written
# $tube (text) - its diameter, as written
flare-tightened = { $torque } on { $tube }

# $turn (text) - as written
# $tube (text) - its diameter, as written
flare-turned = turned { $turn } after contact on { $tube }

# $torque (quantity) - the torque
# $usual (message) - the range of the most usual set
flare-one-set-only = one published set allows { $torque }, the most usual one { $usual } only
flare-turn-is-no-torque = a turn is no torque: the nut's friction is not in it
flare-turn-is-no-torque-next = Tighten with a torque wrench and write the torque.
flare-oil-on-thread = oil on the thread makes the same torque pull harder
flare-oil-on-thread-next = Look at the flare for cracks; clean the thread and tighten again.

# $what (message) - how it was tightened
flare-met = Flare nut: { $what }.

# $what (message) - how it was tightened
flare-missed = Flare nut: { $what }, outside its range.

## Lengths and heights

lengths-total = total
lengths-total-starts = Total
lengths-longest = longest run
lengths-longest-starts = Longest run
lengths-branch = first branch to the farthest unit
lengths-branch-starts = First branch to the farthest unit
lengths-height = height difference
lengths-height-starts = Height difference
lengths-formula = along the lines as written

# $what (message) - which length, at the start of a sentence
# $length (quantity) - the length
# $limit (text) - the limit as printed
lengths-met = { $what }: { $length }; { $limit } is allowed.

# $what (message) - which length, at the start of a sentence
# $length (quantity) - the length
# $limit (text) - the limit as printed
lengths-missed = { $what }: { $length }, more than the maker allows: { $limit }.

# $length (quantity) - length of the longest run
lengths-read = The lines are { $length } long.

# $length (quantity) - length of the longest run
# $height (quantity) - height between the units
lengths-read-height = The lines are { $length } long, { $height } between the units in height.

## Long lines

# $length (quantity) - length of the longest run
long-line-extent = { $length } of line

# $length (quantity) - length of the longest run
# $height (quantity) - height between the units
long-line-extent-height = { $length } of line, { $height } of height
long-line-length = length
long-line-height = height
long-line-both = length and height

# $extent (message) - length and height
long-line-usual = { $extent }: within the usual length, no accessories are required.
long-line-usual-kind = shorter than where long-line rules begin

# $extent (message) - length and height
# $why (message) - what of it makes the line long
# $limit (text) - the limit as printed
long-line-beyond = { $extent }: the { $why } is beyond the { $limit } within which no long-line rules apply.

# $oil (text) - as written
long-line-oil = Oil added: { $oil }.

# $extent (message) - length and height
# $why (message) - what of it makes the line long
long-line-complete = { $extent }: the { $why } asks for long-line accessories, and all the maker names are fitted.

# $extent (message) - length and height
# $missing (list) - accessories that are missing
long-line-missing = { $extent }: the maker's long-line list is not complete, { $missing } missing.

## What the liquid loses

step-rise = pressure taken by the rise
step-no-rise = no rise written
step-bubble = bubble point at the metering device
step-left = subcooling left
step-left-formula = T_b − T_liquid line
step-left-source = definition; heat taken up on the way is not in it
step-liquid-velocity = velocity of the liquid
step-friction = pressure taken by friction

# $factor (number) - friction factor
# $length (quantity) - length with its elbows
# $velocity (quantity) - velocity of the liquid
step-friction-numbers = f = { $factor }, L = { $length }, { $velocity }

# $factor (number) - friction factor
# $length (quantity) - length with its elbows
# $elbows (count) - how many elbows
# $velocity (quantity) - velocity of the liquid
step-friction-elbows =
    f = { $factor }, L = { $length } with { $elbows ->
        [one] 1 elbow
       *[other] { $elbows } elbows
    }, { $velocity }
loss-no-liquid = the pressure left at the metering device is no liquid's
loss-no-liquid-next = Check rise, length and diameter of the liquid line.

# $cost (quantity) - what friction takes of the saturation temperature
# $from (quantity) - bubble point before the line
# $limit (text) - what piping guides design for, as printed
loss-friction = Friction takes { $cost } of saturation from { $from }, and piping guides design for { $limit }.
loss-no-rise = No rise is written: the line counts as level.
loss-no-friction = the friction is not in it: capacity or bore of the line is not known
loss-no-friction-next = Write the capacity and the diameter or wall of the liquid line.
loss-port-next = Read the pressure at the liquid service valve.

# $loss (quantity) - what rise and friction take
# $left (quantity) - subcooling that is left
# $time (text) - time of the reading
loss-met = After rise and friction of { $loss } there are { $left } of subcooling left at { $time }.

# $loss (quantity) - what rise and friction take
# $left (quantity) - subcooling that is left
# $time (text) - time of the reading
loss-missed = Rise and friction take { $loss }: { $left } of subcooling left at { $time }, so the liquid flashes before the metering device.

## What flows

flow-no-reading = no reading in cooling has pressure and line temperature of both sides
flow-no-reading-next = Read vapor and liquid side together.
flow-states-next = Check the readings; the states have to be known on both sides.
step-heat = heat taken up per mass
step-heat-formula = h(vapor line) − h(liquid line)

# $capacity (message) - at which capacity
step-mass-flow = mass flow at { $capacity }
capacity-full = full capacity
capacity-minimum = minimum capacity

## Velocities

velocity-run = run

# $run (text) - where the run leads
# $line (message) - which line
velocity-of-run = { $run }: { $line }
velocity-liquid-starts = Liquid line
velocity-oil-return = vapor line, oil return
velocity-horizontal = vapor line, horizontal
velocity-horizontal-starts = Vapor line, horizontal
velocity-riser = vapor riser
velocity-riser-starts = Vapor riser
velocity-full-load = vapor line, full load
velocity-full-load-starts = Vapor line, full load
velocity-no-capacity = the capacity is not written
velocity-no-capacity-of-unit = the capacity of the unit at the end of this run is not written
velocity-no-capacity-next = Write the rated capacity.
velocity-lowest-not-known = the lowest flow of one run of several is not known
velocity-lowest-not-written = the capacity at the lowest stage is not written, and oil has to come back at that

# $tube (text) - its diameter, as written
velocity-no-wall = the wall of a tube of { $tube } is not in the list
velocity-no-wall-next = Write the wall of the tube.
step-bore = bore
step-bore-formula = diameter − 2 · wall
step-velocity = mean velocity

# $line (message) - which line, at the start of a sentence
# $velocity (quantity) - the velocity
# $capacity (message) - at which capacity
velocity-read = { $line }: { $velocity } at { $capacity }.
velocity-kind = nobody sets a limit

# $line (message) - which line, at the start of a sentence
# $velocity (quantity) - the velocity
# $capacity (message) - at which capacity
# $limit (text) - the limit as printed
velocity-guides = { $line }: { $velocity } at { $capacity }; piping guides ask for { $limit }.
velocity-variable = a variable-speed compressor runs up to bring its oil back; the maker's line table decides
velocity-makers-table = the maker's line table decides; piping guides are for lines that the installer sizes

# $line (message) - which line, at the start of a sentence
# $velocity (quantity) - the velocity
# $capacity (message) - at which capacity
# $limit (text) - the limit as printed
velocity-met = { $line }: { $velocity } at { $capacity }; { $limit } is required.

# $line (message) - which line, at the start of a sentence
# $velocity (quantity) - the velocity
# $capacity (message) - at which capacity
# $limit (text) - the limit as printed
velocity-missed = { $line }: { $velocity } at { $capacity }, outside what is required: { $limit }.

## Insulation, openings, tubes

insulation-vapor-bare = the vapor line is not insulated all the way
insulation-joints-open = its joints are not sealed
insulation-not-protected = it is not protected outdoors

# $thickness (text) - as written
insulation-thickness = Thickness { $thickness }.
insulation-liquid = The liquid line is insulated.
insulation-liquid-bare = The liquid line is not insulated.

# $faults (list) - what is wrong with it
insulation-faults = Insulation: { $faults }.
insulation-as-written = Insulation as far as it is written.
insulation-vapor = The vapor line is insulated all the way.
penetrations-sealed = The openings the lines pass through are sealed.
penetrations-open = An opening the lines pass through is not sealed.

# $refrigerant (name) - the refrigerant
pipe-rated = The tube is rated for { $refrigerant }.

# $refrigerant (name) - the refrigerant
pipe-not-rated = The tube is not rated for { $refrigerant }.
pipe-may-burst = the tube may burst
reused-flushed = The reused lines were flushed.
reused-not-flushed = The reused lines were not flushed.

## Supports, traps, fall

# $distance (text) - as written
# $limit (text) - the limit as printed
supports-met = Supports every { $distance }; { $limit } is required.

# $distance (text) - as written
# $limit (text) - the limit as printed
supports-missed = Supports every { $distance }: too far apart, { $limit } is required.

# $traps (count) - how many
traps-read =
    { $traps ->
        [one] The vapor line has one oil trap.
       *[other] The vapor line has { $traps } oil traps.
    }
traps-kind = as written; the maker's number is not

# $traps (count) - how many
# $limit (text) - the limit as printed
traps-met =
    { $traps ->
        [one] The vapor line has one oil trap; { $limit } required.
       *[other] The vapor line has { $traps } oil traps; { $limit } required.
    }

# $traps (count) - how many
# $limit (text) - the limit as printed
traps-missed =
    { $traps ->
        [one] The vapor line has one oil trap; the maker asks for { $limit }.
       *[other] The vapor line has { $traps } oil traps; the maker asks for { $limit }.
    }
fall-met = The vapor line falls toward the compressor.
fall-missed = The vapor line does not fall toward the compressor.
fall-next = Let it fall where that is possible; oil lies in low places and comes back in slugs.
fall-kind = as written; the maker's manual says where it matters

## The checks: their titles, and what to do when one fails

check-flare-torque = Flare torque
check-flare-torque-fails = Slacken the nut and look at the flare. Cut and make it anew where it is marked. Oil the flare's face only, tighten with a torque wrench, and check for leaks.

check-velocity = Velocity in the lines
check-velocity-fails = Compare with the maker's line table. Too slow in a riser: a smaller tube, or two in parallel with a trap; too fast: a larger tube.

check-liquid-loss = Subcooling left at the metering device
check-liquid-loss-fails = Raise the subcooling to the maker's figure first. If it stays short: a larger liquid line, fewer fittings, the evaporator lower, or the maker's kit for a high lift.

check-lengths = Lengths and heights of the lines
check-lengths-fails = Ask the maker: longer lines cost capacity, oil and sometimes the guarantee. Shorten the run or move the unit.

check-long-line = Long-line accessories
check-long-line-fails = Fit what is missing before the unit runs through a season; look up oil, line size and traps in the long-line table too.

check-traps = Oil traps and fall of the vapor line
check-traps-fails = Add the traps, or let the line fall toward the compressor along its whole length.

check-supports = Supports
check-supports-fails = Add supports that do not cut into the insulation.

check-branch-joints = Branch joints
check-branch-joints-fails = Turn the joint as the maker's drawing has it before the lines are tested and insulated: a tilted one sends the liquid to one side.

check-total-index = Total index of the indoor units
check-total-index-fails = Ask the maker before it is started. Units are taken off, or the outdoor unit is the wrong size.

check-insulation = Insulation of the lines
check-insulation-fails = Insulate what is bare, seal butt joints and slits, cover foam that lies in the sun.

check-pipe-rating = Tube rated for the refrigerant
check-pipe-rating-fails = Do not charge it. Replace the tube by refrigeration tube of the wall the maker asks for.

check-reused-lines = Reused lines flushed
check-reused-lines-fails = Flush with a solvent the maker allows, or with liquid refrigerant into a recovery cylinder. Change the drier, and look at the oil after some weeks.

check-penetrations = Wall openings sealed
check-penetrations-fails = Sleeve and seal the opening; in a fire-rated wall use a listed firestop and have it inspected.

cause-friction = friction factor
