### Supply, motors, protection.

current-unbalance-next = Check the voltages first: one per cent of voltage unbalance makes several of current. With balanced voltages lock out and prove dead. Then move all three leads on by one place (L1 to L2, L2 to L3, L3 to L1), never two of them. That keeps the rotation: a scroll that runs backwards is soon destroyed. An unbalance that moves with the leads is in the supply or the contactor; one that stays with the winding is in the motor.

## Unbalance of three phases

voltages = voltages
currents = currents

# $what (message) - voltages or currents
# $unbalance (quantity) - largest deviation from their mean
unbalance-within = The { $what } are unbalanced by { $unbalance }.

# $what (message) - voltages or currents
# $unbalance (quantity) - largest deviation from their mean
# $limit (text) - what is allowed
unbalance-beyond = The { $what } are unbalanced by { $unbalance }; { $limit } is allowed.

# $what (message) - voltages or currents
unbalance-name = unbalance of the { $what }

# $what (message) - voltages or currents
unbalance-zero = the { $what } are zero
unbalance-zero-next = Read all three again with the compressor running.

voltage-unbalance-next = Stop above 5 %. Look for a loose lug, a blown fuse or single-phase loads on one leg; tell the utility when it comes in unbalanced.

# $stop (text) - the unbalance above which no motor may run
voltage-unbalance-stop = more than { $stop }, above which no motor may run
voltage-unbalance-stop-next = Stop the unit and lock it out. Look for a lost phase, a loose lug or a blown fuse; tell the utility when it comes in unbalanced.

# $good (text) - the unbalance up to which a motor gives its full output
# $share (quantity) - what it may give of its rated output
voltage-unbalance-derated = Above { $good } a motor is derated: it may give { $share } of its rated output here (NEMA MG-1, from memory).

## Heaters of a cold room

heater-defrost = defrost heater
heater-door = door heater
heater-may-draw = current a heater may draw
heater-formula = share × rated current

# $least (text) - smallest share
# $most (text) - largest share
# $rated (text) - the rated current, as written
heater-numbers = { $least } to { $most } of { $rated }

# $which (message) - which heater
heater-dead = The { $which } draws nothing.

# $which (message) - which heater
# $current (text) - what it draws
heater-draws = The { $which } draws { $current }.
heater-not-rated = its rated current is not written

# $which (message) - which heater
# $current (text) - what it draws
# $rated (text) - what its plate says
heater-right = The { $which } draws { $current }; its plate says { $rated }.

# $which (message) - which heater
# $current (text) - what it draws
# $rated (text) - what its plate says
heater-wrong = The { $which } draws { $current }, and its plate says { $rated }.

## Names of readings

reading-line-to-line = line to line

# $what (message) - what was read on every phase
# $number (count) - which of them
reading-numbered = { $what } { $number }

# $which (message) - which fan or heater
reading-current-of = { $which } current

# $which (message) - which fan
reading-full-load = { $which } FLA

# $which (message) - which heater
reading-rated-of = rated current of the { $which }
reading-unit-current = current of the unit
reading-wire = wire
reading-ampacity = ampacity
reading-ground = equipment ground
reading-earth = protective earth
reading-disconnect = disconnect within sight
reading-proved = meter proved live, dead, live
reading-locked-out = locked out
reading-torque = terminal torque
reading-test-voltage = test voltage
reading-leads-off = leads off
reading-test-time = time of the test
reading-evacuation-started = evacuation: started
reading-evacuation-end = evacuation: end
reading-capacitor-label = capacitor label
reading-capacitor-tolerance = tolerance on the label
reading-capacitance = capacitance
reading-capacitor-current = capacitor current
reading-capacitor-voltage = capacitor voltage
reading-frequency = mains frequency
reading-plate-voltage = nameplate voltage
reading-phases = phases
reading-rotation = phase rotation

## Limits taken from the plate

# $most (quantity) - the limit
# $plate (name) - abbreviation of the plate's figure
limit-at-most-by = at most { $most } ({ $plate })

# $least (quantity) - lower end
# $most (quantity) - upper end
limit-from-to = { $least } to { $most }

# $plate (name) - abbreviation of the plate's figure
factor-times = factor × { $plate }
on-the-nameplate = nameplate
continuous-current = maximum continuous current
plate-no-ampacity = the nameplate's MCA is not written
plate-no-ampacity-next = Read the minimum circuit ampacity on the plate.
plate-no-protection = the nameplate's MOP is not written
plate-no-protection-next = Read the maximum overcurrent protection on the plate.
plate-no-voltage = the nameplate voltage is not written
plate-no-voltage-next = Read the rated voltage on the plate.

## Fans and the whole unit

fan-outdoor = outdoor fan
fan-indoor = indoor fan
fan-largest = largest fan current

# $which (message) - which fan
# $current (text) - what it draws
# $most (text) - what its plate says
fan-within = The { $which } draws { $current }, at most { $most } allowed.

# $which (message) - which fan
# $current (text) - what it draws
# $most (text) - what its plate says
fan-beyond = The { $which } draws { $current }, more than its { $most }.

# $rated (text) - the rated current
unit-above-rated = It is above the rated current of { $rated }: read again at rated conditions.

# $current (text) - what it draws
# $rated (text) - the rated current
unit-draws = The unit draws { $current }; its rated current is { $rated }.
unit-no-maximum = the nameplate's MCA is not written, and a rated current is no maximum
unit-largest = largest current of the unit

# $current (text) - what it draws
# $most (text) - the minimum circuit ampacity
unit-within = The unit draws { $current }, at most { $most } allowed.

# $current (text) - what it draws
# $most (text) - the minimum circuit ampacity
unit-beyond = The unit draws { $current }, more than its MCA of { $most }.

## Supply

voltage-range = allowed range
voltage-range-formula = nameplate less and plus the tolerance

# $voltage (quantity) - what was read
voltage-inside = { $voltage } at the unit, inside the allowed range.

# $voltage (quantity) - what was read
voltage-outside = { $voltage } at the unit, outside the allowed range.
drop-no-voltage = the voltage before the start is zero
drop-no-voltage-next = Read it before the compressor starts.
drop-name = voltage drop at start

# $good (text) - the drop of a good supply
drop-more-than-good = More than the { $good } that a good supply shows.

# $drop (quantity) - share of the voltage
drop-within = The voltage drops by { $drop } at start.

# $drop (quantity) - share of the voltage
drop-beyond = The voltage drops by { $drop } at start: too far.

# $voltage (text) - as written
control-within = Control voltage { $voltage }.

# $voltage (text) - as written
control-outside = Control voltage { $voltage }, outside the usual range.
rotation-contradicts = the job says single phase and the nameplate says three phases
rotation-contradicts-next = Correct whichever is wrong; with three phases read the rotation with a meter.
rotation-correct = Phase rotation is correct.

# $rotation (text) - as written
rotation-is = Phase rotation is { $rotation }.

## Overcurrent device and conductor

device-fuse = fuse
device-breaker = breaker
overcurrent-largest = largest overcurrent device

# $rating (text) - as written
# $device (message) - fuse or breaker
# $most (text) - what the plate allows
overcurrent-within = { $rating } { $device }, at most { $most } allowed.

# $rating (text) - as written
# $device (message) - fuse or breaker
# $most (text) - what the plate allows
overcurrent-beyond = { $rating } { $device }, larger than the { $most } on the nameplate.
conductor-least = least ampacity

# $ampacity (text) - as written
# $least (text) - what the plate needs
conductor-within = Conductor good for { $ampacity }, at least { $least } needed.

# $ampacity (text) - as written
# $least (text) - what the plate needs
conductor-below = Conductor good for { $ampacity } only; the nameplate asks for { $least }.

## Ground, disconnect, terminals

ground-continuous = The equipment ground is continuous.

# $ground (text) - as written
ground-is = The equipment ground is { $ground }.

# $earth (text) - its resistance, as written
earth-within = Protective earth { $earth }.

# $earth (text) - its resistance, as written
earth-beyond = Protective earth { $earth }: too much.
disconnect-subject = disconnect
disconnect-in-sight = A disconnect is within sight of the unit.
disconnect-not-in-sight = No disconnect is within sight of the unit.
dead-proved = The unit was proved dead before covers were opened.
dead-not-proved = The unit was not proved dead and locked out.

# $torque (text) - as written
torque-was = The terminals were tightened to { $torque }.

# $torque (text) - as written
torque-right = The terminals were tightened to { $torque }, as the maker asks.

# $torque (text) - as written
torque-wrong = The terminals were tightened to { $torque }, outside the maker's figure.

## Insulation

insulation-vacuum-why = the circuit was under vacuum
insulation-vacuum = insulation was tested while the circuit was under vacuum.
insulation-vacuum-next = Never do this: terminals arc in a vacuum. Have the compressor's terminals inspected, then test with the circuit charged.
insulation-leads-on = board or inverter leads were on, which may have been tested, or damaged, with the motor
insulation-leads-on-next = Test with the board's leads off.

# $good (text) - resistance of dry, clean insulation
insulation-below-good = Below the { $good } of dry, clean insulation: warm the oil and test again.

# $resistance (text) - as written
insulation-within = Insulation resistance { $resistance }.

# $resistance (text) - as written
insulation-below = Insulation resistance { $resistance }: too low.

## Run capacitor

capacitor-no-voltage = the voltage across it is zero
capacitor-no-voltage-next = Read current and voltage with the motor running.
capacitor-running = capacitance while running

# $capacitance (quantity) - read, or worked out while running
# $label (text) - what the label says
capacitor-within = Run capacitor { $capacitance }, label { $label }.

# $capacitance (quantity) - read, or worked out while running
# $label (text) - what the label says
capacitor-outside = Run capacitor { $capacitance }, label { $label }: outside its tolerance.

## What was not told of supply and safety

ampacity-not-written = the ampacity of the wire is not written
ampacity-not-written-next = Take the ampacity from the table of your code for this wire and its installation.
ground-not-checked = nobody checked the equipment ground
ground-not-checked-next = Measure its continuity from the unit to the panel with the power locked out.
dead-not-told = how it was done is not recorded
dead-not-told-next = Say whether the unit was locked out, and the meter tried on a live source, at the dead unit, and on the live source again.
dead-meter-not-proved = it is not written that the meter was proved before and after
dead-not-locked-out = it is not written that the unit was locked out
insulation-vacuum-end = the end of the evacuation has no time, so it is not shown that the circuit was charged
insulation-vacuum-end-next = Find out when the vacuum ended, and whether the insulation was tested after that.
capacitor-not-read = neither a capacitance nor a running current and voltage is written
capacitor-not-read-next = Measure the capacitor out of circuit, discharged.
rotation-not-read = the phase rotation is not written
rotation-not-read-next = Read the phase rotation with a meter.
fan-no-plate = the nameplate's FLA is not written
fan-no-plate-next = Read the fan's full load current on the plate.

## The checks: their titles, and what to do when one fails

check-supply-voltage = Supply voltage
check-supply-voltage-fails = Measure again at the disconnect with the compressor running. Low under load: look for a loose lug or an undersized wire. Low or high throughout: the utility or the transformer tap. This is work for a licensed electrician.

check-voltage-unbalance = Voltage unbalance
check-voltage-unbalance-fails = { voltage-unbalance-next }

check-current-unbalance = Current unbalance
check-current-unbalance-fails = { current-unbalance-next }

check-overcurrent = Overcurrent device against MOP
check-overcurrent-fails = Have a licensed electrician fit the size on the nameplate before the unit runs.

check-conductor = Conductor against MCA
check-conductor-fails = Have a licensed electrician fit a larger conductor, or confirm the ampacity for its insulation, grouping and ambient temperature.

check-ground = Ground and disconnect
check-ground-fails = Do not run the unit. Have a licensed electrician make the ground good or fit a disconnect.

check-proved-dead = Proved dead
check-proved-dead-fails = Lock out, prove dead, and only then open covers or touch terminals. Let capacitors discharge.

check-phase-rotation = Phase rotation
check-phase-rotation-fails = Stop at once, lock out, swap two phases at the supply, and try again.

check-unit-current = Current of the whole unit
check-unit-current-fails = Check voltage, condenser airflow and charge. If it stays above MCA, stop the unit.

check-fan-current = Fan current against FLA
check-fan-current-fails = Check the blade, the bearings, the run capacitor and the voltage; a blower without resistance in front of it overloads.

check-heater = Defrost and door heaters
check-heater-fails = Disconnect and prove dead; measure the elements one by one. A dead one ices the coil or the door up, one that draws too much is wired to the wrong voltage.

check-run-capacitor = Run capacitor
check-run-capacitor-fails = Discharge it, then replace it with one of the same capacitance and at least the same voltage.

check-voltage-drop-at-start = Voltage drop at start
check-voltage-drop-at-start-fails = Look for a loose lug, a long or thin supply, a weak transformer; fit the maker's start kit only when the maker allows one.

check-insulation = Insulation resistance
check-insulation-fails = Below the minimum: do not start it. Between minimum and good: run the crankcase heater to drive refrigerant out of the oil, test again warm.

check-control-voltage = Control voltage
check-control-voltage-fails = Low: overloaded or wrong transformer tap, or a long thin cable. High: wrong primary tap.

check-terminal-torque = Terminal torque
check-terminal-torque-fails = Lock out, prove dead, and tighten to the figure on the label.
