### Instruments: whether they can be relied on.

# $on (date) - the day the detector was checked
leak-detector-checked = The leak detector was checked on { $on }.

# $on (date) - the day the detector was checked
# $day (date) - the day of the leak check
leak-detector-not-checked = The leak detector was checked on { $on }, too long before or only after the leak check of { $day }.
leak-detector-next = Check the detector on a reference leak and repeat the search.
