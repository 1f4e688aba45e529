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
log-digits = Of { $count } changes of the vacuum log { $round } end in 0 or 5 of the display's own step; a display that counts does that once in five.
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
log-steady = From the closing of the valve on { $count } readings of the vacuum log lie on a straight line to the last digit; before, the same display went up and down by { $scatter }.
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
photos-alike = { $earlier } (line { $earlier-line }) and { $later } (line { $later-line }) look nearly the same; one may be a copy of the other, or both were taken from one place.

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
vacuum-fell = The isolated vacuum fell { $levels }, and neither cooling nor a drier that could take it up is written.
vacuum-fell-next = Look for a pump that still pulled, a gauge that drifts, or a part that cooled; pull down and hold again, with the temperature of the coldest part read at both ends.

## Who stands for the record

nobody-named = nobody is named
nobody-named-next = Name whoever stands for the work; the record has a line for the hand of each.

# $names (list) - names with their roles
named = Named: { $names }. Names in a file are no signatures; the record has a line for each hand.

# $day (text) - day of the work
# $names (list) - names with their dates
named-too-early = Dated before the day of the work, { $day }: { $names }.
named-too-early-next = Correct the date, or sign after the work.

## The checks: their titles, and what to do when one fails

check-chronology = Order of the work
check-chronology-fails = Correct the times that are wrong. Where the order was indeed another, say why in the notes; an insulation test or a start under vacuum may have damaged the compressor: test its insulation again.

check-coverage = Coverage
check-coverage-fails = Read the list of what is missing and write it, or come back and do it.

check-instruments-identified = Instruments identified
check-instruments-identified-fails = { no-instrument-help }

check-repeated = Repeated readings
check-repeated-fails = { rows-repeated-next }

check-resolution = Resolution
check-resolution-fails = Write what the display shows. Where a pressure stood still, look at the gauge, the valve before it and where the temperature was taken.

check-terminal-digits = Last digits
check-terminal-digits-fails = Compare with the photos and the logs of the instruments. Rounding is a habit and no offence: write what the display shows.

check-physics = Physics of the readings
check-physics-fails = Look at the readings named: a swapped hose or clamp, the wrong refrigerant, a wrong zero, a slip of the pen. Read again.

check-agreement = Two ways to one number
check-agreement-fails = Find which of the two is wrong: a scale moved between readings, a dry wick, a mass left out. Correct it and say so in the notes.

check-photos = Photos
check-photos-fails = Take the photo that is missing, one for each thing to be shown. What a picture shows, people look at.

check-signature = Named to sign
check-signature-fails = Add signatures: name, role, date, licence number and what is declared: performed, or witnessed.
