using System.Collections.Immutable;
using System.Globalization;
using Commission.Measurement.Decisions;
using Commission.Records.Findings;

namespace Commission.Records.Tests.Samples;

/// <summary>Sixty invented findings over all phases, with every kind of verdict and limit.</summary>
internal static class SampleFindings
{
    public static ImmutableArray<Finding> All()
    {
        ImmutableArray<Finding> list =
        [
            Words("instrument.calibration-current", "instruments", "Calibration in date", "gauge low", Verdict.Pass, "Calibrated 2026-02-11, interval 12 months: in date on 2026-06-18."),
            Words("instrument.calibration-current", "instruments", "Calibration in date", "gauge high", Verdict.Pass, "Calibrated 2026-02-11, interval 12 months: in date on 2026-06-18."),
            Words("instrument.calibration-current", "instruments", "Calibration in date", "meter", Verdict.Conditional, "Calibrated 2025-06-20, interval 12 months: two days left on 2026-06-18.", reservation: "The interval ends within a week of the work."),
            Number("instrument.ice-point", "instruments", "Ice point", "vapor clamp", Verdict.Pass, "temperature difference", "°F", 0.1, 0.2, 1, Limit(LimitKind.Within, "0 ± 1 °F", "common practice"), 0.1, 0.05, 0.15),
            Number("instrument.ice-point", "instruments", "Ice point", "liquid clamp", Verdict.Pass, "temperature difference", "°F", 0.0, 0.2, 1, Limit(LimitKind.Within, "0 ± 1 °F", "common practice"), 0.5, 0.4, 0.6),
            Number("instrument.known-pressure", "instruments", "Known pressure", "gauge high", Verdict.Information, "pressure difference", "psi", 1.1, 0.7, 1, null, null, null, null, "The gauge reads 1.1 psi above the reference at 300.0 psig; readings are corrected by it."),
            Number("instrument.zero-pressure", "instruments", "Zero", "gauge low", Verdict.Pass, "pressure difference", "psi", 0.2, 0.1, 1, Limit(LimitKind.Within, "0 ± 1 psi", "common practice"), 0.6, 0.55, 0.65),
            Number("instrument.scale-check-weight", "instruments", "Scale with check weight", "scale", Verdict.Pass, "mass", "oz", 0.2, 0.5, 1, Limit(LimitKind.Within, "0 ± 1.0 oz", "pack"), 0.6, 0.35, 0.85),
            Words("instrument.vacuum-gauge", "instruments", "Vacuum gauge on a blanked rig", null, Verdict.Pass, "The rig reached 80 micron blanked off and rose 20 micron in 5 min."),
            Words("pressure-test.gas", "pressure-test", "Test gas", null, Verdict.Pass, "Dry nitrogen, through a regulator with a relief valve set to 500 psig."),
            Number("pressure-test.level", "pressure-test", "Test pressure, minimum", null, Verdict.Pass, "pressure", "psig", 440.0, 2.5, 1, Limit(LimitKind.AtLeast, "at least 405 psig (0.9 × design pressure)", "pack", DecisionRule.Guarded), 0.87, 0.85, 0.89, lower: true, upper: false),
            Number("pressure-test.level", "pressure-test", "Test pressure, maximum", "indoor coil", Verdict.Pass, "pressure", "psig", 440.0, 2.5, 1, Limit(LimitKind.AtMost, "at most 450 psig (rating of the indoor coil)", "maker", DecisionRule.Guarded), 0.78, 0.72, 0.84, lower: false, upper: true),
            Number("pressure-test.hold", "pressure-test", "Loss over the hold", "65 min", Verdict.Pass, "ratio", "%", 0.08, 0.55, 2, Limit(LimitKind.AtMost, "at most 1.00 % of the absolute test pressure", "common practice", DecisionRule.Guarded), 0.08, -0.47, 0.63, lower: false, upper: true),
            Number("pressure-test.smallest-loss", "pressure-test", "Smallest loss this hold could see", null, Verdict.Information, "ratio", "%", 0.45, 0.1, 2, null, null, null, null, "A loss below 0.45 % in 65 min could not have been told from nothing."),
            Words("pressure-test.joint-leak-check", "pressure-test", "Joint leak check", "outdoor service valves", Verdict.Pass, "No leak found with bubble solution at 440 psig."),
            Words("pressure-test.joint-leak-check", "pressure-test", "Joint leak check", "indoor coil stubs", Verdict.Pass, "No leak found with an electronic detector (5 g/yr) and tracer gas."),
            Words("pressure-test.brazing", "pressure-test", "Brazing under nitrogen", null, Verdict.NotEvaluated, "The job does not say whether nitrogen flowed while brazing.", reason: "Nothing was written under pressure test: brazing."),
            Number("evacuation.rig", "evacuation", "Vacuum rig, pump alone", null, Verdict.Pass, "pressure", "micron", 45, 5, 0, Limit(LimitKind.AtMost, "at most 100 micron", "common practice"), 0.45, 0.40, 0.50, lower: false, upper: true),
            Number("evacuation.level", "evacuation", "Level at isolation", null, Verdict.Pass, "pressure", "micron", 342, 35, 0, Limit(LimitKind.AtMost, "at most 500 micron", "maker"), 0.684, 0.614, 0.754, lower: false, upper: true),
            Number("evacuation.hold", "evacuation", "Highest level in 10 min of hold", null, Verdict.Pass, "pressure", "micron", 471, 48, 0, Limit(LimitKind.AtMost, "at most 1000 micron after 10 min", "maker"), 0.471, 0.423, 0.519, lower: false, upper: true),
            Words("evacuation.section", "evacuation", "Section and valves", null, Verdict.Pass, "Line set and indoor coil; expansion valve driven open."),
            Words("evacuation.breaks", "evacuation", "Nitrogen breaks", null, Verdict.Pass, "One break to 2 psig with dry nitrogen at 24 min."),
            Words("evacuation.cause", "evacuation", "Shape of the rise", null, Verdict.Information, "Held: no rise above 4.1 micron/min seen; the rise levels off towards 520 micron with a time constant of 9 min, as vapour from water, oil or outgassing does."),
            Number("evacuation.humidity", "evacuation", "Pressure over saturation of water", "66 °F", Verdict.Information, "ratio", "%", 2.9, 0.3, 1, null, null, null, null, "Below 100 %: no free liquid water at equilibrium with 66 °F. Water in oil is not seen by this."),
            Number("evacuation.leak-rate", "evacuation", "Gas flow into the section", null, Verdict.Information, "throughput", "Pa·m³/s", 0.000058, 0.000021, 6, null, null, null, null, "Vacuum alone never proves tightness: see the pressure test."),
            Words("charge.prerequisites", "charge", "Airflow, filter, coil and panels", null, Verdict.Conditional, "Filter clean; the temperature split is within its limit; panels and coil were not mentioned.", reservation: "Panels on and coil clean were not shown."),
            Number("charge.superheat-floor", "charge", "Superheat, least allowed", "11:35", Verdict.Pass, "temperature difference", "°F", 12.9, 1.5, 1, Limit(LimitKind.AtLeast, "at least 4 °F", "pack"), 1.4, 1.3, 1.5, lower: true, upper: false),
            Number("charge.metering-superheat", "charge", "Superheat with TXV", "11:35", Verdict.Conditional, "temperature difference", "°F", 12.9, 1.5, 1, Limit(LimitKind.Within, "4 to 25 °F", "pack"), 0.42, 0.35, 0.5, reservation: "Panels on and coil clean were not shown."),
            Number("charge.subcooling", "charge", "Subcooling", "11:35", Verdict.Conditional, "temperature difference", "°F", 10.5, 1.4, 1, Limit(LimitKind.Target, "9 ± 3 °F", "maker"), 0.75, 0.52, 0.98, reservation: "Panels on and coil clean were not shown."),
            Words("charge.stabilised", "charge", "Stabilised before judging", "11:35", Verdict.Pass, "35 min after the compressor started; slopes of the last readings within their limits."),
            Number("charge.by-weight", "charge", "Added charge against line adjustment", null, Verdict.Conditional, "mass", "oz", 16.3, 0.7, 1, Limit(LimitKind.Target, "16.2 ± 2.0 oz (0.60 oz/ft × 27 ft)", "maker"), 0.525, 0.35, 0.70, reservation: "What stayed in the hoses was not weighed."),
            Words("charge.phase", "charge", "Phase leaving the cylinder", null, Verdict.Pass, "Liquid, as a zeotropic blend must."),
            Words("charge.diagnosis", "charge", "Both sides together", null, Verdict.Information, "Superheat and subcooling are both near their targets: nothing points to a wrong charge, a restriction or low airflow."),
            Number("charge.condensing-over-ambient", "charge", "Condensing over ambient (mid-point)", "11:35", Verdict.Pass, "temperature difference", "°F", 17.6, 1.3, 1, Limit(LimitKind.AtMost, "at most 30 °F", "common practice"), 0.59, 0.54, 0.63, lower: false, upper: true),
            Number("compressor.ratio", "compressor", "Pressure ratio", "11:35", Verdict.Pass, "ratio", "", 2.68, 0.05, 2, Limit(LimitKind.AtMost, "at most 10", "common practice"), 0.27, 0.26, 0.28, lower: false, upper: true),
            Words("compressor.discharge-temperature", "compressor", "Discharge temperature", null, Verdict.NotEvaluated, "The discharge line was not measured.", reason: "No discharge line temperature in any reading."),
            Number("air.temperature-split", "air", "Temperature split", "11:35", Verdict.Pass, "temperature difference", "°F", 19.4, 1.3, 1, Limit(LimitKind.Target, "19.1 ± 3 °F", "pack"), 0.55, 0.33, 0.77),
            Number("air.external-static", "air", "External static pressure", null, Verdict.Fail, "pressure difference", "inwc", 0.62, 0.02, 2, Limit(LimitKind.AtMost, "at most 0.50 inwc", "maker"), 1.24, 1.20, 1.28, lower: false, upper: true, next: "Check filter, dampers and duct size; measure the drop over the filter and the coil."),
            Words("air.airflow", "air", "Airflow", null, Verdict.NotEvaluated, "Airflow was not measured.", reason: "Neither a fan table nor a traverse nor a hood reading was given."),
            Number("electrical.overcurrent", "electrical", "Overcurrent device", null, Verdict.Pass, "current", "A", 30, null, 0, Limit(LimitKind.AtMost, "at most 35 A (MOP)", "maker", DecisionRule.Guarded), 0.857, null, null, lower: false, upper: true),
            Number("electrical.conductor", "electrical", "Conductor ampacity", null, Verdict.Pass, "current", "A", 30, null, 0, Limit(LimitKind.AtLeast, "at least 22.0 A (MCA)", "maker", DecisionRule.Guarded), 0.364, null, null, lower: true, upper: false),
            Words("electrical.ground", "electrical", "Equipment ground", null, Verdict.Fail, "DANGER: no continuity between the cabinet and the equipment ground.", next: "Switch off and repair the ground before anybody touches the cabinet.") with { IsDanger = true, IsToLookAt = true, InFile = "electrical: {supply: {equipment ground: continuous}}" },
            Number("electrical.voltage", "electrical", "Supply voltage", null, Verdict.Pass, "voltage", "V", 236, 4, 0, Limit(LimitKind.Within, "187 to 253 V", "pack"), 0.742, 0.68, 0.80),
            Number("electrical.compressor-current", "electrical", "Compressor current", null, Verdict.Pass, "current", "A", 14.9, 0.3, 1, Limit(LimitKind.AtMost, "at most 16.7 A (RLA)", "maker"), 0.892, 0.874, 0.91, lower: false, upper: true),
            Number("electrical.run-capacitor", "electrical", "Run capacitor", null, Verdict.Pass, "capacitance", "µF", 44.1, 0.7, 1, Limit(LimitKind.Target, "45 µF ± 6 %", "common practice"), 0.33, 0.2, 0.46),
            Words("electrical.phase-rotation", "electrical", "Phase rotation", null, Verdict.Information, "Single-phase supply: nothing to check."),
            Words("piping.flare-torque", "piping", "Flare torque", null, Verdict.NotEvaluated, "Torque was not written down.", reason: "No value under piping checks."),
            Number("piping.oil-return", "piping", "Vapour velocity for oil return", null, Verdict.Pass, "velocity", "ft/min", 1840, 120, 0, Limit(LimitKind.AtLeast, "at least 1000 ft/min in a riser", "common practice"), 0.84, 0.72, 0.96, lower: true, upper: false),
            Words("safety.leak-sensor", "safety", "Leak sensor test", null, Verdict.NotEvaluated, "The sensor of the indoor unit was not tested.", reason: "No maker's test was written under safety.", required: true, next: "Run the maker's test and write down the time until the fan starts."),
            Number("safety.charge-limit", "safety", "Charge against the limit of the rooms served", null, Verdict.Pass, "mass", "kg", 3.41, 0.03, 2, Limit(LimitKind.AtMost, "at most 9.80 kg (ducted, 770 ft², 2.2 m)", "pack", DecisionRule.Guarded), 0.348, 0.345, 0.351, lower: false, upper: true),
            Words("safety.flammable-steps", "safety", "Steps for flammable refrigerant", null, Verdict.Pass, "Area checked, ignition sources removed, ventilated, extinguisher at hand, machines rated."),
            Words("safety.devices", "safety", "Safety devices", null, Verdict.NotEvaluated, "The high-pressure switch was not tripped.", reason: "A setting on a plate is not a test."),
            Words("refrigerant.ledger", "refrigerant", "Refrigerant ledger", null, Verdict.Pass, "1 lb 0.3 oz out of cylinder C-118; nothing recovered."),
            Words("refrigerant.label", "refrigerant", "Label on the unit", null, Verdict.Pass, "Factory 6 lb 8 oz, added 1 lb 0.3 oz, total 7 lb 8.3 oz."),
            Number("refrigerant.co2e", "refrigerant", "CO₂ equivalent", null, Verdict.Information, "mass", "t", 1.59, 0.01, 2, null, null, null, null, "GWP 466 (AR4)."),
            Words("functional.thermostat", "functional", "Thermostat calls", null, Verdict.Pass, "Cooling and fan calls answered."),
            Words("functional.condensate", "functional", "Condensate drain and float switch", null, Verdict.Pass, "Water poured; float switch stopped cooling."),
            Words("functional.fault-codes", "functional", "Fault codes", null, Verdict.Pass, "None stored."),
            Words("evidence.chronology", "evidence", "Order of the steps", null, Verdict.Pass, "Pressure test 08:10 to 09:15, evacuation from 09:25, compressor from 11:00."),
            Words("evidence.resolution", "evidence", "Resolution", null, Verdict.Information, "Readings move in steps of the stated resolution."),
            Words("evidence.repeated", "evidence", "Repeated readings", null, Verdict.Information, "No two rows of readings are the same (job.yaml lines 96 and 97)."),
        ];
        return [.. list.Select((finding, index) => finding with { Number = index + 1 })];
    }

    private static LimitStatement Limit(LimitKind kind, string text, string basis, DecisionRule rule = DecisionRule.Simple) => new(
        kind, text, null, null, null, basis,
        basis == "maker" ? "" : "test pack",
        basis switch { "maker" => "unit plate (invented)", "pack" => "invented standard, clause 4.2", _ => "common practice, no source" },
        basis switch { "maker" => "job", "pack" => "from memory", _ => "common practice" },
        rule);

    private static Finding Words(
        string check, string phase, string title, string? subject, Verdict verdict, string statement,
        string? reason = null, string? reservation = null, bool required = false, string? next = null) => new()
        {
            Check = check,
            Phase = phase,
            Title = title,
            Subject = subject,
            Verdict = verdict,
            Statement = statement,
            Reason = reason,
            Reservation = reservation,
            Required = required,
            NextStep = next,
            Readings = [new ReadingUse("as written", statement.Split([',', ';', ':'])[0], SampleRecord.At(40 + title.Length), null)],
        };

    private static Finding Number(
        string check, string phase, string title, string? subject, Verdict verdict, string dimension, string unit,
        double value, double? expanded, int decimals, LimitStatement? limit, double? strip, double? low, double? high,
        string? statement = null, bool lower = true, bool upper = true, string? reservation = null, string? next = null)
    {
        var format = "F" + decimals.ToString(CultureInfo.InvariantCulture);
        var number = value.ToString(format, CultureInfo.InvariantCulture);
        var half = expanded?.ToString(format, CultureInfo.InvariantCulture);
        var space = unit.Length == 0 ? "" : " " + unit;
        var text = half is null ? number + space : $"{number} ± {half}{space}";
        double? probability = limit is null || expanded is null ? null : verdict == Verdict.Fail ? 0.0004 : 0.973;
        return new Finding
        {
            Check = check,
            Phase = phase,
            Title = title,
            Subject = subject,
            Verdict = verdict,
            Reservation = reservation,
            NextStep = next,
            Statement = statement ?? $"{title}: {text}{(limit is null ? "" : $", limit {limit.Text}")}.",
            Required = limit is not null,
            Measured = new MeasuredQuantity(
                new DisplayQuantity(value, dimension, unit, value, decimals, number + space),
                expanded / 2.05, expanded, expanded is null ? null : 2.05, expanded is null ? null : 37, text, half is null ? null : half + space)
            { CoverageText = PrintedNumbers.Coverage(expanded is null ? null : 2.05, 37) },
            Limits = limit is null ? [] : [limit],
            ProbabilityOfConformity = probability,
            ConformityText = PrintedNumbers.Probability(probability),
            MaximumFalseAccept = limit is null || expanded is null ? null : 0.027,
            FalseAcceptText = limit is null || expanded is null ? null : PrintedNumbers.Probability(0.027),
            Adequacy = limit is null || expanded is null ? null : 2.1,
            AdequacyText = limit is null || expanded is null ? null : PrintedNumbers.Ratio(2.1),
            Strip = strip is { } place ? new StripPosition(place, low, high, lower, upper) : null,
            Trace =
            [
                new TraceStep("p_abs", "absolute pressure", "p_abs = p_gauge − zero + p_atm", "118.9 psi − 0.2 psi + 12.100 psi", "130.80 psia", "JCGM 100, example of a correction"),
                new TraceStep("T_sat", "saturation temperature at the stated pressure", "T_sat = T_dew(p_abs)", "T_dew(901.83 kPa)", "44.00 °F", "Equation of state of the blend, see the list of papers"),
                new TraceStep(dimension == "pressure" ? "p" : "x", title.ToLowerInvariant(), "x = T_line − residual − T_sat", "57.2 °F − 0.1 °F − 44.00 °F", number + space, ""),
            ],
            Readings =
            [
                new ReadingUse("vapor pressure, 11:35", "118.9 psig", SampleRecord.At(97, 38), "low"),
                new ReadingUse("vapor line, 11:35", "57.2 °F", SampleRecord.At(97, 83), "vapor clamp"),
            ],
            Instruments = ["low", "vapor clamp"],
            Budget = expanded is null
                ? []
                :
                [
                    new BudgetLine("vapor clamp, class of the thermocouple", "rectangular", "0.43 °F", "1", 0.24, 58.2, "IEC 60584-1, class 2 (from memory)") { ShareText = PrintedNumbers.Share(58.2) },
                    new BudgetLine("gauge low, share of full scale", "rectangular", "1.44 psi", "0.214 °F/psi", 0.17, 29.4, "as stated for the gauge") { ShareText = PrintedNumbers.Share(29.4) },
                    new BudgetLine("refrigerant model, blend", "normal", "0.50 %", "0.151 °F/%", 0.04, 8.1, "common practice, no source") { ShareText = PrintedNumbers.Share(8.1) },
                    new BudgetLine("site pressure from elevation", "normal", "0.145 psi", "0.214 °F/psi", 0.02, 4.3, "weather, common practice") { ShareText = PrintedNumbers.Share(4.3) },
                ],
        };
    }
}
