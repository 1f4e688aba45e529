### Words and formulas that several files of a language share.

## Formulas that a trace prints and a page of help repeats

-formula-water-heat = Q = q_V·ρ·c·|T_in − T_out|
-formula-leak-rate = leak rate = added / full charge × 365 / days × 100 %
-formula-cylinder-volume = m / (WC · ρ_liquid(25 °C) / ρ_water(25 °C))
-formula-filling-ratio = min(0.95 · ρ_liquid(50 °C), ρ_liquid(60 °C)) / ρ_water(15 °C)
-formula-compression-ratio = ratio = p_discharge / p_suction, both absolute
-formula-air-free-by-oxygen = CO_af = CO·20.9 / (20.9 − O2)
-formula-air-free-by-dioxide = CO_af = CO·CO2_max / CO2
-formula-co2e = t CO2e = charge in kg × GWP / 1000
-formula-room-charge = m_max = min(2.5·LFL^1.25·h0·√A, 0.75·LFL·h0·A)
-formula-appliance-room = A_min = M / (0.25·LFL·2.2 m)
-formula-appliance-charge = m_max = 13 m³·LFL
-formula-dispersal = EDVC = V·LFL·0.5·F_occ
