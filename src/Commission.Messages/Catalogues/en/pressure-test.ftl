### Pressure test: what the nitrogen hold shows, how high the pressure was.

## The hold

# $drop (quantity) - what the pressure fell, temperature taken out
# $loss (quantity) - share of the gas lost, with its uncertainty
# $allowed (quantity) - share that may be lost
# $cause (message) - the largest cause of doubt
hold-cannot-show = { $loss } ({ $drop }) lost, temperature taken out: that doubt is too wide to tell it from the { $allowed } allowed, and most of it is { $cause }

hold-cannot-show-next = Hold longer and through a stretch of even temperature, with a clamp on each line in the shade. Read a gauge with a finer scale. A leak grows with the time, the doubt does not.

# $gain (quantity) - share by which the gas seems to have grown
# $rise (quantity) - what the pressure rose, temperature taken out
hold-grew = the gas seems to have grown by { $gain } ({ $rise }), more than its doubt: temperature or gauge is at fault

hold-grew-next = Check that the clamp sat on shaded bare pipe at both ends, zero the gauge, and hold again.

# $drop (quantity) - what the pressure fell, temperature taken out
# $loss (quantity) - share of the gas lost, with its uncertainty
hold-no-limit = no pack sets a limit for the { $loss } ({ $drop }) lost

# $why (message) - why the loss could not be worked out
# $drop (quantity) - what the gauge fell by
# $share (quantity) - the same as a share of the absolute pressure
hold-raw-drop = { $why }; as read the pressure fell by { $drop }, { $share } of what was in

# $drop (quantity) - what the pressure fell, temperature taken out
# $loss (quantity) - share of the gas lost, with its uncertainty
# $length (duration) - how long it was held
hold-lost = { $loss } ({ $drop }) lost in { $length } after temperature is taken out: more than allowed.

## The level

# $lowest (quantity) - lowest pressure of the hold
# $least (quantity) - pressure that is usual at least
level-below-usual = Lowest test pressure { $lowest }, below the { $least } that are usual; no standard known here makes that a limit.

level-below-usual-next = Look in the manual: some makers ask for the whole design pressure. Then raise the pressure in steps and hold again.
level-below-usual-kind = common practice, and no maker's figure and no pack that asks for it

# $lowest (quantity) - lowest pressure of the hold
# $design (quantity) - design pressure of the section
level-far-below = the joints saw { $lowest } of the { $design } they are made to carry

level-weakest-not-written = no weakest part is written, and above its design pressure a section bears what its weakest part bears
level-weakest-not-written-next = Write the weakest part of the section and its rating.

# $part (text) - the weakest part of what was under pressure
# $most (quantity) - what it may bear
# $low (quantity) - the plate's design pressure of the low side
level-parts-own = The weakest part under pressure, { $part }, bears { $most } by its own rating. The plate's { $low } for the low side is for the unit, which was not part of the section.

# $low (quantity) - the plate's design pressure of the low side
level-section-not-written = which section was under pressure is not written, and the unit's low side is designed for { $low }
level-section-not-written-next = Write which section was under pressure, and that the service valves were closed.

## The search of the joints

# $gas (text) - the test gas as written
search-plain = an electronic detector has nothing to react to in { $gas }
search-plain-next = Search the joints with bubbles under this pressure, or fill with nitrogen and a tracer and use a detector made for that tracer.

# $detector (text) - the detector
# $detects (list) - what it is made for
# $gases (list) - what stood in the circuit
search-other-gas = { $detector } is made for { $detects }, and { $gases } stood in the circuit: it could find nothing
search-other-gas-next = Search the joints with bubbles under this pressure, or with a detector made for the tracer.

search-tracer-not-written = it is not written which tracer the nitrogen held
search-tracer-not-written-next = Write the tracer and its share.
search-detects-not-written = it is not written what the detector detects
search-detects-not-written-next = Write what the detector detects.

## What was not told of hold and search

settled-not-written = how long the gas had rested is not written
settled-not-written-next = Take from the crew's notes how long the nitrogen had rested before the first reading.
hold-ends-not-read-next = Read pressure and pipe temperature, with the time, when the hold begins and when it ends.
hold-times-unlike-next = Take the clock time from the crew's notes, for the start of the filling or for all readings.
# $joints (count) - joints that were searched alike
search-joints =
    { $joints ->
        [one] one joint
       *[other] { $joints } joints
    }

# $place (text) - where the joint is
search-leak = A leak at { $place }.

# $place (text) - where the joint is
# $after (choice: repair, nothing) - whether a leak was repaired before
# $method (text) - how it was searched
search-found-none =
    No leak found at { $place }{ $after ->
        [repair] {" "}after repair
       *[nothing] {""}
    }; searched with: { $method }.

# $place (text) - where the joint is
# $after (choice: repair, nothing) - whether a leak was repaired before
# $method (text) - how it was searched
# $sensitivity (text) - the smallest leak the detector shows, as written
search-found-none-sensitivity =
    No leak found at { $place }{ $after ->
        [repair] {" "}after repair
       *[nothing] {""}
    }; searched with: { $method }, from { $sensitivity } on.

# $place (text) - where the joint is
# $after (choice: repair, nothing) - whether a leak was repaired before
# $method (text) - how it was searched
# $sensitivity (text) - the smallest leak the detector shows, as written
search-too-coarse =
    No leak found at { $place }{ $after ->
        [repair] {" "}after repair
       *[nothing] {""}
    }; searched with: { $method }, which shows no leak below { $sensitivity }.

search-too-coarse-next = Search again with a finer detector.
search-sensitivity-not-written = the detector's sensitivity is not written
search-sensitivity-not-written-next = Write the detector and its sensitivity.
search-no-joint = no joint is written
search-no-joint-next = Search every field joint, and say of each how it was searched and what was found.
search-no-method = the method is not written
search-no-method-next = Say how the joint was searched: with bubbles, with a detector and a tracer in the nitrogen, or with ultrasound.

## The figure of the hold

hold-figure-measured = measured

# $temperature (quantity) - temperature at the start
hold-figure-caption = Pressure with the zero taken off, and corrected to { $temperature } by the density of real nitrogen, with its U: a tight system stays level.

hold-figure = Nitrogen hold

# $limit (text) - share that may be lost, as printed
hold-figure-limit = { $limit } of the absolute pressure lost

# $start (quantity) - pressure at the start
# $end (quantity) - pressure at the end
# $length (duration) - how long it was held
# $temperature (quantity) - temperature at the start
# $referred (quantity) - pressure at the end, referred to that temperature
# $doubt (quantity) - its expanded uncertainty
hold-figure-alt = Pressure from { $start } to { $end } in { $length }; referred to { $temperature } it ends at { $referred }, with { $doubt } of uncertainty.
hold-figure-time = Time
hold-figure-elapsed = Time since the first reading
hold-figure-pressure = Pressure

# $temperature (quantity) - temperature at the start
hold-figure-referred = referred to { $temperature }

## The table of the readings

table = Pressure test
table-shortened = The first and the last readings; the rest is in the job file.
table-what = What
table-as-read = Pressure as read
table-held = Held or rested
table-temperature = Temperature
table-referred = Corrected to the start temperature
row-stage = stage
row-strength = strength test
row-hold-begins = hold begins
row-hold-ends = hold ends
row-hold = hold

## Names of readings, and subjects

reading-log = pressure log
reading-time = time of a reading
reading-settled = settled
reading-filling-began = filling began
reading-first = first reading
reading-section = section under test
reading-gas = test gas
reading-hold-gas = gas
reading-tracer = tracer
reading-tracer-share = share of the tracer
reading-shaded = shaded
reading-oil = oil in the circuit
reading-design-low = design pressure, low side
reading-flow = nitrogen flow
reading-inspected = inspected
reading-strength = strength test pressure
reading-strength-held = strength test: held
reading-strength-result = strength test: result
reading-strength-time = strength test: time
reading-tightness-start = tightness test: start

# $number (number) - which stage, counted from one
# $pressure (text) - as written
reading-stage = stage { $number }, { $pressure }

# $time (text) - as written
reading-level = test pressure, { $time }

# $part (text) - the weakest part
reading-rating = rating of { $part }

# $place (text) - where the joint is
reading-joint-place = { $place }: place

# $place (text) - where the joint is
reading-joint-kind = { $place }: kind

# $place (text) - where the joint is
reading-joint-method = { $place }: method

# $place (text) - where the joint is
reading-joint-result = { $place }: result

# $place (text) - where the joint is
reading-joint-sensitivity = { $place }: sensitivity

# $place (text) - where the joint is
reading-joint-number = { $place }: number

# $detector (text) - the detector
reading-detects = { $detector }: detects

subject-minimum = minimum
subject-maximum = maximum
subject-strength-maximum = strength test, maximum

# $pressure (quantity) - the bound
limit-at-least = at least { $pressure }

# $pressure (quantity) - the bound
limit-at-most = at most { $pressure }

# $limit (text) - the limit as printed
# $part (text) - the weakest part
limit-of-weakest = { $limit }, the rating of { $part }

## How long it was held, and how long the gas rested

time-no-pack = no pack sets a time
times-not-known = the times of the readings are not known
times-not-known-next = Write the clock time of the first and of the last reading.

# $length (duration) - how long it was held
time-held = The nitrogen was held for { $length }.

# $length (duration) - how long it was held
# $least (text) - time that is required, as printed
time-too-short = The nitrogen was held for { $length }; { $least } are asked.

# $settled (duration) - how long the gas rested
settled-long-enough = The nitrogen rested for { $settled } before the hold.

# $settled (duration) - how long the gas rested
# $least (text) - time that is usual, as printed
settled-too-short = The nitrogen rested for only { $settled } before the hold; { $least } are usual.

## Shape of the hold

hold-not-written = no hold is written
hold-not-written-next = Hold the nitrogen, and read pressure and pipe temperature at its start and its end.

# $gas (text) - the test gas as written
hold-other-gas = the hold is worked out for nitrogen, and { $gas } was used
hold-other-gas-next = Test with dry nitrogen.
hold-no-loss-next = Check pressures and temperatures.

# $drop (quantity) - what the pressure fell, temperature taken out
hold-loss-shown = A loss is shown, within what is allowed: { $drop }.
hold-looks-like-settling = The loss fell in the first half of the hold alone: gas still cooling from filling, or taken up by oil, looks like this.
hold-oil-takes-up = Oil in the section takes up nitrogen: a small loss in the first hour may be that.
hold-reserved-next = Write how long the gas had settled, where the temperature was read, and the accuracy of gauge and thermometer.

# $loss (quantity) - share of the gas lost, with its uncertainty
# $length (duration) - how long it was held
hold-within = { $loss } lost in { $length } after temperature is taken out.

# $length (duration) - how long it was held
# $loss (quantity) - share of the gas lost, with its uncertainty
# $smallest (quantity) - smallest loss the hold shows
hold-no-loss = No loss shown in { $length }: { $loss } after temperature is taken out; the hold would have shown { $smallest }.
hold-accuracy-not-written = the accuracy of the gauge or the thermometer is not written, so U is too small
hold-settled-not-written = how long the gas had settled after filling is not written
hold-in-the-sun = the temperature was read in the sun
hold-in-the-air = the temperature was read in the air and not on the pipe

## Steps of the hold

step-density-start = density at the start
step-density-end = density at the end
step-loss = loss
step-ideal-loss = the same by the ideal-gas law, for comparison
step-referred = pressure at the end, referred to the temperature at the start

# $pressure (quantity) - pressure at the end
# $temperature (quantity) - temperature at the end
step-referred-numbers = { $pressure } at { $temperature }
step-per-degree = what moves it
step-per-degree-formula = ∂p/∂T at constant density

# $pressure (quantity) - pressure at the start
step-per-degree-numbers = at { $pressure }

# $change (quantity) - change of the pressure
# $unit (name) - unit of a difference of temperature
step-per-degree-result = { $change } per { $unit }
step-smallest = smallest loss that this hold shows nineteen times in twenty
step-refrigerant = as refrigerant vapour out of the same hole
step-refrigerant-formula = viscous, Q in proportion to (p² − p_atm²)/η

# $loss (quantity) - smallest loss the hold shows
# $length (duration) - how long it was held
step-refrigerant-numbers = { $loss } in { $length }

# $kilograms (number) - kg in a year
leak-of-order-kilograms = of the order of { $kilograms } kg/yr

# $grams (number) - g in a year
leak-of-order-grams = of the order of { $grams } g/yr

## Steps of the level

step-level-least = least test pressure
step-level-least-borne = least test pressure, no more than the weakest part bears
step-strength-least = least strength-test pressure
step-ceiling = ceiling on the design pressure

# $part (text) - the weakest part
step-weakest = rating of the weakest part, { $part }
step-rating = rating
step-factor-times-ps = factor × PS
step-factor-times-design = factor × design pressure
step-factor-times-rating = factor × rating

## What the level was

level-not-written = no test pressure is written
level-not-written-next = Write the pressure at the start and the end of the hold.
level-no-design = no design pressure is written for this section
level-no-design-next = Write the nameplate's design pressure, low and high.

# $lowest (quantity) - lowest pressure of the hold
# $least (quantity) - pressure that is required
level-met = Lowest test pressure { $lowest }, at least { $least } asked.

# $lowest (quantity) - lowest pressure of the hold
# $least (quantity) - pressure that is required
level-missed = Lowest test pressure { $lowest }, below the { $least } asked.
level-missed-next = Raise the pressure in steps to the level asked and hold again.
level-no-bound = neither a design pressure nor the rating of the weakest part is written
level-no-bound-next = Write the weakest part of the section and what it is rated for.

# $highest (quantity) - highest pressure of the test
level-borne = Highest test pressure { $highest }, within what the section may bear.

# $highest (quantity) - highest pressure of the test
# $most (quantity) - what the section may bear
level-too-high = the section saw { $highest }, above the { $most } it may bear.
level-too-high-next = Release the pressure, keep people away, and have the part judged by its maker before it goes into service.

## The strength test

strength-not-written = no strength test is written
strength-not-written-next = Do the strength test: its pressure, how long it was held, what was seen.
strength-leaked = The circuit leaked at the strength test.
strength-leaked-next = Release the pressure, repair, and begin again with the strength test.

# $pressure (text) - as written
strength-read = Strength test at { $pressure }.
strength-kind = no pack in force asks for one
strength-after-tightness = the strength test came after the tightness test

# $pressure (text) - as written
# $least (quantity) - pressure that is required
strength-met = Strength test at { $pressure }, at least { $least } asked.

# $pressure (text) - as written
# $least (quantity) - pressure that is required
strength-missed = Strength test at { $pressure }: { $least } is asked, before the tightness test.

## The gas

# $gas (text) - as written
gas = Tested with { $gas }.

# $gas (text) - as written
# $share (text) - share of the tracer, as written
# $tracer (text) - the tracer, as written
gas-with-tracer = Tested with { $gas }, { $share } { $tracer } as tracer.

# $share (text) - share of the tracer, as written
# $tracer (text) - the tracer, as written
gas-too-much-tracer = { $share } { $tracer } is more tracer than the limit allows.
gas-too-much-tracer-next = Release the gas outdoors and use a made-up mixture of at most 5 %.

# $gas (text) - as written
gas-dangerous = { $gas } was used as test gas.
gas-explodes-with-oil = With oil under pressure it explodes.
gas-burns = It burns and explodes.
gas-hides-leak = It may not be released, and it hides a leak.

## Brazing

brazing-no-flow = Joints were brazed; no nitrogen flow is written.
brazing-no-flow-kind = brazing under nitrogen is not recorded

# $flow (text) - as written
brazing-flow = Brazed with { $flow } of nitrogen flowing.

# $flow (text) - as written
brazing-flow-outside = Brazed with { $flow } of nitrogen: outside the usual range.
brazing-flow-outside-next = Too little lets scale form, too much blows pinholes: inspect a joint.

## What a hold lacks, and the causes of its doubt

no-hold = no hold is recorded
outside-nitrogen = the readings lie outside the equation of nitrogen
no-reading-at-both-ends = there is no reading at both ends of the hold
no-temperature = no temperature was read at both ends
no-temperature-next = Read the temperature on the pipe, shaded, at both ends: the pressure of nitrogen follows it.
times-unlike = the times of the readings cannot be compared
no-temperature-logged = no temperature was logged, nor read at both ends
no-temperature-logged-next = Log the temperature on the pipe, or write it at both ends.

pressure-of-log = test pressure of the log
temperature-log = temperature log

at-start = start
at-end = end

# $cause (message) - the cause
# $end (message) - at which end of the hold
cause-at = { $cause }, { $end }
cause-repeatability = repeatability of the gauge
cause-share-of-scale = share of full scale, common practice
cause-gas-less-clamp = mean gas less clamp
cause-unseen-change = change of the gas that the clamps did not see
cause-elsewhere = parts of the circuit that stand elsewhere
cause-position = position and warming of the pipe, common practice
cause-air-change = change of air pressure over the hold
cause-weather = weather, common practice
cause-step = step of the gauge
cause-step-of-log = smallest step of the log
cause-statement = accuracy statement of the gauge
cause-zero = zero of the gauge
cause-gain = gain of the gauge
cause-second-zero = zero of the second gauge
cause-second-gain = gain of the second gauge
cause-air = air pressure at the site
cause-air-source = barometer or elevation
cause-weather-alone = weather
cause-step-source = its resolution
cause-scale-unless-stated = 0.1 % of full scale unless stated
cause-position-warming = position and warming of the pipe
cause-thermometer = thermometer
cause-thermometer-source = accuracy statement of the thermometer

## The checks: their titles, and what to do when one fails

check-gas = Test gas
check-gas-fails = Stop. Release the gas outdoors away from ignition and purge with dry nitrogen. Find out what it has done to the oil. Test again with dry nitrogen through a regulator and relief device.

check-level = Test pressure
check-level-fails = Too low: raise the pressure in steps and hold again. Too high: release it at once, stand clear, and have the weakest part judged by its maker before going on.

check-section = Section under test
check-section-fails = Drive the expansion valve open, hold solenoids open with a magnet, open the service valves of the part under test, and repeat. Or name the section and test the rest as its own section.

check-strength = Strength test
check-strength-fails = Clear people away, raise the pressure in steps to the factor, hold it briefly, come back to the tightness level, then search the joints.

check-hold = Nitrogen hold
check-hold-fails = Search every joint with bubble solution, repair, and hold again. Where U is too wide, wait longer after filling and put the clamp on shaded pipe. Read a finer gauge; hold through a stretch of even temperature.

check-time = Length of the nitrogen hold
check-time-fails = Leave the nitrogen in until the time is reached, and read pressure and temperature again.

check-settled = Rest before the hold
check-settled-fails = Wait, read pressure and temperature again, and count the hold from there.

check-joint-leak-check = Joint leak check
check-joint-leak-check-fails = Release the pressure, remake the joint (a new flare, or braze again under flowing nitrogen), test the section again and search the joint again. Never search with a flame.

check-brazing = Brazing under nitrogen
check-brazing-fails = Cut out a joint and look. Where scale is found, replace or flush what was brazed and fit a filter drier.

# $flow (message) - the standard of the flow
# $viscosity (message) - where the viscosity of the vapor comes from
step-refrigerant-source = viscous flow, { $flow }; { $viscosity }
