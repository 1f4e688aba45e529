using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;
using QuantityValue = Commission.Messages.QuantityValue;

namespace Commission.Checks.Charge;

/// <summary>The standing test: with everything at outdoor temperature, more pressure than saturation means that something does not condense.</summary>
internal sealed class NonCondensablesCheck : ICheck
{
    public string Id => "charge.non-condensables";

    public string Phase => Phases.Charge;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Charging?.StandingTest is { } test)
            yield return Judge(context, test);
    }

    private Finding Judge(CheckContext context, StandingTest test)
    {
        var present = context.Present;
        var pressure = context.Readings.Pressure(present.Text(ReadingsMessages.StandingLiquidPressure), ReadingName.LiquidPressure, test.LiquidPressure);
        var outdoor = test.OutdoorDryBulb is { } air ? context.Readings.Temperature(present.Text(ReadingsMessages.StandingOutdoorDryBulb), ReadingName.OutdoorAir, air) : null;
        var line = test.LiquidLine is { } pipe ? context.Readings.Temperature(present.Text(ReadingsMessages.StandingLiquidLine), ReadingName.LiquidLine, pipe, outdoor) : null;
        var finding = context.Finding(this).Use(pressure).Use(OperatingStateMessages.ReadingOffFor, test.OffFor).Use(OperatingStateMessages.ReadingFanOn, test.CondenserFanOn);
        if (outdoor is not null)
            finding.Use(outdoor);
        if (line is not null)
            finding.Use(line);
        if ((line ?? outdoor) is not { } reference)
            return finding.NotEvaluated(OperatingStateMessages.StandingNothingToCompare, OperatingStateMessages.StandingNothingToCompareNext);
        if (NotReady(context, test, line, outdoor) is { } notReady)
            return finding.NotEvaluated(notReady, OperatingStateMessages.StandingNotReadyNext);

        var saturation = context.Get<CircuitSaturation>();
        var bubble = saturation.Bubble(pressure);
        if (bubble.Value is not { } at)
            return finding.NotEvaluated(bubble.WhyNot!, OperatingStateMessages.StandingNoSaturationNext);
        var excess = at - reference.Value;
        finding
            .Step("T_bubble", OperatingStateMessages.StandingBubble, "T_bubble(p_abs)", present.Text(pressure.Value.Value, DisplayKind.AbsolutePressure), present.Text(at, DisplayKind.Temperature), saturation.Source)
            .Step("ΔT", OperatingStateMessages.StandingExcess, "T_bubble − T", $"{present.Text(at.Value, DisplayKind.Temperature, 2)} − {present.Text(reference.Value.Value, DisplayKind.Temperature, 2)}", present.Text(excess, DisplayKind.TemperatureDifference), OperatingStateMessages.Definition);
        finding.Measure(excess, DisplayKind.TemperatureDifference);
        if (excess.Value < -excess.Expanded)
        {
            return finding.NotEvaluated(
                OperatingStateMessages.StandingBelowSaturation(present.InMessage(-excess.Value, DisplayKind.TemperatureDifference)),
                OperatingStateMessages.StandingBelowSaturationNext);
        }

        var limit = context.Limits.Require(LimitIds.ChargeNonCondensablesExcess);
        finding.Judge(excess, DisplayKind.TemperatureDifference, context.State(limit));
        var above = present.InMessage(excess, DisplayKind.TemperatureDifference);
        var share = Share(context, finding, pressure, reference);
        if (finding.Passes && share is null)
            return Closed(finding, [pressure, reference]).Say(OperatingStateMessages.StandingGood(above)).Build();
        if (share is not null && finding.Passes)
            finding.Fail(OperatingStateMessages.StandingShare(share));
        return finding
            .Say(share is null ? OperatingStateMessages.StandingBad(above) : OperatingStateMessages.StandingBadShare(above, share))
            .Next(OperatingStateMessages.StandingBadNext)
            .Build();
    }

    private static FindingBuilder Closed(FindingBuilder finding, CorrectedReading[] readings) =>
        ChargeFindings.Unknown(readings) is { } unknown ? finding.Reserve(unknown) : finding;

    private static Message? NotReady(CheckContext context, StandingTest test, CorrectedReading? line, CorrectedReading? outdoor)
    {
        if (test.CondenserFanOn is { Value: false })
            return OperatingStateMessages.StandingFanOff;
        if (context.Limits.Find(LimitIds.ChargeNonCondensablesRest) is { Lower: { } rest } && test.OffFor is { } off && off.Value.Si < rest.Si)
            return OperatingStateMessages.StandingOffTooShort(new(off.Value.Si), new(rest.Si));
        if (test.OffFor is null && (line is null || outdoor is null))
            return OperatingStateMessages.StandingOffNotKnown;
        if (line is null || outdoor is null || context.Limits.Find(LimitIds.ChargeNonCondensablesSettled) is not { Upper: { } settled })
            return null;
        var apart = Math.Abs(line.Value.Value - outdoor.Value.Value);
        return apart > settled.Si
            ? OperatingStateMessages.StandingApart(context.Present.InMessage(apart, DisplayKind.TemperatureDifference), context.Present.InMessage(settled.Si, DisplayKind.TemperatureDifference))
            : null;
    }

    // The same excess as a share of the pressure: the stricter of the two counts.
    private static QuantityValue? Share(CheckContext context, FindingBuilder finding, CorrectedReading pressure, CorrectedReading reference)
    {
        if (context.Limits.Find(LimitIds.ChargeNonCondensablesPressureShare) is not { Upper: { } most } limit || context.Get<CircuitRefrigerant>().Fluid is not { } fluid)
            return null;
        var saturated = Uncertain.Apply(t => fluid.BubbleAtTemperature(t) is { Ok: true, Value: var state } ? state.Pressure : double.NaN, reference.Value);
        if (!double.IsFinite(saturated.Value))
            return null;
        var share = (pressure.Value / saturated) - 1;
        finding.Show(context.State(limit)).Step(
            "Δp/p", OperatingStateMessages.StandingExcessShare, "p / p_bubble(T) − 1",
            $"{context.Present.Text(pressure.Value.Value, DisplayKind.AbsolutePressure)} / {context.Present.Text(saturated.Value, DisplayKind.AbsolutePressure)} − 1", context.Present.Text(share, DisplayKind.Percentage), OperatingStateMessages.Definition);
        return share.Value > most.Si ? context.Present.InMessage(share, DisplayKind.Percentage) : null;
    }
}
