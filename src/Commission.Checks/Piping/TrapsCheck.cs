using Commission.Checks.Limits;
using Commission.Measurement.Uncertainty;
using Commission.Measurement.Units;
using Commission.Records.Findings;

namespace Commission.Checks.Piping;

/// <summary>Oil traps in risers, and the fall of the vapor line, as written.</summary>
internal sealed class TrapsCheck : ICheck
{
    public string Id => "piping.traps";

    public string Phase => Phases.Piping;

    public string Title => "Oil traps and fall of the vapor line";

    public CheckHelp Help { get; } = new(
        "Are there as many traps in the risers as the maker asks for, and does the vapor line fall toward the compressor, so that oil comes back?",
        "number of traps ≥ the maker's",
        "The maker's manual; there is no common figure.",
        "Add the traps, or let the line fall toward the compressor along its whole length.");

    public IEnumerable<Finding> Evaluate(CheckContext context)
    {
        var checks = context.Job.PipingChecks;
        var written = checks?.RiserTraps;
        var inLines = context.Job.Equipment.Piping.Select(r => r.Vapor?.Traps).Where(t => t is not null).ToArray();
        var limit = context.Limits.Find("piping.traps");
        if (written is not null || inLines.Length > 0 || limit is { Lower: not null })
        {
            var finding = context.Finding(this, "traps").Use("riser traps", written);
            foreach (var traps in inLines)
                finding.Use("traps of the vapor line", traps);
            var count = written?.Value ?? (inLines.Length > 0 ? inLines.Sum(t => t!.Value) : (int?)null);
            yield return Count(context, finding, count, limit);
        }

        if (checks?.VaporLineSlopesToCompressor is { } slope)
        {
            var finding = context.Finding(this, "fall").Use("vapor line slopes to compressor", slope);
            yield return slope.Value
                ? finding.Decide(true).Say("The vapor line falls toward the compressor.").Build()
                : finding.Next("Let it fall where that is possible; oil lies in low places and comes back in slugs.").Information("The vapor line does not fall toward the compressor.", "as written; the maker's manual says where it matters");
        }
    }

    private Finding Count(CheckContext context, Findings.FindingBuilder finding, int? count, Limit? limit)
    {
        if (count is not { } traps)
            return finding.NotEvaluated("the number of traps is not written", "Count them and write riser traps: 2.");
        var words = traps == 1 ? "one oil trap" : FormattableString.Invariant($"{traps} oil traps");
        if (limit is null || (limit.Lower is null && limit.Upper is null))
            return finding.Information($"The vapor line has {words}.", "as written; the maker's number is not");
        var state = context.State(limit);
        finding.Judge(Uncertain.Exact(traps), DisplayKind.Number, state);
        return finding.Passes
            ? finding.Say($"The vapor line has {words}; {state.Text} asked for.").Build()
            : finding.Say($"The vapor line has {words}; the maker asks for {state.Text}.").Next(Help.WhenItFails).Build();
    }
}
