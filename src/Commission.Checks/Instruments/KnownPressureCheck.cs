using Commission.Checks.Readings;
using Commission.Jobs.Model;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Instruments;

/// <summary>What a gauge shows at a pressure known from a better one.</summary>
internal sealed class KnownPressureCheck : ICheck
{
    public string Id => "instrument.known-pressure";

    public string Phase => Phases.Instruments;

    public string Title => "Gauge at a known pressure";

    public CheckHelp Help { get; } = new(
        "Does the gauge agree with a reference, such as regulated nitrogen on a test gauge? Zero alone does not show a wrong slope.",
        "error = (reading − zero) − applied, as a share of the applied pressure; where the reference carries an uncertainty the readings are corrected in proportion, up to a quarter beyond the checked pressure",
        "Gauge accuracy ± 3 %: California RA3.2.2.2.3 (from memory). Point-to-point correction: JCGM 100, 4.3 (from memory).",
        "Repeat with a second reference. A gauge beyond the bound is recalibrated or replaced. State the reference's uncertainty, 300.0 psig +/- 0.6, so that the correction can be applied.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        foreach (var instrument in context.Get<InstrumentKit>().All)
        {
            if (instrument.Described.Checks?.KnownPressure is { } check)
                yield return Judge(context, instrument, check);
        }
    }

    private Finding Judge(CheckContext context, UsedInstrument instrument, ReferenceCheck check)
    {
        var present = context.Present;
        var shown = check.Adjusted ?? check.Read;
        var zero = instrument.Described.Checks?.Zero is { } z ? z.Adjusted ?? z.Read : null;
        var finding = context.Finding(this, instrument.Id)
            .Use($"{instrument.Id}: applied", check.Applied, instrument.Id)
            .Use($"{instrument.Id}: read", shown, instrument.Id)
            .Use($"{instrument.Id}: open to air", zero, instrument.Id);
        var applied = check.Applied.Value.Si;
        if (!(applied > 0))
            return finding.NotEvaluated("the applied pressure is not above zero", "Apply a pressure near those that are read on the job.");
        var terms = new List<RootTerm>();
        if (check.Applied.Stated is { } stated)
            terms.Add(-1.0 * context.Causes.Enter(RootCause.FromExpanded($"{instrument.Id}: known pressure", "stated with the applied pressure", stated.HalfWidthSi, stated.CoverageFactor), DisplayKind.PressureDifference));
        if (instrument.ResolutionSi is { } step)
            terms.Add(1.0 * context.Causes.Enter(RootCause.FromResolution($"{instrument.Id}: reading of the known pressure", "smallest step of the indication", step), DisplayKind.PressureDifference));
        if (zero is not null)
            terms.Add(-1.0 * instrument.ZeroCause);
        var error = context.Scope.Reading(shown.Value.Si - (zero?.Value.Si ?? 0) - applied, [.. terms]);
        finding.Step(
            "e", "error at the known pressure", "p_read − p_zero − p_applied",
            $"{shown.Text} − ({zero?.Text ?? "0"}) − {check.Applied.Text}", present.Text(error, DisplayKind.PressureDifference));
        if (context.Limits.Find("instruments.known-pressure") is not { } limit)
            return finding.NotEvaluated("no pack sets a limit", "Name a limits pack.");
        finding.Judge(Uncertain.Abs(error / applied), DisplayKind.Percentage, context.State(limit));
        if (check.Applied.Stated is null)
            finding.Reserve("the reference has no stated uncertainty, so the error is reported and not corrected").Next("State the reference's uncertainty with the applied pressure.");
        var off = present.Text(error.Value, DisplayKind.PressureDifference);
        return finding.Passes
            ? finding.Say($"{instrument.Id} is off by {off} at {check.Applied.Text}{(check.Applied.Stated is null ? "" : "; readings are corrected in proportion")}.").Build()
            : finding.Say($"{instrument.Id} is off by {off} at {check.Applied.Text}: beyond what a service gauge may be.").Next("Recalibrate or replace the gauge and repeat the readings taken on it.").Build();
    }
}
