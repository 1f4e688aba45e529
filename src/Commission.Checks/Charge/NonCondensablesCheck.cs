using Commission.Checks.Circuit;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

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
        var pressure = context.Readings.Pressure("standing pressure", ReadingName.LiquidPressure, test.LiquidPressure);
        var outdoor = test.OutdoorDryBulb is { } air ? context.Readings.Temperature("outdoor dry bulb, standing", ReadingName.OutdoorAir, air) : null;
        var line = test.LiquidLine is { } pipe ? context.Readings.Temperature("liquid line, standing", ReadingName.LiquidLine, pipe, outdoor) : null;
        var finding = context.Finding(this).Use(pressure).Use("off for", test.OffFor).Use("condenser fan on", test.CondenserFanOn);
        if (outdoor is not null)
            finding.Use(outdoor);
        if (line is not null)
            finding.Use(line);
        if ((line ?? outdoor) is not { } reference)
            return finding.NotEvaluated("neither the liquid line nor the outdoor air was read", "Read both once they agree.");
        if (NotReady(context, test, line, outdoor) is { } notReady)
            return finding.NotEvaluated(notReady, "Leave the compressor off and the condenser fan on until the liquid line has come to the temperature of the air, then read again.");

        var saturation = context.Get<CircuitSaturation>();
        var bubble = saturation.Bubble(pressure);
        if (bubble.Value is not { } at)
            return finding.NotEvaluated(bubble.WhyNot!.TrimEnd('.'), "Check the pressure and the refrigerant's name.");
        var excess = at - reference.Value;
        finding
            .Step("T_bubble", "bubble point at the standing pressure", "T_bubble(p_abs)", present.Text(pressure.Value.Value, DisplayKind.AbsolutePressure), present.Text(at, DisplayKind.Temperature), saturation.Source)
            .Step("ΔT", "standing pressure over saturation, as a temperature", "T_bubble − T", $"{present.Text(at.Value, DisplayKind.Temperature, 2)} − {present.Text(reference.Value.Value, DisplayKind.Temperature, 2)}", present.Text(excess, DisplayKind.TemperatureDifference), "definition");
        finding.Measure(excess, DisplayKind.TemperatureDifference);
        if (excess.Value < -excess.Expanded)
        {
            return finding.NotEvaluated(
                $"the pressure lies {present.Text(-excess.Value, DisplayKind.TemperatureDifference)} below saturation, which means no liquid at the gauge or a temperature that has not settled",
                "Wait until the line has the temperature of the air; if it stays, the circuit holds very little refrigerant.");
        }

        var limit = context.Limits.Require(LimitIds.ChargeNonCondensablesExcess);
        finding.Judge(excess, DisplayKind.TemperatureDifference, context.State(limit));
        var text = present.Text(excess, DisplayKind.TemperatureDifference);
        var share = Share(context, finding, pressure, reference);
        if (finding.Passes && share is null)
            return Closed(finding, [pressure, reference]).Say($"Standing pressure lies {text} above saturation: nothing that does not condense shows.").Build();
        if (share is not null && finding.Passes)
            finding.Fail(share);
        return finding
            .Say($"Standing pressure lies {text} above saturation{(share is null ? "" : $", {share}")}: non-condensables are suspect.")
            .Next("Confirm with a refrigerant identifier; else recover, evacuate and weigh in fresh refrigerant.")
            .Build();
    }

    private static FindingBuilder Closed(FindingBuilder finding, CorrectedReading[] readings) =>
        ChargeFindings.Unknown(readings) is { } unknown ? finding.Reserve(unknown) : finding;

    private static string? NotReady(CheckContext context, StandingTest test, CorrectedReading? line, CorrectedReading? outdoor)
    {
        if (test.CondenserFanOn is { Value: false })
            return "the condenser fan did not run, so the condenser need not be at outdoor temperature";
        if (context.Limits.Find(LimitIds.ChargeNonCondensablesRest) is { Lower: { } rest } && test.OffFor is { } off && off.Value.Si < rest.Si)
            return $"the compressor had been off for {off.Text}, at least {rest.Text} are asked for";
        if (test.OffFor is null && (line is null || outdoor is null))
            return "it is not written how long the compressor had been off, and line and air were not both read";
        if (line is null || outdoor is null || context.Limits.Find(LimitIds.ChargeNonCondensablesSettled) is not { Upper: { } settled })
            return null;
        var apart = Math.Abs(line.Value.Value - outdoor.Value.Value);
        return apart > settled.Si
            ? $"liquid line and outdoor air were {context.Present.Text(apart, DisplayKind.TemperatureDifference)} apart, {settled.Text} is allowed"
            : null;
    }

    // The same excess as a share of the pressure: the stricter of the two counts.
    private static string? Share(CheckContext context, FindingBuilder finding, CorrectedReading pressure, CorrectedReading reference)
    {
        if (context.Limits.Find(LimitIds.ChargeNonCondensablesPressureShare) is not { Upper: { } most } limit || context.Get<CircuitRefrigerant>().Fluid is not { } fluid)
            return null;
        var saturated = Uncertain.Apply(t => fluid.BubbleAtTemperature(t) is { Ok: true, Value: var state } ? state.Pressure : double.NaN, reference.Value);
        if (!double.IsFinite(saturated.Value))
            return null;
        var share = (pressure.Value / saturated) - 1;
        var text = context.Present.Text(share, DisplayKind.Percentage);
        finding.Show(context.State(limit)).Step(
            "Δp/p", "standing pressure over saturation, as a share", "p / p_bubble(T) − 1",
            $"{context.Present.Text(pressure.Value.Value, DisplayKind.AbsolutePressure)} / {context.Present.Text(saturated.Value, DisplayKind.AbsolutePressure)} − 1", text, "definition");
        return share.Value > most.Si ? $"{text} of the pressure" : null;
    }
}
