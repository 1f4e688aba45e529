using System.Globalization;
using Commission.Checks.Kernel;
using Commission.Checks.Limits;
using Commission.Jobs.Model;
using Commission.Messages;
using Commission.Records;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>Whether the detector of the leak check was itself checked, where a pack sets a time for that.</summary>
internal sealed class LeakDetectorCheck : ICheck
{
    public string Id => "instrument.leak-detector";

    public string Phase => Phases.Instruments;

    public string Title => "Leak detector";

    public CheckHelp Help { get; } = new(
        "Was the leak detector itself checked lately? A detector that sees nothing finds every circuit tight.",
        "last check of the detector + the pack's interval ≥ day of the leak check, and not after it",
        "Regulation (EC) 1516/2007, article 6(2), every 12 months (published).",
        "Check the detector on a reference leak and repeat the search.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        if (context.Job.LeakCheck is not { } check || context.Limits.Find(LimitIds.InstrumentsLeakDetectorInterval) is not { Upper: { } months } limit)
            yield break;
        var detector = context.Get<InstrumentKit>().FirstOf(check.With);
        if ((check.DetectorChecked ?? detector?.Described.Calibrated) is not { } last)
            yield break;
        var due = last.Value.AddMonths((int)months.Si);
        yield return context.Finding(this).Use("detector checked", last, detector?.Id).Use("date", check.Date)
            .Step("due", "next check of the detector", "checked + interval", $"{last.Text} + {months.Text}", due.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), limit.Source)
            .Decide(due >= check.Date.Value && last.Value <= check.Date.Value, context.State(limit))
            .Conclude(InstrumentsMessages.LeakDetectorChecked(last.Value), InstrumentsMessages.LeakDetectorNotChecked(last.Value, check.Date.Value), InstrumentsMessages.LeakDetectorNext);
    }
}
