using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
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
                yield return context.Finding(this).Show(context.State(limit)).NotEvaluated("no strength test is written", "Do the strength test: its pressure, how long it was held, what was seen.", "pressure test: {strength: {pressure: …, held: …, result: none}}");
            yield break;
        }

        var atmosphere = context.Get<SiteAtmosphere>();
        var reading = context.Readings.Pressure("strength test pressure", ReadingName.PressureTest, strength.Pressure, test.With);
        var gauge = reading.Value - atmosphere.Value;
        var finding = context.Finding(this).Use(reading).Use("strength test: held", strength.Held).Use("strength test: result", strength.Result);
        if (strength.Result?.Value == LeakResult.Leak)
        {
            yield return finding.Decide(false).Say("The circuit leaked at the strength test.").Next("Release the pressure, repair, and begin again with the strength test.").Build();
            yield break;
        }

        if (SectionDesignPressure.Of(context, test.Section) is not { } design || limit?.Lower is not { } factor)
        {
            yield return finding.Measure(gauge, DisplayKind.Pressure).Information($"Strength test at {strength.Pressure.Text}.", "no pack in force asks for one");
            yield break;
        }

        var least = factor.Si * design.Gauge;
        var text = context.Present.Text(least, DisplayKind.Pressure);
        finding.Use(design.Name, design.Given).Step("p_min", "least strength-test pressure", "factor × PS", string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.##} × {design.Given.Text}"), text, limit.Source);
        finding.Judge(gauge, DisplayKind.Pressure, context.State(limit) with { Kind = LimitKind.AtLeast, Text = $"at least {text}", LowerSi = least, UpperSi = null });
        if (strength.At?.Value.Clock is { } at && test.Tightness?.From?.At.Value.Clock is { } tight && at > tight)
            finding.Use("strength test: time", strength.At).Use("tightness test: start", test.Tightness.From.At).Fail("the strength test came after the tightness test");
        yield return finding.Conclude(
            $"Strength test at {strength.Pressure.Text}, at least {text} asked.",
            $"Strength test at {strength.Pressure.Text}: {text} is asked, before the tightness test.",
            this.WhenItFails());
    }
}
