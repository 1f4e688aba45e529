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
appliance-room-too-small-next = Take it out of use there. It needs a larger room, or one joined to the next by openings that cannot be shut, or less charge.

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
spillage-not-tested-next = Shut the house up, start every fan that takes air out, and light the burner. After five minutes hold smoke or a mirror at the draft hood.

## What was not told of room, devices and steps

# $room (text) - the room
room-mounting-not-written = it is not written how high refrigerant would come out in { $room }
room-mounting-not-written-next = Measure from the floor to the lowest opening of the indoor unit. Or say how it is mounted: at the floor, under the window, high on the wall, at the ceiling.
device-not-tried = the device was not tried
device-not-tried-next = Try the device, and read where it trips.
sensor-relied-upon = the room relies on the leak sensor, and its test is not written
sensor-test-not-written = it is not written that the maker's test was run
sensor-test-not-run = the maker's test was not run
flammable-steps-next = Take the steps for a refrigerant that burns before the circuit is worked on, and say which were taken.
flammable-steps-open-next = Take the steps that are not told, or say that they were taken.
flammable-order-not-written = the order of the steps is not written
flammable-order-not-written-next = Say in which order it was done: recovered, purged, evacuated, purged again, opened.

## Combustion: names

carbon-monoxide-free-of-air = carbon monoxide free of air
reading-fuel = fuel
reading-spillage = spillage

## Names of readings and steps

reading-mitigation = mitigation
reading-releasable = releasable charge
reading-design = design pressure
reading-sensor-fitted = leak sensor fitted
reading-sensor-connected = leak sensor connected
reading-responded = responded in
reading-pump-rated = vacuum pump rated for flammable
reading-thread = left-hand thread
reading-area-checked = area checked with
reading-alarm = detector alarm
reading-within = ignition sources removed within
reading-sequence = sequence

# $id (text) - the instrument
reading-detects = { $id }: detects

# $id (text) - the instrument
reading-kind = { $id }: kind

# $id (text) - the instrument
reading-rated = { $id }: rated for flammable

# $device (text) - the device
reading-tripped = { $device }: tripped at

# $device (text) - the device
reading-set = { $device }: set

# $device (text) - the device
reading-reset = { $device }: reset at

# $device (text) - the device
reading-tested = { $device }: tested

# $device (text) - the device
reading-date = { $device }: date

# $device (text) - the device
subject-setting = { $device }, setting

# $device (text) - the device
subject-against-setting = { $device }, against its setting
step-appliance-largest = largest charge of an appliance
step-smallest-area = smallest floor area for the charge
step-lfl = lower flammability limit
step-published = published property
step-definition = definition
step-releasable = charge that can leak with the shut-off valves closed
step-makers-figure = the maker's figure
step-m1 = charge without a room limit
step-m2 = largest charge without further measures
step-m3 = largest charge at all

# $room (text) - the room
step-air-burns = charge that makes the air of { $room } burn

# $room (text) - the room
step-largest-for = largest charge for { $room }

# $room (text) - the room
step-disperses = charge that { $room } can disperse
step-concentration = concentration should all of it leak
step-concentration-formula = charge / volume
step-concentration-limit = concentration limit

# $source (text) - the paper
source-dispersal = { $source }, effective dispersal volume charge

## Safety devices

# $device (text) - the device
device-name = { $device }

# $device (text) - the device
# $set (text) - its setting, as written
device-with-setting = { $device }, set to { $set },

# $which (message) - the device, with its setting
device-failed = The { $which } failed its test.

# $device (text) - the device
device-not-fitted = No { $device } is fitted.
nothing-to-try = there is nothing to try

# $which (message) - the device, with its setting
# $at (text) - where it tripped, as written
device-tripped-below-design = The { $which } tripped at { $at }, at or below the design pressure of the high side.

# $which (message) - the device, with its setting
# $at (text) - where it tripped, as written
device-tripped-too-high = the { $which } tripped at { $at } only, above what the high side may bear.

# $which (message) - the device, with its setting
# $at (text) - where it tripped, as written
device-tripped = The { $which } tripped at { $at }.

# $which (message) - the device, with its setting
device-works = The { $which } was tried and works.

# $date (text) - as written
relief-dated = It is dated { $date }.
relief-not-written = what the relief valve is set to is not written
relief-not-written-next = Write the pressure stamped on it.

# $device (text) - the device
# $set (text) - its setting, as written
relief-set = The { $device } is set to { $set }.
relief-no-design = no design pressure is written to compare it with

# $device (text) - the device
# $set (text) - its setting, as written
# $design (text) - the design pressure, as written
relief-within = The { $device } is set to { $set }, at most the design pressure { $design }.

# $device (text) - the device
# $set (text) - its setting, as written
# $design (text) - the design pressure, as written
relief-above = the { $device } is set to { $set }, above the design pressure { $design }.
relief-next = Take the system out of service until a relief valve of the right setting is fitted.

# $set (text) - its setting, as written
setting-right = Set to { $set }, where such a switch belongs.

# $set (text) - its setting, as written
setting-wrong = Set to { $set }, which is not where such a switch belongs.
setting-next = Compare with the maker's instructions for this unit.

# $at (text) - where it tripped, as written
# $set (text) - its setting, as written
trip-near = Tripped at { $at }, set to { $set }.

# $at (text) - where it tripped, as written
# $set (text) - its setting, as written
trip-far = Tripped at { $at }, too far from its setting of { $set }.
trip-next = Set it again by the gauge, or replace it. Then try it again.

## Leak sensor

sensor-none = The unit has no leak sensor.
sensor-missing = The room relies on a leak sensor, and the unit has none.
sensor-missing-next = Fit the maker's sensor, or take another measure.
sensor-connected = connected
sensor-not-connected = not connected
sensor-test-run = maker's test run
sensor-no-test-run = maker's test not run
sensor-blower-on = blower on
sensor-blower-not-on = blower not on
sensor-compressor-off = compressor off
sensor-compressor-not-off = compressor not off

# $time (text) - as written
sensor-responded = It responded in { $time }.

# $told (list) - what was seen
sensor-told = The leak sensor: { $told }.

# $what (message) - what is not told
sensor-point-not-written = not written: { $what }
sensor-point-not-written-next = Try the sensor again and write what it did.

## Charge and room

room-only = the room

# $number (count) - which one
room-numbered = room { $number }

# $room (text) - the room
room-area = { $room }: area

# $room (text) - the room
room-mounting = { $room }: mounting

# $room (text) - the room
room-release-height = { $room }: release height

# $room (text) - the room
room-ceiling-height = { $room }: ceiling height

# $room (text) - the room
room-volume = { $room }: volume

# $room (text) - the room
room-occupancy = { $room }: occupancy

# $room (text) - the room
room-ground-level = { $room }: below ground

# $room (text) - the room
room-area-served = { $room }: area served by ducts

# $height (quantity) - where refrigerant comes out
height-lowest = { $height }, the lowest that counts

# $height (quantity) - where refrigerant comes out
# $mounting (text) - how the unit is mounted
height-mounted = { $height }, { $mounting } mounting

# $room (text) - the room
room-below-ground = { $room } lies below ground: local code may ask for detection or ventilation besides.

# $group (text) - its safety group
charge-other-group = the charge limits known here are for groups A2L, A2 and A3, not { $group }
charge-other-group-next = Judge it by the standard for toxic refrigerants that your local code names.

# $gas (text) - the refrigerant
charge-lfl-unknown = the lower flammability limit of { $gas } is not known here
charge-lfl-unknown-next = Take the smallest room from the maker's table.

# $why (message) - why not
charge-unknown = the charge cannot be known: { $why }
charge-unknown-next = Write how the unit arrived, its factory charge and what was weighed in.
charge-unknown-weigh-next = Write how the unit arrived, its factory charge and what was weighed in. Or recover, evacuate and weigh the whole charge in.

# $most (quantity) - the most that is allowed
limit-all-air = at most { $most } (all the air at the lower flammability limit)

# $most (quantity) - the most that is allowed
limit-m1 = at most { $most } (m1, no room limit)

# $most (quantity) - the most that is allowed
limit-m2 = at most { $most } (m2, without further measures)

# $most (quantity) - the most that is allowed
limit-m3 = at most { $most } (m3, the most the standard allows in rooms)

# $most (quantity) - the most that is allowed
# $room (text) - the room
limit-for-room = at most { $most } (for { $room })

# $most (quantity) - the most that is allowed
# $room (text) - the room
limit-dispersed = at most { $most } (dispersed in { $room })
releasable-without-valves = A releasable charge is written without shut-off valves; the whole charge was judged.
releasable-not-written = the room is too small for the whole charge, and what the shut-off valves let out is not written
releasable-not-written-next = Write the releasable charge from the maker's manual.

# $room (text) - the room
# $area (text) - its floor area, as written
# $asked (text) - the area the maker asks for
room-maker-enough = { $room } has { $area }; the maker asks for { $asked }.

# $room (text) - the room
# $area (text) - its floor area, as written
# $asked (text) - the area the maker asks for
room-maker-too-small = { $room } has { $area }, too near to or below the { $asked } the maker asks for.

# $charge (quantity) - the charge
# $m1 (quantity) - the charge without a room limit
charge-below-m1 = The charge of { $charge } is at most m1 = { $m1 }: no room limit applies.

# $charge (quantity) - the charge
charge-above-m3 = the charge of { $charge } is more than the standard allows in any occupied room.

# $charge (quantity) - the charge
# $m1 (quantity) - the charge without a room limit
charge-room-not-written = the charge of { $charge } is above m1 = { $m1 }, and no room is written
charge-room-not-written-next = Measure the room where a leak would collect, and how high the indoor unit hangs.

# $charge (quantity) - the charge
# $least (quantity) - smallest floor area
# $height (quantity) - where refrigerant comes out
# $room (text) - the room
# $has (quantity) - floor area of the room
room-enough = { $charge } needs at least { $least } where refrigerant comes out at { $height }; { $room } has { $has }.

# $charge (quantity) - the charge
# $least (quantity) - smallest floor area
# $height (quantity) - where refrigerant comes out
# $room (text) - the room
# $has (quantity) - floor area of the room
# $allowed (quantity) - what is allowed
room-too-small = { $charge } needs at least { $least } where refrigerant comes out at { $height }; { $room } has { $has }, and the charge without further measures may be { $allowed }.
fan-unknown = the room alone is too small, and what a fan allows for this safety group is not known here
fan-unknown-next = Take the smallest room with this measure from the maker's table.
room-not-written = no room is written
room-not-written-next = Measure the room: its area and its height.

# $room (text) - the room
room-volume-not-written = the volume of { $room } is not written
room-volume-not-written-next = Write its volume, or its ceiling height beside its area.

# $charge (quantity) - the charge
# $room (text) - the room
# $most (quantity) - the most that is allowed
room-disperses = { $charge } can leak; { $room } disperses { $most }.

## Concentration

# $room (text) - the room
# $found (text) - the concentration
# $gas (text) - the refrigerant
concentration-limit-unknown = Should all of it leak into { $room }, { $found } of { $gas } would be in the air; its concentration limit is not known here.
concentration-limit-unknown-kind = look the limit up in the standard
concentration-from-memory = The limit is from memory: the standard decides.

# $found (text) - the concentration
# $limit (text) - the limit
concentration-reserve = { $found } are more than the limit remembered here, { $limit }

# $room (text) - the room
# $found (text) - the concentration
# $gas (text) - the refrigerant
# $limit (text) - the limit
concentration-more = Should all of it leak into { $room }, { $found } of { $gas } would be in the air, more than the { $limit } of the standard.

# $room (text) - the room
# $found (text) - the concentration
# $gas (text) - the refrigerant
# $limit (text) - the limit
concentration-less = Should all of it leak into { $room }, { $found } of { $gas } would be in the air, less than the { $limit } of the standard.

## Steps for a refrigerant that burns

# $gas (text) - the refrigerant
group-unknown = the safety group of { $gas } is not known here
group-unknown-next = Take it from the cylinder or the nameplate. Where it says A2L, A2 or A3, take the steps for flammable refrigerant and write them in the notes.

# $gas (text) - the refrigerant
# $group (text) - its safety group
steps-not-written = { $gas } burns (safety group { $group }), and no steps are written
step-area-checked = area checked with a detector

# $id (text) - the instrument
step-area-checked-with = area checked with { $id }
step-ignition = ignition sources removed
step-ventilated = ventilated
step-extinguisher = extinguisher
step-machines = machines rated for flammable refrigerant
step-exhaust = pump exhaust outdoors
step-pump-rated = vacuum pump rated for flammable refrigerant
step-signs = signs
step-bonded = bonded

# $within (text) - the distance, as written
step-within-only = ignition sources removed within { $within } only
thread-remark = The cylinder's thread is not left-handed, as it usually is for flammable gas: make sure what it holds.

# $steps (list) - the steps
steps-refused = not taken or not enough for a refrigerant that burns: { $steps }.

# $steps (list) - the steps
steps-not-told = not written: { $steps }

# $steps (list) - the steps
steps-taken = Taken: { $steps }.

# $id (text) - the instrument
detector-is-none = { $id } is no leak detector

# $id (text) - the instrument
detector-not-rated = { $id } may not be used near flammable refrigerant

# $id (text) - the instrument
# $gas (text) - the refrigerant
detector-other-gas = { $id } is not made for { $gas }

# $alarm (text) - as written
detector-alarm = detector alarm at { $alarm } of the lower flammability limit
opening-recovered = recovered
opening-purged = purged
opening-evacuated = evacuated
opening-purged-again = purged again
opening-opened = opened

# $steps (list) - the steps
opening-missing = of the steps before a flammable circuit is opened, these are not in the list: { $steps }.

# $steps (list) - the steps
opening-order = the steps before a flammable circuit is opened stand in another order: { $steps }.

# $steps (list) - the steps
opening-in-order = In order: { $steps }.

## The checks: their titles, and what to do when one fails

check-flammable-steps = Steps for flammable refrigerant
check-flammable-steps-fails = Stop. Keep people and flames away, ventilate, and do not go on before every step is taken. A step that was taken and not written is written now.

check-opening-sequence = Opening a flammable circuit
check-opening-sequence-fails = Close the circuit again, ventilate, and begin at the step that was left out. Never cut or braze into a circuit that may still hold refrigerant or oil vapor.

check-flammable-charge = Room for a flammable charge
check-flammable-charge-fails = Do not run the unit until it is put right. It takes a larger room or one open to the next by ducts, a unit mounted higher, or a smaller charge. The maker's leak sensor with fan or shut-off valves may also do it.

check-leak-sensor = Leak sensor
check-leak-sensor-fails = Do not leave the unit running. Check plug, place and board setting of the sensor, run the maker's test again; a sensor past its life is replaced.

check-concentration-limit = Concentration in the room
check-concentration-limit-fails = Look the refrigerant's concentration limit up in the standard. Above it: ventilation, detection, a larger space or a machinery room, as the local code asks.

check-devices = Safety devices
check-devices-fails = Do not leave the system running without it. Replace or set the device by the maker's instructions and try it again, with a gauge on the circuit and a hand on the disconnect.

check-combustion = Combustion
check-combustion-fails = Shut the burner off and air the house. Look for a blocked vent, a cracked heat exchanger, a starved or overfired burner, and do not light it again before it burns clean.
