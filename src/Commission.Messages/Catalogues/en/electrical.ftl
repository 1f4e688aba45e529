### Supply, motors, protection.

current-unbalance-next = Check the voltages first: one per cent of voltage unbalance makes several of current. With balanced voltages lock out, prove dead, and move all three leads on by one place (L1 to L2, L2 to L3, L3 to L1), never two of them: that keeps the rotation, and a scroll that runs backwards is soon destroyed. An unbalance that moves with the leads is in the supply or the contactor; one that stays with the winding is in the motor.

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


# $which (text) - which heater
heater-dead = The { $which } draws nothing.

# $which (text) - which heater
# $current (text) - what it draws
heater-draws = The { $which } draws { $current }.
heater-not-rated = its rated current is not written

# $which (text) - which heater
# $current (text) - what it draws
# $rated (text) - what its plate says
heater-right = The { $which } draws { $current }; its plate says { $rated }.

# $which (text) - which heater
# $current (text) - what it draws
# $rated (text) - what its plate says
heater-wrong = The { $which } draws { $current }, and its plate says { $rated }.

## What was not told of supply and safety

ampacity-not-written = the ampacity of the wire is not written
ampacity-not-written-next = Take the ampacity from the table of your code for this wire and its installation.
ground-not-checked = nobody checked the equipment ground
ground-not-checked-next = Measure its continuity from the unit to the panel with the power locked out.
dead-not-told = nothing is written of how
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
