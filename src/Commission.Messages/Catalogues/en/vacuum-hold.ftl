### The vacuum log and the isolated hold: how the log is cut, what the steps of the trace are called, what makes the readings doubtful.

## Names of readings

reading-gauge-place = where the gauge sat
reading-isolated-at = isolated at

# $at (text) - the time, as written
reading-isolated = isolated at { $at }

# $at (text) - the time, as written
reading-vacuum-written = vacuum at { $at }

# $at (time) - when
reading-vacuum = vacuum at { $at }
reading-target = target
reading-decay-limit = decay limit
reading-decay-after = decay limit: after
reading-ambient = ambient
reading-rig-rise = rig: rise
reading-section = section
reading-refrigerant = refrigerant
reading-coldest = coldest part
reading-coldest-at-end = coldest part at the end
reading-temperature-log = temperature log
reading-sensor = sensor of the vacuum gauge
reading-serial = gauge serial of the log
reading-clock-set = clock set
reading-log = evacuation log
reading-pump-started = pump started
reading-drier = drier

# $event (text) - what happened, as written
reading-event = event: { $event }
reading-over-range = over range

## How the log is cut into pulls, breaks and hold

# $at (time) - when the log shows it
cut-break-found = The log shows a break of the vacuum at { $at }; no event says so.

# $written (time) - when it is written
# $found (time) - when the log shows it
cut-break-moved = The break is written at { $written }; the log shows it at { $found }.

# $at (time) - when it is written
cut-break-not-seen = A break is written at { $at }; the log shows no rise there.

# $written (time) - when it is written
# $found (time) - from when the log rises
cut-isolation-moved = Isolation is written at { $written }; the log rises from { $found } on.

# $rows (count) - rows without a number
cut-unreadable =
    { $rows ->
        [one] One row of the log holds no usable number and is left out.
       *[other] { $rows } rows of the log hold no usable number and are left out.
    }

# $rows (count) - rows that do not come after the row before them
cut-out-of-order =
    { $rows ->
        [one] One row of the log is out of time order and is left out.
       *[other] { $rows } rows of the log are out of time order and are left out.
    }

# $gaps (count) - gaps of the log
# $longest (duration) - the longest of them
# $from (time) - when it begins
cut-gaps =
    { $gaps ->
        [one] The log has a gap of { $longest }, from { $from }.
       *[other] The log has { $gaps } gaps; the longest is { $longest }, from { $from }.
    }
cut-no-rows-after = The log has no rows after the isolation that is written.
cut-no-isolation = No isolation is written, and the log shows no rise that would mark one: write when the valve was closed.
cut-rises-from-start = No isolation is written, and the log rises from its first row: the valve was closed before it began.

# $at (time) - from when the log rises
cut-isolation-found = No isolation is written; the log rises from { $at } on, which is taken as isolation.

## What the readings hold

series-none = neither a log nor levels are written
series-none-next = Log the evacuation, or read the level at isolation and after the hold.
series-kind = says what the readings hold; sets no limit
series-as-written = as written
series-found = found from the readings
series-pull = the pump pulls on the system
series-break = gas is let in
series-hold = the system stands isolated

# $from (time) - begin of the part
# $to (time) - its end
series-span = { $from } to { $to }

# $first (quantity) - the first pressure of the part
# $last (quantity) - the last
# $over (choice: none, between) - whether the gauge was over range in between
series-pressures =
    { $over ->
        [none] { $first } to { $last }
       *[between] { $first } to { $last }, in between above the gauge's range
    }
series-over-range = above the gauge's range

# $levels (count) - levels written by hand
# $course (list) - pulls, breaks and hold
series-levels =
    { $levels ->
        [one] One level written by hand: { $course }.
       *[other] { $levels } levels written by hand: { $course }.
    }

# $rows (count) - rows of the log
# $course (list) - pulls, breaks and hold
series-rows =
    { $rows ->
        [one] A log of one row: { $course }.
       *[other] A log of { $rows } rows: { $course }.
    }

# $pulls (count) - how often the pump pulled
series-pulls =
    { $pulls ->
        [one] one pull
       *[other] { $pulls } pulls
    }

# $breaks (count) - how often gas was let in
series-breaks =
    { $breaks ->
        [one] one break
       *[other] { $breaks } breaks
    }

# $at (time) - when the valve was closed
# $basis (choice: written, readings) - how that is known
series-isolated =
    { $basis ->
        [written] isolated at { $at }
       *[readings] isolated at { $at } by the readings
    }

# $length (duration) - how long the hold was
series-hold-length = hold of { $length }
series-no-hold = no hold

# $late (duration) - how late the readings begin
series-readings-late = The readings begin { $late } after the isolation that is written.
series-both = Levels are written by hand beside the log; the log is judged.
series-clock-not-set = The log's clock was not set: its times of day may be off.

# $found (text) - serial of the gauge in the log
# $gauge (name) - the instrument
# $known (text) - its serial
series-other-gauge = The log was written by gauge { $found }; the instrument { $gauge } has serial { $known }.

## What makes the readings of the hold doubtful

# $reading (message) - the reading
cause-step = { $reading }: resolution
cause-bend = bend of the vacuum gauge's curve
cause-bend-source = half of its accuracy, common practice, no source
cause-scatter = scatter of the hold
cause-scatter-source = residuals of the fitted curve
cause-gain = gain of the vacuum gauge
cause-gain-source = its accuracy statement; it does not average out
cause-drift = change of temperature over the hold
cause-drift-source = not recorded, or its uncertainty
cause-room = rise that the readings leave room for
cause-room-source = from the lowest to the highest of them, with the gauge's gain, a step of its display and a change of temperature

## Steps of the decay limit

step-judged-at = time at which the hold is judged
step-judged-at-formula = isolation + stated time

# $isolation (time) - when the valve was closed
# $after (duration) - the stated time
step-judged-at-values = { $isolation } + { $after }

# $at (time) - a moment
step-moment = { $at }
step-pressure-then = pressure at that time
step-pressure-then-formula = straight line between the readings on either side

# $at (time) - a moment
step-at = at { $at }
step-highest = highest pressure until then
step-highest-formula = largest of all readings from isolation on

## Shape of the rise

shape-kind = explains the hold; the decay limit judges it
shape-levels = levels written by hand do not show the shape of the rise
shape-levels-next = Log the hold at steps of 10 s or less, or write a level every minute.
shape-no-readings = the log has no usable readings after isolation
shape-no-readings-next = Log the hold at steps of 10 s or less, from isolation to its end.
shape-water-warms = Where water is left, each degree Celsius that the coldest part warms adds about 6 % to its vapor pressure. That looks like a steady rise, and the temperature at the end is not recorded.

## Tightness

reading-section-under-vacuum = section under vacuum
reading-section-under-test = section under test
reading-test-gas = test gas
reading-nitrogen-time = time of a nitrogen reading
tightness-shown = The hold in vacuum proves no tightness; the nitrogen hold and the search of the joints stand for it.
tightness-not-searched = The hold in vacuum proves no tightness; the nitrogen hold stands for it, and no joint was searched.
tightness-not-searched-next = Search each joint while it is under nitrogen pressure.
tightness-no-hold = The hold in vacuum proves no tightness, and no nitrogen hold is recorded.
tightness-kind = tightness is judged by the pressure test

## Moisture

humidity-kind = says what water the hold excludes; it is no proof that the system is dry
humidity-no-end = there is no reading at the end of a hold
humidity-no-end-next = Write when the valve was closed, and read the gauge at the end of the hold.
humidity-outside-tables = water has no vapor pressure in the tables there
humidity-outside-tables-next = Check the level and the temperature.
humidity-ice-pressure = vapor pressure of ice at the coldest part
humidity-water-pressure = vapor pressure of water at the coldest part
humidity-step = equilibrium humidity
humidity-heat-loss = heat-loss gauge in water vapor: 0.5 to 1 times what it shows (from memory)
humidity-hidden-step = water or ice colder than this gives off no more

## Leak rate the rise would mean

leak-inflow = inflow
leak-mean-formula = V · Δp/Δt, mean over the hold
leak-source = pressure-rise method, EN 1779 (from memory)

# $refrigerant (name) - the refrigerant
leak-same-hole = the same hole with { $refrigerant } vapor at its dew pressure at 20 °C
leak-viscous = viscous flow above, choked flow below
leak-molecular = molecular flow
leak-between = molecular and viscous flow: between the regimes

## Steps of the shape of the rise

shape-used = readings used
shape-used-formula = rows of the hold, less the first ones while pressures even out, those over range or in steps too coarse, and lone spikes
shape-blocks = independent readings
shape-blocks-formula = means of neighboring rows, (1 + ρ)/(1 − ρ) each, at least one a step of the gauge
shape-simulated = default of this program, tried by simulation (common practice, no source)
shape-counts = a rise over the hold counts from
shape-counts-formula = larger of 5 steps of the gauge and a tenth of what the allowed rise comes to over the hold

# $step (quantity) - step of the gauge
shape-counts-step = step { $step }
shape-default = default of this program (common practice, no source)
shape-steady-part = steady part of the rise
shape-excluded = time constant from which a source would look the same
shape-excluded-formula = largest τ of a source alone that the readings exclude at 95 %
shape-plateau = level it runs towards
shape-time-constant = time constant
shape-interval-formula = of the preferred curve; gain, zero and temperature included
witness-loss = nitrogen that a hole to the outside letting in this much air would have lost in its hold
witness-loss-formula = 1 − e^(−a·t/p_atm) for a hole that chokes; with (p² − p_atm²)/(p·p_atm) for a fine one

# $length (duration) - length of the nitrogen hold
# $pressure (quantity) - its absolute pressure
witness-loss-values = { $length } at { $pressure }
witness-source = choked and viscous flow, EN 1779 (from memory)

# $rho (symbols) - correlation of neighboring readings
# $rows (count) - rows of a block
# $length (duration) - length of a block
shape-blocks-values = ρ = { $rho }; { $rows } rows, { $length } each
shape-too-few = too few readings
shape-evidence-formula = n·ln σ² + 2k + 2k(k + 1)/(n − k − 1), less the smallest of these

# $low (symbols) - lower bound
# $high (symbols) - upper bound
shape-bounds-between = 95 %: { $low } to { $high }

# $low (symbols) - lower bound
shape-bounds-at-least = 95 %: at least { $low }

# $high (symbols) - upper bound
shape-bounds-at-most = 95 %: at most { $high }
shape-no-bounds = no bounds from this hold
