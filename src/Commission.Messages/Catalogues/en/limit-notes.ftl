### What limits are called, and the words of the packs inside this program: titles, notes, requirements in words, what a clause says and why a
### record has to show something. The names stand in the YAML of the packs and, for what a limit is called, in the ids of the definitions; a test
### holds the one against the other.

## What a limit is called

limit-instruments-ice-point-good = Largest error at the ice point for a thermometer to be used as it is
limit-instruments-ice-point-replace = Largest error at the ice point that may still be corrected; beyond it the sensor is replaced
limit-instruments-warm-point-good = Largest error in a warm bath for a thermometer to be used as it is
limit-instruments-warm-point-replace = Largest error in a warm bath that may still be corrected; beyond it the sensor is replaced
limit-instruments-warm-point-range = Temperature of the warm bath for the second point to count
limit-instruments-boiling-point-good = Largest error in boiling water at the site's pressure for a thermometer to be used as it is
limit-instruments-boiling-point-replace = Largest error in boiling water that may still be corrected; beyond it the sensor is replaced
limit-instruments-zero-pressure = Largest reading of a pressure gauge open to the air, as a share of full scale, before the gauge is doubted
limit-instruments-known-pressure = Largest error of a pressure gauge at a known pressure, as a share of that pressure
limit-instruments-cylinder = Largest difference between a gauge and the saturation pressure of a rested cylinder, as a share of that pressure
limit-instruments-cylinder-rest = Time the cylinder rests at one temperature before it is a reference
limit-instruments-pair-agreement = Largest difference between two thermometers at one place
limit-instruments-scale = Largest error of a refrigerant scale with a check weight
limit-instruments-vacuum-gauge-agreement = Largest difference between two vacuum gauges on one rig, as a share of the mean
limit-instruments-calibration-interval = Longest time since calibration for an instrument that states no interval of its own
limit-instruments-field-check-interval = Longest time since an instrument's field check (ice point, zero, known pressure)
limit-instruments-leak-detector-interval = Longest time since a leak detector was checked
limit-instruments-thermometer-accuracy = Largest error a thermometer may state
limit-instruments-thermometer-resolution = Coarsest step of a thermometer
limit-instruments-adequacy-good = Tolerance over expanded uncertainty from which the instruments are good for a verdict
limit-instruments-adequacy-usable = Tolerance over expanded uncertainty from which the instruments are usable in the field
limit-instruments-adequacy-weak = Tolerance over expanded uncertainty below which no verdict is given

limit-pressure-test-gas = What the circuit may be tested with
limit-pressure-test-tracer-maximum = Largest share of refrigerant or hydrogen in the test gas
limit-pressure-test-level = Test pressure the maker asks for
limit-pressure-test-minimum-factor = Test pressure over the design pressure of the section, both gauge
limit-pressure-test-minimum-factor-condition = Test pressure over the design pressure of the section, both gauge, below which the record carries a condition
limit-pressure-test-maximum-factor = Test pressure over the design pressure of any component in the section, both gauge
limit-pressure-test-maximum-factor-weakest-part = Test pressure over the stated rating of the weakest part in the section, both gauge
limit-pressure-test-strength-minimum-factor = Strength-test pressure over the maximum allowable pressure PS, both gauge
limit-pressure-test-order = Order of strength test, tightness test and evacuation
limit-pressure-test-hold-loss = Nitrogen lost during the hold, corrected for temperature, as a share of the absolute test pressure; loss plus its uncertainty is compared
limit-pressure-test-hold-time = Length of the hold
limit-pressure-test-settled = Time between filling and the first reading of the hold
limit-pressure-test-stage-time = Time at each lower stage on the way up to the test pressure
limit-pressure-test-joint-leak-check-sensitivity = Smallest leak of refrigerant the method used on a field-made joint can show
limit-pressure-test-joint-leak-check-pressure-factor = Pressure during the leak check of joints over the maximum allowable pressure, both gauge
limit-pressure-test-brazing-nitrogen-flow = Nitrogen flowing through a joint while it is brazed

limit-evacuation-level = Pressure in the circuit at isolation, read at the system
limit-evacuation-dwell = Time the pump stays on after the level is reached
limit-evacuation-decay = Pressure in the isolated circuit until the stated time after isolation; every reading until then counts
limit-evacuation-rise = Rise of pressure in the isolated circuit until the stated time after isolation
limit-evacuation-rig-pump-alone = Pressure the pump reaches with the gauge on its own inlet
limit-evacuation-rig-pump-share = Pressure the pump reaches alone over the target level
limit-evacuation-rig-rise-share = Rise of the blanked-off rig over the rise the hold allows in the same time
limit-evacuation-break-count = Number of nitrogen breaks where breaks are required
limit-evacuation-break-level = Pressure reached before each nitrogen break
limit-evacuation-break-to = Pressure to which a break fills the circuit with dry nitrogen
limit-evacuation-break-time = Time the nitrogen of a break stays in the circuit
limit-evacuation-break-regulator = Regulator setting for a nitrogen break
limit-evacuation-break-required-when = When nitrogen breaks are required at all
limit-evacuation-ambient = Temperature around the circuit during evacuation; below it ice hides water
limit-evacuation-place = Where the vacuum is read
limit-evacuation-pump = How pumps and systems belong together

limit-charge-stabilised-time = Time since start or since the last change of charge before a reading is judged
limit-charge-stabilised-change = Change of superheat or subcooling between the last two readings
limit-charge-validity-outdoor = Outdoor dry bulb at which charge may be judged by readings
limit-charge-validity-outdoor-winter-method = Outdoor dry bulb at which subcooling may be judged with the condenser held back, if the maker allows it
limit-charge-validity-return-dry-bulb = Return-air dry bulb at which charge may be judged by readings
limit-charge-validity-return-wet-bulb = Return-air wet bulb at which a table of target superheat may be used
limit-charge-superheat = Superheat to charge to, or the range it has to lie in
limit-charge-superheat-target-minimum = Target superheat below which there is no valid test
limit-charge-superheat-tolerance = Superheat against its target, fixed orifice or capillary
limit-charge-superheat-floor = Superheat at the suction service port that keeps liquid out of the compressor
limit-charge-subcooling = Subcooling to charge to, or the range it has to lie in
limit-charge-subcooling-tolerance = Subcooling against its target
limit-charge-hunting-swing = Swing of superheat between settled readings beyond which a valve hunts
limit-charge-diagnosis-superheat = Superheat as an expansion valve usually holds it, for the diagnosis where the maker gives none; no verdict of its own
limit-charge-diagnosis-subcooling = Subcooling as usually met, for the diagnosis where the maker gives none; no verdict of its own
limit-charge-metering-superheat-range = Superheat a thermostatic or electronic expansion valve holds
limit-charge-evaporator-superheat-range = Superheat at the evaporator outlet of a refrigeration circuit
limit-charge-compressor-superheat-range = Superheat at the compressor inlet of a refrigeration circuit
limit-charge-vapor-pressure = Pressure at the vapor service valve the maker asks for
limit-charge-gas-cooler-outlet = Temperature at the outlet of the gas cooler
limit-charge-gas-cooler-pressure = Pressure of the gas cooler
limit-charge-receiver-pressure = Pressure of the flash tank or receiver
limit-charge-liquid-pressure = Pressure at the liquid service valve the maker asks for
limit-charge-approach = Liquid line over outdoor dry bulb
limit-charge-total = Total charge in the circuit
limit-charge-weight-tolerance-mass = Charge by weight against the charge required, as a mass, in place of a share of it
limit-charge-weight-tolerance = Charge by weight against the charge required, as a share of it
limit-charge-weight-tolerance-minimum = Smallest tolerance of a charge by weight, where a share of it would be less
limit-charge-phase-glide = Glide above which refrigerant must leave its cylinder as liquid
limit-charge-drier-drop = Temperature drop across a liquid-line drier
limit-charge-condensing-over-ambient-range = Mid-point condensing temperature over outdoor dry bulb
limit-charge-evaporator-difference-range = Return air or box temperature over mid-point evaporating temperature
limit-charge-non-condensables-excess = Standing pressure over saturation, expressed as a temperature
limit-charge-non-condensables-pressure-share = Standing pressure over saturation, as a share of the absolute saturation pressure
limit-charge-non-condensables-rest = Time the condenser stands with its fan on before the standing test counts
limit-charge-non-condensables-settled = Liquid line against outdoor air before the standing test counts
limit-charge-heating-steady = Time of steady heating before a heating reading is judged
limit-charge-heating-since-defrost = Time since the last defrost before a heating reading is judged
limit-charge-return-visit-outdoor = Outdoor dry bulb from which the cooling check of a winter start-up is due
limit-charge-carbon-dioxide-vapor-first = Pressure up to which a carbon dioxide circuit is filled with vapor before liquid
limit-charge-sensible-efficiency-tolerance = Sensible energy-efficiency ratio against its rating, for refrigerants without a charging table

limit-air-temperature-split = Return over supply dry bulb in cooling
limit-air-temperature-split-usual = Temperature split that is rarely exceeded with enough air, where the return wet bulb was not read
limit-air-temperature-split-tolerance = Temperature split against its target; a split above it means low airflow
limit-air-gas-heat-carbon-dioxide = Carbon dioxide in the dry flue gas
limit-air-gas-heat-draft = Draft in the vent
limit-air-gas-heat-flame-signal = Flame current
limit-air-gas-heat-flue-temperature = Temperature of the flue gas
limit-air-gas-heat-inlet-pressure = Gas pressure at the inlet of the gas valve
limit-air-gas-heat-input = Heat input of the burner
limit-air-gas-heat-manifold-pressure = Gas pressure behind the gas valve
limit-air-gas-heat-oxygen = Oxygen in the dry flue gas
limit-air-outside-air-airflow = Outside air at the minimum position of its damper
limit-air-outside-air-position = Minimum position of the outside damper
limit-air-heat-rise = Supply over return dry bulb in heating
limit-air-airflow = Airflow the maker or the design asks for
limit-air-airflow-minimum = Airflow for each capacity before charge may be judged
limit-air-airflow-nominal = Airflow for each capacity that a system is usually designed for
limit-air-airflow-design-tolerance = Airflow against the design value, as a share of it
limit-air-airflow-grade-two = Airflow short of the design value, as a share of it, for the second grade
limit-air-static-external-maximum = External static pressure where the plate gives no maximum
limit-air-filter-drop = Pressure drop of the filter
limit-air-coil-drop = Pressure drop of the coil
limit-air-static-design-tolerance = External static pressure against the design value, as a share of it
limit-air-static-design-tolerance-minimum = External static pressure against the design value, where a share of it would be less
limit-air-fan-power = Electric power of the blower for each airflow
limit-air-fan-power-grade-two = Electric power of the blower for each airflow, for the second grade
limit-air-wet-bulb-velocity = Air velocity over a wetted wick

limit-electrical-voltage = Voltage under load the maker allows
limit-electrical-voltage-utilisation = Voltage under load against the plate, as a share of it
limit-electrical-voltage-unbalance-good = Voltage unbalance (NEMA MG-1) without derating a motor
limit-electrical-voltage-unbalance-limit = Voltage unbalance (NEMA MG-1) that equipment commonly allows
limit-electrical-voltage-unbalance-stop = Voltage unbalance (NEMA MG-1) above which a motor must not run
limit-electrical-voltage-unbalance-supply = Voltage unbalance of the supply at the meter without load
limit-electrical-current-unbalance = Current unbalance between phases
limit-electrical-overcurrent-factor = Breaker or fuse over the maximum overcurrent protection (MOP) of the plate
limit-electrical-conductor-factor = Ampacity of the conductors over the minimum circuit ampacity (MCA) of the plate
limit-electrical-protective-earth = Resistance of the equipment grounding or protective-earth path
limit-electrical-compressor-current = Running current of the compressor the maker allows
limit-electrical-compressor-current-rated = Running current of a fixed-speed compressor over its rated-load current (RLA); above it a remark
limit-electrical-compressor-current-continuous = Running current over rated-load current (RLA) where the maximum continuous current is not given; above it a fail
limit-electrical-locked-rotor-factor = Locked-rotor current over rated-load current, as usually met
limit-electrical-fan-current-factor = Fan-motor current over its full-load current (FLA)
limit-electrical-heater-share = Current of a heater over its rated current
limit-electrical-unit-current-factor = Current of the whole unit over the minimum circuit ampacity (MCA) of the plate
limit-electrical-run-capacitor-tolerance = Run capacitor against its label, as a share of it
limit-electrical-voltage-drop-at-start-good = Voltage drop when the compressor starts, as a share of the voltage before, without remark
limit-electrical-voltage-drop-at-start-limit = Largest voltage drop when the compressor starts, as a share of the voltage before
limit-electrical-insulation-minimum = Insulation resistance of the compressor winding to ground; below it a fail
limit-electrical-insulation-good = Insulation resistance of the compressor winding to ground without remark; below it warm the oil and test again
limit-electrical-insulation-test-voltage = Direct voltage of the insulation test
limit-electrical-terminal-torque = Torque on electrical terminals
limit-electrical-control-voltage-range = Control voltage under load

limit-compressor-ratio-range = Compression ratio as usually met
limit-compressor-ratio-likely = Share of the compression ratio that the conditions make likely, below which gas passes somewhere
limit-compressor-ratio-maximum = Largest compression ratio of a compressor without vapor injection
limit-compressor-discharge-temperature = Discharge-line temperature 6 in from the compressor
limit-compressor-discharge-temperature-place = Distance from the compressor at which the discharge line is read
limit-compressor-discharge-superheat = Discharge superheat below which liquid is suspected to come back
limit-compressor-suction-superheat = Superheat at the compressor inlet
limit-compressor-sump-superheat = Sump or crankcase over the saturation temperature of the suction pressure
limit-compressor-crankcase-heater-time = Time the crankcase heater is on before the first start, where one is fitted

limit-piping-velocity-horizontal = Gas velocity in horizontal lines at minimum stage, for oil return
limit-piping-velocity-riser = Gas velocity in risers at minimum stage, for oil return
limit-piping-velocity-maximum = Gas velocity, for noise
limit-piping-velocity-liquid = Liquid velocity
limit-piping-loss-vapor = Pressure loss of the vapor line, as saturation temperature
limit-piping-loss-liquid = Pressure loss of the liquid line, as saturation temperature
limit-piping-subcooling-left = Subcooling left before the expansion device after rise and friction
limit-piping-total-index = Capacity of the indoor units together over that of the outdoor unit
limit-piping-total-length = Length of all lines together
limit-piping-longest-run = Length of the longest run
limit-piping-first-branch = Length from the first branch to the farthest unit
limit-piping-height-difference = Height between outdoor and indoor unit
limit-piping-traps = Number of oil traps
limit-piping-supports = Distance between supports of a horizontal line
limit-piping-long-line-length = Line length from which long-line accessories are asked about
limit-piping-long-line-rise = Height difference from which long-line accessories are asked about

limit-safety-room-area = Floor area of the smallest room the charge may be in
limit-safety-flammable-appliance-charge = Charge of a flammable refrigerant in a self-contained refrigerating appliance
limit-safety-flammable-charge = Charge of a flammable refrigerant in occupied rooms
limit-safety-flammable-dispersal-height = Height over the floor up to which leaked refrigerant counts as mixed with the air of a room
limit-safety-flammable-ignition-distance = Distance to ignition sources while the circuit is open
limit-safety-flammable-leak-search = Concentration at which the detector used around the work gives the alarm, as a share of LFL
limit-safety-flammable-opening = Steps before a circuit with flammable refrigerant is opened or brazed
limit-safety-flammable-flare-joints = Reuse of flared joints indoors
limit-safety-combustion-carbon-monoxide = Carbon monoxide in the flue gas, free of air
limit-safety-concentration = Charge against the volume of the space
limit-safety-high-pressure-switch-setting = Setting of the high-pressure switch
limit-safety-high-pressure-switch-factor = Pressure at which the high-pressure switch trips over the design pressure of the high side, both gauge
limit-safety-relief-valve-factor = Pressure a relief valve is set to over the design pressure of what it protects, both gauge
limit-safety-device-trip-tolerance = Value at which a safety device trips against its setting, as a share of it

limit-refrigerant-recovery-level = Pressure to which a circuit is recovered before it is opened
limit-refrigerant-recovery-small-appliance = Share of the charge to be recovered from a small appliance
limit-refrigerant-cylinder-fill = Volume of the liquid refrigerant in a cylinder at 25 °C over the volume of the cylinder
limit-refrigerant-cylinder-filling-ratio = Share of a cylinder for transport in Europe that liquid may fill at 50 °C; the filling ratio by mass follows from it
limit-refrigerant-residual-oil = Share of the old oil left after an oil change
limit-refrigerant-identity-pressure = Saturation pressure at 125 °F of the refrigerant charged over the pressure the unit is built for
limit-refrigerant-leak-rate-trigger = Annualised leak rate above which repair is prescribed
limit-refrigerant-leak-rate-threshold = Full charge from which the leak-repair rule applies
limit-refrigerant-leak-check-interval = Time between leak checks
limit-refrigerant-leak-check-sensitivity = Smallest leak the detector of a leak check can show
limit-refrigerant-leak-check-recheck = Longest time from repair to the leak check after it
limit-refrigerant-leak-check-recheck-running = Time the system has run since repair before the leak check after it
limit-refrigerant-label = What is written on the unit
limit-refrigerant-records = What is kept, and how long
limit-refrigerant-use = Which refrigerant may go into equipment that is serviced

limit-functional-sensor = What a controller shows off a thermometer beside its sensor
limit-functional-water-difference = Difference between water in and out
limit-functional-water-flow = Flow of water
limit-functional-water-freezing = Temperature down to which the water has to stay liquid
limit-functional-water-pressure = Pressure of the water at rest
limit-functional-water-strainer-drop = Pressure drop across the strainer of the water
limit-functional-water-volume = Water in the circuit
limit-functional-condensate-slope = Fall of a condensate drain for its length

limit-evidence-terminal-digits-count = Hand-typed readings from which their last digits are looked at
limit-evidence-terminal-digits-probability = Probability of such last digits below which they are remarked on
limit-evidence-repeated-probability = Probability that two rows of readings agree in every digit by chance, below which they are remarked on
limit-evidence-vacuum-fall = Fall of an isolated vacuum, as a share of it, that the gauge's own scatter explains
limit-evidence-vacuum-least = Lowest pressure that a field pump reaches in a circuit through hoses
limit-evidence-agreement = Difference of two routes to one quantity over the root sum of squares of their expanded uncertainties

limit-assumption-nitrogen-temperature = Mean gas temperature against the clamp, half a rectangular width, at each end of a nitrogen hold
limit-assumption-gauge-repeatability = Repeatability of a pressure gauge, as a share of full scale
limit-assumption-atmosphere-weather = Standard uncertainty of atmospheric pressure taken from elevation alone
limit-assumption-atmosphere-change = Change of the atmospheric pressure in an hour that nobody read, half a rectangular width
limit-assumption-accuracy-common = Share of the variance of a maker's accuracy that all readings of an instrument have in common; the rest belongs to each place that is read
limit-assumption-airflow-blower-heat = Heat a blower gives the air when its power is not written, with half a rectangular width
limit-assumption-ice-point-distance = Distance from the ice point over which the accuracy of a sensor comes back as slope
limit-assumption-ice-point-place = Largest error of one place that an ice point leaves
limit-assumption-known-pressure-reach = How far from a known pressure alone, without a zero, a gauge is corrected, as a share of it
limit-assumption-clamp-bare = Largest share of the difference to ambient by which a bare pipe clamp reads toward ambient
limit-assumption-clamp-insulated = Largest share of the difference to ambient by which an insulated pipe clamp reads toward ambient
limit-assumption-thermocouple-cold-junction = Error for each degree the instrument's own temperature has moved since its ice point
limit-assumption-thermocouple-warming = Change of the instrument's own temperature since its ice point
limit-assumption-ice-bath = Temperature of a good ice bath, half a rectangular width
limit-assumption-refrigerant-pure = Standard uncertainty of the saturation pressure of a pure refrigerant, as a share of it
limit-assumption-refrigerant-blend = Standard uncertainty of the saturation pressure of a blend, as a share of it
limit-assumption-refrigerant-estimated = Standard uncertainty of the saturation pressure of a blend some of whose pairs are estimated, as a share of it
limit-assumption-running-temperature = Least standard deviation of a temperature on a running system from one reading to the next
limit-assumption-running-pressure = Least standard deviation of a refrigerant pressure on a running system from one reading to the next, as a share of it
limit-assumption-hose-charge = Uncertainty of the refrigerant left in each hose, half a rectangular width
limit-assumption-hot-condenser = Saturation temperature at which the high side of a unit is asked to hold its refrigerant
limit-assumption-moist-air-humidity-ratio = Largest error of the perfect-gas relations of moist air in humidity ratio, as a share of it
limit-assumption-moist-air-enthalpy = Largest error of the perfect-gas relations of moist air in enthalpy
limit-assumption-airflow-fan-table = Airflow of one blower against the maker's fan table, half a rectangular width as a share of it
limit-assumption-airflow-heat-rise = Sensible-heat factor of air against 1.08 for standard air, half a rectangular width as a share of it
limit-assumption-capacity-rated = Capacity in the conditions of the job against the rated capacity, half a rectangular width as a share of it
limit-assumption-compressor-heat-share = Share of a unit's electrical input that reaches the refrigerant in the compressor
limit-assumption-line-friction-factor = Friction factor (Darcy) of liquid in smooth copper tube
limit-assumption-line-elbow = Length of straight tube that resists like one elbow, in bores
limit-assumption-hold-equalisation = Time after isolation that the hold analysis leaves out
limit-assumption-hold-resolution-steps = Effect over the hold, in steps of the gauge, from which a term of the model counts
limit-assumption-hold-rise-share = Effect over the hold, as a share of the allowed rise, from which a term of the model counts
limit-assumption-valve-core-bore = Bore of a tube that passes as much gas as a valve core left in place
limit-assumption-valve-core-length = Length of a tube that passes as much gas as a valve core left in place
limit-assumption-volume-lines = Uncertainty of the volume of a line set or a circuit as written, half a rectangular width
limit-assumption-volume-indoor-share = Volume of an indoor coil as a share of the volume of its lines; from nothing to twice that
limit-assumption-volume-whole-share = Volume of coils, compressor and vessels as a share of the volume of the lines; from nothing to twice that

## Titles of packs

title-acca-quality-installation = ANSI/ACCA 5 QI, HVAC quality installation
title-air-to-water-heat-pump = Evacuation of a split air-to-water heat pump
title-ansi-z21-47 = ANSI Z21.47, gas-fired central furnaces, carbon monoxide in the flue gas
title-ashrae-15 = ANSI/ASHRAE 15 and 15.2, safety of refrigeration systems, with the model mechanical codes that adopt them
title-california-title-24-rater = California Title 24, Residential Appendix RA3.2, rater
title-california-title-24 = California Title 24, Residential Appendix RA3.2, installer
title-common-practice = Common practice of the trade
title-en-378 = EN 378-2, refrigerating systems, safety and environmental requirements (ISO 5149-2 is alike)
title-eu-f-gas = European regulation on fluorinated greenhouse gases
title-half-torr = Evacuation to 0.5 Torr, or three pulls with breaks of oxygen-free nitrogen
title-hold-at-level = Evacuation with one nitrogen break and a 20 minute hold at the level
title-iec-60335-2-40 = IEC and UL 60335-2-40, heat pumps and air conditioners, flammable refrigerants
title-iec-60335-2-89 = IEC 60335-2-89, commercial refrigerating appliances with incorporated circuit, flammable refrigerants
title-photo-proof = Photos that prove the steps
title-refrigeration = Field evacuation of refrigeration circuits
title-resnet-310 = ANSI/RESNET/ACCA/ICC 310, grading the installation of HVAC systems
title-temperature-dependent-vacuum = Evacuation level by ambient temperature
title-triple-evacuation = Triple evacuation
title-us-epa-608 = United States Clean Air Act section 608 and AIM Act, refrigerant management
title-us-guide-spec-15730 = US federal guide specification 15730, unitary air conditioning, triple evacuation
title-us-guide-spec = US federal guide specification 15182/15652, refrigerant piping, tests

## Who stands for a pack

publisher-acca-quality-installation = Air Conditioning Contractors of America
publisher-air-to-water-heat-pump = a generic installation manual that refers to EN 378-2
publisher-ansi-z21-47 = ANSI and CSA
publisher-ashrae-15 = ASHRAE
publisher-california = California Energy Commission
publisher-common-practice = nobody; collected from installation manuals, public regulation and the trade's habits
publisher-en-378 = CEN
publisher-eu-f-gas = European Union
publisher-installation-manual = a generic installation manual
publisher-iec = IEC; UL in the United States
publisher-photo-proof = a house rule of this program
publisher-refrigeration = a generic refrigeration installation manual
publisher-resnet-310 = RESNET, ACCA and ICC
publisher-temperature-dependent-vacuum = a generic installation manual, French practice
publisher-triple-evacuation = service handbooks
publisher-us-epa-608 = US Environmental Protection Agency
publisher-us-defense = US Department of Defense

## Editions

edition-acca-quality-installation = 2015
edition-not-dated = not dated
edition-ashrae-15 = 15-2022 and 15.2-2022; whether they are the current editions is not checked
edition-california = 2008 and 2013
edition-common-practice = 2026
edition-en-378 = 2016; amendments since are not checked
edition-eu-f-gas = (EU) 2024/573 as published on 20 February 2024, in force since 11 March 2024; before that day (EU) 517/2014
edition-iec-60335-2-40 = 2018
edition-iec-60335-2-89 = 2019
edition-resnet-310 = 2020
edition-us-epa-608 = 40 CFR 82 subpart F and 40 CFR 84 subparts B and C, as of 2026
edition-us-guide-spec-15730 = UFGS 15730N
edition-us-guide-spec = UFGS 15182 and 15652A

## About a pack

about-acca-quality-installation = Only cover and foreword were at hand; every figure is from memory. Measured at the conditions the maker asks for.
about-ashrae-15 = From memory except where marked.
about-en-378 = From memory of a standard that has to be bought; nobody has read the clauses for this program.
about-eu-f-gas = Read in English copies of the texts as published. Exemptions that the Commission has granted since, and amendments, are not followed.
about-iec-60335-2-40 = From memory of a standard that has to be bought. The edition of 2022 has other limits of charge and room for A2L refrigerants, and this pack does not follow it.
about-photo-proof = Names of photos that somebody far from the site can check the record by. Nobody's law asks for them; a customer or a warranty desk may.
about-resnet-310 = The order of tasks is published; the grades are from memory. The windows of the non-invasive charge test are not confirmed and not here.
about-temperature-dependent-vacuum = The manual gives single temperatures; between two of them the colder one's stricter level is used. Below -10 °C it says nothing.
about-us-epa-608 = Sections and Federal Register notices were read in part, as each clause says. Dates of the technology transition bind makers and installers of new systems; they are told here and not judged.

## Requirements in words

statement-pressure-test-gas = Inert gas only, at most 5 % refrigerant tracer; never oxygen or air
statement-safety-flammable-charge = Releasable charge at most the effective dispersal volume charge, V·LFL·0.5, half of that in institutional occupancy
statement-safety-concentration = Charge over the volume of the smallest occupied space at most the refrigerant concentration limit, half of it in institutional occupancy
statement-common-practice-pressure-test-gas = Dry nitrogen or another inert gas, at most 5 % refrigerant tracer; never oxygen, air or a fuel gas
statement-evacuation-break-required-when = The maker or a pack asks for breaks, or the open circuit was wet, rained into or frozen
statement-evacuation-place = Read at the system, beyond the isolation valve, with a vacuum gauge in micron or Pa
statement-refrigerant-recovery-level = The level of 40 CFR 82.156 table 1 for the appliance's pressure class and charge, held
statement-pressure-test-order = Strength test, then tightness test, then safety devices, then evacuation and charge
statement-refrigerant-records = A log-book and declarations of the strength test, tightness test, vacuum and test of safety devices
statement-refrigerant-leak-check-interval = 12, 6 or 3 months from 5, 50 or 500 t CO2e (hermetic and labelled from 10 t), or from 1, 10 or 100 kg of Annex II gases (hermetic and labelled from 2 kg); twice as long with leakage detection
statement-refrigerant-label = Gas, quantity, GWP and t CO2e on the unit; where gas was added on site, factory charge, charge added and total
statement-eu-f-gas-refrigerant-records = Quantity and type of gas, quantities added and recovered with dates, recycled or reclaimed and from whom, who did the work and certificate, dates and results of checks and repairs, measures at decommissioning; kept 5 years
statement-refrigerant-use = GWP below 2500 in service of refrigeration since 2025, of air conditioning and heat pumps since 2026, below 750 in stationary refrigeration from 2032; reclaimed or own recycled gas longer
statement-iec-60335-2-40-safety-flammable-charge = Annex GG, m1 without a room limit, above it the room's floor area and release height
statement-safety-flammable-opening = Recover, purge with oxygen-free nitrogen, evacuate, purge again, and only then open or braze; vent outdoors
statement-safety-flammable-flare-joints = Flared joints indoors are remade, not reused
statement-safety-flammable-appliance-charge = A charge of 13 m³·LFL for A3 and 1.2 kg for A2 and A2L at most; above 150 g a room of at least M / (0.25·LFL·2.2 m) of floor
statement-us-epa-608-refrigerant-records = Appliance, full charge and how determined; each service with date, parts, person, amount added or removed, leak rate and method; verification tests; kept 3 years
statement-evacuation-pump = One system for each pump

## Notes beside a figure

note-charge-superheat-tolerance = said to be 8 °F in later editions, not confirmed
note-charge-subcooling-tolerance = said to be 6 °F in later editions, not confirmed
note-pressure-test-minimum-factor = a document that asks for the whole design pressure is named as a pack
note-evacuation-decay = the manual does not say whether the pump runs meanwhile; read here as isolated

## Why a record has to show something

because-quality-installation = measured on every quality installation
because-charge-verification = RA3.2 asks for them with any charge verification by readings
because-instruments-and-signature = a record names its instruments and somebody stands for it
because-field-joints = field joints were made, and the circuit was opened to the air
because-field-lines = refrigerant lines were laid on site, and the circuit was opened to the air
because-circuit-opened = the circuit was opened
because-closed-valves = a closed valve leaves part of such a circuit untested and unevacuated
because-airflow-first = charge is not judged before airflow
because-running-reading = one reading of the running system, or a return visit in the season
because-gauges-put-on = the gauges were put on, and what they showed tells nothing
because-receiver = a system with a receiver is charged to a clear sight glass and its level
because-telling-reading = one reading that says something of the charge, or a return visit
because-adjustment = an adjustment is shown as found and as left
because-refrigerant-accounted = the refrigerant has to be accounted for
because-scroll-or-screw = a scroll or screw compressor that turns backwards is ruined
because-both-modes = both modes were tried
because-attic-water = water from an attic comes through the ceiling
because-leak-sensor = a unit with a leak sensor relies on it
because-en-378 = EN 378-2 asks for both before the system is put into service
because-eu-f-gas = leak checks, records and label of articles 5, 7 and 12
because-break-in-procedure = the break is part of this procedure
because-annex-dd-steps = the steps of annex DD are taken before a circuit with flammable refrigerant is worked on
because-annex-dd-opening = annex DD empties a circuit with flammable refrigerant in a fixed order before it is opened
because-annex-gg = annex GG limits the charge by the room
because-house-rule = the house rule asks for photos of the steps
because-airflow-graded = airflow and blower power are graded before charge
because-breaks-are-procedure = the breaks are the procedure
because-recovery = 40 CFR 82.156 asks for recovery before a circuit is opened or scrapped

## What several checks show together

called-charge = charge by weight or by readings
called-running-reading = a reading of the running system

## What a clause says

says-article-3-points-9-12-13-18 = What hermetically sealed, recycled and reclaimed mean; maintenance and servicing is all that opens the circuit, adds or removes gas, or repairs a leak; the first charge of a new system is not
says-article-4-1-4-3-4-4 = Nothing is let out on purpose; every precaution against leaks, and when gas is moved from one container to another
says-article-4-5 = A leak is repaired without undue delay; equipment subject to leak checks is checked again by a certified person after 24 h of operation at the earliest and within a month
says-article-4-7 = Persons and companies that install, service, repair or decommission are certified and take precautions against leaks
says-article-5-1 = Leak checks from 5 t CO2e of annex I or 1 kg of annex II section 1; hermetically sealed and labelled from 10 t or 2 kg; sealed, labelled and in a residential building from 3 kg
says-article-5-2-5-3 = Stationary refrigeration, air conditioning and heat pumps among others; checked by certified persons
says-article-5-6 = Every 12 months, from 50 t or 10 kg every 6, from 500 t or 100 kg every 3; twice as long with a leakage detection system
says-article-6-1-6-3 = A leakage detection system from 500 t or 100 kg, itself checked every 12 months
says-article-7-1-points-g = Records of equipment that has to be checked for leaks, point by point
says-article-7-2 = Operator and company keep them for 5 years
says-article-8-1-8-2-8-6 = Gas is recovered by certified persons; recovered gas is not charged again unless it was recycled or reclaimed
says-article-10-1-10-2-10-9-10 = Certificates of persons and companies; those under 517/2014 stay valid, with a refresher by 12 March 2029 and every 7 years
says-eu-2024-2215-articles-2-3-6-10 = Certificates A1 (any charge), A2 (below 3 kg, sealed and labelled below 6 kg), B (carbon dioxide), C (ammonia), D (recovery from small equipment), E (leak checks without opening); companies hold one, too
says-article-11-1-annex-iv = What may no longer be placed on the market; not judged here
says-article-11-5 = The Commission may exempt products and equipment for up to 4 years
says-article-12-1-12-3-12-4 = Label on the unit with the gas, its quantity, GWP and t CO2e, whether it is hermetically sealed; labelled anew when the gas is changed
says-article-12-7 = Containers of reclaimed or recycled gas say so; of reclaimed gas with batch number and facility
says-eu-2024-2174-article-1-5 = Where gas is added on site and the maker does not state the total, the label has the factory charge, the quantity added and the total
says-article-13-3 = No gas of GWP 2500 or more in service of refrigeration since 1 January 2025, before that from 40 t; not military, not below -50 °C; reclaimed, or recycled by or for those who recovered it, until 1 January 2030
says-article-13-4 = The same for air conditioning and heat pumps since 1 January 2026; reclaimed and recycled until 1 January 2032; neither military nor deep cold equipment is exempt
says-article-13-5 = From 1 January 2032 no gas of annex I of GWP 750 or more in service of stationary refrigeration other than chillers; not military, not below -50 °C, not nuclear; reclaimed and recycled stay allowed
says-article-13-6 = The Commission may suspend 13(4) and 13(5) for a gas that is short, for up to 4 years
says-annex-i-annex-ii-section-1-annex-vi = The gases with their GWP, and that of a mixture from its mass shares
says-ec-1516-2007-articles-6-10 = Detectors see 5 g a year and are checked every 12 months; new systems are checked once in service; repealed on 22 July 2026
says-eu-2026-1444 = In the place of 1516/2007 since 22 July 2026
says-eu-517-2014-articles-4-6 = The same duties before 11 March 2024, from tonnes alone
says-40-cfr-82-156-table-1 = A circuit is evacuated to the level of its pressure class and charge before it is opened or scrapped, the level verified
says-40-cfr-82-156-b = Small appliances, 90 % of the charge, 80 % where the compressor does not run
says-40-cfr-82-157-b-c = From 50 lb of an ozone-depleting refrigerant or a blend with one, since 10 April 2020 no others; leak rate at every addition; 20 % commercial, 30 % industrial refrigeration, 10 % comfort cooling
says-40-cfr-82-157-d-l = Repair within 30 days, verification tests, inspections, plans, records kept 3 years
says-40-cfr-84-106 = From 15 lb of a regulated substance, or a substitute of GWP above 53, since 1 January 2026; not residential and light commercial air conditioning and heat pumps, not ozone-depleting refrigerant alone
says-89-fr-82717-82719-11-october-2024 = That subsector takes in splits, packaged, rooftop and variable refrigerant flow units; chillers stay under the rule
says-40-cfr-84-106-b-l = Leak rate at every addition by one of two methods, triggers of 10, 20 and 30 %, repair and records
says-40-cfr-84-54-technology-transition = GWP 700 at most in new residential and light commercial air conditioning and heat pumps since 1 January 2025
says-88-fr-88825-26-december-2023-summary = Systems of that subsector from components made or imported before 2025 could be installed until 1 January 2026
says-89-fr-100381-12-december-2024-summary = Variable refrigerant flow from components made or imported before 2026 may be installed until 1 January 2027, with a building permit issued before 5 October 2023 until 1 January 2028
says-epa-hq-oar-2025-0005-final-rule-effective = Residential and light commercial equipment made or imported before 1 January 2025 may go on being installed; thresholds and dates of supermarkets, remote condensing units and cold storage are changed
