### How a reading is corrected with the checks of its instrument, and the causes of doubt that those leave.

smallest-step = smallest step of the indication

# $instrument (text) - the instrument
zero-reading = { $instrument }: zero reading

# $instrument (text) - the instrument
# $zero (quantity) - what it showed
# $before (quantity) - the reading
# $after (quantity) - the corrected reading
zero-taken-off = { $instrument } showed { $zero } at zero: { $before } becomes { $after }.

# $instrument (text) - the instrument
ice-bath = { $instrument }: ice bath

# $half (symbols) - half its width
field-bath = field bath { $half }

# $instrument (text) - the instrument
reading-in-ice = { $instrument }: reading in ice

# $instrument (text) - the instrument
away-from-ice = { $instrument }: away from the ice point

slope-of-class = slope of the tolerance class, as a part of the distance

accuracy-as-slope = its accuracy as slope, common practice, no source

# $instrument (text) - the instrument
cold-junction = { $instrument }: cold junction

# $drift (symbols) - kelvin for each kelvin
cold-junction-drift = { $drift } K for each K of the instrument, common practice

# $instrument (text) - the instrument
# $residual (quantity) - what it showed too much
# $before (quantity) - the reading
# $after (quantity) - the corrected reading
ice-taken-off = { $instrument } showed { $residual } too much in ice: { $before } becomes { $after }.

# $instrument (text) - the instrument
# $points (list) - what it read where
known-points = { $instrument } read { $points }

# $read (quantity) - what it read
# $applied (quantity) - the known value
# $reference (text) - what the known value came from
known-point = { $read } at { $applied } ({ $reference })

# $points (message) - what the instrument read where
# $reading (quantity) - the reading
too-far = { $points }: { $reading } lies too far from the one known point, so nothing is corrected.

# $points (message) - what the instrument read where
# $before (quantity) - the reading
# $after (quantity) - the corrected reading
shifted = { $points }: { $before } becomes { $after } (one point: shifted, not stretched).

# $points (message) - what the instrument read where
# $reading (quantity) - the reading
too-far-beyond = { $points }: { $reading } lies more than a quarter of the checked span beyond, so nothing more is corrected.

# $points (message) - what the instrument read where
same-reading = { $points }: two points have the same reading, so nothing more is corrected.

# $points (message) - what the instrument read where
# $before (quantity) - the reading
# $after (quantity) - the corrected reading
# $place (choice: between, beyond) - where the reading lies
stretched =
    { $place ->
        [beyond] { $points }: { $before } becomes { $after } (beyond the points, within a quarter of their span).
       *[between] { $points }: { $before } becomes { $after }.
    }

# $instrument (text) - the instrument
# $point (message) - what it read at the known value
# $off (quantity) - how far it is off
# $zero (choice: removed, none) - whether its zero was taken off before
reported-only =
    { $zero ->
        [removed] { $instrument } read { $point }, { $off } off after its zero; the reference states no uncertainty, so this is reported and not corrected.
       *[none] { $instrument } read { $point }, { $off } off; the reference states no uncertainty, so this is reported and not corrected.
    }

# $instrument (text) - the instrument
# $number (count) - which of the known points
known-point-cause = { $instrument }: known point { $number }

# $instrument (text) - the instrument
# $number (count) - which of the known points
reading-at-known-point = { $instrument }: reading at known point { $number }

# $instrument (text) - the instrument
air-around-clamp = { $instrument }: air around the clamp

# $instrument (text) - the clamp
# $air (quantity) - the air around it
# $pull (quantity) - how far it is pulled
# $before (quantity) - the reading
# $after (quantity) - the corrected reading
clamp-corrected = { $instrument } in air of { $air } reads { $pull } toward it: { $before } becomes { $after }.
