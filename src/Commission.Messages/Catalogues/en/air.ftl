### Air: temperature split and capacity.

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
split-was = The air cooled by { $split } at { $time }.

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $why (message) - why it is not judged, without a full stop
split-not-judged = The air cooled by { $split } at { $time }; this is not judged: { $why }.

# $why (message) - why the system is charged by weight
split-by-weight = { $why }; the table is made for ducted systems with one indoor coil

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $limit (text) - what is asked for
split-asked = The air cooled by { $split } at { $time }; { $limit } is asked for.

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $limit (text) - what is asked for
split-high = The air cooled by { $split } at { $time }, { $limit } is asked for: the airflow is low.
split-high-next = Correct the airflow before the charge: filter, coil, registers, dampers, blower speed. Then read again.

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $limit (text) - what is asked for
split-below-maker = The air cooled by only { $split } at { $time }; { $limit } is asked for.
split-below-maker-next = Read it again. If it stays low, look at charge and compressor.

# $most (quantity) - upper end of the target
# $limit (text) - the target with its tolerance
split-one-sided = at most { $most } ({ $limit }; below it the reading is repeated)

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $again (text) - when it was read again
# $limit (text) - the target with its tolerance
split-low-twice = The air cooled by { $split } at { $time } and by as little at { $again }; { $limit } is the target.
split-low-twice-why = the split is below its target: there is enough air, and the capacity is short
split-low-twice-remark = There is enough air; the capacity is probably short: see the diagnosis.

# $target (quantity) - the target
split-low-once-why = the split is more than its tolerance below the target of { $target } and was read once

# $split (quantity) - return over supply dry bulb
# $time (text) - when it was read
# $limit (text) - the target with its tolerance
split-low-once = The air cooled by only { $split } at { $time }; { $limit } is the target.
split-low-once-next = Read it again after 15 min. If it stays low, there is enough air and probably too little capacity: look at charge and compressor.

## Gas heat

gas-inlet-next = Read it again with every gas appliance burning. Too low: pipe, regulator or supplier; too high: shut the gas off and call the supplier.
gas-manifold-next = Set the regulator of the gas valve, then clock the meter; orifices must fit gas and altitude.
gas-rise-next = Above the range: clean filter and coil, open registers, raise the blower. Below it: lower the blower, look at input and leaks of the return.
gas-input-next = Look at the manifold pressure and at the size and number of the orifices, and clock the meter again.
gas-flame-next = Look at manifold pressure, orifices, burner alignment, combustion air and the heat exchanger, and read again after ten minutes.
gas-flue-next = Look at input and airflow; a flue that is too cold drips, one that is too hot wastes and may burn.
gas-draft-next = Look for a blocked or too long vent, a tired inducer, and air that another fan takes out of the house.
gas-signal-next = Clean the flame sensor, tighten its wire and the burner's ground, and read again.

# $air (quantity) - what the air gave up
# $refrigerant (quantity) - what the refrigerant took up
# $time (text) - when it was read
capacities-agree = Air side { $air }, refrigerant side { $refrigerant } at { $time }: the two agree.

# $air (quantity) - what the air gave up
# $refrigerant (quantity) - what the refrigerant took up
# $time (text) - when it was read
# $by (quantity) - their difference
capacities-differ = Air side { $air }, refrigerant side { $refrigerant } at { $time }: they differ by { $by }, more than the instruments explain.
capacities-differ-next = One of the readings behind the two capacities is wrong: measure the airflow again, then compressor power, return wet bulb and discharge line. Until it is found neither of the two counts.
capacities-kind = compares two routes to one number

## What was not told of the air side

return-above-room-next = See how the hoses sat on the manometer, and read the return side again: below the room it is a negative pressure.
static-parts-next = Look up in the manual whether the figure on the plate counts coil and filter.
heater-power-next = Read the power of the heater on a meter for three phases.
coil-wet-not-written = it is not written whether the coil was wet, and the maker's figure is for one of the two
coil-wet-not-written-next = Find out whether the coil was wet when it was read: whether water ran off it.
heat-not-read-next = Read the power of the heater, or its volts and amps, or take the output from its plate.
flow-not-read-next = Read what this method needs, or say what airflow it showed.

## Figures

# $pressure (text) - the pressure of the site
# $bars (choice: seen, hidden) - whether U of the humidity ratio can be seen
psychrometric-caption =
    Saturation and lines of relative humidity at { $pressure }, the pressure of the site.{ $bars ->
        [seen] {" "}Bars are U of the humidity ratio.
       *[hidden] {""}
    }

## The checks: their titles, and what to do when one fails

check-psychrometrics = State of the air
check-psychrometrics-fails = Nothing fails here. A wet bulb above the dry bulb, or air drier than air can be, means a dry wick or swapped readings.

check-temperature-split = Temperature split
check-temperature-split-fails = Above the target: clean filter and coil, open registers and dampers, raise the blower, read again after 15 min. Below it: measure again; if it stays, look at charge and compressor.

check-heat-rise = Temperature rise in heating
check-heat-rise-fails = Above the range: clean filter and coil, open registers and dampers, raise the blower. Below it: lower the blower or look for a heater that does not heat.

check-static = External static pressure
check-static-fails = Change a dirty filter, open dampers and registers, look for crushed flex duct and closed coils; enlarge the return before the blower is turned up.

check-filter-drop = Filter drop
check-filter-drop-fails = Change the filter; if a clean one takes too much, fit a larger or a deeper one.

check-coil-drop = Coil drop
check-coil-drop-fails = Clean the coil on the side where the air enters; look for a coil that is too small for this airflow, or one that is iced.

check-airflow = Airflow
check-airflow-fails = Change the filter, clean the coil, open dampers and registers, read the static pressure, then set the blower. Judge the charge only afterwards.

check-fan-power = Blower power for its airflow
check-fan-power-fails = Lower the resistance before the blower is changed: filter, coil, return duct, registers.

check-capacity = Capacity on the air side
check-capacity-fails = Nothing fails here: the rated capacity holds at rated temperatures. A capacity far below it, beyond U, asks for airflow, charge and compressor.

check-energy-balance = Capacity of air and refrigerant side
check-energy-balance-fails = Nothing fails here. Where the two do not agree, look for the weakest reading: airflow, wet bulbs, the discharge clamp.

check-outside-air = Outside air
check-outside-air-fails = Set the minimum position with the blower at its usual speed, and read the outside air again; a damper wide open costs capacity and lets frost and heat in.

check-gas-heat = Gas heat
check-gas-heat-fails = Start at the inlet pressure with every gas appliance burning, then the manifold, then the airflow, then the flame.
