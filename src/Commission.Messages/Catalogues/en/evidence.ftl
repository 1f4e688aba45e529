### Evidence: whether the record is worth relying on.

# $readings (list) - names of the readings
no-instrument = no instrument is named for { $readings }
