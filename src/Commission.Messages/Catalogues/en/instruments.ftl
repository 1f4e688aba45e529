### Instruments: whether they can be relied on.

# $on (date) - the day the detector was checked
leak-detector-checked = The leak detector was checked on { $on }.

# $on (date) - the day the detector was checked
# $day (date) - the day of the leak check
leak-detector-not-checked = The leak detector was checked on { $on }, too long before or only after the leak check of { $day }.
leak-detector-next = Check the detector on a reference leak and repeat the search.

## The wick of a wet bulb

wick-not-told = nothing is written of the wick
wick-not-told-next = Look at the wick: clean, wet, with air moving over it.
wick-air-not-read = the velocity of the air over the wick is not written
wick-air-not-read-next = Read the velocity of the air that moves over the wick.
wick-not-seen = it is not written that the wick was clean and wet
wick-not-seen-next = Look whether the wick is clean and wet.

deviation-stays = All that it was off stays as doubt of its readings.
