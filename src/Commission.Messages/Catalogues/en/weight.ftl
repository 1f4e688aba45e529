### The charge by weight.

how-it-arrived-next = Say how the unit arrived: charged, with nitrogen, or evacuated. Its papers and the gauge at the first opening tell.

by-weight-hose-next = The doubt is the hose: weigh with a hose that is emptied into the circuit or shuts at its end, and write what stayed in it.

# $scales (list) - the scales
by-weight-which-scale = { $scales } are both said to read the charge, and they are not equally good
by-weight-which-scale-next = Which of them weighed it?

# $mass (quantity) - what went in
# $gas (name) - the refrigerant now
# $plate (quantity) - the plate's charge
# $old (name) - the refrigerant the plate is for
# $share (quantity) - what went in over the plate's charge
by-weight-guide = { $mass } of { $gas } went in, { $share } of the { $plate } of { $old } on the plate.
by-weight-guide-why = the plate's charge is of another refrigerant: a guide value and no limit

# $mass (quantity) - what went in
# $gas (name) - the refrigerant now
by-weight-changed = { $mass } of { $gas } went in.

# $circuits (count) - circuits of the unit, this one among them
# $mass (quantity) - what they hold together
whole-unit = The { $circuits } circuits of the unit hold { $mass } together.

# $lines (choice: some, none) - whether the circuit has lines that were laid on site
factory-charge-fits =
    { $lines ->
        [none] The charge is that of the factory, by the nameplate: nothing had to be added or recovered.
       *[some] The factory charge, by the nameplate, fits these lines: nothing had to be added or recovered.
    }

# $mass (quantity) - what the circuit holds
# $gas (name) - the refrigerant
total = The circuit holds { $mass } of { $gas }.

# $mass (quantity) - the plate's charge
# $gas (name) - the refrigerant
total-of-plate = The nameplate's charge is { $mass } of { $gas }; what the circuit holds was not weighed.
total-no-maker = no total of the maker is written
