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
