### Safety: the room and the charge that can leak into it.

# $room (text) - the room
# $height (quantity) - the release height as written
# $ceiling (quantity) - the ceiling height
room-release-above-ceiling = Refrigerant cannot come out at { $height } in { $room }, whose ceiling is at { $ceiling }.
room-release-above-ceiling-next = Measure from the floor to the lowest opening of the unit, and judge the room again.

# $charge (quantity) - what can leak
# $room (text) - the room
# $most (quantity) - what makes its air burn
# $height (quantity) - the height that counts
room-all-burns = { $charge } can leak, and { $most } make all the air of { $room } burn, up to { $height }: no fan and no sensor helps against that.

room-ducts-counted = The areas that ducts serve count together because a leak starts the fan: not checked against the standard.
room-ducts-not-counted = The areas that ducts serve do not count together: no leak sensor that starts the fan is shown. The smallest counts.
room-sensor-not-written = the leak sensor that starts the fan is not described
room-sensor-not-written-next = Run the maker's test of the sensor: blower on, compressor off.

## A refrigerating appliance with its whole circuit

# $charge (quantity) - the charge it is marked with, or more where the scale shows it
# $most (quantity) - what an appliance may hold
appliance-too-much = The appliance holds { $charge }, and an appliance may hold at most { $most }.
appliance-too-much-next = Take it out of use and ask its maker: more than that may stand in no appliance of this kind, in no room.

# $charge (quantity) - the charge it is marked with
# $most (quantity) - what needs no room
appliance-anywhere = { $charge } in an appliance, at most { $most }: it asks for no room.

# $charge (quantity) - the charge it is marked with
# $area (quantity) - smallest floor area
appliance-room-not-written = { $charge } in an appliance need a room of at least { $area }, and no room is written
appliance-room-not-written-next = Measure the floor of the room it stands in.

# $charge (quantity) - the charge it is marked with
# $area (quantity) - smallest floor area
appliance-needs = { $charge } in an appliance need a room of at least { $area }; the room is not written, and this work did not change it.
appliance-needs-kind = the place was not chosen in this job

# $charge (quantity) - the charge it is marked with
# $area (quantity) - smallest floor area
# $room (text) - the room
# $has (quantity) - its floor area
appliance-room-enough = { $charge } in an appliance need at least { $area }; { $room } has { $has }.

# $charge (quantity) - the charge it is marked with
# $area (quantity) - smallest floor area
# $room (text) - the room
# $has (quantity) - its floor area
appliance-room-too-small = { $charge } in an appliance need at least { $area }; { $room } has { $has }, too little.
appliance-room-too-small-next = Take it out of use there: a larger room, or one joined to the next by openings that cannot be shut, or an appliance with less charge.

## Combustion

# $found (quantity) - as read
carbon-monoxide-read = { $found } of carbon monoxide in the flue gas.
carbon-monoxide-no-limit = no pack sets a limit

# $found (quantity) - as read
carbon-monoxide-diluted = { $found } of carbon monoxide were read, and neither oxygen nor carbon dioxide says how much air was with it
carbon-monoxide-diluted-next = Read oxygen at the same place and write it; with carbon dioxide the fuel is needed, too.

# $found (quantity) - free of air, or as read where that is too much already
carbon-monoxide-too-much = { $found } of carbon monoxide in the flue gas: that is too much.

# $found (quantity) - free of air
carbon-monoxide-little = { $found } of carbon monoxide in the flue gas, counted without air.

spillage-none = No flue gas came out into the room.
spillage-some = Flue gas comes out into the room.
spillage-not-tested = nobody looked whether flue gas comes out
spillage-not-tested-next = Shut the house up, start every fan that takes air out, light the burner and hold smoke or a mirror at the draft hood after five minutes.

## What was not told of room, devices and steps

# $room (text) - the room
room-mounting-not-written = it is not written how high refrigerant would come out in { $room }
room-mounting-not-written-next = Measure from the floor to the lowest opening of the indoor unit, or say how it is mounted: at the floor, under the window, high on the wall, at the ceiling.
device-not-tried = the device was not tried
device-not-tried-next = Try the device, and read where it trips.
sensor-relied-upon = the room relies on the leak sensor, and its test is not written
sensor-test-not-written = it is not written that the maker's test was run
sensor-test-not-run = the maker's test was not run
flammable-steps-next = Take the steps for a refrigerant that burns before the circuit is worked on, and say which were taken.
flammable-steps-open-next = Take the steps that are not told, or say that they were taken.
flammable-order-not-written = the order of the steps is not written
flammable-order-not-written-next = Say in which order it was done: recovered, purged, evacuated, purged again, opened.

## The checks: their titles, and what to do when one fails

check-flammable-steps = Steps for flammable refrigerant
check-flammable-steps-fails = Stop. Keep people and flames away, ventilate, and do not go on before every step is taken. A step that was taken and not written is written now.

check-opening-sequence = Opening a flammable circuit
check-opening-sequence-fails = Close the circuit again, ventilate, and begin at the step that was left out. Never cut or braze into a circuit that may still hold refrigerant or oil vapor.

check-flammable-charge = Room for a flammable charge
check-flammable-charge-fails = Do not run the unit until it is put right: a larger room or one open to the next by ducts, a unit mounted higher, the maker's leak sensor with fan or shut-off valves, or a smaller charge.

check-leak-sensor = Leak sensor
check-leak-sensor-fails = Do not leave the unit running. Check plug, place and board setting of the sensor, run the maker's test again; a sensor past its life is replaced.

check-concentration-limit = Concentration in the room
check-concentration-limit-fails = Look the refrigerant's concentration limit up in the standard. Above it: ventilation, detection, a larger space or a machinery room, as the local code asks.

check-devices = Safety devices
check-devices-fails = Do not leave the system running without it. Replace or set the device by the maker's instructions and try it again, with a gauge on the circuit and a hand on the disconnect.

check-combustion = Combustion
check-combustion-fails = Shut the burner off and air the house. Look for a blocked vent, a cracked heat exchanger, a starved or overfired burner, and do not light it again before it burns clean.
