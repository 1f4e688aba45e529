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
room-sensor-not-written-next = Run the maker's test of the sensor and write it under safety, leak sensor.
