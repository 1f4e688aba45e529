using Commission.Jobs.Model.Words;
using Commission.Records.Findings;

namespace Commission.Checks.Charge;

/// <summary>A start-up in weather that does not let the charge be judged: weighed in, and a visit in the season arranged.</summary>
internal sealed class ReturnVisitCheck : ICheck
{
    public string Id => "charge.return-visit";

    public string Phase => Phases.Charge;

    public string Title => "Return visit";

    public CheckHelp Help { get; } = new(
        "Where the weather did not let the charge be judged by readings: was it weighed in, and is a visit for the cooling check arranged?",
        "no valid cooling reading: charge by weight, and a return visit when it is warm enough outdoors",
        "65 °F outdoors for the cooling check of a winter start-up: common practice, no source.",
        "Write return visit with what is to be done, and when or at which outdoor temperature. Until then the record is accepted with that condition at best.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var analysis = context.Get<ChargeAnalysis>();
        if (analysis.Charging is not { } charging)
            yield break;
        if (charging.ReturnVisit is { } visit)
        {
            var finding = context.Finding(this).Use("return visit", visit.What).Use("outdoor at least", visit.OutdoorAtLeast).Use("by", visit.By);
            if (context.Limits.Find("charge.return-visit.outdoor") is { } warm)
                finding.Show(context.State(warm));
            if (visit.OutdoorAtLeast is { } least && context.Limits.Find("charge.validity.outdoor")?.Lower is { } lower && least.Value.Si < lower.Si)
                finding.Remark($"At {least.Text} outdoors the charge cannot be judged by readings yet: {lower.Text} at the least.");
            yield return finding.Information(
                $"A return visit is due: {visit.What.Text}{(visit.OutdoorAtLeast is { } at ? $", when it is at least {at.Text} outdoors" : "")}{(visit.By is { } by ? $", by {by.Text}" : "")}.",
                "a condition of this record until it is done; the charge stands on its weight, judged beside");
            yield break;
        }

        if (Missing(context, analysis) is { } why)
            yield return context.Finding(this).NotEvaluated(why, "Weigh the charge in and write the return visit, or read in cooling when the weather allows it.");
    }

    // Only where readings would have shown the charge, and none could.
    private static string? Missing(CheckContext context, ChargeAnalysis analysis)
    {
        if (analysis.ByWeightOnly is not null || analysis.HasReceiver || analysis.IsRefrigeration || analysis.IsLeftSealed || analysis.Rows.IsEmpty)
            return null;
        if (analysis.Last(OperatingMode.Cooling, _ => true) is not { } row)
            return "the system was read in heating alone, and no return visit is written";
        var validity = MethodValidity.Of(context, row, analysis.HasFixedMetering ? ChargeCriterion.Superheat : ChargeCriterion.Subcooling);
        return validity.Block is { } block ? $"{block}, and no return visit is written" : null;
    }
}
