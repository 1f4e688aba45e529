### Function: what was tried, controls, the water side.

# $coldest (quantity) - the colder of water in and out
# $point (quantity) - where it freezes
water-freezes = The water stands at { $coldest } and freezes at { $point }.
water-freezes-next = Stop the unit. Read the temperature again; if it is right, protect the water with glycol, or raise the setting, before the heat exchanger bursts.

strainer-clean = The strainer is clean.
strainer-dirty = The strainer is dirty.
strainer-dirty-next = Clean it, let the air out, and read the flow again.
strainer-none = There is no strainer.
strainer-none-kind = some makers build one in, others ask for one before the plate heat exchanger
strainer-not-seen = nobody looked at the strainer
strainer-not-seen-next = Open the strainer after the first hours of running and write how it looked.

water-mixture = how much heat this mixture carries is not known here
water-mixture-next = Take density and specific heat of the mixture from its maker, and work it out by hand.

# $heat (quantity) - heat carried, with its uncertainty
water-carries = The water carries { $heat }.
water-carries-kind = compare it with the maker's table at the same temperatures

## Sensors

# $what (text) - which sensor
# $by (quantity) - how far it is off
sensor-agrees = { $what }: the controller is { $by } off the thermometer beside its sensor.

# $what (text) - which sensor
# $by (quantity) - how far it is off
sensor-off = { $what }: the controller is { $by } off the thermometer beside its sensor, and everything it switches with it.

control-not-tried = the control was not tested
control-not-tried-next = Try the control, and read where it stops the compressor.

## Trials

trial-cooling-call = cooling call
trial-heating-call = heating call
trial-fan-call = fan call
trial-thermostat-set-up = thermostat set up
trial-reversing-valve = reversing valve
trial-defrost-starts = defrost starts
trial-defrost-ends = defrost ends
trial-auxiliary-heat = auxiliary heat
trial-auxiliary-heat-lockout = auxiliary heat lockout
trial-fan-rotation = fan rotation
trial-condensate-drains = condensate drains
trial-condensate-trap = condensate trap
trial-drain-slope = drain slope
trial-secondary-drain = secondary drain
trial-float-switch = float switch
trial-relief-port = relief port
trial-addresses = addresses
trial-trial-run = trial run
trial-economizer = economizer
trial-damper-test = damper test
trial-flow-switch = flow switch
trial-air-let-out = air let out
trial-witness = witnessed by

# $trials (list) - what was tried
trials-failed = Failed: { $trials }.

# $trials (list) - what was tried
trials-work = Works: { $trials }.

# $trials (list) - what was not tried
trials-not-tested = Not tested: { $trials }.

# $trials (list) - what the system has not
trials-not-fitted = Not fitted: { $trials }.

# $trials (list) - what was not tried
trials-only-not-tested = not tested: { $trials }
trials-only-not-tested-next = Try it and write the result.
trials-nothing-to-try = there is nothing of the kind to try

# $trial (message) - what was not tried
trial-was-not-tested = { $trial } was not tested

# $trial (message) - what has no result
trial-has-no-result = the result of { $trial } is not recorded
trials-rest-next = Try what is left and write the results.
trials-table = What was tried
trials-table-result = Result
trials-table-trials = Trials

# $who (text) - who watched, and in what role
trials-witnessed = Witnessed by { $who }.

## Defrost and fault memory

reading-defrosts-a-day = defrosts per day
reading-defrost-ends-at = defrost terminates at

# $count (text) - how many
defrosts-a-day = Defrosts a day: { $count }.

# $end (text) - the temperature, or the time
defrost-ends-at = It is set to end at { $end }.
reading-codes-read = fault codes read
reading-codes-cleared = fault codes cleared
reading-code = fault code
codes-not-read = the fault memory was not read
codes-not-read-next = Read it at the board or the controller and write the codes.
codes-none = The fault memory was read; no code stood in it.

# $codes (list) - the codes
codes-cleared = Found and cleared: { $codes }.
codes-cleared-come-back = What was cleared comes back when its cause is still there.

# $codes (list) - the codes
codes-stand = In the fault memory: { $codes }.

## Oil

reading-oil-level = oil level
reading-oil-pressure = oil pressure difference

# $pressure (text) - as written
oil-pressure = Net oil pressure { $pressure }.
oil-level-not-written = the oil level is not recorded, and nothing sets a limit on the pressure
oil-no-glass = The compressor has no oil glass.
oil-cannot-be-seen = the level cannot be seen
oil-in-the-glass = The oil stands in the glass.

# $level (text) - as written
oil-level = The oil level is { $level }.

## The cold room

reading-regulator = evaporator pressure regulator
reading-box-from = box, from
reading-box-to = box, to
reading-box-in = box, in

# $setting (text) - as written
regulator-set = The evaporator pressure regulator is set to { $setting }.
regulator-kind = a setting, without a limit
pull-down-no-time = the pull-down took no time
pull-down-no-time-next = Write the time the pull-down took.
pull-down-rate = pull-down rate
pull-down-formula = (T_from − T_to) / time

# $from (text) - temperature at the start
# $to (text) - temperature at the end
# $time (duration) - how long it took
pull-down-numbers = ({ $from } − { $to }) / { $time }

# $rate (quantity) - fall of the temperature
per-hour = { $rate } per hour

# $from (text) - temperature at the start
# $to (text) - temperature at the end
# $time (text) - how long it took
# $rate (quantity) - fall of the temperature in an hour
pull-down = The box went from { $from } to { $to } in { $time }, { $rate } per hour.
pull-down-kind = nothing sets a limit

## Pressure controls

control-low = low-pressure control
control-high = high-pressure control

# $control (message) - which control
reading-cut-in = { $control }: cut-in

# $control (message) - which control
reading-cut-out = { $control }: cut-out

# $control (message) - which control
reading-tested = { $control }: tested

# $pressure (text) - as written
control-cut-in = cut-in { $pressure }

# $pressure (text) - as written
control-cut-out = cut-out { $pressure }

# $control (message) - which control
# $settings (list) - cut-in and cut-out
control-with-settings = { $control }, { $settings },

# $control (message) - which control, with its settings
control-failed = The { $control } failed its test.

# $control (message) - which control
control-not-fitted = No { $control } is fitted.

# $control (message) - which control, with its settings
control-wrong-way = The { $control } is set the wrong way round.

# $control (message) - which control, with its settings
control-too-high = The { $control } stops the compressor only above what the high side may bear.

# $control (message) - which control, with its settings
control-works = The { $control } works.

# $what (text) - which sensor
reading-beside = thermometer beside { $what }

# $what (text) - which sensor
reading-display = display of { $what }

## The checks: their titles, and what to do when one fails

check-thermostat-calls = Thermostat calls
check-thermostat-calls-fails = Check the control wiring terminal by terminal against the maker's diagram, the setting of the reversing-valve terminal and the thermostat's kind of system. Then call again.

check-reversing-valve = Reversing valve
check-reversing-valve-fails = Check the voltage at the coil and the board's setting. A valve that sticks half-way shows nearly equal temperatures at its ports. It may free itself when it is changed over at a high pressure difference; otherwise it is replaced.

check-defrost = Defrost
check-defrost-fails = Check the coil sensor and its place, the outdoor fan relay and the board's setting. A defrost that ends only by time leaves ice on the coil.

check-auxiliary-heat = Auxiliary heat
check-auxiliary-heat-fails = Disconnect, prove dead, then check elements, sequencers, limit switches and the outdoor thermostat. Heating elements are work for a qualified person.

check-fan-rotation = Fan rotation
check-fan-rotation-fails = Disconnect and prove dead; on three phases exchange two conductors at the fan, on one phase follow the motor's diagram.

check-condensate = Condensate
check-condensate-fails = Clear the drain, give it fall, prime the trap. On the suction side of a blower a trap is needed for the water to leave at all.

check-float-switch = Float switch
check-float-switch-fails = Check that the switch breaks the circuit that calls for cooling, and that it is level and free. Do not leave a unit above a ceiling without it.

check-economizer = Economizer
check-economizer-fails = Look at linkage, motor and sensors. A damper stuck open makes a sound unit look short of capacity, one stuck shut starves the building.

check-water = Water side
check-water-fails = Clean the strainer, let the air out, open the valves and set the pump; then read flow and both temperatures again after ten minutes.

check-water-controls = Flow switch and strainer
check-water-controls-fails = Shut a valve slowly and see that the unit stops; a flow switch that does not work lets a heat exchanger freeze and burst. Clean the strainer again after the first days.

check-water-capacity = Capacity on the water side
check-water-capacity-fails = Compare it with the maker's table at the same water and outdoor temperature. If it is far below, look at flow and air in the water first.

check-pressure-controls = Pressure controls
check-pressure-controls-fails = Set the control by the maker's table, then try it. Throttle the suction for the low side, hold back condenser air for the high side, and write where it stopped.

check-oil = Compressor oil
check-oil-fails = Low: find out where the oil is (traps, velocity in risers, a long evaporator) before any is added. High: suspect refrigerant in the oil; check the crankcase heater and the superheat.

check-box-pull-down = Box pull-down
check-box-pull-down-fails = A slow pull-down points to the door, the load, a starved or iced coil or a low charge: compare with the readings of the circuit.

check-sensor = Controller's sensor
check-sensor-fails = Look where the sensor hangs, at its terminals and at the kind of sensor the controller is set to. Then correct it in the controller and compare again.

check-relief-port = Relief port of the room
check-relief-port-fails = Free the port and mend its heater before the room is cooled down. A shut room draws its panels in, and its door cannot be opened from inside.

check-trial-run = Trial run and addresses
check-trial-run-fails = Read the fault the trial run ended with. Run the indoor units one by one and feel whose pipes change: what is crossed is changed over at the terminals, or at the branch.

check-fault-codes = Fault codes
check-fault-codes-fails = Look each code up in the maker's manual, remove its cause, clear the memory, run the system and read it again.

## Names of readings of the water

# $water (text) - which water
# $what (message) - what is said of it
of-water = { $water }, { $what }
reading-water-in = water in
reading-water-out = water out
reading-water-flow = water flow
reading-water-difference = difference of the water
reading-water-volume = volume of the water
reading-water-pressure = water pressure
reading-glycol = glycol
reading-freezes-at = freezes at
subject-flow = flow
subject-difference = difference
subject-volume = volume
subject-pressure = pressure
subject-strainer-drop = strainer drop
subject-strainer = strainer
subject-freezing-point = freezing point
subject-freezing = freezing
step-water-heat = heat carried by the water
