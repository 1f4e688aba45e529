using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>Whether orifice and units belong together as the maker lists them.</summary>
internal sealed class EquipmentMatchCheck : ICheck
{
    public string Id => "charge.match";

    public string Phase => Phases.Charge;

    public string Title => "Matched equipment";

    public CheckHelp Help { get; } = new(
        "Do orifice, indoor and outdoor unit belong together as the maker lists them? A charging target holds for that combination alone.",
        "size of the installed orifice = size the maker asks for; pair of units listed by the maker",
        "The maker's plate and the certificate of the matched pair.",
        "Fit the orifice the plate asks for, or find the target for this combination. Until then superheat and subcooling say nothing of the charge.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var match = EquipmentMatch.Of(context);
        if (!match.IsShown)
            yield break;
        var finding = context.Finding(this).Use("rating reference", context.Job.Equipment.RatingReference);
        match.NameIn(finding);
        finding.Decide(match.Block is null && match.Reservation is null);
        yield return finding.Passes
            ? finding.Say("Orifice and units belong together as the maker lists them.").Build()
            : finding.Say($"{Capital(match.Block ?? match.Reservation!)}.").Next(match.Todo ?? "Find the maker's figures for this pair, or fit units that belong together.").Build();
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
