using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Whether the openings the lines pass through were closed.</summary>
internal sealed class PenetrationsCheck : ICheck
{
    public string Id => "piping.penetrations";

    public string Phase => Phases.Piping;

    public string Title => "Wall openings sealed";

    public CheckHelp Help { get; } = new(
        "Are the openings where the lines pass through walls and floors closed against water, vermin and fire?",
        "every opening sealed; through a fire-rated wall with a listed system",
        "Building and fire codes of the place; common practice, no source.",
        "Sleeve and seal the opening; in a fire-rated wall use a listed firestop and have it inspected.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PipingChecks?.PenetrationsSealed is not { } closed)
            yield break;
        var finding = context.Finding(this).Use("penetrations sealed", closed).Decide(closed.Value);
        yield return closed.Value
            ? finding.Say("The openings the lines pass through are sealed.").Build()
            : finding.Say("An opening the lines pass through is not sealed.").Next(Help.WhenItFails).Build();
    }
}
