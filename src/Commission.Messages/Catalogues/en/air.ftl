### Air: temperature split and capacity.

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
split-was = The air cooled by { $split } at { $time }.

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $why (message) - why it is not judged, without a full stop
split-not-judged = The air cooled by { $split } at { $time }; this is not judged: { $why }.

# $why (message) - why the system is charged by weight
split-by-weight = { $why }; the table is made for ducted systems with one indoor coil

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $limit (text) - what is required
split-asked = The air cooled by { $split } at { $time }; { $limit } is required.

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $limit (text) - what is required
split-high = The air cooled by { $split } at { $time }, { $limit } is required: the airflow is low.
split-high-next = Correct the airflow before the charge: filter, coil, registers, dampers, blower speed. Then read again.

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $limit (text) - what is required
split-below-maker = The air cooled by only { $split } at { $time }; { $limit } is required.
split-below-maker-next = Read it again. If it stays low, look at charge and compressor.

# $most (quantity) - upper end of the target
# $limit (text) - the target with its tolerance
split-one-sided = at most { $most } ({ $limit }; below it the reading is repeated)

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $again (text) - when it was read again
# $limit (text) - the target with its tolerance
split-low-twice = The air cooled by { $split } at { $time } and by as little at { $again }; { $limit } is the target.
split-low-twice-why = the split is below its target: there is enough air, and the capacity is short
split-low-twice-remark = There is enough air; the capacity is probably short: see the diagnosis.

# $target (quantity) - the target
split-low-once-why = the split is more than its tolerance below the target of { $target } and was read once

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $limit (text) - the target with its tolerance
split-low-once = The air cooled by only { $split } at { $time }; { $limit } is the target.
split-low-once-next = Read it again after 15 min. If it stays low, there is enough air and probably too little capacity: look at charge and compressor.

## Gas heat

gas-inlet-next = Read it again with every gas appliance burning. Too low: pipe, regulator or supplier; too high: shut the gas off and call the supplier.
gas-manifold-next = Set the regulator of the gas valve, then clock the meter; orifices must fit gas and altitude.
gas-rise-next = Above the range: clean filter and coil, open registers, raise the blower. Below it: lower the blower, look at input and leaks of the return.
gas-input-next = Look at the manifold pressure and at the size and number of the orifices, and clock the meter again.
gas-flame-next = Look at manifold pressure, orifices, burner alignment, combustion air and the heat exchanger, and read again after ten minutes.
gas-flue-next = Look at input and airflow; a flue that is too cold drips, one that is too hot wastes and may burn.
gas-draft-next = Look for a blocked or too long vent, a tired inducer, and air that another fan takes out of the house.
gas-signal-next = Clean the flame sensor, tighten its wire and the burner's ground, and read again.

# $air (quantity) - what the air gave up
# $refrigerant (quantity) - what the refrigerant took up
# $time (text) - when it was read
capacities-agree = Air side { $air }, refrigerant side { $refrigerant } at { $time }: the two agree.

# $air (quantity) - what the air gave up
# $refrigerant (quantity) - what the refrigerant took up
# $time (text) - when it was read
# $by (quantity) - their difference
capacities-differ = Air side { $air }, refrigerant side { $refrigerant } at { $time }: they differ by { $by }, more than the instruments explain.
capacities-differ-next = One of the readings behind the two capacities is wrong: measure the airflow again, then compressor power, return wet bulb and discharge line. Until it is found neither of the two counts.
capacities-kind = compares two routes to one number

## What was not told of the air side

return-above-room-next = See how the hoses sat on the manometer, and read the return side again: below the room it is a negative pressure.
static-parts-next = Look up in the manual whether the figure on the plate counts coil and filter.
heater-power-next = Read the power of the heater on a meter for three phases.
coil-wet-not-written = it is not written whether the coil was wet, and the maker's figure is for one of the two
coil-wet-not-written-next = Find out whether the coil was wet when it was read: whether water ran off it.
heat-not-read-next = Read the power of the heater, or its volts and amps, or take the output from its plate.
flow-not-read-next = Read what this method needs, or say what airflow it showed.

## Names of readings and subjects

reading-design-airflow = design airflow
reading-rated-capacity = rated capacity
reading-method = airflow method
reading-blower-power = blower power
reading-time = time of the reading
reading-outside-airflow = outside airflow
reading-outside-position = minimum position of the damper
reading-max-static-plate = max static on the plate
reading-max-static = max static
reading-design-static = design external static pressure
reading-static-return = static pressure, return
reading-static-supply = static pressure, supply
reading-wet-coil = wet coil

# $time (text) - when it was read
reading-supply-wet-bulb = supply wet bulb, { $time }

# $time (text) - when it was read
reading-power = power, { $time }
definition = definition
subject-design = design
subject-total = total
air-return = return air
air-supply = supply air
part-coil = coil
part-filter = filter
outside-airflow = airflow
outside-position = minimum position
gas-inlet = inlet pressure
gas-manifold = manifold pressure
gas-rise = rise
gas-input = input
gas-flue = flue temperature
gas-draft = draft
gas-signal = flame signal
split-name = temperature split

## State of the air

# $air (message) - return or supply air
state-no-dry-bulb = the dry bulb of the { $air } was not read

# $air (message) - return or supply air
state-no-wet-bulb = neither wet bulb nor relative humidity of the { $air } was read
state-not-read-next = Read dry bulb and wet bulb, or dry bulb and relative humidity, at one place.

# $air (message) - return or supply air
state-wet-above-dry = the wet bulb of the { $air } is above its dry bulb by more than their uncertainty
state-wet-above-dry-next = Wet the wick, or check the two sensors against each other.
state-impossible-next = Check the readings.
form-source = perfect-gas relations against real moist air, largest difference
form-ratio = moist air: form of the humidity ratio
form-enthalpy = moist air: form of the enthalpy

# $air (message) - return or supply air
# $time (text) - when it was read
state-subject = { $air }, { $time }

# $dry (quantity) - dry bulb
# $wet (quantity) - wet bulb
# $pressure (quantity) - pressure of the site
state-numbers = { $dry }, { $wet } wet bulb, { $pressure }
state-ratio = humidity ratio
state-enthalpy = enthalpy, above dry air at 0 °C
state-enthalpy-us = enthalpy, above dry air at 0 °F
state-enthalpy-formula = 1.006·t + W·(2501 + 1.86·t), kJ for each kg of dry air
state-humidity = relative humidity
state-dew-point = dew point
state-volume = volume of a mass of dry air
state-taken-as-saturated = The wet bulb was read above the dry bulb, by no more than U: the air is taken as saturated.
state-kind = state of the air, for information

# $enthalpy (quantity) - for each mass of dry air
state-heat = enthalpy { $enthalpy } above dry air at 0 °C

# $enthalpy (quantity) - for each mass of dry air
state-heat-us = enthalpy { $enthalpy } above dry air at 0 °F

# $air (message) - return or supply air
# $water (text) - humidity ratio with its unit
# $time (text) - when it was read
# $humidity (quantity) - relative humidity
# $heat (message) - its enthalpy and where that is zero
state-was = The { $air } held { $water } of water at { $time }: { $humidity } relative humidity; { $heat }.

# $air (message) - return or supply air
# $water (text) - humidity ratio with its unit
# $time (text) - when it was read
# $humidity (quantity) - relative humidity
# $point (quantity) - dew point
# $heat (message) - its enthalpy and where that is zero
state-with-dew-point = The { $air } held { $water } of water at { $time }: { $humidity } relative humidity, dew point { $point }; { $heat }.

## Airflow

# $way (message) - how it was found
# $why (message) - why it is not known
airflow-none = airflow { $way }: { $why }

# $flow (quantity) - the airflow
# $way (message) - how it was found
airflow-was = Airflow { $flow } { $way }.
airflow-no-figure = neither the maker's figure nor a design airflow nor the capacity is written
airflow-subject-maker = maker's figure
airflow-subject-capacity = for its capacity
airflow-against-design = airflow against the design

# $one (text) - a way to find the airflow
# $other (text) - another
airflow-subject-against = { $one } against { $other }

# $flow (quantity) - the airflow
# $way (message) - how it was found
# $design (text) - as written
airflow-design-only = Airflow { $flow } { $way }; the design asks for { $design }.
airflow-design-no-tolerance = no pack in use sets a tolerance around the design

# $flow (quantity) - the airflow
# $way (message) - how it was found
# $by (quantity) - how far it is from the design
# $design (text) - as written
airflow-design-within = Airflow { $flow } { $way }, { $by } from the design of { $design }.

# $flow (quantity) - the airflow
# $way (message) - how it was found
# $by (quantity) - how far it is from the design
# $design (text) - as written
# $tolerance (text) - what is allowed
airflow-design-beyond = Airflow { $flow } { $way }, { $by } from the design of { $design }: more than the { $tolerance } allowed.

# $grade (text) - its limit
# $source (text) - where it stands
airflow-grade-two = It is within the second grade ({ $grade } short, { $source }).
airflow-per-capacity = airflow for each capacity

# $nominal (text) - the figure
# $source (text) - where it stands
# $mark (text) - how sure the source is
airflow-nominal = Nominal is { $nominal }: { $source } ({ $mark }).

# $limit (text) - as printed
airflow-asked-maker = { $limit } is what the maker asks for

# $limit (text) - as printed
airflow-asked = { $limit } is required

# $flow (quantity) - the airflow
# $way (message) - how it was found
# $required (message) - what is required, and by whom
airflow-enough = Airflow { $flow } { $way }; { $required }.

# $flow (quantity) - the airflow
# $way (message) - how it was found
# $required (message) - what is required, and by whom
airflow-too-little = Airflow { $flow } { $way }; { $required }: too little air.

# $flow (quantity) - the airflow
# $way (message) - how it was found
# $required (message) - what is required, and by whom
airflow-too-much = Airflow { $flow } { $way }; { $required }: too much air.
routes-agreement = agreement of the two routes
routes-agreement-formula = |a − b| / U(a − b), shared causes taken out

# $flow (quantity) - the airflow
# $way (message) - how it was found
# $other (quantity) - the airflow of another route
# $by (message) - how that was found
routes-agree = Airflow { $flow } { $way } and { $other } { $by }: the two agree within their uncertainty.

# $flow (quantity) - the airflow
# $way (message) - how it was found
# $other (quantity) - the airflow of another route
# $by (message) - how that was found
routes-differ = Airflow { $flow } { $way } and { $other } { $by }: the two do not agree within their uncertainty.

# $pressure (quantity) - at that speed
fan-laws-static = static pressure { $pressure }

# $power (quantity) - at that speed
fan-laws-power = blower power { $power }
fan-laws-name = blower speed that would do, in the ducts as they are
fan-laws-source = fan laws

# $factor (number) - of the speed
fan-laws-times = { $factor } times the speed

# $costs (list) - static pressure and power at that speed
fan-laws-costs = { $costs }

# $factor (number) - of the speed
# $costs (list) - static pressure and power at that speed
fan-laws-would = By the fan laws { $factor } times the speed would bring it there, at { $costs }.
airflow-reserved-next = Write what is missing, or measure the airflow another way.
airflow-unknown = the airflow is not known
airflow-unknown-next = Measure the airflow, or write the maker's fan table and the static pressure.
airflow-zero = it is zero
airflow-zero-next = Read the airflow with the blower running.

# $why (message) - why
airflow-unknown-why = the airflow is not known: { $why }

## Temperature rise in heating

heat-rise-subject = heat-rise test
heat-rise-name = temperature rise

# $rise (quantity) - supply over return dry bulb
heat-rise-was = The air warmed by { $rise }.

# $rise (quantity) - supply over return dry bulb
# $why (message) - why it is not judged, without a full stop
heat-rise-not-judged = The air warmed by { $rise }; this is not judged: { $why }.
heat-rise-no-range = the maker's range is not written

# $rise (quantity) - supply over return dry bulb
# $limit (text) - as printed
heat-rise-asked = The air warmed by { $rise }; { $limit } is required.

## Capacity

return-not-read = the return air was not read
return-not-read-next = Read dry and wet bulb of the return air.
supply-not-read = the supply air was not read
supply-not-read-next = Read dry and wet bulb of the supply air.
capacity-latent = latent capacity
capacity-ratio = sensible heat ratio
capacity-mass-flow = mass flow of dry air
capacity-enthalpy = enthalpy given up
capacity-total = total capacity
capacity-total-source = definition; the condensate's heat is not taken off
capacity-field = the same by the field factor, for comparison
capacity-sensible = sensible capacity
capacity-wet-bulb-wrong = More sensible than total heat cannot be: a wet bulb reads wrong.
capacity-kind = measured capacity, for information: it holds for the temperatures of this day

# $flow (quantity) - the airflow
# $air (message) - return or supply air
capacity-flow-at = { $flow } at the { $air }

# $why (message) - why
capacity-not-settled = The system had not settled: { $why }.

# $plate (text) - as written
# $share (quantity) - measured over rated
capacity-against-plate = The plate rates { $plate } at its own temperatures; this is { $share } of it.

# $capacity (quantity) - total
# $time (text) - when it was read
# $sensible (quantity) - without the latent heat
capacity-was = The air gave up { $capacity } at { $time }, { $sensible } of it sensible.
balance-circuit-next = Check the readings of the circuit.
balance-heat = heat taken up per mass
balance-flow = refrigerant flow that balances the air side
balance-one-side-kind = one side only: without the unit's electrical power and the discharge line the refrigerant's flow has no measure of its own
balance-agreement = agreement of the two sides
balance-share = share of the input that reaches the refrigerant
balance-share-source = fan, board and heat lost by the shell; common practice
balance-compression = heat of compression per mass
balance-refrigerant = capacity on the refrigerant side

# $capacity (quantity) - total
# $time (text) - when it was read
# $flow (quantity) - mass flow of refrigerant
# $refrigerant (name) - its designation
balance-one-side = The air gave up { $capacity } at { $time }, which { $flow } of { $refrigerant } would take up.

## Static pressure

# $pressure (quantity) - external static pressure
# $why (message) - why it is not judged, without a full stop
static-not-judged = External static pressure at most { $pressure }; this is not judged: { $why }.
static-drop-next = Write the drop of that part, or read again on its other side.
static-taps-not-written = The taps are not written: the reading counts as taken where the plate means it.

# $pressure (quantity) - external static pressure
# $limit (text) - as printed
static-within = External static pressure { $pressure }, { $limit } allowed.

# $pressure (quantity) - external static pressure
# $limit (text) - as printed
static-beyond = External static pressure { $pressure }, more than the { $limit } allowed.
static-tolerance = tolerance around the design
static-tolerance-formula = the larger of the share and the least

# $share (text) - as printed
# $design (text) - as written
# $least (quantity) - smallest tolerance
static-tolerance-numbers = { $share } of { $design }, { $least }

# $pressure (quantity) - external static pressure
# $limit (text) - as printed
static-design-within = External static pressure { $pressure }, { $limit } by design.

# $pressure (quantity) - external static pressure
# $limit (text) - as printed
static-design-outside = External static pressure { $pressure }, outside the { $limit } of the design.
static-design-next = Compare ducts, filter and registers with the design; too little resistance can mean a duct that came apart.
static-total = total static pressure
static-total-formula = ESP between the taps, with the drops of coil and filter that it leaves out

# $pressure (quantity) - total static pressure
static-total-was = Total static pressure of the air handler, filter and coil included: { $pressure }.
static-total-kind = no limit of its own; the external static pressure is what the plate limits

# $part (message) - filter or coil
drop-below-zero = a drop of the { $part } below zero cannot be
drop-below-zero-next = Swap the hoses of the manometer, or write the drop without its sign.

# $part (message) - filter or coil
# $drop (quantity) - its pressure drop
drop-was = The { $part } takes { $drop }.

# $part (message) - filter or coil
# $drop (quantity) - its pressure drop
# $limit (text) - as printed
drop-within = The { $part } takes { $drop }, { $limit } allowed.

# $part (message) - filter or coil
# $drop (quantity) - its pressure drop
# $limit (text) - as printed
drop-beyond = The { $part } takes { $drop }, more than the { $limit } allowed.
coil-was-wet = The coil was wet.
coil-was-dry = The coil was dry.

## Blower power

fan-power-name = blower power for each airflow

# $power (quantity) - for each airflow
fan-power-was = The blower takes { $power }.
fan-power-no-limit = neither the maker nor a pack in use sets a limit

# $grade (text) - its limit
# $source (text) - where it stands
fan-power-grade-two = It is within the second grade ({ $grade }, { $source }).

# $power (quantity) - for each airflow
# $limit (text) - as printed
fan-power-within = The blower takes { $power }; { $limit } allowed.

# $power (quantity) - for each airflow
# $limit (text) - as printed
fan-power-beyond = The blower takes { $power }, more than the { $limit } allowed.

## The table of the air side

table-title = Air side
table-what = What
table-value = As written or worked out
table-place = Place or source
table-filter = Filter
table-coil = Indoor coil
table-wet = wet
table-dry = dry
table-outdoor-coil = Outdoor coil
table-panels = Panels on
table-cooling-speed = Blower at cooling speed
table-blower-setting = Blower setting
table-static-return = Static pressure, return
table-static-supply = Static pressure, supply
table-external = External static pressure as read
table-counts = counts
table-compared = compared
table-design-airflow = Design airflow
table-blower-power = Blower power

# $pressure (text) - as written
table-fan-table = Fan table at { $pressure }

# $way (message) - how it was found
table-airflow = Airflow { $way }

## Figures

# $time (text) - when it was read
psychrometric-title = State of the air at { $time }

# $time (text) - when it was read
# $first (message) - one state of the air
# $second (message) - the other
psychrometric-alt = Psychrometric chart at { $time }: { $first }; { $second }.

# $air (message) - return or supply air
# $dry (quantity) - dry bulb
# $water (text) - humidity ratio with its unit
# $humidity (quantity) - relative humidity
psychrometric-state = { $air } { $dry }, { $water }, { $humidity } relative humidity
curve-saturation = saturation

# $humidity (quantity) - relative humidity
curve-humidity = { $humidity } RH
axis-dry-bulb = Dry bulb
axis-ratio = Humidity ratio

# $pressure (text) - the pressure of the site
# $bars (choice: seen, hidden) - whether U of the humidity ratio can be seen
psychrometric-caption =
    Saturation and lines of relative humidity at { $pressure }, the pressure of the site.{ $bars ->
        [seen] {" "}Bars are U of the humidity ratio.
       *[hidden] {""}
    }

## Ways to the airflow

way-fan-table = by the maker's fan table
way-heat-rise = by the rise of a known heat
way-traverse = by a traverse of the duct
way-hood = by hood at the grilles

# $method (text) - as the crew wrote it
way-written = by { $method }
way-readings-not-written = its readings are not written
way-name = airflow
way-heat-rise-name = airflow by heat rise
way-traverse-name = airflow by traverse
way-hood-name = airflow at the grilles
way-hood-formula = sum of the grilles

# $number (count) - which grille
way-hood-reading = airflow at grille { $number }

fan-table-not-written = the maker's fan table is not written
fan-table-not-written-next = Take the fan table for the blower's setting from the manual.
fan-table-setting = fan table: setting
fan-table-blower-setting = blower setting

# $static (text) - as written
fan-table-static = fan table at { $static }: static pressure

# $static (text) - as written
fan-table-airflow = fan table at { $static }: airflow

# $table (text) - the setting the table is for
# $blower (text) - the setting of the blower
fan-table-other-setting = the fan table is for { $table } and the blower was set to { $blower }
fan-table-other-setting-next = Write the row of the fan table that belongs to the blower's setting.
fan-table-one-point = one point of a fan table cannot be interpolated
fan-table-one-point-next = Write the points of the table on both sides of the external static pressure.

# $pressure (quantity) - external static pressure
# $first (text) - first point of the table
# $last (text) - last point of the table
fan-table-outside = the external static pressure of { $pressure } lies outside the fan table, { $first } to { $last }
fan-table-outside-next = Write the table's further points, or measure the airflow another way.
fan-table-cause = fan table
fan-table-cause-source = one blower against the maker's table, common practice
fan-table-step = airflow by the maker's fan table
fan-table-formula = table at ESP, linear between its points

# $pressure (quantity) - external static pressure
# $points (list) - the points of the table
fan-table-numbers = { $pressure } among { $points }

# $static (text) - as written
# $airflow (text) - as written
fan-table-point = { $static }: { $airflow }

heat-output = heat output
heater-input = heater input
heater-voltage = heater voltage
heater-current = heater current
heat-three-phases = volts times amperes is the power of one phase only, and the supply has three
heat-not-read = the heat put into the air is not written
heat-no-rise = the supply air is no warmer than the return air
heat-steady-next = Let the heat run until the supply temperature is steady, with the compressor off.
heat-blower-alone = the rise is no more than a blower alone makes
heat-factor-cause = sensible-heat factor
heat-factor-cause-source = 1.08 for dry, 1.10 for moist air
heat-blower-cause = heat of the blower
heat-blower-cause-source = its power is not written; what blowers take, AHRI 210/240 (from memory)
heat-density = density of the return air against standard air
heat-return-air = return air of the heat-rise test
heat-supply-air = supply air of the heat-rise test

traverse-area = duct area
traverse-not-written = the velocities are not written
traverse-not-written-next = Write the velocities of the traverse, one for each point.

# $number (count) - which point
traverse-velocity = velocity { $number }
traverse-scatter = traverse: scatter of the points

# $points (count) - how many
traverse-scatter-source = scatter of { $points } points, s/√n
traverse-one = one velocity is no traverse: the profile of the duct is not known
traverse-mean = mean velocity
traverse-mean-formula = mean of the points

## Sources

state-source = ASHRAE Handbook — Fundamentals, chapter 1, perfect-gas relations in SI form (from memory); saturation: Hyland and Wexler 1983

## Target of the temperature split

split-table-no-wet-bulb = the table of target splits needs the return wet bulb, which was not read
split-table-no-wet-bulb-next = Read the wet bulb of the return air, or measure the airflow.
split-no-tolerance = no pack sets a tolerance for the split
split-table-rounding = table of target splits: rounding
split-table-rounding-source = half of its last printed digit
split-target = target temperature split
split-target-formula = table at return dry and wet bulb, linear between whole degrees

# $dry (quantity) - return dry bulb
# $wet (quantity) - return wet bulb
# $per-dry (number) - slope of the table along the dry bulb
# $per-wet (number) - slope of the table along the wet bulb
split-target-numbers = { $dry }, { $wet } wet bulb; ∂/∂DB = { $per-dry }, ∂/∂WB = { $per-wet }

# $target (text) - where the target is printed
# $tolerance (text) - where its tolerance is printed
split-source = { $target }; tolerance: { $tolerance }

# $target (message) - where the table is printed, and how sure that is
# $tolerance (message) - where its tolerance is printed, and how sure that is
split-table-sources = { $target }; tolerance: { $tolerance }

## The static pressures

static-external = external static pressure
static-return = return static pressure
static-supply = supply static pressure
static-drop-filter = filter drop
static-drop-coil = coil drop
static-not-read = no static pressure is written
static-not-read-next = Read return and supply static pressure against the room.

# $side (choice: return, supply) - the side that was not read
static-one-side =
    { $side ->
        [return] the static pressure of the return side is not written
       *[supply] the static pressure of the supply side is not written
    }
static-one-side-next = Read both sides: return (negative) and supply, against the room.

# $pressure (text) - as written
static-return-above-room = the return static pressure is written as { $pressure }, above the room's, and a running blower draws the return below it
static-between = static pressure between the taps

# $part (choice: filter, coil) - the part between the tap and the unit
static-tap =
    { $part ->
        [filter] return tap
       *[coil] supply tap
    }

# $part (choice: filter, coil) - the part
static-includes =
    { $part ->
        [filter] maker's figure includes filter
       *[coil] maker's figure includes coil
    }

# $part (choice: filter, coil) - the part
# $tap (text) - where the tap was, as written
static-unclear =
    { $part ->
        [filter] the return tap is { $tap }, and it is not written whether the maker's external static pressure includes the filter
       *[coil] the supply tap is { $tap }, and it is not written whether the maker's external static pressure includes the coil
    }

# $part (choice: filter, coil) - the part
static-drop-missing =
    { $part ->
        [filter] the maker's external static pressure includes the filter, whose drop is not in the reading and not written
       *[coil] the maker's external static pressure includes the coil, whose drop is not in the reading and not written
    }

# $part (choice: filter, coil) - the part
static-drop-too-much =
    { $part ->
        [filter] the reading holds the drop of the filter, which the maker's external static pressure leaves out and which is not written
       *[coil] the reading holds the drop of the coil, which the maker's external static pressure leaves out and which is not written
    }

# $part (choice: with-filter, without-filter, with-coil, without-coil) - the part that is added or taken off
static-as-counted =
    { $part ->
        [with-filter] external static pressure as the maker counts it, with the filter
        [without-filter] external static pressure as the maker counts it, without the filter
        [with-coil] external static pressure as the maker counts it, with the coil
       *[without-coil] external static pressure as the maker counts it, without the coil
    }

## The checks: their titles, and what to do when one fails

check-psychrometrics = State of the air
check-psychrometrics-fails = Nothing fails here. A wet bulb above the dry bulb, or air drier than air can be, means a dry wick or swapped readings.

check-temperature-split = Temperature split
check-temperature-split-fails = Above the target: clean filter and coil, open registers and dampers, raise the blower, read again after 15 min. Below it: measure again; if it stays, look at charge and compressor.

check-heat-rise = Temperature rise in heating
check-heat-rise-fails = Above the range: clean filter and coil, open registers and dampers, raise the blower. Below it: lower the blower or look for a heater that does not heat.

check-static = External static pressure
check-static-fails = Change a dirty filter, open dampers and registers, look for crushed flex duct and closed coils; enlarge the return before the blower is turned up.

check-filter-drop = Filter drop
check-filter-drop-fails = Change the filter; if a clean one takes too much, fit a larger or a deeper one.

check-coil-drop = Coil drop
check-coil-drop-fails = Clean the coil on the side where the air enters. Look for a coil that is too small for this airflow, or one that is iced.

check-airflow = Airflow
check-airflow-fails = Change the filter, clean the coil, open dampers and registers, read the static pressure, then set the blower. Judge the charge only afterwards.

check-fan-power = Blower power for its airflow
check-fan-power-fails = Lower the resistance before the blower is changed: filter, coil, return duct, registers.

check-capacity = Capacity on the air side
check-capacity-fails = Nothing fails here: the rated capacity holds at rated temperatures. A capacity far below it, beyond U, asks for airflow, charge and compressor.

check-energy-balance = Capacity of air and refrigerant side
check-energy-balance-fails = Nothing fails here. Where the two do not agree, look for the weakest reading: airflow, wet bulbs, the discharge clamp.

check-outside-air = Outside air
check-outside-air-fails = Set the minimum position with the blower at its usual speed, and read the outside air again. A damper wide open costs capacity and lets frost and heat in.

check-gas-heat = Gas heat
check-gas-heat-fails = Start at the inlet pressure with every gas appliance burning, then the manifold, then the airflow, then the flame.
