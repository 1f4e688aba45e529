using Commission.Records.Findings;

namespace Commission.Checks.Air;

/// <summary>Pressure drop of the filter.</summary>
internal sealed class FilterDropCheck : ICheck
{
    public string Id => "air.filter-drop";

    public string Phase => Phases.Air;

    public string Title => "Filter drop";

    public CheckHelp Help { get; } = new(
        "How much of the blower's pressure does the filter take?",
        "p before the filter − p after it, read across it with one manometer",
        "The filter's or the unit's maker; there is no common figure.",
        "Change the filter; if a clean one takes too much, fit a larger or a deeper one.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Get<StaticReading>().FilterDrop is { } drop)
            yield return PartDrop.Judge(context, this, drop, context.Limits.Find("air.filter-drop"), "filter", finding => finding.Use("filter", context.Job.Air!.Filter));
    }
}
