using Commission.Checks.Air;
using Commission.Checks.Findings;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Distance between the supports of the lines.</summary>
internal sealed class SupportsCheck : ICheck
{
    public string Id => "piping.supports";

    public string Phase => Phases.Piping;

    public string Title => "Supports";

    public CheckHelp Help { get; } = new(
        "Are the lines held often enough not to sag, rub and trap oil?",
        "distance between supports ≤ the pack's",
        "International Mechanical Code table 305.4, copper tube up to 1 1/4 in: 6 ft (from memory). Local code and the maker come first.",
        "Add supports that do not cut into the insulation.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PipingChecks?.SupportsEvery is not { } every)
            yield break;
        var distance = WrittenFigure.Of(context, "distance of supports", every, DisplayKind.Length);
        var finding = context.Finding(this).Use(distance);
        if (context.Limits.Find("piping.supports") is not { } limit)
        {
            yield return finding.Information($"Supports every {every.Text}.", "nobody sets a limit");
            yield break;
        }

        var state = context.State(limit);
        finding.Judge(distance.Value.On(state), DisplayKind.Length, state);
        yield return finding.Passes
            ? finding.Say($"Supports every {every.Text}; {state.Text} is asked for.").Build()
            : finding.Say($"Supports every {every.Text}: too far apart, {state.Text} is asked for.").Next(Help.WhenItFails).Build();
    }
}
