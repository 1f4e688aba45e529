using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Messages;
using Commission.Records.Findings;

namespace Commission.Checks.PressureTest;

/// <summary>The strength test, where a pack asks for one: high enough, and before the tightness test.</summary>
internal sealed class StrengthCheck : ICheck
{
    public string Id => "pressure-test.strength";

    public string Phase => Phases.PressureTest;

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PressureTest is not { } test)
            yield break;
        var limit = context.Limits.Find(LimitIds.PressureTestStrengthMinimumFactor);
        if (test.Strength is not { } strength)
        {
            if (limit is not null)
                yield return context.Finding(this).Show(context.State(limit)).NotEvaluated(PressureTestMessages.StrengthNotWritten, PressureTestMessages.StrengthNotWrittenNext, "pressure test: {strength: {pressure: …, held: …, result: none}}");
            yield break;
        }

        var atmosphere = context.Get<SiteAtmosphere>();
        var reading = context.Readings.Pressure(context.Present.Text(PressureTestMessages.ReadingStrength), ReadingName.PressureTest, strength.Pressure, test.With);
        var gauge = reading.Value - atmosphere.Value;
        var finding = context.Finding(this).Use(reading).Use(PressureTestMessages.ReadingStrengthHeld, strength.Held).Use(PressureTestMessages.ReadingStrengthResult, strength.Result);
        if (strength.Result?.Value == LeakResult.Leak)
        {
            yield return finding.Decide(false).Say(PressureTestMessages.StrengthLeaked).Next(PressureTestMessages.StrengthLeakedNext).Build();
            yield break;
        }

        if (SectionDesignPressure.Of(context, test.Section) is not { } design || limit?.Lower is not { } factor)
        {
            yield return finding.Measure(gauge, DisplayKind.Pressure).Information(PressureTestMessages.StrengthRead(new(strength.Pressure.Text)), PressureTestMessages.StrengthKind);
            yield break;
        }

        var least = factor.Si * design.Gauge;
        var bound = context.Present.InMessage(least, DisplayKind.Pressure);
        var text = context.Present.Text(least, DisplayKind.Pressure);
        finding.Use(design.Name, design.Given).Step("p_min", PressureTestMessages.StepStrengthLeast, PressureTestMessages.StepFactorTimesPs, string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.##} × {design.Given.Text}"), text, limit.Source);
        finding.Judge(gauge, DisplayKind.Pressure, context.State(limit) with { Kind = LimitKind.AtLeast, Text = context.Present.Text(PressureTestMessages.LimitAtLeast(bound)), LowerSi = least, UpperSi = null });
        if (strength.At?.Value.Clock is { } at && test.Tightness?.From?.At.Value.Clock is { } tight && at > tight)
            finding.Use(PressureTestMessages.ReadingStrengthTime, strength.At).Use(PressureTestMessages.ReadingTightnessStart, test.Tightness.From.At).Fail(PressureTestMessages.StrengthAfterTightness);
        yield return finding.Conclude(
            PressureTestMessages.StrengthMet(new(strength.Pressure.Text), bound),
            PressureTestMessages.StrengthMissed(new(strength.Pressure.Text), bound),
            this.WhenItFails());
    }
}
