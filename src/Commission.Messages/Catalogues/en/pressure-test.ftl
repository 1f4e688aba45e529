### Pressure test: what the nitrogen hold shows, how high the pressure was.

## The hold

# $drop (quantity) - what the pressure fell, temperature taken out
# $loss (quantity) - share of the gas lost, with its uncertainty
# $allowed (quantity) - share that may be lost
# $cause (text) - the largest cause of doubt
hold-cannot-show = { $loss } ({ $drop }) lost, temperature taken out: that doubt is too wide to tell it from the { $allowed } allowed, and most of it is { $cause }

hold-cannot-show-next = Hold longer and through a stretch of even temperature, with a clamp on each line in the shade, and read a gauge with a finer scale; a leak grows with the time, the doubt does not.

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
level-parts-own = The weakest part under pressure, { $part }, bears { $most } by its own rating; the plate's { $low } for the low side is for the unit, which was not part of the section.

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

# $temperature (text) - temperature at the start
hold-figure-caption = Pressure with the zero taken off, and corrected to { $temperature } by the density of real nitrogen, with its U: a tight system stays level.

## The checks: their titles, and what to do when one fails

check-gas = Test gas
check-gas-fails = Stop. Release the gas outdoors away from ignition, purge with dry nitrogen, find out what it has done to the oil, and test again with dry nitrogen through a regulator and relief device.

check-level = Test pressure
check-level-fails = Too low: raise the pressure in steps and hold again. Too high: release it at once, stand clear, and have the weakest part judged by its maker before going on.

check-section = Section under test
check-section-fails = Drive the expansion valve open, hold solenoids open with a magnet, open the service valves of the part under test, and repeat; or name the section and test the rest as its own section.

check-strength = Strength test
check-strength-fails = Clear people away, raise the pressure in steps to the factor, hold it briefly, come back to the tightness level, then search the joints.

check-hold = Nitrogen hold
check-hold-fails = Search every joint with bubble solution, repair, and hold again. Where U is too wide: wait longer after filling, put the clamp on shaded pipe, read a finer gauge, hold through a stretch of even temperature.

check-time = Length of the nitrogen hold
check-time-fails = Leave the nitrogen in until the time is reached, and read pressure and temperature again.

check-settled = Rest before the hold
check-settled-fails = Wait, read pressure and temperature again, and count the hold from there.

check-joint-leak-check = Joint leak check
check-joint-leak-check-fails = Release the pressure, remake the joint (a new flare, or braze again under flowing nitrogen), test the section again and search the joint again. Never search with a flame.

check-brazing = Brazing under nitrogen
check-brazing-fails = Cut out a joint and look. Where scale is found, replace or flush what was brazed and fit a filter drier.
