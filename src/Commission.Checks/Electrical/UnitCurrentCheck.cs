using System.Globalization;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Current of the whole unit against the minimum circuit ampacity, the measure for a variable-speed unit.</summary>
internal sealed class UnitCurrentCheck : ICheck
{
    public string Id => "electrical.unit-current";

    public string Phase => Phases.Electrical;

    public string Title => "Current of the whole unit";

    public CheckHelp Help { get; } = new(
        "Does the whole unit draw no more than its circuit is sized for? RLA says nothing of a variable-speed compressor; the input current of its unit does.",
        "current of the unit ≤ factor × MCA; above the rated current of the plate a remark",
        "NEC article 440 sizes the circuit by MCA (from memory); factor 1: common practice, no source.",
        "Check voltage, condenser airflow and charge. If it stays above MCA, stop the unit.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { Total: { } total } electrical)
            yield break;
        var plate = context.Job.Equipment.Nameplate;
        var reading = context.Readings.Plain("current of the unit", ReadingName.Current, total, DisplayKind.Current, electrical.With);
        var finding = context.Finding(this).Use(reading).Use("MCA", plate?.MCA).Use("rated current", plate?.RatedCurrent);
        var above = plate?.RatedCurrent is { } rated && total.Value.Si > rated.Value.Si ? $"It is above the rated current of {rated.Text}: read again at rated conditions." : null;
        if (plate?.MCA is not { } ampacity)
        {
            yield return plate?.RatedCurrent is { } only
                ? finding.Measure(reading.Value, DisplayKind.Current).Remark(above).Information($"The unit draws {total.Text}; its rated current is {only.Text}.", "the nameplate's MCA is not written, and a rated current is no maximum")
                : finding.NotEvaluated("the nameplate's MCA is not written", "Write nameplate: {MCA: 22.0 A}.");
            yield break;
        }

        if (context.Limits.Find("electrical.unit-current.factor") is not { Upper: { } factor } limit)
        {
            yield return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
            yield break;
        }

        var most = factor.Si * ampacity.Value.Si;
        finding.Step("I_max", "largest current of the unit", "factor × MCA", string.Create(CultureInfo.InvariantCulture, $"{factor.Si:0.##} × {ampacity.Text}"), context.Present.Text(most, DisplayKind.Current), limit.Source);
        finding.Judge(reading.Value, DisplayKind.Current, context.State(limit) with { Kind = LimitKind.AtMost, Text = $"at most {context.Present.Text(most, DisplayKind.Current)} (MCA)", LowerSi = null, UpperSi = most });
        yield return finding.Passes
            ? finding.Remark(above).Say($"The unit draws {total.Text}, at most {ampacity.Text} allowed.").Build()
            : finding.Say($"The unit draws {total.Text}, more than its MCA of {ampacity.Text}.").Next(Help.WhenItFails).Build();
    }
}
