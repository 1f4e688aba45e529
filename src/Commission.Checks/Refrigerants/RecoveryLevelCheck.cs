using Commission.Checks.Circuit;
using Commission.Checks.Formulas;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Checks.Wording;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
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
        var present = context.Present;
        var reached = context.Readings.Pressure(present.Text(ReadingsMessages.PressureAfterRecovery), ReadingName.Recovery, recovery.To, recovery.With);
        var finding = context.Finding(this).Use(reached).Use(ReadingsMessages.Refrigerant, context.Job.Equipment.Refrigerant).Use(RefrigerantMessages.ReadingHeld, recovery.Held)
            .Use(RefrigerantMessages.ReadingLeaking, recovery.Leaking).Use(RefrigerantMessages.ReadingMachine, recovery.MachineMade);
        finding.Remark(recovery.Held is { } held ? RefrigerantMessages.RecoveryHeld(new(held.Text)) : RefrigerantMessages.RecoveryHeldNotWritten);
        var limit = context.Limits.Require(LimitIds.RefrigerantRecoveryLevel);
        if (SmallAppliance(context, finding, recovery) is { } share)
            return share;
        var atmosphere = context.Get<SiteAtmosphere>();
        var zero = present.InMessage(0, DisplayKind.Pressure);
        var gauge = reached.Value - atmosphere.Value;
        var shown = present.InMessage(gauge.Value, DisplayKind.Pressure);
        if (recovery.Leaking?.Value == true)
        {
            return AgainstAtmosphere(context, finding, limit, gauge, RefrigerantMessages.RecoveryLimitLeaking(zero), Cited.FromMemory("40 CFR 82.156"))
                .Conclude(RefrigerantMessages.RecoveryLeakingReached(shown), RefrigerantMessages.RecoveryLeakingMissed(shown), this.WhenItFails());
        }

        if (Class(context, finding) is not { } pressureClass)
            return finding.NotEvaluated(RefrigerantMessages.RecoveryClassUnknown(new(context.Get<RecoveredRefrigerant>().Designation)), RefrigerantMessages.RecoveryClassUnknownNext);
        var isOld = recovery.MachineMade is { } made && made.Value < NewMachines;
        if (FullCharge(context, finding, pressureClass, isOld) is not { } full)
            return finding.NotEvaluated(RefrigerantMessages.RecoveryChargeUnknown, RefrigerantMessages.RecoveryChargeUnknownNext);
        var wording = RecoveryLevels.Wording(pressureClass, full, isOld);
        MessageValue[] parts =
        [
            Words(pressureClass), full.Si < TwoHundredPounds ? RefrigerantMessages.RecoveryChargeBelow : RefrigerantMessages.RecoveryChargeFrom,
            .. isOld ? new MessageValue[] { RefrigerantMessages.RecoveryMachineOld } : [],
        ];
        finding.Step(
            "p_req", RefrigerantMessages.RecoveryStepLevel, RefrigerantMessages.RecoveryStepLevelFormula, RefrigerantMessages.RecoveryStepLevelNumbers(new([.. parts], ListJoin.Comma)), wording,
            Cited.As(RecoveryLevels.Source, RecoveryLevels.Mark));
        if (RecoveryLevels.IsAtmosphere(pressureClass, full, isOld))
        {
            return AgainstAtmosphere(context, finding, limit, gauge, RefrigerantMessages.RecoveryLimitAtmosphere(zero, wording), Cited.As(RecoveryLevels.Source, RecoveryLevels.Mark))
                .Conclude(RefrigerantMessages.RecoveryAtmosphereReached(shown, wording), RefrigerantMessages.RecoveryAtmosphereMissed(shown, wording), this.WhenItFails());
        }

        var required = RecoveryLevels.Required(pressureClass, full, isOld);
        var level = RefrigerantMessages.RecoveryLevel(wording, present.Value(required.Si, DisplayKind.AbsolutePressure, 2));
        finding.Judge(reached.Value, DisplayKind.AbsolutePressure, context.State(limit) with { Kind = LimitKind.AtMost, Text = present.Text(RefrigerantMessages.RecoveryLimit(level)), LowerSi = null, UpperSi = required.Si });
        var read = new TextValue(reached.Uses[0].Text);
        return finding.Conclude(RefrigerantMessages.RecoveryReached(read, level), RefrigerantMessages.RecoveryMissed(read, level), this.WhenItFails());
    }

    // "0 inches" is a circuit without pressure, wherever the site is; the weather and the height then fall out of the comparison.
    private static FindingBuilder AgainstAtmosphere(CheckContext context, FindingBuilder finding, Limit limit, Uncertain gauge, Message text, Message source)
    {
        foreach (var use in context.Get<SiteAtmosphere>().Uses)
            finding.Use(use);
        return finding.Judge(gauge, DisplayKind.Pressure, context.State(limit) with { Kind = LimitKind.AtMost, Text = context.Present.Text(text), LowerSi = null, UpperSi = 0, Source = context.Present.Text(source) });
    }

    private Finding? SmallAppliance(CheckContext context, FindingBuilder finding, Recovery recovery)
    {
        if (context.Job.Equipment is not { HermeticallySealed: { Value: true } factorySealed, Nameplate.FactoryCharge: { } charge } || charge.Value.Si > FivePounds
            || recovery.Mass is not { } mass || context.Limits.Find(LimitIds.RefrigerantRecoverySmallAppliance) is not { } share)
        {
            return null;
        }

        var present = context.Present;
        var ratio = Written.Value(context, present.Text(ReadingsMessages.MassRecovered), mass, DisplayKind.Mass) / Written.Value(context, present.Text(ReadingsMessages.FactoryCharge), charge, DisplayKind.Mass);
        finding.Use(ReadingsMessages.HermeticallySealed, factorySealed).Use(ReadingsMessages.FactoryCharge, charge).Use(ReadingsMessages.MassRecovered, mass)
            .Step("r", RefrigerantMessages.RecoveryStepShare, RefrigerantMessages.RecoveryStepShareFormula, $"{mass.Text} / {charge.Text}", present.Text(ratio, DisplayKind.Percentage), share.Source)
            .Judge(ratio, DisplayKind.Percentage, context.State(share));
        var shown = present.InMessage(ratio.Value, DisplayKind.Percentage);
        return finding.Conclude(RefrigerantMessages.RecoveryShareReached(shown), RefrigerantMessages.RecoveryShareMissed(shown), this.WhenItFails());
    }

    private static AppliancePressureClass? Class(CheckContext context, FindingBuilder finding)
    {
        var gas = context.Get<RecoveredRefrigerant>();
        finding.Use(RefrigerantMessages.ReadingChangedFrom, context.Job.RefrigerantChange?.From).Use(RefrigerantMessages.ReadingFound, context.Job.AsFound?.Refrigerant);
        if (gas.Fluid is not { } fluid)
            return null;
        var critical = fluid.CriticalPoint;
        var isAbove = critical.Ok && critical.Value.Temperature <= HundredFourFahrenheit;
        var liquid = isAbove ? default : fluid.BubbleAtTemperature(HundredFourFahrenheit);
        if (!isAbove && !liquid.Ok)
            return null;
        var pressureClass = RecoveryLevels.ClassOf(isAbove ? null : liquid.Value.Pressure);
        finding.Step(
            "p_104", RefrigerantMessages.RecoveryStepClass, "p_bubble(104 °F)", gas.Designation,
            isAbove
                ? RefrigerantMessages.RecoveryStepClassCritical(Words(pressureClass))
                : RefrigerantMessages.RecoveryStepClassPressure(context.Present.InMessage(liquid.Value.Pressure, DisplayKind.AbsolutePressure), Words(pressureClass)),
            RecoveryLevels.ClassSource);
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

    private static Message Words(AppliancePressureClass pressureClass) => RefrigerantMessages.RecoveryClass(pressureClass switch
    {
        AppliancePressureClass.VeryHigh => RefrigerantMessages.RecoveryClassClass.VeryHigh,
        AppliancePressureClass.High => RefrigerantMessages.RecoveryClassClass.High,
        AppliancePressureClass.Medium => RefrigerantMessages.RecoveryClassClass.Medium,
        _ => RefrigerantMessages.RecoveryClassClass.Low,
    });
}
