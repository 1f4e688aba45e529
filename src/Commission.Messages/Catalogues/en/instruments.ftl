### Instruments: whether they can be relied on.

# $on (date) - the day the detector was checked
leak-detector-checked = The leak detector was checked on { $on }.

# $on (date) - the day the detector was checked
# $day (date) - the day of the leak check
leak-detector-not-checked = The leak detector was checked on { $on }, too long before or only after the leak check of { $day }.
leak-detector-next = Check the detector on a reference leak and repeat the search.

## The wick of a wet bulb

wick-not-told = nothing is written of the wick
wick-not-told-next = Look at the wick: clean, wet, with air moving over it.
wick-air-not-read = the velocity of the air over the wick is not written
wick-air-not-read-next = Read the velocity of the air that moves over the wick.
wick-not-seen = it is not written that the wick was clean and wet
wick-not-seen-next = Look whether the wick is clean and wet.

deviation-stays = All that it was off stays as doubt of its readings.

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
