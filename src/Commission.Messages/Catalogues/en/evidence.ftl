### Evidence: whether the record is worth relying on, and readings that cannot be what they say.

# $level (quantity) - the reading
# $when (text) - when it was read
# $least (quantity) - what a field pump reaches through hoses at best
vacuum-too-deep = { $level } at { $when }: through hoses a field pump comes no lower than about { $least }.

# $when (text) - when it was read
vacuum-zero = The gauge showed exactly 0 at { $when }: it was off, unplugged or below its range, or its unit is wrong.

vacuum-implausible-next = Which unit was the gauge set to, micron, Pa or mbar, and did it read the air of the room before? Correct the unit, or pull down again and read with a gauge that shows a known pressure rightly.

# $file (text) - name of the log
# $unit (name) - the unit that was taken
unit-guessed = Neither the heading of { $file } nor the job says the unit of its readings; { $unit } was only taken for it.

# $file (text) - name of the log
# $unit (name) - the unit that was taken
unit-guessed-next = Which unit was the gauge set to when it wrote { $file }? Write the unit beside the file, { $unit } if that is right.

# $readings (list) - names of the readings
no-instrument = no instrument is named for { $readings }

# $readings (list) - names of the readings
no-instrument-next = Say which instrument read { $readings }.

# $earlier (text) - when the first row was read
# $earlier-line (name) - its line in the file
# $later (text) - when the second row was read
# $later-line (name) - its line in the file
# $count (count) - how many numbers the rows have
rows-repeated = The readings at { $earlier } (line { $earlier-line }) and at { $later } (line { $later-line }) are the same in all { $count } numbers, to the last digit. A running system hardly ever stands that still: one of the rows may be a copy.

rows-repeated-next = Compare the two rows of readings. If one was copied, read again and write what the gauges show; if they did stand still, say so in the notes.

no-instrument-help = Say on which instrument each reading was taken, once with the instrument or once for the phase.

## Last digits of a log

# $round (count) - values that end in 0 or 5 of the display's step
# $count (count) - values that differ from the one before
log-digits = Of { $count } changes of the vacuum log { $round } end in 0 or 5 of the display's own step. A display that counts does that once in five.
log-digits-kind = a fact about digits; numbers written or rounded by hand are one reason
log-digits-next = Compare the log with the gauge's own file or its photos.

log-no-stretch = No stretch of the log comes twice by more than chance.

# $length (count) - values of a stretch
# $first (name) - row at which it begins
# $file (text) - name of the log
# $second (name) - row at which it begins again
log-stretch = { $length } values in a row from row { $first } of { $file } come again from row { $second }, digit for digit.
log-stretch-kind = a fact about two stretches; it says nothing about why
log-stretch-next = Look at both stretches of the file; export the log again from the gauge.

# $count (count) - readings of the hold
# $scatter (quantity) - how far a reading lay from its neighbours before
log-steady = From the closing of the valve on { $count } readings of the vacuum log lie on a straight line to the last digit. Before, the same display went up and down by { $scatter }.
log-steady-kind = a fact about digits; numbers filled in by a formula are one reason

# $count (count) - how many photos
photos-good =
    { $count ->
        [one] The photo is a whole picture, large enough to read.
       *[other] { $count } photos are whole pictures of their own, large enough to read.
    }

# $file (text) - the photo
# $line (name) - its line in the job file
# $other (text) - the photo it is a copy of
# $other-line (name) - that one's line
photo-copied = { $file } (line { $line }) is the same picture as { $other } (line { $other-line }), byte for byte

# $file (text) - the photo
# $line (name) - its line in the job file
# $size (text) - its width and height
# $least (text) - the least width and height
photo-small = { $file } (line { $line }) has { $size } pixels, and below { $least } nothing can be read off it

# $first (message) - what is wrong with one photo
# $more (message) - what is wrong with the others
photos-faults = { $first }; { $more }

photos-next = Name the photo as the camera took it, another one for each thing to be shown; a picture sent through a messenger arrives small.

# $earlier (text) - one photo
# $earlier-line (name) - its line in the job file
# $later (text) - the other
# $later-line (name) - its line in the job file
photos-alike = { $earlier } (line { $earlier-line }) and { $later } (line { $later-line }) look nearly the same. One may be a copy of the other, or both were taken from one place.

# $file (text) - the photo
# $line (name) - its line in the job file
# $taken (text) - the camera's time
photo-other-day = By the camera's clock { $file } (line { $line }) was taken on { $taken }, a day without work on this job.

# $file (text) - the photo
# $line (name) - its line in the job file
# $taken (text) - the camera's time
# $written (text) - the time written
photo-other-time = By the camera's clock { $file } (line { $line }) was taken on { $taken }; the job says { $written }.

photo-time-next = Was the camera's clock right? If so, the photo belongs to another visit or the time written is wrong: name the right photo, or correct the time.

## A vacuum that deepens by itself

# $high (quantity) - before
# $low (quantity) - after
vacuum-levels = from { $high } to { $low }

# $high (quantity) - before
# $from (time) - when
# $low (quantity) - after
# $to (time) - when
vacuum-levels-at = from { $high } at { $from } to { $low } at { $to }

# $levels (message) - from where to where
vacuum-stood = The isolated vacuum went { $levels }: it did not deepen by itself.

# $levels (message) - from where to where
# $why (message) - what is written that lets it deepen
vacuum-fell-explained = The isolated vacuum fell { $levels }; { $why }.

# $levels (message) - from where to where
vacuum-fell = The isolated vacuum fell { $levels }, and neither cooling nor a drier that could take it up is recorded.
vacuum-fell-next = Look for a pump that still pulled, a gauge that drifts, or a part that cooled. Pull down and hold again, with the temperature of the coldest part read at both ends.

## Who stands for the record

nobody-named = nobody is named
nobody-named-next = Name whoever stands for the work; the record has a line for the hand of each.

# $names (list) - names with their roles
named = Named: { $names }. Names in a file are no signatures; the record has a line for each hand.

# $day (text) - day of the work
# $names (list) - names with their dates
named-too-early = Dated before the day of the work, { $day }: { $names }.
named-too-early-next = Correct the date, or sign after the work.

## The steps of the work and their times

step-recovery = recovery
step-pressure-test = pressure test
step-evacuation = evacuation
step-charge = charge

# $step (message) - a step of the work
# $time (time) - when it was done
step-at = { $step } { $time }

# $step (message) - a step of the work
# $from (time) - its first time
# $to (time) - its last time
step-from-to = { $step } { $from } to { $to }

time-recovered = recovered
time-test-started = test started
time-stage = stage
time-strength-test = strength test
time-hold-start = hold, start
time-hold = hold
time-hold-end = hold, end
time-pump-started = pump started
time-vacuum-read = vacuum read
time-weighed = weighed
time-charge-changed = charge changed
time-reading = reading

# $event (text) - what the crew wrote
time-written = { $event }

## The order of the steps

subject-order = order of the steps
subject-under-vacuum = under vacuum
subject-dates = dates
subject-vacuum-log = vacuum log
subject-vacuum-hold = vacuum hold
subject-vacuum-depth = depth of the vacuum
subject-nitrogen-hold = nitrogen hold

# $later (message) - a step
# $begins (text) - its first time as written
# $begins-line (name) - the line of that
# $earlier (message) - the step before it
# $ends (text) - its last time as written
# $ends-line (name) - the line of that
begins-before = { $later } begins at { $begins } (line { $begins-line }), before { $earlier } ends at { $ends } (line { $ends-line })

# $tightness (text) - time of the tightness test
# $strength (text) - time of the strength test
tightness-before-strength = the tightness test begins at { $tightness }, before the strength test at { $strength }

# $faults (list) - what is out of order
order-wrong = By the times in the job: { $faults }.
order-unknown = the times do not tell which step came first
order-unknown-next = Write a time of day for each step.

# $steps (list) - the steps with their times
order-right = In order: { $steps }.

section-evacuated = section evacuated
compressor-was-started = the compressor was started
insulation-was-tested = the insulation was tested

# $act (message) - what was done
# $time (text) - when
# $line (name) - the line of that
act-at = { $act } at { $time } (line { $line })

nothing-energised = By the times in the job, nothing was energised or tested for insulation during the evacuation.

# $acts (list) - what was done under vacuum
energised-under-vacuum = by the times in the job, { $acts }, between the start of the pump and the end of the evacuation. A motor under vacuum arcs at its terminals.

date-label = label

# $file (text) - the photo
date-photo = photo { $file }

# $what (message) - what carries the date
# $date (text) - the date as written
dated = { $what } { $date }

dates-good = No date of leak check, label or photo lies before the job.

# $day (text) - day of the job
# $items (list) - what is dated before it
dates-early = Dated before the job of { $day }: { $items }.
dates-early-next = Correct the dates; a photo of another day belongs to another job.

log-gauge = gauge of the log

# $instrument (name) - the instrument
instrument-serial = { $instrument }: serial

# $instrument (name) - the instrument
instrument-resolution = { $instrument }: resolution

log-clock-set = clock of the log set
log-clock-not-set = The clock of the gauge was not set, so the times of the log are its own.

# $serial (text) - serial number
log-gauge-right = The log is of the gauge named, serial { $serial }.

# $serial (text) - serial number in the log
# $gauge (name) - the vacuum gauge of the job
# $own (text) - its serial number
log-gauge-wrong = The log is of gauge { $serial }; the job's vacuum gauge { $gauge } has serial { $own }.
log-gauge-wrong-next = Attach the log of the gauge that was used, or correct the serial number.

log-unit = unit of the vacuum log
pressure-log-unit = unit of the pressure log

## Cross-check

subject-charge-added = charge added

# $time (text) - when
subject-wet-bulb = return wet bulb, { $time }

way-written = mass written
way-scale-less-hoses = scale less what is left in hoses
way-amounts = amounts written
way-recovery = recovery
way-as-found = as found
way-wick = wick
way-humidity = humidity
left-in-hoses = left in hoses

# $time (text) - when
added-at = refrigerant added at { $time }
scale-after = scale after

# $cylinder (text) - which cylinder
scale-before-of = scale before, { $cylinder }

# $cylinder (text) - which cylinder
scale-after-of = scale after, { $cylinder }

# $number (count) - which cylinder
cylinder-number = cylinder { $number }

# $readings (list) - names of the readings
accuracy-not-recorded = the accuracy of { $readings } is not recorded
accuracy-not-recorded-next = Name the instrument and its accuracy.

normalised-difference = normalised difference

# $one (text) - the number
# $first (message) - how it was got
# $other (text) - the same number
# $second (message) - another way
ways-agree = { $one } by { $first }, { $other } by { $second }: they agree.

# $one (text) - the number
# $first (message) - how it was got
# $other (text) - the same number
# $second (message) - another way
ways-differ = { $one } by { $first }, { $other } by { $second }: they differ by more than their doubts explain.

## Finer than the instrument shows, and what stood still

# $count (count) - readings compared
finer-none = None of { $count } readings is written finer than its instrument shows.

# $readings (list) - those that are finer
finer = Written finer than the instrument shows: { $readings }.
finer-kind = a mean of several readings is one reason

# $name (text) - the reading
# $value (text) - as written
# $instrument (name) - what it was read on
# $step (text) - what that shows
finer-one = { $name } { $value } on { $instrument }, which shows { $step }

pressure-at-start = test pressure, start
pressure-at-end = test pressure, end
temperature-alone = change the temperature alone would make
ideal-gas = ideal gas

# $from (quantity) - first
# $to (quantity) - last
from-to = { $from } to { $to }

# $change (quantity) - of the pressure
# $from (quantity) - temperature at the start
# $to (quantity) - temperature at the end
pressure-moved = The test pressure moved by { $change } while the temperature went from { $from } to { $to }.

# $pressure (text) - the pressure as written at both ends
# $from (quantity) - temperature at the start
# $to (quantity) - temperature at the end
# $change (quantity) - what that alone makes
pressure-stood = The test pressure reads { $pressure } at both ends, while the temperature went from { $from } to { $to }. That alone would move it by about { $change }.
pressure-stood-kind = a fact about two readings

## Readings that agree with each other

vapor-line-too-cold = the vapor line is colder than the refrigerant boils at the vapor pressure
liquid-line-too-hot = the liquid line is hotter than the refrigerant condenses at the liquid pressure
discharge-line-too-cold = the discharge line is colder than the refrigerant condenses at the liquid pressure
outdoor-air-too-hot = the outdoor air is hotter than the refrigerant condenses at the liquid pressure
supply-air-too-cold = the supply air is colder than the refrigerant boils at the vapor pressure
liquid-line-below-air = the liquid line is colder than the outdoor air that cools it
supply-air-too-warm = the supply air is warmer than the return air

# $what (message) - what cannot be
# $time (text) - when
impossible-at = { $what }, { $time }
difference-wrong-way = difference the wrong way
heat-flows = heat flows from warm to cold; phase equilibrium

# $time (text) - when
# $what (message) - what cannot be
# $by (quantity) - by how much
impossible-by = at { $time } { $what } by { $by }

# $faults (list) - what cannot be
readings-disagree = These cannot be right together: { $faults }.

# $count (count) - comparisons
readings-agree =
    { $count ->
        [one] The readings of the running system agree with each other ({ $count } comparison).
       *[other] The readings of the running system agree with each other ({ $count } comparisons).
    }

vacuum-fall = fall of the isolated vacuum
vacuum-fall-formula = p_after equalization − p_end

## Rows that repeat, last digits, names of instruments

# $earlier (text) - one row
# $later (text) - another row
rows-by-chance = probability that { $earlier } and { $later } agree by chance

rows-by-chance-formula = Π P(same digits)

# $earlier (name) - line of one row
# $later (name) - line of the other
# $readings (list) - what both say
rows-alike = line { $earlier } and line { $later }: { $readings }

# $chance (symbols) - how many such pairs of rows there are for one
once-in = once in { $chance }

# $count (count) - rows compared
rows-differ = No two of { $count } rows of readings agree in every digit by more than chance.
rows-repeated-kind = a fact about two lines; it says nothing about why

# $count (count) - digits
# $least (number) - how many it takes
digits-too-few = { $count } last digits can be compared, too few to say anything ({ $least }).
digits-too-few-kind = too few readings typed to the step of their instrument
digits-spread = spread of the last digits

# $count (count) - readings
# $spread (number) - chi squared
digits-even = The last digits of { $count } readings are spread evenly enough (χ² { $spread }).

# $count (count) - readings
# $digits (symbols) - each digit with how often it comes
# $records (number) - how rare that is
digits-uneven = The last digits of { $count } readings are spread unevenly ({ $digits }). Evenly spread digits do that less than once in { $records } records.
digits-uneven-kind = a fact about digits; rounding in the head is one reason

# $count (count) - readings judged
all-named = All { $count } judged readings name their instrument.

# $without (count) - readings without an instrument
# $count (count) - readings judged
# $readings (list) - their names
some-unnamed = { $without } of { $count } judged readings name no instrument: { $readings }.

signature-name = name

# $name (text) - who
signature-role = { $name }: role

# $name (text) - who
signature-licence = { $name }: licence

# $name (text) - who
signature-statement = { $name }: statement

# $name (text) - who
signature-date = { $name }: date

## What a record of this kind has to show

coverage-share = required items present
coverage-formula = judged / required
coverage-source = required lists of the packs in force

# $judged (count) - checks judged
# $required (count) - checks required
coverage-result = { $judged } of { $required }

# $required (count) - checks required
# $photos (choice: there, not-required) - photos
coverage-full =
    All { $required } required checks were judged{ $photos ->
        [there] , and the required photos are there
       *[not-required] {""}
    }.

# $judged (count) - checks judged
# $required (count) - checks required
coverage-part = { $judged } of { $required } required checks were judged.
coverage-part-kind = what is missing stands among the reasons of the outcome
coverage-photos-missing = Photos are missing.

## The checks: their titles, and what to do when one fails

check-chronology = Order of the work
check-chronology-fails = Correct the times that are wrong. Where the order was indeed another, say why in the notes. An insulation test or a start under vacuum may have damaged the compressor: test its insulation again.

check-coverage = Required items present
check-coverage-fails = Read the list of what is missing and write it, or come back and do it.

check-instruments-identified = Instruments identified
check-instruments-identified-fails = { no-instrument-help }

check-repeated = Repeated readings
check-repeated-fails = { rows-repeated-next }

check-resolution = Resolution
check-resolution-fails = Write what the display shows. Where a pressure stood still, look at the gauge, the valve before it and where the temperature was taken.

check-terminal-digits = Last digits
check-terminal-digits-fails = Compare with the photos and the logs of the instruments. Rounding is a habit and no offence: write what the display shows.

check-physics = Readings agree with each other
check-physics-fails = Look at the readings named: a swapped hose or clamp, the wrong refrigerant, a wrong zero, a slip of the pen. Read again.

check-agreement = Cross-check
check-agreement-fails = Find which of the two is wrong: a scale moved between readings, a dry wick, a mass left out. Correct it and say so in the notes.

check-photos = Photos
check-photos-fails = Take the photo that is missing, one for each thing to be shown. What a picture shows, people look at.

check-signature = Named to sign
check-signature-fails = Add signatures: name, role, date, licence number and what is declared: performed, or witnessed.

reading-photo = photo

# $file (text) - the photo
reading-photo-taken = photo { $file }: taken
