### Function: the water side.

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

## Many indoor units

trial-run-what = Did the maker's trial run end without a fault, and does each indoor unit answer under its own address, so that pipes and wires are not crossed?
trial-run-formula = trial run and addresses ok, where they were tried
trial-run-source = Start-up lists of multi-split and variable-flow systems (common practice, no source).
trial-run-next = Read the fault the trial run ended with. Run the indoor units one by one and feel whose pipes change: what is crossed is changed over at the terminals, or at the branch.

## Cold rooms

relief-port-what = Does the pressure relief port of the freezer room let air in, and does its heater keep it free of ice?
relief-port-formula = relief port ok: its flap moves and its heater is warm
relief-port-source = Makers of insulated rooms (common practice, no source).
relief-port-next = Free the port and mend its heater before the room is cooled down: a shut room draws its panels in, and its door cannot be opened from inside.

sensor-what = Does the controller show what a thermometer beside its sensor reads?
sensor-formula = |what it shows − what the thermometer reads| ≤ limit
sensor-source = 1 K: class 1 of EN 13485, thermometers for chilled and frozen food (from memory).
sensor-next = Look where the sensor hangs, at its terminals and at the kind of sensor the controller is set to; then correct it in the controller and compare again.

# $what (text) - which sensor
# $by (quantity) - how far it is off
sensor-agrees = { $what }: the controller is { $by } off the thermometer beside its sensor.

# $what (text) - which sensor
# $by (quantity) - how far it is off
sensor-off = { $what }: the controller is { $by } off the thermometer beside its sensor, and everything it switches with it.

control-not-tried = the control was not tested
control-not-tried-next = Try the control, and read where it stops the compressor.
