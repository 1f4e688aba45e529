### The running system: what went in and how, whether it ran steadily, what superheat and subcooling are compared with, and what was found before the work.

## Liquid or vapor from the cylinder

phase-of-cylinder = from the cylinder
phase-of-vacuum = vacuum broken
phase-of-port = liquid into the vapor side

reading-drawn = drawn as
reading-broken-to = vacuum broken to
reading-first-charge = first charge as
reading-into = into
reading-throttled = throttled

glide-in-cylinder = glide in the cylinder

# $refrigerant (name) - what is in the circuit
phase-no-matter = { $refrigerant } keeps its composition whether it leaves the cylinder as liquid or as vapor.

# $refrigerant (name) - a zeotropic blend
phase-liquid = { $refrigerant }, a zeotropic blend, left the cylinder as liquid.

# $refrigerant (name) - a zeotropic blend
phase-vapor = { $refrigerant }, a zeotropic blend, left the cylinder as vapor: its composition has shifted in cylinder and circuit.
phase-vapor-next = Recover the charge, evacuate, and weigh in fresh refrigerant as liquid. Set the rest of that cylinder aside.

phase-topped-up = A blend with this glide was topped up. After a leak its composition is in doubt: recovering and weighing in is surer.

# $level (text) - pressure up to which vapor went in
carbon-dioxide-vapor = Carbon dioxide went in as vapor up to { $level }, above its triple point.

# $least (text) - pressure up to which vapor is required
# $level (text) - pressure to which the vacuum was broken
# $phase (choice: liquid, vapor, not-written) - how it went in
carbon-dioxide-liquid =
    { $phase ->
        [liquid] Carbon dioxide goes in as vapor up to { $least }; the job says liquid up to { $level }.
        [vapor] Carbon dioxide goes in as vapor up to { $least }; the job says vapor up to { $level }.
       *[not-written] Carbon dioxide goes in as vapor up to { $least }; the job says { $level } and not whether it was vapor.
    }
carbon-dioxide-liquid-next = Liquid below the triple point turns to dry ice: check that no line is blocked before the circuit is closed off.

# $level (text) - pressure to which the vacuum was broken
vacuum-broken = The vacuum was broken to { $level } before the compressor ran.

# $level (text) - pressure to which the vacuum was broken
vacuum-not-broken = The circuit was still below atmospheric pressure, at { $level }, when the compressor was to run.
vacuum-not-broken-next = Break the vacuum with refrigerant on the liquid side before the start: a compressor in vacuum arcs at its terminals.

liquid-throttled = Liquid was throttled into the vapor side.
liquid-not-throttled = Liquid went into the vapor side without throttling: it can wash the oil out of the compressor.
liquid-not-throttled-next = Let the crankcase heater run and listen at the first start. Throttle liquid, or charge it into the liquid side.

## Non-condensables: the standing test

reading-off-for = off for
reading-fan-on = condenser fan on

standing-nothing-to-compare = neither the liquid line nor the outdoor air was read
standing-nothing-to-compare-next = Read both once they agree.

standing-fan-off = the condenser fan did not run, so the condenser need not be at outdoor temperature

# $off (duration) - how long the compressor had been off
# $least (duration) - how long it has to be off
standing-off-too-short = the compressor had been off for { $off }; at least { $least } is required

standing-off-not-known = it is not written how long the compressor had been off, and line and air were not both read

# $apart (quantity) - between liquid line and outdoor air
# $most (quantity) - the most allowed
standing-apart = liquid line and outdoor air were { $apart } apart; { $most } is allowed
standing-not-ready-next = Leave the compressor off and the condenser fan on until the liquid line is at air temperature, then read again.

standing-no-saturation-next = Check the pressure and the refrigerant's name.

standing-bubble = bubble point at the standing pressure
standing-excess = standing pressure over saturation, as a temperature
standing-excess-share = standing pressure over saturation, as a share

# $below (quantity) - how far below
standing-below-saturation = the pressure lies { $below } below saturation, which means no liquid at the gauge or a temperature that has not settled
standing-below-saturation-next = Wait until the line is at air temperature. If the pressure stays low, the circuit holds very little refrigerant.

# $excess (quantity) - how far above saturation, as a temperature
standing-good = Standing pressure lies { $excess } above saturation: no sign of non-condensables.

# $excess (quantity) - how far above saturation, as a temperature
standing-bad = Standing pressure lies { $excess } above saturation: non-condensables are suspected.

# $excess (quantity) - how far above saturation, as a temperature
# $share (quantity) - the same as a share of the pressure
standing-bad-share = Standing pressure lies { $excess } above saturation, { $share } of the pressure: non-condensables are suspected.

# $share (quantity) - how far above saturation, as a share of the pressure
standing-share = { $share } of the pressure

standing-bad-next = Confirm with a refrigerant identifier, or recover, evacuate and weigh in fresh refrigerant.

definition = definition

## Tables of the charge readings

table-as-found-circuit = As found: circuit readings as written
table-as-found-air = As found: air readings as written
table-circuit = Circuit readings as written
table-air = Air readings as written
table-worked-out = Worked out from the readings
table-worked-out-note = Zero-corrected: zero offsets and ice-point residuals taken off. Fully corrected: all corrections, with U.

column-time = Time
column-vapor-pressure = Vapor pressure
column-liquid-pressure = Liquid pressure
column-true-suction-pressure = True suction pressure
column-discharge-pressure = Discharge pressure
column-vapor-line = Vapor line
column-liquid-line = Liquid line
column-liquid-after-drier = Liquid after drier
column-evaporator-outlet = Evaporator outlet
column-compressor-suction-line = Compressor suction line
column-discharge-line = Discharge line
column-indoor-coil-outlet = Indoor coil outlet
column-sump = Sump
column-compressor-current = Compressor current
column-power = Power
column-sight-glass = Sight glass
column-receiver-level = Receiver level
column-mode = Mode
column-running = Running
column-speed = Speed
column-since-defrost = Since defrost
column-auxiliary-heat = Auxiliary heat
column-outdoor-dry-bulb = Outdoor dry bulb
column-outdoor-wet-bulb = Outdoor wet bulb
column-outdoor-humidity = Outdoor humidity
column-return-dry-bulb = Return dry bulb
column-return-wet-bulb = Return wet bulb
column-return-humidity = Return humidity
column-supply-dry-bulb = Supply dry bulb
column-supply-wet-bulb = Supply wet bulb
column-supply-humidity = Supply humidity
column-box-temperature = Box temperature

column-dew-point = Dew point
column-bubble-point = Bubble point
column-superheat-zero = Superheat, zero-corrected
column-superheat-full = Superheat, fully corrected
column-subcooling-zero = Subcooling, zero-corrected
column-subcooling-full = Subcooling, fully corrected
column-used = Verdict

used-for-superheat = superheat judged
used-for-subcooling = subcooling judged
used-for-both = judged
used-for-nothing = not judged

## Readings in heating

reading-since-defrost = since defrost
reading-coil-clear = coil clear of frost
reading-auxiliary-heat = auxiliary heat

step-subcooling-indoor-coil = subcooling at the indoor coil

# $bubble (quantity) - bubble point at the vapor pressure
heating-bubble = bubble point { $bubble } at the vapor pressure

# $subcooling (quantity) - subcooling at the indoor coil
heating-subcooling = subcooling at the indoor coil { $subcooling }

# $discharge (quantity) - temperature of the discharge line
heating-discharge = discharge line { $discharge }

# $time (text) - when it was read
# $parts (list) - what was read
heating-was = Heating at { $time }: { $parts }.
heating-not-judged = only a maker's heating chart judges these readings; without one the charge stands on its weight
heating-nothing-read = no heating reading of the circuit is written
heating-nothing-read-next = Read vapor pressure, discharge line and indoor coil outlet, or weigh the charge in.

# $open (message) - what was not shown, without a full stop
heating-open = Open point: { $open }.

# $since (duration) - from the end of the last defrost to the reading
# $least (duration) - what is required
heating-after-defrost = the last defrost ended { $since } before the reading; at least { $least } is required
heating-auxiliary-on = the auxiliary heat was on
heating-steady-next = Let it heat steadily with the coil clear and the auxiliary heat off, then read again.

# $missing (list) - what was not told
heating-not-told = the job does not say { $missing }
heating-no-defrost-time = how long ago the last defrost ended
heating-no-coil = whether the coil was clear of frost
heating-no-auxiliary = whether the auxiliary heat was off

## Whether the system had settled

superheat = superheat
subcooling = subcooling

settled-no-times-next = Write when the compressor was started and when the charge was last changed.

# $why (message) - what came after the reading, without a full stop
settled-before-change = No reading shows the charge that was left: { $why }.

step-since-change = time since the start or the last change of charge
step-since-change-formula = time of the reading − the later of start and change

# $time (text) - when it was read
# $after (choice: start, change) - from when it counts
step-since-change-values =
    { $after ->
        [start] { $time }, after the start of the compressor
       *[change] { $time }, after the last change of charge
    }

# $time (text) - when it was read
# $since (duration) - how long after
# $after (choice: start, change) - from when it counts
# $limit (message) - what is required
settled-time =
    { $after ->
        [start] The reading at { $time } was taken { $since } after the start of the compressor; { $limit } is required.
       *[change] The reading at { $time } was taken { $since } after the last change of charge; { $limit } is required.
    }

settled-power = power in the log

# $what (message) - superheat or subcooling
in-the-log = { $what } in the log

# $what (message) - superheat or subcooling
step-change-in-log = change of { $what } over the last minutes of the log
step-change-in-log-formula = slope of a straight line × its length
least-squares = least squares

# $limit (text) - the most that is allowed
either-way = { $limit } either way

# $what (message) - superheat or subcooling
# $time (text) - when it was read
movement = { $what } at { $time }: movement
movement-source = a steady system read with good clamps, common practice, no source

# $what (message) - superheat or subcooling
# $first (text) - when it was read first
# $last (text) - when it was read last
change-between = { $what }, { $first } to { $last }

# $what (message) - superheat or subcooling
step-change = change of { $what }
step-change-formula = last − the one before; what both share cancels, how clamp and gauge repeat and how a steady system moves does not

# $first (text) - when it was read first
# $last (text) - when it was read last
# $what (message) - superheat or subcooling
# $change (quantity) - by how much it changed
change-was = Between { $first } and { $last } { $what } changed by { $change }.

# $what (message) - superheat or subcooling
still-moving = { $what } was still moving

# $time (text) - when it was read
# $open (message) - what was not shown, without a full stop
running-open = Readings at { $time }: { $open }.

# $time (text) - when it was read
# $how (choice: full, high-stage, charging-mode, part, one-speed) - how the compressor ran
running-valid =
    { $how ->
        [full] At { $time } the compressor ran at full load: a valid condition for charge readings.
        [high-stage] At { $time } the compressor ran in high stage: a valid condition for charge readings.
        [charging-mode] At { $time } the compressor ran in its charging mode: a valid condition for charge readings.
        [part] At { $time } the compressor ran at part load: a valid condition for charge readings.
       *[one-speed] At { $time } the compressor ran at its one speed: a valid condition for charge readings.
    }

## A circuit with a receiver

glass = sight glass
reading-running = running
reading-head-pressure = head pressure control

glass-not-told = what the sight glass showed is not written
glass-not-told-next = Look at full load and write it.
glass-none = the circuit has no sight glass
glass-none-next = Weigh the charge in, with the winter charge of a flooded condenser where there is one.

# $seen (choice: empty, bubbles) - what the sight glass showed
glass-not-clear =
    { $seen ->
        [empty] The sight glass showed no liquid.
       *[bubbles] The sight glass showed bubbles.
    }
glass-not-clear-next = Check the drop across the drier first; then look for a leak before refrigerant is added.
glass-blend = A blend with glide may show some bubbles although its charge is right.
glass-clear = The sight glass was clear.
glass-load-not-told = it is not written that the circuit ran at full load when the glass was clear
glass-winter = The winter charge for the flooded condenser is not written among the extras: a clear glass in summer does not show it.

receiver-level = receiver level

# $level (text) - how full it was
receiver-was = The receiver was { $level } full.
receiver-not-judged = the maker's level for this load and season decides

# $time (text) - when it was read
evaporator-superheat-at = evaporator superheat, { $time }

# $time (text) - when it was read
compressor-superheat-at = compressor superheat, { $time }

## What was found before the work

reading-found = refrigerant found

# $refrigerant (text) - the refrigerant that was found
found-other = The circuit was found with { $refrigerant }; its readings are listed and not worked out.
found-other-why = the refrigerant was changed

# $superheat (quantity) - what it was
found-superheat = superheat { $superheat }

# $subcooling (quantity) - what it was
found-subcooling = subcooling { $subcooling }

# $mass (text) - what came out
found-recovered = { $mass } recovered

# $time (text) - when it was read
# $parts (list) - what was found
found = As found at { $time }: { $parts }.
found-why = before any work
found-nothing-next = Read pressure and line temperature of a side together.

## Return visit

reading-visit = return visit
reading-visit-outdoor = outdoor at least
reading-visit-by = by

# $outdoor (quantity) - from which outdoor temperature on the visit is planned
# $least (quantity) - the least for the method
visit-too-cold = At { $outdoor } outdoors the charge cannot be judged by readings yet: that takes at least { $least }.

# $terms (list) - what is to be done, and when
visit-due = A return visit is due: { $terms }.

# $outdoor (text) - the least outdoors
visit-outdoor = when it is at least { $outdoor } outdoors

# $day (text) - the day
visit-by = by { $day }
visit-why = a condition of this record until it is done; meanwhile the charge stands on its weight
visit-none-next = Weigh the charge in and write the return visit, or read in cooling when the weather allows it.
visit-none-heating = the system was read in heating alone, and no return visit is written

# $why (message) - why the readings are not judged, without a full stop
visit-none = { $why }, and no return visit is written

## What superheat and subcooling are compared with

target-no-superheat = nobody sets a superheat for this system
target-no-superheat-next = Write the maker's figure or chart, or how the refrigerant is metered.
target-no-subcooling = the maker's subcooling is not written
target-no-subcooling-next = Read it from the unit plate or the manual and write it with its page.
target-outside-chart-next = Wait for conditions the chart covers, or weigh the charge in.

# Where a limit is printed.
# $source (text) - where the target is printed
# $tolerance (text) - where the tolerance is printed
target-and-tolerance = { $source }; tolerance: { $tolerance }

target-air-not-read = the superheat table needs outdoor dry bulb and return wet bulb, and not both were read
target-air-not-read-next = Read both beside the superheat.
target-rounding = table of target superheat: rounding
target-rounding-source = half of its last printed digit

step-target = target superheat
step-target-formula = table, linear between whole degrees

# $outdoor (quantity) - outdoor dry bulb
# $wet (quantity) - return wet bulb
# $dry-slope (number) - change of the target for a change of the outdoor dry bulb
# $wet-slope (number) - change of the target for a change of the return wet bulb
step-target-values = { $outdoor } outdoors, { $wet } return wet bulb; ∂/∂ODB = { $dry-slope }, ∂/∂WB = { $wet-slope }

target-table-ends = the superheat table ends on every side of this point
target-table-ends-next = Wait for other conditions, or weigh the charge in.

# $target (quantity) - target superheat by the table
# $least (quantity) - the least that shows a charge
target-too-low = the target superheat of { $target } is below { $least }: too little load for a valid test

## Figures

# $which (choice: superheat, subcooling, both) - what is drawn
figure-time =
    { $which ->
        [superheat] Superheat
        [subcooling] Subcooling
       *[both] Superheat and subcooling
    }

# The plot takes a tolerance and its readings as one by the first word of both labels.
# $what (choice: superheat, subcooling) - of what it is the tolerance
figure-tolerance =
    { $what ->
        [superheat] superheat tolerance
       *[subcooling] subcooling tolerance
    }

# $first (text) - when it was read first
# $last (text) - when it was read last
# $courses (list) - what became of superheat and subcooling
figure-time-alt = Between { $first } and { $last }: { $courses }.

# $what (message) - superheat or subcooling
# $value (quantity) - what it was
# $time (text) - when it was read
figure-time-once = { $what } { $value } at { $time }

# $what (message) - superheat or subcooling
# $first (quantity) - what it was first
# $last (quantity) - what it was last
figure-time-course = { $what } from { $first } to { $last }

figure-clock = Time
figure-elapsed = Time since the compressor started
figure-difference = Temperature difference

figure-started = compressor started
figure-last-change = last change of charge

# $mass (text) - how much
figure-added = { $mass } added

# $mass (text) - how much
figure-removed = { $mass } removed

# $refrigerant (name) - what is in the circuit
figure-states = Measured states of { $refrigerant }

# $refrigerant (name) - what is in the circuit
# $time (text) - when the states were read
# $low (quantity) - pressure of evaporation
# $high (quantity) - pressure of condensation
# $heat (quantity) - heat taken up per mass
figure-states-alt = Pressure–enthalpy diagram of { $refrigerant } at { $time }: evaporation at { $low }, condensation at { $high }, { $heat } taken up.
figure-enthalpy = Specific enthalpy
figure-pressure = Pressure
figure-saturation = saturation
