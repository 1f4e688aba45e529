using Commission.Checks.Findings;
using Commission.Jobs.Model.Words;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>How far the voltage drops while the compressor starts.</summary>
internal sealed class StartVoltageDropCheck : ICheck
{
    public string Id => "electrical.voltage-drop-at-start";

    public string Phase => Phases.Electrical;

    public string Title => "Voltage drop at start";

    public CheckHelp Help { get; } = new(
        "How far does the voltage drop while the compressor starts? Too far, and it starts hard, or not at all on a hot day.",
        "drop = (voltage before − lowest voltage) / voltage before",
        "10 to 15 %: common practice, no source.",
        "Look for a loose lug, a long or thin supply, a weak transformer; fit the maker's start kit only when the maker allows one.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { VoltageDropAtStart: { } start } electrical)
            yield break;
        var before = context.Readings.Plain("voltage before start", ReadingName.Voltage, start.Before, DisplayKind.Voltage, electrical.With);
        var lowest = context.Readings.Plain("lowest voltage at start", ReadingName.Voltage, start.Lowest, DisplayKind.Voltage, electrical.With);
        var finding = context.Finding(this).Use(before).Use(lowest);
        if (!(before.Value.Value > 0))
        {
            yield return finding.NotEvaluated("the voltage before the start is zero", "Read it before the compressor starts.");
            yield break;
        }

        var drop = Uncertain.Apply((b, l) => (b - l) / b, before.Value, lowest.Value);
        finding.Step("d", "voltage drop at start", "(V₀ − V_min)/V₀", $"({start.Before.Text} − {start.Lowest.Text})/{start.Before.Text}", context.Present.Text(drop, DisplayKind.Percentage));
        if (context.Limits.Find("electrical.voltage-drop-at-start.limit") is not { } limit)
        {
            yield return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
            yield break;
        }

        var state = context.State(limit);
        finding.Judge(drop.On(state), DisplayKind.Percentage, state);
        var text = context.Present.Text(drop.Value, DisplayKind.Percentage);
        if (finding.Passes && context.Limits.Find("electrical.voltage-drop-at-start.good") is { Upper: { } good } && drop.Value > good.Si)
            finding.Remark($"More than the {good.Text} that a good supply shows.");
        yield return finding.Passes
            ? finding.Say($"The voltage drops by {text} at start.").Build()
            : finding.Say($"The voltage drops by {text} at start: too far.").Next(Help.WhenItFails).Build();
    }
}
