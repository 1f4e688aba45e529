using Commission.Records.Findings;

namespace Commission.Checks.Functional;

/// <summary>Whether condensate runs off.</summary>
internal sealed class CondensateCheck : ICheck
{
    public string Id => "functional.condensate";

    public string Phase => Phases.Functional;

    public string Title => "Condensate";

    public CheckHelp Help { get; } = new(
        "Does water poured into the pan run off? Is there a trap where one is needed, fall along the drain, and a second drain or pan where an overflow would do damage?",
        "water poured and seen to leave; the drain falls at least as much as the pack asks",
        "1/8 in for each foot: model mechanical codes (from memory).",
        "Clear the drain, give it fall, prime the trap; on the suction side of a blower a trap is needed for the water to leave at all.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.Functional is not { } functional)
            yield break;
        var begun = context.Finding(this);
        if (functional.DrainSlope is not null && context.Limits.Find("functional.condensate.slope") is { } limit)
            begun.Show(context.State(limit));
        var finding = Trials.Judge(
            begun,
            functional.Witnessed,
            Help.WhenItFails,
            new Trial("condensate drains", functional.CondensateDrains, true),
            new Trial("condensate trap", functional.CondensateTrap),
            new Trial("drain slope", functional.DrainSlope),
            new Trial("secondary drain", functional.SecondaryDrain));
        if (finding is not null)
            yield return finding;
    }
}
