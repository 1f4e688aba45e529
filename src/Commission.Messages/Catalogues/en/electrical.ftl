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

heater-what = Do the defrost and door heaters draw what their plate says?
heater-formula = share of the rated current within the limit; no current at all is a dead heater
heater-source = Voltage ± 10 % and the element's own tolerance, IEC 60335-1 clause 10 (from memory).
heater-next = Disconnect and prove dead; measure the elements one by one. A dead one ices the coil or the door up, one that draws too much is wired to the wrong voltage.

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
