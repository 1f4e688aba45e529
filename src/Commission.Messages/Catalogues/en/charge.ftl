### Charge: temperature differences of the running circuit, and a valve that hunts.

## A temperature difference

condenser-split = The condenser split
condenser-split-high-next = Clean the condenser, check its fan and that hot air does not come back to it. Then make the standing test for air in the circuit.
condenser-split-low-next = See the diagnosis: low charge, low load and cold weather look alike here.
condenser-split-receiver = head-pressure control decides where a receiver system condenses

evaporator-split = The evaporator split
evaporator-split-high-next = Check airflow, filter and coil first, then the diagnosis.
evaporator-split-low-next = Check the airflow and whether the compressor pumps, then the diagnosis.

drier-drop = The drop across the drier
drier-drop-high-next = Replace the drier and read again before the charge is touched.
drier-drop-low-next = Swap the two clamps and read again: the line cannot warm up inside a drier.

approach = The approach
approach-high-next = See the diagnosis; clean the condenser before refrigerant is added.
approach-low-next = See the diagnosis before refrigerant is removed.
approach-no-limit = no maker's figure is recorded

evaporator-superheat = Superheat at the evaporator
evaporator-superheat-high-next = Open the valve a little, or look for a restriction or low charge before it.
evaporator-superheat-low-next = Close the valve a little; check that its bulb is tight and insulated.

compressor-superheat = Superheat at the compressor
compressor-superheat-high-next = Insulate the suction line and look for low charge; hot suction gas overheats the compressor.
compressor-superheat-low-next = Check the valve, the defrost and the load before it runs on: liquid may come back.

# $what (message) - the difference
# $value (quantity) - what it was
# $time (text) - when it was read
difference-was = { $what } was { $value } at { $time }.

# $what (message) - the difference
# $value (quantity) - what it was
# $time (text) - when it was read
# $why (message) - why it is not judged, without a full stop
difference-not-judged = { $what } was { $value } at { $time } and is not judged: { $why }.

# $what (message) - the difference
# $value (quantity) - what it was
# $time (text) - when it was read
# $limit (text) - what is required
difference-asked = { $what } was { $value } at { $time }; { $limit } is required.

difference-none-next = Take the reading beside the others.
difference-no-limit = nobody sets a limit for this system

# $band (text) - the band
# $source (text) - for what it is usual
# $mark (text) - where it comes from
usual-band = usual is { $band }, { $source } ({ $mark })

## A valve that hunts

# $low (quantity) - lowest superheat
# $high (quantity) - highest superheat
superheat-swung = superheat swung between { $low } and { $high } in the settled readings

# $superheat (quantity) - the last superheat
# $time (text) - when it was read
# $swing (message) - how far it swung
valve-hunts = The valve held { $superheat } of superheat at { $time }, but { $swing }.

## What was not told of the charging

# $refrigerant (name) - a zeotropic blend
phase-not-written = it is not recorded whether { $refrigerant } left the cylinder as liquid
phase-not-written-next = Find out whether the refrigerant left the cylinder as liquid or as vapor: how the cylinder stood, and whether it has a dip tube.
throttled-not-written = it is not recorded whether the liquid was throttled into the vapor side
throttled-not-written-next = Find out whether the liquid went in throttled, through a nearly closed valve or a charging adapter.
line-length-not-known-next = Measure the liquid line, and look up in the manual what length the factory charge covers.
as-found-not-read = the readings before the work are not recorded
as-found-not-read-next = Take from the crew's notes what was read before refrigerant was touched.

## Carbon dioxide above its critical point

gas-cooler-next = Change no charge on this number. Compare the controller's set point with the maker's curve for this outlet temperature. Look at the high-pressure valve and at the gas cooler's fans.

## A log of the running system

# $length (duration) - how long the log was looked at
# $change (quantity) - change of superheat over that time
# $low (quantity) - lowest superheat beside the straight line
# $high (quantity) - highest superheat beside it
log-superheat-change = Over the last { $length } of the log superheat changed by { $change }. Beside that it kept between { $low } and { $high }.
log-superheat-moving = superheat was still moving in the log

# $length (duration) - how long the log was looked at
# $change (quantity) - change of subcooling over that time
# $low (quantity) - lowest subcooling beside the straight line
# $high (quantity) - highest subcooling beside it
log-subcooling-change = Over the last { $length } of the log subcooling changed by { $change }. Beside that it kept between { $low } and { $high }.
log-subcooling-moving = subcooling was still moving in the log

log-stopped = the power shows that the compressor stopped in the minutes before the reading
log-ran-through = The power shows that the compressor ran through the minutes before the reading.
log-still-moving-next = Wait until it stands still and read again.

## Figures

# $bars (choice: seen, hidden) - whether U of the readings can be seen
# $shade (choice: drawn, none) - whether what a limit allows is shaded
charge-time-caption =
    { $bars ->
        [seen] Each reading with its U
       *[hidden] The readings as they followed each other
    }{ $shade ->
        [drawn] ; the shaded part is what the limit of the judged reading allows.
       *[none] .
    }

# $refrigerant (name) - what is in the circuit
# $time (text) - when the states were read
# $bars (choice: seen, hidden) - whether U of the pressures can be seen
pressure-enthalpy-caption =
    Saturation dome of { $refrigerant } with lines of constant temperature. The states at { $time }: vapor at the service valve, ideal compression, liquid at the service valve, throttled.{ $bars ->
        [seen] {" "}Bars are U of the pressures.
       *[hidden] {""}
    }

## The cycle through the measured states

# $time (text) - when it was read
# $gas (name) - the refrigerant
# $heat (quantity) - heat taken up per mass
# $ratio (quantity) - high over low pressure, both absolute
# $high (choice: discharge, liquid-valve) - where the high pressure was read
# $ideal (quantity) - temperature after an ideal compression
cycle =
    { $high ->
        [discharge] At { $time } { $gas } took up { $heat }. The ratio is { $ratio } from the pressure at the vapor service valve to the one at the compressor's discharge. An ideal compressor would discharge at { $ideal }.
       *[liquid-valve] At { $time } { $gas } took up { $heat }. The ratio is { $ratio } from the pressure at the vapor service valve to the one at the liquid service valve. An ideal compressor would discharge at { $ideal }.
    }

## The air side before the charge

prerequisites-nothing = nothing of the air side is recorded
prerequisites-temperatures-only = of the air side only temperatures are recorded, which show no airflow here: filter, coil, panels and blower are not recorded
prerequisites-next = Write filter, coil, panels and blower, and measure the airflow or the temperature split.

## The checks: their titles, and what to do when one fails

check-prerequisites = Filter, coil and airflow
check-prerequisites-fails = Low airflow looks like a wrong charge on both gauges. Clean or replace the filter, open registers and dampers, set the blower, then let the system settle and read again. What was not written down makes a pass of the charge conditional.

check-match = Matched equipment
check-match-fails = Fit the orifice the plate asks for, or find the target for this combination. Until then superheat and subcooling say nothing of the charge.

check-running-condition = Running condition
check-running-condition-fails = Set the maker's charging mode or high stage, wait until the system has settled, read again. A system that cannot be held there is charged by weight or by its maker's chart.

check-stabilised = Stabilised
check-stabilised-fails = Let the system run on without touching the charge and read again. Earlier readings are drawn in the figure and not judged.

check-method-validity = Conditions for the method
check-method-validity-fails = In the cold weigh the charge in and come back when it is warm; superheat of a fixed orifice is never judged below 55 °F. With a cold or dry room warm it first.

check-saturation = Saturation temperatures
check-saturation-fails = Nothing fails here. Where there is no saturation temperature (above the critical point) the reading cannot be judged by superheat or subcooling.

check-by-weight = Charge by weight
check-by-weight-fails = Add or recover the difference by weight. A negative adjustment means that refrigerant has to be recovered. When nobody knows what the unit held, recover everything, evacuate and weigh the whole charge in.

check-total = Total charge
check-total-fails = Write how the unit arrived and the factory charge from its nameplate. When nobody knows what it held, recover everything and weigh the whole charge in.

check-phase = Liquid or vapor from the cylinder
check-phase-fails = Refrigerant drawn as vapor from a zeotrope: recover the charge and weigh in fresh liquid; do not use the rest of that cylinder. Break the vacuum with refrigerant on the liquid side before the start.

check-superheat = Superheat
check-superheat-fails = Do not add or remove refrigerant on this number alone. Look at the diagnosis, at the airflow and at steady running first. Where the superheat table gives no target at this load there is no valid test: warm the room, come back, or weigh the charge in.

check-superheat-floor = Minimum superheat
check-superheat-floor-fails = Below the floor the compressor is in danger: stop it. Look at the diagnosis, the airflow, the filter and the valve's bulb before any refrigerant is removed.

check-metering-superheat = Superheat at the valve
check-metering-superheat-fails = Too high: starved valve, restricted drier, low charge or lost bulb charge. Too low: bulb loose or uninsulated, valve stuck open, low airflow. See the diagnosis before touching the charge.

check-subcooling = Subcooling
check-subcooling-fails = Do not add or remove refrigerant on this number alone. Look at the diagnosis, and rule out non-condensables, a dirty condenser and a restricted drier first. A system with a receiver is not charged by subcooling.

check-diagnosis = Diagnosis
check-diagnosis-fails = Do what the next step says, and take the reading that tells the causes apart before anything is changed.

check-maker-chart = Maker's pressures and charts
check-maker-chart-fails = Check the conditions the chart is entered with and the running condition, then follow the maker's instructions.

check-approach = Approach
check-approach-fails = A high approach means too little refrigerant or a dirty condenser, a low one too much refrigerant: look at the diagnosis first.

check-condensing-over-ambient = Condenser split
check-condensing-over-ambient-fails = High: clean the condenser, check fan and recirculation, then make the standing test for non-condensables. Low: low charge, low load or cold weather.

check-evaporator-difference = Evaporator split
check-evaporator-difference-fails = High: low airflow, dirty filter or coil, frost, low charge or a starved valve. Low: high airflow, overfeeding or a compressor that does not pump.

check-drier-drop = Drop across the drier
check-drier-drop-fails = Replace the drier. Find out what filled it: an acid or moisture test of the oil tells more than a second drier does.

check-non-condensables = Non-condensables
check-non-condensables-fails = The circuit is suspect, no more: confirm with a refrigerant identifier or by recovering and weighing in fresh refrigerant after an evacuation.

check-receiver = Receiver and two superheats
check-receiver-fails = Bubbles at full load mean low charge or a restriction before the glass: check the drier first. A blend with glide may show some bubbles although its charge is right. Flooded head-pressure control needs its winter charge on top.

check-heating-mode = Heating readings
check-heating-mode-fails = Without a heating chart weigh the charge in and come back for a cooling check in warm weather; write the return visit.

check-return-visit = Return visit
check-return-visit-fails = Write return visit with what is to be done, and when or at which outdoor temperature. Until then the record is accepted with that condition at best.

check-cycle = Cycle through the measured states
check-cycle-fails = Nothing fails here. A discharge line cooler than the ideal one means liquid in the suction or a clamp that does not touch.

check-as-found = As found
check-as-found-fails = Read both sides before refrigerant is touched, and write the readings under as found.

## The air side, as a gate of the charge

air-filter-clean = the filter is clean
air-filter-dirty = the filter is dirty
air-coil-clean = the indoor coil is clean
air-coil-dirty = the indoor coil is dirty
air-panels-on = the panels were on
air-panel-off = a panel was off
air-blower-cooling = the blower ran at its cooling speed
air-blower-other = the blower did not run at its cooling speed
air-airflow-enough = the airflow is enough

air-reading-panels = panels on
air-reading-blower = blower at cooling speed

# $faults (list) - what is wrong with the air side
air-before-charge = { $faults }: the air comes before the charge
air-before-charge-next = Put the air side right first, let the system settle, then read again.

# $why (message) - why, without a full stop
charge-not-judged = The charge is not judged: { $why }.

# $what (list) - what is not shown, each as it stands behind "that"
air-not-shown = not shown that { $what }

# $parts (list) - what is shown and what is not
air-side = Air side: { $parts }.
air-side-airflow-open = airflow not shown
air-side-all-well = filter, coil, panels and blower are as they should be

# $split (quantity) - temperature split
# $limit (text) - what is allowed
air-side-split = temperature split { $split }, { $limit } is allowed

# $airflow (quantity) - the airflow
# $limit (text) - what is required
air-side-airflow = airflow { $airflow }, { $limit } is required

# $most (quantity) - the most
# $limit (text) - the limit it comes from
at-most-of = at most { $most } ({ $limit })

# $airflow (quantity) - the airflow
airflow-low = the airflow of { $airflow } is low

# $split (quantity) - temperature split
split-unusual = the temperature split of { $split } is more than a coil with enough air shows

# $split (quantity) - temperature split
# $limit (text) - the limit
split-high = the temperature split of { $split } is above { $limit }, which means low airflow

## Superheat

superheat-name = Superheat
superheat-read-together-next = Read pressure and line temperature at the vapor service valve together.
superheat-no-target = the maker gives no superheat, and the table is for comfort cooling
superheat-high-next = Superheat is high. See the diagnosis before adding anything: a restriction or low load looks the same from here.
superheat-low-next = Superheat is low. See the diagnosis before removing anything, and keep liquid away from the compressor.
superheat-field-formula = field formula, information only

metering-not-written = how the refrigerant is metered is not recorded
metering-not-written-next = Write the metering device or the maker's minimum superheat.

# $superheat (quantity) - superheat
# $time (text) - when it was read
superheat-below-floor = Superheat was { $superheat } at { $time }, below the floor: liquid may reach the compressor.

# $superheat (quantity) - superheat
# $time (text) - when it was read
# $limit (text) - the floor
superheat-above-floor = Superheat was { $superheat } at { $time }; { $limit } is required, whatever the target.
superheat-floor-next = Do not leave it running. See the diagnosis. Check airflow and filter, then the metering device, and read again.

valve-by-board = an electronic valve's superheat is set by its board; the maker gives no range
valve-no-range = no range is set for this valve
valve-no-range-next = Write the maker's range.

# $superheat (quantity) - superheat
# $time (text) - when it was read
# $limit (text) - the range
valve-held = The valve held { $superheat } of superheat at { $time }; { $limit } is required.
valve-starves-next = The evaporator is starved. See the diagnosis; check drier, strainer and the valve's bulb before adding refrigerant.
valve-overfeeds-next = The valve overfeeds. Check that its bulb is tight and insulated and that the airflow is right.

## Subcooling

subcooling-name = Subcooling
subcooling-read-together-next = Read pressure and line temperature at the liquid service valve together.
subcooling-none-next = Check the reading and the refrigerant's name; above the critical point there is no subcooling to judge by.
subcooling-high-next = Subcooling is high. See the diagnosis before removing anything: non-condensables and a restriction look the same from here.
subcooling-low-next = Subcooling is low. See the diagnosis before adding anything, and find out where the refrigerant went.
receiver-no-subcooling = a circuit with a receiver is not charged by subcooling
orifice-no-subcooling = a fixed orifice is charged by superheat

## Conditions of the method, equipment that belongs together

condition-not-read-next = Read it beside the pressures.

# $reading (message) - the reading
# $value (quantity) - what was read
# $time (text) - when it was read
# $limit (text) - the range
condition-inside = Inside the range of the method ({ $limit }): { $reading } { $value } at { $time }.

# $readings (list) - the readings
accuracy-not-written = The accuracy of { $readings } is not recorded, so U is too small.

rating-reference = rating reference
match-good = Orifice and units belong together as the maker lists them.

# $fitted (quantity) - size of the orifice
# $asked (quantity) - size the maker requires
match-wrong-orifice = The installed orifice of { $fitted } is not the { $asked } the maker requires, so the target does not hold.
match-not-listed = The maker does not list this pair of units.
match-not-listed-next = Find the maker's figures for this pair, or fit units that belong together.

## The maker's pressures and charts

gas-cooler-pressure = gas cooler pressure
gas-cooler-outlet = gas cooler outlet
receiver-pressure = receiver pressure

# $reading (message) - what was read
# $value (quantity) - what was read
# $time (text) - when it was read
# $why (message) - why, without a full stop
figure-not-judged = At { $time }: { $reading } { $value }. Not judged: { $why }.

# $reading (message) - what was read
# $value (quantity) - what was read
# $time (text) - when it was read
# $figure (text) - the maker's figure
figure-beside = At { $time }: { $reading } { $value }; the maker's figure is { $figure }.
figure-no-tolerance = the maker gives no tolerance

# $reading (message) - what was read
# $value (quantity) - what was read
# $time (text) - when it was read
# $limit (text) - the maker's figure with its tolerance
figure-asked = At { $time }: { $reading } { $value }; { $limit } is required.
figure-next = See the diagnosis before refrigerant is added or removed.

chart-not-read-next = Read it beside what the chart is entered with.

# $reading (message) - what was read
# $value (quantity) - what was read
# $time (text) - when it was read
# $figure (quantity) - what the chart says
chart-says = At { $time }: { $reading } { $value }; the maker's chart says { $figure }.

# $reading (message) - what was read
# $value (quantity) - what was read
# $time (text) - when it was read
# $figure (quantity) - what the chart says
# $tolerance (text) - the chart's tolerance as written
chart-says-within = At { $time }: { $reading } { $value }; the maker's chart says { $figure } ± { $tolerance }.
chart-no-tolerance = the chart states no tolerance
chart-next = Check the conditions the chart is entered with, then follow the maker's instructions for a reading off the chart.

# $reading (message) - what the chart is entered with
chart-entry-missing = { $reading } was not read, and the maker's chart is entered with it

# $reading (message) - what the chart gives
by-makers-chart = { $reading } by the maker's chart

# $reading (text) - name of the reading
# $value (quantity) - what was read
chart-entry = { $reading }: { $value }

chart-formula = linear between the places of the chart
chart-blank = the maker's chart gives no figure there

# $reading (message) - what the chart is entered with
chart-outside = { $reading } lies outside the maker's chart

# $columns (count) - figures of a row
# $rows (count) - rows
chart-not-full = the maker's chart does not have { $columns } figures in each of { $rows } rows
chart-single-place = the maker's chart has a single place along one side, so nothing lies between
chart-not-rising = the places of the maker's chart do not rise

## Saturation temperatures and the cycle

# $side (choice: vapor, liquid) - which side
# $time (text) - when it was read
side-at =
    { $side ->
        [vapor] vapor side, { $time }
       *[liquid] liquid side, { $time }
    }

saturation-none-next = Check the pressure and the refrigerant's name; a transcritical circuit has no saturation on its high side.
saturation-why = shows which temperature the charge is counted from

# $side (choice: vapor, liquid) - which side
# $time (text) - when it was read
# $pressure (quantity) - the pressure, absolute
# $temperature (quantity) - saturation temperature
saturation-pure =
    { $side ->
        [vapor] At { $time } { $pressure } on the vapor side is a saturation temperature of { $temperature }.
       *[liquid] At { $time } { $pressure } on the liquid side is a saturation temperature of { $temperature }.
    }

# $side (choice: vapor, liquid) - which side
# $time (text) - when it was read
# $pressure (quantity) - the pressure, absolute
# $dew (quantity) - dew point
# $bubble (quantity) - bubble point
# $middle (quantity) - the middle of both
saturation-blend =
    { $side ->
        [vapor] At { $time } { $pressure } on the vapor side is a dew point of { $dew }, a bubble point of { $bubble }, middle { $middle }.
       *[liquid] At { $time } { $pressure } on the liquid side is a dew point of { $dew }, a bubble point of { $bubble }, middle { $middle }.
    }

# $wrong (quantity) - what it would have read
# $glide (quantity) - how much too high
superheat-from-bubble = Superheat counts from the dew point; from the bubble point it would have read { $wrong }, { $glide } too high.

# $wrong (quantity) - what it would have read
# $glide (quantity) - how much too high
subcooling-from-dew = Subcooling counts from the bubble point; from the dew point it would have read { $wrong }, { $glide } too high.

glide = glide at this pressure

cycle-next = Check the readings; a state in the dome needs more than pressure and temperature.
cycle-suction = vapor at the service valve
cycle-isentropic = end of an ideal compression
cycle-discharge = measured discharge
cycle-liquid = liquid at the service valve
cycle-throttled = vapor after the throttle, by mass
cycle-throttled-formula = at p_vapor with h₃
cycle-ratio-formula = p_high / p_low, both absolute

# $temperature (quantity) - temperature of the discharge line
# $efficiency (quantity) - the efficiency
cycle-efficiency = The discharge line was at { $temperature }, an apparent isentropic efficiency of { $efficiency }.
cycle-why = computed from the measured states, for information
