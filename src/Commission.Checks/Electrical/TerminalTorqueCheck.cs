using Commission.Jobs.Model.Words;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Electrical;

/// <summary>Torque on the terminals of the supply.</summary>
internal sealed class TerminalTorqueCheck : ICheck
{
    public string Id => "electrical.terminal-torque";

    public string Phase => Phases.Electrical;

    public string Title => "Terminal torque";

    public CheckHelp Help { get; } = new(
        "Are the supply terminals as tight as the maker prints? A loose lug heats, a crushed strand breaks.",
        "torque within the maker's range, read on a torque screwdriver or wrench",
        "The maker's label or manual; there is no common figure.",
        "Lock out, prove dead, and tighten to the figure on the label.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Electrical is not { Supply.TerminalTorque: { } torque } electrical)
            yield break;
        var reading = context.Readings.Plain("terminal torque", ReadingName.Torque, torque, DisplayKind.Torque, electrical.With);
        var finding = context.Finding(this).Use(reading);
        if (context.Limits.Find("electrical.terminal-torque") is not { } limit || (limit.Lower is null && limit.Upper is null))
        {
            yield return finding.Measure(reading.Value, DisplayKind.Torque).Information($"The terminals were tightened to {torque.Text}.", "the maker's figure is not written");
            yield break;
        }

        finding.Judge(reading.Value, DisplayKind.Torque, context.State(limit));
        yield return finding.Passes
            ? finding.Say($"The terminals were tightened to {torque.Text}, as the maker asks.").Build()
            : finding.Say($"The terminals were tightened to {torque.Text}, outside the maker's figure.").Next(Help.WhenItFails).Build();
    }
}
