### Where the doubt of a reading comes from and what was corrected; what every finding shares.

## Causes of doubt

# $instrument (text) - the instrument
repeatability = { $instrument }: repeatability

repeatability-source = share of full scale, common practice

# $instrument (text) - the instrument
reading-of-check = { $instrument }: reading of the check

good-ice-bath = a good ice bath, common practice

# $instrument (text) - the instrument
failed-ice-point = { $instrument }: failed its ice point

# $instrument (text) - the instrument
failed-check = { $instrument }: failed its check

stays-as-doubt = all that it was off stays as doubt

insulated-clamp = insulated clamp, common practice, no source

bare-clamp = bare clamp, a tenth of the difference to the air at most

# $instrument (text) - the instrument
# $quantity (choice: accuracy, humidity) - of what it is the accuracy
accuracy-common =
    { $quantity ->
        [humidity] { $instrument }: humidity
       *[accuracy] { $instrument }: accuracy
    }

# $instrument (text) - the instrument
# $place (message) - where it reads
# $quantity (choice: accuracy, humidity) - of what it is the accuracy
accuracy-of-sensor =
    { $quantity ->
        [humidity] { $instrument }: humidity of the sensor, { $place }
       *[accuracy] { $instrument }: accuracy of the sensor, { $place }
    }

# $instrument (text) - the instrument
# $place (message) - where it reads
# $quantity (choice: accuracy, humidity) - of what it is the accuracy
accuracy-at-place =
    { $quantity ->
        [humidity] { $instrument }: humidity, { $place }
       *[accuracy] { $instrument }: accuracy, { $place }
    }

# $place (message) - a reading
wet-place = { $place } (wet)

# $place (message) - a reading
# $number (count) - which of several alike
numbered-place = { $place } { $number }

# $statement (message) - what the maker says
makers-statement = maker's statement, { $statement }

# $class (message) - the class of the sensor
tolerance-as-new = { $class }, tolerance as new

no-accuracy-stated = no accuracy stated

# $source (message) - where the accuracy comes from
# $part (choice: all-readings, readings-of-sensor, place, whole) - which part of the doubt
part-of-accuracy =
    { $part ->
        [all-readings] { $source }: the part that all its readings share
        [readings-of-sensor] { $source }: the part that all readings of the sensor share
        [place] { $source }: the part of the place
       *[whole] { $source }
    }

# $name (text) - the reading
as-stated = { $name }: as stated

# $what (choice: reading, number) - what it is written behind
# $factor (symbols) - the coverage factor
stated-behind =
    { $what ->
        [number] written with the number, k = { $factor }
       *[reading] written with the reading, k = { $factor }
    }

# $name (text) - the number
last-digit = { $name }: last digit

step-as-written = smallest step of the number as written

# $name (text) - the reading
resolution = { $name }: resolution

barometer = barometer

barometer-unknown = no accuracy stated: half a kilopascal either way, common practice, no source

weather = weather

weather-source = barometric pressure moves about the standard atmosphere; no barometer was read

known-pressure = known pressure

## Steps of a correction

site-atmosphere = atmospheric pressure at the site

as-read = station pressure as read

at-the-site = barometer at the site

sea-level = no elevation stated: sea level

# $height (quantity) - the elevation
elevation = h = { $height }

standard-atmosphere-source = US Standard Atmosphere 1976 / ISO 2533 (from memory)

# $metres (symbols) - the formula of the height
in-metres = { $metres }, h in m

elevation-name = elevation

# $name (text) - the reading
absolute-reading = { $name }, absolute

depth-below = p_atm − depth

# $pressure (quantity) - what the gauge shows
# $atmosphere (quantity) - the pressure of the air
at-atmosphere = { $pressure } at { $atmosphere }

zero-symbol = zero

known-points-symbol = known points

ice-point-symbol = ice point

clamp-symbol = clamp

# $name (text) - the reading
# $what (message) - what is corrected
# $instrument (text) - the instrument
correction-of = { $name }: { $what } of { $instrument }

zero-formula = reading − reading open to air

zero-source = a zero offset is always removed

known-points-formula = along the line through zero and the known pressure

known-points-source = point-to-point correction; the reference states its uncertainty

reported-not-corrected = reported, not corrected

ice-point-formula = reading − (reading in ice − 0 °C)

ice-point-source = ice point of water, 0 °C

clamp-formula = reading − f · (ambient − reading)

clamp-source = mean of the range of f: common practice, no source

# $instrument (text) - the instrument
ice-point-reading = { $instrument }: ice point

# $instrument (text) - the instrument
insulated = { $instrument }: insulated

# $instrument (text) - the instrument
open-to-air = { $instrument }: reading open to air

# $instrument (text) - the instrument
known-pressure-applied = { $instrument }: known pressure applied

# $instrument (text) - the instrument
known-pressure-read = { $instrument }: known pressure read

## What every finding shares

distance-to-target = distance to the target

distance-formula = measured − target; what both rest on counts once

# $share (symbols) - the share
of-its-bound = { $share } of its bound

# $sensitivity (symbols) - change of the result
for-the-bound = { $sensitivity } for the bound

# $sensitivity (symbols) - change of the result
# $unit (name) - unit of the cause
per-unit = { $sensitivity } per { $unit }

# $readings (list) - the readings
resolution-alone = U holds the resolution alone: the accuracy of { $readings } is not written.

rectangular = rectangular

triangular = triangular

u-shaped = U-shaped

normal = normal

# $name (text) - the refrigerant as written
refrigerant-unknown = { $name } is not known
