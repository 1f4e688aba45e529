### Pipework: lines, branches, supports.

branch-joints-what = Do the branch joints stand as their maker asks: level or upright, with the straight run before them?
branch-joints-formula = branch joints placed: yes, as the crew writes it
branch-joints-source = Manuals of variable-flow systems (common practice, no source).
branch-joints-next = Turn the joint as the maker's drawing has it before the lines are tested and insulated: a tilted one sends the liquid to one side.
branch-joints-placed = The branch joints stand as the maker asks.
branch-joints-not-placed = A branch joint does not stand as the maker asks: one side gets the liquid, the other starves.

total-index-what = Are more indoor units connected than the outdoor unit is made for, or too few?
total-index-formula = total index = Σ capacity of the indoor units / capacity of the outdoor unit
total-index-source = The maker's engineering data; there is no common figure.
total-index-next = Ask the maker before it is started. Units are taken off, or the outdoor unit is the wrong size.

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
