### The words of a job file as the record prints them. Each message is called after its list and its word; the file itself always has the English word.

## Something fitted to the circuit beyond the standard parts.

accessory-crankcase-heater = crankcase heater
accessory-liquid-solenoid = liquid solenoid
accessory-txv = TXV
accessory-start-kit = start kit
accessory-oil-traps = oil traps
accessory-suction-accumulator = suction accumulator
accessory-oil-separator = oil separator
accessory-liquid-drier = liquid drier
accessory-suction-drier = suction drier
accessory-low-ambient-kit = low ambient kit

## What a test of oil or refrigerant showed.

acid-result-good = good
acid-result-marginal = marginal
acid-result-bad = bad
acid-result-not-tested = not tested

## How the airflow was found.

airflow-method-fan-table = fan table
airflow-method-heat-rise = heat rise
airflow-method-traverse = traverse
airflow-method-hood = hood
airflow-method-pressure-drop = pressure drop
airflow-method-unit-display = unit display

## What the cold is for.

application-ac = AC
application-high-temperature = high temperature
application-medium-temperature = medium temperature
application-low-temperature = low temperature
application-ice = ice
application-drying = drying

## What the outdoor unit held when it arrived.

arrival-charge-charged = charged
arrival-charge-nitrogen-holding-charge = nitrogen holding charge
arrival-charge-recovered-and-evacuated = recovered and evacuated
arrival-charge-unknown = unknown

## How brazed joints were looked at.

braze-inspection-visual = visual
braze-inspection-cut-out = cut out
braze-inspection-none = none

## How the charge was set.

charge-method-weight = weight
charge-method-superheat = superheat
charge-method-subcooling = subcooling
charge-method-makers-chart = maker's chart
charge-method-sight-glass = sight glass

## Which side of the circuit refrigerant went into.

charge-port-liquid-side = liquid side
charge-port-vapor-side = vapor side
charge-port-both = both

## What a maker's chart gives.

chart-quantity-superheat = superheat
chart-quantity-subcooling = subcooling
chart-quantity-vapor-pressure = vapor pressure
chart-quantity-liquid-pressure = liquid pressure
chart-quantity-discharge-pressure = discharge pressure
chart-quantity-discharge-line = discharge line
chart-quantity-vapor-line = vapor line
chart-quantity-liquid-line = liquid line
chart-quantity-temperature-split = temperature split

## What a maker's chart is entered with.

chart-reading-outdoor-dry-bulb = outdoor dry bulb
chart-reading-outdoor-wet-bulb = outdoor wet bulb
chart-reading-return-dry-bulb = return dry bulb
chart-reading-return-wet-bulb = return wet bulb
chart-reading-liquid-pressure = liquid pressure
chart-reading-vapor-pressure = vapor pressure
chart-reading-box-temperature = box temperature

## Which part of the circuit was under test or under vacuum.

circuit-section-whole-system = whole system
circuit-section-line-set-and-indoor = line set and indoor
circuit-section-line-set = line set
circuit-section-indoor = indoor
circuit-section-outdoor = outdoor
circuit-section-low-side = low side
circuit-section-high-side = high side
circuit-section-other = other

## How a filter or coil looked.

cleanliness-clean = clean
cleanliness-new = new
cleanliness-dirty = dirty
cleanliness-none = none
cleanliness-not-seen = not seen

## How times are written in a log.

clock-format-seconds = seconds
clock-format-minutes = minutes
clock-format-clock = clock
clock-format-date-and-clock = date and clock
clock-format-elapsed-clock = elapsed clock

## How the compressor changes its capacity.

compressor-kind-fixed = fixed
compressor-kind-two-stage = two-stage
compressor-kind-variable-speed = variable speed
compressor-kind-digital = digital
compressor-kind-tandem = tandem

## What a continuity check found.

continuity-result-continuous = continuous
continuity-result-not-continuous = not continuous
continuity-result-not-checked = not checked

## What is in a cylinder.

cylinder-contents-virgin = virgin
cylinder-contents-reclaimed = reclaimed
cylinder-contents-recycled = recycled
cylinder-contents-recovered = recovered
cylinder-contents-empty = empty

## What separates a number's whole part from its fraction.

decimal-mark-point = point
decimal-mark-comma = comma

## How uncertainty enters a verdict.

decision-rule-simple = simple
decision-rule-guarded = guarded

## What separates the cells of a log.

delimiter-comma = comma
delimiter-semicolon = semicolon
delimiter-tab = tab

## The line a drier sits in.

drier-line-liquid = liquid
drier-line-suction = suction

## What happened during the evacuation.

evacuation-event-kind-pump-on = pump on
evacuation-event-kind-nitrogen-break = nitrogen break
evacuation-event-kind-isolated = isolated
evacuation-event-kind-heat-applied = heat applied
evacuation-event-kind-pump-oil-changed = pump oil changed
evacuation-event-kind-gauge-cleaned = gauge cleaned
evacuation-event-kind-opened = opened
evacuation-event-kind-end = end

## What stood ready against a fire.

extinguisher-co2 = CO2
extinguisher-dry-powder = dry powder
extinguisher-both = both
extinguisher-none = none

## A step before opening a circuit that holds flammable refrigerant.

flammable-step-recovered = recovered
flammable-step-purged = purged
flammable-step-evacuated = evacuated
flammable-step-purged-again = purged again
flammable-step-opened = opened

## Where frost or ice was seen.

frost-place-none = none
frost-place-evaporator-inlet = evaporator inlet
frost-place-whole-evaporator = whole evaporator
frost-place-suction-line = suction line
frost-place-compressor = compressor
frost-place-drier = drier
frost-place-outdoor-coil = outdoor coil

## What a burner burns.

fuel-natural-gas = natural gas
fuel-propane = propane
fuel-oil = oil

## Where the vacuum gauge sat.

gauge-place-at-the-system = at the system
gauge-place-at-the-pump = at the pump
gauge-place-on-the-manifold = on the manifold

## What a pressure gauge measures from.

gauge-reference-vented = vented
gauge-reference-sealed = sealed
gauge-reference-absolute = absolute

## What keeps water from freezing.

glycol-kind-none = none
glycol-kind-propylene-glycol = propylene glycol
glycol-kind-ethylene-glycol = ethylene glycol
glycol-kind-ethanol = ethanol
glycol-kind-other = other

## How the head pressure is kept up in the cold.

head-pressure-control-none = none
head-pressure-control-fan-cycling = fan cycling
head-pressure-control-flooding = flooding
head-pressure-control-floating = floating

## What an instrument measures.

instrument-kind-pressure-gauge = pressure gauge
instrument-kind-vacuum-gauge = vacuum gauge
instrument-kind-barometer = barometer
instrument-kind-pipe-clamp = pipe clamp
instrument-kind-thermometer = thermometer
instrument-kind-psychrometer = psychrometer
instrument-kind-hygrometer = hygrometer
instrument-kind-scale = scale
instrument-kind-clamp-meter = clamp meter
instrument-kind-multimeter = multimeter
instrument-kind-capacitance-meter = capacitance meter
instrument-kind-insulation-tester = insulation tester
instrument-kind-phase-rotation-meter = phase rotation meter
instrument-kind-manometer = manometer
instrument-kind-anemometer = anemometer
instrument-kind-flow-hood = flow hood
instrument-kind-torque-wrench = torque wrench
instrument-kind-leak-detector = leak detector
instrument-kind-stopwatch = stopwatch
instrument-kind-other = other

## Which valve separated the circuit from the pump.

isolation-place-valve-on-the-service-port = valve on the service port
isolation-place-manifold = manifold
isolation-place-pump-valve = pump valve

## How a joint is made.

joint-kind-flare = flare
joint-kind-brazed = brazed
joint-kind-press = press
joint-kind-soldered = soldered
joint-kind-threaded = threaded
joint-kind-flanged = flanged
joint-kind-service-valve = service valve
joint-kind-core = core
joint-kind-other = other

## How a leak check was made.

leak-check-kind-direct = direct
leak-check-kind-indirect = indirect

## How a leak was looked for.

leak-method-bubble-solution = bubble solution
leak-method-electronic = electronic
leak-method-electronic-with-tracer = electronic with tracer
leak-method-ultrasonic = ultrasonic
leak-method-pressure-hold = pressure hold
leak-method-indirect = indirect

## What the leak search found.

leak-result-none = none
leak-result-leak = leak
leak-result-leak-repaired = leak repaired

## Where the liquid line's temperature was read.

liquid-line-place-liquid-service-valve = liquid service valve
liquid-line-place-condenser-outlet = condenser outlet
liquid-line-place-after-drier = after drier
liquid-line-place-metering-device = metering device

## Where the liquid pressure was read.

liquid-pressure-place-liquid-service-valve = liquid service valve
liquid-pressure-place-discharge-port = discharge port
liquid-pressure-place-receiver = receiver

## What feeds the evaporator.

metering-kind-fixed-orifice = fixed orifice
metering-kind-capillary = capillary
metering-kind-txv = TXV
metering-kind-eev = EEV

## What limits a leak's effect.

mitigation-none = none
mitigation-leak-sensor-with-fan = leak sensor with fan
mitigation-shut-off-valves = shut-off valves
mitigation-continuous-fan = continuous fan

## Where refrigerant would come out.

mounting-floor = floor
mounting-window = window
mounting-wall = wall
mounting-ceiling = ceiling

## Who uses a room.

occupancy-general = general
occupancy-institutional = institutional
occupancy-supervised = supervised
occupancy-authorised = authorised

## What kind of oil it is.

oil-kind-poe = POE
oil-kind-pve = PVE
oil-kind-pag = PAG
oil-kind-mineral = mineral
oil-kind-alkylbenzene = alkylbenzene

## Where the oil stood in the glass.

oil-level-in-the-glass = in the glass
oil-level-low = low
oil-level-high = high
oil-level-no-glass = no glass

## On or off.

on-off-on = on
on-off-off = off

## What the system was doing.

operating-mode-cooling = cooling
operating-mode-heating = heating

## The size of the record's pages.

paper-letter = letter
paper-a4 = A4

## What the phase rotation meter showed.

phase-rotation-correct = correct
phase-rotation-reversed = reversed
phase-rotation-single-phase = single phase

## What a photo shows.

photo-subject-outdoor-nameplate = outdoor nameplate
photo-subject-indoor-nameplate = indoor nameplate
photo-subject-gauge-at-isolation = gauge at isolation
photo-subject-gauge-at-end = gauge at end
photo-subject-pressure-test-start = pressure test start
photo-subject-pressure-test-end = pressure test end
photo-subject-scale-before = scale before
photo-subject-scale-after = scale after
photo-subject-joints = joints
photo-subject-wiring = wiring
photo-subject-label = label
photo-subject-leak-sensor = leak sensor
photo-subject-refrigerant-cylinder = refrigerant cylinder
photo-subject-damage = damage
photo-subject-other = other

## From which ports the circuit was evacuated.

port-count-one = one
port-count-both = both

## A name for a reading, so that an instrument can say what was read on it.

reading-name-vapor-pressure = vapor pressure
reading-name-liquid-pressure = liquid pressure
reading-name-true-suction-pressure = true suction pressure
reading-name-discharge-pressure = discharge pressure
reading-name-vapor-line = vapor line
reading-name-liquid-line = liquid line
reading-name-discharge-line = discharge line
reading-name-compressor-suction-line = compressor suction line
reading-name-liquid-after-drier = liquid after drier
reading-name-evaporator-outlet = evaporator outlet
reading-name-indoor-coil-outlet = indoor coil outlet
reading-name-sump = sump
reading-name-outdoor-air = outdoor air
reading-name-return-air = return air
reading-name-supply-air = supply air
reading-name-box-temperature = box temperature
reading-name-water-temperature = water temperature
reading-name-water-pressure = water pressure
reading-name-pressure-test = pressure test
reading-name-pressure-test-temperature = pressure test temperature
reading-name-evacuation = evacuation
reading-name-recovery = recovery
reading-name-charge = charge
reading-name-electrical = electrical
reading-name-voltage = voltage
reading-name-current = current
reading-name-capacitance = capacitance
reading-name-insulation = insulation
reading-name-phase-rotation = phase rotation
reading-name-static-pressure = static pressure
reading-name-airflow = airflow
reading-name-air-velocity = air velocity
reading-name-torque = torque
reading-name-leak-search = leak search
reading-name-station-pressure = station pressure
reading-name-time = time

## A language that records are written in.

record-language-en = English

## How the refrigerant left the cylinder.

refrigerant-phase-liquid = liquid
refrigerant-phase-vapor = vapor

## How a device comes back.

reset-kind-manual = manual
reset-kind-automatic = automatic

## How the compressor ran while readings were taken.

running-state-full = full
running-state-high-stage = high stage
running-state-charging-mode = charging mode
running-state-part = part
running-state-unknown = unknown

## Safety class of a refrigerant by ISO 817 and ASHRAE 34.

safety-class-a1 = A1
safety-class-a2-l = A2L
safety-class-a2 = A2
safety-class-a3 = A3
safety-class-b1 = B1
safety-class-b2-l = B2L
safety-class-b2 = B2
safety-class-b3 = B3

## What a safety device guards.

safety-device-kind-high-pressure-switch = high-pressure switch
safety-device-kind-low-pressure-switch = low-pressure switch
safety-device-kind-relief-valve = relief valve
safety-device-kind-freeze-protection = freeze protection
safety-device-kind-discharge-thermostat = discharge thermostat
safety-device-kind-oil-pressure-switch = oil pressure switch
safety-device-kind-float-switch = float switch
safety-device-kind-other = other

## What the sensor is.

sensor-kind-thermocouple-k-class1 = thermocouple K class 1
sensor-kind-thermocouple-k-class2 = thermocouple K class 2
sensor-kind-thermocouple-k-special = thermocouple K special
sensor-kind-thermocouple-k-standard = thermocouple K standard
sensor-kind-thermocouple-t-class1 = thermocouple T class 1
sensor-kind-thermocouple-t-class2 = thermocouple T class 2
sensor-kind-thermistor = thermistor
sensor-kind-rtd = RTD
sensor-kind-rtd-class-a = RTD class A
sensor-kind-rtd-class-b = RTD class B
sensor-kind-thermal = thermal
sensor-kind-capacitance = capacitance
sensor-kind-piezo = piezo
sensor-kind-wick = wick
sensor-kind-capacitive-humidity = capacitive humidity

## What the sight glass showed.

sight-glass-clear = clear
sight-glass-bubbles = bubbles
sight-glass-empty = empty
sight-glass-none = none

## Whether flue gas came out into the room.

spillage-none = none
spillage-some = some
spillage-not-tested = not tested

## Where a static pressure was read.

static-tap-after-filter = after filter
static-tap-before-filter = before filter
static-tap-after-coil = after coil
static-tap-before-coil = before coil
static-tap-plenum = plenum

## What kind of system the circuit belongs to.

system-kind-split = split
system-kind-ductless-split = ductless split
system-kind-multi-split = multi-split
system-kind-vrf = VRF
system-kind-packaged = packaged
system-kind-heat-pump = heat pump
system-kind-refrigeration = refrigeration
system-kind-air-to-water-heat-pump = air-to-water heat pump
system-kind-chiller = chiller

## Where the temperature of the nitrogen was taken.

temperature-place-vapor-line = vapor line
temperature-place-liquid-line = liquid line
temperature-place-both-lines = both lines
temperature-place-indoor-coil = indoor coil
temperature-place-air = air

## What the circuit was filled with for the pressure test.

test-gas-dry-nitrogen = dry nitrogen
test-gas-nitrogen-with-tracer = nitrogen with tracer
test-gas-helium = helium
test-gas-argon = argon
test-gas-carbon-dioxide = carbon dioxide
test-gas-refrigerant = refrigerant
test-gas-compressed-air = compressed air
test-gas-oxygen = oxygen
test-gas-hydrogen = hydrogen
test-gas-acetylene = acetylene

## How a functional test ended.

test-result-ok = ok
test-result-failed = failed
test-result-not-tested = not tested
test-result-not-fitted = not fitted

## Where an indoor unit stands.

unit-place-attic = attic
unit-place-basement = basement
unit-place-closet = closet
unit-place-ceiling = ceiling
unit-place-room = room
unit-place-crawl-space = crawl space
unit-place-garage = garage
unit-place-machine-room = machine room
unit-place-roof = roof
unit-place-other = other

## The set of units of bare numbers.

unit-preset-us = us
unit-preset-si = si

## Why a ban on refrigerants in service does not reach equipment.

use-exemption-military = military
use-exemption-deep-cold = deep cold
use-exemption-nuclear = nuclear
use-exemption-chiller = chiller
use-exemption-authorized = authorized

## What happened to the valve cores before evacuation.

valve-cores-removed = removed
valve-cores-in-place = in place
valve-cores-none = none

## How a valve stood.

valve-state-open = open
valve-state-closed = closed
valve-state-driven-open = driven open
valve-state-opened-by-magnet = opened by magnet
valve-state-energised = energised
valve-state-not-energised = not energised
valve-state-mid-position = mid position
valve-state-not-known = not known
valve-state-none = none

## Where the vapor line's temperature was read.

vapor-line-place-service-valve = service valve
vapor-line-place-evaporator-outlet = evaporator outlet
vapor-line-place-compressor-inlet = compressor inlet

## Where the vapor pressure was read.

vapor-pressure-place-service-valve = service valve
vapor-pressure-place-evaporator-outlet = evaporator outlet
vapor-pressure-place-compressor-inlet = compressor inlet

## What was done to the circuit.

work-kind-new-installation = new installation
work-kind-opened-circuit = opened circuit
work-kind-leak-repair = leak repair
work-kind-compressor-replacement = compressor replacement
work-kind-refrigerant-change = refrigerant change
work-kind-charge-adjustment = charge adjustment
work-kind-seasonal-check = seasonal check
work-kind-decommissioning = decommissioning
