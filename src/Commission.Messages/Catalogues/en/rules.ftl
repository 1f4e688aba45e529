### What does not fit together in a job file whose every value is fine by itself.

both-figures-next = Check both.

swapped-next = Check whether they are swapped.

correct-times = Correct the times.

date-of-another-day = Correct the times; write the date with a time of another day.

## The site

no-atmosphere = The site has neither an elevation nor a station pressure.

no-atmosphere-expected = One of them is needed to turn gauge pressure into absolute pressure.

# $example (name) - an elevation as a job file has it
no-atmosphere-next = Write elevation: and the height of the town, such as { $example }.

# $pressure (symbols) - the barometer as written
sea-level = { $pressure } looks corrected to sea level.

sea-level-next = Write what a barometer on site shows, not the weather report; or delete the line.

# $pressure (symbols) - the barometer as written
barometer = { $pressure } does not fit the elevation.

# $elevation (symbols) - the elevation as written
# $pressure (symbols) - what a barometer shows there
barometer-expected = At { $elevation } a barometer shows about { $pressure }.

barometer-next = Check both; or delete one of them.

## Nameplate and lines

# $phases (count) - phases written
phases =
    { $phases ->
        [one] A unit does not have { $phases } phase.
       *[other] A unit does not have { $phases } phases.
    }

phases-next = Write 1 or 3.

# $low (symbols) - design pressure of the low side
# $high (symbols) - design pressure of the high side
design-pressures = The low side's design pressure { $low } is above the high side's { $high }.

# $rise (symbols) - how far the line rises
# $length (symbols) - how long it is
line-rise = The line rises { $rise } and is only { $length } long.

## Instruments and names

# $calibrated (date) - day of the calibration
# $day (date) - day of the job
calibration = The calibration of { $calibrated } lies after the job's date { $day }.

calibration-next = Check the year.

# $mass (symbols) - the mass of the check weight
weight-without-mass = A check weight of { $mass } weighs nothing.

weight-without-mass-next = Write its mass.

# $step (symbols) - a step of the display
# $next (symbols) - the step after it
steps-without-range = The step { $step } does not say for which readings, and { $next } stands beside it.

steps-without-range-expected = All but the last of several steps say up to where they hold.

# $next (symbols) - the step that begins there
# $above (symbols) - where it begins
# $end (symbols) - where the one before it ends
steps-apart = The step { $next } begins above { $above }, and the one before it holds up to { $end }.

steps-apart-expected = One range begins where the other ends.

# $step (symbols) - a step of the display
# $begin (symbols) - where it begins
# $end (symbols) - where it ends
steps-backward = The step { $step } holds from { $begin } up to { $end }, which is no range.

steps-backward-expected = Steps stand in the order of their ranges, the lowest first.

steps-backward-next = Put them in order.

# $kind (choice: instrument, indoor-unit, branch-box, cylinder) - what has the name
# $name (text) - the short name
# $where (message) - where the first is
same-name =
    { $kind ->
        [instrument] Two instruments are called "{ $name }"; the first is { $where }.
        [indoor-unit] Two indoor units are called "{ $name }"; the first is { $where }.
        [branch-box] Two branch boxes are called "{ $name }"; the first is { $where }.
       *[cylinder] Two cylinders are called "{ $name }"; the first is { $where }.
    }

# $line (count) - a line of the same file
in-line = in line { $line }

# $place (name) - file, line and column
in-file = in { $place }

same-name-next = Give one of them another name.

# $kind (choice: instrument, cylinder, unit) - what is named
# $name (text) - the short name as written
unknown-name =
    { $kind ->
        [instrument] "{ $name }" is not an instrument of this job.
        [cylinder] "{ $name }" is not a cylinder of this job.
       *[unit] "{ $name }" is not an indoor unit or branch box of this job.
    }

# $key (name) - the key under which they are listed
unknown-name-next = List it under { $key }.

# $key (name) - the key under which they are listed
# $names (message) - the short names there
names-there = Under { $key } there are { $names }.

## Figures of the maker

no-figure = This limit has no figure.

no-figure-next = Write target and tolerance, or minimum, or maximum.

backward-limit = The minimum is above the maximum.

# $low (symbols) - the minimum
# $high (symbols) - the maximum
backward-torque = The minimum { $low } is above the maximum { $high }.

# $rows (count) - rows written
chart-rows =
    { $rows ->
        [one] The chart has { $rows } row of values.
       *[other] The chart has { $rows } rows of values.
    }

chart-rows-expected-one = Without down one row is expected.

# $rows (count) - rows that are expected
chart-rows-expected =
    { $rows ->
        [one] { $rows } row is expected, one for each value of down.
       *[other] { $rows } rows are expected, one for each value of down.
    }

chart-rows-next = Complete it, or delete what is too much.

# $row (count) - the row
# $values (count) - values in it
chart-values =
    { $values ->
        [one] Row { $row } of the chart has { $values } value.
       *[other] Row { $row } of the chart has { $values } values.
    }

# $values (count) - values that are expected
chart-values-expected =
    { $values ->
        [one] { $values } is expected, one for each value of across.
       *[other] { $values } are expected, one for each value of across.
    }

chart-values-next = Complete it; a dash of the maker's chart is written none.

# $value (symbols) - the value
# $before (symbols) - the value before it
not-after = { $value } does not come after { $before }.

axis-expected = The values of an axis rise.

axis-next = Sort them, with their rows or columns.

## Pressure test

# $given (choice: start, end) - which end of the hold is written
half-hold =
    { $given ->
        [start] The hold has a start and no end.
       *[end] The hold has an end and no start.
    }

# $missing (choice: start, end) - which end of the hold is missing
half-hold-next =
    { $missing ->
        [start] Write from: with its time, pressure and temperature.
       *[end] Write to: with its time, pressure and temperature.
    }

no-hold = The hold has no readings.

no-hold-next = Write from: and to:, or a series.

# $pressure (symbols) - the pressure as written
test-below-atmosphere = A pressure test at { $pressure } is not above the atmosphere.

# $end (symbols) - when the hold ends
hold-without-length = The hold ends at { $end }, when it starts.

# $end (symbols) - when the hold ends
# $start (symbols) - when it starts
hold-backward = The hold ends at { $end }, before it starts at { $start }.

hold-next = Correct the times; if the hold ended on another day, write its date, such as 2026-06-19 08:10.

## Evacuation

# $level (symbols) - the level as written
no-vacuum = { $level } is above the atmosphere.

no-vacuum-expected = A vacuum level is absolute pressure below it.

# $what (text) - the event as written
break-pressure = "to" is the pressure of a nitrogen break, and this is "{ $what }".

break-pressure-next = Delete it, or write what: nitrogen break.

isolated-twice = The circuit is isolated twice, and the pump was not started again in between.

isolated-twice-next = Keep one, or write the event pump on between them.

no-pump-start = The evacuation does not say when it was started.

# $example (name) - key and time as a job file has them
no-pump-start-next = Write started: and the clock time, such as { $example }.

# $what (choice: isolated, end, other) - what happened
# $at (symbols) - when
# $started (symbols) - when the pump was started
before-pump =
    { $what ->
        [isolated] The circuit was isolated at { $at }, before the pump was started at { $started }.
        [end] The evacuation ended at { $at }, before the pump was started at { $started }.
       *[other] This happened at { $at }, before the pump was started at { $started }.
    }

# $at (symbols) - when the level was read
# $started (symbols) - when the pump was started
level-before-pump = This level was read at { $at }, before the pump was started at { $started }.

# $end (symbols) - when the hold ended
# $isolated (symbols) - when the circuit was isolated
end-before-isolated = The hold ended at { $end }, before the circuit was isolated at { $isolated }.

## Refrigerant

# $before (symbols) - mass before
# $after (symbols) - mass after
recovery-lighter = The recovery cylinder became lighter: { $before } before, { $after } after.

# $gross (symbols) - the mass as written
# $tare (symbols) - the tare as written
below-tare = The cylinder weighs { $gross }, less than its tare { $tare }.

below-tare-next = Write gross masses: cylinder and refrigerant together.

# $before (symbols) - mass before
# $after (symbols) - mass after
cylinder-heavier = The cylinder became heavier: { $before } before, { $after } after.

cylinder-heavier-next = Check whether they are swapped; what was taken out stands under removed.

added-twice = The mass added is written twice: as added and as scale readings.

added-twice-next = Keep the scale readings.

no-arrival = The charging of a new installation does not say "unit arrived".

no-arrival-expected = The scale sees the whole charge or only what was added, depending on it.

no-arrival-next = Write unit arrived: charged, nitrogen holding charge, recovered and evacuated, or unknown.

empty-event = This event says nothing.

empty-event-next = Write added, removed or note.

# $heater (symbols) - since when the heater is on
# $start (symbols) - when the compressor was started
late-heater = The crankcase heater was on since { $heater }, after the compressor was started at { $start }.

late-heater-next = Write the date with it, such as 2026-06-17 18:00.

## Readings

# $pressure (symbols) - the pressure as written
below-vacuum = { $pressure } is below a perfect vacuum at this site.

# $place (choice: outdoor, return, supply) - which air
# $wet (symbols) - the wet bulb as written
# $dry (symbols) - the dry bulb as written
wet-bulb =
    { $place ->
        [outdoor] The outdoor wet bulb { $wet } is above the dry bulb { $dry }.
        [return] The return wet bulb { $wet } is above the dry bulb { $dry }.
       *[supply] The supply wet bulb { $wet } is above the dry bulb { $dry }.
    }

wet-bulb-expected = A wet bulb is at most as warm as the dry bulb.

# $pair (choice: suction-discharge, suction-liquid, suction-vapor, vapor-liquid) - which two pressures
# $low (symbols) - the one that ought to be lower
# $high (symbols) - the one that ought to be higher
pressures =
    { $pair ->
        [suction-discharge] The true suction pressure { $low } is above the discharge pressure { $high }.
        [suction-liquid] The true suction pressure { $low } is above the liquid pressure { $high }.
        [suction-vapor] The true suction pressure { $low } is above the vapor pressure { $high }.
       *[vapor-liquid] The vapor pressure { $low } is above the liquid pressure { $high }.
    }

suction-next = Check whether the readings are swapped; while the compressor runs its inlet is the lower.

vapor-next = Check whether the readings are swapped; in heating, write mode: heating.

# $at (symbols) - a time
# $before (symbols) - the time before it in the list
times = { $at } comes after { $before } in the list and is earlier.

times-next = Put the entries in the order of time, or correct the time.

## Air and electricity

fan-table-expected = The static pressures of a fan table rise.

fan-table-next = Sort the points.

# $method (text) - the method as written
no-air-flow = The air flow by "{ $method }" has no readings.

# $method (choice: heat-rise, traverse, hood, fan-table, value) - what the method needs
no-air-flow-next =
    { $method ->
        [heat-rise] Write heat rise: with its input, return and supply temperature.
        [traverse] Write traverse: with its area and velocities.
        [hood] Write hood: with its readings.
        [fan-table] Write fan table: under air, with its points.
       *[value] Write value: and the air flow.
    }

no-heat = The heat of the heat-rise test is not known.

no-heat-next = Write input, or volts and amps, or output.

# $lowest (symbols) - lowest voltage at start
# $before (symbols) - the voltage before it
voltage-drop = The lowest voltage at start, { $lowest }, is above the { $before } before it.

# $key (name) - the key
# $count (count) - values written
phase-values =
    { $count ->
        [one] "{ $key }" has { $count } value.
       *[other] "{ $key }" has { $count } values.
    }

# $key (name) - the key
# $count (count) - values written
single-phase-values =
    { $count ->
        [one] "{ $key }" has { $count } value and the nameplate one phase.
       *[other] "{ $key }" has { $count } values and the nameplate one phase.
    }

phase-values-expected = One is expected for a single phase, three for three phases.

phase-values-next = Write one or three.

single-phase-values-next = Write one.
