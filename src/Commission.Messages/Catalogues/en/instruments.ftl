### Instruments: whether they can be relied on.

# $on (date) - the day the detector was checked
leak-detector-checked = The leak detector was checked on { $on }.

# $on (date) - the day the detector was checked
# $day (date) - the day of the leak check
leak-detector-not-checked = The leak detector was checked on { $on }, too long before or only after the leak check of { $day }.
leak-detector-next = Check the detector on a reference leak and repeat the search.

## The wick of a wet bulb

wick-not-told = the state of the wick is not recorded
wick-not-told-next = Look at the wick: clean, wet, with air moving over it.
wick-air-not-read = the velocity of the air over the wick is not recorded
wick-air-not-read-next = Read the velocity of the air that moves over the wick.
wick-not-seen = it is not recorded that the wick was clean and wet
wick-not-seen-next = Look whether the wick is clean and wet.

deviation-stays = All that it was off stays as doubt of its readings.

## What the instrument readings are called

# $instrument (name) - the instrument
# $reading (message) - which of its readings
of = { $instrument }: { $reading }

# $instrument (name) - the instrument
named = { $instrument }

# $title (text) - title of a check
# $subject (text) - what it is about
title-of = { $title }, { $subject }

# $instrument (name) - the instrument
reading-calibrated = { $instrument }: calibrated

# $instrument (name) - the instrument
reading-interval = { $instrument }: interval

read = read
applied = applied
weight-known = check weight
known-pressure = known pressure
reading-known-pressure = reading of the known pressure
open-to-air = open to air
after-adjusting = after adjusting
zeroed-at-site = zeroed at site
full-scale = full scale
rig-closed = rig closed
rig-closed-at-end = rig closed at its end
cylinder-refrigerant = refrigerant in the cylinder
cylinder-temperature = cylinder temperature
cylinder-rested = rested
cylinder-virgin = virgin refrigerant
cylinder-liquid = liquid present
on-the-cylinder = on the cylinder
in-ice-water = in ice water
in-boiling-water = in boiling water
in-the-bath = in the bath
bath-temperature = bath temperature
reference-thermometer = reference thermometer
wick-clean = wick clean
wick-wetted = wick wetted
air-over-wick = air over the wick
detector-checked = detector checked

stated-with-weight = stated with the weight
stated-with-pressure = stated with the applied pressure
stated-with-reading = stated with the reading

# $reading (text) - the reading as written
stated-with = stated with { $reading }
smallest-step = smallest step of the indication
around-cylinder = ± 1 °F around a rested cylinder, common practice
share-of-pressure = share of the pressure

# $refrigerant (name) - its designation
equation-of-state = { $refrigerant }: equation of state

## Fine enough for the limits

# $count (count) - numbers judged
# $ratio (number) - tolerance over U
read-finely-enough =
    { $count ->
        [one] The one judged number with a tolerance band was read finely enough: its tolerance over U is { $ratio } or more.
       *[other] All { $count } judged numbers with a tolerance band were read finely enough: tolerance over U is { $ratio } or more.
    }
read-finely-enough-kind = compares each tolerance with the U of its number

# $title (text) - title of the finding
# $ratio (number) - tolerance over U
# $grade (choice: none, weak) - what that allows
read-too-coarsely =
    { $title }: tolerance over U is { $ratio }, { $grade ->
        [none] no verdict possible
       *[weak] weak
    }.
read-too-coarsely-kind = compares the tolerance with U
adequacy = adequacy
adequacy-formula = half the tolerance / U

# $cause (text) - largest cause of doubt
# $share (text) - its share of the variance
# $percent (number) - to how much of itself it would have to come down
# $ratio (number) - tolerance over U wanted
largest-cause = Largest cause: { $cause } ({ $share }). With it cut to { $percent } % of what it is, the ratio would be { $ratio }.

# $cause (text) - largest cause of doubt
# $share (text) - its share of the variance
largest-cause-of-many = Largest cause: { $cause } ({ $share }); no single instrument would do, the others have to be better too.

## Calibration

not-calibrated = no calibration date is recorded
not-calibrated-next = Write the date from the certificate or the sticker.
calibration-due = next calibration due
calibration-due-formula = calibrated + interval

# $day (date) - when
# $interval (text) - how long
day-plus = { $day } + { $interval }

# $day (date) - when
# $months (count) - how many months
day-plus-months =
    { $day } + { $months ->
        [one] { $months } month
       *[other] { $months } months
    }

# $instrument (name) - the instrument
# $day (date) - its calibration
calibrated-later = { $instrument }: the calibration date { $day } lies after the job.
calibrated-later-next = Correct the date.

# $instrument (name) - the instrument
# $due (date) - until when
# $when (choice: soon, later) - whether that is near
in-date =
    { $instrument }: in date until { $due }{ $when ->
        [soon] , due soon
       *[later] {""}
    }.

# $instrument (name) - the instrument
# $due (date) - until when
out-of-date = { $instrument }: calibration ran out on { $due }.
out-of-date-next = Have it calibrated. Repeat on an instrument in date what this one alone supports.

detector-due = next check of the detector
detector-due-formula = checked + interval

## Pressure gauges

# $instrument (name) - the gauge
zeroed-on-site = { $instrument } was zeroed on site; no offset is recorded, and none is removed.
zeroed-on-site-kind = the offset after zeroing is not recorded
not-opened = no reading with the hose open to air is recorded
not-opened-next = Open the gauge to the air and read what it shows.
reading-open = reading open to air
as-read = as read
taken-off-gauge = taken off every reading of this gauge

# $instrument (name) - the gauge
# $offset (quantity) - what it shows open to air
zero-taken-off = { $instrument } shows { $offset } open to air; taken off its readings.
no-full-scale = no full scale is recorded, so the offset cannot be set against it

# $instrument (name) - the gauge
# $offset (quantity) - what it shows open to air
zero-far-off = { $instrument } shows { $offset } open to air: far off for its range.
zero-far-off-next = Replace or repair the gauge; a bent one is wrong everywhere, not only at zero.

applied-nothing = the applied pressure is not above zero
applied-nothing-next = Apply a pressure near those that are read on the job.
error-at-pressure = error at the known pressure
reference-unknown-not-corrected = the reference has no stated uncertainty, so the error is reported and not corrected
reference-unknown-not-corrected-next = State the reference's uncertainty with the applied pressure.

# $instrument (name) - the gauge
# $pressure (text) - the known pressure
gauge-right = { $instrument } reads { $pressure } correctly.

# $instrument (name) - the gauge
# $error (quantity) - by how much it is off
# $pressure (text) - the known pressure
# $readings (choice: as-they-are, corrected) - what becomes of its readings
gauge-off =
    { $instrument } is off by { $error } at { $pressure }{ $readings ->
        [corrected] ; readings are corrected in proportion
       *[as-they-are] {""}
    }.

# $instrument (name) - the gauge
# $error (quantity) - by how much it is off
# $pressure (text) - the known pressure
gauge-too-far-off = { $instrument } is off by { $error } at { $pressure }: beyond what a service gauge may be.
gauge-too-far-off-next = Recalibrate or replace the gauge and repeat the readings taken on it.

cylinder-empty = without liquid in the cylinder there is no saturation pressure
cylinder-empty-next = Use a cylinder that still holds liquid.

# $refrigerant (name) - its designation
cylinder-unknown = no equation of state for { $refrigerant }
cylinder-unknown-next = Use a cylinder of another refrigerant.
cylinder-temperature-next = Check the cylinder's temperature.
cylinder-bubble = bubble pressure at the cylinder's temperature
difference-of-it = difference as a share of it

# $one (text) - a number
# $other (text) - what it is held against
against = { $one } against { $other }

# $time (text) - how long it should
not-rested = the cylinder is not shown to have rested { $time }
not-rested-next = Let the cylinder rest longer out of the sun, or check against nitrogen on a test gauge.
not-virgin = a cylinder of recovered refrigerant may hold air or another blend
not-virgin-next = Use a cylinder of virgin refrigerant, or check against nitrogen on a test gauge.

# $instrument (name) - the gauge
cylinder-agrees = { $instrument } agrees with the rested cylinder: no gross error.

# $instrument (name) - the gauge
# $share (quantity) - by how much
cylinder-disagrees = { $instrument } disagrees with the rested cylinder by { $share }.
cylinder-disagrees-next = Make sure that the cylinder is rested, virgin and holds liquid; else check the gauge against nitrogen on a test gauge.

## Thermometers

error-in-ice = error in ice water, as found
ice-point-of-water = ice point of water, 0 °C
left-after-adjusting = left after adjusting
taken-off-instrument = taken off every reading of this instrument

# $instrument (name) - the thermometer
# $off (quantity) - how far off it was
# $way (choice: right, high, low) - which way
ice-off =
    { $way ->
        [right] { $instrument } was right in ice water
        [high] { $instrument } read { $off } high in ice water
       *[low] { $instrument } read { $off } low in ice water
    }

# $read (message) - what it read
ice-right = { $read }.

# $read (message) - what it read
ice-taken-off = { $read }; taken off its readings.

# $read (message) - what it read
# $left (quantity) - what is left
ice-adjusted = { $read } and was adjusted; { $left } is left and taken off its readings.

# $read (message) - what it read
ice-corrected = { $read }; the readings are corrected for it.
ice-corrected-next = Adjust the instrument as its maker says.

# $read (message) - what it read
ice-too-far-off = { $read }: more than may be corrected.
ice-too-far-off-next = Repeat with fresh crushed ice and clean water; if it stays, replace the sensor.
salt-in-bath = A low reading can come from salt or dirt in the bath: about 0.06 °C for each gram of salt in a liter.

error-in-bath = error in the warm bath

# $range (text) - where it should be
bath-outside = The bath was outside { $range }, where liquid lines run.
reference-unknown = the reference has no stated uncertainty
reference-unknown-next = State the uncertainty of the reference, 113 °F +/- 0.5.

# $instrument (name) - the thermometer
# $off (quantity) - how far off it was
# $at (text) - temperature of the bath
bath-off = { $instrument } was { $off } off at { $at }.

# $instrument (name) - the thermometer
# $off (quantity) - how far off it was
# $at (text) - temperature of the bath
bath-too-far-off = { $instrument } was { $off } off at { $at }: more than may be corrected.
bath-too-far-off-next = Repeat the check; if it stays, replace the sensor.

site-pressure-unknown = the site's pressure is not known
site-pressure-unknown-next = Write the site's elevation or station pressure.
does-not-boil = water does not boil at this pressure
does-not-boil-next = Check the station pressure.
boiling-point = boiling point of water at the site
error-in-boiling-water = error in boiling water

# $instrument (name) - the thermometer
# $off (quantity) - how far off it was
boiling-off = { $instrument } was { $off } off in boiling water.

# $instrument (name) - the thermometer
# $off (quantity) - how far off it was
boiling-too-far-off = { $instrument } was { $off } off in boiling water: more than may be corrected.
boiling-too-far-off-next = Repeat the check with a rolling boil; if it stays, replace the sensor.

difference-of-pair = difference of the pair

# $one (name) - an instrument
# $other (name) - the other
# $by (quantity) - by how much
differ-at-one-place = { $one } and { $other } differ by { $by } at one place.
differ-at-one-place-next = Swap them and read again; check the one that is off in ice water.

# $instrument (name) - the wet bulb
# $fault (choice: not-clean, dry) - what was wrong
wick-bad =
    The wick of { $instrument } was { $fault ->
        [not-clean] not clean
       *[dry] dry
    }: its wet bulb reads too warm.

# $instrument (name) - the wet bulb
# $speed (text) - velocity of the air
wick-air-slow = Air moved over the wick of { $instrument } at { $speed } only: its wet bulb reads too warm.

# $instrument (name) - the wet bulb
wick-good = The wick of { $instrument } could show a wet bulb.

## Scales and vacuum gauges

error-at-weight = error at the check weight

# $instrument (name) - the scale
# $weight (text) - the check weight
scale-right = { $instrument } reads { $weight } correctly.

# $instrument (name) - the scale
# $error (quantity) - by how much it is off
# $weight (text) - the check weight
scale-off = { $instrument } is off by { $error } at { $weight }.

# $instrument (name) - the scale
# $error (quantity) - by how much it is off
# $weight (text) - the check weight
scale-too-far-off = { $instrument } is off by { $error } at { $weight }: too much for a charge by weight.
scale-too-far-off-next = Level and tare the scale and repeat; else have it calibrated.

both-show-nothing = both gauges show nothing
both-show-nothing-next = Compare them at a level they can show.
difference-of-mean = difference as a share of the mean

# $one (name) - an instrument
# $other (name) - the other
# $by (quantity) - by how much
differ = { $one } and { $other } differ by { $by }.
vacuum-gauges-differ-next = Clean both sensors and compare again; trust neither until they agree.

# $instrument (name) - the gauge
subject-rig-closed = { $instrument }, rig closed
no-target = no pack sets a target

# $instrument (name) - the gauge
# $level (text) - how low it came
rig-good = { $instrument } came down to { $level } on the closed rig, below the target.

# $instrument (name) - the gauge
# $level (text) - how low it came
rig-bad = { $instrument } came no lower than { $level } on the closed rig: it could not show the target.
rig-bad-next = Clean the sensor, change the pump oil, check hoses and seals, then repeat.

## Figures

figure-thermometers = Thermometers against what was known
figure-thermometers-caption = Error at each field check with U, after adjusting where an instrument was adjusted. Between the lines it is good as it is; beyond them it is corrected.
figure-gauges = Pressure gauges against what was known
figure-gauges-caption = Error open to air and at a known pressure, with U. The zero is taken off every reading, the rest in proportion where the reference states its uncertainty.

# $instrument (name) - the instrument
# $errors (list) - its errors
residuals-of = { $instrument } { $errors }

# $instruments (list) - instruments with their errors
figure-residuals-alt = Errors of { $instruments }.
axis-known-temperature = Known temperature
axis-known-pressure = Known pressure
axis-gauge-error = Gauge error

# $bound (quantity) - half the width of the band
line-good = ± { $bound }, good

## The checks: their titles, and what to do when one fails

check-calibration-current = Calibration current
check-calibration-current-fails = Send the instrument for calibration, or repeat the readings that need it on one that is in date. Readings taken on it stay in the record; what they support is for the reader to decide.

check-ice-point = Ice point
check-ice-point-fails = Use crushed ice to the bottom of an insulated cup, then water, and stir. Low readings with good sensors come from salt or dirt in the water. A sensor that stays more than 2 °F off is replaced.

check-warm-point = Warm point
check-warm-point-fails = Stir the bath, hold both sensors together at mid-depth, wait until neither moves. If the error stays, replace the sensor.

check-boiling-point = Boiling point
check-boiling-point-fails = Boil clean water hard, keep the sensor off the pot's wall. State elevation or station pressure, or the reference is wrong by about 1 °C for each 300 m.

check-zero-pressure = Zero of the pressure gauge
check-zero-pressure-fails = Zero the gauge on site, open to air and without hoses, at its working temperature. A gauge far off at zero is bent or damaged: replace it.

check-known-pressure = Gauge at a known pressure
check-known-pressure-fails = Repeat with a second reference. A gauge beyond the bound is recalibrated or replaced. State the reference's uncertainty, 300.0 psig +/- 0.6, so that the correction can be applied.

check-cylinder = Gauge against a rested cylinder
check-cylinder-fails = Use a virgin cylinder with liquid in it, out of the sun, rested at least four hours. If the gauge still disagrees, check it against nitrogen on a test gauge.

check-pair-agreement = Two instruments at one place
check-pair-agreement-fails = Swap the two and read again: an error that moves with the instrument is the instrument's. Check the one that is off at the ice point or against nitrogen.

check-scale = Scale at a check weight
check-scale-fails = Level the scale on a firm floor out of the wind, tare it, repeat. If the error stays, have it calibrated.

check-vacuum-gauge = Vacuum gauge
check-vacuum-gauge-fails = Clean the sensor as its maker says, change the pump oil, and check again. Use a diaphragm gauge where the gas matters.

check-leak-detector = Leak detector
check-leak-detector-fails = { leak-detector-next }

check-wick = Wick of the wet bulb
check-wick-fails = Fit a clean wick, wet it with distilled water at about room temperature, hold it in moving air until the reading stops falling.

check-adequacy = Instruments against their limits
check-adequacy-fails = Use the better instrument named, check the one in use at a point near the reading, or insulate the clamp; then read again.
