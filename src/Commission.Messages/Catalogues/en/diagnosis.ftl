### The diagnosis: what all readings of the running circuit say together, in one or two sentences, and the next step.

## The diagnosis

# $cause (message) - the cause
# $evidence (list) - readings with their values and places
concluded = This is { $cause }: { $evidence }.

# $cause (message) - the likeliest cause
# $others (list) - what else it may be
# $evidence (list) - readings with their values and places
ranked = Most likely this is { $cause }, or else { $others }: { $evidence }.

# $apart (message) - how to tell them apart, as an order without a full stop
ranked-next = First { $apart }. Change nothing else until that is known.

# $readings (list) - readings with their values
sound = The circuit runs as it should: { $readings }. Nothing speaks against the charge.

# $readings (list) - readings with their values
sound-without-target = Nothing looks wrong: { $readings }. They do not judge the charge, because superheat has no target in these conditions.

# $readings (list) - readings with their values
# $others (list) - what these readings do not exclude
# $apart (message) - how to tell, as an order without a full stop
sound-but-open = Nothing is clearly wrong: { $readings }. These readings do not rule out { $others }; to be sure, { $apart }.

# $cause (message) - the condition of the moment
# $evidence (list) - readings with their values and places
condition = With { $cause } the charge cannot be judged: { $evidence }.

# $why (message) - why the readings count for nothing, without a full stop
none = No diagnosis: { $why }.

# $why (message) - why it is charged by weight, without a full stop
by-weight = The charge is judged by weight, not by readings: { $why }.

# $why (message) - the contradiction, without a full stop
impossible = The readings cannot be right together: { $why }.
impossible-next = Read both again. Look for swapped hoses or clamps, a gauge with a wrong zero, another refrigerant than the one written, or a slip of the pen.

# $what (choice: outdoor-over-condensing, liquid-over-condensing, vapor-under-boiling, supply-under-boiling, supply-over-return, liquid-under-outdoor) - which two readings
# $by (quantity) - by how much
contradiction =
    { $what ->
        [outdoor-over-condensing] the outdoor air is { $by } warmer than the refrigerant condenses
        [liquid-over-condensing] the liquid line is { $by } warmer than the refrigerant condenses
        [vapor-under-boiling] the vapor line is { $by } colder than the refrigerant boils
        [supply-under-boiling] the supply air is { $by } colder than the refrigerant boils
        [supply-over-return] the supply air is { $by } warmer than the return air
       *[liquid-under-outdoor] the liquid line is { $by } colder than the outdoor air that cools it
    }

# $added (quantity) - what was added on this visit
recover-added-next = { $added } was added on this visit. Make the standing test for air in the circuit first. If there is no air, take the charge out again by weight, a little at a time, and let the system settle each time.

# $added (quantity) - what was added on this visit
# $found (quantity) - superheat before that
# $target (text) - what it should be
recover-added-as-found-next = Before { $added } was added on this visit, superheat was { $found } and { $target } is required: the charge was right. Do not leave it running like this. Take out by weight what was added, a blend as liquid, and let the system settle. Read again, and correct the label.

# $added (quantity) - what was added on this visit
# $found (quantity) - superheat before that
# $target (text) - what it should be
# $refrigerant (name) - the blend
# $wrong (quantity) - superheat on the bubble scale
recover-added-as-found-blend-next = { recover-added-as-found-next } Read superheat of { $refrigerant } on the dew (vapor) scale: the bubble (liquid) scale would have shown { $wrong } then.

# $low (quantity) - lowest superheat
# $high (quantity) - highest superheat
hunting = Superheat swings between { $low } and { $high } while nothing else changes: the valve hunts, and no single reading shows where it holds.
hunting-next = Check where the bulb sits, its strap and its insulation, then the size and setting of the valve. Judge the charge when superheat stands still.

# $written (name) - the refrigerant the job says is in the circuit
# $other (name) - the refrigerant that speaks against it
# $where (choice: plate, cylinder) - where the other one stands
wrong-refrigerant =
    { $where ->
        [plate] The job says the circuit holds { $written }, but the plate says { $other }: superheat and subcooling mean nothing until that is settled.
       *[cylinder] The job says the circuit holds { $written }, but { $other } was put in: superheat and subcooling mean nothing with a mixture.
    }

# $below (quantity) - how far the standing pressure lies below saturation, as a temperature
# $written (name) - the refrigerant the job says is in the circuit
rests-below = At rest the pressure is { $below } below saturation of { $written }, and there is liquid in the circuit. Air can only raise the pressure: another refrigerant is in there.

wrong-refrigerant-next = Find out what is in the circuit with a refrigerant identifier. If it is not what the plate says, recover all of it and weigh in the right one.

no-numbers = superheat, subcooling and the splits cannot be worked out from what was read
no-gauge = no gauge was put on the circuit, and the air alone says nothing of its charge
no-gauge-sealed = the circuit came charged and was not opened; no gauge was put on it, and none is needed
no-numbers-next = Read both pressures, both line temperatures, the outdoor air and the air in and out of the coil.
frosted = the outdoor coil was not clear of frost
frosted-next = Let it defrost and run for 10 min, then read again.
part-load = the compressor ran at part load, where a modulating compressor shows what its control wants
part-load-next = Run it at full load or in the maker's test mode and read again.

## Causes that are in no table

cause-wrong-refrigerant = another refrigerant than the one written
cause-hunting = a valve that hunts

# $causes (list) - what is left
reason = { $causes }

## What it was told from

# $reading (message) - the name of the reading
# $value (message) - what it was
shown = { $reading } { $value }

# $reading (message) - the name of the reading
# $place (message) - where it lies
# $value (message) - what it was
proof = { $reading } { $place } ({ $value })

# $place (choice: far-below, below, as-expected, above, far-above) - where a reading lies
place =
    { $place ->
        [far-below] far too low
        [below] low
        [as-expected] as expected
        [above] high
       *[far-above] far too high
    }

# $value (quantity) - what was read or worked out
value = { $value }

# $current (text) - the current as written
# $share (quantity) - its share of the rated current
# $rated (text) - the rated current as written
value-of-rated = { $current }, { $share } of the rated { $rated }

## What a reading should be

# $limit (text) - the figure
# $basis (message) - whose it is
expected-limit = { $limit }, { $basis }

# $limit (text) - the figure
# $basis (text) - whose it is
expected-at-evaporator = { $limit } at the evaporator, { $basis }

expected-unknown = common practice
expected-none = no target in these conditions
expected-drier = almost none, common practice

# $value (quantity) - what is usual
expected-about = about { $value }, common practice

# $value (quantity) - what is usual, and how far off is clear
expected-full-airflow = { $value } at full airflow in these conditions, common practice

# $value (quantity) - what is usual
expected-full-load = about { $value } at full load, common practice

# $value (quantity) - what is usual
expected-full-load-weather = about { $value } at full load in this weather, common practice

# $value (quantity) - what is usual
expected-conditions = about { $value } in these conditions, common practice

# $value (quantity) - what is usual
expected-at-compressor = about { $value } at the compressor, common practice

# $value (quantity) - what is usual
expected-at-indoor-coil = about { $value } at the indoor coil, common practice

# $value (quantity) - what is usual
expected-over-room = about { $value } over the room, common practice

# $kept (text) - the temperature of the box as written
expected-box = { $kept } has to be held

## Names of readings

# $at (text) - when it was added
reading-added = added at { $at }
reading-standing-pressure = standing pressure
reading-plate-refrigerant = refrigerant of the plate
reading-rated-current = rated load current
reading-sight-glass = sight glass
reading-frost = frost
reading-clear-of-frost = coil clear of frost
reading-filter = filter
reading-indoor-coil = indoor coil
reading-outdoor-coil = outdoor coil
reading-economizer = economizer
reading-damper = damper test
reading-reversing-in = suction gas into the reversing valve
reading-reversing-out = suction gas out of the reversing valve

## How it was weighed

weighed-by-weight = judged by weight
weighed-steps = difference from what it should be, in clear steps

# $value (message) - what it was
# $expected (message) - what it should be
weighed-against = { $value }; { $expected }

weighed-chance = how often it is met × what each reading says for it against a sound circuit

# $evidence (message) - a reading or a thing seen
# $factor (number) - how much it speaks for the cause against a sound circuit
weighed-move = { $evidence } × { $factor }

# $moves (list) - what moved the cause
weighed-moves = { $moves }
weighed-table = table of causes (causes.yaml)
weighed-rule = Bayes' rule
