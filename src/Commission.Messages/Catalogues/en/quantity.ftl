### Why a text is not the quantity that belongs in its place, and what to write instead.

# $dimension (choice: pressure, vacuum-level, atmospheric-pressure, pressure-difference, temperature, temperature-difference, mass, length, area, volume, duration, volume-flow, mass-flow, velocity, power, torque, electric-current, voltage, capacitance, resistance, frequency, ratio, mass-per-length, density, specific-enthalpy, throughput, pressure-rate, power-per-flow, flow-per-power) - what is measured
a-quantity =
    { $dimension ->
        [pressure] a pressure
        [vacuum-level] a vacuum level
        [atmospheric-pressure] a barometer reading
        [pressure-difference] a pressure difference
        [temperature] a temperature
        [temperature-difference] a temperature difference
        [mass] a mass
        [length] a length
        [area] an area
        [volume] a volume
        [duration] a time span
        [volume-flow] a volume flow
        [mass-flow] a mass flow or leak rate
        [velocity] a velocity
        [power] a power or capacity
        [torque] a torque
        [electric-current] a current
        [voltage] a voltage
        [capacitance] a capacitance
        [resistance] a resistance
        [frequency] a frequency or speed
        [ratio] a percentage
        [mass-per-length] a mass for each length
        [density] a density or concentration
        [specific-enthalpy] an enthalpy
        [throughput] a gas flow
        [pressure-rate] a rate of pressure change
        [power-per-flow] a power for each flow
       *[flow-per-power] a flow for each capacity
    }

# $what (message) - the quantity with its article
expected = Expected here: { $what }.

nothing = Nothing is written.

# $length (count) - characters written
too-long = This is too long for a quantity ({ $length } characters).

too-long-next = Write one number and its unit; put words in the notes.

# $written (text) - what is written
not-a-number = "{ $written }" does not begin with a number.

# $written (text) - what is written
unit-alone = "{ $written }" is a unit without a number.

# $written (text) - what is written
not-one-reading = "{ $written }" is not one reading.

not-one-reading-next = Write the number itself; how sure it is goes behind it, such as +/- 1.0.

# $written (text) - what is written
in-words = "{ $written }" has its number in words.

# $example (name) - a quantity as a job file has it
in-words-next = Write the number in digits, such as { $example }.

# $example (name) - a quantity as a job file has it
like = Write it like { $example }.

# $number (text) - the number as written
comma = "{ $number }" has a comma in the number.

# $number (name) - the number as it may be written
comma-out = Write { $number }, without the comma.

# $number (name) - the number as it may be written
commas-out = Write { $number }, without commas.

# $number (name) - the number as it may be written
comma-to-point = Write { $number }, with a point for the decimals.

# $whole (name) - the number without its comma
# $decimal (name) - the number with a point
comma-either = Write { $whole }, or { $decimal } if the comma stands for a decimal point.

# $number (text) - the number as written
too-large = "{ $number }" is larger than any quantity.

too-large-next = Check the exponent.

# $written (text) - the fraction
odd-fraction = "{ $written }" is not a fraction of a tube or flare size.

odd-fraction-next = Write a decimal number, or a fraction such as 3/8 or 1 1/8.

# $written (text) - the digits
spaced-digits = "{ $written }" looks like one number with a space in it.

# $number (name) - the number as it may be written
space-out = Write { $number }, without the space.

# $written (text) - what is written
two-numbers = "{ $written }" has two numbers before a unit.

two-numbers-next = Write one number and its unit.

# $written (text) - what is written
unit-missing = "{ $written }" has no unit.

# $ways (list) - the number with one unit and with another
write-one-of = Write { $ways }.

# $unit (text) - the unit as written
unknown-unit = "{ $unit }" is not a unit known here.

# $nearest (name) - number and unit
did-you-mean = Did you mean { $nearest }?

# $units (list) - symbols of units
write-in = Write it in { $units }.

# $written (text) - what is written
# $what (message) - the quantity with its article
wrong-dimension = "{ $written }" is { $what }.

# $written (text) - what is written
absolute-difference = "{ $written }" is an absolute pressure.

# $written (text) - what is written
gauge-difference = "{ $written }" is a pressure against the atmosphere.

# $value (name) - number and unit
write-this = Write { $value }.

# $written (text) - what is written
reference-missing = "{ $written }" does not say gauge or absolute.

# $absolute (name) - number and absolute unit
vacuum-reference-next = Write { $absolute } if it is absolute, or the reading of a vacuum gauge in micron, Torr, Pa or mbar.

# $gauge (name) - number and gauge unit
# $absolute (name) - absolute unit
gauge-reference-next = Write { $gauge } (what a service gauge shows) or { $absolute }.

# $depth (name) - number and unit of depth
# $absolute (name) - absolute unit
depth-reference-next = Write { $depth } (the depth a compound gauge shows) or { $absolute }.

# $absolute (name) - number and absolute unit
absolute-reference-next = Write { $absolute } if it is absolute.

# $written (text) - what is written
gauge-not-vacuum = "{ $written }" is counted from the atmosphere, which a gauge cannot resolve near vacuum.

# $written (text) - what is written
depth-not-vacuum = "{ $written }" is a depth below the atmosphere, and a compound gauge cannot show dryness.

vacuum-next = Write what a vacuum gauge reads, in micron, Torr, Pa or mbar.

# $written (text) - what is written
gauge-barometer = "{ $written }" is counted from the atmosphere itself.

# $examples (list) - barometer readings
gauge-barometer-next = Write what a barometer at the site reads, such as { $examples }.

# $written (text) - what is written
below-absolute-zero = "{ $written }" is below absolute zero (−273.15 °C, −459.67 °F).

sign-and-unit = Check the sign and the unit.

# $written (text) - what is written
absolute-below-zero = "{ $written }" is an absolute pressure below zero.

absolute-below-zero-next = Check the sign; a reading of a service gauge is gauge pressure.

# $written (text) - what is written
below-perfect-vacuum = "{ $written }" is lower than a perfect vacuum.

# $written (text) - what is written
depth-with-minus = "{ $written }" is a depth with a minus sign.

depth-with-minus-next = Write the depth without the sign.

# $written (text) - what is written
deeper-than-vacuum = "{ $written }" is deeper than a perfect vacuum.

number-and-unit = Check the number and the unit.

# $written (text) - what is written
# $what (message) - the quantity with its article
below-zero = "{ $written }" is { $what } below zero.

without-minus = Write it without the minus sign.

# $rest (text) - what is left over
leftover = "{ $rest }" is left over after the quantity.

nothing-behind = Nothing stands behind the ± sign.

# $written (text) - what is written
uncertainty-below-zero = "{ $written }" is an uncertainty below zero.

# $written (text) - what is written
not-a-coverage-factor = "{ $written }" is not a coverage factor.

not-a-coverage-factor-next = Write (k=1) or (k=2); without it k = 2 is taken.

# $written (text) - what is written
not-a-unit-or-factor = "{ $written }" is not a unit or a coverage factor.

not-a-unit-or-factor-next = Write it like +/- 1.0, or +/- 0.5 (k=1).

# $written (text) - what is written
uncertainty-as-percentage = "{ $written }" gives the uncertainty as a percentage.

# $written (text) - what is written
# $value (text) - the value before it
uncertainty-unit = "{ $written }" has a unit that does not fit { $value }.

# $unit (name) - unit of the reading
uncertainty-next = Write it in the unit of the reading, such as +/- 1 { $unit }.

# $written (text) - what is written
not-a-range = "{ $written }" is not a range.

range-expected = A range is expected here: two values of one kind.

# $example (name) - a range as a job file has it
not-a-range-next = Write both ends, such as { $example }.

# $written (text) - what is written
range-not-value = "{ $written }" is a range.

one-value-expected = One value is expected here.

# $values (list) - the two ends
one-value-next = Write one value, such as { $values }.

# $written (text) - what is written
backward-range = "{ $written }" runs from the higher to the lower end.

# $written (text) - what is written
compound-decimals = "{ $written }" has decimals before its last part.

compound-decimals-next = Only the last part may have decimals.

# $written (text) - what is written
# $number (name) - the number without a unit
compound-unit = "{ $written }" has no unit behind { $number }.

# $example (name) - a compound as a job file has it
compound-unit-next = Write every part with its unit, such as { $example }.

# $written (text) - what is written
compound-order = "{ $written }" does not go from the larger to the smaller unit.

# $written (text) - what is written
compound-minus = "{ $written }" has a minus sign inside.

compound-minus-next = A minus sign stands in front of the whole.

# $written (text) - what is written
# $part (name) - the smaller part
# $larger (name) - symbol of the larger unit
compound-carry = "{ $written }" has { $part }, which is a whole { $larger } or more.

# $larger (name) - symbol of the larger unit
compound-carry-next = Carry it over to the { $larger }.

accuracy-expected = An accuracy is expected here.

# $example (name) - an amount as a job file has it
accuracy-next = Write it like 0.5 % of full scale, 1.5 % of reading + 3 digits, { $example }, or ±0.5 K (k=2).

# $written (text) - what is written
accuracy-factor = "{ $written }" has a coverage factor that cannot be.

# $written (text) - what is written
accuracy-below-zero = "{ $written }" is an accuracy below zero.

# $written (text) - what is written
accuracy-of-what = "{ $written }" does not say of what.

# $written (text) - what is written
not-an-accuracy = "{ $written }" is not an accuracy.

# $key (text) - the key
unknown-display-key = "{ $key }" is nothing that has a unit of its own.

# $unit (text) - the unit as written
# $key (text) - the key
not-a-display-unit = "{ $unit }" cannot be the unit of { $key }.

# $words (list) - what may be written
one-of = Write one of: { $words }.

## What a maker says of an instrument

# $amount (symbols) - the percentage without its sign
of-full-scale = { $amount } % of full scale

# $amount (symbols) - the percentage without its sign
of-reading = { $amount } % of reading

# $amount (symbols) - how many digits
# $number (choice: one, several) - whether it is one digit
digits =
    { $number ->
        [one] { $amount } digit
       *[several] { $amount } digits
    }

# $first (message) - the terms before
# $second (message) - the next term
sum-of-terms = { $first } + { $second }

# $amount (symbols) - a value with its unit
amount = { $amount }

# $statement (message) - the statement
# $factor (symbols) - the coverage factor
with-coverage-factor = { $statement } (k = { $factor })

# $alternatives (list) - bounds of which the greater one holds
greater-of = { $alternatives }
