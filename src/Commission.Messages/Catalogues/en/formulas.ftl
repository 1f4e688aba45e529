### Formulas that need words, as a trace prints them, and levels as their regulation words them.

## Recovery before opening

recovery-low-pressure = 25 mmHg absolute

# $depth (count) - depth below a standard atmosphere, inHg
recovery-depth = { $depth } inHg vac
