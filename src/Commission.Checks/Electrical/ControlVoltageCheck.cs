using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Control voltage.</summary>
internal sealed class ControlVoltageCheck : ICheck
{
    public string Id => "electrical.control-voltage";

    public string Phase => Phases.Electrical;

    public string Title => "Control voltage";

    public CheckHelp Help { get; } = new(
        "Is the control voltage high enough for contactors and low enough for boards?",
        "voltage at the transformer's secondary with everything called for, within the pack's range",
        "20 to 28 V for a 24 V circuit: common practice, no source.",
        "Low: overloaded or wrong transformer tap, or a long thin cable. High: wrong primary tap.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { ControlVoltage: { } voltage } electrical)
            yield break;
        var reading = context.Readings.Plain("control voltage", ReadingName.Voltage, voltage, DisplayKind.Voltage, electrical.With);
        var finding = context.Finding(this).Use(reading);
        if (context.Limits.Find("electrical.control-voltage.range") is not { } limit)
        {
            yield return finding.NotEvaluated("no pack sets a range", "Name a limits pack.");
            yield break;
        }

        finding.Judge(reading.Value, DisplayKind.Voltage, context.State(limit));
        yield return finding.Passes
            ? finding.Say($"Control voltage {voltage.Text}.").Build()
            : finding.Say($"Control voltage {voltage.Text}, outside the usual range.").Next(Help.WhenItFails).Build();
    }
}
