### Formulas that need words, as a trace prints them, where they come from, and why a table gives no target.

## Formulas

water-heat = { -formula-water-heat }
leak-rate = { -formula-leak-rate }
cylinder-volume = { -formula-cylinder-volume }
filling-ratio = { -formula-filling-ratio }
compression-ratio = { -formula-compression-ratio }
air-free-by-oxygen = { -formula-air-free-by-oxygen }
air-free-by-dioxide = { -formula-air-free-by-dioxide }
co2e = { -formula-co2e }
room-charge = { -formula-room-charge }
appliance-room = { -formula-appliance-room }
appliance-charge = { -formula-appliance-charge }
dispersal = { -formula-dispersal }
fan-laws = flow in proportion to n, pressure to n², power to n³
heat-rise-electric = cfm = V·A·3.412 / (1.08·ΔT − 3.412·w), 1.08 scaled by air density, w heat of the blower in W/cfm
heat-rise-gas = cfm = output in Btu/h / (1.08·ΔT − 3.412·w), 1.08 scaled by air density, w heat of the blower in W/cfm
superheat = SH = (3·WB − 80 − ODB)/2, in °F
unbalance = unbalance = max|V − V_mean| / V_mean × 100 %
capacitance = C = I / (2π·f·V); in µF 2652.6·A/V at 60 Hz, 3183.1·A/V at 50 Hz

## Where they come from

water-heat-source = density and specific heat of water, handbook tables (from memory)
air-factors-source = standard air 0.075 lb/ft³: 4.5 = 60·0.075, 1.08 = 4.5·0.24, 0.68 = 4.5·1061/7000
heat-rise-source = sensible-heat factor of standard air; generic installation manuals
superheat-source = field formula, common practice, no source; information only
unbalance-source = NEMA MG-1 14.36 (from memory); worked examples published in installation manuals
capacitance-source = reactance of a capacitor
flare-torque-source = generic installation manuals; JIS B 8607 centre ± 10 %
vapor-viscosity-source = vapour viscosities of handbook tables (from memory); blends by Herning and Zipperer 1936 (from memory)

## Why a table over two temperatures gives no target

# $which (choice: outdoor-below, outdoor-above, return-below, return-above, wet-bulb-below, wet-bulb-above) - which temperature lies outside the table, and on which side
# $found (quantity) - the temperature
# $edge (quantity) - where the table ends
table-ends =
    { $which ->
        [outdoor-below] outdoor air at { $found } is below the table, which ends at { $edge }
        [outdoor-above] outdoor air at { $found } is above the table, which ends at { $edge }
        [return-below] return air at { $found } is below the table, which ends at { $edge }
        [return-above] return air at { $found } is above the table, which ends at { $edge }
        [wet-bulb-below] return wet bulb at { $found } is below the table, which ends at { $edge }
       *[wet-bulb-above] return wet bulb at { $found } is above the table, which ends at { $edge }
    }
split-dash = the table of temperature splits gives no target here: the return air is drier than it covers
split-measure-next = Measure the airflow instead.
split-warm-next = Warm the room, or measure the airflow instead.
split-cool-next = Let the system bring the room down, or measure the airflow instead.
superheat-dash = the superheat table gives no target at this load: it would be below 5 °F, too little to judge a charge by
superheat-dash-next = Read again when it is cooler outdoors or the return air is more humid. Or recover the charge, and weigh in the factory charge with the allowance for the lines.
superheat-cold-next = Weigh the charge in, or come back in warmer weather.
superheat-hot-next = Come back when it is cooler, or weigh the charge in.
superheat-dry-next = Warm the room, or weigh the charge in.
superheat-humid-next = Let the system bring the room down, then read again.

## Recovery before opening

recovery-low-pressure = 25 mmHg absolute

# $depth (count) - depth below a standard atmosphere, inHg
recovery-depth = { $depth } inHg vac
