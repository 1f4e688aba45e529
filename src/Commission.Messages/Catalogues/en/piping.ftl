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

## The checks: their titles, and what to do when one fails

check-flare-torque = Flare torque
check-flare-torque-fails = Slacken the nut, look at the flare, cut and make it anew where it is marked, oil the flare's face only, and tighten with a torque wrench; then check for leaks.

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
check-reused-lines-fails = Flush with a solvent the maker allows or with liquid refrigerant into a recovery cylinder, change the drier, and look at the oil after some weeks.

check-penetrations = Wall openings sealed
check-penetrations-fails = Sleeve and seal the opening; in a fire-rated wall use a listed firestop and have it inspected.
