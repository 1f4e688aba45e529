### Compressor: its ratio and its current.

## Ratio

# $ratio (quantity) - discharge over suction pressure, absolute
# $time (text) - when it was read
ratio-was = Compression ratio { $ratio } at { $time }.

# $ratio (quantity) - discharge over suction pressure, absolute
# $time (text) - when it was read
# $why (message) - why it is not judged, without a full stop
ratio-not-judged = Compression ratio { $ratio } at { $time }; this is not judged: { $why }.

# $ratio (quantity) - discharge over suction pressure, absolute
# $time (text) - when it was read
# $limit (text) - what is allowed
ratio-allowed = Compression ratio { $ratio } at { $time }; { $limit } is allowed.

# $ratio (quantity) - discharge over suction pressure, absolute
# $time (text) - when it was read
# $limit (text) - what is allowed
ratio-outside = Compression ratio { $ratio } at { $time }, outside what is allowed: { $limit }.
ratio-next = High: dirty condenser, low outdoor airflow, overcharge, air in the circuit, or a starved evaporator. Low: worn valves, a leaking reversing valve or a bypass.

# $likely (quantity) - the ratio that outdoor air and load make likely
ratio-far-below = far below the { $likely } that these conditions make likely

# $ratio (quantity) - discharge over suction pressure, absolute
# $time (text) - when it was read
# $why (message) - how far it lies below
ratio-passes-gas = Compression ratio { $ratio } at { $time }, { $why }: the compressor, its valves or the reversing valve let gas through.

# $low (text) - lower end of what is usual
# $high (text) - upper end of what is usual
# $source (text) - for what it is usual
# $where (choice: below, above) - where the ratio lies
ratio-usual =
    { $where ->
        [below] Usual at full load is { $low } to { $high }, { $source } (common practice): look at valves, reversing valve and load.
       *[above] Usual at full load is { $low } to { $high }, { $source } (common practice): look at both coils and their airflow.
    }

ratio-vapor-injection = vapor is injected between the stages: the usual figure for one stage says nothing here
ratio-no-limit = nobody sets a limit
ratio-no-suction = the suction pressure is not above a perfect vacuum
ratio-no-suction-next = Read the suction pressure again: zero the gauge first, and see that its hose is open.

## Current

# $current (quantity) - what the compressor draws
current-rated = Compressor current { $current }, at or below RLA.

# $current (quantity) - what the compressor draws
# $share (quantity) - its share of the rated load current
# $likely (quantity) - the share that is usual in this weather
current-low = Compressor current { $current }, { $share } of RLA; about { $likely } is usual in this weather.
current-low-why = far below what this weather makes likely
current-low-remark = A low current alone proves nothing: see the diagnosis.

# $current (quantity) - what the compressor draws
current-above-rated = Compressor current { $current }, above RLA and below the maximum continuous current.
current-above-rated-remark = A hot day or a high load may explain it; read again at rated conditions.

# $current (quantity) - what the compressor draws
current-above-continuous = Compressor current { $current }, above the maximum continuous current.
current-next = Check voltage, unbalance, condenser airflow and charge. If the current stays above MCC, stop the unit.

# $current (text) - what the compressor draws, as written
current-was = Compressor current { $current }.
current-variable-speed = RLA judges fixed-speed compressors; a variable-speed one is compared with the unit's rated input

# $current (text) - what the compressor draws, as written
current-maker-within = Compressor current { $current }, within the maker's figure.

# $current (text) - what the compressor draws, as written
current-maker-outside = Compressor current { $current }, outside the maker's figure.

current-no-plate = the nameplate's RLA is not written
current-no-plate-next = Read the compressor's rated load current on the plate.

## A number and its limit

# $was (message) - the number in words, without a full stop
# $limit (text) - the limit, as printed
figure-usual = { $was }; { $limit } is usual.

# $was (message) - the number in words, without a full stop
# $limit (text) - the limit, as printed
figure-required = { $was }; { $limit } is required.

# $was (message) - the number in words, without a full stop
# $why (message) - why, without a full stop
figure-not-judged = { $was }; this is not judged: { $why }.

# $was (message) - the number in words, without a full stop
figure-only = { $was }.

# $time (text) - when it was read
subject-heating = { $time }, heating

## Names of readings and steps

reading-mode = mode
reading-injection = vapor injection
reading-running = running
reading-distance = distance from the compressor
reading-heater = crankcase heater
reading-heater-since = crankcase heater on since

# $time (text) - when it was read
reading-sump = sump, { $time }
step-definition = definition
step-ratio = compression ratio

# $side (text) - which pressure
step-dew = dew point at { $side }
step-dew-curve = dew curve of the refrigerant
step-discharge-superheat = discharge superheat
step-sump-superheat = sump superheat
step-heater-time = time the heater was on
step-heater-time-formula = start − heater on

## Where the pressures were read

high-at-vapor-valve = The high side was read at the vapor service valve, a little below the compressor's outlet.
high-at-liquid-valve = The high side was read at the liquid service valve, below the compressor's outlet by the condenser's pressure drop.
low-at-vapor-valve = The low side was read at the vapor service valve, a little above the compressor's inlet.

## Discharge line

# $found (quantity) - what was found
# $time (text) - when it was read
discharge-line-was = The discharge line was at { $found } at { $time }

# $found (quantity) - what was found
# $time (text) - when it was read
# $limit (text) - the limit, as printed
discharge-allowed = The discharge line was at { $found } at { $time }; { $limit } is allowed.

# $found (quantity) - what was found
# $time (text) - when it was read
# $limit (text) - the limit, as printed
discharge-above = The discharge line was at { $found } at { $time }, above what is allowed: { $limit }.
discharge-no-limit = the maker's figure is not written, and the common one is for fixed-speed compressors
distance-not-written-short = The distance from the compressor is not written; the figure is for a short distance.

# $distance (text) - the distance, as written or as the limit prints it
distance-not-written = The distance from the compressor is not written; the figure is for { $distance }.

# $distance (text) - the distance, as written or as the limit prints it
distance-too-far = the line was read { $distance } from the compressor, where it has already cooled

# $distance (text) - the distance, as written or as the limit prints it
distance-too-far-next = Read it { $distance } from the compressor.

## Superheat

# $found (quantity) - what was found
# $time (text) - when it was read
discharge-superheat-read = Discharge superheat { $found } at { $time }

# $found (quantity) - what was found
# $time (text) - when it was read
discharge-superheat-was = Discharge superheat was { $found } at { $time }
discharge-superheat-suspicion = so little discharge superheat suggests liquid coming back to the compressor
discharge-no-dew-next = Check the reading; above the critical point there is no saturation and no discharge superheat.

# $found (quantity) - what was found
# $time (text) - when it was read
sump-superheat-read = Sump superheat { $found } at { $time }

# $found (quantity) - what was found
# $time (text) - when it was read
sump-superheat-was = The sump was { $found } above saturation at { $time }
sump-suspicion = a sump this near to saturation suggests refrigerant in the oil
sump-suction-next = Read the true suction pressure beside the sump.

# $found (quantity) - what was found
# $time (text) - when it was read
suction-superheat-was = Superheat at the compressor was { $found } at { $time }
suction-not-read = the suction pressure was not read
suction-not-read-heating = in heating only a pressure at the compressor's inlet tells the low side, and it was not read
suction-line-next = Read the true suction pressure beside the suction line.
suction-too-warm-next = The vapor comes back too warm, which heats the motor: check the charge, the valve and the insulation of the suction line.

## Crankcase heater

# $hours (text) - how long
heater-was-on = The crankcase heater was on for { $hours } before the start
heater-no-limit = nobody sets a time
heater-suspicion = a start with cold oil may have foamed it
heater-no-clock = the two times are not both clock times
heater-no-clock-next = Write both with date and time of day.
heater-after-start = the heater was switched on after the start
heater-after-start-next = Check the two times and their dates.
heater-since-not-written = it is not written since when the heater was on
heater-since-not-written-next = Find out when the crankcase heater was switched on.
start-not-written = the start of the compressor has no time
start-not-written-next = Find out when the compressor was started.

## The checks: their titles, and what to do when one fails

check-ratio = Compression ratio
check-ratio-fails = { ratio-next }

check-discharge-temperature = Discharge temperature
check-discharge-temperature-fails = Look for high ratio, high suction superheat, low charge, dirty condenser or air in the circuit. Burns: the line may be above 200 °F.

check-discharge-superheat = Discharge superheat
check-discharge-superheat-fails = Check superheat at the compressor, the valve's bulb, the accumulator and the charge; listen for slugging. Do not run it with liquid coming back.

check-suction-superheat = Superheat at the compressor
check-suction-superheat-fails = Do not run it with liquid coming back. Check the valve and its bulb, the airflow, the charge and the insulation of the suction line.

check-sump-superheat = Sump superheat
check-sump-superheat-fails = Check the crankcase heater, liquid coming back and the charge; let it run warm and read again.

check-crankcase-heater = Crankcase heater before start
check-crankcase-heater-fails = It cannot be made up for afterwards. Watch oil level, noise and current, read the sump superheat, and leave the heater on while the unit stands.

check-current = Compressor current
check-current-fails = { current-next }
