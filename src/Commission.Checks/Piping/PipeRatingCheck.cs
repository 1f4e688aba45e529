using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Whether the tube is made for the pressure of this refrigerant.</summary>
internal sealed class PipeRatingCheck : ICheck
{
    public string Id => "piping.pipe-rating";

    public string Phase => Phases.Piping;

    public string Title => "Tube rated for the refrigerant";

    public CheckHelp Help { get; } = new(
        "Is the tube rated for the pressure of this refrigerant? Thin water tube and old line sets of another refrigerant are not.",
        "rating printed on the tube ≥ design pressure of the side it serves",
        "The tube's marking and the maker's manual; walls of refrigeration tube: ASTM B280 (from memory).",
        "Do not charge it. Replace the tube by refrigeration tube of the wall the maker asks for.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.PipingChecks?.PipeRatedForRefrigerant is not { } rated)
            yield break;
        var refrigerant = context.Job.Equipment.Refrigerant;
        var finding = context.Finding(this).Use("pipe rated for refrigerant", rated).Use("refrigerant", refrigerant).Decide(rated.Value);
        yield return rated.Value
            ? finding.Say($"The tube is rated for {refrigerant.Value}.").Build()
            : finding.Fail("the tube may burst").Say($"The tube is not rated for {refrigerant.Value}.").Next(Help.WhenItFails).Build();
    }
}
