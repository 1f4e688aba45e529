### What the diagnosis calls readings, things seen and causes. The names are the keys of Inference/causes.yaml with hyphens for spaces; CauseTable
### asks for them when it is read, and a test finds names that no key asks for.

## Readings

reading-superheat = superheat
reading-subcooling = subcooling
reading-evaporator-split = evaporator split
reading-condenser-split = condenser split
reading-air-split = temperature split of the air
reading-current = compressor current
reading-discharge = discharge line over condensing
reading-drier = drop across the drier
reading-airflow = airflow
reading-ratio = compression ratio
reading-return-air = air onto the coil

## Things seen or tried: what was looked at, and what it showed

seen-sight-glass = sight glass
seen-sight-glass-clear = a clear sight glass
seen-sight-glass-bubbles = bubbles in the sight glass
seen-sight-glass-empty = an empty sight glass

seen-frost = frost
seen-frost-none = no frost
seen-frost-evaporator-inlet = frost at the inlet of the evaporator
seen-frost-whole-evaporator = frost all over the evaporator
seen-frost-suction-line = frost on the suction line
seen-frost-compressor = frost back to the compressor
seen-frost-drier = frost on the drier
seen-frost-outdoor-coil = frost on the outdoor coil

seen-standing-test = standing test
seen-standing-test-clean = a standing test without air
seen-standing-test-foreign-gas = a standing test that shows air

seen-indoor-air-path = filter and indoor coil
seen-indoor-air-path-clean = a clean filter and indoor coil
seen-indoor-air-path-dirty = a dirty filter or indoor coil

seen-static-pressure = static pressure
seen-static-pressure-within = a static pressure that is not far too high
seen-static-pressure-far-too-high = a static pressure that is far too high

seen-reversing-valve = reversing valve
seen-reversing-valve-tight = suction gas as cold behind the reversing valve as before it
seen-reversing-valve-passing = suction gas that comes out of the reversing valve warmer than it went in

seen-outdoor-coil = outdoor coil
seen-outdoor-coil-clean = a clean outdoor coil
seen-outdoor-coil-dirty = a dirty outdoor coil

## Causes: the name, the next step, and how to tell it from others, as an order without a full stop

cause-no-fault-shown = no fault shown

cause-low-charge = a low charge
cause-low-charge-next = Find the leak and repair it. Then add refrigerant by weight, a little at a time, and let the system settle after each.
cause-low-charge-apart = read the liquid line before and after the drier; if it is no colder after it, search for a leak

cause-overcharge = too much refrigerant
cause-overcharge-next = Make the standing test for air in the circuit first. If there is none, recover by weight, a little at a time, and let the system settle after each.
cause-overcharge-apart = make the standing test for air in the circuit

cause-liquid-line-restriction = a restriction in the liquid line
cause-liquid-line-restriction-next = Do not add refrigerant. Feel along the liquid line for the place where it turns colder: drier, strainer, kink or service valve. Clear or replace it.
cause-liquid-line-restriction-apart = read the temperature along the liquid line, above all before and after the drier

cause-low-indoor-airflow = too little air over the indoor coil
cause-low-indoor-airflow-next = Put the air right before the charge: filter, coil, registers, dampers, blower speed. Let it settle and read again.
cause-low-indoor-airflow-apart = measure the airflow or the static pressures

cause-condenser-heat-rejection = a condenser that does not get rid of its heat
cause-condenser-heat-rejection-next = Clean the condenser, check its fan and that hot air does not come back to it, and read again before the charge is touched.
cause-condenser-heat-rejection-apart = look at the condenser coil and its fan, and feel for hot air that comes back

cause-non-condensables = air or nitrogen in the circuit
cause-non-condensables-next = Make the standing test, if that is not done yet. Then recover, evacuate and weigh in fresh refrigerant.
cause-non-condensables-apart = make the standing test for air in the circuit

cause-valve-underfeeding = a metering valve that feeds too little
cause-valve-underfeeding-next = Do not add refrigerant. Check the valve before the charge: its strainer, the charge of its bulb, its setting.
cause-valve-underfeeding-apart = feel the liquid line at the inlet of the valve; if it is warm and full there, the valve itself is at fault
cause-valve-underfeeding-with-orifice = an orifice that is too small or partly plugged
cause-valve-underfeeding-next-with-orifice = Do not add refrigerant. Check the orifice before the charge: its size against the plate, and its screen.
cause-valve-underfeeding-apart-with-orifice = compare the size of the orifice with the plate, and look at its screen

cause-valve-overfeeding = a metering valve that feeds too much
cause-valve-overfeeding-next = Do not remove refrigerant. Check that the bulb is tight, insulated and in place, then the setting of the valve.
cause-valve-overfeeding-apart = feel whether the bulb is tight, and check the airflow
cause-valve-overfeeding-with-orifice = an orifice that is too large or badly seated
cause-valve-overfeeding-next-with-orifice = Do not remove refrigerant. Check the size of the orifice against the plate, and that it sits in its seat.
cause-valve-overfeeding-apart-with-orifice = compare the size of the orifice with the plate, and check its seat

cause-weak-compressor = a compressor that pumps badly
cause-weak-compressor-next = Do not add refrigerant. Test the compressor first: with the suction valve closed it has to pull down and hold; stop before it reaches a vacuum. Then check the reversing valve, where there is one.
cause-weak-compressor-apart = compare the suction pipe before and after the reversing valve; if it is no warmer after it, the compressor is at fault

cause-passing-reversing-valve = a reversing valve that lets hot gas through
cause-passing-reversing-valve-next = Do not add refrigerant. Compare the suction pipe before and after the reversing valve: hot gas that leaks through warms it. Tap the valve and switch it over a few times; if it still leaks, replace it.
cause-passing-reversing-valve-apart = compare the suction pipe before and after the reversing valve; if it is warmer after it, the valve leaks

cause-high-load = a high load
cause-high-load-next = Let the system bring the room down, shut the outside air, and read again before you judge anything.
cause-high-load-apart = read again when the room has come down

cause-low-load = a low load
cause-low-load-next = Warm the room or wait for more load, then read again before you judge anything.
cause-low-load-apart = read again with more load

seen-outside-damper = outside damper
seen-outside-damper-works = an outside damper that works
seen-outside-damper-stuck = an outside damper that does not move as it should

seen-orifice = orifice
seen-orifice-of-the-plate = an orifice of the size the plate asks for
seen-orifice-larger = an orifice larger than the plate asks for
seen-orifice-smaller = an orifice smaller than the plate asks for
