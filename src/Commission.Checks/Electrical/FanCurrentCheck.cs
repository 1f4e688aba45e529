using System.Globalization;
using Commission.Jobs.Model;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Quantities;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Fan currents against full load current.</summary>
internal sealed class FanCurrentCheck : ICheck
{
    public string Id => "electrical.fan-current";

    public string Phase => Phases.Electrical;

    public string Title => "Fan current against FLA";

    public CheckHelp Help { get; } = new(
        "Does each fan draw no more than its full load current?",
        "current ≤ factor × FLA",
        "Nameplate; factor 1: common practice, no source.",
        "Check the blade, the bearings, the run capacitor and the voltage; a blower without resistance in front of it overloads.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var plate = context.Job.Equipment.Nameplate;
        var electrical = context.Job.Electrical;
        if (Judge(context, "outdoor fan", electrical?.OutdoorFan, plate?.FanFLA) is { } outdoor)
            yield return outdoor;
        if (Judge(context, "indoor fan", electrical?.IndoorFan, plate?.IndoorFanFLA) is { } indoor)
            yield return indoor;
    }

    private Finding? Judge(CheckContext context, string which, Given<ElectricCurrent>? current, Given<ElectricCurrent>? fla)
    {
        if (current is null)
            return null;
        var reading = context.Readings.Plain($"{which} current", ReadingName.Current, current, DisplayKind.Current, context.Job.Electrical!.With);
        var finding = context.Finding(this, which).Use(reading).Use($"{which} FLA", fla);
        if (fla is null)
            return finding.NotEvaluated("the nameplate's FLA is not written", "Write the fan's full load current in nameplate.");
        if (context.Limits.Find("electrical.fan-current.factor") is not { Upper: { } factor } limit)
            return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
        var most = factor.Si * fla.Value.Si;
        finding.Step("I_max", "largest fan current", "factor × FLA", string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.##} × {fla.Text}"), context.Present.Text(most, DisplayKind.Current), limit.Source);
        finding.Judge(reading.Value, DisplayKind.Current, context.State(limit) with { Kind = LimitKind.AtMost, Text = $"at most {context.Present.Text(most, DisplayKind.Current)}", LowerSi = null, UpperSi = most });
        return finding.Passes
            ? finding.Say($"The {which} draws {current.Text}, at most {fla.Text} allowed.").Build()
            : finding.Say($"The {which} draws {current.Text}, more than its {fla.Text}.").Next(Help.WhenItFails).Build();
    }
}
