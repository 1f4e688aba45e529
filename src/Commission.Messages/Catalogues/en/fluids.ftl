### Why a property of a fluid cannot be told. Each is the end of a sentence, without a full stop.

nothing-asked = nothing was asked

# $kilopascals (symbols) - the pressure in kilopascals
# $psia (symbols) - the same in pounds per square inch
pressure = { $kilopascals } kPa absolute ({ $psia } psia)

# $fluid (name) - the fluid
# $temperature (symbols) - the temperature
# $limit (symbols) - the lowest temperature
below-equation = { $fluid }: { $temperature } is below its triple point or the lower limit of its equation, { $limit }

# $fluid (name) - the fluid
# $temperature (symbols) - the temperature
# $limit (symbols) - the lowest temperature
# $component (name) - the component whose equation ends there
below-component = { $fluid }: { $temperature } is below the lowest temperature of the blend's equations, where that of { $component } ends, { $limit }

# $fluid (name) - the fluid
# $temperature (symbols) - the temperature
# $limit (symbols) - the lowest temperature
below-blend = { $fluid }: { $temperature } is below the lowest temperature of the blend's equations, { $limit }

# $fluid (name) - the fluid
# $temperature (symbols) - the temperature
# $critical (symbols) - the critical temperature
transcritical-temperature = { $fluid }: { $temperature } is not below the critical temperature, { $critical }: transcritical, there is no saturation pressure

# $fluid (name) - the fluid
# $temperature (symbols) - the temperature
# $critical (symbols) - the critical temperature
retrograde-temperature = { $fluid }: { $temperature } is not below the critical temperature, { $critical }; just above it the dew curve of a blend turns back (retrograde), which is not answered

# $fluid (name) - the fluid
# $pressure (message) - the pressure
not-above-zero = { $fluid }: a saturation pressure is above zero absolute; { $pressure } is not

# $fluid (name) - the fluid
# $pressure (message) - the pressure
# $critical (message) - the critical pressure
transcritical-pressure = { $fluid }: { $pressure } is not below the critical pressure, { $critical }: transcritical, there is no saturation temperature

# $curve (choice: bubble, dew) - the curve
curve =
    { $curve ->
        [bubble] bubble point
       *[dew] dew point
    }

# $fluid (name) - the fluid
# $curve (message) - the curve
# $temperature (symbols) - the temperature
# $why (message) - why
none-at-temperature = { $fluid }: no { $curve } was found at { $temperature }; { $why }

# $fluid (name) - the fluid
# $curve (message) - the curve
# $pressure (message) - the pressure
# $why (message) - why
none-at-pressure = { $fluid }: no { $curve } was found at { $pressure }; { $why }

# $fluid (name) - the fluid
# $curve (message) - the curve
# $pressure (message) - the pressure
# $critical (symbols) - the critical temperature
above-critical = { $fluid }: the { $curve } at { $pressure } lies above the critical temperature, { $critical }, where the dew curve of a blend turns back (retrograde), which is not answered

# $curve (message) - the curve
# $pressure (message) - the pressure
# $why (message) - which limit, with the name of the fluid
outside-equations = { $why }; there would be the { $curve } at { $pressure }

# $fluid (name) - the fluid
# $curve (message) - the curve
# $temperature (symbols) - the temperature
# $why (message) - why
not-answered = { $fluid }: no { $curve } is answered at { $temperature }; { $why }

# $limit (symbols) - below this temperature
splits-below = by its model the liquid of this composition would split into two liquids below { $limit }

splits = by its model the liquid of this composition would split into two liquids

# $critical (symbols) - the critical temperature
too-near-temperature = the critical temperature is { $critical } and the state is too near to it

no-pair = the iteration found no pair of phases

# $critical (message) - the critical pressure
too-near-pressure = the critical pressure is about { $critical }: transcritical or too near to it

# $lowest (symbols) - the lowest temperature
pressure-outside = the pressure is outside what the equations can answer above { $lowest }

# $fluid (name) - the fluid
# $temperature (symbols) - the temperature
say-which = { $fluid }: at { $temperature } the state is liquid or vapor; say which

# $phase (choice: liquid, vapor) - the phase
# $fluid (name) - the fluid
# $temperature (symbols) - the temperature
# $pressure (message) - the pressure
no-phase =
    { $phase ->
        [liquid] { $fluid }: at { $temperature } and { $pressure } there is no liquid, not even a metastable one
       *[vapor] { $fluid }: at { $temperature } and { $pressure } there is no vapor, not even a metastable one
    }

# $goal (choice: enthalpy, entropy) - what the state is looked for by
goal =
    { $goal ->
        [entropy] entropy
       *[enthalpy] enthalpy
    }

# $fluid (name) - the fluid
# $goal (message) - enthalpy or entropy
goal-no-number = { $fluid }: the { $goal } is not a number

# $fluid (name) - the fluid
# $goal (message) - enthalpy or entropy
# $pressure (message) - the pressure
# $low (symbols) - lowest temperature
# $high (symbols) - highest temperature
no-state = { $fluid }: no state with this { $goal } at { $pressure } between { $low } and { $high }

# $phase (choice: liquid, vapor) - the phase
# $fluid (name) - the fluid
# $goal (message) - enthalpy or entropy
# $pressure (message) - the pressure
# $low (symbols) - lowest temperature
# $high (symbols) - highest temperature
no-phase-with =
    { $phase ->
        [liquid] { $fluid }: no liquid with this { $goal } at { $pressure } between { $low } and { $high }
       *[vapor] { $fluid }: no vapor with this { $goal } at { $pressure } between { $low } and { $high }
    }

# $fluid (name) - the fluid
# $curve (message) - the curve
# $pressure (message) - the pressure
no-curve = { $fluid }: no { $curve } at { $pressure }

# $fluid (name) - the fluid
# $bubble (symbols) - temperature of the bubble point
# $dew (symbols) - temperature of the dew point
# $pressure (message) - the pressure
no-convergence = { $fluid }: the split into liquid and vapor between { $bubble } and { $dew } at { $pressure } did not converge

# $fluid (name) - the fluid
# $temperature (symbols) - the temperature
# $low (symbols) - lowest temperature
# $high (symbols) - highest temperature
temperature-range = { $fluid }: { $temperature } is outside the range of the equations, { $low } to { $high }

# $fluid (name) - the fluid
# $pressure (message) - the pressure
# $high (message) - highest pressure
pressure-range = { $fluid }: { $pressure } is outside the range of the equations, above 0 to { $high }

# $fluid (name) - the fluid
no-listed-range = { $fluid }: no listed bubble and dew point is known here

# $fluid (name) - the fluid
no-critical-point = { $fluid }: no critical point was found from the blend's model

iir-reference = h = 200 kJ/kg, s = 1 kJ/(kg K) for saturated liquid at 0 °C (IIR)

equation-reference = the zero of the published equation

## Nitrogen

# $pressure (message) - the pressure
nitrogen-pressure = Nitrogen: { $pressure } is outside the equation, above 0 to 2200 MPa

# $temperature (symbols) - the temperature
# $pressure (message) - the pressure
nitrogen-density = Nitrogen: no density was found at { $temperature } and { $pressure }

nitrogen-density-range = Nitrogen: a density of the gas is between 0 and 1000 kg/m³

# $critical (symbols) - the critical temperature
# $temperature (symbols) - the temperature
nitrogen-temperature = Nitrogen gas is computed above its critical temperature, { $critical }, to 2000 K; { $temperature } is outside

## Water and moist air

# $temperature (symbols) - the temperature
water-near-critical = Water at { $temperature } is too near to its critical point

# $pressure (message) - the pressure
# $critical (message) - the critical pressure
water-does-not-boil = Water does not boil at { $pressure }: its critical pressure is { $critical }

# $pressure (message) - the pressure
no-liquid-water = There is no liquid water at { $pressure }: below the triple point, 611.655 Pa, there is only ice and vapor

# $low (symbols) - lowest temperature
# $high (symbols) - highest temperature
# $temperature (symbols) - the temperature
water-range = Liquid water and its vapor stand together from { $low } to { $high }; { $temperature } is outside

# $low (symbols) - lowest temperature
# $high (symbols) - highest temperature
# $temperature (symbols) - the temperature
ice-range = Ice is computed from { $low } to { $high }; { $temperature } is outside

# $pressure (message) - the pressure
ice-pressure = Ice has no vapor pressure of { $pressure }: at most 611.657 Pa, at the triple point

# $wet (symbols) - the wet bulb
# $dry (symbols) - the dry bulb
wet-above-dry = A wet bulb of { $wet } cannot stand above a dry bulb of { $dry }

# $wet (symbols) - the wet bulb
# $pressure (message) - the pressure
wet-boils = At { $wet } water boils at { $pressure }

# $wet (symbols) - the wet bulb
# $dry (symbols) - the dry bulb
wet-below-dry-air = A wet bulb of { $wet } is below what even dry air of { $dry } can have

humidity-range = A relative humidity is between 0 and 100 %

humidity-ratio-negative = A humidity ratio is not negative

# $dry (symbols) - the dry bulb
more-than-saturated = Air of { $dry } cannot hold that much water: it is more than saturated

# $pressure (message) - the pressure
vapor-above-pressure = The vapor pressure of the water would not be below the pressure, { $pressure }

# $dry (symbols) - the dry bulb
air-range = Moist air is computed from −100 °C to 200 °C; { $dry } is outside

air-pressure = The pressure of the air must be above zero absolute
