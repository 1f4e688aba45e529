using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Refrigerants;

/// <summary>Whether the circuit was recovered to the level the law asks for before it was opened or scrapped.</summary>
internal sealed class RecoveryLevelCheck : ICheck
{
    private const double HundredFourFahrenheit = ConversionFactors.CelsiusZero + 40;
    private const double TwoHundredPounds = 200 * ConversionFactors.Pound;
    private const double FivePounds = 5 * ConversionFactors.Pound;
    private static readonly DateOnly NewMachines = new(1993, 11, 15);

    public string Id => "refrigerant.recovery-level";

    public string Phase => Phases.Refrigerant;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Recovery is { } recovery)
            yield return Judge(context, recovery);
    }

    private Finding Judge(CheckContext context, Recovery recovery)
    {
        var reached = context.Readings.Pressure("pressure after recovery", ReadingName.Recovery, recovery.To, recovery.With);
        var finding = context.Finding(this).Use(reached).Use("refrigerant", context.Job.Equipment.Refrigerant).Use("held", recovery.Held).Use("leaking", recovery.Leaking).Use("machine made", recovery.MachineMade);
        finding.Remark(recovery.Held is { } held ? $"The level held for {held.Text}." : "How long the level held is not written.");
        var limit = context.Limits.Require(LimitIds.RefrigerantRecoveryLevel);
        if (SmallAppliance(context, finding, recovery) is { } share)
            return share;
        var atmosphere = context.Get<SiteAtmosphere>();
        if (recovery.Leaking?.Value == true)
            return AgainstAtmosphere(context, finding, limit, reached.Value - atmosphere.Value, "a circuit that leaks", "40 CFR 82.156 (from memory)");
        if (Class(context, finding) is not { } pressureClass)
            return finding.NotEvaluated($"the pressure class of {context.Get<RecoveredRefrigerant>().Designation} cannot be worked out", "Take the level from 40 CFR 82.156 table 1 and compare by hand.");
        var isOld = recovery.MachineMade is { } made && made.Value < NewMachines;
        if (FullCharge(context, finding, pressureClass, isOld) is not { } full)
            return finding.NotEvaluated("the level depends on whether the full charge is 200 lb or more, and no charge is written", "Write the factory charge or the mass recovered.");
        var wording = RecoveryLevels.Wording(pressureClass, full, isOld);
        finding.Step("p_req", "level asked for", "table 1 by pressure class and full charge", $"{Words(pressureClass)}, full charge {(full.Si < TwoHundredPounds ? "below" : "at least")} 200 lb{(isOld ? ", machine built before 15 November 1993" : "")}", wording, $"{RecoveryLevels.Source} ({RecoveryLevels.Mark})");
        if (RecoveryLevels.IsAtmosphere(pressureClass, full, isOld))
            return AgainstAtmosphere(context, finding, limit, reached.Value - atmosphere.Value, $"the level of {wording}", RecoveryLevels.Source);
        var required = RecoveryLevels.Required(pressureClass, full, isOld);
        var text = $"{wording} ({context.Present.Text(required.Si, DisplayKind.AbsolutePressure, 2)})";
        finding.Judge(reached.Value, DisplayKind.AbsolutePressure, context.State(limit) with { Kind = LimitKind.AtMost, Text = $"at most {text}", LowerSi = null, UpperSi = required.Si });
        return Said(finding, reached, text);
    }

    // "0 inches" is a circuit without pressure, wherever the site is; the weather and the height then fall out of the comparison.
    private Finding AgainstAtmosphere(CheckContext context, FindingBuilder finding, Limit limit, Uncertain gauge, string why, string source)
    {
        foreach (var use in context.Get<SiteAtmosphere>().Uses)
            finding.Use(use);
        finding.Judge(gauge, DisplayKind.Pressure, context.State(limit) with { Kind = LimitKind.AtMost, Text = $"at most {context.Present.Text(0, DisplayKind.Pressure)} ({why})", LowerSi = null, UpperSi = 0, Source = source });
        return finding.Conclude(
            $"Recovered to {context.Present.Text(gauge.Value, DisplayKind.Pressure)}; {why} asks for no pressure above the atmosphere.",
            $"Recovered to {context.Present.Text(gauge.Value, DisplayKind.Pressure)} only; {why} asks for no pressure above the atmosphere.",
            this.WhenItFails());
    }

    private Finding Said(FindingBuilder finding, CorrectedReading reached, string asked) => finding.Conclude(
        $"Recovered to {reached.Uses[0].Text}; {asked} is asked for.",
        $"Recovered to {reached.Uses[0].Text} only; {asked} is asked for.",
        this.WhenItFails());

    private Finding? SmallAppliance(CheckContext context, FindingBuilder finding, Recovery recovery)
    {
        if (context.Job.Equipment is not { HermeticallySealed: { Value: true } factorySealed, Nameplate.FactoryCharge: { } charge } || charge.Value.Si > FivePounds
            || recovery.Mass is not { } mass || context.Limits.Find(LimitIds.RefrigerantRecoverySmallAppliance) is not { } share)
        {
            return null;
        }

        var ratio = Written.Value(context, "mass recovered", mass, DisplayKind.Mass) / Written.Value(context, "factory charge", charge, DisplayKind.Mass);
        finding.Use("hermetically sealed", factorySealed).Use("factory charge", charge).Use("mass recovered", mass)
            .Step("r", "share recovered", "mass recovered / factory charge", $"{mass.Text} / {charge.Text}", context.Present.Text(ratio, DisplayKind.Percentage), share.Source)
            .Judge(ratio, DisplayKind.Percentage, context.State(share));
        return finding.Conclude(
            $"{context.Present.Text(ratio.Value, DisplayKind.Percentage)} of the charge of a small appliance was recovered.",
            $"Only {context.Present.Text(ratio.Value, DisplayKind.Percentage)} of the charge of a small appliance was recovered.",
            this.WhenItFails());
    }

    private static AppliancePressureClass? Class(CheckContext context, FindingBuilder finding)
    {
        var gas = context.Get<RecoveredRefrigerant>();
        finding.Use("changed from", context.Job.RefrigerantChange?.From).Use("refrigerant found", context.Job.AsFound?.Refrigerant);
        if (gas.Fluid is not { } fluid)
            return null;
        var critical = fluid.CriticalPoint;
        var isAbove = critical.Ok && critical.Value.Temperature <= HundredFourFahrenheit;
        var liquid = isAbove ? default : fluid.BubbleAtTemperature(HundredFourFahrenheit);
        if (!isAbove && !liquid.Ok)
            return null;
        var pressureClass = RecoveryLevels.ClassOf(isAbove ? null : liquid.Value.Pressure);
        finding.Step(
            "p_104", "liquid saturation pressure at 104 °F", "p_bubble(104 °F)", gas.Designation,
            isAbove ? $"critical below 104 °F: {Words(pressureClass)}" : $"{context.Present.Text(liquid.Value.Pressure, DisplayKind.AbsolutePressure)}: {Words(pressureClass)}", RecoveryLevels.ClassSource);
        return pressureClass;
    }

    // Any charge will do where the table does not ask for it.
    private static Mass? FullCharge(CheckContext context, FindingBuilder finding, AppliancePressureClass pressureClass, bool isOld)
    {
        var small = Mass.FromSi(0);
        if (RecoveryLevels.Required(pressureClass, small, isOld) == RecoveryLevels.Required(pressureClass, Mass.FromSi(TwoHundredPounds), isOld))
            return small;
        if (context.Get<CircuitCharge>().Full is not { } full)
            return null;
        full.UseIn(finding);
        return Mass.FromSi(full.Value.Value);
    }

    private static string Words(AppliancePressureClass pressureClass) => pressureClass switch
    {
        AppliancePressureClass.VeryHigh => "very high pressure",
        AppliancePressureClass.High => "high pressure",
        AppliancePressureClass.Medium => "medium pressure",
        _ => "low pressure",
    };
}
