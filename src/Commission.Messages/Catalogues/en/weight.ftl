### The charge by weight.

how-it-arrived-next = Say how the unit arrived: charged, with nitrogen, or evacuated. Its papers and the gauge at the first opening tell.

by-weight-hose-next = Weigh with a hose that is emptied into the circuit or shuts at its end: most of the ± is the hose. Write what stayed in it.

# $scales (list) - the scales
by-weight-which-scale = { $scales } are both said to read the charge, and they are not equally good
by-weight-which-scale-next = Say which of them weighed it.

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
total-no-maker = the maker's total is not recorded

# $mass (quantity) - what went in
went-in = { $mass } of refrigerant went in.
before-not-known = what the circuit held before is not known by weight
arrival-unknown-next = Recover the charge, evacuate, and weigh the whole charge in.

# $scale (text) - the scale
accuracy-of-scale = { $scale }: accuracy

factory-charge-missing = the factory charge is not recorded, and the scale saw the whole charge
factory-charge-missing-next = Write the factory charge from the nameplate.
charge-asked = required charge
charge-asked-formula = factory charge + adjustment
no-tolerance = no pack sets a tolerance for a charge by weight

# $mass (quantity) - what has to come out
nothing-removed = { $mass } has to be recovered, and nothing removed is recorded
weigh-cylinder-next = Weigh the cylinder before and after and write both.

# $mass (quantity) - what was recovered
# $asked (quantity) - what should have been
was-recovered = { $mass } was recovered; these lines need { $asked } less than the factory charge.

# $mass (quantity) - what went in
# $asked (quantity) - what was required
# $beyond (choice: factory, whole) - whether it counts beyond the factory charge
went-in-asked =
    { $beyond ->
        [factory] { $mass } went in; { $asked } was required beyond the factory charge.
       *[whole] { $mass } went in; { $asked } was required.
    }

# $mass (quantity) - the difference
add-next = Add { $mass } by weight.

# $mass (quantity) - the difference
recover-next = Recover { $mass } by weight.

total-unknown-next = Say how the unit arrived and what its plate gives as factory charge. Or recover, evacuate and weigh the whole charge in.
nothing-moved = Nothing added or removed is recorded.

# $mass (quantity) - what the circuit holds
# $limit (text) - what the maker asks for
# $by (choice: plate, scale) - how the mass is known
total-asked =
    { $by ->
        [plate] By its nameplate the circuit holds { $mass }; the maker asks for { $limit }.
       *[scale] The circuit holds { $mass }; the maker asks for { $limit }.
    }
total-asked-next = Add or recover the difference by weight, and write the new total on the unit.

# $circuit (text) - the other circuit
charge-of-circuit = charge of circuit { $circuit }
charge-of-circuit-beside = charge of the other circuit
