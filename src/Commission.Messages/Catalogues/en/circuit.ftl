### The running circuit: what was read and worked out, what the charge weighs, and why a number may not be judged.

## Numbers of a row of readings

# $what (list) - what was not read
# $number (count) - how many that are
not-read =
    { $number ->
        [one] { $what } was not read
       *[other] { $what } were not read
    }

# $number (message) - what the line temperature is for
line-temperature-for = line temperature for { $number }

heating-vapor-line = in heating the vapor line carries discharge gas

heating-liquid-valve = in heating the liquid service valve does not show the condenser's outlet

liquid-read-behind-drier = the liquid line was read behind the drier, and nothing before it

superheat = superheat

subcooling = subcooling

superheat-at-evaporator = superheat at the evaporator

superheat-at-compressor = superheat at the compressor

approach = approach

drier-drop = drop across the drier

condenser-split = condenser split

evaporator-split = evaporator split

return-or-box = return or box temperature

# $pressure (text) - the pressure
dew-at = dew point at { $pressure }

# $pressure (text) - the pressure
bubble-at = bubble point at { $pressure }

# $pressure (text) - the pressure
middle-at = middle of bubble and dew point at { $pressure }

# $pressure (text) - the pressure
saturation-at = saturation at { $pressure }

# $pressure (quantity) - the pressure, absolute
# $slope (symbols) - change of the temperature
# $unit (name) - unit of pressure
saturation-values = p_abs = { $pressure }; dT/dp = { $slope } per { $unit }

# $number (message) - the number
zero-corrected = { $number }, zero-corrected

# $number (message) - the number
fully-corrected = { $number }, fully corrected

# $name (text) - what was read
humidity-for = { $name }: relative humidity

wet-bulb-formula = thermodynamic wet bulb of moist air at T, φ, p_atm

wet-bulb-source = ASHRAE Handbook — Fundamentals, chapter 1, SI relations (from memory)

## Saturation

# $gas (name) - the refrigerant
# $why (message) - why
cannot-be-computed = { $gas } cannot be computed: { $why }

# $kind (choice: blend, pure) - what kind of refrigerant it is
# $gas (name) - the refrigerant
equations-used =
    { $kind ->
        [blend] multi-fluid Helmholtz model of { $gas }, papers under sources
       *[pure] equation of state of { $gas }, paper under sources
    }

# $gas (name) - the refrigerant
equations-of-state = { $gas }: equations of state

# $kind (choice: estimated, blend, pure) - what kind of refrigerant it is
equations-source =
    { $kind ->
        [estimated] saturation pressure of a blend with estimated pairs, as a share of it; common practice
        [blend] saturation pressure of a blend, as a share of it; common practice
       *[pure] saturation pressure of a pure refrigerant, as a share of it; common practice
    }

# $gas (name) - the refrigerant
# $curve (choice: bubble, dew) - which of the two points
listed-point =
    { $curve ->
        [bubble] { $gas }: listed normal bubble point
       *[dew] { $gas }: listed normal dew point
    }

# $off (symbols) - how far the listed point lies from the equations
listed-source = ASHRAE 34 lists it { $off } from the equations, from memory; what goes beyond their own share

# $gas (name) - the refrigerant
# $curve (choice: bubble, dew) - which of the two points
estimated-point =
    { $curve ->
        [bubble] { $gas }: estimated pairs, bubble point
       *[dew] { $gas }: estimated pairs, dew point
    }

# $pair (name) - the estimated pair
# $sisters (list) - listed blends
# $share (symbols) - how far off
# $how (choice: same-pair, same-rule) - what they have in common
estimated-source =
    { $how ->
        [same-pair] no boiling point of it is listed; { $pair } is estimated; ASHRAE 34 (from memory) lists { $sisters }, with the same pair, up to { $share } of the pressure away from the equations; what goes beyond their own share
       *[same-rule] no boiling point of it is listed; { $pair } is estimated; ASHRAE 34 (from memory) lists { $sisters }, by the same rule the furthest off, up to { $share } of the pressure away from the equations; what goes beyond their own share
    }

## The cycle

both-sides-not-read = vapor and liquid side were not both read in cooling

not-superheated = the vapor is not superheated, so its state is not known from pressure and temperature

not-subcooled = the liquid is not subcooled, so its state is not known from pressure and temperature

## Whether the system had settled

let-it-run = Let the system run on without touching the charge, then read again.

time-of-reading = time of the reading

# $changed (text) - when the charge was changed
# $read (text) - when it was read
changed-after = the charge was changed at { $changed }, after the reading at { $read }

no-start-no-change = neither the start of the compressor nor the last change of charge has a time

# $read (text) - when it was read
# $passed (quantity) - the time since
# $least (text) - the time required
# $since (choice: start, change) - what it counts from
too-early =
    { $since ->
        [change] the reading at { $read } was taken { $passed } after the last change of charge; at least { $least } are required
       *[start] the reading at { $read } was taken { $passed } after the start of the compressor; at least { $least } are required
    }

last-change = last change of charge

charge-added-at = charge added at

charge-removed-at = charge removed at

## How the compressor ran

running = running

compressor-speed = compressor speed

# $state (choice: full, high-stage, part) - how it ran
not-in-charging-mode =
    { $state ->
        [full] a variable-speed compressor ran at full load and not in the maker's charging mode, so that its readings set no charge
        [high-stage] a variable-speed compressor ran in high stage and not in the maker's charging mode, so that its readings set no charge
       *[part] a variable-speed compressor ran at part load and not in the maker's charging mode, so that its readings set no charge
    }

not-in-charging-mode-next = Set the maker's charging or test mode and read again, or weigh the charge in.

charging-mode-not-shown = it is not shown that the variable-speed compressor was held in the maker's charging mode

charging-mode-not-shown-next = Hold it in the maker's charging or test mode, say so with the reading, and read again; or weigh the charge in.

part-load = the compressor ran at part load

part-load-next = Run it at full load or in high stage and read again.

running-not-written = the kind of compressor and how it ran are not written

full-load-not-written = it is not written that the compressor ran at full load or in high stage

# $state (choice: full, high-stage, charging-mode, part, unknown) - how it ran
ran =
    { $state ->
        [full] at full load
        [high-stage] in high stage
        [charging-mode] in its charging mode
        [part] at part load
       *[unknown] in a way nobody knows
    }

put-right-next = Put it right and read again.

## Whether the method holds

# $fitted (quantity) - size of the orifice
# $asked (quantity) - size the maker requires
wrong-orifice = the installed orifice of { $fitted } is not the { $asked } the maker requires, so the target does not hold

wrong-orifice-next = Fit the orifice the maker requires, evacuate, weigh in and read again.

pair-not-listed = the maker does not list this pair of units

orifice-installed = orifice installed

orifice-required = orifice the maker requires

matched = matched

# $what (message) - the reading
# $value (quantity) - what was read
# $range (message) - the range
outside-method = { $what } at { $value } lies outside the range of the method, { $range }

too-cold-next = Weigh the charge in and come back in warmer weather; write the return visit.

too-hot-next = Come back when it is cooler, or weigh the charge in.

room-too-cold-next = Warm the room and read again, or weigh the charge in.

room-too-warm-next = Let the system bring the room down and read again.

head-pressure-raised = head pressure raised

# $source (text) - the document
read-with-head-pressure = Read with the head pressure raised: { $source }.

# $pressure (message) - where the pressure was read
# $line (message) - where the temperature was read
line-in-superheat = the pressure was read at this place: { $pressure }, the temperature at another: { $line }; so the line between them is in the superheat

before-condenser = the pressure was read at the discharge port, before the condenser's own pressure drop, so subcooling reads high

vapor-pressure-place = vapor pressure read at

vapor-line-place = vapor line read at

liquid-pressure-place = liquid pressure read at

maker-charges-by-weight = the maker charges this system by weight

multi-split-by-weight = a multi-split is charged by weight

vrf-by-weight = a variable-flow system is charged by weight

ductless-by-weight = a ductless split is charged by weight unless its maker says otherwise

# $cause (message) - the largest cause of doubt
finer-instruments-next = Read again with finer instruments. Most of the doubt is { $cause }.

# $readings (list) - the readings
accuracy-not-written = the accuracy of { $readings } is not written, so U is too small

# $expanded (text) - the uncertainty
# $tolerance (quantity) - half the width of the tolerance
too-coarse = U of { $expanded } is wider than the tolerance of { $tolerance }: no verdict

## Logs

log-vapor-pressure = log of the vapor pressure

log-vapor-line = log of the vapor line

log-liquid-pressure = log of the liquid pressure

log-liquid-line = log of the liquid line

log-power = log of the power

# $number (message) - superheat or subcooling
scatter-in-log = scatter of { $number } in the log

scatter-in-log-source = standard deviation of the slope of a straight line

## What the charge weighs

adjustment = adjustment

adjustment-formula = lines + extras

no-longer-line = no longer line and no extra

definition = definition

factory-charge-alone = factory charge, no adjustment

line-length-missing = the line adjustment needs the length of the liquid line and the length the factory charge covers

figure-next = Write the maker's figure for longer lines with its page.

figure-and-scale-next = Look up the maker's figure for longer lines. Weigh in what it requires. Write both: the figure with its page, the cylinder before and after.

# $extra (text) - what the extra is for
extra-without-mass = the extra { $extra } has neither a mass nor a figure with its length

some-extra-without-mass = an extra has neither a mass nor a figure with its length

extra-next = Write its mass, or its figure and length.

line-adjustment = line adjustment

length-of-figure = length the figure counts for

covered-by-factory = covered by factory charge

deduct-for-shorter = deduct for shorter lines

adjustment-for-lines = adjustment for the lines

adjustment-for-lines-formula = figure × (length − length covered)

adjustment-for-lines-covered = figure × (length − length covered), nothing where the factory charge covers them

# $size (text) - diameter of the line it is for
extra-line = { $size } line

extra = extra

as-maker-gives-it = as the maker gives it

# $name (text) - the extra
figure-of = { $name }: figure

# $name (text) - the extra
length-of = { $name }: length

# $name (text) - the line
diameter-of = { $name }: diameter

figure-times-length = figure × length

no-lines-no-figure = neither the lines nor the maker's figure for longer lines are written

lines-longer = the lines are longer than the factory charge covers, and the maker's figure for that is not written

# $line (message) - a line
# $place (text) - where it goes to
line-to = { $line } to { $place }

put-into-circuit = refrigerant put into the circuit

nothing-of-charging = nothing about the charging is written

arrival-not-written = it is not written how the unit arrived: charged, with nitrogen, or evacuated

arrival-unknown = nobody knows what the unit held when it arrived

nothing-weighed = no scale reading and no mass added is written

factory-charge-of-another = the factory charge is one of another refrigerant

factory-charge-not-written = the factory charge is not written

total-charge = total charge

total-charge-formula = factory charge + put in

nothing-put = nothing

# $number (count) - which of the cylinders
cylinder-numbered = cylinder { $number }

refrigerant-added = refrigerant added

refrigerant-removed = refrigerant removed

# $time (text) - when
refrigerant-added-at = refrigerant added at { $time }

# $time (text) - when
refrigerant-removed-at = refrigerant removed at { $time }

# $cylinder (text) - the cylinder
cylinder-before = { $cylinder }: before

# $cylinder (text) - the cylinder
cylinder-after = { $cylinder }: after

# $cylinder (text) - the cylinder
out-of = out of { $cylinder }

before-after = before − after

after-before = after − before

recovered = recovered

charged = charged

taken-off = taken off

label-total = total on the label

circuit-emptied = the circuit was emptied

total-not-written = the total charge is not written

out-of-cylinder = out of the cylinder

# $name (message) - what was weighed
# $cylinder (text) - the cylinder
of-cylinder = { $name }, { $cylinder }

difference-formula = before − after; the zero of the scale cancels, its accuracy counts once for the difference

# $scale (text) - the scale
scale-linearity = { $scale }: slope and linearity

scale-linearity-source = the whole accuracy of the scale, for a difference

left-in-hoses = left in hoses

hoses = hoses

left-in-hose = left in the hose

# $number (count) - which hose
left-in-hose-numbered = left in hose { $number }

each-hose = for each hose, common practice

# $mass (symbols) - the mass with its sign
hose-term = { $mass } (left in hoses)

hose-not-written = 0 (left in hoses: not written)

sum-formula = added − removed − left in hoses

plate-refrigerant = nameplate: refrigerant

plate-safety-class = nameplate: safety class

changed-from = changed from

changed-to = changed to

## Volume of what was inside

section-volume-unknown = the volume of this section is not known

volume-not-written = neither the circuit's volume nor the line set is written

circuit-volume = circuit volume

as-written = as written

as-written-common = as written; its uncertainty is common practice, no source

volume-of-circuit = volume of the circuit

# $line (message) - the line
# $size (text) - its diameter
no-tube-size = the wall of the { $line }, { $size }, is not written and this is no size of refrigeration tube

wall-as-written = wall as written

no-lines = the line set has no lines

volume-of-lines = volume of the lines

volume-of-lines-source = bore and length as nominal, common practice, no source

from-line-set = from the line set

volume-of-coils = volume of the coils

volume-of-coils-source = from nothing to twice the estimate, common practice, no source

volume-of-section = volume of the section, estimated

volume-of-section-formula = V_l · (1 + coils)

# $share (quantity) - volume of coils and vessels over that of the lines
coils-and-vessels = coils and vessels { $share } of the lines, from nothing to twice that

common-practice = common practice, no source

estimated-from-lines = estimated from the line set

section = section

section-name = section's name

service-valves = service valves

expansion-valve = expansion valve

solenoids = solenoids

reversing-valve = reversing valve

valves-check = check valves

isolation-valves = isolation valves

# $work (choice: tested, evacuated) - what was done
# $valves (list) - what stood closed
valves-shut =
    { $work ->
        [tested] The whole system is said to be tested, but closed were: { $valves }.
       *[evacuated] The whole system is said to be evacuated, but closed were: { $valves }.
    }

valves-shut-next = Open them, or name the section that was really inside and do the rest as its own section.

# $valves (list) - valves whose position is not written
valves-unknown = not written how these valves stood: { $valves }

valves-unknown-next = Write how the valves stood.

# $work (choice: tested, evacuated) - what was done
# $section (message) - the section
section-done =
    { $work ->
        [tested] Tested: { $section }.
       *[evacuated] Evacuated: { $section }.
    }

# $section (message) - the section
# $name (text) - its name
section-named = { $section }, { $name }
