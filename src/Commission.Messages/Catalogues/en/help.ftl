### The page of help of each check, named after its id: what it asks, by which formula or rule, from where.

## instruments

instrument-calibration-current-what = Was every instrument inside its calibration interval on the day it was used? A sensor that is field-checked at the ice point instead needs no certificate.
instrument-calibration-current-formula = calibration date + interval ≥ date of the job
instrument-calibration-current-source = Interval stated with the instrument; 12 months where none is stated (common practice, no source).

instrument-ice-point-what = How far was the thermometer off in a cup of crushed ice filled with water? Ice water is 0 °C (32 °F) at any altitude a crew works at, so it is the best reference on a tailgate.
instrument-ice-point-formula = error = reading in ice water − 0 °C; the error as found is judged, the error or the residual left after adjusting is taken off every reading
instrument-ice-point-source = California Residential Appendix RA3.2, p. RA3-12 (published): within 1 °F good, to 2 °F correct it, beyond 2 °F replace the sensor. Effect of altitude below 0.005 °C (computed).

instrument-warm-point-what = Does the thermometer agree with a reference near liquid-line temperature? A second point shows a slope that ice cannot.
instrument-warm-point-formula = error = reading in the bath − reference
instrument-warm-point-source = The ice-point bounds of RA3.2, used at a second point (common practice, no source).

instrument-boiling-point-what = How far was the thermometer off in boiling water? Water boils at the temperature that belongs to the site's pressure, not at 100 °C (212 °F).
instrument-boiling-point-formula = error = reading in boiling water − T_sat(p_atm)
instrument-boiling-point-source = Saturation of water: IAPWS-95, Wagner and Pruß 2002 (published). Bounds of the ice point, used here (common practice, no source).

instrument-zero-pressure-what = What does the gauge show with nothing connected? It should show zero; whatever it shows is taken off every reading.
instrument-zero-pressure-formula = share = |reading open to air| / full scale; corrected reading = reading − reading open to air
instrument-zero-pressure-source = Removing the zero offset: California RA3.2, p. RA3-12 (published). The bound at which a gauge is doubted altogether: common practice, no source.

instrument-known-pressure-what = Does the gauge agree with a reference, such as regulated nitrogen on a test gauge? Zero alone does not show a wrong slope.
instrument-known-pressure-formula = error = (reading − zero) − applied, as a share of the applied pressure; where the reference carries an uncertainty the readings are corrected in proportion, up to a quarter beyond the checked pressure
instrument-known-pressure-source = Gauge accuracy ± 3 %: California RA3.2.2.2.3 (from memory). Point-to-point correction: JCGM 100, 4.3 (from memory).

instrument-cylinder-what = Does the gauge show the saturation pressure of a cylinder that has come to one temperature? A degree of error in the temperature is several psi, so this finds gross error only.
instrument-cylinder-formula = difference = corrected reading − bubble pressure at the cylinder's temperature, as a share of that pressure
instrument-cylinder-source = Rest of 4 h: California RA3.2, p. RA3-12 (published). Bubble pressure: the published equation of state of the refrigerant. Bound: RA3.2.2.2.3 (from memory).

instrument-pair-agreement-what = Do two instruments show the same at the same place? Superheat and subcooling are differences; a pair that agrees makes them good even when both are a little off.
instrument-pair-agreement-formula = difference = reading − other reading
instrument-pair-agreement-source = Bound: common practice, no source.

instrument-scale-what = Does the scale show a known weight? A charge by weight is as good as its scale.
instrument-scale-formula = error = reading − check weight
instrument-scale-source = ± 1 oz asked of charging scales in generic installation manuals (published).

instrument-vacuum-gauge-what = Does the vacuum gauge agree with a second one, and does it come down on a rig that is closed at its end? A gauge fouled with oil never shows a good vacuum.
instrument-vacuum-gauge-formula = difference = |reading − other| / mean of both
instrument-vacuum-gauge-source = Two heat-loss gauges of ± 10 % each (common practice, no source). Such gauges are set for air: in water vapour or refrigerant they differ (from memory).

instrument-leak-detector-what = Was the leak detector itself checked lately? A detector that sees nothing finds every circuit tight.
instrument-leak-detector-formula = last check of the detector + the pack's interval ≥ day of the leak check, and not after it
instrument-leak-detector-source = Regulation (EC) 1516/2007, article 6(2), every 12 months (published).

instrument-wick-what = Was the wick clean and wet, and did air move over it fast enough? A dry, dirty or still wick reads too warm, and a target superheat or temperature split taken from it is wrong.
instrument-wick-formula = wick clean and wetted with clean water; air velocity over it ≥ the pack's minimum
instrument-wick-source = 700 ft/min: common practice, no source.

instrument-adequacy-what = Were the instruments fine enough to tell in from out? Where they were not, which one would have to be better, and how much?
instrument-adequacy-formula = adequacy = half the tolerance / U of the judged number (one-sided limit: distance to the limit / U)
instrument-adequacy-source = 4 good, 2 to 4 usable in the field, 1 to 2 weak, below 1 no verdict. Four to one is the old rule of calibration: common practice, no source.

## pressure-test

pressure-test-gas-what = Was the circuit tested with an inert gas? Oxygen and compressed air explode with oil, fuel gases burn, and refrigerant may not be let out.
pressure-test-gas-formula = dry nitrogen, helium, argon or carbon dioxide; a tracer up to the share the pack allows
pressure-test-gas-source = ASHRAE 15-1994 section 10.1.2, interim action on the test gas (published).

pressure-test-level-what = Was the test pressure high enough to mean something, and did it stay below what the weakest part may bear?
pressure-test-level-formula = minimum = pack factor × design pressure of the section, a remark unless the maker or a named pack asks for it; a condition far below it; maximum = rating of the weakest part where it is written, else pack factor × design pressure; for a strength test that a pack asks for the rating alone; all gauge pressures; the lowest reading of the hold is held against the minimum, the highest of the test against the maximum. The line set and the indoor side of ductless, multi-split, VRF and heat pump systems are high side
pressure-test-level-source = Design pressure: nameplate. Ceiling of 130 %: International Mechanical Code and ASHRAE 15 (from memory). EN 378-2: tightness at most 1.0 PS (from memory). Line sets as high side: generic installation manuals (from memory). Minimum factor: common practice, no source, unless a pack or the maker says more.

pressure-test-section-what = Which part of the circuit was under pressure, and how did its valves stand? A closed expansion valve, solenoid or service valve leaves a part untested.
pressure-test-section-formula = section and valve positions as written, against what this kind of system can shut off
pressure-test-section-source = Common practice, no source.

pressure-test-strength-what = Was the circuit first shown to bear more than its allowable pressure, as EN 378 asks of field joints?
pressure-test-strength-formula = strength pressure ≥ pack factor × PS; strength before tightness before vacuum
pressure-test-strength-source = EN 378-2: 1.1 PS for field joints tested with gas (from memory).

pressure-test-hold-what = Did nitrogen leave during the hold? The pressure follows the temperature of the gas, about 1 psi per °F at 450 psig; what is left after that is loss, or doubt. The hold finds large leaks; only the search of the joints may speak of grams a year.
pressure-test-hold-formula = L = 1 − ρ(p₂, T₂)/ρ(p₁, T₁) with the density of real nitrogen, absolute pressures and temperatures; pass when L + U ≤ R, fail when L − U > R; in between conditional, or no verdict where U alone is as wide as R; smallest loss it can show 3.29·u; L < −U: temperature or gauge at fault
pressure-test-hold-source = Density: Span and others 2000 (published); the ideal-gas law understates the effect of temperature by 3 to 10 % (computed). R = 1 % of the absolute test pressure: default of this program (common practice, no source). Detection limits: ISO 11843-1 (from memory).

pressure-test-time-what = Did the hold last as long as the code, the maker or the kind of system asks? A leak shows by time: twice the time shows half the leak.
pressure-test-time-formula = time of the last reading − time of the first ≥ stated time
pressure-test-time-source = 60 minutes: International Mechanical and Residential Codes, 2021 and later (from memory). 24 hours: generic installation manuals of VRF systems (published).

pressure-test-settled-what = How long had the nitrogen rested after filling when the first reading was taken? Gas warms as it is pressed in, and its cooling looks like a leak.
pressure-test-settled-formula = time of the first reading − end of filling ≥ stated time
pressure-test-settled-source = 10 minutes: common practice, no source.

pressure-test-joint-leak-check-what = Was every field joint searched for leaks while under pressure, and with a method fine enough?
pressure-test-joint-leak-check-formula = result none at each joint; sensitivity of the method at most what the pack asks; an electronic detector reacts to what stood in the circuit: a tracer, the refrigerant, never plain nitrogen
pressure-test-joint-leak-check-source = IEC/UL 60335-2-40: field-made joints indoors, 5 g a year or finer (from memory). That a detector finds only what it is made for is a fact.

pressure-test-brazing-what = Did dry nitrogen flow through the pipe while it was brazed? Without it scale forms inside and blocks strainers and valves.
pressure-test-brazing-formula = flow of nitrogen within the pack's range while brazing
pressure-test-brazing-source = 2 to 5 cubic feet an hour: common practice, no source.

## evacuation

evacuation-rig-what = Does the rig itself hold? Pump, hoses and core tools are blanked off and watched without the system. A rise during the hold is as often the rig as the circuit.
evacuation-rig-formula = pump alone ≤ pack level and ≤ pack share of the target; rise of the blanked rig ≤ pack share of the rise that the hold allows in the same time; information where the hold passed all the same
evacuation-rig-source = A pump with fresh oil, and the shares: common practice, no source.

evacuation-series-what = What do the log and the written events show? How often the pump pulled, when the vacuum was broken, when the valve was closed, how long the hold lasted.
evacuation-series-formula = events as written; where none is written, a rise of two minutes or more is a hold, a fast rise to far above any hold is a break
evacuation-series-source = Shape of a log: default of this program (common practice, no source).

evacuation-section-what = Which part of the circuit was under vacuum, and how did its valves stand? A closed expansion valve, solenoid, check valve or service valve leaves a part that was never evacuated.
evacuation-section-formula = section and valve positions as written, against what this kind of system can shut off
evacuation-section-source = Common practice, no source.

evacuation-conditions-what = Was the circuit warm enough while it was pumped down? Below freezing water is ice, and ice gives off too little vapour to be seen or pumped.
evacuation-conditions-formula = temperature around the circuit, and of its coldest part where written ≥ limit; colder than that, the level held at the end + U < vapour pressure of ice, or the outcome is conditional
evacuation-conditions-source = 35 °F: US guide specification 15182, evacuation (published). Vapour pressure of ice: IAPWS R14-08 (published).

evacuation-breaks-what = Was the vacuum broken with dry nitrogen where the maker, a named pack or a wet circuit asks for it? Nitrogen takes up water that a vacuum alone leaves behind.
evacuation-breaks-formula = number of breaks ≥ asked; level before each ≤ pack level; filled to the pack's range; left in for the pack's time
evacuation-breaks-source = Triple evacuation 1500, 1500 and 500 micron, broken to 0 to 5 psig for 5 minutes or more: common practice, no source; a named pack or the maker first.

evacuation-level-what = Was the system, and not only the pump, at the target when the valve between them was closed?
evacuation-level-formula = pressure at isolation, on a straight line between the readings around it, read at the system ≤ target
evacuation-level-source = 500 micron: common practice, no source; a named pack or the maker may say otherwise (EN 378-2 270 Pa, from memory; US guide specification 300 micron, published).

evacuation-dwell-what = Did the pump stay on for the stated time after the level was reached? Some makers ask for it, because water leaves slowly.
evacuation-dwell-formula = isolation − first reading of the last pull at or below the level ≥ stated time
evacuation-dwell-source = A generic installation manual of air-to-water heat pumps (published). Asked only where the maker or a named pack does.

evacuation-hold-what = After the valve was closed, did the pressure stay below the decay limit for the stated time? It says that nothing large came in; it does not prove that the system is tight or dry.
evacuation-hold-formula = highest reading from isolation to isolation + stated time, the interpolated one at that time included ≤ decay limit; later readings are told, not judged
evacuation-hold-source = 1000 micron after 10 min, longer for large systems: common practice, no source; ASHRAE 15.2 1500 micron after 10 min and EN 378-2 270 Pa after 30 min (from memory); US guide specification, a rise of 500 micron in an hour (published); the maker first.

evacuation-rise-what = Did the pressure rise by no more than the pack allows within its time after isolation? Asked only where a named pack limits the rise.
evacuation-rise-formula = highest reading until isolation + stated time, less the reading at isolation ≤ limit; the gauge's zero drops out, its gain stays
evacuation-rise-source = US guide specification 15182/15652A, 500 micron in an hour (published).

evacuation-cause-what = Does the pressure stand, rise steadily, or rise and level off? A steady rise may be air, the rig, refrigerant passing a valve, or refrigerant leaving the oil of a machine that has run. One that levels off may be water, oil or outgassing. The shape narrows it down and no more.
evacuation-cause-formula = p = p₀; p₀ + a·t; p∞ − (p∞ − p₀)·e^(−t/τ); p₀ + b·ln(1 + t/s) or p₀ + b·(√(1 + t/s) − 1); line and source together; fitted to means of readings far enough apart to be independent, compared by AICc; a richer curve counts from a difference of 6; a term from 5 steps of the gauge and a tenth of what the allowed rise comes to over the hold
evacuation-cause-source = AICc: Hurvich and Tsai, Biometrika 76 (1989) 297 (from memory). Intervals: Bates and Watts, Nonlinear Regression Analysis (1988) chapter 6 (from memory). Thresholds: defaults of this program, tried by simulation (common practice, no source).

evacuation-humidity-what = Were all of the gas at the end of the hold water vapour, how far would it be from saturation at the coldest part? Below saturation, and at rest, there is no free water at equilibrium. Water in oil, insulation or a drier, and ice in a cold spot, are not seen.
evacuation-humidity-formula = φ = p/p_sat(T_coldest); ice hides below T_sat(p); a heat-loss gauge reads water vapour 1 to 2 times too high, so both are bands unless the gauge is a capacitance one
evacuation-humidity-source = Water: IAPWS-95; ice: IAPWS R14-08 (published). Heat-loss gauges in water vapour: 0.5 to 1 times what they show (from memory).

evacuation-leak-rate-what = How much gas came into the isolated system each second, were all of the steady rise an inflow of air? And what would the same hole let out of refrigerant vapour under pressure?
evacuation-leak-rate-formula = Q = V·dp/dt; viscous Q_r = Q_a·(η_a/η_r)·(p_r² − p_atm²)/(p_atm² − p_v²); molecular Q_r = Q_a·√(M_a/M_r)·p_r/p_atm; choked in proportion to p_r; ṁ = Q·M/(R·T); p_r is the dew pressure at 20 °C
evacuation-leak-rate-source = Pressure-rise method and flow regimes: EN 1779 (from memory). Viscosity of refrigerant vapour: handbook tables (from memory).

evacuation-pump-down-what = Was the pull as fast as pump, hoses and volume allow? What held it up: the hose, a valve core left in, the pump, water that boils, or gas that keeps coming? Asked only where hoses are written.
evacuation-pump-down-formula = dp/dt = −S_eff(p)·(p − p_ult)/V, integrated; the same flow passes pump, hoses and cores; conductance of a hose at the mean of the pressures at its ends (Knudsen), of short openings by Clausing
evacuation-pump-down-source = Vacuum handbooks: Knudsen, Ann. Phys. 28 (1909) 75; Clausing (from memory). A pull counts as slow from 2.5 times the expected time (common practice, no source).

evacuation-tightness-not-proved-what = Does the record rest its tightness on a vacuum? It may not. A vacuum pulls with one atmosphere where the running system pushes with ten to forty. A joint that opens under pressure may close under vacuum.
evacuation-tightness-not-proved-formula = an evacuation needs a nitrogen hold and a search of each joint beside it
evacuation-tightness-not-proved-source = IEC/UL 60335-2-40: joints are searched under pressure with a method that sees 5 g a year or finer (from memory).

## charge

charge-prerequisites-what = Was the air side right before the charge was judged: enough airflow, filter and coil clean, panels on, blower at its cooling speed?
charge-prerequisites-formula = airflow for each capacity at least the limit; at least the maker's where the job gives a range; without a measured airflow, temperature split not above its target by more than the tolerance
charge-prerequisites-source = California Residential Appendix RA3.2 (published, p. RA3-15 and RA3-16): 300 cfm/ton or the temperature split; target split from table RA3.2-3 (from memory). Clean filter, coil and panels: common practice.

charge-match-what = Do orifice, indoor and outdoor unit belong together as the maker lists them? A charging target holds for that combination alone.
charge-match-formula = size of the installed orifice = size the maker asks for; pair of units listed by the maker
charge-match-source = The maker's plate and the certificate of the matched pair.

charge-running-condition-what = Did the compressor run in a way in which superheat and subcooling say something of the charge?
charge-running-condition-formula = variable speed: held in the maker's charging or test mode; two-stage, digital, tandem: full load or high stage; fixed speed: running
charge-running-condition-source = Makers' charging instructions; common practice, no source.

charge-stabilised-what = Had the system settled when the judged reading was taken? That is long enough after the start and after the last change of charge, and the last two readings alike.
charge-stabilised-formula = time since the later of compressor start and last change of charge; change of superheat and subcooling between the last two settled readings, and in the last ten minutes of a log; a compressor that stopped in them has not settled
charge-stabilised-source = 15 min: California Residential Appendix RA3.2, p. RA3-13 and RA3-14 (published). Change of at most 1 °F: common practice, no source. The U of a change leaves out what both readings share, such as the zero of a gauge.

charge-method-validity-what = Was it warm enough outdoors and indoors, and not too hot, for judging a charge by superheat or subcooling?
charge-method-validity-formula = outdoor dry bulb, return dry bulb and, for the table of target superheat, return wet bulb inside the range of the method
charge-method-validity-source = The maker's range where the job gives one; else 55 °F outdoors published and the other edges from memory (California Residential Appendix RA3.2).

charge-saturation-what = Which saturation temperature belongs to each pressure, and what would the wrong curve of a blend have given?
charge-saturation-formula = superheat counts from the dew point, subcooling from the bubble point; differences to air from the middle of both; all at absolute pressure
charge-saturation-source = Equations of state of the refrigerant, with their papers under sources (published); the doubt of their pressure, 0.1 % pure and 0.5 % blends, is common practice.

charge-by-weight-what = Does the scale show what the maker's figures ask for? A unit that came charged needs only the adjustment for its lines; one that came empty, or with nitrogen, needs the whole charge.
charge-by-weight-formula = put in = Σ (cylinder before − after) − removed − left in hoses; asked for = figure × (line length − length covered) + extras. The first term falls below nothing only where the maker says to deduct. The factory charge comes besides when the unit came empty
charge-by-weight-source = Figures are the maker's. Tolerance: the maker's, else 2 % of the whole charge, at least 1 oz (the share common practice, the ounce from generic installation manuals). Hoses of which nothing is written ± 1 oz each: common practice.

charge-total-what = How much refrigerant does the circuit hold in the end? Label, carbon-dioxide equivalent, room size for flammable refrigerants and leak-check duties all follow from it.
charge-total-formula = total = factory charge + added − removed − left in hoses when the unit came charged; what the scale saw when it came empty
charge-total-source = Definition; the maker's total where the job gives one.

charge-phase-what = Did the refrigerant leave its cylinder as it must? A zeotropic blend drawn as vapor changes its composition in the cylinder and in the circuit. Was the vacuum broken before the compressor ran?
charge-phase-formula = glide = T_dew − T_bubble at the pressure of a cylinder at 20 °C (68 °F); above the limit, and for every 400-series blend, the cylinder gives liquid
charge-phase-source = 1 °F of glide; carbon dioxide as vapor up to 5.2 bar absolute, above its triple point; compressor never in a vacuum, liquid into the vapor side throttled: common practice, no source.

charge-superheat-what = Is the vapor at the service valve as far above its dew point as this weather and this load ask for? With a fixed orifice or a capillary that shows the charge.
charge-superheat-formula = SH = T_vapor line − T_dew(p_vapor, absolute); target from the maker's chart, the maker's figure, or the table at outdoor dry bulb and return wet bulb. The U of the target, ∂target/∂WB · U(WB) and ∂target/∂ODB · U(ODB), is part of U.
charge-superheat-source = California Residential Appendix RA3.2: method and ± 5 °F published (p. RA3-14), table RA3.2-2 from memory. The formula (3·WB − 80 − ODB)/2 is common practice without a source and is shown as information only.

charge-superheat-floor-what = Is there enough superheat at the vapor service valve to keep liquid out of the compressor, whatever the target and its tolerance allow?
charge-superheat-floor-formula = SH = T_vapor line − T_dew(p_vapor, absolute), at least the floor
charge-superheat-floor-source = Fixed orifice: 5 °F, generic installation manuals (published). Expansion valve: the maker's, else 4 °F, California Residential Appendix RA3.2, p. RA3-15 (published).

charge-metering-superheat-what = Does the expansion valve hold its superheat? Only then does the subcooling show the charge.
charge-metering-superheat-formula = SH = T_vapor line − T_dew(p_vapor, absolute), inside the maker's range
charge-metering-superheat-source = The maker's range; else 4 to 25 °F, California Residential Appendix RA3.2, p. RA3-15 (published). An electronic valve's superheat is its board's: information unless the maker gives a range.

charge-subcooling-what = Is the liquid at the service valve as far below its bubble point as the maker asks for? With an expansion valve that shows the charge.
charge-subcooling-formula = SC = T_bubble(p_liquid, absolute) − T_liquid line, against the maker's figure or chart
charge-subcooling-source = The target is the maker's. Tolerance ± 3 °F where the maker gives none: California Residential Appendix RA3.2, p. RA3-15 (published).

charge-diagnosis-what = What do all readings of the running circuit say together? High superheat alone does not mean a low charge: adding refrigerant to a restricted system overfills it.
charge-diagnosis-formula = P(cause | readings) in proportion to how often the cause is met × Π P(reading | cause), over sizes of the fault; each reading as the number of clear steps from what it should be, with the scatter of sound systems and U
charge-diagnosis-source = Directions of the readings: Rossi and Braun (1997), Breuker and Braun (1998), NISTIR 7350 (2006), from memory; sizes and scatter: common practice, no source. The table is src/Commission.Checks/Inference/causes.yaml.

charge-maker-chart-what = Do pressures and line temperatures lie where the maker's figures or charts put them in this weather?
charge-maker-chart-formula = the reading against the maker's figure, or against the chart read between its places and not beyond
charge-maker-chart-source = The maker's, with its page.

charge-approach-what = How far is the liquid line above the outdoor air? Some makers charge by it.
charge-approach-formula = approach = T_liquid line − T_outdoor dry bulb
charge-approach-source = The maker's figure; without one it is information.

charge-condensing-over-ambient-what = How far does the refrigerant condense above the outdoor air? It shows a dirty condenser, a weak fan, air in the circuit or too much refrigerant.
charge-condensing-over-ambient-formula = condenser split = T_mid(p_liquid, absolute) − T_outdoor dry bulb; T_mid is the middle of bubble and dew point
charge-condensing-over-ambient-source = Usual 10 to 30 °F by efficiency class: common practice, no source, and no limit; the maker's range judges.

charge-evaporator-difference-what = How far does the refrigerant evaporate below the air that comes onto the coil?
charge-evaporator-difference-formula = evaporator split = T_return or box − T_mid(p_vapor, absolute); T_mid is the middle of bubble and dew point
charge-evaporator-difference-source = Comfort cooling 35 ± 5 °F at 400 cfm/ton; walk-in coils 8 to 12 °F; reach-in coils 20 to 35 °F: common practice, no source, and no limit; the maker's range judges.

charge-drier-drop-what = Is the liquid line colder after the drier than before it? Liquid that flashes on the way shows a restricted drier.
charge-drier-drop-formula = ΔT = T_liquid line − T_after the drier
charge-drier-drop-source = 3 °F: common practice, no source; the maker's figure comes first.

charge-non-condensables-what = With the compressor off and the condenser at outdoor temperature, does the pressure lie above saturation? Then air, nitrogen or a foreign refrigerant is in the circuit.
charge-non-condensables-formula = excess = T_bubble(p_standing, absolute) − T_liquid line; share = p/p_bubble(T) − 1. A blend is compared with its bubble point.
charge-non-condensables-source = Unit off, condenser fan on for 10 min, liquid line within 1 °F of the air; excess 2 °F or 5 % of the pressure: common practice, no source.

charge-receiver-what = Is the liquid line of a receiver system free of bubbles at full load? How full is the receiver? Does the superheat lie where it must at the evaporator and at the compressor?
charge-receiver-formula = sight glass clear at full load; SH_evap = T_evaporator outlet − T_dew; SH_comp = T_suction at the compressor − T_dew
charge-receiver-source = Clear sight glass and level: common practice. Superheat at the bulb 4 to 6 °F low, 6 to 8 °F medium, 8 to 12 °F high temperature; at the compressor 20 to 40 °F: common practice, no source; the maker's comes first.

charge-heating-mode-what = What do the readings in heating say? In heating the large line carries discharge gas, so superheat and subcooling at the service valves do not show the charge.
charge-heating-mode-formula = subcooling at the indoor coil = T_bubble(p_vapor) − T_coil outlet; charts of the maker are judged by charge.maker-chart
charge-heating-mode-source = Definition. Steady for 15 min, 10 min after a defrost, coil clear, auxiliary heat off: common practice, no source.

charge-return-visit-what = Where the weather did not let the charge be judged by readings: was it weighed in, and is a visit for the cooling check arranged?
charge-return-visit-formula = no valid cooling reading: charge by weight, and a return visit when it is warm enough outdoors
charge-return-visit-source = 65 °F outdoors for the cooling check of a winter start-up: common practice, no source.

charge-cycle-what = What cycle do the measured states make? How much heat does each pound or kilogram take up, at which ratio, and how hot would an ideal compressor discharge?
charge-cycle-formula = q = h(T_vapor, p_vapor) − h(T_liquid, p_liquid); ratio = p_high / p_low, absolute; ideal discharge at s = s(suction)
charge-cycle-source = Equations of state of the refrigerant, with their papers under sources (published).

charge-as-found-what = What were superheat and subcooling before any work? An adjustment is shown as found and as left.
charge-as-found-formula = superheat and subcooling of the readings taken before the work
charge-as-found-source = Definitions; nothing is judged.

## air

air-psychrometrics-what = What do dry and wet bulb say of the return and the supply air? How much water, how much heat, how near to the dew point? At altitude a chart for sea level is wrong; here the site's own pressure counts.
air-psychrometrics-formula = W = ((2501 − 2.326·t_wb)·W_s(t_wb) − 1.006·(t − t_wb)) / (2501 + 1.86·t − 4.186·t_wb); h = 1.006·t + W·(2501 + 1.86·t); v = 0.287042·(t + 273.15)·(1 + 1.607858·W)/p; t in °C, h in kJ/kg, p in kPa
air-psychrometrics-source = ASHRAE Handbook — Fundamentals, chapter 1, SI form (from memory). Real moist air differs from it by up to 0.55 % in W and 0.65 kJ/kg (computed): part of U.

air-temperature-split-what = Does the air cool by as much as it should at this load? Too much means that too little air is moving; too little means that the capacity is probably low.
air-temperature-split-formula = split = T_return − T_supply, dry bulbs; target from the maker, else from the table at return dry and wet bulb. The U of the target, ∂/∂DB · U(DB) and ∂/∂WB · U(WB), is part of U.
air-temperature-split-source = California Residential Appendix RA3.2: ± 3 °F and what it means published (p. RA3-16), table RA3.2-3 from memory.

air-heat-rise-what = Does the air warm by as much as the maker prints for heating? Too much means that too little air is moving.
air-heat-rise-formula = rise = T_supply − T_return, dry bulbs
air-heat-rise-source = The maker's range; there is no common figure.

air-static-what = How much resistance do the ducts put in front of the blower, and is it within what the plate allows? Taps: return after the filter and before the unit, supply after the coil. Where the maker counts the coil as external, tap before it, and say which.
air-static-formula = ESP = p_supply − p_return, both against the room (return negative); with the drops of coil and filter added or taken off so that it is counted as the maker counts it
air-static-source = The plate or the maker's manual; without either 0.5 inwc (common practice, no source). Total static pressure up to 0.8 inwc is typical (common practice, no source).

air-filter-drop-what = How much of the blower's pressure does the filter take?
air-filter-drop-formula = p before the filter − p after it, read across it with one manometer
air-filter-drop-source = The filter's or the unit's maker; there is no common figure.

air-coil-drop-what = How much of the blower's pressure does the indoor coil take? A wet coil takes more than a dry one: compare like with like.
air-coil-drop-formula = p before the coil − p after it, read across it with one manometer
air-coil-drop-source = The maker's table for this coil, wet or dry; there is no common figure.

air-airflow-what = How much air does the blower move, and is it enough for this capacity, for the maker and for the design?
air-airflow-formula = fan table of the maker at the external static pressure; or cfm = heat/(1.08·ΔT) with the factor scaled by air density; or mean velocity · area; or the sum of the grilles. Airflow for each capacity = q_V / rated capacity
air-airflow-source = California Residential Appendix RA3.2, p. RA3-15 (published): 300 cfm/ton before the charge is judged. ± 15 % of the design: ANSI/ACCA 5 QI and ANSI/RESNET/ACCA/ICC 310 (from memory). 400 cfm/ton nominal: common practice, no source.

air-fan-power-what = How many watts does the blower spend on each cfm? Tight ducts and dirty filters show here.
air-fan-power-formula = blower power / airflow
air-fan-power-source = The maker's figure; ANSI/RESNET/ACCA/ICC 310: 0.45 W/cfm grade I, 0.58 grade II (from memory) when that pack is named.

air-capacity-what = How much heat does the system take out of the air, and how much of it is drying? U is wide: a few per cent of airflow and a degree of wet bulb are a tenth of the capacity.
air-capacity-formula = Q = (q_V/v)·(h_return − h_supply); sensible = (q_V/v)·(1.006 + 1.86·W)·(t_return − t_supply); latent = total − sensible. The field factors 4.5, 1.08 and 0.68 are made for standard air and do not close by about 2 %
air-capacity-source = ASHRAE Handbook — Fundamentals, chapter 1, SI form (from memory).

air-energy-balance-what = Do air side and refrigerant side tell the same story? The refrigerant's flow is not measured: it follows from the unit's electrical input and the heat of compression, where the discharge line was read.
air-energy-balance-formula = air side Q = (q_V/v)·Δh; refrigerant side Q = s·P·(h₁ − h₃)/(h₂ − h₁), s the share of the input that reaches the refrigerant; E_n = |Q_air − Q_ref| / U(Q_air − Q_ref)
air-energy-balance-source = Equations of state of the refrigerant (published); ASHRAE Handbook (from memory); the share s is a default of this program (common practice, no source).

air-outside-air-what = Does the unit take in as much outside air as the building was given?
air-outside-air-formula = airflow and position of the damper at its minimum within the figures written
air-outside-air-source = The ventilation schedule or the balancing report of the building; no common figure.

air-gas-heat-what = Does the burner get the gas it needs, and does it burn as the maker asks? Does the air warm by as much as the plate says?
air-gas-heat-formula = each reading within the maker's range: inlet and manifold pressure, rise, input, CO2, O2, flue temperature, draft, flame current
air-gas-heat-source = The maker's figures; there are no common ones.

## compressor

compressor-ratio-what = How hard does the compressor have to work? The ratio of its absolute pressures heats the gas and wears the machine.
compressor-ratio-formula = { -formula-compression-ratio }, corrected for the site's pressure
compressor-ratio-source = About 10 at most, 11 for some; 2.3 to 3.5 usual for air conditioning, 5 to 8 for heat pumps in the cold: common practice, no source. The maker's figure comes first; with vapor injection the common figure means nothing.

compressor-discharge-temperature-what = Does the discharge gas stay cool enough for the oil? The line is read 6 in (150 mm) from the compressor; inside it is 50 to 75 °F hotter.
compressor-discharge-temperature-formula = T_discharge, clamp insulated, at most 6 in from the compressor, ≤ the maker's figure
compressor-discharge-temperature-source = 225 °F for a fixed-speed compressor; oil breaks down near 350 °F: common practice, no source. The maker comes first, above all for R-32, which runs hotter, and for variable speed.

compressor-discharge-superheat-what = Is the discharge gas well above its dew point? A compressor that gets liquid with its vapor discharges hardly hotter than saturation, whatever the suction line says.
compressor-discharge-superheat-formula = DSH = T_discharge − T_dew(p_discharge, absolute)
compressor-discharge-superheat-source = 20 °F: common practice, no source; less is a suspicion, not a fault. The maker's figure comes first.

compressor-suction-superheat-what = Is the vapor dry where it enters the compressor? Superheat at the evaporator says little of it when the line is long or cold.
compressor-suction-superheat-formula = SH = T_suction line at the compressor − T_dew(p_suction, absolute)
compressor-suction-superheat-source = 5 °F least, 10 to 20 °F typical: common practice, no source. The maker's minimum comes first.

compressor-sump-superheat-what = Is the oil warm enough to keep refrigerant out of it? Oil thinned with refrigerant foams and does not lubricate.
compressor-sump-superheat-formula = sump superheat = T_sump − T_dew(p_suction, absolute)
compressor-sump-superheat-source = 20 °F: common practice, no source; less is a suspicion, not a fault. The maker's figure comes first.

compressor-crankcase-heater-what = Was the crankcase heater on long enough before the first start to drive refrigerant out of the oil?
compressor-crankcase-heater-formula = time from heater on to compressor started ≥ the maker's time
compressor-crankcase-heater-source = 12 to 24 h where a heater is fitted: common practice, no source. The maker's time comes first.

compressor-current-what = Does the compressor draw no more than it is rated for? The rated load current is no running limit: a hot day may pass it honestly. The maximum continuous current is.
compressor-current-formula = current ≤ RLA: pass; RLA to MCC: pass with a remark; above MCC: fail. Without MCC on the plate, MCC = pack factor × RLA. Fixed-speed compressors only; a low current proves nothing
compressor-current-source = RLA = MCC/1.4 at least, MCC/1.56 at most (UL practice, from memory); maker's figure first.

## electrical

electrical-supply-voltage-what = Is the voltage at the unit, with everything running, inside what the nameplate allows?
electrical-supply-voltage-formula = maker's range, else nameplate voltage less and plus the pack's tolerance (a range such as 208 to 230 V: from end to end)
electrical-supply-voltage-source = ± 10 % utilisation: common practice, no source.

electrical-voltage-unbalance-what = Are the three line voltages equal enough for the motor? A small unbalance heats one winding a lot.
electrical-voltage-unbalance-formula = unbalance = 100 · max|V − V_m| / V_m of the three line-to-line voltages
electrical-voltage-unbalance-source = NEMA MG-1, 12.45 and 14.36 (published figures; clause from memory): no derating up to 1 %, common limit 2 %, do not run above 5 %.

electrical-current-unbalance-what = Do the three phases of the compressor draw alike?
electrical-current-unbalance-formula = unbalance = 100 · max|I − Ī| / Ī of the three currents
electrical-current-unbalance-source = 10 %: common practice, no source.

electrical-overcurrent-what = Is the breaker or fuse no larger than the maximum overcurrent protection on the nameplate?
electrical-overcurrent-formula = rating of breaker or fuse ≤ MOP on the nameplate
electrical-overcurrent-source = NEC article 440 (from memory); elsewhere the maker's instructions and IEC 60364.

electrical-conductor-what = Does the wire, as it is installed, carry at least the minimum circuit ampacity on the nameplate?
electrical-conductor-formula = ampacity of the conductor as installed ≥ MCA on the nameplate
electrical-conductor-source = NEC article 440 (from memory); elsewhere the maker's instructions and IEC 60364.

electrical-ground-what = Is the equipment ground (protective earth) continuous, and can the unit be disconnected within sight?
electrical-ground-formula = ground continuous, or its resistance within the pack's limit; disconnect within sight
electrical-ground-source = NEC articles 250 and 440 (from memory); 1 ohm continuity: common practice, no source.

electrical-proved-dead-what = Was the unit locked out and proved dead before hands went in, with a meter proved live before and after?
electrical-proved-dead-formula = meter proved on a live source, then dead at the unit, then live again; locked out
electrical-proved-dead-source = Usual safe-isolation practice (common practice, no source); local electrical safety rules govern.

electrical-phase-rotation-what = Does a three-phase scroll or screw compressor turn the right way? Turned backwards it is loud, draws little, and pumps nothing.
electrical-phase-rotation-formula = rotation correct on a phase-rotation meter, or pressures move apart at start
electrical-phase-rotation-source = Common practice, no source.

electrical-unit-current-what = Does the whole unit draw no more than its circuit is sized for? RLA says nothing of a variable-speed compressor; the input current of its unit does.
electrical-unit-current-formula = current of the unit ≤ factor × MCA; above the rated current of the plate a remark
electrical-unit-current-source = NEC article 440 sizes the circuit by MCA (from memory); factor 1: common practice, no source.

electrical-fan-current-what = Does each fan draw no more than its full load current?
electrical-fan-current-formula = current ≤ factor × FLA
electrical-fan-current-source = Nameplate; factor 1: common practice, no source.

electrical-heater-what = Do the defrost and door heaters draw what their plate says?
electrical-heater-formula = share of the rated current within the limit; no current at all is a dead heater
electrical-heater-source = Voltage ± 10 % and the element's own tolerance, IEC 60335-1 clause 10 (from memory).

electrical-run-capacitor-what = Has the run capacitor still the capacitance on its label?
electrical-run-capacitor-formula = capacitance read, or C = I/(2π·f·V) while running; within label ± its tolerance
electrical-run-capacitor-source = Reactance of a capacitor. Tolerance: the label's, else ± 6 % (common practice, no source).

electrical-voltage-drop-at-start-what = How far does the voltage drop while the compressor starts? Too far, and it starts hard, or not at all on a hot day.
electrical-voltage-drop-at-start-formula = drop = (voltage before − lowest voltage) / voltage before
electrical-voltage-drop-at-start-source = 10 to 15 %: common practice, no source.

electrical-insulation-what = Is the winding still insulated from the shell? Never test while the circuit is under vacuum: the terminals arc.
electrical-insulation-formula = resistance at 500 V DC, board and inverter leads off, ≥ the pack's minimum; not between pump start and the end of the evacuation
electrical-insulation-source = 1 MΩ least, 20 MΩ good: common practice, no source; IEC 60335-1 asks 2 MΩ (from memory). Maker's figure first.

electrical-control-voltage-what = Is the control voltage high enough for contactors and low enough for boards?
electrical-control-voltage-formula = voltage at the transformer's secondary with everything called for, within the pack's range
electrical-control-voltage-source = 20 to 28 V for a 24 V circuit: common practice, no source.

electrical-terminal-torque-what = Are the supply terminals as tight as the maker prints? A loose lug heats, a crushed strand breaks.
electrical-terminal-torque-formula = torque within the maker's range, read on a torque screwdriver or wrench
electrical-terminal-torque-source = The maker's label or manual; there is no common figure.

## piping

piping-flare-torque-what = Was each flare nut tightened to its torque? Too little leaks, too much cracks the flare and leaks later.
piping-flare-torque-formula = torque within the maker's range for the tube's diameter; without a torque wrench the turn after the nut touches
piping-flare-torque-source = The maker's figure; else generic installation manuals (published; 3/4 in common practice), which differ among themselves; JIS B 8607 centre ± 10 % (from memory).

piping-velocity-what = Does the vapor move fast enough at the lowest stage to carry oil back, up a riser above all? Is it quiet at full load? Is the liquid slow enough not to hammer?
piping-velocity-formula = v = ṁ/(ρ·π·d²/4), ṁ = capacity/(h_vapor − h_liquid); oil return at minimum capacity, noise and liquid at full capacity; bore from the diameter less the wall
piping-velocity-source = 500 fpm horizontal, 1000 fpm in risers, 4000 fpm at most, liquid 360 fpm: trade press and piping guides (published). In comfort systems the maker's line table decides, and these are shown beside it.

piping-liquid-loss-what = Does the liquid reach the metering device still as liquid, after height and friction took their share of the pressure? Flash gas starves the valve and hisses.
piping-liquid-loss-formula = Δp = ρ·g·rise + f·(L + elbows)/d·ρ·v²/2; subcooling left = T_bubble(p_liquid − Δp) − T_liquid line
piping-liquid-loss-source = Equation of state of the refrigerant (published). Friction factor of smooth tube by Blasius; elbows as 30 bores each: defaults of this program (common practice, no source). Friction of 1 to 2 °F of saturation is what piping guides design for (published).

piping-lengths-what = Are the lines within what the maker allows: all together, the longest run, from the first branch to the farthest unit, and in height?
piping-lengths-formula = total = sum of all runs, one way; longest run = outdoor unit to the farthest indoor unit along the lines; first branch = from the first branch to the farthest indoor unit; height = largest rise between outdoor and indoor unit
piping-lengths-source = The maker's installation manual; there is no common figure.

piping-long-line-what = Has a long line set what the maker then asks for: crankcase heater, liquid solenoid, expansion valve, start kit, traps, oil? Long means beyond the maker's usual length or height.
piping-long-line-formula = length of the longest run and height between the units against the thresholds; every accessory of the maker's long-line table fitted
piping-long-line-source = The maker's long-line table. Thresholds without one: 50 ft and 20 ft of height (common practice, no source).

piping-traps-what = Are there as many traps in the risers as the maker asks for? Does the vapor line fall toward the compressor, so that oil comes back?
piping-traps-formula = number of traps ≥ the maker's
piping-traps-source = The maker's manual; there is no common figure.

piping-supports-what = Are the lines held often enough not to sag, rub and trap oil?
piping-supports-formula = distance between supports ≤ the pack's
piping-supports-source = International Mechanical Code table 305.4, copper tube up to 1 1/4 in: 6 ft (from memory). Local code and the maker come first.

piping-branch-joints-what = Do the branch joints stand as their maker asks: level or upright, with the straight run before them?
piping-branch-joints-formula = branch joints placed: yes, as the crew writes it
piping-branch-joints-source = Manuals of variable-flow systems (common practice, no source).

piping-total-index-what = Are more indoor units connected than the outdoor unit is made for, or too few?
piping-total-index-formula = total index = Σ capacity of the indoor units / capacity of the outdoor unit
piping-total-index-source = The maker's engineering data; there is no common figure.

piping-insulation-what = Is the vapor line insulated all the way, with its joints sealed and protected outdoors? Bare cold pipe drips and loses capacity. Leak-test before insulating.
piping-insulation-formula = insulated all the way; joints sealed; weatherproof outdoors
piping-insulation-source = Common practice, no source; the maker's and the energy code's thickness come first.

piping-pipe-rating-what = Is the tube rated for the pressure of this refrigerant? Thin water tube and old line sets of another refrigerant are not.
piping-pipe-rating-formula = rating printed on the tube ≥ design pressure of the side it serves
piping-pipe-rating-source = The tube's marking and the maker's manual; walls of refrigeration tube: ASTM B280 (from memory).

piping-reused-lines-what = Were lines that served another system flushed before they were used again? Old oil, acid and copper oxide end in the new compressor and valve.
piping-reused-lines-formula = flushed, in every run that was used again
piping-reused-lines-source = Makers' replacement instructions; common practice, no source.

piping-penetrations-what = Are the openings where the lines pass through walls and floors closed against water, vermin and fire?
piping-penetrations-formula = every opening sealed; through a fire-rated wall with a listed system
piping-penetrations-source = Building and fire codes of the place; common practice, no source.

## safety

safety-flammable-steps-what = Was the place made safe for work on a refrigerant that burns? Air checked with a detector for this gas, nothing that can light it, fresh air, an extinguisher, machines that may be used near it.
safety-flammable-steps-formula = each step written and taken, and neither signs nor bonding said to have been left out; detector alarm at most the pack's share of the lower flammability limit; ignition sources removed at least as far as the pack asks
safety-flammable-steps-source = IEC/UL 60335-2-40, annex DD (from memory); 3 m around the open circuit: common practice, no source. Local code and licensed practice govern.

safety-opening-sequence-what = Was the refrigerant that burns taken out, purged away and pulled off before the circuit was opened or brazed?
safety-opening-sequence-formula = recovered → purged with oxygen-free nitrogen → evacuated → purged again → opened; purge vented outdoors
safety-opening-sequence-source = IEC/UL 60335-2-40, annex DD (from memory).

safety-flammable-charge-what = Is the room, or are the rooms a duct serves together, large enough for the charge should all of it leak? The height refrigerant would come out at counts, not the ceiling's.
safety-flammable-charge-formula = m1 = 6 m³·LFL (4 m³·LFL for A2 and A3): no room limit; above it { -formula-room-charge }, at most m2 = 52 m³·LFL (26) without measures and m3 = 260 m³·LFL (130) at all; with a fan that a leak sensor starts, or one that always runs, { -formula-dispersal }, V up to 2.2 m over the floor; never more than V·LFL; areas that ducts serve count together only with a fan that a leak sensor starts; h0 = 0.6 m floor, 1.0 m window, 1.8 m wall, 2.2 m ceiling. A refrigerating appliance with its whole circuit: at most { -formula-appliance-charge } (1.2 kg of A2 or A2L), up to 150 g anywhere, else { -formula-appliance-room }
safety-flammable-charge-source = IEC/UL 60335-2-40:2018, annex GG; with circulation ASHRAE 15.2; appliances IEC 60335-2-89:2019 (all from memory). The maker's smallest room comes first.

safety-leak-sensor-what = Is the unit's leak sensor connected, and does it act: blower on, compressor off?
safety-leak-sensor-formula = connected, the maker's test run, blower came on, compressor stopped
safety-leak-sensor-source = IEC/UL 60335-2-40, leak detection as a measure (from memory); the test is the maker's.

safety-concentration-limit-what = If the whole charge leaked into the smallest occupied room, how much would be in its air, and what does the standard allow?
safety-concentration-limit-formula = concentration = charge / volume; m = V·RCL·F_occ, F_occ = 0.5 where people cannot leave by themselves
safety-concentration-limit-source = ASHRAE 15 section 7 with ASHRAE 34, both from memory. The limits are from memory: above one the outcome is conditional until the standard has been looked up; where none is known the number is information.

safety-devices-what = Did each safety device act when it was tried, and at a value that protects the circuit? Is a relief valve set at or below what it protects?
safety-devices-formula = high-pressure switch: trips at most at the pack's share of the high side's design pressure, and within its tolerance of the setting; others: tried and works; relief valve: set at most at the design pressure (gauge pressures)
safety-devices-source = EN 378-2, safety switching devices and their test (from memory); relief devices: ASHRAE 15 (from memory); spread of a switch about its setting: common practice, no source.

safety-combustion-what = Does the burner make carbon monoxide, and does flue gas come out into the room?
safety-combustion-formula = { -formula-air-free-by-oxygen }, or { -formula-air-free-by-dioxide } with CO2_max = 12.2 % natural gas, 14.0 % propane, 15.5 % oil; at most what maker or pack allows; no spillage
safety-combustion-source = ANSI Z21.47 (from memory): 400 ppm in an air-free sample. Ultimate CO2 from memory.

## refrigerant

refrigerant-recovery-level-what = Was the refrigerant recovered to the level the law asks for before the circuit was opened or scrapped?
refrigerant-recovery-level-formula = pressure reached ≤ level of the table for the refrigerant's pressure class at 104 °F and the full charge; very high pressure 0, high 0 (10 inHg vac from 200 lb), medium 10 (15 from 200 lb) inHg vac, low 25 mmHg absolute; machines built before 15 November 1993: 0, 0, 4, 4, 4 inHg vac; a circuit that leaks: at most 0 psig; small appliances: a share of the charge
refrigerant-recovery-level-source = 40 CFR 82.156 table 1 (published); classes and leaking circuits: 40 CFR 82.152 and 82.156 (from memory).

refrigerant-ledger-what = Where did every pound come from and go to? Where a cylinder was weighed twice, once as cylinder and once in the work, do both say the same?
refrigerant-ledger-formula = net = Σ charged − Σ taken off − Σ recovered; two weighings of one movement agree when E_n = |a − b| / √(U_a² + U_b²) ≤ the pack's bound, shared errors taken out
refrigerant-ledger-source = 40 CFR 82 subpart F and Regulation (EU) 2024/573 ask for the masses; agreement of two results as in proficiency tests (ISO 13528, from memory).

refrigerant-identity-what = Is the refrigerant that went in the one the unit is built for? Where it was changed: does it burn no more easily, and is the unit built for its pressure? Did gas of a burnt or acid circuit go back in?
refrigerant-identity-formula = plate = circuit = cylinder, or a written change; safety group no more flammable than the plate's; saturation pressure at 125 °F (mean of bubble and dew) at most the plate's high-side pressure (a tenth above it is a condition); without one that of the plate's own refrigerant
refrigerant-identity-source = US EPA SNAP: no flammable refrigerant as a retrofit of equipment not designed for it; ASHRAE 15 section 9, pressure of the high side (both from memory). Gas of an acid circuit: common practice.

refrigerant-use-what = May this refrigerant go into equipment that is serviced? In Europe gases of high warming potential may not, unless they are reclaimed, or recycled by those who recovered them. Recovered gas goes back only when it was cleaned.
refrigerant-use-formula = GWP below the reach of every ban in force on the day; else reclaimed with batch and facility, or recycled, before the day on which that ends, too
refrigerant-use-source = Regulation (EU) 2024/573, articles 8(6), 11(5), 12(7), 13(3), 13(4) and 13(5) (published).

refrigerant-cylinder-fill-what = Is the recovery cylinder filled no more than it may be? Liquid that fills a cylinder has nowhere to expand, and the cylinder bursts. How much mass that is depends on the refrigerant: propane is half as dense as water, R-22 denser than water.
refrigerant-cylinder-fill-formula = volume of the liquid at 25 °C over the cylinder's = { -formula-cylinder-volume }, m = gross − tare, WC the water capacity; different refrigerants in one cylinder by the lightest. In Europe the filling ratio m / WC is at most { -formula-filling-ratio }
refrigerant-cylinder-fill-source = 80 % of the volume at 25 °C (77 °F): AHRI Guideline K-2004 for refrigerants that do not burn, as the trade press reports it; the same for flammable ones: common practice. Europe: ADR packing instruction P200 (5), liquefied gases of low pressure (from memory). Densities: published equations of state.

refrigerant-acid-what = Is the oil free of acid after the work? If it is not, or was not before, when is it tested again?
refrigerant-acid-formula = the last test after the work is good; a bad or marginal one has the date of the next
refrigerant-acid-source = Clean-up after a burnt motor, ASHRAE Handbook Refrigeration, contaminant control (from memory); the dates are common practice, no source.

refrigerant-suction-drier-what = When does a suction drier that was fitted to clean up come out again?
refrigerant-suction-drier-formula = fitted in this job after a compressor change or with acid found: a date for taking it out, not before the day of the work
refrigerant-suction-drier-source = Common practice of clean-up after a burnt motor, no source: out within days, or when its pressure drop has grown.

refrigerant-oil-change-what = Does the oil that went in go with the refrigerant, and how much of the old oil was left?
refrigerant-oil-change-formula = kind of oil against the refrigerant; share of old oil ≤ limit
refrigerant-oil-change-source = An HFC or HFO carries no mineral oil back: ASHRAE Handbook Refrigeration, lubricants (from memory). 5 % of old oil: retrofit guides of refrigerant makers (from memory); the compressor's maker first.

refrigerant-additives-what = Was leak sealant or dye found in the circuit?
refrigerant-additives-formula = sealant and dye as the crew found them; gas with sealant in it never goes back
refrigerant-additives-source = Instructions of recovery machines and compressors (common practice, no source).

refrigerant-label-what = Does the label on the unit say what the scale says? Factory charge, charge added, total; and where the law asks for it the warming potential and the tonnes of carbon dioxide it equals. The next technician charges by it.
refrigerant-label-formula = |label − weighed| ≤ U of their difference, which holds the scale, the hoses and the last digit on the label; t CO2e = total × GWP / 1000
refrigerant-label-source = Regulation (EU) 2024/573, article 12(3), with (EU) 2024/2174, article 1(5) (published); elsewhere the maker's instructions. Agreement within U: common practice, no source.

refrigerant-leak-check-what = Was the filled circuit searched for leaks once it was in service, with a method that sees a small leak? Is a second look at a repair still owed, and when is the next check due?
refrigerant-leak-check-formula = result none; sensitivity of the detector at most the pack's; after a repair: again within the pack's time, with the system run for the time asked; next due at most the interval after this one
refrigerant-leak-check-source = Regulation (EU) 2024/573, articles 4(5) and 5, and Regulation (EC) 1516/2007, articles 6 and 10 (published); before March 2024 Regulation (EU) 517/2014 (a month after repair published, else from memory).

refrigerant-co2e-what = How many tonnes of carbon dioxide would the charge equal if it were let out? In Europe the leak checks follow from it.
refrigerant-co2e-formula = { -formula-co2e }; leak checks every 12, 6 or 3 months from 5, 50 or 500 t of Annex I gases (10 t when hermetic and labelled); or from 1, 10 or 100 kg of Annex II gases, whichever is stricter; twice as long with leakage detection
refrigerant-co2e-source = GWP: IPCC AR4; in the European Union Regulation (EU) 2024/573, articles 5(1), 5(6) and 6(1), annexes I, II and VI (published).

refrigerant-thresholds-what = Does the circuit fall under one of the leak-repair rules of the United States?
refrigerant-thresholds-formula = ozone-depleting: full charge ≥ 50 lb; substitute with GWP (AR4) above 53 from 1 January 2026: full charge ≥ 15 lb, residential and light-commercial air conditioning and heat pumps excepted
refrigerant-thresholds-source = 40 CFR 82.157 and 40 CFR 84.106 (published).

refrigerant-leak-rate-what = How much of its charge does the circuit lose in a year, judged by what had to be added since the last time?
refrigerant-leak-rate-formula = { -formula-leak-rate }; a span longer than a year counts as one
refrigerant-leak-rate-source = 40 CFR 82.152, annualising method (from memory); triggers 10 % comfort cooling, 20 % commercial and 30 % industrial refrigeration: 40 CFR 82.157 and 84.106 (published).

refrigerant-records-what = Which of the things a regulation wants kept are in this record, and which are not?
refrigerant-records-formula = each item of the regulation is looked for in the job
refrigerant-records-source = Regulation (EU) 2024/573, article 7(1), points (a) to (g) (published); 40 CFR 82.157(l); EN 378-2 clause 6 and EN 378-4 (from memory).

## functional

functional-thermostat-calls-what = Does the system do what the thermostat asks: cool, heat, run the fan alone? Is the thermostat set up for this kind of system?
functional-thermostat-calls-formula = each call tried works; a heat pump is tried in cooling and in heating
functional-thermostat-calls-source = Start-up lists of installation manuals (common practice, no source).

functional-reversing-valve-what = Does the reversing valve change over from cooling to heating and back?
functional-reversing-valve-formula = changed over both ways with the compressor running
functional-reversing-valve-source = Start-up lists of installation manuals (common practice, no source).

functional-defrost-what = Does a defrost start, and does it end by itself?
functional-defrost-formula = started by the board's test, ended by the coil sensor and not by the time limit alone
functional-defrost-source = Start-up lists of installation manuals (common practice, no source).

functional-auxiliary-heat-what = Does each stage of the auxiliary heat come on when it is called, and is it locked out above its setting?
functional-auxiliary-heat-formula = each stage called and felt or measured; locked out above the setting
functional-auxiliary-heat-source = Start-up lists of installation manuals (common practice, no source).

functional-fan-rotation-what = Do the fans turn the right way? A fan that turns backwards moves air, only too little of it.
functional-fan-rotation-formula = seen to turn as the arrow or the blade asks
functional-fan-rotation-source = Start-up lists of installation manuals (common practice, no source).

functional-condensate-what = Does water poured into the pan run off? Is there a trap where one is needed, fall along the drain, and a second drain or pan where an overflow would do damage?
functional-condensate-formula = water poured and seen to leave; the drain falls at least as much as the pack asks
functional-condensate-source = 1/8 in for each foot: model mechanical codes (from memory).

functional-float-switch-what = Does the float switch trip when the pan fills, and does cooling stop?
functional-float-switch-formula = switch lifted or pan filled: cooling stops
functional-float-switch-source = Model mechanical codes ask for it where an overflow would do damage (from memory).

functional-economizer-what = Does the outside damper run through its travel? Does the economizer open when the outside air is good enough and close when it is not?
functional-economizer-formula = economizer ok and damper test ok, where they were tried
functional-economizer-source = Start-up lists of packaged units (common practice, no source).

functional-water-what = Does enough water flow, is there enough of it, does it warm or cool by what the maker asks, and can it freeze?
functional-water-formula = flow, difference, volume, pressure, strainer drop and freezing point within the figures written; water in and out above where it freezes
functional-water-source = The maker's figures; there are no common ones. Plain water freezes at 0 °C (32 °F).

functional-water-controls-what = Does the unit stop without flow, was the air let out, and is the strainer clean?
functional-water-controls-formula = each tried works; the strainer is clean
functional-water-controls-source = Start-up lists of chillers and heat pumps (common practice, no source).

functional-water-capacity-what = How much heat does the water carry?
functional-water-capacity-formula = { -formula-water-heat }, plain water
functional-water-capacity-source = Density and specific heat of water from handbook tables (from memory). With glycol in it the mixture's figures are needed, and they are not known here.

functional-pressure-controls-what = Do the low- and the high-pressure control stop and start the compressor, and do their settings make sense?
functional-pressure-controls-formula = tried and works; low side: cut-out below cut-in; high side: cut-out above cut-in, and at most the pack's share of the high side's design pressure
functional-pressure-controls-source = EN 378-2 (from memory) and common practice: the high side is stopped before its design pressure.

functional-oil-what = Does the oil stand in the sight glass while the compressor runs, and what is the net oil pressure?
functional-oil-formula = level in the glass; the net oil pressure is shown beside it for the maker's figure to judge
functional-oil-source = Compressor makers' instructions (common practice, no source).

functional-box-pull-down-what = How fast did the box come down to its temperature, and what is the evaporator pressure regulator set to?
functional-box-pull-down-formula = rate = (T_from − T_to) / time
functional-box-pull-down-source = Definition. No limit is known: the load decides.

functional-sensor-what = Does the controller show what a thermometer beside its sensor reads?
functional-sensor-formula = |what it shows − what the thermometer reads| ≤ limit
functional-sensor-source = 1 K: class 1 of EN 13485, thermometers for chilled and frozen food (from memory).

functional-relief-port-what = Does the pressure relief port of the freezer room let air in, and does its heater keep it free of ice?
functional-relief-port-formula = relief port ok: its flap moves and its heater is warm
functional-relief-port-source = Makers of insulated rooms (common practice, no source).

functional-trial-run-what = Did the maker's trial run end without a fault? Does each indoor unit answer under its own address, so that pipes and wires are not crossed?
functional-trial-run-formula = trial run and addresses ok, where they were tried
functional-trial-run-source = Start-up lists of multi-split and variable-flow systems (common practice, no source).

functional-fault-codes-what = Was the board's fault memory read at the end, and what stood in it?
functional-fault-codes-formula = memory read at the end of the work; no code left in it
functional-fault-codes-source = Start-up lists of installation manuals (common practice, no source).

## evidence

evidence-chronology-what = Recovery, nitrogen, vacuum, charge: do the times say that they came in this order? Was nothing energised or tested for insulation while the compressor was under vacuum? Do dates and the vacuum log belong to this job?
evidence-chronology-formula = end of a step ≤ start of the next; start of the compressor and insulation test outside the evacuation; leak check and label not before the job; gauge of the log = gauge of the job
evidence-chronology-source = EN 378-2, order of tests (from memory); otherwise what the steps are for.

evidence-coverage-what = Of the checks that the packs require for this kind of work and system, how many could be judged? What is irrelevant to the job is not counted.
evidence-coverage-formula = judged / required, by the profile of the packs in force
evidence-coverage-source = The required lists of the packs: common practice and the documents they name.

evidence-instruments-identified-what = Can each judged reading be traced to an instrument? Without one nothing is known of its error, and its U is too small.
evidence-instruments-identified-formula = for each finding with a verdict: every reading taken on an instrument names one
evidence-instruments-identified-source = ISO/IEC 17025 asks for the equipment used (from memory); the field's habit follows it.

evidence-repeated-what = Do two rows of readings agree to the last digit although a running system never stands quite still? Does a stretch of a log come twice?
evidence-repeated-formula = probability that two rows agree by chance = Π over pressures and temperatures of P(same digits), for a scatter as small as the pack assumes; remarked on below the pack's probability. Logs: a stretch that comes twice, digit for digit and at the same pace, of many different values; or rows that chance repeats less than once in 10¹² logs, by how often one value follows the other near by
evidence-repeated-source = Scatter from reading to reading and the probability: common practice, no source.

evidence-resolution-what = Is a reading written finer than its instrument can show? Did the test pressure stand still to the last digit although the temperature moved enough to move it? Does a vacuum hold run on a straight line to the last digit although the display went up and down before?
evidence-resolution-formula = the number is a multiple of the instrument's resolution, in the same unit; expected change p·ΔT/T less its U against two steps of the gauge; distance of each row of the hold from a straight line against three quarters of a step
evidence-resolution-source = Definition of resolution (VIM 4.14, from memory); ideal gas for the size of the change; factors: common practice, no source.

evidence-terminal-digits-what = Last digits of readings from digital instruments are spread evenly over 0 to 9. Are these? Numbers made up or rounded in the head favour 0 and 5, or avoid them.
evidence-terminal-digits-formula = χ² = Σ (count − n/10)² / (n/10) with 9 degrees of freedom, n at least what the pack asks; remarked on when the probability is below the pack's. Counted are readings written to the step of their instrument; of a quantity that hardly moves only one
evidence-terminal-digits-source = Pearson's χ² test; number and probability: common practice, no source.

evidence-physics-what = Can these readings be right together? In cooling the vapor line is no colder than the boiling refrigerant. The liquid line is no hotter than the condensing refrigerant and no colder than the outdoor air that cools it. The discharge line is no colder than the condensing refrigerant. The condenser is warmer than the outdoor air, the evaporator colder than the air that leaves it. An isolated vacuum does not deepen by itself. Through hoses no field pump reaches a few micron, and none reaches nothing. A log whose unit nobody wrote says nothing.
evidence-physics-formula = T_vapor ≥ T_bubble(p_vapor), T_outdoor ≤ T_liquid ≤ T_dew(p_liquid), T_discharge ≥ T_dew(p_liquid), T_outdoor ≤ T_dew(p_liquid); T_supply ≥ T_bubble(p_vapor), T_supply ≤ T_return: contradicted when the difference is wrong by more than its U; vacuum hold: fall beyond its U and the share the pack allows; vacuum: level + U ≥ the pack's least, and not 0
evidence-physics-source = Heat flows from warm to cold; phase equilibrium. The share a vacuum may fall by the gauge's own scatter, and the least that a pump reaches through hoses: common practice, no source.

evidence-agreement-what = Where the job gives a number twice by different ways, do both agree within their doubts? The scale and the amounts written during charging; wet bulb read and from humidity; mass recovered by scale and as written.
evidence-agreement-formula = E_n = |a − b| / U(a − b), shared errors taken out; agrees when E_n ≤ the pack's bound
evidence-agreement-source = Normalised difference as in proficiency tests (ISO 13528, from memory).

evidence-photos-what = Is each photo a picture of its own, large enough to read, and was it taken during the visit?
evidence-photos-formula = each file is decoded to its end; at least 320 × 240 pixels; SHA-256 of the files differ. Remarked on: 255-bit prints (signs of the slowest waves of the cosine transform) that differ in at most 20 bits; a camera's time (EXIF) on a day without work, or more than 15 minutes from the time written
evidence-photos-source = Sizes and bounds: common practice, no source. EXIF 2.32 for the camera's time.

evidence-signature-what = Who stands for this record, in what role, and since when?
evidence-signature-formula = at least one name: of a signature, or of the technician among the people; a date of a signature is not before the work
evidence-signature-source = Practice of start-up and log-book forms (common practice, no source); EN 378-4 and 40 CFR 82.157 ask for the person (from memory).
