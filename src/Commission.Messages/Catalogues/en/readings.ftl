### What is read on a job, in the words of findings and tables.

pressure-after-recovery = pressure after recovery

vacuum = vacuum

standing-liquid-pressure = standing liquid pressure

standing-liquid-line = standing liquid line

standing-outdoor-dry-bulb = standing outdoor dry bulb

return-static = return static

supply-static = supply static

external-static = external static

filter-drop = filter drop

coil-drop = coil drop

stage-pressure = stage pressure

test-pressure = test pressure

outdoor-fan-current = outdoor fan current

indoor-fan-current = indoor fan current

total-current = total current

auxiliary-heat-current = auxiliary heat current

voltage-before-start = voltage before start

lowest-voltage-at-start = lowest voltage at start

control-voltage = control voltage

insulation-resistance = insulation resistance

vapor-pressure = vapor pressure

liquid-pressure = liquid pressure

true-suction-pressure = true suction pressure

discharge-pressure = discharge pressure

vapor-line = vapor line

liquid-line = liquid line

suction-line-at-the-compressor = suction line at the compressor

discharge-line = discharge line

liquid-after-the-drier = liquid after the drier

evaporator-outlet = evaporator outlet

indoor-coil-outlet = indoor coil outlet

sump = sump

outdoor-dry-bulb = outdoor dry bulb

outdoor-wet-bulb = outdoor wet bulb

outdoor-humidity = outdoor humidity

return-dry-bulb = return dry bulb

return-wet-bulb = return wet bulb

return-humidity = return humidity

supply-dry-bulb = supply dry bulb

supply-wet-bulb = supply wet bulb

supply-humidity = supply humidity

box-temperature = box temperature

compressor-current = compressor current

# $number (count) - which of several
line-to-line-numbered = line to line { $number }

# $number (count) - which of several
compressor-current-numbered = compressor current { $number }

# $number (count) - which of several
run-capacitor-numbered = run capacitor { $number }

test-temperature = test temperature

station-pressure = station pressure

# $number (count) - which of several
test-temperature-numbered = test temperature { $number }

recovery-cylinder = recovery cylinder

scale = scale

# $number (count) - which of several
scale-numbered = scale, cylinder { $number }

# $weighing (message) - what was weighed
before = { $weighing } before

# $weighing (message) - what was weighed
after = { $weighing } after

# $name (message) - what was read
# $time (text) - when
at-time = { $name }, { $time }

# $time (text) - when the system was read before it was touched
as-found = as found { $time }

capacity = capacity

charge-recovered = charge recovered

compressor = compressor

compressor-started = compressor started

date-of-job = date of the job

evacuation-log = evacuation log

factory-charge = factory charge

hermetically-sealed = hermetically sealed

leak-check = leak check

mass-recovered = mass recovered

metering = metering

rated-current = rated current

refrigerant = refrigerant

scale-before = scale before

technician = technician

temperature-of-box = temperature of the box

work = work

unit-arrived = unit arrived
